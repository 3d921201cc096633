#include "web/panels/bench_page.h"

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include <imgui.h>

#include "web/model/words.h"
#include "web/panels/curve_parts.h"
#include "web/panels/how_slip.h"
#include "web/panels/keys_panel.h"
#include "web/panels/making_slip.h"
#include "web/panels/page.h"
#include "web/panels/print_acts.h"
#include "web/panels/sew_work.h"
#include "web/scene/shader_texts.h"

namespace pouncemark::web {
namespace {

/// The bench as the browser sees it: acts first, then one frame of drawing.
class BenchPage final : public host::Guest {
 public:
  BenchPage() : scene_(shader_texts()), print_guest_(make_print_guest(bench_, state_)) {
    set_text(1, kept_text_size());
    host::set_print_guest(print_guest_.get());
  }

  void draw(float width, float height, float ratio) override;
  bool has_acts() override { return !state_.acts.empty(); }
  void file_opened(std::string_view name, std::string_view bytes) override;
  void file_refused(std::string_view sentence) override;
  void record_found(std::string_view record) override;
  void record_kept(std::int64_t number) override;
  void record_not_kept(std::string_view why) override { bench_.note_not_kept(why); }
  bool ctrl_key(int number, bool shift, bool again) override;
  void place_focused(std::string_view id) override;
  void picture_restored() override { scene_.forget_picture(); }
  SetWords* set_words() override { return &set_words_; }
  std::string job_text() override { return bench_.has_job() ? bench_.file_bytes() : std::string(); }

 private:
  void act();
  void keep();
  void act_on(KeyAct asked);
  void move_focus_for_keys_page();
  void ask_for_acts(Page& page);
  KeyPlaces key_places() const;
  void draw_stage(Page& page);
  void tell_host(const Page& page, float ratio);
  void mirror(std::string_view id, std::string_view words);
  void mirror_figures();
  void clear_mirror();

  float ratio_ = 1;
  bool had_finger_ = host::has_fingers();
  bool keys_page_has_focus_ = false;
  std::string focus_before_keys_page_;
  Bench bench_;
  Scene scene_;
  Hand hand_;
  PageState state_;
  std::int64_t sent_ = 0;  ///< number of the newest record given to the browser, and its stage
  Stage sent_stage_ = Stage::make;
  SetWords set_words_;
  std::unique_ptr<host::PrintGuest> print_guest_;
  struct MirrorLine {
    std::string id;
    std::string words;
    bool is_there = false;  ///< in this frame
  };
  std::vector<MirrorLine> mirrored_;
};

/// Acts that were asked for while drawing. The engine runs here and never in the drawing itself.
void BenchPage::act() {
  auto acts = std::move(state_.acts);
  state_.acts.clear();
  for (const auto& one : acts) one();
  move_focus_for_keys_page();
  if (!(state_.closeups.place == bench_.place())) state_.closeups = {bench_.place()};
  work_out_prints(bench_, state_);
  ask_how(bench_, state_.how);
  foretell_making(bench_, state_.making);
  keep();
  ask_sew(bench_, state_.sew);
  if (state_.stage == Stage::curve) ask_curve(bench_, state_.curve, ImGui::GetTime());
  ask_what_follows(bench_, state_);
  if (!acts.empty()) host::request_frames();
}

/// Gives the browser what is new to keep. Nothing that still moves in the hand is.
void BenchPage::keep() {
  if (bench_.is_moving() || (sent_ == bench_.to_keep() && sent_stage_ == state_.stage)) return;
  sent_stage_ = state_.stage;
  if (!bench_.has_job()) return;
  sent_ = bench_.to_keep();
  host::keep_record(sent_, bench_.record(static_cast<int>(sent_stage_), host::moment()),
                    bench_.must_keep_now());
}

void BenchPage::record_found(std::string_view record) {
  const auto stage = bench_.bring_back(record, host::moment());
  if (bench_.failed_open()) use_signs(bench_.failed_open()->sentence);
  if (!stage) return;
  sent_ = bench_.to_keep();
  sent_stage_ = state_.stage = static_cast<Stage>(*stage);
  state_.is_on_start = false;
  use_signs(bench_.now().job.name);
  use_signs(bench_.history().beginning());
  for (const History::Step& step : bench_.history().steps()) use_signs(step.action);
}

void BenchPage::record_kept(std::int64_t number) {
  const std::string now = host::moment();
  bench_.note_kept(number, now, now);
}

void BenchPage::draw(float width, float height, float ratio) {
  ratio_ = ratio;
  act();
  const std::string box_before = state_.open_box.id;
  scene_.begin_frame(host::has_picture());
  hand_.begin_frame(ratio, key_places());
  ImGui::SetNextWindowPos({0, 0});
  ImGui::SetNextWindowSize({width, height});
  ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, ImVec2(0, 0));
  ImGui::Begin("bench", nullptr,
               ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                   ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                   ImGuiWindowFlags_NoBringToFrontOnFocus | ImGuiWindowFlags_NoNav |
                   ImGuiWindowFlags_NoScrollWithMouse);
  set_words_.begin_frame();
  const Brush brush(ImGui::GetWindowDrawList(), ratio, set_words_);
  const Layout layout = layout_for(width / ratio, height / ratio);
  // The height of targets changes only once a press has ended, so that none moves away from under
  // the finger that presses it.
  if (hand_.let_go()) had_finger_ = hand_.is_finger();
  set_for_fingers(layout.is_compact || had_finger_);
  Page page{bench_, brush, hand_, scene_, state_, layout};
  hand_.set_covered(bench_.failed_open().has_value() || state_.shows_keys);
  ask_for_acts(page);
  // The brown paper again: a list of own drawing alone would upload the program's whole memory.
  brush.fill({0, 0, page.layout.width, page.layout.height}, kBench);
  if (state_.is_on_start || !bench_.has_job())
    start_panel(page);
  else
    draw_stage(page);
  hand_.set_covered(bench_.failed_open().has_value());
  if (state_.shows_keys) keys_panel(page);
  hand_.set_covered(false);
  drop_lost_pull(page);
  failed_open_panel(page);
  refused_sentence(brush, hand_, state_.open_box, page.layout.width - kPageEdge);
  draw_focus_ring(brush, hand_);
  ImGui::End();
  ImGui::PopStyleVar();
  hand_.end_frame();
  tell_host(page, ratio);
  if (!state_.acts.empty()) host::request_frames();
  // A box takes the keys only some frames after it was opened; a letter typed sooner would be lost.
  if (state_.open_box.id != box_before) host::request_frames(4);
}

void BenchPage::draw_stage(Page& page) {
  stage_panel(page);
  const bool is_failed = bench_.failed_open().has_value();
  hand_.set_covered(is_failed || state_.actions.is_open);
  const bool is_sewing = state_.stage == Stage::sew;
  if (state_.stage == Stage::curve) {
    curve_panel(page);
  } else if (state_.stage == Stage::make || is_sewing) {
    const Place place = bench_.place();
    const Solved& now = bench_.now();
    const bool covered = page.layout.is_compact && state_.shows_all_follows;
    if (!covered) cover_for_making(page);
    if (now.results.pieces.empty()) {
      empty_panel(page);
    } else if (covered) {
      // The slip lies over the bench.
    } else if (is_whole_hanging(place)) {
      hanging_panel(page);
    } else if (is_sewing) {
      sew_panel(page);
    } else if (panel_at(now.job, now.results, place) != nullptr) {
      backed_panel(page);
    } else if (place.sleeve < 0) {
      section_panel(page);
    } else {
      sleeve_panel(page);
    }
    if (!covered) making_slip(page);
    if (!now.results.pieces.empty()) follows_panel(page);
  } else if (state_.stage == Stage::print) {
    print_panel(page);
  } else {
    later_stage_panel(page);
  }
  hand_.set_covered(is_failed);
  bar_panel(page);
  actions_panel(page);
}

void BenchPage::mirror(std::string_view id, std::string_view words) {
  const auto same = std::find_if(mirrored_.begin(), mirrored_.end(),
                                 [id](const MirrorLine& line) { return line.id == id; });
  if (same == mirrored_.end()) {
    mirrored_.push_back({std::string(id), std::string(words), true});
  } else {
    same->is_there = true;
    if (same->words == words) return;
    same->words = std::string(words);
  }
  host::mirror_line(id, words);
}

/// Takes away the lines of what no longer stands on the bench.
void BenchPage::clear_mirror() {
  for (MirrorLine& line : mirrored_) {
    if (!line.is_there && !line.words.empty()) {
      line.words.clear();
      host::mirror_line(line.id, "");
    }
    line.is_there = false;
  }
}

void BenchPage::tell_host(const Page& page, float ratio) {
  host::forget_places();
  for (const NotedPlace& place : page.hand.places()) {
    const Area& area = place.area;
    host::note_place(place.id, area.left * ratio, area.top * ratio, area.right * ratio,
                     area.bottom * ratio,
                     place.can_be_pressed ? 1 + static_cast<int>(place.state) : 0);
    if (!place.words.empty()) mirror(place.id, place.words);
  }
  host::note_focus(page.hand.focused());
  if (!state_.is_on_start && bench_.has_job()) mirror_figures();
  clear_mirror();
  host::warn_before_leaving(bench_.has_job() && bench_.can_undo() && !bench_.is_in_file() &&
                            !bench_.is_kept());
}

void BenchPage::mirror_figures() {
  const solve::Results& results = bench_.now().results;
  const Headline line = told_headline(bench_, state_);
  mirror("headline", plain_words(line));
  mirror("headline.because", line.because);
  mirror("piece", name_of(results, bench_.place()));
  constexpr std::size_t kMostFindings = 20;
  for (std::size_t i = 0; i < results.findings.size() && i < kMostFindings; ++i) {
    const solve::Finding& finding = results.findings[i];
    const char* tag = finding.severity == solve::Severity::stop   ? "STOP "
                      : finding.severity == solve::Severity::warn ? "WARN "
                                                                  : "NOTE ";
    mirror("finding-" + std::to_string(i), tag + finding.place + ": " + finding.sentence);
  }
}

void BenchPage::file_opened(std::string_view name, std::string_view bytes) {
  state_.open_box = {};
  state_.pulling = {};
  bench_.put_back();
  if (bench_.open(name, bytes)) {
    bench_.note_in_file(name, bytes, host::moment());
    use_signs(bench_.now().job.name);
    state_.is_on_start = false;
    state_.stage = Stage::make;
    state_.open_sum.clear();
    state_.how = {};
    state_.making = {};
    state_.sew = {};
    state_.curve = {};
    state_.first_guide = 0;
    state_.printing.ticks = {};
    state_.printing.looked_at.clear();
  } else {
    use_signs(bench_.failed_open()->sentence);
  }
  host::request_frames();
}

void BenchPage::file_refused(std::string_view sentence) {
  bench_.refuse_file(sentence);
  host::request_frames();
}

void BenchPage::place_focused(std::string_view id) {
  hand_.focus_by_keys(id);
  host::request_frames();
}

KeyPlaces BenchPage::key_places() const {
  if (bench_.failed_open()) return kMustAnswer;
  if (state_.shows_keys) return kOnKeysPage;
  if (!state_.open_box.id.empty()) return kInBox;
  if (state_.is_on_start || !bench_.has_job()) return kOnStart;
  return bench_.is_moving() || !state_.pulling.id.empty() ? kInHand : kOnBench;
}

bool BenchPage::ctrl_key(int number, bool shift, bool again) {
  const KeyPlaces places = hand_.is_typing() ? kInBox : key_places();
  const KeyRow* row = row_for({number, true, shift}, places);
  // A key without a sign is the frame's, with Ctrl as without.
  if (row == nullptr || number >= 256) return false;
  if (row->repeats || !again) act_on(row->act);
  host::request_frames();
  return true;
}

/// What a key does that belongs to no one thing on the bench.
void BenchPage::act_on(KeyAct asked) {
  if (asked == KeyAct::open) host::choose_file();
  if (asked == KeyAct::save) save_job_file(bench_);
  if (asked == KeyAct::print) {
    state_.stage = Stage::print;
    state_.printing.part = PrintPart::map;
  }
  if (asked == KeyAct::undo) bench_.undo();
  if (asked == KeyAct::redo) bench_.redo();
  if (asked == KeyAct::list_keys) state_.shows_keys = !state_.shows_keys;
  if (asked == KeyAct::text_size) take_text_size(ratio_, next_text_size());
  const bool can_step = state_.stage == Stage::make;
  const int by = asked == KeyAct::next_piece ? 1 : asked == KeyAct::piece_before ? -1 : 0;
  if (can_step && by != 0) bench_.step(by);
  if (state_.stage == Stage::curve) state_.curve.bay += by;
}

/// The list of keys takes the focus and gives it back to what had it.
void BenchPage::move_focus_for_keys_page() {
  if (keys_page_has_focus_ == state_.shows_keys) return;
  keys_page_has_focus_ = state_.shows_keys;
  if (state_.shows_keys) focus_before_keys_page_ = hand_.focused();
  hand_.focus(state_.shows_keys ? "keys.close" : focus_before_keys_page_);
}

void BenchPage::ask_for_acts(Page& page) {
  for (const KeyAct one : {KeyAct::print, KeyAct::list_keys, KeyAct::text_size,
                           KeyAct::piece_before, KeyAct::next_piece}) {
    if (hand_.asked(one)) page.later([this, one] { act_on(one); });
  }
}

}  // namespace

std::unique_ptr<host::Guest> make_bench_page() { return std::make_unique<BenchPage>(); }

}  // namespace pouncemark::web

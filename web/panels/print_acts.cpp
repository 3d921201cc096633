#include "web/panels/print_acts.h"

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "web/host/host.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

/// Everything the figures hang on, as one word.
std::string figures_word(const Bench& bench, const PageState& state) {
  const PaperChoice& paper = state.paper;
  const PrintStage& stage = state.printing;
  std::string word = std::to_string(bench.turn()) + " " + paper.paper.name + " " +
                     std::to_string(paper.measured.across_um) + " " +
                     std::to_string(paper.measured.along_um) + " " + stage.looked_at;
  for (const std::string& key : stage.ticks.on) word += " +" + key;
  for (const std::string& key : stage.ticks.off) word += " -" + key;
  return word;
}

/// The guide that is looked at; else the first that has pages to tape.
std::size_t looked_at(const PrintStage& stage, const std::vector<GuideLine>& lines) {
  std::size_t first = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (lines[i].key == stage.looked_at) return i;
    if (first == 0 && lines[i].kind == GuideKind::full_face) first = i;
  }
  return first;
}

class PrintEar final : public host::PrintGuest {
 public:
  PrintEar(Bench& bench, PageState& state) : bench_(bench), state_(state) {}

  void print_went_on(std::int64_t printed, std::int64_t pages) override {
    stage().printed = printed;
    stage().pages = pages;
  }

  void print_made(host::PrintedFile file) override { stage().made.push_back(std::move(file)); }

  void print_ended() override {
    stage().is_printing = false;
    if (stage().made.empty()) return;
    if (stage().then == host::Then::look) {
      stage().is_viewing = true;
      return;
    }
    const std::size_t files = stage().made.size();
    const std::string what =
        files == 1 ? "Made " + stage().made[0].name
                   : "Made " + counted(static_cast<std::int64_t>(files), "file", "files");
    bench_.say(what + ", in your downloads. Print " + (files == 1 ? "it" : "them") +
               " at 100 %, never fit to page");
  }

  void print_failed(std::string_view sentence) override {
    stage().is_printing = false;
    close_view(state_);
    stage().sentence = with_capital(std::string(sentence));
    use_signs(stage().sentence);
  }

 private:
  PrintStage& stage() { return state_.printing; }

  Bench& bench_;
  PageState& state_;
};

}  // namespace

void work_out_prints(const Bench& bench, PageState& state) {
  PrintStage& stage = state.printing;
  const bool is_open = state.stage == Stage::print && !state.is_on_start && bench.has_job();
  // The viewer would lie over what must be seen.
  if (!is_open || state.shows_keys || bench.failed_open()) close_view(state);
  if (!is_open) return;
  std::string word = figures_word(bench, state);
  PrintFigures& figures = stage.figures;
  if (figures.made_for == word) return;
  if (stage.is_viewing && stage.view_job != bench.file_bytes()) close_view(state);
  host::prepare_printing();
  figures.made_for = std::move(word);
  figures.lines = guide_lines(bench.now(), state.paper);
  figures.looked_at = looked_at(stage, figures.lines);
  const GuideLine& line = figures.lines[figures.looked_at];
  figures.map = page_map(bench.now(), state.paper, line);
  figures.sheets = ticked_sheets(figures.lines, stage.ticks);
  figures.left_out = ticked_left_out(figures.lines, stage.ticks);
  figures.all_sum = sheets_sum(figures.lines, stage.ticks);
  figures.full_face_sum = sheets_sum(figures.lines, stage.ticks, GuideKind::full_face);
  figures.tick_list_sum = sheets_sum(figures.lines, stage.ticks, GuideKind::tick_list);
  figures.strip_sum = sheets_sum(figures.lines, stage.ticks, GuideKind::drilling_strip);
  figures.card_sum = sheets_sum(figures.lines, stage.ticks, GuideKind::seam_card);
  figures.guide_sum = guide_sum(bench.now(), state.paper, line);
}

void print_guides(Bench& bench, PageState& state, std::vector<GuideLine> lines, host::Then then) {
  PrintStage& stage = state.printing;
  if (lines.empty()) return;
  if (then == host::Then::save) close_view(state);
  stage.sentence.clear();
  stage.made.clear();
  stage.printed = 0;
  stage.pages = 0;
  for (const GuideLine& line : lines) stage.pages += line.sheets;
  stage.then = then;
  stage.is_printing = true;
  stage.last = std::move(lines);
  host::start_printing(bench.file_bytes(), order_words(stage.last, state.paper), then);
}

void print_ticked(Bench& bench, PageState& state) {
  std::vector<GuideLine> lines;
  for (const GuideLine& line : state.printing.figures.lines) {
    if (is_ticked(state.printing.ticks, line)) lines.push_back(line);
  }
  print_guides(bench, state, std::move(lines), host::Then::save);
}

void stop_print(Bench& bench, PageState& state) {
  PrintStage& stage = state.printing;
  if (!stage.is_printing) return;
  host::stop_printing();
  stage.is_printing = false;
  bench.say("Stopped printing at sheet " + count_text(stage.printed) + " of " +
            count_text(stage.pages) + ". Nothing was saved");
}

void view_page(Bench& bench, PageState& state, std::int64_t page) {
  PrintStage& stage = state.printing;
  const GuideLine& line = stage.figures.lines[stage.figures.looked_at];
  stage.view_page = page;
  if (stage.is_viewing && stage.viewed == line.key) return;
  stage.viewed = line.key;
  stage.view_job = bench.file_bytes();
  print_guides(bench, state, {line}, host::Then::look);
}

void close_view(PageState& state) {
  if (!state.printing.is_viewing) return;
  state.printing.is_viewing = false;
  host::put_printed_away();
}

std::unique_ptr<host::PrintGuest> make_print_guest(Bench& bench, PageState& state) {
  return std::make_unique<PrintEar>(bench, state);
}

}  // namespace pouncemark::web

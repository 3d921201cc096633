#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/job/job_json.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "web/model/choices.h"
#include "web/model/edits.h"
#include "web/model/history.h"
#include "web/model/kept.h"
#include "web/model/making.h"

using namespace pouncemark;
using web::History;
using web::Measure;
using web::Place;
using web::Question;

namespace {

/// Numbers that are the same in every build. Source: xorshift64*, Vigna 2016.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed * 0x9E3779B97F4A7C15u + 1) {}
  int below(int count) {
    state_ ^= state_ >> 12;
    state_ ^= state_ << 25;
    state_ ^= state_ >> 27;
    return static_cast<int>((state_ * 0x2545F4914F6CDD1Du >> 33) % static_cast<unsigned>(count));
  }

 private:
  std::uint64_t state_;
};

/// What an edit is made on.
struct OnBench {
  const job::Job& job;
  const solve::Results& results;
  Place place;
};

using MaybeJob = std::optional<job::Job>;
using Edit = MaybeJob (*)(const OnBench&, Dice&);

/// Lengths a hand might type, and some it should not.
Um some_length(Dice& dice) {
  constexpr std::array<Um, 12> kTyped = {0,      1'000,  5'500,   9'000,     18'000,     22'000,
                                         26'500, 50'000, 128'000, 1'800'000, 20'000'000, -1'000};
  if (dice.below(2) == 0) return kTyped[static_cast<std::size_t>(dice.below(kTyped.size()))];
  return 500 * static_cast<Um>(dice.below(dice.below(2) == 0 ? 200 : 5'000));
}

MaybeJob any_measure(const OnBench& on, Dice& dice) {
  constexpr int kMeasures = static_cast<int>(Measure::corner_clear) + 1;
  const auto measure = static_cast<Measure>(dice.below(kMeasures));
  return web::with_measure(on.job, on.results, on.place, measure, some_length(dice));
}

MaybeJob any_rule(const OnBench& on, Dice& dice) {
  const auto rule = dice.below(2) == 0 ? job::SpacingRule::even : job::SpacingRule::exact;
  return web::with_rule(on.job, on.results, on.place, rule);
}

MaybeJob any_answer(const OnBench& on, Dice& dice) {
  constexpr int kQuestions = static_cast<int>(Question::corners) + 1;
  const auto question = static_cast<Question>(dice.below(kQuestions));
  const auto answers = web::answers_there(on.job, on.results, on.place, question);
  if (answers.empty()) return std::nullopt;
  const int answer =
      answers[static_cast<std::size_t>(dice.below(static_cast<int>(answers.size())))];
  if (!web::why_not(on.job, on.results, on.place, question, answer).empty()) return std::nullopt;
  return web::with_answer(on.job, on.results, on.place, question, answer);
}

MaybeJob ends_of_all(const OnBench& on, Dice& /*dice*/) {
  if (!web::ends_differ_from_section(on.job, on.results, on.place)) return std::nullopt;
  return web::with_ends_of_all(on.job, on.results, on.place);
}

MaybeJob another_name(const OnBench& on, Dice& dice) {
  constexpr std::array<const char*, 6> kNames = {
      "", "a", "\"\\\n\t", "Łódź 日本", "</script>", "\xE2\x80\xAE right to left"};
  job::Job job = on.job;
  job.name = kNames[static_cast<std::size_t>(dice.below(kNames.size()))];
  return job;
}

MaybeJob any_lap_rule(const OnBench& on, Dice& dice) {
  const auto rule = dice.below(2) == 0 ? job::SpacingRule::even : job::SpacingRule::exact;
  return web::with_lap_rule(on.job, on.results, on.place, rule);
}

/// The piece on the bench; the first one where that is the whole hanging.
int piece_on(const OnBench& on) { return std::max(0, on.place.piece); }

MaybeJob made(web::Made made) {
  if (!made.refused.empty()) return std::nullopt;
  return std::move(made.job);
}

job::Side any_side(Dice& dice) { return dice.below(2) == 0 ? job::Side::left : job::Side::right; }

MaybeJob any_plan(const OnBench& on, Dice& dice) {
  if (piece_on(on) >= static_cast<int>(on.job.sections.size())) return std::nullopt;
  web::SectionPlan plan;
  plan.count = dice.below(5);
  plan.widths_um = {some_length(dice), some_length(dice)};
  plan.lap_um = some_length(dice);
  plan.lies_over = any_side(dice);
  return made(web::with_plan(on.job, piece_on(on), plan));
}

/// A job stays small enough to be quick.
bool is_full(const OnBench& on) { return web::piece_count(on.job) >= 5; }

MaybeJob one_more_section(const OnBench& on, Dice& /*dice*/) {
  return is_full(on) ? std::nullopt : made(web::with_section(on.job));
}
MaybeJob one_more_panel(const OnBench& on, Dice& dice) {
  if (is_full(on)) return std::nullopt;
  return made(web::with_panel(on.job, {some_length(dice), some_length(dice), any_side(dice)}));
}
MaybeJob a_copy(const OnBench& on, Dice& /*dice*/) {
  return is_full(on) ? std::nullopt : made(web::with_copy(on.job, piece_on(on)));
}
MaybeJob another_code(const OnBench& on, Dice& dice) {
  constexpr std::array<const char*, 6> kCodes = {"1", "7", "P1", "1-02", "", "a very long code"};
  const char* code = kCodes[static_cast<std::size_t>(dice.below(kCodes.size()))];
  return made(web::with_code(on.job, piece_on(on), code));
}
MaybeJob another_order(const OnBench& on, Dice& dice) {
  return made(web::with_piece_moved(on.job, piece_on(on), dice.below(2) == 0 ? -1 : 1));
}
MaybeJob new_numbers(const OnBench& on, Dice& /*dice*/) {
  return made(web::with_new_numbers(on.job, piece_on(on)));
}
MaybeJob one_less(const OnBench& on, Dice& /*dice*/) {
  return made(web::without_piece(on.job, piece_on(on)));
}

/// Every kind of edit the bench offers, the frequent ones more than once. A new kind is a line.
constexpr std::array<Edit, 16> kEdits = {
    any_measure,  any_measure,  any_measure,   any_rule,       any_answer, ends_of_all,
    another_name, any_lap_rule, any_plan,      one_more_panel, a_copy,     one_more_section,
    another_code, new_numbers,  another_order, one_less};

/// What the traces did in all, so that a run that did nothing shows.
struct Tally {
  std::int64_t edits = 0;
  std::int64_t refused = 0;  ///< would not open again: the bench says so and does nothing
  std::int64_t moves = 0;    ///< back and forward within the list
  std::int64_t faults = 0;
  std::uint64_t first_fault = 0;
};

/// One trace: edits and moves on a job, each text beside what the list of actions says it is.
class Trace {
 public:
  Trace(std::uint64_t seed, const std::string& start, Tally* tally)
      : dice_(seed), seed_(seed), tally_(tally), texts_{start} {
    history_.start(start, "Started");
    show(start);
  }

  void run() {
    const int steps = 1 + dice_.below(8);
    for (int i = 0; i < steps; ++i) {
      if (dice_.below(5) == 0)
        move();
      else
        edit();
    }
    end();
  }

 private:
  void expect(bool is_so) {
    if (is_so) return;
    if (tally_->faults++ == 0) tally_->first_fault = seed_;
  }

  /// The job of a text, which must save as that text again.
  void show(const std::string& text) {
    Result<job::OpenedJob> opened = job::open_job(text);
    expect(static_cast<bool>(opened));
    if (!opened) return;
    job_ = std::move(opened.value().job);
    expect(job::save_job(job_) == text);
    results_ = solve::solve(job_);
  }

  void edit() {
    const auto places = web::all_places(results_);
    if (places.empty()) return;
    const Place place =
        places[static_cast<std::size_t>(dice_.below(static_cast<int>(places.size())))];
    const Edit kind = kEdits[static_cast<std::size_t>(dice_.below(kEdits.size()))];
    const MaybeJob changed = kind({job_, results_, place}, dice_);
    if (!changed) return;
    const std::string text = job::save_job(*changed);
    if (!job::open_job(text)) {
      ++tally_->refused;
      return;
    }
    ++tally_->edits;
    texts_.resize(history_.at() + 1);
    texts_.push_back(text);
    history_.keep(text, "changed");
    show(text);
  }

  void move() {
    ++tally_->moves;
    const auto done = static_cast<std::size_t>(dice_.below(static_cast<int>(texts_.size())));
    expect(history_.go_to(done) == texts_[done]);
    show(history_.text());
  }

  /// A record brings the same list back; undone to the start and done again it gives every text.
  void end() {
    const std::string record = web::record_of(history_, {});
    web::Kept kept = web::read_record(record);
    expect(kept.is_read() && web::record_of(kept.history, {}) == record);
    for (History* history : {&history_, &kept.history}) {
      history->go_to(texts_.size());
      for (std::size_t i = texts_.size(); i-- > 0; history->undo()) {
        expect(history->text() == texts_[i]);
      }
      expect(!history->can_undo());
      for (const std::string& text : texts_) {
        expect(history->text() == text);
        history->redo();
      }
      expect(!history->can_redo());
    }
  }

  Dice dice_;
  std::uint64_t seed_;
  Tally* tally_;
  History history_;
  std::vector<std::string> texts_;
  job::Job job_;
  solve::Results results_;
};

/// Three sleeves and a panel: every question is asked of something.
std::string small_job() {
  Result<job::OpenedJob> opened = job::open_job(tests::demo_text("marsh-lights"));
  job::Job job = std::move(opened.value().job);
  job.sections.front().count = 3;
  return job::save_job(job);
}

Tally run_traces(std::uint64_t from, std::uint64_t count) {
  const std::string sleeve = job::save_job(job::first_sleeve_job());
  const std::string several = small_job();
  Tally tally;
  for (std::uint64_t seed = from; seed < from + count; ++seed) {
    Trace(seed, seed % 3 == 0 ? several : sleeve, &tally).run();
  }
  return tally;
}

void check_traces(std::uint64_t from) {
  constexpr std::uint64_t kHalf = POUNCEMARK_TRACES / 2;
  const Tally tally = run_traces(from, kHalf);
  MESSAGE(kHalf << " traces, " << tally.edits << " edits, " << tally.moves << " moves, "
                << tally.refused << " edits refused");
  CHECK_MESSAGE(tally.faults == 0, "first with seed " << tally.first_fault);
  CHECK(tally.edits > static_cast<std::int64_t>(kHalf));
  CHECK(tally.moves > static_cast<std::int64_t>(kHalf / 4));
}

}  // namespace

TEST_CASE("undo all is the start, redo all the end, and what is saved opens as it was: one half") {
  check_traces(1);
}

TEST_CASE("undo all is the start, redo all the end, and what is saved opens as it was: the other") {
  check_traces(1'000'000);
}

#include "engine/plan/trial_card.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"
#include "engine/material/thread_numbers.h"
#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"
#include "engine/solve/stack.h"

namespace pouncemark::plan {
namespace {

using solve::RowPlace;

constexpr std::size_t kMostOthers = 4;

bool is_sewn(const solve::Row& row, RowPlace place) {
  return row.kind == solve::RowKind::stitch && row.place == place && row.run.points() > 0;
}

/// The rows of one kind; the coupon is made as the thickest of them.
struct Kind {
  const solve::Row* thickest = nullptr;
  std::int64_t rows = 0;
  std::set<Um> stitches;  ///< asked for
  std::set<int> pieces;
};

Kind kind_of(const solve::Results& results, RowPlace place) {
  Kind kind;
  for (const solve::Row& row : results.rows) {
    if (!is_sewn(row, place)) continue;
    ++kind.rows;
    kind.stitches.insert(row.asked_um);
    kind.pieces.insert(row.piece);
    if (kind.thickest == nullptr || row.stack_um > kind.thickest->stack_um) kind.thickest = &row;
  }
  return kind;
}

/// The needle and its two neighbours among the sizes that are made, smallest first.
std::array<int, 3> needles(int size) {
  std::vector<int> sizes = {size};
  for (int second = 8; const auto one = material::needle_size_of_second_scale(second); ++second) {
    if (*one != size && *one % 10 == 0) sizes.push_back(*one);
  }
  std::stable_sort(sizes.begin(), sizes.end());
  const auto at = std::find(sizes.begin(), sizes.end(), size) - sizes.begin();
  const auto last = static_cast<std::ptrdiff_t>(sizes.size()) - 3;
  const auto first = static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(at - 1, 0, last));
  return {sizes[first], sizes[first + 1], sizes[first + 2]};
}

TrialLine line_of(int needle_size, Um stitch_um) {
  TrialLine line;
  line.needle = std::to_string(needle_size);
  line.stitch = short_mm_text(stitch_um, 2);
  line.left = checks::percent_text(checks::sheet_left_permille(stitch_um, needle_size));
  line.is_tear_line = checks::sheet_left(stitch_um, needle_size).has_value();
  return line;
}

/// Needle by needle, the stitch of the job, one shorter and one longer; of a stitch of 2 and less
/// half of it.
std::vector<TrialLine> nine_trials(const job::Job& job, Um stitch_um) {
  const Um step = std::min<Um>(1'000, stitch_um / 2);
  std::vector<TrialLine> lines;
  for (const int needle : needles(job.needle_size)) {
    for (const Um stitch : {stitch_um - step, stitch_um, stitch_um + step}) {
      lines.push_back(line_of(needle, stitch));
      lines.back().is_jobs = needle == job.needle_size && stitch == stitch_um;
    }
  }
  return lines;
}

std::string length_or_none(const std::optional<Um>& um) { return um ? short_mm_text(*um, 2) : ""; }

std::string answer(const std::optional<bool>& yes) {
  if (!yes) return {};
  return *yes ? "yes" : "no";
}

void fill_in(const job::Trial& trial, TrialLine* line) {
  line->ten_stitches = length_or_none(trial.ten_stitches_um);
  line->marks = length_or_none(trial.marks_um);
  line->whitens = answer(trial.whitens);
  line->cracks = answer(trial.cracks);
  line->pull = length_or_none(trial.pull_n);
  line->is_chosen = trial.is_chosen;
}

/// The line of the nine that a trial was sewn for and that none has taken yet.
TrialLine* free_line(const job::Trial& trial, std::vector<TrialLine>* lines, std::set<int>* taken) {
  const TrialLine wanted = line_of(trial.needle_size, trial.stitch_um);
  for (std::size_t i = 0; i < lines->size(); ++i) {
    TrialLine& line = (*lines)[i];
    const bool is_it = line.needle == wanted.needle && line.stitch == wanted.stitch;
    if (is_it && taken->insert(static_cast<int>(i)).second) return &line;
  }
  return nullptr;
}

void add_sewn(const job::Job& job, TrialCard* card) {
  std::vector<TrialLine> others;
  std::set<int> taken;
  for (const job::Trial& trial : job.trials) {
    if (!trial.of_all_rows && trial.of != solve::rows_of(card->place)) continue;
    const bool is_ours = trial.thread_tex == job.thread_tex;
    TrialLine* line = is_ours ? free_line(trial, &card->trials, &taken) : nullptr;
    if (line == nullptr) {
      line = &others.emplace_back(line_of(trial.needle_size, trial.stitch_um));
      if (!is_ours) line->under = "tex " + std::to_string(trial.thread_tex);
    }
    fill_in(trial, line);
  }
  std::stable_partition(others.begin(), others.end(),
                        [](const TrialLine& line) { return line.is_chosen; });
  if (others.size() > kMostOthers) {
    card->trials_left_out = static_cast<std::int64_t>(others.size() - kMostOthers);
    others.resize(kMostOthers);
  }
  card->trials.insert(card->trials.end(), others.begin(), others.end());
}

std::string stack_words(const solve::Stack& stack) {
  if (!stack.is_known) return "Stack not known: measure " + stack.missing;
  const std::string total = short_mm_text(stack.thickest_um(), 2);
  if (stack.is_typed) return "Stack as typed " + total;
  std::string words;
  for (const solve::Ply& ply : stack.at(stack.thickest).plies) {
    words +=
        (words.empty() ? "Stack: " : ", ") + ply.name + " " + short_mm_text(ply.thickness_um, 3);
    if (ply.is_assumed) words += " assumed";
  }
  return words + ": " + total + " in all";
}

/// The tightest bay that holds a piece with such rows.
std::string bend_words(const solve::Results& results, const Kind& kind) {
  const solve::BayResult* tightest = nullptr;
  for (const solve::BayResult& bay : results.bays) {
    if (bay.is_flat() || kind.pieces.count(bay.piece) == 0) continue;
    if (tightest == nullptr || bay.radius_um < tightest->radius_um) tightest = &bay;
  }
  if (tightest == nullptr) return "Bend it 5 times as tight as it will hang: no bay is curved.";
  return "Bend it 5 times round a radius of " + paper_text(tightest->radius_um) + ", as in bay " +
         tightest->code + ": no crack, no white.";
}

std::string coupon_words(const job::Job& job) {
  const bool film_stays =
      job::value_of(job.materials, material::Field::film_left_on).thousandths == 1;
  return std::string(
             "A coupon 300 × 50 for each line, of the real stack: same batch, same roll "
             "direction, film as in the work: ") +
         (film_stays ? "left on." : "a strip of 40 peeled, both faces.") +
         " The marks 500 apart want one strip 600 long.";
}

std::string taken_from(const Kind& kind, RowPlace place) {
  std::string words = "Stands for " + count_text(kind.rows) + " " + kind_words(place) +
                      ", the thickest stack at " + kind.thickest->code + ".";
  if (kind.rows == 1) words = "Stands for the row " + kind.thickest->code + ".";
  std::string others;
  for (const Um stitch : kind.stitches) {
    if (stitch == kind.thickest->asked_um) continue;
    others += (others.empty() ? "" : ", ") + short_mm_text(stitch, 2);
  }
  return others.empty() ? words : words + " Also asked for: stitch " + others + ".";
}

std::string thread_words(const job::Job& job) {
  const auto guess = material::needle_guess(solve::real_tex_thousandths(job));
  return "Thread tex " + std::to_string(job.thread_tex) +
         ", both. First guess of the needle: " + std::to_string(guess.least) + " to " +
         std::to_string(guess.most) + ".";
}

}  // namespace

std::vector<RowPlace> trial_card_kinds(const solve::Results& results) {
  std::vector<RowPlace> kinds;
  for (const RowPlace place : {RowPlace::side, RowPlace::lap, RowPlace::panel}) {
    if (kind_of(results, place).rows > 0) kinds.push_back(place);
  }
  return kinds;
}

TrialCard trial_card(const job::Job& job, const solve::Results& results, RowPlace place) {
  const Kind kind = kind_of(results, place);
  TrialCard card;
  card.place = place;
  card.job_name = job.name;
  card.stack = stack_words(solve::stack_of(job, results, *kind.thickest));
  card.lines = {coupon_words(job), taken_from(kind, place) + " " + thread_words(job)};
  card.trials = nine_trials(job, kind.thickest->asked_um);
  add_sewn(job, &card);
  card.bend = bend_words(results, kind);
  const job::Trial* chosen = job::chosen_trial(job.trials, solve::rows_of(place));
  if (chosen != nullptr) card.signed_by = chosen->signed_by;
  return card;
}

}  // namespace pouncemark::plan

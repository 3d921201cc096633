#include "web/model/sew_trials.h"

#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/entry.h"
#include "web/model/sew_edits.h"
#include "web/model/sew_materials.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Limits kStitch{500, 50'000};
constexpr Limits kTen{10, 10'000'000};
constexpr Limits kMarks{100'000, 600'000};
constexpr std::int64_t kMostPull = 100'000'000;
constexpr std::size_t kMostTrials = 100;
constexpr std::size_t kMostSigns = 200;
constexpr Um kMarksApartUm = 500'000;

std::string number_of(std::size_t index) { return "Trial " + std::to_string(index + 1); }

/// A measure that may be left empty.
std::string may_length(std::string_view typed, Limits limits, std::optional<Um>* um) {
  if (typed.find_first_not_of(' ') == std::string_view::npos) {
    um->reset();
    return {};
  }
  const Entry entry = read_entry(typed, limits);
  if (entry.um) *um = *entry.um;
  return entry.sentence;
}

std::string set_pull(job::Trial& trial, std::string_view typed) {
  std::int64_t newtons = 0;
  if (typed.find_first_not_of(' ') == std::string_view::npos) {
    trial.pull_n.reset();
    return {};
  }
  if (!read_thousandths(typed, &newtons) || newtons > kMostPull) {
    return "\"" + shortened(typed, 40) + "\": give newtons, 0 to 100000. 1 kg on a scale is 9.81.";
  }
  trial.pull_n = newtons;
  return {};
}

std::string set_count(int* count, const SewNumber& read) {
  if (read.sentence.empty()) *count = read.number;
  return read.sentence;
}

/// Sets what was typed; gives why not.
std::string set_box(job::Trial& trial, TrialBox box, std::string_view typed) {
  switch (box) {
    case TrialBox::needle_size:
      return set_count(&trial.needle_size, read_needle_size(typed));
    case TrialBox::thread_tex:
      return set_count(&trial.thread_tex, read_thread_tex(typed));
    case TrialBox::stitch: {
      const Entry entry = read_entry(typed, kStitch);
      if (entry.um) trial.stitch_um = *entry.um;
      return entry.sentence;
    }
    case TrialBox::ten_stitches:
      return may_length(typed, kTen, &trial.ten_stitches_um);
    case TrialBox::marks:
      return may_length(typed, kMarks, &trial.marks_um);
    case TrialBox::pull:
      return set_pull(trial, typed);
    case TrialBox::signed_by:
      if (typed.size() > kMostSigns) return "Too long: 200 signs or fewer.";
      trial.signed_by = std::string(typed);
      return {};
  }
  return {};
}

bool stand_for_the_same(const job::Trial& one, const job::Trial& other) {
  return one.of_all_rows || other.of_all_rows || one.of == other.of;
}

/// Of those chosen for the same rows only `index` stays so.
void leave_one_chosen(job::Job& job, std::size_t index) {
  for (std::size_t i = 0; i < job.trials.size(); ++i) {
    if (i != index && stand_for_the_same(job.trials[i], job.trials[index])) {
      job.trials[i].is_chosen = false;
    }
  }
}

std::string shown(const std::string& words) { return words.empty() ? "empty" : words; }

}  // namespace

std::string trial_box_words(TrialBox box) {
  constexpr std::array<const char*, 7> kWords = {
      "needle size",     "thread tex",         "stitch, as set", "ten stitches",
      "marks 500 apart", "pull on 50 wide, N", "signed by, date"};
  return kWords[static_cast<std::size_t>(box)];
}

std::string trial_box_text(const job::Trial& trial, TrialBox box) {
  const auto length = [](const std::optional<Um>& um) {
    return um ? exact_mm_text(*um) : std::string();
  };
  switch (box) {
    case TrialBox::needle_size:
      return std::to_string(trial.needle_size);
    case TrialBox::thread_tex:
      return std::to_string(trial.thread_tex);
    case TrialBox::stitch:
      return exact_mm_text(trial.stitch_um);
    case TrialBox::ten_stitches:
      return length(trial.ten_stitches_um);
    case TrialBox::marks:
      return length(trial.marks_um);
    case TrialBox::pull:
      return length(trial.pull_n);
    case TrialBox::signed_by:
      return trial.signed_by;
  }
  return {};
}

std::string rows_words(job::RowsOf of) {
  constexpr std::array<const char*, 3> kWords = {"side rows", "joining rows", "rows of panels"};
  return kWords[static_cast<std::size_t>(of)];
}

std::string trial_rows_words(const job::Trial& trial) {
  return trial.of_all_rows ? "all rows" : rows_words(trial.of);
}

std::string trial_name(const job::Job& job, std::size_t index) {
  const job::Trial& trial = job.trials[index];
  return "trial " + std::to_string(index + 1) + ": needle size " +
         std::to_string(trial.needle_size) + ", tex " + std::to_string(trial.thread_tex) +
         ", stitch " + exact_mm_text(trial.stitch_um);
}

Made with_trial(const job::Job& job, job::RowsOf of, Um stitch_um) {
  Made made;
  if (job.trials.size() >= kMostTrials) {
    made.refused = "There are 100 trials already: take one away first.";
    return made;
  }
  made.job = job;
  job::Trial trial;
  trial.of = of;
  trial.needle_size = job.needle_size;
  trial.thread_tex = job.thread_tex;
  trial.stitch_um = stitch_um;
  made.job.trials.push_back(std::move(trial));
  made.action = "Added " + trial_name(made.job, job.trials.size()) + ", for " + rows_words(of);
  return made;
}

Made without_trial(const job::Job& job, std::size_t index) {
  Made made;
  made.job = job;
  made.action = "Took away " + trial_name(job, index);
  made.job.trials.erase(made.job.trials.begin() + static_cast<std::ptrdiff_t>(index));
  return made;
}

Made with_trial_box(const job::Job& job, std::size_t index, TrialBox box, std::string_view typed) {
  Made made;
  made.job = job;
  job::Trial& trial = made.job.trials[index];
  const std::string was = trial_box_text(trial, box);
  made.refused = set_box(trial, box, typed);
  made.action = number_of(index) + ", " + trial_box_words(box) + ": " + shortened(shown(was), 40) +
                " " + kArrow + " " + shortened(shown(trial_box_text(trial, box)), 40);
  return made;
}

Made with_trial_answer(const job::Job& job, std::size_t index, TrialAsk ask, bool yes) {
  Made made;
  made.job = job;
  job::Trial& trial = made.job.trials[index];
  std::optional<bool>& answer = ask == TrialAsk::whitens ? trial.whitens : trial.cracks;
  const std::string what = ask == TrialAsk::whitens ? ", whitens: " : ", cracks: ";
  const bool is_again = answer && *answer == yes;
  if (is_again)
    answer.reset();
  else
    answer = yes;
  made.action = number_of(index) + what + (is_again ? "not said" : yes ? "yes" : "no");
  return made;
}

Made with_trial_chosen(const job::Job& job, std::size_t index, bool is_chosen) {
  Made made;
  made.job = job;
  made.job.trials[index].is_chosen = is_chosen;
  if (is_chosen) leave_one_chosen(made.job, index);
  made.action = (is_chosen ? "Chose " : "No longer chosen: ") + trial_name(job, index) + ", for " +
                trial_rows_words(job.trials[index]);
  return made;
}

Made with_trial_rows(const job::Job& job, std::size_t index, std::optional<job::RowsOf> of) {
  Made made;
  made.job = job;
  job::Trial& trial = made.job.trials[index];
  trial.of_all_rows = !of;
  if (of) trial.of = *of;
  if (trial.is_chosen) leave_one_chosen(made.job, index);
  made.action = number_of(index) + " stands for " + trial_rows_words(trial);
  return made;
}

solve::Sum take_up_sum(const job::Trial& trial, Um row_um) {
  solve::Sum sum;
  const auto ppm = job::take_up_ppm(trial);
  if (!ppm) return sum;
  const Um shorter = divide_round(*ppm * row_um, 1'000'000);
  // A part of a million is a ten-thousandth of a per cent.
  const std::string percent = mm_text(divide_round(*ppm, 10), 2) + " %";
  sum.figure = mm_text(shorter, 1);
  sum.rule = "what the marks came nearer by, as a part of their distance, times the row";
  sum.numbers = {"500 " + std::string(kMinus) + " " + exact_mm_text(*trial.marks_um) + " = " +
                     exact_mm_text(kMarksApartUm - *trial.marks_um) + " on 500: " + percent,
                 percent + " of " + exact_mm_text(row_um) + ": " + sum.figure};
  sum.source = "measured here, on the trial seam";
  return sum;
}

solve::Sum real_stitch_sum(const job::Trial& trial) {
  solve::Sum sum;
  if (!trial.ten_stitches_um) return sum;
  sum.figure = mm_text(divide_round(*trial.ten_stitches_um, 10), 2);
  sum.rule = "ten stitches, measured, one tenth of them";
  sum.numbers = {exact_mm_text(*trial.ten_stitches_um) + " " + kDivide + " 10 = " + sum.figure};
  sum.source = "measured here, on the trial seam";
  return sum;
}

}  // namespace pouncemark::web

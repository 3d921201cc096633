#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"
#include "engine/material/thread_numbers.h"

namespace pouncemark::checks {
namespace {

// source: pairs in use of tex 40 and tex 135, whose blades are 2.7 to 3.6 threads across.
constexpr std::int64_t kLeastThreads = 2'600;
constexpr std::int64_t kMostThreads = 3'700;

Um across_um(const ThreadInNeedle& one) {
  return material::thread_diameter_um(one.tex_thousandths, one.density_thousandths, kEyePacking);
}

std::string how(const ThreadInNeedle& one) {
  return "thread 0.035682 × √(" + exact_mm_text(one.tex_thousandths) + " ÷ (" +
         exact_mm_text(one.density_thousandths) + " × 0.6)) = " + mm_text(across_um(one), 3) +
         "; blade " + mm_text(Um{one.needle_size} * 10, 2);
}

std::string what_to_try(const ThreadInNeedle& one) {
  const material::NeedleGuess guess = material::needle_guess(one.tex_thousandths);
  return "Try a needle of " + std::to_string(guess.least) + " to " + std::to_string(guess.most) +
         " and let the trial seam decide.";
}

Finding odd_pair(const ThreadInNeedle& one, std::int64_t threads) {
  Finding finding;
  finding.code = "needle_and_thread";
  finding.severity = Severity::note;
  finding.figure = mm_text(threads, 1);
  finding.sentence = finding.figure + " threads across: the blade is " +
                     (threads < kLeastThreads ? "narrow for this thread, which may fray."
                                              : "wide for this thread, which may miss stitches.");
  finding.brief = finding.figure + " threads, usual 2.6 to 3.7";
  finding.change = what_to_try(one);
  finding.sum = how(one) + "; pairs in use have 2.6 to 3.7 (common practice)";
  return finding;
}

}  // namespace

std::int64_t eye_fill_permille(const ThreadInNeedle& one) {
  return divide_round(across_um(one) * 1000, Um{one.needle_size} * 10);
}

bool is_odd_pair(const ThreadInNeedle& one) {
  const std::int64_t blade = Um{one.needle_size} * 10 * 1000;
  return blade < kLeastThreads * across_um(one) || blade > kMostThreads * across_um(one);
}

std::optional<Finding> thread_in_eye(const ThreadInNeedle& one) {
  const Um across = across_um(one);
  const Um blade = Um{one.needle_size} * 10;
  if (across * 1000 <= kMostEyePermille * blade) {
    if (!is_odd_pair(one)) return std::nullopt;
    return odd_pair(one, divide_round(blade * 1000, across));
  }
  Finding finding;
  finding.code = "thread_fills_eye";
  finding.severity = Severity::warn;
  // Never shown as the limit itself.
  finding.figure = percent_text(std::max(eye_fill_permille(one), kMostEyePermille + 1));
  finding.sentence =
      finding.figure + " of the blade: the thread fills the eye. It will fray and jam.";
  finding.brief = mm_text(across, 2) + " in a blade of " + mm_text(blade, 2);
  finding.change = what_to_try(one);
  finding.sum = how(one) + "; " + mm_text(across, 3) + " ÷ " + mm_text(blade, 2) + " = " +
                finding.figure +
                ", at most 40 % (common practice; yarn textbooks: fibre fills 0.6)";
  return finding;
}

}  // namespace pouncemark::checks

#include <cmath>
#include <string>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/frame/loads.h"
#include "engine/solve/bay_fixings.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

/// One fixing with all that its sums are made of.
struct Asked {
  const BayResult& result;
  const BayFixings& row;
  const BayFixing& fixing;
  int index = 0;
  bool is_across = false;
  bool timber_is_said = false;
  SlotNumbers numbers;
};

std::string value_text(const material::Value& value) {
  return told(exact_mm_text(value.thousandths), value.is_assumed());
}

/// "(68 − 5 assumed)": growth of sheet past timber, millionths a degree.
std::string growth_text(const SlotNumbers& numbers) {
  return "(" + value_text(numbers.sheet) + " − " + value_text(numbers.timber) + ")";
}

void add_source(const SlotNumbers& numbers, Sum* sum) {
  sum->source = numbers.sheet.source +
                "; timber: " + (numbers.timber.source.empty() ? "entered" : numbers.timber.source);
  sum->rests_on_assumed = numbers.timber.is_assumed() || numbers.warmer.is_assumed();
}

Sum tight_sum() {
  Sum sum;
  sum.rule = "the tight fixing: a round hole, the rest moves past its own screws";
  sum.figure = "0.00";
  sum.numbers = {"0 from itself: 0.00"};
  sum.source = kEnteredSource;
  return sum;
}

Sum move_sum(const Asked& asked) {
  const SlotNumbers& numbers = asked.numbers;
  Sum sum;
  sum.rule =
      "growth of sheet less timber, times how much warmer, times the way from the tight "
      "fixing";
  sum.figure = mm_text(asked.fixing.move_um, 2);
  const bool is_less = numbers.sheet.thousandths < numbers.timber.thousandths;
  const std::string growth =
      is_less ? "(" + value_text(numbers.timber) + " − " + value_text(numbers.sheet) + ")"
              : growth_text(numbers);
  sum.numbers = {growth + " × " + value_text(numbers.warmer) + " × " +
                 exact_mm_text(asked.fixing.from_tight_um) + " ÷ 1000000 = " + sum.figure};
  add_source(numbers, &sum);
  return sum;
}

Sum slot_sum(const Asked& asked) {
  const SlotNumbers& numbers = asked.numbers;
  const BayFixing& fixing = asked.fixing;
  Sum sum = move_sum(asked);
  sum.rule = "screw, twice the movement, twice how far a hole may be off, up to the next half";
  sum.figure = mm_text(fixing.slot_shown_um, 1);
  std::string damp;
  if (asked.is_across) {
    sum.numbers.push_back("damp: " + exact_mm_text(fixing.from_tight_um) + " × " +
                          value_text(numbers.across) + " × " + value_text(numbers.damp) +
                          " ÷ 100 = " + mm_text(fixing.damp_um, 3));
    damp = " + 2 × " + mm_text(fixing.damp_um, 3);
  } else {
    sum.numbers.push_back(asked.timber_is_said
                              ? "damp: none, the timber lies along its grain"
                              : "damp: none, the timber assumed to lie along its grain");
  }
  sum.numbers.push_back(value_text(numbers.screw) + " + 2 × " + mm_text(fixing.move_um, 3) + damp +
                        " + 2 × " + value_text(numbers.tolerance) + " = " +
                        mm_text(fixing.slot_um, 3));
  sum.numbers.push_back("up to the next half: " + sum.figure);
  sum.rests_on_assumed = sum.rests_on_assumed || numbers.screw.is_assumed() ||
                         numbers.tolerance.is_assumed() || !asked.timber_is_said;
  return sum;
}

Sum today_sum(const Asked& asked) {
  const SlotNumbers& numbers = asked.numbers;
  Sum sum;
  sum.rule = "where today's screw stands in its slot: from the middle, outward where above 0";
  sum.figure = shown_mm(asked.fixing.screw_today_um, 2);
  add_source(numbers, &sum);
  if (!numbers.today.is_known) {
    sum.numbers = {"the temperature of the hanging day is not entered: the middle, 0.00"};
    return sum;
  }
  const auto degrees = [](const material::Value& value) {
    const std::string text = shown_mm(value.thousandths, 3);
    return told(value.thousandths < 0 ? "(" + text + ")" : text, value.is_assumed());
  };
  sum.numbers = {growth_text(numbers) + " × (" + degrees(numbers.planned) + " − " +
                 degrees(numbers.today) + ") × " + exact_mm_text(asked.fixing.from_tight_um) +
                 " ÷ 1000000 = " + sum.figure};
  sum.rests_on_assumed = numbers.timber.is_assumed() || numbers.planned.is_assumed();
  return sum;
}

Sum load_sum(const Asked& asked) {
  const BayLoads& loads = *asked.result.loads;
  const auto at = static_cast<std::size_t>(asked.index);
  const auto count = static_cast<int>(loads.fixings_mn.size());
  Sum sum;
  sum.rule = "its part of the weight, the edge being stiff and the fixings evenly apart";
  sum.figure = mm_text(loads.fixings_mn[at], 1);
  const double share = frame::share_of_fixings(count)[at];
  const std::string digits = std::to_string(std::llround(share * 1e6));
  const std::string part = share >= 1 ? "1" : "0." + std::string(6 - digits.size(), '0') + digits;
  sum.numbers = {counted(count, "fixing", "fixings") + " along the top",
                 mm_text(loads.weight_mn, 3) + " × " + part + " = " + sum.figure};
  sum.source = "continuous beam on equal spaces (Clapeyron), not equal parts";
  return sum;
}

}  // namespace

Sum fixing_sum(const job::Job& job, const Results& results, const FixingPlace& place,
               FixingFigure figure) {
  const auto bay = static_cast<std::size_t>(place.bay);
  const BayResult& result = results.bays[bay];
  const BayFixings& row = result.fixings[static_cast<std::size_t>(place.row)];
  const job::FixingRow& entered = job.bays[bay].fixings[static_cast<std::size_t>(row.entry)];
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  const Asked asked{result,
                    row,
                    row.fixings[static_cast<std::size_t>(place.fixing)],
                    place.fixing,
                    entered.timber == job::TimberLies::across_grain,
                    entered.timber_is_said,
                    slot_numbers(job, piece)};
  if (figure == FixingFigure::load) return load_sum(asked);
  if (asked.fixing.is_tight || row.tight_row < 0) return tight_sum();
  if (figure == FixingFigure::move) return move_sum(asked);
  return figure == FixingFigure::slot ? slot_sum(asked) : today_sum(asked);
}

}  // namespace pouncemark::solve

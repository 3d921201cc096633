#include "web/model/sew_figures.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"
#include "engine/material/hole_stress.h"
#include "engine/material/thread_numbers.h"
#include "engine/solve/sewing.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using material::Field;

/// "100 × 4.6 ÷ 6 = 76.7", and the same in whole hundredths.
void add_share(solve::Sum* sum, Um part, const std::string& part_text, Um whole,
               const std::string& whole_text) {
  const std::int64_t tenths = divide_round(1000 * part, std::max<Um>(whole, 1));
  sum->numbers.push_back("100 × " + part_text + " ÷ " + whole_text + " = " +
                         mm_text(tenths * 100, 1));
  sum->numbers.push_back("rounded to " + sum->figure);
}

std::string in_hundredths(std::int64_t permille) {
  return std::to_string(divide_round(permille, 10));
}

checks::ThreadInNeedle thread_in_needle(const job::Job& job) {
  return {job.needle_size, solve::real_tex_thousandths(job),
          job::value_of(job.materials, Field::thread_density).thousandths};
}

std::string told(const material::Value& value) {
  return exact_mm_text(value.thousandths) + (value.is_assumed() ? " assumed" : "");
}

}  // namespace

SewFigures sew_figures(const Solved& now, const solve::Row& row) {
  const job::Job& job = now.job;
  const auto value = [&](Field field) { return job::value_of(job.materials, field).thousandths; };
  const checks::ThreadInNeedle pair = thread_in_needle(job);
  SewFigures is;
  is.blade_um = Um{job.needle_size} * 10;
  is.thread_um = material::thread_diameter_um(pair.tex_thousandths, pair.density_thousandths,
                                              value(Field::thread_packing));
  is.stitch_um = row.stitch_um;
  is.left_share = in_hundredths(checks::sheet_left_permille(is.stitch_um, job.needle_size));
  is.least_left = checks::percent_text(checks::kLeastSheetPermille);
  is.eye_share = in_hundredths(checks::eye_fill_permille(pair));
  is.most_eye = checks::percent_text(checks::kMostEyePermille);
  is.is_tear_line = checks::sheet_left(is.stitch_um, job.needle_size).has_value();
  const auto eye = checks::thread_in_eye(pair);
  is.is_eye_full = eye && eye->severity == checks::Severity::warn;
  return is;
}

solve::Sum sheet_left_sum(const Solved& now, const solve::Row& row) {
  const SewFigures is = sew_figures(now, row);
  const Um left = std::max<Um>(0, is.stitch_um - is.blade_um);
  const std::string stitch = exact_mm_text(is.stitch_um);
  solve::Sum sum;
  sum.figure = is.left_share;
  sum.rule = "sheet between two holes, as a part of the stitch; a tear line under " + is.least_left;
  sum.numbers.push_back(stitch + " " + kMinus + " " + mm_text(is.blade_um, 2) + " = " +
                        exact_mm_text(left));
  add_share(&sum, left, exact_mm_text(left), is.stitch_um, stitch);
  sum.source =
      "a needle size is its blade in hundredths of a millimetre; a hole in sheet stays as "
      "wide (assumed)";
  if (row.stitch_um != row.asked_um) sum.source += "; stitch measured here, on the trial seam";
  sum.rests_on_assumed = true;
  return sum;
}

solve::Sum eye_sum(const Solved& now, const solve::Row& row) {
  const SewFigures is = sew_figures(now, row);
  const checks::ThreadInNeedle pair = thread_in_needle(now.job);
  const auto density = job::value_of(now.job.materials, Field::thread_density);
  const auto weighed = job::value_of(now.job.materials, Field::thread_weighed_tex);
  const Um across = material::thread_diameter_um(pair.tex_thousandths, pair.density_thousandths,
                                                 checks::kEyePacking);
  solve::Sum sum;
  sum.figure = is.eye_share;
  sum.rule = "thread across, as a part of the needle's blade; the eye is full over " + is.most_eye;
  sum.numbers.push_back("0.035682 × √(" + exact_mm_text(pair.tex_thousandths) + " ÷ (" +
                        told(density) + " × 0.6)) = " + exact_mm_text(across));
  add_share(&sum, across, exact_mm_text(across), is.blade_um, mm_text(is.blade_um, 2));
  sum.source = "common practice; yarn textbooks: fibre fills 0.6 of a round thread; " +
               std::string(weighed.is_known ? "tex weighed here; " : "tex as entered; ") +
               density.source;
  sum.rests_on_assumed = density.is_assumed();
  return sum;
}

solve::Sum stress_sum(const solve::Row& row, int needle_size, bool across) {
  const double hole = from_um(Um{needle_size} * 10);
  const double apart = from_um(row.stitch_um);
  const auto stress = material::row_stress(hole, apart);
  solve::Sum sum;
  sum.rule = std::string("the greatest stress at a hole, pulled ") + (across ? "across" : "along") +
             " the row, by that of sheet without holes";
  sum.source =
      "exact values of one long row of round holes: to compare rows by, no structural "
      "check";
  const std::string share = mm_text(Um{needle_size} * 10, 2) + " ÷ " +
                            exact_mm_text(row.stitch_um) + " = " + mm_text(to_um(hole / apart), 3);
  if (!stress) {
    sum.figure = "not known";
    sum.numbers = {share, "the table ends where the hole is 4 fifths of the stitch"};
    return sum;
  }
  sum.figure = mm_text(to_um(across ? stress->across : stress->along), 2);
  sum.numbers = {share, "there the table says " + sum.figure};
  return sum;
}

solve::Sum strength_sum(const Solved& now, const solve::Row& row) {
  const auto thread = job::value_of(now.job.materials, Field::thread_strength);
  solve::Sum sum;
  sum.rule = "stitch type 301, the same thread above and below: 1.5 × its strength, a stitch";
  sum.source = "common practice: an estimate, the pull on the trial seam decides";
  if (!thread.is_known) {
    sum.figure = "not known";
    sum.numbers = {"the strength of the thread is not known: enter it under Materials"};
    return sum;
  }
  const double newtons = static_cast<double>(thread.thousandths) / 1000;
  sum.figure = mm_text(to_um(material::seam_strength_n_mm(newtons, from_um(row.stitch_um))), 1);
  sum.numbers = {"1.5 × " + told(thread) + " ÷ " + exact_mm_text(row.stitch_um) + " = " +
                 sum.figure};
  sum.rests_on_assumed = thread.is_assumed();
  return sum;
}

}  // namespace pouncemark::web

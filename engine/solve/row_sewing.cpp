#include "engine/solve/row_sewing.h"

#include <cmath>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"
#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Value;

constexpr const char* kHoleSource = "a hole is as wide as the blade: assumed, sheet does not close";

Um blade_um(const job::Job& job) { return Um{job.needle_size} * 10; }

checks::ThreadInNeedle eye_of(const job::Job& job) {
  return {job.needle_size, real_tex_thousandths(job),
          job::value_of(job.materials, Field::thread_density).thousandths};
}

Um across_um(const job::Job& job, std::int64_t packing) {
  const checks::ThreadInNeedle eye = eye_of(job);
  return material::thread_diameter_um(eye.tex_thousandths, eye.density_thousandths, packing);
}

/// The sheet that a stitch bears on: one leaf, or the backing.
struct SheetAt {
  Um thickness_um = 0;
  Value shear;
  const char* name = "";
};
SheetAt sheet_at(const job::Job& job, const Results& results, const Row& row) {
  const auto entry =
      static_cast<std::size_t>(results.pieces[static_cast<std::size_t>(row.piece)].entry);
  if (row.place == RowPlace::panel) {
    return {job.panels[entry].backing_thickness_um,
            job::value_of(job.materials, Field::backing_shear), "the backing"};
  }
  return {job.sections[entry].leaf_um, job::value_of(job.materials, Field::leaf_shear), "one leaf"};
}

std::int64_t thousandths(double value) { return std::llround(value * 1000.0); }
double whole(std::int64_t thousandths) { return static_cast<double>(thousandths) / 1000.0; }

std::int64_t shear_out_mn(const job::Job& job, const SheetAt& sheet, const Row& row) {
  return thousandths(material::shear_out_n(from_um(sheet.thickness_um), from_um(blade_um(job)),
                                           from_um(row.in_from_edge_um),
                                           whole(sheet.shear.thousandths)));
}

std::int64_t seam_mn(const Value& strength, const Row& row) {
  return thousandths(
      material::seam_strength_n_mm(whole(strength.thousandths), from_um(row.stitch_um)));
}

/// The chosen trial of the row where it was sewn just so, else nullptr.
const job::Trial* same_trial(const job::Job& job, const Row& row) {
  const job::Trial* trial = job::chosen_trial(job.trials, rows_of(row.place));
  const bool is_same = trial != nullptr && trial->needle_size == job.needle_size &&
                       trial->thread_tex == job.thread_tex && trial->stitch_um == row.asked_um;
  return is_same ? trial : nullptr;
}

/// What the trial sewn just so did to the sheet; empty where it did nothing, or there is none.
const char* marred_words(const job::Trial* trial) {
  if (trial == nullptr) return "";
  if (trial->cracks.value_or(false)) return "the chosen trial seam cracked the sheet";
  return trial->whitens.value_or(false) ? "the chosen trial seam whitened the sheet" : "";
}

void judge(const job::Job& job, const Row& row, RowSewing* sewing) {
  const auto eye = checks::thread_in_eye(eye_of(job));
  const job::Trial* trial = same_trial(job, row);
  const std::string marred = marred_words(trial);
  if (eye && eye->severity == checks::Severity::warn) {
    sewing->verdict = Verdict::do_not;
    sewing->why = "the thread fills the eye";
  } else if (checks::sheet_left(row.stitch_um, job.needle_size)) {
    sewing->verdict = Verdict::do_not;
    sewing->why = "the holes make a tear line";
  } else if (!marred.empty()) {
    sewing->verdict = Verdict::do_not;
    sewing->why = marred;
  } else if (trial != nullptr && !trial->signed_by.empty()) {
    sewing->verdict = Verdict::fits;
    sewing->why = "as on the signed trial seam";
  } else {
    sewing->why = eye ? "an odd pair: sew a trial seam" : "then sew a trial seam";
  }
}

/// A value and the word that no one entered it; notes it in the sum.
std::string told_value(const Value& value, Sum* sum) {
  sum->rests_on_assumed = sum->rests_on_assumed || value.is_assumed();
  return told(exact_mm_text(value.thousandths), value.is_assumed());
}

std::string source_or(const Value& value, const char* otherwise) {
  return value.source.empty() ? otherwise : value.source;
}

/// "0.035682 × √(135 ÷ (1.38 assumed × 0.6)) = 0.456".
std::string across_line(const job::Job& job, const std::string& packing, Um across, Sum* sum) {
  const Value density = job::value_of(job.materials, Field::thread_density);
  return "0.035682 × √(" + plain_mm(real_tex_thousandths(job)) + " ÷ (" + told_value(density, sum) +
         " × " + packing + ")) = " + mm_text(across, 3);
}

}  // namespace

const char* verdict_word(Verdict verdict) {
  switch (verdict) {
    case Verdict::fits:
      return "fits";
    case Verdict::try_it:
      return "try";
    case Verdict::do_not:
      return "don't";
  }
  return "";
}

RowSewing row_sewing_of(const job::Job& job, const Results& results, const Row& row) {
  RowSewing sewing;
  sewing.stitch_um = row.stitch_um;
  sewing.blade_um = blade_um(job);
  sewing.thread_um =
      across_um(job, job::value_of(job.materials, Field::thread_packing).thousandths);
  sewing.eye_permille = checks::eye_fill_permille(eye_of(job));
  sewing.sheet_left_permille = checks::sheet_left_permille(row.stitch_um, job.needle_size);
  sewing.guess = material::needle_guess(real_tex_thousandths(job));
  judge(job, row, &sewing);
  sewing.stress = material::row_stress(from_um(sewing.blade_um), from_um(row.stitch_um));
  const SheetAt sheet = sheet_at(job, results, row);
  if (sheet.shear.is_known) sewing.shear_out_mn = shear_out_mn(job, sheet, row);
  const Value strength = job::value_of(job.materials, Field::thread_strength);
  if (strength.is_known) sewing.seam_mn_each_mm = seam_mn(strength, row);
  return sewing;
}

Sum thread_across_sum(const job::Job& job) {
  const Value packing = job::value_of(job.materials, Field::thread_packing);
  const Um across = across_um(job, packing.thousandths);
  Sum sum;
  sum.rule = "a round thread of this tex, so much of it fibre";
  sum.source = "yarn textbooks (Peirce); packing " + source_or(packing, kEnteredSource);
  sum.figure = mm_text(across, 2);
  sum.numbers.push_back(across_line(job, told_value(packing, &sum), across, &sum));
  sum.numbers.push_back("to two places " + sum.figure);
  return sum;
}

Sum eye_sum(const job::Job& job) {
  const Um across = across_um(job, checks::kEyePacking);
  Sum sum;
  sum.rule = "the thread by the blade; over 40 % it fills the eye";
  sum.source = "common practice; fibre fills 0.6 of the thread: yarn textbooks";
  sum.figure = checks::percent_text(checks::eye_fill_permille(eye_of(job)));
  sum.numbers.push_back(across_line(job, "0.6", across, &sum));
  sum.numbers.push_back("100 × " + mm_text(across, 3) + " ÷ " + plain_mm(blade_um(job)) + " = " +
                        sum.figure);
  return sum;
}

Sum needle_guess_sum(const job::Job& job) {
  const material::NeedleGuess guess = material::needle_guess(real_tex_thousandths(job));
  Sum sum;
  sum.rule = "twelve roots of tex, and the tens around it: to begin a trial seam with";
  sum.source = "common practice; the trial seam decides";
  sum.figure = std::to_string(guess.least) + " to " + std::to_string(guess.most);
  sum.numbers.push_back("12 × √(" + plain_mm(real_tex_thousandths(job)) +
                        ") = " + mm_text(Um{guess.tenths} * 100, 1));
  sum.numbers.push_back("try " + sum.figure);
  return sum;
}

Sum sheet_left_sum(const job::Job& job, const Row& row) {
  Sum sum;
  sum.rule = "what a hole leaves of the stitch; under 65 % is a tear line (common practice)";
  sum.source = kHoleSource;
  sum.rests_on_assumed = true;
  sum.figure = checks::percent_text(checks::sheet_left_permille(row.stitch_um, job.needle_size));
  const std::string stitch = plain_mm(row.stitch_um);
  sum.numbers.push_back(blade_um(job) >= row.stitch_um
                            ? "the holes meet: " + sum.figure
                            : "100 × (" + stitch + " − " + plain_mm(blade_um(job)) +
                                  " assumed) ÷ " + stitch + " = " + sum.figure);
  return sum;
}

Sum stress_sum(const job::Job& job, const Row& row, bool across) {
  const double blade = from_um(blade_um(job));
  const auto stress = material::row_stress(blade, from_um(row.stitch_um));
  INSIST(stress.has_value());
  const double by_pitch = blade / from_um(row.stitch_um);
  Sum sum;
  sum.rule = across ? "greatest stress at a hole when the sheet is pulled across the row, by that "
                      "in the sheet; one hole alone has 3"
                    : "greatest stress at a hole when the sheet is pulled along the row, by that "
                      "in the sheet; one hole alone has 3";
  sum.source =
      "one row of round holes, exact solutions tabled by hole ÷ stitch and read between; " +
      std::string(kHoleSource);
  sum.rests_on_assumed = true;
  sum.figure = mm_text(to_um(across ? stress->across : stress->along), 2);
  sum.numbers.push_back("hole " + plain_mm(blade_um(job)) + " assumed ÷ stitch " +
                        plain_mm(row.stitch_um) + " = " + mm_text(to_um(by_pitch), 3));
  sum.numbers.push_back("the table read there: " + sum.figure);
  return sum;
}

Sum shear_out_sum(const job::Job& job, const Results& results, const Row& row) {
  const SheetAt sheet = sheet_at(job, results, row);
  INSIST(sheet.shear.is_known);
  Sum sum;
  sum.rule = std::string("two cuts from the hole to the edge of ") + sheet.name +
             ", by its shear strength";
  sum.source = "machine design textbooks; strength: " + source_or(sheet.shear, kEnteredSource);
  const std::int64_t force = shear_out_mn(job, sheet, row);
  sum.figure = mm_text(force, 1);
  if (force == 0) {
    sum.numbers.push_back("the hole reaches the edge: " + sum.figure);
    return sum;
  }
  sum.numbers.push_back("2 × " + plain_mm(sheet.thickness_um) + " × (" +
                        plain_mm(row.in_from_edge_um) + " − " + plain_mm(blade_um(job)) +
                        " ÷ 2) × " + told_value(sheet.shear, &sum) + " = " + sum.figure);
  return sum;
}

Sum seam_strength_sum(const job::Job& job, const Row& row) {
  const Value strength = job::value_of(job.materials, Field::thread_strength);
  INSIST(strength.is_known);
  Sum sum;
  sum.rule =
      "one and a half threads a stitch, both threads alike, if the sheet does not tear first";
  sum.source =
      "apparel handbooks, stitch type 301; strength: " + source_or(strength, kEnteredSource);
  sum.figure = mm_text(seam_mn(strength, row), 2);
  sum.numbers.push_back("1.5 × " + told_value(strength, &sum) + " ÷ " + plain_mm(row.stitch_um) +
                        " = " + sum.figure);
  return sum;
}

}  // namespace pouncemark::solve

#include <string>

#include "engine/base/number_text.h"
#include "engine/frame/loads.h"
#include "engine/solve/bay_loads.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Item;

/// What a part's weight comes from: the density of a sheet, the weight of a textile.
Field field_of(Item item) {
  switch (item) {
    case Item::leaf:
      return Field::leaf_density;
    case Item::backing:
      return Field::backing_density;
    case Item::facing:
      return Field::facing_density;
    case Item::sleeve_cloth:
      return Field::sleeve_cloth_mass;
    case Item::panel_cloth:
      return Field::panel_cloth_mass;
    default:
      return Field::interlining_mass;
  }
}

/// "979800 × 1 × 1.27 ÷ 1000 = 1244.3": grams of one part.
std::string part_line(const job::Job& job, const BayWeight& part) {
  const material::Value value = job::value_of(job.materials, field_of(part.item));
  if (!part.is_known) return part.words + ": weight not known, left out";
  const std::string number = told(exact_mm_text(value.thousandths), value.is_assumed());
  const std::string area = part.words + ": " + std::to_string(part.area_mm2) + " × ";
  const std::string grams = mm_text(part.mass_mg, 1);
  if (part.thickness_um == 0) return area + number + " ÷ 1000000 = " + grams;
  return area + exact_mm_text(part.thickness_um) + " × " + number + " ÷ 1000 = " + grams;
}

Sum mass_sum(const job::Job& job, const BayLoads& loads) {
  Sum sum;
  sum.rule =
      "area in square millimetres, times thickness and density of sheet, times the weight "
      "of a square metre of cloth; adhesive, thread and film left out";
  sum.figure = mm_text(loads.mass_mg, 1);
  std::string added;
  for (const BayWeight& part : loads.parts) {
    sum.numbers.push_back(part_line(job, part));
    if (!part.is_known) continue;
    const material::Value value = job::value_of(job.materials, field_of(part.item));
    sum.rests_on_assumed = sum.rests_on_assumed || value.is_assumed();
    added += (added.empty() ? "" : " + ") + mm_text(part.mass_mg, 3);
  }
  sum.numbers.push_back(added + " = " + sum.figure);
  sum.source = loads.is_whole ? "densities and weights as entered, or suppliers' data sheets"
                              : "known weights only: enter the weight of the cloth";
  return sum;
}

Sum weight_sum(const BayLoads& loads) {
  Sum sum;
  sum.rule = "weight at standard gravity";
  sum.figure = mm_text(loads.weight_mn, 1);
  sum.numbers = {mm_text(loads.mass_mg, 1) + " ÷ 1000 × 9.80665 = " + sum.figure};
  sum.source = "standard gravity 9.80665";
  return sum;
}

Sum per_stitch_sum(const BayLoads& loads) {
  Sum sum;
  sum.rule = "an equal share on each stitch of the row along the top; a facing hangs on none";
  sum.figure = mm_text(loads.per_stitch_mn, 2);
  sum.numbers = {mm_text(loads.sewn_mn, 3) + " ÷ " + std::to_string(loads.stitches) + " = " +
                 sum.figure};
  sum.source = "equal parts, hanging at rest";
  return sum;
}

Sum corner_sum(const BayLoads& loads) {
  Sum sum;
  const std::string all = mm_text(loads.sewn_mn, 3);
  const auto on = [&all](std::int64_t stitches, std::int64_t mn) {
    return all + " ÷ " + std::to_string(stitches) + " assumed = " + mm_text(mn, 1);
  };
  sum.rule = "lifted by one corner it hangs on three to five stitches: four taken";
  sum.figure = mm_text(loads.corner_mn, 1);
  sum.numbers = {on(frame::kCornerStitches + 1, loads.corner_least_mn),
                 on(frame::kCornerStitches - 1, loads.corner_most_mn),
                 on(frame::kCornerStitches, loads.corner_mn)};
  sum.source = "assumed: three to five stitches";
  sum.rests_on_assumed = true;
  return sum;
}

}  // namespace

Sum load_sum(const job::Job& job, const Results& results, int bay, BayFigure figure) {
  const BayLoads& loads = *results.bays[static_cast<std::size_t>(bay)].loads;
  if (figure == BayFigure::mass) return mass_sum(job, loads);
  if (figure == BayFigure::weight) return weight_sum(loads);
  return figure == BayFigure::per_stitch ? per_stitch_sum(loads) : corner_sum(loads);
}

}  // namespace pouncemark::solve

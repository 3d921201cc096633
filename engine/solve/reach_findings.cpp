#include "engine/checks/machine_rules.h"
#include "engine/solve/arm.h"
#include "engine/solve/findings.h"

namespace pouncemark::solve {

void check_reach(const job::Materials& materials, const Rolled& rolled, const Results& alone,
                 Findings* findings) {
  const takeoff::Arm arm = arm_of(materials);
  const material::Value reach = job::value_of(materials, material::Field::staple_reach);
  if (!arm.throat_um && !reach.is_known) return;
  Gathering gathering;
  for (std::size_t i = 0; i < alone.rows.size(); ++i) {
    const Row& row = alone.rows[i];
    if (row.kind == RowKind::point) continue;
    const RowArm at = row_arm(alone.pieces.front(), rolled, arm, row);
    const Asking asking{0, "row " + row.code, checks::Part::rows, {static_cast<int>(i)}};
    if (row.kind == RowKind::stitch) {
      gathering.add(checks::row_out_of_reach(at.side_um, at.roll_um, arm), asking);
    } else if (reach.is_known) {
      gathering.add(checks::beyond_stapler(at.side_um, reach.thousandths), asking);
    }
  }
  gathering.move_to(findings, "rows", alone, 0);
}

}  // namespace pouncemark::solve

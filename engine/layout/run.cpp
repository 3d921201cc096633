#include "engine/layout/run.h"

#include "engine/base/insist.h"
#include "engine/base/number_text.h"

namespace pouncemark::layout {
namespace {

Run even_run(Um usable, Um spacing, Um start) {
  Run run;
  run.start_um = start;
  run.length_um = usable;
  run.gaps = divide_up(usable, spacing);
  run.is_empty = false;
  return run;
}

Run exact_run(const RunRule& rule, Um usable) {
  Run run;
  run.start_um = rule.kept_clear_start_um;
  run.gaps = usable / rule.spacing_um;
  run.step_um = rule.spacing_um;
  run.left_over_um = usable - run.gaps * rule.spacing_um;
  run.length_um = run.gaps * rule.spacing_um;
  run.is_empty = false;
  if (rule.left_over == RunRule::LeftOver::split) run.left_before_um = run.left_over_um / 2;
  run.start_um += run.left_before_um;
  if (rule.left_over == RunRule::LeftOver::extra_point && run.left_over_um > 0) {
    run.gaps += 1;
    run.length_um = usable;
  }
  return run;
}

}  // namespace

Um Run::station_um(std::int64_t index) const {
  INSIST(index >= 0 && index < points());
  if (index == gaps) return start_um + length_um;
  if (step_um > 0) return start_um + index * step_um;
  return start_um + divide_round(length_um * index, gaps);
}

Um Run::spacing_um() const {
  if (is_empty || gaps == 0) return 0;
  return step_um > 0 ? step_um : divide_round(length_um, gaps);
}

Result<Run> solve_run(const RunRule& rule) {
  const Um usable = rule.edge_length_um - rule.kept_clear_start_um - rule.kept_clear_end_um;
  if (rule.spacing_um <= 0) {
    return Problem{ProblemCode::row_bad_spacing, {}, exact_mm_text(rule.spacing_um), "above 0"};
  }
  if (rule.edge_length_um <= 0 || usable < 0) {
    return Problem{ProblemCode::row_too_short,
                   {},
                   exact_mm_text(rule.edge_length_um) + " long, " +
                       exact_mm_text(rule.kept_clear_start_um) + " + " +
                       exact_mm_text(rule.kept_clear_end_um) + " kept clear",
                   {}};
  }
  const bool fills_all = !rule.exact || rule.left_over == RunRule::LeftOver::extra_point;
  const std::int64_t gaps =
      fills_all ? divide_up(usable, rule.spacing_um) : usable / rule.spacing_um;
  if (gaps >= kMostPointsInRow) {
    return Problem{ProblemCode::row_too_many_points,
                   {},
                   count_text(gaps + 1) + " points",
                   "at most " + count_text(kMostPointsInRow)};
  }
  if (usable == 0 || !rule.exact)
    return even_run(usable, rule.spacing_um, rule.kept_clear_start_um);
  return exact_run(rule, usable);
}

}  // namespace pouncemark::layout

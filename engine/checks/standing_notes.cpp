#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {

std::string_view caution_line() { return "Figures guide; the trial seam and the dry run decide."; }

Finding staple_holes(std::int64_t staples) {
  Finding finding;
  finding.code = "staple_holes";
  finding.severity = Severity::note;
  finding.place = "the whole job";
  finding.figure = count_text(2 * staples);
  finding.sentence =
      finding.figure + " staple holes in this job: each staple makes two, and they stay.";
  finding.change = "Widen the spacing if fewer will hold.";
  finding.sum = "2 × " + count_text(staples) + " = " + finding.figure;
  return finding;
}

Finding always_said() {
  Finding finding;
  finding.code = "figures_guide";
  finding.severity = Severity::note;
  finding.place = "the whole job";
  finding.sentence =
      std::string(caution_line()) +
      " Not a structural or fire calculation; local codes and licensed practice come "
      "first, and plastic sheet on an escape route needs its own approval.";
  return finding;
}

Finding row_not_laid(const Problem& problem) {
  Finding finding;
  finding.code = "row_not_laid";
  finding.severity = Severity::stop;
  finding.figure = problem.found;
  finding.sentence = problem_sentence(problem) + " No point was laid.";
  return finding;
}

Finding edge_passed_over() {
  Finding finding;
  finding.code = "edge_passed_over";
  finding.severity = Severity::note;
  finding.sentence =
      "This edge is shorter than a row so far in can turn: the rows on either side of it meet.";
  finding.change = "Set the rows nearer to the edge if it must have a row of its own.";
  return finding;
}

}  // namespace pouncemark::checks

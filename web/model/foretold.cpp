#include <iterator>

#include "engine/base/number_text.h"
#include "engine/solve/solve.h"
#include "web/model/making.h"
#include "web/model/words.h"

namespace pouncemark::web {

Foretold foretold(const job::Job& job, int piece, const SectionPlan& plan) {
  Foretold would;
  // The section by itself: what follows is worked out on it alone, however large the job is.
  job::Job alone = job;
  alone.bays.clear();
  alone.panels.clear();
  const Made made = with_plan(job, piece, plan);
  would.refused = made.refused;
  if (!would.refused.empty()) return would;
  alone.sections = {made.job.sections[static_cast<std::size_t>(piece)]};
  const solve::Results results = solve::solve(alone);
  const solve::Piece& section = results.pieces.front();
  would.follows.push_back(short_mm_text(section.width_um, 1) + " wide");
  if (section.sleeves.size() > 1) {
    would.follows.push_back("could end up " + std::string(kPlusMinus) +
                            mm_text(section.likely_um, 1) + " (at worst " + kPlusMinus +
                            mm_text(section.worst_um, 1) + ")");
  }
  const solve::Totals& totals = results.totals;
  would.follows.push_back(counted(totals.side_rows, "side row", "side rows") + ", " +
                          counted(totals.lap_rows, "joining row", "joining rows"));
  would.follows.push_back(counted(totals.side_staples + totals.lap_staples, "staple", "staples") +
                          ", " + counted(totals.stitch_holes, "stitch hole", "stitch holes"));
  return would;
}

}  // namespace pouncemark::web

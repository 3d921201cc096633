#include "engine/base/number_text.h"
#include "engine/checks/bay_rules.h"
#include "engine/material/assumed.h"

namespace pouncemark::checks {

Finding stations_amiss(frame::StationFault fault, std::int64_t station) {
  Finding finding;
  finding.code = "stations_amiss";
  finding.severity = Severity::warn;
  if (fault == frame::StationFault::too_few) {
    finding.figure = count_text(station);
    finding.sentence = counted(station, "station", "stations") +
                       ": a curve needs three. Until then chord and rise say how it bends.";
    finding.change = "Measure at every 200 along the batten, the middle one on the crest.";
  } else {
    finding.figure = count_text(station);
    finding.sentence = "Station " + finding.figure +
                       " is not farther along the batten than the one before. Until it is, chord "
                       "and rise say how the bay bends.";
    finding.change = "Correct its distance along the batten, or list the stations in order.";
  }
  return finding;
}

std::optional<Finding> stations_near(Um step_um, std::int64_t out_by) {
  if (step_um >= material::kAssumedStationStepUm) return std::nullopt;
  Finding finding;
  finding.code = "stations_near";
  finding.severity = Severity::note;
  finding.figure = mm_text(out_by, 0) + " %";
  finding.sentence = finding.figure + ": so far out the tightest radius may be, with stations " +
                     mm_text(step_um, 0) + " apart and each reading out by " +
                     exact_mm_text(material::kAssumedReadingUm) + ".";
  finding.change = "Measure every 200, not nearer.";
  finding.sum = "√6 × radius ÷ step² for " + exact_mm_text(material::kAssumedReadingUm) +
                " assumed on each of three readings: " + finding.figure;
  return finding;
}

}  // namespace pouncemark::checks

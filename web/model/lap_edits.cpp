#include "web/model/changes.h"
#include "web/model/edits.h"

namespace pouncemark::web {

job::Job with_lap_rule(const job::Job& job, const solve::Results& results, Place place,
                       job::SpacingRule rule) {
  job::Job changed_job = job;
  if (section_at(job, results, place) == nullptr) return changed_job;
  job::Section& section = section_of(changed_job, results, place);
  if (section.lap_rows) section.lap_rows->staple.rule = rule;
  return changed_job;
}

job::SpacingRule lap_rule_at(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  return section == nullptr || !section->lap_rows ? job::SpacingRule::even
                                                  : section->lap_rows->staple.rule;
}

}  // namespace pouncemark::web

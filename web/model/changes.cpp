#include "web/model/changes.h"

#include <cstddef>
#include <optional>

namespace pouncemark::web {

job::Section& section_of(job::Job& job, const solve::Results& results, Place place) {
  const auto entry = results.pieces[static_cast<std::size_t>(place.piece)].entry;
  return job.sections[static_cast<std::size_t>(entry)];
}

job::Panel& panel_of(job::Job& job, const solve::Results& results, Place place) {
  const auto entry = results.pieces[static_cast<std::size_t>(place.piece)].entry;
  return job.panels[static_cast<std::size_t>(entry)];
}

job::RowPair rows_of(const job::Section& section, int number) {
  return number < 0 ? section.side_rows : job::side_rows_of(section, number);
}

bool is_alone(const job::Section& section, int number) {
  return number < 0 || (section.count == 1 && section.changes.empty());
}

job::SleeveChange& change_of(job::Section& section, int number) {
  return section.changes[job::sleeve_code(section, number)];
}

job::StapleChange& staple_change(job::Section& section, int number) {
  std::optional<job::StapleChange>& staple = change_of(section, number).staple;
  if (!staple) staple.emplace();
  return *staple;
}

job::StitchChange& stitch_change(job::Section& section, int number) {
  std::optional<job::StitchChange>& stitch = change_of(section, number).stitch;
  if (!stitch) stitch.emplace();
  return *stitch;
}

}  // namespace pouncemark::web

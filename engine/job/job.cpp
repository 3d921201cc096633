#include "engine/job/job.h"

#include <set>

#include "engine/base/insist.h"

namespace pouncemark::job {
namespace {

const SleeveChange* change_of(const Section& section, int index) {
  const auto found = section.changes.find(sleeve_code(section, index));
  return found == section.changes.end() ? nullptr : &found->second;
}

template <typename T>
void follow(T& value, const std::optional<T>& change) {
  if (change) value = *change;
}

}  // namespace

std::string sleeve_code(const Section& section, int index) {
  const std::string number = std::to_string(index + 1);
  return section.code + "-" + (number.size() < 2 ? "0" + number : number);
}

Um sleeve_width_um(const Section& section, int index) {
  INSIST(index >= 0 && !section.widths_um.empty());
  const SleeveChange* change = change_of(section, index);
  if (change != nullptr && change->width_um) return *change->width_um;
  return section.widths_um[static_cast<std::size_t>(index) % section.widths_um.size()];
}

std::vector<int> sleeves_there(const Section& section) {
  const std::set<std::string> missing(section.missing.begin(), section.missing.end());
  std::vector<int> there;
  for (int i = 0; i < section.count; ++i) {
    if (missing.empty() || !missing.contains(sleeve_code(section, i))) there.push_back(i);
  }
  INSIST(!there.empty());
  return there;
}

RowPair side_rows_of(const Section& section, int index) {
  RowPair rows = section.side_rows;
  const SleeveChange* change = change_of(section, index);
  if (change == nullptr) return rows;
  if (change->staple) {
    follow(rows.staple.in_from_edge_um, change->staple->in_from_edge_um);
    follow(rows.staple.kept_clear_um, change->staple->kept_clear_um);
    follow(rows.staple.spacing_um, change->staple->spacing_um);
    follow(rows.staple.rule, change->staple->rule);
    follow(rows.staple.left_over, change->staple->left_over);
    follow(rows.staple.staples, change->staple->staples);
  }
  if (change->stitch) {
    follow(rows.stitch.in_from_edge_um, change->stitch->in_from_edge_um);
    follow(rows.stitch.kept_clear_um, change->stitch->kept_clear_um);
    follow(rows.stitch.stitch_um, change->stitch->stitch_um);
  }
  return rows;
}

Job first_sleeve_job() {
  Section sleeve;
  sleeve.code = "1";
  sleeve.length_um = 1'800'000;
  sleeve.lap_um = 0;
  sleeve.leaf_um = 250;
  sleeve.widths_um = {110'000};
  sleeve.count = 1;
  sleeve.side_rows.staple.in_from_edge_um = 26'000;
  sleeve.side_rows.staple.kept_clear_um = {18'000, 18'000};
  sleeve.side_rows.staple.spacing_um = 50'000;
  sleeve.side_rows.staple.staples = StaplesOut::stay;
  sleeve.side_rows.stitch.in_from_edge_um = 16'000;
  sleeve.side_rows.stitch.kept_clear_um = {18'000, 18'000};
  sleeve.side_rows.stitch.stitch_um = 6'000;
  sleeve.side_rows.stack_um = 1'100;
  Job job;
  job.name = "First sleeve";
  job.sections.push_back(std::move(sleeve));
  return job;
}

}  // namespace pouncemark::job

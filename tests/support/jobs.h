#pragma once

#include <string>
#include <utility>
#include <vector>

#include "engine/job/job_json.h"
#include "tests/support/files.h"
#include "tests/support/random.h"

/// Jobs to try things on.
namespace pouncemark::tests {

/// The text of a job of demo-jobs ("marsh-lights"). Tests run in the root of the repository.
inline std::string demo_text(const std::string& name) {
  return file_text("demo-jobs/" + name + ".json");
}

/// A job of demo-jobs, opened; our own mistake when it does not open.
inline job::Job demo_job(const std::string& name) { return job::open_job(demo_text(name))->job; }

/// Staples and stitches as the first sleeve has them, for laps.
inline job::RowPair plain_rows() {
  job::RowPair rows = job::first_sleeve_job().sections[0].side_rows;
  rows.staple.staples = job::StaplesOut::before_the_row;
  return rows;
}

/// One section of `widths_mm` with laps and rows that no check has anything to say against but the
/// standing notes.
inline job::Job section_job(const std::vector<Um>& widths_mm, Um lap_mm) {
  job::Job job = job::first_sleeve_job();
  job::Section& section = job.sections[0];
  section.widths_um.clear();
  for (const Um width : widths_mm) section.widths_um.push_back(width * 1'000);
  section.count = static_cast<int>(widths_mm.size());
  section.lap_um = lap_mm * 1'000;
  section.side_rows = plain_rows();
  if (section.count > 1) section.lap_rows = plain_rows();
  return job;
}

/// One panel on its own.
inline job::Job panel_job(Um width_mm, Um length_mm, const std::string& hinge_side) {
  job::Panel panel;
  panel.code = "P1";
  panel.backing_um = {width_mm * 1'000, length_mm * 1'000};
  panel.hinge_side = hinge_side;
  panel.backing_thickness_um = 1'000;
  panel.panel_in_um = 16'000;
  panel.spacing_um = 48'000;
  panel.stitch_um = 5'500;
  panel.stack_um = 3'900;
  job::Job job;
  job.name = "One panel";
  job.panels.push_back(std::move(panel));
  return job;
}

/// Any job that opens: every member there or left out, unknown members anywhere.
job::Job random_job(Dice& dice);

}  // namespace pouncemark::tests

#pragma once

#include "tests/support/jobs.h"

/// Jobs whose stacks come from their plies.
namespace pouncemark::tests {

/// Enters a value of the materials, thousandths of its unit.
inline void enter(job::Job* job, material::Field field, std::int64_t thousandths) {
  job->materials.values[field].thousandths = thousandths;
}

/// Two sleeves with every stack from the plies, nothing entered of their cloth.
inline job::Job two_sleeves() {
  job::Job job = section_job({110, 110}, 18);
  job::Section& section = job.sections[0];
  section.leaf_um = 250;
  section.side_rows.stitch.in_from_edge_um = 16'000;
  section.side_rows.stack_from_plies = true;
  section.lap_rows->stack_from_plies = true;
  return job;
}

/// A panel with its stack from the plies, cloth and backing alone.
inline job::Job one_panel() {
  job::Job job = panel_job(690, 1'420, "left");
  job.panels[0].stack_from_plies = true;
  enter(&job, material::Field::panel_cloth_thickness, 800);
  return job;
}

}  // namespace pouncemark::tests

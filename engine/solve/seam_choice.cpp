#include "engine/solve/seam_choice.h"

#include "engine/solve/rows.h"

namespace pouncemark::solve {

SeamCount count_seams(const job::Job& job, const job::Section& section, job::SideSeams seams) {
  job::Section so = section;
  so.side_seams = seams;
  Laying laying;
  lay_section(job, so, section_piece(so, 0), 0, &laying);
  SeamCount count;
  for (const Row& row : laying.rows) {
    if (row.kind == RowKind::staple) {
      count.staples += own_points(row);
      continue;
    }
    ++count.rows;
    count.stitch_holes += own_points(row);
    count.row_um += row.run.length_um;
  }
  return count;
}

SeamCount count_seams(const job::Job& job, job::SideSeams seams) {
  SeamCount all;
  for (const job::Section& section : job.sections) {
    const SeamCount one = count_seams(job, section, seams);
    all.rows += one.rows;
    all.stitch_holes += one.stitch_holes;
    all.row_um += one.row_um;
    all.staples += one.staples;
  }
  return all;
}

}  // namespace pouncemark::solve

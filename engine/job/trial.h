#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/geometry/units.h"
#include "engine/job/json_node.h"

/// Trial seams: what was sewn on a coupon of the real stack and what came of it. Part of the job.
namespace pouncemark::job {

/// The rows a trial stands for.
enum class RowsOf : std::uint8_t { side_rows, lap_rows, panel_rows };

/// One trial seam. What is empty was not measured or not said.
struct Trial {
  RowsOf of = RowsOf::side_rows;
  bool of_all_rows = false;  ///< stands for every row; `of` is then not used
  int needle_size = 0;
  int thread_tex = 0;
  Um stitch_um = 0;                   ///< as the machine was set
  std::optional<Um> ten_stitches_um;  ///< ten stitches, measured
  std::optional<Um> marks_um;         ///< two marks 500 apart before sewing, measured after
  std::optional<bool> whitens;
  std::optional<bool> cracks;
  std::optional<std::int64_t> pull_n;  ///< thousandths of a newton, on a strip 50 wide
  bool is_chosen = false;
  std::string signed_by;  ///< name and date of who agreed; empty: open
  Extras extras;
  bool operator==(const Trial&) const = default;
};

/// The chosen trial that stands for these rows; nullptr where there is none.
const Trial* chosen_trial(const std::vector<Trial>& trials, RowsOf of);

/// The stitch that rows asked to have `asked_um` really get: that of the chosen trial sewn with the
/// same setting and measured, else the one asked for.
Um stitch_really_um(const std::vector<Trial>& trials, RowsOf of, Um asked_um);

/// How much a length shrinks when it is sewn, in parts of a million, from the marks; nothing where
/// they were not measured.
std::optional<std::int64_t> take_up_ppm(const Trial& trial);

}  // namespace pouncemark::job

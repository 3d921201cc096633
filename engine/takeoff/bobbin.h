#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "engine/geometry/units.h"

namespace pouncemark::takeoff {

/// A bobbin by its measures, and the thread wound on it. All above 0.
struct BobbinMeasures {
  Um outer_um = 0;
  Um core_um = 0;
  Um width_um = 0;
  std::int64_t packing_thousandths = 0;  ///< fibre in the room between core and outside
  std::int64_t density_thousandths = 0;  ///< of the fibre, g/cm³
  std::int64_t tex_thousandths = 0;
};

/// The room for thread, mm³; 0 where the core fills it.
double bobbin_room_mm3(const BobbinMeasures& measures);

/// The thread that goes on it; 0 where the core fills it.
Um bobbin_thread_um(const BobbinMeasures& measures);

/// What may be sewn from `thread_um` when so many thousandths of a percent are kept back.
Um usable_um(Um thread_um, std::int64_t kept_back_thousandths);

/// Rows that one bobbin sews when each takes `row_um`, above 0; 0 where it does not last one row.
std::int64_t rows_a_bobbin(Um usable_um, Um row_um);

/// Where a row stands in the bobbins it is sewn from.
struct BobbinPlace {
  std::int64_t bobbin = 0;     ///< from 1; 0: no row of stitches
  std::int64_t row_on_it = 0;  ///< from 1
  std::int64_t takes = 1;      ///< bobbins: more than 1 where one does not last the row
  bool is_last = false;        ///< the bobbin is changed after it, or the work is done
  bool operator==(const BobbinPlace&) const = default;
};

/// The bobbins of rows sewn one after the other, each taking so much thread: a bobbin is changed
/// before a row that it would not last, never within one. A row longer than a bobbin begins on a
/// new one, and so does the row after it. `usable_um` is above 0.
std::vector<BobbinPlace> bobbin_plan(std::span<const Um> rows_um, Um usable_um);

/// Bobbins that a plan takes.
std::int64_t bobbin_fills(std::span<const BobbinPlace> plan);

}  // namespace pouncemark::takeoff

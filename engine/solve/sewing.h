#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "engine/solve/sums.h"
#include "engine/takeoff/bobbin.h"
#include "engine/takeoff/thread.h"

namespace pouncemark::solve {

/// Where the metres on a bobbin come from; typed ones win over those from its measures.
enum class MetresFrom : std::uint8_t { typed, measures, assumed };

/// The bobbin of a job.
struct Bobbin {
  Um thread_um = 0;  ///< full
  Um usable_um = 0;  ///< less what is kept back
  MetresFrom from = MetresFrom::assumed;
};

/// Thread and bobbins of a job: pure, and quick enough to ask for after every edit. The bobbins of
/// side rows, of joining rows and of panel rows are counted apart, each kind in the job's order.
struct Sewing {
  Um thread_each_um = 0;  ///< of each of the two threads, all rows
  Bobbin bobbin;
  Um longest_row_um = 0;  ///< thread of the longest side or joining row; of a panel's without those
  std::optional<std::int64_t> rows_per_bobbin;  ///< for that row; nothing where it is not known
  std::array<std::int64_t, 3> fills{0, 0, 0};   ///< by RowPlace
  /// Rows whose stack is not known, by RowPlace: their thread is counted without it, and for a kind
  /// with such rows no bobbin is planned and `fills` is 0.
  std::array<std::int64_t, 3> not_known{0, 0, 0};
  std::vector<takeoff::BobbinPlace> places;  ///< beside Results::rows; of others bobbin 0

  std::int64_t fills_of(RowPlace place) const { return fills[static_cast<std::size_t>(place)]; }
  std::int64_t not_known_of(RowPlace place) const {
    return not_known[static_cast<std::size_t>(place)];
  }
  std::int64_t all_not_known() const { return not_known[0] + not_known[1] + not_known[2]; }
};
Sewing sewing_of(const job::Job& job, const Results& results);

/// What each thread of one stitch row takes, through the stack at its thickest.
takeoff::ThreadOfRow thread_of(const job::Job& job, const Results& results, const Row& row);

/// The stack of a stitch row is not known yet.
inline bool is_stack_unknown(const Row& row) {
  return row.kind == RowKind::stitch && !row.stack_is_typed && row.stack_um == 0;
}

/// The bobbin of a job, from what was entered or assumed.
Bobbin bobbin_of(const job::Job& job);

/// The thread's tex in thousandths: as weighed where it was, else the job's.
std::int64_t real_tex_thousandths(const job::Job& job);

/// "bobbin 3, its 7th and last row".
std::string bobbin_words(const takeoff::BobbinPlace& place);

/// Metres of each thread: of one row, and of the whole job.
Sum thread_sum(const job::Job& job, const Results& results, const Row& row);
Sum thread_each_sum(const job::Job& job, const Results& results);
/// Metres on a full bobbin, and rows it lasts. The second needs a stitch row.
Sum bobbin_thread_sum(const job::Job& job);
Sum rows_per_bobbin_sum(const job::Job& job, const Results& results);
/// Bobbins of one kind of rows.
Sum bobbin_fills_sum(const job::Job& job, const Results& results, RowPlace place);

}  // namespace pouncemark::solve

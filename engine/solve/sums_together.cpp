#include <algorithm>
#include <cstddef>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/sum_words.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {
namespace {

std::string length_text(Um um) { return plain_mm(um); }
std::string points_text(std::int64_t count) { return count_text(count); }

std::vector<std::int64_t> own_points_of(Rows rows) {
  std::vector<std::int64_t> counts;
  for (const Row* row : rows) counts.push_back(own_points(*row));
  return counts;
}

bool any_shared(Rows rows) {
  return std::any_of(rows.begin(), rows.end(), [](const Row* row) { return row->first_is_shared; });
}

/// The rows are laid alike: one of them in full stands for all.
bool are_alike(Rows rows) {
  const Row& one = *rows.front();
  return std::all_of(rows.begin(), rows.end(), [&one](const Row* row) {
    return row->run.start_um == one.run.start_um && row->run.length_um == one.run.length_um &&
           row->run.gaps == one.run.gaps && row->run.step_um == one.run.step_um &&
           row->asked_um == one.asked_um && row->stitch_um == one.stitch_um &&
           is_straight(row->guide) && row->first_is_shared == one.first_is_shared &&
           to_um(length(row->guide)) == to_um(length(one.guide));
  });
}

/// "34 + 16 = 50 rows", where side and joining rows are added up.
void add_row_count(Rows rows, Sum* sum) {
  std::int64_t laps = 0;
  for (const Row* row : rows) laps += row->place == RowPlace::lap ? 1 : 0;
  const auto all = static_cast<std::int64_t>(rows.size());
  if (laps == 0 || laps == all) return;
  sum->numbers.push_back(count_text(all - laps) + " + " + count_text(laps) + " = " +
                         count_text(all) + " rows");
}

/// "50 × (2300 − 22 − 22)" where the rows are laid alike, else their lengths added up.
std::string lengths_added(Rows rows) {
  const Row& one = *rows.front();
  if (are_alike(rows)) {
    const Um whole = to_um(length(one.guide));
    return count_text(static_cast<std::int64_t>(rows.size())) + " × (" + plain_mm(whole) +
           less_mm(one.run.first_um()) + less_mm(whole - one.run.last_um()) + ")";
  }
  std::vector<std::int64_t> lengths;
  for (const Row* row : rows) lengths.push_back(row->run.length_um);
  return added_up(lengths, length_text);
}

}  // namespace

Sum points_together_sum(const job::Job& job, const Results& results, Rows rows) {
  INSIST(!rows.empty());
  const std::vector<std::int64_t> counts = own_points_of(rows);
  const bool is_stitch = rows.front()->kind == RowKind::stitch;
  const char* thing = is_stitch                               ? "hole"
                      : rows.front()->kind == RowKind::staple ? "staple"
                                                              : "point";
  Sum sum;
  sum.figure = count_text(total_of(counts));
  sum.source = kExactSource;
  if (any_shared(rows)) {
    sum.rule = std::string("row by row, a shared corner ") + thing + " counted once";
  } else {
    sum.rule = std::string(thing) + "s of each row, added up";
  }
  add_row_count(rows, &sum);
  if (are_alike(rows) && !any_shared(rows)) {
    // One row in full stands for all, but for its last line.
    Sum one = points_sum(job, results, *rows.front());
    if (rows.size() == 1) return one;
    one.numbers.pop_back();
    one.numbers.insert(one.numbers.begin(), sum.numbers.begin(), sum.numbers.end());
    one.numbers.push_back(count_text(static_cast<std::int64_t>(rows.size())) + " × (" +
                          count_text(rows.front()->run.gaps) + " + 1) = " + sum.figure);
    one.figure = sum.figure;
    return one;
  }
  sum.numbers.push_back(added_up(counts, points_text) + " = " + sum.figure);
  return sum;
}

Sum staple_holes_sum(Rows staple_rows) {
  INSIST(!staple_rows.empty());
  const std::vector<std::int64_t> counts = own_points_of(staple_rows);
  const std::int64_t staples = total_of(counts);
  Sum sum;
  sum.rule = "two legs to each staple";
  sum.source = kExactSource;
  sum.figure = count_text(2 * staples);
  const std::string added = added_up(counts, points_text);
  if (added != count_text(staples)) {
    sum.numbers.push_back(added + " = " + counted(staples, "staple", "staples"));
  }
  sum.numbers.push_back(count_text(staples) + " × 2 = " + sum.figure);
  return sum;
}

Sum sewing_sum(Rows stitch_rows) {
  INSIST(!stitch_rows.empty());
  Um all = 0;
  for (const Row* row : stitch_rows) all += row->run.length_um;
  Sum sum;
  sum.rule = "first hole to last of each row, added up";
  sum.source = kExactSource;
  sum.figure = metres_text(all, 2);
  add_row_count(stitch_rows, &sum);
  const std::string added = lengths_added(stitch_rows);
  if (added != plain_mm(all)) sum.numbers.push_back(added + " = " + added_mm(all));
  sum.numbers.push_back(added_mm(all) + " ÷ 1000 = " + sum.figure);
  return sum;
}

}  // namespace pouncemark::solve

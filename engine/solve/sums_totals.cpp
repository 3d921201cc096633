#include <cstddef>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/sum_words.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {
namespace {

/// What one row puts to the total.
std::int64_t put_by(const Row& row, Total total) {
  const bool is_stitch = row.kind == RowKind::stitch;
  const bool is_staple = row.kind == RowKind::staple;
  switch (total) {
    case Total::side_staples:
      return is_staple && row.place == RowPlace::side ? own_points(row) : 0;
    case Total::lap_staples:
      return is_staple && row.place == RowPlace::lap ? own_points(row) : 0;
    case Total::staples:
      return is_staple ? own_points(row) : 0;
    case Total::side_rows:
      return is_stitch && row.place == RowPlace::side ? 1 : 0;
    case Total::lap_rows:
      return is_stitch && row.place == RowPlace::lap ? 1 : 0;
    case Total::panel_rows:
      return is_stitch && row.place == RowPlace::panel ? 1 : 0;
    case Total::panel_points:
      return row.kind == RowKind::point ? own_points(row) : 0;
    case Total::stitch_holes:
      return is_stitch ? own_points(row) : 0;
    case Total::sewing:
      return is_stitch ? row.run.length_um : 0;
  }
  return 0;
}

std::string number_of(std::int64_t number) { return count_text(number); }
std::string length_of(Um um) { return added_mm(um); }

/// The pieces' own totals, in the job's order; none that puts nothing to it.
std::vector<std::int64_t> by_piece(const Results& results, Total total) {
  std::vector<std::int64_t> numbers;
  for (const Piece& piece : results.pieces) {
    std::int64_t number = 0;
    for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
      number += put_by(results.rows[static_cast<std::size_t>(i)], total);
    }
    if (number != 0) numbers.push_back(number);
  }
  if (numbers.empty()) numbers.push_back(0);
  return numbers;
}

const char* rule_of(Total total) {
  if (total == Total::panel_rows || total == Total::panel_points) return "panel by panel";
  if (total == Total::stitch_holes || total == Total::sewing) return "sections, then panels";
  return "section by section";
}

}  // namespace

Sum total_sum(const Results& results, Total total) {
  const std::vector<std::int64_t> numbers = by_piece(results, total);
  const std::int64_t all = total_of(numbers);
  const bool is_length = total == Total::sewing;
  Sum sum;
  sum.rule = rule_of(total);
  sum.source = kExactSource;
  const std::string whole = is_length ? added_mm(all) : count_text(all);
  const std::string added = added_up(numbers, is_length ? length_of : number_of);
  if (added != whole) sum.numbers.push_back(added + " = " + whole);
  sum.figure = whole;
  if (is_length) {
    sum.figure = metres_text(all, 2);
    sum.numbers.push_back(whole + " ÷ 1000 = " + sum.figure);
  }
  if (sum.numbers.empty()) sum.numbers.push_back(sum.figure);
  return sum;
}

}  // namespace pouncemark::solve

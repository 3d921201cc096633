#include "engine/sheets/row_groups.h"

#include <map>
#include <tuple>

namespace pouncemark::sheets {
namespace {

/// Three rows in a stretch are named by its ends; two are named one by one.
constexpr std::size_t kLeastStretch = 3;

Rows rows_that(const solve::Results& results, const solve::Piece& piece, bool are_stitches) {
  Rows rows;
  for (int i = 0; i < piece.row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if ((row.kind == solve::RowKind::stitch) == are_stitches) rows.push_back(&row);
  }
  return rows;
}

bool is_hinge_row(const solve::Piece& piece, const solve::Row& row) {
  return row.code.starts_with(piece.code + " hinge");
}

/// True when the row is more upright than level.
bool is_upright(const solve::Row& row) {
  const Vec2 step = row.guide.to - row.guide.from;
  return step.x * step.x < step.y * step.y;
}

bool lies_square(const solve::Row& row) {
  const bool is_even = to_um(row.guide.from.x) == to_um(row.guide.to.x) ||
                       to_um(row.guide.from.y) == to_um(row.guide.to.y);
  return is_straight(row.guide) && is_even;
}

/// Which end of a hinge row its distances begin at.
std::string hinge_datum(const solve::Row& row) {
  const bool rises = row.guide.from.y <= row.guide.to.y;
  if (is_upright(row) && lies_square(row) && rises) return "from BOTTOM";
  if (is_upright(row))
    return rises ? "from its lower end, along the row" : "from its upper end, along the row";
  return row.guide.from.x <= row.guide.to.x ? "from its left end, along the row"
                                            : "from its right end, along the row";
}

bool follow_one_another(const solve::Row& a, const solve::Row& b) {
  return a.place == b.place && a.place != solve::RowPlace::panel;
}

}  // namespace

Rows guide_point_rows(const solve::Results& results, const solve::Piece& piece) {
  return rows_that(results, piece, false);
}

Rows stitch_rows(const solve::Results& results, const solve::Piece& piece) {
  return rows_that(results, piece, true);
}

std::string datum_words(const solve::Piece& piece, const solve::Row& row) {
  if (piece.kind == solve::PieceKind::section) return "from BOTTOM";
  if (is_hinge_row(piece, row)) return hinge_datum(row);
  return lies_square(row) ? "from the hinge side, along the row"
                          : "from its hinge end, along the row's own line";
}

std::vector<Rows> groups_of_equal_rows(const solve::Piece& piece, const Rows& rows) {
  using Key = std::tuple<int, std::string, bool, Um, Um, std::int64_t, Um, bool>;
  std::map<Key, std::size_t> known;
  std::vector<Rows> groups;
  for (const solve::Row* row : rows) {
    const layout::Run& run = row->run;
    const Key key{static_cast<int>(row->kind),
                  datum_words(piece, *row),
                  row->first_is_shared,
                  run.start_um,
                  run.length_um,
                  run.gaps,
                  run.step_um,
                  run.is_empty};
    const auto [at, is_new] = known.emplace(key, groups.size());
    if (is_new) groups.emplace_back();
    groups[at->second].push_back(row);
  }
  return groups;
}

std::string row_names(const Rows& some, const Rows& all) {
  std::string names;
  std::size_t next = 0;
  const auto place_of = [&](const solve::Row* row) {
    while (next < all.size() && all[next] != row) ++next;
    return next;
  };
  for (std::size_t i = 0; i < some.size();) {
    const std::size_t from = place_of(some[i]);
    std::size_t count = 1;
    while (i + count < some.size() && from + count < all.size() &&
           all[from + count] == some[i + count] && follow_one_another(*some[i], *some[i + count])) {
      ++count;
    }
    const bool is_stretch = count >= kLeastStretch;
    if (!names.empty()) names += ", ";
    names += some[i]->code;
    if (is_stretch) names += " to " + some[i + count - 1]->code;
    i += is_stretch ? count : 1;
  }
  return names;
}

}  // namespace pouncemark::sheets

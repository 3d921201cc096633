#include "engine/sheets/free_room.h"

#include <algorithm>

namespace pouncemark::sheets {
namespace {

constexpr Um kClearOfEdge = 6'000;
constexpr Um kClearOfRow = 4'500;
constexpr Um kClearOfFigure = 15'000;
constexpr Um kWideEnough = 48'000;
constexpr Um kClearOfWords = 20'000;
constexpr Um kClearOfPoint = 7'500;

/// What rows and edges take of the width of the page, and of its height.
struct Taken {
  std::vector<Stretch> across;
  std::vector<Stretch> along;
};

Taken taken_by_piece(const PageView& view) {
  Taken taken;
  for (const solve::Row* row : view.rows()) {
    const Um x = to_um(row->guide.from.x);
    const Um y = to_um(row->guide.from.y);
    if (runs_along(*row)) {
      const bool has_figures = row->kind != solve::RowKind::stitch;
      const bool toward_left = row->kind == solve::RowKind::point && 2 * x >= view.piece().width_um;
      taken.across.push_back({x - (has_figures && toward_left ? kClearOfFigure : kClearOfRow),
                              x + (has_figures && !toward_left ? kClearOfFigure : kClearOfRow)});
    }
    if (runs_across(*row)) taken.along.push_back({y - kClearOfWords, y + kClearOfWords});
  }
  for (const solve::Sleeve& sleeve : view.piece().sleeves) {
    for (const Um x : {sleeve.left_um, sleeve.left_um + sleeve.width_um}) {
      taken.across.push_back({x - 2'000, x + 2'000});
    }
  }
  for (const Um x : {Um{0}, view.piece().width_um}) taken.across.push_back({x - 3'000, x + 3'000});
  for (const Um y : {Um{0}, view.piece().length_um}) taken.along.push_back({y - 3'000, y + 3'000});
  return taken;
}

drawing::Box box_of(Stretch across, Stretch along) {
  return {{across.low, along.low}, {across.high, along.high}};
}

std::vector<Stretch> levels_taken(const PageView& view) {
  std::vector<Stretch> taken;
  for (const solve::Row* row : view.rows()) {
    if (runs_across(*row)) {
      const Um y = to_um(row->guide.from.y);
      taken.push_back({y - kClearOfWords, y + kClearOfWords});
    }
    if (row->kind == solve::RowKind::stitch) continue;
    const PointRange seen = view.points_seen(*row);
    for (std::int64_t i = std::max<std::int64_t>(seen.first, 0); i <= seen.last; ++i) {
      const Um y = solve::point_um(*row, i).y;
      taken.push_back({y - kClearOfPoint, y + kClearOfPoint});
    }
  }
  return taken;
}

}  // namespace

Stretch longest_free(Stretch within, std::vector<Stretch> taken) {
  std::stable_sort(taken.begin(), taken.end(),
                   [](const Stretch& a, const Stretch& b) { return a.low < b.low; });
  taken.push_back({within.high, within.high});
  Stretch best{within.low, within.low};
  Um free_from = within.low;
  for (const Stretch& one : taken) {
    const Um until = std::min(one.low, within.high);
    if (until - free_from > best.length()) best = {free_from, until};
    free_from = std::max(free_from, one.high);
  }
  return best;
}

drawing::Box free_room(const PageView& view) {
  const Um strip_left = view.page.column > 0 ? view.set.cut.across.overlap_um : 0;
  const Stretch across{view.left() + kClearOfEdge + strip_left,
                       view.right() - kClearOfEdge - view.set.cut.across.overlap_um};
  const Stretch along{view.low() + 3 * kClearOfEdge,
                      view.high() - kClearOfEdge - view.set.cut.along.overlap_um};
  const Stretch beside{std::max(across.low, view.piece().width_um + kClearOfEdge),
                       view.right() - kClearOfEdge};
  const Stretch above{std::max(along.low, view.piece().length_um + kClearOfEdge),
                      view.high() - kClearOfEdge};
  if (above.length() >= 3 * kWideEnough) return box_of(across, above);
  if (beside.length() >= kWideEnough) return box_of(beside, along);
  const Taken taken = taken_by_piece(view);
  return box_of(longest_free(across, taken.across), longest_free(along, taken.along));
}

Stretch free_level(const PageView& view, Stretch within) {
  return longest_free(within, levels_taken(view));
}

Stretch first_free_level(const PageView& view, Stretch within, Um needed) {
  std::vector<Stretch> taken = levels_taken(view);
  std::stable_sort(taken.begin(), taken.end(),
                   [](const Stretch& a, const Stretch& b) { return a.low < b.low; });
  Um free_from = within.low;
  for (const Stretch& one : taken) {
    if (one.low - free_from >= needed) break;
    free_from = std::max(free_from, one.high);
  }
  return {free_from, free_from + needed};
}

Stretch free_column(const PageView& view) {
  const Stretch across{view.left() + 2 * kClearOfEdge,
                       view.right() - kClearOfEdge - view.set.cut.across.overlap_um};
  return longest_free(across, taken_by_piece(view).across);
}

}  // namespace pouncemark::sheets

#include "engine/sheets/page_view.h"

#include "engine/geometry/tolerance.h"

namespace pouncemark::sheets {
namespace {

/// first index whose station is at least `station`
std::int64_t first_at_or_after(const layout::Run& run, Um station) {
  std::int64_t low = 0;
  std::int64_t high = run.points();
  while (low < high) {
    const std::int64_t middle = (low + high) / 2;
    if (run.station_um(middle) < station) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low;
}

bool is_nothing(double size) { return size < tolerance::kSamePointMm; }

}  // namespace

const solve::Piece& PageView::piece() const {
  return set.results.pieces[static_cast<std::size_t>(set.piece)];
}

const job::Section* PageView::section() const {
  if (piece().kind != solve::PieceKind::section) return nullptr;
  return &set.job.sections[static_cast<std::size_t>(piece().entry)];
}

bool PageView::is_printed(std::int64_t columns, std::int64_t rows) const {
  const std::int64_t column = page.column + columns;
  const std::int64_t row = page.row + rows;
  if (column < 0 || column >= set.cut.across.pages) return false;
  if (row < 0 || row >= set.cut.along.pages) return false;
  return !is_left_out(set.left_out, row * set.cut.across.pages + column);
}

std::vector<const solve::Row*> PageView::rows() const {
  std::vector<const solve::Row*> all;
  for (int i = 0; i < piece().row_count; ++i) {
    all.push_back(&set.results.rows[static_cast<std::size_t>(piece().first_row + i)]);
  }
  return all;
}

bool PageView::sees(solve::PlaceUm place) const {
  return place.x >= left() && place.x <= right() && place.y >= low() && place.y <= high();
}

drawing::Spot PageView::on_paper(Um x, Um y) const {
  return {set.cut.across.border_um + x - left(), set.cut.along.border_um + y - low()};
}

drawing::Box PageView::window() const {
  return {on_paper(left(), low()), on_paper(right(), high())};
}

PointRange PageView::points_seen(const solve::Row& row) const {
  const std::int64_t points = row.run.points();
  if (!runs_along(row) && !runs_across(row)) return {0, points - 1};
  const bool along = runs_along(row);
  const Um across_at = to_um(along ? row.guide.from.x : row.guide.from.y);
  const Um across_low = along ? left() : low();
  const Um across_high = along ? right() : high();
  if (across_at < across_low || across_at > across_high) return {};
  const Um from = to_um(along ? row.guide.from.y : row.guide.from.x);
  const Um to = to_um(along ? row.guide.to.y : row.guide.to.x);
  const Um window_low = along ? low() : left();
  const Um window_high = along ? high() : right();
  const Um near = to > from ? window_low - from : from - window_high;
  const Um far = to > from ? window_high - from : from - window_low;
  return {first_at_or_after(row.run, near), first_at_or_after(row.run, far + 1) - 1};
}

bool runs_along(const solve::Row& row) {
  const double step = row.guide.to.x - row.guide.from.x;
  return is_straight(row.guide) && is_nothing(step < 0 ? -step : step);
}

bool runs_across(const solve::Row& row) {
  const double step = row.guide.to.y - row.guide.from.y;
  return is_straight(row.guide) && is_nothing(step < 0 ? -step : step);
}

std::string spoken_name(const solve::Piece& piece) {
  if (piece.kind == solve::PieceKind::section) return "section " + piece.code;
  const bool numbered = piece.code.size() > 1 && piece.code[0] == 'P' &&
                        piece.code.find_first_not_of("0123456789", 1) == std::string::npos;
  return "panel " + (numbered ? piece.code.substr(1) : piece.code);
}

Um make_line_um(const job::Section& section, const solve::Sleeve& sleeve) {
  const bool sewn_at_left = section.sewn_side == job::Side::left;
  const Um right = sleeve.left_um + sleeve.width_um;
  if (section.make == job::Make::folded) return sewn_at_left ? right : sleeve.left_um;
  const Um flange = section.flange_um.value_or(0);
  return sewn_at_left ? sleeve.left_um + flange : right - flange;
}

Um drawn_make_line_um(const job::Section& section, const solve::Sleeve& sleeve) {
  constexpr Um kBesideFold = 1'200;
  const Um line = make_line_um(section, sleeve);
  if (section.make != job::Make::folded) return line;
  return line == sleeve.left_um ? line + kBesideFold : line - kBesideFold;
}

}  // namespace pouncemark::sheets

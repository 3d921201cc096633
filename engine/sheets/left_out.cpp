#include "engine/sheets/left_out.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "engine/geometry/tolerance.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using solve::PlaceUm;

PlaceUm place_of(Vec2 mm) { return {to_um(mm.x), to_um(mm.y)}; }

/// Pages of one way whose windows meet a stretch: from first to last, none when last < first.
struct PageRange {
  std::int64_t first = 0;
  std::int64_t last = -1;
};

PageRange pages_meeting(const Cut& cut, Um a, Um b) {
  const auto [low, high] = std::minmax(a, b);
  const std::int64_t first =
      low <= cut.window_um ? 0 : divide_up(low - cut.window_um, cut.pitch_um);
  const std::int64_t last = high < 0 ? -1 : high / cut.pitch_um;
  return {first, std::min(last, cut.pages - 1)};
}

/// On which side of the line a corner lies: negative, 0 or positive.
int side_of(PlaceUm a, PlaceUm b, Um x, Um y) {
  const Um turn = (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  return turn < 0 ? -1 : turn > 0 ? 1 : 0;
}

/// The grid with the pages that were crossed so far.
class Crossed {
 public:
  explicit Crossed(const PageCut& cut)
      : cut_(cut), left_out_(static_cast<std::size_t>(cut.pages()), true) {}

  void add_line(PlaceUm a, PlaceUm b) {
    const PageRange columns = pages_meeting(cut_.across, a.x, b.x);
    const PageRange rows = pages_meeting(cut_.along, a.y, b.y);
    const bool is_upright = a.x == b.x || a.y == b.y;
    for (std::int64_t row = rows.first; row <= rows.last; ++row) {
      for (std::int64_t column = columns.first; column <= columns.last; ++column) {
        const std::int64_t page = row * cut_.across.pages + column;
        if (is_upright || meets(a, b, page)) left_out_[static_cast<std::size_t>(page)] = false;
      }
    }
  }

  /// A line or an arc, halved until it is straight to the micrometre; no trigonometry, since this
  /// decides between yes and no.
  void add(const Segment& line) {
    const double rise = std::abs(line.rise);
    if (rise < tolerance::kTouchMm) {
      add_line(place_of(line.from), place_of(line.to));
      return;
    }
    const Vec2 chord = line.to - line.from;
    const double size = std::hypot(chord.x, chord.y);
    // The crown lies to the right of the walk for a positive rise.
    const Vec2 crown = {(line.from.x + line.to.x) / 2 + chord.y / size * line.rise,
                        (line.from.y + line.to.y) / 2 - chord.x / size * line.rise};
    const double half = std::hypot(size / 2, rise);
    const double steep = 2 * rise / size;
    const double of_half = (std::sqrt(1 + steep * steep) - 1) / steep * half / 2;
    const double signed_rise = line.rise < 0 ? -of_half : of_half;
    add({line.from, crown, signed_rise});
    add({crown, line.to, signed_rise});
  }

  LeftOut left_out() && { return std::move(left_out_); }

 private:
  /// A slanted line meets a window whose corners do not all lie on one side of it; that it comes
  /// near enough each way is known.
  bool meets(PlaceUm a, PlaceUm b, std::int64_t page) const {
    const PageWindow window = window_of(cut_, page);
    const Um right = window.left_um + cut_.across.window_um;
    const Um high = window.low_um + cut_.along.window_um;
    const int first = side_of(a, b, window.left_um, window.low_um);
    return first == 0 || side_of(a, b, right, window.low_um) != first ||
           side_of(a, b, window.left_um, high) != first || side_of(a, b, right, high) != first;
  }

  const PageCut& cut_;
  LeftOut left_out_;
};

/// The part of an arc between two of its places, walked the same way.
Segment part_of(const Segment& arc, Vec2 from, Vec2 to) {
  const double half = std::hypot(to.x - from.x, to.y - from.y) / 2;
  const double round = radius(arc);
  const double rise = round - std::sqrt(std::max(0.0, round * round - half * half));
  return {from, to, arc.rise < 0 ? -rise : rise};
}

void add_row(const solve::Row& row, Crossed* crossed) {
  const std::int64_t points = row.run.points();
  if (points == 0) return;
  if (is_straight(row.guide)) {
    crossed->add_line(solve::point_um(row, 0), solve::point_um(row, points - 1));
    return;
  }
  const Vec2 from = point_at(row.guide, from_um(row.run.first_um()));
  const Vec2 to = point_at(row.guide, from_um(row.run.last_um()));
  crossed->add(part_of(row.guide, from, to));
}

/// What add_piece_edges draws.
void add_edges(const job::Job& job, const solve::Piece& piece, Crossed* crossed) {
  for (const piece::Edge& edge : piece.outline.edges) crossed->add(edge.line);
  if (piece.kind != solve::PieceKind::section) return;
  const job::Section& section = job.sections[static_cast<std::size_t>(piece.entry)];
  const auto upright = [&](Um x) { crossed->add_line({x, 0}, {x, piece.length_um}); };
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    upright(sleeve.left_um);
    upright(sleeve.left_um + sleeve.width_um);
    if (section.make != job::Make::two_leaf) upright(drawn_make_line_um(section, sleeve));
  }
}

}  // namespace

LeftOut left_out_pages(const job::Job& job, const solve::Results& results, int piece,
                       const PageCut& cut) {
  const solve::Piece& of = results.pieces[static_cast<std::size_t>(piece)];
  Crossed crossed(cut);
  add_edges(job, of, &crossed);
  for (int i = 0; i < of.row_count; ++i) {
    add_row(results.rows[static_cast<std::size_t>(of.first_row + i)], &crossed);
  }
  return std::move(crossed).left_out();
}

bool is_left_out(const LeftOut& left_out, std::int64_t page) {
  return !left_out.empty() && left_out[static_cast<std::size_t>(page)];
}

std::int64_t count_of(const LeftOut& left_out) {
  return std::count(left_out.begin(), left_out.end(), true);
}

}  // namespace pouncemark::sheets

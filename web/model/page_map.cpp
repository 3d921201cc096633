#include "web/model/page_map.h"

#include <algorithm>
#include <cstddef>

namespace pouncemark::web {
namespace {

constexpr int kStepsOfArc = 32;

MapEdge map_edge(const piece::Edge& edge) {
  MapEdge drawn;
  drawn.role = edge.role;
  const int steps = is_straight(edge.line) ? 1 : kStepsOfArc;
  const double whole = length(edge.line);
  for (int i = 0; i <= steps; ++i) {
    const Vec2 at = point_at(edge.line, whole * i / steps);
    drawn.places.push_back({to_um(at.x), to_um(at.y)});
  }
  return drawn;
}

}  // namespace

PageMap page_map(const Solved& solved, const PaperChoice& choice, const GuideLine& line) {
  PageMap map;
  if (line.kind != GuideKind::full_face || line.sheets == 0) return map;
  const solve::Piece& piece = solved.results.pieces[static_cast<std::size_t>(line.piece)];
  const output::FullFacePages pages = full_face_pages_of(solved, choice, line.piece);
  map.width_um = piece.width_um;
  map.length_um = piece.length_um;
  std::int64_t printed = 0;
  for (std::int64_t index = 0; index < pages.all(); ++index) {
    const std::int64_t column = index % pages.cut.across.pages;
    const std::int64_t row = index / pages.cut.across.pages;
    const bool is_last_column = column + 1 == pages.cut.across.pages;
    const bool is_last_row = row + 1 == pages.cut.along.pages;
    MapPage page;
    page.number = index + 1;
    page.printed_as =
        pages.left_out.empty() || !pages.left_out[static_cast<std::size_t>(index)] ? ++printed : 0;
    page.left = column * pages.cut.across.pitch_um;
    page.low = row * pages.cut.along.pitch_um;
    page.right = is_last_column ? map.width_um : page.left + pages.cut.across.pitch_um;
    page.high = is_last_row ? map.length_um : page.low + pages.cut.along.pitch_um;
    map.pages.push_back(page);
  }
  for (const piece::Edge& edge : piece.outline.edges) map.edges.push_back(map_edge(edge));
  return map;
}

const MapPage* page_at(const PageMap& map, Um across, Um up) {
  const auto found = std::find_if(map.pages.begin(), map.pages.end(), [&](const MapPage& page) {
    return across >= page.left && across < page.right && up >= page.low && up < page.high;
  });
  return found == map.pages.end() ? nullptr : &*found;
}

std::int64_t stepped_page(std::int64_t page, std::int64_t by, std::int64_t sheets) {
  return std::clamp<std::int64_t>(page + by, 1, std::max<std::int64_t>(sheets, 1));
}

}  // namespace pouncemark::web

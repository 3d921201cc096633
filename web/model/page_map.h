#pragma once

#include <cstdint>
#include <vector>

#include "engine/piece/outline.h"
#include "web/model/guides.h"

namespace pouncemark::web {

/// One page of a guide as it lies on its piece: from its datum to the next page's, or to the end of
/// the piece; micrometres of the piece.
struct MapPage {
  std::int64_t number = 0;
  std::int64_t printed_as = 0;  ///< the file's own page, from 1; 0: left out
  Um left = 0;
  Um low = 0;
  Um right = 0;
  Um high = 0;
};

/// One edge of the piece, an arc in short steps.
struct MapEdge {
  piece::EdgeRole role = piece::EdgeRole::side;
  std::vector<solve::PlaceUm> places;
};

/// The pages of a full-face guide over their piece, and its edges. No page: the guide is a list.
struct PageMap {
  Um width_um = 0;
  Um length_um = 0;
  std::vector<MapPage> pages;
  std::vector<MapEdge> edges;
};

/// Never called while drawing.
PageMap page_map(const Solved& solved, const PaperChoice& choice, const GuideLine& line);

/// The page at a place of the piece; nullptr beyond all of them.
const MapPage* page_at(const PageMap& map, Um across, Um up);

/// The page `by` steps on in the file from one of its pages, held at its ends.
std::int64_t stepped_page(std::int64_t page, std::int64_t by, std::int64_t sheets);

}  // namespace pouncemark::web

#include <array>

#include "engine/base/number_text.h"
#include "engine/drawing/symbols.h"
#include "engine/drawing/taken_room.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Pen;
using drawing::Spot;

const Pen kCutPen{250, {}, 0};
const Pen kTapePen{250, {3'000, 2'000}, 0};
const Pen kHatchPen{120, {}, 500};
constexpr Um kTapeWordsUm = 3'500;

/// The edge of the piece that distances across are counted from.
std::string datum_side(const solve::Piece& piece) {
  for (const piece::Edge& edge : piece.outline.edges) {
    const bool stands_left = edge.line.from.x < from_um(1) && edge.line.to.x < from_um(1);
    if (!stands_left) continue;
    if (edge.role == piece::EdgeRole::hinge_side) return "the hinge side";
    if (edge.role == piece::EdgeRole::fly_side) return "the fly side";
  }
  return "the left edge";
}

std::string page_word(std::int64_t number) { return "Page " + std::to_string(number); }

void add_words(drawing::Drawing* picture, Spot at, int quarter_turns, std::string words) {
  drawing::Text text;
  text.at = at;
  text.size_um = kTapeWordsUm;
  text.quarter_turns = quarter_turns;
  text.words = std::move(words);
  drawing::add_text(*picture, std::move(text));
}

/// What a page says toward a neighbour that is not printed.
std::string left_out_words(std::int64_t number) {
  return page_word(number) + " is left out: nothing lies there.";
}

/// The strip this page shares with the one to its right, and the line to tape that page to.
void add_right_tape(const PageView& view, drawing::Drawing* picture) {
  const Um at = view.left() + view.set.cut.across.pitch_um;
  if (!view.is_printed(1, 0)) {
    const Spot edge = view.on_paper(view.right(), view.low());
    add_words(picture, {edge.x - 1'500, edge.y + 100'000}, 1, left_out_words(view.page.number + 1));
    return;
  }
  const drawing::Box strip =
      view.on_paper(drawing::Box{{at, view.low()}, {view.right(), view.high()}});
  drawing::add_hatching(*picture, strip, 6'000, kHatchPen);
  drawing::add_line(*picture, strip.low, {strip.low.x, strip.high.y}, kTapePen);
  add_words(picture, {strip.low.x - 1'500, strip.low.y + 100'000}, 1,
            "tape line: " + exact_mm_text(at) + " from " + datum_side(view.piece()) + ". " +
                page_word(view.page.number + 1) + " lies over.");
}

void add_top_tape(const PageView& view, drawing::Drawing* picture) {
  const Um at = view.low() + view.set.cut.along.pitch_um;
  if (!view.is_printed(0, 1)) {
    const Spot edge = view.on_paper(view.left(), view.high());
    add_words(picture, {edge.x + 50'000, edge.y - 4'500}, 0,
              left_out_words(view.page.number + view.set.cut.across.pages));
    return;
  }
  const drawing::Box strip =
      view.on_paper(drawing::Box{{view.left(), at}, {view.right(), view.high()}});
  drawing::add_hatching(*picture, strip, 6'000, kHatchPen);
  drawing::add_line(*picture, strip.low, {strip.high.x, strip.low.y}, kTapePen);
  add_words(picture, {strip.low.x + 50'000, strip.low.y - 4'500}, 0,
            "tape line: " + exact_mm_text(at) + " from the bottom. " +
                page_word(view.page.number + view.set.cut.across.pages) + " lies over.");
}

/// Cut lines at the left and bottom, where this page is laid on its neighbours' tape lines.
void add_cut_lines(const PageView& view, drawing::Drawing* picture) {
  const drawing::Box box = view.window();
  if (view.page.column > 0 && !view.is_printed(-1, 0)) {
    add_words(picture, {box.low.x + 4'500, box.low.y + 100'000}, 1,
              left_out_words(view.page.number - 1));
  } else if (view.page.column > 0) {
    drawing::add_line(*picture, box.low, {box.low.x, box.high.y}, kCutPen);
    add_words(picture, {box.low.x + 4'500, box.low.y + 100'000}, 1,
              "cut here: " + exact_mm_text(view.left()) + " from " + datum_side(view.piece()) +
                  ". " + page_word(view.page.number - 1) + " lies under.");
  }
  if (view.page.row > 0 && !view.is_printed(0, -1)) {
    add_words(picture, {box.low.x + 50'000, box.low.y + 1'500}, 0,
              left_out_words(view.page.number - view.set.cut.across.pages));
  } else if (view.page.row > 0) {
    drawing::add_line(*picture, box.low, {box.high.x, box.low.y}, kCutPen);
    add_words(picture, {box.low.x + 50'000, box.low.y + 1'500}, 0,
              "cut here: " + exact_mm_text(view.low()) + " from the bottom. " +
                  page_word(view.page.number - view.set.cut.across.pages) + " lies under.");
  }
}

/// Registration marks stand in the middle of every shared strip, at the same place of the piece on
/// both pages.
void add_registration(const PageView& view, drawing::Drawing* picture) {
  const Cut& across = view.set.cut.across;
  const Cut& along = view.set.cut.along;
  const auto add = [&](Um x, Um y) {
    if (view.sees({x, y})) drawing::add_registration_mark(*picture, view.on_paper(x, y));
  };
  for (std::int64_t seam = view.page.column; seam <= view.page.column + 1; ++seam) {
    const bool is_taped = view.is_printed(seam == view.page.column ? -1 : 1, 0);
    if (seam < 1 || seam >= across.pages || !is_taped) continue;
    for (const Um y : {view.low() + 60'000, view.low() + along.pitch_um - 60'000}) {
      add(seam * across.pitch_um + across.overlap_um / 2, y);
    }
  }
  for (std::int64_t seam = view.page.row; seam <= view.page.row + 1; ++seam) {
    const bool is_taped = view.is_printed(0, seam == view.page.row ? -1 : 1);
    if (seam < 1 || seam >= along.pages || !is_taped) continue;
    for (const Um x : {view.left() + 38'000, view.left() + across.pitch_um - 38'000}) {
      add(x, seam * along.pitch_um + along.overlap_um / 2);
    }
  }
}

/// The nearest spot to the page's corner where two short lines of words touch nothing; where there
/// is none, where they touch no other words.
Spot free_spot(const drawing::TakenRoom& taken, Spot corner) {
  constexpr Um kWide = 44'000;
  constexpr Um kHigh = 9'000;
  constexpr Um kReach = 150'000;
  const auto box_at = [](Spot at) {
    return drawing::Box{{at.x - 1'500, at.y - 2'000}, {at.x + kWide, at.y + kHigh}};
  };
  for (const bool strict : {true, false}) {
    for (Um up = 2'500; up < kReach; up += 3'000) {
      for (Um along = 3'000; along < kReach; along += 3'000) {
        const Spot at{corner.x + along, corner.y + up};
        if (strict ? taken.is_free(box_at(at)) : taken.is_free_of_words(box_at(at))) return at;
      }
    }
  }
  return {corner.x + 3'000, corner.y + 2'500};
}

}  // namespace

void add_page_frame(const PageView& view, drawing::Drawing* picture) {
  if (view.page.column + 1 < view.set.cut.across.pages) add_right_tape(view, picture);
  if (view.page.row + 1 < view.set.cut.along.pages) add_top_tape(view, picture);
  add_cut_lines(view, picture);
  add_registration(view, picture);
}

void add_datum(const PageView& view, drawing::Drawing* picture) {
  const Spot corner = view.window().low;
  if (view.page.number == 1) {
    drawing::add_datum_square(*picture, {corner.x + 1'500, corner.y + 1'500}, 6'000);
  }
  drawing::TakenRoom taken;
  taken.take(*picture);
  const Spot at = free_spot(taken, corner);
  add_words(picture, {at.x, at.y + 4'600}, 0, "datum across " + exact_mm_text(view.left()));
  add_words(picture, at, 0, "datum along " + exact_mm_text(view.low()));
}

}  // namespace pouncemark::sheets

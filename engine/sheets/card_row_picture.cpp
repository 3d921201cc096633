#include <algorithm>
#include <utility>

#include "engine/drawing/symbols.h"
#include "engine/sheets/card_parts.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Spot;
using drawing::Weight;

constexpr Um kTopUm = 39'800;
constexpr Um kFootUm = 52'300;
constexpr Um kEndsInUm = 9'000;  ///< start and stop stand so far in from the picture's ends
constexpr Um kStitchUm = 3'600;
constexpr Um kMiddleUm = (kTopUm + kFootUm) / 2;

/// No pen reaches farther than this beyond its line: so far the picture keeps from the card's
/// sides.
constexpr Um kPenUm = 500;

const drawing::Pen kThin{300, {}, 0};
const drawing::Pen kEdge{700, {}, 0};
const drawing::Pen kUnder{300, {2'000, 1'400}, 0};
const FitStyle kPlace{4'400, 3'800, Weight::bold, Align::left, 0};

/// A short mark across the row at every stitch from `from` to `to`.
void add_ticks(const CardRoom& room, Um from, Um to, Um down, drawing::Drawing* picture) {
  std::vector<drawing::PathStep> steps;
  for (Um x = from; x < to; x += kStitchUm) {
    steps.push_back({drawing::Step::move, room.at(x, down - 1'200), {}, {}});
    steps.push_back({drawing::Step::line, room.at(x, down + 1'200), {}, {}});
  }
  drawing::add_stroke(*picture, {350, {}, 0}, std::move(steps));
}

/// How far down the edge beside the row, the row and its staples stand. The row along one edge
/// lies nearer to it than its staples do; in a lap all stand between both edges.
struct Levels {
  Um edge = 0;
  Um row = 0;
  Um staples = 0;
};

Levels levels_of(const plan::CardRow& row) {
  if (row.place == solve::RowPlace::lap) return {kTopUm + 3'400, kMiddleUm, kMiddleUm};
  const Levels up{kTopUm, kTopUm + 4'400, kTopUm + 9'000};
  if (row.edge_is_up) return up;
  const Um both = kTopUm + kFootUm;
  return {both - up.edge, both - up.row, both - up.staples};
}

void add_edges(const plan::CardRow& row, const Levels& levels, const CardRoom& room,
               drawing::Drawing* picture) {
  const auto across = [&](Um down, const drawing::Pen& pen) {
    drawing::add_line(*picture, room.at(0, down), room.at(room.wide_um, down), pen);
  };
  drawing::add_rectangle(*picture, room.box(0, kTopUm, room.wide_um, kFootUm), kThin);
  if (row.place == solve::RowPlace::lap) {
    across(levels.edge, row.edge_is_up ? kUnder : kEdge);
    across(kTopUm + kFootUm - levels.edge, row.edge_is_up ? kEdge : kUnder);
  } else if (row.is_hinge) {
    const Spot left = room.at(0, levels.edge);
    const Spot right = room.at(room.wide_um, levels.edge);
    drawing::add_hinge_edge(*picture, row.edge_is_up ? right : left, row.edge_is_up ? left : right);
  } else {
    across(levels.edge, kEdge);
  }
  if (row.ends_at_fly) {
    drawing::add_solid(*picture, room.box(0, kTopUm, 1'200, kFootUm));
    drawing::add_fly_edge(*picture, room.at(room.wide_um, kFootUm), room.at(room.wide_um, kTopUm));
  }
}

void add_way(const plan::CardRow& row, const CardRoom& room, drawing::Drawing* picture) {
  constexpr Um kBase = kFootUm + 5'400;
  constexpr Um kArrow = kBase - 1'600;
  const Um wide = room.wide_um;
  const Um from = add_fitted(room.at(0, kBase), row.left, kPlace, wide / 3, picture);
  FitStyle at_right = kPlace;
  at_right.align = Align::right;
  const Um to = add_fitted(room.at(wide, kBase), row.right, at_right, wide / 3, picture);
  const Um middle = (from + wide - to) / 2;
  const Um sew = add_fitted(room.at(middle, kBase), "sew " + row.sew,
                            {5'600, 4'400, Weight::bold, Align::centre, 0}, wide / 3, picture);
  const drawing::Pen pen{700, {}, 0};
  const Spot left = room.at(from + 4'000, kArrow);
  const Spot left_of_words = room.at(middle - sew / 2 - 2'500, kArrow);
  const Spot right_of_words = room.at(middle + sew / 2 + 2'500, kArrow);
  const Spot right = room.at(wide - to - 4'000, kArrow);
  if (row.begins_at_right) {
    drawing::add_line(*picture, right, right_of_words, pen);
    drawing::add_arrow(*picture, left_of_words, left, pen);
  } else {
    drawing::add_line(*picture, left, left_of_words, pen);
    drawing::add_arrow(*picture, right_of_words, right, pen);
  }
}

}  // namespace

void add_row_picture(const plan::CardRow& row, bool has_staples, const CardRoom& card,
                     drawing::Drawing* picture) {
  const CardRoom room{card.at(kPenUm, 0), card.wide_um - 2 * kPenUm};
  const Um start = kEndsInUm;
  const Um stop = row.is_stopped ? room.wide_um * 2 / 3 : room.wide_um - kEndsInUm;
  const Levels levels = levels_of(row);
  add_edges(row, levels, room, picture);
  const bool is_lap = row.place == solve::RowPlace::lap;
  if (has_staples && !is_lap) {
    for (Um x = start + 8'000; x < stop; x += 14'000) {
      const Spot at = room.at(x, levels.staples);
      drawing::add_line(*picture, {at.x - 2'500, at.y}, {at.x + 2'500, at.y}, {600, {}, 0});
      drawing::add_dot(*picture, {at.x - 2'500, at.y}, 600);
      drawing::add_dot(*picture, {at.x + 2'500, at.y}, 600);
    }
  }
  drawing::add_line(*picture, room.at(start, levels.row), room.at(stop, levels.row),
                    {800, {2'600, 1'000}, 0});
  if (is_lap) add_ticks(room, start + 1'300, stop, levels.row, picture);
  for (const Um x : {start, stop}) {
    drawing::add_line(*picture, room.at(x, kTopUm - 3'500), room.at(x, kFootUm), {600, {}, 0});
  }
  const Um half = (stop - start) / 2 - 4'000;
  FitStyle style{5'000, 3'800, Weight::bold, Align::left, 0};
  const std::string begin = "start " + row.start;
  const std::string end = "stop " + row.stop;
  add_fitted(room.at(start + 2'000, kTopUm - 1'100), row.begins_at_right ? end : begin, style, half,
             picture);
  style.align = Align::right;
  add_fitted(room.at(stop - 2'000, kTopUm - 1'100), row.begins_at_right ? begin : end, style, half,
             picture);
  add_way(row, card, picture);
}

}  // namespace pouncemark::sheets

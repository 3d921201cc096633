#include "engine/sheets/strip_length.h"

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/drawing/symbols.h"
#include "engine/plan/card_cells.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/free_room.h"
#include "engine/sheets/marks.h"

namespace pouncemark::sheets {
namespace {

using drawing::Drawing;
using drawing::Spot;
using drawing::Weight;

constexpr Um kLeastWideUm = 40'000;
constexpr Um kBesideHolesUm = 5'800;
constexpr Um kFiguresWideUm = 29'000;
constexpr Um kFigureUm = 5'600;
constexpr Um kSmallUm = 3'800;
/// The label of a hole, its figure and a word under it, takes so much up and down from its middle.
constexpr Um kLabelHalfUm = 5'600;
/// What stands at the foot of a length.
constexpr Um kFootHighUm = 11'500;
constexpr Um kCentreReachUm = 4'500;
constexpr Um kTodayUm = 600;

const drawing::Pen kThin{kThinPenUm, {}, 0};
const drawing::Pen kHole{300, {}, 0};
const drawing::Pen kEdge{1'000, {}, 0};
const drawing::Pen kTape{250, {3'000, 2'000}, 0};

/// A length with the way from the strip to the paper.
struct View {
  const StripLength& of;

  const plan::DrillingStrip& strip() const { return of.strip; }
  Um wide() const { return strip_width(of.strip); }
  Um first() const { return of.number * of.cut.pitch_um; }  ///< from the datum end
  bool is_last() const { return of.number + 1 == of.cut.pages; }
  Um last() const { return std::min(first() + of.cut.window_um, strip().length_um); }

  /// So far along the edge from the datum end, so far in from the edge.
  Spot at(Um along, Um in) const {
    const Um x = strip().edge_is_left ? in : wide() - in;
    return {of.corner.x + x, of.corner.y + along - first()};
  }
  drawing::Way way(const plan::StripWay& of_hole) const {
    return {strip().edge_is_left ? of_hole.in : -of_hole.in, of_hole.along};
  }
  /// Where words begin, and how much room they have.
  Um words_left() const {
    const Um holes = strip().deepest_um + kBesideHolesUm;
    return of.corner.x + (strip().edge_is_left ? holes : 1'000);
  }
  Um words_wide() const { return wide() - strip().deepest_um - kBesideHolesUm - 1'000; }
};

void add_words(const View& view, Um base, const std::string& words, Um size, Weight weight,
               Drawing* picture) {
  add_fitted({view.words_left(), base}, words, {size, kSmallUm, weight}, view.words_wide(),
             picture);
}

/// The tight hole as wide as the screw, a slot with round ends; both of them to be measured.
void add_hole(const View& view, const plan::StripHole& hole, Drawing* picture) {
  const Spot middle = view.at(hole.at_um, hole.in_um);
  const Um screw = view.strip().screw_um;
  const drawing::Way way = view.way(hole.way);
  drawing::add_cross(*picture, middle, screw / 2 + kCentreReachUm, kThin);
  if (hole.slot_um <= screw) {
    drawing::add_circle(*picture, middle, screw / 2, kHole);
    if (hole.is_tight) return;
  } else {
    const double half = static_cast<double>(hole.slot_um - screw) / 2;
    const double round = static_cast<double>(screw) / 2;
    const Spot out = drawing::stepped(middle, way, half, 0);
    const Spot in = drawing::stepped(middle, way, -half, 0);
    const Spot out_right = drawing::stepped(out, way, 0, -round);
    const Spot in_left = drawing::stepped(in, way, 0, round);
    std::vector<drawing::PathStep> steps{{drawing::Step::move, out_right, {}, {}}};
    drawing::append_arc(steps, {out_right, drawing::stepped(out, way, 0, round), out, true});
    steps.push_back({drawing::Step::line, in_left, {}, {}});
    drawing::append_arc(steps, {in_left, drawing::stepped(in, way, 0, -round), in, true});
    steps.push_back({drawing::Step::close, out_right, {}, {}});
    drawing::add_stroke(*picture, kHole, std::move(steps));
  }
  drawing::add_dot(*picture, drawing::stepped(middle, way, static_cast<double>(hole.screw_um), 0),
                   kTodayUm);
}

/// Figure and word of a hole, beside it, and what room they take up the strip; holes that stand
/// closer than their labels are high have theirs left out in turn.
void add_labels(const View& view, std::vector<Stretch>* taken, Drawing* picture) {
  const Um lowest = view.first() + kFootHighUm + kLabelHalfUm;
  const Um highest =
      (view.is_last() ? view.last() : view.first() + view.of.cut.pitch_um) - kLabelHalfUm;
  Um free_from = view.first();
  for (const plan::StripHole& hole : view.strip().holes) {
    if (hole.at_um < view.first() || hole.at_um > view.last()) continue;
    const Um middle = std::clamp(hole.at_um, lowest, std::max(lowest, highest));
    if (middle - kLabelHalfUm < free_from) continue;
    free_from = middle + kLabelHalfUm;
    taken->push_back({middle - kLabelHalfUm, free_from});
    const Um base = view.at(middle, 0).y;
    add_words(view, base + 500, plan::paper_text(hole.at_um), kFigureUm, Weight::bold, picture);
    add_words(view, base - 4'400,
              hole.is_tight ? "TIGHT " + short_mm_text(view.strip().screw_um, 1)
              : hole.slot_um > view.strip().screw_um
                  ? "slot " + short_mm_text(hole.slot_um, 1)
                  : "hole " + short_mm_text(view.strip().screw_um, 1),
              kSmallUm, hole.is_tight ? Weight::bold : Weight::regular, picture);
    const Um reach = view.strip().deepest_um + kCentreReachUm;
    drawing::add_line(*picture, view.at(hole.at_um, hole.in_um), view.at(middle, reach), kThin);
  }
}

/// A tick at every whole ten from the datum, longer at fifties; the edge itself.
void add_edge(const View& view, Drawing* picture) {
  constexpr Um kTen = 10'000;
  std::vector<drawing::PathStep> steps;
  for (Um at = divide_up(view.first(), kTen) * kTen; at <= view.last(); at += kTen) {
    steps.push_back({drawing::Step::move, view.at(at, 0), {}, {}});
    steps.push_back(
        {drawing::Step::line, view.at(at, at % (5 * kTen) == 0 ? 4'000 : 2'200), {}, {}});
  }
  drawing::add_stroke(*picture, kThin, std::move(steps));
  // None of the pen lies beyond the edge.
  const Um half = kEdge.width_um / 2;
  drawing::add_line(*picture, view.at(view.first(), half), view.at(view.last(), half), kEdge);
}

/// Where this length is cut, and where the next is taped on.
void add_ends(const View& view, std::vector<Stretch>* taken, Drawing* picture) {
  const auto across = [&](Um along, const drawing::Pen& pen) {
    drawing::add_line(*picture, view.at(along, 0), view.at(along, view.wide()), pen);
  };
  across(view.first(), kThin);
  const Um foot = view.at(view.first(), 0).y;
  taken->push_back({view.first(), view.first() + kFootHighUm});
  if (view.of.number == 0) {
    drawing::add_datum_square(*picture, {view.words_left(), foot + 5'500}, 5'800);
  } else {
    add_words(view, foot + 6'000, exact_mm_text(view.first()) + " from", kFigureUm, Weight::bold,
              picture);
  }
  add_words(view, foot + 1'500, view.strip().from, kSmallUm, Weight::bold, picture);
  if (view.is_last()) {
    across(view.last(), kEdge);
    const Um base = view.at(view.last(), 0).y - 5'000;
    add_words(view, base, view.strip().to, kSmallUm, Weight::bold, picture);
    taken->push_back({view.last() - 6'500, view.last()});
  } else {
    const Um tape = view.first() + view.of.cut.pitch_um;
    across(tape, kTape);
    add_words(view, view.at(tape, 0).y + 2'500, "next lies over", kSmallUm, Weight::regular,
              picture);
    taken->push_back({tape, view.last()});
  }
}

/// The foot of something so high that stands clear of what is taken; nothing where nothing is free.
std::optional<Um> free_foot(const View& view, Um high, std::vector<Stretch>* taken) {
  const Stretch room = longest_free({view.first(), view.last()}, *taken);
  if (room.length() < high) return std::nullopt;
  const Um foot = room.low + (room.length() - high) / 2;
  taken->push_back({foot, foot + high});
  return view.at(foot, 0).y;
}

/// Whose strip it is and which of its lengths, FRONT, and which way the top lies.
void add_names(const View& view, std::vector<Stretch> taken, Drawing* picture) {
  const plan::DrillingStrip& strip = view.strip();
  const std::string of = "of " + std::to_string(view.of.cut.pages);
  const std::string number = std::to_string(view.of.number + 1);
  if (const std::optional<Um> foot = free_foot(view, 34'000, &taken)) {
    add_words(view, *foot + 28'500, "bay " + strip.bay, 5'600, Weight::bold, picture);
    add_words(view, *foot + 23'000, strip.piece, 4'400, Weight::regular, picture);
    add_words(view, *foot + 17'600, strip.edge, 4'400, Weight::bold, picture);
    const Um wide =
        add_fitted({view.words_left(), *foot + 4'500}, number, {14'000, kSmallUm, Weight::bold},
                   view.words_wide() - 12'000, picture);
    add_fitted({view.words_left() + wide + 1'500, *foot + 4'500}, of, {kSmallUm, kSmallUm},
               view.words_wide() - wide - 1'500, picture);
  } else if (const std::optional<Um> low = free_foot(view, 11'000, &taken)) {
    add_words(view, *low + 6'500, strip.bay + " " + strip.edge, kSmallUm, Weight::bold, picture);
    add_words(view, *low + 1'500, number + " " + of, kSmallUm, Weight::bold, picture);
  }
  if (const std::optional<Um> foot = free_foot(view, 15'000, &taken)) {
    constexpr Um kArrowUm = 7'000;
    // The arrow turns about its foot, and the word beside it turns with it.
    constexpr Spot kFeet[] = {{2'000, 3'000}, {10'000, 2'500}, {13'000, 11'000}, {2'000, 12'500}};
    const Spot by = kFeet[strip.top_turns];
    drawing::add_top_arrow(*picture, {view.words_left() + by.x, *foot + by.y}, kArrowUm,
                           strip.top_turns);
  }
  if (const std::optional<Um> foot = free_foot(view, 9'000, &taken)) {
    drawing::add_word_box(
        *picture,
        {{view.words_left(), *foot + 1'000},
         {view.words_left() + std::min<Um>(22'000, view.words_wide()), *foot + 7'500}},
        "FRONT");
  }
}

/// Between edge and holes, where there is room for it, between two of the longer ticks.
void add_edge_words(const View& view, Drawing* picture) {
  constexpr Um kNeededUm = 6'600;
  constexpr Um kEveryUm = 50'000;
  constexpr Um kClearUm = 22'000;
  const std::vector<plan::StripHole>& holes = view.strip().holes;
  for (Um at = divide_up(view.first(), kEveryUm) * kEveryUm + kEveryUm / 2;
       at + kClearUm < view.last(); at += kEveryUm) {
    const bool is_free = std::none_of(holes.begin(), holes.end(), [&](const plan::StripHole& hole) {
      return std::llabs(hole.at_um - at) < kClearUm + hole.slot_um / 2 &&
             2 * hole.in_um - view.strip().deepest_um < kNeededUm + kCentreReachUm;
    });
    if (!is_free) continue;
    drawing::Text text;
    text.at = view.at(at, view.strip().edge_is_left ? 5'500 : 3'200);
    text.size_um = kSmallUm;
    text.align = drawing::Align::centre;
    text.quarter_turns = 1;
    text.words = "sheet's edge";
    drawing::add_text(*picture, std::move(text));
  }
}

}  // namespace

Um strip_width(const plan::DrillingStrip& strip) {
  return std::max(kLeastWideUm, strip.deepest_um + kBesideHolesUm + kFiguresWideUm);
}

void add_strip_length(const StripLength& length, Drawing* picture) {
  const View view{length};
  std::vector<Stretch> taken;
  // Holes, crosses and labels near an end may reach beyond the length.
  const Spot high = view.at(view.last(), 0);
  picture->items.emplace_back(drawing::ClipStart{
      {{length.corner.x, length.corner.y}, {length.corner.x + view.wide(), high.y}}});
  for (const plan::StripHole& hole : view.strip().holes) {
    const Um reach = hole.slot_um / 2 + kCentreReachUm;
    if (hole.at_um + reach < view.first() || hole.at_um - reach > view.last()) continue;
    add_hole(view, hole, picture);
  }
  add_edge(view, picture);
  add_ends(view, &taken, picture);
  add_labels(view, &taken, picture);
  add_names(view, taken, picture);
  add_edge_words(view, picture);
  // Where it is cut off.
  drawing::add_line(*picture, view.at(view.first(), view.wide()), view.at(view.last(), view.wide()),
                    kTape);
  picture->items.emplace_back(drawing::ClipEnd{});
}

}  // namespace pouncemark::sheets

#include "web/panels/running_totals.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "engine/base/number_text.h"
#include "engine/solve/solve.h"
#include "web/model/words.h"
#include "web/panels/lap_closeup.h"

namespace pouncemark::web {
namespace {

constexpr Um kIn = 12'000;
constexpr float kBandHeight = 40;

/// The sleeves side by side as a band, in true proportion.
struct Strip {
  const solve::Piece& piece;
  const solve::Piece* before;  ///< nullptr: it was not there, or nothing was changed
  float left = 0;
  double px_per_mm = 1;
  float top = 0;
  float bottom = 0;
  int chosen = -1;  ///< the lap that is shown

  float x(Um um) const { return left + static_cast<float>(from_um(um) * px_per_mm); }
  std::size_t laps() const { return piece.row_middles_um.size(); }
  /// The middle of a lap, or an end of the section beyond the first and the last.
  Um lap_middle(std::ptrdiff_t lap) const {
    if (lap < 0) return 0;
    const auto index = static_cast<std::size_t>(lap);
    return index < laps() ? piece.row_middles_um[index] : piece.width_um;
  }
};

/// A sleeve's number over it: pressed it goes to the sleeve.
void sleeve_number(Page& page, const Strip& strip, std::size_t index, float* free_from) {
  const Brush& brush = page.brush;
  const solve::Sleeve& sleeve = strip.piece.sleeves[index];
  const auto at = static_cast<std::ptrdiff_t>(index);
  const Area area = {strip.x(strip.lap_middle(at - 1)), strip.top - button_height(),
                     strip.x(strip.lap_middle(at)), strip.top};
  const Touch touch = page.hand.touch("sleeve." + sleeve.code, area, "sleeve " + sleeve.code);
  const std::string number = std::to_string(sleeve.number + 1);
  const float x = strip.x(sleeve.left_um + sleeve.width_um / 2);
  const float half = brush.width_of(number, Role::text, true) / 2;
  if (x - half >= *free_from) {
    const float base = strip.top - 10;
    brush.words({x, base}, number, {Role::text, true, kInk, Side::middle});
    if (touch.over) brush.line({x - half, base + 4}, {x + half, base + 4}, kInk, 1.5f);
    *free_from = x + half + 4;
  }
  focus_ring(brush, page.hand, area.inset(4), touch.focused);
  if (!touch.clicked) return;
  const Place to{page.bench.place().piece, static_cast<int>(index)};
  page.later([&bench = page.bench, to] { bench.go(to); });
}

/// A lap is chosen by pressing the band near it.
void choose_laps(Page& page, const Strip& strip) {
  for (std::size_t i = 0; i < strip.laps(); ++i) {
    const auto lap = static_cast<std::ptrdiff_t>(i);
    if (lap == strip.chosen) continue;
    const Um middle = strip.lap_middle(lap);
    const Area area = {strip.x((strip.lap_middle(lap - 1) + middle) / 2), strip.top,
                       strip.x((middle + strip.lap_middle(lap + 1)) / 2), strip.bottom};
    const std::string& code = strip.piece.sleeves[i].code;
    const Touch touch = page.hand.hold({"lap." + code, area, "lap at the right of " + code, true},
                                       area.holds(page.hand.at()), false);
    if (touch.over) {
      const float x = strip.x(middle);
      page.brush.line({x, strip.top - 5}, {x, strip.bottom + 5}, kPen, 2);
    }
    if (touch.clicked) choose_lap(page, static_cast<int>(i));
  }
}

void band(Page& page, const Strip& strip) {
  const Brush& brush = page.brush;
  const solve::Piece& piece = strip.piece;
  const float right = strip.x(piece.width_um);
  brush.fill({strip.left, strip.top, right, strip.bottom}, kSheet);
  for (std::size_t i = 0; i < strip.laps(); ++i) {
    brush.fill({strip.x(piece.sleeves[i + 1].left_um), strip.top,
                strip.x(piece.running_totals_um[i]), strip.bottom},
               kLap);
  }
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    brush.fill({strip.x(sleeve.left_um + kIn), strip.top + 1,
                strip.x(sleeve.left_um + sleeve.width_um - kIn), strip.bottom - 1},
               kCloth);
  }
  const job::Section& section =
      page.bench.now().job.sections[static_cast<std::size_t>(piece.entry)];
  const bool left_over = job::left_lies_over(section);
  for (std::size_t i = 1; i < piece.sleeves.size(); ++i) {
    // The edge that lies under its neighbour.
    const float x = strip.x(left_over ? piece.sleeves[i].left_um : piece.running_totals_um[i - 1]);
    brush.dashes({x, strip.top}, {x, strip.bottom}, kSheetEdge, 1.2f, 4, 3);
  }
  brush.frame({strip.left, strip.top, right, strip.bottom}, kSheetEdge, 1.5f);
  for (const Um middle : piece.row_middles_um) {
    const float x = strip.x(middle);
    brush.line({x, strip.top}, {x, strip.bottom}, kThread, 2.2f);
  }
}

/// The right edge of a sleeve, pulled for the width of that sleeve alone.
void width_handle(Page& page, const Strip& strip, std::size_t sleeve, bool is_chosen) {
  const std::string& code = strip.piece.sleeves[sleeve].code;
  const float x = strip.x(strip.piece.running_totals_um[sleeve]);
  PullHandle edge;
  edge.id = is_chosen ? "pull.width" : "pull.last_width";
  edge.words = "right edge of sleeve " + code + ", for its width alone";
  edge.place = {page.bench.place().piece, static_cast<int>(sleeve)};
  edge.measure = Measure::width;
  edge.px_per_mm = strip.px_per_mm;
  edge.line = {x, strip.top - 4, x, strip.bottom + 4};
  edge.by_tab = is_chosen;
  pull_handle(page, std::move(edge));
}

/// The chosen lap in pen: its two edges are pulled, the one for the lap of all sleeves, the other
/// for the width of the sleeve that ends there.
void chosen_lap(Page& page, const Strip& strip) {
  if (strip.chosen < 0) return;
  const auto lap = static_cast<std::size_t>(strip.chosen);
  const float left = strip.x(strip.piece.sleeves[lap + 1].left_um);
  const float right = strip.x(strip.piece.running_totals_um[lap]);
  for (const float x : {left, right}) {
    page.brush.line({x, strip.top - 4}, {x, strip.bottom + 4}, kPen, 3);
  }
  PullHandle edge;
  edge.id = "pull.lap_on_strip";
  edge.words = "left edge of sleeve " + strip.piece.sleeves[lap + 1].code + ", for the lap";
  edge.place = page.bench.place();
  edge.measure = Measure::lap;
  edge.sign = -1;
  // Every lap before it moves this edge along.
  edge.px_per_mm = strip.px_per_mm * static_cast<double>(lap + 1);
  edge.line = {left, strip.top - 4, left, strip.bottom + 4};
  edge.by_tab = false;
  pull_handle(page, std::move(edge));
  width_handle(page, strip, lap, true);
}

/// A running total under its tick; pressed it opens its sum. False where it has no room.
bool total(Page& page, const Strip& strip, std::size_t i, float line_down, float* free_from,
           float limit) {
  const Brush& brush = page.brush;
  const Um um = strip.piece.running_totals_um[i];
  const std::string figure = short_mm_text(um, 1);
  const bool is_last = i + 1 == strip.piece.running_totals_um.size();
  const bool is_chosen = static_cast<int>(i) == strip.chosen;
  const bool is_bold = is_last || is_chosen;
  const bool has_moved = strip.before != nullptr && i < strip.before->running_totals_um.size() &&
                         strip.before->running_totals_um[i] != um;
  const float half = brush.width_of(figure, Role::text, is_bold) / 2;
  const float x = strip.x(um);
  if (!is_last && (x - half < *free_from || x + half > limit)) return false;
  const float base = strip.bottom + 14 + line_down + brush.rise(Role::text);
  brush.words({x, base}, figure,
              {Role::text, is_bold, is_chosen || has_moved ? kPen : kInk,
               is_last ? Side::right : Side::middle});
  const float mid = is_last ? x - half : x;
  const std::string number = std::to_string(strip.piece.sleeves[i].number + 1);
  const Area area = {mid - half, base - brush.rise(Role::text) - 4, mid + half, base + 4};
  figure_on_bench(page, {"figure.total." + number, "slip.total." + number, area,
                         "running total " + number + ", " + figure});
  *free_from = x + half + 8;
  return true;
}

/// The totals on two lines in turn, the chosen one in any case; one that would run into its
/// neighbour is left out.
void totals(Page& page, const Strip& strip) {
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(Role::text);
  const std::size_t count = strip.piece.running_totals_um.size();
  std::array<float, 2> free_from = {strip.left - 40, strip.left - 40};
  const std::string last = short_mm_text(strip.piece.width_um, 1);
  const float last_left =
      strip.x(strip.piece.width_um) - brush.width_of(last, Role::text, true) - 8;
  const std::size_t last_line = (count - 1) % 2;
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t line = i % 2;
    const float low = line == 0 ? pitch : 0.0f;
    float limit = line == last_line ? last_left : 1e6f;
    // What stands before the chosen one gives way to it.
    const auto chosen = static_cast<std::size_t>(std::max(strip.chosen, 0));
    if (strip.chosen >= 0 && i < chosen && line == chosen % 2) {
      const Um um = strip.piece.running_totals_um[chosen];
      limit = std::min(
          limit, strip.x(um) - brush.width_of(short_mm_text(um, 1), Role::text, true) / 2 - 8);
    }
    const bool is_set = total(page, strip, i, low, &free_from[line], limit);
    const float x = strip.x(strip.piece.running_totals_um[i]);
    // The tick of a low figure stops short of the last one where that stands above it.
    const bool is_short = !is_set || (line == 0 && last_line == 1 && x > last_left + 4);
    const bool is_chosen = static_cast<int>(i) == strip.chosen;
    brush.line({x, strip.top}, {x, strip.bottom + (is_short ? 6.0f : 12 + low)},
               is_chosen ? kPen : kSheetEdge, is_chosen ? 3.0f : 1.8f);
  }
}

/// How far out it may be by then: at worst wide and pale, likely narrow and dark.
struct Wedge {
  float y = 0;
  float room = 0;
  double most_mm = 1;
  const job::Section& section;

  float half(Um um) const { return static_cast<float>(from_um(um) / most_mm) * room; }
  solve::OutBy at(std::size_t sleeve) const {
    return solve::out_by(section, static_cast<std::int64_t>(sleeve) + 1);
  }
};

void wedge_shape(Page& page, const Strip& strip, const Wedge& wedge, Um solve::OutBy::*um,
                 Colour colour) {
  std::vector<Spot> corners = {{strip.left, wedge.y}};
  const auto& ends = strip.piece.running_totals_um;
  for (std::size_t i = 0; i < ends.size(); ++i) {
    corners.push_back({strip.x(ends[i]), wedge.y - wedge.half(wedge.at(i).*um)});
  }
  for (std::size_t i = ends.size(); i-- > 0;) {
    corners.push_back({strip.x(ends[i]), wedge.y + wedge.half(wedge.at(i).*um)});
  }
  page.brush.shape(corners, colour);
}

/// "±2.7, at worst ±8.5" under its tick, its right end or its middle at `x`. Gives its parts.
struct OutWords {
  Area likely;
  Area worst;
};
OutWords out_words(Page& page, float right, float base, const solve::OutBy& out) {
  const Brush& brush = page.brush;
  const float over = base - brush.rise(Role::text) - 4;
  const std::string worst = kPlusMinus + mm_text(out.worst_um, 1);
  const std::string likely = kPlusMinus + mm_text(out.likely_um, 1);
  const float worst_left =
      right - brush.words({right, base}, worst, {Role::text, false, kInk, Side::right});
  const float between = worst_left - brush.words({worst_left, base}, ", at worst ",
                                                 {Role::text, false, kInk, Side::right});
  const float left =
      between - brush.words({between, base}, likely, {Role::text, true, kInk, Side::right});
  return {{left, over, between, base + 4}, {worst_left, over, right, base + 4}};
}

float out_width(const Brush& brush, const solve::OutBy& out) {
  return brush.width_of(kPlusMinus + mm_text(out.worst_um, 1) + ", at worst ", Role::text, false) +
         brush.width_of(kPlusMinus + mm_text(out.likely_um, 1), Role::text, true);
}

void could_be_out(Page& page, const Strip& strip, float top, float bottom) {
  const Brush& brush = page.brush;
  const Solved& now = page.bench.now();
  const job::Section& section = *section_at(now.job, now.results, page.bench.place());
  const float words_room = brush.pitch(Role::text) + 6;
  const float room = std::clamp((bottom - top - words_room) / 2 - 4, 4.0f, 20.0f);
  const Wedge wedge{top + room + 4, room, from_um(std::max<Um>(strip.piece.worst_um, 1)), section};
  wedge_shape(page, strip, wedge, &solve::OutBy::worst_um, kFold);
  wedge_shape(page, strip, wedge, &solve::OutBy::likely_um, kSoft);
  const float base = wedge.y + room + 8 + brush.rise(Role::text);
  const float right = strip.x(strip.piece.width_um);
  const std::size_t count = strip.piece.sleeves.size();
  const auto tick = [&](float x) {
    brush.line({x, wedge.y - room - 4}, {x, wedge.y + room + 4}, kInk, 2.5f);
  };
  float free_from = strip.left + brush.words({strip.left, base}, "could be out by", {}) + 20;
  const solve::OutBy all{strip.piece.likely_um, strip.piece.worst_um};
  const float last_left = right - out_width(brush, all) - 20;
  for (const std::size_t third : {1U, 2U}) {
    const std::size_t sleeve = (count * third + 2) / 3 - 1;
    const solve::OutBy out = wedge.at(sleeve);
    const float x = strip.x(strip.piece.running_totals_um[sleeve]);
    const float half = out_width(brush, out) / 2;
    if (count < 4 || x - half < free_from || x + half > last_left) continue;
    tick(x);
    out_words(page, x + half, base, out);
    free_from = x + half + 20;
  }
  tick(right);
  const OutWords last = out_words(page, right, base, all);
  figure_on_bench(page,
                  {"figure.out_likely", "slip.likely", last.likely, "could be out by, likely"});
  figure_on_bench(page,
                  {"figure.out_worst", "slip.worst", last.worst, "could be out by, at worst"});
}

/// What the section was before the last action, where it is the same one.
const solve::Piece* piece_before(const Page& page) {
  const Solved* before = page.bench.before();
  const auto index = static_cast<std::size_t>(page.bench.place().piece);
  if (before == nullptr || index >= before->results.pieces.size()) return nullptr;
  return &before->results.pieces[index];
}

}  // namespace

void running_totals(Page& page, const Area& area) {
  const auto index = static_cast<std::size_t>(page.bench.place().piece);
  const auto& piece = page.bench.now().results.pieces[index];
  const Brush& brush = page.brush;
  Strip strip{piece, piece_before(page)};
  strip.left = area.left;
  // It keeps its size while an edge is moved, as far as it has room.
  const Um wide = std::max(piece.width_um, page.bench.at_rest().results.pieces[index].width_um);
  strip.px_per_mm = static_cast<double>(area.width()) / from_um(std::max<Um>(wide, 1));
  strip.chosen = shown_lap(page.bench, page.state.chosen_lap);
  const float pitch = brush.pitch(Role::text);
  brush.words({area.left, area.top + brush.rise(Role::text) + 2},
              page.layout.is_compact
                  ? "Running totals to the right edge of each sleeve."
                  : "Running totals, from the left edge to the right edge of each sleeve. "
                    "Measure them as you join.",
              {});
  strip.top = area.top + 2 * pitch + 6;
  strip.bottom = strip.top + kBandHeight;
  band(page, strip);
  float free_from = strip.left - 20;
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) sleeve_number(page, strip, i, &free_from);
  choose_laps(page, strip);
  totals(page, strip);
  chosen_lap(page, strip);
  if (strip.chosen + 2 < static_cast<int>(piece.sleeves.size())) {
    width_handle(page, strip, piece.sleeves.size() - 1, false);
  }
  const float after = strip.bottom + 14 + 2 * pitch;
  if (area.bottom - after > 48) could_be_out(page, strip, after + 4, area.bottom);
}

}  // namespace pouncemark::web

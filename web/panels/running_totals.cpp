#include "web/panels/running_totals.h"

#include <algorithm>
#include <array>
#include <cstddef>

#include "engine/base/number_text.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Um kIn = 12'000;
constexpr float kBandHeight = 40;

struct Across {
  float left = 0;
  double px_per_mm = 1;
  float x(Um um) const { return left + static_cast<float>(from_um(um) * px_per_mm); }
};

void sleeves(Page& page, const solve::Piece& piece, const Across& across, float y) {
  const Brush& brush = page.brush;
  const float bottom = y + kBandHeight;
  brush.fill({across.x(0), y, across.x(piece.width_um), bottom}, kSheet);
  for (std::size_t i = 1; i < piece.sleeves.size(); ++i) {
    const Um left = piece.sleeves[i].left_um;
    const Um right = piece.running_totals_um[i - 1];
    brush.fill({across.x(left), y, across.x(right), bottom}, kLap);
  }
  float number_free_from = across.x(0) - 20;
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) {
    const solve::Sleeve& sleeve = piece.sleeves[i];
    brush.fill({across.x(sleeve.left_um + kIn), y + 1,
                across.x(sleeve.left_um + sleeve.width_um - kIn), bottom - 1},
               kCloth);
    const std::string number = std::to_string(sleeve.number + 1);
    const float x = across.x(sleeve.left_um + sleeve.width_um / 2);
    const float half = brush.width_of(number, Role::text, true) / 2;
    if (x - half < number_free_from) continue;
    brush.words({x, y - 10}, number, {Role::text, true, kInk, Side::middle});
    number_free_from = x + half + 4;
  }
  for (std::size_t i = 1; i < piece.sleeves.size(); ++i) {
    const float x = across.x(piece.sleeves[i].left_um);
    brush.dashes({x, y}, {x, bottom}, kSheetEdge, 1.2f, 4, 3);
  }
  brush.frame({across.x(0), y, across.x(piece.width_um), bottom}, kSheetEdge, 1.5f);
  for (const Um middle : piece.row_middles_um) {
    brush.line({across.x(middle), y}, {across.x(middle), bottom}, kThread, 2.2f);
  }
}

/// The totals on two lines in turn; one that would run into its neighbour is left out.
void totals(Page& page, const solve::Piece& piece, const Across& across, float y) {
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(Role::text);
  std::array<float, 2> free_from = {across.left - 40, across.left - 40};
  const std::size_t count = piece.running_totals_um.size();
  const float end_width = brush.width_of(short_mm_text(piece.width_um, 1), Role::text, true);
  for (std::size_t i = 0; i < count; ++i) {
    const Um total = piece.running_totals_um[i];
    const std::string figure = short_mm_text(total, 1);
    const bool last = i + 1 == count;
    const std::size_t line = i % 2;
    const float x = across.x(total);
    const float half = brush.width_of(figure, Role::text, last) / 2;
    const float low = line == 0 ? pitch : 0.0f;
    const bool clash =
        x - half < free_from[line] ||
        (!last && x + half > across.x(piece.width_um) - end_width - 8 && line == (count - 1) % 2);
    // The tick of a low figure stops short of the last one where that stands above it.
    const bool is_short = (clash && !last) || (line == 0 && (count - 1) % 2 == 1 &&
                                               x > across.x(piece.width_um) - end_width - 4);
    brush.line({x, y}, {x, y + kBandHeight + (is_short ? 6.0f : 12 + low)}, kSheetEdge, 1.8f);
    if (clash && !last) continue;
    const float base = y + kBandHeight + 14 + low + brush.rise(Role::text);
    brush.words({x, base}, figure, {Role::text, last, kInk, last ? Side::right : Side::middle});
    const float mid = last ? x - half : x;
    const Area area = {mid - half, base - brush.rise(Role::text) - 4, mid + half, base + 4};
    const std::string number = std::to_string(piece.sleeves[i].number + 1);
    figure_on_bench(page, {"figure.total." + number, "slip.total." + number, area,
                           "running total " + number + ", " + figure});
    free_from[line] = x + half + 8;
  }
}

/// How far out it may be by then: at worst wide and pale, likely narrow and dark.
void could_be_out(Page& page, const solve::Piece& piece, const Across& across, float top,
                  float bottom) {
  const Brush& brush = page.brush;
  const float left = across.x(0);
  const float right = across.x(piece.width_um);
  const float words_room = brush.pitch(Role::text) + 6;
  const float room = std::clamp((bottom - top - words_room) / 2 - 4, 4.0f, 20.0f);
  const float y = top + room + 4;
  const double most = from_um(std::max<Um>(piece.worst_um, 1));
  const auto half = [&](Um um) { return static_cast<float>(from_um(um) / most) * room; };
  const auto wedge = [&](Um um, Colour colour) {
    const std::array<Spot, 3> corners = {Spot{left, y}, Spot{right, y - half(um)},
                                         Spot{right, y + half(um)}};
    brush.shape(corners, colour);
  };
  wedge(piece.worst_um, kFold);
  wedge(piece.likely_um, kSoft);
  brush.line({right, y - room - 4}, {right, y + room + 4}, kInk, 2.5f);
  const float base = y + room + 8 + brush.rise(Role::text);
  brush.words({left, base}, "could be out by", {});
  const auto figure = [&](float end, Um um, bool bold) {
    const std::string words = kPlusMinus + mm_text(um, 1);
    return end - brush.words({end, base}, words, {Role::text, bold, kInk, Side::right});
  };
  const float worst = figure(right, piece.worst_um, false);
  const float between =
      worst - brush.words({worst, base}, ", at worst ", {Role::text, false, kInk, Side::right});
  const float likely = figure(between, piece.likely_um, true);
  const float over = base - brush.rise(Role::text) - 4;
  figure_on_bench(page, {"figure.out_likely",
                         "slip.likely",
                         {likely, over, between, base + 4},
                         "could be out by, likely"});
  figure_on_bench(page, {"figure.out_worst",
                         "slip.worst",
                         {worst, over, right, base + 4},
                         "could be out by, at worst"});
}

}  // namespace

void running_totals(Page& page, const Area& area) {
  const auto& piece =
      page.bench.now().results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
  const Brush& brush = page.brush;
  Across across;
  across.left = area.left;
  across.px_per_mm = static_cast<double>(area.width()) / from_um(std::max<Um>(piece.width_um, 1));
  const float pitch = brush.pitch(Role::text);
  brush.words({area.left, area.top + brush.rise(Role::text) + 2},
              page.layout.is_compact
                  ? "Running totals to the right edge of each sleeve."
                  : "Running totals, from the left edge to the right edge of each sleeve. "
                    "Measure them as you join.",
              {});
  const float y = area.top + 2 * pitch + 6;
  sleeves(page, piece, across, y);
  totals(page, piece, across, y);
  const float after = y + kBandHeight + 14 + 2 * pitch;
  const float wedge_room = area.bottom - after;
  if (wedge_room > 48) could_be_out(page, piece, across, after + 4, area.bottom);
}

}  // namespace pouncemark::web

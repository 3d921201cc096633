#include <array>
#include <cstddef>
#include <iterator>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/making_slip.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

constexpr const char* kFurther = "\xE2\x80\xBA";  // ›

/// A small square button to step to the neighbour.
void step_button(Page& page, std::string_view id, const Area& area, bool to_next, bool can) {
  const Touch touch =
      can ? page.hand.touch(id, area, to_next ? "next piece" : "piece before") : Touch{};
  page.brush.fill(area, touch.over ? kMat : kPaper, kCorner);
  page.brush.frame(area, can ? kSoft : kPale, 1.5f, kCorner);
  const float sign = to_next ? 1.0f : -1.0f;
  const Spot tip{area.mid_x() + sign * 5, area.mid_y()};
  for (const float side : {-1.0f, 1.0f}) {
    page.brush.line({tip.x - sign * 9, tip.y + side * 8}, tip, can ? kInk : kPale, 2.6f);
  }
  focus_ring(page.brush, page.hand, area, touch.focused);
  if (touch.clicked) page.later([&bench = page.bench, to_next] { bench.step(to_next ? 1 : -1); });
}

float steps(Page& page, float left, float middle) {
  const auto places = all_places(page.bench.now().results);
  if (places.size() < 2) return left;
  const float side = button_height();
  const float top = middle - side / 2;
  const bool can_back = !(page.bench.place() == places.front());
  const bool can_next = !(page.bench.place() == places.back());
  step_button(page, "place.back", area_at(left, top, side, side), false, can_back);
  step_button(page, "place.next", area_at(left + side + 6, top, side, side), true, can_next);
  return left + 2 * side + 6 + 12;
}

/// A part of the way that leads back up.
float way(Page& page, Spot base, const std::string& words, Place to, std::string_view id) {
  const float width = page.brush.width_of(words, Role::text, false);
  const Area area = {base.x - 4, base.y - 24, base.x + width + 4, base.y + 14};
  const Touch touch = page.hand.touch(id, area, words);
  page.brush.words(base, words, {Role::text, false, kSoft});
  page.brush.line({base.x, base.y + 4}, {base.x + width, base.y + 4}, touch.over ? kInk : kPale,
                  touch.over ? 1.5f : 1.0f);
  focus_ring(page.brush, page.hand, area, touch.focused);
  if (touch.clicked) page.later([&bench = page.bench, to] { bench.go(to); });
  const float x = base.x + width + 8;
  return x + page.brush.words({x, base.y}, kFurther, {Role::text, false, kSoft}) + 8;
}

std::string kind_words(const Page& page) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  if (const job::Section* section = section_at(now.job, now.results, place)) {
    const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
    if (place.sleeve < 0) {
      return counted(std::ssize(piece.sleeves), "sleeve", "sleeves") + ", ";
    }
    if (page.layout.is_compact) return {};
    if (section->make == job::Make::folded) return ", folded";
    return section->make == job::Make::round ? ", round" : ", two leaves";
  }
  return {};
}

/// In full, and shorter twice.
std::array<std::string, 3> neighbour_words(const Page& page, const solve::Piece& piece) {
  const Place place = page.bench.place();
  const job::Section& section =
      page.bench.now().job.sections[static_cast<std::size_t>(piece.entry)];
  const bool left_over = job::left_lies_over(section);
  const std::string of_left = left_over ? ", which lies over it" : ", which lies under it";
  const std::string of_right = left_over ? ", which lies under it" : ", which lies over it";
  const auto index = static_cast<std::size_t>(place.sleeve);
  const bool is_first = index == 0;
  const bool is_last = index + 1 == piece.sleeves.size();
  const std::string before = is_first ? std::string() : piece.sleeves[index - 1].code;
  const std::string after = is_last ? std::string() : piece.sleeves[index + 1].code;
  if (is_first) {
    return {"at the left edge, beside " + after + of_right, "left edge, beside " + after,
            "beside " + after};
  }
  if (is_last) {
    return {"at the right edge, beside " + before + of_left, "right edge, beside " + before,
            "beside " + before};
  }
  return {"between " + before + of_left + ", and " + after + of_right,
          "between " + before + " and " + after, "beside " + before + ", " + after};
}

/// The name of the piece; pressed it opens the slip of what can be done with it.
float piece_name(Page& page, Spot base, const std::string& name) {
  const std::string shown = shortened(name, 24);
  const float width = page.brush.width_of(shown, Role::figure, true);
  page.hand.note("place", {base.x, base.y - 22, base.x + width, base.y + 6}, name);
  const float half = button_height() / 2;
  const float middle = base.y - page.brush.rise(Role::figure) / 2;
  const Area area = {base.x - 6, middle - half, base.x + width + 6, middle + half};
  const Touch touch = page.hand.touch("piece", area, name + ": this piece");
  const bool strong = touch.over || page.state.making.ask == MakingAsk::piece;
  page.brush.words(base, shown, {Role::figure, true, kInk});
  page.brush.dashes({base.x, base.y + 6}, {base.x + width, base.y + 6}, strong ? kInk : kPale,
                    strong ? 2.0f : 1.5f, 5, 3);
  focus_ring(page.brush, page.hand, area, touch.focused);
  if (touch.clicked) open_making(page, MakingAsk::piece);
  return base.x + width;
}

}  // namespace

bool neighbours_line(Page& page, Spot base, float limit) {
  const Place place = page.bench.place();
  const auto& piece = page.bench.now().results.pieces[static_cast<std::size_t>(place.piece)];
  if (place.sleeve < 0 || piece.sleeves.size() < 2) return false;
  for (const std::string& words : neighbour_words(page, piece)) {
    const float width = page.brush.width_of(words, Role::second_line, false);
    if (base.x + width > limit) continue;
    page.brush.words(base, words, {Role::second_line, false, kSoft});
    page.hand.note("place.neighbours", {base.x, base.y - 16, base.x + width, base.y + 4}, words);
    return true;
  }
  return false;
}

float place_line(Page& page, Spot base, float limit) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const bool narrow = page.layout.is_compact;
  float x = steps(page, base.x, base.y - page.brush.rise(Role::figure) / 2);
  if (!narrow && now.results.pieces.size() > 1 && !is_whole_hanging(place)) {
    x = way(page, {x, base.y}, shortened(now.job.name, 20), kWholeHanging, "place.hanging");
  }
  if (is_whole_hanging(place)) {
    const std::string name = shortened(now.job.name, 30);
    page.hand.note("place", {x, base.y - 22, x + 160, base.y + 6},
                   now.job.name + ", the whole hanging");
    return x + page.brush.words({x, base.y}, name, {Role::figure, true, kInk});
  }
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  if (place.sleeve >= 0 && piece.sleeves.size() > 1) {
    x = way(page, {x, base.y}, "Section " + piece.code, {place.piece, -1}, "place.section");
  }
  const std::string name = with_capital(name_of(now.results, place));
  x = piece_name(page, {x, base.y}, name) + 14;
  if (narrow && place.sleeve >= 0) return x;
  const std::string size = size_words(now.results, place);
  const std::string kind = kind_words(page);
  std::string words = place.sleeve < 0 ? kind + size : size + kind;
  if (x + page.brush.width_of(words, Role::text, false) > limit) words = size;
  const bool has_room = x + page.brush.width_of(words, Role::text, false) <= limit;
  if (has_room) x += page.brush.words({x, base.y}, words, {Role::text, false, kInk});
  if (narrow || place.sleeve < 0) return x;
  // Beside the place where there is room for all of it, else below it.
  if (piece.sleeves.size() < 2) return x;
  const std::string all = neighbour_words(page, piece).front();
  const bool beside = x + 20 + page.brush.width_of(all, Role::second_line, false) < limit;
  constexpr float kBelow = 23;
  neighbours_line(page, beside ? Spot{x + 20, base.y} : Spot{base.x, base.y + kBelow}, limit + 8);
  return x;
}

}  // namespace pouncemark::web

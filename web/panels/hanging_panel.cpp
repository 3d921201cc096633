#include <algorithm>
#include <array>
#include <cstddef>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/making_slip.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

constexpr float kApart = 14;
constexpr int kMostRows = 12;

/// How the pieces stand: in rows from the left, all at one scale, so that each is as large as there
/// is room for.
struct Standing {
  double px_per_mm = 0;
  float row_height = 0;
};

/// Room a piece takes across: itself, or the code below it.
float room_of(const Page& page, const solve::Piece& piece, double px_per_mm) {
  const float code = page.brush.width_of(piece.code, Role::text, true) + 12;
  return std::max({static_cast<float>(from_um(piece.width_um) * px_per_mm), code, 40.0f}) + kApart;
}

int rows_at_scale(const Page& page, float width, double px_per_mm) {
  int rows = 1;
  float x = 0;
  for (const solve::Piece& piece : page.bench.now().results.pieces) {
    const float room = room_of(page, piece, px_per_mm);
    if (x > 0 && x + room > width) {
      ++rows;
      x = 0;
    }
    x += room;
  }
  return rows;
}

Standing standing_in(const Page& page, const Area& area) {
  Um longest = 1'000;
  Um widest = 1'000;
  for (const solve::Piece& piece : page.bench.now().results.pieces) {
    longest = std::max(longest, piece.length_um);
    widest = std::max(widest, piece.width_um);
  }
  const float words = 2 * page.brush.pitch(Role::text) + 14;
  Standing best;
  for (int rows = 1; rows <= kMostRows; ++rows) {
    const float height = area.height() / static_cast<float>(rows);
    double scale = std::min(static_cast<double>(height - words) / from_um(longest),
                            static_cast<double>(area.width() - kApart) / from_um(widest));
    for (int tries = 0; tries < 40 && rows_at_scale(page, area.width(), scale) > rows; ++tries) {
      scale *= 0.93;
    }
    if (scale > best.px_per_mm && rows_at_scale(page, area.width(), scale) <= rows) {
      best = {scale, height};
    }
  }
  return best;
}

std::string bay_of(const job::Job& job, const std::string& code) {
  for (const job::Bay& bay : job.bays) {
    if (!bay.stands_empty && bay.holds == code) return "bay " + bay.code;
  }
  return {};
}

void draw_piece(Page& page, const solve::Piece& piece, const Area& sheet) {
  const Brush& brush = page.brush;
  const auto across = [&](Um um) {
    return sheet.left + sheet.width() * static_cast<float>(um) / static_cast<float>(piece.width_um);
  };
  brush.fill(sheet, kSheet);
  if (piece.kind == solve::PieceKind::panel) {
    brush.fill(sheet.inset(std::min(3.0f, sheet.width() / 6)), kCloth);
    for (const piece::Edge& edge : piece.outline.edges) {
      const float x = across(to_um(point_at(edge.line, length(edge.line) / 2).x));
      if (edge.role == piece::EdgeRole::hinge_side) {
        brush.line({x, sheet.top}, {x, sheet.bottom}, kThread, 4);
      } else if (edge.role == piece::EdgeRole::fly_side && sheet.width() > 24) {
        fly_zigzag(brush, x, sheet.top, sheet.bottom);
      }
    }
  }
  for (const solve::Sleeve& sleeve : piece.sleeves) {
    const float a = across(sleeve.left_um + 12'000);
    const float b = across(sleeve.left_um + sleeve.width_um - 12'000);
    if (b > a + 1) brush.fill({a, sheet.top + 2, b, sheet.bottom - 2}, kCloth);
  }
  brush.frame(sheet, kSheetEdge, 1.5f);
}

/// One piece with its code and, where there is room, its size and bay below it.
void piece_at(Page& page, int index, const Area& place, double px_per_mm) {
  const Solved& now = page.bench.now();
  const Brush& brush = page.brush;
  const solve::Piece& piece = now.results.pieces[static_cast<std::size_t>(index)];
  const float width = static_cast<float>(from_um(piece.width_um) * px_per_mm);
  const float height = static_cast<float>(from_um(piece.length_um) * px_per_mm);
  const float words = 2 * brush.pitch(Role::text) + 14;
  const Area sheet = area_at(place.mid_x() - width / 2, place.bottom - words - height,
                             std::max(width, 2.0f), std::max(height, 2.0f));
  const Place to = first_look(now.results, index);
  const std::string size = size_words(now.results, {index, -1});
  const std::string bay = bay_of(now.job, piece.code);
  const std::string aloud =
      piece_words(now.job, index) + ", " + size + (bay.empty() ? "" : ", " + bay);
  const Touch touch = page.hand.touch("hanging." + piece.code, place, aloud);
  draw_piece(page, piece, sheet);
  if (touch.over) brush.frame(sheet.inset(-4), kPen, 2);
  focus_ring(brush, page.hand, place, touch.focused);
  float base = place.bottom - words + brush.pitch(Role::text);
  const std::string code = shortened(piece.code, 16);
  brush.words({place.mid_x(), base}, code, {Role::text, true, kInk, Side::middle});
  base += brush.pitch(Role::second_line);
  for (const std::string& line : {bay.empty() ? size : size + ", " + bay, size, bay}) {
    if (line.empty() || brush.width_of(line, Role::second_line, false) > place.width() - 4)
      continue;
    brush.words({place.mid_x(), base}, line, {Role::second_line, false, kSoft, Side::middle});
    break;
  }
  if (touch.clicked) page.later([&bench = page.bench, to] { bench.go(to); });
}

void pieces(Page& page, const Area& area) {
  const Standing standing = standing_in(page, area);
  const auto& all = page.bench.now().results.pieces;
  float x = area.left;
  float y = area.top;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const float room = room_of(page, all[i], standing.px_per_mm);
    if (x > area.left && x + room > area.right + 1) {
      x = area.left;
      y += standing.row_height;
    }
    const Area place = {x, y, x + room - kApart, y + standing.row_height - 6};
    if (place.bottom <= area.bottom + 1) {
      piece_at(page, static_cast<int>(i), place, standing.px_per_mm);
    }
    x += room;
  }
}

}  // namespace

void hanging_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const Brush& brush = page.brush;
  float right = middle.right;
  const ButtonLook look{ButtonKind::plain, page.bench.is_look_only()};
  const auto add = [&](const char* id, const char* words) {
    const float width = button_width(brush, words);
    const Area area = area_at(right - width, middle.top, width, button_height());
    right = area.left - 8;
    return button(brush, page.hand, id, area, words, look);
  };
  if (add("hanging.add_panel", "Add a panel")) open_making(page, MakingAsk::panel);
  if (add("hanging.add_section", "Add a section")) {
    do_making(page, with_section(page.bench.now().job));
  }
  place_line(page, {middle.left, middle.top + 24}, right - 12);
  headline_words(page, {middle.left, middle.top + 76}, 1e6f, true);
  const float top = middle.top + 76 + brush.pitch(Role::text) * 2;
  pieces(page, {middle.left, top, middle.right, middle.bottom});
}

}  // namespace pouncemark::web

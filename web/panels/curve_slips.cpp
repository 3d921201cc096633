#include <algorithm>

#include "web/panels/curve_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

/// A slip of the stage: the button that opens it, its title, and what it holds.
struct SlipRow {
  CurveSlip slip;
  const char* id;
  const char* words;
  const char* close;  ///< id of its own button
  void (*draw)(Page& page, const Area& area);
};

/// In their order from the left.
constexpr SlipRow kSlips[] = {
    {CurveSlip::bays, "bay.all", "All bays", "bays.close", bays_slip},
    {CurveSlip::stations, "bay.stations", "Stations", "stations.close", stations_slip},
    {CurveSlip::force, "bay.force", "Force", "force.close", force_slip},
    {CurveSlip::fixings, "bay.fixings", "Fixings", "fixings.close", fixings_slip},
};

const SlipRow* open_slip(const Page& page) {
  for (const SlipRow& row : kSlips) {
    if (row.slip == page.state.curve.slip) return &row;
  }
  return nullptr;
}

void show(Page& page, CurveSlip slip) {
  page.later([&state = page.state, slip] {
    state.curve.slip = slip;
    state.curve.sentence.clear();
    state.sew.sentence.clear();
    state.curve.first = 0;
    state.curve.turn = -1;
    state.open_box = {};
  });
}

Area slip_area(const Page& page) {
  const Area& middle = page.layout.middle;
  return {middle.left - 6, middle.top + button_height() + 6, middle.right + 3, middle.bottom};
}

}  // namespace

float curve_openers(Page& page, float right, float top) {
  for (std::size_t i = std::size(kSlips); i-- > 0;) {
    const SlipRow& row = kSlips[i];
    const bool is_open = page.state.curve.slip == row.slip;
    const float width = button_width(page.brush, row.words);
    const Area area = area_at(right - width, top, width, button_height());
    if (button(page.brush, page.hand, row.id, area, row.words,
               {is_open ? ButtonKind::chosen : ButtonKind::plain})) {
      show(page, is_open ? CurveSlip::none : row.slip);
    }
    right = area.left - 8;
  }
  return right;
}

void cover_for_curve(Page& page) {
  if (open_slip(page) != nullptr) page.hand.set_cover(slip_area(page));
}

void curve_slip(Page& page) {
  const SlipRow* row = open_slip(page);
  if (row == nullptr) return;
  page.hand.set_cover({});
  const Area area = slip_area(page);
  const Brush& brush = page.brush;
  slip_paper(brush, area);
  brush.frame(area, kSoft, 1.5f);
  const Area head = {area.left + 24, area.top + 8, area.right - 21, area.top + 8 + button_height()};
  const float base = head.mid_y() + brush.rise(Role::figure) / 2;
  const CurveView& view = page.state.curve.view;
  const std::string title = row->slip == CurveSlip::bays
                                ? row->words
                                : row->words + (" of bay " + shortened(view.code, 16));
  const float wide = brush.words({head.left, base}, title, {Role::figure, true, kInk});
  const float close = button_width(brush, "Close");
  const Area shut = area_at(head.right - close, head.top, close, button_height());
  const std::string& sentence =
      page.state.curve.sentence.empty() ? page.state.sew.sentence : page.state.curve.sentence;
  const float said = head.left + wide + 14;
  const float to =
      said + brush.words({said, base},
                         cut_short(brush, sentence, shut.left - 12 - said, Role::second_line, true),
                         {Role::second_line, true, kStop});
  if (!sentence.empty()) page.hand.note("slip.said", {said, base - 16, to, base + 5}, sentence);
  const bool is_shut = button(brush, page.hand, row->close, shut, "Close");
  row->draw(page, {head.left, head.bottom + 8, head.right, area.bottom - 8});
  if (is_shut || (page.hand.escape() && !page.hand.is_typing())) {
    page.hand.focus(row->id);
    show(page, CurveSlip::none);
  }
}

ListPart list_part(Page& page, const Area& list, float line, std::size_t all, const char* more_id,
                   const char* more) {
  const auto room = static_cast<std::size_t>(std::max(2.0f, list.height() / line));
  if (all <= room) return {0, all};
  CurveStage& curve = page.state.curve;
  const std::size_t shown = room - 1;
  const std::size_t first = std::min(curve.first, all - shown);
  const int by = page.hand.lines_on(list, line);
  if (by != 0) {
    page.later([&curve, to = static_cast<int>(first) + by, most = static_cast<int>(all - shown)] {
      curve.first = static_cast<std::size_t>(std::clamp(to, 0, most));
    });
  }
  const Area button_area =
      area_at(list.left, list.top + static_cast<float>(shown) * line + (line - button_height()) / 2,
              button_width(page.brush, more), button_height());
  if (button(page.brush, page.hand, more_id, button_area, more)) {
    page.later(
        [&curve, first, shown, all] { curve.first = first + shown < all ? first + shown : 0; });
  }
  const std::string words = std::to_string(first + 1) + " to " + std::to_string(first + shown) +
                            " of " + std::to_string(all);
  page.brush.words({button_area.right + 12, button_area.mid_y() + page.brush.rise(Role::text) / 2},
                   words, {Role::text, false, kSoft});
  return {first, shown};
}

}  // namespace pouncemark::web

#include <algorithm>

#include "web/panels/sew_parts.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr float kInside = 18;

Area slip_area(const Page& page) {
  const Area& middle = page.layout.middle;
  // Under the row with the buttons that open it.
  return {middle.left - 6, middle.top + button_height() + 6, middle.right + 3, middle.bottom};
}

void close(Page& page) {
  const bool is_materials = page.state.sew.slip == SewSlip::materials;
  page.hand.focus(is_materials ? "sew.materials" : "sew.trials");
  page.later([&state = page.state] {
    state.sew.slip = SewSlip::none;
    state.sew.sentence.clear();
    state.open_box = {};
  });
}

}  // namespace

void cover_for_sew(Page& page) {
  if (page.state.sew.slip != SewSlip::none) page.hand.set_cover(slip_area(page));
}

void sew_slip(Page& page) {
  const SewSlip slip = page.state.sew.slip;
  if (slip == SewSlip::none) return;
  page.hand.set_cover({});
  const Area area = slip_area(page);
  const Brush& brush = page.brush;
  slip_paper(brush, area);
  brush.frame(area, kSoft, 1.5f);
  const float top = area.top + 8;
  const float left = area.left + kInside + 6;
  const float right = area.right - kInside - 3;
  const float base = top + button_height() / 2 + brush.rise(Role::figure) / 2;
  const bool is_materials = slip == SewSlip::materials;
  const float wide = brush.words({left, base}, is_materials ? "Materials" : "Trial seam",
                                 {Role::figure, true, kInk});
  const float close_width = button_width(brush, "Close");
  const Area shut = area_at(right - close_width, top, close_width, button_height());
  const std::string& sentence = page.state.sew.sentence;
  const std::string beside = !sentence.empty() ? sentence
                             : is_materials    ? "each value with where it comes from"
                                               : "a coupon of the real stack, 300 × 50";
  const float room = shut.left - 12 - left - wide - 12;
  const std::string shown = cut_short(brush, beside, room, Role::second_line, !sentence.empty());
  const float said =
      brush.words({left + wide + 12, base}, shown,
                  {Role::second_line, !sentence.empty(), sentence.empty() ? kSoft : kStop});
  page.hand.note("sew.sentence", {left + wide + 12, base - 16, left + wide + 12 + said, base + 5},
                 sentence.empty() ? beside : sentence);
  if (button(brush, page.hand, "sew.close", shut, "Close")) close(page);
  const Area inside = {left, top + button_height() + 12, right, area.bottom - 10};
  if (is_materials)
    materials_slip(page, inside);
  else
    trials_slip(page, inside);
  if (page.hand.escape() && !page.hand.is_typing()) close(page);
}

}  // namespace pouncemark::web

#include <string>
#include <utility>

#include "web/panels/curve_parts.h"
#include "web/panels/sew_parts.h"

namespace pouncemark::web {

void curve_length_box(Page& page, BayBox box, const Area& area, const char* id, const char* name) {
  const CurveView& view = page.state.curve.view;
  const CurveBoxText& text = box == BayBox::chord ? view.chord : view.rise;
  SewTextBox set;
  set.id = id;
  set.area = area;
  set.shown = set.text = text.shown;
  set.name = name;
  set.is_changed = !text.was.empty();
  const std::string label = text.was.empty() ? std::string(name) : "was " + text.was;
  page.brush.words({area.right + 8, area.mid_y() + page.brush.rise(Role::text) / 2}, label,
                   {Role::text, false, kInk});
  const TextEvent event = sew_text_box(page, set);
  const job::Job& job = page.bench.now().job;
  if (event.finished) {
    if (*event.finished == text.shown) return close_box(page.state.open_box);
    Made made = with_bay_typed(job, view.bay, box, *event.finished);
    if (!made.refused.empty())
      return refuse_text(page.state.open_box, page.hand, std::move(made.refused));
    close_box(page.state.open_box);
    return curve_act(page, std::move(made));
  }
  constexpr Um kStepUm = 1000;
  if (event.step == 0 || event.is_open) return;
  curve_act(page, with_bay_stepped(job, view.bay, box, event.step * kStepUm));
}

void bay_switches(Page& page, const Area& mat) {
  const Brush& brush = page.brush;
  const CurveView& view = page.state.curve.view;
  const float high = box_height();
  const float mid = mat.top + 10 + high / 2;
  float x = mat.left + 14;
  x += brush.words({x, mid + brush.rise(Role::text) / 2}, "holds", {Role::text, false, kInk}) + 8;
  SewTextBox set;
  set.id = "box.holds";
  set.area = area_at(x, mid - high / 2, 84, high);
  set.shown = view.holds.empty() ? "empty" : view.holds;
  set.text = view.holds;
  set.name = "what hangs here";
  set.is_words = true;
  const TextEvent event = sew_text_box(page, set);
  const job::Job& job = page.bench.now().job;
  if (event.finished && (*event.finished == view.holds || event.finished->empty())) {
    close_box(page.state.open_box);
  } else if (event.finished) {
    Made made = with_bay_typed(job, view.bay, BayBox::holds, *event.finished);
    if (made.refused.empty()) {
      close_box(page.state.open_box);
      curve_act(page, std::move(made));
    } else {
      refuse_text(page.state.open_box, page.hand, std::move(made.refused));
    }
  }
  x = set.area.right + 16;
  for (const bool is_hollow : {false, true}) {
    const char* words = is_hollow ? "Hollow" : "Bulging";
    const Area area =
        area_at(x, mid - button_height() / 2, button_width(brush, words), button_height());
    x = area.right + 8;
    const bool is_chosen = view.is_hollow == is_hollow;
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          page.bench.is_look_only()};
    if (!button(brush, page.hand, is_hollow ? "bay.hollow" : "bay.bulging", area, words, look))
      continue;
    if (!is_chosen) curve_act(page, with_bay_face(job, view.bay, is_hollow));
  }
  x += 4;
  const std::string words = view.is_by_stations
                                ? "toward the viewer; the curve is that of its stations"
                                : "toward the viewer; from above, the plies drawn thicker";
  const std::string& sentence = page.state.curve.sentence;
  brush.words(
      {x, mid + brush.rise(Role::text) / 2},
      cut_short(brush, sentence.empty() ? words : sentence, mat.right - 10 - x, Role::text, false),
      {Role::text, false, sentence.empty() ? kSoft : kStop});
}

}  // namespace pouncemark::web

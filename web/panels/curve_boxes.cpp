#include <string>
#include <utility>

#include "web/panels/curve_parts.h"
#include "web/panels/sew_parts.h"

namespace pouncemark::web {

TextEvent curve_box(Page& page, CurveBox box) {
  if (box.text.empty()) box.text = box.shown;
  return sew_text_box(page, box);
}

void keep_curve(Page& page, Made made) {
  OpenBox& open = page.state.open_box;
  if (!made.refused.empty()) return refuse_text(open, page.hand, std::move(made.refused));
  close_box(open);
  curve_act(page, std::move(made));
}

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

namespace {

/// What would stand up were the cloth sewn all round: pressed it is drawn. Gives its left edge.
float bulge_button(Page& page, float right, float mid) {
  const CurveStage& curve = page.state.curve;
  if (!curve.view.can_bulge) return right;
  const char* words = "If sewn all round";
  const float width = button_width(page.brush, words);
  const Area area = area_at(right - width, mid - button_height() / 2, width, button_height());
  const bool is_shown = curve.shows_bulge;
  if (button(page.brush, page.hand, "curve.bulge", area, words,
             {is_shown ? ButtonKind::chosen : ButtonKind::plain})) {
    page.later([&stage = page.state.curve] { stage.shows_bulge = !stage.shows_bulge; });
  }
  return area.left - 12;
}

}  // namespace

void holds_box(Page& page, const Area& area) {
  const CurveView& view = page.state.curve.view;
  CurveBox box;
  box.id = "box.holds";
  box.area = area;
  box.shown = view.holds.empty() ? "empty" : view.holds;
  box.text = view.holds;
  box.name = "what hangs here";
  box.is_words = true;
  const TextEvent event = sew_text_box(page, box);
  if (!event.finished) return;
  if (*event.finished == view.holds || event.finished->empty()) {
    return close_box(page.state.open_box);
  }
  keep_curve(page, with_bay_typed(page.bench.now().job, view.bay, BayBox::holds, *event.finished));
}

void bay_switches(Page& page, const Area& mat, bool with_boxes) {
  const Brush& brush = page.brush;
  const CurveView& view = page.state.curve.view;
  const float high = box_height();
  const float mid = mat.top + 10 + high / 2;
  const float base = mid + brush.rise(Role::text) / 2;
  float x = mat.left + 14;
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
    if (!is_chosen) curve_act(page, with_bay_face(page.bench.now().job, view.bay, is_hollow));
  }
  x += 6;
  const float right = bulge_button(page, mat.right - 10, mid);
  if (with_boxes) {
    const float wide = bay_box_width();
    for (const bool is_rise : {false, true}) {
      const char* name = is_rise ? "rise" : "chord";
      curve_length_box(page, is_rise ? BayBox::rise : BayBox::chord,
                       area_at(x, mid - high / 2, wide, high), is_rise ? "box.rise" : "box.chord",
                       name);
      const CurveBoxText& text = is_rise ? view.rise : view.chord;
      const std::string label = text.was.empty() ? std::string(name) : "was " + text.was;
      x += wide + 24 + brush.width_of(label, Role::text, false);
    }
  }
  const std::string& sentence = page.state.curve.sentence;
  const std::string all = sentence.empty() ? "toward the viewer" : sentence;
  std::string words = cut_short(brush, all, right - x, Role::text, false);
  if (sentence.empty() && words != all) words.clear();
  const float wide =
      brush.words({x, base}, words, {Role::text, false, sentence.empty() ? kSoft : kStop});
  page.hand.note("curve.sentence", {x, mid - 16, x + wide, mid + 8}, sentence);
}

}  // namespace pouncemark::web

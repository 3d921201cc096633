#include <algorithm>

#include "web/host/host.h"
#include "web/panels/curve_parts.h"

namespace pouncemark::web {
namespace {

constexpr double kMoveSeconds = 0.6;

/// A square button with a sign that points to the bay before or after.
void step_to(Page& page, const char* id, const Area& area, int by) {
  const CurveView& view = page.state.curve.view;
  const int to = view.bay + by;
  const bool can = to >= 0 && to < static_cast<int>(view.bays);
  const ButtonLook look{ButtonKind::plain, !can, Role::text, by > 0 ? "next bay" : "bay before"};
  const bool pressed = button(page.brush, page.hand, id, area, "", look);
  const auto sign = static_cast<float>(by);
  const Spot tip{area.mid_x() + sign * 5, area.mid_y()};
  for (const float side : {-9.0f, 9.0f}) {
    page.brush.line({tip.x - sign * 9, tip.y + side}, tip, can ? kInk : kPale, 2.6f);
  }
  if (pressed) page.later([&curve = page.state.curve, to] { curve.bay = to; });
}

/// A job without bays: what one is, and a button.
void no_bays(Page& page) {
  const Area& middle = page.layout.middle;
  const Brush& brush = page.brush;
  const float y = middle.top + brush.rise(Role::headline) + 24;
  headline_words(page, {middle.left, y}, middle.right, false);
  const float after = brush.paragraph(
      {middle.left, y + 44},
      "A bay is one place on the frame: its straight distance (chord), how far the timber stands "
      "out (rise), whether it is bulging or hollow, and what hangs there. With it the length along "
      "the curve, the creep of the cloth and the force to bend the sheet are worked out.",
      std::min(middle.width(), 720.0f), {Role::verb, false, kInk});
  page.hand.note("curve.none", {middle.left, y - 30, middle.right, after}, "no bay is entered");
  const Area add =
      area_at(middle.left, after + 12, button_width(brush, "Add a bay"), button_height());
  const ButtonLook look{ButtonKind::main, page.bench.is_look_only()};
  if (button(brush, page.hand, "bay.add", add, "Add a bay", look)) {
    curve_act(page, with_new_bay(page.bench.now()));
  }
  const std::string& sentence = page.state.curve.sentence;
  if (sentence.empty()) return;
  brush.words({middle.left, add.bottom + 34}, sentence, {Role::text, true, kStop});
  page.hand.note("curve.sentence", {middle.left, add.bottom + 12, middle.right, add.bottom + 40},
                 sentence);
}

}  // namespace

void ask_curve(const Bench& bench, CurveStage& curve, double seconds) {
  if (!bench.has_job()) return;
  if (curve.turn != bench.turn() || curve.made_for != curve.bay) {
    curve.view = curve_view(bench.now(), bench.before(), curve.bay);
    curve.bay = std::max(0, curve.view.bay);
    curve.turn = bench.turn();
    curve.made_for = curve.bay;
    curve.shape_at = -1;
    if (curve.slip == CurveSlip::bays) curve.ranked = ranked_bays(bench.now(), curve.by_force);
    if (curve.slip == CurveSlip::force) curve.force = force_view(bench.now(), curve.bay);
    if (curve.slip == CurveSlip::fixings) {
      curve.fixings = fixings_view(bench.now(), curve.bay, curve.fixing_row);
    }
    if (curve.slip == CurveSlip::stations) curve.stations = stations_view(bench.now(), curve.bay);
  }
  if (curve.hung != curve.goes_to) {
    if (curve.began < 0) curve.began = seconds;
    const double part = std::min(1.0, (seconds - curve.began) / kMoveSeconds);
    curve.hung =
        part >= 1 ? curve.goes_to : curve.comes_from + (curve.goes_to - curve.comes_from) * part;
    host::request_frames();
  }
  const bool is_same = curve.shape_at == curve.hung && curve.shape_place == curve.place;
  if (is_same || curve.view.bay < 0) return;
  curve.shape = curve_shape(curve.view, curve.hung, curve.place);
  curve.shape_at = curve.hung;
  curve.shape_place = curve.place;
}

void bend_to(CurveStage& curve, double hung) {
  curve.comes_from = curve.hung;
  curve.goes_to = hung;
  curve.began = -1;
  if (host::wants_less_motion()) curve.hung = hung;
}

void curve_act(Page& page, Made made) {
  page.later([&bench = page.bench, &curve = page.state.curve, made = std::move(made)] {
    curve.sentence = made.refused;
    use_signs(made.refused);
    use_signs(made.action);
    if (!made.refused.empty()) return;
    bench.edit(made.job, made.action);
    curve.bay = made.piece;
  });
}

namespace {

void bay_on_bench(Page& page) {
  const CurveView& view = page.state.curve.view;
  const Area& middle = page.layout.middle;
  const Brush& brush = page.brush;
  const float height = button_height();
  const float acts = curve_openers(page, middle.right, middle.top);
  step_to(page, "bay.back", area_at(middle.left, middle.top, height, height), -1);
  step_to(page, "bay.next", area_at(middle.left + height + 6, middle.top, height, height), 1);
  float x = middle.left + 2 * height + 18;
  const float base = middle.top + height / 2 + brush.rise(Role::figure) / 2;
  const std::string name = "Bay " + shortened(view.code, 16);
  const float from = x;
  x += brush.words({x, base}, name, {Role::figure, true, kInk}) + 12;
  const float box = text_size() == TextSize::large ? 104.0f : 84.0f;
  x += brush.words({x, base},
                   view.holds.empty() ? "holds"
                   : view.holds_panel ? "holds panel"
                                      : "holds section",
                   {}) +
       8;
  const Area area = area_at(x, middle.top, box, height);
  if (area.right < acts) holds_box(page, area);
  page.hand.note("bay", {from, base - 22, x, base + 6}, name + ", " + view.hangs);
  cover_for_curve(page);
  const float second = middle.top + height + (page.layout.is_compact ? 6.0f : 10.0f);
  const float line = second + height / 2 + brush.rise(Role::headline) / 2;
  headline_words(page, {middle.left, line}, middle.right, false);
  const Area mat = {middle.left, second + height + 10, middle.right, middle.bottom};
  page.hand.start_group(true);
  curve_picture(page, mat);
  page.hand.start_group(false);
  curve_slip(page);
}

}  // namespace

void curve_panel(Page& page) {
  if (page.state.curve.view.bay < 0) return no_bays(page);
  const bool is_covered = page.layout.is_compact && page.state.shows_all_follows;
  if (!is_covered) bay_on_bench(page);
  follows_panel(page);
}

}  // namespace pouncemark::web

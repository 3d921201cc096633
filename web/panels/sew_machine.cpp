#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/model/sew_materials.h"
#include "web/panels/sew_section.h"

namespace pouncemark::web {
namespace {

using takeoff::UnderArm;

constexpr float kFootMm = 64;         // the foot of the arm, across, as drawn
constexpr float kArmMm = 58;          // the arm, as drawn
constexpr float kUnmeasuredMm = 260;  // how far off the arm's foot is drawn where no one measured
constexpr float kMostPxPerMm = 2;

/// The plan from above, all at one scale; the needle at `needle`.
struct Plan {
  Area view;  ///< what is seen of bed and work
  Spot needle;
  float px = 1;          ///< a millimetre
  float left = 0;        ///< the work's edges
  float right = 0;       ///< flat or rolled, as it lies
  float foot = 0;        ///< the arm's foot, where it begins
  float half = 0;        ///< of the arm, across, as drawn
  bool is_torn = false;  ///< more of the work lies at the left than is seen
};

float mm(Um um) { return static_cast<float>(from_um(um)); }

/// Height of the two measures under the plan.
float measures_height(const Brush& brush) { return brush.pitch(Role::text) + box_height() + 16; }

Plan plan_in(const Page& page, const Area& mat) {
  const SewArm& arm = page.state.sew.view.arm;
  const Brush& brush = page.brush;
  Plan at;
  float top = mat.top + 18 + brush.pitch(Role::figure);
  if (!arm.order.empty()) top += brush.pitch(Role::text);
  const float boxes = 2 * sew_box_width() + 44;
  at.view = {mat.left + 14, top, mat.right - boxes, mat.bottom - 12 - measures_height(brush)};
  at.needle = {at.view.left + at.view.width() * 0.42f, at.view.top + at.view.height() * 0.46f};
  const float reach = arm.throat_um > 0 ? mm(arm.throat_um) : kUnmeasuredMm;
  const float side = mm(arm.how == UnderArm::rolled ? arm.roll_um : arm.side_um);
  const float right = std::max(reach + kFootMm + 26, side + 12);
  at.px = std::min((at.view.right - at.needle.x) / right, kMostPxPerMm);
  at.foot = at.needle.x + reach * at.px;
  // The words at the ends of the work stay clear of the arm.
  const float words = 20 + 2.1f * brush.pitch(Role::second_line);
  at.half = std::min(kArmMm / 2 * at.px, std::max(12.0f, at.view.bottom - at.needle.y - words));
  at.right = at.needle.x + side * at.px;
  at.left = at.needle.x - mm(arm.work_um - arm.side_um) * at.px;
  at.is_torn = at.left < at.view.left;
  at.left = std::max(at.left, at.view.left);
  return at;
}

/// An edge that is torn: more of it lies beyond.
void torn(const Brush& brush, Spot from, Spot to) {
  const bool is_across = from.y == to.y;
  const float length = is_across ? to.x - from.x : to.y - from.y;
  const int parts = std::max(2, static_cast<int>(length / 14));
  Spot last = from;
  for (int i = 1; i <= parts; ++i) {
    const float way = length * static_cast<float>(i) / static_cast<float>(parts);
    const float off = i == parts ? 0 : (i % 2 == 0 ? 3.0f : -3.0f);
    const Spot next =
        is_across ? Spot{from.x + way, from.y + off} : Spot{from.x + off, from.y + way};
    brush.line(last, next, kSheetEdge, 1.5f);
    last = next;
  }
}

Area bed_of(const Plan& at) {
  const float half = kArmMm * 1.1f * at.px;
  return {at.view.left, at.needle.y - half,
          std::min(at.view.right - 10, at.foot + kFootMm * at.px + 8), at.needle.y + half};
}

void draw_work(const Page& page, const Plan& at) {
  const Brush& brush = page.brush;
  const SewArm& arm = page.state.sew.view.arm;
  const bool is_rolled = arm.how == UnderArm::rolled;
  const Area work = {at.left, at.view.top + 4, is_rolled ? at.needle.x : at.right,
                     at.view.bottom - 4};
  const SewView& view = page.state.sew.view;
  const bool is_panel = view.kinds[view.chosen].of == job::RowsOf::panel_rows;
  brush.fill(work, is_panel ? kCloth : kSheet);
  torn(brush, {work.left, work.top}, {work.right, work.top});
  torn(brush, {work.left, work.bottom}, {work.right, work.bottom});
  if (at.is_torn) {
    torn(brush, {work.left, work.top}, {work.left, work.bottom});
  } else {
    brush.line({work.left, work.top}, {work.left, work.bottom}, kSheetEdge, 2);
  }
  if (!is_rolled) {
    brush.line({work.right, work.top}, {work.right, work.bottom}, kSheetEdge, 2);
    return;
  }
  const Area roll = {at.needle.x + 2, work.top - 3, at.right, work.bottom + 3};
  brush.fill(roll, kLap, 6);
  brush.frame(roll, kSheetEdge, 2, 6);
  for (const float share : {0.3f, 0.55f, 0.75f, 0.9f}) {
    const float x = roll.left + roll.width() * share;
    brush.line({x, roll.top + 8}, {x, roll.bottom - 8}, kSheetEdge, 1);
  }
}

/// What is sewn lies beyond the needle, what is to be sewn before it.
void draw_row(const Page& page, const Plan& at) {
  const Brush& brush = page.brush;
  brush.dashes({at.needle.x, at.view.top + 4}, at.needle, kThread, 3, 7, 3);
  brush.dashes(at.needle, {at.needle.x, at.view.bottom - 4}, kSoft, 1.5f, 2, 5);
}

/// The arm with its foot and its head over the needle; in dashes where no one measured it.
void draw_arm(const Page& page, const Plan& at) {
  const Brush& brush = page.brush;
  const SewArm& work = page.state.sew.view.arm;
  const float half = at.half;
  const float head = at.needle.x - 0.8f * half;
  const Area arm = {head, at.needle.y - half, at.foot + kFootMm * at.px - 1, at.needle.y + half};
  const Area foot = {at.foot, arm.top - half * 0.5f, arm.right + 1, arm.bottom + half * 0.5f};
  if (work.throat_um == 0) {
    const std::array<Spot, 9> edge = {
        Spot{arm.left, arm.top},     Spot{foot.left, arm.top},      Spot{foot.left, foot.top},
        Spot{foot.right, foot.top},  Spot{foot.right, foot.bottom}, Spot{foot.left, foot.bottom},
        Spot{foot.left, arm.bottom}, Spot{arm.left, arm.bottom},    Spot{arm.left, arm.top}};
    for (std::size_t i = 0; i + 1 < edge.size(); ++i)
      brush.dashes(edge[i], edge[i + 1], kInk, 2, 7, 5);
    const float middle = (at.right + foot.left) / 2;
    const float wide = brush.width_of("not measured", Role::text, false);
    const float x = std::clamp(middle - wide / 2, std::min(at.right + 8, foot.left - wide - 8),
                               foot.left - wide - 8);
    brush.words({x, at.needle.y + brush.rise(Role::text) / 2}, "not measured", {});
    return;
  }
  brush.fill(arm, kSteel, 6);
  brush.frame(arm, kEngraving, 2, 6);
  brush.fill(foot, kEngraving, 6);
  if (work.how == UnderArm::does_not_fit) {
    // What is too wide lies where the foot stands.
    const Area over = {at.foot, at.view.top + 4, at.right, at.view.bottom - 4};
    brush.frame(over, kStop, 2.5f);
    for (float y = over.top; y < over.bottom; y += 28) {
      brush.line({over.left, std::min(over.bottom, y + 28)}, {over.right, y}, kStop, 1.5f);
    }
  } else {
    brush.dashes({at.right, arm.top}, {at.right, arm.bottom}, kSheetEdge, 1.5f, 5, 4);
  }
  // Under the arm the row is only known to go on.
  brush.dashes({at.needle.x, arm.top}, {at.needle.x, arm.bottom}, kThread, 1.5f, 3, 4);
}

void draw_needle(const Page& page, const Plan& at) {
  page.brush.disc(at.needle, 8, kPaper);
  page.brush.ring(at.needle, 8, kInk, 2.5f);
  page.brush.disc(at.needle, 3, kInk);
}

/// The end that goes away first, the end toward the sewer, and which face is up: on the work, or
/// beside it where it is too narrow for the words.
void ends(const Page& page, const Plan& at) {
  const Brush& brush = page.brush;
  const SewArm& arm = page.state.sew.view.arm;
  const float pitch = brush.pitch(Role::second_line);
  const std::string first = arm.away + ", FRONT UP";
  const std::string fed = "fed away from you";
  const float wide = std::max(brush.width_of(first, Role::second_line, true),
                              brush.width_of(fed, Role::second_line, false));
  const float right = at.needle.x - 14 - wide - 8 < at.left ? at.left - 12 : at.needle.x - 14;
  const Ink ink{Role::second_line, true, kInk, Side::right};
  const float low = at.view.bottom - 16;
  brush.words({right, at.view.top + 8 + pitch}, first, ink);
  brush.words({right, low - pitch}, fed, {Role::second_line, false, kInk, Side::right});
  brush.words({right, low}, arm.near, ink);
  const float side = at.right - at.needle.x;
  const float x = side < 44 ? at.right + 18 : at.needle.x + 22;
  brush.arrow({x, low + 3}, {x, low - 43}, kInk, 2, 9, false);
}

void machine_box(Page& page, std::size_t index, const Area& area, const std::string& label) {
  constexpr std::array<const char*, kArmFields.size()> kNames = {
      "needle to arm", "height under the arm", "foot lifts"};
  constexpr std::array<const char*, kArmFields.size()> kIds = {"arm.throat", "arm.height",
                                                               "arm.foot_lift"};
  const SewBoxText& text = page.state.sew.view.arm.boxes[index];
  SewTextBox box;
  box.id = kIds[index];
  box.area = area;
  box.label = label;
  box.shown = text.shown;
  box.text = text.shown;
  box.name = kNames[index];
  box.is_changed = !text.was.empty();
  const TextEvent event = sew_text_box(page, box);
  if (!event.finished) return;
  if (*event.finished == text.shown) {
    close_box(page.state.open_box);
  } else {
    keep_typed(page, with_material(page.bench.now().job, kArmFields[index], *event.finished));
  }
}

/// From the needle to the work's edge, its figure to be pressed; from the needle to the arm's foot,
/// its figure to be typed.
void measures(Page& page, const Plan& at) {
  const Brush& brush = page.brush;
  const SewArm& arm = page.state.sew.view.arm;
  const bool is_rolled = arm.how == UnderArm::rolled;
  const float pitch = brush.pitch(Role::text);
  const float side = at.view.bottom + 4 + pitch / 2;
  const float throat = side + pitch / 2 + 6 + box_height() / 2;
  const float x = at.needle.x;
  brush.line({x, at.view.bottom}, {x, throat + 8}, kInk, 1.2f);
  brush.line({at.right, at.view.bottom}, {at.right, side + 8}, kInk, 1.2f);
  brush.arrow({x + 1, side}, {at.right - 1, side}, kInk, 1.8f, std::min(7.0f, (at.right - x) / 3),
              true);
  const std::string figure = short_mm_text(is_rolled ? arm.roll_um : arm.side_um, 1);
  const float base = side + brush.rise(Role::text) / 2;
  const float figure_wide = brush.width_of(figure, Role::text, true);
  const float left = at.right + 10;
  brush.words({left, base}, figure, {Role::text, true, kInk});
  const std::string what = is_rolled ? "the roll, across" : "right of the needle";
  brush.words({x - 12, base}, what, {Role::text, false, kInk, Side::right});
  const float half = std::max(19.0f, button_height() / 2);
  figure_on_bench(page,
                  {"figure.arm_side",
                   is_rolled ? "slip.arm_roll" : "slip.arm_side",
                   {left - 4, side - half, left + std::max(38.0f, figure_wide + 8), side + half},
                   figure + " " + what + ", show the sum"});
  const float wide = sew_box_width();
  const bool has_room = at.foot - x > wide + 60;
  const Area box = area_at(has_room ? (x + at.foot - wide) / 2 : at.foot + 10,
                           throat - box_height() / 2, wide, box_height());
  const Colour ink = arm.throat_um > 0 ? kInk : kSoft;
  if (has_room) {
    brush.arrow({box.left - 8, throat}, {x + 1, throat}, ink, 1.8f, 7, false);
    brush.arrow({box.right + 8, throat}, {at.foot - 1, throat}, ink, 1.8f, 7, false);
  } else {
    brush.arrow({x + 1, throat}, {at.foot - 1, throat}, ink, 1.8f, 7, true);
  }
  brush.dashes({at.foot, at.needle.y + at.half * 1.5f}, {at.foot, throat + 8}, kInk, 1, 4, 3);
  brush.words({x - 12, throat + brush.rise(Role::text) / 2}, "needle to arm",
              {Role::text, false, kInk, Side::right});
  machine_box(page, 0, box, "");
}

solve::Verdict mark_of(UnderArm how) {
  if (how == UnderArm::not_known) return solve::Verdict::try_it;
  return how == UnderArm::does_not_fit ? solve::Verdict::do_not : solve::Verdict::fits;
}

/// Flat, rolled, does not fit or not known; of joining rows the order under it.
void verdict(Page& page, const Area& mat, float limit) {
  const Brush& brush = page.brush;
  const SewArm& arm = page.state.sew.view.arm;
  const Spot middle = {mat.left + 26, mat.top + 10 + brush.pitch(Role::figure) / 2};
  const Area set = sew_verdict(page, middle, mark_of(arm.how), arm.word, arm.because, limit);
  page.hand.note("sew.arm", set, arm.row + " " + arm.word + ": " + arm.because);
  if (arm.order.empty()) return;
  const Spot base = {mat.left + 14, middle.y + 14 + brush.pitch(Role::text) * 0.8f};
  const std::string order = cut_short(brush, arm.order, limit - base.x, Role::text, false);
  const float wide = brush.words(base, order, {Role::text, false, kInk});
  page.hand.note("sew.order", {base.x, base.y - 14, base.x + wide, base.y + 4}, arm.order);
}

}  // namespace

void sew_machine(Page& page, const Area& mat) {
  const Brush& brush = page.brush;
  brush.fill(mat, kMat);
  const Plan at = plan_in(page, mat);
  brush.start_window({at.view.left - 4, at.view.top, at.view.right, at.view.bottom});
  brush.fill(bed_of(at), kFold, 8);
  draw_work(page, at);
  draw_row(page, at);
  draw_arm(page, at);
  draw_needle(page, at);
  brush.end_window();
  ends(page, at);
  verdict(page, mat, at.view.right - 8);
  measures(page, at);
  const float left = at.view.right + 16;
  const float step = box_height() + brush.pitch(Role::second_line) + 12;
  const float top = mat.top + 10 + brush.pitch(Role::second_line);
  machine_box(page, 1, area_at(left, top, sew_box_width(), box_height()), "height under the arm");
  machine_box(page, 2, area_at(left, top + step, sew_box_width(), box_height()), "foot lifts");
  sew_views_switch(page, {mat.right - 12, mat.bottom - 10});
}

}  // namespace pouncemark::web

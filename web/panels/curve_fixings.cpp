#include <array>
#include <string>

#include "web/model/words.h"
#include "web/panels/curve_parts.h"

namespace pouncemark::web {
namespace {

using job::Tight;

float figure_width() { return text_size() == TextSize::large ? 116.0f : 96.0f; }

/// A button of a switch; true when another one is to be chosen.
bool chosen_of(Page& page, ButtonFlow& flow, const std::string& id, const std::string& words,
               bool is_chosen) {
  const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                        page.bench.is_look_only()};
  return flow_button(page, flow, id, words, look) && !is_chosen;
}

void say(const Page& page, ButtonFlow& flow, const char* words) {
  const float base = flow.y + button_height() / 2 + page.brush.rise(Role::text) / 2;
  flow.x += page.brush.words({flow.x, base}, words, {}) + 10;
}

bool is_shared_value(material::Item item) {
  return item == material::Item::fixing || item == material::Item::hanging ||
         item == material::Item::facing;
}

/// Shows a part of the slip; the values begin with those of the fixings.
void show_part(Page& page, FixingPart part, int row) {
  page.later([&state = page.state, part, row] {
    state.curve.fixing_part = part;
    state.curve.fixing_row = row;
    state.curve.first = 0;
    state.curve.turn = -1;
    state.sew.first = 0;
    state.sew.field.clear();
    if (!is_shared_value(static_cast<material::Item>(state.sew.item))) {
      state.sew.item = static_cast<int>(material::Item::fixing);
    }
  });
}

/// The rows as buttons, one that adds a row, and the switch to slots and values.
float rows(Page& page, const Area& area, bool is_low) {
  const CurveStage& curve = page.state.curve;
  const FixingsView& view = curve.fixings;
  ButtonFlow flow{area, area.left, area.top};
  const auto switched = [&](const std::string& id, const std::string& words, bool is_on) {
    return flow_button(page, flow, id, words, {is_on ? ButtonKind::chosen : ButtonKind::plain});
  };
  for (std::size_t i = 0; i < view.rows.size(); ++i) {
    const auto at = static_cast<int>(i);
    const bool is_on = at == view.chosen && curve.fixing_part == FixingPart::row;
    if (switched("fixings." + std::to_string(i + 1), view.rows[i], is_on)) {
      show_part(page, FixingPart::row, at);
    }
  }
  if (flow_button(page, flow, "fixings.add", "Add a row",
                  {ButtonKind::plain, page.bench.is_look_only()})) {
    curve_act(page, with_fixing_row(page.bench.now(), curve.view.bay));
    show_part(page, FixingPart::row, static_cast<int>(view.rows.size()));
  }
  const bool are_slots = curve.fixing_part == FixingPart::slots;
  if (is_low && view.chosen >= 0 && switched("fixings.slots", "Slots", are_slots)) {
    show_part(page, FixingPart::slots, view.chosen);
  }
  const bool are_values = curve.fixing_part == FixingPart::values;
  if (switched("fixings.values", "Screw and warmth", are_values)) {
    show_part(page, FixingPart::values, view.chosen);
  }
  return flow.y + button_height() + 10;
}

/// Along which edge, which one is tight, how the timber lies behind it.
float switches(Page& page, const Area& area) {
  const FixingsView& view = page.state.curve.fixings;
  const job::Job& job = page.bench.now().job;
  const int bay = page.state.curve.view.bay;
  ButtonFlow flow{area, area.left, area.top};
  say(page, flow, "along");
  for (const std::string& edge : view.edges) {
    if (chosen_of(page, flow, "fixing.edge." + edge, with_capital(edge_said(edge)),
                  edge == view.edge)) {
      curve_act(page, with_fixing_edge(job, bay, view.chosen, edge));
    }
  }
  if (flow_button(page, flow, "fixing.away", "Take the row away",
                  {ButtonKind::plain, page.bench.is_look_only()})) {
    curve_act(page, without_fixing_row(job, bay, view.chosen));
  }
  flow = {area, area.left, flow.y + button_height() + 6};
  say(page, flow, "tight");
  constexpr std::array<const char*, 4> kTight = {"First", "Middle", "Last", "None"};
  for (int i = 0; i < 4; ++i) {
    const auto tight = static_cast<Tight>(i);
    const std::string words = kTight[static_cast<std::size_t>(i)];
    if (chosen_of(page, flow, "fixing.tight." + std::to_string(i), words, view.tight == tight)) {
      curve_act(page, with_tight(job, bay, view.chosen, tight));
    }
  }
  flow.x += 10;
  say(page, flow, "timber");
  for (const bool across : {false, true}) {
    if (chosen_of(page, flow, across ? "fixing.across" : "fixing.along",
                  across ? "Across grain" : "Along grain", view.is_across_grain == across)) {
      curve_act(page, with_timber(job, bay, view.chosen, across));
    }
  }
  return flow.y + button_height() + 6;
}

float boxes(Page& page, const Area& area) {
  const FixingsView& view = page.state.curve.fixings;
  const std::array<const std::string*, 4> shown = {&view.in_from_edge, &view.clear_first,
                                                   &view.clear_last, &view.spacing};
  constexpr std::array<const char*, 4> kLabels = {"in from the edge", "clear, first end",
                                                  "clear, last end", "spacing"};
  constexpr std::array<const char*, 4> kIds = {"in", "first", "last", "spacing"};
  const float top = area.top + page.brush.pitch(Role::second_line);
  const float apart = std::min(area.width() / 4, 190.0f);
  for (std::size_t i = 0; i < 4; ++i) {
    CurveBox box;
    box.id = std::string("fixing.") + kIds[i];
    box.area =
        area_at(area.left + apart * static_cast<float>(i), top, figure_width(), box_height());
    box.label = box.name = kLabels[i];
    box.shown = *shown[i];
    const TextEvent event = curve_box(page, box);
    if (!event.finished) continue;
    if (*event.finished == box.shown) {
      close_box(page.state.open_box);
      continue;
    }
    keep_curve(page, with_fixing_typed(page.bench.now().job, page.state.curve.view.bay, view.chosen,
                                       static_cast<FixingBox>(i), *event.finished));
  }
  return top + box_height() + 8;
}

void fixing_line(Page& page, const Area& row, const std::array<std::string, 5>& words,
                 bool is_head) {
  const Brush& brush = page.brush;
  const float base = row.mid_y() + brush.rise(Role::text) / 2;
  constexpr std::array<float, 5> kLeft = {0, 0.06f, 0.24f, 0.48f, 0.66f};
  const Role role = is_head ? Role::second_line : Role::text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const float x = row.left + row.width() * kLeft[i];
    const float to = i + 1 < words.size() ? row.left + row.width() * kLeft[i + 1] - 8 : row.right;
    brush.words({x, base}, cut_short(brush, words[i], to - x, role, i == 3),
                {role, i == 3 && !is_head, kInk});
  }
  brush.line({row.left, row.bottom}, {row.right, row.bottom}, is_head ? kInk : kPale, 1);
}

/// How many fixings come of the row, and every one with its slot.
void slots(Page& page, const Area& area, bool with_list) {
  const FixingsView& view = page.state.curve.fixings;
  const Brush& brush = page.brush;
  const float high = brush.pitch(Role::text) + 6;
  const float base = area.top + brush.rise(Role::text) + 6;
  const float wide = brush.words({area.left, base}, view.said, {Role::text, true, kInk});
  page.hand.note("fixings.said", {area.left, base - 16, area.left + wide, base + 5}, view.said);
  if (view.lines.empty() || !with_list) return;
  const Area head = area_at(area.left, base + 4, area.width(), high);
  fixing_line(page, head, {"", "from the datum", "moves", "slot", "screw today"}, true);
  const Area list = {area.left, head.bottom, area.right, area.bottom};
  const float line = std::max(high, list.height() < 3 * button_height() ? button_height() : high);
  const ListPart part =
      list_part(page, list, line, view.lines.size(), "fixings.more", "More fixings");
  Area row = area_at(list.left, list.top, list.width(), line);
  for (std::size_t i = part.first; i < part.first + part.shown; ++i) {
    const FixingLine& one = view.lines[i];
    fixing_line(page, row, {std::to_string(i + 1), one.at, one.move, one.slot, one.today}, false);
    page.hand.note("fixing.line." + std::to_string(i + 1), row,
                   "fixing " + std::to_string(i + 1) + ", " + one.at + " from the datum, moves " +
                       one.move + ", slot " + one.slot + ", screw today " + one.today);
    row = area_at(row.left, row.bottom, row.width(), line);
  }
}

/// Values that all rows share, as on the slip "Materials".
void values(Page& page, Area area) {
  ButtonFlow flow{area, area.left, area.top};
  for (int i = 0; i < material::kItems; ++i) {
    const auto item = static_cast<material::Item>(i);
    if (!is_shared_value(item)) continue;
    const bool is_chosen = page.state.sew.item == i;
    const std::string words = with_capital(std::string(material::item_words(item)));
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain};
    if (!flow_button(page, flow, "material." + std::string(material::item_key(item)), words, look))
      continue;
    page.later([&sew = page.state.sew, i] {
      sew.item = i;
      sew.first = 0;
      sew.field.clear();
    });
  }
  area.top = flow.y + button_height() + 8;
  material_values(page, area);
}

}  // namespace

void fixings_slip(Page& page, const Area& area) {
  const CurveStage& curve = page.state.curve;
  const bool is_low = area.height() < 420;
  Area rest = area;
  rest.top = rows(page, rest, is_low);
  if (curve.fixing_part == FixingPart::values) return values(page, rest);
  const bool has_row = curve.fixings.chosen >= 0;
  const bool shows_row = has_row && !(is_low && curve.fixing_part == FixingPart::slots);
  if (shows_row) {
    rest.top = switches(page, rest);
    rest.top = boxes(page, rest);
  }
  slots(page, rest, !(is_low && shows_row));
}

}  // namespace pouncemark::web

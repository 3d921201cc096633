#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "web/model/sew_materials.h"
#include "web/model/words.h"
#include "web/panels/sew_parts.h"

namespace pouncemark::web {
namespace {

using material::Field;
using material::Item;

bool is_large() { return text_size() == TextSize::large; }
float label_width() { return is_large() ? 236.0f : 188.0f; }
float value_width() { return is_large() ? 150.0f : 124.0f; }

/// The items as buttons; gives where the lines may begin.
float items(Page& page, const Area& area) {
  ButtonFlow flow{area, area.left, area.top};
  for (int i = 0; i < material::kItems; ++i) {
    const auto item = static_cast<Item>(i);
    if (material::is_of_hanging(item)) continue;
    const std::string words = with_capital(std::string(material::item_words(item)));
    const bool is_chosen = page.state.sew.item == i;
    const std::string id = "material." + std::string(material::item_key(item));
    if (flow_button(page, flow, id, words, {is_chosen ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&sew = page.state.sew, i] {
        sew.item = i;
        sew.field.clear();
        sew.first = 0;
        sew.sentence.clear();
      });
    }
  }
  return flow.y + button_height() + 10;
}

/// Widths of the columns of one line.
struct Columns {
  float value = 0;     ///< left of the value
  float standing = 0;  ///< left of the standing
};

/// A choice has more buttons than a value has room, and less to say of where it comes from.
Columns columns_in(const Area& area, bool is_choice) {
  const float value = area.left + label_width();
  const float said =
      is_choice ? (is_large() ? 216.0f : 152.0f) : std::max(220.0f, area.width() * 0.36f);
  return {value, area.right - said};
}

/// The choices of a field as buttons, or measured only. Gives the height.
float choices(Page& page, const MaterialLine& line, const Area& area, bool draws) {
  const material::FieldRow& row = material::row_of(line.field);
  const std::int64_t chosen = job::value_of(page.bench.now().job.materials, line.field).thousandths;
  float x = area.left;
  float y = area.top;
  for (int i = 0; i < choice_count(row); ++i) {
    const std::string words = choice_said(row, i);
    const float wide = button_width(page.brush, words);
    if (x > area.left && x + wide > area.right) {
      x = area.left;
      y += button_height() + 6;
    }
    const bool is_chosen = line.is_known && chosen == i;
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          page.bench.is_look_only()};
    const std::string id = "value." + line.id + "." + std::to_string(i);
    const Area place = area_at(x, y, wide, button_height());
    if (draws && button(page.brush, page.hand, id, place, words, look)) {
      sew_act(page, with_material_choice(page.bench.now().job, line.field, i));
    }
    x += wide + 6;
  }
  return y + button_height() - area.top;
}

Area value_area(const Area& area, float y, bool is_choice = false) {
  const Columns columns = columns_in(area, is_choice);
  return {columns.value, y, columns.standing - 16, y};
}

float line_height(Page& page, const MaterialLine& line, const Area& area) {
  const bool is_choice = material::row_of(line.field).holds == material::Holds::choice;
  return 8 + (is_choice ? choices(page, line, value_area(area, 0, true), false) : box_height());
}

/// Standing buttons, a box for the source, and the way back.
float open_height() { return 2 * button_height() + 34; }

void value_box(Page& page, const MaterialLine& line, const Area& area, float y) {
  const bool is_words = material::row_of(line.field).holds == material::Holds::words;
  const Area whole = value_area(area, y);
  SewTextBox box;
  box.id = "value." + line.id;
  box.area = area_at(whole.left, y, is_words ? whole.width() : value_width(), box_height());
  box.shown = line.is_known ? line.shown : "";
  box.text = line.text;
  box.name = line.words;
  box.is_words = is_words;
  const TextEvent event = sew_text_box(page, box);
  if (!is_words) {
    page.brush.words(
        {box.area.right + 8, box.area.mid_y() + page.brush.rise(Role::text) / 2},
        cut_short(page.brush, line.unit, whole.right - box.area.right - 8, Role::text, false), {});
  }
  if (!event.finished) return;
  if (*event.finished == line.text) return close_box(page.state.open_box);
  keep_typed(page, with_material(page.bench.now().job, line.field, *event.finished));
}

/// The standing and the source; pressed, both can be changed below the line.
void standing(Page& page, const MaterialLine& line, const Area& area, float y) {
  const Brush& brush = page.brush;
  const bool is_choice = material::row_of(line.field).holds == material::Holds::choice;
  const float left = columns_in(area, is_choice).standing;
  const Area whole = {left - 6, y, area.right, y + std::max(button_height(), box_height())};
  const bool is_open = page.state.sew.field == line.id;
  const std::string word = line.is_known ? line.standing : "not known";
  const std::string aloud = line.words + ": " + word + (line.source.empty() ? "" : ", ") +
                            line.source + ", change where it comes from";
  const Touch touch = page.hand.touch("standing." + line.id, whole, aloud);
  const float base = whole.mid_y() + brush.rise(Role::text) / 2;
  const float wide = brush.words({left, base}, word, {Role::text, true, kInk});
  if (line.is_assumed) {
    brush.dashes({left, base + 4}, {left + wide, base + 4}, kInk, 1.6f, 1.6f, 2.4f);
  } else if (touch.over || is_open) {
    brush.line({left, base + 4}, {left + wide, base + 4}, kInk, is_open ? 3.0f : 1.5f);
  }
  // A source that begins with the standing says it again.
  std::string source = line.source;
  const bool says_it = source.rfind(word + ",", 0) == 0 || source.rfind(word + ":", 0) == 0;
  if (says_it || source == word) source.erase(0, word.size());
  const std::size_t from = source.find_first_not_of(" ,:");
  source = from == std::string::npos ? "" : source.substr(from);
  const float room = whole.right - left - wide - 10;
  if (!source.empty() && room > 30) {
    brush.words({left + wide + 10, base}, cut_short(brush, source, room, Role::second_line, false),
                {Role::second_line, false, kSoft});
  }
  focus_ring(brush, page.hand, whole, touch.focused);
  if (!touch.clicked) return;
  page.later([&sew = page.state.sew, id = line.id, is_open] {
    sew.field = is_open ? std::string() : id;
    sew.sentence.clear();
  });
}

void open_line(Page& page, const MaterialLine& line, const Area& area, float y) {
  const job::Job& job = page.bench.now().job;
  const bool idle = page.bench.is_look_only();
  page.brush.fill({area.left, y, area.left + 4, y + open_height() - 12}, kInk);
  ButtonFlow flow{{area.left + 16, y, area.right, y}, area.left + 16, y};
  for (const material::Standing one : kStandings) {
    const std::string words = standing_said(one);
    const bool is_chosen = line.standing == words;
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          idle || !line.is_known};
    if (flow_button(page, flow, "standing.to." + std::to_string(static_cast<int>(one)),
                    with_capital(words), look)) {
      sew_act(page, with_standing(job, line.field, one));
    }
  }
  if (flow_button(page, flow, "standing.back", "As it began",
                  {ButtonKind::plain, idle || !line.is_entered})) {
    sew_act(page, without_material(job, line.field));
  }
  const float second = flow.y + button_height() + 8;
  const float label = page.brush.width_of("from", Role::text, false);
  SewTextBox box;
  box.id = "source";
  box.area = {area.left + 16 + label + 10, second, area.right, second + button_height()};
  box.shown = line.source;
  box.text = line.source;
  box.name = "where " + line.words + " comes from";
  box.is_words = true;
  page.brush.words({area.left + 16, box.area.mid_y() + page.brush.rise(Role::text) / 2}, "from",
                   {});
  const TextEvent event = sew_text_box(page, box);
  if (!event.finished) return;
  if (*event.finished == line.source) return close_box(page.state.open_box);
  keep_typed(page, with_source(job, line.field, *event.finished));
}

/// "10 m weigh ... g", which gives the weighed tex.
void weighing(Page& page, const Area& area, float y) {
  const float base = y + box_height() / 2 + page.brush.rise(Role::text) / 2;
  const float wide = page.brush.words({area.left, base}, "10 m of it weigh", {}) + 10;
  SewTextBox box;
  box.id = "weighing";
  box.area = area_at(area.left + wide, y, value_width(), box_height());
  box.name = "what 10 m of the thread weigh, in grams";
  const TextEvent event = sew_text_box(page, box);
  page.brush.words({box.area.right + 8, base}, "g: gives the weighed tex", {});
  if (!event.finished) return;
  if (event.finished->empty()) return close_box(page.state.open_box);
  keep_typed(page, with_weighing(page.bench.now().job, *event.finished));
}

/// A droop test typed figure by figure; the last one gives the stiffness.
void droop_test(Page& page, const Area& area, float y, Field stiffness) {
  constexpr std::array<const char*, 3> kLabels = {"reaches out", "hangs down", "thick"};
  constexpr std::array<const char*, 3> kIds = {"droop.reach", "droop.down", "droop.thick"};
  Um* typed = page.state.sew.droop_um;
  const float base = y + box_height() / 2 + page.brush.rise(Role::text) / 2;
  float x = area.left + page.brush.words({area.left, base}, "Droop test: ", {Role::text, true}) + 4;
  for (std::size_t i = 0; i < kLabels.size(); ++i) {
    const float wide = page.brush.words({x, base}, kLabels[i], {}) + 8;
    const Area box = area_at(x + wide, y, value_width() * 0.72f, box_height());
    BoxLook look;
    look.um = typed[i];
    look.figure = typed[i] == 0 ? "" : exact_mm_text(typed[i]);
    look.name = std::string("droop test, ") + kLabels[i];
    look.limits = {1, 5'000'000};
    const auto um = length_box(page.brush, page.hand, page.state.open_box, kIds[i], box, look);
    if (um) page.later([typed, i, is = *um] { typed[i] = is; });
    x = box.right + 14;
  }
  if (page.bench.is_look_only()) return;
  const Droop droop{typed[0], typed[1], typed[2]};
  const float wide = button_width(page.brush, "Keep it");
  const Area keep = area_at(std::min(x, area.right - wide),
                            y + (box_height() - button_height()) / 2, wide, button_height());
  const bool has_all = droop.reach_um > 0 && droop.droop_um > 0 && droop.thick_um > 0;
  if (button(page.brush, page.hand, "droop.keep", keep, "Keep it", {ButtonKind::plain, !has_all})) {
    sew_act(page, with_droop(page.bench.now().job, stiffness, droop));
  }
}

bool has_helper(Item item) {
  return item == Item::thread || item <= Item::facing;
}

void helper(Page& page, const Area& area, Item item, float y) {
  if (item == Item::thread && !page.bench.is_look_only()) weighing(page, area, y);
  if (item == Item::leaf) droop_test(page, area, y, Field::leaf_modulus);
  if (item == Item::backing) droop_test(page, area, y, Field::backing_modulus);
  if (item == Item::facing) droop_test(page, area, y, Field::facing_modulus);
}

/// One line with what is open below it; gives the height.
float material_line(Page& page, const MaterialLine& line, const Area& area, float y) {
  const Brush& brush = page.brush;
  brush.line({area.left, y}, {area.right, y}, kPale, 1);
  const float top = y + 4;
  const float base = top + box_height() / 2 + brush.rise(Role::text) / 2;
  brush.words({area.left, base},
              cut_short(brush, line.words, label_width() - 10, Role::text, false), {});
  if (material::row_of(line.field).holds == material::Holds::choice) {
    choices(page, line, value_area(area, top, true), true);
  } else {
    value_box(page, line, area, top);
  }
  standing(page, line, area, top);
  const float height = line_height(page, line, area);
  if (page.state.sew.field != line.id) return height;
  open_line(page, line, area, y + height + 2);
  return height + open_height();
}

}  // namespace

void materials_slip(Page& page, const Area& area) {
  const float top = items(page, area);
  material_values(page, {area.left, top, area.right, area.bottom});
}

void material_values(Page& page, const Area& area) {
  const auto item = static_cast<Item>(page.state.sew.item);
  const auto lines = material_lines(page.bench.now().job, item);
  const float top = area.top;
  // What helps to a value stands after the last line.
  const float help = has_helper(item) ? box_height() + 16 : 0;
  float bottom = area.bottom;
  const auto height_of = [&](const MaterialLine& line) {
    return line_height(page, line, area) + (page.state.sew.field == line.id ? open_height() : 0);
  };
  float all = help;
  for (const MaterialLine& line : lines) all += height_of(line);
  const bool has_room = all <= bottom - top;
  if (!has_room) bottom -= button_height() + 8;
  std::size_t i = has_room || page.state.sew.first > lines.size() ? 0 : page.state.sew.first;
  const std::size_t first = i;
  float y = top;
  while (i < lines.size() && (i == first || y + height_of(lines[i]) <= bottom)) {
    y += material_line(page, lines[i], area, y);
    ++i;
  }
  const bool is_last = i == lines.size() && y + help <= bottom;
  if (is_last) helper(page, area, item, y + 10);
  if (has_room) return;
  const std::string words = is_last             ? "Back to the first"
                            : i == lines.size() ? "A test that gives one"
                                                : std::to_string(lines.size() - i) + " more";
  const Area more =
      area_at(area.left, bottom + 6, button_width(page.brush, words), button_height());
  if (button(page.brush, page.hand, "material.more", more, words)) {
    page.later([&sew = page.state.sew, next = is_last ? 0 : i] {
      sew.first = next;
      sew.field.clear();
    });
  }
}

}  // namespace pouncemark::web

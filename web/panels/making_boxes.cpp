#include <algorithm>
#include <array>
#include <cstddef>
#include <string>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/making_slip.h"
#include "web/widgets/count_box.h"

namespace pouncemark::web {
namespace {

float figure_width() { return text_size() == TextSize::large ? 124.0f : 104.0f; }

/// Buttons side by side from the left, on the next line where one has no room.
struct Row {
  const Area& area;
  float x;
  float y;
};

bool row_button(Page& page, Row& row, const char* id, const char* words, const ButtonLook& look) {
  const float width = button_width(page.brush, words);
  if (row.x > row.area.left && row.x + width > row.area.right) {
    row.x = row.area.left;
    row.y += button_height() + 8;
  }
  const Area area = area_at(row.x, row.y, width, button_height());
  row.x = area.right + 8;
  return button(page.brush, page.hand, id, area, words, look);
}

void words_above(const Page& page, const Area& box, const char* words) {
  page.brush.words({box.left, box.top - 6}, words, {Role::second_line, false, kInk});
}

/// The signs that have room in a box, … at their end where they are cut.
std::string fitted(const Page& page, const std::string& words, float room) {
  std::size_t signs = 120;
  std::string shown = shortened(words, signs);
  while (signs > 1 && page.brush.width_of(shown, Role::text, false) > room) {
    signs -= signs > 40 ? 10 : 1;
    shown = shortened(words, signs);
  }
  return shown;
}

/// A box for a name; what was typed when it is finished.
std::optional<std::string> name_box(Page& page, std::string_view id, const Area& area,
                                    const char* name, const std::string& words) {
  TextLook look;
  look.shown = fitted(page, words, area.width() - 20);
  look.text = words;
  look.name = name;
  look.aloud = words;
  look.role = Role::text;
  look.side = Side::left;
  words_above(page, area, name);
  return text_box(page.brush, page.hand, page.state.open_box, id, area, look).finished;
}

/// Keeps a name that was finished, or leaves its box open with the sentence.
void keep_name(Page& page, Made made, bool is_other) {
  OpenBox& open = page.state.open_box;
  if (!is_other) return close_box(open);
  if (!made.refused.empty()) return refuse_text(open, page.hand, made.refused);
  close_box(open);
  do_making(page, std::move(made));
}

void name_boxes(Page& page, const Area& area) {
  const job::Job& job = page.bench.now().job;
  const int piece = page.bench.place().piece;
  const Area code = area_at(area.left, area.top, figure_width() * 1.6f, box_height());
  if (const auto typed = name_box(page, "making.code", code, "code", code_of(job, piece))) {
    keep_name(page, with_code(job, piece, *typed), *typed != code_of(job, piece));
  }
  const Area name = {code.right + 16, area.top, area.right, code.bottom};
  if (const auto typed = name_box(page, "making.name", name, "name of the job", job.name)) {
    Made made = with_name(job, *typed);
    made.piece = piece;
    keep_name(page, std::move(made), *typed != job.name);
  }
}

void plan_changed(Page& page, const SectionPlan& plan) {
  page.later([&making = page.state.making, plan] {
    making.plan = plan;
    making.is_stale = true;
    making.sentence.clear();
  });
}

/// The four figures; each change goes to the plan, not to the job.
void plan_figures(Page& page, const Area& area) {
  SectionPlan plan = page.state.making.plan;
  OpenBox& open = page.state.open_box;
  const float width = figure_width();
  const Area count = area_at(area.left, area.top, width, box_height());
  words_above(page, count, "sleeves");
  if (const auto is = count_box(page.brush, page.hand, open, "making.count", count, plan.count)) {
    plan.count = *is;
    return plan_changed(page, plan);
  }
  const Area lap = area_at(count.right + 16, area.top, width, box_height());
  words_above(page, lap, "lap");
  BoxLook look;
  look.um = plan.lap_um;
  look.figure = box_text(plan.lap_um);
  look.name = "lap";
  look.limits = {0, kMostLengthUm};
  if (const auto um = length_box(page.brush, page.hand, open, "making.lap", lap, look)) {
    plan.lap_um = *um;
    return plan_changed(page, plan);
  }
  const Area widths = {lap.right + 16, area.top, area.right, lap.bottom};
  const auto typed = name_box(page, "making.widths", widths, "widths, repeating: 110, 96, 110",
                              widths_text(plan.widths_um));
  if (!typed) return;
  WidthsEntry entry = read_widths(*typed);
  if (entry.widths_um.empty()) return refuse_text(open, page.hand, std::move(entry.sentence));
  close_box(open);
  plan.widths_um = std::move(entry.widths_um);
  plan_changed(page, plan);
}

void over_buttons(Page& page, Row& row) {
  SectionPlan plan = page.state.making.plan;
  for (const job::Side side : {job::Side::right, job::Side::left}) {
    const bool to_right = side == job::Side::right;
    const ButtonLook look{plan.lies_over == side ? ButtonKind::chosen : ButtonKind::plain};
    if (!row_button(page, row, to_right ? "making.over.right" : "making.over.left",
                    to_right ? "Over its right neighbour" : "Over its left neighbour", look)) {
      continue;
    }
    plan.lies_over = side;
    plan_changed(page, plan);
  }
}

/// Turned so that the edge that was pressed stands upright.
void turn_panel(Page& page) {
  page.later([&making = page.state.making] {
    std::swap(making.panel.width_um, making.panel.length_um);
    making.sentence.clear();
  });
}

void point_at(Page& page, std::size_t edge) {
  page.later([&making = page.state.making, edge] {
    making.sentence.clear();
    if (edge < 2) {
      making.has_hinge = true;
      making.panel.hinge = edge == 0 ? job::Side::left : job::Side::right;
    } else {
      making.sentence =
          "Hinge side and fly side are upright edges: point at the left or the right edge, or turn "
          "the panel.";
    }
  });
}

void edge_words(Page& page, const Area& sheet) {
  const MakingSlip& making = page.state.making;
  const Brush& brush = page.brush;
  const bool left = making.panel.hinge == job::Side::left;
  const float y = sheet.mid_y();
  const auto beside = [&](bool at_left, float down, const char* words, Colour colour) {
    const float x = at_left ? sheet.left - 36 : sheet.right + 36;
    brush.words({x, y + down}, words,
                {Role::text, true, colour, at_left ? Side::right : Side::left});
  };
  if (!making.has_hinge) {
    beside(true, 0, "left edge", kSoft);
    beside(false, 0, "right edge", kSoft);
    return;
  }
  const float hinge = left ? sheet.left : sheet.right;
  brush.line({hinge, sheet.top}, {hinge, sheet.bottom}, kThread, 5);
  fly_zigzag(brush, left ? sheet.right : sheet.left, sheet.top, sheet.bottom);
  beside(left, 0, "HINGE SIDE", kThread);
  beside(!left, 0, "FLY SIDE", kInk);
  beside(!left, brush.pitch(Role::text), "DO NOT SEW", kStop);
}

/// The panel in true proportion, its four edges to be pressed.
void panel_to_point_at(Page& page, const Area& room) {
  const PanelPlan& plan = page.state.making.panel;
  const Brush& brush = page.brush;
  const float scale = std::min((room.width() - 360) / static_cast<float>(plan.width_um),
                               (room.height() - 40) / static_cast<float>(plan.length_um));
  const float width = std::max(60.0f, scale * static_cast<float>(plan.width_um));
  const float height = std::max(60.0f, scale * static_cast<float>(plan.length_um));
  const Area sheet = area_at(room.mid_x() - width / 2, room.mid_y() - height / 2, width, height);
  brush.fill(sheet, kSheet);
  brush.fill(sheet.inset(6), kCloth);
  const float reach = text_size() == TextSize::large ? 26.0f : 24.0f;
  const std::array<Area, 4> edges = {
      Area{sheet.left - reach, sheet.top, sheet.left + reach, sheet.bottom},
      Area{sheet.right - reach, sheet.top, sheet.right + reach, sheet.bottom},
      Area{sheet.left + reach, sheet.top - 19, sheet.right - reach, sheet.top + 19},
      Area{sheet.left + reach, sheet.bottom - 19, sheet.right - reach, sheet.bottom + 19}};
  constexpr std::array<const char*, 4> kIds = {"edge.left", "edge.right", "edge.top",
                                               "edge.bottom"};
  constexpr std::array<const char*, 4> kWords = {"left edge", "right edge", "top edge",
                                                 "bottom edge"};
  brush.frame(sheet, kSheetEdge, 1.5f);
  for (std::size_t i = 0; i < edges.size(); ++i) {
    const Touch touch = page.hand.touch(kIds[i], edges[i], kWords[i]);
    if (touch.over) brush.frame(edges[i], kPen, 2);
    focus_ring(brush, page.hand, edges[i], touch.focused);
    if (touch.clicked) point_at(page, i);
  }
  brush.words({sheet.mid_x(), sheet.top - 6}, "TOP", {Role::second_line, true, kInk, Side::middle});
  brush.words({sheet.mid_x(), sheet.bottom + 18}, "BOTTOM",
              {Role::second_line, true, kInk, Side::middle});
  edge_words(page, sheet);
}

void panel_size(Page& page, const Area& area, const char* id, const char* name, Um PanelPlan::*um) {
  BoxLook look;
  look.um = page.state.making.panel.*um;
  look.figure = box_text(look.um);
  look.name = name;
  look.limits = {kLeastLengthUm, kMostLengthUm};
  words_above(page, area, name);
  const auto kept = length_box(page.brush, page.hand, page.state.open_box, id, area, look);
  if (!kept) return;
  page.later([&making = page.state.making, um, is = *kept] { making.panel.*um = is; });
}

}  // namespace

void fly_zigzag(const Brush& brush, float x, float top, float bottom) {
  std::vector<Spot> spots;
  float side = -4;
  for (float y = top; y <= bottom; y += 8, side = -side) spots.push_back({x + side, y});
  brush.outline(spots, kInk, 2, false);
}

void piece_boxes(Page& page, const Area& area) {
  const job::Job& job = page.bench.now().job;
  const int piece = page.bench.place().piece;
  const float pitch = page.brush.pitch(Role::second_line);
  const Area names = {area.left, area.top + pitch, area.right, area.bottom};
  const bool idle = page.bench.is_look_only();
  if (!idle) name_boxes(page, names);
  const ButtonLook plain{ButtonKind::plain, idle};
  Row row{area, area.left, names.top + box_height() + 12};
  const job::Section* section = section_at(job, page.bench.now().results, page.bench.place());
  if (section != nullptr) {
    const bool is_one = section->count == 1;
    const char* words = is_one ? "Make it a section" : "Count, widths, lap";
    if (row_button(page, row, "piece.plan", words, plain)) open_making(page, MakingAsk::section);
  }
  const auto act = [&](const char* id, const char* words, auto make) {
    if (row_button(page, row, id, words, plain)) do_making(page, make());
  };
  act("piece.copy", "Copy it", [&] { return with_copy(job, piece); });
  act("piece.earlier", "Move it earlier", [&] { return with_piece_moved(job, piece, -1); });
  act("piece.later", "Move it later", [&] { return with_piece_moved(job, piece, 1); });
  act("piece.away", "Take it away", [&] { return without_piece(job, piece); });
  act("piece.number", "Number all pieces anew", [&] { return with_new_numbers(job, piece); });
  act("piece.add_section", "Add a section", [&] { return with_section(job); });
  if (row_button(page, row, "piece.add_panel", "Add a panel", plain)) {
    open_making(page, MakingAsk::panel);
  }
  if (piece_count(job) > 1 && row_button(page, row, "piece.all", "The whole hanging", {})) {
    page.later([&bench = page.bench, &state = page.state] {
      state.making = {};
      bench.go(kWholeHanging);
    });
  }
}

void plan_boxes(Page& page, const Area& area) {
  const MakingSlip& making = page.state.making;
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(Role::second_line);
  const Area figures = {area.left, area.top + pitch, area.right, area.bottom};
  plan_figures(page, figures);
  Row row{area, area.left, figures.top + box_height() + pitch + 10};
  brush.words({row.x, row.y - 6}, "each sleeve lies", {Role::second_line, false, kInk});
  over_buttons(page, row);
  // What would follow stands at the right of the buttons, or below where that has no room.
  const float wide = text_size() == TextSize::large ? 360.0f : 280.0f;
  const bool beside = row.x + 24 + wide < area.right && row.y < figures.top + 2 * box_height();
  const float x = beside ? row.x + 24 : area.left;
  const float top = beside ? row.y - 6 : row.y + button_height() + pitch + 2;
  float base = top;
  std::string all;
  for (const std::string& line : making.would.follows) {
    brush.words({x, base}, line, {Role::second_line, false, kInk});
    base += pitch;
    all += (all.empty() ? "" : "; ") + line;
  }
  if (!making.would.refused.empty()) {
    all = making.would.refused;
    brush.paragraph({x, base}, all, area.right - x, {Role::text, true, kStop});
  }
  page.hand.note("making.follows", {x, top - pitch, area.right, base}, all);
  constexpr const char* kKeep = "Keep the section";
  const float width = button_width(brush, kKeep);
  const Area keep =
      area_at(area.right - width, area.bottom - button_height(), width, button_height());
  const ButtonLook look{ButtonKind::main, !making.would.refused.empty() ||
                                              page.bench.is_look_only() ||
                                              !page.state.open_box.id.empty()};
  if (button(brush, page.hand, "making.keep", keep, kKeep, look)) {
    do_making(page, with_plan(page.bench.now().job, page.bench.place().piece, making.plan));
  }
}

void panel_boxes(Page& page, const Area& area) {
  const Brush& brush = page.brush;
  const float pitch = brush.pitch(Role::second_line);
  const float top = area.top + pitch;
  const float width = figure_width();
  panel_size(page, area_at(area.left, top, width, box_height()), "making.wide", "wide",
             &PanelPlan::width_um);
  panel_size(page, area_at(area.left + width + 16, top, width, box_height()), "making.long", "long",
             &PanelPlan::length_um);
  Row row{area, area.left + 2 * width + 32, top + (box_height() - button_height()) / 2};
  if (row_button(page, row, "making.turn", "Turn the panel", {})) turn_panel(page);
  const MakingSlip& making = page.state.making;
  constexpr const char* kKeep = "Add the panel";
  const float wide = button_width(brush, kKeep);
  const Area keep = area_at(area.right - wide, row.y, wide, button_height());
  const ButtonLook look{ButtonKind::main, !making.has_hinge || !page.state.open_box.id.empty()};
  if (button(brush, page.hand, "making.add", keep, kKeep, look)) {
    do_making(page, with_panel(page.bench.now().job, making.panel));
  }
  const float base = top + box_height() + pitch + 4;
  const char* ask = making.has_hinge
                        ? "The other upright edge is the fly side; press it to change them over."
                        : "Point at the edge that is sewn: it becomes the hinge side.";
  brush.words({area.left, base}, ask, {Role::text, true, kInk});
  const float foot = making.sentence.empty() ? 0 : brush.pitch(Role::text) + 8;
  panel_to_point_at(page, {area.left, base + 18, area.right, area.bottom - foot});
}

}  // namespace pouncemark::web

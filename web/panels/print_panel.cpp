#include <algorithm>
#include <array>

#include "web/panels/print_acts.h"
#include "web/panels/print_parts.h"

namespace pouncemark::web {
namespace {

constexpr float kBetween = 32;

/// Widths of the columns; 0: it has no room of its own.
struct Columns {
  float printer = 0;
  float guides = 0;
  float map = 0;
  float sheets = 0;
};

/// Four columns where there is room, else three, else two; what has no column of its own takes
/// turns in the first.
Columns columns_for(float usable) {
  const bool large = text_size() == TextSize::large;
  Columns columns;
  columns.sheets = std::clamp(usable * 0.22f, large ? 300.0f : 244.0f, 400.0f);
  const float printer = std::clamp(usable * 0.22f, large ? 350.0f : 264.0f, 400.0f);
  const float map = std::clamp(usable * 0.18f, large ? 300.0f : 232.0f, 420.0f);
  const float guides = large ? 470 : 380;
  float rest = usable - columns.sheets - printer - 2 * kBetween;
  if (rest < guides) {
    columns.printer = usable - columns.sheets - kBetween;
    return columns;
  }
  columns.printer = printer;
  if (rest - map - kBetween >= guides) {
    columns.map = map;
    rest -= map + kBetween;
  }
  columns.guides = std::min(rest, guides * 1.6f);
  return columns;
}

struct PartWord {
  PrintPart part;
  const char* id;
  const char* words;
};
constexpr std::array kParts = {PartWord{PrintPart::printer, "part.printer", "Printer"},
                               PartWord{PrintPart::guides, "part.guides", "Guides"},
                               PartWord{PrintPart::map, "part.map", "Page map"}};

/// Which part stands in the first column; gives the lower edge.
float part_switch(Page& page, Spot at, bool with_guides) {
  float x = at.x;
  for (const PartWord& one : kParts) {
    if (one.part == PrintPart::guides && !with_guides) continue;
    const bool is_chosen = page.state.printing.part == one.part;
    const float wide = button_width(page.brush, one.words);
    const Area area = area_at(x, at.y, wide, button_height());
    if (button(page.brush, page.hand, one.id, area, one.words,
               {is_chosen ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&state = page.state, part = one.part] { state.printing.part = part; });
    }
    x += wide + 8;
  }
  return at.y + button_height();
}

void first_part(Page& page, const Area& area) {
  switch (page.state.printing.part) {
    case PrintPart::printer:
      return prove_the_printer(page, area);
    case PrintPart::guides:
      return choose_the_guides(page, area);
    case PrintPart::map:
      return pages_map(page, area);
  }
}

/// The columns from left to right.
void lay_columns(Page& page, const Area& area, const Columns& columns) {
  const bool has_guides = columns.guides > 0;
  const bool has_map = columns.map > 0;
  if (has_guides && page.state.printing.part == PrintPart::guides) {
    page.state.printing.part = PrintPart::printer;
  }
  Area first = {area.left, area.top, area.left + columns.printer, area.bottom};
  float x = first.right + kBetween;
  if (has_map) {
    prove_the_printer(page, first);
  } else {
    first.top = part_switch(page, {first.left, first.top}, !has_guides) + 10;
    first_part(page, first);
  }
  if (has_guides) {
    choose_the_guides(page, {x, area.top, x + columns.guides, area.bottom});
    x += columns.guides + kBetween;
  }
  const float sheets = area.right - columns.sheets;
  if (has_map) pages_map(page, {x, area.top, sheets - kBetween, area.bottom});
  sheets_column(page, {sheets, area.top, area.right, area.bottom});
}

/// The file over the printer and the guides; its map stays beside it.
void lay_view(Page& page, const Area& area, const Columns& columns) {
  float map_right = area.right;
  float map_wide = columns.sheets;
  if (columns.map > 0) {
    map_right = area.right - columns.sheets - kBetween;
    map_wide = columns.map;
    sheets_column(page, {area.right - columns.sheets, area.top, area.right, area.bottom});
  }
  pages_map(page, {map_right - map_wide, area.top, map_right, area.bottom});
  file_view(page, {area.left, area.top, map_right - map_wide - kBetween, area.bottom});
}

}  // namespace

float column_heading(Page& page, const Area& area, const std::string& words,
                     const std::string& in_short) {
  const Brush& brush = page.brush;
  const bool fits = brush.width_of(words, Role::figure, true) <= area.width();
  brush.words({area.left, area.top + 26}, fits ? words : in_short, {Role::figure, true, kInk});
  return area.top + std::max(44.0f, button_height() + 8);
}

void print_panel(Page& page) {
  const Layout& layout = page.layout;
  Area area = {kPageEdge, stage_row_height() + 20, layout.width - kPageEdge, layout.bar.top - 8};
  area.top = paper_row(page, area) + 14;
  const Columns columns = columns_for(area.width());
  if (page.state.printing.is_viewing) {
    lay_view(page, area, columns);
  } else {
    lay_columns(page, area, columns);
  }
}

}  // namespace pouncemark::web

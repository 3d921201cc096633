#include <algorithm>
#include <cstddef>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/panels/page.h"
#include "web/widgets/slip.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

TagKind kind_of(solve::Severity severity) {
  if (severity == solve::Severity::stop) return TagKind::stop;
  return severity == solve::Severity::warn ? TagKind::warn : TagKind::note;
}

/// Findings of the piece on the bench first, then the others, in their own order.
std::vector<const solve::Finding*> nearest_first(const Page& page) {
  const solve::Results& results = page.bench.now().results;
  const int here = page.bench.place().piece;
  std::vector<const solve::Finding*> found;
  for (const bool near : {true, false}) {
    for (const solve::Finding& finding : results.findings) {
      if ((finding.piece == here) == near) found.push_back(&finding);
    }
  }
  return found;
}

std::vector<SlipLine> slip_lines(const Page& page) {
  std::vector<SlipLine> lines;
  const auto follows = follow_lines(page.bench.now(), page.bench.before(), page.bench.place());
  for (const FollowLine& line : follows) {
    lines.push_back({"slip." + line.id, line.label, line.figure, line.unit, line.before, line.sum});
  }
  return lines;
}

/// The sentence without the figure it begins with: that stands large before it.
std::string after_figure(const solve::Finding& finding) {
  const std::string lead = finding.figure + " ";
  if (finding.figure.empty() || finding.sentence.rfind(lead, 0) != 0) return finding.sentence;
  return finding.sentence.substr(lead.size());
}

void open_or_close(Page& page, const std::string& id) {
  page.later(
      [&state = page.state, id] { state.open_sum = state.open_sum == id ? std::string() : id; });
}

/// How far the sentence stands in beside its figure; 0: a long figure has a line of its own.
float figure_indent(const Page& page, const solve::Finding& finding, float width) {
  if (finding.figure.empty()) return 0;
  const float figure = page.brush.width_of(finding.figure, Role::figure, true) + 12;
  return figure > width * 0.4f ? 0 : figure;
}

/// One finding in full: tag, place, figure first, sentence, what to change, and its sum when asked.
float whole_finding(Page& page, const solve::Finding& finding, const std::string& id, Area area) {
  const Brush& brush = page.brush;
  const TagKind kind = kind_of(finding.severity);
  const float tag_right = tag(brush, {area.left, area.top}, kind);
  const float middle = area.top + tag_height() / 2 + brush.rise(Role::second_line) / 2;
  brush.words({tag_right + 10, middle}, finding.place, {Role::second_line, false, kInk});
  float y = area.top + tag_height() + brush.pitch(Role::text);
  const Ink figure_ink{Role::figure, true, tag_colour(kind)};
  const float indent = figure_indent(page, finding, area.width());
  if (indent == 0 && !finding.figure.empty()) {
    y = brush.paragraph({area.left, y + 1}, finding.figure, area.width(), figure_ink);
  } else if (indent > 0) {
    brush.words({area.left, y + 1}, finding.figure, figure_ink);
  }
  const float left = area.left + indent;
  y = brush.paragraph({left, y}, after_figure(finding), area.right - left, {});
  if (!finding.change.empty()) {
    y = brush.paragraph({left, y}, finding.change, area.right - left, {Role::text, false, kSoft});
  }
  const bool is_open = page.state.open_sum == id;
  if (is_open && !finding.sum.empty()) {
    const float top = y - brush.rise(Role::second_line) - 6;
    y = brush.paragraph({area.left + 14, y}, finding.sum, area.width() - 14,
                        {Role::second_line, false, kInk});
    brush.fill({area.left, top, area.left + 4, y - brush.pitch(Role::second_line) + 6}, kInk);
  }
  const Area whole = {area.left, area.top, area.right, y - brush.pitch(Role::text) + 8};
  const Touch touch = page.hand.touch(id, whole, finding.sentence);
  if (touch.over && !is_open && !finding.sum.empty()) {
    const float base = y - brush.pitch(Role::text) + 5;
    brush.line({left, base}, {area.right, base}, kPale, 1);
  }
  focus_ring(brush, page.hand, whole, touch.focused);
  if (touch.clicked && !finding.sum.empty()) open_or_close(page, id);
  return whole.bottom + 10;
}

/// A finding on one line: the tag and its sentence as far as it goes.
float short_finding(Page& page, const solve::Finding& finding, const std::string& id, Area area) {
  const Brush& brush = page.brush;
  brush.line({area.left, area.top - 4}, {area.right, area.top - 4}, kPale, 1);
  const float x = tag(brush, {area.left, area.top + 2}, kind_of(finding.severity)) + 10;
  const float base = area.top + 2 + tag_height() / 2 + brush.rise(Role::text) / 2;
  const std::string words =
      finding.figure.empty() ? finding.sentence : finding.figure + " " + after_figure(finding);
  const auto lines = broken(brush, words, area.right - x - 18, Role::text, false);
  if (!lines.empty()) {
    const bool cut = lines.size() > 1;
    brush.words({x, base}, cut ? lines.front() + " \xE2\x80\xA6" : lines.front(), {});
  }
  const Area whole = {area.left, area.top - 2, area.right, area.top + tag_height() + 6};
  const Touch touch = page.hand.touch(id, whole, words);
  focus_ring(brush, page.hand, whole, touch.focused);
  if (touch.clicked) open_or_close(page, id);
  return area.top + tag_height() + 14;
}

std::string finding_id(std::size_t index) { return "finding." + std::to_string(index); }

/// Change all, back to the section's own figure: offered only where a sleeve's ends differ.
float end_remedies(Page& page, Area area) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  if (!ends_differ_from_section(now.job, now.results, place) || page.bench.is_moving()) {
    return area.top;
  }
  const job::Section* section = section_at(now.job, now.results, place);
  const std::string all = "Change all " + std::to_string(section->count);
  const std::string back = "Back to " + exact_mm_text(section->side_rows.staple.kept_clear_um[0]);
  const float height = button_height();
  const float wide = button_width(page.brush, all, false);
  if (button(page.brush, page.hand, "remedy.all", area_at(area.left, area.top, wide, height),
             all)) {
    page.later([&bench = page.bench, place] {
      const Solved& solved = bench.now();
      bench.edit(with_ends_of_all(solved.job, solved.results, place),
                 "Gave all sleeves the ends of " + name_of(solved.results, place));
    });
  }
  const Area second =
      area_at(area.left + wide + 8, area.top, button_width(page.brush, back, false), height);
  if (button(page.brush, page.hand, "remedy.back", second, back)) {
    page.later([&bench = page.bench, place] {
      const Solved& solved = bench.now();
      const Um um =
          section_at(solved.job, solved.results, place)->side_rows.staple.kept_clear_um[0];
      const Um was = measured(solved.job, solved.results, place, Measure::kept_clear_bottom);
      bench.edit(
          with_measure(solved.job, solved.results, place, Measure::kept_clear_bottom, um),
          action_words(solved.job, solved.results, place, Measure::kept_clear_bottom, was, um));
    });
  }
  return area.top + height + 14;
}

/// Height of a finding's words, for knowing whether it fits.
float words_height(const Page& page, const solve::Finding& finding, float width) {
  const float left = figure_indent(page, finding, width);
  const float own_line = left == 0 && !finding.figure.empty() ? page.brush.pitch(Role::figure) : 0;
  const auto lines =
      broken(page.brush, after_figure(finding), width - left, Role::text, false).size() +
      broken(page.brush, finding.change, width - left, Role::text, false).size();
  return own_line + static_cast<float>(lines) * page.brush.pitch(Role::text);
}

void findings(Page& page, Area area) {
  area.top = end_remedies(page, area);
  const auto found = nearest_first(page);
  if (found.empty()) {
    page.brush.words({area.left, area.top + 20}, "Nothing found that stands in the way.", {});
    return;
  }
  page.brush.start_window({area.left - 6, area.top - 8, area.right + 6, area.bottom});
  std::size_t index = 0;
  for (; index < found.size() && area.top + tag_height() + 8 <= area.bottom; ++index) {
    const std::string id = finding_id(index);
    const bool whole = index < 2 || page.state.open_sum == id;
    const float room = area.bottom - area.top;
    const float needs = tag_height() + words_height(page, *found[index], area.width()) + 14;
    area.top = whole && needs <= room ? whole_finding(page, *found[index], id, area)
                                      : short_finding(page, *found[index], id, area);
  }
  page.brush.end_window();
}

SlipLook slip_look(const Page& page) {
  SlipLook look;
  look.title = "What follows";
  look.under_title = "for " + name_of(page.bench.now().results, page.bench.place());
  look.is_moving = page.bench.is_moving();
  look.open_sum = page.state.open_sum;
  look.line_height = text_size() == TextSize::large ? 42.0f : 34.0f;
  return look;
}

void full_slip(Page& page, const Area& area) {
  const auto lines = slip_lines(page);
  const SlipLook look = slip_look(page);
  const std::string pressed = slip(page.brush, page.hand, area, lines, look);
  if (!pressed.empty()) open_or_close(page, pressed);
  const float height = slip_height(page.brush, lines, look);
  findings(page, {area.left, area.top + height + 18, area.right, area.bottom});
}

/// One changed figure in the tray; gives the next left edge.
float tray_figure(Page& page, const SlipLine& line, float x, const Area& tray) {
  const Brush& brush = page.brush;
  const bool changed = !line.before.empty();
  const float base = tray.top + brush.rise(Role::headline) + 14;
  const float width =
      brush.words({x, base}, line.figure, {Role::headline, true, changed ? kPen : kInk});
  if (changed && page.bench.is_moving()) {
    brush.dashes({x, base + 7}, {x + width, base + 7}, kPen, 3, 9, 5);
  } else if (changed) {
    brush.line({x, base + 7}, {x + width, base + 7}, kPen, 3);
  }
  std::string label = line.label;
  if (changed) label += ", was " + line.before;
  const float wide = brush.words({x, tray.bottom - 11}, label, {});
  page.hand.note(line.id, {x, tray.top, x + std::max(width, wide), tray.bottom}, label);
  return x + std::max(width, wide) + 28;
}

void tray(Page& page) {
  const Area& tray = page.layout.follows;
  const Brush& brush = page.brush;
  brush.fill(tray, kPaper);
  const float width = std::max(button_width(brush, "All that follows", false),
                               button_width(brush, "Back to the bench", false));
  const float height = text_size() == TextSize::large ? 56.0f : 48.0f;
  const Area more = area_at(tray.right - width - 12, tray.mid_y() - height / 2, width, height);
  const bool open = page.state.shows_all_follows;
  if (button(brush, page.hand, "tray.all", more, open ? "Back to the bench" : "All that follows")) {
    page.later([&state = page.state] { state.shows_all_follows = !state.shows_all_follows; });
  }
  auto lines = slip_lines(page);
  std::stable_sort(lines.begin(), lines.end(), [](const SlipLine& a, const SlipLine& b) {
    return !a.before.empty() && b.before.empty();
  });
  const auto found = nearest_first(page);
  const float tag_width = found.empty() ? 0.0f : 250.0f;
  float x = tray.left + 16;
  for (std::size_t i = 0; i < lines.size() && i < 3; ++i) {
    const float wide =
        brush.width_of(lines[i].label + ", was " + lines[i].before, Role::text, false);
    if (x + wide + tag_width > more.left) break;
    x = tray_figure(page, lines[i], x, tray);
    brush.line({x - 14, tray.top + 12}, {x - 14, tray.bottom - 12}, kPale, 1);
  }
  if (found.empty() || x + 180 > more.left) return;
  const float right = tag(brush, {x, tray.top + 12}, kind_of(found.front()->severity));
  brush.words({right + 12, tray.top + 12 + tag_height() / 2 + brush.rise(Role::figure) / 2},
              found.front()->figure,
              {Role::figure, true, tag_colour(kind_of(found.front()->severity))});
  const auto words = broken(brush, found.front()->place, more.left - x - 12, Role::text, false);
  if (!words.empty()) brush.words({x, tray.bottom - 11}, words.front(), {});
}

}  // namespace

void follows_panel(Page& page) {
  if (!page.layout.is_compact) return full_slip(page, page.layout.follows);
  if (page.state.shows_all_follows) {
    const Area& middle = page.layout.middle;
    const float width = std::min(middle.width(), 560.0f);
    full_slip(page, {middle.left, middle.top, middle.left + width, middle.bottom});
  }
  tray(page);
}

}  // namespace pouncemark::web

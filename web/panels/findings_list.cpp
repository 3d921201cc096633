#include "web/panels/findings_list.h"

#include <cstddef>
#include <string>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

/// The sentence without the figure it begins with: that stands large before it.
std::string after_figure(const solve::Finding& finding) {
  const std::string lead = finding.figure + " ";
  if (finding.figure.empty() || finding.sentence.rfind(lead, 0) != 0) return finding.sentence;
  return finding.sentence.substr(lead.size());
}

SlipSum sum_of(const solve::Finding& finding) { return {{}, {finding.sum}, {}}; }

/// Pressed, or S while it has the focus.
bool is_pressed(const Page& page, const Touch& touch) {
  return touch.clicked || (touch.focused && page.hand.sum_key());
}

bool is_open(const Page& page, const solve::Finding& finding, const std::string& id) {
  return page.state.open_sum == id && !finding.sum.empty();
}

/// How far the sentence stands in beside its figure; 0: a long figure has a line of its own.
float figure_indent(const Page& page, const solve::Finding& finding, float width) {
  if (finding.figure.empty()) return 0;
  const float figure = page.brush.width_of(finding.figure, Role::figure, true) + 12;
  return figure > width * 0.4f ? 0 : figure;
}

/// Height of a finding's own words.
float words_height(const Page& page, const solve::Finding& finding, float width) {
  const float left = figure_indent(page, finding, width);
  const float own_line = left == 0 && !finding.figure.empty() ? page.brush.pitch(Role::figure) : 0;
  const auto lines =
      broken(page.brush, after_figure(finding), width - left, Role::text, false).size() +
      broken(page.brush, finding.change, width - left, Role::text, false).size();
  return own_line + static_cast<float>(lines) * page.brush.pitch(Role::text);
}

/// Height of a finding in full, its sum with it when it is open.
float full_height(const Page& page, const solve::Finding& finding, const std::string& id,
                  float width) {
  const float sum = is_open(page, finding, id) ? sum_height(page.brush, sum_of(finding), width) : 0;
  return tag_height() + words_height(page, finding, width) + sum + 14;
}

/// The figure, the sentence beside or below it, and what to change; gives the base line after.
float finding_words(const Page& page, const solve::Finding& finding, const Area& area, float y) {
  const Brush& brush = page.brush;
  const Ink figure_ink{Role::figure, true, tag_colour(kind_of(finding.severity))};
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
  return y;
}

/// One finding in full: tag, place, figure first, sentence, what to change, and its sum when asked.
/// Where there is no room for all of an open one its sum comes first.
float whole_finding(Page& page, const solve::Finding& finding, const std::string& id,
                    const Area& area) {
  const Brush& brush = page.brush;
  const float tag_right = tag(brush, {area.left, area.top}, kind_of(finding.severity));
  const float middle = area.top + tag_height() / 2 + brush.rise(Role::second_line) / 2;
  brush.words({tag_right + 10, middle}, finding.place, {Role::second_line, false, kInk});
  float y = area.top + tag_height() + brush.pitch(Role::text);
  const bool shows_sum = is_open(page, finding, id);
  const bool is_tight = shows_sum && full_height(page, finding, id, area.width()) > area.height();
  if (!is_tight) y = finding_words(page, finding, area, y);
  float bottom = y - brush.pitch(Role::text) + 8;
  if (shows_sum) {
    const float top = bottom;
    draw_sum(brush, sum_of(finding), {area.left, top}, area.width());
    bottom += sum_height(brush, sum_of(finding), area.width());
    page.hand.note(id + ".sum", {area.left, top, area.right, bottom}, finding.sum);
  }
  const Area whole = {area.left, area.top, area.right, bottom};
  const Touch touch = page.hand.touch(id, whole, finding.sentence);
  if (touch.over && !shows_sum && !finding.sum.empty()) {
    brush.line({area.left, bottom - 3}, {area.right, bottom - 3}, kPale, 1);
  }
  focus_ring(brush, page.hand, whole, touch.focused);
  if (is_pressed(page, touch) && !finding.sum.empty()) open_or_close_sum(page, id);
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
  if (is_pressed(page, touch)) open_or_close_sum(page, id);
  return area.top + tag_height() + 14;
}

std::string finding_id(std::size_t index) { return "finding." + std::to_string(index); }

float short_height() { return tag_height() + 14; }

/// The first finding to show: the first of all, or a later one where the open one would else have
/// no room.
std::size_t first_shown(const Page& page, const std::vector<const solve::Finding*>& found,
                        const Area& area) {
  for (std::size_t open = 0; open < found.size(); ++open) {
    const std::string id = finding_id(open);
    if (!is_open(page, *found[open], id)) continue;
    const float room = area.height() - full_height(page, *found[open], id, area.width());
    const auto before = room <= 0 ? 0 : static_cast<std::size_t>(room / short_height());
    return open > before ? open - before : 0;
  }
  return 0;
}

/// Change all, back to the section's own figure: offered only where a sleeve's ends differ.
float end_remedies(Page& page, Area area) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  if (!ends_differ_from_section(now.job, now.results, place) || page.bench.is_moving()) {
    return area.top;
  }
  const job::Section* section = section_at(now.job, now.results, place);
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const std::string all = "Change all " + std::to_string(piece.sleeves.size());
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

}  // namespace

TagKind kind_of(solve::Severity severity) {
  if (severity == solve::Severity::stop) return TagKind::stop;
  return severity == solve::Severity::warn ? TagKind::warn : TagKind::note;
}

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

float wanted_by_findings(const Page& page, float width) {
  const auto found = nearest_first(page);
  if (found.empty()) return 2 * short_height();
  const float first = tag_height() + words_height(page, *found.front(), width) + 14;
  return first + (found.size() > 1 ? short_height() : 0);
}

void findings_list(Page& page, const Area& area) {
  Area rest = area;
  rest.top = end_remedies(page, area);
  const auto found = nearest_first(page);
  if (found.empty()) {
    page.brush.words({rest.left, rest.top + 20}, "Nothing found that stands in the way.", {});
    return;
  }
  page.brush.start_window({rest.left - 6, rest.top - 8, rest.right + 6, rest.bottom});
  std::size_t open = found.size();
  for (std::size_t i = 0; i < found.size(); ++i) {
    if (is_open(page, *found[i], finding_id(i))) open = i;
  }
  for (std::size_t i = first_shown(page, found, rest);
       i < found.size() && rest.top + tag_height() + 8 <= rest.bottom; ++i) {
    const std::string id = finding_id(i);
    // Those before the open one give way to it.
    const bool gives_way = open < found.size() && i < open;
    const bool fits = full_height(page, *found[i], id, rest.width()) <= rest.height();
    const bool whole = i == open || (i < 2 && fits && !gives_way);
    rest.top =
        whole ? whole_finding(page, *found[i], id, rest) : short_finding(page, *found[i], id, rest);
  }
  page.brush.end_window();
}

}  // namespace pouncemark::web

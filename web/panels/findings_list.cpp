#include "web/panels/findings_list.h"

#include <cstddef>
#include <string>

#include "engine/base/number_text.h"
#include "web/model/words.h"
#include "web/widgets/slip.h"

namespace pouncemark::web {
namespace {

constexpr std::size_t kInFull = 2;  ///< as many stand there in full where there is room

/// One finding as it is drawn: its own words, its name on the bench, what helps with it.
struct Shown {
  const solve::Finding& finding;
  const std::vector<Remedy>& remedies;
  std::string id;
};

std::string finding_id(std::size_t index) { return "finding." + std::to_string(index); }

Shown entry_at(const Page& page, std::size_t index) {
  const ListedFinding& listed = page.state.found.listed[index];
  return {page.bench.now().results.findings[listed.index], listed.remedies, finding_id(index)};
}

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

bool is_open(const Page& page, const Shown& entry) {
  return page.state.open_sum == entry.id && !entry.finding.sum.empty();
}

/// What to change, in words: where buttons do it, they say it.
std::string change_words(const Shown& entry) {
  return entry.remedies.empty() ? entry.finding.change : std::string();
}

/// How far the sentence stands in beside its figure; 0: a long figure has a line of its own.
float figure_indent(const Page& page, const solve::Finding& finding, float width) {
  if (finding.figure.empty()) return 0;
  const float figure = page.brush.width_of(finding.figure, Role::figure, true) + 12;
  return figure > width * 0.4f ? 0 : figure;
}

/// Height of a finding's own words.
float words_height(const Page& page, const Shown& entry, float width) {
  const solve::Finding& finding = entry.finding;
  const float left = figure_indent(page, finding, width);
  const float own_line = left == 0 && !finding.figure.empty() ? page.brush.pitch(Role::figure) : 0;
  const auto lines =
      broken(page.brush, after_figure(finding), width - left, Role::text, false).size() +
      broken(page.brush, change_words(entry), width - left, Role::text, false).size();
  return own_line + static_cast<float>(lines) * page.brush.pitch(Role::text);
}

/// The buttons one after the other, on a new line where they would go beyond the right edge; drawn
/// where `press` is, measured in any case. Gives the height they take.
template <typename Press>
float buttons(const Page& page, const Shown& entry, const Area& area, const Press& press) {
  if (entry.remedies.empty()) return 0;
  const float height = button_height();
  float x = area.left;
  float y = area.top;
  for (const Remedy& remedy : entry.remedies) {
    const float wide = button_width(page.brush, remedy.words, false);
    if (x > area.left && x + wide > area.right) {
      x = area.left;
      y += height + 8;
    }
    press(remedy, area_at(x, y, wide, height));
    x += wide + 8;
  }
  return y + height + 10 - area.top;
}

float buttons_height(const Page& page, const Shown& entry, float width) {
  return buttons(page, entry, {0, 0, width, 0}, [](const Remedy&, const Area&) {});
}

/// Height of a finding in full, its sum with it when it is open.
float full_height(const Page& page, const Shown& entry, float width) {
  const float sum = is_open(page, entry) ? sum_height(page.brush, sum_of(entry.finding), width) : 0;
  return tag_height() + words_height(page, entry, width) + buttons_height(page, entry, width) +
         sum + 14;
}

/// The figure, the sentence beside or below it, and what to change; gives the base line after.
float finding_words(const Page& page, const Shown& entry, const Area& area, float y) {
  const Brush& brush = page.brush;
  const solve::Finding& finding = entry.finding;
  const Ink figure_ink{Role::figure, true, tag_colour(kind_of(finding.severity))};
  const float indent = figure_indent(page, finding, area.width());
  if (indent == 0 && !finding.figure.empty()) {
    y = brush.paragraph({area.left, y + 1}, finding.figure, area.width(), figure_ink);
  } else if (indent > 0) {
    brush.words({area.left, y + 1}, finding.figure, figure_ink);
  }
  const float left = area.left + indent;
  y = brush.paragraph({left, y}, after_figure(finding), area.right - left, {});
  const std::string change = change_words(entry);
  if (change.empty()) return y;
  return brush.paragraph({left, y}, change, area.right - left, {Role::text, false, kSoft});
}

/// Where it is to be seen, beside its tag; pressed it goes there.
void place_words(Page& page, const Shown& entry, float left, const Area& area) {
  const Brush& brush = page.brush;
  const Bench& bench = page.bench;
  const float base = area.top + tag_height() / 2 + brush.rise(Role::second_line) / 2;
  const auto lines =
      broken(brush, entry.finding.place, area.right - left, Role::second_line, false);
  if (lines.empty()) return;
  const float wide = brush.words({left, base}, lines.front(), {Role::second_line, false, kInk});
  const Spotted here{bench.place(),
                     bench.place().sleeve < 0 ? shown_lap(bench, page.state.chosen_lap) : -1};
  const Spotted there = place_of(bench.now().results, entry.finding, here);
  if (there.place.piece < 0) return;
  const bool is_here = held_within(bench.now().results, there.place) == here.place &&
                       (there.lap < 0 || there.lap == here.lap);
  if (is_here) return;
  const float higher = (button_height() - tag_height()) / 2;
  const Area place = {left - 4, area.top - higher, left + wide + 4,
                      area.top + tag_height() + higher};
  const Touch touch = page.hand.touch(entry.id + ".place", place, "go to " + entry.finding.place);
  brush.line({left, base + 4}, {left + wide, base + 4}, touch.over ? kInk : kPale,
             touch.over ? 1.5f : 1.0f);
  focus_ring(brush, page.hand, place, touch.focused);
  if (!touch.clicked) return;
  page.later([&bench_now = page.bench, &state = page.state, there] {
    go_to(bench_now, state.chosen_lap, there);
    state.shows_all_follows = false;
  });
}

void remedy_buttons(Page& page, const Shown& entry, const Area& area) {
  buttons(page, entry, area, [&page, &entry](const Remedy& remedy, const Area& place) {
    if (!button(page.brush, page.hand, entry.id + "." + remedy.id, place, remedy.words)) return;
    page.later([&bench = page.bench, job = remedy.job, action = remedy.action] {
      bench.edit(job, action);
    });
  });
}

/// One finding in full: tag, place, figure first, sentence, what to change, and its sum when asked.
/// Where there is no room for all of an open one its sum comes first.
float whole_finding(Page& page, const Shown& entry, const Area& area) {
  const Brush& brush = page.brush;
  const solve::Finding& finding = entry.finding;
  const float tag_right = tag(brush, {area.left, area.top}, kind_of(finding.severity));
  place_words(page, entry, tag_right + 10, area);
  float y = area.top + tag_height() + brush.pitch(Role::text);
  const bool shows_sum = is_open(page, entry);
  const bool is_tight = shows_sum && full_height(page, entry, area.width()) > area.height();
  if (!is_tight) y = finding_words(page, entry, area, y);
  float bottom = y - brush.pitch(Role::text) + 8;
  if (shows_sum) {
    const float top = bottom;
    draw_sum(brush, sum_of(finding), {area.left, top}, area.width());
    bottom += sum_height(brush, sum_of(finding), area.width());
    page.hand.note(entry.id + ".sum", {area.left, top, area.right, bottom}, finding.sum);
  }
  const Area whole = {area.left, area.top, area.right, bottom};
  const Touch touch = page.hand.touch(entry.id, whole, finding.sentence);
  if (touch.over && !shows_sum && !finding.sum.empty()) {
    brush.line({area.left, bottom - 3}, {area.right, bottom - 3}, kPale, 1);
  }
  focus_ring(brush, page.hand, whole, touch.focused);
  if (is_pressed(page, touch) && !finding.sum.empty()) open_or_close_sum(page, entry.id);
  if (is_tight || entry.remedies.empty()) return bottom + 10;
  const Area foot = {area.left, bottom + 2, area.right, area.bottom};
  remedy_buttons(page, entry, foot);
  return foot.top + buttons_height(page, entry, area.width()) + 4;
}

float short_height() { return tag_height() + 14; }

/// A finding on one line: the tag and its sentence as far as it goes.
float short_finding(Page& page, const Shown& entry, Area area) {
  const Brush& brush = page.brush;
  const solve::Finding& finding = entry.finding;
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
  const Area whole = {area.left, area.top - 4, area.right, area.top - 4 + short_height()};
  const Touch touch = page.hand.touch(entry.id, whole, words);
  focus_ring(brush, page.hand, whole, touch.focused);
  if (is_pressed(page, touch)) open_or_close_sum(page, entry.id);
  return area.top + short_height();
}

/// The line that leads on to the findings that have no room, and after the last back to the first.
void more_findings(Page& page, std::size_t next, const Area& area) {
  const Brush& brush = page.brush;
  const std::size_t all = page.state.found.listed.size();
  const std::string words =
      next < all ? counted(static_cast<std::int64_t>(all - next), "more found", "more found")
                 : "Back to the first found";
  brush.line({area.left, area.top - 4}, {area.right, area.top - 4}, kPale, 1);
  const Area whole = {area.left, area.top - 4, area.right, area.top - 4 + short_height()};
  const Touch touch = page.hand.touch("finding.more", whole, words);
  const float base = whole.mid_y() + brush.rise(Role::text) / 2;
  const float wide = brush.words({area.left, base}, words, {Role::text, false, kSoft});
  brush.line({area.left, base + 4}, {area.left + wide, base + 4}, touch.over ? kInk : kPale,
             touch.over ? 1.5f : 1.0f);
  focus_ring(brush, page.hand, whole, touch.focused);
  if (!touch.clicked) return;
  page.later([&state = page.state, next, all] {
    state.open_sum.clear();
    state.found.first = next < all ? next : 0;
  });
}

/// The first finding to show: as it was turned to, or a later one where the open one would else
/// have no room.
std::size_t first_shown(const Page& page, const Area& area) {
  const std::size_t count = page.state.found.listed.size();
  const std::size_t first = page.state.found.first < count ? page.state.found.first : 0;
  for (std::size_t open = 0; open < count; ++open) {
    const Shown entry = entry_at(page, open);
    if (!is_open(page, entry)) continue;
    const float room = area.height() - full_height(page, entry, area.width());
    const auto before = room <= 0 ? 0 : static_cast<std::size_t>(room / short_height());
    if (open < first) return open;
    return open - first > before ? open - before : first;
  }
  return first;
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

float wanted_by_findings(const Page& page, float width) {
  const std::size_t count = page.state.found.listed.size();
  if (count == 0) return 2 * short_height();
  const Shown entry = entry_at(page, 0);
  const float first =
      tag_height() + words_height(page, entry, width) + buttons_height(page, entry, width) + 14;
  return first + (count > 1 ? short_height() : 0);
}

void findings_list(Page& page, const Area& area) {
  Area rest = area;
  rest.top = end_remedies(page, area);
  const std::size_t count = page.state.found.listed.size();
  if (count == 0) {
    page.brush.words({rest.left, rest.top + 20}, "Nothing found that stands in the way.", {});
    return;
  }
  page.brush.start_window({rest.left - 6, rest.top - 8, rest.right + 6, rest.bottom});
  std::size_t open = count;
  for (std::size_t i = 0; i < count; ++i) {
    if (is_open(page, entry_at(page, i))) open = i;
  }
  const std::size_t first = first_shown(page, rest);
  std::size_t i = first;
  for (; i < count; ++i) {
    const Shown entry = entry_at(page, i);
    // The last line there is room for leads on to the rest.
    const float leads_on = i + 1 < count || first > 0 ? short_height() : 0;
    const bool is_first = i == first;
    if (!is_first && rest.height() < short_height() + leads_on - 6) break;
    // Those before the open one give way to it.
    const bool gives_way = open < count && i < open;
    const bool fits = full_height(page, entry, rest.width()) + leads_on <= rest.height();
    const bool whole = i == open || (i < first + kInFull && fits && !gives_way);
    rest.top = whole ? whole_finding(page, entry, rest) : short_finding(page, entry, rest);
  }
  const bool has_room = rest.top + short_height() - 10 <= rest.bottom;
  if ((i < count || first > 0) && has_room) more_findings(page, i, rest);
  page.brush.end_window();
}

}  // namespace pouncemark::web

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "web/model/words.h"
#include "web/panels/findings_list.h"
#include "web/panels/page.h"
#include "web/widgets/slip.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {
namespace {

constexpr std::string_view kSlip = "slip.";
constexpr std::string_view kMore = "slip.more";
constexpr std::string_view kFolded = "slip.folded";

/// The id of the slip's line whose sum is open; empty where it is a finding's or none is.
std::string_view opened_line(const Page& page) {
  const std::string_view open = page.state.open_sum;
  return open.substr(0, kSlip.size()) == kSlip ? open.substr(kSlip.size()) : std::string_view();
}

std::vector<FollowLine> lines_that_follow(const Page& page) { return page.state.followed.lines; }

SlipLine slip_line(const FollowLine& line) {
  SlipLine set;
  set.id = std::string(kSlip) + line.id;
  set.label = line.label;
  set.figure = line.figure;
  set.unit = line.unit;
  set.before = line.before;
  set.sum = {line.sum.rule, line.sum.numbers, line.sum.source};
  return set;
}

SlipLook slip_look(const Page& page) {
  SlipLook look;
  look.title = "What follows";
  look.under_title = "for " + name_of(page.bench.now().results, page.bench.place());
  const SewView& sewn = page.state.sew.view;
  if (page.state.stage == Stage::sew && !sewn.kinds.empty()) {
    look.under_title = "for the " + sewn.kinds[sewn.chosen].row;
  }
  if (page.state.stage == Stage::curve) look.under_title = "for bay " + page.state.curve.view.code;
  look.is_moving = page.bench.is_moving();
  look.open_sum = page.state.open_sum;
  look.line_height = is_for_fingers() ? 48.0f : text_size() == TextSize::large ? 42.0f : 34.0f;
  return look;
}

/// A line that can be spared: it did not change, and its sum is not open.
bool can_fold(const Page& page, const FollowLine& line) {
  return line.rank != LineRank::needed && line.before.empty() && line.id != opened_line(page);
}

/// Those that can be spared go into one line that unfolds them: those of the whole job, and where
/// that is not enough `all`.
void fold(const Page& page, bool all, std::vector<FollowLine>* lines) {
  std::vector<FollowLine> kept;
  for (FollowLine& line : *lines) {
    const bool goes = can_fold(page, line) && (all || line.rank == LineRank::whole_job);
    if (!goes) kept.push_back(std::move(line));
  }
  const std::size_t folded = lines->size() - kept.size();
  *lines = std::move(kept);
  if (folded == 0) return;
  FollowLine line;
  line.id = std::string(kFolded.substr(kSlip.size()));
  line.label = "More that follows";
  line.figure = std::to_string(folded);
  lines->push_back(std::move(line));
}

/// The line that folds them again.
void offer_to_fold(const Page& page, std::vector<FollowLine>* lines) {
  const auto folds = [&page](const FollowLine& line) { return can_fold(page, line); };
  if (std::none_of(lines->begin(), lines->end(), folds)) return;
  FollowLine line;
  line.id = std::string(kFolded.substr(kSlip.size()));
  line.label = "Less that follows";
  lines->push_back(std::move(line));
}

/// Height of the slip's sum that is open.
float open_sum_height(const Page& page, float width, const std::vector<FollowLine>& lines) {
  for (const FollowLine& line : lines) {
    if (line.id != opened_line(page)) continue;
    SlipLook look;
    look.open_sum = page.state.open_sum;
    return slip_height(page.brush, width, {slip_line(line)}, look) -
           slip_height(page.brush, width, {slip_line(line)}, {});
  }
  return 0;
}

/// Lines that can be spared are folded into one where they would take the findings' room or that of
/// an open sum, until they are unfolded by hand; the lines stand closer before one goes.
void spare_lines(const Page& page, const Area& area, float wanted, std::vector<FollowLine>* lines,
                 SlipLook* look) {
  const float least = is_for_fingers() ? 48.0f : text_size() == TextSize::large ? 36.0f : 34.0f;
  const float sum = open_sum_height(page, area.width(), *lines);
  const float head = slip_height(page.brush, area.width(), {}, *look);
  // An open sum may push the findings down to one line.
  const float below = std::max(wanted, std::min(wanted, tag_height() + 14) + sum);
  const float room = area.height() - head - below;
  const auto count = [lines] { return static_cast<float>(lines->size()); };
  if (room < least * count()) {
    if (page.state.followed.is_unfolded) {
      offer_to_fold(page, lines);
    } else {
      const std::vector<FollowLine> whole = *lines;
      fold(page, false, lines);
      if (room < least * count()) {
        *lines = whole;
        fold(page, true, lines);
      }
    }
  }
  if (!lines->empty()) look->line_height = std::clamp(room / count(), least, look->line_height);
}

/// Where even that is too much the slip shows a part of its lines, and one more that leads on.
std::vector<SlipLine> part_of(const Page& page, const Area& area, std::vector<SlipLine> lines,
                              const SlipLook& look) {
  if (slip_height(page.brush, area.width(), lines, look) <= area.height() + 1) return lines;
  const auto is_open = [&](const SlipLine& line) { return line.id == look.open_sum; };
  const auto open = std::find_if(lines.begin(), lines.end(), is_open);
  float fixed = slip_height(page.brush, area.width(), {}, look);
  if (open != lines.end()) {
    fixed += slip_height(page.brush, area.width(), {*open}, look) - fixed - look.line_height;
  }
  const auto whole =
      static_cast<std::size_t>(std::max((area.height() - fixed) / look.line_height, 2.0f));
  std::size_t first = std::min(page.state.first_follow, lines.size() - 1);
  if (open != lines.end()) {
    const auto at = static_cast<std::size_t>(open - lines.begin());
    if (at < first || at + 1 >= first + whole) first = at;
  }
  std::vector<SlipLine> part;
  for (std::size_t i = first; i < lines.size() && i < first + whole - 1; ++i) {
    part.push_back(std::move(lines[i]));
  }
  SlipLine more;
  more.id = std::string(kMore);
  more.label = "More lines";
  more.figure = std::to_string(lines.size() - part.size());
  part.push_back(std::move(more));
  return part;
}

/// The next part of the lines; after the last the first again.
void lead_on(Page& page, std::size_t shown, std::size_t all) {
  page.later([&state = page.state, shown, all] {
    state.open_sum.clear();
    state.first_follow = state.first_follow + shown < all ? state.first_follow + shown : 0;
  });
}

constexpr float kBelowSlip = 18;

/// The slip, and what was found beside it in an area of its own, or below it.
void full_slip(Page& page, const Area& area, const Area* beside) {
  auto follows = lines_that_follow(page);
  SlipLook look = slip_look(page);
  const float wanted = beside == nullptr ? wanted_by_findings(page, area.width()) + kBelowSlip : 0;
  spare_lines(page, area, wanted, &follows, &look);
  std::vector<SlipLine> lines;
  for (const FollowLine& line : follows) lines.push_back(slip_line(line));
  const std::size_t all = lines.size();
  lines = part_of(page, area, std::move(lines), look);
  const bool is_part = !lines.empty() && lines.back().id == kMore;
  const int by = is_part ? page.hand.lines_on(area, look.line_height) : 0;
  if (by != 0) {
    const auto most = static_cast<int>(all - lines.size() + 1);
    page.later([&state = page.state, by, most] {
      const int first = std::clamp(static_cast<int>(state.first_follow) + by, 0, most);
      state.first_follow = static_cast<std::size_t>(first);
    });
  }
  const std::string pressed = slip(page.brush, page.hand, area, lines, look);
  if (pressed == kFolded) {
    page.later([&followed = page.state.followed] { followed.is_unfolded = !followed.is_unfolded; });
  } else if (pressed == kMore) {
    lead_on(page, lines.size() - 1, all);
  } else if (!pressed.empty()) {
    open_or_close_sum(page, pressed);
  }
  if (beside != nullptr) return findings_list(page, *beside);
  const float height = slip_height(page.brush, area.width(), lines, look);
  findings_list(page, {area.left, area.top + height + kBelowSlip, area.right, area.bottom});
}

/// All that follows over the bench, with what was found at its right.
void slip_over_bench(Page& page) {
  const Area& middle = page.layout.middle;
  constexpr float kMostWide = 560;
  const float width = std::min(middle.width() * 0.56f, kMostWide);
  Area beside = middle;
  beside.left += width + 2 * kPageEdge;
  full_slip(page, {middle.left, middle.top, middle.left + width, middle.bottom}, &beside);
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
  const float wide = std::max(width, brush.words({x, tray.bottom - 11}, label, {}));
  if (!page.state.shows_all_follows) {
    const Area area = {x - 6, tray.top + 4, x + wide + 6, tray.bottom - 4};
    const Touch touch = page.hand.touch("tray." + line.id, area, spoken(line));
    if (touch.over && !changed) brush.line({x, base + 7}, {x + width, base + 7}, kInk, 1.5f);
    focus_ring(brush, page.hand, area.inset(4), touch.focused);
    if (touch.clicked || (touch.focused && page.hand.sum_key())) open_or_close_sum(page, line.id);
  }
  return x + wide + 28;
}

/// Changed figures first, then those the headline does not tell already.
std::vector<SlipLine> tray_lines(const Page& page) {
  const Bench& bench = page.bench;
  std::vector<FollowLine> follows = lines_that_follow(page);
  const Headline told = told_headline(bench, page.state);
  const auto rank = [&told](const FollowLine& line) {
    if (!line.before.empty()) return 0;
    const auto tells = [&line](const HeadlinePart& part) { return part.id == line.id; };
    return std::any_of(told.parts.begin(), told.parts.end(), tells) ? 2 : 1;
  };
  std::stable_sort(follows.begin(), follows.end(),
                   [&rank](const FollowLine& a, const FollowLine& b) { return rank(a) < rank(b); });
  std::vector<SlipLine> lines;
  for (const FollowLine& line : follows) lines.push_back(slip_line(line));
  // In the tray no unit stands beside the figure; a share without it would be read as a count.
  for (SlipLine& line : lines) {
    if (line.unit == "%") line.figure += " %";
  }
  return lines;
}

/// The nearest finding in the tray, as far as there is room.
void tray_finding(Page& page, const solve::Finding& finding, const Area& area) {
  const Brush& brush = page.brush;
  const TagKind kind = kind_of(finding.severity);
  const float right = tag(brush, {area.left, area.top + 12}, kind);
  brush.words({right + 12, area.top + 12 + tag_height() / 2 + brush.rise(Role::figure) / 2},
              finding.figure, {Role::figure, true, tag_colour(kind)});
  const auto words = broken(brush, finding.place, area.width(), Role::text, false);
  if (!words.empty()) brush.words({area.left, area.bottom - 11}, words.front(), {});
  if (page.state.shows_all_follows) return;
  const Touch touch = page.hand.touch("tray.finding", area, finding.sentence);
  focus_ring(brush, page.hand, area.inset(4), touch.focused);
  if (touch.clicked || (touch.focused && page.hand.sum_key())) {
    open_or_close_sum(page, "finding.0");
  }
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
  const auto lines = tray_lines(page);
  const auto& found = page.state.found.listed;
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
  tray_finding(page, page.bench.now().results.findings[found.front().index],
               {x, tray.top, more.left - 12, tray.bottom});
}

}  // namespace

void follows_panel(Page& page) {
  if (!page.layout.is_compact) return full_slip(page, page.layout.follows, nullptr);
  if (page.state.shows_all_follows) slip_over_bench(page);
  tray(page);
}

}  // namespace pouncemark::web

#include <algorithm>
#include <array>
#include <optional>

#include "engine/base/number_text.h"
#include "web/model/sew_trials.h"
#include "web/model/words.h"
#include "web/panels/sew_parts.h"

namespace pouncemark::web {
namespace {

constexpr const char* kCracks = "It cracks between holes";

float box_width() { return text_size() == TextSize::large ? 148.0f : 120.0f; }

const job::Trial& looked_at(const Page& page) {
  return page.bench.now().job.trials[page.state.sew.trial];
}

/// What these rows are to have, for a new trial.
void add(Page& page) {
  const SewView& view = page.state.sew.view;
  if (view.kinds.empty()) return;
  const SewKind& kind = view.kinds[view.chosen];
  const Solved& now = page.bench.now();
  const Um stitch = sew_measured(now, page.bench.place(), kind, SewBox::stitch);
  page.later([&sew = page.state.sew, count = now.job.trials.size()] { sew.trial = count; });
  sew_act(page, with_trial(now.job, kind.of, stitch));
}

/// The trials as buttons, those about the one looked at, and the button that adds one.
float trials(Page& page, const Area& area) {
  constexpr std::size_t kShown = 6;
  const auto& all = page.bench.now().job.trials;
  const std::size_t at = page.state.sew.trial;
  const std::size_t first =
      all.size() > kShown && at > 2 ? std::min(at - 2, all.size() - kShown) : 0;
  ButtonFlow flow{area, area.left, area.top};
  for (std::size_t i = first; i < std::min(all.size(), first + kShown); ++i) {
    const std::string words =
        "Trial " + std::to_string(i + 1) + (all[i].is_chosen ? ", chosen" : "");
    if (flow_button(page, flow, "trial." + std::to_string(i + 1), words,
                    {i == at ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&sew = page.state.sew, i] { sew.trial = i; });
    }
  }
  const bool idle = page.bench.is_look_only() || page.state.sew.view.kinds.empty();
  if (flow_button(page, flow, "trial.add", "Add a trial", {ButtonKind::plain, idle})) add(page);
  return flow.y + button_height() + 14;
}

void trial_box(Page& page, TrialBox box, const Area& area, const char* id) {
  const job::Trial& trial = looked_at(page);
  SewTextBox set;
  set.id = std::string("trial.") + id;
  set.area = area;
  set.label = trial_box_words(box);
  set.shown = trial_box_text(trial, box);
  set.text = set.shown;
  set.name = set.label;
  set.is_words = box == TrialBox::signed_by;
  const TextEvent event = sew_text_box(page, set);
  if (!event.finished) return;
  if (*event.finished == set.text) return close_box(page.state.open_box);
  keep_typed(page,
             with_trial_box(page.bench.now().job, page.state.sew.trial, box, *event.finished));
}

/// Room for the buttons beside the three boxes; else they have a line of their own.
bool has_room_beside(const Area& area) {
  const float wanted = text_size() == TextSize::large ? 580.0f : 450.0f;
  return area.width() - 3 * (box_width() + 16) - 8 >= wanted;
}

/// Needle, thread and stitch as set, and the rows the trial stands for.
float as_set(Page& page, const Area& area, float y) {
  const float top = y + page.brush.pitch(Role::second_line);
  constexpr std::array<const char*, 3> kIds = {"needle_size", "thread_tex", "stitch"};
  float x = area.left;
  for (std::size_t i = 0; i < kIds.size(); ++i) {
    trial_box(page, static_cast<TrialBox>(i), area_at(x, top, box_width(), box_height()), kIds[i]);
    x += box_width() + 16;
  }
  const job::Trial& trial = looked_at(page);
  const float buttons_top = top + (box_height() - button_height()) / 2;
  ButtonFlow flow{{x + 8, buttons_top, area.right, buttons_top}, x + 8, buttons_top};
  if (!has_room_beside(area)) {
    flow = {{area.left, top + box_height() + 8, area.right, 0}, area.left, top + box_height() + 8};
  }
  constexpr std::array<const char*, 4> kWords = {"Side rows", "Joining rows", "Panels", "All rows"};
  for (int i = 0; i < 4; ++i) {
    const bool is_all = i == 3;
    const bool is_chosen =
        is_all ? trial.of_all_rows : !trial.of_all_rows && static_cast<int>(trial.of) == i;
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          page.bench.is_look_only(), Role::text,
                          kWords[static_cast<std::size_t>(i)]};
    if (flow_button(page, flow, "trial.of." + std::to_string(i),
                    kWords[static_cast<std::size_t>(i)], look) &&
        !is_chosen) {
      const auto of = is_all ? std::nullopt : std::optional(static_cast<job::RowsOf>(i));
      sew_act(page, with_trial_rows(page.bench.now().job, page.state.sew.trial, of));
    }
  }
  return std::max(top + box_height(), flow.y + button_height()) + 8;
}

/// What follows from a figure, below its box; its sum in full aloud.
void result(Page& page, Spot base, const char* id, const solve::Sum& sum,
            const std::string& words) {
  if (sum.figure.empty()) return;
  const Brush& brush = page.brush;
  std::string aloud = words + ": " + sum.rule;
  float y = base.y;
  brush.words({base.x, y}, words, {Role::second_line, true, kInk});
  for (const std::string& line : sum.numbers) {
    y += brush.pitch(Role::second_line);
    brush.words({base.x, y}, line, {Role::second_line, false, kInk});
    aloud += " / " + line;
  }
  page.hand.note(id, {base.x, base.y - 16, base.x + 200, y + 4}, aloud + " / " + sum.source);
}

/// Length of the rows of the kind looked at, which the take-up is worked out for.
Um row_length(const Page& page) {
  const SewView& view = page.state.sew.view;
  if (view.kinds.empty()) return 0;
  const auto row = static_cast<std::size_t>(view.kinds[view.chosen].rows.front());
  return page.bench.now().results.rows[row].run.length_um;
}

/// Ten stitches, the marks, the pull, and what follows from them.
float as_it_came(Page& page, const Area& area, float y) {
  const Brush& brush = page.brush;
  const float top = y + brush.pitch(Role::second_line) + 4;
  const float apart = area.width() / 3;
  const job::Trial& trial = looked_at(page);
  const auto at = [&](int i) {
    return area_at(area.left + apart * static_cast<float>(i), top, box_width(), box_height());
  };
  trial_box(page, TrialBox::ten_stitches, at(0), "ten_stitches");
  trial_box(page, TrialBox::marks, at(1), "marks");
  trial_box(page, TrialBox::pull, at(2), "pull");
  const float base = top + box_height() + brush.pitch(Role::second_line) + 2;
  const solve::Sum stitch = real_stitch_sum(trial);
  result(page, {area.left, base}, "trial.real_stitch", stitch, stitch.figure + " each");
  const solve::Sum take_up = take_up_sum(trial, row_length(page));
  result(page, {at(1).left, base}, "trial.take_up", take_up, take_up.figure + " shorter, a row");
  return base + 2 * brush.pitch(Role::second_line) + 8;
}

/// Yes and no beside a question; gives the right edge.
float yes_no(Page& page, float x, float y, TrialAsk ask) {
  const job::Trial& trial = looked_at(page);
  const bool is_white = ask == TrialAsk::whitens;
  const std::optional<bool>& answer = is_white ? trial.whitens : trial.cracks;
  const char* words = is_white ? "The sheet whitens" : kCracks;
  x += page.brush.words({x, y + button_height() / 2 + page.brush.rise(Role::text) / 2}, words, {});
  for (const bool yes : {true, false}) {
    const bool is_chosen = answer && *answer == yes;
    const std::string aloud = std::string(words) + (yes ? ": yes" : ": no");
    const ButtonLook look{is_chosen ? ButtonKind::chosen : ButtonKind::plain,
                          page.bench.is_look_only(), Role::text, aloud};
    const float wide = button_width(page.brush, yes ? "Yes" : "No");
    const Area area = area_at(x + 10, y, wide, button_height());
    const std::string id =
        std::string("trial.") + (is_white ? "whitens." : "cracks.") + (yes ? "yes" : "no");
    if (button(page.brush, page.hand, id, area, yes ? "Yes" : "No", look)) {
      sew_act(page, with_trial_answer(page.bench.now().job, page.state.sew.trial, ask, yes));
    }
    x = area.right - 4;
  }
  return x + 4;
}

void sign_and_choose(Page& page, const Area& area, float y) {
  const float top = y + page.brush.pitch(Role::second_line);
  const bool is_chosen = looked_at(page).is_chosen;
  const bool idle = page.bench.is_look_only();
  const char* choose = is_chosen ? "Not chosen any more" : "Choose this trial";
  const float wide = button_width(page.brush, choose);
  const float away_wide = button_width(page.brush, "Take it away");
  const float lift = (box_height() - button_height()) / 2;
  const Area main = area_at(area.right - wide, top + lift, wide, button_height());
  const Area away = area_at(main.left - 8 - away_wide, top + lift, away_wide, button_height());
  trial_box(page, TrialBox::signed_by, {area.left, top, away.left - 16, top + box_height()},
            "signed_by");
  const job::Job& job = page.bench.now().job;
  if (button(page.brush, page.hand, "trial.away", away, "Take it away",
             {ButtonKind::plain, idle})) {
    sew_act(page, without_trial(job, page.state.sew.trial));
  }
  if (button(page.brush, page.hand, "trial.choose", main, choose,
             {is_chosen ? ButtonKind::plain : ButtonKind::main, idle})) {
    sew_act(page, with_trial_chosen(job, page.state.sew.trial, !is_chosen));
  }
}

bool questions_are_beside(const Page& page, const Area& area) {
  const float wide = page.brush.width_of("The sheet whitens", Role::text, false) +
                     page.brush.width_of(kCracks, Role::text, false) +
                     2 * button_width(page.brush, "Yes") + 2 * button_width(page.brush, "No");
  return wide + 80 < area.width();
}

float questions(Page& page, const Area& area, float y) {
  const bool beside = questions_are_beside(page, area);
  const float right = yes_no(page, area.left, y, TrialAsk::whitens);
  if (!beside) y += button_height() + 6;
  yes_no(page, beside ? right + 24 : area.left, y, TrialAsk::cracks);
  return y + button_height() + 6;
}

/// Height of both parts together.
float whole_height(const Page& page, const Area& area) {
  const float small = page.brush.pitch(Role::second_line);
  const float lines = 6 * small + 3 * box_height() + 22;
  const float own = has_room_beside(area) ? 0 : button_height() + 8;
  const float asked = questions_are_beside(page, area) ? 1 : 2;
  return lines + own + asked * (button_height() + 6);
}

/// Where not both have room: how the trial was set, or what came of it; beside the trials.
void part_switch(Page& page, const Area& area) {
  const bool shows = page.state.sew.shows_results;
  const auto part = [&](float right, const char* id, const char* words, bool results) {
    const float wide = button_width(page.brush, words);
    const Area place = area_at(right - wide, area.top, wide, button_height());
    if (button(page.brush, page.hand, id, place, words,
               {shows == results ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&sew = page.state.sew, results] { sew.shows_results = results; });
    }
    return place.left - 8;
  };
  const float left = part(area.right, "trial.part.results", "What came of it", true);
  part(left, "trial.part.set", "As set", false);
}

}  // namespace

void trials_slip(Page& page, const Area& area) {
  float y = trials(page, area);
  if (page.bench.now().job.trials.empty()) {
    page.brush.paragraph({area.left, y + 20},
                         "No trial seam yet. Sew one on a coupon of the real stack, measure ten "
                         "stitches, and type here what came of it: until one is chosen, every "
                         "figure is that of the stitch as it is set.",
                         area.width(), {});
    return;
  }
  const bool has_room = y + whole_height(page, area) <= area.bottom + 8;
  const bool shows_results = has_room || page.state.sew.shows_results;
  const bool shows_set = has_room || !shows_results;
  if (!has_room) part_switch(page, area);
  if (shows_set) y = as_set(page, area, y);
  if (shows_results) y = questions(page, area, as_it_came(page, area, y));
  if (shows_set) sign_and_choose(page, area, y);
}

}  // namespace pouncemark::web

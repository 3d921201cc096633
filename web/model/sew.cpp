#include "web/model/sew.h"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/stack.h"

namespace pouncemark::web {
namespace {

const solve::Row& row_at(const Solved& now, const SewKind& kind) {
  return now.results.rows[static_cast<std::size_t>(kind.rows.front())];
}

bool is_woven(material::Item item) {
  return item == material::Item::sleeve_cloth || item == material::Item::panel_cloth ||
         item == material::Item::interlining;
}

void set_plies(const Solved& now, const solve::Row& row, SewView* view) {
  const solve::Stack stack = solve::stack_of(now.job, now.results, row);
  view->is_from_plies = !stack.is_typed;
  view->is_known = stack.is_known;
  view->missing = stack.missing;
  view->stack_um = stack.thickest_um();
  if (stack.steps.empty()) return;
  for (const solve::Ply& ply : stack.at(stack.thickest).plies) {
    SewPly one;
    one.name = ply.name;
    one.thickness_um = ply.thickness_um;
    one.thickness = exact_mm_text(ply.thickness_um);
    one.is_woven = is_woven(ply.item);
    one.is_assumed = ply.is_assumed;
    view->plies.push_back(std::move(one));
  }
  if (!view->plies.empty() || view->stack_um == 0) return;
  SewPly typed;
  typed.name = "as typed";
  typed.thickness_um = view->stack_um;
  typed.thickness = exact_mm_text(view->stack_um);
  view->plies.push_back(std::move(typed));
}

std::string stitch_text(Um um) { return short_mm_text(um, 2); }

/// In what the settings depart from the chosen trial; empty: in nothing, or there is none.
std::string against_trial(const job::Job& job, job::RowsOf of, Um asked_um) {
  const job::Trial* trial = job::chosen_trial(job.trials, of);
  if (trial == nullptr) return {};
  const auto other = [](const char* what, const std::string& is, const std::string& was) {
    return "not as approved: " + std::string(what) + " " + is + " instead of " + was;
  };
  if (trial->needle_size != job.needle_size) {
    return other("needle size", std::to_string(job.needle_size),
                 std::to_string(trial->needle_size));
  }
  if (trial->thread_tex != job.thread_tex) {
    return other("tex", std::to_string(job.thread_tex), std::to_string(trial->thread_tex));
  }
  if (trial->stitch_um != asked_um) {
    return other("stitch", exact_mm_text(asked_um), exact_mm_text(trial->stitch_um));
  }
  return trial->signed_by.empty() ? "the chosen trial seam is not signed yet" : "";
}

/// The verdict, and why: what departs from a chosen trial before what is true of any.
void judge(const Solved& now, const solve::Row& row, const solve::RowSewing& sewing,
           SewView* view) {
  view->verdict = sewing.verdict;
  view->because = sewing.why;
  if (sewing.verdict != solve::Verdict::try_it) return;
  const std::string against = against_trial(now.job, view->kinds[view->chosen].of, row.asked_um);
  view->because = !against.empty() ? against : "try it, " + sewing.why;
}

HeadlinePart plain(std::string words, std::string brief = {}) {
  return {std::move(words), false, false, {}, std::move(brief)};
}

HeadlinePart large(std::string words, const std::string& was, std::string id = {}) {
  const bool changed = !was.empty() && was != words;
  return {std::move(words), true, changed, std::move(id), {}};
}

/// "Needle size 140, tex 135, stitch 6: 77 % of the sheet is left".
Headline headline_of(const Solved& now, const Solved* before, const SewView& view,
                     const SewView* was) {
  const auto number = [&](int job::Job::*figure) {
    return large(std::to_string(now.job.*figure),
                 before == nullptr ? std::string() : std::to_string(before->job.*figure));
  };
  Headline line;
  line.parts.push_back(plain("Needle size ", "Needle "));
  line.parts.push_back(number(&job::Job::needle_size));
  line.parts.push_back(plain(", tex "));
  line.parts.push_back(number(&job::Job::thread_tex));
  line.parts.push_back(plain(", stitch "));
  line.parts.push_back(large(stitch_text(view.stitch_um),
                             was == nullptr ? std::string() : stitch_text(was->stitch_um)));
  line.parts.push_back(plain(": "));
  line.parts.push_back(
      large(view.left_share, was == nullptr ? std::string() : was->left_share, "sheet_left"));
  line.parts.push_back(plain(" of the sheet is left", " left"));
  line.because = view.because;
  return line;
}

std::size_t kind_called(const std::vector<SewKind>& kinds, std::string_view id) {
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    if (kinds[i].id == id) return i;
  }
  return 0;
}

/// All but the headline.
SewView view_of(const Solved& now, Place place, std::string_view kind) {
  SewView view;
  view.kinds = sew_kinds(now, place);
  if (view.kinds.empty()) return view;
  view.chosen = kind_called(view.kinds, kind);
  const solve::Row& row = row_at(now, view.kinds[view.chosen]);
  set_plies(now, row, &view);
  const solve::RowSewing sewing = solve::row_sewing_of(now.job, now.results, row);
  view.blade_um = sewing.blade_um;
  view.thread_um = sewing.thread_um;
  view.stitch_um = sewing.stitch_um;
  view.left_um = std::max<Um>(0, sewing.stitch_um - sewing.blade_um);
  view.left_share = std::to_string(divide_round(sewing.sheet_left_permille, 10)) + " %";
  judge(now, row, sewing, &view);
  return view;
}

std::string box_shown(const Solved& now, Place place, const SewKind& kind, SewBox box) {
  const std::int64_t figure = sew_measured(now, place, kind, box);
  if (box == SewBox::needle_size || box == SewBox::thread_tex) return std::to_string(figure);
  const std::string exact = exact_mm_text(figure);
  return exact.find('.') == std::string::npos ? exact + ".0" : exact;
}

}  // namespace

SewView sew_view(const Solved& now, const Solved* before, Place place, std::string_view kind) {
  SewView view = view_of(now, place, kind);
  if (view.kinds.empty()) {
    view.headline.parts = {{"Nothing is sewn here", true, false}};
    view.headline.because = "no row of stitches was laid: see what is found";
    return view;
  }
  SewView was;
  if (before != nullptr) was = view_of(*before, place, view.kinds[view.chosen].id);
  const bool has_was = !was.kinds.empty() && was.kinds[was.chosen].id == view.kinds[view.chosen].id;
  view.headline = headline_of(now, before, view, has_was ? &was : nullptr);
  const SewKind& chosen = view.kinds[view.chosen];
  view.arm = sew_arm(now, before, chosen);
  for (std::size_t i = 0; i < view.boxes.size(); ++i) {
    const auto box = static_cast<SewBox>(i);
    view.boxes[i].shown = box_shown(now, place, chosen, box);
    if (!has_was) continue;
    const std::string shown = box_shown(*before, place, was.kinds[was.chosen], box);
    if (shown != view.boxes[i].shown) view.boxes[i].was = shown;
  }
  return view;
}

int trials_open(const Solved& now) {
  const solve::Totals& totals = now.results.totals;
  const std::array<std::int64_t, 3> rows = {totals.side_rows, totals.lap_rows, totals.panel_rows};
  int open = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const job::Trial* trial = job::chosen_trial(now.job.trials, static_cast<job::RowsOf>(i));
    if (rows[i] > 0 && (trial == nullptr || trial->signed_by.empty())) ++open;
  }
  return open;
}

bool is_about_sewing(const solve::Finding& finding) {
  constexpr std::array<std::string_view, 8> kOthers = {
      "code_missing", "code_used_twice", "code_unknown",   "code_hung_twice",
      "staple_holes", "figures_guide",   "short_last_gap", "edge_passed_over"};
  return std::find(kOthers.begin(), kOthers.end(), finding.code) == kOthers.end();
}

}  // namespace pouncemark::web

#include "web/model/curve.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/frame/arc.h"
#include "engine/solve/bays.h"

namespace pouncemark::web {
namespace {

const job::Bay* bay_called(const job::Job& job, const std::string& code) {
  for (const job::Bay& bay : job.bays) {
    if (bay.code == code) return &bay;
  }
  return nullptr;
}

const solve::BayResult* result_called(const Solved* before, const std::string& code) {
  if (before == nullptr) return nullptr;
  for (const solve::BayResult& result : before->results.bays) {
    if (result.code == code) return &result;
  }
  return nullptr;
}

HeadlinePart plain(std::string words, std::string brief = {}) {
  return {std::move(words), false, false, {}, std::move(brief)};
}

/// A figure of the sentence: `was` is the same before the last action, or empty.
HeadlinePart large(std::string words, const std::string& was, std::string id) {
  const bool changed = !was.empty() && was != words;
  return {std::move(words), true, changed, std::move(id), {}};
}

/// "947 along the curve, 42 more than the straight distance; the cloth creeps 1.65 out".
void set_headline(const solve::BayResult& is, const solve::BayResult* was, CurveView* view) {
  const auto old = [&](Um solve::BayResult::*figure, int decimals) {
    return was == nullptr ? std::string() : mm_text(was->*figure, decimals);
  };
  auto& parts = view->headline.parts;
  view->headline.because = view->face_words;
  parts.push_back(large(mm_text(is.along_um, 0), old(&solve::BayResult::along_um, 0), "along"));
  if (is.is_flat()) {
    parts.push_back(plain(" flat, as long as its chord; type its rise", " flat"));
    return;
  }
  parts.push_back(plain(" along the curve, ", " along, "));
  parts.push_back(large(mm_text(is.extra_um, 0), old(&solve::BayResult::extra_um, 0), "extra"));
  parts.push_back(plain(" more than the straight distance", " more than straight"));
  if (!view->holds_panel || is.creep_um == 0) return;
  parts.push_back(plain("; the cloth creeps ", "; cloth creeps "));
  parts.push_back(large(mm_text(is.creep_um, 2), old(&solve::BayResult::creep_um, 2), "creep"));
  const std::string way = is.moves_out ? " out" : " in";
  parts.push_back(plain(way + " at the fly side", way));
}

void set_piece(const Solved& now, const solve::BayResult& result, CurveView* view) {
  view->hangs = "stands empty";
  if (result.piece < 0) return;
  const auto& piece = now.results.pieces[static_cast<std::size_t>(result.piece)];
  view->holds = piece.code;
  view->holds_panel = piece.kind == solve::PieceKind::panel;
  view->hangs = std::string("holds ") + (view->holds_panel ? "panel " : "section ") + piece.code;
  if (!view->holds_panel) return;
  const job::Panel& panel = now.job.panels[static_cast<std::size_t>(piece.entry)];
  view->fly_is_right = !piece::hinge_at_right(piece.outline);
  const auto bare = panel.cloth ? panel.cloth->in_from_fly_side_um : std::nullopt;
  view->has_facing = panel.facing_thickness_um.has_value();
  view->short_of_fly_um = bare.value_or(material::kAssumedClothInFromFlySideUm);
}

void set_fixings(const Solved& now, const solve::BayResult& result, CurveView* view) {
  if (result.piece < 0) return;
  const auto wide =
      static_cast<double>(now.results.pieces[static_cast<std::size_t>(result.piece)].width_um);
  std::int64_t count = 0;
  std::int64_t tight = 0;
  for (const solve::BayFixings& row : result.fixings) {
    for (const solve::BayFixing& fixing : row.fixings) {
      ++count;
      if (fixing.is_tight) ++tight;
      const double part = std::clamp(static_cast<double>(fixing.x_um) / wide, 0.0, 1.0);
      const auto same = std::find_if(view->fixings.begin(), view->fixings.end(),
                                     [part](const FixingMark& one) { return one.part == part; });
      if (same == view->fixings.end()) {
        view->fixings.push_back({part, fixing.is_tight});
      } else if (fixing.is_tight) {
        same->is_tight = true;
      }
    }
  }
  if (count == 0) return;
  const auto rows = static_cast<std::int64_t>(result.fixings.size());
  view->fixing_words = counted(count, "fixing", "fixings") + " in " + counted(rows, "row", "rows") +
                       ", " + std::to_string(tight) + " tight";
}

/// Where the bay turns tightest, and where tighter than its sheet may stay bent.
void set_tightness(const Solved& now, const job::Bay& bay, const solve::BayResult& result,
                   CurveView* view) {
  if (result.is_flat()) return;
  view->radius_words = "radius " + mm_text(result.radius_um, 1);
  view->tightest_station = result.tightest_station;
  const std::string place = "bay " + bay.code + ",";
  for (const solve::Finding& finding : now.results.findings) {
    if (finding.code != "bay_too_tight" || finding.place.rfind(place, 0) != 0) continue;
    view->too_tight = finding.severity;
    view->limit_words = "the sheet may stay at " + mm_text(result.limit_um, 1) + " or more";
  }
  if (!result.is_by_stations) return;
  view->radius_words +=
      std::string(" ") + kPlusMinus + " " + mm_text(result.radius_out_by, 1) + " %";
  const auto radii = frame::curve_through(solve::stations_of(bay)).radii;
  for (std::size_t i = 0; i < radii.size(); ++i) {
    const Um radius = to_um(std::fabs(radii[i]));
    if (view->too_tight && radius > 0 && radius < result.limit_um) {
      view->tight_stations.push_back(static_cast<int>(i) + 2);
    }
  }
}

}  // namespace

CurveView curve_view(const Solved& now, const Solved* before, int bay) {
  CurveView view;
  view.bays = now.job.bays.size();
  if (now.job.bays.empty()) {
    view.headline.parts = {{"No bay is entered", true, false}};
    view.headline.because = "a bay is a place on the frame: its chord, its rise, what hangs there";
    return view;
  }
  view.bay = std::clamp(bay, 0, static_cast<int>(view.bays) - 1);
  const auto at = static_cast<std::size_t>(view.bay);
  const job::Bay& of = now.job.bays[at];
  const solve::BayResult& result = now.results.bays[at];
  view.code = of.code;
  view.is_hollow = of.face == "hollow";
  view.face_words = of.face + " toward the viewer";
  view.is_by_stations = result.is_by_stations;
  view.along_um = result.along_um;
  view.creep_um = result.creep_um;
  view.moves_out = result.moves_out;
  view.apart_um = now.job.slip_distance_um;
  set_piece(now, result, &view);
  view.can_bulge = view.holds_panel && result.bulge_um > 0;
  set_tightness(now, of, result, &view);
  set_fixings(now, result, &view);
  view.stop = stop_line(now, before, view.bay);
  view.chord.shown = box_text(of.chord_um);
  view.rise.shown = box_text(of.rise_um);
  const job::Bay* was = before == nullptr ? nullptr : bay_called(before->job, of.code);
  if (was != nullptr && was->chord_um != of.chord_um) view.chord.was = box_text(was->chord_um);
  if (was != nullptr && was->rise_um != of.rise_um) view.rise.was = box_text(was->rise_um);
  if (view.is_by_stations) {
    view.stretches = frame::curve_through(solve::stations_of(of)).stretches;
  } else {
    view.stretches = {
        frame::stretch_of(frame::arc_of(from_um(of.chord_um), from_um(of.rise_um)), true)};
  }
  set_headline(result, result_called(before, of.code), &view);
  return view;
}

std::vector<RankedBay> ranked_bays(const Solved& now, bool by_force) {
  struct Rank {
    std::int64_t by;
    RankedBay bay;
  };
  std::vector<Rank> ranks;
  for (std::size_t i = 0; i < now.results.bays.size(); ++i) {
    const solve::BayResult& result = now.results.bays[i];
    const auto& push = result.force;
    Rank rank;
    rank.bay.bay = static_cast<int>(i);
    rank.bay.code = result.code;
    if (result.piece >= 0) {
      rank.bay.holds = now.results.pieces[static_cast<std::size_t>(result.piece)].code;
    }
    rank.bay.radius = result.is_flat() ? "flat" : mm_text(result.radius_um, 1);
    rank.bay.push = push ? mm_text(push->shown_mn, 1) : "not known";
    rank.bay.people = push ? std::to_string(push->people) : "";
    constexpr std::int64_t kLast = std::numeric_limits<std::int64_t>::max();
    if (by_force) {
      rank.by = push ? -push->shown_mn : kLast;
    } else {
      rank.by = result.is_flat() ? kLast : result.radius_um;
    }
    ranks.push_back(std::move(rank));
  }
  std::stable_sort(ranks.begin(), ranks.end(),
                   [](const Rank& a, const Rank& b) { return a.by < b.by; });
  std::vector<RankedBay> bays;
  for (Rank& rank : ranks) bays.push_back(std::move(rank.bay));
  return bays;
}

bool is_about_bays(const solve::Finding& finding) { return finding.place.rfind("bay ", 0) == 0; }

}  // namespace pouncemark::web

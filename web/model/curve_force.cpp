#include "web/model/curve_force.h"

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

std::string newtons(std::int64_t mn) { return mm_text(mn, 1) + " N"; }

ForceLine line_of(std::string words, std::string thick, const solve::MiddlePush& push) {
  ForceLine line;
  line.words = {std::move(words), std::move(thick), newtons(push.small_mn), newtons(push.exact_mn)};
  return line;
}

const solve::Piece* piece_of(const Solved& now, const solve::BayResult& result) {
  return result.piece < 0 ? nullptr : &now.results.pieces[static_cast<std::size_t>(result.piece)];
}

std::string people_words(std::int64_t people) { return counted(people, "person", "people"); }

/// The switch from one formula to the other, in words.
void say_switch(const solve::BayForce& force, ForceView* view) {
  const double share = from_um(force.rise_um) / from_um(force.chord_um);
  const std::string rise = "Rise over chord is " + mm_text(to_um(share), 3);
  const std::string other = newtons(force.other_mn) + ", " + people_words(force.people_other);
  view->said.push_back(
      force.is_beyond_small
          ? rise + ", over .05: the exact push counts. The small-bend formula would say " + other +
                "."
          : rise + ", not over .05: the small-bend formula counts. Exact it is " + other + ".");
}

void say(const Solved& now, const solve::BayForce& force, ForceView* view) {
  view->said.push_back(newtons(force.shown_mn) + " in the middle, its ends free to slide: " +
                       people_words(force.people) + ".");
  say_switch(force, view);
  view->said.push_back(
      "Slipping, each sheet bends by itself. Locked together they bend as one: "
      "keep them free until the last screw.");
  const auto with_force = static_cast<std::int64_t>(
      std::count_if(now.results.bays.begin(), now.results.bays.end(),
                    [](const solve::BayResult& bay) { return bay.force.has_value(); }));
  view->said.push_back("Number " + std::to_string(force.rank) + " of " +
                       counted(with_force, "bay", "bays") + ", the hardest to bend first.");
}

}  // namespace

ForceView force_view(const Solved& now, int bay) {
  ForceView view;
  if (bay < 0) return view;
  const solve::BayResult& result = now.results.bays[static_cast<std::size_t>(bay)];
  const solve::Piece* piece = piece_of(now, result);
  view.holds_panel = piece != nullptr && piece->kind == solve::PieceKind::panel;
  if (view.holds_panel) {
    const job::Panel& panel = now.job.panels[static_cast<std::size_t>(piece->entry)];
    if (panel.facing_thickness_um) view.facing = exact_mm_text(*panel.facing_thickness_um);
  }
  if (!result.force) {
    view.said.push_back(piece == nullptr   ? "Nothing hangs in this bay."
                        : result.is_flat() ? "A flat bay needs no push."
                                           : "Not known: enter the stiffness of the sheet under "
                                             "Materials, on the stage Sew.");
    return view;
  }
  const solve::BayForce& force = *result.force;
  view.is_exact = force.is_beyond_small;
  for (const solve::BayPly& ply : force.plies) {
    const std::string thick = exact_mm_text(ply.thickness_um);
    view.lines.push_back(line_of(
        with_capital(ply.words),
        ply.count > 1 ? std::to_string(ply.count) + " " + kTimes + " " + thick : thick, ply.push));
  }
  view.lines.push_back(line_of("All, slipping", "", force.slipping));
  view.lines.back().is_shown = true;
  view.lines.push_back(line_of("All, locked as one", "", force.locked));
  say(now, force, &view);
  return view;
}

Made with_facing(const Solved& now, int bay, std::string_view typed) {
  Made made;
  made.job = now.job;
  made.piece = bay;
  const solve::Piece* piece = piece_of(now, now.results.bays[static_cast<std::size_t>(bay)]);
  if (piece == nullptr || piece->kind != solve::PieceKind::panel) {
    made.refused = "Only a panel has a facing.";
    return made;
  }
  job::Panel& panel = made.job.panels[static_cast<std::size_t>(piece->entry)];
  if (typed.find_first_not_of(' ') == std::string_view::npos) {
    panel.facing_thickness_um.reset();
    made.action = "Panel " + panel.code + " without a facing";
    return made;
  }
  constexpr Limits kFacing{100, 20'000};
  Entry entry = read_entry(typed, kFacing);
  made.refused = std::move(entry.sentence);
  if (!entry.um) return made;
  panel.facing_thickness_um = entry.um;
  made.action = "Facing of panel " + panel.code + ": " + exact_mm_text(*entry.um) + " thick";
  return made;
}

}  // namespace pouncemark::web

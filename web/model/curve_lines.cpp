#include <algorithm>
#include <utility>

#include "engine/solve/bays.h"
#include "web/model/curve.h"

namespace pouncemark::web {
namespace {

using Lines = std::vector<FollowLine>;
using solve::BayFigure;

void add(Lines& lines, std::string id, std::string label, solve::Sum sum, const char* unit = "",
         LineRank rank = LineRank::needed) {
  FollowLine line;
  line.id = std::move(id);
  line.label = std::move(label);
  line.figure = sum.figure;
  line.unit = unit;
  line.sum = std::move(sum);
  line.rank = rank;
  lines.push_back(std::move(line));
}

/// What it takes to bend the piece, or why it is not said.
void add_push(const Solved& now, int bay, Lines& lines) {
  const solve::BayResult& result = now.results.bays[static_cast<std::size_t>(bay)];
  const auto sum = [&](BayFigure figure) {
    return solve::bay_sum(now.job, now.results, bay, figure);
  };
  if (result.force) {
    add(lines, "push",
        result.force->is_beyond_small ? "Push in the middle, exact"
                                      : "Push in the middle, small bend",
        sum(BayFigure::push), "N");
    add(lines, "people", "People pushing", sum(BayFigure::people));
    const auto& plies = result.force->plies;
    for (std::size_t i = 0; i < plies.size() && plies.size() > 1; ++i) {
      const std::string label = plies[i].words + " alone, push";
      add(lines, "ply." + std::to_string(i), label,
          solve::ply_sum(now.job, now.results, bay, static_cast<int>(i)), "N", LineRank::more);
    }
    add(lines, "locked", "Locked as one, push", sum(BayFigure::locked), "N", LineRank::more);
    return;
  }
  if (result.is_flat()) return;
  solve::Sum sum_of;
  sum_of.figure = "not known";
  sum_of.rule = "worked out once the stiffness of the sheet is entered";
  sum_of.numbers = {"stiffness: not known"};
  sum_of.source = "Materials, on the stage Sew";
  add(lines, "push", "Push in the middle", std::move(sum_of));
}

/// A force on a stitch or a fixing, which is no structural figure.
void add_load(Lines& lines, std::string id, std::string label, solve::Sum sum) {
  sum.rule += "; not a structural calculation";
  add(lines, std::move(id), std::move(label), std::move(sum), "N", LineRank::more);
}

/// What the piece weighs, and what hangs on a stitch and a fixing; nothing where no part of it has
/// a known weight.
void add_loads(const Solved& now, int bay, Lines& lines) {
  const solve::BayResult& result = now.results.bays[static_cast<std::size_t>(bay)];
  if (!result.loads || result.loads->mass_mg == 0) return;
  const solve::BayLoads& loads = *result.loads;
  const std::string known = loads.is_whole ? "" : " at least";
  const auto sum = [&](BayFigure figure) {
    return solve::bay_sum(now.job, now.results, bay, figure);
  };
  add(lines, "mass", "Weight" + known, sum(BayFigure::mass), "g", LineRank::more);
  add_load(lines, "weight", "Pull of the weight" + known, sum(BayFigure::weight));
  if (loads.stitches > 0) {
    add_load(lines, "per_stitch", "On a top stitch" + known, sum(BayFigure::per_stitch));
  }
  if (loads.sewn_mn > 0) {
    add_load(lines, "corner", "Corner lift" + known + ", a stitch", sum(BayFigure::corner));
  }
  if (loads.fixings_mn.empty()) return;
  const auto most = std::max_element(loads.fixings_mn.begin(), loads.fixings_mn.end());
  const solve::FixingPlace place{bay, loads.fixing_row,
                                 static_cast<int>(most - loads.fixings_mn.begin())};
  add_load(lines, "fixing", "On one fixing" + known + ", most",
           solve::fixing_sum(now.job, now.results, place, solve::FixingFigure::load));
}

Lines lines_of(const Solved& now, int bay) {
  Lines lines;
  const solve::BayResult& result = now.results.bays[static_cast<std::size_t>(bay)];
  const auto sum = [&](BayFigure figure) {
    return solve::bay_sum(now.job, now.results, bay, figure);
  };
  const bool has_piece = result.piece >= 0;
  const bool is_panel =
      has_piece &&
      now.results.pieces[static_cast<std::size_t>(result.piece)].kind == solve::PieceKind::panel;
  add(lines, "radius", result.is_by_stations ? "Radius, tightest" : "Radius",
      sum(BayFigure::radius));
  add(lines, "turn", "Turn", sum(BayFigure::turn));
  add(lines, "along", "Along the curve", sum(BayFigure::along));
  add(lines, "extra", "More than the chord", sum(BayFigure::extra));
  if (is_panel) {
    const char* way = result.creep_um == 0 ? "Creep at the fly side"
                      : result.moves_out   ? "Creep, cloth moves out"
                                           : "Creep, cloth moves in";
    add(lines, "creep", way, sum(BayFigure::creep));
    if (result.stop_um) add(lines, "stop", "Stop rows by", sum(BayFigure::stop));
  }
  if (has_piece) {
    add_push(now, bay, lines);
    add(lines, "limit", "Stay-bent limit", sum(BayFigure::limit));
    if (!result.is_flat()) add(lines, "spare", "Spare over the limit", sum(BayFigure::spare));
    add(lines, "room", "Room for the piece", sum(BayFigure::room), "", LineRank::more);
    add_loads(now, bay, lines);
  }
  if (is_panel && !result.is_flat()) {
    add(lines, "ease", "Ease asked of the cloth", sum(BayFigure::ease), "", LineRank::more);
    if (result.moves_out) {
      add(lines, "bulge", "Bulge, sewn all round", sum(BayFigure::bulge), "", LineRank::more);
    }
  }
  return lines;
}

int bay_called(const Solved& now, const std::string& code) {
  for (std::size_t i = 0; i < now.results.bays.size(); ++i) {
    if (now.results.bays[i].code == code) return static_cast<int>(i);
  }
  return -1;
}

}  // namespace

std::vector<FollowLine> curve_lines(const Solved& now, const Solved* before, int bay) {
  if (bay < 0 || bay >= static_cast<int>(now.results.bays.size())) return {};
  Lines lines = lines_of(now, bay);
  if (before == nullptr) return lines;
  const int was_bay = bay_called(*before, now.results.bays[static_cast<std::size_t>(bay)].code);
  if (was_bay < 0) return lines;
  for (const FollowLine& was : lines_of(*before, was_bay)) {
    for (FollowLine& line : lines) {
      if (line.id == was.id && line.figure != was.figure) line.before = was.figure;
    }
  }
  return lines;
}

}  // namespace pouncemark::web

#include "engine/plan/drilling_strip.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/base/number_text.h"

namespace pouncemark::plan {
namespace {

using material::Field;
using solve::BayFixings;
using solve::BayResult;

/// The tight fixing that a row's slots lie toward; nothing where no fixing of the bay is tight.
std::optional<Vec2> tight_place(const BayResult& bay, const BayFixings& row) {
  const bool is_here = row.tight >= 0;
  if (!is_here && row.tight_row < 0) return std::nullopt;
  const BayFixings& of = is_here ? row : bay.fixings[static_cast<std::size_t>(row.tight_row)];
  if (of.tight < 0) return std::nullopt;
  const solve::BayFixing& tight = of.fixings[static_cast<std::size_t>(of.tight)];
  return Vec2{from_um(tight.x_um), from_um(tight.y_um)};
}

/// How the edge lies on the strip: walked up from its datum end.
struct Lie {
  Segment edge;
  Vec2 along;
  Vec2 in;
};

Lie lie_of(const piece::Edge& edge) {
  Lie lie;
  lie.edge = piece::from_datum(edge);
  lie.along = direction_at(lie.edge, 0);
  // Walked anticlockwise the piece lies at the left.
  lie.in = left_of(lie.along) * (edge.datum_at_end ? -1.0 : 1.0);
  return lie;
}

StripWay way_of(const Lie& lie, Vec2 out) {
  if (length(out) < from_um(1)) return {};
  return {dot(unit(out), lie.along), dot(unit(out), lie.in)};
}

int top_turns(Vec2 along) {
  if (std::fabs(along.y) >= std::fabs(along.x)) return along.y > 0 ? 0 : 2;
  return along.x > 0 ? 1 : 3;
}

void name_ends(const piece::Edge& edge, const Lie& lie, DrillingStrip* strip) {
  const bool is_upright = std::fabs(lie.along.y) >= std::fabs(lie.along.x);
  const bool goes_on = is_upright ? lie.along.y > 0 : lie.along.x > 0;
  strip->from = is_upright ? "BOTTOM" : "LEFT";
  strip->to = is_upright ? "TOP" : "RIGHT";
  if (!goes_on) std::swap(strip->from, strip->to);
  if (edge.role == piece::EdgeRole::top || edge.role == piece::EdgeRole::bottom) {
    strip->from = "HINGE SIDE";
    strip->to = "FLY SIDE";
  }
}

DrillingStrip strip_of(const job::Job& job, const solve::Piece& piece, const BayResult& bay,
                       const BayFixings& row) {
  const piece::Edge& edge = piece.outline.edges[static_cast<std::size_t>(row.outline_edge)];
  const Lie lie = lie_of(edge);
  DrillingStrip strip;
  strip.bay = bay.code;
  strip.piece = (piece.kind == solve::PieceKind::section ? "section " : "panel ") + piece.code;
  strip.edge = row.edge;
  name_ends(edge, lie, &strip);
  strip.length_um = to_um(length(lie.edge));
  strip.screw_um = job::value_of(job.materials, Field::fixing_screw).thousandths;
  strip.edge_is_left = edge.datum_at_end;
  strip.top_turns = top_turns(lie.along);
  const std::optional<Vec2> tight = tight_place(bay, row);
  for (const solve::BayFixing& fixing : row.fixings) {
    const Vec2 place{from_um(fixing.x_um), from_um(fixing.y_um)};
    const Vec2 from_corner = place - lie.edge.from;
    StripHole hole;
    hole.at_um = to_um(dot(from_corner, lie.along));
    hole.in_um = to_um(dot(from_corner, lie.in));
    hole.is_tight = fixing.is_tight;
    hole.slot_um = fixing.is_tight ? strip.screw_um : fixing.slot_shown_um;
    if (tight) hole.way = way_of(lie, place - *tight);
    hole.screw_um = fixing.screw_today_um;
    const double reach = std::fabs(hole.way.in) * from_um(hole.slot_um - strip.screw_um) / 2;
    strip.deepest_um = std::max(strip.deepest_um, hole.in_um + to_um(reach) + strip.screw_um / 2);
    strip.holes.push_back(hole);
  }
  return strip;
}

/// "Bay B2: ...", "Bays B2, B3: ...".
void add_note(const std::vector<std::string>& bays, const char* words, DrillingStrips* all) {
  if (bays.empty()) return;
  std::string note = bays.size() == 1 ? "Bay " : "Bays ";
  for (std::size_t i = 0; i < bays.size(); ++i) note += (i > 0 ? ", " : "") + bays[i];
  all->notes.push_back(note + ": " + words);
}

}  // namespace

DrillingStrips drilling_strips(const job::Job& job, const solve::Results& results) {
  DrillingStrips all;
  const material::Value today = job::value_of(job.materials, Field::hanging_today);
  all.today = today.is_known ? "Dot: the screw on the hanging day, at " +
                                   short_mm_text(today.thousandths, 1) + " °C."
                             : "Dot: the screw; the hanging day's °C was not entered.";
  std::vector<std::string> bare;
  std::vector<std::string> curved;
  for (const BayResult& bay : results.bays) {
    if (bay.fixings.empty()) bare.push_back(bay.code);
    if (bay.piece < 0) continue;
    const solve::Piece& piece = results.pieces[static_cast<std::size_t>(bay.piece)];
    for (const BayFixings& row : bay.fixings) {
      if (row.fixings.empty()) continue;
      if (is_straight(piece.outline.edges[static_cast<std::size_t>(row.outline_edge)].line)) {
        all.strips.push_back(strip_of(job, piece, bay, row));
      } else {
        curved.push_back(bay.code + " " + row.edge);
      }
    }
  }
  add_note(bare, "no fixings. Enter edge, in from it, kept clear and spacing on the stage Curve.",
           &all);
  add_note(curved, "the edge is an arc, and a strip lies straight. Drill by figures.", &all);
  return all;
}

}  // namespace pouncemark::plan

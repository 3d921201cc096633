#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/layout/stack_profile.h"
#include "engine/solve/results.h"
#include "engine/solve/stack.h"

/// Inside of solve: the plies a row may go through, and how they lie in the millimetres of their
/// piece. Only solve's own files include this.
namespace pouncemark::solve {

struct Plies {
  std::vector<Ply> plies;                    ///< front to back
  std::vector<layout::PlyShape> shapes;      ///< how each of them lies
  std::vector<material::Field> thicknesses;  ///< where each thickness comes from; sheets: no use
  layout::PlySet unknown = 0;                ///< those whose thickness no one entered
  std::vector<std::string> assumed_places;   ///< "cloth 12 assumed in from the long edges"
};

/// What a ply is made of, before it is said where it lies.
struct PlyKind {
  Ply ply;
  material::Field thickness = material::Field::leaf_sheet;
  bool is_known = true;
};

/// Sheet of this thickness.
PlyKind sheet_ply(std::string name, material::Item item, Um thickness_um);

/// A ply whose thickness is a value of the job; `pressed` is the same field where it has none.
PlyKind valued_ply(const job::Job& job, std::string name, material::Field thickness,
                   material::Field pressed);

/// Puts a ply behind those that are there; one without an edge is not there.
void add_ply(PlyKind kind, std::vector<Segment> edges, Plies* plies);

/// Puts a sheet behind those that are there, and film on both its faces where it is left on.
void add_sheet(const job::Job& job, PlyKind kind, const std::vector<Segment>& edges, Plies* plies);

/// The edges of a rectangle, anticlockwise; none where it is empty.
std::vector<Segment> rectangle(Vec2 low, Vec2 high);

/// Where the cloth of a sleeve ends: from its left and its right edge, and from BOTTOM and TOP.
struct ClothEnds {
  Um left_um = 0;
  Um right_um = 0;
  Um end_um = 0;
};
ClothEnds cloth_ends(const job::Section& section);

/// Where the cloth of a panel lies, as entered or assumed.
struct PanelCloth {
  Um sewn_um = 0;  ///< in from the sewn edges
  Um fly_um = 0;   ///< in from the fly side, when flat
  Um hem_um = 0;
  bool has_interlining = false;
  Um interlining_um = 0;  ///< in from the sewn edges
};
PanelCloth panel_cloth(const job::Job& job, const job::Panel& panel);

/// A sleeve alone, as its side rows are sewn; both sleeves of a lap, and those beyond that reach
/// into it; a panel.
Plies plies_of_sleeve(const job::Job& job, const job::Section& section, const Piece& piece,
                      int sleeve);
Plies plies_of_lap(const job::Job& job, const job::Section& section, const Piece& piece, int lap);
Plies plies_of_panel(const job::Job& job, const job::Panel& panel, const Piece& piece);

}  // namespace pouncemark::solve

#pragma once

#include <array>
#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/plan/card_cells.h"
#include "engine/solve/results.h"

namespace pouncemark::plan {

/// One row of a panel as its card lists it; lengths as they are printed.
struct PanelRow {
  int index = 0;     ///< its stitch row in Results::rows
  std::string name;  ///< "hinge side", "top", "top 2"
  std::string in_from_edge;
  std::string stitch;
  std::string points;  ///< to prick, both ends counted
  std::string first;   ///< hole, from the datum end of its edge
  std::string last;
};

/// Which way the cloth's edge at the fly side creeps.
enum class Creep { none, in, out };

/// Everything there is to know of one panel while it is cut, sprayed, sewn and carried, for one
/// page. Lengths to half a millimetre, but creep and stitch.
struct PanelCard {
  std::string job_name;
  std::string of;  ///< "panel 1, bay B2"
  std::string code;
  const solve::Piece* piece = nullptr;
  Um cloth_in_um = 0;      ///< from the sewn edges
  Um cloth_fly_in_um = 0;  ///< from the fly side
  Creep creep = Creep::none;
  std::array<CardCell, 3> cells;  ///< creep, backing past the cloth, how tight it may stay bent
  std::string band;
  std::vector<PanelRow> rows;
  std::vector<std::string> lines;     ///< backing and cloth, where rows stop
  std::vector<std::string> findings;  ///< "STOP ...", "WARN ..." of this panel
};

/// The card of a panel, by its index in Results::pieces, as it lies front up or face down. The
/// results outlive it.
PanelCard panel_card(const job::Job& job, const solve::Results& results, int piece,
                     bool is_face_down);

}  // namespace pouncemark::plan

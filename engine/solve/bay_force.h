#pragma once

#include <optional>
#include <vector>

#include "engine/frame/bending.h"
#include "engine/job/job.h"
#include "engine/solve/bays.h"
#include "engine/solve/results.h"

/// Inside of solve: what it takes to bend what hangs in a bay. Only solve's own files include this.
namespace pouncemark::solve {

/// One kind of sheet in the pack that is bent, with the values that make it stiff.
struct BentSheet {
  material::Item item = material::Item::leaf;
  int count = 1;
  Um thickness_um = 0;
  material::Value modulus;
  material::Value poisson;
  material::Value times;  ///< how tight it may stay bent, in times its thickness

  bool is_known() const { return modulus.is_known && poisson.is_known; }
  frame::Ply ply() const;
  Um limit_um() const { return divide_up(thickness_um * times.thousandths, 1'000); }
};

/// The sheets of a piece from the back to the front: the backing of a panel and its facing; of a
/// section the two leaves of a sleeve. Four lie in a lap, but laps are narrow and the sleeves
/// between them give way first.
std::vector<BentSheet> sheets_of(const job::Job& job, const Piece& piece);

/// The sheet that sets how tight the pack may stay bent.
const BentSheet& tightest_of(const std::vector<BentSheet>& sheets);

/// Chord and rise that the push is worked out from: of stations from the first to the last, and
/// the farthest of them from the straight line between these.
struct PushShape {
  Um chord_um = 0;
  Um rise_um = 0;
};
PushShape push_shape(const job::Bay& bay, const BayResult& result);

/// Nothing for a bay that is flat or empty, and where a sheet's stiffness is not known.
std::optional<BayForce> force_of(const job::Job& job, const job::Bay& bay, const Results& results,
                                 const BayResult& result);

/// How push, people and locked push were worked out.
Sum force_sum(const job::Job& job, const Results& results, int bay, BayFigure figure);

/// Says of each bay with a force which place it takes among them, the hardest first.
void rank_by_force(std::vector<BayResult>* bays);

}  // namespace pouncemark::solve

#include <cmath>
#include <utility>

#include "engine/checks/bay_rules.h"
#include "engine/checks/hanging_rules.h"
#include "engine/frame/arc.h"
#include "engine/solve/bay_force.h"
#include "engine/solve/bays.h"
#include "engine/solve/findings.h"
#include "engine/solve/rows_stop.h"

namespace pouncemark::solve {
namespace {

/// Hands findings about one bay over, with their place.
class Saying {
 public:
  Saying(const Results& results, const BayResult& bay, Findings* findings)
      : piece_(bay.piece), place_("bay " + bay.code), findings_(findings) {
    if (piece_ < 0) return;
    const Piece& piece = results.pieces[static_cast<std::size_t>(piece_)];
    words_ = (piece.kind == PieceKind::section ? "section " : "panel ") + piece.code;
    place_ += ", " + words_;
  }

  void say(std::optional<Finding> finding) {
    if (!finding) return;
    finding->piece = piece_;
    finding->place = place_;
    findings_->push_back(std::move(*finding));
  }

  /// "section 2".
  const std::string& piece_words() const { return words_; }
  const std::string& place() const { return place_; }

 private:
  int piece_ = -1;
  std::string place_;
  std::string words_;
  Findings* findings_;
};

/// The first station that is not farther along than the one before, from 1.
std::int64_t first_out_of_order(const job::Bay& bay) {
  std::size_t at = 1;
  while (bay.stations_um[at][0] > bay.stations_um[at - 1][0]) ++at;
  return static_cast<std::int64_t>(at) + 1;
}

void check_measures(const job::Bay& bay, const BayResult& result, Saying* saying) {
  if (!result.is_by_stations) saying->say(checks::bay_deep(bay.chord_um, bay.rise_um));
  if (!bay.stations_um.empty()) {
    const auto fault = frame::fault_in(stations_of(bay));
    const auto count = static_cast<std::int64_t>(bay.stations_um.size());
    if (fault == frame::StationFault::too_few) {
      saying->say(checks::stations_amiss(*fault, count));
    } else if (fault) {
      saying->say(checks::stations_amiss(*fault, first_out_of_order(bay)));
    } else if (!result.is_flat()) {
      const Um all = bay.stations_um.back()[0] - bay.stations_um.front()[0];
      saying->say(checks::stations_near(all / (count - 1), result.radius_out_by));
    }
  }
  if (!bay.taped_along_um) return;
  const auto taped =
      frame::arc_along(from_um(result.along_um - result.extra_um), from_um(*bay.taped_along_um));
  saying->say(checks::tape_differs(*bay.taped_along_um, result.along_um,
                                   taped ? std::optional(to_um(taped->rise)) : std::nullopt));
}

void check_bent(const job::Job& job, const Piece& piece, const BayResult& result, Saying* saying) {
  if (!result.is_flat()) {
    const std::vector<BentSheet> sheets = sheets_of(job, piece);
    const BentSheet& tightest = tightest_of(sheets);
    saying->say(checks::bay_too_tight(result.radius_um, result.radius_out_by,
                                      {tightest.thickness_um, tightest.times.thousandths,
                                       tightest.times.is_assumed(), result.limit_um}));
  }
  const checks::Hung hung{saying->piece_words(), piece.width_um, piece.likely_um};
  saying->say(checks::bay_short(result.along_um, hung));
  saying->say(checks::chord_for_curve(result.along_um - result.extra_um, result.along_um, hung));
}

/// Hands, deep curves and short bays; `longest` is the longest chord of the bays with a force.
void check_force(const job::Job& job, const BayResult& result, const BayForce* longest,
                 Saying* saying) {
  if (!result.force) return;
  const BayForce& force = *result.force;
  const auto each = job::value_of(job.materials, material::Field::hanging_push);
  const auto hands = job::value_of(job.materials, material::Field::hanging_people);
  saying->say(checks::many_hands(force.shown_mn, each.thousandths, hands.thousandths / 1'000,
                                 each.is_assumed()));
  frame::MiddlePush push;
  push.small_bend_mn = force.slipping.small_mn;
  push.exact_mn = force.slipping.exact_mn;
  saying->say(checks::deep_curve(force.chord_um, force.rise_um, push));
  saying->say(checks::short_bay(force.chord_um, longest->chord_um, force.shown_mn));
}

/// The force of the bay with the longest chord; nullptr where no bay has a force.
const BayForce* longest_of(const std::vector<BayResult>& bays) {
  const BayForce* longest = nullptr;
  for (const BayResult& bay : bays) {
    if (bay.force && (longest == nullptr || bay.force->chord_um > longest->chord_um)) {
      longest = &*bay.force;
    }
  }
  return longest;
}

void check_cloth(const job::Panel& panel, const BayResult& result, Saying* saying) {
  if (!result.moves_out) return;
  const std::optional<Um> bare = panel.cloth ? panel.cloth->in_from_fly_side_um : std::nullopt;
  saying->say(checks::creep_past_sheet(
      result.creep_um, bare.value_or(material::kAssumedClothInFromFlySideUm), !bare));
}

/// Top and bottom rows, measured along their edges from the hinge side.
void check_rows(const job::Job& job, const Results& results, const BayResult& result,
                Saying* saying) {
  if (!result.stop_um) return;
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  const checks::SlipZone zone{*result.stop_um,
                              material::kAssumedSlipLimitUm,
                              result.is_by_stations ? 0 : result.radius_um,
                              job.slip_distance_um,
                              result.slip_most_um,
                              result.ease};
  std::optional<Finding> finding;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.kind != RowKind::stitch || row.run.is_empty || !can_stop(piece, row)) continue;
    std::optional<Finding> said = checks::row_in_slip_zone(ends_from_hinge_um(piece, row), zone);
    if (!said) continue;
    if (!finding) finding = std::move(said);
    finding->part = checks::Part::rows;
    finding->at.push_back(i);
  }
  saying->say(std::move(finding));
}

}  // namespace

void check_bay_curves(const job::Job& job, const Results& results, Findings* findings) {
  const BayForce* longest = longest_of(results.bays);
  for (std::size_t i = 0; i < results.bays.size(); ++i) {
    const BayResult& result = results.bays[i];
    Saying saying(results, result, findings);
    check_measures(job.bays[i], result, &saying);
    if (result.piece < 0) continue;
    const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
    check_bent(job, piece, result, &saying);
    check_force(job, result, longest, &saying);
    check_fixings(job, results, static_cast<int>(i), saying.place(), findings);
    if (piece.kind != PieceKind::panel) continue;
    check_cloth(job.panels[static_cast<std::size_t>(piece.entry)], result, &saying);
    check_rows(job, results, result, &saying);
  }
}

}  // namespace pouncemark::solve

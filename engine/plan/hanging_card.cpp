#include "engine/plan/hanging_card.h"

#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/plan/card_findings.h"
#include "engine/solve/bays.h"

namespace pouncemark::plan {
namespace {

using material::Field;
using solve::BayFixings;
using solve::BayResult;

/// The bay a card is of.
struct Source {
  const job::Job& job;
  const solve::Results& results;
  int index = 0;

  const BayResult& bay() const { return results.bays[static_cast<std::size_t>(index)]; }
  const job::Bay& entry() const { return job.bays[static_cast<std::size_t>(index)]; }
  const solve::Piece* piece() const {
    return bay().piece < 0 ? nullptr : &results.pieces[static_cast<std::size_t>(bay().piece)];
  }
  bool is_panel() const { return piece() != nullptr && piece()->kind == solve::PieceKind::panel; }
  material::Value value(Field field) const { return job::value_of(job.materials, field); }
};

/// Thousandths of a newton: whole newtons, a tenth under ten.
std::string newtons(std::int64_t mn) { return short_mm_text(mn, mn < 10'000 ? 1 : 0); }

std::string kilograms(std::int64_t mg) { return short_mm_text(divide_round(mg, 1'000), 1); }

CardCell radius_cell(const Source& source) {
  const BayResult& bay = source.bay();
  const std::string face = source.entry().face;
  if (bay.is_flat()) return {"radius", "flat", {}, face};
  return {bay.is_by_stations ? "radius, where it is least" : "radius", paper_text(bay.radius_um),
          face, bay.is_by_stations ? "by stations" : "rise " + paper_text(source.entry().rise_um)};
}

CardCell creep_cell(const Source& source) {
  const BayResult& bay = source.bay();
  if (source.piece() != nullptr && !source.is_panel())
    return {"cloth creeps at the fly side", "-", "a section", "has none"};
  const std::string figure = short_mm_text(bay.creep_um, 2);
  if (bay.creep_um == 0) return {"cloth creeps at the fly side", figure, "does not", "move"};
  return {"cloth creeps at the fly side", figure, "moves", bay.moves_out ? "OUT" : "IN"};
}

/// Why no push is known.
std::string no_push(const Source& source) {
  if (source.piece() == nullptr) return "nothing hangs here";
  return source.bay().is_flat() ? "the bay is flat" : "stiffness not known";
}

CardCell push_cell(const Source& source) {
  const auto& force = source.bay().force;
  if (!force) return {"push in the middle, N", "?", {}, no_push(source)};
  return {"push in the middle, N", newtons(force->shown_mn),
          force->is_beyond_small ? "exact" : "small bend",
          (force->is_beyond_small ? "small bend " : "exact ") + newtons(force->other_mn)};
}

CardCell people_cell(const Source& source) {
  const auto& force = source.bay().force;
  if (!force) return {"people to bend it", "?", {}, no_push(source)};
  const material::Value push = source.value(Field::hanging_push);
  const std::string each = "at " + short_mm_text(push.thousandths, 1) + " N";
  return {"people to bend it", count_text(force->people), each,
          push.is_assumed() ? "each, assumed" : "each"};
}

CardCell weight_cell(const BayResult& bay) {
  if (!bay.loads) return {"weighs, kg", "?", {}, "not known"};
  return {"weighs, kg", kilograms(bay.loads->mass_mg), newtons(bay.loads->weight_mn) + " N",
          bay.loads->is_whole ? "in all" : "at least"};
}

std::int64_t fixings_in(const BayResult& bay) {
  std::size_t count = 0;
  for (const BayFixings& row : bay.fixings) count += row.fixings.size();
  return static_cast<std::int64_t>(count);
}

CardCell fixings_cell(const BayResult& bay) {
  const std::int64_t count = fixings_in(bay);
  if (count == 0) return {"fixings", "?", {}, "none entered"};
  const auto rows = static_cast<std::int64_t>(bay.fixings.size());
  return {"fixings", count_text(count), "in", counted(rows, "row", "rows")};
}

CardCell slot_cell(const BayResult& bay) {
  Um shortest = 0;
  Um longest = 0;
  for (const BayFixings& row : bay.fixings) {
    for (const solve::BayFixing& fixing : row.fixings) {
      if (fixing.is_tight) continue;
      longest = std::max(longest, fixing.slot_shown_um);
      if (shortest == 0 || fixing.slot_shown_um < shortest) shortest = fixing.slot_shown_um;
    }
  }
  if (longest == 0) return {"longest slot", "?", {}, "no slot entered"};
  return {"longest slot", short_mm_text(longest, 1), "shortest", short_mm_text(shortest, 1)};
}

/// Where the tight hole is; nothing where no fixing of the bay is tight.
std::string tight_words(const BayResult& bay) {
  for (const BayFixings& row : bay.fixings) {
    if (row.tight < 0) continue;
    const Um at = row.fixings[static_cast<std::size_t>(row.tight)].station_um;
    return row.edge + ", " + paper_text(at) + " from the datum";
  }
  return {};
}

std::vector<std::string> steps_of(const Source& source) {
  const std::string tight = tight_words(source.bay());
  const bool is_panel = source.is_panel();
  std::string first = "1  The tight hole: " + tight + ".";
  if (tight.empty()) {
    first = source.bay().fixings.empty()
                ? "1  The tight hole: no fixings. Enter them on the stage Curve."
                : "1  The tight hole: none is tight. Make one tight on the stage Curve.";
  }
  return {first,
          is_panel ? "2  The hinge side, from the tight hole outward."
                   : "2  The left edge, from the tight hole outward.",
          is_panel ? "3  On toward the fly side, bending it by and by."
                   : "3  On toward the right edge, bending it by and by.",
          "4  Top and bottom last. Screws in slots: snug, not tight."};
}

/// What hangs on fixings and stitches.
std::vector<std::string> lines_of(const BayResult& bay) {
  std::vector<std::string> lines;
  if (!bay.loads) return lines;
  const solve::BayLoads& loads = *bay.loads;
  std::string line;
  if (!loads.fixings_mn.empty()) {
    const auto most = *std::max_element(loads.fixings_mn.begin(), loads.fixings_mn.end());
    line = "Most on one fixing of the top: " + newtons(most) + " N. ";
  }
  if (loads.stitches > 0) {
    line += "On one stitch of the top row " + short_mm_text(loads.per_stitch_mn, 2) +
            " N; lifted by a corner " + short_mm_text(loads.corner_mn, 1) + " N.";
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

/// Said of this bay, the warmth of its day too.
bool is_of(const solve::Finding& finding, const std::string& code) {
  const std::string place = "bay " + code;
  const bool is_here = finding.place == place || finding.place.starts_with(place + ",");
  return is_here &&
         (finding.severity != solve::Severity::note || finding.code == "hanging_temperature");
}

const char* tag_of(solve::Severity severity) {
  if (severity == solve::Severity::stop) return "STOP ";
  return severity == solve::Severity::warn ? "WARN " : "NOTE ";
}

}  // namespace

HangingCard hanging_card(const job::Job& job, const solve::Results& results, int bay) {
  const Source source{job, results, bay};
  const BayResult& of = source.bay();
  HangingCard card;
  card.job_name = job.name;
  card.code = of.code;
  card.heading = "bay " + count_text(bay + 1) + " of " +
                 count_text(static_cast<std::int64_t>(results.bays.size()));
  if (source.piece() != nullptr) {
    card.heading +=
        std::string(source.is_panel() ? "   panel " : "   section ") + source.piece()->code;
  }
  card.cells = {radius_cell(source),
                {"along the curve", paper_text(of.along_um), "longer by", paper_text(of.extra_um)},
                creep_cell(source),
                push_cell(source),
                people_cell(source),
                weight_cell(of),
                fixings_cell(of),
                slot_cell(of)};
  card.band = "NEVER LIFT BY ONE CORNER";
  card.steps = steps_of(source);
  card.lines = lines_of(of);
  for (const solve::Finding& finding : results.findings) {
    if (!is_of(finding, of.code)) continue;
    card.findings.push_back(tag_of(finding.severity) + in_short(finding));
    if (finding.severity == solve::Severity::stop && card.band.starts_with("NEVER")) {
      card.band = "STOP: " + (finding.change.empty() ? finding.sentence : finding.change);
    }
  }
  const material::Value planned = source.value(Field::hanging_planned);
  if (planned.is_known) {
    card.planned = "planned for " + short_mm_text(planned.thousandths, 1) + " °C";
  }
  const material::Value today = source.value(Field::hanging_today);
  if (today.is_known) card.today = short_mm_text(today.thousandths, 1) + " °C";
  return card;
}

}  // namespace pouncemark::plan

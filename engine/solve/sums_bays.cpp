#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/bay_force.h"
#include "engine/solve/bay_loads.h"
#include "engine/solve/bays.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

constexpr const char* kArcSource = "intersecting chords, Euclid III.35";
constexpr const char* kSlipSource = "plies held at one edge: their distance times the turn";

/// One bay with all that its sums are made of.
struct Asked {
  const job::Job& job;
  const job::Bay& bay;
  const BayResult& result;
  const Results& results;

  std::string chord() const { return plain_mm(bay.chord_um); }
  std::string rise() const { return plain_mm(bay.rise_um); }
  std::string apart() const { return plain_mm(job.slip_distance_um); }
  std::string radius() const { return mm_text(result.radius_um, 3); }
  std::string turn() const { return mm_text(result.turn_mdeg, 3); }
};

std::string degrees(std::int64_t mdeg) { return shown_mm(mdeg, 2) + "°"; }

/// Thousandths of a percent.
std::string percent(std::int64_t thousandths, int decimals) {
  return shown_mm(thousandths, decimals) + " %";
}

std::string equals(const std::string& words, const std::string& figure) {
  return words + " = " + figure;
}

/// A figure of a curve through stations, which no pocket calculator adds up.
Sum by_stations(const Asked& asked, std::string rule, std::string figure) {
  Sum sum;
  sum.rule = std::move(rule);
  sum.figure = std::move(figure);
  sum.numbers = {
      counted(static_cast<std::int64_t>(asked.bay.stations_um.size()), "station", "stations") +
          ", circles through each three of them",
      sum.figure};
  sum.source = "entered; radius of a circle through three points, a·b·c ÷ (4 × area)";
  return sum;
}

Sum radius_sum(const Asked& asked) {
  const std::string figure = asked.result.is_flat() ? "flat" : mm_text(asked.result.radius_um, 1);
  if (asked.result.is_by_stations) {
    Sum sum = by_stations(asked, "the tightest place of the curve through the stations", figure);
    if (asked.result.is_flat()) return sum;
    sum.numbers = {"at station " + count_text(asked.result.tightest_station) + ", give or take " +
                       percent(asked.result.radius_out_by, 1) + " for " +
                       told(plain_mm(material::kAssumedReadingUm), true) + " on each reading",
                   figure};
    sum.rests_on_assumed = true;
    return sum;
  }
  Sum sum;
  sum.rule = "chord² ÷ (8 × rise) + rise ÷ 2";
  sum.figure = figure;
  sum.source = kArcSource;
  sum.numbers = {asked.result.is_flat() ? "rise " + asked.rise() + ": " + figure
                                        : equals(asked.chord() + "² ÷ (8 × " + asked.rise() +
                                                     ") + " + asked.rise() + " ÷ 2",
                                                 figure)};
  return sum;
}

Sum turn_sum(const Asked& asked) {
  const std::string figure = degrees(asked.result.turn_mdeg);
  if (asked.result.is_by_stations) {
    return by_stations(asked, "the turns from station to station with their signs", figure);
  }
  Sum sum;
  sum.rule = "4 × atan(2 × rise ÷ chord), in degrees";
  sum.figure = figure;
  sum.source = kArcSource;
  sum.numbers = {
      equals("4 × atan(2 × " + asked.rise() + " ÷ " + asked.chord() + ") × 180 ÷ π", figure)};
  return sum;
}

Sum along_sum(const Asked& asked) {
  const std::string figure = mm_text(asked.result.along_um, 1);
  if (asked.result.is_by_stations) {
    return by_stations(asked, "the arcs from station to station", figure);
  }
  Sum sum;
  sum.rule = asked.result.is_flat() ? "flat: as long as its chord" : "radius × turn";
  sum.figure = figure;
  sum.source = kArcSource;
  sum.numbers = {asked.result.is_flat() ? figure
                                        : equals(asked.radius() + " × 4 × atan(2 × " +
                                                     asked.rise() + " ÷ " + asked.chord() + ")",
                                                 figure)};
  return sum;
}

Sum extra_sum(const Asked& asked) {
  Sum sum;
  sum.rule = "along the curve less the straight distance";
  sum.figure = mm_text(asked.result.extra_um, 1);
  sum.source = kEnteredSource;
  sum.numbers = {equals(plain_mm(asked.result.along_um) + " − " +
                            plain_mm(asked.result.along_um - asked.result.extra_um),
                        sum.figure)};
  return sum;
}

Sum creep_sum(const Asked& asked) {
  Sum sum;
  sum.rule = "middle of the cloth to middle of the sheet, times the turn of the whole bay";
  sum.figure = mm_text(asked.result.creep_um, 2);
  sum.source = kSlipSource;
  const std::int64_t turn = asked.result.turn_mdeg;
  sum.numbers = {equals(asked.apart() + " × " + mm_text(turn < 0 ? -turn : turn, 3) + " ÷ 180 × π",
                        sum.figure)};
  return sum;
}

Sum stop_sum(const Asked& asked) {
  Sum sum;
  sum.rule = "where the slip comes to its limit: limit × radius ÷ distance of the plies";
  sum.figure = mm_text(*asked.result.stop_um, 1);
  sum.source = kSlipSource;
  sum.rests_on_assumed = true;
  const std::string limit = told(plain_mm(material::kAssumedSlipLimitUm), true);
  sum.numbers = {equals(limit + " × " + asked.radius() + " ÷ " + asked.apart(), sum.figure)};
  if (!asked.result.is_by_stations) return sum;
  sum.rule = "where the slip along the stations, from the hinge side, first comes to its limit";
  sum.numbers = {"limit " + limit, sum.figure};
  return sum;
}

Sum ease_sum(const Asked& asked) {
  Sum sum;
  sum.rule = "what the cloth gives where it is held point by point: distance ÷ radius";
  sum.figure = percent(asked.result.ease, 3);
  sum.source = kSlipSource;
  sum.numbers = {equals(asked.apart() + " ÷ " + asked.radius() + " × 100", sum.figure)};
  return sum;
}

Sum bulge_sum(const Asked& asked) {
  Sum sum;
  sum.rule = "half a wave as long as the piece and the creep, over the piece";
  sum.figure = mm_text(asked.result.bulge_um, 1);
  sum.source = "length of a sine by the complete elliptic integral E";
  const std::string along = plain_mm(asked.result.along_um);
  const std::string together = plain_mm(asked.result.along_um + asked.result.creep_um);
  sum.numbers = {equals(along + " + " + plain_mm(asked.result.creep_um), together),
                 "half a wave " + together + " long over " + along + ": " + sum.figure};
  return sum;
}

Sum limit_sum(const Asked& asked) {
  const Piece& piece = asked.results.pieces[static_cast<std::size_t>(asked.result.piece)];
  const std::vector<BentSheet> sheets = sheets_of(asked.job, piece);
  const BentSheet& tightest = tightest_of(sheets);
  Sum sum;
  sum.rule = "stay-bent limit: so many times the thickness of the " +
             std::string(material::item_words(tightest.item)) +
             (sheets.size() > 1 ? ", the stiffer ply" : "");
  sum.figure = mm_text(asked.result.limit_um, 1);
  sum.rests_on_assumed = tightest.times.is_assumed();
  sum.source = tightest.times.source.empty() ? kEnteredSource : tightest.times.source;
  sum.numbers = {equals(plain_mm(tightest.thickness_um) + " × " +
                            told(exact_mm_text(tightest.times.thousandths), sum.rests_on_assumed),
                        sum.figure)};
  return sum;
}

Sum spare_sum(const Asked& asked) {
  Sum sum = limit_sum(asked);
  sum.rule = "tightest radius over the stay-bent limit, less 1";
  sum.figure = percent(asked.result.spare, 1);
  sum.numbers.push_back(equals(
      "(" + asked.radius() + " ÷ " + plain_mm(asked.result.limit_um) + " − 1) × 100", sum.figure));
  return sum;
}

Sum room_sum(const Asked& asked) {
  const Piece& piece = asked.results.pieces[static_cast<std::size_t>(asked.result.piece)];
  Sum sum;
  sum.rule = "along the curve less the width of the piece";
  sum.figure = shown_mm(asked.result.room_um, 1);
  sum.source = kEnteredSource;
  sum.numbers = {
      equals(plain_mm(asked.result.along_um) + " − " + plain_mm(piece.width_um), sum.figure)};
  return sum;
}

}  // namespace

Sum bay_sum(const job::Job& job, const Results& results, int bay, BayFigure figure) {
  constexpr Sum (*kSums[])(const Asked&) = {radius_sum, turn_sum,  along_sum, extra_sum,
                                            creep_sum,  stop_sum,  ease_sum,  bulge_sum,
                                            limit_sum,  spare_sum, room_sum};
  if (figure >= BayFigure::mass) return load_sum(job, results, bay, figure);
  if (figure >= BayFigure::push) return force_sum(job, results, bay, figure);
  const auto at = static_cast<std::size_t>(bay);
  return kSums[static_cast<std::size_t>(figure)]({job, job.bays[at], results.bays[at], results});
}

}  // namespace pouncemark::solve

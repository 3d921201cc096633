#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"

namespace pouncemark::checks {
namespace {

/// So many screws across lie between the middle of a hole and an edge. Assumed, common practice.
constexpr Um kScrewsToEdge = 2;

Finding warn(const char* code, std::string figure) {
  Finding finding;
  finding.code = code;
  finding.severity = Severity::warn;
  finding.figure = std::move(figure);
  return finding;
}

std::string assumed(const FixingNeed& need) { return need.is_assumed ? " assumed" : ""; }

/// What helps a screw that meets the cloth. Where the cloth begins near the edge, no place between
/// them is far enough from both.
std::string off_the_cloth(Um cloth_um, const FixingNeed& need) {
  const Um bare = kScrewsToEdge * need.screw_um + need.screw_um / 2;
  if (cloth_um < bare) {
    return std::string(need.is_assumed ? "Enter where the cloth lies; a screw" : "A screw") +
           " wants " + short_mm_text(bare, 1) +
           " of bare sheet: set the cloth farther in, or cut the sheet wider.";
  }
  return need.is_assumed ? "Enter where the cloth lies, or set the fixings nearer the edge."
                         : "Set the fixings nearer the edge, or the cloth farther in.";
}

}  // namespace

Finding no_such_edge(const std::string& edge, const std::string& piece) {
  Finding finding = warn("no_such_edge", edge);
  finding.sentence = "Fixings along the " + edge + ": " + piece + " has no such edge, none is set.";
  finding.brief = "no " + edge;
  finding.change = "Name an edge that it has.";
  return finding;
}

Finding none_is_tight() {
  Finding finding = warn("none_is_tight", "0 tight");
  finding.sentence = "No fixing of this bay is tight: the sheet can wander in its slots.";
  finding.brief = "none is tight";
  finding.change = "Make one fixing tight, in the middle of an edge if it can be.";
  return finding;
}

std::optional<Finding> fixing_near_edge(Um near_um, const FixingNeed& need) {
  const Um limit = kScrewsToEdge * need.screw_um;
  if (near_um >= limit) return std::nullopt;
  Finding finding = warn("fixing_near_edge", mm_text_beside(near_um, limit));
  finding.sentence = finding.figure + " from a hole to the edge of the sheet, and two screws are " +
                     short_mm_text(limit, 1) + ": it can tear out or crack there.";
  finding.brief = finding.figure + " to the edge";
  finding.change = "Set the fixings farther in, or take a thinner screw.";
  finding.sum = "2 × " + exact_mm_text(need.screw_um) + assumed(need) + " = " +
                exact_mm_text(limit) + " (limit assumed, common practice)";
  return finding;
}

std::optional<Finding> washer_on_row(Um near_um, const FixingNeed& need) {
  if (2 * near_um >= need.washer_um) return std::nullopt;
  Finding finding = warn("washer_on_row", mm_text_beside(near_um, need.washer_um / 2));
  finding.sentence = finding.figure + " from a screw to a row of stitches: its washer, " +
                     short_mm_text(need.washer_um, 1) + " across, lies on the thread.";
  finding.brief = "washer on the row";
  finding.change = "Move the fixings away from the row, or take a smaller washer.";
  finding.sum = exact_mm_text(need.washer_um) + assumed(need) +
                " ÷ 2 = " + mm_text(need.washer_um / 2, 1) + ", over " + finding.figure;
  return finding;
}

std::optional<Finding> screw_in_cloth(Um in_um, Um cloth_um, const FixingNeed& need) {
  const Um reach = in_um + need.screw_um / 2;
  if (reach <= cloth_um) return std::nullopt;
  Finding finding = warn("screw_in_cloth", mm_text_beside(reach, cloth_um));
  if (!need.is_assumed) finding.severity = Severity::stop;
  finding.sentence = finding.figure + " from the edge the screw ends and the cloth begins at " +
                     mm_text_beside(cloth_um, reach) + assumed(need) +
                     ": no screw goes through cloth.";
  finding.brief = "screw in the cloth";
  finding.change = off_the_cloth(cloth_um, need);
  finding.sum = exact_mm_text(in_um) + " + " + exact_mm_text(need.screw_um) +
                " ÷ 2 = " + mm_text(reach, 2) + ", cloth from " + exact_mm_text(cloth_um) +
                assumed(need);
  return finding;
}

std::optional<Finding> slots_meet(Um between_um, const FixingNeed& need) {
  if (between_um >= need.screw_um) return std::nullopt;
  Finding finding = warn("slots_meet", mm_text_beside(between_um, need.screw_um));
  finding.sentence = finding.figure + " of sheet between two slots, less than a screw is across: " +
                     "they run into one another.";
  finding.brief = finding.figure + " between slots";
  finding.change = "Set the fixings wider apart, or the tight one nearer to them.";
  finding.sum =
      finding.figure + ", limit " + exact_mm_text(need.screw_um) + " (assumed: one screw)";
  return finding;
}

}  // namespace pouncemark::checks

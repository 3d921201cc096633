#include <string>

#include "engine/base/number_text.h"
#include "web/model/edits.h"

namespace pouncemark::web {
namespace {

bool is_alike(const std::array<Um, 2>& ends) { return ends[0] == ends[1]; }

std::string changed(const std::string& what, Um was, Um is) {
  return what + ": " + exact_mm_text(was) + " to " + exact_mm_text(is);
}

std::string lap_ends_words(const job::Section& section, const std::string& of, Measure measure,
                           Um was, Um is) {
  const bool both = section.lap_rows && is_alike(section.lap_rows->stitch.kept_clear_um);
  const bool along =
      both && section.lap_rows->staple.kept_clear_um == section.lap_rows->stitch.kept_clear_um;
  const std::string which = both                                        ? "both ends"
                            : measure == Measure::lap_kept_clear_bottom ? "the bottom end"
                                                                        : "the top end";
  return changed("Kept clear at " + which + " of the joining rows" + of, was, is) +
         (along ? "; their staples go along" : "; their staples stay");
}

}  // namespace

std::string action_words(const job::Job& job, const solve::Results& results, Place place,
                         Measure measure, Um was, Um is) {
  const std::string of = " of " + name_of(results, place);
  const job::Section* section = section_at(job, results, place);
  const bool one_of_several = section != nullptr && section->count > 1;
  const std::string of_all = one_of_several ? " of " + name_of(results, {place.piece, -1}) : of;
  switch (measure) {
    case Measure::length:
      return changed("Length" + of_all, was, is);
    case Measure::width:
      return changed("Width" + of, was, is);
    case Measure::lap:
      return changed("Lap" + of_all, was, is);
    case Measure::in_from_edge:
      return changed((section == nullptr ? "Rows" : "Staple rows") + of + ", in from the edge", was,
                     is);
    case Measure::stitch_in_from_edge:
      return changed("Stitch rows" + of + ", in from the edge", was, is);
    case Measure::spacing:
      return changed("Spacing wanted" + of, was, is);
    case Measure::stitch:
      return changed("Stitch" + of, was, is);
    case Measure::fold_radius:
      return changed("Inside radius of the fold" + of_all, was, is);
    case Measure::flange:
      return changed("Flange" + of_all, was, is);
    case Measure::corner_clear:
      return changed("Rows" + of + " stop short at a corner, clear of the hinge row", was, is);
    case Measure::lap_spacing:
      return changed("Spacing wanted of the lap staples" + of, was, is);
    case Measure::lap_kept_clear_bottom:
    case Measure::lap_kept_clear_top:
      return lap_ends_words(*section_at(job, results, place), of, measure, was, is);
    default:
      break;
  }
  const bool of_stitches =
      measure == Measure::stitch_clear_bottom || measure == Measure::stitch_clear_top;
  const bool at_bottom =
      measure == Measure::kept_clear_bottom || measure == Measure::stitch_clear_bottom;
  const bool both = of_stitches ? measured(job, results, place, Measure::stitch_clear_bottom) ==
                                      measured(job, results, place, Measure::stitch_clear_top)
                                : ends_move_together(job, results, place);
  const std::string which = both ? "both ends" : at_bottom ? "the bottom end" : "the top end";
  if (of_stitches) return changed("Stitch rows" + of + ", kept clear at " + which, was, is);
  const bool along = stitch_rows_go_along(job, results, place);
  return changed("Kept clear at " + which + of, was, is) +
         (along ? "; the stitch rows go along" : "; the stitch rows stay");
}

}  // namespace pouncemark::web

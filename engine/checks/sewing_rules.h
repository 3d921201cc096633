#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "engine/checks/finding.h"
#include "engine/geometry/units.h"
#include "engine/material/fields.h"

/// Rules about stack, needle, thread and machine, each in a file of its own named after it. As with
/// the others, the caller fills in `place` and `piece`. Values of materials stand in thousandths.
namespace pouncemark::checks {

/// A blade of so many hundredths of a millimetre, and the thread in its eye.
struct ThreadInNeedle {
  int needle_size = 0;
  std::int64_t tex_thousandths = 0;
  std::int64_t density_thousandths = 0;  ///< of the fibre, g/cm³
};

/// Thread across at a packing of 0.60 by the blade, in thousandths.
std::int64_t eye_fill_permille(const ThreadInNeedle& one);
/// The most that is not warned of, and the packing it is measured at.
inline constexpr std::int64_t kMostEyePermille = 400;
inline constexpr std::int64_t kEyePacking = 600;

/// Caution 17: warn where the thread is over 40 % of the blade, exactly 40 % passes; note where the
/// blade is less than 2.6 or more than 3.7 threads across and nothing is warned of.
std::optional<Finding> thread_in_eye(const ThreadInNeedle& one);
/// The blade is so many threads across, and not what pairs in use have.
bool is_odd_pair(const ThreadInNeedle& one);

/// Sheet left between holes by the stitch, in thousandths; 0 where holes meet.
std::int64_t sheet_left_permille(Um stitch_um, int needle_size);
inline constexpr std::int64_t kLeastSheetPermille = 650;

/// Caution 2, warn: less than 65 % of the sheet is left between holes; exactly 65 % passes.
std::optional<Finding> sheet_left(Um stitch_um, int needle_size);

/// Caution 12, warn: the leg does not go through the stack with 2 to spare for each clinch.
std::optional<Finding> staple_leg(Um leg_um, Um stack_um);

/// Warn: the foot does not lift over the stack, the highest step and 2 to spare.
std::optional<Finding> foot_lift(Um lift_um, Um stack_um, Um step_um);

/// Caution 7, warn: a point whose slit lies along the row.
Finding cutting_along();

/// Caution 20, warn: over 400 stitches a minute. `sheet` is the sheet's name, `softens` its °C.
std::optional<Finding> too_fast(std::int64_t stitches_a_minute, std::string_view sheet,
                                std::int64_t softens);

/// Caution 23, warn: the machine is not set as the chosen trial seam was, or the stitch asked for
/// is not the one that was approved.
std::optional<Finding> needle_not_as_approved(int needle_size, int approved);
std::optional<Finding> thread_not_as_approved(int tex, int approved);
std::optional<Finding> stitch_not_as_approved(Um stitch_um, Um approved_um);

/// Warn: the chosen trial seam whitened or cracked the sheet. Needs one of them.
Finding trial_marred(bool whitens, bool cracks);
/// Note: trial seams there are, but none is chosen, or no one has signed the chosen one (hold point
/// H3).
Finding trial_not_chosen();
Finding trial_not_signed();

/// Caution 18, warn: the label names a ticket and the thread was not weighed.
std::optional<Finding> tex_from_ticket(std::string_view label, bool is_weighed, int tex);

/// Warn: a sheet called PETG that is as stiff as stretched film. `of` is "leaves" or "backing".
std::optional<Finding> stiff_film(material::Sheet sheet, std::int64_t modulus, std::string_view of);

/// Warn: a value outside what is usual for its field; exactly at either end passes.
std::optional<Finding> unusual_value(const material::FieldRow& row, std::int64_t value);
/// Warn: sheet thicker than 20. `of` as above.
std::optional<Finding> unusual_thickness(Um thickness_um, std::string_view of);

/// Caution 22, warn: one row takes more thread than a bobbin gives.
std::optional<Finding> bobbin_too_short(Um row_um, Um usable_um);

/// Caution 33, warn: film is left on while the row is sewn.
Finding film_under_row();

/// Caution 15, warn: staples that stay and are not stainless.
Finding staple_may_rust();

/// Warn: the stack cannot be worked out, because `missing` ("the thickness of the backing") was not
/// entered.
Finding stack_not_known(const std::string& missing);

/// Warn: a row that runs just along the edge of a ply, with so much on either side.
Finding row_along_a_ply(Um left_um, Um right_um);

/// "64.9 %": thousandths as a percentage.
std::string percent_text(std::int64_t permille);

}  // namespace pouncemark::checks

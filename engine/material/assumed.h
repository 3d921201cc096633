#pragma once

#include "engine/geometry/units.h"

/// Floor 2, material: records of sheet, cloth, thread, needle, staple and machine with the source
/// of every value. Knows no piece and no job. For now it holds the values a job may leave out; each
/// is ASSUMED and says so where it is used.
namespace pouncemark::material {

/// Needle size 140: blade 1.40 across. Common practice for thread tex 135; the trial seam decides.
inline constexpr int kAssumedNeedleSize = 140;
/// Thread tex 135. Common practice.
inline constexpr int kAssumedThreadTex = 135;
/// Thread left for tails per row, both ends and some to spare. Common practice.
inline constexpr Um kAssumedTailsUm = 300'000;
/// Middle of the textile to the middle of the sheet. Assumed.
inline constexpr Um kAssumedSlipDistanceUm = 1'500;
/// Crown of a staple, along the row. Common practice.
inline constexpr Um kAssumedCrownUm = 12'000;
/// Thickness of a staple's wire. Common practice.
inline constexpr Um kAssumedWireUm = 500;
/// Half a presser foot. Common practice; measure yours.
inline constexpr Um kAssumedHalfFootUm = 7'000;
/// How far a foot strays from its line. Assumed.
inline constexpr Um kAssumedFootToleranceUm = 2'000;
/// How far a cut sleeve may be off its width, either way. Common practice.
inline constexpr Um kAssumedWidthToleranceUm = 1'000;
/// How far a lap may be off, either way. Common practice.
inline constexpr Um kAssumedLapToleranceUm = 500;
/// A row wants this many needle blades of sheet outside it. Assumed limit.
inline constexpr int kAssumedBladesToEdge = 8;
/// Two rows side by side want this many needle blades between them. Assumed limit.
inline constexpr int kAssumedBladesBetweenRows = 5;
/// A row that crosses another without sharing a hole wants to end this far from it. Assumed limit.
inline constexpr Um kAssumedCornerClearUm = 15'000;
/// Cloth in a sleeve ends so far in from its long edges and its ends: under the side row, clear of
/// the joining row. Common practice.
inline constexpr Um kAssumedSleeveClothInUm = 12'000;
/// Cloth on a panel ends so far in from the sewn edges. Common practice.
inline constexpr Um kAssumedPanelClothInUm = 8'000;
/// The same from the fly side, so that it has room to creep. Common practice.
inline constexpr Um kAssumedClothInFromFlySideUm = 12'000;
/// Width of the hem turned under along the edges of a panel's cloth. Assumed.
inline constexpr Um kAssumedHemUm = 20'000;
/// Width of the adhesive along the sewn edges of a panel. Common practice.
inline constexpr Um kAssumedAdhesiveBandUm = 30'000;
/// A row may hold cloth that wants to move up to this far. Assumed limit.
inline constexpr Um kAssumedSlipLimitUm = 500;
/// Woven cloth gives this much where it is held point by point, thousandths of a percent. Assumed.
inline constexpr std::int64_t kAssumedEaseLimit = 500;
/// Two measures of one length along a bay may differ this much. Assumed limit.
inline constexpr Um kAssumedTapeLimitUm = 2'000;
/// A reading at a station may be this far out, either way. Assumed.
inline constexpr Um kAssumedReadingUm = 1'000;
/// Stations nearer than this on the whole ask for wider steps: 200 is what is asked for. Assumed.
inline constexpr Um kAssumedStationStepUm = 150'000;
/// What one person pushes steadily, thousandths of a newton: 70 N. Assumed, the usual guideline.
inline constexpr std::int64_t kAssumedPushMn = 70'000;
/// So many people may be asked to lift a bay before it is said. Assumed.
inline constexpr std::int64_t kAssumedHands = 2;
/// A hanging day may be this far off the temperature planned, thousandths of a degree. Assumed.
inline constexpr std::int64_t kAssumedOffPlanMk = 5'000;
/// Timber along its grain, thousandths of a millionth of its length a degree. Tables: 3 to 5.
inline constexpr std::int64_t kAssumedTimberGrowth = 5'000;

}  // namespace pouncemark::material

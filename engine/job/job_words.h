#pragma once

#include <string_view>
#include <vector>

/// The words of the job file, in the order of the enumerators they stand for. Reader and writer
/// share them.
namespace pouncemark::job::words {

inline constexpr std::string_view kFormat = "pouncemark-job";
inline constexpr int kVersion = 1;

inline const std::vector<std::string_view> kSpacingFrom = {"centre_to_centre", "clear_gap"};
inline const std::vector<std::string_view> kRule = {"even", "exact"};
inline const std::vector<std::string_view> kLeftOver = {"end", "split", "extra_point"};
/// `not_said` has no word: the member is left out. The rest start at StaplesOut::before_the_row.
inline const std::vector<std::string_view> kStaples = {"before_the_row", "as_the_foot_comes",
                                                       "after_the_row", "stay"};
inline const std::vector<std::string_view> kMake = {"two_leaf", "folded", "round"};
inline const std::vector<std::string_view> kSide = {"left", "right"};
inline const std::vector<std::string_view> kSideSeams = {"separate", "shared"};
inline const std::vector<std::string_view> kCorners = {"share_hole", "stop_short"};
inline const std::vector<std::string_view> kFace = {"bulging", "hollow"};
inline const std::vector<std::string_view> kStands = {"empty"};
inline const std::vector<std::string_view> kStackFrom = {"plies"};
inline const std::vector<std::string_view> kRowsOf = {"side_rows", "lap_rows", "panel_rows"};
/// As material::Standing; `typed` is left out.
inline const std::vector<std::string_view> kStanding = {"assumed", "standard", "supplier",
                                                        "measured_here"};
inline const std::vector<std::string_view> kPanelEdge = {"hinge_side", "fly_side", "top", "bottom"};
/// Those of a panel, and the long edges of a section.
inline const std::vector<std::string_view> kFixingEdge = {"hinge_side", "fly_side", "top",
                                                          "bottom",     "left",     "right"};
inline const std::vector<std::string_view> kTight = {"first", "middle", "last", "none"};
inline const std::vector<std::string_view> kTimberLies = {"along_grain", "across_grain"};

}  // namespace pouncemark::job::words

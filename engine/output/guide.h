#pragma once

#include <array>
#include <string_view>

namespace pouncemark::output {

/// What may be printed. Cards come last, from the seam card on.
enum class Guide {
  test_page,
  full_face,
  tick_list,
  drilling_strip,
  seam_card,
  panel_card,
  trial_card,
  machine_card,
  hanging_card,
};

/// What each is called on the command line, in the order of Guide.
inline constexpr std::array<std::string_view, 9> kGuideWords = {
    "test-page",  "full-face",  "tick-list",    "drilling-strip", "seam-card",
    "panel-card", "trial-card", "machine-card", "hanging-card"};

/// Cards are read, not measured: no correction is applied to them, and bars refuse none.
constexpr bool is_card(Guide guide) { return guide >= Guide::seam_card; }

/// Guides of the whole job are one file, whatever its pieces.
constexpr bool is_of_whole_job(Guide guide) {
  return guide == Guide::test_page || guide == Guide::drilling_strip || guide > Guide::panel_card;
}

/// Cards to fill in take a whole A4, the others half of one.
constexpr bool is_page_card(Guide guide) {
  return guide == Guide::trial_card || guide == Guide::machine_card;
}

}  // namespace pouncemark::output

#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "web/model/making.h"
#include "web/model/solved.h"

/// What it takes to bend what hangs in a bay, ply by ply.
namespace pouncemark::web {

/// One line of the list: what is bent, how thick, by the small-bend formula, exact.
struct ForceLine {
  std::array<std::string, 4> words;
  bool is_shown = false;  ///< of its two figures one is what people have to push
};

struct ForceView {
  std::vector<ForceLine> lines;
  bool is_exact = false;  ///< the exact figure is the one shown
  std::vector<std::string> said;
  bool holds_panel = false;
  std::string facing;  ///< thickness of the panel's clear front sheet; empty: none
};
ForceView force_view(const Solved& now, int bay);

/// Thickness of the clear front sheet of the panel in that bay; an empty text takes it away.
Made with_facing(const Solved& now, int bay, std::string_view typed);

}  // namespace pouncemark::web

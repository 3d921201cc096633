#pragma once

#include <string>

#include "engine/geometry/units.h"
#include "web/model/paper_choice.h"

namespace pouncemark::web {

/// What a bar says about the printer: "short 0.4 %", "long 0.3 %", "true", "not measured", or
/// that the sheet is of no use.
std::string bar_words(Um nominal_um, Um measured_um);

/// Over 2 % out: no guide may be printed from it.
bool bar_is_refused(Um nominal_um, Um measured_um);

/// A bar of page 0 was measured and is refused.
bool printer_is_refused(const PaperChoice& choice);

/// Both bars of page 0 were measured and neither is refused.
bool printer_is_proved(const PaperChoice& choice);

/// What a bar more than 0.25 % out means on a row of 2400, and what is done about it; empty where
/// both bars are nearer. The worse of the two is said. Only of a printer that is proved.
std::string bar_caution(const PaperChoice& choice);

}  // namespace pouncemark::web

#pragma once

#include <string>

#include "engine/drawing/drawing.h"
#include "engine/sheets/paper.h"

namespace pouncemark::sheets {

/// Page 0: a solid bar each way, what to do with it, and a table of what the rule may say. Never
/// corrected.
drawing::Drawing test_page(const Paper& paper, const std::string& job_name,
                           const std::string& checksum);

}  // namespace pouncemark::sheets

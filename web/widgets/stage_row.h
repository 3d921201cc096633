#pragma once

#include <array>
#include <optional>
#include <string>

#include "web/widgets/brush.h"
#include "web/widgets/hand.h"

namespace pouncemark::web {

/// The eight stages in the order of the work.
enum class Stage { measure, make, sew, curve, buy, print, hang, record };
inline constexpr int kStages = 8;

/// The verb on screen, and the same in small letters for ids.
const char* stage_verb(Stage stage);
std::string stage_id(Stage stage);

struct StageRowLook {
  Stage open = Stage::make;
  std::array<std::string, kStages> states;  ///< "done", "2 open", "changing", "not begun"
  std::string job_name;
};

/// What was pressed in the row: a stage, the name that leads back to the start page, or the list of
/// keys.
struct StagePress {
  std::optional<Stage> stage;
  bool is_start = false;
  bool is_keys = false;
};

/// The stages as stitches between nine pricked holes: thread where the work is done, the needle at
/// the one that is open, whose card hangs down out of the row. Gives what was pressed.
StagePress stage_row(const Brush& brush, Hand& hand, float width, const StageRowLook& look);

float stage_row_height();

}  // namespace pouncemark::web

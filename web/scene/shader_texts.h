#pragma once

#include "web/scene/scene.h"

namespace pouncemark::web {

/// The shaders as they stand in shaders/, built into the program.
ShaderTexts shader_texts();

}  // namespace pouncemark::web

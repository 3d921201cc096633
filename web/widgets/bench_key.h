#pragma once

#include <imgui.h>

namespace pouncemark::web {

/// Dear ImGui's key for the page's own number: a sign, letters as capitals, and from 256 on the
/// keys without a sign. ImGuiKey_None where the bench knows no such key.
ImGuiKey bench_key(int number);

}  // namespace pouncemark::web

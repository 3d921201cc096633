#include "web/widgets/bench_key.h"

#include <algorithm>
#include <array>

namespace pouncemark::web {
namespace {

struct Key {
  int number;
  ImGuiKey key;
};

// The sign ? has no key of its own there, and is not the slash that it is written with.
constexpr std::array kKeys = {
    Key{256, ImGuiKey_Tab},          Key{257, ImGuiKey_LeftArrow},  Key{258, ImGuiKey_RightArrow},
    Key{259, ImGuiKey_UpArrow},      Key{260, ImGuiKey_DownArrow},  Key{261, ImGuiKey_PageUp},
    Key{262, ImGuiKey_PageDown},     Key{263, ImGuiKey_Home},       Key{264, ImGuiKey_End},
    Key{265, ImGuiKey_Insert},       Key{266, ImGuiKey_Delete},     Key{267, ImGuiKey_Backspace},
    Key{268, ImGuiKey_Enter},        Key{269, ImGuiKey_Escape},     Key{' ', ImGuiKey_Space},
    Key{',', ImGuiKey_Comma},        Key{'-', ImGuiKey_Minus},      Key{'.', ImGuiKey_Period},
    Key{'/', ImGuiKey_Slash},        Key{'?', ImGuiKey_F24},        Key{'+', ImGuiKey_KeypadAdd},
    Key{'=', ImGuiKey_Equal},        Key{';', ImGuiKey_Semicolon},  Key{'[', ImGuiKey_LeftBracket},
    Key{']', ImGuiKey_RightBracket}, Key{'\\', ImGuiKey_Backslash},
};

}  // namespace

ImGuiKey bench_key(int number) {
  if (number >= 'A' && number <= 'Z') return static_cast<ImGuiKey>(ImGuiKey_A + (number - 'A'));
  if (number >= '0' && number <= '9') return static_cast<ImGuiKey>(ImGuiKey_0 + (number - '0'));
  const auto* found = std::find_if(kKeys.begin(), kKeys.end(),
                                   [number](const Key& key) { return key.number == number; });
  return found == kKeys.end() ? ImGuiKey_None : found->key;
}

}  // namespace pouncemark::web

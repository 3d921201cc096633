#include "engine/checks/needle_blades.h"

#include "engine/base/number_text.h"

namespace pouncemark::checks {

std::optional<ShortOfBlades> short_of_blades(Um distance_um, int needle_size, int blades) {
  const Um blade_um = Um{needle_size} * 10;
  const Um needed = blade_um * blades;
  if (distance_um >= needed) return std::nullopt;
  const std::string count = std::to_string(blades);
  const std::string total = mm_text(needed, 1);
  return ShortOfBlades{mm_text_beside(needed - distance_um, 0), mm_text_beside(distance_um, needed),
                       total, count + " needle blades are " + total,
                       count + " × " + mm_text(blade_um, 2) + " = " + total + " (limit assumed)"};
}

}  // namespace pouncemark::checks

#include "engine/frame/hands.h"

#include "engine/base/insist.h"
#include "engine/geometry/units.h"

namespace pouncemark::frame {

std::int64_t people_needed(std::int64_t force_mn, std::int64_t each_mn) {
  INSIST(force_mn >= 0 && each_mn > 0);
  return divide_up(force_mn, each_mn);
}

}  // namespace pouncemark::frame

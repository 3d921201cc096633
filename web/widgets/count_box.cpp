#include "web/widgets/count_box.h"

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/making.h"

namespace pouncemark::web {

std::optional<int> count_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, int count) {
  TextLook box;
  box.shown = count_text(count);
  box.text = std::to_string(count);
  box.name = "count of sleeves";
  const TextEvent event = text_box(brush, hand, open, id, area, box);
  const auto if_other = [count](int is) {
    return is == count ? std::nullopt : std::optional<int>(is);
  };
  if (event.finished) {
    CountEntry entry = read_count(*event.finished);
    if (entry.count > 0) {
      close_box(open);
      return if_other(entry.count);
    }
    refuse_text(open, hand, std::move(entry.sentence));
  }
  if (event.step == 0) return std::nullopt;
  const int from = event.is_open ? read_count(open.text.data()).count : count;
  if (from == 0) return std::nullopt;
  const int is = std::clamp(from + event.step, 1, kMostSleevesOfSection);
  if (event.is_open) open_box(open, id, std::to_string(is));
  return if_other(is);
}

}  // namespace pouncemark::web

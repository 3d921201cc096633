#include "engine/sheets/list_flow.h"

#include <algorithm>
#include <utility>

#include "engine/base/insist.h"

namespace pouncemark::sheets {
namespace {

/// Fewer levels than these are not left at the foot of a column when a block is parted.
constexpr std::int64_t kLeastLevels = 3;

Um height_of(const std::vector<Strip>& strips) {
  Um high = 0;
  for (const Strip& strip : strips) high += strip.high_um;
  return high;
}

std::int64_t levels_of(const Block& block, std::int64_t entries) {
  return divide_up(entries, block.columns);
}

/// The pen's place while blocks are laid down.
class Flow {
 public:
  explicit Flow(const FlowRoom& room) : room_(room) {}

  void lay(std::size_t index, const Block& block) {
    if (used_ > 0 && !may_begin_here(block)) next_column();
    Placed at{index, page_, column_, used_, true, false, false, 0, 0, 0};
    Um top = height_of(block.head);
    while (!place(block, top, &at)) {
      next_column();
      at = {index, page_, column_, 0, false, true, false, at.first + at.entries, 0, 0};
      top = block.again.high_um;
    }
    used_ += room_.gap_um;
  }

  std::vector<Placed> placed;

 private:
  Um left() const { return room_.column_high_um - used_; }

  bool may_begin_here(const Block& block) const {
    const std::int64_t levels = levels_of(block, block.entries);
    const Um head = height_of(block.head);
    const Um whole = head + levels * block.entry_high_um + height_of(block.tail);
    if (whole <= left()) return true;
    if (levels <= kLeastLevels || (block.stays_whole && whole <= room_.column_high_um)) {
      return false;
    }
    return head + kLeastLevels * block.entry_high_um <= left();
  }

  /// Lays down what fits under `top`; true when the block is finished. An empty column always takes
  /// something.
  bool place(const Block& block, Um top, Placed* at) {
    const Um tail = height_of(block.tail);
    const std::int64_t waiting = block.entries - at->first;
    const std::int64_t levels = levels_of(block, waiting);
    const bool is_fresh = used_ == 0;
    std::int64_t fit = block.entry_high_um > 0 ? (left() - top) / block.entry_high_um : levels;
    if (is_fresh) fit = std::max<std::int64_t>(fit, 1);
    at->levels = std::min(std::max<std::int64_t>(fit, 0), levels);
    const bool tail_fits = top + levels * block.entry_high_um + tail <= left();
    const bool is_bare = waiting == 0 && is_fresh;
    at->has_tail = at->levels == levels && (tail_fits || is_bare);
    if (at->levels == levels && !at->has_tail && levels > 1) --at->levels;
    at->entries = std::min(at->levels * block.columns, waiting);
    used_ += top + at->levels * block.entry_high_um + (at->has_tail ? tail : 0);
    placed.push_back(*at);
    return at->has_tail;
  }

  void next_column() {
    used_ = 0;
    if (++column_ < room_.columns) return;
    column_ = 0;
    ++page_;
  }

  const FlowRoom& room_;
  std::int64_t page_ = 0;
  int column_ = 0;
  Um used_ = 0;
};

void move(drawing::Spot by, std::vector<drawing::PathStep>* steps) {
  for (drawing::PathStep& step : *steps) {
    for (drawing::Spot* spot : {&step.to, &step.a, &step.b}) {
      spot->x += by.x;
      spot->y += by.y;
    }
  }
}

/// Draws strips under one another; returns the level under the last.
Um add_strips(const std::vector<Strip>& strips, drawing::Spot corner, drawing::Drawing* picture) {
  for (const Strip& strip : strips) {
    corner.y -= strip.high_um;
    add_moved(strip.picture, corner, picture);
  }
  return corner.y;
}

}  // namespace

std::vector<Placed> flowed(const std::vector<Block>& blocks, const FlowRoom& room) {
  INSIST(room.columns > 0 && room.column_high_um > 0);
  Flow flow(room);
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    INSIST(blocks[i].columns > 0);
    flow.lay(i, blocks[i]);
  }
  return std::move(flow.placed);
}

void add_placed(const Block& block, const Placed& placed, drawing::Spot corner,
                drawing::Drawing* picture) {
  if (placed.has_head) corner.y = add_strips(block.head, corner, picture);
  if (placed.is_continued) corner.y = add_strips({block.again}, corner, picture);
  for (std::int64_t i = 0; i < placed.entries; ++i) {
    const std::int64_t column = i / placed.levels;
    const std::int64_t level = i % placed.levels;
    add_moved(
        block.entry(placed.first + i),
        {corner.x + column * block.entry_wide_um, corner.y - (level + 1) * block.entry_high_um},
        picture);
  }
  corner.y -= placed.levels * block.entry_high_um;
  if (placed.has_tail) add_strips(block.tail, corner, picture);
}

void add_moved(const drawing::Drawing& from, drawing::Spot by, drawing::Drawing* picture) {
  for (drawing::Item item : from.items) {
    if (auto* stroke = std::get_if<drawing::Stroke>(&item)) {
      move(by, &stroke->steps);
    } else if (auto* fill = std::get_if<drawing::Fill>(&item)) {
      move(by, &fill->steps);
    } else if (auto* text = std::get_if<drawing::Text>(&item)) {
      text->at.x += by.x;
      text->at.y += by.y;
    } else if (auto* clip = std::get_if<drawing::ClipStart>(&item)) {
      for (drawing::Spot* spot : {&clip->box.low, &clip->box.high}) {
        spot->x += by.x;
        spot->y += by.y;
      }
    }
    picture->items.push_back(std::move(item));
  }
}

}  // namespace pouncemark::sheets

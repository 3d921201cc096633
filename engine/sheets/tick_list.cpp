#include "engine/sheets/tick_list.h"

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/sheets/full_face.h"
#include "engine/sheets/list_page.h"
#include "engine/sheets/tick_blocks.h"

namespace pouncemark::sheets {
namespace {

constexpr Um kBetweenBlocksUm = 5'000;

ListTitle title_of(const TickListSet& set) {
  const solve::Piece& piece = set.results.pieces[static_cast<std::size_t>(set.piece)];
  ListTitle title;
  title.name = set.job.name + ", " + spoken_name(piece);
  title.what = "tick list, " + short_mm_text(piece.width_um, 1) + " × " +
               short_mm_text(piece.length_um, 1) + ". Figures, not a true-size guide.";
  title.checksum = set.checksum;
  return title;
}

}  // namespace

std::int64_t tick_list_pages(const job::Job& job, const solve::Results& results, int piece,
                             const Paper& paper) {
  return TickList({job, results, piece, paper, std::string(kAnyChecksum)}).pages();
}

TickList::TickList(const TickListSet& set) : set_(set) {
  const drawing::Box body = list_body(set_.paper, title_of(set_));
  const ListColumns columns = list_columns(set_.paper);
  const Um high = body.high.y - body.low.y;
  blocks_ = tick_blocks({set_.results, set_.piece, columns.wide_um, high});
  placed_ = flowed(blocks_, {columns.count, high, kBetweenBlocksUm});
  for (const Placed& placed : placed_) pages_ = placed.page + 1;
}

drawing::Drawing TickList::page(std::int64_t index) const {
  INSIST(index >= 0 && index < pages_);
  drawing::Drawing picture;
  const ListTitle title = title_of(set_);
  add_list_page(set_.paper, title, index + 1, pages_, &picture);
  const drawing::Box body = list_body(set_.paper, title);
  const ListColumns columns = list_columns(set_.paper);
  for (const Placed& placed : placed_) {
    if (placed.page != index) continue;
    const drawing::Spot corner{body.low.x + placed.column * columns.pitch_um,
                               body.high.y - placed.from_top_um};
    add_placed(blocks_[placed.block], placed, corner, &picture);
  }
  return picture;
}

}  // namespace pouncemark::sheets

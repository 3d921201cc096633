#include <algorithm>

#include "web/host/host.h"
#include "web/panels/page.h"
#include "web/widgets/slip.h"
#include "web/widgets/tag.h"

namespace pouncemark::web {

void failed_open_panel(Page& page) {
  const auto& failed = page.bench.failed_open();
  if (!failed) return;
  const Brush& brush = page.brush;
  const float width = std::min(620.0f, page.layout.width - 2 * kPageEdge);
  const float inner = width - 56;
  const Ink ink{Role::verb, false, kInk};
  const auto lines = broken(brush, failed->sentence, inner, ink.role, false);
  const float height = 28 + tag_height() + 16 +
                       brush.pitch(ink.role) * static_cast<float>(lines.size()) + 12 +
                       brush.pitch(Role::text) + 24 + button_height() + 28;
  const Area card =
      area_at((page.layout.width - width) / 2, (page.layout.height - height) / 2, width, height);
  slip_paper(brush, card);
  brush.frame(card, kStop, 3);
  const float left = card.left + 28;
  const float right = tag(brush, {left, card.top + 28}, TagKind::stop);
  brush.words({right + 12, card.top + 28 + tag_height() / 2 + brush.rise(Role::text) / 2},
              failed->file.empty() ? "This could not be opened" : failed->file + " was not opened",
              {Role::text, true, kInk});
  float y = card.top + 28 + tag_height() + 16 + brush.rise(ink.role) + 4;
  y = brush.paragraph({left, y}, failed->sentence, inner, ink);
  const std::string untouched =
      page.bench.has_job() ? "Your open job is untouched." : "Nothing was changed.";
  brush.words({left, y + 8}, untouched, {Role::text, false, kSoft});
  const float top = card.bottom - 28 - button_height();
  const float first = button_width(brush, "Choose another file");
  if (button(brush, page.hand, "failed.choose", area_at(left, top, first, button_height()),
             "Choose another file", {ButtonKind::main})) {
    page.later([] { host::choose_file(); });
  }
  const float second = button_width(brush, "Put away");
  const bool away = button(brush, page.hand, "failed.away",
                           area_at(left + first + 8, top, second, button_height()), "Put away");
  if (away || page.hand.escape()) page.later([&bench = page.bench] { bench.put_failure_away(); });
  page.hand.note("failed.sentence", {left, card.top, card.right, y},
                 failed->sentence + " " + untouched);
}

}  // namespace pouncemark::web

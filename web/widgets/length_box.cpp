#include "web/widgets/length_box.h"

#include <utility>

#include "engine/base/number_text.h"

namespace pouncemark::web {
namespace {

constexpr Um kStep = 1000;

std::optional<Um> if_other(Um um, const BoxLook& look) {
  return um == look.um ? std::nullopt : std::optional<Um>(um);
}

}  // namespace

std::optional<Um> length_box(const Brush& brush, Hand& hand, OpenBox& open, std::string_view id,
                             const Area& area, const BoxLook& look) {
  TextLook box;
  box.shown = look.figure;
  box.text = exact_mm_text(look.um);
  box.name = look.name;
  box.is_changed = look.is_changed;
  box.colour = look.colour;
  const TextEvent event = text_box(brush, hand, open, id, area, box);
  if (event.finished) {
    Entry entry = read_entry(*event.finished, look.limits);
    if (entry.um) {
      close_box(open);
      return if_other(*entry.um, look);
    }
    refuse_text(open, hand, std::move(entry.sentence));
  }
  if (event.step == 0) return std::nullopt;
  const Um by = event.step * kStep;
  if (!event.is_open) return if_other(stepped(look.um, by, look.limits), look);
  const Entry entry = read_entry(open.text.data(), look.limits);
  if (!entry.um) return std::nullopt;
  const Um um = stepped(*entry.um, by, look.limits);
  open_box(open, id, exact_mm_text(um));
  return if_other(um, look);
}

}  // namespace pouncemark::web

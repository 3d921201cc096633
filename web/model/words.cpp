#include "web/model/words.h"

#include <cstddef>

#include "engine/base/number_text.h"

namespace pouncemark::web {

std::string box_text(Um um) {
  constexpr Um kBareFrom = 100'000;
  if (um >= kBareFrom && um % 1000 == 0) return mm_text(um, 0);
  return mm_text(um, 1);
}

std::string with_capital(std::string words) {
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
    words.front() = static_cast<char>(words.front() - ('a' - 'A'));
  }
  return words;
}

std::string shortened(std::string_view words, std::size_t signs) {
  const auto starts = [&words](std::size_t at) {
    return (static_cast<unsigned char>(words[at]) & 0xC0u) != 0x80u;
  };
  std::size_t count = 0;
  std::size_t last = 0;
  for (std::size_t at = 0; at < words.size(); ++at) {
    if (!starts(at)) continue;
    if (++count == signs) last = at;
    if (count > signs) return std::string(words.substr(0, last)) + "\xE2\x80\xA6";
  }
  return std::string(words);
}

std::string size_words(const solve::Results& results, Place place) {
  const solve::Piece& piece = results.pieces[static_cast<std::size_t>(place.piece)];
  Um width = piece.width_um;
  if (place.sleeve >= 0) width = piece.sleeves[static_cast<std::size_t>(place.sleeve)].width_um;
  return short_mm_text(width, 1) + " " + kTimes + " " + short_mm_text(piece.length_um, 1);
}

}  // namespace pouncemark::web

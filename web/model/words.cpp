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

std::string size_words(const solve::Results& results, Place place) {
  const solve::Piece& piece = results.pieces[static_cast<std::size_t>(place.piece)];
  Um width = piece.width_um;
  if (place.sleeve >= 0) width = piece.sleeves[static_cast<std::size_t>(place.sleeve)].width_um;
  return short_mm_text(width, 1) + " " + kTimes + " " + short_mm_text(piece.length_um, 1);
}

}  // namespace pouncemark::web

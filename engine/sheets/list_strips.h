#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/sheets/list_flow.h"

/// The parts lists are set from: lines of words, boxes to tick, blocks of plain text. Text on paper
/// is 3.8 or larger, so that it is read at the bench (judged by eye).
namespace pouncemark::sheets {

inline constexpr Um kListTextUm = 3'800;
inline constexpr Um kListTextPitchUm = 5'400;
inline constexpr Um kTickBoxUm = 4'000;

/// How a line of words is set.
struct WordStyle {
  Um size_um = kListTextUm;
  Um pitch_um = kListTextPitchUm;
  drawing::Weight weight = drawing::Weight::regular;
};
inline constexpr WordStyle kPlainWords{};
inline constexpr WordStyle kBoldWords{kListTextUm, kListTextPitchUm, drawing::Weight::bold};
inline constexpr WordStyle kTitleWords{6'000, 8'500, drawing::Weight::bold};

/// One line of words on a picture, from `at` to the right, or up to `at` with Align::right.
void add_words(drawing::Spot at, const WordStyle& style, drawing::Align align, std::string words,
               drawing::Drawing* picture);

/// A small empty square to tick; its lower left corner stands at `low`.
void add_tick_box(drawing::Spot low, drawing::Drawing* picture);

/// Words wrapped into strips, a line each.
std::vector<Strip> word_strips(std::string_view words, const WordStyle& style, Um wide_um);

/// Adds the strips of `more` under those of `strips`.
void append(std::vector<Strip> more, std::vector<Strip>* strips);

/// Nothing but room.
Strip empty_strip(Um high_um);

/// A block of plain lines under a title, that may be parted between any two; no title where it is
/// empty.
Block text_block(std::string_view title, std::vector<Strip> lines, Um wide_um);

}  // namespace pouncemark::sheets

#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/solve/sums.h"
#include "web/model/edits.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// A part of the headline: large figures carry the pen colour when they were just changed.
struct HeadlinePart {
  std::string words;
  bool large = false;
  bool changed = false;
  std::string id = {};           ///< of the slip's line with its sum: "points"; empty: no figure
  std::string short_words = {};  ///< where the sentence does not fit; empty: the same
};

/// What stands over the bench: the sentence with the large figures, and why.
struct Headline {
  std::vector<HeadlinePart> parts;
  std::string because;
};

/// The sentence for the place; `before` is what stood before the last action, or nullptr.
Headline headline(const Solved& now, const Solved* before, Place place);

/// The headline as one run of words, for the text mirror.
std::string plain_words(const Headline& headline);

/// What a line of the slip gives way to when there is no room for all.
enum class LineRank { needed, more, whole_job };

/// One line of the slip: label left, figure right, and the sum that opens below it.
struct FollowLine {
  std::string id;  ///< "points", "spacing", "total.5": stable
  std::string label;
  std::string figure;
  std::string unit;  ///< "m", "pages"; empty for millimetres and counts
  solve::Sum sum;
  std::string before;  ///< the figure before the last action where it was another; else empty
  LineRank rank = LineRank::needed;
};

/// What follows for the place, and of its section and of the whole job what the last action
/// changed. `opened` is the id of a line that was asked for: of those that do not always stand
/// there ("total.5", the running total to sleeve number 5; "middle.5", to the middle of the lap at
/// that sleeve's right) that one does.
std::vector<FollowLine> follow_lines(const Solved& now, const Solved* before, Place place,
                                     std::string_view opened = {});

/// A figure as a box shows it: whole lengths from 100 up bare ("2300"), else one decimal ("18.0").
std::string box_text(Um um);

/// The words with a capital letter at their start.
std::string with_capital(std::string words);

/// The words, cut to so many signs with … at their end where they are longer.
std::string shortened(std::string_view words, std::size_t signs);

/// The lengths of a piece, wide by long: "110 × 1800".
std::string size_words(const solve::Results& results, Place place);

/// Sign for × and friends in UTF-8, so that they stand in one place.
inline constexpr const char* kTimes = "\xC3\x97";
inline constexpr const char* kMinus = "\xE2\x88\x92";
inline constexpr const char* kPlusMinus = "\xC2\xB1";
inline constexpr const char* kArrow = "\xE2\x86\x92";
inline constexpr const char* kDivide = "\xC3\xB7";

}  // namespace pouncemark::web

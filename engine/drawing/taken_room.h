#pragma once

#include <cstddef>
#include <vector>

#include "engine/drawing/drawing.h"

namespace pouncemark::drawing {

/// What is taken on a picture: the boxes round everything drawn so far, so that words can be put
/// where nothing lies. A slanting line or an arc takes its whole box; a run of words takes a box a
/// little wider than any face sets it.
class TakenRoom {
 public:
  /// Takes in the items [first, last) of a picture; all from `first` on where `last` is beyond
  /// them.
  void take(const Drawing& picture, std::size_t first = 0, std::size_t last = kAll);

  static constexpr std::size_t kAll = static_cast<std::size_t>(-1);

  /// True when nothing lies in the box, its edges counted.
  bool is_free(const Box& box) const;
  /// True when no words lie in the box; marks and lines may.
  bool is_free_of_words(const Box& box) const;

 private:
  std::vector<Box> words_;
  std::vector<Box> lines_;
};

/// The box a run of words takes: a guess on the safe side, turned like the words.
Box box_of(const Text& text);

}  // namespace pouncemark::drawing

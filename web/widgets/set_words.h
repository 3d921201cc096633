#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "web/widgets/area.h"

namespace pouncemark::web {

/// One run of words as it stands on the page at the end of a frame.
struct SetRun {
  std::string words;
  Area area;            ///< figures' height above the base line, tails below it; CSS pixels
  float em_px = 0;      ///< size of the face, CSS pixels
  bool is_cut = false;  ///< a part of it lies outside its window, or under something set later
};

/// What a frame set on the page, in words and places, so that a test can say whether anything is
/// cut off or stands on something else. Notes nothing until it is switched on.
class SetWords {
 public:
  void switch_on() { is_on_ = true; }
  void begin_frame() { runs_.clear(); }

  /// Words set where only `window` is seen.
  void set(std::string_view words, const Area& area, float em_px, const Area& window);
  /// Something that cannot be seen through was laid over a rectangle, or over a convex shape: runs
  /// wholly under it are gone, runs partly under it are cut.
  void cover(const Area& area);
  void cover(std::span<const Spot> corners);
  /// A slip was laid on the bench: what it lies over, wholly or in part, is out of sight until it
  /// is put away, and is no longer counted.
  void lay(const Area& slip);

  const std::vector<SetRun>& runs() const { return runs_; }

 private:
  bool is_on_ = false;
  std::vector<SetRun> runs_;
};

}  // namespace pouncemark::web

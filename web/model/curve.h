#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/frame/slip.h"
#include "engine/geometry/units.h"
#include "engine/geometry/vec2.h"
#include "web/model/solved.h"
#include "web/model/words.h"

namespace pouncemark::web {

/// A figure of a box, and what stood there before the last action where it was another.
struct CurveBoxText {
  std::string shown;
  std::string was;
};

/// The bay looked at on the stage Curve, worked out once after each change.
struct CurveView {
  int bay = -1;  ///< of the job; -1: it has none
  std::size_t bays = 0;
  std::string code;
  std::string holds;       ///< code of what hangs there; empty: nothing does
  std::string hangs;       ///< "holds panel P1", "stands empty"
  std::string face_words;  ///< "hollow toward the viewer"
  bool is_hollow = false;
  bool is_by_stations = false;
  bool holds_panel = false;
  bool fly_is_right = true;  ///< of a panel
  Um short_of_fly_um = 0;    ///< of a panel: so far before the fly side its cloth ends when flat
  Um along_um = 0;
  Um creep_um = 0;
  bool moves_out = false;
  CurveBoxText chord;
  CurveBoxText rise;
  std::vector<frame::Stretch> stretches;
  Headline headline;
};

/// `bay` is held within what there is; `before` is what stood before the last action, or nullptr.
CurveView curve_view(const Solved& now, const Solved* before, int bay);

/// The bay from above, partly bent: `hung` 0 is flat, 1 on the timber. Millimetres from the middle
/// between the ends of each; y toward the crest.
struct CurveShape {
  std::vector<Vec2> timber;
  std::vector<Vec2> sheet;
  double crest = 0;         ///< greatest y of the timber
  double trough = 0;        ///< how far an S goes to the other side of its ends
  double sheet_crest = 0;   ///< greatest y of the sheet
  double creep = 0;         ///< of the cloth's free edge at this bend, millimetres, out positive
  std::string creep_words;  ///< "0.82 out", "0" where it is flat
};
CurveShape curve_shape(const CurveView& view, double hung);

/// What follows of the bay, each with its sum.
std::vector<FollowLine> curve_lines(const Solved& now, const Solved* before, int bay);

/// One bay in the list of all.
struct RankedBay {
  int bay = 0;
  std::string code;
  std::string holds;
  std::string radius;
  std::string push;
  std::string people;
};
/// Those that turn tightest first, or those that take the most force; ties in the job's order.
std::vector<RankedBay> ranked_bays(const Solved& now, bool by_force);

/// A finding that is about a bay.
bool is_about_bays(const solve::Finding& finding);

}  // namespace pouncemark::web

#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/frame/slip.h"
#include "engine/geometry/units.h"
#include "engine/geometry/vec2.h"
#include "web/model/curve_stop.h"
#include "web/model/solved.h"
#include "web/model/words.h"

namespace pouncemark::web {

/// A figure of a box, and what stood there before the last action where it was another.
struct CurveBoxText {
  std::string shown;
  std::string was;
};

/// A fixing as it is seen from above: those of one upright edge stand behind one another.
struct FixingMark {
  double part = 0;  ///< of the length, from the left end; of a CurveShape, of the steps drawn
  bool is_tight = false;
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
  Um apart_um = 0;           ///< from the middle of the sheet to the middle of its cloth
  Um along_um = 0;
  Um creep_um = 0;
  bool moves_out = false;
  bool can_bulge = false;    ///< sewn all round the cloth would stand up
  std::string radius_words;  ///< "radius 782.6", of stations where it is least; empty: flat
  std::string limit_words;   ///< where the bay is tighter than that: what the sheet may stay at
  int tightest_station = 0;  ///< from 1; 0: not by stations, or flat
  std::optional<solve::Severity> too_tight;  ///< for the sheet to stay bent so
  std::vector<int> tight_stations;           ///< from 1: those tighter than that
  bool has_facing = false;                   ///< a clear front sheet lies over the cloth
  std::vector<FixingMark> fixings;
  std::string fixing_words;  ///< "9 fixings in 2 rows, 1 tight"; empty: none
  CurveBoxText chord;
  CurveBoxText rise;
  StopLine stop;
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
  std::vector<std::size_t> stations;  ///< which points of the timber are stations
  std::size_t radius_at = 0;          ///< the point of the timber where its radius is written
  /// Parts of the timber tighter than the sheet may stay bent, from point to point.
  std::vector<std::array<std::size_t, 2>> tight;
  std::vector<FixingMark> fixings;
  double crest = 0;         ///< greatest y of the timber
  double trough = 0;        ///< how far an S goes to the other side of its ends
  double sheet_crest = 0;   ///< greatest y of the sheet
  double creep = 0;         ///< of the cloth's free edge at this bend, millimetres, out positive
  std::string creep_words;  ///< "0.82 out", "0" where it is flat
  double bulge = 0;         ///< how far the cloth would stand up were it sewn all round
  std::string bulge_words;
  std::string
      place_words;  ///< where the slip is asked for: "slip 0.82 out, 431 from the hinge side"
};
/// `place` is that place as a part of the steps drawn, 0 at the left end and 1 at the right.
CurveShape curve_shape(const CurveView& view, double hung, double place = 0);

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

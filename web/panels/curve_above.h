#pragma once

#include <vector>

#include "web/panels/curve_parts.h"

/// Inside of the picture of the stage Curve: the bay seen from above.
namespace pouncemark::web {

/// Plies are drawn thicker than they are, or none could be told from the next.
inline constexpr float kTimberThick = 22;
inline constexpr float kSheetThick = 5;
inline constexpr float kClothThick = 9;

/// Where everything stands; the bay at `px` CSS pixels a millimetre.
struct FromAbove {
  Area mat;
  Area close;  ///< the free edge, larger; empty where no panel hangs here
  Area stop;   ///< one line above the slider: where the rows stop, and its button
  Area slider;
  float px = 1;
  float middle = 0;     ///< halfway between the ends
  float ends = 0;       ///< their height
  float words = 0;      ///< of a hollow bay: how low its timber goes, the words stand under it
  float toward = 1;     ///< 1 where the crest lies down the screen, toward the viewer, else -1
  float chord_row = 0;  ///< middle of the chord's arrow
  float viewer = 0;     ///< base line of the words below the picture
  float times = 20;     ///< of the close-up, the picture's scale
  bool is_low = false;  ///< little height: no words that can be spared, the free edge on one line
  bool has_boxes_above = false;  ///< chord and rise in the row of switches, no room on their arrows

  Spot spot(Vec2 at) const {
    return {middle + static_cast<float>(at.x) * px, ends + toward * static_cast<float>(at.y) * px};
  }
};

using Course = std::vector<Spot>;

/// The pack as it is drawn, from the timber to its front.
float pack_thick(const CurveView& view);
/// The spot at a part of the course's steps.
Spot spot_at(const Course& course, double part);

/// Timber and, on the viewer's side of it, the pack with its marks; gives the sheet's own course.
Course draw_pack(const Page& page, const FromAbove& at);

/// Radius, stations, and where the bay is tighter than the sheet may stay.
void curve_marks(Page& page, const FromAbove& at);

/// Where the slip is asked for: under the pointer, or pulled along the bay.
void slip_place(Page& page, const FromAbove& at, const Course& sheet);

/// Where the panel's top and bottom rows stop, typed or pressed.
void rows_stop(Page& page, const FromAbove& at);

/// The free edge, larger: where the cloth ended flat and where it ends now.
void free_edge(Page& page, const FromAbove& at);

}  // namespace pouncemark::web

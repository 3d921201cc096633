#pragma once

#include "web/model/curve_edits.h"
#include "web/model/making.h"
#include "web/panels/page.h"
#include "web/panels/sew_parts.h"

/// Inside of the stage Curve: what its panels share.
namespace pouncemark::web {

/// Works the stage out anew when the bench, the bay or the bend has changed since, and moves the
/// sheet on where it moves by itself; `seconds` is the time of this frame. Never while drawing.
void ask_curve(const Bench& bench, CurveStage& curve, double seconds);

/// The sheet moves by itself to flat (0) or hung (1); at once where the system asks for less
/// motion.
void bend_to(CurveStage& curve, double hung);

/// What was asked for as one action, and the bay to look at; a refusal stands as a sentence.
void curve_act(Page& page, Made made);

/// A box of the stage, as those of the stage Sew; typing begins with what is shown.
using CurveBox = SewTextBox;
TextEvent curve_box(Page& page, CurveBox box);
/// What was typed into the open box is kept as one action, or refused beside it.
void keep_curve(Page& page, Made made);

/// The bay from above with its boxes, and the slider below it.
void curve_picture(Page& page, const Area& mat);
/// Chord or rise in its box, its name or what it was at its right.
void curve_length_box(Page& page, BayBox box, const Area& area, const char* id, const char* name);
/// What hangs in the bay, by its code.
void holds_box(Page& page, const Area& area);
/// Which way the timber goes, along the top of the mat; with chord and rise where these have no
/// room on their arrows.
void bay_switches(Page& page, const Area& mat, bool with_boxes);
inline float bay_box_width() { return text_size() == TextSize::large ? 116.0f : 96.0f; }
void curve_slider(Page& page, const Area& area);

/// The buttons that open the stage's slips, from the right; gives the left edge.
float curve_openers(Page& page, float right, float top);
/// Before the picture is drawn: what the open slip will lie over can no longer be touched.
void cover_for_curve(Page& page);
/// The open slip over the middle; nothing where none is open. Esc or its own button closes it.
void curve_slip(Page& page);

/// What stands on each slip, below its title.
void bays_slip(Page& page, const Area& area);
void stations_slip(Page& page, const Area& area);
void force_slip(Page& page, const Area& area);
void fixings_slip(Page& page, const Area& area);

/// Which lines of a list have room. Where not all have, a button at its foot and the wheel lead on.
struct ListPart {
  std::size_t first = 0;
  std::size_t shown = 0;
};
ListPart list_part(Page& page, const Area& list, float line, std::size_t all, const char* more_id,
                   const char* more);

}  // namespace pouncemark::web

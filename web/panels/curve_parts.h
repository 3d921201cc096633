#pragma once

#include "web/model/curve_edits.h"
#include "web/model/making.h"
#include "web/panels/page.h"

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

/// The bay from above with its boxes, and the slider below it.
void curve_picture(Page& page, const Area& mat);
/// Chord or rise in its box, its name or what it was at its right.
void curve_length_box(Page& page, BayBox box, const Area& area, const char* id, const char* name);
/// What hangs in the bay, and which way the timber goes, along the top of the mat.
void bay_switches(Page& page, const Area& mat);
void curve_slider(Page& page, const Area& area);

/// All bays in their ranks, over the middle; nothing while it is put away.
void cover_for_bays(Page& page);
void bays_slip(Page& page);

}  // namespace pouncemark::web

#pragma once

#include "web/model/view.h"
#include "web/panels/page.h"

namespace pouncemark::web {

/// The hinge side of the panel on the bench is drawn above.
bool hinge_is_up(const Page& page);

/// Everything of a panel that can be pulled: its rows across, the places where rows stop short, the
/// hinge side and the top end of a rectangle; and its fly side, which resists.
void panel_grips(Page& page, const Lying& lying, const Area& sheet);

}  // namespace pouncemark::web

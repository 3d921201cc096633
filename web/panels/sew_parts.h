#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "web/model/making.h"
#include "web/panels/page.h"
#include "web/panels/sew_state.h"

/// Inside of the stage Sew: what its panels share.
namespace pouncemark::web {

/// A box of the stage: words over it, and what stands in it.
struct SewTextBox {
  std::string id;
  Area area;
  std::string label;  ///< over the box; empty: none
  std::string shown;
  std::string text;  ///< what typing begins with
  std::string name;  ///< aloud
  bool is_changed = false;
  bool is_words = false;  ///< words from the left, in the size of text
};
/// Gives what happened in it.
TextEvent sew_text_box(Page& page, const SewTextBox& box);

/// What was typed into the open box is kept as one action, or refused beside it.
void keep_typed(Page& page, Made made);
/// What a button asked for, as one action; a refusal stands on the slip as a sentence.
void sew_act(Page& page, Made made);

/// The row of kinds with its right edge at `right`, as one switch; gives its left edge.
float sew_kinds_switch(Page& page, float right, float top);
/// The buttons that open the two slips, their right edge at `right`; gives the left edge.
float sew_openers(Page& page, float right, float top);

/// The cross-section in its area, with its four boxes.
void sew_picture(Page& page, const Area& mat);

/// The work under the machine's arm, seen from above, with the boxes of the machine.
void sew_machine(Page& page, const Area& mat);

/// The switch between the two, its lower right corner at `corner`.
void sew_views_switch(Page& page, Spot corner);

/// A word with its mark before it, told by its shape: a tick, a ring half full, a cross; then why.
/// Gives the whole as set, up to `limit`.
Area sew_verdict(const Page& page, Spot middle, solve::Verdict mark, const std::string& word,
                 const std::string& because, float limit);

/// Before the picture is drawn: what the open slip will lie over can no longer be touched.
void cover_for_sew(Page& page);
/// The open slip over the middle; nothing where none is open. Esc or its own button closes it.
void sew_slip(Page& page);
/// What stands on each slip, below its title.
void materials_slip(Page& page, const Area& area);
/// The values of the item that the slip "Materials" is open at, each in its box with its standing.
void material_values(Page& page, const Area& area);
void trials_slip(Page& page, const Area& area);

/// Buttons one after the other from the left, on the next line where one has no room.
struct ButtonFlow {
  Area area;
  float x = 0;
  float y = 0;
};
bool flow_button(Page& page, ButtonFlow& flow, std::string_view id, std::string_view words,
                 const ButtonLook& look = {});

}  // namespace pouncemark::web

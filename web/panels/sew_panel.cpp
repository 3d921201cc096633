#include <algorithm>

#include "web/model/words.h"
#include "web/panels/making_slip.h"
#include "web/panels/sew_parts.h"
#include "web/panels/sew_work.h"

namespace pouncemark::web {
namespace {

/// A button that opens a slip, or closes it when it is the open one; gives the left edge.
float opener(Page& page, float right, float top, SewSlip slip, const char* id, const char* words) {
  const bool is_open = page.state.sew.slip == slip;
  const float width = button_width(page.brush, words);
  const Area area = area_at(right - width, top, width, button_height());
  if (button(page.brush, page.hand, id, area, words,
             {is_open ? ButtonKind::chosen : ButtonKind::plain})) {
    page.later([&state = page.state, slip, is_open] {
      state.sew.slip = is_open ? SewSlip::none : slip;
      state.sew.sentence.clear();
      state.making = {};
      state.open_box = {};
    });
  }
  return area.left;
}

}  // namespace

TextEvent sew_text_box(Page& page, const SewTextBox& box) {
  if (!box.label.empty()) {
    page.brush.words({box.area.left, box.area.top - 6}, box.label,
                     {Role::second_line, false, kInk});
  }
  TextLook look;
  look.shown = box.is_words
                   ? cut_short(page.brush, box.shown, box.area.width() - 20, Role::text, false)
                   : box.shown;
  look.text = box.text;
  look.name = box.name;
  look.aloud = box.shown;
  look.is_changed = box.is_changed;
  if (box.is_words) {
    look.role = Role::text;
    look.side = Side::left;
  }
  if (!page.bench.is_look_only()) {
    return text_box(page.brush, page.hand, page.state.open_box, box.id, box.area, look);
  }
  page.brush.centred(box.area, look.shown, {look.role, look.role == Role::box_figure, kInk});
  page.hand.note(box.id, box.area, box.name + " " + box.shown);
  return {};
}

void keep_typed(Page& page, Made made) {
  OpenBox& open = page.state.open_box;
  if (!made.refused.empty()) return refuse_text(open, page.hand, std::move(made.refused));
  close_box(open);
  sew_act(page, std::move(made));
}

void sew_act(Page& page, Made made) {
  page.later([&bench = page.bench, &state = page.state, made = std::move(made)] {
    state.sew.sentence = made.refused;
    use_signs(made.refused);
    use_signs(made.action);
    if (made.refused.empty()) bench.edit(made.job, made.action);
  });
}

bool flow_button(Page& page, ButtonFlow& flow, std::string_view id, std::string_view words,
                 const ButtonLook& look) {
  const float width = button_width(page.brush, words);
  if (flow.x > flow.area.left && flow.x + width > flow.area.right) {
    flow.x = flow.area.left;
    flow.y += button_height() + 6;
  }
  const Area area = area_at(flow.x, flow.y, width, button_height());
  flow.x = area.right + 8;
  return button(page.brush, page.hand, id, area, words, look);
}

float sew_kinds_switch(Page& page, float right, float top) {
  const SewView& view = page.state.sew.view;
  for (std::size_t i = view.kinds.size(); i-- > 0;) {
    const SewKind& kind = view.kinds[i];
    const float width = button_width(page.brush, kind.words);
    const Area area = area_at(right - width, top, width, button_height());
    const bool is_chosen = i == view.chosen;
    if (button(page.brush, page.hand, "sew.kind." + kind.id, area, kind.words,
               {is_chosen ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&state = page.state, id = kind.id] { state.sew.kind = id; });
    }
    right = area.left - 8;
  }
  return right;
}

void sew_views_switch(Page& page, Spot corner) {
  float right = corner.x;
  for (const bool is_machine : {true, false}) {
    const char* words = is_machine ? "At the machine" : "Stack";
    const float width = button_width(page.brush, words);
    const Area area = area_at(right - width, corner.y - button_height(), width, button_height());
    const bool is_chosen = page.state.sew.is_at_machine == is_machine;
    if (button(page.brush, page.hand, is_machine ? "sew.view.machine" : "sew.view.stack", area,
               words, {is_chosen ? ButtonKind::chosen : ButtonKind::plain})) {
      page.later([&state = page.state, is_machine] {
        state.sew.is_at_machine = is_machine;
        state.open_box = {};
      });
    }
    right = area.left - 8;
  }
}

float sew_openers(Page& page, float right, float top) {
  const float trials = opener(page, right, top, SewSlip::trials, "sew.trials", "Trial seam");
  return opener(page, trials - 8, top, SewSlip::materials, "sew.materials", "Materials");
}

void ask_sew(const Bench& bench, SewStage& sew) {
  if (!bench.has_job()) return;
  if (sew.turn == bench.turn() && sew.made_for == sew.kind) return;
  sew.turn = bench.turn();
  sew.made_for = sew.kind;
  sew.view = sew_view(bench.now(), bench.before(), bench.place(), sew.kind);
  const std::size_t trials = bench.now().job.trials.size();
  if (sew.trial >= trials) sew.trial = trials == 0 ? 0 : trials - 1;
}

void sew_panel(Page& page) {
  const Area& middle = page.layout.middle;
  const float height = button_height();
  const float openers = sew_openers(page, middle.right, middle.top);
  const float base = middle.top + height / 2 + page.brush.rise(Role::figure) / 2;
  place_line(page, {middle.left, base}, openers - 12);
  // A sleeve's neighbours stand below its name, and the headline clear of them.
  const float apart = page.bench.place().sleeve >= 0 ? 18.0f : 10.0f;
  const float second = middle.top + height + (page.layout.is_compact ? 6.0f : apart);
  cover_for_sew(page);
  const float kinds = sew_kinds_switch(page, middle.right, second);
  const float line = second + height / 2 + page.brush.rise(Role::headline) / 2;
  headline_words(page, {middle.left, line}, kinds - 8, false);
  const Area mat = {middle.left, second + height + 10, middle.right, middle.bottom};
  page.hand.start_group(true);
  const SewStage& sew = page.state.sew;
  if (!sew.view.kinds.empty()) (sew.is_at_machine ? sew_machine : sew_picture)(page, mat);
  page.hand.start_group(false);
  sew_slip(page);
}

}  // namespace pouncemark::web

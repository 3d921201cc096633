#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

void add_label(drawing::Drawing* picture, Spot at, drawing::Align align, std::string words) {
  drawing::Text text;
  text.at = at;
  text.size_um = kLabelUm;
  text.weight = drawing::Weight::bold;
  text.align = align;
  text.words = std::move(words);
  drawing::add_text(*picture, std::move(text));
}

/// A distance on paper: to half a millimetre.
std::string half_mm_text(Um um) { return short_mm_text(divide_round(um, 500) * 500, 1); }

/// A row of the page runs across the piece through this place.
bool is_crossed(const PageView& view, const solve::PlaceUm& place) {
  const auto& rows = view.rows();
  return std::any_of(rows.begin(), rows.end(), [&place](const solve::Row* row) {
    return runs_across(*row) && to_um(row->guide.from.y) == place.y;
  });
}

/// The figure beside one point: its distance from the datum end of the edge. At a corner it stands
/// clear of the row that runs across there.
void add_figure(const PageView& view, const solve::Row& row, std::int64_t index,
                drawing::Drawing* picture) {
  const solve::PlaceUm place = solve::point_um(row, index);
  if (!view.sees(place)) return;
  const std::string figure = half_mm_text(row.run.station_um(index));
  if (runs_across(row)) {
    const bool up = 2 * place.y < view.piece().length_um;
    add_label(picture, view.on_paper(place.x, up ? place.y + 4'500 : place.y - 7'000),
              drawing::Align::centre, figure);
    return;
  }
  const bool to_the_right = 2 * place.x < view.piece().width_um;
  const Um inward = 2 * place.y < view.piece().length_um ? 2'000 : -4'500;
  const Um up = is_crossed(view, place) ? inward : -1'250;
  add_label(picture, view.on_paper(place.x + (to_the_right ? 4'500 : -4'500), place.y + up),
            to_the_right ? drawing::Align::left : drawing::Align::right, figure);
}

void add_row_figures(const PageView& view, const solve::Row& row, drawing::Drawing* picture) {
  const PointRange seen = view.points_seen(row);
  for (std::int64_t i = std::max<std::int64_t>(seen.first, 0); i <= seen.last; ++i) {
    if (i == 0 && row.first_is_shared) continue;
    add_figure(view, row, i, picture);
  }
}

bool same_run(const layout::Run& a, const layout::Run& b) {
  return a.start_um == b.start_um && a.length_um == b.length_um && a.gaps == b.gaps &&
         a.step_um == b.step_um;
}

/// Room to the right of a row up to the next row or edge of sheet.
Um room_beside(const PageView& view, Um x) {
  Um nearest = view.right() - view.set.cut.across.overlap_um;
  const auto take = [&nearest, x](Um other) {
    if (other > x) nearest = std::min(nearest, other);
  };
  for (const solve::Row* row : view.rows()) take(to_um(row->guide.from.x));
  for (const solve::Sleeve& sleeve : view.piece().sleeves) {
    take(sleeve.left_um);
    take(sleeve.left_um + sleeve.width_um);
  }
  return nearest - x;
}

void add_figures_to_the_right(const PageView& view, const solve::Row& row,
                              drawing::Drawing* picture) {
  const PointRange seen = view.points_seen(row);
  for (std::int64_t i = std::max<std::int64_t>(seen.first, 0); i <= seen.last; ++i) {
    const solve::PlaceUm place = solve::point_um(row, i);
    if (!view.sees(place)) continue;
    add_label(picture, view.on_paper(place.x + 2'500, place.y - 1'250), drawing::Align::left,
              half_mm_text(row.run.station_um(i)));
  }
}

/// Staple rows that share their places share their figures: the row with most room beside it on
/// this page carries them.
void add_staple_figures(const PageView& view, drawing::Drawing* picture) {
  struct Carrier {
    const solve::Row* row;
    Um room;
  };
  std::vector<Carrier> carriers;
  for (const solve::Row* row : view.rows()) {
    if (row->kind != solve::RowKind::staple) continue;
    const Um x = to_um(row->guide.from.x);
    if (x < view.left() || x > view.right()) continue;
    const Um room = room_beside(view, x);
    const auto known = std::find_if(
        carriers.begin(), carriers.end(),
        [row](const Carrier& carrier) { return same_run(row->run, carrier.row->run); });
    if (known == carriers.end()) {
      carriers.push_back(Carrier{row, room});
    } else if (room > known->room) {
      *known = {row, room};
    }
  }
  for (const Carrier& carrier : carriers) add_figures_to_the_right(view, *carrier.row, picture);
}

}  // namespace

void add_figures(const PageView& view, drawing::Drawing* picture) {
  for (const solve::Row* row : view.rows()) {
    if (row->kind == solve::RowKind::point) add_row_figures(view, *row, picture);
  }
  add_staple_figures(view, picture);
}

}  // namespace pouncemark::sheets

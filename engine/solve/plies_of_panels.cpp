#include <utility>

#include "engine/piece/inset.h"
#include "engine/solve/plies.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Item;

/// How far in from the sewn edges and from the fly side something lies.
struct In {
  Um sewn_um = 0;
  Um fly_um = 0;
};

std::vector<Segment> lying_in(const piece::Outline& outline, In in) {
  std::vector<Um> all;
  for (const piece::Edge& edge : outline.edges) {
    all.push_back(edge.role == piece::EdgeRole::fly_side ? in.fly_um : in.sewn_um);
  }
  return piece::inset(outline, all);
}

/// What lies in the first and not in the second, which lies within it.
std::vector<Segment> without(std::vector<Segment> edges, const std::vector<Segment>& inside) {
  edges.insert(edges.end(), inside.begin(), inside.end());
  return edges;
}

/// Where the plies of a panel lie, as entered or assumed; says what is assumed.
struct Places {
  In cloth;
  In interlining;
  Um hem_um = 0;
  Um band_um = 0;
};

bool is_known(const job::Job& job, Field thickness) {
  return job::value_of(job.materials, thickness).is_known;
}

/// The panel has interlining, or adhesive, where the job says anything of it.
bool has_interlining(const job::Job& job, const job::ClothPlace& place) {
  return place.interlining_in_um || is_known(job, Field::interlining_thickness);
}
bool has_adhesive(const job::Job& job, const job::ClothPlace& place) {
  return place.adhesive_band_um || is_known(job, Field::adhesive_thickness);
}

Places places_of(const job::Job& job, const job::Panel& panel, Plies* plies) {
  const job::ClothPlace place = panel.cloth.value_or(job::ClothPlace());
  const auto take = [plies](const std::optional<Um>& entered, Um assumed, const char* before,
                            const char* after, bool matters) {
    if (!entered && matters) {
      plies->assumed_places.push_back(before + plain_mm(assumed) + " assumed" + after);
    }
    return entered.value_or(assumed);
  };
  const bool interlined = has_interlining(job, place);
  const bool stuck = has_adhesive(job, place);
  Places places;
  places.cloth.sewn_um = take(place.in_from_edge_um, material::kAssumedPanelClothInUm, "cloth ",
                              " in from the sewn edges", true);
  places.cloth.fly_um = take(place.in_from_fly_side_um, material::kAssumedClothInFromFlySideUm,
                             "cloth ", " in from the fly side", true);
  places.hem_um = take(place.hem_um, material::kAssumedHemUm, "hem ", " wide", true);
  places.interlining.sewn_um = take(place.interlining_in_um, places.cloth.sewn_um, "interlining ",
                                    " in from the sewn edges, as the cloth", interlined);
  places.interlining.fly_um = places.cloth.fly_um;
  places.band_um = take(place.adhesive_band_um, material::kAssumedAdhesiveBandUm, "adhesive ",
                        " wide from the sewn edges", stuck);
  return places;
}

}  // namespace

PanelCloth panel_cloth(const job::Job& job, const job::Panel& panel) {
  const job::ClothPlace place = panel.cloth.value_or(job::ClothPlace());
  Plies unused;
  const Places places = places_of(job, panel, &unused);
  return {places.cloth.sewn_um, places.cloth.fly_um, places.hem_um, has_interlining(job, place),
          places.interlining.sewn_um};
}

Plies plies_of_panel(const job::Job& job, const job::Panel& panel, const Piece& piece) {
  Plies plies;
  const Places places = places_of(job, panel, &plies);
  const job::ClothPlace place = panel.cloth.value_or(job::ClothPlace());
  const piece::Outline& outline = piece.outline;
  const std::vector<Segment> whole = lying_in(outline, {0, 0});
  const std::vector<Segment> cloth = lying_in(outline, places.cloth);
  const auto textile = [&job](const char* name) {
    return valued_ply(job, name, Field::panel_cloth_thickness, Field::panel_cloth_pressed);
  };
  add_ply(textile("cloth"), cloth, &plies);
  if (places.hem_um > 0) {
    const In folded{places.cloth.sewn_um + places.hem_um, places.cloth.fly_um + places.hem_um};
    add_ply(textile("hem"), without(cloth, lying_in(outline, folded)), &plies);
  }
  if (has_interlining(job, place)) {
    add_ply(
        valued_ply(job, "interlining", Field::interlining_thickness, Field::interlining_pressed),
        lying_in(outline, places.interlining), &plies);
  }
  if (has_adhesive(job, place)) {
    add_ply(valued_ply(job, "adhesive", Field::adhesive_thickness, Field::adhesive_thickness),
            without(whole, lying_in(outline, {places.band_um, 0})), &plies);
  }
  add_sheet(job, sheet_ply("backing", Item::backing, panel.backing_thickness_um), whole, &plies);
  return plies;
}

}  // namespace pouncemark::solve

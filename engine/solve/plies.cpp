#include "engine/solve/plies.h"

#include <algorithm>
#include <array>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Item;

constexpr layout::PlySet kOne = 1;

void add_assumed_places(const job::Section& section, Plies* plies) {
  const job::ClothPlace place = section.cloth.value_or(job::ClothPlace());
  const std::string in = plain_mm(material::kAssumedSleeveClothInUm) + " assumed in from the ";
  if (!place.in_from_edge_um) {
    const bool is_round = section.make == job::Make::round;
    plies->assumed_places.push_back(is_round ? "no cloth in the flange, assumed"
                                             : "cloth " + in + "long edges");
  }
  if (!place.in_from_end_um) plies->assumed_places.push_back("cloth " + in + "ends");
}

/// One sleeve behind what is there; `whose` stands before the names of its plies.
void add_sleeve(const job::Job& job, const job::Section& section, const Piece& piece, int at,
                const std::string& whose, Plies* plies) {
  const Sleeve& sleeve = piece.sleeves[static_cast<std::size_t>(at)];
  const Um left = sleeve.left_um;
  const Um right = left + sleeve.width_um;
  const auto whole = rectangle({from_um(left), 0}, {from_um(right), from_um(section.length_um)});
  const ClothEnds ends = cloth_ends(section);
  add_sheet(job, sheet_ply(whose + "front leaf", Item::leaf, section.leaf_um), whole, plies);
  add_ply(
      valued_ply(job, whose + "cloth", Field::sleeve_cloth_thickness, Field::sleeve_cloth_pressed),
      rectangle({from_um(left + ends.left_um), from_um(ends.end_um)},
                {from_um(right - ends.right_um), from_um(section.length_um - ends.end_um)}),
      plies);
  add_sheet(job, sheet_ply(whose + "back leaf", Item::leaf, section.leaf_um), whole, plies);
}

}  // namespace

ClothEnds cloth_ends(const job::Section& section) {
  const job::ClothPlace place = section.cloth.value_or(job::ClothPlace());
  ClothEnds ends;
  ends.left_um = ends.right_um = place.in_from_edge_um.value_or(material::kAssumedSleeveClothInUm);
  ends.end_um = place.in_from_end_um.value_or(material::kAssumedSleeveClothInUm);
  // The cloth of a round sleeve lies in its tube: the flange is sheet alone.
  if (section.make == job::Make::round && !place.in_from_edge_um) {
    const bool is_left = section.sewn_side.value_or(job::Side::right) == job::Side::left;
    Um& at_flange = is_left ? ends.left_um : ends.right_um;
    at_flange = std::max(at_flange, section.flange_um.value_or(0));
  }
  return ends;
}

PlyKind sheet_ply(std::string name, Item item, Um thickness_um) {
  PlyKind kind;
  kind.ply.name = std::move(name);
  kind.ply.item = item;
  kind.ply.thickness_um = kind.ply.pressed_um = thickness_um;
  return kind;
}

PlyKind valued_ply(const job::Job& job, std::string name, Field thickness, Field pressed) {
  const material::Value thick = job::value_of(job.materials, thickness);
  PlyKind kind = sheet_ply(std::move(name), material::row_of(thickness).item, thick.thousandths);
  kind.thickness = thickness;
  kind.is_known = thick.is_known;
  kind.ply.is_assumed = thick.is_known && thick.is_assumed();
  kind.ply.gives = pressed != thickness;
  if (!kind.ply.gives) return kind;
  const material::Value under_foot = job::value_of(job.materials, pressed);
  if (under_foot.is_known) {
    kind.ply.pressed_um = std::min(under_foot.thousandths, kind.ply.thickness_um);
  }
  return kind;
}

void add_ply(PlyKind kind, std::vector<Segment> edges, Plies* plies) {
  if (edges.empty() || plies->plies.size() == layout::kMostPlies) return;
  if (!kind.is_known) plies->unknown |= kOne << plies->plies.size();
  layout::PlyShape shape;
  shape.edges = std::move(edges);
  shape.thickness_um = kind.ply.thickness_um;
  plies->shapes.push_back(std::move(shape));
  plies->thicknesses.push_back(kind.thickness);
  plies->plies.push_back(std::move(kind.ply));
}

void add_sheet(const job::Job& job, PlyKind kind, const std::vector<Segment>& edges, Plies* plies) {
  const bool has_film = job::value_of(job.materials, Field::film_left_on).thousandths != 0;
  const std::string name = kind.ply.name;
  const auto add_film = [&] {
    if (!has_film) return;
    PlyKind film =
        valued_ply(job, "film on the " + name, Field::film_thickness, Field::film_thickness);
    film.ply.is_left_on = true;
    add_ply(std::move(film), edges, plies);
  };
  add_film();
  add_ply(std::move(kind), edges, plies);
  add_film();
}

std::vector<Segment> rectangle(Vec2 low, Vec2 high) {
  if (high.x <= low.x || high.y <= low.y) return {};
  const Vec2 right_low{high.x, low.y};
  const Vec2 left_high{low.x, high.y};
  return {{low, right_low, 0}, {right_low, high, 0}, {high, left_high, 0}, {left_high, low, 0}};
}

Plies plies_of_sleeve(const job::Job& job, const job::Section& section, const Piece& piece,
                      int sleeve) {
  Plies plies;
  add_assumed_places(section, &plies);
  add_sleeve(job, section, piece, sleeve, "", &plies);
  return plies;
}

Plies plies_of_lap(const job::Job& job, const job::Section& section, const Piece& piece, int lap) {
  Plies plies;
  add_assumed_places(section, &plies);
  // A sleeve narrower than its laps reaches across to the next one but one.
  std::vector<int> sleeves;
  for (int at = std::max(lap - 1, 0); at <= lap + 2; ++at) {
    if (at < static_cast<int>(piece.sleeves.size())) sleeves.push_back(at);
  }
  if (!job::left_lies_over(section)) std::reverse(sleeves.begin(), sleeves.end());
  const std::array<const char*, 4> whose = {"outer left sleeve's ", "left sleeve's ",
                                            "right sleeve's ", "outer right sleeve's "};
  for (const int at : sleeves) {
    add_sleeve(job, section, piece, at, whose[static_cast<std::size_t>(at - lap + 1)], &plies);
  }
  return plies;
}

}  // namespace pouncemark::solve

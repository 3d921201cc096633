#include "engine/solve/bay_loads.h"

#include <cmath>
#include <utility>

#include "engine/frame/loads.h"
#include "engine/piece/inset.h"
#include "engine/solve/bay_force.h"
#include "engine/solve/plies.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Item;

double area_of(const std::vector<Segment>& edges) {
  piece::Outline outline;
  for (const Segment& edge : edges)
    outline.edges.push_back({"", piece::EdgeRole::side, edge, false});
  return edges.empty() ? 0 : piece::area_mm2(outline);
}

/// `mg_m2` milligrams on a square metre.
void add_part(Item item, std::string words, double mm2, Um thickness_um, const material::Value& of,
              std::int64_t mg_m2, BayLoads* loads) {
  BayWeight& part = loads->parts.emplace_back();
  part.item = item;
  part.words = std::move(words);
  part.area_mm2 = std::llround(mm2);
  part.thickness_um = thickness_um;
  part.is_known = of.is_known;
  if (!of.is_known) {
    loads->is_whole = false;
    return;
  }
  part.mass_mg = std::llround(mm2 * static_cast<double>(mg_m2) / 1e6);
  loads->mass_mg += part.mass_mg;
}

void add_sheet(const job::Job& job, Item item, Field density, double mm2, Um thickness_um,
               BayLoads* loads) {
  const material::Value value = job::value_of(job.materials, density);
  add_part(item, std::string(material::item_words(item)), mm2, thickness_um, value,
           frame::sheet_mg_m2(thickness_um, value.thousandths), loads);
}

void add_textile(const job::Job& job, Field mass, double mm2, BayLoads* loads) {
  const material::Value value = job::value_of(job.materials, mass);
  const Item item = material::row_of(mass).item;
  add_part(item, std::string(material::item_words(item)), mm2, 0, value, value.thousandths, loads);
}

void add_section(const job::Job& job, const job::Section& section, const Piece& piece,
                 BayLoads* loads) {
  double sheet = 0;
  double cloth = 0;
  const ClothEnds ends = cloth_ends(section);
  const double high = from_um(section.length_um);
  const double cloth_high = std::fmax(high - 2 * from_um(ends.end_um), 0);
  for (const Sleeve& sleeve : piece.sleeves) {
    sheet += sleeve.blank.count * from_um(sleeve.blank.width_um) * high;
    const Um wide = sleeve.width_um - ends.left_um - ends.right_um;
    if (wide > 0) cloth += from_um(wide) * cloth_high;
  }
  add_sheet(job, Item::leaf, Field::leaf_density, sheet, section.leaf_um, loads);
  add_textile(job, Field::sleeve_cloth_mass, cloth, loads);
}

void add_panel(const job::Job& job, const job::Panel& panel, const Piece& piece, BayLoads* loads) {
  const double whole = piece::area_mm2(piece.outline);
  add_sheet(job, Item::backing, Field::backing_density, whole, panel.backing_thickness_um, loads);
  const PanelCloth cloth = panel_cloth(job, panel);
  const auto lying = [&piece](Um sewn_um, Um fly_um) {
    std::vector<Um> in;
    for (const piece::Edge& edge : piece.outline.edges) {
      in.push_back(edge.role == piece::EdgeRole::fly_side ? fly_um : sewn_um);
    }
    return area_of(piece::inset(piece.outline, in));
  };
  const double face = lying(cloth.sewn_um, cloth.fly_um);
  const double inside = lying(cloth.sewn_um + cloth.hem_um, cloth.fly_um + cloth.hem_um);
  add_textile(job, Field::panel_cloth_mass, 2 * face - inside, loads);
  if (cloth.has_interlining) {
    add_textile(job, Field::interlining_mass, lying(cloth.interlining_um, cloth.fly_um), loads);
  }
  loads->sewn_mg = loads->mass_mg;
  if (!panel.facing_thickness_um) return;
  add_sheet(job, Item::facing, Field::facing_density, whole, *panel.facing_thickness_um, loads);
}

/// The stitch row along the top that has the most stitches: what is sewn hangs by it.
void add_stitches(const Results& results, const Piece& piece, BayLoads* loads) {
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const Row& row = results.rows[static_cast<std::size_t>(i)];
    const bool is_top = row.place == RowPlace::panel && row.code.find(" top") != std::string::npos;
    if (row.kind != RowKind::stitch || !is_top || row.run.gaps <= loads->stitches) continue;
    loads->row = i;
    loads->stitches = row.run.gaps;
  }
  if (loads->stitches > 0) {
    loads->per_stitch_mn = frame::equal_share_mn(loads->sewn_mn, loads->stitches);
  }
  loads->corner_mn = frame::equal_share_mn(loads->sewn_mn, frame::kCornerStitches);
  loads->corner_least_mn = frame::equal_share_mn(loads->sewn_mn, frame::kCornerStitches + 1);
  loads->corner_most_mn = frame::equal_share_mn(loads->sewn_mn, frame::kCornerStitches - 1);
}

void add_fixings(const BayResult& result, BayLoads* loads) {
  for (std::size_t i = 0; i < result.fixings.size(); ++i) {
    const BayFixings& row = result.fixings[i];
    if (row.edge != "top" || row.fixings.empty()) continue;
    loads->fixing_row = static_cast<int>(i);
    loads->fixings_mn =
        frame::fixing_loads_mn(loads->weight_mn, static_cast<int>(row.fixings.size()));
    return;
  }
}

}  // namespace

BayLoads loads_of(const job::Job& job, const Results& results, const BayResult& result) {
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  const auto entry = static_cast<std::size_t>(piece.entry);
  BayLoads loads;
  if (piece.kind == PieceKind::section) {
    add_section(job, job.sections[entry], piece, &loads);
    loads.sewn_mg = loads.mass_mg;
  } else {
    add_panel(job, job.panels[entry], piece, &loads);
  }
  loads.weight_mn = frame::weight_mn(loads.mass_mg);
  loads.sewn_mn = frame::weight_mn(loads.sewn_mg);
  add_stitches(results, piece, &loads);
  add_fixings(result, &loads);
  return loads;
}

}  // namespace pouncemark::solve

#include "engine/solve/bay_force.h"

#include <algorithm>
#include <cmath>

#include "engine/base/insist.h"
#include "engine/frame/elastica.h"
#include "engine/frame/hands.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Item;

double thousandth(const material::Value& value) {
  return static_cast<double>(value.thousandths) / 1000.0;
}

BentSheet sheet_of(const job::Job& job, Item item, Field kind, Um thickness_um, int count = 1) {
  const auto value = [&job, kind](Field leaf_field) {
    return job::value_of(job.materials, material::field_of_sheet(kind, leaf_field));
  };
  return {item,
          count,
          thickness_um,
          value(Field::leaf_modulus),
          value(Field::leaf_poisson),
          value(Field::leaf_stay_bent)};
}

/// What all strips of one bay have in common.
struct Pushed {
  frame::PushedInMiddle shape;
  PushShape of;
  Um height_um = 0;

  std::optional<frame::MiddlePush> by(double stiffness) const {
    return frame::middle_push({stiffness, height_um}, shape, of.chord_um, of.rise_um);
  }
};

MiddlePush both(const frame::MiddlePush& push) { return {push.small_bend_mn, push.exact_mn}; }

std::vector<frame::Ply> pack_of(const std::vector<BentSheet>& sheets) {
  std::vector<frame::Ply> pack;
  for (const BentSheet& sheet : sheets) {
    for (int i = 0; i < sheet.count; ++i) pack.push_back(sheet.ply());
  }
  return pack;
}

void add_people(const job::Job& job, BayForce* force) {
  const std::int64_t each = job::value_of(job.materials, Field::hanging_push).thousandths;
  force->shown_mn = force->is_beyond_small ? force->slipping.exact_mn : force->slipping.small_mn;
  force->other_mn = force->is_beyond_small ? force->slipping.small_mn : force->slipping.exact_mn;
  force->people = frame::people_needed(force->shown_mn, each);
  force->people_other = frame::people_needed(force->other_mn, each);
}

}  // namespace

frame::Ply BentSheet::ply() const {
  return {from_um(thickness_um), thousandth(modulus), thousandth(poisson)};
}

std::vector<BentSheet> sheets_of(const job::Job& job, const Piece& piece) {
  const auto entry = static_cast<std::size_t>(piece.entry);
  if (piece.kind == PieceKind::section) {
    return {sheet_of(job, Item::leaf, Field::leaf_sheet, job.sections[entry].leaf_um, 2)};
  }
  const job::Panel& panel = job.panels[entry];
  std::vector<BentSheet> sheets = {
      sheet_of(job, Item::backing, Field::backing_sheet, panel.backing_thickness_um)};
  if (panel.facing_thickness_um) {
    sheets.push_back(sheet_of(job, Item::facing, Field::facing_sheet, *panel.facing_thickness_um));
  }
  return sheets;
}

const BentSheet& tightest_of(const std::vector<BentSheet>& sheets) {
  INSIST(!sheets.empty());
  const BentSheet* tightest = &sheets.front();
  for (const BentSheet& sheet : sheets) {
    if (sheet.limit_um() > tightest->limit_um()) tightest = &sheet;
  }
  return *tightest;
}

PushShape push_shape(const job::Bay& bay, const BayResult& result) {
  if (!result.is_by_stations) return {bay.chord_um, bay.rise_um};
  const std::vector<Vec2> stations = stations_of(bay);
  const Vec2 across = stations.back() - stations.front();
  double rise = 0;
  for (const Vec2& station : stations) {
    rise = std::fmax(rise, std::fabs(cross(across, station - stations.front())) / length(across));
  }
  return {to_um(length(across)), to_um(rise)};
}

std::optional<BayForce> force_of(const job::Job& job, const job::Bay& bay, const Results& results,
                                 const BayResult& result) {
  if (result.piece < 0 || result.is_flat()) return std::nullopt;
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  const std::vector<BentSheet> sheets = sheets_of(job, piece);
  for (const BentSheet& sheet : sheets) {
    if (!sheet.is_known()) return std::nullopt;
  }
  const PushShape of = push_shape(bay, result);
  const auto shape = frame::pushed_in_middle(from_um(of.rise_um) / from_um(of.chord_um));
  if (!shape) return std::nullopt;
  const Pushed pushed{*shape, of, piece.length_um};
  BayForce force;
  force.chord_um = of.chord_um;
  force.rise_um = of.rise_um;
  for (const BentSheet& sheet : sheets) {
    const auto push = pushed.by(sheet.count * frame::stiffness(sheet.ply()));
    if (!push) return std::nullopt;
    BayPly& ply = force.plies.emplace_back();
    ply.item = sheet.item;
    ply.words = material::item_words(sheet.item);
    ply.count = sheet.count;
    ply.thickness_um = sheet.thickness_um;
    ply.push = both(*push);
  }
  const std::vector<frame::Ply> pack = pack_of(sheets);
  const auto slipping = pushed.by(frame::stiffness(pack, frame::Hold::slipping));
  const auto locked = pushed.by(frame::stiffness(pack, frame::Hold::locked));
  if (!slipping || !locked) return std::nullopt;
  force.slipping = both(*slipping);
  force.locked = both(*locked);
  force.is_beyond_small = slipping->is_beyond_small;
  add_people(job, &force);
  return force;
}

void rank_by_force(std::vector<BayResult>* bays) {
  std::vector<BayForce*> forces;
  for (BayResult& bay : *bays) {
    if (bay.force) forces.push_back(&*bay.force);
  }
  std::stable_sort(forces.begin(), forces.end(),
                   [](const BayForce* a, const BayForce* b) { return a->shown_mn > b->shown_mn; });
  int rank = 0;
  for (BayForce* force : forces) force->rank = ++rank;
}

}  // namespace pouncemark::solve

#include "web/model/curve_push.h"

#include <cstddef>
#include <string>

#include "engine/base/number_text.h"
#include "engine/frame/hands.h"
#include "engine/job/materials.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using material::Field;

/// The stiff sheets of a piece: the two leaves of a section, the backing of a panel. Cloth adds
/// nothing that counts.
struct Sheets {
  int count = 1;
  Um thickness_um = 0;
  material::Value modulus;
  material::Value poisson;
  Um height_um = 0;

  frame::Strip strip() const {
    const auto thousandth = [](const material::Value& value) {
      return static_cast<double>(value.thousandths) / 1000.0;
    };
    const frame::Ply ply{from_um(thickness_um), thousandth(modulus), thousandth(poisson)};
    return {count * frame::stiffness(ply), height_um};
  }
};

Sheets sheets_of(const Solved& now, const solve::Piece& piece) {
  const auto entry = static_cast<std::size_t>(piece.entry);
  const bool is_panel = piece.kind == solve::PieceKind::panel;
  const auto value = [&](Field leaf, Field backing) {
    return job::value_of(now.job.materials, is_panel ? backing : leaf);
  };
  Sheets sheets;
  sheets.count = is_panel ? 1 : 2;
  sheets.thickness_um =
      is_panel ? now.job.panels[entry].backing_thickness_um : now.job.sections[entry].leaf_um;
  sheets.modulus = value(Field::leaf_modulus, Field::backing_modulus);
  sheets.poisson = value(Field::leaf_poisson, Field::backing_poisson);
  sheets.height_um = piece.length_um;
  return sheets;
}

Sheets sheets_at(const Solved& now, int bay) {
  const solve::BayResult& result = now.results.bays[static_cast<std::size_t>(bay)];
  return sheets_of(now, now.results.pieces[static_cast<std::size_t>(result.piece)]);
}

std::string newtons(std::int64_t mn) { return mm_text(mn, 1); }

std::string value_text(const material::Value& value) {
  return exact_mm_text(value.thousandths) + (value.is_assumed() ? " assumed" : "");
}

}  // namespace

std::optional<BayPush> bay_push(const Solved& now, int bay) {
  const auto at = static_cast<std::size_t>(bay);
  const solve::BayResult& result = now.results.bays[at];
  if (result.piece < 0 || result.is_flat() || result.is_by_stations) return std::nullopt;
  const Sheets sheets = sheets_at(now, bay);
  if (!sheets.modulus.is_known || !sheets.poisson.is_known) return std::nullopt;
  const job::Bay& of = now.job.bays[at];
  const auto push = frame::middle_push(sheets.strip(), of.chord_um, of.rise_um);
  if (!push) return std::nullopt;
  const std::int64_t shown = push->is_beyond_small ? push->exact_mn : push->small_bend_mn;
  return BayPush{*push, shown, frame::people_needed(shown, material::kAssumedPushMn)};
}

solve::Sum push_sum(const Solved& now, int bay) {
  const job::Bay& of = now.job.bays[static_cast<std::size_t>(bay)];
  const BayPush found = *bay_push(now, bay);
  const Sheets sheets = sheets_at(now, bay);
  const bool is_exact = found.push.is_beyond_small;
  solve::Sum sum;
  sum.figure = newtons(found.shown_mn);
  sum.rule = is_exact
                 ? "push in the middle by large bending, as the rise is over a twentieth of the "
                   "chord; the small-bend formula for comparison"
                 : "push in the middle: 48 × stiffness × height × rise ÷ chord³";
  // Cubes and squares are written out, as a pocket calculator takes them.
  const auto times_itself = [](const std::string& number, int times) {
    std::string words = number;
    for (int i = 1; i < times; ++i) words += " × " + number;
    return words;
  };
  const std::string poisson = exact_mm_text(sheets.poisson.thousandths);
  sum.numbers = {"48 × " + std::to_string(sheets.count) + " × " + value_text(sheets.modulus) +
                 " × " + times_itself(exact_mm_text(sheets.thickness_um), 3) + " ÷ (12 × (1 − " +
                 value_text(sheets.poisson) + " × " + poisson + ")) × " +
                 exact_mm_text(sheets.height_um) + " × " + exact_mm_text(of.rise_um) + " ÷ (" +
                 times_itself(exact_mm_text(of.chord_um), 3) +
                 ") = " + newtons(found.push.small_bend_mn)};
  if (is_exact) {
    sum.numbers[0] = "small bend: " + sum.numbers[0];
    sum.numbers.push_back("exact: " + sum.figure);
  }
  sum.source = is_exact ? "elastic curve with its exact curvature (Timoshenko and Gere)"
                        : "beam on two supports, load in the middle (Timoshenko and Gere)";
  sum.rests_on_assumed = sheets.modulus.is_assumed() || sheets.poisson.is_assumed();
  return sum;
}

solve::Sum people_sum(const Solved& now, int bay) {
  const BayPush found = *bay_push(now, bay);
  const std::string each = newtons(material::kAssumedPushMn);
  solve::Sum sum;
  sum.figure = std::to_string(found.people);
  sum.rule = "the push shared by people, rounded up";
  sum.numbers = {newtons(found.shown_mn) + " ÷ " + each + " assumed, rounded up: " + sum.figure};
  sum.source = "assumed: what one person pushes steadily";
  sum.rests_on_assumed = true;
  return sum;
}

}  // namespace pouncemark::web

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/plan/seam_card.h"
#include "engine/solve/arm.h"
#include "web/model/sew.h"

namespace pouncemark::web {
namespace {

using takeoff::UnderArm;

const solve::Row& row_at(const Solved& now, int row) {
  return now.results.rows[static_cast<std::size_t>(row)];
}

const char* word_of(UnderArm how) {
  constexpr std::array<const char*, 4> kWords = {"not known", "flat", "rolled", "does not fit"};
  return kWords[static_cast<std::size_t>(how)];
}

std::string because_of(const SewArm& arm) {
  const std::string takes = "the arm takes " + exact_mm_text(arm.throat_um);
  const std::string roll = "rolled it is " + short_mm_text(arm.roll_um, 1) + " across";
  switch (arm.how) {
    case UnderArm::flat:
      return takes;
    case UnderArm::rolled:
      return takes + "; " + roll;
    case UnderArm::does_not_fit:
      return mm_text_beside(arm.side_um - arm.throat_um, 0) + " too wide; " + roll;
    case UnderArm::not_known:
      break;
  }
  if (arm.throat_um == 0) return "type how far the arm stands from the needle";
  return roll + ": type the height under the arm";
}

std::string box_shown(const Solved& now, material::Field field) {
  const material::Value value = job::value_of(now.job.materials, field);
  return value.is_known ? exact_mm_text(value.thousandths) : "";
}

}  // namespace

int widest_row(const Solved& now, const SewKind& kind) {
  int widest = kind.rows.front();
  Um most = -1;
  for (const int row : kind.rows) {
    const Um side = solve::row_arm(now.job, now.results, row_at(now, row)).side_um;
    if (side > most) widest = row;
    most = std::max(most, side);
  }
  return widest;
}

SewArm sew_arm(const Solved& now, const Solved* before, const SewKind& kind) {
  SewArm arm;
  const int widest = widest_row(now, kind);
  const solve::Row& row = row_at(now, widest);
  const solve::RowArm lies = solve::row_arm(now.job, now.results, row);
  arm.row = row.code;
  arm.work_um = lies.work_um;
  arm.side_um = lies.side_um;
  arm.roll_um = lies.roll_um;
  arm.how = lies.how;
  arm.throat_um = solve::arm_of(now.job.materials).throat_um.value_or(0);
  plan::CardRow card = plan::card_row(now.job, now.results, widest);
  arm.away = card.begins_at_right ? card.right : card.left;
  arm.near = card.begins_at_right ? std::move(card.left) : std::move(card.right);
  arm.word = word_of(arm.how);
  arm.because = because_of(arm);
  if (row.place == solve::RowPlace::lap) {
    arm.order = "Sleeves added one by one from the left; widest side " +
                short_mm_text(arm.side_um, 1) + ", at " + row.code;
  }
  for (std::size_t i = 0; i < arm.boxes.size(); ++i) {
    arm.boxes[i].shown = box_shown(now, kArmFields[i]);
    if (before == nullptr) continue;
    const std::string was = box_shown(*before, kArmFields[i]);
    if (was != arm.boxes[i].shown) arm.boxes[i].was = was.empty() ? "not known" : was;
  }
  return arm;
}

}  // namespace pouncemark::web

#include "engine/job/materials.h"

namespace pouncemark::job {
namespace {

material::Sheet sheet_of(const Materials& materials, material::Item item) {
  auto kind = material::Field::leaf_sheet;
  if (item == material::Item::backing) kind = material::Field::backing_sheet;
  if (item == material::Item::facing) kind = material::Field::facing_sheet;
  const auto found = materials.values.find(kind);
  if (found == materials.values.end()) return material::begins_as(item);
  return static_cast<material::Sheet>(found->second.thousandths);
}

}  // namespace

material::Value value_of(const Materials& materials, material::Field field) {
  const auto found = materials.values.find(field);
  if (found != materials.values.end()) {
    const EnteredValue& entered = found->second;
    return {true, entered.thousandths, entered.words, entered.standing, entered.source};
  }
  return material::starting_value(field, sheet_of(materials, material::row_of(field).item));
}

}  // namespace pouncemark::job

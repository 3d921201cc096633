#include "engine/job/materials.h"

namespace pouncemark::job {
namespace {

material::Sheet sheet_of(const Materials& materials, material::Field kind) {
  const auto found = materials.values.find(kind);
  return static_cast<material::Sheet>(found == materials.values.end() ? 0
                                                                      : found->second.thousandths);
}

}  // namespace

material::Value value_of(const Materials& materials, material::Field field) {
  const auto found = materials.values.find(field);
  if (found != materials.values.end()) {
    const EnteredValue& entered = found->second;
    return {true, entered.thousandths, entered.words, entered.standing, entered.source};
  }
  const bool is_leaf = material::row_of(field).item == material::Item::leaf;
  const auto kind = is_leaf ? material::Field::leaf_sheet : material::Field::backing_sheet;
  return material::starting_value(field, sheet_of(materials, kind));
}

}  // namespace pouncemark::job

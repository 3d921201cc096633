#pragma once

#include <map>
#include <string>

#include "engine/job/json_node.h"
#include "engine/material/fields.h"

/// The values of materials, machine and bobbin as the user entered them. Part of the job (job.h).
namespace pouncemark::job {

/// One value entered: a number in thousandths of its unit, the number of a choice, or words.
struct EnteredValue {
  std::int64_t thousandths = 0;
  std::string words;
  material::Standing standing = material::Standing::typed;
  std::string source;  ///< free words: "label of lot 7"
  bool operator==(const EnteredValue&) const = default;
};

/// What was entered, and members this version does not know, by item.
struct Materials {
  std::map<material::Field, EnteredValue> values;
  std::map<material::Item, Extras> extras;
  Extras items_extras;
  bool operator==(const Materials&) const = default;

  bool is_empty() const { return values.empty() && extras.empty() && items_extras.empty(); }
};

/// The value of a field: as entered, or what it begins with (material::starting_value, of a sheet
/// by the kind the job says), or not known.
material::Value value_of(const Materials& materials, material::Field field);

}  // namespace pouncemark::job

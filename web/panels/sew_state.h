#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

#include "web/model/place.h"
#include "web/model/sew.h"

namespace pouncemark::web {

/// The slip that lies over the stage Sew.
enum class SewSlip : std::uint8_t { none, materials, trials };

/// The stage Sew as the page remembers it. Nothing of the job.
struct SewStage {
  std::string kind;        ///< id of the kind of row looked at; empty: the first there is
  std::int64_t turn = -1;  ///< of the bench that `view` was worked out for, with `made_for`
  std::string made_for;
  SewView view;
  bool is_at_machine = false;  ///< the work under the arm instead of the cross-section
  SewSlip slip = SewSlip::none;
  int item = 0;                ///< of the slip "Materials": material::Item
  std::string field;           ///< id of the line of it that is open
  std::size_t first = 0;       ///< first line shown, where not all have room
  std::size_t trial = 0;       ///< of the slip "Trial seam": the one that is looked at
  bool shows_results = false;  ///< of a trial, where not both of its parts have room
  std::string sentence;        ///< why the last thing asked for was not done
  Um droop_um[3] = {0, 0, 0};  ///< the droop test as far as it was typed
};

}  // namespace pouncemark::web

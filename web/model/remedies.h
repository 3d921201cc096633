#pragma once

#include <string>
#include <vector>

#include "web/model/solved.h"

namespace pouncemark::web {

/// Something that can be done about a finding: one action.
struct Remedy {
  std::string id;      ///< "staples_out": stable
  std::string words;   ///< on its button, a verb or what it would be: "Staples out first"
  job::Job job;        ///< the whole job with it done
  std::string action;  ///< as the bar says it afterwards
};

/// What truly helps: each was tried by solving the piece with it done, and the finding was gone or
/// concerned less, and no stop or warning of another kind came. Never called while drawing.
std::vector<Remedy> remedies_for(const Solved& now, const solve::Finding& finding);

}  // namespace pouncemark::web

#pragma once

#include <string>

#include "web/model/paper_choice.h"

namespace pouncemark::tests {

/// The choice of a paper by its name; a name nobody knows is a mistake of the test.
inline web::PaperChoice on_paper(const std::string& name) {
  web::PaperChoice choice;
  choice.paper = *sheets::read_paper(name);
  return choice;
}

}  // namespace pouncemark::tests

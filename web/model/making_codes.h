#pragma once

#include <string>

#include "web/model/making.h"

/// Inside of making: the codes of pieces and all that is called by them.
namespace pouncemark::web {

bool is_section(const job::Job& job, int piece);

/// Calls a section by another code: its changes and missing sleeves follow.
void give_code(job::Section& section, const std::string& code);

/// The next free code like this one: after "2" comes "3" or the first number above that is free.
/// Like no code: "1" for a section, "P1" for a panel.
std::string next_code(const job::Job& job, const std::string& like, bool is_section);

/// What else is called so, in words: "panel P1", "a sleeve of section 2"; empty where nothing is.
/// `piece` is the one that would be called so, -1 a new one.
std::string called_so(const job::Job& job, int piece, const std::string& code);

/// The job as it stands, with the sentence why nothing was made.
Made refused(const job::Job& job, int piece, std::string sentence);

}  // namespace pouncemark::web

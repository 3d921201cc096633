#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "web/model/history.h"
#include "web/model/place.h"

namespace pouncemark::web {

/// The file of the user's that a job was last in. Of the file's bytes only their checksum is known:
/// the first 12 hex digits of their SHA-256. An empty checksum: in none.
struct InFile {
  std::string name;
  std::string when;  ///< "26 Nov 14:02"
  std::string checksum;
};

/// What comes back with the job beside its list of actions.
struct KeptBeside {
  Place place;
  int stage = 0;
  InFile in_file;
  std::string when;  ///< the record was made: "26 Nov 14:02"
};

/// What a record holds, or the sentence that says why nothing of it is brought back.
struct Kept {
  History history;
  KeptBeside beside;
  std::string refusal;
  bool is_read() const { return refusal.empty(); }
};

/// Everything that must come back when the page is loaded again, as bytes: the job as it is saved,
/// its list of actions, and what stands beside. The same bytes for the same record.
std::string record_of(const History& history, const KeptBeside& beside);

/// Reads a record. One that is cut, damaged or of another version gives nothing, never a half.
Kept read_record(std::string_view bytes);

}  // namespace pouncemark::web

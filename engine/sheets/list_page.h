#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/drawing/drawing.h"
#include "engine/sheets/paper.h"

/// Inside of the lists: what stands round the body of every page. Only sheets' own files include
/// this.
namespace pouncemark::sheets {

/// Columns of a list side by side on the paper, none narrower than 80.
struct ListColumns {
  int count = 1;
  Um wide_um = 0;
  Um pitch_um = 0;  ///< from the left edge of one to that of the next
};
ListColumns list_columns(const Paper& paper);

/// What every page of one list says of itself.
struct ListTitle {
  std::string name;  ///< "Marsh Lights, section 1"
  std::string what;  ///< "tick list, 690 × 1420."
  std::string checksum;
};

/// As wide as any checksum: where pages are only counted it stands for the one not worked out.
inline constexpr std::string_view kAnyChecksum = "000000000000";

/// The room between title and caution, paper micrometres. It is the same on every page of a list
/// and for every checksum.
drawing::Box list_body(const Paper& paper, const ListTitle& title);

/// Page number, title, FRONT and caution of page `number` of `pages`.
void add_list_page(const Paper& paper, const ListTitle& title, std::int64_t number,
                   std::int64_t pages, drawing::Drawing* picture);

}  // namespace pouncemark::sheets

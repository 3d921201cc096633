#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/plan/drilling_strip.h"
#include "engine/sheets/page_cut.h"

namespace pouncemark::sheets {

/// Strips of paper at their true size, to be laid along an edge and drilled through: all strips of
/// a job after one another, cut into lengths to tape, as many a sheet as fit beside each other.
class DrillingStrips {
 public:
  /// A strip too wide for the paper is told of on the others' sheets.
  DrillingStrips(plan::DrillingStrips strips, std::string job_name, const Paper& paper,
                 const PrintCheck& check, std::string checksum);

  /// 0 where there is no strip.
  std::int64_t pages() const { return pages_; }

  /// Page `index`, 0 <= index < pages(), before correction. Micrometres of the paper from its lower
  /// left corner.
  drawing::Drawing page(std::int64_t index) const;

 private:
  /// What is said of all strips, line by line upward from `at`.
  void add_said(drawing::Spot at, Um long_um, drawing::Drawing* picture) const;

  /// One length of a strip on its page.
  struct Placed {
    std::size_t strip = 0;
    std::int64_t length = 0;  ///< from 0
    std::int64_t page = 0;
    Um left_um = 0;
  };

  plan::DrillingStrips strips_;
  std::string job_name_;
  std::string paper_;
  std::string checksum_;
  Cut across_;
  std::vector<Cut> along_;  ///< of each strip
  std::vector<Placed> placed_;
  std::int64_t pages_ = 0;
};

}  // namespace pouncemark::sheets

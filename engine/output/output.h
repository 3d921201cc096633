#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/base/result.h"
#include "engine/job/job.h"
#include "engine/output/guide.h"
#include "engine/output/page_counts.h"
#include "engine/solve/results.h"
#include "engine/writers/pdf.h"

/// Floor 10, output: the single door for every file and table we make: (kind, job, results,
/// options) to named bytes.
namespace pouncemark::output {

struct NamedBytes {
  std::string name;  ///< "marsh-lights_section-1_full-face_A4_front.pdf"
  std::string bytes;
};

struct PrintOptions {
  Guide guide = Guide::full_face;
  std::string paper = "A4";  ///< A4 A3 Letter Tabloid, or "900x1200" in mm
  Um bar_across_um = 0;      ///< what page 0's bar across measured; 0: not measured
  Um bar_along_um = 0;       ///< the same along
  int piece = -1;            ///< index into Results::pieces; -1: all, one file each
};

/// One file for each piece (one in all for guides of the whole job). Problems: paper_unknown,
/// paper_too_small, paper_bars_out, paper_too_many_pages.
Result<std::vector<NamedBytes>> print(const job::Job& job, const solve::Results& results,
                                      const PrintOptions& options, const writers::Faces& faces);

/// The figures as one JSON object with sorted keys, ending with a line end.
std::string figures_json(const job::Job& job, const solve::Results& results);

/// "stop", "warn" or "note".
const char* severity_word(solve::Severity severity);

/// The findings as lines: severity, place, sentence, what to change, and in brackets how it was
/// worked out and where that comes from.
std::string check_lines(const solve::Results& results);

}  // namespace pouncemark::output

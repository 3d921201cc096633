#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/geometry/units.h"
#include "engine/job/job.h"

/// Making a job by hand: sections, panels, their names and their order. Pure functions of a job.
/// `piece` counts the sections in the job's order and then the panels, as solve::Results does.
namespace pouncemark::web {

/// The job after something was made, the action in words and the piece to look at; or, where it
/// cannot be, one sentence why: the job is then as it was.
struct Made {
  job::Job job;
  std::string action;
  std::string refused;  ///< empty: it was done
  int piece = 0;
};

/// The four figures of a section.
struct SectionPlan {
  int count = 1;              ///< numbers, those missing counted in
  std::vector<Um> widths_um;  ///< repeats until each number has one
  Um lap_um = 0;
  job::Side lies_over = job::Side::right;  ///< the neighbour each sleeve lies over
  bool operator==(const SectionPlan&) const = default;
};

/// The sizes of a panel seen from the front, and which upright edge is sewn.
struct PanelPlan {
  Um width_um = 690'000;
  Um length_um = 1'420'000;
  job::Side hinge = job::Side::left;
};

/// As the section stands; a lone sleeve begins as two with a lap of 18, or half its width.
SectionPlan plan_of(const job::Section& section);

/// A section of the plan. Lap rows it never had begin like its side rows, their staples coming out
/// as the foot comes. What differed on sleeves that are no longer there goes with them.
Made with_plan(const job::Job& job, int piece, const SectionPlan& plan);

/// What would follow from a plan, a line each; or why it cannot be.
struct Foretold {
  std::vector<std::string> follows;
  std::string refused;
};
Foretold foretold(const job::Job& job, int piece, const SectionPlan& plan);

/// One more section, a lone sleeve as long as the last section; one more panel, its rows as the
/// last panel has them.
Made with_section(const job::Job& job);
Made with_panel(const job::Job& job, const PanelPlan& plan);

/// The piece again right after itself, under the next free code; the bays stay as they are.
Made with_copy(const job::Job& job, int piece);

/// Another name, another code. The bay that holds the piece and its sleeves' codes follow.
Made with_name(const job::Job& job, std::string_view name);
Made with_code(const job::Job& job, int piece, std::string_view code);

/// One place earlier (-1) or later (+1) among the sections, or among the panels; codes stay.
Made with_piece_moved(const job::Job& job, int piece, int by);

/// Sections 1, 2, 3 ... and panels P1, P2 ... in their order; `piece` is the one to look at.
Made with_new_numbers(const job::Job& job, int piece);

/// Without the piece: its bay stands empty.
Made without_piece(const job::Job& job, int piece);

/// The code of a piece that is there; with its kind, "section 2"; how many there are.
const std::string& code_of(const job::Job& job, int piece);
std::string piece_words(const job::Job& job, int piece);
int piece_count(const job::Job& job);

inline constexpr int kMostSleevesOfSection = 1'000;  ///< as the job file has it

/// A count as typed: the number, or the sentence that says why not.
struct CountEntry {
  int count = 0;  ///< 0: refused
  std::string sentence;
};
CountEntry read_count(std::string_view text);

/// Widths as typed, "110" or "110, 96, 110"; empty with a sentence where one cannot be read.
struct WidthsEntry {
  std::vector<Um> widths_um;
  std::string sentence;
};
WidthsEntry read_widths(std::string_view text);
std::string widths_text(const std::vector<Um>& widths_um);

}  // namespace pouncemark::web

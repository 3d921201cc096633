#include "engine/plan/machine_card.h"

#include <algorithm>
#include <cstdint>
#include <set>
#include <string_view>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/plan/card_findings.h"
#include "engine/plan/trial_card.h"
#include "engine/solve/arm.h"
#include "engine/solve/sewing.h"

namespace pouncemark::plan {
namespace {

using material::Field;
using material::Value;
using solve::RowPlace;
using takeoff::UnderArm;

constexpr Um kMachineLongUm = 800'000;  ///< assumed: along the row, table to table
constexpr std::int64_t kMostStitches = 400'000;

bool is_sewn(const solve::Row& row) {
  return row.kind == solve::RowKind::stitch && row.run.points() > 0;
}

/// A length of the machine, or that it was not measured.
CardCell measured_cell(const job::Job& job, Field field, const char* label) {
  const Value value = job::value_of(job.materials, field);
  if (!value.is_known) return {label, "?", {}, "not measured"};
  return {label, short_mm_text(value.thousandths, 1), {}, "mm"};
}

CardCell foot_cell(const job::Job& job, const solve::Results& results) {
  CardCell cell = measured_cell(job, Field::machine_foot_lift, "foot lifts");
  Um thickest = 0;
  for (const solve::Row& row : results.rows) thickest = std::max(thickest, row.stack_um);
  if (thickest > 0) cell.over = "stack " + short_mm_text(thickest, 2);
  return cell;
}

CardCell speed_cell(const job::Job& job) {
  const Value speed = job::value_of(job.materials, Field::machine_speed);
  if (!speed.is_known) return {"stitches a minute", "400", "at most", "begin at 200"};
  return {"stitches a minute", short_mm_text(speed.thousandths, 0), "as entered",
          speed.thousandths > kMostStitches ? "400 at most" : "200 to 400"};
}

CardCell weighed_thread_cell(const job::Job& job) {
  CardCell cell = thread_cell(job);
  cell.label = "thread tex, top and bottom";
  cell.figure = std::to_string(job.thread_tex);
  const Value weighed = job::value_of(job.materials, Field::thread_weighed_tex);
  cell.over = weighed.is_known ? "weighed " + short_mm_text(weighed.thousandths, 1) : "not weighed";
  return cell;
}

const char* metres_from(const solve::Bobbin& bobbin) {
  switch (bobbin.from) {
    case solve::MetresFrom::typed:
      return "as entered";
    case solve::MetresFrom::measures:
      return "by its size";
    case solve::MetresFrom::assumed:
      return "assumed";
  }
  return "";
}

/// Metres with no idle zeros.
std::string metres(Um um) { return short_mm_text(divide_round(um, 1'000), 2); }

CardCell rows_cell(const solve::Sewing& sewing) {
  const std::string figure = sewing.rows_per_bobbin ? count_text(*sewing.rows_per_bobbin) : "?";
  return {"rows a bobbin", figure, metres(sewing.bobbin.thread_um) + " m",
          metres_from(sewing.bobbin)};
}

CardCell fills_cell(const solve::Sewing& sewing) {
  CardCell cell{"bobbins to wind", {}, {}, {}};
  std::int64_t all = 0;
  const std::array<const char*, 3> kinds = {" side", " joining", " panel"};
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    all += sewing.fills[i];
    if (sewing.fills[i] == 0) continue;
    std::string& line = i < 2 ? cell.over : cell.beside;
    const bool is_first = cell.over.empty() && cell.beside.empty();
    if (!is_first) line += line.empty() ? "+ " : " + ";
    line += count_text(sewing.fills[i]) + kinds[i];
  }
  cell.figure = count_text(all);
  if (sewing.all_not_known() > 0) {
    return {cell.label, "?", {}, "a stack is not known"};
  }
  return cell;
}

/// So much clear table, half before the needle and half behind it.
CardCell run_cell(const solve::Results& results) {
  Um longest = 0;
  for (const solve::Row& row : results.rows) {
    if (!is_sewn(row)) continue;
    const solve::Piece& piece = results.pieces[static_cast<std::size_t>(row.piece)];
    const bool is_across = row.place == RowPlace::panel && row.guide.from.y == row.guide.to.y;
    longest = std::max(longest, is_across ? piece.width_um : piece.length_um);
  }
  return {"free run of tables", paper_text(2 * longest + kMachineLongUm),
          "2 × " + paper_text(longest), "+ " + paper_text(kMachineLongUm)};
}

/// The sheet that softens: the leaves, or the backing where there is no sleeve.
std::string speed_band(const job::Job& job) {
  const bool has_sleeves = !job.sections.empty();
  const Value softens =
      job::value_of(job.materials, has_sleeves ? Field::leaf_softens : Field::backing_softens);
  const Value sheet =
      job::value_of(job.materials, has_sleeves ? Field::leaf_sheet : Field::backing_sheet);
  std::string words = "200 TO 400 STITCHES A MINUTE: ";
  words += material::sheet_name(static_cast<material::Sheet>(sheet.thousandths));
  return words + " SOFTENS NEAR " + short_mm_text(softens.thousandths, 0) + " °C";
}

std::string how_words(const solve::RowArm& arm, const takeoff::Arm& machine) {
  switch (arm.how) {
    case UnderArm::flat:
      return "fits flat";
    case UnderArm::rolled:
      return "rolled " + paper_text(divide_up(arm.roll_um, 500) * 500) + " across";
    case UnderArm::does_not_fit:
      return "does not fit";
    case UnderArm::not_known:
      break;
  }
  return machine.throat_um ? "height not measured" : "arm not measured";
}

/// The row of a set with the widest smaller side.
struct Widest {
  const solve::Row* row = nullptr;
  solve::RowArm arm;
  std::string what;
  std::string order;

  void ask(const job::Job& job, const solve::Results& results, const solve::Row& other) {
    const solve::RowArm its = solve::row_arm(job, results, other);
    const bool is_worse = its.how == UnderArm::does_not_fit && arm.how != UnderArm::does_not_fit;
    const bool is_better = its.how != UnderArm::does_not_fit && arm.how == UnderArm::does_not_fit;
    if (row != nullptr && !is_worse && (is_better || its.side_um <= arm.side_um)) return;
    row = &other;
    arm = its;
  }
};

/// Sections joined one by one from the left, then side rows and panel rows, each as wide as it
/// gets.
std::vector<Widest> widest_of(const job::Job& job, const solve::Results& results) {
  std::vector<Widest> all;
  Widest side;
  Widest panel;
  for (const solve::Piece& piece : results.pieces) {
    Widest joins;
    for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
      const solve::Row& row = results.rows[static_cast<std::size_t>(i)];
      if (!is_sewn(row)) continue;
      Widest& set = row.place == RowPlace::lap ? joins : row.place == RowPlace::side ? side : panel;
      set.ask(job, results, row);
    }
    if (joins.row == nullptr) continue;
    joins.what = "section " + piece.code;
    joins.order = counted(static_cast<std::int64_t>(piece.sleeves.size()), "sleeve", "sleeves") +
                  " from the left";
    all.push_back(std::move(joins));
  }
  for (Widest* set : {&side, &panel}) {
    if (set->row == nullptr) continue;
    set->what = kind_words(set->row->place);
    set->order = set == &side ? "each sleeve alone" : "edge turned to the right";
    all.push_back(std::move(*set));
  }
  return all;
}

std::vector<ArmLine> arm_lines(const job::Job& job, const solve::Results& results) {
  std::vector<Widest> all = widest_of(job, results);
  std::stable_sort(all.begin(), all.end(), [](const Widest& a, const Widest& b) {
    const bool a_stops = a.arm.how == UnderArm::does_not_fit;
    const bool b_stops = b.arm.how == UnderArm::does_not_fit;
    return a_stops != b_stops ? a_stops : a.arm.side_um > b.arm.side_um;
  });
  const takeoff::Arm machine = solve::arm_of(job.materials);
  std::vector<ArmLine> lines;
  for (const Widest& one : all) {
    lines.push_back({one.what, one.order, one.row->code, paper_text(one.arm.side_um),
                     how_words(one.arm, machine), one.arm.how == UnderArm::does_not_fit});
  }
  return lines;
}

std::vector<DialLine> dial_lines(const solve::Results& results) {
  std::vector<DialLine> dials;
  for (const RowPlace place : trial_card_kinds(results)) {
    std::set<Um> stitches;
    for (const solve::Row& row : results.rows) {
      if (is_sewn(row) && row.place == place) stitches.insert(row.asked_um);
    }
    std::string words = short_mm_text(*stitches.begin(), 2);
    if (stitches.size() > 1) words += " to " + short_mm_text(*stitches.rbegin(), 2);
    dials.push_back({kind_words(place), words});
  }
  return dials;
}

/// "SECTION 1", the code as it is written.
std::string in_capitals(const ArmLine& line) {
  constexpr std::string_view kSection = "section ";
  std::string words = line.what;
  const std::size_t end = words.starts_with(kSection) ? kSection.size() : words.size();
  for (std::size_t i = 0; i < end; ++i) {
    if (words[i] >= 'a') words[i] = static_cast<char>(words[i] - 'a' + 'A');
  }
  return words;
}

std::string bobbin_line(const job::Job& job, const solve::Sewing& sewing) {
  const Value kept = job::value_of(job.materials, Field::bobbin_kept_back);
  const std::string words = "A bobbin less " + short_mm_text(kept.thousandths, 1) +
                            " % kept back sews " + metres(sewing.bobbin.usable_um) + " m";
  if (sewing.all_not_known() > 0) return words + ".";
  return words + "; the longest row takes " + metres(sewing.longest_row_um) + " m.";
}

}  // namespace

MachineCard machine_card(const job::Job& job, const solve::Results& results) {
  const solve::Sewing sewing = solve::sewing_of(job, results);
  MachineCard card;
  card.name = job::value_of(job.materials, Field::machine_name).words;
  card.job_name = job.name;
  card.cells = {measured_cell(job, Field::machine_throat, "throat, right of the needle"),
                measured_cell(job, Field::machine_under_arm, "height under the arm"),
                foot_cell(job, results),
                speed_cell(job),
                needle_cell(job),
                weighed_thread_cell(job),
                rows_cell(sewing),
                fills_cell(sewing),
                run_cell(results)};
  card.lines = {bobbin_line(job, sewing),
                "Clear tables, half before the needle, half behind; machine " +
                    paper_text(kMachineLongUm) + " long, assumed."};
  card.dials = dial_lines(results);
  card.arm = arm_lines(job, results);
  const bool stops = !card.arm.empty() && card.arm.front().does_not_fit;
  card.band = stops ? "STOP: " + in_capitals(card.arm.front()) + " DOES NOT GO UNDER THE ARM"
                    : speed_band(job);
  for (const solve::Finding* finding : findings_of_the_job(results)) {
    const bool is_stop = finding->severity == solve::Severity::stop;
    card.findings.push_back((is_stop ? "STOP " : "WARN ") + in_short(*finding));
  }
  return card;
}

}  // namespace pouncemark::plan

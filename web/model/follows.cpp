#include <algorithm>
#include <charconv>
#include <cstddef>
#include <optional>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/output/page_counts.h"
#include "web/model/paper_choice.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using Lines = std::vector<FollowLine>;
using Rows = std::vector<const solve::Row*>;
using solve::RowKind;

/// The slip of one place while it is made.
struct Slip {
  const Solved& now;
  Place place;
  Lines lines;
  bool has_pages = true;  ///< pages take long to count

  const solve::Piece& piece() const {
    return now.results.pieces[static_cast<std::size_t>(place.piece)];
  }
  Rows rows(RowKind kind) const { return rows_at(now.results, place, kind); }

  FollowLine& add(std::string id, std::string label, solve::Sum sum, std::string unit = {}) {
    FollowLine line;
    line.id = std::move(id);
    line.label = std::move(label);
    line.figure = sum.figure;
    line.unit = std::move(unit);
    line.sum = std::move(sum);
    lines.push_back(std::move(line));
    return lines.back();
  }
};

/// What an exact row leaves over, and at which end it lies.
void add_left_over(Slip& slip, const solve::Row& row, job::LeftOver left_over) {
  const Solved& now = slip.now;
  if (left_over == job::LeftOver::extra_point && row.run.left_over_um > 0) {
    slip.add("last_gap", "Last gap, at the top end",
             solve::last_gap_sum(now.job, now.results, row));
    return;
  }
  std::string label = "Left over";
  if (row.run.left_over_um > 0) {
    label += left_over == job::LeftOver::split ? ", half at each end" : ", at the top end";
  }
  slip.add("left_over", std::move(label), solve::left_over_sum(now.job, now.results, row));
}

void add_staple_row(Slip& slip, const Rows& rows) {
  const solve::Row& row = *rows.front();
  const job::Job& job = slip.now.job;
  const solve::Results& results = slip.now.results;
  slip.add("points", rows.size() == 1 ? "Points in the row" : "Points in each row",
           solve::points_sum(job, results, row));
  if (row.run.gaps > 0) {
    slip.add("spacing", "Spacing", solve::spacing_sum(job, results, row));
    if (solve::is_clear_gap(job, row)) {
      slip.add("clear_gap", "Clear gap", solve::clear_gap_sum(job, results, row));
    }
  }
  if (row.run.step_um != 0) {
    const job::Section& section = *section_at(job, results, slip.place);
    const auto& sleeve = slip.piece().sleeves[static_cast<std::size_t>(slip.place.sleeve)];
    add_left_over(slip, row, job::side_rows_of(section, sleeve.number).staple.left_over);
  }
  slip.add("first", "First point from datum", solve::first_sum(job, results, row));
  slip.add("last", "Last point", solve::last_sum(job, results, row));
}

void add_blank(Slip& slip) {
  const job::Job& job = slip.now.job;
  const solve::Results& results = slip.now.results;
  const auto& sleeve = slip.piece().sleeves[static_cast<std::size_t>(slip.place.sleeve)];
  const int piece = slip.place.piece;
  const bool is_one = sleeve.blank.count == 1;
  slip.add("blank", is_one ? "Blank" : "Blanks, two leaves",
           solve::blank_sum(job, results, piece, slip.place.sleeve));
  if (!is_one) return;
  const bool is_round = section_at(job, results, slip.place)->make == job::Make::round;
  slip.add("fold", is_round ? "Flange line from the edge" : "Fold line from the edge",
           solve::fold_sum(job, results, piece, slip.place.sleeve));
}

void add_stitches(Slip& slip) {
  const Rows rows = slip.rows(RowKind::stitch);
  if (rows.empty()) return;
  slip.add("stitch_holes", "Stitch holes",
           solve::points_together_sum(slip.now.job, slip.now.results, rows));
  slip.add("sewing", "Sewing", solve::sewing_sum(rows), "m");
}

void add_pages(Slip& slip, std::string label) {
  const auto index = static_cast<std::size_t>(slip.place.piece);
  if (!slip.has_pages || index >= slip.now.results.pieces.size()) return;
  const PaperChoice choice;
  const auto pages =
      output::full_face_grid(slip.now.job, slip.now.results, slip.place.piece, choice.paper.name);
  if (!pages) return;
  slip.add("pages", std::move(label), output::full_face_sum(*pages, choice.paper, slip.piece()),
           "pages");
}

void add_total(Slip& slip, std::string id, std::string label, solve::Total total,
               std::string unit = {}) {
  slip.add(std::move(id), std::move(label), solve::total_sum(slip.now.results, total),
           std::move(unit))
      .rank = LineRank::whole_job;
}

/// What all pieces come to, where there is another one.
void add_whole_job(Slip& slip) {
  if (slip.now.results.pieces.size() < 2) return;
  add_total(slip, "job_staples", "In the whole job, staples", solve::Total::staples);
  add_total(slip, "job_stitch_holes", "In the whole job, holes", solve::Total::stitch_holes);
  add_total(slip, "job_sewing", "In the whole job, sewing", solve::Total::sewing, "m");
}

/// How many findings of one kind there are, piece by piece.
void add_found(Slip& slip, solve::Severity severity, std::string id, std::string label,
               const char* rule) {
  const solve::Results& results = slip.now.results;
  std::vector<std::int64_t> counts(results.pieces.size() + 1);
  for (const solve::Finding& finding : results.findings) {
    if (finding.severity == severity) ++counts[static_cast<std::size_t>(finding.piece + 1)];
  }
  std::int64_t all = 0;
  std::string terms;
  int pieces = 0;
  for (const std::int64_t count : counts) {
    if (count == 0) continue;
    terms += (terms.empty() ? "" : " + ") + count_text(count);
    all += count;
    ++pieces;
  }
  solve::Sum sum;
  sum.figure = count_text(all);
  sum.rule = rule;
  sum.numbers = {pieces > 1 ? terms + " = " + sum.figure : sum.figure};
  sum.source = pieces > 1 ? "piece by piece, one for each cause" : "one for each cause";
  slip.add(std::move(id), std::move(label), std::move(sum)).rank = LineRank::whole_job;
}

/// Everything of the whole job that an action on one piece may change.
Lines lines_of_job(const Solved& now, Place place) {
  Slip slip{now, place, {}, false};
  add_whole_job(slip);
  if (now.results.pieces.size() > 1) {
    add_total(slip, "job_points", "In the whole job, points", solve::Total::panel_points);
  }
  add_found(slip, solve::Severity::stop, "job_stops", "Stops found", "what stops the work");
  add_found(slip, solve::Severity::warn, "job_warnings", "Warnings found", "what to look out for");
  add_found(slip, solve::Severity::note, "job_notes", "Notes found", "what to know");
  return std::move(slip.lines);
}

void sleeve_lines(Slip& slip) {
  const Rows staples = slip.rows(RowKind::staple);
  if (!staples.empty()) add_staple_row(slip, staples);
  add_blank(slip);
  if (!staples.empty()) {
    slip.add("staple_holes", "Staple holes", solve::staple_holes_sum(staples));
  }
  add_stitches(slip);
  const solve::Piece& piece = slip.piece();
  const bool is_alone = piece.sleeves.size() == 1;
  add_pages(slip, is_alone ? "Full-face, A4" : "Full-face of section " + piece.code);
  if (is_alone) add_whole_job(slip);
}

/// The number after "total." or "middle.", as the index of a sleeve that is there.
std::optional<int> sleeve_asked_for(const solve::Piece& piece, std::string_view opened,
                                    std::string_view kind) {
  if (opened.substr(0, kind.size()) != kind) return std::nullopt;
  const std::string_view digits = opened.substr(kind.size());
  int number = 0;
  const auto read = std::from_chars(digits.data(), digits.data() + digits.size(), number);
  if (read.ptr != digits.data() + digits.size()) return std::nullopt;
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) {
    if (piece.sleeves[i].number + 1 == number) return static_cast<int>(i);
  }
  return std::nullopt;
}

/// A line that stands there only because it was asked for.
void add_asked_for(Slip& slip, std::string_view opened) {
  const job::Job& job = slip.now.job;
  const solve::Results& results = slip.now.results;
  const solve::Piece& piece = slip.piece();
  const int at = slip.place.piece;
  if (const auto total = sleeve_asked_for(piece, opened, "total.")) {
    slip.add(std::string(opened), "Running total " + std::string(opened.substr(6)),
             solve::running_total_sum(job, results, at, *total));
  }
  const auto lap = sleeve_asked_for(piece, opened, "middle.");
  if (lap && *lap < static_cast<int>(piece.row_middles_um.size())) {
    slip.add(std::string(opened), "Joining row right of " + std::string(opened.substr(7)),
             solve::row_middle_sum(job, results, at, *lap));
  }
}

void section_lines(Slip& slip, std::string_view opened) {
  const job::Job& job = slip.now.job;
  const solve::Results& results = slip.now.results;
  const int piece = slip.place.piece;
  const job::Section& section = *section_at(job, results, slip.place);
  if (!section.missing.empty()) {
    slip.add("sleeves", "Sleeves that are there", solve::sleeves_sum(job, results, piece));
  }
  // The headline says these already.
  slip.add("width", "Width", solve::width_sum(job, results, piece)).rank = LineRank::more;
  add_asked_for(slip, opened);
  slip.add("likely", "Could end up", solve::likely_sum(job, results, piece)).rank = LineRank::more;
  slip.add("worst", "At worst", solve::worst_sum(job, results, piece)).rank = LineRank::more;
  slip.add("laps", "Laps of " + exact_mm_text(section.lap_um), solve::laps_sum(results, piece))
      .rank = LineRank::more;
  slip.add("side_rows", "Side rows", solve::side_rows_sum(results, piece));
  slip.add("joining_rows", "Joining rows", solve::joining_rows_sum(results, piece));
  const Rows staples = slip.rows(RowKind::staple);
  if (!staples.empty()) {
    slip.add("staple_points", "Staple points", solve::points_together_sum(job, results, staples));
  }
  add_stitches(slip);
  add_pages(slip, "Full-face, A4");
  add_whole_job(slip);
}

void panel_lines(Slip& slip) {
  const job::Job& job = slip.now.job;
  const solve::Results& results = slip.now.results;
  const Rows rows = slip.rows(RowKind::point);
  for (const solve::Row* row : rows) {
    const std::string name = row->code.substr(slip.piece().code.size() + 1);
    slip.add("points_" + name, with_capital(name + ", points"),
             solve::points_sum(job, results, *row));
    if (row->run.gaps > 0) {
      slip.add("apart_" + name, with_capital(name + ", apart"),
               solve::spacing_sum(job, results, *row));
    }
  }
  if (!rows.empty()) {
    slip.add("points", "Points in all", solve::points_together_sum(job, results, rows));
  }
  add_stitches(slip);
  add_pages(slip, "Full-face, A4");
  add_whole_job(slip);
}

/// What all pieces come to, line by line.
void hanging_lines(Slip& slip) {
  const solve::Results& results = slip.now.results;
  const std::pair<solve::Total, const char*> totals[] = {
      {solve::Total::staples, "Staples"},
      {solve::Total::panel_points, "Points of panels"},
      {solve::Total::side_rows, "Side rows"},
      {solve::Total::lap_rows, "Joining rows"},
      {solve::Total::panel_rows, "Rows of panels"},
      {solve::Total::stitch_holes, "Stitch holes"}};
  for (const auto& [total, label] : totals) {
    slip.add("job." + std::to_string(static_cast<int>(total)), label,
             solve::total_sum(results, total));
  }
  slip.add("job_sewing", "Sewing", solve::total_sum(results, solve::Total::sewing), "m");
}

Lines lines_of(const Solved& now, Place place, std::string_view opened, bool has_pages = true) {
  if (now.results.pieces.empty()) return {};
  Slip slip{now, place, {}, has_pages};
  if (is_whole_hanging(place)) {
    hanging_lines(slip);
  } else if (panel_at(now.job, now.results, place) != nullptr) {
    panel_lines(slip);
  } else if (place.sleeve < 0) {
    section_lines(slip, opened);
  } else {
    sleeve_lines(slip);
  }
  return std::move(slip.lines);
}

const FollowLine* line_called(const Lines& lines, const std::string& id) {
  for (const FollowLine& line : lines) {
    if (line.id == id) return &line;
  }
  return nullptr;
}

/// Those of some more lines that the last action changed, where they do not stand there yet.
void add_changed(Lines& lines, Lines more, const Lines& old) {
  for (FollowLine& line : more) {
    const FollowLine* was = line_called(old, line.id);
    if (was == nullptr || was->figure == line.figure) continue;
    if (line_called(lines, line.id) != nullptr) continue;
    line.before = was->figure;
    lines.push_back(std::move(line));
  }
}

/// The lines of the section a sleeve belongs to, as its slip says them.
Lines lines_of_section(const Solved& now, Place place) {
  Lines lines = lines_of(now, {place.piece, -1}, {}, false);
  const std::string of =
      "In section " + now.results.pieces[static_cast<std::size_t>(place.piece)].code + ", ";
  Lines own;
  for (FollowLine& line : lines) {
    if (line.rank == LineRank::whole_job) continue;
    line.id = "section_" + line.id;
    line.label.front() =
        static_cast<char>(line.label.front() + (line.label.front() < 'a' ? 'a' - 'A' : 0));
    line.label = of + line.label;
    line.rank = LineRank::more;
    own.push_back(std::move(line));
  }
  return own;
}

/// What the last action changed beyond the place itself: in its section, and in the whole job.
void add_elsewhere(Lines& lines, const Solved& now, const Solved& before, Place place) {
  const auto index = static_cast<std::size_t>(place.piece);
  if (place.sleeve >= 0 && now.results.pieces[index].sleeves.size() > 1) {
    add_changed(lines, lines_of_section(now, place), lines_of_section(before, place));
  }
  add_changed(lines, lines_of_job(now, place), lines_of_job(before, place));
}

}  // namespace

std::vector<FollowLine> follow_lines(const Solved& now, const Solved* before, Place place,
                                     std::string_view opened) {
  Lines lines = lines_of(now, place, opened);
  if (before == nullptr || held_within(before->results, place) != place) return lines;
  const Lines old = lines_of(*before, place, opened);
  for (FollowLine& line : lines) {
    for (const FollowLine& was : old) {
      if (was.id == line.id && was.figure != line.figure) line.before = was.figure;
    }
  }
  if (place.piece >= 0 && !now.results.pieces.empty()) add_elsewhere(lines, now, *before, place);
  return lines;
}

}  // namespace pouncemark::web

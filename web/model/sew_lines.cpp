#include <utility>

#include "engine/solve/arm.h"
#include "engine/solve/row_sewing.h"
#include "engine/solve/sewing.h"
#include "web/model/sew.h"

namespace pouncemark::web {
namespace {

using Lines = std::vector<FollowLine>;
using solve::RowPlace;

void add(Lines& lines, std::string id, std::string label, solve::Sum sum, std::string unit = {},
         LineRank rank = LineRank::needed) {
  FollowLine line;
  line.id = std::move(id);
  line.label = std::move(label);
  line.figure = sum.figure;
  line.unit = std::move(unit);
  line.sum = std::move(sum);
  line.rank = rank;
  lines.push_back(std::move(line));
}

void add_row(const Solved& now, const SewKind& kind, Lines& lines) {
  const solve::Row& row = now.results.rows[static_cast<std::size_t>(kind.rows.front())];
  const job::Job& job = now.job;
  add(lines, "sew_stack", row.stack_is_typed ? "Stack, as typed" : "Stack, thickest place",
      solve::stack_sum(job, now.results, row));
  add(lines, "sheet_left", "Sheet left", solve::sheet_left_sum(job, row));
  add(lines, "eye", "Thread in the eye", solve::eye_sum(job));
  add(lines, "row_holes", "Holes in a row", solve::points_sum(job, now.results, row));
  if (row.stack_um > 0) {
    add(lines, "thread_row", "Thread of a row, each", solve::thread_sum(job, now.results, row),
        "m");
  }
}

/// A figure that rests on something no one has entered yet: what that is.
solve::Sum not_known(const char* missing) {
  solve::Sum sum;
  sum.figure = "not known";
  sum.rule = "worked out once it is entered";
  sum.numbers = {std::string(missing) + ": not known"};
  sum.source = "Materials";
  return sum;
}

/// What the row would bear, and how it goes under the arm.
void add_more(const Solved& now, const SewKind& kind, Lines& lines) {
  const solve::Row& row = now.results.rows[static_cast<std::size_t>(kind.rows.front())];
  const job::Job& job = now.job;
  const solve::RowSewing sewing = solve::row_sewing_of(job, now.results, row);
  const auto more = [&](const char* id, const char* label, solve::Sum sum, const char* unit) {
    add(lines, id, label, std::move(sum), unit, LineRank::more);
  };
  more("needle_guess", "Needles to try", solve::needle_guess_sum(job), "");
  more("thread_across", "Thread, across", solve::thread_across_sum(job), "");
  if (sewing.stress) {
    more("stress_across", "Stress at holes, across", solve::stress_sum(job, row, true), "times");
    more("stress_along", "Stress at holes, along", solve::stress_sum(job, row, false), "times");
  }
  more("strength", "Seam strength",
       sewing.seam_mn_each_mm ? solve::seam_strength_sum(job, row)
                              : not_known("strength of the thread"),
       sewing.seam_mn_each_mm ? "N/mm" : "");
  more("shear_out", "A stitch shears out at",
       sewing.shear_out_mn ? solve::shear_out_sum(job, now.results, row)
                           : not_known("shear strength of the sheet"),
       sewing.shear_out_mn ? "N" : "");
  const solve::Row& widest = now.results.rows[static_cast<std::size_t>(widest_row(now, kind))];
  more("arm_side", "Right of the needle", solve::side_sum(job, now.results, widest), "");
  if (solve::row_arm(job, now.results, widest).roll_um > 0) {
    more("arm_roll", "Across, were it rolled", solve::roll_sum(job, now.results, widest), "");
  }
}

void add_job(const Solved& now, Lines& lines) {
  const solve::Sewing sewing = solve::sewing_of(now.job, now.results);
  if (sewing.thread_each_um == 0) return;
  const bool is_all = sewing.all_not_known() == 0;
  add(lines, "thread_each", is_all ? "Thread for the job, each" : "Thread for the job, at least",
      solve::thread_each_sum(now.job, now.results), "m");
  add(lines, "rows_per_bobbin", "Rows a bobbin",
      sewing.rows_per_bobbin ? solve::rows_per_bobbin_sum(now.job, now.results)
                             : not_known("the stack of some rows"));
  constexpr std::pair<RowPlace, const char*> kFills[] = {{RowPlace::side, "Bobbins, side rows"},
                                                         {RowPlace::lap, "Bobbins, joining rows"},
                                                         {RowPlace::panel, "Bobbins, panels"}};
  for (const auto& [place, label] : kFills) {
    const bool is_known = sewing.not_known_of(place) == 0;
    if (is_known && sewing.fills_of(place) == 0) continue;
    add(lines, "fills." + std::to_string(static_cast<int>(place)), label,
        is_known ? solve::bobbin_fills_sum(now.job, now.results, place)
                 : not_known("the stack of some of these rows"),
        {}, LineRank::whole_job);
  }
  add(lines, "job_holes", "Stitch holes, the job",
      solve::total_sum(now.results, solve::Total::stitch_holes), {}, LineRank::whole_job);
}

Lines lines_of(const Solved& now, Place place, std::string_view kind_id) {
  Lines lines;
  const auto kinds = sew_kinds(now, place);
  const SewKind* kind = kinds.empty() ? nullptr : &kinds.front();
  for (const SewKind& one : kinds) {
    if (one.id == kind_id) kind = &one;
  }
  if (kind != nullptr) add_row(now, *kind, lines);
  add_job(now, lines);
  if (kind != nullptr) add_more(now, *kind, lines);
  return lines;
}

}  // namespace

std::vector<FollowLine> sew_lines(const Solved& now, const Solved* before, Place place,
                                  std::string_view kind) {
  Lines lines = lines_of(now, place, kind);
  if (before == nullptr || held_within(before->results, place) != place) return lines;
  for (const FollowLine& was : lines_of(*before, place, kind)) {
    for (FollowLine& line : lines) {
      if (line.id == was.id && line.figure != was.figure) line.before = was.figure;
    }
  }
  return lines;
}

}  // namespace pouncemark::web

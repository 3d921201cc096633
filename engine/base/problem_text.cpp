#include <array>
#include <string_view>

#include "engine/base/problem.h"

namespace pouncemark {
namespace {

struct Row {
  ProblemCode code;
  std::string_view what;
  std::string_view remedy;
};

using enum ProblemCode;

constexpr std::array kRows = {
    Row{length_unreadable, "this is not a length",
        "type millimetres, or a number with mm, cm, m or inch"},
    Row{length_negative, "a length cannot be below zero", "type it without the minus sign"},
    Row{length_too_large, "this length is too large", "lengths go up to 100 m"},
    Row{length_too_fine, "this is finer than a thousandth of a millimetre", "round it"},
    Row{length_two_readings, "this can be read in two ways", "type the one you mean"},
    Row{outline_too_few_edges, "the outline has too few edges", "give at least three edges"},
    Row{outline_not_closed, "the outline is not closed", "let each edge start where the last ends"},
    Row{outline_edge_too_short, "an edge is too short", "leave it out or lengthen it"},
    Row{outline_arc_too_deep, "an arc is deeper than a half circle", "write it as two edges"},
    Row{outline_runs_clockwise, "the outline runs clockwise", "list its edges the other way round"},
    Row{outline_crosses_itself, "the outline crosses itself", "check the corners"},
    Row{lap_wider_than_sleeve, "the lap is as wide as a sleeve", "make the lap narrower"},
    Row{panel_without_hinge_side, "the panel has no hinge side", "name one edge hinge_side"},
    Row{panel_without_fly_side, "the panel has no fly side", "name one edge fly_side"},
    Row{row_too_short, "the margins meet: no room for a row", "keep less clear at the ends"},
    Row{row_bad_spacing, "a row needs a spacing above zero", "type the spacing"},
    Row{row_too_many_points, "too many points in one row", "widen the spacing"},
    Row{row_on_fly_side, "this edge must stay unsewn, so that cloth and sheet can slip",
        "take the row off the fly side"},
    Row{row_off_the_piece, "the row would lie off the piece", "set it nearer to the edge"},
    Row{row_off_the_flange, "a round sleeve is sewn in its flange only",
        "set the row nearer to the edge or widen the flange"},
    Row{row_through_the_tube, "a joining row here would run through the tube of a round sleeve",
        "hang round sleeves by their flanges, each as a section of one"},
    Row{job_unreadable, "this is not a job file we can read", "choose the file Pouncemark saved"},
    Row{job_not_ours, "this is JSON, but not a Pouncemark job",
        "choose a file that begins with the format pouncemark-job"},
    Row{job_damaged, "this job file is damaged", "mend that place or open an earlier copy"},
    Row{job_out_of_range, "a figure in this job is out of range", "mend that figure in the file"},
    Row{job_too_new, "a newer Pouncemark wrote this job and it cannot be shown",
        "open it with that version"},
    Row{paper_unknown, "this is no paper we know",
        "say A4, A3, Letter, Tabloid or a size like 900x1200"},
    Row{paper_too_small, "this paper cannot carry the guide", "take larger paper"},
    Row{paper_bars_out, "the printed bar is more than 2 % out",
        "print page 0 at 100 %, not fitted"},
    Row{paper_unprintable_signs, "some signs of a name cannot be printed",
        "write the name in Latin or Greek letters"},
    Row{paper_too_many_pages, "this guide would take too many pages", "take larger paper"},
    Row{words_wrong, "these words are not understood", "say figures JOB, check JOB or print JOB"},
    Row{file_not_read, "this file cannot be read", "check its name and that it is a file"},
    Row{file_not_written, "this file cannot be written",
        "check the folder and the room on the disk"},
};

}  // namespace

std::string problem_sentence(const Problem& problem) {
  std::string_view what = "something is wrong";
  std::string_view remedy = "tell the makers";
  for (const Row& row : kRows) {
    if (row.code == problem.code) {
      what = row.what;
      remedy = row.remedy;
    }
  }
  std::string sentence(what);
  if (problem.where.empty()) {
    sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
  } else {
    sentence.insert(0, problem.where + ": ");
  }
  if (!problem.found.empty()) sentence += "; found " + problem.found;
  if (!problem.needed.empty()) sentence += "; needed " + problem.needed;
  sentence += "; ";
  sentence += remedy;
  sentence += ".";
  return sentence;
}

}  // namespace pouncemark

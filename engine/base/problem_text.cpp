#include <array>
#include <cstddef>
#include <string_view>
#include <vector>

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
    Row{row_stops_too_soon, "the row would stop before it begins", "let it run farther"},
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

/// Bytes of the sign at the start of some UTF-8 text; 1 where there is no whole sign.
std::size_t sign_length(std::string_view text) {
  const auto first = static_cast<unsigned char>(text[0]);
  const std::size_t length = first < 0x80   ? 1
                             : first < 0xc2 ? 0
                             : first < 0xe0 ? 2
                             : first < 0xf0 ? 3
                             : first < 0xf5 ? 4
                                            : 0;
  if (length == 0 || length > text.size()) return 1;
  for (std::size_t i = 1; i < length; ++i) {
    if ((static_cast<unsigned char>(text[i]) & 0xc0) != 0x80) return 1;
  }
  return length;
}

/// A sign that would end the line, steer a console or turn the words round, or that is no sign.
bool is_unspeakable(std::string_view sign) {
  const auto byte = [sign](std::size_t i) { return static_cast<unsigned char>(sign[i]); };
  if (sign.size() == 1) return byte(0) < 0x20 || byte(0) >= 0x7f;
  if (sign.size() == 2) return byte(0) == 0xc2 && byte(1) < 0xa0;
  if (sign.size() != 3 || byte(0) != 0xe2) return false;
  const bool turns = byte(1) == 0x80 && byte(2) >= 0xa8 && byte(2) <= 0xae;
  return turns || (byte(1) == 0x81 && byte(2) >= 0xa6 && byte(2) <= 0xa9);
}

/// Words from a file as they can stand in one sentence: whole signs, none that would break it, and
/// the middle left out of what is very long.
std::string spoken(std::string_view words) {
  constexpr std::size_t kHead = 80;
  constexpr std::size_t kTail = 40;
  std::vector<std::string> signs;
  while (!words.empty()) {
    const std::string_view sign = words.substr(0, sign_length(words));
    signs.emplace_back(is_unspeakable(sign) ? "?" : sign);
    words.remove_prefix(sign.size());
  }
  std::string said;
  const bool is_long = signs.size() > kHead + kTail + 3;
  for (std::size_t i = 0; i < signs.size(); ++i) {
    if (is_long && i == kHead) said += "...";
    if (!is_long || i < kHead || i + kTail >= signs.size()) said += signs[i];
  }
  return said;
}

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
    sentence.insert(0, spoken(problem.where) + ": ");
  }
  if (!problem.found.empty()) sentence += "; found " + spoken(problem.found);
  if (!problem.needed.empty()) sentence += "; needed " + spoken(problem.needed);
  sentence += "; ";
  sentence += remedy;
  sentence += ".";
  return sentence;
}

}  // namespace pouncemark

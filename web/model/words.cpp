#include "web/model/words.h"

#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"

namespace pouncemark::web {
namespace {

const solve::Row* first_row(const solve::Results& results, Place place, solve::RowKind kind) {
  const auto rows = rows_at(results, place, kind);
  return rows.empty() ? nullptr : rows.front();
}

std::string spacing_words(const solve::Row& row) { return mm_text(row.run.spacing_um(), 2); }

HeadlinePart figure_part(std::string now, const std::string& before) {
  const bool changed = !before.empty() && before != now;
  return HeadlinePart{std::move(now), true, changed};
}

/// Asked for, centre to centre: a clear gap takes the crown with it.
Um asked_centre_um(const job::Job& job, const solve::Row& row) {
  return row.asked_um +
         (job.spacing_is_clear_gap ? job.crown_um.value_or(material::kAssumedCrownUm) : 0);
}

std::string why_even(const job::Job& job, const solve::Row& row) {
  const Um asked = asked_centre_um(job, row);
  const std::string run = short_mm_text(row.run.length_um, 3);
  if (asked > 0 && row.run.length_um % asked == 0) {
    return exact_mm_text(asked) + " divides " + run + ", first point to last, into " +
           counted(row.run.gaps, "gap", "gaps");
  }
  return "because " + exact_mm_text(asked) + " does not divide " + run + ", first point to last";
}

std::string why_exact(const solve::Row& row, job::LeftOver left_over) {
  if (row.run.left_over_um == 0) return "and nothing left over";
  const std::string left = short_mm_text(row.run.left_over_um, 2);
  if (left_over == job::LeftOver::split) return left + " left over, half at each end";
  if (left_over == job::LeftOver::extra_point) return left + " is the last gap, at the top";
  return left + " left over at the top";
}

std::string margins_meet(const job::Job& job, const solve::Results& results, Place place) {
  const Um length = measured(job, results, place, Measure::length);
  const Um bottom = measured(job, results, place, Measure::kept_clear_bottom);
  const Um top = measured(job, results, place, Measure::kept_clear_top);
  return exact_mm_text(length) + " long, " + exact_mm_text(bottom) + " + " + exact_mm_text(top) +
         " kept clear: no room for a row";
}

job::LeftOver left_over_at(const Solved& now, Place place) {
  const job::Section* section = section_at(now.job, now.results, place);
  if (section == nullptr) return job::LeftOver::end;
  return job::side_rows_of(*section, place.sleeve).staple.left_over;
}

Headline sleeve_headline(const Solved& now, const Solved* before, Place place) {
  Headline line;
  const solve::Row* row = first_row(now.results, place, solve::RowKind::staple);
  if (row == nullptr || row->run.is_empty) {
    line.parts = {{"No staple row", true, false}};
    line.because = margins_meet(now.job, now.results, place);
    return line;
  }
  const solve::Row* was =
      before == nullptr ? nullptr : first_row(before->results, place, solve::RowKind::staple);
  const auto points = [](const solve::Row& of) {
    return counted(of.run.points(), "point", "points");
  };
  const bool exact = rule_at(now.job, now.results, place) == job::SpacingRule::exact;
  line.parts = {figure_part(points(*row), was == nullptr ? "" : points(*was)),
                {exact ? " in each staple row, exactly " : " in each staple row, ", false, false},
                figure_part(spacing_words(*row), was == nullptr ? "" : spacing_words(*was)),
                {" apart", false, false}};
  line.because = exact ? why_exact(*row, left_over_at(now, place)) : why_even(now.job, *row);
  if (row->run.points() == 1) {
    line.parts = {figure_part("1 point", ""), {" in each staple row", false, false}};
    line.because = "the kept clear ends meet";
  }
  return line;
}

Headline section_headline(const Solved& now, const Solved* before, Place place) {
  const auto index = static_cast<std::size_t>(place.piece);
  const solve::Piece& piece = now.results.pieces[index];
  const auto was = [&](Um solve::Piece::*figure, int decimals) {
    if (before == nullptr || index >= before->results.pieces.size()) return std::string();
    return short_mm_text(before->results.pieces[index].*figure, decimals);
  };
  Headline line;
  line.parts = {
      figure_part(short_mm_text(piece.width_um, 1), was(&solve::Piece::width_um, 1)),
      {" wide, could end up ", false, false},
      {std::string(kPlusMinus) + mm_text(piece.likely_um, 1), true, false},
      {std::string(", at worst ") + kPlusMinus + mm_text(piece.worst_um, 1), false, false}};
  return line;
}

Headline panel_headline(const Solved& now, const Solved* before, Place place) {
  Headline line;
  std::int64_t points = 0;
  std::int64_t points_before = 0;
  for (const solve::Row* row : rows_at(now.results, place, solve::RowKind::point)) {
    points += solve::own_points(*row);
  }
  if (before != nullptr) {
    for (const solve::Row* row : rows_at(before->results, place, solve::RowKind::point)) {
      points_before += solve::own_points(*row);
    }
  }
  const auto words = [](std::int64_t count) { return counted(count, "point", "points"); };
  line.parts = {figure_part(words(points), before == nullptr ? "" : words(points_before)),
                {" on hinge side, top and bottom", false, false}};
  line.because = "the corner points are shared and counted once; the fly side stays unsewn";
  return line;
}

}  // namespace

Headline headline(const Solved& now, const Solved* before, Place place) {
  if (now.results.pieces.empty()) {
    Headline none;
    none.parts = {{"Nothing lies on the bench", true, false}};
    return none;
  }
  if (panel_at(now.job, now.results, place) != nullptr) return panel_headline(now, before, place);
  return place.sleeve < 0 ? section_headline(now, before, place)
                          : sleeve_headline(now, before, place);
}

std::string plain_words(const Headline& headline) {
  std::string words;
  for (const HeadlinePart& part : headline.parts) words += part.words;
  return words;
}

std::string box_text(Um um) {
  constexpr Um kBareFrom = 100'000;
  if (um >= kBareFrom && um % 1000 == 0) return mm_text(um, 0);
  return mm_text(um, 1);
}

std::string with_capital(std::string words) {
  if (!words.empty() && words.front() >= 'a' && words.front() <= 'z') {
    words.front() = static_cast<char>(words.front() - ('a' - 'A'));
  }
  return words;
}

std::string size_words(const solve::Results& results, Place place) {
  const solve::Piece& piece = results.pieces[static_cast<std::size_t>(place.piece)];
  Um width = piece.width_um;
  if (place.sleeve >= 0) width = piece.sleeves[static_cast<std::size_t>(place.sleeve)].width_um;
  return short_mm_text(width, 1) + " " + kTimes + " " + short_mm_text(piece.length_um, 1);
}

}  // namespace pouncemark::web

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using solve::RowKind;

HeadlinePart plain(std::string words, std::string short_words = {}) {
  return {std::move(words), false, false, {}, std::move(short_words)};
}

HeadlinePart figure(std::string id, std::string now, const std::string& before = {}) {
  const bool changed = !before.empty() && before != now;
  return {std::move(now), true, changed, std::move(id), {}};
}

const solve::Row* first_row(const solve::Results& results, Place place, RowKind kind) {
  const auto rows = rows_at(results, place, kind);
  return rows.empty() || rows.front()->run.is_empty ? nullptr : rows.front();
}

const solve::Piece& piece_of(const Solved& now, Place place) {
  return now.results.pieces[static_cast<std::size_t>(place.piece)];
}

const solve::Sleeve& sleeve_of(const Solved& now, Place place) {
  return piece_of(now, place).sleeves[static_cast<std::size_t>(place.sleeve)];
}

job::StapleRow staple_rule(const Solved& now, Place place) {
  const job::Section& section = *section_at(now.job, now.results, place);
  return job::side_rows_of(section, sleeve_of(now, place).number).staple;
}

std::string why_even(const Solved& now, const solve::Row& row) {
  const std::string asked = exact_mm_text(row.asked_um);
  const std::string run = short_mm_text(row.run.length_um, 3);
  if (row.asked_um > 0 && row.run.length_um % row.asked_um == 0) {
    return asked + " divides " + run + ", first point to last, into " +
           counted(row.run.gaps, "gap", "gaps");
  }
  if (solve::is_clear_gap(now.job, row)) return asked + " does not divide " + run;
  return "because " + asked + " does not divide " + run + ", first point to last";
}

std::string why_exact(const solve::Row& row, job::LeftOver left_over) {
  const Um left = row.run.left_over_um;
  if (left == 0) return "and nothing left over";
  const std::string words = short_mm_text(left, 2);
  if (left_over == job::LeftOver::split) {
    return words + " left over, " + short_mm_text(left / 2, 2) + " at each end";
  }
  if (left_over == job::LeftOver::extra_point) return words + " is the last gap, at the top";
  return words + " left over at the top";
}

/// "a clear gap of 59.52" between the crowns, or how far they overlap.
std::string clear_gap_words(const Solved& now, const solve::Row& row) {
  const Um gap = solve::clear_gap_um(now.job, row);
  if (gap < 0) return "the crowns overlap by " + mm_text(-gap, 2);
  return "a clear gap of " + mm_text(gap, 2);
}

std::string why(const Solved& now, const solve::Row& row, const job::StapleRow& rule) {
  const bool is_exact = rule.rule == job::SpacingRule::exact;
  if (row.run.points() == 1) {
    if (is_exact && row.run.left_over_um > 0) return why_exact(row, rule.left_over);
    return "the kept clear ends meet";
  }
  const std::string reason = is_exact ? why_exact(row, rule.left_over) : why_even(now, row);
  if (!solve::is_clear_gap(now.job, row)) return reason;
  return "centre to centre, " + clear_gap_words(now, row) + "; " + reason;
}

/// Why a sleeve that is to have a staple row has none.
std::string why_no_row(const Solved& now, Place place) {
  const job::Section& section = *section_at(now.job, now.results, place);
  const solve::Sleeve& sleeve = sleeve_of(now, place);
  const job::StapleRow rule = staple_rule(now, place);
  const std::string in = exact_mm_text(rule.in_from_edge_um) + " in from the edge: ";
  if (rule.in_from_edge_um > sleeve.width_um) {
    return in + "the sleeve is " + exact_mm_text(sleeve.width_um) + " wide";
  }
  if (section.make == job::Make::round && rule.in_from_edge_um > section.flange_um.value_or(0)) {
    return in + "the flange is " + exact_mm_text(section.flange_um.value_or(0)) + " wide";
  }
  const auto [bottom, top] = rule.kept_clear_um;
  if (bottom + top > section.length_um) {
    return exact_mm_text(section.length_um) + " long, " + exact_mm_text(bottom) + " + " +
           exact_mm_text(top) + " kept clear: no room for a row";
  }
  return "more than " + count_text(layout::kMostPointsInRow) + " points: widen the spacing";
}

Headline no_staple_row(const Solved& now, Place place) {
  Headline line;
  const solve::Sleeve& sleeve = sleeve_of(now, place);
  if (!sleeve.has_left_rows && !sleeve.has_right_rows) {
    line.parts = {{"No side rows of its own", true, false}};
    line.because = "the joining rows in its laps are its side seams";
    return line;
  }
  line.parts = {{"No staple row", true, false}};
  line.because = why_no_row(now, place);
  return line;
}

Headline sleeve_headline(const Solved& now, const Solved* before, Place place) {
  const solve::Row* row = first_row(now.results, place, RowKind::staple);
  if (row == nullptr) return no_staple_row(now, place);
  const solve::Row* was =
      before == nullptr ? nullptr : first_row(before->results, place, RowKind::staple);
  const auto points = [](const solve::Row& of) {
    return counted(of.run.points(), "point", "points");
  };
  const auto spacing = [](const solve::Row& of) { return mm_text(of.run.spacing_um(), 2); };
  const job::StapleRow rule = staple_rule(now, place);
  const bool is_one_row = rows_at(now.results, place, RowKind::staple).size() == 1;
  std::string rows = is_one_row ? " in its one staple row" : " in each staple row";
  Headline line;
  line.because = why(now, *row, rule);
  line.parts.push_back(figure("points", points(*row), was == nullptr ? "" : points(*was)));
  if (row->run.points() == 1) {
    line.parts.push_back(plain(std::move(rows)));
    return line;
  }
  rows += rule.rule == job::SpacingRule::exact ? ", exactly " : ", ";
  line.parts.push_back(plain(std::move(rows), ", "));
  line.parts.push_back(figure("spacing", spacing(*row), was == nullptr ? "" : spacing(*was)));
  line.parts.push_back(plain(" apart"));
  return line;
}

Headline section_headline(const Solved& now, const Solved* before, Place place) {
  const solve::Piece& piece = piece_of(now, place);
  const job::Section& section = *section_at(now.job, now.results, place);
  const auto was = [&](Um solve::Piece::*um) {
    const auto index = static_cast<std::size_t>(place.piece);
    if (before == nullptr || index >= before->results.pieces.size()) return std::string();
    return short_mm_text(before->results.pieces[index].*um, 1);
  };
  Headline line;
  if (!section.missing.empty()) {
    const auto there = static_cast<std::int64_t>(piece.sleeves.size());
    line.parts.push_back(figure("sleeves", count_text(there)));
    line.parts.push_back(plain(" of " + counted(section.count, "sleeve, ", "sleeves, ")));
  }
  line.parts.push_back(
      figure("width", short_mm_text(piece.width_um, 1), was(&solve::Piece::width_um)));
  line.parts.push_back(plain(" wide, could end up ", " wide, likely "));
  line.parts.push_back(figure("likely", kPlusMinus + mm_text(piece.likely_um, 1)));
  line.parts.push_back(plain(", at worst "));
  HeadlinePart worst = figure("worst", kPlusMinus + mm_text(piece.worst_um, 1));
  worst.large = false;
  line.parts.push_back(std::move(worst));
  if (section.make == job::Make::round) {
    line.because = "round sleeves are sewn in their flanges only: no joining rows";
  } else if (section.side_seams == job::SideSeams::shared) {
    line.because = "the joining rows are side seams too: side rows on the outermost edges only";
  }
  return line;
}

/// "hinge side, top and bottom": the edges whose rows are laid, each named once.
std::string edges_with_rows(const std::vector<const solve::Row*>& rows, const solve::Piece& piece) {
  std::vector<std::string> names;
  for (const auto& [code_part, name] :
       {std::pair("hinge", "hinge side"), std::pair("top", "top"), std::pair("bottom", "bottom")}) {
    const std::string starts = piece.code + " " + code_part;
    const bool is_there = std::any_of(rows.begin(), rows.end(), [&](const solve::Row* row) {
      return row->code.rfind(starts, 0) == 0;
    });
    if (is_there) names.emplace_back(name);
  }
  std::string words;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) words += i + 1 == names.size() ? " and " : ", ";
    words += names[i];
  }
  return words;
}

std::string corners_words(const job::Panel& panel, const std::vector<const solve::Row*>& rows) {
  const auto shares = [](const solve::Row* row) { return row->first_is_shared; };
  if (std::any_of(rows.begin(), rows.end(), shares)) {
    return "the corner points are shared and counted once; ";
  }
  if (panel.corners == job::Corners::share_hole || rows.size() < 2) return {};
  return "rows stop " +
         exact_mm_text(panel.corner_clear_um.value_or(material::kAssumedCornerClearUm)) +
         " short at the corners: the corner holes are not shared; ";
}

Headline panel_headline(const Solved& now, const Solved* before, Place place) {
  const auto rows = rows_at(now.results, place, RowKind::point);
  const auto points_in = [place](const solve::Results& results) {
    std::int64_t points = 0;
    for (const solve::Row* row : rows_at(results, place, RowKind::point)) {
      points += solve::own_points(*row);
    }
    return counted(points, "point", "points");
  };
  Headline line;
  if (rows.empty()) {
    line.parts = {{"No row", true, false}};
    line.because = "no edge takes a row: see what is found; the fly side stays unsewn";
    return line;
  }
  line.parts.push_back(figure("points", points_in(now.results),
                              before == nullptr ? "" : points_in(before->results)));
  line.parts.push_back(plain(" on " + edges_with_rows(rows, piece_of(now, place))));
  line.because =
      corners_words(*panel_at(now.job, now.results, place), rows) + "the fly side stays unsewn";
  return line;
}

/// "5 pieces: 3 sections, 2 panels".
Headline hanging_headline(const Solved& now) {
  const auto sections = std::ssize(now.job.sections);
  const auto panels = std::ssize(now.job.panels);
  Um width = 0;
  for (const solve::Piece& piece : now.results.pieces) width += piece.width_um;
  Headline line;
  line.parts = {{counted(sections + panels, "piece", "pieces"), true, false}};
  line.parts.push_back(plain(": " + counted(sections, "section", "sections") + ", " +
                             counted(panels, "panel", "panels")));
  line.because = short_mm_text(width, 1) + " wide in all, side by side in their order";
  return line;
}

}  // namespace

Headline headline(const Solved& now, const Solved* before, Place place) {
  if (now.results.pieces.empty()) {
    Headline none;
    none.parts = {{"Nothing lies on the bench", true, false}};
    return none;
  }
  if (is_whole_hanging(place)) return hanging_headline(now);
  if (panel_at(now.job, now.results, place) != nullptr) return panel_headline(now, before, place);
  return place.sleeve < 0 ? section_headline(now, before, place)
                          : sleeve_headline(now, before, place);
}

std::string plain_words(const Headline& headline) {
  std::string words;
  for (const HeadlinePart& part : headline.parts) words += part.words;
  return words;
}

}  // namespace pouncemark::web

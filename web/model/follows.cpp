#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using Lines = std::vector<FollowLine>;
using solve::RowKind;

void add(Lines& lines, std::string id, std::string label, std::string figure,
         std::vector<std::string> sum, std::string unit = {}) {
  FollowLine line;
  line.id = std::move(id);
  line.label = std::move(label);
  line.figure = std::move(figure);
  line.sum = std::move(sum);
  line.unit = std::move(unit);
  lines.push_back(std::move(line));
}

std::string mm(Um um) { return short_mm_text(um, 3); }

/// Points, holes or metres of several rows together.
struct Together {
  std::int64_t points = 0;
  Um length_um = 0;
  std::int64_t rows = 0;
};

Together together(const std::vector<const solve::Row*>& rows) {
  Together sum;
  for (const solve::Row* row : rows) {
    sum.points += solve::own_points(*row);
    sum.length_um += row->run.length_um;
    ++sum.rows;
  }
  return sum;
}

std::string rows_words(std::int64_t rows) { return counted(rows, "row", "rows"); }

void add_run(Lines& lines, const Solved& now, Place place, const solve::Row& row) {
  const Um length = measured(now.job, now.results, place, Measure::length);
  const std::string run = mm(row.run.length_um);
  const std::string kept = mm(length) + " " + kMinus + " " + mm(row.run.first_um()) + " " + kMinus +
                           " " + mm(length - row.run.last_um()) + " = " + run;
  const std::string gaps = counted(row.run.gaps, "gap", "gaps");
  const std::string asked = exact_mm_text(row.asked_um);
  const bool exact = row.run.step_um != 0;
  add(lines, "points", "Points in each row", count_text(row.run.points()),
      {kept, run + " " + kDivide + " " + asked + (exact ? ": " : ", never wider: ") + gaps,
       count_text(row.run.gaps) + " + 1 = " + count_text(row.run.points())});
  add(lines, "spacing", "Spacing", mm_text(row.run.spacing_um(), 2),
      exact ? std::vector<std::string>{"exactly as asked for, " + asked}
            : std::vector<std::string>{kept, run + " " + kDivide + " " + gaps + " = " +
                                                 mm_text(row.run.spacing_um(), 3)});
  if (exact) {
    add(lines, "left_over", "Left over", mm_text(row.run.left_over_um, 2),
        {"what " + asked + " does not fill"});
  }
  add(lines, "first", "First point from datum", mm_text(row.run.first_um(), 1),
      {"kept clear at the bottom end, " + mm(row.run.first_um())});
  add(lines, "last", "Last point", mm_text(row.run.last_um(), 1),
      {mm(row.run.first_um()) + " + " + run + " = " + mm(row.run.last_um())});
}

void add_stitches(Lines& lines, const std::vector<const solve::Row*>& rows, Um asked) {
  const Together sum = together(rows);
  if (sum.rows == 0) return;
  const solve::Row& row = *rows.front();
  const std::string stitch = mm_text(row.run.spacing_um(), 3);
  std::vector<std::string> holes;
  if (sum.rows <= 2) {
    holes = {mm(row.run.length_um) + " " + kDivide + " " + exact_mm_text(asked) +
                 ", never longer: " + counted(row.run.gaps, "stitch", "stitches") + " of " + stitch,
             rows_words(sum.rows) + " " + kTimes + " " + count_text(row.run.points()) + " = " +
                 count_text(sum.points)};
  } else {
    holes = {"over " + rows_words(sum.rows) + ", shared holes counted once"};
  }
  add(lines, "stitch_holes", "Stitch holes", count_text(sum.points), std::move(holes));
  add(lines, "sewing", "Sewing", metres_text(sum.length_um, 2),
      {rows_words(sum.rows) + ", " + mm(sum.length_um) + " together"}, "m");
}

void add_pages(Lines& lines, const Solved& now, Place place, const std::string& label) {
  const auto index = static_cast<std::size_t>(place.piece);
  if (index >= now.a4_pages.size()) return;
  add(lines, "pages", label, count_text(now.a4_pages[index]),
      {"210 " + std::string(kTimes) + " 297, border 10, overlap 10", "every page of the piece"},
      "pages");
}

Lines sleeve_lines(const Solved& now, Place place) {
  Lines lines;
  const auto staples = rows_at(now.results, place, RowKind::staple);
  if (!staples.empty()) {
    add_run(lines, now, place, *staples.front());
    const Together sum = together(staples);
    add(lines, "staple_holes", "Staple holes", count_text(2 * sum.points),
        {rows_words(sum.rows) + ", " + counted(sum.points, "staple", "staples"),
         "2 legs " + std::string(kTimes) + " " + count_text(sum.points) + " = " +
             count_text(2 * sum.points)});
  }
  const Um stitch = measured(now.job, now.results, place, Measure::stitch);
  add_stitches(lines, rows_at(now.results, place, RowKind::stitch), stitch);
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  add_pages(lines, now, place,
            piece.sleeves.size() == 1 ? "Full-face, A4" : "Full-face of section " + piece.code);
  return lines;
}

Lines section_lines(const Solved& now, Place place) {
  Lines lines;
  std::int64_t side = 0;
  std::int64_t lap = 0;
  for (const solve::Row* row : rows_at(now.results, place, RowKind::stitch)) {
    (row->place == solve::RowPlace::lap ? lap : side) += 1;
  }
  const Together staples = together(rows_at(now.results, place, RowKind::staple));
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const std::string sleeves = count_text(static_cast<std::int64_t>(piece.sleeves.size()));
  add(lines, "side_rows", "Side rows", count_text(side), {sleeves + " sleeves, 2 on each"});
  add(lines, "joining_rows", "Joining rows", count_text(lap), {"one on each lap"});
  add(lines, "staple_points", "Staple points", count_text(staples.points),
      {"over " + rows_words(staples.rows)});
  add_stitches(lines, rows_at(now.results, place, RowKind::stitch),
               measured(now.job, now.results, place, Measure::stitch));
  add_pages(lines, now, place, "Full-face, A4");
  return lines;
}

Lines panel_lines(const Solved& now, Place place) {
  Lines lines;
  for (const solve::Row* row : rows_at(now.results, place, RowKind::point)) {
    const std::string gap = mm_text(row->run.spacing_um(), 2);
    const auto edge = row->code.find(' ');
    const std::string name = edge == std::string::npos ? row->code : row->code.substr(edge + 1);
    add(lines, "points_" + name, with_capital(name + ", points"), count_text(row->run.points()),
        {mm(row->run.length_um) + " " + kDivide + " " + exact_mm_text(row->asked_um) +
             ", never wider: " + counted(row->run.gaps, "gap", "gaps"),
         gap + " apart"});
    add(lines, "apart_" + name, with_capital(name + ", apart"), gap,
        {mm(row->run.length_um) + " " + kDivide + " " + count_text(row->run.gaps) + " = " + gap});
  }
  add_stitches(lines, rows_at(now.results, place, RowKind::stitch),
               measured(now.job, now.results, place, Measure::stitch));
  add_pages(lines, now, place, "Full-face, A4");
  return lines;
}

Lines lines_of(const Solved& now, Place place) {
  if (now.results.pieces.empty()) return {};
  if (panel_at(now.job, now.results, place) != nullptr) return panel_lines(now, place);
  return place.sleeve < 0 ? section_lines(now, place) : sleeve_lines(now, place);
}

}  // namespace

std::vector<FollowLine> follow_lines(const Solved& now, const Solved* before, Place place) {
  Lines lines = lines_of(now, place);
  if (before == nullptr || held_within(before->results, place) != place) return lines;
  const Lines old = lines_of(*before, place);
  for (FollowLine& line : lines) {
    for (const FollowLine& was : old) {
      if (was.id == line.id && was.figure != line.figure) line.before = was.figure;
    }
  }
  return lines;
}

}  // namespace pouncemark::web

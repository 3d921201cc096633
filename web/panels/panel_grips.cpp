#include "web/panels/panel_grips.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace pouncemark::web {
namespace {

using piece::EdgeRole;

const solve::Piece& piece_of(const Page& page) {
  return page.bench.now().results.pieces[static_cast<std::size_t>(page.bench.place().piece)];
}

PullHandle handle_of(const Page& page, const Lying& lying, Measure measure, PullAxis axis) {
  PullHandle handle;
  handle.place = page.bench.place();
  handle.measure = measure;
  handle.axis = axis;
  handle.px_per_mm = lying.px_per_mm;
  return handle;
}

/// A line of the piece on the screen that runs level or upright; any other cannot be pulled along
/// one axis.
struct Course {
  Area area;
  bool is_level = false;
  bool is_upright = false;
};

Course course_of(const Lying& lying, const Segment& line) {
  constexpr float kAslant = 0.5f;
  const float x0 = lying.x(to_um(line.from.y));
  const float x1 = lying.x(to_um(line.to.y));
  const float y0 = lying.y(to_um(line.from.x));
  const float y1 = lying.y(to_um(line.to.x));
  Course course;
  course.area = {std::min(x0, x1), std::min(y0, y1), std::max(x0, x1), std::max(y0, y1)};
  if (!is_straight(line)) return course;
  course.is_level = course.area.height() < kAslant;
  course.is_upright = course.area.width() < kAslant && !course.is_level;
  if (course.is_level) course.area.top = course.area.bottom;
  if (course.is_upright) course.area.left = course.area.right;
  return course;
}

/// Moved inward from the edge it belongs to, a row's figure grows: towards the sheet's middle.
void row_grip(Page& page, const Lying& lying, const Area& sheet, const solve::Row& row) {
  Course course = course_of(lying, row.guide);
  if ((!course.is_level && !course.is_upright) || row.run.is_empty) return;
  // From its first point to its last: its line goes on to the edges.
  const solve::PlaceUm first = solve::point_um(row, 0);
  const solve::PlaceUm last = solve::point_um(row, row.run.points() - 1);
  if (course.is_level) {
    course.area.left = lying.x(std::min(first.y, last.y));
    course.area.right = lying.x(std::max(first.y, last.y));
  } else {
    course.area.top = std::min(lying.y(first.x), lying.y(last.x));
    course.area.bottom = std::max(lying.y(first.x), lying.y(last.x));
  }
  PullHandle handle = handle_of(page, lying, Measure::in_from_edge,
                                course.is_level ? PullAxis::upright : PullAxis::level);
  const std::string edge = row.code.substr(row.code.find(' ') + 1);
  handle.id = "row." + edge;
  handle.words = "row on the " + edge + ", in from the edge";
  const bool before =
      course.is_level ? course.area.top < sheet.mid_y() : course.area.left < sheet.mid_x();
  handle.sign = before ? 1 : -1;
  handle.line = course.area;
  handle.by_tab = edge == "hinge";
  pull_handle(page, std::move(handle));
}

/// Where a row stops short of the hinge row.
void corner_grip(Page& page, const Lying& lying, const solve::Row& row) {
  const Course course = course_of(lying, row.guide);
  if (!course.is_upright || row.run.is_empty) return;
  const solve::PlaceUm first = solve::point_um(row, 0);
  const float x = lying.x(first.y);
  const float y = lying.y(first.x);
  PullHandle handle = handle_of(page, lying, Measure::corner_clear, PullAxis::upright);
  const std::string edge = row.code.substr(row.code.find(' ') + 1);
  handle.id = "corner." + edge;
  handle.words = "corner of the " + edge + " row, clear of the hinge row";
  handle.sign = hinge_is_up(page) ? 1 : -1;
  constexpr float kHalf = 9;
  handle.line = {x - kHalf, y, x + kHalf, y};
  handle.by_tab = edge == "top";
  page.brush.line({x - kHalf, y}, {x + kHalf, y}, kThread, 2);
  pull_handle(page, std::move(handle));
}

/// Taken hold of and pulled, the fly side says why it takes no row. One that does not run level is
/// taken in its middle.
void fly_grip(Page& page, const Lying& lying, const piece::Edge& edge) {
  const Course course = course_of(lying, edge.line);
  const bool level = course.area.width() >= course.area.height();
  PullHandle handle =
      handle_of(page, lying, Measure::in_from_edge, level ? PullAxis::upright : PullAxis::level);
  handle.id = "fly_side";
  handle.words = "fly side, do not sew";
  handle.line = course.area;
  if (level)
    handle.line.top = handle.line.bottom = course.area.mid_y();
  else
    handle.line.left = handle.line.right = course.area.mid_x();
  handle.refuses = fly_side_refusal();
  pull_handle(page, std::move(handle));
}

void size_grips(Page& page, const Lying& lying, const Area& sheet) {
  PullHandle hinge = handle_of(page, lying, Measure::width, PullAxis::upright);
  const bool up = hinge_is_up(page);
  hinge.id = "edge.hinge";
  hinge.words = "hinge side, width of the panel";
  hinge.sign = up ? -1 : 1;
  const float y = up ? sheet.top : sheet.bottom;
  hinge.line = {sheet.left, y, sheet.right, y};
  pull_handle(page, std::move(hinge));
  PullHandle end = handle_of(page, lying, Measure::length, PullAxis::level);
  end.id = "sheet_end";
  end.words = "top end, length of the panel";
  end.line = {sheet.right, sheet.top, sheet.right, sheet.bottom};
  pull_handle(page, std::move(end));
}

}  // namespace

bool hinge_is_up(const Page& page) {
  const solve::Piece& piece = piece_of(page);
  for (const piece::Edge& edge : piece.outline.edges) {
    if (edge.role != EdgeRole::hinge_side) continue;
    const bool is_left = to_um(point_at(edge.line, length(edge.line) / 2).x) < piece.width_um / 2;
    return is_left != page.state.is_face_down;
  }
  return true;
}

void panel_grips(Page& page, const Lying& lying, const Area& sheet) {
  const Solved& now = page.bench.now();
  const Place place = page.bench.place();
  const job::Panel* panel = panel_at(now.job, now.results, place);
  if (panel == nullptr) return;
  const auto rows = rows_at(now.results, place, solve::RowKind::point);
  if (panel->corners == job::Corners::stop_short) {
    for (const solve::Row* row : rows) corner_grip(page, lying, *row);
  }
  for (const solve::Row* row : rows) row_grip(page, lying, sheet, *row);
  if (panel->outline.empty()) size_grips(page, lying, sheet);
  for (const piece::Edge& edge : piece_of(page).outline.edges) {
    if (edge.role == EdgeRole::fly_side) fly_grip(page, lying, edge);
  }
}

}  // namespace pouncemark::web

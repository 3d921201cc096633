#include "engine/sheets/full_face.h"

#include "engine/drawing/taken_room.h"
#include "engine/material/assumed.h"
#include "engine/sheets/page_view.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using pouncemark::drawing::Box;
using pouncemark::drawing::Spot;
using pouncemark::tests::all_of;
using pouncemark::tests::demo_job;
using pouncemark::tests::reach_of;
using pouncemark::tests::says;

namespace {

/// A job, its results and the pages of one of its pieces.
struct Printed {
  job::Job job;
  solve::Results results;
  GuideSet set;

  Printed(const job::Job& of_job, int piece, const char* words, const Bars& measured)
      : job(of_job), results(solve::solve(job)), set{job, results, piece, {}, {}, "7aa71e8e320a"} {
    set.paper = *read_paper(words);
    const solve::Piece& of = results.pieces[static_cast<std::size_t>(piece)];
    set.cut = cut_pages(of.width_um, of.length_um, set.paper, *print_check(set.paper, measured));
  }
  Printed(const Printed&) = delete;
  Printed& operator=(const Printed&) = delete;
};

job::Job arched_panel() {
  job::Job job = tests::panel_job(1, 1, "left");
  job.panels[0].outline = {{"hinge_side", {0, 900'000}, 0, {}},
                           {"bottom", {0, 0}, 0, {}},
                           {"fly_side", {500'000, 0}, 0, {}},
                           {"top", {500'000, 900'000}, 80'000, {}}};
  return job;
}

/// Middles of the small round fills, where a staple or a guide point is pricked.
std::vector<Spot> dots_on(const drawing::Drawing& picture) {
  std::vector<Spot> dots;
  for (const drawing::Fill& fill : all_of<drawing::Fill>(picture)) {
    const bool is_round = std::any_of(fill.steps.begin(), fill.steps.end(), [](const auto& step) {
      return step.step == drawing::Step::curve;
    });
    const Box box = reach_of(fill.steps);
    if (is_round) dots.push_back({(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2});
  }
  return dots;
}

/// Where on the paper the dots of one point must be: one for a guide point, two for a staple's
/// legs.
std::vector<Spot> dots_of(const PageView& view, const solve::Row& row, std::int64_t index) {
  const solve::PlaceUm place = solve::point_um(row, index);
  const Spot at = view.on_paper(place.x, place.y);
  if (row.kind == solve::RowKind::point) return {at};
  const Um half = view.set.job.crown_um.value_or(material::kAssumedCrownUm) / 2;
  return {{at.x, at.y - half}, {at.x, at.y + half}};
}

struct Seen {
  std::int64_t points = 0;
  std::int64_t never = 0;
  std::int64_t out_of_place = 0;
};

bool is_there(const std::vector<Spot>& dots, Spot spot) {
  return std::any_of(dots.begin(), dots.end(), [spot](Spot dot) {
    return std::abs(dot.x - spot.x) <= 2 && std::abs(dot.y - spot.y) <= 2;
  });
}

/// Looks for every point of a piece on every page that shows its place.
Seen look_for_points(const Printed& printed) {
  Seen seen;
  std::vector<PageWindow> windows;
  std::vector<std::vector<Spot>> dots;
  for (std::int64_t page = 0; page < printed.set.cut.pages(); ++page) {
    windows.push_back(window_of(printed.set.cut, page));
    dots.push_back(dots_on(full_face_page(printed.set, windows.back())));
  }
  const PageView any{printed.set, windows[0]};
  for (const solve::Row* row : any.rows()) {
    if (row->kind == solve::RowKind::stitch) continue;
    for (std::int64_t i = row->first_is_shared ? 1 : 0; i < row->run.points(); ++i) {
      ++seen.points;
      int pages = 0;
      for (std::size_t page = 0; page < windows.size(); ++page) {
        const PageView view{printed.set, windows[page]};
        if (!view.sees(solve::point_um(*row, i))) continue;
        ++pages;
        for (const Spot& spot : dots_of(view, *row, i)) {
          if (!is_there(dots[page], spot)) ++seen.out_of_place;
        }
      }
      if (pages == 0) ++seen.never;
    }
  }
  return seen;
}

}  // namespace

TEST_CASE(
    "every point of the small job is on a page and at its place, whatever paper and printer") {
  struct Order {
    const char* paper;
    Bars measured;
  };
  const Order orders[] = {{"A4", {}},
                          {"A4", {179'280, 199'200}},
                          {"A4", {183'600, 196'000}},
                          {"A3", {196'000, 204'000}},
                          {"Letter", {}},
                          {"800x1500", {}}};
  int count = 0;
  for (const Order& order : orders) {
    for (const int piece : {0, 1}) {
      CAPTURE(std::string(order.paper));
      CAPTURE(piece);
      const Seen seen =
          look_for_points(Printed(demo_job("marsh-lights"), piece, order.paper, order.measured));
      CHECK(seen.points == (piece == 0 ? 780 : 58));
      CHECK(seen.never == 0);
      CHECK(seen.out_of_place == 0);
      ++count;
    }
  }
  CHECK(count == 12);
}

TEST_CASE("a staple is drawn with the crown of the job, not with the usual one") {
  job::Job job = demo_job("marsh-lights");
  job.crown_um = 9'000;
  const Seen seen = look_for_points(Printed(job, 0, "A3", {}));
  CHECK(seen.points == 780);
  CHECK(seen.out_of_place == 0);
}

TEST_CASE("the points along an arched top are on a page and at their places") {
  const Printed printed(arched_panel(), 0, "A4", {});
  const Seen seen = look_for_points(printed);
  CHECK(seen.points == printed.results.totals.panel_points);
  CHECK(seen.points > 40);
  CHECK(seen.never == 0);
  CHECK(seen.out_of_place == 0);
}

TEST_CASE("a point where two pages meet is on both") {
  const Printed printed(demo_job("marsh-lights"), 0, "A4", {});
  const PageWindow first = window_of(printed.set.cut, 0);
  const PageWindow above = window_of(printed.set.cut, 4);
  const PageView low{printed.set, first};
  const PageView high{printed.set, above};
  CHECK(low.high() - high.low() == kOverlapUm);
  CHECK((low.sees({100'000, 270'000}) && high.sees({100'000, 270'000})));
  CHECK((low.sees({100'000, 267'000}) && high.sees({100'000, 267'000})));
  CHECK((low.sees({100'000, 277'000}) && high.sees({100'000, 277'000})));
  CHECK(!high.sees({100'000, 266'999}));
  CHECK(!low.sees({100'000, 277'001}));
}

TEST_CASE("a page sees of a row just the points within its window") {
  const Printed printed(demo_job("marsh-lights"), 0, "A4", {});
  std::int64_t rows = 0;
  std::int64_t wrong = 0;
  for (std::int64_t page = 0; page < printed.set.cut.pages(); ++page) {
    const PageWindow window = window_of(printed.set.cut, page);
    const PageView view{printed.set, window};
    for (const solve::Row* row : view.rows()) {
      const PointRange range = view.points_seen(*row);
      ++rows;
      for (std::int64_t i = 0; i < row->run.points(); ++i) {
        const bool within = i >= range.first && i <= range.last;
        if (within != view.sees(solve::point_um(*row, i))) ++wrong;
      }
    }
  }
  CHECK(rows == 24 * 52);
  CHECK(wrong == 0);
}

TEST_CASE("every page says what it is: piece, page, FRONT, file and the caution") {
  for (const int piece : {0, 1}) {
    const Printed printed(demo_job("marsh-lights"), piece, "A4", {});
    int complete = 0;
    for (std::int64_t page = 0; page < printed.set.cut.pages(); ++page) {
      const PageWindow window = window_of(printed.set.cut, page);
      const drawing::Drawing picture = full_face_page(printed.set, window);
      CAPTURE(page);
      const std::vector<std::string> words = {"Marsh Lights", "FRONT", "TOP", "7aa7 1e8e 320a",
                                              "the trial seam and the dry run decide"};
      const bool all = std::all_of(words.begin(), words.end(), [&](const std::string& word) {
        const bool there = says(picture, word);
        if (!there) MESSAGE("missing: " << word);
        return there;
      });
      if (all) ++complete;
    }
    CHECK(complete == printed.set.cut.pages());
  }
}

TEST_CASE("no figure of a panel is struck through by a row that runs across") {
  const Printed printed(demo_job("marsh-lights"), 1, "A4", {});
  int looked_at = 0;
  for (std::int64_t page = 0; page < printed.set.cut.pages(); ++page) {
    const PageWindow window = window_of(printed.set.cut, page);
    const PageView view{printed.set, window};
    const drawing::Drawing picture = full_face_page(printed.set, window);
    for (const drawing::Text& text : all_of<drawing::Text>(picture)) {
      if (text.words.find_first_not_of("0123456789.") != std::string::npos) continue;
      const Box box = drawing::box_of(text);
      for (const solve::Row* row : view.rows()) {
        if (!runs_across(*row)) continue;
        const Um y = view.on_paper(0, to_um(row->guide.from.y)).y;
        CAPTURE(text.words);
        CHECK((y < box.low.y || y > box.high.y));
        ++looked_at;
      }
    }
  }
  CHECK(looked_at > 100);
}

TEST_CASE("a piece is called as it is said aloud") {
  solve::Piece piece;
  piece.code = "2";
  CHECK(spoken_name(piece) == "section 2");
  piece.kind = solve::PieceKind::panel;
  piece.code = "P12";
  CHECK(spoken_name(piece) == "panel 12");
  piece.code = "P";
  CHECK(spoken_name(piece) == "panel P");
  piece.code = "Porch";
  CHECK(spoken_name(piece) == "panel Porch");
}

#include "engine/sheets/left_out.h"

#include "engine/sheets/full_face.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using pouncemark::tests::demo_job;
using pouncemark::tests::says;

namespace {

/// A job with its results and the pages of its first or given piece.
struct Pages {
  job::Job job;
  solve::Results results;
  int piece;
  Paper paper;
  PageCut cut;
  LeftOut left_out;

  explicit Pages(const job::Job& of_job, const char* words = "A4", int of = 0,
                 const Bars& measured = {})
      : job(of_job), results(solve::solve(job)), piece(of), paper(*read_paper(words)) {
    const solve::Piece& here = results.pieces[static_cast<std::size_t>(of)];
    cut = cut_pages(here.width_um, here.length_um, paper, *print_check(paper, measured));
    left_out = left_out_pages(job, results, of, cut);
  }
  GuideSet set() const { return {job, results, piece, paper, cut, "7aa71e8e320a", left_out}; }
  std::int64_t printed() const { return cut.pages() - count_of(left_out); }
};

/// Left-out pages as text, the top row first: "." left out, "x" printed.
std::string map_of(const Pages& pages) {
  std::string map;
  for (std::int64_t row = pages.cut.along.pages - 1; row >= 0; --row) {
    for (std::int64_t column = 0; column < pages.cut.across.pages; ++column) {
      map += is_left_out(pages.left_out, row * pages.cut.across.pages + column) ? '.' : 'x';
    }
    map += row > 0 ? "/" : "";
  }
  return map;
}

job::Job panel_with(std::vector<job::OutlineEdge> outline) {
  job::Job job = tests::panel_job(1, 1, "left");
  job.panels[0].outline = std::move(outline);
  return job;
}

}  // namespace

TEST_CASE("pages in the middle of a panel, where nothing lies, are left out") {
  // source: features, a panel of 1160 x 2380 on A4 is 7 x 9 = 63 pages, 28 on its rim; 690 x 1420
  // is 24 less 8.
  const Pages large(tests::panel_job(1160, 2380, "left"));
  CHECK(large.cut.pages() == 63);
  CHECK(large.printed() == 28);
  const Pages small(demo_job("marsh-lights"), "A4", 1);
  CHECK(map_of(small) == "xxxx/x..x/x..x/x..x/x..x/xxxx");
}

TEST_CASE("of a section no page is left out: a lap or a row crosses each") {
  const Pages section(demo_job("marsh-lights"));
  CHECK(section.cut.pages() == 24);
  CHECK(count_of(section.left_out) == 0);
}

TEST_CASE("of a single wide sleeve the pages between its long edges are left out") {
  const Pages sleeve(tests::section_job({900}, 0));
  CHECK(map_of(sleeve) == "xxxxx/x...x/x...x/x...x/x...x/x...x/xxxxx");
}

TEST_CASE("a folded sleeve's fold and a round one's flange keep their pages") {
  job::Job job = tests::section_job({900}, 0);
  job.sections[0].make = job::Make::round;
  job.sections[0].flange_um = 430'000;
  job.sections[0].sewn_side = job::Side::left;
  CHECK(map_of(Pages(job)) == "xxxxx/x.x.x/x.x.x/x.x.x/x.x.x/x.x.x/xxxxx");
}

TEST_CASE("a row that runs deep in the piece keeps the pages it crosses, and no others") {
  job::Job job = tests::section_job({900}, 0);
  job.sections[0].side_rows.stitch.in_from_edge_um = 440'000;
  // In from the left edge by 440, and from the right edge by as much: columns 360 to 550.
  CHECK(map_of(Pages(job)) == "xxxxx/x.x.x/x.x.x/x.x.x/x.x.x/x.x.x/xxxxx");
  job.sections[0].side_rows.stitch.kept_clear_um[0] = 600'000;
  CHECK(map_of(Pages(job)) == "xxxxx/x.x.x/x.x.x/x.x.x/x.x.x/x...x/xxxxx");
}

TEST_CASE("a row at the very edge of a page keeps it, a micrometre farther does not") {
  job::Job job = tests::section_job({900}, 0);
  const auto second_column = [&job](Um in_um) {
    job.sections[0].side_rows.stitch.in_from_edge_um = in_um;
    const Pages pages(job);
    return !is_left_out(pages.left_out, 2 * pages.cut.across.pages + 1);
  };
  // source: column 1 of A4 shows 180 to 370.
  CHECK(second_column(370'000));
  CHECK_FALSE(second_column(370'001));
  CHECK(second_column(180'000));
  CHECK_FALSE(second_column(179'999));
}

TEST_CASE("the printer's correction moves the windows, and the pages left out with them") {
  job::Job job = tests::section_job({900}, 0);
  job.sections[0].side_rows.stitch.in_from_edge_um = 370'500;
  const Pages as_it_is(job);
  CHECK(is_left_out(as_it_is.left_out, 2 * 5 + 1));
  // A bar of 180 that measures 181.8 is a window of 191.9: it reaches 371.9.
  const Pages corrected(job, "A4", 0, {181'800, 0});
  CHECK_FALSE(is_left_out(corrected.left_out, 2 * 5 + 1));
}

TEST_CASE("slanted and arched edges keep just the pages they cross") {
  // An edge from one corner of the panel to the other crosses the diagonal of the grid.
  const Pages slanted(panel_with({{"hinge_side", {0, 1'345'000}, 0, {}},
                                  {"bottom", {0, 0}, 0, {}},
                                  {"fly_side", {910'000, 0}, 0, {}}}));
  CHECK(slanted.cut.across.pages == 5);
  CHECK(slanted.cut.along.pages == 5);
  CHECK_FALSE(is_left_out(slanted.left_out, 3 * 5 + 1));
  CHECK(is_left_out(slanted.left_out, 4 * 5 + 4));
  CHECK(is_left_out(slanted.left_out, 1 * 5 + 1));
  const job::Job arched = panel_with({{"hinge_side", {0, 900'000}, 0, {}},
                                      {"bottom", {0, 0}, 0, {}},
                                      {"fly_side", {1'000'000, 0}, 0, {}},
                                      {"top", {1'000'000, 900'000}, 450'000, {}}});
  const Pages arch(arched);
  // source: the crown stands at 1350 over the middle; the chord at 900 is no edge.
  CHECK(map_of(arch) == "..xx../xxxxxx/x....x/x....x/x....x/xxxxxx");
}

TEST_CASE("a page says who is left out, and a page map strikes those through") {
  const Pages pages(demo_job("marsh-lights"), "A4", 1);
  const GuideSet set = pages.set();
  const drawing::Drawing fifth = full_face_page(set, window_of(set.cut, 4));
  CHECK(says(fifth, "Page 6 is left out: nothing lies there."));
  CHECK(says(fifth, "Page 9 lies over."));
  CHECK(says(fifth, "page 5 of 24, 8 left out"));
  const drawing::Drawing first = full_face_page(set, window_of(set.cut, 0));
  CHECK(says(first, "Page 2 lies over."));
  CHECK(says(first, "Page 5 lies over."));
  CHECK_FALSE(says(first, "is left out"));
  GuideSet all = pages.set();
  all.left_out = {};
  CHECK_FALSE(says(full_face_page(all, window_of(all.cut, 4)), "left out"));
}

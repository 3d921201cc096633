#include "engine/solve/sums.h"
#include "tests/support/jobs.h"
#include "tests/support/sum_reading.h"
#include "web/model/bench.h"
#include "web/model/edits.h"
#include "web/model/words.h"

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

using namespace pouncemark;
using pouncemark::tests::demo_job;
using pouncemark::tests::fault_in_line;
using pouncemark::tests::last_number;
using pouncemark::tests::panel_job;
using pouncemark::tests::section_job;

namespace {

using Lines = std::vector<web::FollowLine>;

/// The line with this id; one without id when there is none.
web::FollowLine line_called(const Lines& lines, std::string_view id) {
  for (const web::FollowLine& line : lines) {
    if (line.id == id) return line;
  }
  return {};
}

bool has_line(const Lines& lines, std::string_view id) {
  return !line_called(lines, id).id.empty();
}

Lines lines_of(const job::Job& job, web::Place place, std::string_view opened = {}) {
  return web::follow_lines(web::solved(job), nullptr, place, opened);
}

job::Job exactly_60(job::LeftOver left_over) {
  job::Job job = section_job({110}, 0);
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.spacing_um = 60'000;
  row.rule = job::SpacingRule::exact;
  row.left_over = left_over;
  return job;
}

}  // namespace

TEST_CASE("after an edit each line that changed shows before and after, the others do not") {
  web::Bench bench;
  bench.start_with_sleeve();
  bench.edit(web::with_measure(bench.now().job, bench.now().results, bench.place(),
                               web::Measure::kept_clear_bottom, 25'000),
             "moved");
  const auto lines = web::follow_lines(bench.now(), bench.before(), bench.place());
  CHECK(line_called(lines, "points").before == "37");
  CHECK(line_called(lines, "points").figure == "36");
  CHECK(line_called(lines, "last").before == "1782.0");
  CHECK(line_called(lines, "last").figure == "1775.0");
  CHECK(line_called(lines, "pages").before.empty());
  CHECK(line_called(lines, "blank").before.empty());
}

TEST_CASE("what an edit changes beyond its place stands there too, before and after, and undone") {
  web::Bench bench;
  CHECK(bench.open("harbour", tests::demo_text("harbour-ledger")));
  const web::Place sleeve{1, 4};
  bench.go(sleeve);
  bench.edit(
      web::with_measure(bench.now().job, bench.now().results, sleeve, web::Measure::width, 140'000),
      "wider");
  const auto lines = web::follow_lines(bench.now(), bench.before(), sleeve);
  // source: sleeve 2-05 is 128 wide and section 2 is 1200, by hand
  CHECK(line_called(lines, "section_width").label == "In section 2, width");
  CHECK(line_called(lines, "section_width").before == "1200");
  CHECK(line_called(lines, "section_width").figure == "1212");
  CHECK(!has_line(lines, "section_laps"));
  CHECK(!has_line(lines, "job_sewing"));
  bench.undo();
  const auto back = web::follow_lines(bench.now(), bench.before(), sleeve);
  CHECK(line_called(back, "section_width").before == "1212");
  CHECK(line_called(back, "section_width").figure == "1200");
  CHECK(!has_line(web::follow_lines(bench.now(), nullptr, sleeve), "section_width"));
}

TEST_CASE(
    "findings that came or went, and what the whole job comes to, stand there when they did") {
  const web::Solved before = web::solved(demo_job("harbour-ledger"));
  job::Job job = before.job;
  job.sections[1].lap_rows->staple.staples = job::StaplesOut::before_the_row;
  const Lines cleared = web::follow_lines(web::solved(job), &before, {1, -1});
  CHECK(line_called(cleared, "job_stops").before == "1");
  CHECK(line_called(cleared, "job_stops").figure == "0");
  CHECK(!has_line(cleared, "job_warnings"));
  job.sections[1].length_um = 2'400'000;
  const Lines longer = web::follow_lines(web::solved(job), &before, {1, 3});
  CHECK(line_called(longer, "job_sewing").unit == "m");
  CHECK(!line_called(longer, "job_sewing").before.empty());
  CHECK(!line_called(longer, "job_staples").before.empty());
  CHECK(!has_line(longer, "job_points"));
  int sums = 0;
  for (const web::FollowLine& line : longer) {
    CAPTURE(line.id);
    CHECK(last_number(line.sum.numbers.back()) == last_number(line.figure));
    for (const std::string& numbers : line.sum.numbers) CHECK(fault_in_line(numbers) == "");
    ++sums;
  }
  CHECK(sums > 12);
}

TEST_CASE("a running total that was asked for shows before and after as well") {
  web::Bench bench;
  bench.start_with_sleeve();
  bench.edit(section_job({100, 100, 100}, 20), "three sleeves");
  bench.go({0, -1});
  job::Job wider = bench.now().job;
  wider.sections[0].lap_um = 25'000;
  bench.edit(wider, "a wider lap");
  const auto lines = web::follow_lines(bench.now(), bench.before(), bench.place(), "total.2");
  CHECK(line_called(lines, "total.2").before == "180");
  CHECK(line_called(lines, "total.2").figure == "175");
}

TEST_CASE("every line of every place of the demo jobs carries its sum, and the sum its figure") {
  int lines_seen = 0;
  for (const char* name : {"marsh-lights", "harbour-ledger"}) {
    const web::Solved now = web::solved(demo_job(name));
    for (const web::Place place : web::all_places(now.results)) {
      for (const web::FollowLine& line : web::follow_lines(now, nullptr, place)) {
        CAPTURE(line.id);
        REQUIRE(!line.sum.numbers.empty());
        CHECK(line.sum.figure == line.figure);
        CHECK(last_number(line.sum.numbers.back()) == last_number(line.figure));
        for (const std::string& numbers : line.sum.numbers) CHECK(fault_in_line(numbers) == "");
        ++lines_seen;
      }
    }
  }
  CHECK(lines_seen > 900);
}

TEST_CASE("a sleeve shows what it is cut from, and where it is bent") {
  job::Job job = section_job({120}, 0);
  const Lines leaves = lines_of(job, {0, 0});
  CHECK(line_called(leaves, "blank").label == "Blanks, two leaves");
  CHECK(line_called(leaves, "blank").figure == "120 × 1800");
  CHECK(!has_line(leaves, "fold"));
  job.sections[0].make = job::Make::folded;
  job.sections[0].fold_radius_um = 500;
  job.sections[0].sewn_side = job::Side::left;
  const Lines folded = lines_of(job, {0, 0});
  CHECK(line_called(folded, "blank").label == "Blank");
  CHECK(line_called(folded, "blank").figure == "240.5 × 1800");
  CHECK(line_called(folded, "fold").figure == "120.2");
  CHECK(line_called(folded, "points").label == "Points in the row");
}

TEST_CASE("what is left over says at which end it lies; an extra point makes it the last gap") {
  // source: 1800 less 18 at each end is 1764, 29 gaps of 60 and 24 over, by hand
  const Lines at_end = lines_of(exactly_60(job::LeftOver::end), {0, 0});
  CHECK(line_called(at_end, "left_over").label == "Left over, at the top end");
  CHECK(line_called(at_end, "left_over").figure == "24.00");
  const Lines split = lines_of(exactly_60(job::LeftOver::split), {0, 0});
  CHECK(line_called(split, "left_over").label == "Left over, half at each end");
  CHECK(line_called(split, "first").figure == "30.0");
  const Lines extra = lines_of(exactly_60(job::LeftOver::extra_point), {0, 0});
  CHECK(line_called(extra, "last_gap").figure == "24.00");
  CHECK(!has_line(extra, "left_over"));
}

TEST_CASE("a clear gap stands in the slip only where the spacing was asked for as one") {
  job::Job job = section_job({110}, 0);
  CHECK(!has_line(lines_of(job, {0, 0}), "clear_gap"));
  job.spacing_is_clear_gap = true;
  const Lines lines = lines_of(job, {0, 0});
  // source: 1764 by 50 + 12 is 28.5, 29 gaps of 60.83, less 12, by hand
  CHECK(line_called(lines, "spacing").figure == "60.83");
  CHECK(line_called(lines, "clear_gap").figure == "48.83");
}

TEST_CASE("a section shows its width, what it could be out by and its laps") {
  job::Job job = section_job({100, 100, 100, 100}, 20);
  const Lines whole = lines_of(job, {0, -1});
  CHECK(line_called(whole, "width").figure == "340");
  CHECK(line_called(whole, "likely").figure == "±2.2");
  CHECK(line_called(whole, "worst").figure == "±5.5");
  CHECK(line_called(whole, "laps").label == "Laps of 20");
  CHECK(line_called(whole, "laps").figure == "3");
  CHECK(!has_line(whole, "sleeves"));
  job.sections[0].missing = {"1-02"};
  CHECK(line_called(lines_of(job, {0, -1}), "sleeves").figure == "3");
}

TEST_CASE("a running total and a row middle stand there only when asked for, by sleeve number") {
  job::Job job = section_job({100, 100, 100, 100}, 20);
  job.sections[0].missing = {"1-02"};
  struct Case {
    const char* opened;
    const char* figure;
  };
  // source: 100, then 180 and 260 for those numbered 3 and 4; middles 90 and 170, by hand
  const Case cases[] = {{"total.1", "100"}, {"total.3", "180"},  {"total.4", "260"},
                        {"middle.1", "90"}, {"middle.3", "170"}, {"total.2", ""},
                        {"total.5", ""},    {"middle.4", ""},    {"total.x", ""},
                        {"total.", ""},     {"width.3", ""}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.opened);
    CHECK(line_called(lines_of(job, {0, -1}, one.opened), one.opened).figure == one.figure);
    ++seen;
  }
  CHECK(seen == 11);
  CHECK(!has_line(lines_of(job, {0, -1}), "total.3"));
}

TEST_CASE("the whole job's figures stand by a whole piece that is not alone, and give way first") {
  const web::Solved two = web::solved(demo_job("marsh-lights"));
  const Lines section = web::follow_lines(two, nullptr, {0, -1});
  CHECK(line_called(section, "job_stitch_holes").figure == "6,916");
  CHECK(line_called(section, "job_stitch_holes").rank == web::LineRank::whole_job);
  CHECK(has_line(web::follow_lines(two, nullptr, {1, -1}), "job_sewing"));
  CHECK(!has_line(web::follow_lines(two, nullptr, {0, 3}), "job_sewing"));
  CHECK(!has_line(lines_of(panel_job(690, 1'420, "left"), {0, -1}), "job_sewing"));
}

TEST_CASE("a panel shows each row's points, and all of them with the corners once") {
  const Lines lines = lines_of(panel_job(690, 1'420, "left"), {0, -1});
  CHECK(line_called(lines, "points_hinge").figure == "30");
  CHECK(line_called(lines, "points_top").figure == "15");
  CHECK(line_called(lines, "points").figure == "58");
  CHECK(line_called(lines, "points").sum.numbers.back() == "30 + 14 + 14 = 58");
}

TEST_CASE("a box shows whole lengths from 100 bare and anything else with one decimal") {
  CHECK(web::box_text(2'300'000) == "2300");
  CHECK(web::box_text(100'000) == "100");
  CHECK(web::box_text(99'000) == "99.0");
  CHECK(web::box_text(110'500) == "110.5");
}

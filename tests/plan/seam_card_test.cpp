#include "engine/plan/seam_card.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using plan::SeamCard;

namespace {

SeamCard card_of(const job::Job& job, const std::string& row_code) {
  const solve::Results results = solve::solve(job);
  for (std::size_t i = 0; i < results.rows.size(); ++i) {
    const solve::Row& row = results.rows[i];
    const bool is_it = row.code == row_code && row.kind == solve::RowKind::stitch;
    if (is_it)
      return plan::seam_card(job, results, solve::sewing_of(job, results), static_cast<int>(i));
  }
  FAIL("no stitch row is called " << row_code);
  return {};
}

/// A trial seam sewn with the machine set at 6, ten of its stitches measured, chosen.
job::Trial trial_of(Um ten_stitches_um) {
  job::Trial trial;
  trial.of_all_rows = true;
  trial.needle_size = 140;
  trial.thread_tex = 135;
  trial.stitch_um = 6'000;
  trial.ten_stitches_um = ten_stitches_um;
  trial.is_chosen = true;
  return trial;
}

void enter(job::Job& job, material::Field field, std::int64_t thousandths, const char* words = "") {
  job.materials.values[field] = {thousandths, words, material::Standing::typed, {}};
}

/// "label: figure, over, beside" of every cell.
std::vector<std::string> cells_of(const SeamCard& card) {
  std::vector<std::string> all;
  for (const plan::CardCell& cell : card.cells) {
    std::string words = cell.label + ": " + cell.figure;
    for (const std::string& more : {cell.over, cell.beside}) {
      if (!more.empty()) words += ", " + more;
    }
    all.push_back(std::move(words));
  }
  return all;
}

}  // namespace

TEST_CASE(
    "the card of a joining row says which sleeve lies over and how wide the work is by then") {
  const SeamCard card = card_of(tests::demo_job("harbour-ledger"), "2-07+08");
  CHECK(card.heading == "joining row 7 of 16");
  CHECK(card.code == "2-07 over 2-08");
  CHECK(card.job_name == "Harbour Ledger");
  CHECK(card.piece == "section 2");
  CHECK(card.row.left == "BOTTOM");
  CHECK(card.row.right == "TOP");
  // Fed away from the sewer with TOP first, the newest sleeve lies right of the needle.
  CHECK(card.row.begins_at_right);
  CHECK(card.row.start == "2278");
  CHECK(card.row.stop == "22");
  CHECK(card.row.sew == "2256");
  // source: 64 + 72 + 84 + 104 + 128 + 104 + 84 − 6 × 18 = 532; √(7 × 1² + 6 × 0.5²) = 2.9, to a
  // half 3; two fifths of 300.
  CHECK(cells_of(card) ==
        std::vector<std::string>{"stitch: 6, 376 stitches, mm", "needle size: 140, round point",
                                 "thread, both: tex 135", "in from each edge: 9, lap 18",
                                 "running total, 2-01 to 2-07: 532, likely ±3",
                                 "tail at each end: 120, no reverse"});
  // source: sleeve 2-08 is 72 wide and half the lap is 9.
  CHECK(card.lines.back() == "Right of the needle 63.");
  CHECK(card.staples == 43);
  CHECK_FALSE(card.staples_stay);
  CHECK(card.fly_side == "");
}

TEST_CASE("where the left neighbour lies over, the card names the right sleeve first") {
  job::Job job = tests::demo_job("harbour-ledger");
  job.sections[1].lies_over = job::Side::left;
  const SeamCard card = card_of(job, "2-07+08");
  CHECK(card.code == "2-08 over 2-07");
  CHECK_FALSE(card.row.edge_is_up);
  CHECK(card_of(tests::demo_job("harbour-ledger"), "2-07+08").row.edge_is_up);
}

TEST_CASE("a side row stands in from its own edge of its own sleeve") {
  const job::Job job = tests::demo_job("harbour-ledger");
  const SeamCard left = card_of(job, "1-05 left");
  CHECK(left.heading == "side row 9 of 26");
  CHECK(left.code == "1-05 left");
  CHECK(left.row.edge_is_up);
  CHECK(cells_of(left)[3] == "in from the edge: 16, left edge");
  CHECK(cells_of(left)[4] == "stack: 1.1, mm, typed");
  CHECK(left.lines.back() == "Right of the needle 16.");
  CHECK(left.staples_stay);
  CHECK(left.band == "PEEL THE FILM: A STRIP OF 40, BOTH FACES");
  const SeamCard right = card_of(job, "1-05 right");
  CHECK(right.heading == "side row 10 of 26");
  CHECK_FALSE(right.row.edge_is_up);
  CHECK(cells_of(right)[3] == "in from the edge: 16, right edge");
}

TEST_CASE("every card of a panel names the edge that stays unsewn") {
  struct Case {
    const char* hinge_side;
    const char* row;
    bool edge_is_up;
    const char* left;
    const char* fly_side;
  };
  const std::vector<Case> cases = {
      {"left", "P1 hinge", true, "BOTTOM", "FLY SIDE - DO NOT SEW: the right edge"},
      {"left", "P1 top", true, "HINGE SIDE", "FLY SIDE - DO NOT SEW: the right edge"},
      {"left", "P1 bottom", false, "HINGE SIDE", "FLY SIDE - DO NOT SEW: the right edge"},
      {"right", "P1 hinge", false, "BOTTOM", "FLY SIDE - DO NOT SEW: the left edge"},
      {"right", "P1 top", false, "HINGE SIDE", "FLY SIDE - DO NOT SEW: the left edge"},
      {"right", "P1 bottom", true, "HINGE SIDE", "FLY SIDE - DO NOT SEW: the left edge"}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.row);
    CAPTURE(one.hinge_side);
    const SeamCard card = card_of(tests::panel_job(690, 1420, one.hinge_side), one.row);
    CHECK(card.row.edge_is_up == one.edge_is_up);
    CHECK(card.row.left == one.left);
    CHECK(card.row.is_hinge == (card.row.right == "TOP"));
    CHECK(card.row.ends_at_fly == (card.row.right == "FLY SIDE"));
    // What is up in the picture lies right of the needle when the row begins at its left.
    CHECK(card.row.begins_at_right == !one.edge_is_up);
    CHECK(card.fly_side == one.fly_side);
    CHECK(card.staples == 0);
    const std::string meets =
        std::string(one.edge_is_up ? "Begin" : "End") + " in the hinge row's corner hole.";
    CHECK((card.lines.back() == meets) == card.row.ends_at_fly);
    ++ran;
  }
  CHECK(ran == 6);
}

TEST_CASE("the black band says what is done first, an open stop before all") {
  struct Case {
    job::StaplesOut staples;
    const char* band;
    std::size_t stops;
  };
  const std::vector<Case> cases = {
      {job::StaplesOut::before_the_row, "STAPLES OUT FIRST, ALL 37", 0},
      {job::StaplesOut::as_the_foot_comes, "STAPLES OUT AS THE FOOT COMES: 37", 0},
      {job::StaplesOut::not_said, "STAPLES OUT FIRST, ALL 37", 1},
      {job::StaplesOut::stay, "STAPLES OUT FIRST, ALL 37", 1},
      {job::StaplesOut::after_the_row, "STAPLES OUT FIRST, ALL 37", 1}};
  int ran = 0;
  for (const Case& one : cases) {
    job::Job job = tests::section_job({110, 110}, 18);
    job.sections[0].lap_rows->staple.staples = one.staples;
    const SeamCard card = card_of(job, "1-01+02");
    CHECK(card.band == one.band);
    CHECK(card.stops.size() == one.stops);
    ++ran;
  }
  CHECK(ran == 5);
  job::Job job = tests::panel_job(690, 1420, "left");
  CHECK(card_of(job, "P1 hinge").band == "PEEL THE FILM: A STRIP OF 40, BOTH FACES");
  enter(job, material::Field::film_left_on, 1);
  CHECK(card_of(job, "P1 hinge").band == "NO REVERSE: EVERY HOLE STAYS");
  CHECK(card_of(job, "P1 hinge").film_stays);
  job.panels[0].rows_on = std::vector<std::string>{"hinge_side", "fly_side"};
  CHECK(card_of(job, "P1 hinge").band == "STOP: NO ROW ON THE FLY SIDE");
}

TEST_CASE("a card tells the findings of its own row and no other's") {
  job::Job job = tests::demo_job("marsh-lights");
  const SeamCard lap = card_of(job, "1-03+04");
  REQUIRE(lap.warns.size() == 1);
  CHECK(lap.warns[0] == "the row stands 9.0 from the edge and 8 needle blades are 11.2.");
  CHECK(card_of(job, "1-03 left").warns.empty());
  CHECK(card_of(job, "P1 hinge").warns.empty());
  job.sections[0].missing = {"1-05"};
  CHECK(card_of(job, "1-03 left").warns.empty());
}

TEST_CASE("a chosen trial brings the stitch as it was measured, and who agreed") {
  job::Job job = tests::demo_job("harbour-ledger");
  CHECK(card_of(job, "2-07+08").signed_by == "");
  job.trials.push_back(trial_of(58'000));
  job.trials.back().signed_by = "A. Sewer, 12 Nov";
  const SeamCard card = card_of(job, "2-07+08");
  CHECK(card.cells[0].figure == "5.8");
  CHECK(card.cells[0].beside == "set at 6");
  // source: 2256 / 5.8 = 388.97.
  CHECK(card.cells[0].over == "389 stitches");
  CHECK(card.signed_by == "A. Sewer, 12 Nov");
  job.trials.back().is_chosen = false;
  CHECK(card_of(job, "2-07+08").cells[0].beside == "mm");
  CHECK(card_of(job, "2-07+08").signed_by == "");
}

TEST_CASE("a bobbin is changed before a row: the card of the row before says so") {
  const job::Job job = tests::demo_job("harbour-ledger");
  // source: 25 m less a tenth is 22.5 m, and a row takes 2.256 + 0.376 + 0.3 = 2.932 m: seven rows.
  // Section 1 has twelve joining rows: the ninth of section 2 is the 21st, the last of bobbin 3.
  CHECK(card_of(job, "2-09+10").lines.front() ==
        "Bobbin 3, its 7th and last row. New one before row 10.");
  CHECK(card_of(job, "2-10+11").lines.front() == "Bobbin 4, its 1st row.");
  CHECK(card_of(job, "2-07+08").lines.front() == "Bobbin 3, its 5th row.");
  // The 86th and last of all joining rows, and the 35th, which ends bobbin 5 within section 3.
  CHECK(card_of(job, "6-12+13").lines.front() == "Bobbin 13, its 2nd and last row.");
  CHECK(card_of(job, "3-07+08").lines.front() ==
        "Bobbin 5, its 7th and last row. New one before row 8.");
  // The last side row of section 2 is the 60th; of section 4 the 128th; a bobbin's 7th is the last
  // of section 3 where 13 + 17 + 12 = 42 sleeves have 84 side rows.
  job::Job shorter = job;
  shorter.sections[2].count = 12;
  CHECK(card_of(shorter, "3-12 right").lines.front() ==
        "Bobbin 12, its 7th and last row. New one before the next.");
}

TEST_CASE("machine, needle and thread are named as far as they were entered") {
  job::Job job = tests::demo_job("harbour-ledger");
  enter(job, material::Field::machine_throat, 300'000);
  enter(job, material::Field::needle_system, 0, "our own");
  enter(job, material::Field::needle_point, 1);
  enter(job, material::Field::thread_label, 0, "lot 7");
  const SeamCard card = card_of(job, "2-07+08");
  CHECK(card.lines.back() == "Right of the needle 63; your arm takes 300.");
  CHECK(cells_of(card)[1] == "needle size: 140, our own, cutting along");
  CHECK(cells_of(card)[2] == "thread, both: tex 135, lot 7");
}

TEST_CASE("a piece has a card for each stitch row that is there") {
  const job::Job job = tests::demo_job("marsh-lights");
  const solve::Results results = solve::solve(job);
  CHECK(plan::seam_card_rows(results, results.pieces[0]).size() == 18 + 8);
  CHECK(plan::seam_card_rows(results, results.pieces[1]).size() == 3);
  job::Job bare = tests::panel_job(690, 1420, "left");
  bare.panels[0].rows_on = std::vector<std::string>{};
  const solve::Results none = solve::solve(bare);
  CHECK(plan::seam_card_rows(none, none.pieces[0]).empty());
}

TEST_CASE("a row made to stop says so on its card, and one that goes on does not") {
  job::Job job = tests::panel_job(690, 1420, "left");
  const std::string says = "Stops 302.5 from the hinge side; the rest stays free.";
  const auto has = [&says](const SeamCard& card) {
    return std::count(card.lines.begin(), card.lines.end(), says) == 1;
  };
  CHECK_FALSE(has(card_of(job, "P1 top")));
  job.panels[0].rows_stop_um = 302'500;
  for (const char* row : {"P1 top", "P1 bottom"}) {
    const SeamCard card = card_of(job, row);
    CHECK(has(card));
    CHECK(card.row.is_stopped);
    CHECK(card.row.sew == "286.5");
    CHECK((card.row.begins_at_right ? card.row.start : card.row.stop) == "302.5");
  }
  CHECK_FALSE(card_of(job, "P1 hinge").row.is_stopped);
  CHECK_FALSE(has(card_of(job, "P1 hinge")));
}

#include "engine/plan/hanging_card.h"

#include "engine/solve/solve.h"
#include "tests/support/fixed_bay.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using plan::HangingCard;

namespace {

std::string words_of(const plan::CardCell& cell) {
  return cell.figure + ", " + cell.over + ", " + cell.beside;
}

HangingCard card_of(const job::Job& job, int bay) {
  return plan::hanging_card(job, solve::solve(job), bay);
}

/// The small job with a push, fixings and weight put in by hand.
HangingCard card_by_hand() {
  const job::Job job = tests::demo_job("marsh-lights");
  solve::Results results = solve::solve(job);
  solve::BayResult& bay = results.bays[1];
  const solve::Piece& panel = results.pieces[1];
  bay.fixings = {tests::fixings_along(panel, tests::edge_called(panel, "hinge"), 4, 2),
                 tests::fixings_along(panel, tests::edge_called(panel, "top"), 2, -1)};
  bay.force = solve::BayForce();
  bay.force->is_beyond_small = true;
  bay.force->shown_mn = 207'400;
  bay.force->other_mn = 219'800;
  bay.force->people = 3;
  bay.loads = solve::BayLoads();
  bay.loads->mass_mg = 12'630'000;
  bay.loads->weight_mn = 123'900;
  bay.loads->stitches = 200;
  bay.loads->per_stitch_mn = 164;
  bay.loads->corner_mn = 31'000;
  bay.loads->fixings_mn = {23'000, 77'400, 23'000};
  return plan::hanging_card(job, results, 1);
}

}  // namespace

TEST_CASE("a hanging card says the curve of its bay and how its cloth creeps") {
  job::Job job = tests::demo_job("harbour-ledger");
  const HangingCard card = card_of(job, 5);
  // source: bay 6 is 1180 wide and hollow: creep 1.71 out, as the story of this job has it.
  CHECK(card.code == "B6");
  CHECK(card.heading == "bay 6 of 11   panel P3");
  CHECK(words_of(card.cells[0]) == "1038, hollow, rise 164");
  CHECK(words_of(card.cells[2]) == "1.71, moves, OUT");
  CHECK(words_of(card_of(job, 4).cells[2]) == "-, a section, has none");
  job.bays[5].face = "bulging";
  CHECK(words_of(card_of(job, 5).cells[2]) == "1.71, moves, IN");
  CHECK(card.band == "NEVER LIFT BY ONE CORNER");
}

TEST_CASE("push, people, weight and fixings stand as they were worked out") {
  const HangingCard card = card_by_hand();
  CHECK(words_of(card.cells[3]) == "207, exact, small bend 220");
  CHECK(words_of(card.cells[4]) == "3, at 70 N, each, assumed");
  CHECK(words_of(card.cells[5]).starts_with("12.6, 124 N, "));
  CHECK(words_of(card.cells[6]) == "8, in, 2 rows");
  CHECK(words_of(card.cells[7]) == "10, shortest, 8");
  CHECK(card.lines.at(0) ==
        "Most on one fixing of the top: 77 N. On one stitch of the top row 0.16 N; lifted by a "
        "corner 31 N.");
}

TEST_CASE("the order of fixing begins at the tight hole and ends with top and bottom") {
  const HangingCard card = card_by_hand();
  REQUIRE(card.steps.size() == 4);
  CHECK(card.steps[0] == "1  The tight hole: hinge side, 710 from the datum.");
  CHECK(card.steps[1].starts_with("2  The hinge side"));
  CHECK(card.steps[2].starts_with("3  On toward the fly side"));
  CHECK(card.steps[3].starts_with("4  Top and bottom last."));
  const HangingCard section = card_of(tests::demo_job("marsh-lights"), 0);
  CHECK(section.steps[1].starts_with("2  The left edge"));
  CHECK(section.steps[2].starts_with("3  On toward the right edge"));
}

TEST_CASE("what is not known of a bay is asked for, not guessed") {
  job::Job job = tests::demo_job("marsh-lights");
  job.bays[1].holds = "nobody";
  const HangingCard card = card_of(job, 1);
  CHECK(words_of(card.cells[3]) == "?, , nothing hangs here");
  CHECK(words_of(card.cells[4]) == "?, , nothing hangs here");
  CHECK(words_of(card.cells[5]) == "?, , not known");
  CHECK(words_of(card.cells[6]) == "?, , none entered");
  CHECK(card.steps[0] == "1  The tight hole: no fixings. Enter them on the stage Curve.");
  job.bays[1].rise_um = 0;
  CHECK(words_of(card_of(job, 1).cells[0]) == "flat, , hollow");
  CHECK(words_of(card_of(job, 1).cells[2]) == "0, does not, move");
}

TEST_CASE("an open stop of the bay takes the band, and the day's warmth its box") {
  job::Job job = tests::demo_job("marsh-lights");
  job.bays[1].chord_um = 200'000;
  job.bays[1].rise_um = 90'000;
  const HangingCard card = card_of(job, 1);
  CHECK(card.band.starts_with("STOP: "));
  CHECK(card.findings.at(0).starts_with("STOP "));
  CHECK(card.planned == "planned for 20 °C");
  CHECK(card.today.empty());
  job.materials.values[material::Field::hanging_today] = {
      12'500, {}, material::Standing::typed, {}};
  CHECK(card_of(job, 1).today == "12.5 °C");
}

#include "web/model/pull.h"

#include <doctest/doctest.h>

#include "tests/support/jobs.h"

using namespace pouncemark;
using web::held_back;
using web::Measure;
using web::Place;
using web::Pull;
using web::PullAxis;
using web::Resisted;

namespace {

constexpr Place kAlone{0, 0};

Pull pulled(int sign, Um start_um) {
  return Pull{kAlone, Measure::kept_clear_bottom, PullAxis::level, sign, 2.0, start_um, 200};
}

/// A figure that can be, its neighbour that cannot, where the thing stops and why.
struct Case {
  const char* what;
  Place place;
  Measure measure;
  Um can;
  Um cannot;
  Um stops_at;
  const char* reason;
};

int check_all(const job::Job& job, const std::vector<Case>& cases) {
  const web::Solved start = web::solved(job);
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    const Resisted can = held_back(start, one.place, one.measure, one.can);
    CHECK(can.um == one.can);
    CHECK(can.reason == "");
    const Resisted cannot = held_back(start, one.place, one.measure, one.cannot);
    CHECK(cannot.um == one.stops_at);
    CHECK(cannot.reason == one.reason);
    ++ran;
  }
  return ran;
}

}  // namespace

TEST_CASE("a figure follows the hand in steps, the bottom end to the right, the top to the left") {
  struct Step {
    int sign;
    Um start;
    float at;
    Um step;
    Um asked;
  };
  int ran = 0;
  for (const Step& one : {Step{1, 18'000, 214, 500, 25'000}, Step{-1, 18'000, 186, 500, 25'000},
                          Step{1, 18'000, 213.6f, 500, 25'000},
                          Step{1, 18'000, 213.4f, 500, 24'500}, Step{1, 18'000, 214, 5'000, 25'000},
                          Step{1, 18'000, 216, 5'000, 25'000}, Step{1, 18'000, 221, 5'000, 30'000},
                          Step{1, 18'000, 213.4f, 100, 24'700}, Step{1, 6'350, 200.5f, 500, 6'350},
                          Step{1, 6'350, 201, 500, 7'000}, Step{1, 18'000, 0, 500, -82'000}}) {
    CAPTURE(one.at);
    CHECK(pulled(one.sign, one.start).asked(one.at, one.step) == one.asked);
    ++ran;
  }
  CHECK(ran == 11);
}

TEST_CASE("an arrow key moves by 1, with Shift by 10, with Ctrl by a tenth") {
  CHECK(web::key_step(false, false) == 1'000);
  CHECK(web::key_step(true, false) == 10'000);
  CHECK(web::key_step(false, true) == 100);
}

TEST_CASE("the ends of a sleeve resist where they would meet, and say how long it is") {
  CHECK(check_all(job::first_sleeve_job(),
                  {{"both ends to the middle", kAlone, Measure::kept_clear_bottom, 900'000, 900'500,
                    900'000, "1800 long, 900.5 + 900.5 kept clear: no room for a row"},
                   {"past the end of the sheet", kAlone, Measure::kept_clear_top, 0, -500, 0,
                    "0: it cannot be less than nothing"},
                   {"the sleeve as short as its ends", kAlone, Measure::length, 36'000, 35'500,
                    36'000, "35.5 long, 18 + 18 kept clear: no room for a row"},
                   {"a row past the middle", kAlone, Measure::in_from_edge, 55'000, 55'500, 55'000,
                    "110 wide, 55.5 in from the edge: past the middle of the sleeve"},
                   {"a row off the sheet", kAlone, Measure::stitch_in_from_edge, 0, -100, 0,
                    "0 in from the edge: further out there is no sheet"}}) == 5);
}

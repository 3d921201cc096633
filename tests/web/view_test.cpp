#include "web/model/view.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Lying;
using web::points_between;

namespace {

layout::Run even_run(Um start, Um length, std::int64_t gaps) {
  layout::Run run;
  run.start_um = start;
  run.length_um = length;
  run.gaps = gaps;
  run.is_empty = false;
  return run;
}

}  // namespace

TEST_CASE("a lying sleeve has BOTTOM at the left and its left edge up; face down its right edge") {
  Lying lying;
  lying.left_px = 100;
  lying.top_px = 50;
  lying.px_per_mm = 2;
  lying.width_um = 110'000;
  CHECK(lying.x(18'000) == doctest::Approx(136));
  CHECK(lying.y(0) == doctest::Approx(50));
  CHECK(lying.y(26'000) == doctest::Approx(102));
  lying.face_down = true;
  CHECK(lying.y(0) == doctest::Approx(270));
  CHECK(lying.y(110'000) == doctest::Approx(50));
}

TEST_CASE("the station under a place on the screen is the one that is drawn there") {
  Lying lying;
  lying.left_px = 98;
  lying.px_per_mm = 1.9;
  lying.from_um = 1'600'000;
  int tried = 0;
  for (Um station = 1'600'000; station <= 1'800'000; station += 12'500, ++tried) {
    CHECK(std::abs(lying.along(lying.x(station)) - station) <= 20);
  }
  CHECK(tried == 17);
}

TEST_CASE("only the points between two stations are asked for, both stations counted in") {
  const layout::Run run = even_run(18'000, 1'764'000, 36);  // every 49.00
  CHECK(points_between(run, 0, 18'000).count() == 1);
  CHECK(points_between(run, 0, 17'999).count() == 0);
  CHECK(points_between(run, 18'000, 116'000).count() == 3);
  CHECK(points_between(run, 0, 1'800'000).count() == 37);
  CHECK(points_between(run, 1'782'001, 1'800'000).count() == 0);
  CHECK(points_between(run, 100'000, 50'000).count() == 0);
  CHECK(points_between(layout::Run{}, 0, 1'800'000).count() == 0);
}

TEST_CASE("points under 4 px apart are drawn as a band, at 4 px one by one") {
  const layout::Run run = even_run(0, 1'000'000, 100);  // every 10
  CHECK(web::is_band(run, 0.39));
  CHECK_FALSE(web::is_band(run, 0.4));
  CHECK_FALSE(web::is_band(even_run(0, 0, 0), 0.1));
}

TEST_CASE("a drag moves by 0.5, with Shift by 5, with Ctrl by 0.1") {
  CHECK(web::to_step(25'260, web::drag_step(false, false)) == 25'500);
  CHECK(web::to_step(25'240, web::drag_step(false, false)) == 25'000);
  CHECK(web::to_step(27'499, web::drag_step(true, false)) == 25'000);
  CHECK(web::to_step(25'260, web::drag_step(false, true)) == 25'300);
}

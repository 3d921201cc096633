#include "web/model/closeup_view.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::CloseupView;
using web::move_closeup;
using web::scale_closeups;

namespace {

constexpr Um kLength = 1'800'000;
constexpr Um kShown = 200'000;

}  // namespace

TEST_CASE("a close-up moved towards the top and back stands at its end again") {
  CloseupView view;
  move_closeup(view, true, 250'000, kLength, kShown);
  CHECK(view.bottom_um == 250'000);
  CHECK(view.top_um == 0);
  CHECK_FALSE(view.is_at_ends());
  move_closeup(view, true, -250'000, kLength, kShown);
  CHECK(view.is_at_ends());
}

TEST_CASE("the close-up of the top end goes away from its end towards the bottom") {
  CloseupView view;
  move_closeup(view, false, -250'000, kLength, kShown);
  CHECK(view.top_um == 250'000);
  CHECK(view.bottom_um == 0);
}

TEST_CASE("a close-up never leaves the piece, however far it is moved") {
  CloseupView view;
  move_closeup(view, true, 99'000'000, kLength, kShown);
  CHECK(view.bottom_um == kLength - kShown);
  move_closeup(view, true, -99'000'000, kLength, kShown);
  CHECK(view.bottom_um == 0);
  CHECK(web::held_on_piece(5'000, 100'000, 150'000) == 0);
}

TEST_CASE("a larger close-up keeps what stood in its middle, and at the end it keeps the end") {
  CloseupView view;
  view.bottom_um = 500'000;
  scale_closeups(view, 2, kLength, kShown);
  CHECK(view.scale == doctest::Approx(2));
  CHECK(view.bottom_um == 550'000);
  CHECK(view.top_um == 0);
}

TEST_CASE("the scale is held between a half and four times, and its own size is met again") {
  CloseupView view;
  scale_closeups(view, 100, kLength, kShown);
  CHECK(view.scale == 4);
  scale_closeups(view, 0.0001, kLength, kShown);
  CHECK(view.scale == 0.5);
  scale_closeups(view, 2.02, kLength, kShown);
  CHECK(view.scale == 1);
}

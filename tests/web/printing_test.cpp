#include "web/model/printing.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::bar_is_refused;
using web::bar_words;

TEST_CASE("a bar of 180 that measures 179.3 is short 0.4 %") {
  // source: (180 - 179.3) / 180 = 0.389 %.
  CHECK(bar_words(180'000, 179'300) == "short 0.4 %");
  CHECK(bar_words(200'000, 200'600) == "long 0.3 %");
  CHECK(bar_words(200'000, 200'000) == "true");
  CHECK(bar_words(200'000, 0) == "not measured");
}

TEST_CASE("196.0 and 204.0 of 200 pass, anything farther out is refused") {
  CHECK_FALSE(bar_is_refused(200'000, 196'000));
  CHECK_FALSE(bar_is_refused(200'000, 204'000));
  CHECK(bar_is_refused(200'000, 195'999));
  CHECK(bar_is_refused(200'000, 204'001));
  CHECK(bar_words(200'000, 195'999) == "over 2 % out");
}

TEST_CASE("the printer is proved once both bars were measured and neither is refused") {
  CHECK(web::printer_is_proved(179'300, 200'000));
  CHECK_FALSE(web::printer_is_proved(179'300, 0));
  CHECK_FALSE(web::printer_is_proved(0, 200'000));
  CHECK_FALSE(web::printer_is_proved(179'300, 190'000));
  CHECK_FALSE(web::printer_is_proved(170'000, 200'000));
}

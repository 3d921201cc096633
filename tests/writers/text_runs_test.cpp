#include "engine/writers/text_runs.h"

#include "engine/batch/built_in_faces.h"
#include "tests/support/claims.h"

#include <doctest/doctest.h>

using namespace pouncemark::writers;
using pouncemark::batch::built_in_faces;
using pouncemark::drawing::Weight;
using pouncemark::tests::ClaimsCounted;

namespace {

std::size_t slot_of(std::string_view words, Weight weight = Weight::regular) {
  return run_of(FaceSet(built_in_faces()), words, weight).slot;
}

std::int64_t width(std::string_view words, std::int64_t size_um) {
  return text_width_um(built_in_faces(), words, Weight::regular, size_um);
}

}  // namespace

TEST_CASE("words are set in the main face while it has every sign of them") {
  CHECK(slot_of("Marsh Lights, 12.5 \u00D7 3 \u2192") == 0);
  CHECK(slot_of("FLY SIDE", Weight::bold) == 1);
  CHECK(slot_of("") == 0);
}

TEST_CASE("one sign too many puts the whole run into the wide face, bold or not") {
  CHECK(slot_of("Ath\u1FC6nai") == 2);
  CHECK(slot_of("Ath\u1FC6nai", Weight::bold) == 2);
}

TEST_CASE("a sign that neither face has is a box in the wide face, the rest is set") {
  const Run run = run_of(FaceSet(built_in_faces()), "A\u65E5B", Weight::regular);
  REQUIRE(run.signs.size() == 3);
  CHECK(run.slot == 2);
  CHECK(run.signs[0].glyph != 0);
  CHECK(run.signs[1].glyph == 0);
  CHECK(run.signs[2].glyph != 0);
}

TEST_CASE("a run is as wide as its signs together, at any size") {
  // source: B612 Regular 1.008: M 1800 and 1 1300 of 2000 units.
  CHECK(width("M", 10000) == 9000);
  CHECK(width("M1", 10000) == 15500);
  CHECK(width("M1", 3500) == 5425);
  CHECK(width("", 3500) == 0);
  CHECK(width("M\x01\u200B", 10000) == 9000);
}

TEST_CASE("ten thousand signs are measured without running over") {
  const std::string words(10000, 'M');
  CHECK(width(words, 5'000'000) == 45'000'000'000);
}

TEST_CASE("words of no size, or larger than five metres, are our own mistake") {
  const ClaimsCounted claims;
  width("M", 0);
  width("M", -1);
  width("M", 5'000'001);
  CHECK(claims.broken() == 3);
}

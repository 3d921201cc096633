#include "engine/sheets/wrapped_words.h"

#include "engine/batch/built_in_faces.h"
#include "engine/writers/text_runs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;

namespace {

using Lines = std::vector<std::string>;

/// What the faces make of the words, regular and bold, the wider of the two.
std::int64_t set_width_um(const writers::FaceSet& faces, const std::string& words, Um size_um) {
  std::int64_t widest = 0;
  for (const drawing::Weight weight : {drawing::Weight::regular, drawing::Weight::bold}) {
    const writers::Run run = writers::run_of(faces, words, weight);
    widest = std::max(widest, writers::run_width_um(faces, run, size_um));
  }
  return widest;
}

}  // namespace

TEST_CASE("no sign is set wider than the room kept for it, and no room is far wider") {
  const writers::FaceSet faces(batch::built_in_faces());
  int signs = 0;
  for (char sign = ' '; sign <= '~'; ++sign) {
    // A sign that only the other face has draws the whole run into that face.
    for (const std::string& words : {std::string(1, sign), std::string(1, sign) + "Ł"}) {
      CAPTURE(words);
      const Um room = words_width_um(words, 100'000);
      CHECK(set_width_um(faces, words, 100'000) <= room);
      CHECK(10 * room <= 21 * set_width_um(faces, words, 100'000));
      ++signs;
    }
  }
  CHECK(signs == 190);
  for (const char* words : {"Łódź, Ōsaka", "Ἀθῆναι", "690 × 1420", "1-01 left to 1-09 right"}) {
    CHECK(set_width_um(faces, words, 3'800) <= words_width_um(words, 3'800));
  }
}

TEST_CASE("words break at blanks, and inside a word only where it fills a line by itself") {
  struct Case {
    const char* words;
    Um width_um;
    Lines lines;
  };
  // An em of 10: a figure takes 6.5, a small o 6.2, a blank 3.5.
  const Case table[] = {{"", 100'000, {}},
                        {"   ", 100'000, {}},
                        {"oo oo oo", 100'000, {"oo oo oo"}},
                        {"oo oo oo", 28'300, {"oo oo", "oo"}},
                        {"oo oo oo", 28'299, {"oo", "oo", "oo"}},
                        {"oo oo oo", 33'000, {"oo oo", "oo"}},
                        {"  oo   oo ", 33'000, {"oo", "oo"}},
                        {"oooooo", 13'000, {"oo", "oo", "oo"}},
                        {"oo oooooo", 13'000, {"oo", "oo", "oo", "oo"}},
                        {"oooo", 1'000, {"o", "o", "o", "o"}},
                        {"ŁŁ", 1'000, {"Ł", "Ł"}}};
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(std::string(one.words));
    CAPTURE(one.width_um);
    CHECK(wrapped(one.words, 10'000, one.width_um) == one.lines);
    ++count;
  }
  CHECK(count == 11);
}

TEST_CASE("words that take too many lines end in dots, those that just fit do not") {
  CHECK(wrapped_at_most(3, "oo oo oo", 10'000, 25'000) == Lines{"oo", "oo", "oo"});
  CHECK(wrapped_at_most(2, "oo oo oo", 10'000, 25'000) == Lines{"oo", "oo…"});
  CHECK(wrapped_at_most(1, "ŁŁ ŁŁ", 10'000, 30'000) == Lines{"Ł…"});
  CHECK(wrapped_at_most(0, "oo", 10'000, 30'000).empty());
}

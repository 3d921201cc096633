#include "engine/output/file_names.h"

#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::output;

TEST_CASE("a name becomes lower case letters, figures and single dashes") {
  struct Name {
    const char* name;
    const char* word;
  };
  const Name table[] = {{"Marsh Lights", "marsh-lights"},
                        {"Harbour  Ledger (2)", "harbour-ledger-2"},
                        {"  --a--  ", "a"},
                        {"\u0141\u00f3d\u017a", "lodz"},
                        {"\u0141\u00f3d\u017a Hall", "lodz-hall"},
                        {"\u00c5ngstr\u00f6m \u00d7 2", "angstrom-2"},
                        {"\u1f08\u03b8\u1fc6\u03bd\u03b1\u03b9", "job"},
                        {"", "job"},
                        {"...", "job"},
                        {"../../etc", "etc"},
                        {"a/b\\c:d*e?f\"g<h>i|j", "a-b-c-d-e-f-g-h-i-j"},
                        {"a\nb\tc", "a-b-c"}};
  int count = 0;
  for (const Name& line : table) {
    CAPTURE(std::string(line.name));
    CHECK(file_word(line.name) == line.word);
    ++count;
  }
  CHECK(count == 12);
}

TEST_CASE("a word for a file is never longer than 60, and never begins or ends with a dash") {
  CHECK(file_word(std::string(60, 'a')) == std::string(60, 'a'));
  CHECK(file_word(std::string(61, 'a')) == std::string(60, 'a'));
  CHECK(file_word(std::string(59, 'a') + " b") == std::string(59, 'a'));
}

TEST_CASE("any name at all gives a word that is safe in a file name") {
  tests::Dice dice(20'260'211);
  INFO(dice.words());
  int safe = 0;
  for (int i = 0; i < 5'000; ++i) {
    std::string name;
    const std::int64_t size = dice.between(0, 250);
    for (std::int64_t j = 0; j < size; ++j) name += static_cast<char>(dice.between(0, 255));
    const std::string word = file_word(name);
    const bool clean =
        word.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
    const bool whole = !word.empty() && word.size() <= 60 && word.find("--") == std::string::npos;
    if (clean && whole && word.front() != '-' && word.back() != '-') ++safe;
  }
  CHECK(safe == 5'000);
}

TEST_CASE("a piece is called in a file name as it is said aloud") {
  solve::Piece piece;
  piece.code = "1";
  CHECK(piece_word(piece) == "section-1");
  piece.kind = solve::PieceKind::panel;
  piece.code = "P1";
  CHECK(piece_word(piece) == "panel-1");
  piece.code = "West";
  CHECK(piece_word(piece) == "panel-west");
}

#include "web/model/keys.h"

#include <set>
#include <string>

#include <doctest/doctest.h>

using namespace pouncemark;
using web::asks_for;
using web::combos_of;
using web::key_table;
using web::KeyAct;
using web::KeyCombo;
using web::KeyRow;
using web::row_for;

namespace {

/// True when some key asks for both rows at one place.
bool are_at_odds(const KeyRow& a, const KeyRow& b) {
  if ((a.places & b.places) == 0) return false;
  for (const KeyCombo& one : combos_of(a)) {
    for (const KeyCombo& other : combos_of(b)) {
      if (asks_for(one, other) || asks_for(other, one)) return true;
    }
  }
  return false;
}

}  // namespace

TEST_CASE("no key asks for two things at one place") {
  int pairs = 0;
  for (const KeyRow& a : key_table()) {
    for (const KeyRow& b : key_table()) {
      if (&a >= &b) continue;
      ++pairs;
      INFO(a.words << " / " << b.words);
      CHECK_FALSE(are_at_odds(a, b));
    }
  }
  CHECK(pairs > 300);
}

TEST_CASE("two rows with one key at one place are found to be at odds, elsewhere they are not") {
  const KeyRow a{KeyAct::sum, web::KeyGroup::bench, web::kOnBench, "S", "one thing"};
  KeyRow b{KeyAct::save, web::KeyGroup::bench, web::kOnLine, "Home,S", "another"};
  CHECK(are_at_odds(a, b));
  b.places = web::kInBox;
  CHECK_FALSE(are_at_odds(a, b));
  b.places = web::kOnLine;
  b.combos = "Ctrl+S";
  CHECK_FALSE(are_at_odds(a, b));
}

TEST_CASE("every row has keys that are known, words and a place") {
  std::set<KeyAct> acts;
  for (const KeyRow& row : key_table()) {
    INFO(row.combos);
    acts.insert(row.act);
    CHECK(std::string(row.words).size() > 3);
    CHECK(row.places != 0);
    CHECK_FALSE(combos_of(row).empty());
    for (const KeyCombo& combo : combos_of(row)) {
      const bool is_sign = combo.number >= '+' && combo.number <= 'Z';
      CHECK((is_sign || combo.number == ' ' || combo.number >= 256));
    }
    CHECK_FALSE(web::shown_keys(row).empty());
  }
  // An act without a row is one that no key can ask for.
  CHECK(acts.size() == static_cast<std::size_t>(KeyAct::list_keys) + 1);
}

TEST_CASE("keys are written as they are named") {
  struct Case {
    const char* combos;
    KeyCombo first;
    const char* shown;
  };
  int tried = 0;
  for (const Case& one : {Case{"Ctrl+Shift+Z", {'Z', true, true}, "Ctrl + Shift + Z"},
                          Case{"+,=", {'+', false, false}, "+, ="},
                          Case{"Shift+Up", {259, false, true}, "Shift + Up"},
                          Case{"Page Down,P", {262, false, false}, "Page Down, P"},
                          Case{"-", {'-', false, false}, "-"}}) {
    KeyRow row = key_table().front();
    row.combos = one.combos;
    row.shown = nullptr;
    CHECK(combos_of(row).front() == one.first);
    CHECK(web::shown_keys(row) == one.shown);
    ++tried;
  }
  CHECK(tried == 5);
}

TEST_CASE("Shift does not count where a keyboard needs it to write the sign") {
  CHECK(asks_for({'?', false, true}, {'?', false, false}));
  CHECK(asks_for({'1', false, true}, {'1', false, false}));
  CHECK_FALSE(asks_for({256, false, true}, {256, false, false}));
  CHECK_FALSE(asks_for({'Z', true, true}, {'Z', true, false}));
  CHECK_FALSE(asks_for({'S', true, false}, {'S', false, false}));
}

TEST_CASE("while a box is open a key asks for nothing but what belongs to the text or the job") {
  CHECK(row_for({'F', false, false}, web::kOnBench)->act == KeyAct::turn_over);
  int tried = 0;
  for (const char letter : {'F', 'S', 'P', 'T', '?', '1', '8', '+', '-'}) {
    CHECK(row_for({letter, false, false}, web::kInBox) == nullptr);
    ++tried;
  }
  CHECK(tried == 9);
  CHECK(row_for({'Z', true, false}, web::kInBox) == nullptr);
  CHECK(row_for({'S', true, false}, web::kInBox)->act == KeyAct::save);
  CHECK(row_for({259, false, true}, web::kInBox)->act == KeyAct::more);
  CHECK(row_for({268, false, false}, web::kInBox)->act == KeyAct::keep);
}

TEST_CASE("a digit opens a stage, but on a figure with the focus it is written there") {
  CHECK(row_for({'3', false, false}, web::kElsewhere)->act == KeyAct::open_stage);
  CHECK(row_for({'3', false, false}, web::kOnFigure)->act == KeyAct::write);
  CHECK(row_for({'9', false, false}, web::kElsewhere) == nullptr);
}

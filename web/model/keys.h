#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pouncemark::web {

/// Everything a key can ask for. What is done is written where it is done; which key asks for it,
/// and where, stands in the one table below.
enum class KeyAct {
  next_thing,
  thing_before,
  press,
  put_back,
  more,
  less,
  write,
  pull,
  keep,
  move_on,
  move_back,
  to_the_ends,
  to_the_middle,
  nearer,
  further,
  sum,
  turn_over,
  open_stage,
  piece_before,
  next_piece,
  print,
  undo,
  redo,
  save,
  open,
  text_size,
  list_keys,
};

/// Where a key works; a row names one or several, joined by |. Exactly one holds at a time, but
/// that those of the bench are told apart by what has the focus.
using KeyPlaces = unsigned;
inline constexpr KeyPlaces kOnStart = 1;       ///< the start page
inline constexpr KeyPlaces kOnPressed = 1024;  ///< the bench, a figure that was pressed: no ring
inline constexpr KeyPlaces kOnFigure = 2;      ///< the bench, a figure in a box has the ring
inline constexpr KeyPlaces kOnCloseup = 4;     ///< the bench, a close-up or its frame has it
inline constexpr KeyPlaces kOnLine = 8;        ///< the bench, a line whose sum can be shown has it
inline constexpr KeyPlaces kElsewhere = 16;    ///< the bench, anything else
inline constexpr KeyPlaces kInBox = 32;        ///< a box is open: the keys belong to its text
inline constexpr KeyPlaces kInHand = 64;       ///< a thing is held and moves
inline constexpr KeyPlaces kOnKeysPage = 128;  ///< the list of keys lies over everything
inline constexpr KeyPlaces kMustAnswer = 256;  ///< a slip lies over everything
inline constexpr KeyPlaces kOnGrip = 512;      ///< the bench, something that can be pulled has it
inline constexpr KeyPlaces kOnBench =
    kOnFigure | kOnPressed | kOnCloseup | kOnLine | kOnGrip | kElsewhere;

/// What the list is parted by, in its order.
enum class KeyGroup { going_round, figures, closeups, bench, job };
inline constexpr int kKeyGroups = 5;
const char* key_group_words(KeyGroup group);

/// One line of the table: an act, the keys that ask for it and where, and what it does in words.
struct KeyRow {
  KeyAct act;
  KeyGroup group;
  KeyPlaces places;
  /// Names joined by commas, each with "Ctrl+" or "Shift+" before it where it takes them:
  /// "Ctrl+Y,Ctrl+Shift+Z".
  const char* combos;
  const char* words;
  bool repeats = false;         ///< goes on while the key is held down
  const char* shown = nullptr;  ///< in the list instead of the combos: "1 to 8"
};

/// The one table: it says what a key does, and the list of keys is made from it.
std::span<const KeyRow> key_table();

/// A key with what is held beside it. `number` is the page's own: a sign's, letters as capitals,
/// and from 256 on the keys without a sign.
struct KeyCombo {
  int number = 0;
  bool ctrl = false;
  bool shift = false;
  bool operator==(const KeyCombo&) const = default;
};

/// The combos of a row, in its order.
std::vector<KeyCombo> combos_of(const KeyRow& row);

/// True when a key pressed asks for a combo. Shift does not count where it is needed to write the
/// sign itself; with Ctrl and for keys without a sign it does.
bool asks_for(const KeyCombo& pressed, const KeyCombo& combo);

/// The row a key asks for at a place; nullptr when it does nothing there.
const KeyRow* row_for(const KeyCombo& pressed, KeyPlaces places);

/// The keys of a row as the list shows them: "Ctrl + Y, Ctrl + Shift + Z".
std::string shown_keys(const KeyRow& row);

}  // namespace pouncemark::web

#include "web/model/keys.h"

#include <algorithm>
#include <array>

namespace pouncemark::web {
namespace {

constexpr KeyPlaces kClosed = kOnStart | kOnBench | kOnKeysPage | kMustAnswer;
constexpr KeyPlaces kOnJob = kOnBench | kInBox;
constexpr KeyPlaces kNotAsked = kOnStart | kOnBench | kOnKeysPage;

using enum KeyAct;
using enum KeyGroup;

constexpr std::array kTable = {
    KeyRow{next_thing, going_round, kClosed | kInBox, "Tab", "to the next thing", true},
    KeyRow{thing_before, going_round, kClosed | kInBox, "Shift+Tab", "to the thing before", true},
    KeyRow{press, going_round, kClosed, "Enter,Space", "press what has the ring"},
    KeyRow{put_back, going_round, ~KeyPlaces{kOnStart}, "Esc", "put back, or put away"},
    KeyRow{more, figures, kOnFigure | kOnPressed | kInBox, "Up,Shift+Up", "1 more, with Shift 10",
           true, "Up"},
    KeyRow{less, figures, kOnFigure | kOnPressed | kInBox, "Down,Shift+Down",
           "1 less, with Shift 10", true, "Down"},
    KeyRow{pull, figures, kOnGrip,
           "Right,Up,Down,Left,Shift+Right,Shift+Up,Shift+Down,Shift+Left,Ctrl+Right,Ctrl+Up,"
           "Ctrl+Down,Ctrl+Left",
           "pull by 0.5, Shift 5, Ctrl 0.1", true, "Arrows"},
    KeyRow{write, figures, kOnFigure, "0,1,2,3,4,5,6,7,8,9", "write over the figure", false,
           "0 to 9"},
    KeyRow{keep, figures, kInBox, "Enter", "keep what is written"},
    KeyRow{move_on, closeups, kOnCloseup, "Right", "along, towards the top", true},
    KeyRow{move_back, closeups, kOnCloseup, "Left", "along, towards the bottom", true},
    KeyRow{to_the_ends, closeups, kOnBench, "Home", "back to both ends"},
    KeyRow{to_the_middle, closeups, kOnBench, "End", "to the middle"},
    KeyRow{nearer, closeups, kOnBench, "+,=", "larger", true, "+"},
    KeyRow{further, closeups, kOnBench, "-", "smaller", true, "\xE2\x88\x92"},
    KeyRow{open_stage, bench, kOnBench & ~kOnFigure, "1,2,3,4,5,6,7,8", "open a stage of the work",
           false, "1 to 8"},
    KeyRow{sum, bench, kOnBench, "S", "the sum behind a figure"},
    KeyRow{turn_over, bench, kOnBench, "F", "face down, or the front"},
    KeyRow{piece_before, bench, kOnBench, "Page Up", "the piece before", true},
    KeyRow{next_piece, bench, kOnBench, "Page Down", "the next piece", true},
    KeyRow{print, bench, kOnBench, "P", "the map of the pages"},
    KeyRow{text_size, bench, kNotAsked, "T", "small, normal, large text"},
    KeyRow{list_keys, bench, kNotAsked, "?", "this list"},
    KeyRow{undo, job, kOnBench, "Ctrl+Z", "undo the last action", true},
    KeyRow{redo, job, kOnBench, "Ctrl+Y,Ctrl+Shift+Z", "redo it", true, "Ctrl + Y"},
    KeyRow{save, job, kOnJob, "Ctrl+S", "save the job as a file"},
    KeyRow{open, job, kOnStart | kOnJob, "Ctrl+O", "open a job file"},
    KeyRow{print, job, kOnJob, "Ctrl+P", "print the guides"},
};

struct Name {
  std::string_view name;
  int number;
};
constexpr std::array kNames = {
    Name{"Tab", 256},  Name{"Left", 257},    Name{"Right", 258},     Name{"Up", 259},
    Name{"Down", 260}, Name{"Page Up", 261}, Name{"Page Down", 262}, Name{"Home", 263},
    Name{"End", 264},  Name{"Enter", 268},   Name{"Esc", 269},       Name{"Space", ' '},
};

/// Takes `start` off the front of `words`, where it is there and not all of it.
bool take(std::string_view start, std::string_view* words) {
  if (words->size() <= start.size() || words->substr(0, start.size()) != start) return false;
  words->remove_prefix(start.size());
  return true;
}

KeyCombo combo_of(std::string_view words) {
  KeyCombo combo;
  combo.ctrl = take("Ctrl+", &words);
  combo.shift = take("Shift+", &words);
  const auto* named = std::find_if(kNames.begin(), kNames.end(),
                                   [words](const Name& one) { return one.name == words; });
  combo.number = named != kNames.end() ? named->number : words.empty() ? 0 : words.front();
  return combo;
}

}  // namespace

const char* key_group_words(KeyGroup group) {
  constexpr std::array<const char*, kKeyGroups> kWords = {
      "Going round", "Figures", "Close-ups of the ends", "The bench", "The job"};
  return kWords[static_cast<std::size_t>(group)];
}

std::span<const KeyRow> key_table() { return kTable; }

std::vector<KeyCombo> combos_of(const KeyRow& row) {
  std::vector<KeyCombo> combos;
  std::string_view rest = row.combos;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(','), rest.size());
    combos.push_back(combo_of(rest.substr(0, end)));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return combos;
}

bool asks_for(const KeyCombo& pressed, const KeyCombo& combo) {
  if (pressed.number != combo.number || pressed.ctrl != combo.ctrl) return false;
  const bool shift_writes = !combo.ctrl && combo.number < 256;
  return shift_writes || pressed.shift == combo.shift;
}

const KeyRow* row_for(const KeyCombo& pressed, KeyPlaces places) {
  for (const KeyRow& row : kTable) {
    if ((row.places & places) == 0) continue;
    const auto combos = combos_of(row);
    if (std::any_of(combos.begin(), combos.end(),
                    [&](const KeyCombo& combo) { return asks_for(pressed, combo); })) {
      return &row;
    }
  }
  return nullptr;
}

std::string shown_keys(const KeyRow& row) {
  if (row.shown != nullptr) return row.shown;
  std::string shown;
  for (std::string_view rest = row.combos; !rest.empty(); rest.remove_prefix(1)) {
    const char sign = rest.front();
    const bool joins = sign == '+' && rest.size() > 1 && rest[1] != ',';
    if (joins)
      shown += " + ";
    else if (sign == ',')
      shown += ", ";
    else
      shown += sign;
  }
  return shown;
}

}  // namespace pouncemark::web

#include "web/model/curve_edits.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Limits kChord{1'000, 20'000'000};
constexpr Limits kRise{0, 20'000'000};
constexpr Um kFirstChordUm = 1'000'000;

job::Bay& bay_at(Made& made, int bay) { return made.job.bays[static_cast<std::size_t>(bay)]; }

Made begun(const job::Job& job, int bay) {
  Made made;
  made.job = job;
  made.piece = bay;
  return made;
}

Made with_length(const job::Job& job, int bay, BayBox box, Um um) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  Um& figure = box == BayBox::chord ? of.chord_um : of.rise_um;
  made.action = std::string(box == BayBox::chord ? "Chord" : "Rise") + " of bay " + of.code + " " +
                exact_mm_text(figure) + " " + kArrow + " " + exact_mm_text(um);
  figure = um;
  return made;
}

Made with_held(const job::Job& job, int bay, std::string_view typed) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  std::string known;
  for (int piece = 0; piece < piece_count(job); ++piece) {
    const std::string& code = code_of(job, piece);
    if (code == typed) {
      of.holds = code;
      of.stands_empty = false;
      made.action = "Bay " + of.code + " holds " + piece_words(job, piece);
      return made;
    }
    if (piece < 6) known += (piece == 0 ? "" : ", ") + code;
  }
  made.refused = "No section or panel is called \"" + shortened(typed, 20) + "\". There are " +
                 (known.empty() ? "none yet" : known) + ".";
  return made;
}

bool is_held(const job::Job& job, const std::string& code) {
  return std::any_of(job.bays.begin(), job.bays.end(),
                     [&](const job::Bay& bay) { return bay.holds == code && !bay.stands_empty; });
}

std::string free_code(const job::Job& job) {
  for (std::size_t number = job.bays.size() + 1;; ++number) {
    std::string code = "B" + std::to_string(number);
    const bool is_used = std::any_of(job.bays.begin(), job.bays.end(),
                                     [&](const job::Bay& bay) { return bay.code == code; });
    if (!is_used) return code;
  }
}

}  // namespace

Made with_bay_typed(const job::Job& job, int bay, BayBox box, std::string_view typed) {
  if (box == BayBox::holds) return with_held(job, bay, typed);
  Entry entry = read_entry(typed, box == BayBox::chord ? kChord : kRise);
  if (entry.um) return with_length(job, bay, box, *entry.um);
  Made made = begun(job, bay);
  made.refused = std::move(entry.sentence);
  return made;
}

Made with_bay_stepped(const job::Job& job, int bay, BayBox box, Um by) {
  const job::Bay& of = job.bays[static_cast<std::size_t>(bay)];
  const bool is_chord = box == BayBox::chord;
  return with_length(job, bay, box,
                     stepped(is_chord ? of.chord_um : of.rise_um, by, is_chord ? kChord : kRise));
}

Made with_bay_face(const job::Job& job, int bay, bool is_hollow) {
  Made made = begun(job, bay);
  job::Bay& of = bay_at(made, bay);
  of.face = is_hollow ? "hollow" : "bulging";
  made.action = "Bay " + of.code + " is " + of.face + " toward the viewer";
  return made;
}

Made with_new_bay(const Solved& now) {
  Made made = begun(now.job, static_cast<int>(now.job.bays.size()));
  job::Bay bay;
  bay.code = free_code(now.job);
  bay.chord_um = kFirstChordUm;
  bay.face = "bulging";
  bay.stands_empty = true;
  for (const solve::Piece& piece : now.results.pieces) {
    if (bay.holds.empty()) bay.holds = piece.code;
    if (is_held(now.job, piece.code)) continue;
    bay.holds = piece.code;
    bay.stands_empty = false;
    bay.chord_um = std::clamp(piece.width_um, kChord.least, kChord.most);
    break;
  }
  if (bay.holds.empty()) {
    made.refused = "Nothing can hang in a bay yet: make a section or a panel first.";
    return made;
  }
  made.action = "Bay " + bay.code + " added";
  made.job.bays.push_back(std::move(bay));
  return made;
}

Made without_bay(const job::Job& job, int bay) {
  Made made = begun(job, std::max(0, bay - 1));
  made.action = "Bay " + bay_at(made, bay).code + " taken away";
  made.job.bays.erase(made.job.bays.begin() + bay);
  return made;
}

}  // namespace pouncemark::web

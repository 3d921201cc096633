#include "web/model/sew_edits.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/changes.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

struct Whole {
  const char* name;
  int least;
  int most;
  const char* usual;
};
constexpr Whole kNeedle{"needle size", 20, 400, "Usual is 60 to 250 (needle makers' lists)."};
constexpr Whole kTex{"thread tex", 1, 2000, "Usual is 20 to 350 (thread makers' lists)."};
constexpr Limits kStitch{500, 50'000};
constexpr Limits kStack{10, 50'000};

bool is_digit(char sign) { return sign >= '0' && sign <= '9'; }

/// Digits, a sign for "by", digits: "135x17", "135 × 17".
bool is_needle_system(const std::string& text) {
  for (const std::string_view by : {"x", "X", "×"}) {
    const std::size_t at = text.find(by);
    if (at == std::string::npos || at == 0 || at + by.size() >= text.size()) continue;
    if (is_digit(text[at - 1]) && is_digit(text[at + by.size()])) return true;
  }
  return false;
}

std::string without_blanks(std::string_view typed) {
  std::string text(typed);
  text.erase(std::remove(text.begin(), text.end(), ' '), text.end());
  return text;
}

SewNumber read_whole(const std::string& text, std::string_view typed, const Whole& whole) {
  SewNumber read;
  const std::string range = std::string("Give a ") + whole.name + " from " +
                            std::to_string(whole.least) + " to " + std::to_string(whole.most) +
                            ". " + whole.usual;
  const bool is_number =
      !text.empty() && text.size() <= 6 && std::all_of(text.begin(), text.end(), is_digit);
  if (!is_number) {
    read.sentence = "\"" + shortened(typed, 40) + "\" is no whole number. " + range;
    return read;
  }
  for (const char sign : text) read.number = read.number * 10 + (sign - '0');
  if (read.number < whole.least || read.number > whole.most) {
    read.sentence = text + " is out of range. " + range;
  }
  return read;
}

const char* box_name(SewBox box) {
  constexpr std::array<const char*, 4> kNames = {"Needle size", "Thread tex", "Stitch", "Stack"};
  return kNames[static_cast<std::size_t>(box)];
}

bool is_length(SewBox box) { return box == SewBox::stitch || box == SewBox::stack; }

std::string figure_text(SewBox box, std::int64_t figure) {
  return is_length(box) ? exact_mm_text(figure) : std::to_string(figure);
}

job::RowPair& pair_of(job::Section& section, job::RowsOf of) {
  return of == job::RowsOf::lap_rows && section.lap_rows ? *section.lap_rows : section.side_rows;
}

/// What `box` holds of the section or panel on the bench, to be changed.
void set_length(job::Job& job, const Solved& now, Place place, job::RowsOf of, SewBox box, Um um) {
  if (panel_at(now.job, now.results, place) != nullptr) {
    job::Panel& panel = panel_of(job, now.results, place);
    (box == SewBox::stitch ? panel.stitch_um : panel.stack_um) = um;
    return;
  }
  job::Section& section = section_of(job, now.results, place);
  const int number = number_at(now.results, place);
  if (box == SewBox::stack) {
    pair_of(section, of).stack_um = um;
  } else if (of == job::RowsOf::side_rows && !is_alone(section, number)) {
    stitch_change(section, number).stitch_um = um;
  } else {
    pair_of(section, of).stitch.stitch_um = um;
  }
}

Made with_figure(const Solved& now, Place place, const SewKind& kind, SewBox box,
                 std::int64_t figure) {
  Made made;
  made.job = now.job;
  const std::int64_t was = sew_measured(now, place, kind, box);
  if (box == SewBox::needle_size) {
    made.job.needle_size = static_cast<int>(figure);
  } else if (box == SewBox::thread_tex) {
    made.job.thread_tex = static_cast<int>(figure);
  } else {
    set_length(made.job, now, place, kind.of, box, figure);
  }
  made.action = std::string(box_name(box)) + (is_length(box) ? " of the " + kind.row : "") + " " +
                figure_text(box, was) + " " + kArrow + " " + figure_text(box, figure);
  return made;
}

/// The rows of a panel whose codes begin with "P1 hinge".
void add_panel_kind(const Solved& now, Place place, const char* id, const char* words,
                    std::vector<SewKind>* kinds) {
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const std::string starts = piece.code + " " + id;
  SewKind kind;
  kind.id = id;
  kind.words = words;
  kind.row = std::string(id) + (kind.id == "hinge" ? " side" : "") + " row of panel " + piece.code;
  kind.of = job::RowsOf::panel_rows;
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const solve::Row& row = now.results.rows[static_cast<std::size_t>(i)];
    const bool is_stitched = row.kind == solve::RowKind::stitch && !row.run.is_empty;
    if (is_stitched && row.code.rfind(starts, 0) == 0) kind.rows.push_back(i);
  }
  if (!kind.rows.empty()) kinds->push_back(std::move(kind));
}

void add_section_kind(const Solved& now, Place place, job::RowsOf of, std::vector<SewKind>* kinds) {
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const bool is_side = of == job::RowsOf::side_rows;
  const solve::Sleeve* sleeve = sleeve_at(now.results, place);
  const bool is_lone = piece.sleeves.size() == 1;
  SewKind kind;
  kind.id = is_side ? "side" : "joining";
  kind.words = is_side ? "Side rows" : "Joining rows";
  kind.of = of;
  kind.row = (is_side ? "side rows of " : "joining rows of ") +
             (sleeve != nullptr && (is_side || is_lone) ? "sleeve " + sleeve->code
                                                        : "section " + piece.code);
  for (int i = piece.first_row; i < piece.first_row + piece.row_count; ++i) {
    const solve::Row& row = now.results.rows[static_cast<std::size_t>(i)];
    if (row.kind != solve::RowKind::stitch || row.run.is_empty) continue;
    if ((row.place == solve::RowPlace::lap) == is_side) continue;
    if (is_side && place.sleeve >= 0 && row.sleeve != place.sleeve) continue;
    kind.rows.push_back(i);
  }
  if (!kind.rows.empty()) kinds->push_back(std::move(kind));
}

}  // namespace

SewNumber read_needle_size(std::string_view typed) {
  const std::string text = without_blanks(typed);
  if (is_needle_system(text)) {
    return {0,
            "\"" + shortened(typed, 20) +
                "\": That is a needle system, not a size. The size is the blade in hundredths of "
                "a millimetre, 60 to 250; the system has its own box under Materials."};
  }
  return read_whole(text, typed, kNeedle);
}

SewNumber read_thread_tex(std::string_view typed) {
  std::string text = without_blanks(typed);
  if (text.rfind("tex", 0) == 0) text.erase(0, 3);
  if (text.find("icket") != std::string::npos || text.find("etric") != std::string::npos) {
    return {0,
            "A ticket number is no tex: ticket 20 may be 135, 150 or more. Weigh 10 m, or type the "
            "tex on the label."};
  }
  return read_whole(text, typed, kTex);
}

std::vector<SewKind> sew_kinds(const Solved& now, Place place) {
  std::vector<SewKind> kinds;
  if (now.results.pieces.empty() || is_whole_hanging(place)) return kinds;
  if (panel_at(now.job, now.results, place) != nullptr) {
    add_panel_kind(now, place, "hinge", "Hinge side", &kinds);
    add_panel_kind(now, place, "top", "Top", &kinds);
    add_panel_kind(now, place, "bottom", "Bottom", &kinds);
    return kinds;
  }
  add_section_kind(now, place, job::RowsOf::side_rows, &kinds);
  add_section_kind(now, place, job::RowsOf::lap_rows, &kinds);
  return kinds;
}

std::int64_t sew_measured(const Solved& now, Place place, const SewKind& kind, SewBox box) {
  if (box == SewBox::needle_size) return now.job.needle_size;
  if (box == SewBox::thread_tex) return now.job.thread_tex;
  if (const job::Panel* panel = panel_at(now.job, now.results, place)) {
    return box == SewBox::stitch ? panel->stitch_um : panel->stack_um;
  }
  const job::Section& section = *section_at(now.job, now.results, place);
  const bool is_lap = kind.of == job::RowsOf::lap_rows && section.lap_rows;
  const job::RowPair rows =
      is_lap ? *section.lap_rows : rows_of(section, number_at(now.results, place));
  return box == SewBox::stitch ? rows.stitch.stitch_um : rows.stack_um;
}

Made with_sew_typed(const Solved& now, Place place, const SewKind& kind, SewBox box,
                    std::string_view typed) {
  Made made;
  if (is_length(box)) {
    Entry entry = read_entry(typed, box == SewBox::stitch ? kStitch : kStack);
    if (entry.um) return with_figure(now, place, kind, box, *entry.um);
    made.refused = std::move(entry.sentence);
    return made;
  }
  SewNumber read = box == SewBox::needle_size ? read_needle_size(typed) : read_thread_tex(typed);
  if (read.sentence.empty()) return with_figure(now, place, kind, box, read.number);
  made.refused = std::move(read.sentence);
  return made;
}

Made with_sew_figure(const Solved& now, Place place, const SewKind& kind, SewBox box,
                     std::int64_t figure) {
  const Limits limits = box == SewBox::needle_size  ? Limits{kNeedle.least, kNeedle.most}
                        : box == SewBox::thread_tex ? Limits{kTex.least, kTex.most}
                        : box == SewBox::stitch     ? kStitch
                                                    : kStack;
  return with_figure(now, place, kind, box, std::clamp(figure, limits.least, limits.most));
}

bool stack_is_from_plies(const Solved& now, Place place, const SewKind& kind) {
  if (const job::Panel* panel = panel_at(now.job, now.results, place)) {
    return panel->stack_from_plies;
  }
  const job::Section& section = *section_at(now.job, now.results, place);
  const bool is_lap = kind.of == job::RowsOf::lap_rows && section.lap_rows;
  return is_lap ? section.lap_rows->stack_from_plies : section.side_rows.stack_from_plies;
}

Made with_stack_from_plies(const Solved& now, Place place, const SewKind& kind, bool from_plies) {
  Made made;
  made.job = now.job;
  if (panel_at(now.job, now.results, place) != nullptr) {
    panel_of(made.job, now.results, place).stack_from_plies = from_plies;
  } else {
    pair_of(section_of(made.job, now.results, place), kind.of).stack_from_plies = from_plies;
  }
  made.action =
      "Stack of the " + kind.row + ": " + (from_plies ? "worked out from its plies" : "as typed");
  return made;
}

}  // namespace pouncemark::web

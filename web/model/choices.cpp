#include "web/model/choices.h"

#include <algorithm>
#include <array>
#include <cstddef>

#include "engine/base/number_text.h"
#include "web/model/changes.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Um kFirstFoldUm = 500;     ///< inside radius a fold begins with
constexpr Um kPastRowsUm = 4'000;    ///< a flange begins this much wider than its rows stand in
constexpr Um kMostFoldUm = 50'000;   ///< as the job file has it
constexpr Um kLeastWidthUm = 1'000;  ///< of a sleeve, and of what shows of it beside a lap
constexpr Um kLeastRoomUm = 100;     ///< what a fold or a tube is left at least
constexpr Um kMostSleeveUm = 20'000'000;
constexpr Um kMostSectionUm = 100'000'000;  ///< as the job file has it

/// A number asked of an enumerator.
template <typename Enum>
int numbered(Enum value) {
  return static_cast<int>(value);
}

Um narrowest_um(const job::Section& section) {
  Um least = kMostSleeveUm;
  for (const int number : job::sleeves_there(section)) {
    least = std::min(least, job::sleeve_width_um(section, number));
  }
  return least;
}

/// The widest fold and the widest flange that every sleeve there can be made with.
Um most_fold_um(const job::Section& section) {
  return std::min(kMostFoldUm, narrowest_um(section) - section.leaf_um - kLeastRoomUm);
}
Um most_flange_um(const job::Section& section) {
  return narrowest_um(section) - 2 * section.leaf_um - kLeastRoomUm;
}

/// A flange in which both side rows of every sleeve stand, to the whole millimetre.
Um first_flange_um(const job::Section& section) {
  Um in = 0;
  for (const int number : job::sleeves_there(section)) {
    const job::RowPair rows = job::side_rows_of(section, number);
    in = std::max({in, rows.staple.in_from_edge_um, rows.stitch.in_from_edge_um});
  }
  return std::min(divide_up(in + kPastRowsUm, 1'000) * 1'000, most_flange_um(section));
}

void set_make(job::Section& section, job::Make make) {
  section.make = make;
  if (make == job::Make::two_leaf) return;
  if (!section.sewn_side) section.sewn_side = job::Side::right;
  if (make == job::Make::folded) {
    const Um fold = section.fold_radius_um.value_or(kFirstFoldUm);
    section.fold_radius_um = std::min(fold, most_fold_um(section));
    return;
  }
  const Um flange = section.flange_um.value_or(first_flange_um(section));
  section.flange_um = std::min(flange, most_flange_um(section));
}

bool is_exact(const job::StapleRow& row) { return row.rule == job::SpacingRule::exact; }

int sleeves_there(const solve::Results& results, Place place) {
  const auto& piece = results.pieces[static_cast<std::size_t>(place.piece)];
  return static_cast<int>(piece.sleeves.size());
}

/// The staple rows a question of the place is about: the side rows, and of a whole section the lap
/// rows as well.
bool lap_rows_too(const job::Section& section, int number) {
  return number < 0 && section.lap_rows.has_value();
}

bool any_row_is_exact(const job::Section& section, int number) {
  return is_exact(rows_of(section, number).staple) ||
         (lap_rows_too(section, number) && is_exact(section.lap_rows->staple));
}

int left_over_at(const job::Section& section, int number) {
  const job::StapleRow side = rows_of(section, number).staple;
  if (!lap_rows_too(section, number) || !is_exact(section.lap_rows->staple)) {
    return numbered(side.left_over);
  }
  const job::LeftOver laps = section.lap_rows->staple.left_over;
  return !is_exact(side) || side.left_over == laps ? numbered(laps) : -1;
}

void set_left_over(job::Section& section, int number, job::LeftOver left_over) {
  if (!is_alone(section, number)) {
    staple_change(section, number).left_over = left_over;
    return;
  }
  if (is_exact(section.side_rows.staple)) section.side_rows.staple.left_over = left_over;
  if (lap_rows_too(section, number) && is_exact(section.lap_rows->staple)) {
    section.lap_rows->staple.left_over = left_over;
  }
}

void set_staples_out(job::Section& section, int number, job::StaplesOut out) {
  if (is_alone(section, number))
    section.side_rows.staple.staples = out;
  else
    staple_change(section, number).staples = out;
}

int staples_number(job::StaplesOut out) {
  return out == job::StaplesOut::not_said ? -1 : numbered(out);
}

/// The list of missing sleeves stays in the order of their numbers where it was.
void set_missing(job::Section& section, int number) {
  const std::string code = job::sleeve_code(section, number);
  const auto number_of = [&section](const std::string& one) {
    for (int i = 0; i < section.count; ++i) {
      if (job::sleeve_code(section, i) == one) return i;
    }
    return section.count;
  };
  const auto after = std::find_if(
      section.missing.begin(), section.missing.end(),
      [&number_of, number](const std::string& one) { return number_of(one) > number; });
  section.missing.insert(after, code);
}

void set_on_section(job::Section& section, int number, Question question, int answer) {
  switch (question) {
    case Question::leaves:
      return set_make(section, static_cast<job::Make>(answer));
    case Question::sewn_side:
      section.sewn_side = static_cast<job::Side>(answer);
      return;
    case Question::left_over:
      return set_left_over(section, number, static_cast<job::LeftOver>(answer));
    case Question::staples_out:
      return set_staples_out(section, number, static_cast<job::StaplesOut>(answer));
    case Question::lap_staples_out:
      section.lap_rows->staple.staples = static_cast<job::StaplesOut>(answer);
      return;
    case Question::side_seams:
      section.side_seams = static_cast<job::SideSeams>(answer);
      return;
    case Question::is_there:
      if (answer == 1) set_missing(section, number);
      return;
    case Question::put_back:
      section.missing.erase(section.missing.begin() + answer);
      return;
    case Question::measured_from:
    case Question::corners:
      return;
  }
}

std::string make_words(const job::Section& section) {
  const std::string side =
      section.sewn_side.value_or(job::Side::right) == job::Side::left ? "left" : "right";
  if (section.make == job::Make::folded) {
    return "folded, " + exact_mm_text(section.fold_radius_um.value_or(0)) +
           " inside the fold, sewn at the " + side;
  }
  if (section.make == job::Make::round) {
    return "round with a flange of " + exact_mm_text(section.flange_um.value_or(0)) +
           ", sewn at the " + side;
  }
  return "two leaves, sewn at both sides";
}

constexpr std::array<const char*, 3> kLeftOverWords = {
    "after the last point, at the top", "half at each end", "filled with one more point"};
constexpr std::array<const char*, 5> kStaplesWords = {"", "come out before the row is sewn",
                                                      "come out as the foot comes",
                                                      "come out after the row", "stay"};

std::string staples_words(const std::string& which, int answer) {
  return which + " " + kStaplesWords[static_cast<std::size_t>(answer)];
}

}  // namespace

std::string no_room(const job::Section& section) {
  Um total = section.lap_um;
  for (const int number : job::sleeves_there(section)) {
    const Um width = job::sleeve_width_um(section, number);
    const std::string sleeve =
        "sleeve " + job::sleeve_code(section, number) + " is " + exact_mm_text(width) + " wide";
    if (section.count > 1 && width <= section.lap_um) {
      return sleeve + ", the lap is " + exact_mm_text(section.lap_um);
    }
    const Um fold = section.fold_radius_um.value_or(0);
    if (section.make == job::Make::folded && (fold < 0 || width <= fold + section.leaf_um)) {
      return sleeve + ": no room for the fold";
    }
    const Um flange = section.flange_um.value_or(0);
    if (section.make == job::Make::round &&
        (flange <= 0 || width <= flange + 2 * section.leaf_um)) {
      return sleeve + ": no room for a tube beside its flange";
    }
    total += width - section.lap_um;
  }
  if (total > kMostSectionUm) return "the section would be " + exact_mm_text(total) + " wide";
  return {};
}

bool is_asked(const job::Job& job, const solve::Results& results, Place place, Question question) {
  if (question == Question::corners) return panel_at(job, results, place) != nullptr;
  const job::Section* section = section_at(job, results, place);
  if (section == nullptr) return false;
  const int number = number_at(results, place);
  const int there = sleeves_there(results, place);
  switch (question) {
    case Question::sewn_side:
      return section->make != job::Make::two_leaf;
    case Question::left_over:
      return any_row_is_exact(*section, number);
    case Question::lap_staples_out:
      return number < 0 && there > 1 && section->lap_rows.has_value();
    case Question::side_seams:
      return number < 0 && there > 1;
    case Question::is_there:
      return number >= 0 && section->count > 1;
    case Question::put_back:
      // One sleeve that is left stands for its section.
      return (number < 0 || there == 1) && !section->missing.empty();
    default:
      return true;
  }
}

int answer_at(const job::Job& job, const solve::Results& results, Place place, Question question) {
  if (!is_asked(job, results, place, question)) return -1;
  if (question == Question::corners) return numbered(panel_at(job, results, place)->corners);
  const job::Section& section = *section_at(job, results, place);
  const int number = number_at(results, place);
  switch (question) {
    case Question::leaves:
      return numbered(section.make);
    case Question::sewn_side:
      return numbered(section.sewn_side.value_or(job::Side::right));
    case Question::measured_from:
      return job.spacing_is_clear_gap ? 1 : 0;
    case Question::left_over:
      return left_over_at(section, number);
    case Question::staples_out:
      return staples_number(rows_of(section, number).staple.staples);
    case Question::lap_staples_out:
      return staples_number(section.lap_rows->staple.staples);
    case Question::side_seams:
      return numbered(section.side_seams);
    case Question::is_there:
      return 0;
    default:
      return -1;
  }
}

job::Job with_answer(const job::Job& job, const solve::Results& results, Place place,
                     Question question, int answer) {
  job::Job changed = job;
  if (!is_asked(job, results, place, question)) return changed;
  if (question == Question::measured_from) {
    changed.spacing_is_clear_gap = answer == 1;
  } else if (question == Question::corners) {
    panel_of(changed, results, place).corners = static_cast<job::Corners>(answer);
  } else {
    set_on_section(section_of(changed, results, place), number_at(results, place), question,
                   answer);
  }
  return changed;
}

std::string why_not(const job::Job& job, const solve::Results& results, Place place,
                    Question question, int answer) {
  const job::Section* section = section_at(job, results, place);
  if (section == nullptr) return {};
  if (question == Question::is_there && answer == 1 && sleeves_there(results, place) == 1) {
    return "it is the only sleeve that is there";
  }
  const job::Job changed = with_answer(job, results, place, question, answer);
  return no_room(*section_at(changed, results, place));
}

std::string answered_words(const job::Job& job, const solve::Results& results, Place place,
                           Question question, int answer) {
  const std::string name = name_of(results, place);
  const std::string all =
      sleeves_there(results, place) > 1 ? name_of(results, {place.piece, -1}) : name;
  const job::Job changed = with_answer(job, results, place, question, answer);
  const job::Section* section = section_at(changed, results, place);
  switch (question) {
    case Question::leaves:
      return "Leaves of " + all + ": " + make_words(*section);
    case Question::sewn_side:
      return "Sewn side of " + all + ": " + (answer == 0 ? "left" : "right");
    case Question::measured_from:
      return std::string("Spacing is measured ") +
             (answer == 1 ? "as the clear gap between crowns" : "from centre to centre") +
             ", for the whole job";
    case Question::left_over:
      return "Left over of " + name + ": " + kLeftOverWords[static_cast<std::size_t>(answer)];
    case Question::staples_out:
      return staples_words("The side staples of " + name, answer);
    case Question::lap_staples_out:
      return staples_words("The lap staples of " + name, answer);
    case Question::side_seams:
      return "Side seams of " + all +
             (answer == 1 ? ": shared with the joining row" : ": separate");
    case Question::is_there:
      return with_capital(name) + " is missing: its number is kept, nothing is renumbered";
    case Question::put_back:
      return "Put sleeve " +
             section_at(job, results, place)->missing[static_cast<std::size_t>(answer)] + " back";
    case Question::corners:
      return answer == 1
                 ? "Rows of " + name + " stop short at the corners, " +
                       exact_mm_text(measured(changed, results, place, Measure::corner_clear)) +
                       " clear of the hinge row"
                 : "Rows of " + name + " share the hinge row's holes at the corners";
  }
  return {};
}

Held held_between(const job::Job& job, const solve::Results& results, Place place,
                  Measure measure) {
  const job::Section* section = section_at(job, results, place);
  if (section == nullptr) return {kLeastRoomUm, 1'000'000};
  if (measure == Measure::fold_radius) return {0, most_fold_um(*section)};
  if (measure == Measure::flange) return {kLeastRoomUm, most_flange_um(*section)};
  Um least = section->count > 1 ? section->lap_um + kLeastWidthUm : kLeastWidthUm;
  if (section->make == job::Make::folded) {
    least = std::max(least, section->fold_radius_um.value_or(0) + section->leaf_um + kLeastRoomUm);
  }
  if (section->make == job::Make::round) {
    least = std::max(least, section->flange_um.value_or(0) + 2 * section->leaf_um + kLeastRoomUm);
  }
  return {least, kMostSleeveUm};
}

}  // namespace pouncemark::web

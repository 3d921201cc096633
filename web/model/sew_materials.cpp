#include "web/model/sew_materials.h"

#include <cmath>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/material/hole_stress.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using material::Field;
using material::FieldRow;
using material::Holds;
using material::Item;
using material::Standing;

constexpr std::size_t kMostSigns = 200;

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlank = " \t\r\n";
  const std::size_t first = text.find_first_not_of(kBlank);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kBlank) - first + 1);
}

/// "thread, strength": the item and the value in it.
std::string name_of(const FieldRow& row) {
  return std::string(material::item_words(row.item)) + ", " + std::string(row.words);
}

std::string with_unit(std::string number, const FieldRow& row) {
  return row.unit.empty() ? number : number + " " + std::string(row.unit);
}

std::string said(const FieldRow& row, const material::Value& value) {
  if (!value.is_known) return "not known";
  if (row.holds == Holds::choice) return choice_said(row, value.thousandths);
  if (row.holds == Holds::words) return value.words;
  return exact_mm_text(value.thousandths);
}

std::string range_of(const FieldRow& row) {
  std::string words = with_capital(name_of(row)) + ": give " + exact_mm_text(row.least) + " to " +
                      with_unit(exact_mm_text(row.most), row) + ".";
  if (row.usual_most == 0) return words;
  return words + " Usual is " + exact_mm_text(row.usual_least) + " to " +
         exact_mm_text(row.usual_most) + " (" + std::string(row.usual_source) + ").";
}

std::string quoted(std::string_view typed) { return "\"" + shortened(typed, 40) + "\""; }

Made refused(std::string sentence) {
  Made made;
  made.refused = std::move(sentence);
  return made;
}

/// The value as it stands, as if it had been entered; false where it is not known.
bool entered_now(const job::Job& job, Field field, job::EnteredValue* entered) {
  const auto found = job.materials.values.find(field);
  if (found != job.materials.values.end()) {
    *entered = found->second;
    return true;
  }
  const material::Value value = job::value_of(job.materials, field);
  entered->thousandths = value.thousandths;
  entered->words = value.words;
  entered->standing = value.standing;
  entered->source = value.source;
  return value.is_known;
}

/// A value typed over: what was said of the former one is not true of it.
Made with_value(const job::Job& job, const FieldRow& row, job::EnteredValue entered) {
  const std::string was = said(row, job::value_of(job.materials, row.field));
  Made made;
  made.job = job;
  made.job.materials.values[row.field] = std::move(entered);
  const std::string is = said(row, job::value_of(made.job.materials, row.field));
  made.action = with_capital(name_of(row)) + " " + shortened(was, 40) + " " + kArrow + " " +
                shortened(is, 40);
  return made;
}

}  // namespace

bool read_thousandths(std::string_view typed, std::int64_t* thousandths) {
  const std::string_view text = trimmed(typed);
  constexpr std::size_t kMostFigures = 12;
  std::int64_t value = 0;
  int places = -1;  // none before a decimal sign
  std::size_t figures = 0;
  for (const char sign : text) {
    if ((sign == '.' || sign == ',') && places < 0) {
      places = 0;
    } else if (sign < '0' || sign > '9' || places == 3 || ++figures > kMostFigures) {
      return false;
    } else {
      value = value * 10 + (sign - '0');
      if (places >= 0) ++places;
    }
  }
  for (places = places < 0 ? 0 : places; places < 3; ++places) value *= 10;
  *thousandths = value;
  return figures > 0;
}

std::string choice_said(const FieldRow& row, std::int64_t number) {
  std::string words(material::choice_word(row, number));
  for (char& sign : words) {
    if (sign == '_') sign = ' ';
  }
  if (words == "petg") return "PETG";
  return words == "rigid pvc" ? "rigid PVC" : words;
}

int choice_count(const FieldRow& row) {
  int count = 0;
  while (row.holds == Holds::choice && !material::choice_word(row, count).empty()) ++count;
  return count;
}

std::string standing_said(Standing standing) {
  constexpr std::array<const char*, 5> kSaid = {"assumed", "standard", "supplier", "measured here",
                                                "typed"};
  return kSaid[static_cast<std::size_t>(standing)];
}

std::vector<MaterialLine> material_lines(const job::Job& job, Item item) {
  std::vector<MaterialLine> lines;
  for (const FieldRow& row : material::all_fields()) {
    if (row.item != item) continue;
    const material::Value value = job::value_of(job.materials, row.field);
    MaterialLine line;
    line.field = row.field;
    line.id = std::string(material::item_key(item)) + "." + std::string(row.key);
    line.words = row.words;
    line.shown = said(row, value);
    if (value.is_known) line.text = line.shown;
    line.unit = row.unit;
    line.is_known = value.is_known;
    line.is_assumed = value.is_known && value.is_assumed();
    line.is_entered = job.materials.values.count(row.field) != 0;
    line.standing = value.is_known ? standing_said(value.standing) : std::string();
    line.source = value.source;
    lines.push_back(std::move(line));
  }
  return lines;
}

Made with_material(const job::Job& job, Field field, std::string_view typed) {
  const FieldRow& row = material::row_of(field);
  const std::string_view text = trimmed(typed);
  job::EnteredValue entered;
  entered.standing = Standing::typed;
  if (row.holds == Holds::words) {
    if (text.empty()) return without_material(job, field);
    if (text.size() > kMostSigns) return refused("Too long: 200 signs or fewer.");
    entered.words = std::string(text);
    return with_value(job, row, std::move(entered));
  }
  const bool is_below_zero = row.least < 0 && !text.empty() && text.front() == '-';
  if (!read_thousandths(is_below_zero ? text.substr(1) : text, &entered.thousandths)) {
    return refused(quoted(text) + " is no number. " + range_of(row));
  }
  if (is_below_zero) entered.thousandths = -entered.thousandths;
  if (entered.thousandths < row.least || entered.thousandths > row.most) {
    return refused(exact_mm_text(entered.thousandths) + " is out of range. " + range_of(row));
  }
  return with_value(job, row, std::move(entered));
}

Made with_material_choice(const job::Job& job, Field field, std::int64_t number) {
  job::EnteredValue entered;
  entered.standing = Standing::typed;
  entered.thousandths = number;
  return with_value(job, material::row_of(field), std::move(entered));
}

Made with_standing(const job::Job& job, Field field, Standing standing) {
  const FieldRow& row = material::row_of(field);
  job::EnteredValue entered;
  if (!entered_now(job, field, &entered)) {
    return refused("Type the value first: " + name_of(row) + " is not known.");
  }
  // What was said of where it comes from was said of its former standing.
  if (entered.standing != standing) entered.source.clear();
  entered.standing = standing;
  Made made;
  made.job = job;
  made.job.materials.values[field] = std::move(entered);
  made.action = with_capital(name_of(row)) + ": " + standing_said(standing);
  return made;
}

Made with_source(const job::Job& job, Field field, std::string_view typed) {
  const FieldRow& row = material::row_of(field);
  const std::string_view text = trimmed(typed);
  job::EnteredValue entered;
  if (!entered_now(job, field, &entered)) {
    return refused("Type the value first: " + name_of(row) + " is not known.");
  }
  if (text.size() > kMostSigns) return refused("Too long: 200 signs or fewer.");
  entered.source = std::string(text);
  Made made;
  made.job = job;
  made.job.materials.values[field] = std::move(entered);
  made.action = with_capital(name_of(row)) +
                (text.empty() ? ": its source taken away" : ", from: " + shortened(text, 60));
  return made;
}

Made without_material(const job::Job& job, Field field) {
  const FieldRow& row = material::row_of(field);
  const std::string was = said(row, job::value_of(job.materials, field));
  Made made;
  made.job = job;
  made.job.materials.values.erase(field);
  const std::string is = said(row, job::value_of(made.job.materials, field));
  made.action = with_capital(name_of(row)) + " back to what it begins with: " + shortened(was, 40) +
                " " + kArrow + " " + shortened(is, 40);
  return made;
}

Made with_weighing(const job::Job& job, std::string_view typed) {
  std::int64_t milligrams = 0;
  std::string_view text = trimmed(typed);
  if (!text.empty() && text.back() == 'g') text = trimmed(text.substr(0, text.size() - 1));
  const FieldRow& row = material::row_of(Field::thread_weighed_tex);
  const bool is_number = read_thousandths(text, &milligrams);
  // Tex is grams on 1000 m, a hundred times what 10 m weigh.
  const std::int64_t tex = milligrams * 100;
  if (!is_number || tex < row.least || tex > row.most) {
    return refused(quoted(trimmed(typed)) + ": give what 10 m weigh, " +
                   exact_mm_text(row.least / 100) + " to " + exact_mm_text(row.most / 100) +
                   " g. Tex 135 weighs 1.35 g.");
  }
  job::EnteredValue entered;
  entered.standing = Standing::measured_here;
  entered.thousandths = tex;
  entered.source = "10 m weigh " + exact_mm_text(milligrams) + " g";
  return with_value(job, row, std::move(entered));
}

Made with_droop(const job::Job& job, Field stiffness, const Droop& droop) {
  const FieldRow& row = material::row_of(stiffness);
  // The density stands just before the stiffness of the same sheet.
  const auto density_field = static_cast<Field>(static_cast<int>(stiffness) - 1);
  const material::Value density = job::value_of(job.materials, density_field);
  if (droop.reach_um <= 0 || droop.droop_um <= 0 || droop.thick_um <= 0) {
    return refused("Give all three: how far it reaches out, how far it hangs down, how thick.");
  }
  // The rule holds while the strip hangs little, as against its length.
  if (droop.droop_um * 5 > droop.reach_um) {
    return refused(exact_mm_text(droop.droop_um) + " down on " + exact_mm_text(droop.reach_um) +
                   " out is too much for the sum: reach out less, until it hangs a fifth or less.");
  }
  const double modulus = material::droop_modulus_mpa(
      static_cast<double>(density.thousandths) / 1000, from_um(droop.reach_um),
      from_um(droop.droop_um), from_um(droop.thick_um));
  const auto mpa = static_cast<std::int64_t>(std::llround(modulus));
  job::EnteredValue entered;
  entered.standing = Standing::measured_here;
  entered.thousandths = mpa * 1000;
  if (entered.thousandths < row.least || entered.thousandths > row.most) {
    return refused("That would be " + with_unit(std::to_string(mpa), row) + ". " + range_of(row));
  }
  entered.source = "droop test: " + exact_mm_text(droop.reach_um) + " out, " +
                   exact_mm_text(droop.droop_um) + " down, " + exact_mm_text(droop.thick_um) +
                   " thick";
  return with_value(job, row, std::move(entered));
}

}  // namespace pouncemark::web

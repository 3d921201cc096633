#include "engine/material/fields.h"

#include <algorithm>
#include <array>

#include "engine/base/insist.h"

namespace pouncemark::material {
namespace {

constexpr std::string_view kSheets = "petg|polyester_film|polycarbonate|acrylic|rigid_pvc";
constexpr std::string_view kYesNo = "no|yes";
constexpr std::string_view kPoints = "round|cutting_along|cutting_across";

constexpr FieldRow number(Field field, Item item, std::string_view key, std::string_view words,
                          std::string_view unit, std::int64_t least, std::int64_t most) {
  return {field, item, Holds::number, key, words, unit, least, most, 0, 0, {}, {}};
}
constexpr FieldRow usual(FieldRow row, std::int64_t least, std::int64_t most,
                         std::string_view source) {
  row.usual_least = least;
  row.usual_most = most;
  row.usual_source = source;
  return row;
}
constexpr FieldRow words_row(Field field, Item item, std::string_view key, std::string_view words) {
  return {field, item, Holds::words, key, words, {}, 0, 0, 0, 0, {}, {}};
}
constexpr FieldRow choice(Field field, Item item, std::string_view key, std::string_view words,
                          std::string_view choices) {
  return {field, item, Holds::choice, key, words, {}, 0, 0, 0, 0, {}, choices};
}

/// What is known of a sheet, whichever item it is.
constexpr std::array<FieldRow, kFieldsOfSheet> kSheetRows = {{
    choice(Field::leaf_sheet, Item::leaf, "sheet", "sheet", kSheets),
    usual(number(Field::leaf_density, Item::leaf, "density_g_cm3", "density", "g/cm³", 1, 25'000),
          800, 2'300, "plastics handbooks: sheet plastics are 0.9 to 2.2, from memory"),
    usual(
        number(Field::leaf_modulus, Item::leaf, "modulus_mpa", "stiffness", "MPa", 1, 100'000'000),
        1'000'000, 6'000'000, "supplier sheets of PETG, film, PC, PMMA, PVC: 1500 to 5000"),
    usual(number(Field::leaf_poisson, Item::leaf, "poisson", "Poisson's ratio", "", 0, 499), 300,
          450, "supplier sheets: 0.37 to 0.40"),
    usual(number(Field::leaf_yield, Item::leaf, "yield_mpa", "strength at yield", "MPa", 1,
                 10'000'000),
          30'000, 250'000, "supplier sheets of the same sheets: 43 to 200"),
    number(Field::leaf_shear, Item::leaf, "shear_mpa", "shear strength", "MPa", 1, 10'000'000),
    number(Field::leaf_softens, Item::leaf, "softens_c", "softens at", "°C", 20'000, 400'000),
    number(Field::leaf_stay_bent, Item::leaf, "stay_bent_times", "stay-bent limit",
           "times its thickness", 1'000, 2'000'000),
}};

constexpr std::array<FieldRow, kFields - 3 * kFieldsOfSheet> kOtherRows = {{
    number(Field::sleeve_cloth_thickness, Item::sleeve_cloth, "thickness_mm", "thickness", "", 1,
           20'000),
    number(Field::sleeve_cloth_pressed, Item::sleeve_cloth, "pressed_mm", "under the foot", "", 1,
           20'000),
    number(Field::sleeve_cloth_mass, Item::sleeve_cloth, "mass_g_m2", "weight", "g/m²", 1'000,
           20'000'000),
    number(Field::panel_cloth_thickness, Item::panel_cloth, "thickness_mm", "thickness", "", 1,
           20'000),
    number(Field::panel_cloth_pressed, Item::panel_cloth, "pressed_mm", "under the foot", "", 1,
           20'000),
    number(Field::panel_cloth_mass, Item::panel_cloth, "mass_g_m2", "weight", "g/m²", 1'000,
           20'000'000),
    number(Field::interlining_thickness, Item::interlining, "thickness_mm", "thickness", "", 1,
           20'000),
    number(Field::interlining_pressed, Item::interlining, "pressed_mm", "under the foot", "", 1,
           20'000),
    number(Field::interlining_mass, Item::interlining, "mass_g_m2", "weight", "g/m²", 1'000,
           20'000'000),
    number(Field::film_thickness, Item::film, "thickness_mm", "thickness", "", 1, 1'000),
    choice(Field::film_left_on, Item::film, "left_on", "left on while sewing", kYesNo),
    words_row(Field::adhesive_name, Item::adhesive, "name", "name"),
    number(Field::adhesive_thickness, Item::adhesive, "thickness_mm", "thickness", "", 1, 5'000),
    words_row(Field::thread_label, Item::thread, "label", "on its label"),
    number(Field::thread_weighed_tex, Item::thread, "weighed_tex", "weighed", "tex", 1'000,
           2'000'000),
    usual(number(Field::thread_density, Item::thread, "density_g_cm3", "density of its fibre",
                 "g/cm³", 1, 25'000),
          900, 1'600, "fibre handbooks: polyester 1.38, nylon 1.14, cotton 1.52, from memory"),
    usual(number(Field::thread_packing, Item::thread, "packing", "fibre in its section", "", 1,
                 1'000),
          500, 900, "yarn textbooks: 0.55 to 0.75, cotton up to 0.65, from memory"),
    number(Field::thread_strength, Item::thread, "strength_n", "strength", "N", 100, 5'000'000),
    words_row(Field::needle_system, Item::needle, "system", "needle system"),
    choice(Field::needle_point, Item::needle, "point", "point", kPoints),
    number(Field::staple_leg, Item::staple, "leg_mm", "leg", "", 1'000, 50'000),
    choice(Field::staple_stainless, Item::staple, "stainless", "stainless", kYesNo),
    number(Field::staple_reach, Item::staple, "reach_mm", "stapler reaches in", "", 1'000,
           5'000'000),
    words_row(Field::machine_name, Item::machine, "name", "name"),
    number(Field::machine_throat, Item::machine, "throat_mm", "right of the needle", "", 1'000,
           5'000'000),
    number(Field::machine_under_arm, Item::machine, "under_arm_mm", "height under the arm", "",
           1'000, 2'000'000),
    number(Field::machine_foot_lift, Item::machine, "foot_lift_mm", "foot lifts", "", 100, 100'000),
    number(Field::machine_speed, Item::machine, "stitches_a_minute", "speed", "stitches a minute",
           1'000, 10'000'000),
    number(Field::bobbin_thread, Item::bobbin, "thread_m", "thread on it", "m", 100, 10'000'000),
    number(Field::bobbin_kept_back, Item::bobbin, "kept_back_percent", "kept back", "%", 0, 90'000),
    number(Field::bobbin_outer, Item::bobbin, "outer_mm", "outside across", "", 1'000, 500'000),
    number(Field::bobbin_core, Item::bobbin, "core_mm", "core across", "", 100, 500'000),
    number(Field::bobbin_width, Item::bobbin, "width_mm", "width inside", "", 100, 500'000),
    number(Field::bobbin_packing, Item::bobbin, "packing", "how tightly wound", "", 1, 1'000),
    number(Field::fixing_screw, Item::fixing, "screw_mm", "screw across", "", 1'000, 30'000),
    number(Field::fixing_washer, Item::fixing, "washer_mm", "washer across", "", 1'000, 200'000),
    number(Field::fixing_tolerance, Item::fixing, "tolerance_mm", "hole off its place by", "", 0,
           20'000),
    number(Field::fixing_play, Item::fixing, "play_mm", "play of the tight hole", "", 0, 20'000),
    number(Field::hanging_push, Item::hanging, "push_n", "what one person pushes", "N", 1'000,
           1'000'000),
    number(Field::hanging_people, Item::hanging, "people", "people to a bay", "", 1'000, 100'000),
    number(Field::hanging_planned, Item::hanging, "planned_c", "planned for", "°C", -40'000,
           80'000),
    number(Field::hanging_today, Item::hanging, "today_c", "on the hanging day", "°C", -40'000,
           80'000),
    number(Field::hanging_warmer, Item::hanging, "warmer_colder_c", "warmer or colder by", "°C", 0,
           80'000),
    number(Field::hanging_timber, Item::hanging, "timber_growth", "timber along its grain",
           "millionths a °C", 0, 100'000),
    usual(number(Field::hanging_across, Item::hanging, "timber_across", "timber across its grain",
                 "% for each % of damp", 0, 2'000),
          100, 450, "Wood Handbook: 0.12 sawn on the quarter to 0.43 sawn flat"),
    number(Field::hanging_damp, Item::hanging, "damp_change", "damp of the timber changes by", "%",
           0, 30'000),
}};

constexpr std::array<FieldRow, kFields> all_rows() {
  std::array<FieldRow, kFields> rows{};
  std::size_t at = 0;
  for (const Item item : {Item::leaf, Item::backing, Item::facing}) {
    for (FieldRow row : kSheetRows) {
      row.item = item;
      row.field = static_cast<Field>(at);
      rows[at++] = row;
    }
  }
  for (const FieldRow& row : kOtherRows) rows[at++] = row;
  return rows;
}
constexpr std::array<FieldRow, kFields> kRows = all_rows();

constexpr std::array<std::string_view, kItems> kItemKeys = {
    "leaf",        "backing", "facing",   "sleeve_cloth", "panel_cloth",
    "interlining", "film",    "adhesive", "thread",       "needle",
    "staple",      "machine", "bobbin",   "fixing",       "hanging"};
constexpr std::array<std::string_view, kItems> kItemWords = {
    "leaves",      "backing",         "facing",   "cloth in sleeves", "cloth on panels",
    "interlining", "protective film", "adhesive", "thread",           "needle",
    "staples",     "machine",         "bobbin",   "fixings",          "hanging"};

constexpr bool rows_stand_in_order() {
  for (std::size_t i = 0; i < kRows.size(); ++i) {
    if (static_cast<std::size_t>(kRows[i].field) != i) return false;
  }
  return true;
}
static_assert(rows_stand_in_order());

}  // namespace

const FieldRow& row_of(Field field) { return kRows[static_cast<std::size_t>(field)]; }

std::span<const FieldRow> all_fields() { return kRows; }

std::string_view item_key(Item item) { return kItemKeys[static_cast<std::size_t>(item)]; }
std::string_view item_words(Item item) { return kItemWords[static_cast<std::size_t>(item)]; }

std::string_view choice_word(const FieldRow& row, std::int64_t number) {
  INSIST(row.holds == Holds::choice);
  std::string_view rest = row.choices;
  for (; number > 0 && !rest.empty(); --number) {
    rest.remove_prefix(std::min(rest.size(), std::min(rest.find('|'), rest.size()) + 1));
  }
  return rest.substr(0, rest.find('|'));
}

std::string_view sheet_name(Sheet sheet) {
  constexpr std::array<std::string_view, 5> kNames = {"PETG", "polyester film", "polycarbonate",
                                                      "acrylic", "rigid PVC"};
  return kNames[static_cast<std::size_t>(sheet)];
}

}  // namespace pouncemark::material

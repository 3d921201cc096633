#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace pouncemark::material {

/// What a value belongs to.
enum class Item : std::uint8_t {
  leaf,     ///< the sheet of the sleeves' leaves
  backing,  ///< the sheet a panel's cloth lies on
  facing,   ///< the clear front sheet of a panel, not sewn
  sleeve_cloth,
  panel_cloth,
  interlining,
  film,  ///< protective film on the sheet
  adhesive,
  thread,
  needle,
  staple,
  machine,
  bobbin,
  fixing,   ///< screws that hold the work to its timber
  hanging,  ///< hands, warmth and timber
};
inline constexpr int kItems = 15;

/// The items whose values are of no use before the work is hung: fixing and hanging.
constexpr bool is_of_hanging(Item item) { return item >= Item::fixing; }

/// How far a value can be leaned on. Typed: entered without saying where it comes from.
enum class Standing : std::uint8_t { assumed, standard, supplier, measured_here, typed };

/// The kinds of sheet that starting values are known for.
enum class Sheet : std::uint8_t { petg, polyester_film, polycarbonate, acrylic, rigid_pvc };

/// Every value of a material, a machine or a bobbin. The order within an item is the order on
/// screen and in the job file.
enum class Field : std::uint8_t {
  leaf_sheet,
  leaf_density,
  leaf_modulus,
  leaf_poisson,
  leaf_yield,
  leaf_shear,
  leaf_softens,
  leaf_stay_bent,
  backing_sheet,
  backing_density,
  backing_modulus,
  backing_poisson,
  backing_yield,
  backing_shear,
  backing_softens,
  backing_stay_bent,
  facing_sheet,
  facing_density,
  facing_modulus,
  facing_poisson,
  facing_yield,
  facing_shear,
  facing_softens,
  facing_stay_bent,
  sleeve_cloth_thickness,
  sleeve_cloth_pressed,
  sleeve_cloth_mass,
  panel_cloth_thickness,
  panel_cloth_pressed,
  panel_cloth_mass,
  interlining_thickness,
  interlining_pressed,
  interlining_mass,
  film_thickness,
  film_left_on,
  adhesive_name,
  adhesive_thickness,
  thread_label,
  thread_weighed_tex,
  thread_density,
  thread_packing,
  thread_strength,
  needle_system,
  needle_point,
  staple_leg,
  staple_stainless,
  staple_reach,
  machine_name,
  machine_throat,
  machine_under_arm,
  machine_foot_lift,
  machine_speed,
  bobbin_thread,
  bobbin_kept_back,
  bobbin_outer,
  bobbin_core,
  bobbin_width,
  bobbin_packing,
  fixing_screw,
  fixing_washer,
  fixing_tolerance,
  fixing_play,
  hanging_push,
  hanging_people,
  hanging_planned,
  hanging_today,
  hanging_warmer,
  hanging_timber,
  hanging_across,
  hanging_damp,
};
inline constexpr int kFields = 70;
inline constexpr int kFieldsOfSheet = 8;

/// A value of a sheet, `first` being the field that holds its kind.
constexpr Field field_of_sheet(Field first, Field leaf_field) {
  return static_cast<Field>(static_cast<int>(first) + static_cast<int>(leaf_field));
}

/// A number in thousandths of its unit, free words, or one of a few choices.
enum class Holds : std::uint8_t { number, words, choice };

/// One line of the table of fields.
struct FieldRow {
  Field field = Field::leaf_sheet;
  Item item = Item::leaf;
  Holds holds = Holds::number;
  std::string_view key;    ///< in the job file, under its item: "density_g_cm3"
  std::string_view words;  ///< on screen: "density"
  std::string_view unit;   ///< "g/cm³"; empty for millimetres, numbers without unit, words
  std::int64_t least = 0;  ///< refused below and above, thousandths
  std::int64_t most = 0;
  std::int64_t usual_least = 0;  ///< outside these a finding; both 0: nothing is said
  std::int64_t usual_most = 0;
  std::string_view usual_source;
  std::string_view choices;  ///< words of the job file with bars between: "round|cutting_along"
};

/// The row of a field, and all of them in the order of Field.
const FieldRow& row_of(Field field);
std::span<const FieldRow> all_fields();

/// The key of an item in the job file, and its name on screen.
std::string_view item_key(Item item);
std::string_view item_words(Item item);

/// The choice with this number, from 0: empty beyond the last.
std::string_view choice_word(const FieldRow& row, std::int64_t number);

/// What a kind of sheet is called in a sentence: "PETG", "polyester film".
std::string_view sheet_name(Sheet sheet);

/// The kind that the sheet of an item begins with; PETG of what is no sheet.
Sheet begins_as(Item item);

/// A value as it is worked with. Numbers and choices stand in `thousandths` (a choice is its number
/// from 0, not multiplied), words in `words`.
struct Value {
  bool is_known = false;  ///< false: no one entered it and nothing can be assumed
  std::int64_t thousandths = 0;
  std::string words;
  Standing standing = Standing::assumed;
  std::string source;

  bool is_assumed() const { return standing == Standing::assumed; }
};

/// What a field begins with where the job says nothing; of a sheet by its kind. Not known where
/// only the user can say it.
Value starting_value(Field field, Sheet sheet = Sheet::petg);

}  // namespace pouncemark::material

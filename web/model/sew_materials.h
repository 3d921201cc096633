#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "engine/job/job.h"
#include "engine/material/fields.h"
#include "web/model/making.h"

namespace pouncemark::web {

/// One value of a material, machine or bobbin as it stands on the slip "Materials".
struct MaterialLine {
  material::Field field = material::Field::leaf_sheet;
  std::string id;        ///< "leaf.density_g_cm3": stable
  std::string words;     ///< "density"
  std::string shown;     ///< "1.27", "PETG", or "not known"
  std::string text;      ///< what typing begins with; empty where it is not known
  std::string unit;      ///< "g/cm³"; empty for millimetres and words
  std::string standing;  ///< "assumed", "standard", "supplier", "measured here", "typed"
  std::string source;    ///< where it comes from; empty where nothing is said
  bool is_known = false;
  bool is_assumed = false;
  bool is_entered = false;  ///< by the user; else it is what the field begins with
};

/// The values of an item, in the order of the job file.
std::vector<MaterialLine> material_lines(const job::Job& job, material::Item item);

/// A choice as it is said: "PETG", "polyester film", "cutting along".
std::string choice_said(const material::FieldRow& row, std::int64_t number);
/// How many choices a field has; 0 where it holds no choice.
int choice_count(const material::FieldRow& row);

/// What can be said of a value's standing, in the order of its buttons.
inline constexpr std::array<material::Standing, 4> kStandings = {
    material::Standing::measured_here, material::Standing::supplier, material::Standing::standard,
    material::Standing::assumed};
std::string standing_said(material::Standing standing);

// Each gives the whole job with it done and the action in words, or says why not.

/// A number or words as typed; what is refused says the range, and what is usual and why.
Made with_material(const job::Job& job, material::Field field, std::string_view typed);
/// One of the choices of a field.
Made with_material_choice(const job::Job& job, material::Field field, std::int64_t number);
/// How far the value can be leaned on; it counts as entered from then on.
Made with_standing(const job::Job& job, material::Field field, material::Standing standing);
/// Where the value comes from, in the user's words.
Made with_source(const job::Job& job, material::Field field, std::string_view typed);
/// The field begins anew with what it begins with.
Made without_material(const job::Job& job, material::Field field);

/// The thread's weighed tex from what 10 m weigh in grams: 1.35 g are tex 135.
Made with_weighing(const job::Job& job, std::string_view typed);

/// A droop test as typed: how far a strip reaches beyond the bench, how far its end hangs below it,
/// and how thick it is.
struct Droop {
  Um reach_um = 0;
  Um droop_um = 0;
  Um thick_um = 0;
};
/// The stiffness of a sheet from it, measured here: 1.5 × density × g × reach⁴ ÷ (droop × thick²).
/// `stiffness` is the modulus of leaf, backing or facing; the density is that of the same sheet.
Made with_droop(const job::Job& job, material::Field stiffness, const Droop& droop);

/// Reads a number with at most three decimals into thousandths: "1.35", "0,6". False: it is none.
bool read_thousandths(std::string_view typed, std::int64_t* thousandths);

}  // namespace pouncemark::web

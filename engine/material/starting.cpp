#include <array>

#include "engine/material/assumed.h"
#include "engine/material/fields.h"

/// What the fields begin with, each with where it comes from.
namespace pouncemark::material {
namespace {

/// The starting values of one kind of sheet, thousandths, and where they come from.
struct SheetRow {
  std::int64_t density = 0;
  std::int64_t modulus = 0;
  std::int64_t poisson = 0;
  std::int64_t yield = 0;
  std::int64_t shear = 0;  ///< 0: not known
  std::int64_t softens = 0;
  std::int64_t stay_bent = 0;
  std::string_view stay_bent_source;
};

constexpr std::array<SheetRow, 5> kSheetRows = {{
    {1'270, 2'100'000, 380, 53'000, 62'000, 81'000, 150'000,
     "assumed, between polycarbonate and acrylic"},
    {1'390, 4'500'000, 380, 100'000, 0, 70'000, 150'000, "assumed, as for PETG"},
    {1'200, 2'350'000, 380, 60'000, 0, 147'000, 180'000,
     "suppliers' limits: 100 indoors, 180 outdoors; the larger is taken"},
    {1'190, 3'000'000, 380, 67'000, 0, 105'000, 330'000, "suppliers' limits: 240 to 330"},
    {1'400, 3'000'000, 380, 51'000, 0, 80'000, 150'000, "assumed, as for PETG"},
}};

Value value(std::int64_t thousandths, Standing standing, std::string_view source) {
  Value one;
  one.is_known = true;
  one.thousandths = thousandths;
  one.standing = standing;
  one.source = std::string(source);
  return one;
}

/// A value of a sheet by its place after `first`, the field that holds its kind.
Value sheet_value(int place, Sheet sheet) {
  constexpr std::string_view kSupplier = "suppliers' data sheets";
  const SheetRow& row = kSheetRows[static_cast<std::size_t>(sheet)];
  switch (place) {
    case 0:
      return value(static_cast<std::int64_t>(sheet), Standing::assumed, "assumed");
    case 1:
      return value(row.density, Standing::supplier, kSupplier);
    case 2:
      return value(row.modulus, Standing::supplier, kSupplier);
    case 3:
      return value(row.poisson, Standing::assumed, "assumed, as suppliers give for film and PC");
    case 4:
      return value(row.yield, Standing::supplier, kSupplier);
    case 5:
      if (row.shear == 0) return {};
      return value(row.shear, Standing::supplier, kSupplier);
    case 6:
      return value(row.softens, Standing::supplier, kSupplier);
    default:
      return value(row.stay_bent, Standing::assumed, row.stay_bent_source);
  }
}

/// What fixings and hanging begin with.
Value hanging_value(Field field) {
  constexpr std::string_view kMeasure = "assumed: measure yours";
  switch (field) {
    case Field::fixing_screw:
      return value(5'000, Standing::assumed, kMeasure);
    case Field::fixing_washer:
      return value(15'000, Standing::assumed, "assumed: a wide washer for a 5 screw");
    case Field::fixing_tolerance:
      return value(1'000, Standing::assumed, "assumed: hole and screw together, either way");
    case Field::fixing_play:
      return value(500, Standing::assumed, "assumed: a 5.5 hole for a 5 screw");
    case Field::hanging_push:
      return value(kAssumedPushMn, Standing::assumed, "assumed: a steady push, usual guideline");
    case Field::hanging_people:
      return value(kAssumedHands * 1'000, Standing::assumed, "assumed");
    case Field::hanging_planned:
      return value(20'000, Standing::assumed, "assumed: a heated room");
    case Field::hanging_warmer:
      return value(15'000, Standing::assumed, "assumed: summer and winter, either way");
    case Field::hanging_timber:
      return value(kAssumedTimberGrowth, Standing::assumed, "tables: 3 to 5");
    case Field::hanging_across:
      return value(369, Standing::assumed, "assumed: red oak sawn flat, Wood Handbook");
    case Field::hanging_damp:
      return value(4'000, Standing::assumed, "assumed: heated in winter, not in summer");
    default:
      return {};
  }
}

}  // namespace

Sheet begins_as(Item item) { return item == Item::facing ? Sheet::polycarbonate : Sheet::petg; }

Value starting_value(Field field, Sheet sheet) {
  const int number = static_cast<int>(field);
  if (field <= Field::facing_stay_bent) return sheet_value(number % kFieldsOfSheet, sheet);
  constexpr std::string_view kMemory = "assumed, from memory";
  switch (field) {
    case Field::film_thickness:
      return value(60, Standing::assumed, "assumed: measure yours");
    case Field::film_left_on:
      return value(0, Standing::assumed, "assumed: peeled at the row before sewing");
    case Field::thread_density:
      return value(1'380, Standing::assumed, "assumed: polyester, from memory");
    case Field::thread_packing:
      return value(600, Standing::assumed, kMemory);
    case Field::needle_point:
      return value(0, Standing::assumed, "assumed: round for sheet and cloth");
    case Field::bobbin_thread:
      return value(25'000, Standing::assumed, "assumed: measure yours");
    case Field::bobbin_kept_back:
      return value(10'000, Standing::assumed, "assumed");
    case Field::bobbin_packing:
      return value(500, Standing::assumed, kMemory);
    default:
      return hanging_value(field);
  }
}

}  // namespace pouncemark::material

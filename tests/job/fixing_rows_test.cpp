#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/job/job_json.h"

using namespace pouncemark;
using material::Field;

namespace {

const std::string kRow =
    R"({"edge":"hinge_side","in_from_edge_mm":10,"kept_clear_mm":[30,30],"spacing_mm":300,)"
    R"("tight":"middle"})";

std::string with_fixings(const std::string& rows) {
  std::string text = job::save_job(job::first_sleeve_job());
  const std::string bay =
      R"("bays":[{"code":"B1","chord_mm":800,"rise_mm":120,"face":"hollow","holds":"P1",)"
      R"("fixings":[)" +
      rows + "]}],\n ";
  return text.insert(text.find("\"sections\""), bay);
}

std::string changed(const std::string& from, const std::string& to) {
  std::string row = kRow;
  return with_fixings(row.replace(row.find(from), from.size(), to));
}

}  // namespace

TEST_CASE("rows of fixings are read and come back as they were saved") {
  const std::string across =
      R"({"edge":"top","in_from_edge_mm":12.5,"kept_clear_mm":[40,60],"spacing_mm":250,)"
      R"("tight":"none","timber":"across_grain","later":1})";
  const auto opened = job::open_job(with_fixings(kRow + "," + across));
  REQUIRE(opened.is_ok());
  const auto& rows = opened->job.bays[0].fixings;
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].edge == "hinge_side");
  CHECK(rows[0].in_from_edge_um == 10'000);
  CHECK(rows[0].spacing_um == 300'000);
  CHECK(rows[0].tight == job::Tight::middle);
  CHECK_FALSE(rows[0].timber_is_said);
  CHECK(rows[1].kept_clear_um[1] == 60'000);
  CHECK(rows[1].tight == job::Tight::none);
  CHECK(rows[1].timber == job::TimberLies::across_grain);
  const std::string saved = job::save_job(opened->job);
  CHECK(saved.find(R"("later":1)") != std::string::npos);
  const auto again = job::open_job(saved);
  REQUIRE(again.is_ok());
  CHECK(again->job.bays[0].fixings[0] == rows[0]);
  CHECK(job::save_job(again->job) == saved);
}

TEST_CASE("a row of fixings that cannot be is refused, its neighbour is taken") {
  struct Case {
    std::string from;
    std::string refused;
    std::string taken;
    std::string needed;
  };
  const std::vector<Case> cases = {
      {R"("hinge_side")", R"("inside")", R"("fly_side")", "hinge_side"},
      {R"("middle")", R"("both")", R"("last")", "first"},
      {R"("spacing_mm":300)", R"("spacing_mm":0)", R"("spacing_mm":0.001)", "0.001"},
      {R"("spacing_mm":300)", R"("spacing_mm":"far")", R"("spacing_mm":3e2)", "a number"},
      {R"("in_from_edge_mm":10)", R"("in_from_edge_mm":-1)", R"("in_from_edge_mm":0)", "0 to"},
      {"[30,30]", "[30]", "[0,30]", "two numbers"},
      {R"("tight":"middle")", R"("timber":"upright")", R"("timber":"along_grain")", "along_grain"},
  };
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.refused);
    const auto refused = job::open_job(changed(one.from, one.refused));
    REQUIRE_FALSE(refused.is_ok());
    CHECK(refused.problem().where.find("fixings[0]") != std::string::npos);
    CHECK(refused.problem().needed.find(one.needed) != std::string::npos);
    CHECK(job::open_job(changed(one.from, one.taken)).is_ok());
    ++ran;
  }
  CHECK(ran == 7);
  std::string many = kRow;
  for (int i = 1; i < 20; ++i) many += "," + kRow;
  CHECK(job::open_job(with_fixings(many)).is_ok());
  const auto refused = job::open_job(with_fixings(many + "," + kRow));
  REQUIRE_FALSE(refused.is_ok());
  CHECK(refused.problem().needed == "at most 20");
}

TEST_CASE("a facing begins as polycarbonate and follows the kind that is named") {
  job::Materials materials;
  // source: suppliers' data sheets of polycarbonate, 2350 MPa and 1.2 g/cm³; PETG 2100 and 1.27.
  CHECK(job::value_of(materials, Field::facing_modulus).thousandths == 2'350'000);
  CHECK(job::value_of(materials, Field::facing_density).thousandths == 1'200);
  CHECK(job::value_of(materials, Field::facing_sheet).is_assumed());
  CHECK(job::value_of(materials, Field::backing_modulus).thousandths == 2'100'000);
  materials.values[Field::facing_sheet].thousandths = 0;
  CHECK(job::value_of(materials, Field::facing_modulus).thousandths == 2'100'000);
}

TEST_CASE("what hanging begins with is assumed, and the day itself is not known") {
  const job::Materials materials;
  CHECK(job::value_of(materials, Field::hanging_push).thousandths == 70'000);
  CHECK(job::value_of(materials, Field::fixing_screw).thousandths == 5'000);
  CHECK(job::value_of(materials, Field::fixing_tolerance).thousandths == 1'000);
  CHECK(job::value_of(materials, Field::hanging_warmer).thousandths == 15'000);
  CHECK_FALSE(job::value_of(materials, Field::hanging_today).is_known);
  int seen = 0;
  for (const material::FieldRow& row : material::all_fields()) {
    if (!material::is_of_hanging(row.item)) continue;
    ++seen;
    const material::Value value = job::value_of(materials, row.field);
    CHECK(value.is_known == (row.field != Field::hanging_today));
    if (value.is_known) CHECK(value.is_assumed());
    if (value.is_known) CHECK_FALSE(value.source.empty());
  }
  CHECK(seen == 12);
}

TEST_CASE("a hanging day below freezing is a temperature like any other") {
  std::string text = job::save_job(job::first_sleeve_job());
  const auto opened = job::open_job(
      text.insert(text.find("\"sections\""), R"("materials":{"hanging":{"today_c":-4.5}},)"));
  REQUIRE(opened.is_ok());
  CHECK(job::value_of(opened->job.materials, Field::hanging_today).thousandths == -4'500);
}

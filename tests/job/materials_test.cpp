#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/job/job_json.h"

using namespace pouncemark;
using material::Field;
using material::Standing;

namespace {

std::string with_members(const std::string& members) {
  std::string text = job::save_job(job::first_sleeve_job());
  const std::string before = "\"sections\"";
  return text.insert(text.find(before), members + ",\n ");
}

}  // namespace

TEST_CASE("materials are read with their sources and written back as they were") {
  const std::string text = with_members(
      R"("materials":{"leaf":{"sheet":"polycarbonate","density_g_cm3":1.21,)"
      R"("sources":{"density_g_cm3":{"standing":"supplier","words":"sheet of lot 7"}}},)"
      R"("thread":{"label":"ticket 20","weighed_tex":135.5},"needle":{"point":"cutting_along"},)"
      R"("later":{"a":1}})");
  const auto opened = job::open_job(text);
  REQUIRE(opened.is_ok());
  const job::Materials& materials = opened->job.materials;
  CHECK(job::value_of(materials, Field::leaf_density).thousandths == 1'210);
  CHECK(job::value_of(materials, Field::leaf_density).standing == Standing::supplier);
  CHECK(job::value_of(materials, Field::leaf_density).source == "sheet of lot 7");
  CHECK(job::value_of(materials, Field::thread_weighed_tex).thousandths == 135'500);
  CHECK(job::value_of(materials, Field::thread_weighed_tex).standing == Standing::typed);
  CHECK(job::value_of(materials, Field::thread_label).words == "ticket 20");
  CHECK(job::value_of(materials, Field::needle_point).thousandths == 1);
  // What no one entered begins with the value of the sheet that was named.
  CHECK(job::value_of(materials, Field::leaf_modulus).thousandths == 2'350'000);
  CHECK(job::value_of(materials, Field::backing_modulus).thousandths == 2'100'000);
  CHECK_FALSE(job::value_of(materials, Field::machine_throat).is_known);
  const std::string saved = job::save_job(opened->job);
  CHECK(saved.find(R"("later":{"a":1})") != std::string::npos);
  const auto again = job::open_job(saved);
  REQUIRE(again.is_ok());
  CHECK(again->job.materials.values == materials.values);
  CHECK(job::save_job(again->job) == saved);
}

TEST_CASE("a material that cannot be is refused with its range, its neighbour is taken") {
  struct Case {
    std::string refused;
    std::string taken;
    std::string needed;
  };
  const std::vector<Case> cases = {
      {R"("leaf":{"density_g_cm3":0})", R"("leaf":{"density_g_cm3":0.001})", "0.001 to 25"},
      {R"("backing":{"poisson":0.5})", R"("backing":{"poisson":0.499})", "0 to 0.499"},
      {R"("panel_cloth":{"thickness_mm":20.001})", R"("panel_cloth":{"thickness_mm":20})",
       "0.001 to 20"},
      {R"("needle":{"point":"blunt"})", R"("needle":{"point":"round"})", "round or cutting_along"},
      {R"("leaf":{"sheet":"glass"})", R"("leaf":{"sheet":"rigid_pvc"})", "petg or polyester_film"},
      {R"("leaf":{"modulus_mpa":"stiff"})", R"("leaf":{"modulus_mpa":2000})", "a number"},
      {R"("leaf":{"sources":{"yield_mpa":{"standing":"supplier"}}})",
       R"("leaf":{"yield_mpa":50,"sources":{"yield_mpa":{"standing":"supplier"}}})",
       "the value beside it"},
      {R"("leaf":{"yield_mpa":50,"sources":{"yield_mpa":{"standing":"heard"}}})",
       R"("leaf":{"yield_mpa":50,"sources":{"yield_mpa":{"words":"heard"}}})",
       "assumed or standard"},
  };
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.refused);
    const auto refused = job::open_job(with_members("\"materials\":{" + one.refused + "}"));
    REQUIRE_FALSE(refused.is_ok());
    CHECK(refused.problem().needed.find(one.needed) != std::string::npos);
    CHECK(job::open_job(with_members("\"materials\":{" + one.taken + "}")).is_ok());
    ++ran;
  }
  CHECK(ran == 8);
}

TEST_CASE("trial seams are kept, one is chosen, and its measured stitch is the one that is sewn") {
  const std::string chosen =
      R"({"needle_size":140,"thread_tex":135,"stitch_mm":6,"ten_stitches_mm":58,)"
      R"("marks_mm":498.5,"whitens":false,"pull_n":212.5,"chosen":true,"signed_by":"A, 3 May"})";
  const auto opened = job::open_job(with_members("\"trials\":[" + chosen + "]"));
  REQUIRE(opened.is_ok());
  const auto& trials = opened->job.trials;
  REQUIRE(trials.size() == 1);
  CHECK(trials[0].of_all_rows);
  CHECK(job::stitch_really_um(trials, job::RowsOf::lap_rows, 6'000) == 5'800);
  CHECK(job::stitch_really_um(trials, job::RowsOf::lap_rows, 5'000) == 5'000);
  CHECK(job::take_up_ppm(trials[0]) == 3'000);
  const std::string saved = job::save_job(opened->job);
  CHECK(job::save_job(job::open_job(saved)->job) == saved);
  CHECK(saved.find("\"whitens\":false") != std::string::npos);
  // Two chosen for the same rows contradict one another; for different rows they do not.
  const auto two = job::open_job(with_members("\"trials\":[" + chosen + "," + chosen + "]"));
  REQUIRE_FALSE(two.is_ok());
  CHECK(two.problem().found == "two trials chosen for the same rows");
  const std::string side = R"({"of":"side_rows",)" + chosen.substr(1);
  const std::string lap = R"({"of":"lap_rows",)" + chosen.substr(1);
  CHECK(job::open_job(with_members("\"trials\":[" + side + "," + lap + "]")).is_ok());
}

TEST_CASE("where the cloth lies, and that a stack is worked out, come back as they were saved") {
  job::Job job = job::first_sleeve_job();
  job.sections[0].side_rows.stack_from_plies = true;
  job.sections[0].cloth.emplace().in_from_edge_um = 12'000;
  const std::string saved = job::save_job(job);
  const auto again = job::open_job(saved);
  REQUIRE(again.is_ok());
  CHECK(again->job.sections == job.sections);
  CHECK(job::save_job(again->job) == saved);
}

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <tuple>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::Dice;
using pouncemark::tests::panel_job;
using pouncemark::tests::section_job;

// Whatever is mirrored left for right must have its points mirrored, and nothing else changed.
namespace {

using Places = std::vector<std::tuple<int, Um, Um>>;  // kind, x, y

Places places_of(const job::Job& job, bool is_mirrored) {
  const Results results = solve::solve(job);
  const Um width = results.pieces[0].width_um;
  Places places;
  for (const Row& row : results.rows) {
    for (std::int64_t i = row.first_is_shared ? 1 : 0; i < row.run.points(); ++i) {
      const PlaceUm place = point_um(row, i);
      places.emplace_back(static_cast<int>(row.kind), is_mirrored ? width - place.x : place.x,
                          place.y);
    }
  }
  std::stable_sort(places.begin(), places.end());
  return places;
}

/// The same places, each to the micrometre a half may be rounded by.
bool agree(const Places& a, const Places& b) {
  if (a.size() != b.size() || a.empty()) return false;
  return std::equal(a.begin(), a.end(), b.begin(), [](const auto& one, const auto& other) {
    const Um across = std::get<1>(one) - std::get<1>(other);
    return std::get<0>(one) == std::get<0>(other) && across >= -1 && across <= 1 &&
           std::get<2>(one) == std::get<2>(other);
  });
}

job::Job random_section(Dice& dice) {
  std::vector<Um> widths;
  const std::int64_t count = dice.between(1, 9);
  for (std::int64_t i = 0; i < count; ++i) widths.push_back(dice.between(60, 160));
  job::Job job = section_job(widths, count > 1 ? dice.between(4, 30) : 0);
  job::Section& section = job.sections[0];
  section.length_um = dice.between(200'000, 900'000);
  section.lap_um -= section.lap_um % 2;
  section.make = static_cast<job::Make>(dice.between(0, 2));
  section.sewn_side = static_cast<job::Side>(dice.between(0, 1));
  section.fold_radius_um = dice.between(0, 5'000);
  section.flange_um = dice.between(26'000, 50'000);
  section.side_seams = static_cast<job::SideSeams>(dice.between(0, 1));
  job::StapleRow& row = section.side_rows.staple;
  row.rule = static_cast<job::SpacingRule>(dice.between(0, 1));
  row.left_over = static_cast<job::LeftOver>(dice.between(0, 2));
  row.spacing_um = dice.between(20'000, 90'000);
  for (int i = 0; i < section.count; ++i) {
    const bool some_stay = static_cast<int>(section.missing.size()) + 1 < section.count;
    if (some_stay && dice.once_in(5)) section.missing.push_back(job::sleeve_code(section, i));
  }
  return job;
}

job::Job mirrored(job::Job job) {
  job::Section& section = job.sections[0];
  std::reverse(section.widths_um.begin(), section.widths_um.end());
  section.sewn_side = section.sewn_side == job::Side::left ? job::Side::right : job::Side::left;
  std::vector<std::string> missing;
  const std::vector<std::string>& were = section.missing;
  for (int i = 0; i < section.count; ++i) {
    const std::string opposite = job::sleeve_code(section, section.count - 1 - i);
    if (std::find(were.begin(), were.end(), opposite) == were.end()) continue;
    missing.push_back(job::sleeve_code(section, i));
  }
  section.missing = missing;
  return job;
}

}  // namespace

TEST_CASE("2,000 sections of every make, mirrored, have their points mirrored") {
  Dice dice(20'261'263);
  INFO(dice.words());
  int same = 0;
  int folded = 0;
  int with_gaps = 0;
  for (int i = 0; i < 2'000; ++i) {
    const job::Job job = random_section(dice);
    if (agree(places_of(job, true), places_of(mirrored(job), false))) ++same;
    if (job.sections[0].make == job::Make::folded) ++folded;
    if (!job.sections[0].missing.empty()) ++with_gaps;
  }
  CHECK(same == 2'000);
  CHECK(folded > 500);
  CHECK(with_gaps > 500);
}

TEST_CASE("a section mirrored in part is not the same: the test above can fail") {
  job::Job job = section_job({60, 100, 140}, 20);
  job.sections[0].make = job::Make::folded;
  job.sections[0].sewn_side = job::Side::left;
  CHECK(agree(places_of(job, true), places_of(mirrored(job), false)));
  job::Job half = mirrored(job);
  half.sections[0].sewn_side = job::Side::left;
  CHECK(!agree(places_of(job, true), places_of(half, false)));
}

TEST_CASE("500 panels whose rows stop short, hinge at the other side, are mirrored") {
  Dice dice(20'261'264);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 500; ++i) {
    const Um width = dice.between(200, 1'300);
    const Um length = dice.between(200, 1'300);
    job::Job left = panel_job(width, length, "left");
    left.panels[0].panel_in_um = dice.between(10'000, 30'000);
    left.panels[0].corners = job::Corners::stop_short;
    left.panels[0].corner_clear_um = dice.between(1, 30'000);
    job::Job right = left;
    right.panels[0].hinge_side = "right";
    if (agree(places_of(left, true), places_of(right, false))) ++same;
  }
  CHECK(same == 500);
}

TEST_CASE("an exact row walked from the other end has its left-over at the other end") {
  // source: 2400 less 20 and 20 is 39 gaps of 60 and 20 left over, by hand
  struct Case {
    job::LeftOver left_over;
    Um first;
    Um last;
    Um count;
  };
  const Case cases[] = {{job::LeftOver::end, 20'000, 2'360'000, 40},
                        {job::LeftOver::split, 30'000, 2'370'000, 40},
                        {job::LeftOver::extra_point, 20'000, 2'380'000, 41}};
  int seen = 0;
  for (const Case& one : cases) {
    job::Job job = section_job({110}, 0);
    job.sections[0].length_um = 2'400'000;
    job::StapleRow& row = job.sections[0].side_rows.staple;
    row.kept_clear_um = {20'000, 20'000};
    row.spacing_um = 60'000;
    row.rule = job::SpacingRule::exact;
    row.left_over = one.left_over;
    const Row laid = solve::solve(job).rows[0];
    CHECK(laid.run.first_um() == one.first);
    CHECK(laid.run.last_um() == one.last);
    CHECK(laid.run.points() == one.count);
    // Walked from TOP the first stands where the last stood: what lies beyond either end changes
    // over.
    CHECK(2'400'000 - laid.run.last_um() - 20'000 == laid.run.left_after_um());
    CHECK(laid.run.first_um() - 20'000 == laid.run.left_before_um);
    ++seen;
  }
  CHECK(seen == 3);
}

#include "web/model/edits.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using web::Measure;
using web::Place;

namespace {

job::Job with(const job::Job& job, Place place, Measure measure, Um um) {
  return web::with_measure(job, solve::solve(job), place, measure, um);
}

/// Three sleeves with laps; staple and stitch rows kept clear alike.
job::Job section_of_three() {
  job::Job job = job::first_sleeve_job();
  job::Section& section = job.sections.front();
  section.count = 3;
  section.lap_um = 18'000;
  section.lap_rows = section.side_rows;
  return job;
}

/// The same with its second sleeve missing: the second place is the third number.
job::Job second_is_missing() {
  job::Job job = section_of_three();
  job.sections.front().missing = {"1-02"};
  job.sections.front().widths_um = {110'000, 90'000, 70'000};
  return job;
}

constexpr Place kAlone{0, 0};
constexpr Place kSecond{0, 1};

}  // namespace

TEST_CASE("on a sleeve by itself one figure moves both ends of the staple and the stitch rows") {
  const job::Job job = with(job::first_sleeve_job(), kAlone, Measure::kept_clear_bottom, 25'000);
  const job::RowPair& rows = job.sections.front().side_rows;
  CHECK(rows.staple.kept_clear_um == std::array<Um, 2>{25'000, 25'000});
  CHECK(rows.stitch.kept_clear_um == std::array<Um, 2>{25'000, 25'000});
  CHECK(job.sections.front().changes.empty());
}

TEST_CASE("ends that differ move each by itself, and the stitch rows stay") {
  job::Job job = job::first_sleeve_job();
  job.sections.front().side_rows.staple.kept_clear_um = {18'000, 30'000};
  const job::Job moved = with(job, kAlone, Measure::kept_clear_bottom, 25'000);
  const job::RowPair& rows = moved.sections.front().side_rows;
  CHECK(rows.staple.kept_clear_um == std::array<Um, 2>{25'000, 30'000});
  CHECK(rows.stitch.kept_clear_um == std::array<Um, 2>{18'000, 18'000});
}

TEST_CASE("on one sleeve of several only that sleeve changes and its stitch rows stay") {
  const job::Job job = with(section_of_three(), kSecond, Measure::kept_clear_top, 30'000);
  const job::Section& section = job.sections.front();
  CHECK(section.side_rows.staple.kept_clear_um == std::array<Um, 2>{18'000, 18'000});
  const job::RowPair rows = job::side_rows_of(section, 1);
  CHECK(rows.staple.kept_clear_um == std::array<Um, 2>{30'000, 30'000});
  CHECK(rows.stitch.kept_clear_um == std::array<Um, 2>{18'000, 18'000});
  CHECK(job::side_rows_of(section, 0).staple.kept_clear_um[0] == 18'000);
}

TEST_CASE("the length belongs to the section, the width to the sleeve") {
  const job::Job longer = with(section_of_three(), kSecond, Measure::length, 2'000'000);
  CHECK(longer.sections.front().length_um == 2'000'000);
  const job::Job wider = with(section_of_three(), kSecond, Measure::width, 128'000);
  CHECK(job::sleeve_width_um(wider.sections.front(), 1) == 128'000);
  CHECK(job::sleeve_width_um(wider.sections.front(), 0) == 110'000);
}

TEST_CASE("giving all sleeves the ends of one leaves none of them different") {
  const job::Job one = with(section_of_three(), kSecond, Measure::kept_clear_bottom, 30'000);
  CHECK(web::ends_differ_from_section(one, solve::solve(one), kSecond));
  const job::Job all = web::with_ends_of_all(one, solve::solve(one), kSecond);
  CHECK_FALSE(web::ends_differ_from_section(all, solve::solve(all), kSecond));
  CHECK(job::side_rows_of(all.sections.front(), 2).staple.kept_clear_um[1] == 30'000);
}

TEST_CASE("even or exactly is a rule of the staple rows of the place") {
  const job::Job job = job::first_sleeve_job();
  const job::Job exact = web::with_rule(job, solve::solve(job), kAlone, job::SpacingRule::exact);
  CHECK(web::rule_at(job, solve::solve(job), kAlone) == job::SpacingRule::even);
  CHECK(web::rule_at(exact, solve::solve(exact), kAlone) == job::SpacingRule::exact);
}

TEST_CASE("the action says what moved, from which figure to which, and what stayed") {
  const job::Job alone = job::first_sleeve_job();
  CHECK(web::action_words(alone, solve::solve(alone), kAlone, Measure::kept_clear_bottom, 18'000,
                          25'000) ==
        "Kept clear at both ends of sleeve 1-01: 18 to 25; the stitch rows go along");
  const job::Job three = section_of_three();
  CHECK(web::action_words(three, solve::solve(three), kSecond, Measure::kept_clear_bottom, 18'000,
                          25'000) ==
        "Kept clear at both ends of sleeve 1-02: 18 to 25; the stitch rows stay");
}

TEST_CASE("past a missing sleeve a figure is read from and given to the sleeve by its number") {
  const job::Job job = second_is_missing();
  CHECK(web::measured(job, solve::solve(job), kSecond, Measure::width) == 70'000);
  int ran = 0;
  for (const Measure measure : {Measure::width, Measure::in_from_edge, Measure::spacing,
                                Measure::stitch, Measure::kept_clear_top}) {
    const job::Job changed = with(job, kSecond, measure, 31'000);
    CHECK(web::measured(changed, solve::solve(changed), kSecond, measure) == 31'000);
    CHECK(changed.sections.front().changes.size() == 1);
    CHECK(changed.sections.front().changes.begin()->first == "1-03");
    ++ran;
  }
  CHECK(ran == 5);
  const job::Job exact = web::with_rule(job, solve::solve(job), kSecond, job::SpacingRule::exact);
  CHECK(exact.sections.front().changes.begin()->first == "1-03");
  CHECK(web::rule_at(exact, solve::solve(exact), kSecond) == job::SpacingRule::exact);
  CHECK(web::rule_at(exact, solve::solve(exact), kAlone) == job::SpacingRule::even);
}

TEST_CASE("fold, flange and corner clearance are figures of the section and of the panel") {
  const job::Job folded = with(section_of_three(), kSecond, Measure::fold_radius, 2'000);
  CHECK(folded.sections.front().fold_radius_um == 2'000);
  const job::Job round = with(section_of_three(), {0, -1}, Measure::flange, 30'000);
  CHECK(round.sections.front().flange_um == 30'000);
  const job::Job panel = tests::panel_job(690, 1420, "left");
  CHECK(web::measured(panel, solve::solve(panel), {0, -1}, Measure::corner_clear) == 15'000);
  CHECK(with(panel, {0, -1}, Measure::corner_clear, 20'000).panels.front().corner_clear_um ==
        20'000);
  CHECK_FALSE(with(section_of_three(), {0, -1}, Measure::corner_clear, 20'000)
                  .sections.front()
                  .flange_um.has_value());
}

TEST_CASE("the joining rows keep both ends alike, and their staples along while all four are") {
  const job::Job job = tests::section_job({100, 100, 100}, 30);
  const solve::Results results = solve::solve(job);
  const web::Place whole{0, -1};
  const auto kept = [&](const job::Job& from, web::Measure measure, Um um) {
    return *web::with_measure(from, results, whole, measure, um).sections[0].lap_rows;
  };
  using Ends = std::array<Um, 2>;
  const job::RowPair both = kept(job, web::Measure::lap_kept_clear_bottom, 25'000);
  CHECK(both.stitch.kept_clear_um == Ends{25'000, 25'000});
  CHECK(both.staple.kept_clear_um == Ends{25'000, 25'000});
  job::Job apart = job;
  apart.sections[0].lap_rows->stitch.kept_clear_um = {18'000, 30'000};
  const job::RowPair one = kept(apart, web::Measure::lap_kept_clear_top, 40'000);
  CHECK(one.stitch.kept_clear_um == Ends{18'000, 40'000});
  CHECK(one.staple.kept_clear_um == Ends{18'000, 18'000});
  CHECK(
      web::action_words(job, results, whole, web::Measure::lap_kept_clear_bottom, 18'000, 25'000) ==
      "Kept clear at both ends of the joining rows of section 1: "
      "18 to 25; their staples go along");
  const job::Job lone = tests::section_job({100}, 0);
  const solve::Results alone = solve::solve(lone);
  CHECK(web::measured(lone, alone, {0, 0}, web::Measure::lap_kept_clear_bottom) == 0);
}

TEST_CASE("the staples in the laps are spaced by a rule of their own") {
  const job::Job job = tests::section_job({100, 100}, 30);
  const solve::Results results = solve::solve(job);
  const web::Place whole{0, -1};
  CHECK(web::lap_rule_at(job, results, whole) == job::SpacingRule::even);
  const job::Job exact = web::with_lap_rule(job, results, whole, job::SpacingRule::exact);
  CHECK(web::lap_rule_at(exact, results, whole) == job::SpacingRule::exact);
  CHECK(web::rule_at(exact, results, whole) == job::SpacingRule::even);
  CHECK(web::measured(web::with_measure(job, results, whole, web::Measure::lap_spacing, 40'000),
                      results, whole, web::Measure::lap_spacing) == 40'000);
}

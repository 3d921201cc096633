#include "engine/job/job.h"

#include "tests/support/jobs.h"

#include <doctest/doctest.h>

using namespace pouncemark;
using namespace pouncemark::job;

namespace {

Section three_widths() {
  Section section = tests::section_job({60, 75, 90}, 18).sections[0];
  section.code = "2";
  section.count = 150;
  return section;
}

}  // namespace

TEST_CASE("sleeves are numbered from one with two figures, three from the hundredth on") {
  const Section section = three_widths();
  CHECK(sleeve_code(section, 0) == "2-01");
  CHECK(sleeve_code(section, 8) == "2-09");
  CHECK(sleeve_code(section, 9) == "2-10");
  CHECK(sleeve_code(section, 98) == "2-99");
  CHECK(sleeve_code(section, 99) == "2-100");
}

TEST_CASE("widths repeat until every sleeve has one, but for those that are changed") {
  Section section = three_widths();
  CHECK(sleeve_width_um(section, 0) == 60'000);
  CHECK(sleeve_width_um(section, 2) == 90'000);
  CHECK(sleeve_width_um(section, 3) == 60'000);
  section.changes["2-04"].width_um = 61'000;
  CHECK(sleeve_width_um(section, 3) == 61'000);
  CHECK(sleeve_width_um(section, 6) == 60'000);
}

TEST_CASE("a change on one sleeve changes what it names there, and nothing else anywhere") {
  Section section = three_widths();
  SleeveChange change;
  change.staple = StapleChange{};
  change.staple->kept_clear_um = std::array<Um, 2>{30'000, 31'000};
  change.stitch = StitchChange{};
  change.stitch->stitch_um = 5'000;
  section.changes["2-02"] = change;
  const RowPair changed = side_rows_of(section, 1);
  CHECK(changed.staple.kept_clear_um == std::array<Um, 2>{30'000, 31'000});
  CHECK(changed.staple.spacing_um == section.side_rows.staple.spacing_um);
  CHECK(changed.stitch.stitch_um == 5'000);
  CHECK(changed.stitch.kept_clear_um == section.side_rows.stitch.kept_clear_um);
  const RowPair other = side_rows_of(section, 2);
  CHECK(other.staple.kept_clear_um == section.side_rows.staple.kept_clear_um);
  CHECK(other.stitch.stitch_um == section.side_rows.stitch.stitch_um);
}

TEST_CASE("every member of a row can be changed on one sleeve") {
  Section section = three_widths();
  StapleChange staple;
  staple.in_from_edge_um = 1;
  staple.kept_clear_um = std::array<Um, 2>{2, 3};
  staple.spacing_um = 4;
  staple.rule = SpacingRule::exact;
  staple.left_over = LeftOver::split;
  staple.staples = StaplesOut::after_the_row;
  StitchChange stitch;
  stitch.in_from_edge_um = 5;
  stitch.kept_clear_um = std::array<Um, 2>{6, 7};
  stitch.stitch_um = 8;
  section.changes["2-01"].staple = staple;
  section.changes["2-01"].stitch = stitch;
  const RowPair rows = side_rows_of(section, 0);
  CHECK(rows.staple.in_from_edge_um == 1);
  CHECK(rows.staple.kept_clear_um == std::array<Um, 2>{2, 3});
  CHECK(rows.staple.spacing_um == 4);
  CHECK(rows.staple.rule == SpacingRule::exact);
  CHECK(rows.staple.left_over == LeftOver::split);
  CHECK(rows.staple.staples == StaplesOut::after_the_row);
  CHECK(rows.stitch.in_from_edge_um == 5);
  CHECK(rows.stitch.kept_clear_um == std::array<Um, 2>{6, 7});
  CHECK(rows.stitch.stitch_um == 8);
}

TEST_CASE("the first sleeve is 110 x 1800 and can be saved and opened") {
  const Job job = first_sleeve_job();
  CHECK(job.sections[0].widths_um == std::vector<Um>{110'000});
  CHECK(job.sections[0].length_um == 1'800'000);
  CHECK(open_job(save_job(job)).is_ok());
}

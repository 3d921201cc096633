#include "engine/sheets/tick_words.h"

#include <doctest/doctest.h>

#include <string>
#include <utility>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using LeftOver = layout::RunRule::LeftOver;

namespace {

using Lines = std::vector<std::string>;

layout::RunRule even_rule(Um length_um, Um bottom_um, Um top_um, Um spacing_um) {
  layout::RunRule rule;
  rule.edge_length_um = length_um;
  rule.kept_clear_start_um = bottom_um;
  rule.kept_clear_end_um = top_um;
  rule.spacing_um = spacing_um;
  return rule;
}

layout::RunRule exact_rule(Um length_um, Um bottom_um, Um top_um, Um spacing_um, LeftOver left) {
  layout::RunRule rule = even_rule(length_um, bottom_um, top_um, spacing_um);
  rule.exact = true;
  rule.left_over = left;
  return rule;
}

layout::Run run_of(const layout::RunRule& rule) {
  const Result<layout::Run> run = layout::solve_run(rule);
  return run ? *run : layout::Run{};
}

struct Case {
  const char* name;
  layout::RunRule rule;
  std::int64_t figures;
  const char* last;
  Lines said;
};

constexpr Um kLong = 2'400'000;
constexpr Um kEnd = 20'000;
constexpr Um kSixty = 60'000;

std::vector<Case> cases() {
  // source: 2400 long, 20 + 20 kept clear, 60 wanted: 41 points at 59.00, the last at 2380.0
  return {
      {"even",
       even_rule(kLong, kEnd, kEnd, kSixty),
       41,
       "2380.0",
       {"sum check: 20.0 + 40 × 59.00 = 2380.0", "the 41 figures add up to 49200.0"}},
      {"even, 60 fits exactly",
       even_rule(kLong, kEnd, 40'000, kSixty),
       40,
       "2360.0",
       {"sum check: 20.0 + 39 × 60.00 = 2360.0", "the 40 figures add up to 47600.0"}},
      {"even, turned round",
       even_rule(kLong, 40'000, kEnd, kSixty),
       40,
       "2380.0",
       {"sum check: 40.0 + 39 × 60.00 = 2380.0", "the 40 figures add up to 48400.0"}},
      {"even, fifty",
       even_rule(1'400'000, 25'000, 25'000, 50'000),
       28,
       "1375.0",
       {"sum check: 25.0 + 27 × 50.00 = 1375.0", "the 28 figures add up to 19600.0"}},
      {"even, thirds",
       even_rule(140'000, kEnd, kEnd, 40'000),
       4,
       "120.0",
       {"sum check: 20.0 + 100.0 = 120.0", "100.0 in 3 gaps of 33.33",
        "the 4 figures add up to 280.0"}},
      {"even, a gap of three decimals",
       even_rule(121'000, kEnd, kEnd, 11'000),
       9,
       "101.0",
       {"sum check: 20.0 + 8 × 10.125 = 101.0", "the 9 figures add up to 545.0"}},
      {"exact, at the end",
       exact_rule(kLong, kEnd, kEnd, kSixty, LeftOver::end),
       40,
       "2360.0",
       {"sum check: 20.0 + 39 × 60.00 = 2360.0", "20.0 left over at the far end",
        "the 40 figures add up to 47600.0"}},
      {"exact, split",
       exact_rule(kLong, kEnd, kEnd, kSixty, LeftOver::split),
       40,
       "2370.0",
       {"sum check: 30.0 + 39 × 60.00 = 2370.0", "20.0 left over, half at each end",
        "the 40 figures add up to 48000.0"}},
      {"exact, one more",
       exact_rule(kLong, kEnd, kEnd, kSixty, LeftOver::extra_point),
       41,
       "2380.0",
       {"sum check: 20.0 + 39 × 60.00 + 20.0 = 2380.0", "the last gap is 20.0",
        "the 41 figures add up to 49980.0"}},
      {"exact, nothing over",
       exact_rule(kLong, kEnd, 40'000, kSixty, LeftOver::extra_point),
       40,
       "2360.0",
       {"sum check: 20.0 + 39 × 60.00 = 2360.0", "the 40 figures add up to 47600.0"}},
      {"exact, shorter than one gap",
       exact_rule(80'000, kEnd, kEnd, kSixty, LeftOver::extra_point),
       2,
       "60.0",
       {"sum check: 20.0 + 40.0 = 60.0", "the last gap is 40.0", "the 2 figures add up to 80.0"}},
      {"one point: the ends meet",
       even_rule(40'000, kEnd, kEnd, kSixty),
       1,
       "20.0",
       {"sum check: the one figure is 20.0"}},
      {"no point: the ends overlap", even_rule(39'999, kEnd, kEnd, kSixty), 0, "", {}},
      {"ends between half millimetres",
       even_rule(2'400'500, 20'250, 20'250, kSixty),
       41,
       "2380.5",
       {"sum check: 20.25 + 40 × 59.00 = 2380.25", "the first, 20.25, is printed 20.5",
        "the last, 2380.25, is printed 2380.5", "the 41 figures add up to 49220.5"}},
      {"just under",
       even_rule(2'400'498, 20'249, 20'249, kSixty),
       41,
       "2380.0",
       {"sum check: 20.249 + 40 × 59.00 = 2380.249", "the first, 20.249, is printed 20.0",
        "the last, 2380.249, is printed 2380.0", "the 41 figures add up to 49200.0"}},
      {"before the edge",
       even_rule(100'000, -5'250, 5'250, kSixty),
       3,
       "95.0",
       {"sum check: −5.25 + 2 × 50.00 = 94.75", "the first, −5.25, is printed −5.5",
        "the last, 94.75, is printed 95.0", "the 3 figures add up to 134.5"}},
      {"a thousand and one",
       even_rule(1'000'000, 0, 0, 1'000),
       1'001,
       "1000.0",
       {"sum check: 0.0 + 1,000 × 1.00 = 1000.0", "the 1,001 figures add up to 500500.0"}}};
}

}  // namespace

TEST_CASE("a list of distances ends with its sum, exact and as printed") {
  int count = 0;
  for (const Case& one : cases()) {
    CAPTURE(std::string(one.name));
    const layout::Run run = run_of(one.rule);
    CHECK(run.points() == one.figures);
    CHECK(sum_check(run) == one.said);
    if (run.points() > 0) CHECK(printed_figure(run.last_um()) == one.last);
    ++count;
  }
  CHECK(count == 17);
}

TEST_CASE("the sum is of the figures as printed, whatever the run") {
  int runs = 0;
  for (const Case& one : cases()) {
    const layout::Run run = run_of(one.rule);
    std::int64_t half_mms = 0;
    for (std::int64_t i = 0; i < run.points(); ++i) {
      // From the words back: a figure is its digits without the point, in tenths.
      std::string figure = printed_figure(run.station_um(i));
      const bool is_below = figure.starts_with("−");
      if (is_below) figure = figure.substr(std::string("−").size());
      figure.erase(figure.find('.'), 1);
      const std::int64_t halves = std::stoll(figure) / 5;
      half_mms += is_below ? -halves : halves;
    }
    CHECK(sum_of_printed_um(run) == half_mms * 500);
    ++runs;
  }
  CHECK(runs == 17);
}

TEST_CASE("a list says what it counts, and a corner that is the hinge row's apart") {
  solve::Row row;
  row.run = run_of(even_rule(kLong, kEnd, kEnd, kSixty));
  CHECK(count_words(row) == "41 staples, 59.00 centre to centre");
  row.kind = solve::RowKind::point;
  CHECK(count_words(row) == "41 points, 59.00 centre to centre");
  row.first_is_shared = true;
  CHECK(count_words(row) == "40 points and the corner, 59.00 centre to centre");
  row.first_is_shared = false;
  row.run = run_of(exact_rule(kLong, kEnd, kEnd, kSixty, LeftOver::extra_point));
  CHECK(count_words(row) == "41 points, 60.00 centre to centre, the last gap 20.00");
  row.run = run_of(exact_rule(80'000, kEnd, kEnd, kSixty, LeftOver::extra_point));
  CHECK(count_words(row) == "2 points, the last gap 40.00");
  row.run = run_of(even_rule(40'000, kEnd, kEnd, kSixty));
  CHECK(count_words(row) == "1 point");
}

TEST_CASE("a stitch row is told by its ends and its stitches, not hole by hole") {
  solve::Row row;
  row.kind = solve::RowKind::stitch;
  row.run = run_of(even_rule(1'400'000, 25'000, 25'000, 5'500));
  CHECK(stitch_words(row) == "first hole 25.0, last hole 1375.0, 246 stitches of 5.49");
  row.first_is_shared = true;
  CHECK(stitch_words(row) ==
        "first hole 25.0 (the hinge row's corner), last hole 1375.0, 246 "
        "stitches of 5.49");
  row.first_is_shared = false;
  row.run = run_of(even_rule(55'000, 25'000, 25'000, 5'500));
  CHECK(stitch_words(row) == "first hole 25.0, last hole 30.0, 1 stitch of 5.00");
  row.run = run_of(even_rule(50'000, 25'000, 25'000, 5'500));
  CHECK(stitch_words(row) == "one hole at 25.0");
  row.run = run_of(even_rule(49'999, 25'000, 25'000, 5'500));
  CHECK(stitch_words(row) == "not laid: no hole");
}

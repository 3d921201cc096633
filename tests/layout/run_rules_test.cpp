#include "engine/layout/run.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::layout;
using pouncemark::tests::Dice;

// The rules that hold for every row whatever its figures, tried on 200,000 rows of all sizes.
namespace {

/// A row that can be laid: up to 100 m long, one in five a whole number of gaps.
RunRule random_rule(Dice& dice) {
  RunRule rule;
  rule.spacing_um = dice.of_any_size(1, 200'000);
  const Um most = std::min<Um>(90'000'000, rule.spacing_um * 1'500);
  Um usable = dice.of_any_size(0, most);
  if (dice.once_in(5)) usable -= usable % rule.spacing_um;
  rule.kept_clear_start_um = dice.of_any_size(0, 2'000'000);
  rule.kept_clear_end_um = dice.of_any_size(0, 2'000'000);
  rule.edge_length_um = usable + rule.kept_clear_start_um + rule.kept_clear_end_um;
  if (rule.edge_length_um == 0) rule.edge_length_um = 1;
  rule.exact = dice.once_in(2);
  rule.left_over = static_cast<RunRule::LeftOver>(dice.between(0, 2));
  return rule;
}

Um usable_um(const RunRule& rule) {
  return rule.edge_length_um - rule.kept_clear_start_um - rule.kept_clear_end_um;
}

/// Indices worth looking at: both ends, the middle, and a few anywhere.
std::vector<std::int64_t> some_gaps(const Run& run, Dice& dice) {
  std::vector<std::int64_t> gaps;
  if (run.gaps == 0) return gaps;
  gaps = {0, run.gaps / 2, run.gaps - 1};
  for (int i = 0; i < 3; ++i) gaps.push_back(dice.between(0, run.gaps - 1));
  return gaps;
}

bool even_holds(const RunRule& rule, const Run& run, Dice& dice) {
  const Um usable = usable_um(rule);
  const std::int64_t needed = (usable + rule.spacing_um - 1) / rule.spacing_um;
  bool holds = run.points() == needed + 1 && run.left_over_um == 0;
  holds = holds && run.first_um() == rule.kept_clear_start_um;
  holds = holds && run.last_um() == rule.edge_length_um - rule.kept_clear_end_um;
  holds = holds && run.station_um(0) == run.first_um() && run.station_um(run.gaps) == run.last_um();
  for (const std::int64_t i : some_gaps(run, dice)) {
    const Um gap = run.station_um(i + 1) - run.station_um(i);
    holds = holds && gap <= rule.spacing_um + 1;
    holds = holds && (gap > 0 || usable < run.gaps);
    holds = holds && (run.gaps < 2 || 2 * (gap + 1) >= rule.spacing_um);
    const Um other_way = run.first_um() + run.last_um() - run.station_um(run.gaps - i);
    const Um uneven = run.station_um(i) - other_way;
    holds = holds && uneven >= -1 && uneven <= 1;
  }
  return holds;
}

bool exact_holds(const RunRule& rule, const Run& run, Dice& dice) {
  const Um usable = usable_um(rule);
  const std::int64_t whole = usable / rule.spacing_um;
  const Um rest = usable - whole * rule.spacing_um;
  const bool more = rule.left_over == RunRule::LeftOver::extra_point && rest > 0;
  bool holds = run.points() == whole + 1 + (more ? 1 : 0);
  holds = holds && run.left_over_um == rest && rest < rule.spacing_um;
  const Um lead = rule.left_over == RunRule::LeftOver::split ? rest / 2 : 0;
  holds = holds && run.left_before_um == lead && run.left_after_um() == (more ? 0 : rest - lead);
  holds = holds && run.last_gap_um() == (more ? rest : run.gaps == 0 ? 0 : rule.spacing_um);
  holds = holds && run.first_um() == rule.kept_clear_start_um + lead;
  holds = holds && run.last_um() <= rule.edge_length_um - rule.kept_clear_end_um;
  for (const std::int64_t i : some_gaps(run, dice)) {
    const Um gap = run.station_um(i + 1) - run.station_um(i);
    const bool is_short = more && i + 1 == run.gaps;
    holds = holds && gap == (is_short ? rest : rule.spacing_um);
  }
  return holds;
}

}  // namespace

TEST_CASE("no gap is wider than asked, ends stand exact, both halves alike: 200,000 even rows") {
  Dice dice(20'260'141);
  INFO(dice.words());
  int hold = 0;
  for (int i = 0; i < 200'000; ++i) {
    RunRule rule = random_rule(dice);
    rule.exact = false;
    const Result<Run> run = solve_run(rule);
    if (run && even_holds(rule, *run, dice)) ++hold;
  }
  CHECK(hold == 200'000);
}

TEST_CASE("every gap is just as asked and less than one is left over: 200,000 exact rows") {
  Dice dice(20'260'142);
  INFO(dice.words());
  int hold = 0;
  for (int i = 0; i < 200'000; ++i) {
    RunRule rule = random_rule(dice);
    rule.exact = true;
    const Result<Run> run = solve_run(rule);
    if (!run) continue;
    if (usable_um(rule) == 0 ? run->points() == 1 : exact_holds(rule, *run, dice)) ++hold;
  }
  CHECK(hold == 200'000);
}

TEST_CASE("points stand in order, none twice, wherever a gap is wider than a micrometre") {
  Dice dice(20'260'143);
  INFO(dice.words());
  int in_order = 0;
  for (int i = 0; i < 2'000; ++i) {
    RunRule rule = random_rule(dice);
    if (rule.spacing_um < 4) rule.spacing_um = 4;
    const Result<Run> run = solve_run(rule);
    bool rising = run.is_ok();
    for (std::int64_t at = 0; rising && at + 1 < run->points(); ++at) {
      rising = run->station_um(at) < run->station_um(at + 1);
    }
    if (rising) ++in_order;
  }
  CHECK(in_order == 2'000);
}

TEST_CASE("everything ten times as large gives the same points ten times as far on") {
  Dice dice(20'260'144);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 20'000; ++i) {
    const RunRule rule = random_rule(dice);
    RunRule large = rule;
    large.edge_length_um *= 10;
    large.kept_clear_start_um *= 10;
    large.kept_clear_end_um *= 10;
    large.spacing_um *= 10;
    const Result<Run> run = solve_run(rule);
    const Result<Run> ten = solve_run(large);
    if (run->points() != ten->points()) continue;
    const std::int64_t at = dice.between(0, run->gaps);
    const Um off = ten->station_um(at) - 10 * run->station_um(at);
    if (off >= -5 && off <= 5) ++same;
  }
  CHECK(same == 20'000);
}

TEST_CASE("a row measured from its other end has its points on the same places") {
  Dice dice(20'260'145);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 20'000; ++i) {
    RunRule rule = random_rule(dice);
    rule.exact = false;
    RunRule other_way = rule;
    std::swap(other_way.kept_clear_start_um, other_way.kept_clear_end_um);
    const Result<Run> run = solve_run(rule);
    const Result<Run> back = solve_run(other_way);
    if (run->points() != back->points()) continue;
    const std::int64_t at = dice.between(0, run->gaps);
    const Um sum = run->station_um(at) + back->station_um(run->gaps - at);
    if (sum >= rule.edge_length_um - 1 && sum <= rule.edge_length_um + 1) ++same;
  }
  CHECK(same == 20'000);
}

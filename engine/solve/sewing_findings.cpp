#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/checks/sewing_rules.h"
#include "engine/solve/findings.h"
#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"
#include "engine/solve/stack.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Value;

const char* rows_words(RowPlace place) {
  return place == RowPlace::side ? "side rows" : place == RowPlace::lap ? "joining rows" : "rows";
}

/// What the rules of one kind of row in one piece are asked with; rows alike are asked once.
struct Kind {
  RowPlace place = RowPlace::side;
  const job::Job& job;
  const Results& alone;
  const job::Trial* trial = nullptr;  ///< the chosen one
  std::optional<Um> lift_um;
  Um usable_um = 0;
};

/// The first place where a row runs along the edge of a ply.
std::optional<Finding> along_a_ply(const Stack& stack) {
  for (const StackStep& step : stack.steps) {
    if (step.along_an_edge) return checks::row_along_a_ply(step.left_um, step.right_um);
  }
  return std::nullopt;
}

/// All that the rules have to say about one row.
std::vector<Finding> said_of(const Kind& kind, const Row& row) {
  std::vector<Finding> said;
  const auto keep = [&said](std::optional<Finding> finding) {
    if (finding) said.push_back(std::move(*finding));
  };
  keep(checks::sheet_left(row.stitch_um, kind.job.needle_size));
  if (kind.trial != nullptr) {
    keep(checks::stitch_not_as_approved(row.asked_um, kind.trial->stitch_um));
  }
  keep(checks::bobbin_too_short(thread_of(kind.job, kind.alone, row).each_um(), kind.usable_um));
  if (!row.stack_is_typed && row.stack_um == 0) {
    said.push_back(checks::stack_not_known(stack_of(kind.job, kind.alone, row).missing));
    return said;
  }
  if (row.along_a_ply) keep(along_a_ply(stack_of(kind.job, kind.alone, row)));
  if (kind.lift_um) {
    keep(checks::foot_lift(*kind.lift_um, row.stack_um, row.climb_um));
  }
  return said;
}

/// Rows that every rule says the same of.
bool are_alike(const Row& a, const Row& b) {
  return a.asked_um == b.asked_um && a.stitch_um == b.stitch_um && a.stack_um == b.stack_um &&
         a.climb_um == b.climb_um && !a.along_a_ply && !b.along_a_ply &&
         a.stack_is_typed == b.stack_is_typed && a.run.length_um == b.run.length_um &&
         a.run.gaps == b.run.gaps;
}

/// Every stitch row of one kind; gives back how many there are.
std::size_t ask_rows(const Kind& kind, Gathering* gathering) {
  std::size_t count = 0;
  const Row* last = nullptr;
  std::vector<Finding> said;
  for (std::size_t i = 0; i < kind.alone.rows.size(); ++i) {
    const Row& row = kind.alone.rows[i];
    if (row.kind != RowKind::stitch || row.place != kind.place) continue;
    ++count;
    if (last == nullptr || !are_alike(*last, row)) said = said_of(kind, row);
    last = &row;
    for (const Finding& finding : said) {
      gathering->add(finding, {0, "row " + row.code, checks::Part::rows, {static_cast<int>(i)}});
    }
  }
  return count;
}

/// Staples against the thickest stack they go through, and whether they may stay.
void ask_staples(const Kind& kind, const job::StapleRow& rule, Gathering* gathering) {
  Um thickest = 0;
  bool is_any = false;
  for (const Row& row : kind.alone.rows) {
    if (row.place != kind.place) continue;
    if (row.kind == RowKind::stitch) thickest = std::max(thickest, row.stack_um);
    is_any = is_any || row.kind == RowKind::staple;
  }
  if (!is_any) return;
  const Asking asking{0, kind.place == RowPlace::side ? "side staples" : "staples in the laps"};
  const Value leg = job::value_of(kind.job.materials, Field::staple_leg);
  if (leg.is_known && thickest > 0) {
    gathering->add(checks::staple_leg(leg.thousandths, thickest), asking);
  }
  const Value stainless = job::value_of(kind.job.materials, Field::staple_stainless);
  const bool may_rust = stainless.is_known && stainless.thousandths == 0;
  if (may_rust && rule.staples == job::StaplesOut::stay) {
    gathering->add(checks::staple_may_rust(), asking);
  }
}

Kind kind_of(const job::Job& job, const Results& alone, RowPlace place) {
  Kind kind{place, job, alone, job::chosen_trial(job.trials, rows_of(place)), {}, 0};
  const Value lift = job::value_of(job.materials, Field::machine_foot_lift);
  if (lift.is_known) kind.lift_um = lift.thousandths;
  kind.usable_um = bobbin_of(job).usable_um;
  return kind;
}

void ask_kind(const job::Job& job, const Results& alone, RowPlace place, Findings* findings) {
  Gathering gathering;
  const std::size_t rows = ask_rows(kind_of(job, alone, place), &gathering);
  gathering.move_to(findings, rows_words(place), alone, rows > 1 ? rows : 0);
}

}  // namespace

void check_sewing(const job::Job& job, const job::Section& section, const Results& alone,
                  Findings* findings) {
  Gathering gathering;
  gathering.add(checks::unusual_thickness(section.leaf_um, "leaves"), {0, "every sleeve"});
  ask_staples(kind_of(job, alone, RowPlace::side), section.side_rows.staple, &gathering);
  if (section.lap_rows) {
    ask_staples(kind_of(job, alone, RowPlace::lap), section.lap_rows->staple, &gathering);
  }
  gathering.move_to(findings, "rows", alone, 0);
  ask_kind(job, alone, RowPlace::side, findings);
  ask_kind(job, alone, RowPlace::lap, findings);
}

void check_sewing(const job::Job& job, const job::Panel& panel, const Results& alone,
                  Findings* findings) {
  Gathering gathering;
  gathering.add(checks::unusual_thickness(panel.backing_thickness_um, "backing"), {0, "backing"});
  gathering.move_to(findings, "rows", alone, 0);
  ask_kind(job, alone, RowPlace::panel, findings);
}

}  // namespace pouncemark::solve

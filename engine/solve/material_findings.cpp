#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "engine/checks/sewing_rules.h"
#include "engine/solve/findings.h"
#include "engine/solve/sewing.h"
#include "engine/solve/solve.h"

namespace pouncemark::solve {
namespace {

using material::Field;
using material::Value;

struct Named {
  Finding finding;
  std::vector<std::string> places;
};

/// Findings about kinds of rows, one sentence once.
void add(std::optional<Finding> finding, const std::string& place, std::vector<Named>* named) {
  if (!finding) return;
  for (Named& one : *named) {
    if (one.finding.sentence != finding->sentence) continue;
    one.places.push_back(place);
    return;
  }
  named->push_back({std::move(*finding), {place}});
}

struct RowsSewn {
  RowPlace place = RowPlace::side;
  std::string words;
  std::int64_t rows = 0;
};

std::array<RowsSewn, 3> rows_sewn(const Results& results) {
  return {{{RowPlace::side, "side rows", results.totals.side_rows},
           {RowPlace::lap, "joining rows", results.totals.lap_rows},
           {RowPlace::panel, "rows of panels", results.totals.panel_rows}}};
}

bool has_trial(const job::Job& job, job::RowsOf of) {
  for (const job::Trial& trial : job.trials) {
    if (trial.of_all_rows || trial.of == of) return true;
  }
  return false;
}

void ask_trial(const job::Job& job, const RowsSewn& sewn, std::vector<Named>* named) {
  const job::RowsOf of = rows_of(sewn.place);
  if (sewn.rows == 0 || !has_trial(job, of)) return;
  const job::Trial* trial = job::chosen_trial(job.trials, of);
  if (trial == nullptr) return add(checks::trial_not_chosen(), sewn.words, named);
  add(checks::needle_not_as_approved(job.needle_size, trial->needle_size), sewn.words, named);
  add(checks::thread_not_as_approved(job.thread_tex, trial->thread_tex), sewn.words, named);
  const bool whitens = trial->whitens.value_or(false);
  const bool cracks = trial->cracks.value_or(false);
  if (whitens || cracks) add(checks::trial_marred(whitens, cracks), sewn.words, named);
  if (trial->signed_by.empty()) add(checks::trial_not_signed(), sewn.words, named);
}

void check_trials(const job::Job& job, const Results& results, Findings* findings) {
  std::vector<Named> named;
  for (const RowsSewn& sewn : rows_sewn(results)) ask_trial(job, sewn, &named);
  for (Named& one : named) {
    Finding& finding = findings->emplace_back(std::move(one.finding));
    for (const std::string& place : one.places) {
      finding.place += (finding.place.empty() ? "" : ", ") + place;
    }
  }
}

/// Puts the whole job as the place.
void keep(std::optional<Finding> finding, const char* place, Findings* findings) {
  if (!finding) return;
  finding->place = place;
  findings->push_back(std::move(*finding));
}

void check_needle_and_thread(const job::Job& job, const Results& results, Findings* findings) {
  constexpr const char* kPlace = "needle and thread";
  const Value label = job::value_of(job.materials, Field::thread_label);
  const bool is_weighed = job.materials.values.count(Field::thread_weighed_tex) > 0;
  keep(checks::tex_from_ticket(label.words, is_weighed, job.thread_tex), kPlace, findings);
  if (results.totals.row_um == 0) return;
  const Value density = job::value_of(job.materials, Field::thread_density);
  keep(checks::thread_in_eye({job.needle_size, real_tex_thousandths(job), density.thousandths}),
       kPlace, findings);
  const Value point = job::value_of(job.materials, Field::needle_point);
  if (material::choice_word(material::row_of(Field::needle_point), point.thousandths) ==
      "cutting_along") {
    keep(checks::cutting_along(), kPlace, findings);
  }
}

void check_machine(const job::Job& job, const Results& results, Findings* findings) {
  const Value speed = job::value_of(job.materials, Field::machine_speed);
  if (!speed.is_known || results.totals.row_um == 0) return;
  // The sheet of panels decides only where there is no sleeve.
  const bool has_sleeves = !job.sections.empty();
  const Value softens =
      job::value_of(job.materials, has_sleeves ? Field::leaf_softens : Field::backing_softens);
  const Value sheet =
      job::value_of(job.materials, has_sleeves ? Field::leaf_sheet : Field::backing_sheet);
  keep(checks::too_fast(speed.thousandths,
                        material::sheet_name(static_cast<material::Sheet>(sheet.thousandths)),
                        softens.thousandths),
       "machine", findings);
}

void check_values(const job::Job& job, Findings* findings) {
  for (const auto& [field, value] : job.materials.values) {
    const material::FieldRow& row = material::row_of(field);
    if (row.holds != material::Holds::number) continue;
    keep(checks::unusual_value(row, value.thousandths), "materials", findings);
  }
  const auto ask_film = [&](Field kind, Field modulus, const char* of) {
    if (job.materials.values.count(modulus) == 0) return;
    const auto sheet = static_cast<material::Sheet>(job::value_of(job.materials, kind).thousandths);
    keep(checks::stiff_film(sheet, job::value_of(job.materials, modulus).thousandths, of),
         "materials", findings);
  };
  ask_film(Field::leaf_sheet, Field::leaf_modulus, "leaves");
  ask_film(Field::backing_sheet, Field::backing_modulus, "backing");
  ask_film(Field::facing_sheet, Field::facing_modulus, "facing");
}

}  // namespace

void check_materials(const job::Job& job, const Results& results, Findings* findings) {
  check_needle_and_thread(job, results, findings);
  check_trials(job, results, findings);
  check_machine(job, results, findings);
  const Value film = job::value_of(job.materials, Field::film_left_on);
  if (film.thousandths == 1 && results.totals.row_um > 0) {
    keep(checks::film_under_row(), "every row", findings);
  }
  check_values(job, findings);
}

}  // namespace pouncemark::solve

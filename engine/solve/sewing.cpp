#include "engine/solve/sewing.h"

#include <algorithm>

#include "engine/base/number_text.h"

namespace pouncemark::solve {
namespace {

using material::Field;

/// The measures of the bobbin, where all three were entered and leave room for thread.
std::optional<takeoff::BobbinMeasures> measures_of(const job::Job& job) {
  const auto entered = [&job](Field field) { return job::value_of(job.materials, field); };
  const material::Value outer = entered(Field::bobbin_outer);
  const material::Value core = entered(Field::bobbin_core);
  const material::Value width = entered(Field::bobbin_width);
  if (!outer.is_known || !core.is_known || !width.is_known) return std::nullopt;
  if (core.thousandths >= outer.thousandths) return std::nullopt;
  return takeoff::BobbinMeasures{outer.thousandths,
                                 core.thousandths,
                                 width.thousandths,
                                 entered(Field::bobbin_packing).thousandths,
                                 entered(Field::thread_density).thousandths,
                                 real_tex_thousandths(job)};
}

/// The places of one kind of row, put beside the rows; gives back the bobbins they take.
std::int64_t place_rows(const Results& results, const std::vector<Um>& thread_um, RowPlace place,
                        Sewing* sewing) {
  std::vector<std::size_t> of_kind;
  std::vector<Um> rows_um;
  for (std::size_t i = 0; i < results.rows.size(); ++i) {
    const Row& row = results.rows[i];
    if (row.kind != RowKind::stitch || row.place != place) continue;
    of_kind.push_back(i);
    rows_um.push_back(thread_um[i]);
  }
  const auto plan = takeoff::bobbin_plan(rows_um, sewing->bobbin.usable_um);
  for (std::size_t i = 0; i < of_kind.size(); ++i) sewing->places[of_kind[i]] = plan[i];
  return takeoff::bobbin_fills(plan);
}

std::string ordinal(std::int64_t number) {
  const std::int64_t tens = number % 100;
  const char* ending = "th";
  if (tens < 11 || tens > 13) {
    if (number % 10 == 1) ending = "st";
    if (number % 10 == 2) ending = "nd";
    if (number % 10 == 3) ending = "rd";
  }
  return count_text(number) + ending;
}

}  // namespace

std::int64_t real_tex_thousandths(const job::Job& job) {
  const material::Value weighed = job::value_of(job.materials, Field::thread_weighed_tex);
  return weighed.is_known ? weighed.thousandths : std::int64_t{job.thread_tex} * 1000;
}

Bobbin bobbin_of(const job::Job& job) {
  Bobbin bobbin;
  const material::Value typed = job::value_of(job.materials, Field::bobbin_thread);
  bobbin.from = typed.is_assumed() ? MetresFrom::assumed : MetresFrom::typed;
  bobbin.thread_um = typed.thousandths * 1000;
  if (job.materials.values.count(Field::bobbin_thread) == 0) {
    if (const auto measures = measures_of(job)) {
      bobbin.from = MetresFrom::measures;
      bobbin.thread_um = std::max<Um>(takeoff::bobbin_thread_um(*measures), 1000);
    }
  }
  const material::Value kept = job::value_of(job.materials, Field::bobbin_kept_back);
  bobbin.usable_um = takeoff::usable_um(bobbin.thread_um, kept.thousandths);
  return bobbin;
}

takeoff::ThreadOfRow thread_of(const job::Job& job, const Results& /*results*/, const Row& row) {
  return takeoff::thread_of_row(row.run.length_um, row.run.gaps, row.stack_um, job.tails_um);
}

Sewing sewing_of(const job::Job& job, const Results& results) {
  Sewing sewing;
  sewing.bobbin = bobbin_of(job);
  sewing.places.resize(results.rows.size());
  std::vector<Um> thread_um(results.rows.size(), 0);
  Um longest_panel_row = 0;
  bool is_any = false;
  for (std::size_t i = 0; i < results.rows.size(); ++i) {
    const Row& row = results.rows[i];
    if (row.kind != RowKind::stitch) continue;
    is_any = true;
    thread_um[i] = thread_of(job, results, row).each_um();
    sewing.thread_each_um += thread_um[i];
    if (is_stack_unknown(row)) ++sewing.not_known[static_cast<std::size_t>(row.place)];
    Um& longest = row.place == RowPlace::panel ? longest_panel_row : sewing.longest_row_um;
    longest = std::max(longest, thread_um[i]);
  }
  const bool is_of_panels = sewing.longest_row_um == 0;
  if (is_of_panels) sewing.longest_row_um = longest_panel_row;
  const std::int64_t open_rows =
      is_of_panels ? sewing.not_known_of(RowPlace::panel)
                   : sewing.not_known_of(RowPlace::side) + sewing.not_known_of(RowPlace::lap);
  for (const RowPlace place : {RowPlace::side, RowPlace::lap, RowPlace::panel}) {
    if (sewing.not_known_of(place) > 0) continue;
    sewing.fills[static_cast<std::size_t>(place)] = place_rows(results, thread_um, place, &sewing);
  }
  if (is_any && sewing.longest_row_um > 0 && open_rows == 0) {
    sewing.rows_per_bobbin = takeoff::rows_a_bobbin(sewing.bobbin.usable_um, sewing.longest_row_um);
  }
  return sewing;
}

std::string bobbin_words(const takeoff::BobbinPlace& place) {
  const std::string bobbin = "bobbin " + count_text(place.bobbin);
  if (place.takes > 1) {
    return bobbin + " to " + count_text(place.bobbin + place.takes - 1) +
           ", which do not last it unjoined";
  }
  if (place.row_on_it == 1 && place.is_last) return bobbin + ", its only row";
  return bobbin + ", its " + ordinal(place.row_on_it) + (place.is_last ? " and last row" : " row");
}

}  // namespace pouncemark::solve

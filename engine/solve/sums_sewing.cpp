#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/solve/sewing.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

using material::Field;

constexpr const char* kThreadSource =
    "stitch type 301 (ISO 4915): both threads alike, 2 + 2 × stack ÷ stitch of each length sewn";

/// A value in thousandths with the word that no one entered it; notes it in the sum.
std::string told_value(const job::Job& job, Field field, Sum* sum) {
  const material::Value value = job::value_of(job.materials, field);
  sum->rests_on_assumed = sum->rests_on_assumed || value.is_assumed();
  return told(exact_mm_text(value.thousandths), value.is_assumed());
}

std::vector<std::int64_t> threads_of(const job::Job& job, const Results& results) {
  std::vector<std::int64_t> each;
  for (const Row& row : results.rows) {
    if (row.kind == RowKind::stitch) each.push_back(thread_of(job, results, row).each_um());
  }
  return each;
}

/// "22,500 = 7 × 2,969.6 + 1,712.8, so 7".
std::string rows_line(Um usable, Um row) {
  const std::int64_t rows = takeoff::rows_a_bobbin(usable, row);
  const Um rest = usable - rows * row;
  return added_mm(usable) + " = " + count_text(rows) + " × " + added_mm(row) +
         (rest == 0 ? "" : " + " + added_mm(rest)) + ", so " + count_text(rows);
}

/// "25,000 assumed × (100 − 10 assumed) ÷ 100 = 22,500".
std::string usable_line(const job::Job& job, const Bobbin& bobbin, Sum* sum) {
  const bool is_assumed = bobbin.from == MetresFrom::assumed;
  sum->rests_on_assumed = sum->rests_on_assumed || is_assumed;
  return told(added_mm(bobbin.thread_um), is_assumed) + " × (100 − " +
         told_value(job, Field::bobbin_kept_back, sum) + ") ÷ 100 = " + added_mm(bobbin.usable_um);
}

}  // namespace

Sum thread_sum(const job::Job& job, const Results& results, const Row& row) {
  const takeoff::ThreadOfRow thread = thread_of(job, results, row);
  Sum sum;
  sum.rule = is_stack_unknown(row)
                 ? "its run and tails: the stack is not known and not in it"
                 : "its run, the stack once for each stitch, and tails: each of the two threads";
  sum.source = kThreadSource;
  sum.figure = metres_text(thread.each_um(), 2);
  sum.numbers.push_back(plain_mm(thread.run_um) + " + " + count_text(thread.gaps) + " × " +
                        plain_mm(thread.stack_um) + " + " + plain_mm(thread.tails_um) + " = " +
                        plain_mm(thread.each_um()));
  sum.numbers.push_back(plain_mm(thread.each_um()) + " ÷ 1000 = " + sum.figure);
  return sum;
}

Sum thread_each_sum(const job::Job& job, const Results& results) {
  std::vector<std::int64_t> each = threads_of(job, results);
  if (each.empty()) each.push_back(0);
  const Um all = total_of(each);
  Sum sum;
  sum.rule = "run, stack once for each stitch, and tails of every row: each of the two threads";
  if (std::any_of(results.rows.begin(), results.rows.end(), is_stack_unknown)) {
    sum.rule += "; stacks that are not known are not in it";
  }
  sum.source = kThreadSource;
  sum.figure = metres_text(all, 2);
  const std::string added = added_up(each, added_mm);
  if (added != added_mm(all)) sum.numbers.push_back(added + " = " + added_mm(all));
  sum.numbers.push_back(added_mm(all) + " ÷ 1000 = " + sum.figure);
  return sum;
}

Sum bobbin_thread_sum(const job::Job& job) {
  const Bobbin bobbin = bobbin_of(job);
  Sum sum;
  sum.figure = metres_text(bobbin.thread_um, 2);
  if (bobbin.from != MetresFrom::measures) {
    const material::Value value = job::value_of(job.materials, Field::bobbin_thread);
    sum.rests_on_assumed = bobbin.from == MetresFrom::assumed;
    sum.rule = sum.rests_on_assumed ? "what a bobbin is taken to hold" : "as typed";
    sum.source = value.source.empty() ? kEnteredSource : value.source;
    sum.numbers.push_back(sum.figure);
    return sum;
  }
  sum.rule = "room for thread between core and outside, filled with fibre, by the thread's tex";
  sum.source = "volume by fibre by density over tex";
  const auto measure = [&](Field field) { return told_value(job, field, &sum); };
  const auto entered = [&](Field field) { return job::value_of(job.materials, field).thousandths; };
  takeoff::BobbinMeasures room;
  room.outer_um = entered(Field::bobbin_outer);
  room.core_um = entered(Field::bobbin_core);
  room.width_um = entered(Field::bobbin_width);
  const std::string volume = mm_text(to_um(takeoff::bobbin_room_mm3(room)), 2);
  sum.numbers.push_back("π ÷ 4 × (" + plain_mm(room.outer_um) + "² − " + plain_mm(room.core_um) +
                        "²) × " + plain_mm(room.width_um) + " = " + volume + " cubic mm");
  const std::string packing = measure(Field::bobbin_packing);
  const std::string density = measure(Field::thread_density);
  sum.numbers.push_back(volume + " × " + packing + " × " + density + " ÷ " +
                        plain_mm(real_tex_thousandths(job)) + " = " + sum.figure);
  return sum;
}

Sum rows_per_bobbin_sum(const job::Job& job, const Results& results) {
  const Sewing sewing = sewing_of(job, results);
  INSIST(sewing.rows_per_bobbin);
  Sum sum;
  sum.rule = "what is not kept back, by the longest row: changed before a row, never within one";
  sum.source = job::value_of(job.materials, Field::bobbin_thread).source;
  if (sewing.bobbin.from == MetresFrom::measures) sum.source = "the bobbin's measures";
  if (sum.source.empty()) sum.source = kEnteredSource;
  sum.figure = count_text(*sewing.rows_per_bobbin);
  sum.numbers.push_back(usable_line(job, sewing.bobbin, &sum));
  sum.numbers.push_back(rows_line(sewing.bobbin.usable_um, sewing.longest_row_um));
  return sum;
}

Sum bobbin_fills_sum(const job::Job& job, const Results& results, RowPlace place) {
  const Sewing sewing = sewing_of(job, results);
  std::vector<Um> each;
  for (const Row& row : results.rows) {
    if (row.kind != RowKind::stitch || row.place != place) continue;
    each.push_back(thread_of(job, results, row).each_um());
  }
  Sum sum;
  sum.rule = "a bobbin is changed before a row it would not last, never within one";
  sum.figure = count_text(sewing.fills_of(place));
  sum.source = kExactSource;
  const bool is_alike =
      std::adjacent_find(each.begin(), each.end(), std::not_equal_to<>()) == each.end();
  if (each.empty() || !is_alike || each.front() > sewing.bobbin.usable_um) {
    sum.rests_on_assumed = sewing.bobbin.from == MetresFrom::assumed;
    sum.numbers.push_back(sum.figure);
    return sum;
  }
  sum.numbers.push_back(usable_line(job, sewing.bobbin, &sum));
  sum.numbers.push_back(rows_line(sewing.bobbin.usable_um, each.front()));
  const std::int64_t on_one = takeoff::rows_a_bobbin(sewing.bobbin.usable_um, each.front());
  const auto rows = static_cast<std::int64_t>(each.size());
  sum.numbers.push_back(
      count_text(rows) + " = " + count_text(rows / on_one) + " × " + count_text(on_one) +
      (rows % on_one == 0 ? "" : " + " + count_text(rows % on_one)) + ", so " + sum.figure);
  return sum;
}

}  // namespace pouncemark::solve

#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/stack.h"
#include "engine/solve/sum_words.h"
#include "engine/solve/sums.h"

namespace pouncemark::solve {
namespace {

using material::Item;

/// Plies of one kind and thickness, counted.
struct Alike {
  std::string words;  ///< "leaf", "cloth", "film left on"
  const Ply* ply = nullptr;
  std::int64_t count = 0;
};

std::string words_of(const Ply& ply) {
  switch (ply.item) {
    case Item::leaf:
      return "leaf";
    case Item::film:
      return "film left on";
    case Item::sleeve_cloth:
      return "cloth";
    default:
      return ply.name;
  }
}

std::vector<Alike> counted_alike(const std::vector<Ply>& plies) {
  std::vector<Alike> all;
  for (const Ply& ply : plies) {
    const std::string words = words_of(ply);
    bool is_new = true;
    for (Alike& one : all) {
      if (one.words != words || one.ply->thickness_um != ply.thickness_um) continue;
      ++one.count;
      is_new = false;
    }
    if (is_new) all.push_back({words, &ply, 1});
  }
  return all;
}

/// "4 × 0.25 leaf + 0.6 cloth".
std::string added(const std::vector<Alike>& all) {
  std::string words;
  for (const Alike& one : all) {
    if (!words.empty()) words += " + ";
    if (one.count > 1) words += count_text(one.count) + " × ";
    words += told(plain_mm(one.ply->thickness_um), one.ply->is_assumed) + " " + one.words;
  }
  return words;
}

material::Field thickness_field(Item item) {
  switch (item) {
    case Item::sleeve_cloth:
      return material::Field::sleeve_cloth_thickness;
    case Item::panel_cloth:
      return material::Field::panel_cloth_thickness;
    case Item::interlining:
      return material::Field::interlining_thickness;
    case Item::adhesive:
      return material::Field::adhesive_thickness;
    default:
      return material::Field::film_thickness;
  }
}

/// "leaf and backing entered; cloth in sleeves: label of lot 7".
std::string sources_of(const job::Job& job, const std::vector<Alike>& all) {
  std::string words;
  std::string last;
  for (const Alike& one : all) {
    std::string source(material::item_words(one.ply->item));
    if (one.ply->item == Item::leaf || one.ply->item == Item::backing) {
      source += " entered";
    } else {
      const material::Value value = job::value_of(job.materials, thickness_field(one.ply->item));
      source += value.source.empty() ? " entered" : ": " + value.source;
    }
    if (source == last) continue;
    if (!words.empty()) words += "; ";
    words += source;
    last = std::move(source);
  }
  return words;
}

/// Where along the row it is thickest: all along, or from where to where.
std::string where_words(const Stack& stack) {
  if (stack.steps.size() == 1) return "its plies added up, the same all along";
  const StackStep& step = stack.at(stack.thickest);
  return "its plies added up where it is thickest, from " + short_mm_text(step.from_um, 1) +
         " to " + short_mm_text(step.to_um, 1);
}

void close(const std::string& before, std::string figure, Sum* sum) {
  sum->figure = std::move(figure);
  sum->numbers.push_back(before + sum->figure);
}

}  // namespace

Sum stack_sum(const job::Job& job, const Results& results, const Row& row) {
  Sum sum;
  const Stack stack = stack_of(job, results, row);
  if (stack.is_typed) {
    sum.rule = "as typed, not worked out from the plies";
    sum.source = kEnteredSource;
    close("", mm_text(row.stack_um, 2), &sum);
    return sum;
  }
  sum.numbers = stack.assumed_places;
  sum.rests_on_assumed = !stack.assumed_places.empty();
  if (!stack.is_known) {
    sum.rule = "enter " + stack.missing + ", or type the stack";
    sum.source = stack.missing + " was entered by no one";
    close(stack.missing + ": ", "not known", &sum);
    return sum;
  }
  sum.rule = where_words(stack);
  if (stack.steps.empty()) {
    sum.source = kEnteredSource;
    close("", mm_text(0, 2), &sum);
    return sum;
  }
  const std::vector<Alike> all = counted_alike(stack.at(stack.thickest).plies);
  for (const Alike& one : all) sum.rests_on_assumed |= one.ply->is_assumed;
  sum.source = sources_of(job, all);
  close(added(all) + " = ", mm_text(row.stack_um, 2), &sum);
  return sum;
}

}  // namespace pouncemark::solve

#include <cmath>
#include <string>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/bay_force.h"
#include "engine/solve/bays.h"
#include "engine/solve/sum_words.h"

namespace pouncemark::solve {
namespace {

constexpr const char* kSmallSource = "beam on two supports, load in the middle (Timoshenko, Gere)";
constexpr const char* kLargeSource =
    "elastic curve with its exact curvature (Timoshenko and Gere); ends free to slide";

/// A bay with a force and all that its sums are made of.
struct Asked {
  const job::Job& job;
  const BayResult& result;
  const Piece& piece;
  std::vector<BentSheet> sheets;

  const BayForce& force() const { return *result.force; }
  bool rests_on_assumed() const {
    for (const BentSheet& sheet : sheets) {
      if (sheet.modulus.is_assumed() || sheet.poisson.is_assumed()) return true;
    }
    return false;
  }
};

Asked asked_of(const job::Job& job, const Results& results, int bay) {
  const BayResult& result = results.bays[static_cast<std::size_t>(bay)];
  const Piece& piece = results.pieces[static_cast<std::size_t>(result.piece)];
  return {job, result, piece, sheets_of(job, piece)};
}

std::string newtons(std::int64_t mn) { return mm_text(mn, 1); }

std::string value_text(const material::Value& value) {
  return told(exact_mm_text(value.thousandths), value.is_assumed());
}

/// Cubes are written out, as a pocket calculator takes them.
std::string cube(const std::string& number) { return number + " × " + number + " × " + number; }

/// "48 × 2 × 2100 × 1 × 1 × 1 ÷ (12 × (1 − 0.38 × 0.38))": 48 times the stiffness of one kind.
std::string stiffness_text(const BentSheet& sheet) {
  const std::string poisson = exact_mm_text(sheet.poisson.thousandths);
  return "48 × " + (sheet.count > 1 ? std::to_string(sheet.count) + " × " : "") +
         value_text(sheet.modulus) + " × " + cube(exact_mm_text(sheet.thickness_um)) +
         " ÷ (12 × (1 − " + value_text(sheet.poisson) + " × " + poisson + "))";
}

std::string ply_line(const Asked& asked, std::size_t ply, int decimals) {
  return stiffness_text(asked.sheets[ply]) + " × " + exact_mm_text(asked.piece.length_um) + " × " +
         exact_mm_text(asked.force().rise_um) + " ÷ (" +
         cube(exact_mm_text(asked.force().chord_um)) +
         ") = " + mm_text(asked.force().plies[ply].push.small_mn, decimals);
}

/// What large bending leaves of the small-bend formula, in millionths.
std::string left_of_it(const MiddlePush& push) {
  if (push.small_mn == 0) return "1";
  const double part = static_cast<double>(push.exact_mn) / static_cast<double>(push.small_mn);
  const std::string digits = std::to_string(std::llround(part * 1e6));
  return digits.size() > 6 ? "1" : "0." + std::string(6 - digits.size(), '0') + digits;
}

/// The exact push of one ply or of the pack, made of the small-bend one.
void add_exact(const Asked& asked, const MiddlePush& push, Sum* sum) {
  const BayForce& force = asked.force();
  const double steep = static_cast<double>(force.rise_um) / static_cast<double>(force.chord_um);
  sum->numbers.push_back(exact_mm_text(force.rise_um) + " ÷ " + exact_mm_text(force.chord_um) +
                         " = " + mm_text(std::llround(steep * 1e3), 3));
  sum->numbers.push_back("large bending leaves so much of it: " + left_of_it(push));
  sum->numbers.push_back(mm_text(push.small_mn, 3) + " × " + left_of_it(push) + " = " +
                         newtons(push.exact_mn));
}

void add_whence(const Asked& asked, Sum* sum) {
  if (asked.result.is_by_stations) {
    sum->numbers.insert(sum->numbers.begin(),
                        "chord from the first station to the last, rise to the crest between them");
  }
  if (asked.piece.kind == PieceKind::section) {
    sum->numbers.insert(sum->numbers.begin(),
                        "two leaves, as in a sleeve; four lie in a lap, which is narrow");
  }
}

Sum push_sum(const Asked& asked) {
  const BayForce& force = asked.force();
  Sum sum;
  sum.rule = force.is_beyond_small
                 ? "push in the middle by large bending, the rise being over a twentieth of the "
                   "chord; sheets slipping, cloth limp"
                 : "push in the middle: 48 × stiffness × height × rise ÷ chord³; sheets slipping, "
                   "cloth limp";
  sum.figure = newtons(force.shown_mn);
  std::string added;
  for (std::size_t i = 0; i < force.plies.size(); ++i) {
    const bool is_alone = force.plies.size() == 1;
    sum.numbers.push_back((is_alone ? "" : force.plies[i].words + ": ") +
                          ply_line(asked, i, is_alone ? 1 : 3));
    added += (i > 0 ? " + " : "") + mm_text(force.plies[i].push.small_mn, 3);
  }
  if (force.plies.size() > 1) {
    sum.numbers.push_back(added + " = " + newtons(force.slipping.small_mn));
  }
  if (force.is_beyond_small) add_exact(asked, force.slipping, &sum);
  add_whence(asked, &sum);
  sum.source = force.is_beyond_small ? kLargeSource : kSmallSource;
  sum.rests_on_assumed = asked.rests_on_assumed();
  return sum;
}

Sum people_sum(const Asked& asked) {
  const BayForce& force = asked.force();
  const material::Value each = job::value_of(asked.job.materials, material::Field::hanging_push);
  Sum sum;
  sum.figure = std::to_string(force.people);
  sum.rule = "the push shared by people, rounded up";
  const auto line = [&each](std::int64_t mn, std::int64_t people) {
    return mm_text(mn, 3) + " ÷ " + value_text(each) + ", rounded up: " + std::to_string(people);
  };
  if (force.people != force.people_other) {
    sum.numbers.push_back(
        (force.is_beyond_small ? "by the small-bend formula: " : "by large bending: ") +
        line(force.other_mn, force.people_other));
  }
  sum.numbers.push_back(line(force.shown_mn, force.people));
  sum.source = each.source.empty() ? kEnteredSource : each.source;
  sum.rests_on_assumed = each.is_assumed() || asked.rests_on_assumed();
  return sum;
}

Sum locked_sum(const Asked& asked) {
  const BayForce& force = asked.force();
  const MiddlePush& push = force.locked;
  Sum sum;
  sum.figure = newtons(force.is_beyond_small ? push.exact_mn : push.small_mn);
  sum.rule =
      "the same push were the sheets glued or pressed together as one, straight on one "
      "another; cloth between them makes it more";
  Um all_um = 0;
  std::string added;
  const bool is_one_kind = force.plies.size() == 1;
  for (const BentSheet& sheet : asked.sheets) {
    for (int i = 0; i < sheet.count; ++i) {
      added += (added.empty() ? "" : " + ") + exact_mm_text(sheet.thickness_um);
      all_um += sheet.thickness_um;
    }
  }
  sum.numbers = {"together " + added + " = " + exact_mm_text(all_um) + " thick"};
  if (is_one_kind) {
    const std::string count = std::to_string(asked.sheets[0].count);
    sum.numbers.push_back("slipping " + mm_text(force.slipping.small_mn, 3) + " × " + count +
                          " × " + count + ", small bend: " + mm_text(push.small_mn, 1));
  } else {
    sum.numbers.push_back("about the middle of their stiffness, small bend: " +
                          newtons(push.small_mn));
  }
  if (force.is_beyond_small) add_exact(asked, push, &sum);
  sum.source = "sheets bent as one about the middle of their stiffness (Timoshenko)";
  sum.rests_on_assumed = asked.rests_on_assumed();
  return sum;
}

}  // namespace

Sum ply_sum(const job::Job& job, const Results& results, int bay, int ply) {
  const Asked asked = asked_of(job, results, bay);
  const auto at = static_cast<std::size_t>(ply);
  const MiddlePush& push = asked.force().plies[at].push;
  const bool is_beyond = asked.force().is_beyond_small;
  Sum sum;
  sum.figure = newtons(is_beyond ? push.exact_mn : push.small_mn);
  sum.rule = "push in the middle for this sheet alone: 48 × stiffness × height × rise ÷ chord³";
  sum.numbers = {ply_line(asked, at, is_beyond ? 3 : 1)};
  if (is_beyond) add_exact(asked, push, &sum);
  add_whence(asked, &sum);
  sum.source = is_beyond ? kLargeSource : kSmallSource;
  const BentSheet& sheet = asked.sheets[at];
  sum.rests_on_assumed = sheet.modulus.is_assumed() || sheet.poisson.is_assumed();
  return sum;
}

Sum force_sum(const job::Job& job, const Results& results, int bay, BayFigure figure) {
  const Asked asked = asked_of(job, results, bay);
  if (figure == BayFigure::push) return push_sum(asked);
  return figure == BayFigure::people ? people_sum(asked) : locked_sum(asked);
}

}  // namespace pouncemark::solve

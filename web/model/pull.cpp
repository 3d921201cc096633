#include "web/model/pull.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string_view>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/solve/solve.h"
#include "web/model/choices.h"
#include "web/model/entry.h"
#include "web/model/outcomes.h"

namespace pouncemark::web {
namespace {

constexpr Um kFinestUm = 100;          ///< a thing comes to rest at a tenth
constexpr Um kLeastSizeUm = 1'000;     ///< of a length, a width, a lap
constexpr Um kMostUm = 20'000'000;     ///< of everything that is pulled
constexpr Um kMostFoldUm = 50'000;     ///< as the job file has it
constexpr Um kMostCornerUm = 100'000;  ///< as the job file has it

bool is_row_in(Measure measure) {
  return measure == Measure::in_from_edge || measure == Measure::stitch_in_from_edge;
}

Limits limits_of(Measure measure) {
  switch (measure) {
    case Measure::length:
    case Measure::width:
    case Measure::lap:
      return {kLeastSizeUm, kMostUm};
    case Measure::fold_radius:
      return {0, kMostFoldUm};
    case Measure::flange:
    case Measure::spacing:
    case Measure::stitch:
      return {kFinestUm, kMostUm};
    case Measure::corner_clear:
      return {0, kMostCornerUm};
    default:
      return {0, kMostUm};
  }
}

std::string too_little(Measure measure, Um least) {
  const std::string figure = exact_mm_text(least);
  if (is_row_in(measure)) return figure + " in from the edge: further out there is no sheet";
  if (measure == Measure::fold_radius) return figure + " inside: no fold is sharper";
  if (measure == Measure::corner_clear) return figure + " clear: here it meets the hinge row";
  if (least == 0) return figure + " kept clear: beyond it there is no sheet";
  return figure + ": nothing smaller can be made";
}

/// Words that began a sentence, after a colon.
std::string in_a_sentence(std::string words) {
  if (!words.empty() && words.front() >= 'A' && words.front() <= 'Z') {
    words.front() = static_cast<char>(words.front() - 'A' + 'a');
  }
  return words;
}

/// Why a row was not laid, figures first: "40 long, 22 + 22 kept clear: no room for a row".
std::string why_not_laid(const solve::Finding& finding, const std::string& asked) {
  std::string what = finding.sentence.substr(0, finding.sentence.find(';'));
  const std::size_t colon = what.rfind(": ");
  if (colon != std::string::npos) what.erase(0, colon + 2);
  return (finding.figure.empty() ? asked : finding.figure) + ": " + in_a_sentence(std::move(what));
}

/// One thing pulled on its piece, which stands as a job of its own.
struct Tried {
  const Alone& alone;
  Measure measure;
  int rows_before = 0;  ///< how many rows were laid at the start

  /// Why the figure cannot be; empty where it can.
  std::string why_not(Um um) const;
};

/// The side rows of a sleeve stop at its middle; empty where they do.
std::string past_the_middle(const job::Job& job, const Alone& alone) {
  const solve::Sleeve* sleeve = sleeve_at(alone.results, alone.place);
  if (sleeve == nullptr || (!sleeve->has_left_rows && !sleeve->has_right_rows)) return {};
  const auto figure = [&](Measure measure) {
    return measured(job, alone.results, alone.place, measure);
  };
  const Um wide = figure(Measure::width);
  const Um in = std::max(figure(Measure::in_from_edge), figure(Measure::stitch_in_from_edge));
  if (2 * in <= wide) return {};
  return exact_mm_text(wide) + " wide, a row " + exact_mm_text(in) +
         " in from the edge: past the middle of the sleeve";
}

std::string Tried::why_not(Um um) const {
  const job::Job job = with_measure(alone.job, alone.results, alone.place, measure, um);
  if (section_at(alone.job, alone.results, alone.place) != nullptr) {
    const std::string room = no_room(job.sections.front());
    if (!room.empty()) return room;
    const std::string past = past_the_middle(job, alone);
    if (!past.empty() && past_the_middle(alone.job, alone).empty()) return past;
  }
  const solve::Results results = solve::solve(job);
  if (results.pieces.front().row_count >= rows_before) return {};
  const std::string asked = exact_mm_text(um) + (is_row_in(measure) ? " in from the edge" : "");
  for (const solve::Finding& finding : results.findings) {
    if (finding.code == "row_not_laid") return why_not_laid(finding, asked);
  }
  return {};
}

/// The last tenth between a figure that can be and one that cannot, and the first that cannot.
struct Border {
  Um can = 0;
  Um cannot = 0;
};

Border border_between(const Tried& tried, Um can, Um cannot) {
  const Um way = cannot > can ? kFinestUm : -kFinestUm;
  // Counted in tenths from the first one that lies on the way.
  const Um first = way > 0 ? divide_up(can, kFinestUm) * kFinestUm : can / kFinestUm * kFinestUm;
  Um low = -1;
  Um high = (cannot - first) / way;
  while (high - low > 1) {
    const Um middle = low + (high - low) / 2;
    if (tried.why_not(first + middle * way).empty())
      low = middle;
    else
      high = middle;
  }
  return {low < 0 ? can : first + low * way, first + high * way};
}

/// What a sentence comes to, after its figures.
std::string_view what_of(std::string_view reason) {
  const std::size_t colon = reason.rfind(": ");
  return colon == std::string_view::npos ? reason : reason.substr(colon);
}

}  // namespace

Um Pull::asked(float at, Um step) const {
  // A press that does not move must not round a figure that was typed finer than the step.
  if (std::fabs(at - start_at) < 1.0f) return start_um;
  const Um moved = to_um(static_cast<double>(at - start_at) * sign / px_per_mm);
  return to_step(start_um + moved, step);
}

Um key_step(bool shift, bool ctrl) {
  constexpr Um kPlain = 1'000;
  constexpr Um kLong = 10'000;
  if (ctrl) return kFinestUm;
  return shift ? kLong : kPlain;
}

Resisted held_back(const Solved& start, Place place, Measure measure, Um asked) {
  const Limits limits = limits_of(measure);
  const Alone alone = alone_of(start, place);
  const auto& piece = start.results.pieces[static_cast<std::size_t>(place.piece)];
  const Tried tried{alone, measure, piece.row_count};
  const Um stands = measured(start.job, start.results, place, measure);
  Resisted held{std::clamp(asked, limits.least, limits.most), {}};
  if (asked < limits.least) held.reason = too_little(measure, limits.least);
  if (asked > limits.most) {
    held.reason = exact_mm_text(limits.most) + ": the most a job can say";
  }
  if (held.um == stands) return held;
  const std::string why_not = tried.why_not(held.um);
  if (why_not.empty()) return held;
  const Border border = border_between(tried, stands, held.um);
  // Figures as asked, unless something else stands in the way sooner.
  std::string sooner = tried.why_not(border.cannot);
  const bool is_same = sooner.empty() || what_of(sooner) == what_of(why_not);
  return {border.can, is_same ? why_not : std::move(sooner)};
}

std::string fly_side_refusal() {
  const std::string whole = checks::fly_side_row().sentence;
  return "FLY SIDE, DO NOT SEW: " + in_a_sentence(whole.substr(0, whole.find(". ")));
}

}  // namespace pouncemark::web

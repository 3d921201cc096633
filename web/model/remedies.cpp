#include "web/model/remedies.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/solve.h"
#include "web/model/changes.h"
#include "web/model/choices.h"
#include "web/model/curve_stop.h"
#include "web/model/outcomes.h"

namespace pouncemark::web {
namespace {

using checks::Part;
using solve::Finding;

constexpr Um kStepUm = 500;  ///< figures that are offered stand on whole halves

/// The piece a finding is about, and the part of it a remedy would change: one sleeve where the
/// finding is about one, else all of the piece.
struct About {
  const job::Job& job;
  const solve::Results& results;
  const Finding& finding;
  Place place;
};

/// One thing that may help.
struct Try {
  std::string id;
  std::string words;
  job::Job job;
  std::string action;
};
using Tries = std::vector<Try>;

Um whole_steps(Um um) { return divide_up(um, kStepUm) * kStepUm; }

Um blades(const About& about, int count) { return Um{about.job.needle_size} * 10 * count; }

void add_measure(const About& about, Measure measure, Um um, std::string id, std::string words,
                 Tries* tries) {
  const Um was = measured(about.job, about.results, about.place, measure);
  if (um == was) return;
  tries->push_back(Try{std::move(id), std::move(words),
                       with_measure(about.job, about.results, about.place, measure, um),
                       action_words(about.job, about.results, about.place, measure, was, um)});
}

void add_answer(const About& about, Question question, int answer, std::string id,
                std::string words, Tries* tries) {
  if (!is_asked(about.job, about.results, about.place, question)) return;
  if (!why_not(about.job, about.results, about.place, question, answer).empty()) return;
  tries->push_back(Try{std::move(id), std::move(words),
                       with_answer(about.job, about.results, about.place, question, answer),
                       answered_words(about.job, about.results, about.place, question, answer)});
}

void staples_under_foot(const About& about, Tries* tries) {
  constexpr int kBefore = static_cast<int>(job::StaplesOut::before_the_row);
  constexpr int kAsFootComes = static_cast<int>(job::StaplesOut::as_the_foot_comes);
  const bool in_laps = about.finding.part == Part::laps;
  const Question question = in_laps ? Question::lap_staples_out : Question::staples_out;
  add_answer(about, question, kBefore, "staples_out", "Staples out first", tries);
  add_answer(about, question, kAsFootComes, "staples_as_foot", "As the foot comes", tries);
  if (in_laps) {
    add_answer(about, Question::staples_out, kBefore, "side_staples_out", "Side staples out first",
               tries);
  }
}

void row_near_edge(const About& about, Tries* tries) {
  if (about.finding.part == Part::laps) {
    const Um lap = whole_steps(2 * blades(about, material::kAssumedBladesToEdge));
    add_measure(about, Measure::lap, lap, "lap", "Lap of " + exact_mm_text(lap), tries);
    return;
  }
  const Um in = whole_steps(blades(about, material::kAssumedBladesToEdge));
  const bool is_panel = about.finding.part == Part::whole;
  add_measure(about, is_panel ? Measure::in_from_edge : Measure::stitch_in_from_edge, in, "row_in",
              (is_panel ? "Rows " : "Stitch rows ") + exact_mm_text(in) + " in", tries);
}

void rows_too_near(const About& about, Tries* tries) {
  const Um lap = measured(about.job, about.results, about.place, Measure::lap);
  const Um apart = blades(about, material::kAssumedBladesBetweenRows);
  const Um in =
      whole_steps(std::max(lap / 2 + apart, blades(about, material::kAssumedBladesToEdge)));
  add_measure(about, Measure::stitch_in_from_edge, in, "row_in",
              "Stitch rows " + exact_mm_text(in) + " in", tries);
}

void rows_cross(const About& about, Tries* tries) {
  const Um clear = material::kAssumedCornerClearUm;
  add_measure(about, Measure::corner_clear, clear, "corner_clear",
              "Stop " + exact_mm_text(clear) + " short", tries);
  add_answer(about, Question::corners, static_cast<int>(job::Corners::share_hole), "share_hole",
             "Share the corner hole", tries);
}

void short_last_gap(const About& about, Tries* tries) {
  const solve::Row& row = about.results.rows[static_cast<std::size_t>(about.finding.at.front())];
  const std::string rows = row.place == solve::RowPlace::lap ? "joining rows of " : "";
  job::Job job = row.place == solve::RowPlace::lap
                     ? with_lap_rule(about.job, about.results, about.place, job::SpacingRule::even)
                     : with_rule(about.job, about.results, about.place, job::SpacingRule::even);
  tries->push_back(Try{"even", "Even gaps", std::move(job),
                       "Chose even spacing for " + rows + name_of(about.results, about.place)});
}

/// The rows of a panel go on to the row line of its fly side.
void rows_run_on(const About& about, Tries* tries) {
  job::Job job = about.job;
  job::Panel& panel = panel_of(job, about.results, about.place);
  if (!panel.rows_stop_um) return;
  panel.rows_stop_um.reset();
  tries->push_back(Try{"rows_run_on", "Let the rows run on", std::move(job),
                       stop_action(name_of(about.results, about.place), std::nullopt)});
}

/// Every kept-clear end of the section no longer than leaves room for a row.
void row_not_laid(const About& about, Tries* tries) {
  const job::Section* section = section_at(about.job, about.results, about.place);
  if (section == nullptr) return rows_run_on(about, tries);
  const Um room = std::min(section->side_rows.staple.spacing_um, section->length_um / 2);
  const Um most = (section->length_um - room) / 2 / kStepUm * kStepUm;
  job::Job job = about.job;
  job::Section& changed = section_of(job, about.results, about.place);
  const auto hold = [most](std::array<Um, 2>* ends) {
    for (Um& end : *ends) end = std::min(end, most);
  };
  const auto hold_rows = [&hold](job::RowPair* rows) {
    hold(&rows->staple.kept_clear_um);
    hold(&rows->stitch.kept_clear_um);
  };
  hold_rows(&changed.side_rows);
  if (changed.lap_rows) hold_rows(&*changed.lap_rows);
  for (auto& [code, change] : changed.changes) {
    if (change.staple && change.staple->kept_clear_um) hold(&*change.staple->kept_clear_um);
    if (change.stitch && change.stitch->kept_clear_um) hold(&*change.stitch->kept_clear_um);
  }
  const std::string figure = exact_mm_text(most);
  tries->push_back(Try{"kept_clear", "Keep " + figure + " clear", std::move(job),
                       "Kept no more than " + figure + " clear at the ends of " +
                           name_of(about.results, about.place)});
}

void fly_side_row(const About& about, Tries* tries) {
  job::Job job = about.job;
  job::Panel& panel = panel_of(job, about.results, about.place);
  if (!panel.rows_on) return;
  auto& rows = *panel.rows_on;
  rows.erase(std::remove(rows.begin(), rows.end(), "fly_side"), rows.end());
  tries->push_back(Try{"fly_side", "Leave it unsewn", std::move(job),
                       "Left the fly side of " + name_of(about.results, about.place) + " unsewn"});
}

void code_missing(const About& about, Tries* tries) {
  const job::Section* section = section_at(about.job, about.results, about.place);
  if (section == nullptr || section->missing.size() != 1) return;
  add_answer(about, Question::put_back, 0, "put_back", "Put " + section->missing.front() + " back",
             tries);
}

Tries tries_for(const About& about) {
  struct Row {
    const char* code;
    void (*add)(const About&, Tries*);
  };
  constexpr std::array<Row, 10> kRows = {{{"staple_under_foot", staples_under_foot},
                                          {"row_near_edge", row_near_edge},
                                          {"rows_too_near", rows_too_near},
                                          {"rows_cross", rows_cross},
                                          {"short_last_gap", short_last_gap},
                                          {"row_not_laid", row_not_laid},
                                          {"fly_side_row", fly_side_row},
                                          {"code_missing", code_missing},
                                          {"rows_stop_soon", rows_run_on},
                                          {"rows_stop_beyond", rows_run_on}}};
  Tries tries;
  for (const Row& row : kRows) {
    if (about.finding.code == row.code) row.add(about, &tries);
  }
  return tries;
}

/// How much of each kind is found: stops weigh more than warnings, and each place counts.
using Found = std::map<std::string, std::int64_t>;

Found found_in(const solve::Results& results) {
  Found found;
  for (const Finding& finding : results.findings) {
    const std::int64_t weight = finding.severity == solve::Severity::stop   ? 1'000'000
                                : finding.severity == solve::Severity::warn ? 1'000
                                                                            : 1;
    const std::string kind = finding.code + (finding.part == Part::laps ? "+" : "");
    found[kind] += weight * std::max<std::int64_t>(std::ssize(finding.at), 1);
  }
  return found;
}

/// How many places the very same finding holds at.
std::int64_t places_of(const solve::Results& results, const Finding& finding) {
  for (const Finding& one : results.findings) {
    if (one.sentence == finding.sentence && one.part == finding.part &&
        one.severity == finding.severity) {
      return std::max<std::int64_t>(std::ssize(one.at), 1);
    }
  }
  return 0;
}

/// The finding is gone or holds at fewer places, nothing of its kind took its place, and there is
/// no more of any stop or warning than before.
bool helps(const About& about, const job::Job& job) {
  if (!job.sections.empty() && !no_room(job.sections.front()).empty()) return false;
  const solve::Results then = solve::solve(job);
  if (places_of(then, about.finding) >= places_of(about.results, about.finding)) return false;
  const Found before = found_in(about.results);
  constexpr std::int64_t kNotesOnly = 1'000;
  const std::string kind = about.finding.code + (about.finding.part == Part::laps ? "+" : "");
  for (const auto& [one, weight] : found_in(then)) {
    const auto was = before.find(one);
    const std::int64_t least = was == before.end() ? 0 : was->second;
    if (one == kind ? weight >= least : weight > least && weight >= kNotesOnly) return false;
  }
  return true;
}

/// The piece alone with the try done; the whole job takes it over.
job::Job in_whole_job(const Solved& now, int piece, const job::Job& alone) {
  job::Job job = now.job;
  const auto& of = now.results.pieces[static_cast<std::size_t>(piece)];
  const auto entry = static_cast<std::size_t>(of.entry);
  if (of.kind == solve::PieceKind::section)
    job.sections[entry] = alone.sections.front();
  else
    job.panels[entry] = alone.panels.front();
  return job;
}

/// Top and bottom rows of a panel stop where the slip comes to its limit in its bay, down to a half
/// millimetre: at or before that place. Nothing where too little of a row would be left.
std::vector<Remedy> stopped_rows(const Solved& now, int piece) {
  const std::optional<Um> stop = proposed_stop_um(now, piece);
  if (!stop) return {};
  Remedy remedy;
  remedy.id = "rows_stop";
  remedy.words = "Stop the rows at " + exact_mm_text(*stop);
  remedy.action = stop_action(name_of(now.results, {piece, -1}), stop);
  remedy.job = now.job;
  panel_of(remedy.job, now.results, {piece, -1}).rows_stop_um = stop;
  for (const Finding& one : solve::solve(remedy.job).findings) {
    const bool is_amiss = one.code == "row_not_laid" || one.code == "rows_stop_soon" ||
                          one.code == "row_in_slip_zone";
    if (one.piece == piece && is_amiss) return {};
  }
  return {std::move(remedy)};
}

}  // namespace

std::vector<Remedy> remedies_for(const Solved& now, const Finding& finding) {
  std::vector<Remedy> remedies;
  if (finding.piece < 0) return remedies;
  if (finding.code == "row_in_slip_zone") return stopped_rows(now, finding.piece);
  const Place whole{finding.piece, -1};
  const Alone alone = alone_of(now, whole);
  const auto found = std::find_if(
      alone.results.findings.begin(), alone.results.findings.end(), [&finding](const Finding& one) {
        return one.sentence == finding.sentence && one.place == finding.place;
      });
  if (found == alone.results.findings.end()) return remedies;
  const auto& piece = alone.results.pieces.front();
  Place place{0, piece.sleeves.size() == 1 ? 0 : -1};
  if (found->part == Part::sleeves && found->at.size() == 1) place.sleeve = found->at.front();
  const About about{alone.job, alone.results, *found, place};
  for (Try& one : tries_for(about)) {
    if (!helps(about, one.job)) continue;
    Remedy remedy;
    remedy.id = std::move(one.id);
    remedy.words = std::move(one.words);
    remedy.job = in_whole_job(now, finding.piece, one.job);
    remedy.action = std::move(one.action);
    remedies.push_back(std::move(remedy));
  }
  return remedies;
}

}  // namespace pouncemark::web

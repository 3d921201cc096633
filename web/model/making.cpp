#include "web/model/making.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/choices.h"
#include "web/model/making_codes.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr int kMostSleevesInJob = 20'000;  ///< both as the job file has them
constexpr int kMostPieces = 1'000;
constexpr Um kFirstLapUm = 18'000;
constexpr Um kLeastShownUm = 1'000;  ///< of a sleeve beside a lap
constexpr Um kMostSideUm = 20'000'000;

Um narrowest_um(const job::Section& section) {
  Um least = section.widths_um.front();
  for (const int number : job::sleeves_there(section)) {
    least = std::min(least, job::sleeve_width_um(section, number));
  }
  return least;
}

/// Two sleeves of two leaves each lie in a lap; the cloth ends short of it.
job::RowPair first_lap_rows(const job::Section& section) {
  job::RowPair rows = section.side_rows;
  rows.extras.clear();
  rows.staple.extras.clear();
  rows.stitch.extras.clear();
  rows.staple.in_from_edge_um = 0;
  rows.stitch.in_from_edge_um = 0;
  rows.staple.staples = job::StaplesOut::as_the_foot_comes;
  rows.stack_um = 4 * section.leaf_um;
  return rows;
}

/// What is said of a number that no longer exists goes with it.
void forget_beyond(job::Section& section) {
  std::map<std::string, job::SleeveChange> changes;
  std::vector<std::string> missing;
  for (int i = 0; i < section.count; ++i) {
    const std::string code = job::sleeve_code(section, i);
    const auto found = section.changes.find(code);
    if (found != section.changes.end()) changes[code] = found->second;
  }
  for (const std::string& code : section.missing) {
    for (int i = 0; i < section.count; ++i) {
      if (job::sleeve_code(section, i) == code) missing.push_back(code);
    }
  }
  section.changes = std::move(changes);
  section.missing = std::move(missing);
}

std::string laps_too_wide(const job::Section& section) {
  const Um least = narrowest_um(section);
  if (section.count == 1 || section.lap_um <= least - kLeastShownUm) return {};
  return "A lap of " + exact_mm_text(section.lap_um) + " is too wide: the narrowest sleeve is " +
         exact_mm_text(least) + " wide. Give a lap of " +
         exact_mm_text(std::max<Um>(least - kLeastShownUm, 0)) + " or less.";
}

std::string too_many(const job::Job& job) {
  std::int64_t sleeves = 0;
  for (const job::Section& section : job.sections) sleeves += section.count;
  if (sleeves <= kMostSleevesInJob) return {};
  return count_text(sleeves) + " sleeves in all are too many for one job: give fewer, at most " +
         count_text(kMostSleevesInJob) + ".";
}

/// Why the section cannot be as it stands in the job; empty where it can.
std::string plan_refused(const job::Job& job, const job::Section& section) {
  if (section.missing.size() == static_cast<std::size_t>(section.count)) {
    return "The sleeves left over are all missing: put one back first, or give more sleeves.";
  }
  std::string sentence = laps_too_wide(section);
  if (sentence.empty()) sentence = too_many(job);
  if (!sentence.empty()) return sentence;
  sentence = no_room(section);
  return sentence.empty() ? sentence : with_capital(sentence) + ". Give other widths.";
}

std::string over_words(job::Side side) { return side == job::Side::left ? "left" : "right"; }

/// "14 sleeves, was 9; lap 18, was 24".
std::string plan_words(const SectionPlan& was, const SectionPlan& is) {
  std::string words;
  const auto put = [&words](const std::string& part) {
    words += (words.empty() ? "" : "; ") + part;
  };
  if (was.count != is.count) {
    put(counted(is.count, "sleeve", "sleeves") + ", was " + count_text(was.count));
  }
  if (was.widths_um != is.widths_um) {
    put("widths " + widths_text(is.widths_um) + ", was " + widths_text(was.widths_um));
  }
  if (was.lap_um != is.lap_um) {
    put("lap " + exact_mm_text(is.lap_um) + ", was " + exact_mm_text(was.lap_um));
  }
  if (was.lies_over != is.lies_over) {
    put("each sleeve lies over its " + over_words(is.lies_over) + " neighbour");
  }
  return words;
}

SectionPlan as_it_stands(const job::Section& section) {
  return {section.count, section.widths_um, section.lap_um,
          job::left_lies_over(section) ? job::Side::right : job::Side::left};
}

/// A kind of piece is full.
std::string full(std::size_t count, const char* many) {
  if (count < kMostPieces) return {};
  return count_text(static_cast<std::int64_t>(count)) + " " + many +
         " are as many as a job takes: take one away first.";
}

}  // namespace

Made refused(const job::Job& job, int piece, std::string sentence) {
  Made made;
  made.job = job;
  made.refused = std::move(sentence);
  made.piece = piece;
  return made;
}

int piece_count(const job::Job& job) {
  return static_cast<int>(job.sections.size() + job.panels.size());
}

bool is_section(const job::Job& job, int piece) {
  return piece >= 0 && piece < static_cast<int>(job.sections.size());
}

std::string piece_words(const job::Job& job, int piece) {
  return (is_section(job, piece) ? "section " : "panel ") + code_of(job, piece);
}

SectionPlan plan_of(const job::Section& section) {
  SectionPlan plan = as_it_stands(section);
  if (plan.count > 1) return plan;
  plan.count = 2;
  plan.lap_um = std::min(kFirstLapUm, narrowest_um(section) / 2);
  return plan;
}

Made with_plan(const job::Job& job, int piece, const SectionPlan& plan) {
  if (!is_section(job, piece)) {
    return refused(job, piece, "A panel has no sleeves: choose a section.");
  }
  const CountEntry count = read_count(std::to_string(plan.count));
  if (count.count == 0) return refused(job, piece, count.sentence);
  if (plan.widths_um.empty() || plan.widths_um.size() > kMostSleevesOfSection) {
    return refused(job, piece, "No width: give one, or several in turn, \"110, 96, 110\".");
  }
  Made made = refused(job, piece, {});
  job::Section& section = made.job.sections[static_cast<std::size_t>(piece)];
  const SectionPlan was = as_it_stands(section);
  section.count = plan.count;
  section.widths_um = plan.widths_um;
  section.lap_um = plan.lap_um;
  if (was.lies_over != plan.lies_over) {
    section.lies_over.reset();
    if (plan.lies_over == job::Side::left) section.lies_over = plan.lies_over;
  }
  if (section.count > 1 && !section.lap_rows) section.lap_rows = first_lap_rows(section);
  forget_beyond(section);
  const std::string sentence = plan_refused(made.job, section);
  if (!sentence.empty()) return refused(job, piece, sentence);
  made.action = was.count == 1 && plan.count > 1
                    ? "Made section " + section.code + " of " + count_text(plan.count) +
                          " sleeves, widths " + widths_text(plan.widths_um) + ", lap " +
                          exact_mm_text(plan.lap_um)
                    : "Section " + section.code + ": " + plan_words(was, plan);
  return made;
}

Made with_section(const job::Job& job) {
  Made made =
      refused(job, static_cast<int>(job.sections.size()), full(job.sections.size(), "sections"));
  if (!made.refused.empty()) return made;
  job::Section section = job::first_sleeve_job().sections.front();
  if (!job.sections.empty()) section.length_um = job.sections.back().length_um;
  section.code = next_code(job, job.sections.empty() ? "" : job.sections.back().code, true);
  made.action = "Added section " + section.code + ", one sleeve";
  made.job.sections.push_back(std::move(section));
  made.refused = too_many(made.job);
  return made.refused.empty() ? made : refused(job, 0, made.refused);
}

Made with_panel(const job::Job& job, const PanelPlan& plan) {
  std::string sentence = full(job.panels.size(), "panels");
  for (const Um um : {plan.width_um, plan.length_um}) {
    if (um >= kLeastShownUm && um <= kMostSideUm) continue;
    sentence = exact_mm_text(um) + " is no side of a panel: give 1 to 20000.";
  }
  if (!sentence.empty()) return refused(job, 0, sentence);
  job::Panel panel;
  panel.backing_thickness_um = 1'000;
  panel.panel_in_um = 16'000;
  panel.spacing_um = 50'000;
  panel.stitch_um = 6'000;
  panel.stack_um = 3'900;
  if (!job.panels.empty()) {
    const job::Panel& last = job.panels.back();
    panel.backing_thickness_um = last.backing_thickness_um;
    panel.panel_in_um = last.panel_in_um;
    panel.spacing_um = last.spacing_um;
    panel.stitch_um = last.stitch_um;
    panel.stack_um = last.stack_um;
  }
  panel.backing_um = {plan.width_um, plan.length_um};
  panel.hinge_side = over_words(plan.hinge);
  panel.code = next_code(job, job.panels.empty() ? "" : job.panels.back().code, false);
  Made made = refused(job, piece_count(job), {});
  made.action = "Added panel " + panel.code + ", " + exact_mm_text(plan.width_um) + " " + kTimes +
                " " + exact_mm_text(plan.length_um) + ", hinge side at the " + panel.hinge_side;
  made.job.panels.push_back(std::move(panel));
  return made;
}

Made with_copy(const job::Job& job, int piece) {
  const bool of_section = is_section(job, piece);
  const std::string sentence =
      of_section ? full(job.sections.size(), "sections") : full(job.panels.size(), "panels");
  if (!sentence.empty()) return refused(job, piece, sentence);
  Made made = refused(job, piece + 1, {});
  if (!of_section) {
    const std::size_t index = static_cast<std::size_t>(piece) - job.sections.size();
    std::vector<job::Panel>& panels = made.job.panels;
    const std::string code = next_code(job, panels[index].code, false);
    made.action = "Copied panel " + panels[index].code + " as " + code;
    panels.insert(panels.begin() + static_cast<std::ptrdiff_t>(index) + 1, panels[index]);
    panels[index + 1].code = code;
    return made;
  }
  const auto index = static_cast<std::size_t>(piece);
  std::vector<job::Section>& sections = made.job.sections;
  const std::string code = next_code(job, sections[index].code, true);
  made.action = "Copied section " + sections[index].code + " as " + code;
  sections.insert(sections.begin() + piece + 1, job.sections[index]);
  give_code(sections[index + 1], code);
  made.refused = too_many(made.job);
  return made.refused.empty() ? made : refused(job, piece, made.refused);
}

Made with_piece_moved(const job::Job& job, int piece, int by) {
  const int sections = static_cast<int>(job.sections.size());
  const bool of_section = is_section(job, piece);
  const int first = of_section ? 0 : sections;
  const int last = (of_section ? sections : piece_count(job)) - 1;
  const int to = piece + by;
  if (to < first || to > last) {
    const std::string many = of_section ? "sections" : "panels";
    return refused(job, piece,
                   with_capital(piece_words(job, piece)) + " is the " +
                       (to < first ? "first" : "last") + " of the " + many +
                       ": panels stand after the sections. Move another piece.");
  }
  Made made = refused(job, to, {});
  const auto from = static_cast<std::size_t>(piece - first);
  const auto at = static_cast<std::size_t>(to - first);
  if (of_section)
    std::swap(made.job.sections[from], made.job.sections[at]);
  else
    std::swap(made.job.panels[from], made.job.panels[at]);
  made.action = "Moved " + piece_words(job, piece) + (by < 0 ? " earlier" : " later");
  return made;
}

Made without_piece(const job::Job& job, int piece) {
  Made made = refused(job, std::max(0, std::min(piece, piece_count(job) - 2)), {});
  const std::string code = code_of(job, piece);
  made.action = "Took " + piece_words(job, piece) + " away";
  for (job::Bay& bay : made.job.bays) {
    if (bay.stands_empty || bay.holds != code) continue;
    bay.stands_empty = true;
    made.action += "; bay " + bay.code + " stands empty";
  }
  if (is_section(job, piece)) {
    made.job.sections.erase(made.job.sections.begin() + piece);
  } else {
    const auto index = piece - static_cast<std::ptrdiff_t>(job.sections.size());
    made.job.panels.erase(made.job.panels.begin() + index);
  }
  return made;
}

}  // namespace pouncemark::web

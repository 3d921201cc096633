#include "web/model/curve_fixings.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

using job::FixingRow;

constexpr Limits kIn{0, 20'000'000};
constexpr Limits kSpacing{1'000, 20'000'000};

std::size_t at_of(int index) { return static_cast<std::size_t>(index); }

const FixingRow& row_of(const job::Job& job, int bay, int row) {
  return job.bays[at_of(bay)].fixings[at_of(row)];
}

Made begun(const job::Job& job, int bay) {
  Made made;
  made.job = job;
  made.piece = bay;
  return made;
}

FixingRow& row_in(Made& made, int bay, int row) {
  return made.job.bays[at_of(bay)].fixings[at_of(row)];
}

/// "Fixings of bay B2, hinge side".
std::string named(const job::Job& job, int bay, int row) {
  return "Fixings of bay " + job.bays[at_of(bay)].code + ", " +
         edge_said(row_of(job, bay, row).edge);
}

std::vector<std::string> edges_of(const Solved& now, int bay) {
  const int piece = now.results.bays[at_of(bay)].piece;
  const bool is_section =
      piece >= 0 && now.results.pieces[at_of(piece)].kind == solve::PieceKind::section;
  if (is_section) return {"left", "right", "top", "bottom"};
  return {"hinge_side", "fly_side", "top", "bottom"};
}

const solve::BayFixings* solved_row(const solve::BayResult& result, int row) {
  for (const solve::BayFixings& one : result.fixings) {
    if (one.entry == row) return &one;
  }
  return nullptr;
}

Um& figure_of(FixingRow& row, FixingBox box) {
  switch (box) {
    case FixingBox::in_from_edge:
      return row.in_from_edge_um;
    case FixingBox::clear_first:
      return row.kept_clear_um[0];
    case FixingBox::clear_last:
      return row.kept_clear_um[1];
    case FixingBox::spacing:
      break;
  }
  return row.spacing_um;
}

constexpr const char* kBoxWords[] = {"in from the edge", "kept clear at the first end",
                                     "kept clear at the last end", "spacing"};

FixingLine line_of(const solve::BayFixing& fixing) {
  FixingLine line;
  line.at = mm_text(fixing.station_um, 1);
  if (fixing.is_tight) {
    line.move = "0";
    line.slot = "round, tight";
    line.today = "in its hole";
    return line;
  }
  line.move = mm_text(std::llabs(fixing.move_um), 2);
  if (fixing.damp_um != 0) line.move += " + " + mm_text(std::llabs(fixing.damp_um), 2) + " damp";
  line.slot = mm_text(fixing.slot_shown_um, 1);
  const Um today = fixing.screw_today_um;
  line.today = today == 0 ? "in its middle"
                          : mm_text(std::llabs(today), 1) +
                                (today > 0 ? " away from the tight one" : " toward the tight one");
  return line;
}

void set_solved(const solve::BayResult& result, int row, FixingsView* view) {
  const solve::BayFixings* solved = solved_row(result, row);
  if (solved == nullptr || solved->run.is_empty) {
    view->said = result.piece < 0    ? "No slot can be said: nothing hangs in this bay."
                 : solved == nullptr ? "The piece has no such edge."
                                     : "No room for a fixing: the kept clear ends meet.";
    return;
  }
  view->said = counted(solved->run.points(), "fixing", "fixings") + ", " +
               mm_text(solved->run.spacing_um(), 1) + " apart";
  if (solved->tight < 0) {
    view->said += solved->tight_row < 0 ? "; no fixing of this bay is tight"
                                        : "; the tight one stands in another row";
  }
  for (const solve::BayFixing& fixing : solved->fixings) view->lines.push_back(line_of(fixing));
}

}  // namespace

std::string edge_said(std::string_view edge) {
  std::string words(edge);
  std::replace(words.begin(), words.end(), '_', ' ');
  return words;
}

FixingsView fixings_view(const Solved& now, int bay, int row) {
  FixingsView view;
  if (bay < 0) return view;
  const auto& rows = now.job.bays[at_of(bay)].fixings;
  const solve::BayResult& result = now.results.bays[at_of(bay)];
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const solve::BayFixings* solved = solved_row(result, static_cast<int>(i));
    const std::int64_t count = solved == nullptr ? 0 : solved->run.points();
    view.rows.push_back(with_capital(edge_said(rows[i].edge)) + ", " + std::to_string(count));
  }
  view.edges = edges_of(now, bay);
  view.said = "No fixing is entered. Screws in slots let the sheet grow and shrink.";
  if (rows.empty()) return view;
  view.chosen = std::clamp(row, 0, static_cast<int>(rows.size()) - 1);
  const FixingRow& of = rows[at_of(view.chosen)];
  view.edge = of.edge;
  view.in_from_edge = box_text(of.in_from_edge_um);
  view.clear_first = box_text(of.kept_clear_um[0]);
  view.clear_last = box_text(of.kept_clear_um[1]);
  view.spacing = box_text(of.spacing_um);
  view.tight = of.tight;
  view.is_across_grain = of.timber == job::TimberLies::across_grain;
  set_solved(result, view.chosen, &view);
  return view;
}

Made with_fixing_row(const Solved& now, int bay) {
  Made made = begun(now.job, bay);
  auto& rows = made.job.bays[at_of(bay)].fixings;
  FixingRow row;
  row.edge = edges_of(now, bay).front();
  for (const std::string& edge : edges_of(now, bay)) {
    const bool is_used = std::any_of(rows.begin(), rows.end(),
                                     [&](const FixingRow& one) { return one.edge == edge; });
    if (is_used) continue;
    row.edge = edge;
    break;
  }
  row.in_from_edge_um = 10'000;
  row.kept_clear_um = {30'000, 30'000};
  row.spacing_um = 300'000;
  // One fixing of a bay is tight, and all others move from it.
  const bool has_tight = std::any_of(
      rows.begin(), rows.end(), [](const FixingRow& one) { return one.tight != job::Tight::none; });
  row.tight = has_tight ? job::Tight::none : job::Tight::middle;
  rows.push_back(std::move(row));
  made.action = named(made.job, bay, static_cast<int>(rows.size()) - 1) + ": added";
  return made;
}

Made without_fixing_row(const job::Job& job, int bay, int row) {
  Made made = begun(job, bay);
  made.action = named(job, bay, row) + ": taken away";
  auto& rows = made.job.bays[at_of(bay)].fixings;
  rows.erase(rows.begin() + row);
  return made;
}

Made with_fixing_typed(const job::Job& job, int bay, int row, FixingBox box,
                       std::string_view typed) {
  Made made = begun(job, bay);
  Entry entry = read_entry(typed, box == FixingBox::spacing ? kSpacing : kIn);
  made.refused = std::move(entry.sentence);
  if (!entry.um) return made;
  Um& figure = figure_of(row_in(made, bay, row), box);
  made.action = named(job, bay, row) + ": " + kBoxWords[static_cast<int>(box)] + " " +
                exact_mm_text(figure) + " " + kArrow + " " + exact_mm_text(*entry.um);
  figure = *entry.um;
  return made;
}

Made with_fixing_edge(const job::Job& job, int bay, int row, const std::string& edge) {
  Made made = begun(job, bay);
  made.action = named(job, bay, row) + " " + kArrow + " " + edge_said(edge);
  row_in(made, bay, row).edge = edge;
  return made;
}

Made with_tight(const job::Job& job, int bay, int row, job::Tight tight) {
  Made made = begun(job, bay);
  constexpr const char* kWords[] = {"the first is tight", "the middle one is tight",
                                    "the last is tight", "none is tight"};
  made.action = named(job, bay, row) + ": " + kWords[static_cast<int>(tight)];
  row_in(made, bay, row).tight = tight;
  return made;
}

Made with_timber(const job::Job& job, int bay, int row, bool is_across_grain) {
  Made made = begun(job, bay);
  FixingRow& of = row_in(made, bay, row);
  of.timber = is_across_grain ? job::TimberLies::across_grain : job::TimberLies::along_grain;
  of.timber_is_said = true;
  made.action =
      named(job, bay, row) + ": timber " + (is_across_grain ? "across" : "along") + " its grain";
  return made;
}

}  // namespace pouncemark::web

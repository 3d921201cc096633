#include "web/model/curve_stop.h"

#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "web/model/entry.h"
#include "web/model/words.h"

namespace pouncemark::web {
namespace {

constexpr Limits kStop{1'000, 20'000'000};
constexpr Um kStepUm = 500;

/// The panel in a bay: its piece, or -1.
int panel_in(const Solved& solved, int bay) {
  const int piece = solved.results.bays[static_cast<std::size_t>(bay)].piece;
  if (piece < 0) return -1;
  const solve::Piece& of = solved.results.pieces[static_cast<std::size_t>(piece)];
  return of.kind == solve::PieceKind::panel ? piece : -1;
}

template <typename Job>
auto& panel_of_piece(Job& job, const solve::Results& results, int piece) {
  return job
      .panels[static_cast<std::size_t>(results.pieces[static_cast<std::size_t>(piece)].entry)];
}

std::string stop_text(std::optional<Um> stop) { return stop ? box_text(*stop) : "run on"; }

}  // namespace

std::optional<Um> proposed_stop_um(const Solved& now, int piece) {
  std::optional<Um> stop;
  for (const solve::BayResult& bay : now.results.bays) {
    if (bay.piece == piece && bay.stop_um && (!stop || *bay.stop_um < *stop)) stop = bay.stop_um;
  }
  if (!stop || *stop < kStepUm) return std::nullopt;
  return *stop / kStepUm * kStepUm;
}

std::string stop_action(const std::string& panel, std::optional<Um> stop) {
  if (!stop) return "Rows of " + panel + " run on to the fly side";
  return "Rows of " + panel + " stop " + exact_mm_text(*stop) + " from the hinge side";
}

StopLine stop_line(const Solved& now, const Solved* before, int bay) {
  StopLine line;
  const int piece = panel_in(now, bay);
  if (piece < 0) return line;
  const job::Panel& panel = panel_of_piece(now.job, now.results, piece);
  const std::optional<Um> proposed = proposed_stop_um(now, piece);
  line.is_entered = panel.rows_stop_um.has_value();
  line.is_there = line.is_entered || proposed;
  line.shown = stop_text(panel.rows_stop_um);
  if (before != nullptr) {
    for (const job::Panel& was : before->job.panels) {
      if (was.code == panel.code && was.rows_stop_um != panel.rows_stop_um)
        line.was = stop_text(was.rows_stop_um);
    }
  }
  if (line.is_entered) {
    line.button = "Let them run on";
  } else if (proposed) {
    line.offers = proposed;
    line.button = "Stop at " + exact_mm_text(*proposed);
  }
  return line;
}

Made with_rows_stop(const Solved& now, int bay, std::optional<Um> stop) {
  Made made;
  made.job = now.job;
  made.piece = bay;
  const int piece = panel_in(now, bay);
  if (piece < 0) {
    made.refused = "No panel hangs in this bay, so it has no rows that could stop.";
    return made;
  }
  job::Panel& panel = panel_of_piece(made.job, now.results, piece);
  panel.rows_stop_um = stop;
  made.action = stop_action("panel " + panel.code, stop);
  return made;
}

Made with_rows_stop_typed(const Solved& now, int bay, std::string_view typed) {
  Entry entry = read_entry(typed, kStop);
  if (entry.um) return with_rows_stop(now, bay, *entry.um);
  Made made;
  made.job = now.job;
  made.piece = bay;
  made.refused = std::move(entry.sentence);
  return made;
}

}  // namespace pouncemark::web

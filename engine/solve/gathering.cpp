#include <utility>

#include "engine/base/number_text.h"
#include "engine/solve/findings.h"

namespace pouncemark::solve {

void Gathering::add(std::optional<Finding> finding, const Asking& asking) {
  if (!finding) return;
  finding->piece = asking.piece;
  finding->part = asking.part;
  for (Kept& kept : kept_) {
    if (kept.finding.piece != asking.piece || kept.finding.sentence != finding->sentence) continue;
    if (kept.places.back() == asking.place) return;
    kept.places.push_back(asking.place);
    std::vector<int>& at = kept.finding.at;
    for (const int one : asking.at) {
      if (at.empty() || at.back() != one) at.push_back(one);
    }
    return;
  }
  finding->at = asking.at;
  kept_.push_back({std::move(*finding), {asking.place}});
}

void Gathering::move_to(Findings* findings, const std::string& what, const Results& results,
                        std::size_t every) {
  for (Kept& kept : kept_) {
    const Piece& piece = results.pieces[static_cast<std::size_t>(kept.finding.piece)];
    const std::size_t count = kept.places.size();
    std::string place = piece.kind == PieceKind::section ? "section " : "panel ";
    place += piece.code + ", ";
    if (count == 1) {
      place += kept.places[0];
    } else {
      place += count == every ? "all " : "";
      place += count_text(static_cast<std::int64_t>(count)) + " " + what;
    }
    kept.finding.place = std::move(place);
    findings->push_back(std::move(kept.finding));
  }
  kept_.clear();
}

}  // namespace pouncemark::solve

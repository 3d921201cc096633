#include "engine/plan/panel_card.h"

#include <algorithm>
#include <optional>

#include "engine/base/number_text.h"
#include "engine/material/assumed.h"
#include "engine/plan/card_findings.h"

namespace pouncemark::plan {
namespace {

using solve::BayResult;

/// The panel a card is of, and the bay it hangs in.
struct Source {
  const job::Job& job;
  const solve::Results& results;
  int index = 0;
  const BayResult* bay = nullptr;  ///< nullptr: no bay holds it

  const solve::Piece& piece() const { return results.pieces[static_cast<std::size_t>(index)]; }
  const job::Panel& panel() const { return job.panels[static_cast<std::size_t>(piece().entry)]; }
  job::ClothPlace cloth() const { return panel().cloth.value_or(job::ClothPlace()); }
};

const BayResult* bay_of(const solve::Results& results, int piece) {
  const auto found = std::find_if(results.bays.begin(), results.bays.end(),
                                  [piece](const BayResult& bay) { return bay.piece == piece; });
  return found == results.bays.end() ? nullptr : &*found;
}

/// Up to the next half: what is needed never comes out short.
std::string at_least_text(Um um) { return short_mm_text(divide_up(um, 500) * 500, 1); }

CardCell creep_cell(const Source& source) {
  const char* label = "cloth creeps at the fly side";
  if (source.bay == nullptr) return {label, "?", {}, "no bay holds it"};
  const std::string figure = short_mm_text(source.bay->creep_um, 1);
  if (source.bay->creep_um == 0) return {label, figure, "does not", "move"};
  return {label, figure, "moves", source.bay->moves_out ? "OUT" : "IN"};
}

/// Cloth that moves out needs so much bare backing beyond it.
CardCell surplus_cell(const Source& source, Um bare_um, bool is_assumed) {
  const char* label = "bare backing past the cloth";
  const std::string has = "has " + short_mm_text(bare_um, 1) + (is_assumed ? ", assumed" : "");
  if (source.bay == nullptr) return {label, "?", {}, has};
  return {label, at_least_text(source.bay->moves_out ? source.bay->creep_um : 0), "at least", has};
}

CardCell limit_cell(const Source& source) {
  const char* label = "may stay bent to a radius of";
  if (source.bay == nullptr) return {label, "?", {}, "no bay holds it"};
  return {label, at_least_text(source.bay->limit_um), "its bay",
          source.bay->is_flat() ? "is flat" : "has " + paper_text(source.bay->radius_um)};
}

/// The points to prick along a stitch row: those of the row laid just before it.
std::int64_t points_of(const Source& source, int stitch_row) {
  if (stitch_row == 0) return 0;
  const solve::Row& before = source.results.rows[static_cast<std::size_t>(stitch_row - 1)];
  const solve::Row& row = source.results.rows[static_cast<std::size_t>(stitch_row)];
  return before.kind == solve::RowKind::point && before.code == row.code ? before.run.points() : 0;
}

std::vector<PanelRow> rows_of(const Source& source) {
  std::vector<PanelRow> rows;
  for (int i = source.piece().first_row; i < source.piece().first_row + source.piece().row_count;
       ++i) {
    const solve::Row& row = source.results.rows[static_cast<std::size_t>(i)];
    if (row.kind != solve::RowKind::stitch || row.run.points() == 0) continue;
    std::string name = row.code.substr(source.piece().code.size() + 1);
    if (name.starts_with("hinge")) name.insert(5, " side");
    rows.push_back({i, name, short_mm_text(row.in_from_edge_um, 1), short_mm_text(row.stitch_um, 2),
                    count_text(points_of(source, i)), paper_text(row.run.first_um()),
                    paper_text(row.run.last_um())});
  }
  return rows;
}

std::string backing_line(const Source& source, const PanelCard& card) {
  const solve::Piece& piece = source.piece();
  const bool is_assumed = !source.cloth().in_from_edge_um || !source.cloth().in_from_fly_side_um;
  return "Backing " + short_mm_text(piece.width_um, 1) + " × " + short_mm_text(piece.length_um, 1) +
         ", " + short_mm_text(source.panel().backing_thickness_um, 2) + " thick. Cloth ends " +
         short_mm_text(card.cloth_in_um, 1) + " in from the sewn edges, " +
         short_mm_text(card.cloth_fly_in_um, 1) + " from the fly side" +
         (is_assumed ? ", assumed." : ".");
}

}  // namespace

PanelCard panel_card(const job::Job& job, const solve::Results& results, int piece,
                     bool is_face_down) {
  const Source source{job, results, piece, bay_of(results, piece)};
  const job::ClothPlace cloth = source.cloth();
  PanelCard card;
  card.job_name = job.name;
  card.code = source.piece().code;
  card.of = source.bay == nullptr ? "in no bay" : "in bay " + source.bay->code;
  card.piece = &source.piece();
  card.cloth_in_um = cloth.in_from_edge_um.value_or(material::kAssumedPanelClothInUm);
  card.cloth_fly_in_um = cloth.in_from_fly_side_um.value_or(material::kAssumedClothInFromFlySideUm);
  if (source.bay != nullptr && source.bay->creep_um > 0) {
    card.creep = source.bay->moves_out ? Creep::out : Creep::in;
  }
  card.cells = {creep_cell(source),
                surplus_cell(source, card.cloth_fly_in_um, !cloth.in_from_fly_side_um),
                limit_cell(source)};
  card.rows = rows_of(source);
  if (const std::optional<Um> stop = source.panel().rows_stop_um) {
    card.lines.push_back("Rows STOP at " + short_mm_text(*stop, 1) +
                         " from the hinge side; the rest stays free.");
  }
  card.lines.push_back(backing_line(source, card));
  card.band = fly_side_words(source.piece().outline, is_face_down);
  for (const solve::Finding& finding : results.findings) {
    if (finding.severity == solve::Severity::note || finding.piece != piece) continue;
    const bool is_stop = finding.severity == solve::Severity::stop;
    card.findings.push_back((is_stop ? "STOP " : "WARN ") + in_short(finding));
  }
  return card;
}

}  // namespace pouncemark::plan

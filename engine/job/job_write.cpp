#include <utility>

#include "engine/base/number_text.h"
#include "engine/base/sha256.h"
#include "engine/job/job_json.h"
#include "engine/job/job_words.h"
#include "engine/job/materials_json.h"
#include "engine/job/object_writer.h"

namespace pouncemark::job {
namespace {

std::optional<int> staples_word(StaplesOut staples) {
  if (staples == StaplesOut::not_said) return std::nullopt;
  return static_cast<int>(staples) - 1;
}

JsonNode staple_node(const StapleRow& row, bool on_edge) {
  ObjectWriter out;
  if (on_edge) out.put("in_from_edge_mm", mm(row.in_from_edge_um));
  out.put("kept_clear_mm", mm_list(row.kept_clear_um)).put("spacing_mm", mm(row.spacing_um));
  out.put("rule", word(words::kRule, static_cast<int>(row.rule)));
  if (row.left_over != LeftOver::end) {
    out.put("left_over", word(words::kLeftOver, static_cast<int>(row.left_over)));
  }
  out.maybe_word("staples", words::kStaples, staples_word(row.staples));
  return out.with(row.extras);
}

JsonNode stitch_node(const StitchRow& row, bool on_edge) {
  ObjectWriter out;
  if (on_edge) out.put("in_from_edge_mm", mm(row.in_from_edge_um));
  out.put("kept_clear_mm", mm_list(row.kept_clear_um)).put("stitch_mm", mm(row.stitch_um));
  return out.with(row.extras);
}

JsonNode pair_node(const RowPair& pair, bool on_edge) {
  ObjectWriter out;
  out.put("staple", staple_node(pair.staple, on_edge));
  out.put("stitch", stitch_node(pair.stitch, on_edge));
  out.put("stack_mm", mm(pair.stack_um));
  if (pair.stack_from_plies) out.put("stack_from", word(words::kStackFrom, 0));
  return out.with(pair.extras);
}

template <typename Enum>
std::optional<int> index_of(const std::optional<Enum>& value) {
  if (!value) return std::nullopt;
  return static_cast<int>(*value);
}

JsonNode staple_change_node(const StapleChange& change) {
  ObjectWriter out;
  out.maybe("in_from_edge_mm", change.in_from_edge_um);
  if (change.kept_clear_um) out.put("kept_clear_mm", mm_list(*change.kept_clear_um));
  out.maybe("spacing_mm", change.spacing_um);
  out.maybe_word("rule", words::kRule, index_of(change.rule));
  out.maybe_word("left_over", words::kLeftOver, index_of(change.left_over));
  if (change.staples) out.maybe_word("staples", words::kStaples, staples_word(*change.staples));
  return out.with(change.extras);
}

JsonNode stitch_change_node(const StitchChange& change) {
  ObjectWriter out;
  out.maybe("in_from_edge_mm", change.in_from_edge_um);
  if (change.kept_clear_um) out.put("kept_clear_mm", mm_list(*change.kept_clear_um));
  out.maybe("stitch_mm", change.stitch_um);
  return out.with(change.extras);
}

JsonNode change_node(const SleeveChange& change) {
  ObjectWriter out;
  out.maybe("width_mm", change.width_um);
  ObjectWriter rows;
  if (change.staple) rows.put("staple", staple_change_node(*change.staple));
  if (change.stitch) rows.put("stitch", stitch_change_node(*change.stitch));
  JsonNode side = rows.with(change.side_rows_extras);
  if (!side.members.empty()) out.put("side_rows", std::move(side));
  return out.with(change.extras);
}

JsonNode section_node(const Section& section) {
  ObjectWriter out;
  out.put("code", text(section.code));
  out.put("make", word(words::kMake, static_cast<int>(section.make)));
  out.maybe("fold_radius_mm", section.fold_radius_um).maybe("flange_mm", section.flange_um);
  out.maybe_word("sewn_side", words::kSide, index_of(section.sewn_side));
  out.put("length_mm", mm(section.length_um)).put("lap_mm", mm(section.lap_um));
  out.put("leaf_mm", mm(section.leaf_um)).put("widths_mm", mm_list(section.widths_um));
  out.put("count", count(section.count));
  out.maybe_word("lies_over", words::kSide, index_of(section.lies_over));
  if (!section.missing.empty()) out.put("missing", text_list(section.missing));
  if (section.side_seams != SideSeams::separate) {
    out.put("side_seams", word(words::kSideSeams, static_cast<int>(section.side_seams)));
  }
  out.maybe("width_tolerance_mm", section.width_tolerance_um);
  out.maybe("lap_tolerance_mm", section.lap_tolerance_um);
  out.put("side_rows", pair_node(section.side_rows, true));
  if (section.lap_rows) out.put("lap_rows", pair_node(*section.lap_rows, false));
  if (section.cloth) out.put("cloth", cloth_node(*section.cloth));
  if (!section.changes.empty()) {
    ObjectWriter changes;
    for (const auto& [code, change] : section.changes) changes.put(code, change_node(change));
    out.put("changes", changes.with({}));
  }
  return out.with(section.extras);
}

JsonNode outline_node(const std::vector<OutlineEdge>& outline) {
  JsonNode list;
  list.kind = JsonNode::Kind::list;
  for (const OutlineEdge& edge : outline) {
    ObjectWriter out;
    out.put("role", text(edge.role)).put("from_mm", mm_list(edge.from_um));
    if (edge.rise_um != 0) out.put("rise_mm", mm(edge.rise_um));
    list.items.push_back(out.with(edge.extras));
  }
  return list;
}

JsonNode panel_node(const Panel& panel) {
  ObjectWriter out;
  out.put("code", text(panel.code));
  if (panel.outline.empty()) {
    out.put("backing_mm", mm_list(panel.backing_um)).put("hinge_side", text(panel.hinge_side));
  } else {
    out.put("outline", outline_node(panel.outline));
  }
  out.put("backing_thickness_mm", mm(panel.backing_thickness_um));
  out.maybe("facing_thickness_mm", panel.facing_thickness_um);
  out.put("panel_in_mm", mm(panel.panel_in_um)).put("spacing_mm", mm(panel.spacing_um));
  out.put("stitch_mm", mm(panel.stitch_um)).put("stack_mm", mm(panel.stack_um));
  if (panel.stack_from_plies) out.put("stack_from", word(words::kStackFrom, 0));
  if (panel.cloth) out.put("cloth", cloth_node(*panel.cloth));
  if (panel.rows_on) out.put("rows_on", text_list(*panel.rows_on));
  if (panel.corners != Corners::share_hole) {
    out.put("corners", word(words::kCorners, static_cast<int>(panel.corners)));
  }
  out.maybe("corner_clear_mm", panel.corner_clear_um).maybe("rows_stop_mm", panel.rows_stop_um);
  return out.with(panel.extras);
}

JsonNode stations_node(const std::vector<std::array<Um, 2>>& stations) {
  JsonNode list;
  list.kind = JsonNode::Kind::list;
  for (const auto& station : stations) list.items.push_back(mm_list(station));
  return list;
}

template <typename Entry>
void put_entries(ObjectWriter& out, std::string_view key, const std::vector<Entry>& entries,
                 JsonNode (*node_of)(const Entry&)) {
  if (entries.empty()) return;
  JsonNode list;
  list.kind = JsonNode::Kind::list;
  for (const Entry& entry : entries) list.items.push_back(node_of(entry));
  out.put(key, std::move(list));
}

JsonNode fixing_row_node(const FixingRow& row) {
  ObjectWriter out;
  out.put("edge", text(row.edge)).put("in_from_edge_mm", mm(row.in_from_edge_um));
  out.put("kept_clear_mm", mm_list(row.kept_clear_um)).put("spacing_mm", mm(row.spacing_um));
  out.put("tight", word(words::kTight, static_cast<int>(row.tight)));
  if (row.timber_is_said) {
    out.put("timber", word(words::kTimberLies, static_cast<int>(row.timber)));
  }
  return out.with(row.extras);
}

JsonNode bay_node(const Bay& bay) {
  ObjectWriter out;
  out.put("code", text(bay.code))
      .put("chord_mm", mm(bay.chord_um))
      .put("rise_mm", mm(bay.rise_um))
      .put("face", text(bay.face))
      .put("holds", text(bay.holds));
  if (bay.stands_empty) out.put("stands", word(words::kStands, 0));
  if (!bay.stations_um.empty()) out.put("stations_mm", stations_node(bay.stations_um));
  out.maybe("taped_along_mm", bay.taped_along_um);
  put_entries(out, "fixings", bay.fixings, fixing_row_node);
  return out.with(bay.extras);
}

}  // namespace

std::string save_job(const Job& job) {
  ObjectWriter out;
  out.put("format", text(words::kFormat)).put("version", count(words::kVersion));
  out.put("name", text(job.name));
  out.put("spacing_from", word(words::kSpacingFrom, job.spacing_is_clear_gap ? 1 : 0));
  out.put("needle_size", count(job.needle_size)).put("thread_tex", count(job.thread_tex));
  out.put("tails_mm", mm(job.tails_um)).put("slip_distance_mm", mm(job.slip_distance_um));
  out.maybe("crown_mm", job.crown_um).maybe("wire_mm", job.wire_um);
  out.maybe("half_foot_mm", job.half_foot_um);
  out.maybe("foot_tolerance_mm", job.foot_tolerance_um);
  if (!job.materials.is_empty()) out.put("materials", materials_node(job.materials));
  put_entries(out, "trials", job.trials, trial_node);
  put_entries(out, "bays", job.bays, bay_node);
  put_entries(out, "sections", job.sections, section_node);
  put_entries(out, "panels", job.panels, panel_node);
  return json_text(out.with(job.extras)) + "\n";
}

std::string checksum(const Job& job) { return sha256_hex(save_job(job)).substr(0, 12); }

}  // namespace pouncemark::job

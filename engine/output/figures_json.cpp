#include <nlohmann/json.hpp>

#include "engine/base/insist.h"
#include "engine/job/job_json.h"
#include "engine/output/output.h"
#include "engine/solve/alike.h"
#include "engine/solve/seam_choice.h"
#include "engine/solve/sewing.h"

namespace pouncemark::output {
namespace {

using nlohmann::json;

/// Micrometres as millimetres: at most three decimals, whole ones as whole numbers.
json mm(Um um) {
  if (um % 1000 == 0) return um / 1000;
  return static_cast<double>(um) / 1000.0;
}

/// Micrometres as metres with three decimals.
json metres(Um um) { return mm(divide_round(um, 1000)); }

json mm_list(const std::vector<Um>& lengths) {
  json list = json::array();
  for (const Um um : lengths) list.push_back(mm(um));
  return list;
}

/// Counts of sections and panels, by kind of piece.
struct PerKind {
  std::int64_t sections = 0;
  std::int64_t panels = 0;
};

json per_kind_json(const PerKind& counts) {
  return {{"A4", {{"sections", counts.sections}, {"panels", counts.panels}}}};
}

json totals_json(const job::Job& job, const solve::Results& results) {
  const solve::Totals& totals = results.totals;
  PerKind all;
  PerKind out;
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    const Result<FullFacePages> pages = full_face_grid(job, results, static_cast<int>(i), "A4");
    INSIST(pages.is_ok());
    const bool is_section = results.pieces[i].kind == solve::PieceKind::section;
    (is_section ? all.sections : all.panels) += pages->all();
    (is_section ? out.sections : out.panels) += pages->out();
  }
  return {{"side_staples", totals.side_staples}, {"lap_staples", totals.lap_staples},
          {"side_rows", totals.side_rows},       {"lap_rows", totals.lap_rows},
          {"panel_rows", totals.panel_rows},     {"stitch_holes", totals.stitch_holes},
          {"panel_points", totals.panel_points}, {"row_m", metres(totals.row_um)},
          {"pages", per_kind_json(all)},         {"pages_left_out", per_kind_json(out)}};
}

/// Thread of each of the two threads, rows a bobbin lasts (null where no row is sewn), and bobbins.
void add_sewing(const job::Job& job, const solve::Results& results, json* totals) {
  const solve::Sewing sewing = solve::sewing_of(job, results);
  (*totals)["thread_each_m"] = metres(sewing.thread_each_um);
  json& rows = (*totals)["rows_per_bobbin"];
  if (sewing.rows_per_bobbin) rows = *sewing.rows_per_bobbin;
  const auto fills = [&sewing](solve::RowPlace place) -> json {
    if (sewing.not_known_of(place) > 0) return nullptr;
    return sewing.fills_of(place);
  };
  (*totals)["bobbin_fills"] = {{"side_rows", fills(solve::RowPlace::side)},
                               {"lap_rows", fills(solve::RowPlace::lap)},
                               {"panel_rows", fills(solve::RowPlace::panel)}};
  const std::int64_t not_known = sewing.all_not_known();
  if (not_known > 0) (*totals)["rows_of_stack_not_known"] = not_known;
}

/// The neighbour `step` places to the right, or null at the section's edge.
json neighbour(const solve::Piece& piece, std::size_t at, int step) {
  const bool is_last = step < 0 ? at == 0 : at + 1 == piece.sleeves.size();
  if (is_last) return nullptr;
  return piece.sleeves[step < 0 ? at - 1 : at + 1].code;
}

json sleeve_json(const solve::Piece& piece, std::size_t at) {
  const solve::Sleeve& sleeve = piece.sleeves[at];
  json entry = {{"code", sleeve.code},
                {"kind", "sleeve"},
                {"width_mm", mm(sleeve.width_um)},
                {"length_mm", mm(piece.length_um)},
                {"left_mm", mm(sleeve.left_um)},
                {"blanks", sleeve.blank.count},
                {"blank_mm", mm(sleeve.blank.width_um)},
                {"left_neighbour", neighbour(piece, at, -1)},
                {"right_neighbour", neighbour(piece, at, 1)}};
  if (sleeve.blank.fold_um > 0) entry["fold_mm"] = mm(sleeve.blank.fold_um);
  return entry;
}

json seams_json(const job::Job& job) {
  const auto count = [&job](job::SideSeams seams) -> json {
    const solve::SeamCount all = solve::count_seams(job, seams);
    return {{"rows", all.rows},
            {"stitch_holes", all.stitch_holes},
            {"staples", all.staples},
            {"row_m", metres(all.row_um)}};
  };
  return {{"separate", count(job::SideSeams::separate)}, {"shared", count(job::SideSeams::shared)}};
}

void add_pieces(const solve::Piece& piece, json* list) {
  json entry = {{"code", piece.code},
                {"kind", piece.kind == solve::PieceKind::section ? "section" : "panel"},
                {"width_mm", mm(piece.width_um)},
                {"length_mm", mm(piece.length_um)}};
  if (piece.kind == solve::PieceKind::section) {
    entry["row_middles_mm"] = mm_list(piece.row_middles_um);
    entry["running_totals_mm"] = mm_list(piece.running_totals_um);
    entry["likely_mm"] = mm(piece.likely_um);
    entry["worst_mm"] = mm(piece.worst_um);
  }
  list->push_back(std::move(entry));
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) list->push_back(sleeve_json(piece, i));
}

const char* kind_word(solve::RowKind kind) {
  switch (kind) {
    case solve::RowKind::staple:
      return "staple";
    case solve::RowKind::stitch:
      return "stitch";
    case solve::RowKind::point:
      return "point";
  }
  return "";
}

json row_json(const solve::Row& row) {
  json entry = {{"code", row.code},
                {"kind", kind_word(row.kind)},
                {"points", row.run.points()},
                {"gaps", row.run.gaps},
                {"spacing_mm", mm(row.run.spacing_um())},
                {"first_mm", mm(row.run.first_um())},
                {"last_mm", mm(row.run.last_um())}};
  if (row.run.left_over_um > 0) entry["left_over_mm"] = mm(row.run.left_over_um);
  if (row.kind == solve::RowKind::stitch) {
    if (row.stack_um > 0) entry["stack_mm"] = mm(row.stack_um);
    if (!row.stack_is_typed) entry["stack_typed"] = false;
  }
  if (row.first_is_shared) entry["shares_first_point"] = true;
  if (row.stops_um > 0) entry["stops_from_hinge_mm"] = mm(row.stops_um);
  return entry;
}

json push_json(const solve::MiddlePush& push) {
  return {{"small_n", mm(push.small_mn)}, {"exact_n", mm(push.exact_mn)}};
}

/// Thousandths of a newton are written like those of a millimetre.
json force_json(const solve::BayForce& force) {
  json entry = {{"push_n", mm(force.shown_mn)},
                {"push_is_exact", force.is_beyond_small},
                {"slipping", push_json(force.slipping)},
                {"locked", push_json(force.locked)},
                {"people", force.people},
                {"rank", force.rank}};
  json& plies = entry["plies"] = json::array();
  for (const solve::BayPly& ply : force.plies) {
    json one = push_json(ply.push);
    one["item"] = material::item_key(ply.item);
    one["count"] = ply.count;
    one["thickness_mm"] = mm(ply.thickness_um);
    plies.push_back(std::move(one));
  }
  return entry;
}

json fixings_json(const solve::BayFixings& row) {
  json entry = {{"edge", row.edge}, {"spacing_mm", mm(row.run.spacing_um())}};
  entry["tight"] = row.tight < 0 ? json() : json(row.tight + 1);
  json& list = entry["fixings"] = json::array();
  for (const solve::BayFixing& fixing : row.fixings) {
    json one = {{"station_mm", mm(fixing.station_um)},
                {"x_mm", mm(fixing.x_um)},
                {"y_mm", mm(fixing.y_um)}};
    if (!fixing.is_tight) {
      one["from_tight_mm"] = mm(fixing.from_tight_um);
      one["move_mm"] = mm(fixing.move_um);
      if (fixing.damp_um > 0) one["damp_mm"] = mm(fixing.damp_um);
      one["slot_mm"] = mm(fixing.slot_um);
      one["slot_shown_mm"] = mm(fixing.slot_shown_um);
      one["screw_today_mm"] = mm(fixing.screw_today_um);
    }
    list.push_back(std::move(one));
  }
  return entry;
}

/// Milligrams are written as grams.
json loads_json(const solve::BayLoads& loads) {
  json entry = {{"mass_g", mm(loads.mass_mg)},
                {"weight_n", mm(loads.weight_mn)},
                {"is_whole", loads.is_whole},
                {"sewn_g", mm(loads.sewn_mg)},
                {"corner_n", mm(loads.corner_mn)},
                {"corner_least_n", mm(loads.corner_least_mn)},
                {"corner_most_n", mm(loads.corner_most_mn)}};
  for (const solve::BayWeight& part : loads.parts) {
    json& one = entry["parts_g"][std::string(material::item_key(part.item))];
    if (part.is_known) one = mm(part.mass_mg);
  }
  if (loads.stitches > 0) {
    entry["stitches"] = loads.stitches;
    entry["per_stitch_n"] = mm(loads.per_stitch_mn);
  }
  if (loads.fixing_row >= 0) entry["fixings_n"] = mm_list(loads.fixings_mn);
  return entry;
}

/// Thousandths of a degree or a percent are written like those of a millimetre.
json bay_json(const solve::BayResult& bay) {
  json entry = {{"code", bay.code},
                {"turn_deg", mm(bay.turn_mdeg)},
                {"along_mm", mm(bay.along_um)},
                {"extra_mm", mm(bay.extra_um)},
                {"creep_mm", mm(bay.creep_um)},
                {"creep_way", bay.creep_um == 0 ? "none"
                              : bay.moves_out   ? "out"
                                                : "in"},
                {"ease_percent", mm(bay.ease)}};
  entry["radius_mm"] = bay.is_flat() ? json() : mm(bay.radius_um);
  if (bay.is_by_stations) {
    entry["slip_most_mm"] = mm(bay.slip_most_um);
    entry["radius_out_by_percent"] = mm(bay.radius_out_by);
  }
  if (bay.stop_um) entry["stop_from_hinge_mm"] = mm(*bay.stop_um);
  if (bay.moves_out) entry["sewn_all_round_bulge_mm"] = mm(bay.bulge_um);
  if (bay.piece < 0) return entry;
  entry["room_mm"] = mm(bay.room_um);
  entry["stay_bent_limit_mm"] = mm(bay.limit_um);
  if (!bay.is_flat()) entry["spare_percent"] = mm(bay.spare);
  if (bay.force) entry["force"] = force_json(*bay.force);
  if (bay.loads) entry["loads"] = loads_json(*bay.loads);
  if (bay.fixings.empty()) return entry;
  json& rows = entry["fixings"] = json::array();
  for (const solve::BayFixings& row : bay.fixings) rows.push_back(fixings_json(row));
  return entry;
}

}  // namespace

const char* severity_word(solve::Severity severity) {
  switch (severity) {
    case solve::Severity::stop:
      return "stop";
    case solve::Severity::warn:
      return "warn";
    case solve::Severity::note:
      return "note";
  }
  return "";
}

std::string figures_json(const job::Job& job, const solve::Results& results) {
  json figures;
  figures["job"] = {{"name", job.name}, {"checksum", job::checksum(job)}};
  figures["totals"] = totals_json(job, results);
  add_sewing(job, results, &figures["totals"]);
  figures["side_seams"] = seams_json(job);
  json& pieces = figures["pieces"] = json::array();
  for (const solve::Piece& piece : results.pieces) add_pieces(piece, &pieces);
  json& rows = figures["rows"] = json::array();
  for (const solve::Row& row : results.rows) rows.push_back(row_json(row));
  json& bays = figures["bays"] = json::array();
  for (const solve::BayResult& bay : results.bays) bays.push_back(bay_json(bay));
  json& findings = figures["findings"] = json::array();
  for (const solve::Finding& finding : results.findings) {
    findings.push_back({{"code", finding.code},
                        {"severity", severity_word(finding.severity)},
                        {"place", finding.place},
                        {"sentence", finding.sentence}});
  }
  return figures.dump(1) + "\n";
}

std::string check_lines(const solve::Results& results) {
  std::string lines;
  for (const solve::Finding& finding : solve::alike_as_one(results)) {
    lines += std::string(severity_word(finding.severity)) + ": " + finding.place + ": " +
             finding.sentence;
    if (!finding.change.empty()) lines += " " + finding.change;
    if (!finding.sum.empty()) lines += " [" + finding.sum + "]";
    lines += "\n";
  }
  return lines;
}

}  // namespace pouncemark::output

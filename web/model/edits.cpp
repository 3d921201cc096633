#include "web/model/edits.h"

#include <cstddef>

#include "engine/base/number_text.h"
#include "web/model/changes.h"

namespace pouncemark::web {
namespace {

bool equal_ends(const std::array<Um, 2>& ends) { return ends[0] == ends[1]; }

bool all_four_equal(const job::RowPair& rows) {
  return equal_ends(rows.staple.kept_clear_um) &&
         rows.staple.kept_clear_um == rows.stitch.kept_clear_um;
}

void set_ends(job::Section& section, int number, std::size_t end, Um um) {
  const job::RowPair rows = rows_of(section, number);
  std::array<Um, 2> ends = rows.staple.kept_clear_um;
  const bool both = equal_ends(ends);
  ends[end] = um;
  if (both) ends = {um, um};
  const bool along = section.count == 1 && all_four_equal(rows);
  if (is_alone(section, number)) {
    section.side_rows.staple.kept_clear_um = ends;
    if (along) section.side_rows.stitch.kept_clear_um = ends;
    return;
  }
  staple_change(section, number).kept_clear_um = ends;
  if (along) stitch_change(section, number).kept_clear_um = ends;
}

void set_stitch_ends(job::Section& section, int number, std::size_t end, Um um) {
  std::array<Um, 2> ends = rows_of(section, number).stitch.kept_clear_um;
  const bool both = equal_ends(ends);
  ends[end] = um;
  if (both) ends = {um, um};
  if (is_alone(section, number))
    section.side_rows.stitch.kept_clear_um = ends;
  else
    stitch_change(section, number).kept_clear_um = ends;
}

void set_on_rows(job::Section& section, int number, Measure measure, Um um) {
  job::RowPair& all = section.side_rows;
  const bool alone = is_alone(section, number);
  if (measure == Measure::in_from_edge) {
    if (alone)
      all.staple.in_from_edge_um = um;
    else
      staple_change(section, number).in_from_edge_um = um;
  } else if (measure == Measure::stitch_in_from_edge) {
    if (alone)
      all.stitch.in_from_edge_um = um;
    else
      stitch_change(section, number).in_from_edge_um = um;
  } else if (measure == Measure::spacing) {
    if (alone)
      all.staple.spacing_um = um;
    else
      staple_change(section, number).spacing_um = um;
  } else if (measure == Measure::stitch) {
    if (alone)
      all.stitch.stitch_um = um;
    else
      stitch_change(section, number).stitch_um = um;
  }
}

void set_width(job::Section& section, int number, Um um) {
  if (is_alone(section, number)) {
    if (section.count == 1) section.widths_um = {um};
    return;
  }
  change_of(section, number).width_um = um;
}

/// Both ends of the joining rows while they are alike, and the staples' ends with them while all
/// four are.
void set_lap_ends(job::Section& section, std::size_t end, Um um) {
  if (!section.lap_rows) return;
  job::RowPair& rows = *section.lap_rows;
  const bool along = all_four_equal(rows);
  std::array<Um, 2>& ends = rows.stitch.kept_clear_um;
  const bool both = equal_ends(ends);
  ends[end] = um;
  if (both) ends = {um, um};
  if (along) rows.staple.kept_clear_um = ends;
}

void set_on_section(job::Section& section, int number, Measure measure, Um um) {
  switch (measure) {
    case Measure::length:
      section.length_um = um;
      return;
    case Measure::lap:
      section.lap_um = um;
      return;
    case Measure::width:
      set_width(section, number, um);
      return;
    case Measure::kept_clear_bottom:
      set_ends(section, number, 0, um);
      return;
    case Measure::kept_clear_top:
      set_ends(section, number, 1, um);
      return;
    case Measure::stitch_clear_bottom:
      set_stitch_ends(section, number, 0, um);
      return;
    case Measure::stitch_clear_top:
      set_stitch_ends(section, number, 1, um);
      return;
    case Measure::lap_kept_clear_bottom:
      set_lap_ends(section, 0, um);
      return;
    case Measure::lap_kept_clear_top:
      set_lap_ends(section, 1, um);
      return;
    case Measure::lap_spacing:
      if (section.lap_rows) section.lap_rows->staple.spacing_um = um;
      return;
    case Measure::fold_radius:
      section.fold_radius_um = um;
      return;
    case Measure::flange:
      section.flange_um = um;
      return;
    default:
      set_on_rows(section, number, measure, um);
  }
}

void set_on_panel(job::Panel& panel, Measure measure, Um um) {
  switch (measure) {
    case Measure::length:
      if (panel.outline.empty()) panel.backing_um[1] = um;
      return;
    case Measure::width:
      if (panel.outline.empty()) panel.backing_um[0] = um;
      return;
    case Measure::in_from_edge:
      panel.panel_in_um = um;
      return;
    case Measure::spacing:
      panel.spacing_um = um;
      return;
    case Measure::stitch:
      panel.stitch_um = um;
      return;
    case Measure::corner_clear:
      panel.corner_clear_um = um;
      return;
    default:
      return;
  }
}

Um on_section(const job::Section& section, int number, Measure measure) {
  const job::RowPair rows = rows_of(section, number);
  switch (measure) {
    case Measure::length:
      return section.length_um;
    case Measure::lap:
      return section.lap_um;
    case Measure::width:
      return job::sleeve_width_um(section, number < 0 ? 0 : number);
    case Measure::in_from_edge:
      return rows.staple.in_from_edge_um;
    case Measure::stitch_in_from_edge:
      return rows.stitch.in_from_edge_um;
    case Measure::spacing:
      return rows.staple.spacing_um;
    case Measure::stitch:
      return rows.stitch.stitch_um;
    case Measure::kept_clear_bottom:
      return rows.staple.kept_clear_um[0];
    case Measure::kept_clear_top:
      return rows.staple.kept_clear_um[1];
    case Measure::stitch_clear_bottom:
      return rows.stitch.kept_clear_um[0];
    case Measure::stitch_clear_top:
      return rows.stitch.kept_clear_um[1];
    case Measure::fold_radius:
      return section.fold_radius_um.value_or(0);
    case Measure::flange:
      return section.flange_um.value_or(0);
    case Measure::lap_kept_clear_bottom:
      return section.lap_rows ? section.lap_rows->stitch.kept_clear_um[0] : 0;
    case Measure::lap_kept_clear_top:
      return section.lap_rows ? section.lap_rows->stitch.kept_clear_um[1] : 0;
    case Measure::lap_spacing:
      return section.lap_rows ? section.lap_rows->staple.spacing_um : 0;
    case Measure::corner_clear:
      return 0;
  }
  return 0;
}

Um on_panel(const solve::Piece& piece, const job::Panel& panel, Measure measure) {
  switch (measure) {
    case Measure::length:
      return piece.length_um;
    case Measure::width:
      return piece.width_um;
    case Measure::in_from_edge:
    case Measure::stitch_in_from_edge:
      return panel.panel_in_um;
    case Measure::spacing:
      return panel.spacing_um;
    case Measure::stitch:
      return panel.stitch_um;
    case Measure::corner_clear:
      return panel.corner_clear_um.value_or(material::kAssumedCornerClearUm);
    default:
      return 0;
  }
}

}  // namespace

Um measured(const job::Job& job, const solve::Results& results, Place place, Measure measure) {
  if (const job::Section* section = section_at(job, results, place)) {
    return on_section(*section, number_at(results, place), measure);
  }
  if (const job::Panel* panel = panel_at(job, results, place)) {
    return on_panel(results.pieces[static_cast<std::size_t>(place.piece)], *panel, measure);
  }
  return 0;
}

job::Job with_measure(const job::Job& job, const solve::Results& results, Place place,
                      Measure measure, Um um) {
  job::Job changed_job = job;
  if (section_at(job, results, place) != nullptr) {
    set_on_section(section_of(changed_job, results, place), number_at(results, place), measure, um);
  } else if (panel_at(job, results, place) != nullptr) {
    set_on_panel(panel_of(changed_job, results, place), measure, um);
  }
  return changed_job;
}

job::Job with_rule(const job::Job& job, const solve::Results& results, Place place,
                   job::SpacingRule rule) {
  job::Job changed_job = job;
  if (section_at(job, results, place) == nullptr) return changed_job;
  job::Section& section = section_of(changed_job, results, place);
  const int number = number_at(results, place);
  if (is_alone(section, number))
    section.side_rows.staple.rule = rule;
  else
    staple_change(section, number).rule = rule;
  return changed_job;
}

job::SpacingRule rule_at(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  return section == nullptr ? job::SpacingRule::even
                            : rows_of(*section, number_at(results, place)).staple.rule;
}

bool ends_move_together(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  return section != nullptr &&
         equal_ends(rows_of(*section, number_at(results, place)).staple.kept_clear_um);
}

bool stitch_ends_differ(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  if (section == nullptr) return false;
  const job::RowPair rows = rows_of(*section, number_at(results, place));
  return rows.staple.kept_clear_um != rows.stitch.kept_clear_um;
}

bool stitch_rows_go_along(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  return section != nullptr && section->count == 1 &&
         all_four_equal(rows_of(*section, number_at(results, place)));
}

bool ends_differ_from_section(const job::Job& job, const solve::Results& results, Place place) {
  const job::Section* section = section_at(job, results, place);
  return section != nullptr && section->count > 1 && place.sleeve >= 0 &&
         rows_of(*section, number_at(results, place)).staple.kept_clear_um !=
             section->side_rows.staple.kept_clear_um;
}

job::Job with_ends_of_all(const job::Job& job, const solve::Results& results, Place place) {
  job::Job changed_job = job;
  if (section_at(job, results, place) == nullptr) return changed_job;
  job::Section& section = section_of(changed_job, results, place);
  section.side_rows.staple.kept_clear_um =
      rows_of(section, number_at(results, place)).staple.kept_clear_um;
  for (auto& [code, change] : section.changes) {
    if (change.staple) change.staple->kept_clear_um.reset();
  }
  return changed_job;
}

std::string name_of(const solve::Results& results, Place place) {
  if (results.pieces.empty()) return "nothing";
  if (is_whole_hanging(place)) return "the whole hanging";
  const solve::Piece& piece = results.pieces[static_cast<std::size_t>(place.piece)];
  if (piece.kind == solve::PieceKind::panel) return "panel " + piece.code;
  if (place.sleeve < 0) return "section " + piece.code;
  return "sleeve " + sleeve_at(results, place)->code;
}

}  // namespace pouncemark::web

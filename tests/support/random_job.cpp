#include <algorithm>
#include <array>

#include "tests/support/jobs.h"

namespace pouncemark::tests {
namespace {

using job::Extras;
using job::JsonNode;

Um length_of(Dice& dice, Um least, Um most) {
  const Um um = dice.of_any_size(least, most);
  return dice.once_in(2) ? um : um - um % 500 > least ? um - um % 500 : um;
}

/// Any words; those of a name hold no control sign.
std::string words_of(Dice& dice, bool of_a_name) {
  const std::array<const char*, 8> parts = {"a", "7", "\"", "\\", "\u00e9", " ", "\n", "\x01"};
  std::string words = "k";
  const std::int64_t count = dice.between(0, 130);
  for (std::int64_t i = 0; i < count; ++i) {
    const std::int64_t part = dice.between(0, of_a_name ? 5 : 7);
    words += parts[static_cast<std::size_t>(part)];
  }
  return words;
}

JsonNode any_value(Dice& dice, int deep) {
  JsonNode node;
  const std::int64_t kind = dice.between(0, deep > 3 ? 3 : 5);
  node.kind = static_cast<JsonNode::Kind>(kind);
  const std::array<const char*, 6> figures = {"0", "-12", "2.50", "1e-7", "18446744073709551616",
                                              "7"};
  const std::int64_t figure = dice.between(0, 5);
  if (node.kind == JsonNode::Kind::boolean) node.truth = dice.once_in(2);
  if (node.kind == JsonNode::Kind::number) node.words = figures[static_cast<std::size_t>(figure)];
  if (node.kind == JsonNode::Kind::text) node.words = words_of(dice, false);
  const std::int64_t count = deep > 3 ? 0 : dice.between(0, 4);
  for (std::int64_t i = 0; i < count; ++i) {
    if (node.kind == JsonNode::Kind::list) node.items.push_back(any_value(dice, deep + 1));
    if (node.kind == JsonNode::Kind::object) {
      const std::string key = words_of(dice, false) + std::to_string(i);
      node.members.emplace_back(key, any_value(dice, deep + 1));
    }
  }
  return node;
}

Extras some_extras(Dice& dice) {
  Extras extras;
  if (!dice.once_in(6)) return extras;
  extras.emplace_back("a remark", any_value(dice, 0));
  if (dice.once_in(2)) extras.emplace_back("\u0141 \"two\"", any_value(dice, 0));
  return extras;
}

std::array<Um, 2> pair_of(Dice& dice) {
  const Um first = length_of(dice, 0, 60'000);
  const Um second = length_of(dice, 0, 60'000);
  return {first, second};
}

template <typename Enum>
Enum any_of(Dice& dice, std::int64_t last) {
  return static_cast<Enum>(dice.between(0, last));
}

job::RowPair any_rows(Dice& dice, bool on_edge) {
  job::RowPair rows;
  if (on_edge) rows.staple.in_from_edge_um = length_of(dice, 0, 40'000);
  if (on_edge) rows.stitch.in_from_edge_um = length_of(dice, 0, 40'000);
  rows.staple.kept_clear_um = pair_of(dice);
  rows.staple.spacing_um = length_of(dice, 20'000, 90'000);
  rows.staple.rule = any_of<job::SpacingRule>(dice, 1);
  rows.staple.left_over = any_of<job::LeftOver>(dice, 2);
  rows.staple.staples = any_of<job::StaplesOut>(dice, 4);
  rows.staple.extras = some_extras(dice);
  rows.stitch.kept_clear_um = pair_of(dice);
  rows.stitch.stitch_um = length_of(dice, 2'000, 9'000);
  rows.stitch.extras = some_extras(dice);
  rows.stack_um = length_of(dice, 1, 9'000);
  rows.extras = some_extras(dice);
  return rows;
}

template <typename T>
std::optional<T> perhaps(Dice& dice, const T& value) {
  return dice.once_in(2) ? std::optional<T>(value) : std::nullopt;
}

job::SleeveChange any_change(Dice& dice) {
  const job::RowPair rows = any_rows(dice, true);
  job::SleeveChange change;
  change.width_um = perhaps(dice, length_of(dice, 60'001, 400'000));
  if (dice.once_in(2)) {
    job::StapleChange staple;
    staple.in_from_edge_um = perhaps(dice, rows.staple.in_from_edge_um);
    staple.kept_clear_um = perhaps(dice, rows.staple.kept_clear_um);
    staple.spacing_um = perhaps(dice, rows.staple.spacing_um);
    staple.rule = perhaps(dice, rows.staple.rule);
    staple.left_over = perhaps(dice, rows.staple.left_over);
    staple.staples = perhaps(dice, static_cast<job::StaplesOut>(dice.between(1, 4)));
    staple.extras = some_extras(dice);
    change.staple = staple;
  }
  if (dice.once_in(2)) {
    job::StitchChange stitch;
    stitch.in_from_edge_um = perhaps(dice, rows.stitch.in_from_edge_um);
    stitch.kept_clear_um = perhaps(dice, rows.stitch.kept_clear_um);
    stitch.stitch_um = perhaps(dice, rows.stitch.stitch_um);
    stitch.extras = some_extras(dice);
    change.stitch = stitch;
  }
  change.side_rows_extras = some_extras(dice);
  change.extras = some_extras(dice);
  return change;
}

/// How the sleeves are made; the narrowest that this file makes can be made so.
void any_make(Dice& dice, job::Section* section) {
  section->make = any_of<job::Make>(dice, 2);
  const bool all = dice.once_in(3);
  const Um radius = length_of(dice, 0, 50'000);
  const Um flange = length_of(dice, 1, 56'000);
  const auto side = any_of<job::Side>(dice, 1);
  if (all || section->make == job::Make::folded) section->fold_radius_um = radius;
  if (all || section->make == job::Make::round) section->flange_um = flange;
  if (all || section->make != job::Make::two_leaf) section->sewn_side = side;
  section->side_seams = any_of<job::SideSeams>(dice, 1);
  if (dice.once_in(3)) section->lies_over = any_of<job::Side>(dice, 1);
}

/// Codes of sleeves that are not there, never all.
std::vector<std::string> any_missing(Dice& dice, const job::Section& section) {
  std::vector<std::string> missing;
  if (dice.once_in(2)) return missing;
  for (int i = 0; i < section.count; ++i) {
    const bool is_last_there = static_cast<int>(missing.size()) + 1 == section.count;
    if (dice.once_in(4) && !is_last_there) missing.push_back(job::sleeve_code(section, i));
  }
  if (dice.once_in(2)) std::reverse(missing.begin(), missing.end());
  return missing;
}

job::Section any_section(Dice& dice, const std::string& code) {
  job::Section section;
  section.code = code;
  section.length_um = length_of(dice, 1'000, 3'000'000);
  section.lap_um = length_of(dice, 0, 60'000);
  section.leaf_um = length_of(dice, 1, 2'000);
  section.count = static_cast<int>(dice.between(1, 12));
  const std::int64_t widths = dice.between(1, 30);
  for (std::int64_t i = 0; i < widths; ++i) {
    section.widths_um.push_back(length_of(dice, 60'001, 200'000));
  }
  section.width_tolerance_um = perhaps(dice, length_of(dice, 1, 3'000));
  section.lap_tolerance_um = perhaps(dice, length_of(dice, 1, 3'000));
  section.side_rows = any_rows(dice, true);
  if (section.count > 1 || dice.once_in(2)) section.lap_rows = any_rows(dice, false);
  for (int i = 0; i < section.count; ++i) {
    if (dice.once_in(5)) section.changes[job::sleeve_code(section, i)] = any_change(dice);
  }
  if (dice.once_in(2)) any_make(dice, &section);
  section.missing = any_missing(dice, section);
  section.extras = some_extras(dice);
  return section;
}

std::vector<job::OutlineEdge> any_outline(Dice& dice) {
  const Um wide = length_of(dice, 200'000, 900'000);
  const Um high = length_of(dice, 200'000, 2'000'000);
  const Um x = dice.between(-500'000, 500'000);
  std::vector<job::OutlineEdge> edges(4);
  edges[0] = {"hinge_side", {x, high}, 0, some_extras(dice)};
  edges[1] = {"bottom", {x, 0}, dice.between(-50'000, 50'000), some_extras(dice)};
  edges[2] = {"fly_side", {x + wide, 0}, 0, {}};
  edges[3] = {"top", {x + wide, high}, dice.between(-50'000, 50'000), {}};
  return edges;
}

job::Panel any_panel(Dice& dice, const std::string& code) {
  job::Panel panel = panel_job(1, 1, dice.once_in(2) ? "left" : "right").panels[0];
  panel.code = code;
  if (dice.once_in(3)) {
    panel.outline = any_outline(dice);
    panel.hinge_side = "left";
  } else {
    panel.backing_um[0] = length_of(dice, 1, 2'000'000);
    panel.backing_um[1] = length_of(dice, 1, 3'000'000);
  }
  panel.panel_in_um = length_of(dice, 0, 60'000);
  panel.spacing_um = length_of(dice, 20'000, 90'000);
  panel.stitch_um = length_of(dice, 2'000, 9'000);
  if (dice.once_in(3)) panel.rows_on = {"top", "hinge_side"};
  if (dice.once_in(9)) panel.rows_on = {"fly_side"};
  if (dice.once_in(2)) panel.corners = job::Corners::stop_short;
  panel.corner_clear_um = perhaps(dice, length_of(dice, 1, 90'000));
  if (dice.once_in(3)) panel.rows_stop_um = length_of(dice, 1, 1'500'000);
  panel.extras = some_extras(dice);
  return panel;
}

/// None, few, many; now and then out of order.
std::vector<std::array<Um, 2>> any_stations(Dice& dice) {
  std::vector<std::array<Um, 2>> stations;
  if (dice.once_in(2)) return stations;
  const std::int64_t count = dice.between(1, 7);
  Um along = 0;
  for (std::int64_t i = 0; i < count; ++i) {
    const Um out = length_of(dice, 0, 200'000);
    stations.push_back({along, dice.once_in(3) ? -out : out});
    along += dice.once_in(12) ? 0 : length_of(dice, 1, 300'000);
  }
  return stations;
}

/// Some hold what is not there, or what another holds already.
void any_bays(Dice& dice, job::Job* job) {
  const std::array<const char*, 4> held = {"1", "2", "P1", "P9"};
  const std::int64_t bays = dice.between(0, 3);
  for (std::int64_t i = 0; i < bays; ++i) {
    const Um chord = length_of(dice, 1, 3'000'000);
    const Um rise = length_of(dice, 0, 500'000);
    const char* face = dice.once_in(2) ? "bulging" : "hollow";
    const std::int64_t holds = dice.between(0, 3);
    job::Bay bay;
    bay.code = "B" + std::to_string(i);
    bay.chord_um = chord;
    bay.rise_um = rise;
    bay.face = face;
    bay.holds = held[static_cast<std::size_t>(holds)];
    bay.stands_empty = dice.once_in(5);
    bay.stations_um = any_stations(dice);
    bay.taped_along_um = perhaps(dice, length_of(dice, 1, 4'000'000));
    bay.extras = some_extras(dice);
    job->bays.push_back(std::move(bay));
  }
}

/// The stack of a row as typed, or from plies that lie anywhere.
job::ClothPlace any_cloth(Dice& dice, bool on_panel) {
  job::ClothPlace cloth;
  cloth.in_from_edge_um = perhaps(dice, length_of(dice, 0, 40'000));
  if (!on_panel) {
    cloth.in_from_end_um = perhaps(dice, length_of(dice, 0, 60'000));
    return cloth;
  }
  cloth.in_from_fly_side_um = perhaps(dice, length_of(dice, 0, 60'000));
  cloth.hem_um = perhaps(dice, length_of(dice, 0, 40'000));
  cloth.interlining_in_um = perhaps(dice, length_of(dice, 0, 40'000));
  cloth.adhesive_band_um = perhaps(dice, length_of(dice, 0, 60'000));
  return cloth;
}

/// Draws of its own, so that the rest of a job stays what its dice make it.
void any_stacks(job::Job* job) {
  Dice dice(static_cast<std::uint32_t>(job->tails_um));
  if (dice.once_in(3)) return;
  for (const material::Field field :
       {material::Field::sleeve_cloth_thickness, material::Field::panel_cloth_thickness,
        material::Field::panel_cloth_pressed, material::Field::interlining_thickness,
        material::Field::adhesive_thickness, material::Field::film_thickness}) {
    const Um thick = length_of(dice, 1, 900);
    if (!dice.once_in(3)) job->materials.values[field].thousandths = thick;
  }
  if (dice.once_in(3)) job->materials.values[material::Field::film_left_on].thousandths = 1;
  for (job::Section& section : job->sections) {
    section.side_rows.stack_from_plies = dice.once_in(2);
    if (section.lap_rows) section.lap_rows->stack_from_plies = dice.once_in(2);
    section.cloth = perhaps(dice, any_cloth(dice, false));
  }
  for (job::Panel& panel : job->panels) {
    panel.stack_from_plies = dice.once_in(2);
    panel.cloth = perhaps(dice, any_cloth(dice, true));
  }
}

/// Half of them set as some rows ask, so that what they measured is used.
void any_trials(Dice& dice, job::Job* job) {
  const std::int64_t trials = dice.between(0, 2);
  for (std::int64_t i = 0; i < trials; ++i) {
    job::Trial trial;
    trial.of = any_of<job::RowsOf>(dice, 2);
    trial.of_all_rows = trials == 1 && dice.once_in(2);
    trial.needle_size = job->needle_size;
    trial.thread_tex = job->thread_tex;
    trial.stitch_um = length_of(dice, 2'000, 9'000);
    if (!job->sections.empty() && dice.once_in(2)) {
      trial.stitch_um = job->sections[0].side_rows.stitch.stitch_um;
    }
    trial.ten_stitches_um = perhaps(dice, length_of(dice, 20'000, 90'000));
    trial.is_chosen = i == 0;
    job->trials.push_back(trial);
  }
}

}  // namespace

job::Job random_job(Dice& dice) {
  job::Job job;
  job.name = words_of(dice, true);
  job.spacing_is_clear_gap = dice.once_in(3);
  job.needle_size = static_cast<int>(dice.between(20, 400));
  job.thread_tex = static_cast<int>(dice.between(1, 2'000));
  job.tails_um = length_of(dice, 0, 10'000'000);
  job.slip_distance_um = length_of(dice, 0, 1'000'000);
  job.crown_um = perhaps(dice, length_of(dice, 1, 20'000));
  job.wire_um = perhaps(dice, length_of(dice, 1, 3'000));
  job.half_foot_um = perhaps(dice, length_of(dice, 1, 20'000));
  job.foot_tolerance_um = perhaps(dice, length_of(dice, 1, 5'000));
  any_bays(dice, &job);
  const std::int64_t sections = dice.between(0, 3);
  for (std::int64_t i = 0, number = 0; i < sections; ++i) {
    number += dice.once_in(6) ? 2 : 1;
    job.sections.push_back(any_section(dice, std::to_string(number)));
  }
  const std::int64_t panels = dice.between(0, 3);
  for (std::int64_t i = 0, number = 0; i < panels; ++i) {
    number += dice.once_in(6) ? 2 : 1;
    job.panels.push_back(any_panel(dice, "P" + std::to_string(number)));
  }
  any_trials(dice, &job);
  any_stacks(&job);
  job.extras = some_extras(dice);
  return job;
}

}  // namespace pouncemark::tests

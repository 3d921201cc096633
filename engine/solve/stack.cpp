#include "engine/solve/stack.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <optional>
#include <utility>

#include "engine/geometry/tolerance.h"
#include "engine/layout/stack_profile.h"
#include "engine/solve/plies.h"
#include "engine/solve/rows.h"

namespace pouncemark::solve {
namespace {

using layout::PlySet;
using layout::ProfileStep;

/// What the job says of a row's stack.
struct Said {
  Um typed_um = 0;
  bool from_plies = false;
};

Said said_of(const job::Section& section, const Row& row) {
  const job::RowPair& rows = row.place == RowPlace::lap ? *section.lap_rows : section.side_rows;
  return {rows.stack_um, rows.stack_from_plies};
}

Said said_of(const job::Panel& panel, const Row& /*row*/) {
  return {panel.stack_um, panel.stack_from_plies};
}

Plies plies_of(const job::Job& job, const job::Section& section, const Piece& piece,
               const Row& row) {
  return row.place == RowPlace::lap ? plies_of_lap(job, section, piece, row.sleeve)
                                    : plies_of_sleeve(job, section, piece, row.sleeve);
}

Plies plies_of(const job::Job& job, const job::Panel& panel, const Piece& piece,
               const Row& /*row*/) {
  return plies_of_panel(job, panel, piece);
}

/// One step of the blade: the thickest set of plies within half a blade to either side.
struct BladeStep {
  double from = 0;
  double to = 0;
  PlySet thickest = 0;
  PlySet left = 0;
  PlySet right = 0;
  PlySet met = 0;  ///< all that the blade meets
  bool along = false;

  bool is_as(const BladeStep& other) const {
    return met == other.met && thickest == other.thickest && left == other.left &&
           right == other.right && along == other.along;
  }
};

/// The row's line, and half a blade to its left and right; stations stretched to those of the
/// row's line where that bends.
class Blade {
 public:
  Blade(const Row& row, double half_blade, std::span<const layout::PlyShape> shapes)
      : shapes_(shapes) {
    double first = from_um(row.run.first_um());
    double last = from_um(row.run.last_um());
    // A row of one hole is as long as its needle is wide.
    if (row.run.length_um == 0) {
      first -= half_blade;
      last += half_blade;
    }
    add(row.guide, first, last, 1);
    for (const double aside : {half_blade, -half_blade}) {
      const std::optional<Segment> line = parallel(row.guide, aside);
      if (line) add(*line, first, last, length(row.guide) / length(*line));
    }
  }

  std::vector<BladeStep> steps() const {
    std::vector<double> stations;
    for (std::size_t i = 0; i < count_; ++i) {
      for (const ProfileStep& step : paths_[i]) stations.push_back(step.from);
    }
    std::stable_sort(stations.begin(), stations.end());
    std::vector<BladeStep> steps;
    std::array<std::size_t, 3> at{};
    for (std::size_t i = 0; i < stations.size(); ++i) {
      const double to = i + 1 < stations.size() ? stations[i + 1] : paths_[0].back().to;
      if (to - stations[i] < tolerance::kSamePointMm) continue;
      const BladeStep step = look_at(stations[i], to, &at);
      if (!steps.empty() && steps.back().is_as(step)) {
        steps.back().to = to;
      } else {
        steps.push_back(step);
      }
    }
    return steps;
  }

 private:
  void add(const Segment& line, double first, double last, double stretch) {
    std::vector<ProfileStep>& path = paths_[count_];
    path = layout::stack_profile(line, first / stretch, last / stretch, shapes_);
    if (path.empty()) return;
    for (ProfileStep& step : path) {
      step.from *= stretch;
      step.to *= stretch;
    }
    ++count_;
  }

  BladeStep look_at(double from, double to, std::array<std::size_t, 3>* at) const {
    BladeStep step{from, to, 0, 0, 0, 0, false};
    Um most = -1;
    for (std::size_t i = 0; i < count_; ++i) {
      const std::vector<ProfileStep>& path = paths_[i];
      std::size_t& here = (*at)[i];
      while (here + 1 < path.size() && path[here].to <= from + (to - from) / 2.0) ++here;
      for (const PlySet set : {path[here].left, path[here].right}) {
        step.met |= set;
        const Um thick = layout::thickness_um(set, shapes_);
        if (thick <= most) continue;
        most = thick;
        step.thickest = set;
      }
      if (i > 0) continue;
      step.left = path[here].left;
      step.right = path[here].right;
      step.along = path[here].along != 0;
    }
    return step;
  }

  std::span<const layout::PlyShape> shapes_;
  std::array<std::vector<ProfileStep>, 3> paths_;
  std::size_t count_ = 0;
};

std::vector<BladeStep> blade_steps(const job::Job& job, const Row& row, const Plies& plies) {
  if (row.run.is_empty) return {};
  return Blade(row, job.needle_size / 200.0, plies.shapes).steps();
}

/// Plies whose thickness no one entered and that the blade meets.
PlySet unknown_met(const std::vector<BladeStep>& steps, const Plies& plies) {
  PlySet met = 0;
  for (const BladeStep& step : steps) met |= step.met;
  return met & plies.unknown;
}

/// The stack of a row at its thickest, and its highest step; 0 where it is not known.
struct Height {
  Um most_um = 0;
  Um climb_um = 0;
  bool along = false;  ///< it runs along the edge of a ply somewhere
};

Height height_of(const job::Job& job, const Row& row, const Plies& plies) {
  const std::vector<BladeStep> steps = blade_steps(job, row, plies);
  if (unknown_met(steps, plies) != 0) return {};
  Height height;
  Um before = 0;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const Um here = layout::thickness_um(steps[i].thickest, plies.shapes);
    height.most_um = std::max(height.most_um, here);
    if (i > 0) height.climb_um = std::max(height.climb_um, std::abs(here - before));
    before = here;
    height.along = height.along || steps[i].along;
  }
  return height;
}

StackStep told(const BladeStep& step, const Row& row, const Plies& plies) {
  StackStep told;
  told.from_um = std::max(to_um(step.from), row.run.first_um());
  told.to_um = std::min(to_um(step.to), row.run.last_um());
  told.left_um = layout::thickness_um(step.left, plies.shapes);
  told.right_um = layout::thickness_um(step.right, plies.shapes);
  told.along_an_edge = step.along;
  for (std::size_t i = 0; i < plies.plies.size(); ++i) {
    if ((step.thickest >> i & 1U) == 0) continue;
    told.plies.push_back(plies.plies[i]);
    told.thickness_um += plies.plies[i].thickness_um;
    told.pressed_um += plies.plies[i].pressed_um;
  }
  return told;
}

/// Thickest and thinnest place, and what the foot must climb.
void find_extremes(Stack* stack) {
  for (int i = 0; i < static_cast<int>(stack->steps.size()); ++i) {
    const StackStep& step = stack->at(i);
    if (step.thickness_um > stack->thickest_um()) stack->thickest = i;
    if (step.thickness_um < stack->thinnest_um()) stack->thinnest = i;
    stack->runs_along_an_edge = stack->runs_along_an_edge || step.along_an_edge;
    if (i == 0) continue;
    const Um rise = step.thickness_um - stack->at(i - 1).thickness_um;
    if (rise > stack->rise_um) {
      stack->rise_um = rise;
      stack->rise_at_um = step.from_um;
    }
    if (-rise > stack->fall_um) {
      stack->fall_um = -rise;
      stack->fall_at_um = step.from_um;
    }
  }
}

std::string missing_words(PlySet unknown, const Plies& plies) {
  for (std::size_t i = 0; i < plies.plies.size(); ++i) {
    if ((unknown >> i & 1U) == 0) continue;
    return "the thickness of the " + std::string(material::item_words(plies.plies[i].item));
  }
  return {};
}

Stack worked_out(const job::Job& job, const Row& row, const Plies& plies) {
  Stack stack;
  stack.is_typed = false;
  stack.assumed_places = plies.assumed_places;
  const std::vector<BladeStep> steps = blade_steps(job, row, plies);
  const PlySet unknown = unknown_met(steps, plies);
  if (unknown != 0) {
    stack.is_known = false;
    stack.missing = missing_words(unknown, plies);
    return stack;
  }
  for (const BladeStep& step : steps) stack.steps.push_back(told(step, row, plies));
  find_extremes(&stack);
  return stack;
}

Stack typed_stack(const Row& row, Um typed_um) {
  Stack stack;
  if (row.run.is_empty) return stack;
  StackStep step;
  step.from_um = row.run.first_um();
  step.to_um = row.run.last_um();
  step.thickness_um = step.pressed_um = step.left_um = step.right_um = typed_um;
  stack.steps.push_back(std::move(step));
  return stack;
}

/// All that the stack of a row of a section hangs on: where its holes are, and how the sleeves lie
/// about it. Most rows of a section are alike in it, and are worked out once.
std::vector<Um> all_that_matters(const Piece& piece, const Row& row) {
  const Um x = to_um(row.guide.from.x);
  std::vector<Um> key{row.run.first_um(), row.run.last_um(), row.place == RowPlace::lap};
  const int reach = row.place == RowPlace::lap ? 1 : 0;
  for (int at = std::max(row.sleeve - reach, 0); at <= row.sleeve + 2 * reach; ++at) {
    if (at >= static_cast<int>(piece.sleeves.size())) break;
    const Sleeve& sleeve = piece.sleeves[static_cast<std::size_t>(at)];
    key.push_back(at - row.sleeve);
    key.push_back(sleeve.left_um - x);
    key.push_back(sleeve.width_um);
  }
  return key;
}

using WorkedOut = std::map<std::vector<Um>, Height>;

Height height_of(const job::Job& job, const job::Section& section, const Piece& piece,
                 const Row& row, WorkedOut* before) {
  const auto [found, is_new] = before->try_emplace(all_that_matters(piece, row));
  if (is_new) found->second = height_of(job, row, plies_of(job, section, piece, row));
  return found->second;
}

Height height_of(const job::Job& job, const job::Panel& panel, const Piece& piece, const Row& row,
                 WorkedOut* /*before*/) {
  return height_of(job, row, plies_of(job, panel, piece, row));
}

template <typename Entry>
void set_all(const job::Job& job, const Entry& entry, Results* alone) {
  const Piece& piece = alone->pieces.front();
  WorkedOut before;
  for (Row& row : alone->rows) {
    if (row.kind != RowKind::stitch) continue;
    const Said said = said_of(entry, row);
    row.stack_is_typed = !said.from_plies;
    row.stack_um = said.typed_um;
    if (!said.from_plies) continue;
    const Height height = height_of(job, entry, piece, row, &before);
    row.stack_um = height.most_um;
    row.climb_um = height.climb_um;
    row.along_a_ply = height.along;
  }
}

const Piece& piece_of(const Results& results, const Row& row) {
  return results.pieces[static_cast<std::size_t>(row.piece)];
}

}  // namespace

void set_stacks(const job::Job& job, const job::Section& section, Results* alone) {
  set_all(job, section, alone);
}

void set_stacks(const job::Job& job, const job::Panel& panel, Results* alone) {
  set_all(job, panel, alone);
}

Stack stack_from_plies(const job::Job& job, const Results& results, const Row& row) {
  const Piece& piece = piece_of(results, row);
  const auto entry = static_cast<std::size_t>(piece.entry);
  const Plies plies = piece.kind == PieceKind::panel
                          ? plies_of(job, job.panels[entry], piece, row)
                          : plies_of(job, job.sections[entry], piece, row);
  return worked_out(job, row, plies);
}

Stack stack_of(const job::Job& job, const Results& results, const Row& row) {
  const Piece& piece = piece_of(results, row);
  const auto entry = static_cast<std::size_t>(piece.entry);
  const Said said = piece.kind == PieceKind::panel ? said_of(job.panels[entry], row)
                                                   : said_of(job.sections[entry], row);
  return said.from_plies ? stack_from_plies(job, results, row) : typed_stack(row, said.typed_um);
}

}  // namespace pouncemark::solve

#include "web/model/found.h"

#include <algorithm>
#include <cstdlib>

#include "web/model/changes.h"

namespace pouncemark::web {
namespace {

using checks::Part;

bool is_one_of(const std::vector<int>& at, int one) {
  return std::find(at.begin(), at.end(), one) != at.end();
}

bool same(const job::StapleRow& a, const job::StapleRow& b) {
  return a.in_from_edge_um == b.in_from_edge_um && a.kept_clear_um == b.kept_clear_um &&
         a.spacing_um == b.spacing_um && a.rule == b.rule && a.left_over == b.left_over &&
         a.staples == b.staples;
}

bool same(const job::StitchRow& a, const job::StitchRow& b) {
  return a.in_from_edge_um == b.in_from_edge_um && a.kept_clear_um == b.kept_clear_um &&
         a.stitch_um == b.stitch_um;
}

bool same(const job::RowPair& a, const job::RowPair& b) {
  return same(a.staple, b.staple) && same(a.stitch, b.stitch);
}

bool same_laps(const job::Section& a, const job::Section& b) {
  if (a.lap_um != b.lap_um || a.lap_rows.has_value() != b.lap_rows.has_value()) return false;
  return !a.lap_rows || same(*a.lap_rows, *b.lap_rows);
}

/// The only sleeve whose width or rows differ, by its place; -1 for none or more than one.
int only_sleeve(const job::Section& now, const job::Section& was, const solve::Piece& piece) {
  int only = -1;
  for (std::size_t i = 0; i < piece.sleeves.size(); ++i) {
    const int number = piece.sleeves[i].number;
    const bool is_alike = job::sleeve_width_um(now, number) == job::sleeve_width_um(was, number) &&
                          same(job::side_rows_of(now, number), job::side_rows_of(was, number));
    if (is_alike) continue;
    if (only >= 0) return -1;
    only = static_cast<int>(i);
  }
  return only;
}

const solve::Row& row_at(const solve::Results& results, int row) {
  return results.rows[static_cast<std::size_t>(row)];
}

/// The finding is about rows of the kind that changed.
bool is_about_change(const solve::Results& results, const solve::Finding& finding,
                     const LastChange& change) {
  switch (finding.part) {
    case Part::laps:
      return change.in_laps;
    case Part::sleeves:
      return change.in_sides;
    case Part::rows:
      for (const int row : finding.at) {
        const bool in_lap = row_at(results, row).place == solve::RowPlace::lap;
        if (in_lap ? change.in_laps : change.in_sides) return true;
      }
      return false;
    case Part::whole:
      break;
  }
  return false;
}

/// 0 the same row, 1 the same sleeve, 2 the same piece, 3 the rest.
int how_far(const solve::Results& results, const solve::Finding& finding,
            const LastChange& change) {
  if (finding.piece != change.piece || finding.piece < 0) return 3;
  const bool touches = change.sleeve < 0 || is_about_sleeve(results, finding, change.sleeve);
  if (touches && is_about_change(results, finding, change)) return 0;
  return touches && change.sleeve >= 0 ? 1 : 2;
}

}  // namespace

LastChange last_change(const Solved& now, const Solved* before, Place place) {
  LastChange change{place.piece, place.sleeve, false, false};
  const job::Section* section = section_at(now.job, now.results, place);
  if (before == nullptr || section == nullptr) return change;
  const job::Section* was = section_at(before->job, before->results, place);
  if (was == nullptr || was->code != section->code) return change;
  change.in_laps = !same_laps(*section, *was);
  const auto& piece = now.results.pieces[static_cast<std::size_t>(place.piece)];
  const int only = only_sleeve(*section, *was, piece);
  change.in_sides = only >= 0 || !same(section->side_rows, was->side_rows);
  if (change.sleeve < 0 && piece.sleeves.size() > 1) change.sleeve = only;
  return change;
}

std::vector<std::size_t> nearest_first(const Solved& now, const LastChange& change) {
  const auto& findings = now.results.findings;
  std::vector<std::vector<std::size_t>> by_distance(4);
  for (std::size_t i = 0; i < findings.size(); ++i) {
    by_distance[static_cast<std::size_t>(how_far(now.results, findings[i], change))].push_back(i);
  }
  // Findings stand stops first already.
  std::vector<std::size_t> order;
  for (const auto& some : by_distance) order.insert(order.end(), some.begin(), some.end());
  return order;
}

bool is_about_sleeve(const solve::Results& results, const solve::Finding& finding, int sleeve) {
  const auto has_lap = [sleeve](int lap) { return lap == sleeve || lap + 1 == sleeve; };
  switch (finding.part) {
    case Part::laps:
      return std::any_of(finding.at.begin(), finding.at.end(), has_lap);
    case Part::sleeves:
      return is_one_of(finding.at, sleeve);
    case Part::rows:
      return std::any_of(finding.at.begin(), finding.at.end(), [&](int index) {
        const solve::Row& row = row_at(results, index);
        if (row.place == solve::RowPlace::lap) return has_lap(row.sleeve);
        return row.place == solve::RowPlace::side && row.sleeve == sleeve;
      });
    case Part::whole:
      break;
  }
  return false;
}

bool is_about_lap(const solve::Results& results, const solve::Finding& finding, int lap) {
  if (finding.part == Part::laps) return is_one_of(finding.at, lap);
  if (finding.part == Part::sleeves) {
    return is_one_of(finding.at, lap) || is_one_of(finding.at, lap + 1);
  }
  if (finding.part != Part::rows) return false;
  const auto& piece = results.pieces[static_cast<std::size_t>(finding.piece)];
  const auto index = static_cast<std::size_t>(lap);
  if (index >= piece.row_middles_um.size()) return false;
  const Um middle = piece.row_middles_um[index];
  const Um width = piece.sleeves[index].width_um;
  return std::all_of(finding.at.begin(), finding.at.end(), [&](int row) {
    const Um across = to_um(row_at(results, row).guide.from.x);
    return std::abs(across - middle) < width / 2;
  });
}

Spotted place_of(const solve::Results& results, const solve::Finding& finding, Spotted from) {
  Spotted spot{{finding.piece, -1}, -1};
  if (finding.piece < 0 || finding.at.empty()) return spot;
  const bool is_here = from.place.piece == finding.piece;
  int one = finding.at.front();
  Part part = finding.part;
  if (part == Part::rows) {
    const solve::Row& row = row_at(results, one);
    if (row.place == solve::RowPlace::panel) return spot;
    part = row.place == solve::RowPlace::lap ? Part::laps : Part::sleeves;
    one = row.sleeve;
    if (is_here && from.place.sleeve < 0 && from.lap >= 0 &&
        is_about_lap(results, finding, from.lap)) {
      spot.lap = from.lap;
      return spot;
    }
  }
  if (part == Part::laps) {
    const bool stays = is_here && from.lap >= 0 && is_one_of(finding.at, from.lap);
    spot.lap = stays && finding.part == Part::laps ? from.lap : one;
  } else {
    const bool stays = is_here && is_about_sleeve(results, finding, from.place.sleeve);
    spot.place.sleeve = stays ? from.place.sleeve : one;
  }
  return spot;
}

int first_lap(const solve::Results& results, int piece) {
  const auto& section = results.pieces[static_cast<std::size_t>(piece)];
  const std::size_t laps = section.row_middles_um.size();
  if (laps == 0) return -1;
  for (const solve::Finding& finding : results.findings) {
    const bool of_some = finding.part == Part::laps && finding.at.size() < laps;
    if (finding.piece == piece && of_some && !finding.at.empty()) return finding.at.front();
  }
  for (std::size_t i = 0; i + 1 < section.sleeves.size(); ++i) {
    if (section.sleeves[i + 1].number > section.sleeves[i].number + 1) return static_cast<int>(i);
  }
  return static_cast<int>((laps - 1) / 2);
}

int lap_nearest(const solve::Piece& piece, Um across) {
  int nearest = -1;
  Um least = 0;
  for (std::size_t i = 0; i < piece.row_middles_um.size(); ++i) {
    const Um away = std::abs(piece.row_middles_um[i] - across);
    if (nearest >= 0 && away >= least) continue;
    nearest = static_cast<int>(i);
    least = away;
  }
  return nearest;
}

}  // namespace pouncemark::web

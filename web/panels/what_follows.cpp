#include "web/panels/what_follows.h"

#include <algorithm>
#include <string_view>
#include <utility>

#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

/// What is farther down the list is not looked into for what helps until it comes nearer.
constexpr std::size_t kMostHelped = 8;
constexpr std::string_view kSlip = "slip.";
constexpr std::string_view kFinding = "finding.";

void list_findings(const Bench& bench, PageState& state) {
  FoundList& found = state.found;
  const Solved& now = bench.now();
  auto order = nearest_first(now, last_change(now, bench.before(), bench.place()));
  found.stage = state.stage;
  if (found.stage == Stage::sew || found.stage == Stage::curve) {
    const auto is_first = found.stage == Stage::sew ? is_about_sewing : is_about_bays;
    std::stable_partition(order.begin(), order.end(),
                          [&](std::size_t index) { return is_first(now.results.findings[index]); });
  }
  found.bay = state.curve.view.code;
  if (found.stage == Stage::curve) {
    const std::string place = "bay " + found.bay + ",";
    std::stable_partition(order.begin(), order.end(), [&](std::size_t index) {
      return (now.results.findings[index].place + ",").rfind(place, 0) == 0;
    });
  }
  found.listed.clear();
  for (const std::size_t index : order) {
    ListedFinding one;
    one.index = index;
    const solve::Finding& finding = now.results.findings[index];
    const bool is_helped = finding.piece >= 0 && finding.piece == bench.place().piece &&
                           found.listed.size() < kMostHelped && !bench.is_moving() &&
                           !bench.is_look_only();
    if (is_helped) one.remedies = remedies_for(now, finding);
    found.listed.push_back(std::move(one));
  }
  found.first = 0;
  found.turn = bench.turn();
}

std::string name_of(const solve::Finding& finding) { return finding.code + ", " + finding.place; }

bool is_finding(const std::string& id) { return id.compare(0, kFinding.size(), kFinding) == 0; }

/// The sum that is open stays that of the same finding, wherever it stands now.
void follow_open(const Solved& now, PageState& state) {
  if (!is_finding(state.open_sum)) return;
  const std::vector<ListedFinding>& listed = state.found.listed;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    if (name_of(now.results.findings[listed[i].index]) != state.found.open) continue;
    state.open_sum = std::string(kFinding) + std::to_string(i);
    return;
  }
  state.open_sum.clear();
}

void note_open(const Solved& now, PageState& state) {
  const std::vector<ListedFinding>& listed = state.found.listed;
  for (std::size_t i = 0; i < listed.size() && is_finding(state.open_sum); ++i) {
    if (state.open_sum != std::string(kFinding) + std::to_string(i)) continue;
    state.found.open = name_of(now.results.findings[listed[i].index]);
  }
}

}  // namespace

void ask_what_follows(const Bench& bench, PageState& state) {
  if (!bench.has_job()) return;
  const bool is_sewing = state.stage == Stage::sew;
  const bool is_of_bay = state.stage != Stage::curve || state.found.bay == state.curve.view.code;
  if (state.found.turn != bench.turn() || state.found.stage != state.stage || !is_of_bay) {
    list_findings(bench, state);
    follow_open(bench.now(), state);
  }
  note_open(bench.now(), state);
  const bool is_line = state.open_sum.compare(0, kSlip.size(), kSlip) == 0;
  const std::string opened = is_line ? state.open_sum.substr(kSlip.size()) : std::string();
  Followed& followed = state.followed;
  const bool is_curve = state.stage == Stage::curve;
  const std::string stage = is_sewing  ? "sew " + state.sew.kind
                            : is_curve ? "bay " + std::to_string(state.curve.bay)
                                       : std::string();
  const bool is_same = followed.opened == opened && followed.stage == stage;
  if (followed.turn == bench.turn() && is_same) return;
  followed.lines = is_curve ? curve_lines(bench.now(), bench.before(), state.curve.bay)
                   : is_sewing
                       ? sew_lines(bench.now(), bench.before(), bench.place(), state.sew.kind)
                       : follow_lines(bench.now(), bench.before(), bench.place(), opened);
  followed.stage = stage;
  followed.opened = opened;
  followed.turn = bench.turn();
}

int shown_lap(const Bench& bench, const ChosenLap& chosen) {
  const int piece = bench.place().piece;
  const auto& results = bench.now().results;
  if (is_whole_hanging(bench.place())) return -1;
  if (chosen.piece != piece) return first_lap(results, piece);
  const auto& section = results.pieces[static_cast<std::size_t>(piece)];
  for (std::size_t i = 0; i < section.row_middles_um.size(); ++i) {
    if (section.sleeves[i].number == chosen.number) return static_cast<int>(i);
  }
  return first_lap(results, piece);
}

void go_to(Bench& bench, ChosenLap& chosen, const Spotted& spot) {
  if (!(bench.place() == held_within(bench.now().results, spot.place))) bench.go(spot.place);
  if (spot.lap < 0) return;
  const auto& piece = bench.now().results.pieces[static_cast<std::size_t>(spot.place.piece)];
  chosen = {spot.place.piece, piece.sleeves[static_cast<std::size_t>(spot.lap)].number};
}

}  // namespace pouncemark::web

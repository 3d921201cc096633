#include <algorithm>

#include "web/model/printing.h"
#include "web/panels/page.h"

namespace pouncemark::web {
namespace {

/// Open stops and warns of the job.
int open_findings(const Page& page) {
  int open = 0;
  for (const solve::Finding& finding : page.bench.now().results.findings) {
    if (finding.severity != solve::Severity::note) ++open;
  }
  return open;
}

std::string make_state(const Page& page) {
  if (page.bench.is_moving()) return "changing";
  const int open = open_findings(page);
  return open == 0 ? "done" : std::to_string(open) + " open";
}

std::string print_state(const Page& page) {
  return printer_is_proved(page.state.paper) ? "done" : "1 open";
}

std::string sew_state(const Page& page) {
  const int open = trials_open(page.bench.now());
  return open == 0 ? "done" : std::to_string(open) + " open";
}

std::string curve_state(const Page& page) {
  const Solved& now = page.bench.now();
  if (now.job.bays.empty()) return "no bays";
  const auto open = std::count_if(
      now.results.findings.begin(), now.results.findings.end(), [](const solve::Finding& finding) {
        return finding.severity != solve::Severity::note && is_about_bays(finding);
      });
  return open == 0 ? "done" : std::to_string(open) + " open";
}

}  // namespace

void stage_panel(Page& page) {
  StageRowLook look;
  look.open = page.state.stage;
  look.states.fill("not begun");
  look.states[static_cast<std::size_t>(Stage::make)] = make_state(page);
  look.states[static_cast<std::size_t>(Stage::sew)] = sew_state(page);
  look.states[static_cast<std::size_t>(Stage::curve)] = curve_state(page);
  look.states[static_cast<std::size_t>(Stage::print)] = print_state(page);
  look.job_name = page.bench.now().job.name;
  StagePress pressed = stage_row(page.brush, page.hand, page.layout.width, look);
  if (pressed.is_start) page.later([&state = page.state] { state.is_on_start = true; });
  if (pressed.is_keys) page.later([&state = page.state] { state.shows_keys = true; });
  const int digit = page.hand.which(KeyAct::open_stage);
  if (digit > 0) pressed.stage = static_cast<Stage>(digit - 1);
  if (!pressed.stage) return;
  page.later([&state = page.state, stage = *pressed.stage] {
    state.stage = stage;
    state.open_sum.clear();
    state.shows_all_follows = false;
  });
}

}  // namespace pouncemark::web

#include "engine/job/json_node.h"
#include "engine/output/output.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::output;
using pouncemark::job::JsonNode;
using pouncemark::tests::demo_job;

namespace {

std::string figures_text(const job::Job& job) { return figures_json(job, solve::solve(job)); }

JsonNode figures_of(const job::Job& job) { return *job::read_json(figures_text(job)); }

std::string figure(const JsonNode& node, const std::string& key) {
  const JsonNode* found = node.find(key);
  return found == nullptr ? "nothing" : found->words;
}

/// How many objects there are, and in how many the keys are not in order.
struct Sorted {
  int objects = 0;
  int unsorted = 0;
};

void look(const JsonNode& node, Sorted* sorted) {
  if (node.kind == JsonNode::Kind::object) {
    ++sorted->objects;
    for (std::size_t i = 1; i < node.members.size(); ++i) {
      if (node.members[i - 1].first >= node.members[i].first) ++sorted->unsorted;
    }
  }
  for (const auto& member : node.members) look(member.second, sorted);
  for (const JsonNode& item : node.items) look(item, sorted);
}

const JsonNode* entry_of(const JsonNode& list, const std::string& code, const std::string& kind) {
  for (const JsonNode& item : list.items) {
    if (figure(item, "code") == code && figure(item, "kind") == kind) return &item;
  }
  return nullptr;
}

}  // namespace

TEST_CASE("the figures of Marsh Lights are what was worked out by hand") {
  const JsonNode figures = figures_of(demo_job("marsh-lights"));
  const JsonNode& totals = *figures.find("totals");
  CHECK(figure(totals, "side_staples") == "540");
  CHECK(figure(totals, "lap_staples") == "240");
  CHECK(figure(totals, "stitch_holes") == "6916");
  CHECK(figure(totals, "panel_points") == "58");
  CHECK(figure(totals, "row_m") == "37.804");
  const JsonNode& pages = *totals.find("pages")->find("A4");
  CHECK(figure(pages, "sections") == "24");
  CHECK(figure(pages, "panels") == "24");
  const JsonNode& left_out = *totals.find("pages_left_out")->find("A4");
  CHECK(figure(left_out, "sections") == "0");
  CHECK(figure(left_out, "panels") == "8");
  CHECK(figure(*figures.find("job"), "name") == "Marsh Lights");
  CHECK(figure(*figures.find("job"), "checksum").size() == 12);
}

TEST_CASE("the larger jobs take the pages that were worked out by hand") {
  const JsonNode harbour = figures_of(demo_job("harbour-ledger"));
  const JsonNode& of_harbour = *harbour.find("totals")->find("pages")->find("A4");
  CHECK(figure(of_harbour, "sections") == "369");
  CHECK(figure(of_harbour, "panels") == "261");
  const JsonNode& harbour_out = *harbour.find("totals")->find("pages_left_out")->find("A4");
  CHECK(figure(harbour_out, "sections") == "0");
  // Five panels; what is left of each grid is its rim of pages.
  CHECK(figure(harbour_out, "panels") == "133");
  CHECK(figure(*harbour.find("totals"), "row_m") == "629.54");
  const JsonNode orchard = figures_of(demo_job("orchard-year"));
  const JsonNode& of_orchard = *orchard.find("totals")->find("pages")->find("A4");
  CHECK(figure(of_orchard, "sections") == "5940");
  CHECK(figure(of_orchard, "panels") == "1512");
}

TEST_CASE("rows and pieces carry their figures in millimetres with at most three decimals") {
  const JsonNode figures = figures_of(demo_job("marsh-lights"));
  const JsonNode& staples = *entry_of(*figures.find("rows"), "1-05 left", "staple");
  CHECK(figure(staples, "points") == "30");
  CHECK(figure(staples, "gaps") == "29");
  CHECK(figure(staples, "spacing_mm") == "46.552");
  CHECK(figure(staples, "first_mm") == "25");
  CHECK(figure(staples, "last_mm") == "1375");
  const JsonNode& section = *entry_of(*figures.find("pieces"), "1", "section");
  CHECK(figure(section, "width_mm") == "696");
  CHECK(figure(section, "likely_mm") == "3.317");
  CHECK(figure(section, "worst_mm") == "13");
  CHECK(section.find("row_middles_mm")->items.size() == 8);
  CHECK(section.find("running_totals_mm")->items[8].words == "696");
  CHECK(figure(*entry_of(*figures.find("pieces"), "1-05", "sleeve"), "width_mm") == "150");
  CHECK(figure(*entry_of(*figures.find("pieces"), "P1", "panel"), "length_mm") == "1420");
}

TEST_CASE("every key of the figures stands in order, and the file ends with a line end") {
  Sorted sorted;
  look(figures_of(demo_job("harbour-ledger")), &sorted);
  CHECK(sorted.unsorted == 0);
  CHECK(sorted.objects > 500);
  CHECK(figures_text(demo_job("marsh-lights")).back() == '\n');
}

TEST_CASE("the same job gives the same figures, byte for byte") {
  tests::Dice dice(20'260'212);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 100; ++i) {
    const job::Job job = tests::random_job(dice);
    const auto again = job::open_job(job::save_job(job));
    if (figures_text(job) == figures_text(again->job)) ++same;
  }
  CHECK(same == 100);
}

TEST_CASE("a name in any letters comes through the figures as it is") {
  job::Job job = tests::section_job({110}, 0);
  job.name = "\u0141\u00f3d\u017a \"south\" \\ \u6c34";
  CHECK(figure(*figures_of(job).find("job"), "name") == job.name);
}

TEST_CASE("findings are written as lines: how grave, where, what and what to do") {
  const std::string lines = check_lines(solve::solve(demo_job("harbour-ledger")));
  CHECK(lines.find("stop: section 2, all 16 laps: 9.0 short: ") == 0);
  CHECK(lines.find("warn: section 1, all 12 laps; section 2, all 16 laps; ") != std::string::npos);
  CHECK(lines.find("note: the whole job: 23,220 staple holes") != std::string::npos);
  CHECK(lines.find(" [2 × 11,610 = 23,220]\n") != std::string::npos);
  CHECK(lines.back() == '\n');
  CHECK(std::string(severity_word(solve::Severity::stop)) == "stop");
  CHECK(std::string(severity_word(solve::Severity::warn)) == "warn");
  CHECK(std::string(severity_word(solve::Severity::note)) == "note");
}

TEST_CASE("the stack of a stitch row stands among its figures, and whether it was worked out") {
  job::Job job = demo_job("marsh-lights");
  const auto told = [&job](const char* code, const char* kind) {
    const JsonNode figures = figures_of(job);
    const JsonNode* row = entry_of(*figures.find("rows"), code, kind);
    REQUIRE(row != nullptr);
    const JsonNode* typed = row->find("stack_typed");
    return figure(*row, "stack_mm") + (typed != nullptr && !typed->truth ? " worked out" : "");
  };
  CHECK(told("1-05 left", "stitch") == "1.1");
  CHECK(told("1-05 left", "staple") == "nothing");
  job.sections[0].lap_rows->stack_from_plies = true;
  job.sections[0].side_rows.stack_from_plies = true;
  CHECK(told("1-05+06", "stitch") == "1 worked out");
  CHECK(told("1-05 left", "stitch") == "nothing worked out");  // no one entered the cloth
  job.materials.values[material::Field::sleeve_cloth_thickness].thousandths = 600;
  CHECK(told("1-05 left", "stitch") == "1.1 worked out");
}

#include "engine/sheets/job_cards.h"

#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/sheets/card_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using tests::all_of;

namespace {

/// Trial cards, then the machine card, of a job on a paper.
std::vector<drawing::Drawing> pages_of(const job::Job& job, const char* paper) {
  const solve::Results results = solve::solve(job);
  const CardCut cut = *card_cut(*read_paper(paper), kPageCard);
  const CardSet trials = trial_cards(job, results, cut, "7aa71e8e320a");
  std::vector<drawing::Drawing> pages;
  for (std::int64_t i = 0; i < trials.pages(); ++i) pages.push_back(trials.page(i));
  pages.push_back(machine_cards(job, results, cut, "7aa71e8e320a").page(0));
  return pages;
}

/// A job of many sections and trials whose names are as long as anyone could make them.
job::Job overfull() {
  job::Job job = tests::section_job({110, 110, 300}, 18);
  job.name = std::string(200, 'W');
  job.needle_size = 400;
  job::Section section = job.sections[0];
  for (int i = 2; i < 20; ++i) {
    section.code = std::to_string(i) + std::string(40, 'M');
    section.side_rows.stack_from_plies = true;
    job.sections.push_back(section);
  }
  for (const material::Field field : {material::Field::needle_system, material::Field::thread_label,
                                      material::Field::machine_name}) {
    job.materials.values[field] = {0, std::string(80, 'W'), material::Standing::typed, {}};
  }
  job.materials.values[material::Field::machine_throat] = {
      70'000, {}, material::Standing::typed, {}};
  job.materials.values[material::Field::machine_speed] = {
      900'000, {}, material::Standing::typed, {}};
  job.materials.values[material::Field::needle_point] = {1, {}, material::Standing::typed, {}};
  for (int i = 0; i < 20; ++i) {
    job::Trial trial;
    trial.of_all_rows = true;
    trial.needle_size = 1'000;
    trial.thread_tex = 1'000 + i;
    trial.stitch_um = 99'990;
    trial.ten_stitches_um = 999'990;
    trial.marks_um = 499'990;
    trial.whitens = trial.cracks = true;
    trial.pull_n = 999'990;
    trial.is_chosen = i == 0;
    trial.signed_by = std::string(120, 'W');
    job.trials.push_back(trial);
  }
  return job;
}

}  // namespace

TEST_CASE("a trial card holds its protocol, its table and room for the coupon") {
  const auto pages = pages_of(tests::demo_job("marsh-lights"), "A4");
  REQUIRE(pages.size() == 4);
  int found = 0;
  for (const char* words :
       {"SIDE ROWS", "COUPON 300 × 50", "Stack as typed 1.1", "needle", "skipped", "CHOSEN",
        "thread tension", "crowding", "feed", "SEW THE CHOSEN COUPON ON HERE", "H3 trial seam",
        "sewn and measured: initials", "Figures guide", "file 7aa7 1e8e 320a"}) {
    CAPTURE(words);
    CHECK(tests::says(pages[0], words));
    ++found;
  }
  CHECK(found == 14);
  CHECK(tests::says(pages[1], "JOINING ROWS"));
  CHECK(tests::says(pages[2], "PANEL ROWS"));
  CHECK_FALSE(tests::says(pages[2], "SIDE ROWS"));
}

TEST_CASE("what is left of the sheet is struck through only where it is a tear line") {
  job::Job job = tests::section_job({110}, 0);
  job.needle_size = 60;
  job.sections[0].side_rows.stitch.stitch_um = 6'000;
  CHECK_FALSE(tests::says(pages_of(job, "A4")[0], "Struck through"));
  CHECK(tests::says(pages_of(tests::demo_job("marsh-lights"), "A4")[0], "Struck through"));
}

TEST_CASE("lines and findings that find no room on a machine card are said together") {
  const auto full = pages_of(overfull(), "A4");
  CHECK(tests::says(full.back(), "none is wider than"));
  CHECK(tests::says(full.back(), "to know: see the check."));
  CHECK_FALSE(
      tests::says(pages_of(tests::demo_job("marsh-lights"), "A4").back(), "none is wider than"));
}

TEST_CASE("a machine that has no name has room for one, a named one has none") {
  job::Job job = tests::demo_job("marsh-lights");
  const auto whites = [](const drawing::Drawing& page) {
    int count = 0;
    for (const auto& fill : all_of<drawing::Fill>(page)) count += fill.grey_permille == 1'000;
    return count;
  };
  CHECK(whites(pages_of(job, "A4").back()) == 1);
  job.materials.values[material::Field::machine_name] = {
      0, "long arm", material::Standing::typed, {}};
  CHECK(whites(pages_of(job, "A4").back()) == 0);
}

TEST_CASE("cards of the job keep the outer 10 clear, no word is under 3.8, and none meet") {
  std::int64_t looked_at = 0;
  for (const char* paper : {"A4", "Letter", "A3", "210x279"}) {
    const CardCut cut = *card_cut(*read_paper(paper), kPageCard);
    for (const job::Job& job :
         {tests::demo_job("marsh-lights"), tests::demo_job("harbour-ledger"), overfull()}) {
      for (const drawing::Drawing& page : pages_of(job, paper)) {
        CAPTURE(paper);
        const auto words = all_of<drawing::Text>(page);
        for (const drawing::Text& text : words) {
          CAPTURE(text.words);
          CHECK(tests::within(tests::reach_of(text), cut));
          CHECK(text.size_um >= 3'800);
          ++looked_at;
        }
        for (const drawing::Box& ink : tests::ink_on(page)) CHECK(tests::within(ink, cut));
        CHECK(tests::words_that_meet(words) == std::vector<std::string>{});
      }
    }
  }
  CHECK(looked_at > 2'000);
}

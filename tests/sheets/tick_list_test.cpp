#include "engine/sheets/tick_list.h"

#include "engine/sheets/list_strips.h"
#include "engine/sheets/wrapped_words.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::sheets;
using pouncemark::drawing::Box;
using pouncemark::tests::all_of;
using pouncemark::tests::demo_job;

namespace {

using Pictures = std::vector<drawing::Drawing>;

Pictures pages_of(const job::Job& job, int piece, const char* paper) {
  const solve::Results results = solve::solve(job);
  const TickList list({job, results, piece, *read_paper(paper), "7aa71e8e320a"});
  Pictures pages;
  for (std::int64_t i = 0; i < list.pages(); ++i) pages.push_back(list.page(i));
  return pages;
}

/// The figures of the lists in the order they are drawn, and where their right ends stand.
struct Figures {
  std::vector<std::string> words;
  std::set<Um> columns;
};

Figures figures_on(const Pictures& pages) {
  Figures figures;
  for (const drawing::Drawing& page : pages) {
    for (const drawing::Text& text : all_of<drawing::Text>(page)) {
      const bool is_figure = text.size_um == 5'500 && text.align == drawing::Align::right;
      if (!is_figure) continue;
      figures.words.push_back(text.words);
      figures.columns.insert(text.at.x);
    }
  }
  return figures;
}

std::int64_t boxes_on(const Pictures& pages) {
  std::int64_t boxes = 0;
  for (const drawing::Drawing& page : pages) {
    for (const drawing::Stroke& stroke : all_of<drawing::Stroke>(page)) {
      const Box reach = tests::reach_of(stroke.steps);
      const bool is_box =
          reach.high.x - reach.low.x == kTickBoxUm && reach.high.y - reach.low.y == kTickBoxUm;
      if (is_box) ++boxes;
    }
  }
  return boxes;
}

/// All words of the pages, one run after another.
std::string words_on(const Pictures& pages) {
  std::string words;
  for (const drawing::Drawing& page : pages) {
    for (const drawing::Text& text : all_of<drawing::Text>(page)) words += text.words + " ";
  }
  return words;
}

bool says(const Pictures& pages, const std::string& words) {
  return words_on(pages).find(words) != std::string::npos;
}

/// One sleeve 2400 long with its ends kept 20 clear and 60 wanted.
job::Job long_sleeve(job::SpacingRule rule, job::LeftOver left_over) {
  job::Job job = tests::section_job({110}, 0);
  job.sections[0].length_um = 2'400'000;
  job::StapleRow& staple = job.sections[0].side_rows.staple;
  staple.kept_clear_um = {20'000, 20'000};
  staple.spacing_um = 60'000;
  staple.rule = rule;
  staple.left_over = left_over;
  return job;
}

/// A box no smaller than what the words take.
Box room_of(const drawing::Text& text) {
  const Um wide = words_width_um(text.words, text.size_um);
  const Um left = text.align == drawing::Align::right    ? text.at.x - wide
                  : text.align == drawing::Align::centre ? text.at.x - wide / 2
                                                         : text.at.x;
  // Figures stand on the base line and do not hang below it.
  const bool is_figure = text.words.find_first_not_of("0123456789.") == std::string::npos;
  const Um below = is_figure ? 0 : text.size_um / 4;
  return {{left, text.at.y - below}, {left + wide, text.at.y + text.size_um * 3 / 4}};
}

bool lies_over(const Box& a, const Box& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

/// How many words or marks of a page reach into the border, or lie over other words.
int faults_on(const drawing::Drawing& page, const Paper& paper) {
  const Box inner{{kBorderUm, kBorderUm},
                  {paper.width_um - kBorderUm, paper.length_um - kBorderUm}};
  const auto is_inside = [&inner](const Box& box) {
    return box.low.x >= inner.low.x && box.low.y >= inner.low.y && box.high.x <= inner.high.x &&
           box.high.y <= inner.high.y;
  };
  int faults = 0;
  std::vector<Box> rooms;
  for (const drawing::Text& text : all_of<drawing::Text>(page)) {
    const Box room = room_of(text);
    if (!is_inside(room)) ++faults;
    for (const Box& other : rooms) {
      if (lies_over(room, other)) ++faults;
    }
    rooms.push_back(room);
  }
  for (const drawing::Stroke& stroke : all_of<drawing::Stroke>(page)) {
    if (!is_inside(tests::reach_of(stroke.steps))) ++faults;
  }
  for (const drawing::Fill& fill : all_of<drawing::Fill>(page)) {
    if (!is_inside(tests::reach_of(fill.steps))) ++faults;
  }
  return faults;
}

}  // namespace

TEST_CASE("a row of 2400 with 20 kept clear at both ends and 60 wanted gives its list") {
  struct Case {
    const char* name;
    job::SpacingRule rule;
    job::LeftOver left_over;
    std::size_t figures;
    const char* last;
    const char* sum;
  };
  using enum job::SpacingRule;
  using job::LeftOver;
  // source: 41 staples at 59.00 on a 2400 piece with 20 kept clear
  const Case table[] = {{"even", even, LeftOver::end, 41, "2380.0", "49200.0"},
                        {"exact, at the end", exact, LeftOver::end, 40, "2360.0", "47600.0"},
                        {"exact, split", exact, LeftOver::split, 40, "2370.0", "48000.0"},
                        {"one more", exact, LeftOver::extra_point, 41, "2380.0", "49980.0"}};
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(std::string(one.name));
    const Pictures pages = pages_of(long_sleeve(one.rule, one.left_over), 0, "A4");
    const Figures figures = figures_on(pages);
    CHECK(figures.words.size() == one.figures);
    CHECK(figures.columns.size() == 2);
    CHECK(figures.words.back() == one.last);
    CHECK(says(pages, std::string("figures add up to ") + one.sum));
    // Two lines of two rows across, and a box for each figure.
    CHECK(boxes_on(pages) == static_cast<std::int64_t>(one.figures) + 4);
    CHECK(says(pages, "1-01 left, 1-01 right 2 rows: the same list."));
    CHECK(says(pages, "measured from BOTTOM"));
    ++count;
  }
  CHECK(count == 4);
}

TEST_CASE("a row of one point and a row of none say so") {
  job::Job job = long_sleeve(job::SpacingRule::even, job::LeftOver::end);
  job.sections[0].side_rows.staple.kept_clear_um = {1'200'000, 1'200'000};
  Pictures pages = pages_of(job, 0, "A4");
  CHECK(figures_on(pages).words == std::vector<std::string>{"1200.0"});
  CHECK(says(pages, "the one figure is 1200.0"));
  CHECK(!says(pages, "not laid"));
  job.sections[0].side_rows.staple.kept_clear_um = {1'200'000, 1'200'001};
  pages = pages_of(job, 0, "A4");
  CHECK(figures_on(pages).words.empty());
  CHECK(says(pages, "not laid"));
  CHECK(says(pages, "STOP section 1, 2 rows"));
  CHECK(says(pages, "margins meet"));
  job.sections[0].side_rows.stitch.kept_clear_um = {1'200'000, 1'200'001};
  pages = pages_of(job, 0, "A4");
  CHECK(says(pages, "No row of this piece is laid."));
  CHECK(says(pages, "1-01 left not laid not laid –"));
}

TEST_CASE("an open stop of the piece stands on its first page, those of other pieces do not") {
  const job::Job job = demo_job("harbour-ledger");
  const Pictures with = pages_of(job, 1, "A4");
  CHECK(says({with[0]}, "STOP section 2, all 16 laps"));
  CHECK(says({with[0]}, "Say when the staples come out"));
  CHECK(!says({with[1]}, "STOP"));
  CHECK(!says(pages_of(job, 0, "A4"), "STOP"));
}

TEST_CASE("a corner shared with the hinge row is listed, marked and not counted") {
  const Pictures pages = pages_of(demo_job("marsh-lights"), 1, "A4");
  const Figures figures = figures_on(pages);
  // source: 30 points on the hinge row, 14 of their own on top and bottom
  CHECK(figures.words.size() == 30 + 15);
  CHECK(figures.words[30] == "16.0");
  CHECK(says(pages, "corner, the hinge row's"));
  CHECK(says(pages, "14 points and the corner"));
  CHECK(says(pages, "measured from the hinge side, along the row"));
  CHECK(says(pages, "They stand in from the edge by"));
}

TEST_CASE("lines of rows are told from the section's left edge, a line for each side and lap") {
  const Pictures pages = pages_of(demo_job("marsh-lights"), 0, "A4");
  // source: lap rows at 51 108 180 282 414 516 588 645
  const std::string words = words_on(pages);
  std::size_t at = words.find("Joining rows");
  int found = 0;
  for (const char* middle :
       {"51.0", "108.0", "180.0", "282.0", "414.0", "516.0", "588.0", "645.0"}) {
    at = words.find(std::string(middle) + " " + middle, at);
    if (at != std::string::npos) ++found;
  }
  CHECK(found == 8);
  CHECK(says(pages, "staples 26.0: 1-01 left to 1-09 right"));
  CHECK(boxes_on(pages) == 2 * (18 + 8) + 30);
}

TEST_CASE("tables hold the rows a section has, whatever its make, and name those not laid") {
  job::Job folded = tests::section_job({110, 90, 110}, 18);
  folded.sections[0].make = job::Make::folded;
  folded.sections[0].fold_radius_um = 500;
  folded.sections[0].sewn_side = job::Side::left;
  job::Job shared = tests::section_job({110, 90, 110}, 18);
  shared.sections[0].side_seams = job::SideSeams::shared;
  job::Job missing = tests::section_job({110, 90, 110}, 18);
  missing.sections[0].missing = {"1-02"};
  job::Job no_room = tests::section_job({110, 90, 110}, 18);
  no_room.sections[0].lap_rows->stitch.kept_clear_um = {1'000'000, 1'000'000};
  struct Case {
    const char* name;
    job::Job job;
    const char* said;
    const char* not_said;
  };
  const Case table[] = {
      {"folded", folded, "1-01 left 26.0 16.0 1 1-02 left 118.0 108.0 1 1-03 left", "1-01 right"},
      {"shared", shared, "1-01 left 26.0 16.0 1 1-03 right 248.0 258.0 1 Joining", "1-02 left"},
      {"missing", missing, "list 1-01+03 101.0 101.0 1", "1-02 left"},
      {"no room", no_room, "1-01+02 101.0 not laid 1", "1-01 left 26.0 not laid"}};
  int count = 0;
  for (const Case& one : table) {
    CAPTURE(std::string(one.name));
    const Pictures pages = pages_of(one.job, 0, "A3");
    CAPTURE(words_on(pages));
    CHECK(says(pages, one.said));
    CHECK(!says(pages, one.not_said));
    ++count;
  }
  CHECK(count == 4);
}

TEST_CASE("a list names its rows beside its figures, and before them where a column is too short") {
  job::Job job = tests::section_job(std::vector<Um>(15, 110), 18);
  for (const char* code : {"1-02", "1-04", "1-06", "1-08", "1-10", "1-12", "1-14"}) {
    job.sections[0].changes[code].staple.emplace().kept_clear_um =
        std::array<Um, 2>{40'000, 40'000};
  }
  CHECK(says(pages_of(job, 0, "A4"), "List 1 1-01 left, 1-01 right, 1-03 left"));
  const Pictures small = pages_of(job, 0, "100x140");
  CHECK(says(small, "List 1 serves 1-01 left, 1-01 right, 1-03 left"));
  CHECK(says(small, "List 1 Its rows are named before it. 30 rows: the same list."));
}

TEST_CASE("a code too long for its column ends on the line of its distances") {
  job::Job job = tests::section_job({110}, 0);
  job.sections[0].code = "the north bay";
  const Pictures pages = pages_of(job, 0, "A4");
  const std::vector<drawing::Text> texts = all_of<drawing::Text>(pages[0]);
  int entries = 0;
  for (std::size_t i = 1; i < texts.size(); ++i) {
    if (texts[i].words != "26.0" && texts[i].words != "84.0") continue;
    CHECK(texts[i - 1].words.find(texts[i].words == "26.0" ? "left" : "right") !=
          std::string::npos);
    CHECK(texts[i - 1].at.y == texts[i].at.y);
    ++entries;
  }
  CHECK(entries == 2);
}

TEST_CASE("every page says what it is, whatever the paper, and keeps out of the border") {
  int pages_seen = 0;
  int papers = 0;
  for (const char* name : {"A4", "A3", "Letter", "Tabloid", "100x140", "900x1200"}) {
    const Paper paper = *read_paper(name);
    for (const char* job_name : {"marsh-lights", "harbour-ledger"}) {
      const job::Job job = demo_job(job_name);
      for (const int piece : {0, 1}) {
        const Pictures pages = pages_of(job, piece, name);
        for (std::size_t i = 0; i < pages.size(); ++i) {
          CAPTURE(std::string(name));
          CAPTURE(i);
          const Pictures page = {pages[i]};
          CHECK(faults_on(pages[i], paper) == 0);
          CHECK(says(page, "FRONT"));
          CHECK(says(page, "tick list"));
          CHECK(
              says(page, "page " + std::to_string(i + 1) + " of " + std::to_string(pages.size())));
          CHECK(says(page, "the trial seam"));
          ++pages_seen;
        }
      }
    }
    ++papers;
  }
  CHECK(papers == 6);
  CHECK(pages_seen > 40);
}

TEST_CASE("any job at all gives lists that hold every figure and keep out of the border") {
  tests::Dice dice(20'261'127);
  INFO(dice.words());
  int lists = 0;
  for (int times = 0; times < 60; ++times) {
    const job::Job job = tests::random_job(dice);
    const solve::Results results = solve::solve(job);
    for (std::size_t piece = 0; piece < results.pieces.size(); ++piece) {
      const char* name = dice.once_in(2) ? "A4" : "100x140";
      const TickList list(
          {job, results, static_cast<int>(piece), *read_paper(name), "7aa71e8e320a"});
      if (list.pages() > 300) continue;
      int faults = 0;
      for (std::int64_t i = 0; i < list.pages(); ++i) {
        faults += faults_on(list.page(i), *read_paper(name));
      }
      CHECK(faults == 0);
      ++lists;
    }
  }
  CHECK(lists > 60);
}

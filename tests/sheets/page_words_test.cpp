#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "engine/drawing/taken_room.h"
#include "engine/job/job_json.h"
#include "engine/sheets/full_face.h"
#include "engine/solve/solve.h"
#include "tests/drawing/picture_reading.h"
#include "tests/support/jobs.h"

using namespace pouncemark;
using namespace pouncemark::sheets;

namespace {

bool begins(const drawing::Text& text, const char* with) { return text.words.starts_with(with); }

bool lie_over(const drawing::Text& a, const drawing::Text& b) {
  const drawing::Box p = drawing::box_of(a);
  const drawing::Box q = drawing::box_of(b);
  return p.low.x < q.high.x && q.low.x < p.high.x && p.low.y < q.high.y && q.low.y < p.high.y;
}

struct Told {
  int pages = 0;
  int datum_lines = 0;
  int covered = 0;
  int cautions = 0;
  int fronts = 0;
  int fly_sides = 0;
};

void read_page(const drawing::Drawing& picture, Told* told) {
  const std::vector<drawing::Text> words = tests::all_of<drawing::Text>(picture);
  ++told->pages;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (begins(words[i], "Figures guide")) ++told->cautions;
    if (words[i].words == "FRONT") ++told->fronts;
    if (begins(words[i], "FLY SIDE")) ++told->fly_sides;
    if (!begins(words[i], "datum ")) continue;
    ++told->datum_lines;
    for (std::size_t j = 0; j < words.size(); ++j) {
      if (j != i && lie_over(words[i], words[j])) ++told->covered;
    }
  }
}

Told read_all(const std::string& name) {
  const job::Job job = tests::demo_job(name);
  const solve::Results results = solve::solve(job);
  const Paper paper = *read_paper("A4");
  Told told;
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    const solve::Piece& piece = results.pieces[i];
    const GuideSet set{job,
                       results,
                       static_cast<int>(i),
                       paper,
                       cut_pages(piece.width_um, piece.length_um, paper, *print_check(paper, {})),
                       job::checksum(job)};
    for (std::int64_t page = 0; page < set.cut.pages(); ++page) {
      read_page(full_face_page(set, window_of(set.cut, page)), &told);
    }
  }
  return told;
}

}  // namespace

TEST_CASE("every page says where it lies, its caution and its face, and nothing covers the datum") {
  struct Case {
    const char* name;
    int pages;
  };
  int count = 0;
  for (const Case& one : {Case{"marsh-lights", 48}, Case{"harbour-ledger", 630}}) {
    CAPTURE(std::string(one.name));
    const Told told = read_all(one.name);
    CHECK(told.pages == one.pages);
    CHECK(told.datum_lines == 2 * one.pages);
    CHECK(told.covered == 0);
    CHECK(told.cautions == one.pages);
    CHECK(told.fronts == one.pages);
    ++count;
  }
  CHECK(count == 2);
}

TEST_CASE("a page that shows much of the fly side says FLY SIDE beside it") {
  CHECK(read_all("marsh-lights").fly_sides >= 5);
}

namespace {

/// All words on the pages of a job's first piece, each run of words once.
std::vector<std::string> words_of(const job::Job& job) {
  const solve::Results results = solve::solve(job);
  const solve::Piece& piece = results.pieces[0];
  const Paper paper = *read_paper("A4");
  const GuideSet set{job,
                     results,
                     0,
                     paper,
                     cut_pages(piece.width_um, piece.length_um, paper, *print_check(paper, {})),
                     job::checksum(job)};
  std::vector<std::string> words;
  for (std::int64_t page = 0; page < set.cut.pages(); ++page) {
    const auto picture = full_face_page(set, window_of(set.cut, page));
    for (const drawing::Text& text : tests::all_of<drawing::Text>(picture)) {
      words.push_back(text.words);
    }
  }
  return words;
}

int how_many(const std::vector<std::string>& words, const std::string& part) {
  int count = 0;
  for (const std::string& one : words) count += one.find(part) != std::string::npos ? 1 : 0;
  return count;
}

}  // namespace

TEST_CASE("a row says how its staples are counted, and an exact row where the left-over is") {
  struct Case {
    job::SpacingRule rule;
    job::LeftOver left_over;
    const char* words;
  };
  using enum job::SpacingRule;
  const Case cases[] = {
      {even, job::LeftOver::end, "37 staples, 49.00 centre to centre"},
      {exact, job::LeftOver::end,
       "36 staples, 50.00 centre to centre, 14 left over at the far end"},
      {exact, job::LeftOver::split,
       "36 staples, 50.00 centre to centre, 14 left over, half at each end"},
      {exact, job::LeftOver::extra_point, "37 staples, 50.00 centre to centre, 14 is the last gap"},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(std::string(one.words));
    job::Job job = job::first_sleeve_job();
    job.sections[0].side_rows.staple.rule = one.rule;
    job.sections[0].side_rows.staple.left_over = one.left_over;
    const auto words = words_of(job);
    CHECK(how_many(words, one.words) > 0);
    CHECK(how_many(words, "left over") ==
          (std::string(one.words).find("left over") != std::string::npos
               ? how_many(words, one.words)
               : 0));
    ++seen;
  }
  CHECK(seen == 4);
}

TEST_CASE("a folded sleeve's guide names the fold, a round one's the flange, two leaves neither") {
  job::Job job = job::first_sleeve_job();
  CHECK(how_many(words_of(job), "fold") == 0);
  CHECK(how_many(words_of(job), "flange") == 0);
  job.sections[0].make = job::Make::folded;
  job.sections[0].fold_radius_um = 500;
  job.sections[0].sewn_side = job::Side::left;
  CHECK(how_many(words_of(job), "1-01, fold: not sewn") > 0);
  CHECK(how_many(words_of(job), "1-01 left, 16 in") > 0);
  CHECK(how_many(words_of(job), "1-01 right") == 0);
  job.sections[0].make = job::Make::round;
  job.sections[0].flange_um = 30'000;
  CHECK(how_many(words_of(job), "1-01, flange") > 0);
}

TEST_CASE("an open stop stands on every page in lines no longer than the caution") {
  const job::Job job = tests::demo_job("harbour-ledger");
  const solve::Results results = solve::solve(job);
  const Paper paper = *read_paper("A4");
  const solve::Piece& piece = results.pieces[1];
  const GuideSet set{job,
                     results,
                     1,
                     paper,
                     cut_pages(piece.width_um, piece.length_um, paper, *print_check(paper, {})),
                     job::checksum(job)};
  const std::size_t most =
      std::string("Figures guide; the trial seam and the dry run decide.").size();
  int stops = 0;
  for (std::int64_t page = 0; page < set.cut.pages(); ++page) {
    for (const drawing::Text& text :
         tests::all_of<drawing::Text>(full_face_page(set, window_of(set.cut, page)))) {
      if (!begins(text, "STOP: section 2, all 16 laps")) continue;
      ++stops;
      CHECK(text.words.size() <= most);
    }
  }
  CHECK(stops == set.cut.pages());
}

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

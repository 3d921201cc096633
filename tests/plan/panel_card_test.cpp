#include "engine/plan/panel_card.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using plan::PanelCard;

namespace {

/// The card of the last piece, front up.
struct Made {
  solve::Results results;
  PanelCard card;
};

Made made(const job::Job& job, bool is_face_down = false) {
  Made one{solve::solve(job), {}};
  one.card = plan::panel_card(job, one.results, static_cast<int>(one.results.pieces.size()) - 1,
                              is_face_down);
  return one;
}

std::string words_of(const plan::CardCell& cell) {
  return cell.figure + ", " + cell.over + ", " + cell.beside;
}

/// One panel in one bay.
job::Job in_a_bay(Um chord_mm, Um rise_mm, const char* face) {
  job::Job job = tests::panel_job(690, 1420, "left");
  job::Bay bay;
  bay.code = "B7";
  bay.chord_um = chord_mm * 1'000;
  bay.rise_um = rise_mm * 1'000;
  bay.face = face;
  bay.holds = "P1";
  job.bays.push_back(bay);
  return job;
}

}  // namespace

TEST_CASE("a panel card says the creep of its bay, and the bare backing it needs") {
  struct Case {
    Um chord_mm;
    Um rise_mm;
    const char* face;
    std::string creep;
    std::string surplus;
    plan::Creep way;
  };
  // source: slip distance 1.5 x turn; 1000/150 turns 66.80 degrees, 1.749; 665/93 62.64, 1.640.
  const std::vector<Case> cases = {
      {1000, 150, "hollow", "1.7, moves, OUT", "2, at least, has 12, assumed", plan::Creep::out},
      {1000, 150, "bulging", "1.7, moves, IN", "0, at least, has 12, assumed", plan::Creep::in},
      {665, 93, "hollow", "1.6, moves, OUT", "2, at least, has 12, assumed", plan::Creep::out},
      {665, 0, "hollow", "0, does not, move", "0, at least, has 12, assumed", plan::Creep::none}};
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.chord_mm);
    const Made it = made(in_a_bay(one.chord_mm, one.rise_mm, one.face));
    CHECK(words_of(it.card.cells[0]) == one.creep);
    CHECK(words_of(it.card.cells[1]) == one.surplus);
    CHECK(it.card.creep == one.way);
    CHECK(it.card.of == "in bay B7");
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("a panel that no bay holds says so, and nothing is guessed") {
  const Made it = made(tests::panel_job(690, 1420, "left"));
  CHECK(it.card.of == "in no bay");
  CHECK(words_of(it.card.cells[0]) == "?, , no bay holds it");
  CHECK(words_of(it.card.cells[1]) == "?, , has 12, assumed");
  CHECK(words_of(it.card.cells[2]) == "?, , no bay holds it");
}

TEST_CASE("a panel card lists its rows as they are pricked and sewn") {
  const Made it = made(tests::panel_job(690, 1420, "left"));
  std::vector<std::string> rows;
  for (const plan::PanelRow& row : it.card.rows) {
    rows.push_back(row.name + " " + row.in_from_edge + " " + row.stitch + " " + row.points + " " +
                   row.first + " " + row.last);
  }
  // source: 1420 - 32 is 29 gaps of at most 48; 690 - 32 is 14.
  CHECK(rows == std::vector<std::string>{"hinge side 16 5.5 30 16 1404", "top 16 5.5 15 16 674",
                                         "bottom 16 5.5 15 16 674"});
  CHECK(it.card.lines[0] ==
        "Backing 690 × 1420, 1 thick. Cloth ends 8 in from the sewn edges, 12 from the fly side, "
        "assumed.");
}

TEST_CASE("the fly side is named as the panel lies, front up and face down") {
  struct Case {
    const char* hinge;
    bool is_face_down;
    const char* words;
  };
  const std::vector<Case> cases = {{"left", false, "FLY SIDE - DO NOT SEW: the right edge"},
                                   {"left", true, "FLY SIDE - DO NOT SEW: the left edge"},
                                   {"right", false, "FLY SIDE - DO NOT SEW: the left edge"},
                                   {"right", true, "FLY SIDE - DO NOT SEW: the right edge"}};
  int ran = 0;
  for (const Case& one : cases) {
    CHECK(made(tests::panel_job(690, 1420, one.hinge), one.is_face_down).card.band == one.words);
    ++ran;
  }
  CHECK(ran == 4);
}

TEST_CASE("what is amiss with the panel or its bay stands on its card, notes do not") {
  const Made tight = made(in_a_bay(200, 90, "hollow"));
  REQUIRE(!tight.card.findings.empty());
  CHECK(tight.card.findings[0].starts_with("STOP "));
  job::Job easy = in_a_bay(710, 20, "hollow");
  easy.panels[0].panel_in_um = 20'000;
  easy.needle_size = 100;
  CHECK(made(easy).card.findings == std::vector<std::string>{});
}

TEST_CASE("cloth said to lie somewhere is not called assumed") {
  job::Job job = tests::panel_job(690, 1420, "left");
  job.panels[0].cloth = job::ClothPlace();
  job.panels[0].cloth->in_from_edge_um = 9'000;
  job.panels[0].cloth->in_from_fly_side_um = 14'500;
  const Made it = made(job);
  CHECK(it.card.lines[0] ==
        "Backing 690 × 1420, 1 thick. Cloth ends 9 in from the sewn edges, 14.5 from the fly "
        "side.");
  CHECK(it.card.cells[1].beside == "has 14.5");
}

TEST_CASE("rows that stop short of the fly side say where, and list their last hole") {
  job::Job job = tests::panel_job(690, 1420, "left");
  CHECK(made(job).card.lines.size() == 1);
  job.panels[0].rows_stop_um = 302'500;
  const Made it = made(job);
  CHECK(it.card.lines[0] == "Rows STOP at 302.5 from the hinge side; the rest stays free.");
  REQUIRE(it.card.rows.size() == 3);
  const solve::Row& top = it.results.rows[static_cast<std::size_t>(it.card.rows[1].index)];
  CHECK(top.run.last_um() <= 302'500);
  CHECK(top.run.last_um() > 297'000);
}

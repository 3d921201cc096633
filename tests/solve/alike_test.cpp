#include "engine/solve/alike.h"

#include "engine/solve/solve.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using pouncemark::solve::Finding;
using pouncemark::tests::demo_job;

namespace {

std::vector<std::string> places_of(const std::vector<Finding>& findings) {
  std::vector<std::string> places;
  for (const Finding& finding : findings) places.push_back(finding.place);
  return places;
}

/// Two sections and a panel, and of the first section one finding for each sentence given.
solve::Results pieces_with(const std::vector<std::pair<int, std::string>>& said) {
  solve::Results results;
  results.pieces.resize(3);
  const char* const codes[] = {"A", "B", "P"};
  const char* const before[] = {"section A", "section B", "panel P"};
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    results.pieces[i].code = codes[i];
    results.pieces[i].kind = i == 2 ? solve::PieceKind::panel : solve::PieceKind::section;
  }
  for (const auto& [piece, sentence] : said) {
    Finding finding;
    finding.piece = piece;
    finding.place = std::string(before[piece]) + ", row 1";
    finding.sentence = sentence;
    results.findings.push_back(finding);
  }
  return results;
}

using Places = std::vector<std::string>;

}  // namespace

TEST_CASE("a hundred and twenty findings of sixty sections are two lines, each naming all sixty") {
  const solve::Results results = solve::solve(demo_job("orchard-year"));
  CHECK(results.findings.size() == 122);  // on the bench every section has its own
  CHECK(places_of(solve::alike_as_one(results)) == Places{"sections 1 to 60, all 23 laps each",
                                                          "sections 1 to 60, all 23 laps each",
                                                          "the whole job", "the whole job"});
}

TEST_CASE("one section that measures otherwise has a line of its own") {
  job::Job job = demo_job("orchard-year");
  job.sections[6].lap_um += 1'000;
  const Places places = places_of(solve::alike_as_one(solve::solve(job)));
  REQUIRE(places.size() > 2);
  const std::string without = places[0];
  CHECK(without.find("sections 1, 2, 3, 4, 5, 6, 8, 9, ") == 0);
  CHECK(without.find(" and 60, all 23 laps each") != std::string::npos);
  CHECK(places[1].find("section 7, ") == 0);
}

TEST_CASE("two sections that say the same are one, and a panel is never one with them") {
  CHECK(places_of(solve::alike_as_one(pieces_with({{0, "Wide."}, {1, "Wide."}, {2, "Wide."}}))) ==
        Places{"sections A and B, row 1 each", "panel P, row 1"});
  CHECK(places_of(solve::alike_as_one(pieces_with({{0, "Wide."}, {1, "Wider."}}))) ==
        Places{"section A, row 1", "section B, row 1"});
  CHECK(places_of(solve::alike_as_one(pieces_with({{0, "Wide."}, {0, "Wide."}}))) ==
        Places{"section A, row 1", "section A, row 1"});
}

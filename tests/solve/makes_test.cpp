#include "engine/solve/seam_choice.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "tests/support/rows.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::solve;
using pouncemark::tests::demo_job;
using pouncemark::tests::findings_of;
using pouncemark::tests::row_of;
using pouncemark::tests::section_job;
using pouncemark::tests::stops_in;

namespace {

/// Stitch rows by their codes, in order.
std::vector<std::string> stitch_codes(const job::Job& job) {
  std::vector<std::string> codes;
  for (const Row& row : solve::solve(job).rows) {
    if (row.kind == RowKind::stitch) codes.push_back(row.code);
  }
  return codes;
}

job::Job made(job::Make make, job::Side sewn, int count = 1) {
  job::Job job =
      section_job(std::vector<Um>(static_cast<std::size_t>(count), 120), count > 1 ? 20 : 0);
  job::Section& section = job.sections[0];
  section.make = make;
  section.fold_radius_um = 500;
  section.flange_um = 30'000;
  section.sewn_side = sewn;
  return job;
}

job::Job without(std::vector<std::string> missing) {
  job::Job job = section_job({100, 110, 120, 130, 140}, 20);
  job.sections[0].missing = std::move(missing);
  return job;
}

using Codes = std::vector<std::string>;

}  // namespace

TEST_CASE("a folded sleeve is sewn at its sewn side only, two leaves at both") {
  CHECK(stitch_codes(made(job::Make::two_leaf, job::Side::left)) ==
        Codes{"1-01 left", "1-01 right"});
  CHECK(stitch_codes(made(job::Make::folded, job::Side::left)) == Codes{"1-01 left"});
  CHECK(stitch_codes(made(job::Make::folded, job::Side::right)) == Codes{"1-01 right"});
  CHECK(stitch_codes(made(job::Make::round, job::Side::left)) == Codes{"1-01 left"});
}

TEST_CASE("a folded sleeve carries its blank and its fold line, a round one its flange line") {
  const Sleeve folded = solve::solve(made(job::Make::folded, job::Side::left)).pieces[0].sleeves[0];
  CHECK(folded.blank.count == 1);
  CHECK(folded.blank.width_um == 240'463);  // source: the folded blank of 120, 0.25, 0.5, by hand
  CHECK(folded.blank.fold_um == 120'232);
  const Sleeve round = solve::solve(made(job::Make::round, job::Side::left)).pieces[0].sleeves[0];
  CHECK(round.blank.fold_um == 30'000);
  CHECK(solve::solve(section_job({120}, 0)).pieces[0].sleeves[0].blank.count == 2);
}

TEST_CASE("a row of a round sleeve stands in the flange or is a stop") {
  job::Job job = made(job::Make::round, job::Side::right);
  job.sections[0].side_rows.staple.in_from_edge_um = 30'000;
  CHECK(findings_of(solve::solve(job), "row_not_laid").empty());
  job.sections[0].side_rows.staple.in_from_edge_um = 30'001;
  const auto off = findings_of(solve::solve(job), "row_not_laid");
  CHECK(off.size() == 1);
  CHECK(off[0].severity == Severity::stop);
  CHECK(off[0].sentence.find("sewn in its flange only") != std::string::npos);
  CHECK(off[0].sentence.find("30.001 in from the edge; needed at most 30") != std::string::npos);
  CHECK(row_of(solve::solve(job), "1-01 right", RowKind::staple).code.empty());
  CHECK(row_of(solve::solve(job), "1-01 right", RowKind::stitch).run.points() > 2);
}

TEST_CASE("round sleeves are not joined through their tubes: each lap is in one stop") {
  const Results results = solve::solve(made(job::Make::round, job::Side::right, 4));
  CHECK(results.totals.lap_rows == 0);
  const auto stops = findings_of(results, "row_not_laid");
  CHECK(stops.size() == 1);
  CHECK(stops[0].place == "section 1, 3 rows");
  CHECK(solve::solve(made(job::Make::folded, job::Side::right, 4)).totals.lap_rows == 3);
}

TEST_CASE("shared side seams leave side rows on the outermost long edges only") {
  job::Job job = section_job({100, 100, 100}, 20);
  CHECK(stitch_codes(job) == Codes{"1-01 left", "1-01 right", "1-02 left", "1-02 right",
                                   "1-03 left", "1-03 right", "1-01+02", "1-02+03"});
  job.sections[0].side_seams = job::SideSeams::shared;
  CHECK(stitch_codes(job) == Codes{"1-01 left", "1-03 right", "1-01+02", "1-02+03"});
  job.sections[0].make = job::Make::folded;
  job.sections[0].fold_radius_um = 500;
  job.sections[0].sewn_side = job::Side::right;
  CHECK(stitch_codes(job) == Codes{"1-03 right", "1-01+02", "1-02+03"});
  job.sections[0].sewn_side = job::Side::left;
  CHECK(stitch_codes(job) == Codes{"1-01 left", "1-01+02", "1-02+03"});
}

TEST_CASE("a sleeve on its own has the same rows whether its seams would be shared or not") {
  job::Job job = section_job({100}, 0);
  const Codes separate = stitch_codes(job);
  job.sections[0].side_seams = job::SideSeams::shared;
  CHECK(stitch_codes(job) == separate);
  CHECK(separate.size() == 2);
}

TEST_CASE("the checks look at side rows that are there: shared seams say nothing of the others") {
  job::Job job = section_job({100, 100, 100}, 20);
  job.sections[0].side_rows.staple.staples = job::StaplesOut::stay;
  job.sections[0].side_rows.staple.in_from_edge_um = 20'000;
  const auto separate = findings_of(solve::solve(job), "staple_under_foot");
  CHECK(!separate.empty());
  CHECK(separate[0].place == "section 1, all 3 sleeves");
  job.sections[0].side_seams = job::SideSeams::shared;
  const auto shared = findings_of(solve::solve(job), "staple_under_foot");
  CHECK(!shared.empty());
  CHECK(shared[0].place == "section 1, 2 sleeves");
}

TEST_CASE("92 sleeves in 6 sections: 270 rows separate, 98 shared, 64,844 holes fewer") {
  // source: 184 + 86 and 86 + 12 rows, 172 fewer of 377 holes each, by hand
  const job::Job job = demo_job("harbour-ledger");
  const SeamCount separate = count_seams(job, job::SideSeams::separate);
  const SeamCount shared = count_seams(job, job::SideSeams::shared);
  CHECK(separate.rows == 270);
  CHECK(shared.rows == 98);
  CHECK(separate.stitch_holes - shared.stitch_holes == 64'844);
  CHECK(separate.row_um - shared.row_um == 172 * Um{2'256'000});
  CHECK(separate.staples == 7'912 + 3'698);
  CHECK(shared.staples == 12 * 43 + 3'698);
}

TEST_CASE("the two ways of counting seams agree with what is laid") {
  job::Job job = demo_job("marsh-lights");
  for (const auto seams : {job::SideSeams::separate, job::SideSeams::shared}) {
    for (job::Section& section : job.sections) section.side_seams = seams;
    const Results results = solve::solve(job);
    const SeamCount count = count_seams(job, seams);
    CHECK(count.rows == results.totals.side_rows + results.totals.lap_rows);
    CHECK(count.staples == results.totals.side_staples + results.totals.lap_staples);
  }
}

TEST_CASE("a missing sleeve keeps its number free and its neighbours lap one another") {
  const Piece piece = solve::solve(without({"1-03"})).pieces[0];
  CHECK(piece.sleeves.size() == 4);
  CHECK(piece.sleeves[2].code == "1-04");
  CHECK(piece.sleeves[2].number == 3);
  CHECK(piece.sleeves[2].width_um == 130'000);
  CHECK(piece.width_um == 420'000);  // source: 100 + 110 + 130 + 140 - 3 * 20, by hand
  CHECK(piece.worst_um == 5'500);    // source: 4 * 1 + 3 * 0.5, by hand
  CHECK(!row_of(solve::solve(without({"1-03"})), "1-02+04", RowKind::stitch).code.empty());
  CHECK(row_of(solve::solve(without({"1-03"})), "1-02+03", RowKind::stitch).code.empty());
  CHECK(!row_of(solve::solve(without({})), "1-02+03", RowKind::stitch).code.empty());
}

TEST_CASE("a gap in the numbers is reported where it is, at an edge too") {
  struct Case {
    Codes missing;
    Codes sentences;
  };
  const Case cases[] = {
      {{}, {}},
      {{"1-03"}, {"1-03 is missing: the codes go from 1-02 to 1-04."}},
      {{"1-01"}, {"1-01 is missing: the codes go from the left edge to 1-02."}},
      {{"1-05"}, {"1-05 is missing: the codes go from 1-04 to the right edge."}},
      {{"1-03", "1-02"}, {"1-02 to 1-03 are missing: the codes go from 1-01 to 1-04."}},
      {{"1-02", "1-04"},
       {"1-02 is missing: the codes go from 1-01 to 1-03.",
        "1-04 is missing: the codes go from 1-03 to 1-05."}},
  };
  int seen = 0;
  for (const Case& one : cases) {
    const auto found = findings_of(solve::solve(without(one.missing)), "code_missing");
    CHECK(found.size() == one.sentences.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
      CHECK(found[i].sentence == one.sentences[i] + " Nothing was renumbered.");
      CHECK(found[i].place == "section 1");
      CHECK(found[i].severity == Severity::warn);
    }
    ++seen;
  }
  CHECK(seen == 6);
}

TEST_CASE(
    "six sections give 92 codes, each once, and sleeve 15 of section 2 lies between 14 and 16") {
  const Results results = solve::solve(demo_job("harbour-ledger"));
  std::vector<std::string> codes;
  for (const Piece& piece : results.pieces) {
    for (const Sleeve& sleeve : piece.sleeves) codes.push_back(sleeve.code);
  }
  CHECK(codes.size() == 92);
  std::sort(codes.begin(), codes.end());
  CHECK(std::adjacent_find(codes.begin(), codes.end()) == codes.end());
  const Piece& second = results.pieces[1];
  CHECK(second.sleeves[13].code == "2-14");
  CHECK(second.sleeves[14].code == "2-15");
  CHECK(second.sleeves[15].code == "2-16");
}

TEST_CASE("gaps in the codes of pieces, codes used twice and bays that hold nothing are said") {
  job::Job job = demo_job("harbour-ledger");
  CHECK(findings_of(solve::solve(job), "code_missing").empty());
  CHECK(findings_of(solve::solve(job), "code_used_twice").empty());
  job::Job gap = job;
  gap.panels.erase(gap.panels.begin() + 2);
  const auto missing = findings_of(solve::solve(gap), "code_missing");
  CHECK(missing.size() == 2);
  CHECK(missing[0].sentence.find("P3 is missing: the codes go from P2 to P4.") == 0);
  CHECK(missing[1].sentence.find("P3 hangs in bay ") == 0);
  job::Job empty = gap;
  for (job::Bay& bay : empty.bays) bay.stands_empty = bay.holds == "P3";
  CHECK(findings_of(solve::solve(empty), "code_missing").size() == 1);
  job::Job odd = gap;
  odd.bays.clear();
  for (job::Panel& panel : odd.panels) panel.code.insert(1, "0");  // P01, P02, P04, P05
  CHECK(findings_of(solve::solve(odd), "code_missing").empty());
  job::Job twice = job;
  twice.bays[0].holds = twice.bays[2].holds;
  CHECK(findings_of(solve::solve(twice), "code_used_twice").size() == 1);
  job::Job same = job;
  same.sections[3].code = "1-07";
  same.bays.clear();
  const auto used = findings_of(solve::solve(same), "code_used_twice");
  CHECK(used.size() == 1);
  CHECK(used[0].sentence == "1-07 appears twice: it names section 1-07 and a sleeve of section 1.");
}

TEST_CASE("a last gap shorter than asked is said once for all the rows that have it") {
  job::Job job = section_job({110}, 0);
  job::StapleRow& row = job.sections[0].side_rows.staple;
  row.rule = job::SpacingRule::exact;
  row.left_over = job::LeftOver::extra_point;
  const auto short_gap = findings_of(solve::solve(job), "short_last_gap");
  CHECK(short_gap.size() == 1);
  CHECK(short_gap[0].place == "section 1, 2 rows");
  CHECK(short_gap[0].figure == "14.0");  // source: 1800 - 2 * 18 - 35 * 50, by hand
  row.left_over = job::LeftOver::end;
  CHECK(findings_of(solve::solve(job), "short_last_gap").empty());
  row.left_over = job::LeftOver::extra_point;
  row.spacing_um = 49'000;  // divides 1764
  CHECK(findings_of(solve::solve(job), "short_last_gap").empty());
}

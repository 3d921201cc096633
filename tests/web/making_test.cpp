#include "web/model/making.h"

#include "engine/job/job_json.h"
#include "engine/solve/solve.h"
#include "tests/support/jobs.h"
#include "web/model/bench.h"
#include "web/model/words.h"

#include <doctest/doctest.h>

#include <functional>
#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::web;
using pouncemark::tests::demo_job;

namespace {

job::Job lone() { return job::first_sleeve_job(); }

SectionPlan plan(int count, std::vector<Um> widths_um, Um lap_um) {
  return {count, std::move(widths_um), lap_um, job::Side::right};
}

/// 14 sleeves with a change and a missing one among the last.
job::Job fourteen() {
  job::Job job = with_plan(lone(), 0, plan(14, {110'000}, 18'000)).job;
  job.sections[0].changes["1-13"].width_um = 90'000;
  job.sections[0].missing = {"1-12", "1-03"};
  job.bays.push_back({"B1", 1'000'000, 0, "hollow", "1", false, {}, {}, {}});
  return job;
}

bool opens(const job::Job& job) {
  const Result<job::OpenedJob> opened = job::open_job(job::save_job(job));
  return opened && job::save_job(opened->job) == job::save_job(job);
}

/// Something a hand asks for, what it leads to in words, and a neighbour that is refused.
struct Case {
  std::string what;
  job::Job job;
  std::function<Made(const job::Job&)> act;
  std::string action;
  job::Job other;
  std::function<Made(const job::Job&)> refused_act;
  std::string sentence;
};

Made planned(const job::Job& job, SectionPlan asked) { return with_plan(job, 0, asked); }

std::vector<Case> plan_cases() {
  const auto with = [](SectionPlan asked) {
    return [asked](const job::Job& job) { return planned(job, asked); };
  };
  return {
      {"a section of 14", lone(), with(plan(14, {110'000}, 18'000)),
       "Made section 1 of 14 sleeves, widths 110, lap 18", lone(), with(plan(0, {110'000}, 18'000)),
       "0 sleeves make no section. Give a whole number from 1 to 1,000."},
      {"1,000 sleeves", lone(), with(plan(1'000, {110'000}, 18'000)),
       "Made section 1 of 1,000 sleeves, widths 110, lap 18", lone(),
       with(plan(1'001, {110'000}, 18'000)),
       "1,001 sleeves are too many for a section. Give a whole number from 1 to 1,000."},
      {"a lap 1 narrower than the narrowest", lone(), with(plan(3, {110'000, 96'000}, 95'000)),
       "Made section 1 of 3 sleeves, widths 110, 96, lap 95", lone(),
       with(plan(3, {110'000, 96'000}, 96'000)),
       "A lap of 96 is too wide: the narrowest sleeve is 96 wide. Give a lap of 95 or less."},
      {"a count and a pattern later", fourteen(), with(plan(12, {110'000, 96'000}, 18'000)),
       "Section 1: 12 sleeves, was 14; widths 110, 96, was 110", fourteen(),
       with(plan(14, {}, 18'000)), "No width: give one, or several in turn, \"110, 96, 110\"."},
      {"no wider than a section may be", lone(), with(plan(1'000, {100'000}, 1'000)),
       "Made section 1 of 1,000 sleeves, widths 100, lap 1", lone(),
       with(plan(1'000, {102'000}, 1'000)), "The section would be 101001 wide. Give other widths."},
  };
}

std::vector<Case> piece_cases() {
  const job::Job ledger = demo_job("harbour-ledger");
  const auto code = [](int piece, std::string text) {
    return [piece, text](const job::Job& job) { return with_code(job, piece, text); };
  };
  const auto name = [](std::string text) {
    return [text](const job::Job& job) { return with_name(job, text); };
  };
  const auto moved = [](int piece, int by) {
    return [piece, by](const job::Job& job) { return with_piece_moved(job, piece, by); };
  };
  return {
      {"a name", lone(), name(" Kiln Row "), "Named the job Kiln Row, was First sleeve", lone(),
       name("  "), "The name of the job is empty: write 1 to 120 signs."},
      {"a name of 120", lone(), name(std::string(120, 'x')),
       "Named the job " + std::string(39, 'x') + "\xE2\x80\xA6, was First sleeve", lone(),
       name(std::string(300, 'x')), "The name of the job is 300 signs long: write at most 120."},
      {"a name with marks", lone(), name("<b>1</b>"), "Named the job <b>1</b>, was First sleeve",
       lone(), name("a\x7f"),
       "The name of the job holds a control sign: write it with letters, figures and marks only."},
      {"a name in other letters", lone(), name("\xD7\x90\xD7\x91"),
       "Named the job \xD7\x90\xD7\x91, was First sleeve", lone(), name("\xC2\x85x"),
       "The name of the job holds a control sign: write it with letters, figures and marks only."},
      {"a code", ledger, code(0, "South"), "Section 1 is now called South", ledger, code(0, "P3"),
       "The code P3 is used already, by panel P3: choose another."},
      {"a code with a dash", ledger, code(6, "2-99"), "Panel P1 is now called 2-99", ledger,
       code(6, "2-05"), "The code 2-05 is used already, by a sleeve of section 2: choose another."},
      {"earlier", ledger, moved(1, -1), "Moved section 2 earlier", ledger, moved(0, -1),
       "Section 1 is the first of the sections: panels stand after the sections. Move another "
       "piece."},
      {"later", ledger, moved(6, 1), "Moved panel P1 later", ledger, moved(5, 1),
       "Section 6 is the last of the sections: panels stand after the sections. Move another "
       "piece."},
      {"new numbers", with_piece_moved(ledger, 0, 1).job,
       [](const job::Job& job) { return with_new_numbers(job, 0); },
       "Numbered the pieces anew: 1 to 6, P1 to P5", ledger,
       [](const job::Job& job) { return with_new_numbers(job, 0); },
       "The pieces are numbered in their order already: nothing to do."},
      {"a panel", lone(), [](const job::Job& job) { return with_panel(job, {}); },
       "Added panel P1, 690 \xC3\x97 1420, hinge side at the left", lone(),
       [](const job::Job& job) {
         return with_panel(job, {900, 1'420'000, job::Side::left});
       },
       "0.9 is no side of a panel: give 1 to 20000."},
  };
}

int check_cases(const std::vector<Case>& cases) {
  int ran = 0;
  for (const Case& one : cases) {
    CAPTURE(one.what);
    const Made made = one.act(one.job);
    CHECK(made.refused == "");
    CHECK(made.action == one.action);
    CHECK(opens(made.job));
    const Made no = one.refused_act(one.other);
    CHECK(no.refused == one.sentence);
    CHECK(job::save_job(no.job) == job::save_job(one.other));
    CHECK(no.action == "");
    ++ran;
  }
  return ran;
}

const std::vector<job::Section>& sections(const Made& made) { return made.job.sections; }

}  // namespace

TEST_CASE("what a hand makes of a section opens again, and what it cannot make leaves the job") {
  CHECK(check_cases(plan_cases()) == 5);
}

TEST_CASE("pieces are named, moved, numbered and added, or a sentence says why not") {
  CHECK(check_cases(piece_cases()) == 10);
}

TEST_CASE(
    "14 sleeves of 110 at a lap of 18 are 1306 wide and could end up 4.2 off, 20.5 at worst") {
  const Made made = with_plan(lone(), 0, plan(14, {110'000}, 18'000));
  const solve::Results results = solve::solve(made.job);
  // source: 14 * 110 - 13 * 18 = 1306; sqrt(14 * 1 + 13 * 0.25) = 4.15; 14 + 13 / 2 = 20.5.
  CHECK(results.pieces[0].width_um == 1'306'000);
  CHECK(results.pieces[0].likely_um == 4'153);
  CHECK(results.pieces[0].worst_um == 20'500);
  CHECK(results.totals.lap_rows == 13);
  for (const solve::Finding& finding : results.findings) {
    CHECK(finding.severity != solve::Severity::stop);
  }
}

TEST_CASE("what would follow from a plan is said before it is kept, or why it cannot be") {
  const Foretold would = foretold(lone(), 0, plan(14, {110'000}, 18'000));
  const std::vector<std::string> lines = {"1306 wide",
                                          "could end up \xC2\xB1"
                                          "4.2 (at worst \xC2\xB1"
                                          "20.5)",
                                          "28 side rows, 13 joining rows",
                                          "1,517 staples, 12,095 stitch holes"};
  CHECK(would.follows == lines);
  CHECK(would.refused == "");
  CHECK(foretold(lone(), 0, plan(14, {110'000}, 110'000)).follows.empty());
  CHECK(foretold(lone(), 0, plan(14, {110'000}, 110'000)).refused ==
        "A lap of 110 is too wide: the narrowest sleeve is 110 wide. Give a lap of 109 or less.");
}

TEST_CASE("a lone sleeve is offered two with a lap of 18, a narrow one half its width") {
  CHECK(plan_of(lone().sections[0]) == plan(2, {110'000}, 18'000));
  job::Job narrow = lone();
  narrow.sections[0].widths_um = {30'000};
  CHECK(plan_of(narrow.sections[0]).lap_um == 15'000);
  CHECK(plan_of(fourteen().sections[0]) == plan(14, {110'000}, 18'000));
}

TEST_CASE("fewer sleeves forget what differed on those beyond, and never leave only missing ones") {
  const Made made = planned(fourteen(), plan(12, {110'000}, 18'000));
  CHECK(sections(made)[0].changes.empty());
  CHECK(sections(made)[0].missing == std::vector<std::string>{"1-12", "1-03"});
  CHECK(sections(planned(fourteen(), plan(11, {110'000}, 18'000)))[0].missing ==
        std::vector<std::string>{"1-03"});
  job::Job first = fourteen();
  first.sections[0].missing = {"1-01"};
  CHECK(planned(first, plan(1, {110'000}, 18'000)).refused ==
        "The sleeves left over are all missing: put one back first, or give more sleeves.");
}

TEST_CASE("which neighbour lies over is said only where it is the left one") {
  SectionPlan asked = plan(3, {110'000}, 18'000);
  asked.lies_over = job::Side::left;
  const Made left = planned(lone(), asked);
  CHECK(sections(left)[0].lies_over == job::Side::left);
  CHECK(plan_of(sections(left)[0]).lies_over == job::Side::left);
  asked.lies_over = job::Side::right;
  const Made right = planned(left.job, asked);
  CHECK(right.action == "Section 1: each sleeve lies over its right neighbour");
  CHECK_FALSE(sections(right)[0].lies_over.has_value());
}

TEST_CASE("a code takes the bay, the changes and the missing sleeves with it") {
  const Made made = with_code(fourteen(), 0, "South");
  CHECK(made.job.bays[0].holds == "South");
  CHECK(sections(made)[0].changes.count("South-13") == 1);
  CHECK(sections(made)[0].missing == std::vector<std::string>{"South-12", "South-03"});
  CHECK(job::save_job(with_code(made.job, 0, "1").job) == job::save_job(fourteen()));
}

TEST_CASE("new numbers follow the order, and every bay still holds the same piece") {
  const job::Job ledger = demo_job("harbour-ledger");
  const Made moved = with_piece_moved(ledger, 0, 1);
  const Made made = with_new_numbers(moved.job, 0);
  CHECK(sections(made)[0].widths_um == ledger.sections[1].widths_um);
  CHECK(sections(made)[0].code == "1");
  CHECK(made.job.bays[0].holds == "2");
  CHECK(made.job.bays[2].holds == "1");
  CHECK(made.job.bays[1].holds == "P1");
  CHECK(opens(made.job));
}

TEST_CASE("a copy stands right after its piece under the next free code; the bays stay") {
  const job::Job ledger = demo_job("harbour-ledger");
  const Made section = with_copy(ledger, 0);
  CHECK(section.piece == 1);
  CHECK(sections(section)[1].code == "7");
  CHECK(section.job.bays.size() == ledger.bays.size());
  CHECK(section.job.bays[0].holds == "1");
  const Made panel = with_copy(ledger, 6);
  CHECK(panel.job.panels[1].code == "P6");
  CHECK(panel.action == "Copied panel P1 as P6");
  const Made changed = with_copy(fourteen(), 0);
  CHECK(sections(changed)[1].changes.count("2-13") == 1);
  for (const Made& made : {section, panel, changed}) CHECK(opens(made.job));
}

TEST_CASE("a piece that is taken away leaves its bay empty, and nothing is said to be missing") {
  const job::Job ledger = demo_job("harbour-ledger");
  const Made made = without_piece(ledger, 10);
  CHECK(made.action == "Took panel P5 away; bay B10 stands empty");
  CHECK(made.job.bays[9].stands_empty);
  CHECK(made.job.panels.size() == 4);
  CHECK(opens(made.job));
  for (const solve::Finding& finding : solve::solve(made.job).findings) {
    CHECK(finding.code != "code_missing");
  }
  CHECK(without_piece(lone(), 0).job.sections.empty());
}

TEST_CASE("1,000 panels are as many as a job takes, 20,000 sleeves too") {
  job::Job many = with_panel(lone(), {}).job;
  many.panels.resize(999, many.panels[0]);
  CHECK(with_panel(many, {}).refused == "");
  many.panels.resize(1'000, many.panels[0]);
  CHECK(with_panel(many, {}).refused ==
        "1,000 panels are as many as a job takes: take one away first.");
  job::Job sleeves = with_plan(lone(), 0, plan(1'000, {110'000}, 18'000)).job;
  sleeves.sections.resize(20, sleeves.sections[0]);
  CHECK(with_copy(sleeves, 0).refused ==
        "21,000 sleeves in all are too many for one job: give fewer, at most 20,000.");
}

TEST_CASE("everything that is made is one action, and undo gives the bytes as before") {
  Bench bench;
  bench.start_with_sleeve();
  const std::string start = bench.file_bytes();
  const std::function<Made(const job::Job&)> acts[] = {
      [](const job::Job& job) { return with_plan(job, 0, plan(14, {110'000}, 18'000)); },
      [](const job::Job& job) { return with_panel(job, {}); },
      [](const job::Job& job) { return with_section(job); },
      [](const job::Job& job) { return with_copy(job, 0); },
      [](const job::Job& job) { return with_code(job, 1, "South"); },
      [](const job::Job& job) { return with_name(job, "Kiln Row"); },
      [](const job::Job& job) { return with_piece_moved(job, 0, 1); },
      [](const job::Job& job) { return with_new_numbers(job, 0); },
      [](const job::Job& job) { return without_piece(job, 1); },
  };
  int done = 0;
  for (const auto& act : acts) {
    const Made made = act(bench.now().job);
    CHECK(made.refused == "");
    const std::string before = bench.file_bytes();
    bench.edit(made.job, made.action);
    CHECK(bench.last_action() == made.action);
    CHECK(bench.file_bytes() != before);
    ++done;
  }
  CHECK(done == 9);
  while (bench.can_undo()) bench.undo();
  CHECK(bench.file_bytes() == start);
}

TEST_CASE("a count is a whole number from 1 to 1,000; what is typed else is said back") {
  CHECK(read_count(" 14 ").count == 14);
  CHECK(read_count("1000").count == 1'000);
  const std::pair<const char*, const char*> wrong[] = {
      {"0", "0 sleeves make no section."},
      {"10000", "10,000 sleeves are too many for a section."},
      {"1e3", "\"1e3\" is no count of sleeves."},
      {"abc", "\"abc\" is no count of sleeves."},
      {"", "\"\" is no count of sleeves."},
      {"-3", "\"-3\" is no count of sleeves."},
      {"12.5", "\"12.5\" is no count of sleeves."},
  };
  int ran = 0;
  for (const auto& one : wrong) {
    CAPTURE(one.first);
    CHECK(read_count(one.first).count == 0);
    CHECK(read_count(one.first).sentence ==
          one.second + std::string(" Give a whole number from 1 to 1,000."));
    ++ran;
  }
  CHECK(ran == 7);
}

TEST_CASE("widths are read in turn, and a comma that can mean two things is asked about") {
  using Widths = std::vector<Um>;
  CHECK(read_widths("110").widths_um == Widths{110'000});
  CHECK(read_widths("110, 96, 110").widths_um == Widths{110'000, 96'000, 110'000});
  CHECK(read_widths("110,96,110").widths_um == Widths{110'000, 96'000, 110'000});
  CHECK(read_widths("11cm; 96").widths_um == Widths{110'000, 96'000});
  CHECK(read_widths("110,5").widths_um == Widths{110'500});
  CHECK(read_widths("110,96").sentence ==
        "110,96 can be one width or two: write 110.96, or 110, 96 with a blank between them.");
  CHECK(read_widths("0.5").sentence == "0.5 is too little: give 1 or more.");
  CHECK(read_widths("110, x").widths_um.empty());
  CHECK(read_widths("").sentence ==
        "A width is missing: give one, or several in turn, \"110, 96, 110\".");
  CHECK(widths_text({110'000, 96'500}) == "110, 96.5");
}

TEST_CASE("words that are longer than they may be end in a sign that says so") {
  CHECK(shortened("abcd", 4) == "abcd");
  CHECK(shortened("abcde", 4) == "abc\xE2\x80\xA6");
  CHECK(shortened("\xD7\x90\xD7\x91\xD7\x92", 2) == "\xD7\x90\xE2\x80\xA6");
}

#include "engine/job/job_json.h"

#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::job;
using pouncemark::tests::demo_text;
using enum pouncemark::ProblemCode;

// Each case puts one thing in the place of another in the small job; what must be refused stands
// beside its neighbour that opens.
namespace {

struct Change {
  const char* old_words;
  const char* new_words;
  ProblemCode code;
  const char* where;
};

const Change kRefused[] = {
    {"\"pouncemark-job\"", "\"another-job\"", job_not_ours, "the file"},
    {"\"format\":\"pouncemark-job\",", "", job_not_ours, "the file"},
    {"\"version\":1,", "", job_damaged, "version, line 1"},
    {"\"version\":1", "\"version\":0", job_out_of_range, "version, line 3"},
    {"\"version\":1", "\"version\":1.5", job_out_of_range, "version, line 3"},
    {"\"version\":1", "\"version\":\"1\"", job_damaged, "version, line 3"},
    {"\"Marsh Lights\"", "\"\"", job_out_of_range, "name, line 4"},
    {"\"Marsh Lights\"", "null", job_damaged, "name, line 4"},
    {"Marsh Lights", "Marsh\\tLights", job_damaged, "name, line 4"},
    {"Marsh Lights", "Marsh\\u007fLights", job_damaged, "name, line 4"},
    {"centre_to_centre", "edge_to_edge", job_damaged, "spacing_from, line 5"},
    {"\"needle_size\":140", "\"needle_size\":19", job_out_of_range, "needle_size, line 6"},
    {"\"needle_size\":140", "\"needle_size\":401", job_out_of_range, "needle_size, line 6"},
    {"\"needle_size\":140", "\"needle_size\":110.5", job_out_of_range, "needle_size, line 6"},
    {"\"thread_tex\":135", "\"thread_tex\":0", job_out_of_range, "thread_tex, line 7"},
    {"\"thread_tex\":135", "\"thread_tex\":2001", job_out_of_range, "thread_tex, line 7"},
    {"\"tails_mm\":300", "\"tails_mm\":-1", job_out_of_range, "tails_mm, line 8"},
    {"\"tails_mm\":300", "\"tails_mm\":10000.001", job_out_of_range, "tails_mm, line 8"},
    {"\"code\":\"B2\"", "\"code\":\"B1\"", job_damaged, "bays[1].code, line 12"},
    {"\"chord_mm\":665", "\"chord_mm\":0", job_out_of_range, "bays[0].chord_mm, line 11"},
    {"\"rise_mm\":93", "\"rise_mm\":-1", job_out_of_range, "bays[0].rise_mm, line 11"},
    {"bulging", "round", job_damaged, "bays[0].face, line 11"},
    {"\"holds\":\"1\"", "\"holds\":\"1\",\"stands\":\"free\"", job_damaged,
     "bays[0].stands, line 11"},
    {"two_leaf", "flat", job_damaged, "sections[0].make, line 17"},
    {"two_leaf", "folded", job_damaged, "sections[0].fold_radius_mm, line 15"},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":1", job_damaged,
     "sections[0].sewn_side, line 15"},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":-1,\"sewn_side\":\"left\"", job_out_of_range,
     "sections[0].fold_radius_mm, line 17"},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":50.001,\"sewn_side\":\"left\"",
     job_out_of_range, "sections[0].fold_radius_mm, line 17"},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":1,\"sewn_side\":\"top\"", job_damaged,
     "sections[0].sewn_side, line 17"},
    {"two_leaf", "round", job_damaged, "sections[0].flange_mm, line 15"},
    {"\"two_leaf\"", "\"round\",\"flange_mm\":59.5,\"sewn_side\":\"left\"", job_out_of_range,
     "sections[0].flange_mm, line 17"},
    {"\"two_leaf\"", "\"round\",\"flange_mm\":0,\"sewn_side\":\"left\"", job_out_of_range,
     "sections[0].flange_mm, line 17"},
    {"\"two_leaf\"", "\"two_leaf\",\"flange_mm\":\"20\"", job_damaged,
     "sections[0].flange_mm, line 17"},
    {"\"count\":9,", "\"count\":9,\"side_seams\":\"both\",", job_damaged,
     "sections[0].side_seams, line 22"},
    {"\"count\":9,", "\"count\":9,\"lies_over\":\"top\",", job_damaged,
     "sections[0].lies_over, line 22"},
    {"\"count\":9,", "\"count\":9,\"missing\":\"1-05\",", job_damaged,
     "sections[0].missing, line 22"},
    {"\"count\":9,", "\"count\":9,\"missing\":[5],", job_damaged, "sections[0].missing, line 22"},
    {"\"count\":9,", "\"count\":9,\"missing\":[\"1-10\"],", job_damaged,
     "sections[0].missing, line 22"},
    {"\"count\":9,", "\"count\":9,\"missing\":[\"1-05\",\"1-05\"],", job_damaged,
     "sections[0].missing, line 22"},
    {"\"count\":9,", "\"count\":1,\"missing\":[\"1-01\"],", job_damaged,
     "sections[0].missing, line 22"},
    {"\"tails_mm\":300", "\"tails_mm\":300,\"wire_mm\":0", job_out_of_range, "wire_mm, line 8"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"corners\":\"cross\"", job_damaged,
     "panels[0].corners, line 50"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"corner_clear_mm\":0", job_out_of_range,
     "panels[0].corner_clear_mm, line 50"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_stop_mm\":0", job_out_of_range,
     "panels[0].rows_stop_mm, line 50"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_stop_mm\":\"302.5\"", job_damaged,
     "panels[0].rows_stop_mm, line 50"},
    {"\"length_mm\":1400", "\"length_mm\":0", job_out_of_range, "sections[0].length_mm, line 18"},
    {"\"length_mm\":1400", "\"length_mm\":1400.0001", job_out_of_range,
     "sections[0].length_mm, line 18"},
    {"\"length_mm\":1400", "\"length_mm\":100000.001", job_out_of_range,
     "sections[0].length_mm, line 18"},
    {"\"length_mm\":1400", "\"length_mm\":1e300", job_out_of_range,
     "sections[0].length_mm, line 18"},
    {"\"length_mm\":1400", "\"length_mm\":1e999", job_unreadable, "line 18, column 20"},
    {"\"length_mm\":1400", "\"length_mm\":\"1400\"", job_damaged, "sections[0].length_mm, line 18"},
    {"\"lap_mm\":18", "\"lap_mm\":60", job_out_of_range, "sections[0].lap_mm, line 19"},
    {"\"leaf_mm\":0.25", "\"leaf_mm\":0", job_out_of_range, "sections[0].leaf_mm, line 20"},
    {"\"leaf_mm\":0.25", "\"leaf_mm\":1000.001", job_out_of_range, "sections[0].leaf_mm, line 20"},
    {"[60,75,90,120,150,120,90,75,60]", "[]", job_damaged, "sections[0].widths_mm, line 21"},
    {"[60,75,90,120,150,120,90,75,60]", "[60,0]", job_out_of_range,
     "sections[0].widths_mm, line 21"},
    {"[60,75,90,120,150,120,90,75,60]", "[60,18]", job_out_of_range, "sections[0].lap_mm, line 19"},
    {"[60,75,90,120,150,120,90,75,60]", "[12000]", job_out_of_range,
     "sections[0].widths_mm, line 21"},
    {"\"count\":9", "\"count\":0", job_out_of_range, "sections[0].count, line 22"},
    {"\"count\":9", "\"count\":1001", job_out_of_range, "sections[0].count, line 22"},
    {"\"count\":9", "\"count\":4294967297", job_out_of_range, "sections[0].count, line 22"},
    {"[25,25]", "[25]", job_damaged, "sections[0].side_rows.staple.kept_clear_mm, line 26"},
    {"[25,25]", "[25,25,25]", job_damaged, "sections[0].side_rows.staple.kept_clear_mm, line 26"},
    {"[25,25]", "[25,-1]", job_out_of_range, "sections[0].side_rows.staple.kept_clear_mm, line 26"},
    {"\"spacing_mm\":48", "\"spacing_mm\":0", job_out_of_range,
     "sections[0].side_rows.staple.spacing_mm, line 27"},
    {"\"even\"", "\"about\"", job_damaged, "sections[0].side_rows.staple.rule, line 28"},
    {"\"even\"", "\"exact\",\"left_over\":\"middle\"", job_damaged,
     "sections[0].side_rows.staple.left_over, line 28"},
    {"\"stay\"", "\"not_said\"", job_damaged, "sections[0].side_rows.staple.staples, line 29"},
    {"\"stack_mm\":1.1", "\"stack_mm\":0", job_out_of_range,
     "sections[0].side_rows.stack_mm, line 32"},
    {"\"lap_rows\"", "\"other_rows\"", job_damaged, "sections[0].lap_rows, line 15"},
    {"\"count\":9,", "\"count\":9,\"changes\":{\"1-10\":{}},", job_damaged,
     "sections[0].changes.1-10, line 22"},
    {"\"count\":9,", "\"count\":9,\"changes\":{\"1-09\":{\"width_mm\":18}},", job_out_of_range,
     "sections[0].lap_mm, line 19"},
    {"\"code\":\"P1\"", "\"code\":\"1\"", job_damaged, "panels[0].code, line 43"},
    {"\"hinge_side\":\"left\"", "\"hinge_side\":\"top\"", job_damaged,
     "panels[0].hinge_side, line 45"},
    {"[690,1420]", "[690,0]", job_out_of_range, "panels[0].backing_mm, line 44"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_on\":[\"left\"]", job_damaged,
     "panels[0].rows_on, line 50"},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_on\":[1]", job_damaged,
     "panels[0].rows_on, line 50"},
};

const Change kOpens[] = {
    {"Marsh Lights", "Marsh \\u0020 \\u00e9 Lights", {}, ""},
    {"\"needle_size\":140", "\"needle_size\":20", {}, ""},
    {"\"needle_size\":140", "\"needle_size\":400", {}, ""},
    {"\"needle_size\":140", "\"needle_size\":110.0", {}, ""},
    {"\"thread_tex\":135", "\"thread_tex\":2000", {}, ""},
    {"\"tails_mm\":300", "\"tails_mm\":0", {}, ""},
    {"\"tails_mm\":300", "\"tails_mm\":1e4", {}, ""},
    {"\"code\":\"B2\"", "\"code\":\"1\"", {}, ""},
    {"\"chord_mm\":665", "\"chord_mm\":0.001", {}, ""},
    {"\"rise_mm\":93", "\"rise_mm\":0", {}, ""},
    {"\"length_mm\":1400", "\"length_mm\":100000", {}, ""},
    {"\"length_mm\":1400", "\"length_mm\":1400.0010", {}, ""},
    {"\"lap_mm\":18", "\"lap_mm\":59.999", {}, ""},
    {"\"lap_mm\":18", "\"lap_mm\":0", {}, ""},
    {"\"leaf_mm\":0.25", "\"leaf_mm\":1000", {}, ""},
    {"[60,75,90,120,150,120,90,75,60]", "[60,18.001]", {}, ""},
    {"[60,75,90,120,150,120,90,75,60]", "[11000]", {}, ""},
    {"\"count\":9", "\"count\":1000", {}, ""},
    {"\"count\":9,", "\"count\":9,\"changes\":{\"1-09\":{\"width_mm\":18.001}},", {}, ""},
    {"[25,25]", "[0,1e5]", {}, ""},
    {"\"spacing_mm\":48", "\"spacing_mm\":0.001", {}, ""},
    {"\"even\"", "\"exact\",\"left_over\":\"split\"", {}, ""},
    {"\"stay\"", "\"after_the_row\"", {}, ""},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":0,\"sewn_side\":\"left\"", {}, ""},
    {"\"two_leaf\"", "\"folded\",\"fold_radius_mm\":50,\"sewn_side\":\"right\"", {}, ""},
    {"\"two_leaf\"", "\"round\",\"flange_mm\":59.499,\"sewn_side\":\"left\"", {}, ""},
    {"\"two_leaf\"", "\"two_leaf\",\"flange_mm\":59.5,\"sewn_side\":\"left\"", {}, ""},
    {"\"count\":9,", "\"count\":9,\"side_seams\":\"shared\",", {}, ""},
    {"\"count\":9,", "\"count\":9,\"lies_over\":\"left\",", {}, ""},
    {"\"count\":9,", "\"count\":9,\"lies_over\":\"right\",", {}, ""},
    {"\"holds\":\"1\"", "\"holds\":\"1\",\"stands\":\"empty\"", {}, ""},
    {"\"count\":9,", "\"count\":9,\"missing\":[],", {}, ""},
    {"\"count\":9,", "\"count\":9,\"missing\":[\"1-05\",\"1-01\"],", {}, ""},
    {"\"count\":9,", "\"count\":9,\"missing\":[\"1-05\"],\"changes\":{\"1-05\":{}},", {}, ""},
    {"\"tails_mm\":300", "\"tails_mm\":300,\"wire_mm\":0.001", {}, ""},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"corners\":\"stop_short\"", {}, ""},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"corner_clear_mm\":0.001", {}, ""},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_stop_mm\":0.001", {}, ""},
    {"[690,1420]", "[0.001,1420]", {}, ""},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_on\":[]", {}, ""},
    {"\"stack_mm\":3.9", "\"stack_mm\":3.9,\"rows_on\":[\"fly_side\",\"top\"]", {}, ""},
};

/// The small job with the first place of some words changed; empty when they are not there.
std::string changed(const Change& change) {
  std::string text = demo_text("marsh-lights");
  const std::size_t at = text.find(change.old_words);
  if (at == std::string::npos) return {};
  return text.replace(at, std::string(change.old_words).size(), change.new_words);
}

}  // namespace

TEST_CASE("one wrong thing in a job is refused for what it is, with its place and line") {
  int count = 0;
  for (const Change& change : kRefused) {
    CAPTURE(std::string(change.new_words));
    CAPTURE(std::string(change.where));
    const std::string text = changed(change);
    CHECK(!text.empty());
    const std::string before = text;
    const Result<OpenedJob> opened = open_job(text);
    CHECK(!opened);
    if (opened) continue;
    CHECK(opened.problem().code == change.code);
    CHECK(opened.problem().where == change.where);
    CHECK(!opened.problem().found.empty());
    CHECK(text == before);
    ++count;
  }
  CHECK(count == 77);
}

TEST_CASE("what stands right beside each wrong thing opens, and saves the same twice") {
  int count = 0;
  for (const Change& change : kOpens) {
    CAPTURE(std::string(change.new_words));
    const Result<OpenedJob> opened = open_job(changed(change));
    CHECK(opened.is_ok());
    if (!opened) continue;
    const std::string saved = save_job(opened->job);
    CHECK(save_job(open_job(saved)->job) == saved);
    ++count;
  }
  CHECK(count == 41);
}

TEST_CASE("a job has at most a thousand sections and a thousand panels") {
  Job job = tests::panel_job(100, 100, "left");
  for (int i = 2; i <= 1'000; ++i) {
    job.panels.push_back(job.panels[0]);
    job.panels.back().code = "P" + std::to_string(i);
  }
  CHECK(open_job(save_job(job)).is_ok());
  job.panels.push_back(job.panels[0]);
  job.panels.back().code = "P1001";
  const Result<OpenedJob> opened = open_job(save_job(job));
  CHECK(opened.problem().code == job_out_of_range);
  CHECK(opened.problem().where.find("panels, line ") == 0);
}

TEST_CASE("a code used twice is damage among sections, among panels and across both") {
  Job job = tests::section_job({110}, 0);
  job.sections.push_back(job.sections[0]);
  CHECK(open_job(save_job(job)).problem().found == "the code 1 twice");
  job.sections[1].code = "2";
  CHECK(open_job(save_job(job)).is_ok());
  job.panels.push_back(tests::panel_job(100, 100, "left").panels[0]);
  CHECK(open_job(save_job(job)).is_ok());
  job.panels[0].code = "2";
  CHECK(open_job(save_job(job)).problem().code == job_damaged);
}

TEST_CASE("a panel's outline is refused for what is wrong with it") {
  Job job = tests::panel_job(100, 100, "left");
  std::vector<OutlineEdge>& outline = job.panels[0].outline;
  outline = {{"hinge_side", {0, 900'000}, 0, {}},
             {"bottom", {0, 0}, 0, {}},
             {"fly_side", {600'000, 0}, 0, {}},
             {"top", {600'000, 900'000}, 300'000, {}}};
  CHECK(open_job(save_job(job)).is_ok());
  outline[3].rise_um = 300'001;
  CHECK(open_job(save_job(job)).problem().code == outline_arc_too_deep);
  outline[3].rise_um = 0;
  outline[2].role = "bottom";
  CHECK(open_job(save_job(job)).problem().code == panel_without_fly_side);
  outline[2].role = "fly_side";
  outline[0].role = "top";
  CHECK(open_job(save_job(job)).problem().code == panel_without_hinge_side);
  outline.resize(2);
  CHECK(open_job(save_job(job)).problem().code == job_damaged);
}

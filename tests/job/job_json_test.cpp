#include "engine/job/job_json.h"

#include "engine/base/sha256.h"
#include "tests/support/jobs.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::job;
using pouncemark::tests::demo_text;
using pouncemark::tests::Dice;
using pouncemark::tests::file_text;

namespace {

std::string again(const std::string& text) { return save_job(open_job(text)->job); }

int count_of(const std::string& text, const std::string& part) {
  int count = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("each demo job opened and saved is the same file, byte for byte") {
  for (const std::string name : {"marsh-lights", "harbour-ledger", "orchard-year"}) {
    CAPTURE(name);
    const std::string text = demo_text(name);
    CHECK(text.size() > 1'000);
    CHECK(again(text) == text);
  }
}

TEST_CASE("the largest demo job is stored as rules, in far less than a megabyte") {
  CHECK(demo_text("orchard-year").size() < 100'000);
}

TEST_CASE("a job of version 1 opens for ever, and keeps what no version knows") {
  const std::string text = file_text("tests/versions/v1.json");
  const Result<OpenedJob> opened = open_job(text);
  CHECK(opened.is_ok());
  if (!opened) return;
  CHECK(!opened->look_only);
  const std::string saved = save_job(opened->job);
  CHECK(count_of(text, "\"later_") == count_of(saved, "\"later_"));
  CHECK(count_of(text, "\"later_") == 14);
  CHECK(again(saved) == saved);
}

TEST_CASE("a job of version 1 is read member by member as it was meant") {
  const Job job = open_job(file_text("tests/versions/v1.json"))->job;
  CHECK(job.spacing_is_clear_gap);
  CHECK(job.needle_size == 110);
  CHECK(job.tails_um == 260'500);
  CHECK(*job.crown_um == 10'000);
  CHECK(job.bays[1].chord_um == 665'125);
  const Section& section = job.sections[0];
  CHECK(section.widths_um[1] == 105'500);
  CHECK(*section.lap_tolerance_um == 400);
  CHECK(section.side_rows.staple.left_over == LeftOver::extra_point);
  CHECK(section.side_rows.staple.staples == StaplesOut::before_the_row);
  CHECK(section.lap_rows->staple.left_over == LeftOver::split);
  CHECK(*section.changes.at("1-02").staple->staples == StaplesOut::after_the_row);
  CHECK(*section.changes.at("1-02").stitch->in_from_edge_um == 15'500);
  CHECK(*section.changes.at("1-04").staple->staples == StaplesOut::stay);
  CHECK(!job.sections[1].lap_rows.has_value());
  CHECK(job.panels[0].hinge_side == "right");
  CHECK(*job.panels[0].rows_on == std::vector<std::string>{"hinge_side", "top"});
  CHECK(job.panels[1].outline[1].from_um == std::array<Um, 2>{-12'500, -40'000});
  CHECK(job.panels[1].outline[1].rise_um == -20'125);
}

TEST_CASE(
    "which neighbour a sleeve lies over is kept where it is said, and is the right one else") {
  Job job = open_job(demo_text("marsh-lights"))->job;
  CHECK(left_lies_over(job.sections[0]));
  CHECK(save_job(job).find("lies_over") == std::string::npos);
  for (const Side side : {Side::left, Side::right}) {
    job.sections[0].lies_over = side;
    const Result<OpenedJob> opened = open_job(save_job(job));
    CHECK(opened->job.sections[0].lies_over == side);
    CHECK(left_lies_over(opened->job.sections[0]) == (side == Side::right));
    CHECK(save_job(opened->job) == save_job(job));
  }
}

TEST_CASE("what was left out of a job is assumed, and saving says it") {
  const std::string bare =
      "{\"format\":\"pouncemark-job\",\"version\":1,\"name\":\"Bare\","
      "\"spacing_from\":\"centre_to_centre\"}";
  const Result<OpenedJob> opened = open_job(bare);
  CHECK(opened->job.needle_size == 140);
  CHECK(opened->job.thread_tex == 135);
  CHECK(opened->job.tails_um == 300'000);
  CHECK(opened->job.slip_distance_um == 1'500);
  CHECK(!opened->job.crown_um.has_value());
  const std::string saved = save_job(opened->job);
  CHECK(saved.find("\"needle_size\":140") != std::string::npos);
  CHECK(saved.find("sections") == std::string::npos);
}

TEST_CASE("2,000 jobs of any kind are the same bytes when saved, opened and saved") {
  Dice dice(20'260'161);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 2'000; ++i) {
    const std::string saved = save_job(tests::random_job(dice));
    const Result<OpenedJob> opened = open_job(saved);
    if (!opened) {
      CAPTURE(saved);
      CHECK(problem_sentence(opened.problem()) == "");
      break;
    }
    if (save_job(opened->job) == saved) ++same;
  }
  CHECK(same == 2'000);
}

TEST_CASE("the same job in another dress is saved as the same bytes") {
  std::string text = demo_text("marsh-lights");
  std::string dressed;
  for (const char c : text) dressed += c == '\n' ? std::string("\r\n     ") : std::string(1, c);
  CHECK(again(dressed) == text);
  CHECK(again("\xef\xbb\xbf" + text) == text);
  std::string one_line;
  for (const char c : text) one_line += c == '\n' ? ' ' : c;
  CHECK(again(one_line) == text);
}

TEST_CASE("a job's checksum is the beginning of the SHA-256 over the file as saved") {
  const std::string text = demo_text("marsh-lights");
  const Job job = open_job(text)->job;
  CHECK(checksum(job) == sha256_hex(text).substr(0, 12));
  Job other = job;
  other.sections[0].lap_um += 1;
  CHECK(checksum(other) != checksum(job));
}

TEST_CASE("a job of a newer version is shown when all we need is there, and says so") {
  std::string text = demo_text("marsh-lights");
  text.replace(text.find("\"version\":1"), 11, "\"version\":2");
  const Result<OpenedJob> opened = open_job(text);
  CHECK(opened->look_only);
  CHECK(opened->note.find("version 2") != std::string::npos);
  CHECK(opened->job.name == "Marsh Lights");
  text.replace(text.find("\"count\":9,"), 10, "");
  const Result<OpenedJob> refused = open_job(text);
  CHECK(refused.problem().code == ProblemCode::job_too_new);
  CHECK(refused.problem().where.find("sections[0].count") == 0);
  CHECK(refused.problem().found == "version 2");
}

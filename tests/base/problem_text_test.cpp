#include "engine/base/problem.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace pouncemark;
using enum pouncemark::ProblemCode;

namespace {

// Without a default, so that the compiler asks for a code that was added.
bool is_a_code(ProblemCode code) {
  switch (code) {
    case length_unreadable:
    case length_negative:
    case length_too_large:
    case length_too_fine:
    case length_two_readings:
    case outline_too_few_edges:
    case outline_not_closed:
    case outline_edge_too_short:
    case outline_arc_too_deep:
    case outline_runs_clockwise:
    case outline_crosses_itself:
    case lap_wider_than_sleeve:
    case panel_without_hinge_side:
    case panel_without_fly_side:
    case row_too_short:
    case row_bad_spacing:
    case row_too_many_points:
    case row_on_fly_side:
    case row_off_the_piece:
    case row_off_the_flange:
    case row_through_the_tube:
    case row_stops_too_soon:
    case job_unreadable:
    case job_not_ours:
    case job_damaged:
    case job_out_of_range:
    case job_too_new:
    case paper_unknown:
    case paper_too_small:
    case paper_bars_out:
    case paper_unprintable_signs:
    case paper_too_many_pages:
    case words_wrong:
    case file_not_read:
    case file_not_written:
      return true;
  }
  return false;
}

std::string sentence_of(ProblemCode code) { return problem_sentence({code, {}, {}, {}}); }

/// What stands before the last semicolon, and after it.
std::string part(const std::string& sentence, bool remedy) {
  const std::size_t at = sentence.rfind("; ");
  if (at == std::string::npos) return {};
  return remedy ? sentence.substr(at + 2) : sentence.substr(0, at);
}

}  // namespace

TEST_CASE("every problem has a sentence of its own that ends with what to do") {
  std::set<std::string> said;
  int codes = 0;
  for (int number = 0; number < 1'000; ++number) {
    const ProblemCode code = static_cast<ProblemCode>(number);
    if (!is_a_code(code)) continue;
    CAPTURE(number);
    ++codes;
    const std::string sentence = sentence_of(code);
    CHECK(sentence.find("tell the makers") == std::string::npos);
    CHECK(sentence.back() == '.');
    CHECK(part(sentence, false).size() > 8);
    CHECK(part(sentence, true).size() > 8);
    CHECK(said.insert(part(sentence, false)).second);
  }
  CHECK(codes == 35);
}

TEST_CASE("a number that is no code says so instead of borrowing a sentence") {
  CHECK(sentence_of(static_cast<ProblemCode>(999)).find("tell the makers") != std::string::npos);
}

TEST_CASE("a problem's sentence says where, what was found, what was needed and what to do") {
  const Problem whole{job_out_of_range, "sections[2].count, line 12", "0", "1 to 1,000"};
  CHECK(problem_sentence(whole) ==
        "sections[2].count, line 12: a figure in this job is out of range; found 0; needed 1 to "
        "1,000; mend that figure in the file.");
}

TEST_CASE("what a problem does not know is left out of its sentence") {
  const std::string bare = sentence_of(row_too_short);
  CHECK(bare == "The margins meet: no room for a row; keep less clear at the ends.");
  const std::string found = problem_sentence({row_too_short, {}, "35 long", {}});
  CHECK(found.find("; found 35 long; keep") != std::string::npos);
  CHECK(found.find("needed") == std::string::npos);
}

TEST_CASE("words from a file stand in one sentence: no sign that breaks it, the middle left out") {
  struct Case {
    std::string found;
    std::string said;
  };
  const std::string many(300, 'a');
  const Case cases[] = {
      {"the text \"a\nb\"", "the text \"a?b\""},
      {std::string("a\0b", 3), "a?b"},
      {"\x1b[31m", "?[31m"},
      {"\x7f", "?"},
      {"\u0141\u00f3d\u017a", "\u0141\u00f3d\u017a"},
      {"\u202eabc", "?abc"},
      {"\u2028abc\u2066", "?abc?"},
      {"\u0085", "?"},
      {"\u00a0", "\u00a0"},
      {"\xc5", "?"},
      {"\xe2\x80", "??"},
      {many, std::string(80, 'a') + "..." + std::string(40, 'a')},
      {std::string(123, 'b'), std::string(123, 'b')},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.said);
    CHECK(problem_sentence({job_damaged, one.found, {}, {}}).starts_with(one.said + ": this job"));
    CHECK(problem_sentence({job_damaged, {}, one.found, {}}).find("found " + one.said + ";") !=
          std::string::npos);
    ++seen;
  }
  CHECK(seen == 13);
}

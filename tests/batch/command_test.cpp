#include "engine/batch/command.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using namespace pouncemark;
using namespace pouncemark::batch;

namespace {

using Words = std::vector<std::string>;

/// A print order that is understood, to be changed in one place.
Words print_words() {
  return {"print", "a.json", "--guide", "full-face", "--paper", "A4", "--out", "there"};
}

Words with(Words words, const Words& more) {
  words.insert(words.end(), more.begin(), more.end());
  return words;
}

Words with_word(std::size_t at, const std::string& word) {
  Words words = print_words();
  words[at] = word;
  return words;
}

Words without(std::size_t at, std::size_t count) {
  Words words = print_words();
  const auto first = words.begin() + static_cast<std::ptrdiff_t>(at);
  words.erase(first, first + static_cast<std::ptrdiff_t>(count));
  return words;
}

}  // namespace

TEST_CASE("the program is told to work out figures, to check or to print") {
  CHECK(read_command({"figures", "a.json"})->verb == Verb::figures);
  CHECK(read_command({"check", "a.json"})->verb == Verb::check);
  CHECK(read_command({"check", "a.json"})->job_path == "a.json");
  const Result<Command> command = read_command(print_words());
  CHECK(command->verb == Verb::print);
  CHECK(command->print.guide == output::Guide::full_face);
  CHECK(command->print.paper == "A4");
  CHECK(command->out_folder == "there");
  CHECK(command->print.bar_across_um == 0);
  CHECK(command->print.piece == -1);
}

TEST_CASE("each guide has its word") {
  CHECK(read_command(with_word(3, "test-page"))->print.guide == output::Guide::test_page);
  CHECK(read_command(with_word(3, "full-face"))->print.guide == output::Guide::full_face);
  CHECK(read_command(with_word(3, "tick-list"))->print.guide == output::Guide::tick_list);
  CHECK(read_command(with_word(3, "drilling-strip"))->print.guide == output::Guide::drilling_strip);
  CHECK(read_command(with_word(3, "seam-card"))->print.guide == output::Guide::seam_card);
  CHECK(read_command(with_word(3, "panel-card"))->print.guide == output::Guide::panel_card);
  CHECK(read_command(with_word(3, "trial-card"))->print.guide == output::Guide::trial_card);
  CHECK(read_command(with_word(3, "machine-card"))->print.guide == output::Guide::machine_card);
  CHECK(read_command(with_word(3, "hanging-card"))->print.guide == output::Guide::hanging_card);
  CHECK(read_command(with_word(3, "tick_list")).problem().needed ==
        "test-page, full-face, tick-list, drilling-strip, seam-card, panel-card, trial-card, "
        "machine-card or hanging-card");
}

TEST_CASE(
    "the words of a print order stand in any order, and the bars are read to the micrometre") {
  const Result<Command> command =
      read_command({"print", "a.json", "--out", "there", "--bars", "179.3x200.0", "--paper",
                    "900x1200", "--guide", "test-page"});
  CHECK(command->print.guide == output::Guide::test_page);
  CHECK(command->print.paper == "900x1200");
  CHECK(command->print.bar_across_um == 179'300);
  CHECK(command->print.bar_along_um == 200'000);
}

TEST_CASE("words that are not understood are refused with what was found and what is needed") {
  const Words table[] = {{},
                         {""},
                         {"Figures", "a.json"},
                         {"show", "a.json"},
                         {"--help"},
                         {"figures"},
                         {"check"},
                         {"print"},
                         {"figures", "a.json", "b.json"},
                         {"check", "a.json", "--paper", "A4"},
                         {"print", "a.json"},
                         without(2, 2),
                         without(4, 2),
                         without(6, 2),
                         without(7, 1),
                         with_word(3, "whole-face"),
                         with_word(2, "--kind"),
                         with_word(2, "guide"),
                         with_word(7, ""),
                         with(print_words(), {"--bars"}),
                         with(print_words(), {"--bars", "200"}),
                         with(print_words(), {"--bars", "200x"}),
                         with(print_words(), {"--bars", "x200"}),
                         with(print_words(), {"--bars", "0x200"}),
                         with(print_words(), {"--bars", "200x-1"}),
                         with(print_words(), {"--bars", "200x200x200"}),
                         with(print_words(), {"--bars", "200.0001x200"}),
                         with(print_words(), {"more"}),
                         with(print_words(), {"--turned", "yes"})};
  int refused = 0;
  for (const Words& words : table) {
    std::string line;
    for (const std::string& word : words) line += word + " ";
    CAPTURE(line);
    const Result<Command> command = read_command(words);
    CHECK(!command);
    if (command) continue;
    CHECK(command.problem().code == ProblemCode::words_wrong);
    CHECK(!command.problem().found.empty());
    CHECK(!command.problem().needed.empty());
    ++refused;
  }
  CHECK(refused == 29);
}

TEST_CASE("a paper is passed on as it was said: the sheets know which there are") {
  CHECK(read_command(with_word(5, "B4"))->print.paper == "B4");
}

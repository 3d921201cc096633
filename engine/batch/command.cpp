#include "engine/batch/command.h"

#include "engine/base/length_entry.h"

namespace pouncemark::batch {
namespace {

Problem wrong(std::string found, std::string needed) {
  return {ProblemCode::words_wrong, {}, std::move(found), std::move(needed)};
}

Result<bool> take_bars(const std::string& words, output::PrintOptions* print) {
  const std::size_t times = words.find('x');
  if (times == std::string::npos) return wrong("--bars " + words, "two lengths like 179.3x200.0");
  const Result<std::int64_t> across = read_decimal_mm(words.substr(0, times));
  const Result<std::int64_t> along = read_decimal_mm(words.substr(times + 1));
  if (!across || !along || *across <= 0 || *along <= 0) {
    return wrong("--bars " + words, "two lengths like 179.3x200.0");
  }
  print->bar_across_um = *across;
  print->bar_along_um = *along;
  return true;
}

/// "test-page, full-face ... or machine-card".
std::string all_guide_words() {
  std::string words;
  for (std::size_t i = 0; i < output::kGuideWords.size(); ++i) {
    if (i > 0) words += i + 1 == output::kGuideWords.size() ? " or " : ", ";
    words += output::kGuideWords[i];
  }
  return words;
}

Result<bool> take_guide(const std::string& word, output::PrintOptions* print) {
  for (std::size_t i = 0; i < output::kGuideWords.size(); ++i) {
    if (word != output::kGuideWords[i]) continue;
    print->guide = static_cast<output::Guide>(i);
    return true;
  }
  return wrong("--guide " + word, all_guide_words());
}

Result<bool> take_option(const std::string& name, const std::string& value, Command* command) {
  if (name == "--guide") return take_guide(value, &command->print);
  if (name == "--bars") return take_bars(value, &command->print);
  if (name == "--paper") {
    command->print.paper = value;
  } else if (name == "--out") {
    command->out_folder = value;
  } else {
    return wrong(name, "--guide, --paper, --bars or --out");
  }
  return true;
}

Result<bool> take_options(const std::vector<std::string>& words, Command* command) {
  bool has_guide = false;
  bool has_paper = false;
  for (std::size_t i = 2; i < words.size(); i += 2) {
    if (i + 1 == words.size()) return wrong(words[i] + " alone", "a word after it");
    const Result<bool> taken = take_option(words[i], words[i + 1], command);
    if (!taken) return taken;
    has_guide = has_guide || words[i] == "--guide";
    has_paper = has_paper || words[i] == "--paper";
  }
  if (!has_guide) return wrong("no --guide", "--guide " + all_guide_words());
  if (!has_paper) return wrong("no --paper", "--paper A4, A3, Letter, Tabloid or 900x1200");
  if (command->out_folder.empty()) return wrong("no --out", "--out FOLDER");
  return true;
}

}  // namespace

Result<Command> read_command(const std::vector<std::string>& words) {
  if (words.empty()) return wrong("nothing", "figures, check or print");
  Command command;
  if (words[0] == "figures") {
    command.verb = Verb::figures;
  } else if (words[0] == "check") {
    command.verb = Verb::check;
  } else if (words[0] == "print") {
    command.verb = Verb::print;
  } else {
    return wrong("\"" + words[0].substr(0, 40) + "\"", "figures, check or print");
  }
  if (words.size() < 2) return wrong(words[0] + " alone", "a job file after it");
  command.job_path = words[1];
  if (command.verb != Verb::print) {
    if (words.size() > 2)
      return wrong("\"" + words[2].substr(0, 40) + "\"", "nothing after the job file");
    return command;
  }
  const Result<bool> options = take_options(words, &command);
  if (!options) return options.problem();
  return command;
}

}  // namespace pouncemark::batch

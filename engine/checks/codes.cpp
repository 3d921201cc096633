#include <utility>

#include "engine/base/number_text.h"
#include "engine/checks/rules.h"

namespace pouncemark::checks {
namespace {

Finding about_codes(std::string figure, std::string sentence, std::string change) {
  Finding finding;
  finding.code = "code_missing";
  finding.severity = Severity::warn;
  finding.place = "the whole job";
  finding.figure = std::move(figure);
  finding.sentence = std::move(sentence);
  finding.change = std::move(change);
  return finding;
}

}  // namespace

Finding code_missing(const std::string& code, const std::string& before, const std::string& after) {
  return about_codes(code,
                     code + (code.find(" to ") == std::string::npos ? " is" : " are") +
                         " missing: the codes go from " + before + " to " + after +
                         ". Nothing was renumbered.",
                     "Find it, or write down why it is gone; tags that hang already keep their "
                     "numbers.");
}

Finding codes_missing(std::int64_t count, const std::string& first, const std::string& last) {
  return about_codes(
      count_text(count),
      count_text(count) + " codes are missing, the first " + first + ", the last " + last +
          ". Nothing was renumbered.",
      "Find them, or write down why they are gone; tags that hang already keep their "
      "numbers.");
}

Finding code_used_twice(const std::string& code, const std::string& one, const std::string& other) {
  Finding finding =
      about_codes(code, code + " appears twice: it names " + one + " and " + other + ".",
                  "Give one of them another code.");
  finding.code = "code_used_twice";
  return finding;
}

Finding code_unknown(const std::string& code, const std::string& bay) {
  return about_codes(code,
                     code + " hangs in bay " + bay + ", and no section or panel has that code.",
                     "Add the piece, or correct what the bay holds.");
}

Finding code_hung_twice(const std::string& code, const std::string& bay, const std::string& other) {
  Finding finding =
      about_codes(code, code + " appears twice: in bay " + bay + " and in bay " + other + ".",
                  "Correct what one of the bays holds.");
  finding.code = "code_used_twice";
  return finding;
}

}  // namespace pouncemark::checks

#include "engine/base/number_text.h"
#include "engine/checks/hanging_rules.h"
#include "engine/frame/hands.h"

namespace pouncemark::checks {

std::optional<Finding> many_hands(std::int64_t force_mn, std::int64_t each_mn, std::int64_t hands,
                                  bool is_assumed) {
  const std::int64_t people = frame::people_needed(force_mn, each_mn);
  if (people <= hands) return std::nullopt;
  const std::string force = mm_text_beside(force_mn, hands * each_mn) + " N";
  const std::string each = short_mm_text(each_mn, 1) + " N";
  Finding finding;
  finding.code = "many_hands";
  finding.severity = Severity::warn;
  finding.figure = force;
  finding.sentence = force +
                     " to bend this bay to its curve: " + counted(people, "person", "people") +
                     " pushing " + each + " each.";
  finding.brief = counted(people, "person", "people");
  finding.change = "Have more hands or a former ready before this bay is lifted.";
  finding.sum = force + " / " + each + ", rounded up = " + counted(people, "person", "people") +
                (is_assumed ? " (a steady push: assumed)" : " (a steady push, as entered)");
  return finding;
}

}  // namespace pouncemark::checks

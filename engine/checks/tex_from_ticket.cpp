#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

/// The word stands in the label, in small letters or capitals.
bool names_a_ticket(std::string_view label) {
  constexpr std::string_view kTicket = "ticket";
  for (std::size_t at = 0; at + kTicket.size() <= label.size(); ++at) {
    std::size_t same = 0;
    while (same < kTicket.size() && (label[at + same] | 0x20) == kTicket[same]) ++same;
    if (same == kTicket.size()) return true;
  }
  return false;
}

}  // namespace

std::optional<Finding> tex_from_ticket(std::string_view label, bool is_weighed, int tex) {
  if (is_weighed || !names_a_ticket(label)) return std::nullopt;
  Finding finding;
  finding.code = "tex_from_ticket";
  finding.severity = Severity::warn;
  finding.figure = std::to_string(tex);
  finding.sentence =
      "Tex " + finding.figure + " rests on a ticket: ticket 20 may be 135, 150 or more.";
  finding.brief = "not weighed";
  finding.change = "Weigh 10 m: 1.35 g is tex 135.";
  finding.sum = "ticket 20 is 3000 ÷ 20 = 150 by name and sold as 135 (common practice)";
  return finding;
}

}  // namespace pouncemark::checks

#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

Finding unusual(const std::string& what, const std::string& figure, const std::string& range,
                std::string_view source) {
  Finding finding;
  finding.code = "unusual_value";
  finding.severity = Severity::warn;
  finding.figure = figure;
  finding.sentence = figure + " is unusual for " + what + ": " + range + " is usual.";
  finding.brief = "usual " + range;
  finding.change = "Look at the figure and its unit once more.";
  finding.sum = std::string(source);
  return finding;
}

std::string of_item(material::Item item) {
  const std::string words(material::item_words(item));
  return item == material::Item::leaf ? "the leaves" : "the " + words;
}

}  // namespace

std::optional<Finding> unusual_value(const material::FieldRow& row, std::int64_t value) {
  const bool has_usual = row.usual_least != 0 || row.usual_most != 0;
  if (!has_usual || (value >= row.usual_least && value <= row.usual_most)) return std::nullopt;
  const std::string unit = row.unit.empty() ? "" : " " + std::string(row.unit);
  return unusual("the " + std::string(row.words) + " of " + of_item(row.item),
                 exact_mm_text(value) + unit,
                 exact_mm_text(row.usual_least) + " to " + exact_mm_text(row.usual_most) + unit,
                 row.usual_source);
}

std::optional<Finding> unusual_thickness(Um thickness_um, std::string_view of) {
  constexpr Um kMost = 20'000;
  if (thickness_um <= kMost) return std::nullopt;
  return unusual("the thickness of the " + std::string(of), short_mm_text(thickness_um, 3),
                 "0.1 to 20", "plastics suppliers: clear sheet is made 0.1 to 20 thick");
}

}  // namespace pouncemark::checks

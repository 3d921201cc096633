#include "engine/base/number_text.h"
#include "engine/checks/sewing_rules.h"

namespace pouncemark::checks {
namespace {

constexpr std::int64_t kMostOfPetg = 3'000'000;

}  // namespace

std::optional<Finding> stiff_film(material::Sheet sheet, std::int64_t modulus,
                                  std::string_view of) {
  if (sheet != material::Sheet::petg || modulus <= kMostOfPetg) return std::nullopt;
  Finding finding;
  finding.code = "stiff_film";
  finding.severity = Severity::warn;
  finding.figure = count_text(divide_round(modulus, 1'000));
  finding.sentence = finding.figure + " MPa for the " + std::string(of) +
                     ": twice as stiff as PETG: is this the stretched film?";
  finding.brief = "PETG is about 2,100";
  finding.change = "Do the droop test again, or call the sheet polyester film.";
  finding.sum = "over 3,000 MPa; suppliers' data sheets: PETG 2,100, stretched polyester 4,500";
  return finding;
}

}  // namespace pouncemark::checks

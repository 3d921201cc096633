#include "web/model/printing.h"

#include <cstdlib>

#include "engine/base/number_text.h"

namespace pouncemark::web {

bool bar_is_refused(Um nominal_um, Um measured_um) {
  return std::abs(measured_um - nominal_um) * 1000 > 20 * nominal_um;
}

std::string bar_words(Um nominal_um, Um measured_um) {
  if (measured_um == 0) return "not measured";
  const Um away = measured_um - nominal_um;
  if (bar_is_refused(nominal_um, measured_um)) return "over 2 % out";
  // Per mille of the bar, as a percentage with one decimal.
  const std::int64_t tenths = divide_round(std::abs(away) * 1000, nominal_um);
  if (tenths == 0) return "true";
  return (away < 0 ? "short " : "long ") + mm_text(tenths * 100, 1) + " %";
}

bool printer_is_refused(const PaperChoice& choice) {
  const auto [nominal, measured] = print_check_of(choice);
  return (measured.across_um != 0 && bar_is_refused(nominal.across_um, measured.across_um)) ||
         (measured.along_um != 0 && bar_is_refused(nominal.along_um, measured.along_um));
}

bool printer_is_proved(const PaperChoice& choice) {
  return choice.measured.across_um != 0 && choice.measured.along_um != 0 &&
         !printer_is_refused(choice);
}

std::string bar_caution(const PaperChoice& choice) {
  constexpr Um kRow = 2'400'000;
  const auto [nominal, measured] = print_check_of(choice);
  Um worst = 0;
  std::string words;
  const auto take = [&](Um is, Um should_be) {
    const Um away = std::abs(is - should_be);
    const Um on_row = divide_round(kRow * away, should_be);
    if (away * 10'000 <= 25 * should_be || on_row <= worst) return;
    worst = on_row;
    words = bar_words(should_be, is);
  };
  take(measured.across_um, nominal.across_um);
  take(measured.along_um, nominal.along_um);
  if (worst == 0) return {};
  return "Your printer is " + words + ": " + mm_text(worst, 1) +
         " on a row of 2400. Guides are corrected by as much; use them from this printer and paper "
         "only.";
}

}  // namespace pouncemark::web

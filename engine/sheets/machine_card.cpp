#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/job_cards.h"
#include "engine/sheets/wrapped_words.h"

/// A machine card as it is drawn, from its head down.
namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Drawing;
using drawing::Weight;

constexpr Um kCellsTopUm = 36'000;
constexpr Um kBandTopUm = kCellsTopUm + 3 * kCardCellHighUm + 2'200;
constexpr Um kLinesTopUm = kBandTopUm + kCardBandHighUm + 6'200;
constexpr Um kLinePitchUm = 5'600;
constexpr Um kDialHighUm = 10'500;
constexpr Um kDialPitchUm = 12'500;
constexpr Um kArmPitchUm = 6'200;
/// From the foot of the card up.
constexpr Um kSignUpUm = 7'200;
constexpr Um kCautionUpUm = 1'200;
constexpr Um kFindingsUpUm = kSignUpUm + 7'600;  ///< the last line of them
constexpr std::size_t kMostFindings = 3;
constexpr std::size_t kMostArmLines = 9;

const FitStyle kBold{kCardSmallUm, kCardLeastUm, Weight::bold};
const FitStyle kPlain{kCardSmallUm, kCardLeastUm};

Um add_lines(const plan::MachineCard& card, const CardRoom& room, Drawing* picture) {
  Um base = kLinesTopUm;
  for (const std::string& words : card.lines) {
    for (const std::string& line : wrapped_at_most(2, words, kCardSmallUm, room.wide_um)) {
      add_fitted(room.at(0, base), line, kPlain, room.wide_um, picture);
      base += kLinePitchUm;
    }
  }
  return base;
}

/// A box for each dial and kind of row; gives where they end.
Um add_dials(const plan::MachineCard& card, Um base, const CardRoom& room, Drawing* picture) {
  constexpr std::array kDials = {"stitch", "tension top", "tension bobbin", "foot pressure"};
  add_fitted(room.at(0, base), "Write down the dials as THIS machine reads, from the trial seam",
             kBold, room.wide_um, picture);
  const Um first = room.wide_um * 30 / 100;
  const Um wide = (room.wide_um - first) / static_cast<Um>(kDials.size());
  base += 6'200;
  for (std::size_t i = 0; i < kDials.size(); ++i) {
    add_fitted(room.at(first + static_cast<Um>(i) * wide + 1'000, base), kDials[i], kPlain,
               wide - 2'000, picture);
  }
  Um top = base + 1'600;
  for (const plan::DialLine& dial : card.dials) {
    // Set in a little: a j reaches out to the left of where it begins.
    add_fitted(room.at(600, top + 7'000), dial.kind + ", stitch " + dial.stitch, kBold,
               first - 2'000, picture);
    for (std::size_t i = 0; i < kDials.size(); ++i) {
      const Um left = first + static_cast<Um>(i) * wide + 700;
      add_write_box(room.box(left, top, left + wide - 1'300, top + kDialHighUm), "", picture);
    }
    top += kDialPitchUm;
  }
  return top;
}

/// Where the columns of what lies right of the needle begin, hundredths of the width.
constexpr Um kOrderPercent = 20;
constexpr Um kAtPercent = 50;
constexpr Um kSideEndPercent = 73;
constexpr Um kHowPercent = 75;

void add_arm_line(const plan::ArmLine& line, const FitStyle& style, Um base, const CardRoom& room,
                  Drawing* picture) {
  const auto at = [&](Um percent) { return room.wide_um * percent / 100; };
  const auto add = [&](const std::string& words, Um from, Um to, const FitStyle& as) {
    const Um x = as.align == Align::right ? at(to) : at(from);
    add_fitted(room.at(x, base), words, as, at(to) - at(from) - 1'500, picture);
  };
  FitStyle side = style;
  side.align = Align::right;
  side.weight = Weight::bold;
  add(line.what, 0, kOrderPercent, style);
  add(line.order, kOrderPercent, kAtPercent, style);
  add(line.at, kAtPercent, 65, style);
  add(line.side, 65, kSideEndPercent, side);
  add(line.how, kHowPercent, 100, line.does_not_fit ? kBold : style);
}

/// Lines that find no room are said together.
std::string rest_words(const plan::MachineCard& card, std::size_t shown) {
  const auto rest = static_cast<std::int64_t>(card.arm.size() - shown);
  return counted(rest, "more line: it is not", "more lines: none is") + " wider than " +
         card.arm[shown].side + ", " + card.arm[shown].how + ".";
}

/// As many lines as stand above `foot`, the last of them telling of the rest.
void add_arm(const plan::MachineCard& card, Um base, Um foot, const CardRoom& room,
             Drawing* picture) {
  add_fitted(room.at(0, base), "What lies right of the needle; sleeves are joined one by one",
             kBold, room.wide_um, picture);
  base += kArmPitchUm;
  add_arm_line({"", "order of joins", "widest at", "wide", "under the arm", false}, kPlain, base,
               room, picture);
  drawing::add_line(*picture, room.at(0, base + 1'800), room.at(room.wide_um, base + 1'800),
                    kCardRule);
  base += kArmPitchUm + 400;
  const auto fit = static_cast<std::size_t>(std::max<Um>(1, (foot - base) / kArmPitchUm + 1));
  const std::size_t room_for = std::min(fit, kMostArmLines);
  const std::size_t shown = card.arm.size() > room_for ? room_for - 1 : card.arm.size();
  for (std::size_t i = 0; i < shown; ++i) {
    add_arm_line(card.arm[i], kPlain, base, room, picture);
    base += kArmPitchUm;
  }
  if (shown < card.arm.size()) {
    add_fitted(room.at(0, base), rest_words(card, shown), kPlain, room.wide_um, picture);
  }
}

/// The findings from the foot upward; gives the base of what may stand above.
Um add_findings(const plan::MachineCard& card, const CardRoom& room, Drawing* picture) {
  const std::size_t all = card.findings.size();
  const std::size_t shown = all > kMostFindings ? kMostFindings - 1 : all;
  std::vector<std::string> lines(card.findings.begin(),
                                 card.findings.begin() + static_cast<std::ptrdiff_t>(shown));
  if (shown < all) {
    lines.push_back("WARN " +
                    counted(static_cast<std::int64_t>(all - shown), "more thing", "more things") +
                    " to know: see the check.");
  }
  Um base = room.high_um - kFindingsUpUm;
  for (auto line = lines.rbegin(); line != lines.rend(); ++line) {
    add_fitted(room.at(0, base), *line, kBold, room.wide_um, picture);
    base -= kLinePitchUm;
  }
  return base;
}

}  // namespace

void add_machine_card(const plan::MachineCard& card, const std::string& checksum,
                      const CardRoom& room, Drawing* picture) {
  add_head(
      {"MACHINE CARD   the whole job", card.name.empty() ? "NAME" : card.name, card.job_name, ""},
      room, picture);
  // A name not entered is written in.
  if (card.name.empty()) {
    drawing::add_solid(*picture, room.box(60'000, 9'500, room.wide_um - 4'000, 21'800), kCardWhite);
  }
  add_cells(card.cells, 3, kCellsTopUm, room, picture);
  add_band(card.band, kBandTopUm, room, picture);
  const Um dials = add_lines(card, room, picture) + 1'600;
  const Um arm = add_dials(card, dials, room, picture) + 5'000;
  add_arm(card, arm, add_findings(card, room, picture), room, picture);
  add_sign_line("set up: initials, date", 0, room.wide_um, room.high_um - kSignUpUm, room, picture);
  add_caution(room.high_um - kCautionUpUm, room, picture);
  add_file_mark(checksum, room.high_um - kCautionUpUm, room, picture);
}

}  // namespace pouncemark::sheets

#include <algorithm>
#include <array>

#include "engine/base/number_text.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/job_cards.h"
#include "engine/sheets/list_strips.h"
#include "engine/sheets/wrapped_words.h"

/// A trial card as it is drawn, from its head down: what follows stands under what is there.
namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Drawing;
using drawing::Weight;

constexpr Um kLinesTopUm = 39'400;
constexpr Um kLinePitchUm = 5'700;
constexpr Um kHeadHighUm = 12'400;
constexpr Um kAllLinesUm = 81'000;  ///< high, all lines of the table, where they are not many
constexpr Um kMostLineUm = 8'600;
constexpr Um kLeastLineUm = 6'400;
/// From the foot of the card up.
constexpr Um kSewnUpUm = 13'400;
constexpr Um kAgreedUpUm = 6'900;
constexpr Um kCautionUpUm = 1'200;
constexpr Um kWayInUm = 72'000;  ///< where what a pucker tells of begins

const drawing::Pen kFrame{600, {}, 0};
const drawing::Pen kHair{250, {}, 0};

/// A column of the table: its two words of head, and its share of the width.
struct Column {
  const char* over;
  const char* under;
  Um share;
};
constexpr std::array<Column, 10> kColumns = {{{"", "needle", 20},
                                              {"", "stitch", 18},
                                              {"sheet", "left", 20},
                                              {"ten", "stitches", 22},
                                              {"marks", "of 500", 21},
                                              {"", "skipped", 20},
                                              {"goes", "white", 15},
                                              {"", "cracks", 17},
                                              {"pull, N", "on 50", 18},
                                              {"", "CHOSEN", 19}}};
constexpr Um kShares = 190;

/// The left edge of a column, counted from the card's.
Um left_of(std::size_t column, const CardRoom& room) {
  Um shares = 0;
  for (std::size_t i = 0; i < column; ++i) shares += kColumns[i].share;
  return room.wide_um * shares / kShares;
}

Um add_lines(const std::string& words, Weight weight, Um base, const CardRoom& room,
             Drawing* picture) {
  for (const std::string& line : wrapped_at_most(3, words, kCardSmallUm, room.wide_um)) {
    add_fitted(room.at(0, base), line, {kCardSmallUm, kCardLeastUm, weight}, room.wide_um, picture);
    base += kLinePitchUm;
  }
  return base;
}

void add_table_head(Um top, const CardRoom& room, Drawing* picture) {
  for (std::size_t i = 0; i < kColumns.size(); ++i) {
    const Um left = left_of(i, room);
    const Um right = left_of(i + 1, room);
    const Um middle = (left + right) / 2;
    const FitStyle style{kCardLeastUm, kCardLeastUm, Weight::bold, Align::centre, 0};
    add_fitted(room.at(middle, top + 4'900), kColumns[i].over, style, right - left, picture);
    add_fitted(room.at(middle, top + 9'900), kColumns[i].under, style, right - left, picture);
  }
}

/// What stands in the columns of a line.
std::array<std::string, kColumns.size()> words_of(const plan::TrialLine& line) {
  return {line.needle, line.stitch,  line.left,   line.ten_stitches, line.marks,
          "",          line.whitens, line.cracks, line.pull,         line.is_chosen ? "yes" : ""};
}

/// A line of the table; the job's own needle and stitch stand white on black.
void add_trial(const plan::TrialLine& line, Um top, Um high, const CardRoom& room,
               Drawing* picture) {
  const Um dark = left_of(3, room);
  if (line.is_jobs) drawing::add_solid(*picture, room.box(300, top, dark, top + high));
  const Um base = top + (high + kCardSmallUm * 7 / 10) / 2;
  const auto words = words_of(line);
  for (std::size_t i = 0; i < words.size(); ++i) {
    const Um left = left_of(i, room);
    const Um right = left_of(i + 1, room);
    const bool is_dark = line.is_jobs && i < 3;
    const bool is_plain = i == 2 && !line.is_tear_line;
    add_fitted(room.at((left + right) / 2, base), words[i],
               {kCardLabelUm, kCardLeastUm, is_plain ? Weight::regular : Weight::bold,
                Align::centre, is_dark ? kCardWhite : 0},
               right - left - 1'000, picture);
  }
  // Struck through thinly, so that the figure is still read: there to be seen, not to be chosen.
  if (line.is_tear_line) {
    drawing::add_line(*picture, room.at(left_of(2, room) + 2'000, top + high - 1'600),
                      room.at(dark - 2'000, top + 1'600), {300, {}, line.is_jobs ? kCardWhite : 0});
  }
}

/// The table; gives where it ends.
Um add_table(const plan::TrialCard& card, Um top, const CardRoom& room, Drawing* picture) {
  const auto count = static_cast<Um>(card.trials.size());
  const Um high = std::clamp(kAllLinesUm / count, kLeastLineUm, kMostLineUm);
  const Um first = top + kHeadHighUm;
  const Um foot = first + count * high;
  add_table_head(top, room, picture);
  for (std::size_t i = 0; i < card.trials.size(); ++i) {
    const Um at = first + static_cast<Um>(i) * high;
    add_trial(card.trials[i], at, high, room, picture);
    // Three stitches of one needle stand together.
    const bool is_bold = i < 10 && i % 3 == 0;
    drawing::add_line(*picture, room.at(0, at), room.at(room.wide_um, at),
                      is_bold ? kFrame : kHair);
  }
  drawing::add_line(*picture, room.at(0, foot), room.at(room.wide_um, foot), kFrame);
  for (std::size_t i = 0; i <= kColumns.size(); ++i) {
    const Um x = std::clamp<Um>(left_of(i, room), 300, room.wide_um - 300);
    drawing::add_line(*picture, room.at(x, first), room.at(x, foot), i == 3 ? kFrame : kHair);
  }
  return foot;
}

/// What the marks in the table mean, and what of the job found no room.
std::string legend(const plan::TrialCard& card) {
  const auto has = [&](bool plan::TrialLine::*what) {
    return std::any_of(card.trials.begin(), card.trials.end(),
                       [what](const plan::TrialLine& line) { return line.*what; });
  };
  std::string words = "White on black: as the job is set.";
  if (has(&plan::TrialLine::is_tear_line)) words += " Struck through: under 65 %, a tear line.";
  for (const plan::TrialLine& line : card.trials) {
    if (line.under.empty()) continue;
    words += " Needle " + line.needle + ", stitch " + line.stitch + ": thread " + line.under + ".";
  }
  if (card.trials_left_out > 0) {
    words += " " + counted(card.trials_left_out, "more trial stands", "more trials stand") +
             " in the job.";
  }
  return words;
}

/// A line with a box to tick before it, and what it tells of; gives the base of the next.
Um add_ticked(const std::string& bold, const std::string& words, Um base, const CardRoom& room,
              Drawing* picture) {
  add_tick_box(room.at(500, base + 300), picture);
  const Um wide = words.empty() ? room.wide_um : kWayInUm;
  add_fitted(room.at(7'500, base), bold, {kCardSmallUm, kCardLeastUm, Weight::bold}, wide - 8'500,
             picture);
  add_fitted(room.at(kWayInUm, base), words, {kCardSmallUm, kCardLeastUm}, room.wide_um - kWayInUm,
             picture);
  return base + 6'400;
}

/// Bent and cut open: what the seam does after it is sewn; gives where it ends.
Um add_afterwards(const plan::TrialCard& card, Um base, const CardRoom& room, Drawing* picture) {
  base = add_ticked(card.bend, "", base, room, picture) + 1'600;
  const FitStyle bold{kCardSmallUm, kCardLeastUm, Weight::bold};
  add_fitted(room.at(0, base), "Does it pucker? Cut its stitches one by one. The pucker", bold,
             room.wide_um, picture);
  base += 6'400;
  base = add_ticked("is gone", "thread tension: ease the top thread, then the bobbin", base, room,
                    picture);
  base = add_ticked("stays till the thread is out",
                    "crowding: a longer stitch, finer needle and thread", base, room, picture);
  return add_ticked("leaves one ply longer", "feed: less foot pressure, hold both plies back", base,
                    room, picture) -
         3'400;
}

/// Where the coupon is sewn on: all the room that is left.
void add_coupon_place(Um top, const CardRoom& room, Drawing* picture) {
  const Um foot = room.high_um - kSewnUpUm - 8'000;
  drawing::add_rectangle(*picture, room.box(300, top, room.wide_um - 300, foot),
                         {400, {3'000, 2'000}, 0});
  const Um middle = (top + foot) / 2;
  add_fitted(room.at(room.wide_um / 2, middle), "SEW THE CHOSEN COUPON ON HERE",
             {6'000, kCardLabelUm, Weight::bold, Align::centre, 0}, room.wide_um - 8'000, picture);
  add_fitted(room.at(room.wide_um / 2, middle + 6'000),
             "once it is measured; cut off what is longer than the card",
             {kCardSmallUm, kCardLeastUm, Weight::regular, Align::centre, 0}, room.wide_um - 8'000,
             picture);
}

void add_foot(const plan::TrialCard& card, const std::string& checksum, const CardRoom& room,
              Drawing* picture) {
  add_sign_line("sewn and measured: initials, date", 0, room.wide_um, room.high_um - kSewnUpUm,
                room, picture);
  const std::string approved = "H3 trial seam approved: ";
  if (card.signed_by.empty()) {
    add_sign_line(approved + "initials, date", 0, room.wide_um, room.high_um - kAgreedUpUm, room,
                  picture);
  } else {
    add_fitted(room.at(0, room.high_um - kAgreedUpUm), approved + card.signed_by,
               {kCardSmallUm, kCardLeastUm, Weight::bold}, room.wide_um, picture);
  }
  add_caution(room.high_um - kCautionUpUm, room, picture);
  add_file_mark(checksum, room.high_um - kCautionUpUm, room, picture);
}

std::string upper(std::string words) {
  for (char& sign : words) {
    if (sign >= 'a' && sign <= 'z') sign = static_cast<char>(sign - 'a' + 'A');
  }
  return words;
}

}  // namespace

void add_trial_card(const plan::TrialCard& card, std::int64_t number, std::int64_t count,
                    const std::string& checksum, const CardRoom& room, Drawing* picture) {
  add_head({"TRIAL CARD   " + count_text(number) + " of " + count_text(count),
            upper(plan::kind_words(card.place)), card.job_name, "COUPON 300 × 50"},
           room, picture);
  Um base = add_lines(card.stack, Weight::bold, kLinesTopUm, room, picture) + 800;
  for (const std::string& line : card.lines) {
    base = add_lines(line, Weight::regular, base, room, picture);
  }
  const Um foot = add_table(card, base - 3'400, room, picture);
  base = add_lines(legend(card), Weight::regular, foot + 5'800, room, picture) + 2'000;
  add_coupon_place(add_afterwards(card, base, room, picture), room, picture);
  add_foot(card, checksum, room, picture);
}

}  // namespace pouncemark::sheets

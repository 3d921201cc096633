#include "engine/plan/hanging_card.h"
#include "engine/drawing/shapes.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/piece_cards.h"
#include "engine/sheets/wrapped_words.h"

/// A hanging card as it is drawn, from its head down.
namespace pouncemark::sheets {
namespace {

using drawing::Drawing;
using drawing::Weight;

constexpr Um kNameBaseUm = 31'600;
constexpr Um kCellsTopUm = 35'000;
constexpr Um kBandTopUm = kCellsTopUm + 4 * kCardCellHighUm + 1'600;
constexpr Um kStepsTopUm = kBandTopUm + kCardBandHighUm + 5'800;
constexpr Um kStepPitchUm = 5'400;
constexpr Um kToldTopUm = kStepsTopUm + 4 * kStepPitchUm + 200;
constexpr Um kBoxesTopUm = 165'600;
constexpr Um kBoxFootUm = kBoxesTopUm + 9'000;
constexpr Um kToldFootUm = kBoxesTopUm - 6'200;
constexpr Um kCautionBaseUm = 179'700;
constexpr Um kCodesBaseUm = 184'300;
constexpr Um kCodesPitchUm = 4'500;

void add_foot(const plan::HangingCard& card, const CardRoom& room, Drawing* picture) {
  const Um half = room.wide_um / 2 - 2'000;
  add_labelled_box("today, °C" + (card.planned.empty() ? "" : "; " + card.planned), card.today,
                   room.box(0, kBoxesTopUm, half, kBoxFootUm), half, picture);
  add_labelled_box("H8 hung: name, date", "",
                   room.box(half + 4'000, kBoxesTopUm, room.wide_um - 300, kBoxFootUm), half,
                   picture);
  add_caution(kCautionBaseUm, room, picture);
  Um base = kCodesBaseUm;
  for (const std::string& line : wrapped_at_most(
           2, "Not a structural or fire calculation; local codes and licensed practice come first.",
           kCardLeastUm, room.wide_um)) {
    add_fitted(room.at(0, base), line, {kCardLeastUm, kCardLeastUm}, room.wide_um, picture);
    base += kCodesPitchUm;
  }
}

void add_hanging_card(const plan::HangingCard& card, const std::string& checksum,
                      const CardRoom& room, Drawing* picture) {
  add_head({"HANGING CARD   " + card.heading, card.code, "", ""}, room, picture);
  add_fitted(room.at(0, kNameBaseUm), card.job_name, {5'200, kCardLeastUm}, room.wide_um - 48'000,
             picture);
  add_file_mark(checksum, kNameBaseUm, room, picture);
  add_cells(card.cells, 2, kCellsTopUm, room, picture);
  add_band(card.band, kBandTopUm, room, picture);
  Um base = kStepsTopUm;
  for (const std::string& step : card.steps) {
    add_fitted(room.at(0, base), step, {kCardLabelUm, kCardLeastUm, Weight::bold}, room.wide_um,
               picture);
    base += kStepPitchUm;
  }
  add_told(card.lines, card.findings, kToldTopUm, kToldFootUm, room, picture);
  add_foot(card, room, picture);
}

}  // namespace

CardSet hanging_cards(const job::Job& job, const solve::Results& results, const CardCut& cut,
                      const std::string& checksum) {
  const auto draw = [&job, &results, checksum](std::int64_t card, const CardRoom& room,
                                               Drawing* picture) {
    add_hanging_card(plan::hanging_card(job, results, static_cast<int>(card)), checksum, room,
                     picture);
  };
  return {cut, static_cast<std::int64_t>(results.bays.size()), draw};
}

}  // namespace pouncemark::sheets

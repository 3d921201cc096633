#include "engine/sheets/drilling_strips.h"

#include <algorithm>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/number_text.h"
#include "engine/checks/rules.h"
#include "engine/drawing/symbols.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/strip_length.h"
#include "engine/sheets/wrapped_words.h"

namespace pouncemark::sheets {
namespace {

using drawing::Drawing;
using drawing::Spot;
using drawing::Weight;

/// Above the strips lies the bar across, right of them stands what is said of all.
constexpr Um kBarRoomUm = 8'000;
constexpr Um kBesideUm = 27'000;
constexpr Um kBetweenUm = 4'000;
constexpr Um kBarThickUm = 3'000;
constexpr Um kLargestBarUm = 200'000;
constexpr Um kBarStepUm = 20'000;
constexpr Um kWordUm = 3'800;
constexpr Um kWordPitchUm = 5'200;
constexpr std::size_t kMostLines = 4;
/// Under the bar along stand FRONT and which sheet it is.
constexpr Um kFootHighUm = 38'000;

Um bar_that_fits(Um room_um) {
  return std::clamp(room_um / kBarStepUm * kBarStepUm, kBarStepUm, kLargestBarUm);
}

void add_upward(Spot at, Weight weight, std::string words, Drawing* picture) {
  drawing::Text text;
  text.at = at;
  text.size_um = kWordUm;
  text.weight = weight;
  text.quarter_turns = 1;
  text.words = std::move(words);
  drawing::add_text(*picture, std::move(text));
}

}  // namespace

DrillingStrips::DrillingStrips(plan::DrillingStrips strips, std::string job_name,
                               const Paper& paper, const PrintCheck& check, std::string checksum)
    : strips_(std::move(strips)),
      job_name_(std::move(job_name)),
      paper_(paper.name),
      checksum_(std::move(checksum)),
      across_(cut_one_way(0, paper.width_um, check.nominal.across_um, check.measured.across_um)) {
  const Um room = across_.window_um - kBesideUm;
  Um left = 0;
  for (std::size_t i = 0; i < strips_.strips.size(); ++i) {
    const plan::DrillingStrip& strip = strips_.strips[i];
    along_.push_back(cut_one_way(strip.length_um, paper.length_um - kBarRoomUm,
                                 check.nominal.along_um, check.measured.along_um));
    const Um wide = strip_width(strip);
    if (wide > room) {
      strips_.notes.insert(strips_.notes.begin(), "Bay " + strip.bay + ", " + strip.edge +
                                                      ": too far in from its edge for this paper.");
      continue;
    }
    for (std::int64_t length = 0; length < along_[i].pages; ++length) {
      if (pages_ == 0 || left + wide > room) {
        ++pages_;
        left = 0;
      }
      placed_.push_back({i, length, pages_ - 1, left});
      left += wide + kBetweenUm;
    }
  }
}

drawing::Drawing DrillingStrips::page(std::int64_t index) const {
  INSIST(index >= 0 && index < pages_);
  Drawing picture;
  const Um low = along_[0].border_um;
  const Um left = across_.border_um;
  for (const Placed& one : placed_) {
    if (one.page != index) continue;
    add_strip_length(
        {strips_.strips[one.strip], along_[one.strip], one.length, {left + one.left_um, low}},
        &picture);
  }
  const Um window = along_[0].window_um;
  const Um right = left + across_.window_um;
  const Um words = right - kBesideUm + 3'000;
  const Um across = bar_that_fits(across_.window_um - kBesideUm);
  const Um along = bar_that_fits(window - kFootHighUm - 14'000);
  drawing::add_check_bar(picture,
                         {{left, low + window + 3'000}, across, drawing::Lie::across, kBarThickUm});
  const auto put = [&](Um base, const std::string& said, Um size, Weight weight) {
    add_fitted({words, low + base}, said, {size, kWordUm, weight}, kBesideUm - 3'000, &picture);
  };
  put(window + 2'000, exact_mm_text(across), 5'600, Weight::bold);
  put(window - 3'000, "across", kWordUm, Weight::regular);
  drawing::add_check_bar(
      picture, {{right - kBarThickUm, low + kFootHighUm}, along, drawing::Lie::along, kBarThickUm});
  put(28'500, exact_mm_text(along), 5'600, Weight::bold);
  put(24'000, "along", kWordUm, Weight::regular);
  put(16'500, "sheet", kWordUm, Weight::regular);
  put(10'800, std::to_string(index + 1) + " of " + std::to_string(pages_), 5'600, Weight::bold);
  drawing::add_word_box(picture, {{words, low}, {right, low + 8'000}}, "FRONT");
  add_said({words + kWordUm, low + kFootHighUm}, window - kFootHighUm - 8'000, &picture);
  return picture;
}

void DrillingStrips::add_said(Spot at, Um long_um, Drawing* picture) const {
  std::vector<std::string> lines = wrapped_at_most(
      1,
      job_name_ + ": drilling strips, " + paper_ + ", file " + checksum_.substr(0, 4) + " " +
          checksum_.substr(4, 4) + " " + checksum_.substr(8, 4),
      kWordUm, long_um);
  std::string rest =
      "Measure both bars before drilling. Lay each length at its distance from the datum, not to "
      "the length before. " +
      strips_.today + " ";
  rest += checks::caution_line();
  std::string notes;
  for (const std::string& note : strips_.notes) notes += (notes.empty() ? "" : " ") + note;
  const std::size_t for_notes = notes.empty() ? 0 : 1;
  for (std::string& line : wrapped_at_most(kMostLines - 1 - for_notes, rest, kWordUm, long_um)) {
    lines.push_back(std::move(line));
  }
  if (for_notes > 0) lines.push_back(wrapped_at_most(1, notes, kWordUm, long_um).front());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const bool is_bold = i == 0 || (for_notes > 0 && i + 1 == lines.size());
    add_upward({at.x + static_cast<Um>(i) * kWordPitchUm, at.y},
               is_bold ? Weight::bold : Weight::regular, lines[i], picture);
  }
}

}  // namespace pouncemark::sheets

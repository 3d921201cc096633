#include "engine/writers/pdf_page.h"

#include "engine/base/insist.h"
#include "engine/writers/pdf_numbers.h"

#include <algorithm>
#include <variant>

namespace pouncemark::writers {
namespace {

using drawing::PathStep;
using drawing::Spot;
using drawing::Step;

void append_permille(std::string& out, int permille) {
  INSIST(permille >= 0 && permille <= 1000);
  append_decimal(out, std::clamp(permille, 0, 1000), 3);
}

// `length` along the base line, turned by quarter turns.
Spot turned(std::int64_t length, int turns) {
  switch (turns) {
    case 0:
      return {length, 0};
    case 1:
      return {0, length};
    case 2:
      return {-length, 0};
    default:
      return {0, -length};
  }
}

// How far the run's start stands before the place it is aligned to.
std::int64_t reach_back(drawing::Align align, std::int64_t width) {
  if (align == drawing::Align::left) return 0;
  return align == drawing::Align::right ? width : divided(width, 2);
}

}  // namespace

void PdfPage::set_matrix(const Correction& correction) {
  append_scale(content_, correction.across_nominal_um, correction.across_measured_um);
  content_ += " 0 0 ";
  append_scale(content_, correction.along_nominal_um, correction.along_measured_um);
  content_ += " 0 0 cm\n";
}

void PdfPage::draw(const drawing::Drawing& picture) {
  for (const drawing::Item& item : picture.items) {
    if (const auto* stroke = std::get_if<drawing::Stroke>(&item)) {
      draw_item(*stroke);
    } else if (const auto* fill = std::get_if<drawing::Fill>(&item)) {
      draw_item(*fill);
    } else if (const auto* text = std::get_if<drawing::Text>(&item)) {
      draw_item(*text);
    } else if (const auto* start = std::get_if<drawing::ClipStart>(&item)) {
      draw_item(*start);
    } else {
      draw_item(drawing::ClipEnd{});
    }
  }
  INSIST(open_clips_ == 0);
  while (open_clips_ > 0) draw_item(drawing::ClipEnd{});
}

void PdfPage::draw_item(const drawing::Stroke& stroke) {
  if (stroke.steps.empty()) return;
  use_pen(stroke.pen);
  append_path(stroke.steps);
  content_ += "S\n";
}

void PdfPage::draw_item(const drawing::Fill& fill) {
  if (fill.steps.empty()) return;
  use_fill(fill.grey_permille);
  append_path(fill.steps);
  content_ += "f\n";
}

void PdfPage::draw_item(const drawing::Text& text) {
  const Run run = run_of(fonts_.faces(), text.words, text.weight);
  if (run.signs.empty()) return;
  const std::int64_t width = run_width_um(fonts_.faces(), run, text.size_um);
  const int turns = (text.quarter_turns % 4 + 4) % 4;
  const Spot back = turned(reach_back(text.align, width), turns);
  const Spot start{text.at.x - back.x, text.at.y - back.y};
  use_fill(text.grey_permille);
  content_ += "BT\n";
  use_face(run.slot, text.size_um);
  constexpr const char* kTurns[] = {"", "0 1 -1 0 ", "-1 0 0 -1 ", "0 -1 1 0 "};
  content_ += kTurns[turns];
  append_spot(start);
  content_ += turns == 0 ? "Td\n" : "Tm\n";
  fonts_.append_run(content_, run);
  content_ += "Tj\nET\n";
}

void PdfPage::draw_item(const drawing::ClipStart& clip) {
  ++open_clips_;
  content_ += "q\n";
  append_spot(clip.box.low);
  append_spot({clip.box.high.x - clip.box.low.x, clip.box.high.y - clip.box.low.y});
  content_ += "re W n\n";
}

void PdfPage::draw_item(const drawing::ClipEnd&) {
  INSIST(open_clips_ > 0);
  if (open_clips_ == 0) return;
  --open_clips_;
  content_ += "Q\n";
  forget();
}

// Pen, grey and face are what they were before the clip: what was remembered no longer holds.
void PdfPage::forget() {
  pen_.reset();
  fill_grey_.reset();
  slot_.reset();
}

void PdfPage::use_pen(const drawing::Pen& pen) {
  INSIST(pen.width_um > 0);
  if (!pen_ || pen_->width_um != pen.width_um) {
    append_mm(content_, pen.width_um);
    content_ += " w\n";
  }
  if (!pen_ || pen_->dash_um != pen.dash_um) {
    std::int64_t sum = 0;
    content_.push_back('[');
    for (const std::int64_t length : pen.dash_um) {
      INSIST(length >= 0);
      if (sum != 0 || content_.back() != '[') content_.push_back(' ');
      append_mm(content_, length);
      sum += length;
    }
    INSIST(pen.dash_um.empty() || sum > 0);
    content_ += "]0 d\n";
  }
  if (!pen_ || pen_->grey_permille != pen.grey_permille) {
    append_permille(content_, pen.grey_permille);
    content_ += " G\n";
  }
  pen_ = pen;
}

void PdfPage::use_fill(int grey_permille) {
  if (fill_grey_ == grey_permille) return;
  append_permille(content_, grey_permille);
  content_ += " g\n";
  fill_grey_ = grey_permille;
}

void PdfPage::use_face(std::size_t slot, std::int64_t size_um) {
  uses_face_[slot] = true;
  if (slot_ == slot && size_um_ == size_um) return;
  content_ += "/F";
  append_decimal(content_, static_cast<std::int64_t>(slot) + 1, 0);
  content_.push_back(' ');
  append_mm(content_, size_um);
  content_ += " Tf\n";
  slot_ = slot;
  size_um_ = size_um;
}

void PdfPage::append_path(const std::vector<PathStep>& steps) {
  INSIST(steps.front().step == Step::move);
  for (const PathStep& step : steps) {
    switch (step.step) {
      case Step::move:
        append_spot(step.to);
        content_ += "m\n";
        break;
      case Step::line:
        append_spot(step.to);
        content_ += "l\n";
        break;
      case Step::curve:
        append_spot(step.a);
        append_spot(step.b);
        append_spot(step.to);
        content_ += "c\n";
        break;
      case Step::close:
        content_ += "h\n";
        break;
    }
  }
}

void PdfPage::append_spot(Spot spot) {
  append_mm(content_, spot.x);
  content_.push_back(' ');
  append_mm(content_, spot.y);
  content_.push_back(' ');
}

std::string PdfPage::font_entries() {
  std::string out;
  for (std::size_t slot = 0; slot < kFaceCount; ++slot) {
    if (!uses_face_[slot]) continue;
    out += out.empty() ? "/Font<</F" : "/F";
    append_decimal(out, static_cast<std::int64_t>(slot) + 1, 0);
    out += " " + reference(fonts_.number_of(slot));
  }
  if (!out.empty()) out += ">>";
  return out;
}

}  // namespace pouncemark::writers

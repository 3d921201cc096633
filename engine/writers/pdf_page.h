#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/writers/pdf_fonts.h"

/// One page's description: a picture turned into drawing orders, in millimetres.
namespace pouncemark::writers {

class PdfPage {
 public:
  explicit PdfPage(PdfFonts& fonts) : fonts_(fonts) {}

  /// Appends the matrix that all that follows goes through.
  void set_matrix(const Correction& correction);

  /// Appends a picture. INSIST: paths begin with a move, pens have a width, clips are matched.
  void draw(const drawing::Drawing& picture);

  const std::string& content() const { return content_; }

  /// The entries "/Font<<...>>" for the faces this page uses; empty for a page without words.
  std::string font_entries();

 private:
  void draw_item(const drawing::Stroke& stroke);
  void draw_item(const drawing::Fill& fill);
  void draw_item(const drawing::Text& text);
  void draw_item(const drawing::ClipStart& clip);
  void draw_item(const drawing::ClipEnd& clip);
  void use_pen(const drawing::Pen& pen);
  void use_fill(int grey_permille);
  void use_face(std::size_t slot, std::int64_t size_um);
  void append_path(const std::vector<drawing::PathStep>& steps);
  void append_spot(drawing::Spot spot);
  void forget();

  PdfFonts& fonts_;
  std::string content_;
  std::optional<drawing::Pen> pen_;
  std::optional<int> fill_grey_;
  std::optional<std::size_t> slot_;
  std::int64_t size_um_ = 0;
  std::array<bool, kFaceCount> uses_face_{};
  int open_clips_ = 0;
};

}  // namespace pouncemark::writers

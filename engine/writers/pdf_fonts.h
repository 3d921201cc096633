#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "engine/writers/pdf_objects.h"
#include "engine/writers/text_runs.h"

/// The faces as a PDF file carries them: only those used, each with only the signs used.
namespace pouncemark::writers {

class PdfFonts {
 public:
  PdfFonts(const Faces& faces, PdfObjects& objects) : faces_(faces), objects_(objects) {}

  const FaceSet& faces() const { return faces_; }

  /// Appends the run's glyph numbers as a hexadecimal string, taking up its signs, and counts the
  /// signs that have no glyph.
  void append_run(std::string& content, const Run& run);

  /// The object number of a face, reserved when first asked for.
  int number_of(std::size_t slot);

  /// Writes every face that was used.
  void write_all(int compression);

  const std::map<char32_t, int>& missing() const { return missing_; }

 private:
  // Numbers run by sign, not by glyph, so that two signs with one glyph both read back rightly.
  struct Used {
    int object = 0;
    std::vector<PlacedSign> signs;
    std::map<char32_t, unsigned> numbers;
  };

  unsigned number_for(Used& used, PlacedSign placed);
  void write(std::size_t slot, int compression);

  FaceSet faces_;
  PdfObjects& objects_;
  std::array<Used, kFaceCount> used_;
  std::map<char32_t, int> missing_;
};

}  // namespace pouncemark::writers

#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

#include "engine/writers/pdf.h"
#include "engine/writers/truetype_face.h"

/// Which face sets a run of text and how wide it comes out.
namespace pouncemark::writers {

constexpr std::size_t kFaceCount = 3;

/// The three faces, read: main regular, main bold, wide.
class FaceSet {
 public:
  explicit FaceSet(const Faces& faces);
  const TrueTypeFace& operator[](std::size_t slot) const { return faces_[slot]; }

 private:
  std::array<TrueTypeFace, kFaceCount> faces_;
};

/// One sign and its glyph; glyph 0 is the empty box of a sign that no face has.
struct PlacedSign {
  char32_t sign = 0;
  std::uint16_t glyph = 0;
};

/// A run as it will be set, whole, in one face.
struct Run {
  std::size_t slot = 0;
  std::vector<PlacedSign> signs;
  std::int64_t units = 0;  ///< Sum of the advances, font units.
};

/// The run for `words`: in the main face if that has every sign, otherwise in the wide one.
/// Not kerned, not shaped, not composed.
Run run_of(const FaceSet& faces, std::string_view words, drawing::Weight weight);

/// Width of a run set at `size_um`, micrometres. INSIST: size above 0 and at most 5 m.
std::int64_t run_width_um(const FaceSet& faces, const Run& run, std::int64_t size_um);

}  // namespace pouncemark::writers

#include "engine/writers/text_runs.h"

#include "engine/base/insist.h"
#include "engine/writers/pdf_numbers.h"
#include "engine/writers/utf8.h"

#include <algorithm>
#include <string>

namespace pouncemark::writers {
namespace {

constexpr std::size_t kWide = 2;
constexpr std::int64_t kLargestSizeUm = 5'000'000;

}  // namespace

FaceSet::FaceSet(const Faces& faces)
    : faces_{TrueTypeFace(faces.main_regular), TrueTypeFace(faces.main_bold),
             TrueTypeFace(faces.wide)} {}

Run run_of(const FaceSet& faces, std::string_view words, drawing::Weight weight) {
  const std::u32string signs = printable_signs(words);
  const std::size_t main = weight == drawing::Weight::bold ? 1 : 0;
  const bool is_main_whole = std::all_of(
      signs.begin(), signs.end(), [&](char32_t sign) { return faces[main].glyph_of(sign) != 0; });
  Run run;
  run.slot = is_main_whole ? main : kWide;
  run.signs.reserve(signs.size());
  const TrueTypeFace& face = faces[run.slot];
  for (const char32_t sign : signs) {
    const std::uint16_t glyph = face.glyph_of(sign);
    run.signs.push_back({sign, glyph});
    run.units += face.advance(glyph);
  }
  return run;
}

std::int64_t run_width_um(const FaceSet& faces, const Run& run, std::int64_t size_um) {
  INSIST(size_um > 0 && size_um <= kLargestSizeUm);
  const std::int64_t size = std::clamp<std::int64_t>(size_um, 1, kLargestSizeUm);
  return divided(run.units * size, faces[run.slot].units_per_em());
}

std::int64_t text_width_um(const Faces& faces, std::string_view words, drawing::Weight weight,
                           std::int64_t size_um) {
  const FaceSet set(faces);
  return run_width_um(set, run_of(set, words, weight), size_um);
}

}  // namespace pouncemark::writers

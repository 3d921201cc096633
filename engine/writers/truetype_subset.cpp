#include "engine/writers/truetype_subset.h"

#include "engine/base/insist.h"

#include <cstddef>
#include <map>
#include <utility>

namespace pouncemark::writers {
namespace {

// Flags of a composite glyph's parts. source: ISO/IEC 14496-22, table glyf.
constexpr unsigned kArgumentsAreWords = 0x0001;
constexpr unsigned kHasScale = 0x0008;
constexpr unsigned kMoreParts = 0x0020;
constexpr unsigned kHasTwoScales = 0x0040;
constexpr unsigned kHasFourScales = 0x0080;
constexpr unsigned kHasInstructions = 0x0100;

constexpr std::size_t kFirstPart = 10;  // Behind the contour count and the box of a glyph.
constexpr std::uint32_t kChecksumMagic = 0xB1B0AFBA;

void put_u16(std::string& out, std::size_t value) {
  out.push_back(static_cast<char>(value >> 8 & 0xFFU));
  out.push_back(static_cast<char>(value & 0xFFU));
}

void put_u32(std::string& out, std::size_t value) {
  put_u16(out, value >> 16);
  put_u16(out, value);
}

void patch_u16(std::string& out, std::size_t at, unsigned value) {
  const bool is_inside = at + 2 <= out.size();
  INSIST(is_inside);
  if (!is_inside) return;
  out[at] = static_cast<char>(value >> 8 & 0xFFU);
  out[at + 1] = static_cast<char>(value & 0xFFU);
}

void pad_to_four(std::string& out) { out.resize((out.size() + 3) / 4 * 4, '\0'); }

std::uint32_t checksum(const std::string& padded) {
  std::uint32_t sum = 0;
  const FontBytes bytes(padded);
  for (std::size_t at = 0; at + 4 <= padded.size(); at += 4) sum += bytes.u32(at);
  return sum;
}

// The kept glyphs: a list that grows at its end while composite glyphs are walked.
class Glyphs {
 public:
  Glyphs(const TrueTypeFace& face, const std::vector<std::uint16_t>& wanted)
      : face_(face), kept_(wanted) {
    for (std::size_t i = 0; i < kept_.size(); ++i) numbers_.emplace(kept_[i], i);
    for (std::size_t i = 0; i < kept_.size(); ++i) append(kept_[i]);
    put_u32(places_, outlines_.size());
  }

  std::size_t count() const { return kept_.size(); }
  const std::string& outlines() const { return outlines_; }
  const std::string& places() const { return places_; }
  const std::string& widths() const { return widths_; }

 private:
  void append(std::uint16_t glyph) {
    put_u32(places_, outlines_.size());
    put_u16(widths_, face_.advance(glyph));
    put_u16(widths_, static_cast<std::uint16_t>(face_.left_bearing(glyph)));
    std::string outline(face_.outline(glyph));
    if (!outline.empty() && FontBytes(outline).i16(0) < 0) renumber_parts(outline);
    pad_to_four(outline);
    outlines_ += outline;
  }

  void renumber_parts(std::string& outline) {
    unsigned flags = kMoreParts;
    for (std::size_t at = kFirstPart; (flags & kMoreParts) != 0 && at + 4 <= outline.size();) {
      flags = FontBytes(outline).u16(at);
      const std::size_t number = number_of(FontBytes(outline).u16(at + 2));
      patch_u16(outline, at, flags & ~kHasInstructions);
      patch_u16(outline, at + 2, static_cast<unsigned>(number));
      at += (flags & kArgumentsAreWords) != 0 ? 8U : 6U;
      if ((flags & kHasScale) != 0) at += 2;
      if ((flags & kHasTwoScales) != 0) at += 4;
      if ((flags & kHasFourScales) != 0) at += 8;
    }
  }

  std::size_t number_of(std::uint16_t glyph) {
    const auto [place, is_new] = numbers_.emplace(glyph, kept_.size());
    if (is_new) kept_.push_back(glyph);
    return place->second;
  }

  const TrueTypeFace& face_;
  std::vector<std::uint16_t> kept_;
  std::map<std::uint16_t, std::size_t> numbers_;
  std::string outlines_;
  std::string places_;
  std::string widths_;
};

// Writes the tables behind their directory, which must be in order of tag.
std::string assembled(const std::map<std::string, std::string>& tables) {
  std::size_t power = 1;
  std::size_t exponent = 0;
  while (power * 2 <= tables.size()) {
    power *= 2;
    ++exponent;
  }
  std::string file;
  put_u32(file, 0x00010000);
  put_u16(file, tables.size());
  put_u16(file, power * 16);
  put_u16(file, exponent);
  put_u16(file, (tables.size() - power) * 16);
  std::size_t place = 12 + tables.size() * 16;
  std::string bodies;
  std::size_t adjustment_at = 0;
  for (const auto& [tag, table] : tables) {
    std::string padded = table;
    pad_to_four(padded);
    if (tag == "head") adjustment_at = place + 8;
    file += tag;
    put_u32(file, checksum(padded));
    put_u32(file, place);
    put_u32(file, table.size());
    place += padded.size();
    bodies += padded;
  }
  file += bodies;
  const std::uint32_t adjustment = kChecksumMagic - checksum(file);
  patch_u16(file, adjustment_at, adjustment >> 16);
  patch_u16(file, adjustment_at + 2, adjustment & 0xFFFFU);
  return file;
}

}  // namespace

std::string subset(const TrueTypeFace& face, const std::vector<std::uint16_t>& glyphs) {
  INSIST(!glyphs.empty() && glyphs.front() == 0);
  const Glyphs kept(face, glyphs);
  INSIST(kept.count() <= 0xFFFF);
  std::map<std::string, std::string> tables;
  for (const char* tag : {"cvt ", "fpgm", "prep", "head", "hhea", "maxp"}) {
    const std::string_view table = face.table(tag);
    if (!table.empty()) tables.emplace(tag, table);
  }
  const unsigned count = static_cast<unsigned>(kept.count());
  patch_u16(tables["head"], 8, 0);
  patch_u16(tables["head"], 10, 0);
  patch_u16(tables["head"], 50, 1);
  patch_u16(tables["hhea"], 34, count);
  patch_u16(tables["maxp"], 4, count);
  tables["glyf"] = kept.outlines();
  tables["loca"] = kept.places();
  tables["hmtx"] = kept.widths();
  return assembled(tables);
}

}  // namespace pouncemark::writers

#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

/// Reads one face: TrueType outlines (glyf), widths and which sign has which glyph. Only our own
/// cut faces come here, so damage is our own mistake (INSIST); a read outside the bytes gives 0.
/// source: ISO/IEC 14496-22 (Open Font Format), tables head, hhea, hmtx, maxp, loca, glyf, cmap,
/// name.
namespace pouncemark::writers {

/// Big-endian reading from a view that never runs past its end.
class FontBytes {
 public:
  FontBytes() = default;
  explicit FontBytes(std::string_view bytes) : bytes_(bytes) {}

  std::uint16_t u16(std::size_t at) const;
  std::int16_t i16(std::size_t at) const { return static_cast<std::int16_t>(u16(at)); }
  std::uint32_t u32(std::size_t at) const;
  std::string_view part(std::size_t at, std::size_t length) const;
  std::size_t size() const { return bytes_.size(); }
  std::string_view all() const { return bytes_; }

 private:
  std::string_view bytes_;
};

/// A face ready to be asked. Keeps only views; the bytes must outlive it. Cheap to make. A face
/// without a table of signs (a subset) has no sign, but its glyphs can be read.
class TrueTypeFace {
 public:
  explicit TrueTypeFace(std::string_view bytes);

  /// The glyph of a sign; 0 when the face has none.
  std::uint16_t glyph_of(char32_t sign) const;

  /// How far the pen moves on, and the left side bearing, font units.
  std::uint16_t advance(std::uint16_t glyph) const;
  std::int16_t left_bearing(std::uint16_t glyph) const;

  /// The outline's bytes; empty for a space. Glyphs beyond the last are empty.
  std::string_view outline(std::uint16_t glyph) const;

  /// A whole table; empty when there is none.
  std::string_view table(std::string_view tag) const;

  std::uint16_t units_per_em() const { return units_per_em_; }
  std::uint16_t glyph_count() const { return glyph_count_; }

  /// Top of a sign's outline, font units; 0 when the face lacks it.
  std::int16_t top_of(char32_t sign) const;

  /// Family and style as the face names itself, letters, figures and hyphen only: "B612-Bold".
  std::string name() const;

 private:
  std::uint16_t glyph_by_segments(std::uint32_t sign) const;
  std::uint16_t glyph_by_groups(std::uint32_t sign) const;
  void choose_sign_table();
  std::string name_part(std::uint16_t id) const;

  FontBytes bytes_;
  FontBytes widths_;
  FontBytes places_;
  FontBytes outlines_;
  FontBytes signs_;  ///< The chosen subtable of cmap.
  std::uint16_t units_per_em_ = 0;
  std::uint16_t glyph_count_ = 0;
  std::uint16_t long_widths_ = 0;
  bool has_long_places_ = false;
  bool has_groups_ = false;
};

}  // namespace pouncemark::writers

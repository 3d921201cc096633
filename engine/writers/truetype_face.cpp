#include "engine/writers/truetype_face.h"

#include "engine/base/insist.h"

#include <algorithm>

namespace pouncemark::writers {
namespace {

constexpr std::size_t kTableRecord = 16;
constexpr std::size_t kNameRecord = 12;
constexpr std::uint16_t kFamilyName = 1;
constexpr std::uint16_t kStyleName = 2;

bool is_plain(char sign) {
  return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z') ||
         (sign >= '0' && sign <= '9');
}

}  // namespace

std::uint16_t FontBytes::u16(std::size_t at) const {
  const bool is_inside = bytes_.size() >= 2 && at <= bytes_.size() - 2;
  INSIST(is_inside);
  if (!is_inside) return 0;
  const auto byte = [this](std::size_t i) {
    return static_cast<unsigned>(static_cast<unsigned char>(bytes_[i]));
  };
  return static_cast<std::uint16_t>(byte(at) << 8 | byte(at + 1));
}

std::uint32_t FontBytes::u32(std::size_t at) const {
  return static_cast<std::uint32_t>(u16(at)) << 16 | u16(at + 2);
}

std::string_view FontBytes::part(std::size_t at, std::size_t length) const {
  const bool is_inside = at <= bytes_.size() && length <= bytes_.size() - at;
  INSIST(is_inside);
  return is_inside ? bytes_.substr(at, length) : std::string_view{};
}

TrueTypeFace::TrueTypeFace(std::string_view bytes) : bytes_(bytes) {
  const FontBytes head(table("head"));
  units_per_em_ = std::max<std::uint16_t>(head.u16(18), 1);
  has_long_places_ = head.i16(50) != 0;
  long_widths_ = FontBytes(table("hhea")).u16(34);
  glyph_count_ = FontBytes(table("maxp")).u16(4);
  widths_ = FontBytes(table("hmtx"));
  places_ = FontBytes(table("loca"));
  outlines_ = FontBytes(table("glyf"));
  INSIST(long_widths_ > 0 && glyph_count_ > 0);
  choose_sign_table();
}

std::string_view TrueTypeFace::table(std::string_view tag) const {
  const std::size_t count = bytes_.u16(4);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t record = 12 + i * kTableRecord;
    if (bytes_.part(record, 4) == tag) {
      return bytes_.part(bytes_.u32(record + 8), bytes_.u32(record + 12));
    }
  }
  return {};
}

void TrueTypeFace::choose_sign_table() {
  const FontBytes cmap(table("cmap"));
  if (cmap.size() == 0) return;
  const std::size_t count = cmap.u16(2);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t at = cmap.u32(4 + i * 8 + 4);
    const std::uint16_t format = cmap.u16(at);
    if (format == 12) {
      signs_ = FontBytes(cmap.part(at, cmap.u32(at + 4)));
      has_groups_ = true;
    } else if (format == 4 && !has_groups_) {
      signs_ = FontBytes(cmap.part(at, cmap.u16(at + 2)));
    }
  }
}

std::uint16_t TrueTypeFace::glyph_of(char32_t sign) const {
  if (signs_.size() == 0) return 0;
  const std::uint16_t glyph = has_groups_ ? glyph_by_groups(sign) : glyph_by_segments(sign);
  return glyph < glyph_count_ ? glyph : std::uint16_t{0};
}

// Format 4: four lists of equal length, the first of them (last sign of each segment) in order.
std::uint16_t TrueTypeFace::glyph_by_segments(std::uint32_t sign) const {
  if (sign > 0xFFFF) return 0;
  const std::size_t twice = signs_.u16(6);  // Two bytes an entry.
  std::size_t low = 0;
  std::size_t high = twice / 2;
  while (low < high) {
    const std::size_t middle = (low + high) / 2;
    if (signs_.u16(14 + middle * 2) < sign) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  if (low >= twice / 2) return 0;
  const std::size_t first_at = 16 + twice + low * 2;
  const std::uint32_t first = signs_.u16(first_at);
  if (sign < first) return 0;
  const std::uint32_t delta = signs_.u16(first_at + twice);
  const std::size_t range_at = first_at + 2 * twice;
  const std::uint16_t range = signs_.u16(range_at);
  if (range == 0) return static_cast<std::uint16_t>(sign + delta);
  const std::uint32_t glyph = signs_.u16(range_at + range + std::size_t{sign - first} * 2);
  return glyph == 0 ? std::uint16_t{0} : static_cast<std::uint16_t>(glyph + delta);
}

// Format 12: groups of first sign, last sign, first glyph, in order.
std::uint16_t TrueTypeFace::glyph_by_groups(std::uint32_t sign) const {
  std::size_t low = 0;
  std::size_t high = signs_.u32(12);
  while (low < high) {
    const std::size_t middle = (low + high) / 2;
    const std::size_t group = 16 + middle * 12;
    if (sign > signs_.u32(group + 4)) {
      low = middle + 1;
    } else if (sign < signs_.u32(group)) {
      high = middle;
    } else {
      return static_cast<std::uint16_t>(signs_.u32(group + 8) + (sign - signs_.u32(group)));
    }
  }
  return 0;
}

std::uint16_t TrueTypeFace::advance(std::uint16_t glyph) const {
  if (long_widths_ == 0) return 0;
  const std::size_t last = static_cast<std::size_t>(long_widths_) - 1;
  return widths_.u16(std::min<std::size_t>(glyph, last) * 4);
}

std::int16_t TrueTypeFace::left_bearing(std::uint16_t glyph) const {
  if (glyph < long_widths_) return widths_.i16(std::size_t{glyph} * 4 + 2);
  const std::size_t beyond = static_cast<std::size_t>(glyph) - long_widths_;
  return widths_.i16(std::size_t{long_widths_} * 4 + beyond * 2);
}

std::string_view TrueTypeFace::outline(std::uint16_t glyph) const {
  if (glyph >= glyph_count_) return {};
  const auto place = [this](std::size_t i) -> std::size_t {
    return has_long_places_ ? places_.u32(i * 4) : std::size_t{places_.u16(i * 2)} * 2;
  };
  const std::size_t from = place(glyph);
  const std::size_t to = place(std::size_t{glyph} + 1);
  return to > from ? outlines_.part(from, to - from) : std::string_view{};
}

std::int16_t TrueTypeFace::top_of(char32_t sign) const {
  const std::uint16_t glyph = glyph_of(sign);
  const std::string_view bytes = glyph == 0 ? std::string_view{} : outline(glyph);
  return bytes.empty() ? std::int16_t{0} : FontBytes(bytes).i16(8);
}

std::string TrueTypeFace::name_part(std::uint16_t id) const {
  const FontBytes names(table("name"));
  std::string out;
  if (names.size() == 0) return out;
  const std::size_t count = names.u16(2);
  const std::size_t words = names.u16(4);
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t record = 6 + i * kNameRecord;
    const bool is_windows = names.u16(record) == 3;
    if (!is_windows || names.u16(record + 6) != id) continue;
    // Two bytes a sign; what is left after dropping the zero bytes is plain for our faces.
    for (const char byte : names.part(words + names.u16(record + 10), names.u16(record + 8))) {
      if (is_plain(byte)) out.push_back(byte);
    }
    return out;
  }
  return out;
}

std::string TrueTypeFace::name() const {
  return name_part(kFamilyName) + "-" + name_part(kStyleName);
}

}  // namespace pouncemark::writers

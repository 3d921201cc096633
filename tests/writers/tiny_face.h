#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace pouncemark::tests {

inline std::string big_endian(const std::vector<unsigned>& words) {
  std::string out;
  for (const unsigned word : words) {
    out.push_back(static_cast<char>(word >> 8 & 0xFFU));
    out.push_back(static_cast<char>(word & 0xFFU));
  }
  return out;
}

/// A face of as many glyphs as `outlines`, each of even length. Glyph 0 is 10 units wide, the
/// others 20; bearings are 1, 2, 3 and so on. `cmap` is the table of signs.
inline std::string tiny_face(const std::vector<std::string>& outlines, const std::string& cmap) {
  std::string head(54, '\0');
  head.replace(18, 2, big_endian({1000}));
  std::string hhea(36, '\0');
  hhea.replace(34, 2, big_endian({2}));
  std::vector<unsigned> widths{10, 1, 20, 2};
  std::vector<unsigned> places{0};
  std::string glyphs;
  for (std::size_t i = 0; i < outlines.size(); ++i) {
    glyphs += outlines[i];
    places.push_back(static_cast<unsigned>(glyphs.size() / 2));
    if (i > 1) widths.push_back(static_cast<unsigned>(i + 1));
  }
  const std::vector<std::pair<std::string, std::string>> tables = {
      {"cmap", cmap},
      {"glyf", glyphs},
      {"head", head},
      {"hhea", hhea},
      {"hmtx", big_endian(widths)},
      {"loca", big_endian(places)},
      {"maxp", big_endian({1, 0, static_cast<unsigned>(outlines.size())})},
  };
  std::string file = big_endian({1, 0, static_cast<unsigned>(tables.size()), 0, 0, 0});
  std::size_t place = 12 + tables.size() * 16;
  std::string bodies;
  for (const auto& [tag, table] : tables) {
    file += tag;
    const unsigned length = static_cast<unsigned>(table.size());
    file += big_endian({0, 0, 0, static_cast<unsigned>(place), 0, length});
    place += table.size();
    bodies += table;
  }
  return file + bodies;
}

}  // namespace pouncemark::tests

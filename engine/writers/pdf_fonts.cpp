#include "engine/writers/pdf_fonts.h"

#include "engine/base/insist.h"
#include "engine/writers/deflate.h"
#include "engine/writers/pdf_numbers.h"
#include "engine/writers/truetype_subset.h"
#include "engine/writers/utf8.h"

#include <algorithm>
#include <string_view>

namespace pouncemark::writers {
namespace {

// Most pairs in one block of a sign map. source: ISO 32000-1 9.10.3 by way of Adobe note 5014.
constexpr std::size_t kPairsInBlock = 100;

void append_number(std::string& out, std::int64_t number) { append_decimal(out, number, 0); }

// A face's own units as thousandths of the em.
void append_thousandths(std::string& out, const TrueTypeFace& face, std::int64_t units) {
  append_decimal(out, divided(units * 1'000'000, face.units_per_em()), 3);
}

std::string subset_name(const TrueTypeFace& face, std::size_t slot) {
  std::string name = "PMARK";
  name.push_back(static_cast<char>('A' + slot));
  return name + "+" + face.name();
}

// Which sign each glyph number stands for, so that text can be searched and copied.
std::string sign_map(const std::vector<PlacedSign>& signs) {
  std::string out =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
      "/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n"
      "/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n";
  for (std::size_t from = 0; from < signs.size(); from += kPairsInBlock) {
    const std::size_t to = std::min(from + kPairsInBlock, signs.size());
    append_number(out, static_cast<std::int64_t>(to - from));
    out += " beginbfchar\n";
    for (std::size_t i = from; i < to; ++i) {
      out += "<";
      append_hex4(out, static_cast<unsigned>(i + 1));
      out += "><";
      append_utf16_hex(out, signs[i].sign);
      out += ">\n";
    }
    out += "endbfchar\n";
  }
  out += "endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend\n";
  return out;
}

std::string widths(const TrueTypeFace& face, const std::vector<PlacedSign>& signs) {
  std::string out = "/W[0[";
  append_thousandths(out, face, face.advance(0));
  for (const PlacedSign& placed : signs) {
    out.push_back(' ');
    append_thousandths(out, face, face.advance(placed.glyph));
  }
  return out + "]]";
}

std::string description(const TrueTypeFace& face, const std::string& name, bool is_bold,
                        int file_number) {
  const FontBytes head(face.table("head"));
  const FontBytes hhea(face.table("hhea"));
  std::string out = "<</Type/FontDescriptor/FontName/" + name + "/Flags 4/FontBBox[";
  for (const std::size_t at : {36U, 38U, 40U, 42U}) {
    append_thousandths(out, face, head.i16(at));
    if (at != 42U) out.push_back(' ');
  }
  out += "]/ItalicAngle 0/Ascent ";
  append_thousandths(out, face, hhea.i16(4));
  out += "/Descent ";
  append_thousandths(out, face, hhea.i16(6));
  out += "/CapHeight ";
  append_thousandths(out, face, face.top_of(U'H'));
  // Thickness of an upright stem: readers use it only to imitate a face they were not given.
  out += is_bold ? "/StemV 140" : "/StemV 80";
  return out + "/FontFile2 " + reference(file_number) + ">>";
}

}  // namespace

unsigned PdfFonts::number_for(Used& used, PlacedSign placed) {
  const unsigned next = static_cast<unsigned>(used.signs.size() + 1);
  const auto [place, is_new] = used.numbers.emplace(placed.sign, next);
  if (is_new) used.signs.push_back(placed);
  return place->second;
}

void PdfFonts::append_run(std::string& content, const Run& run) {
  content.push_back('<');
  for (const PlacedSign& placed : run.signs) {
    if (placed.glyph == 0) ++missing_[placed.sign];
    append_hex4(content, placed.glyph == 0 ? 0 : number_for(used_[run.slot], placed));
  }
  content.push_back('>');
}

int PdfFonts::number_of(std::size_t slot) {
  if (used_[slot].object == 0) used_[slot].object = objects_.reserve();
  return used_[slot].object;
}

void PdfFonts::write_all(int compression) {
  for (std::size_t slot = 0; slot < kFaceCount; ++slot) {
    if (used_[slot].object != 0) write(slot, compression);
  }
}

void PdfFonts::write(std::size_t slot, int compression) {
  const Used& used = used_[slot];
  const TrueTypeFace& face = faces_[slot];
  const std::string name = subset_name(face, slot);
  std::vector<std::uint16_t> glyphs{0};
  for (const PlacedSign& placed : used.signs) glyphs.push_back(placed.glyph);
  const std::string file = subset(face, glyphs);
  const int file_number = objects_.reserve();
  const int description_number = objects_.reserve();
  const int inner_number = objects_.reserve();
  const int map_number = objects_.reserve();
  std::string entries = "/Filter/FlateDecode/Length1 ";
  append_number(entries, static_cast<std::int64_t>(file.size()));
  objects_.write_stream(file_number, entries, deflated(file, compression));
  objects_.write(description_number, description(face, name, slot % 2 == 1, file_number));
  objects_.write(inner_number,
                 "<</Type/Font/Subtype/CIDFontType2/BaseFont/" + name +
                     "/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>"
                     "/CIDToGIDMap/Identity/FontDescriptor " +
                     reference(description_number) + widths(face, used.signs) + ">>");
  objects_.write_stream(map_number, "/Filter/FlateDecode",
                        deflated(sign_map(used.signs), compression));
  objects_.write(used.object, "<</Type/Font/Subtype/Type0/BaseFont/" + name +
                                  "/Encoding/Identity-H/DescendantFonts[" +
                                  reference(inner_number) + "]/ToUnicode " + reference(map_number) +
                                  ">>");
}

}  // namespace pouncemark::writers

#pragma once

#include <zlib.h>

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "engine/batch/built_in_faces.h"
#include "engine/writers/pdf.h"

/// Reads back what the PDF writer wrote, by way of its table of places and nothing else.
namespace pouncemark::tests {

inline std::string inflated(std::string_view packed) {
  std::string out;
  z_stream stream{};
  if (inflateInit(&stream) != Z_OK) return out;
  stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(packed.data()));
  stream.avail_in = static_cast<uInt>(packed.size());
  int state = Z_OK;
  while (state == Z_OK) {
    char piece[4096];
    stream.next_out = reinterpret_cast<Bytef*>(piece);
    stream.avail_out = sizeof piece;
    state = inflate(&stream, Z_NO_FLUSH);
    out.append(piece, sizeof piece - stream.avail_out);
  }
  inflateEnd(&stream);
  return state == Z_STREAM_END && stream.avail_in == 0 ? out : std::string("not a whole stream");
}

/// The part of `text` between `before` and the next `after`; empty when either is missing.
inline std::string between(std::string_view text, std::string_view before, std::string_view after) {
  const std::size_t from = text.find(before);
  if (from == std::string_view::npos) return {};
  const std::size_t start = from + before.size();
  const std::size_t end = text.find(after, start);
  if (end == std::string_view::npos) return {};
  return std::string(text.substr(start, end - start));
}

inline int count_of(std::string_view text, std::string_view what) {
  int count = 0;
  for (std::size_t at = text.find(what); at != std::string_view::npos;
       at = text.find(what, at + what.size())) {
    ++count;
  }
  return count;
}

class PdfRead {
 public:
  explicit PdfRead(std::string bytes) : bytes_(std::move(bytes)) {
    const std::size_t last = bytes_.rfind("startxref\n");
    if (last == std::string::npos) return;
    const std::size_t table = whole_number(last + 10);
    if (bytes_.compare(table, 7, "xref\n0 ") != 0) return;
    const std::size_t count = whole_number(table + 7);
    const std::size_t lines = bytes_.find('\n', table + 5) + 1;
    for (std::size_t i = 0; i < count; ++i) places_.push_back(whole_number(lines + 20 * i));
  }

  /// Objects in the table, the free one not counted.
  int count() const { return static_cast<int>(places_.size()) - 1; }

  /// The object from its number to its end; empty when the table does not lead to it.
  std::string object(int number) const {
    if (number < 1 || number > count()) return {};
    const std::size_t place = places_[static_cast<std::size_t>(number)];
    const std::string head = std::to_string(number) + " 0 obj\n";
    if (bytes_.compare(place, head.size(), head) != 0) return {};
    const std::size_t end = bytes_.find("\nendobj\n", place);
    return bytes_.substr(place, end == std::string::npos ? end : end - place);
  }

  /// A stream's own bytes by its stated length; empty unless the stream ends exactly there.
  std::string stream(int number) const {
    if (object(number).empty()) return {};
    const std::size_t place = places_[static_cast<std::size_t>(number)];
    const std::size_t start = bytes_.find(">>\nstream\n", place) + 10;
    const std::string entries = bytes_.substr(place, start - place);
    const std::size_t length = std::strtoul(between(entries, "/Length ", ">").c_str(), nullptr, 10);
    const bool ends = bytes_.compare(start + length, 18, "\nendstream\nendobj\n") == 0;
    return ends ? bytes_.substr(start, length) : std::string();
  }

  /// The number of the object that `entry` ("/Contents") of another object points at; 0 for none.
  int target(int number, std::string_view entry) const {
    return std::atoi(between(object(number), std::string(entry) + " ", " 0 R").c_str());
  }

  std::vector<int> pages() const {
    std::vector<int> out;
    const std::string kids = between(object(2), "/Kids[", "]");
    for (std::size_t at = 0; at < kids.size(); at = kids.find("0 R", at) + 4) {
      out.push_back(std::atoi(kids.c_str() + at));
    }
    return out;
  }

  /// The drawing orders of one page.
  std::string content(std::size_t page) const {
    return inflated(stream(target(pages().at(page), "/Contents")));
  }

  const std::string& bytes() const { return bytes_; }

 private:
  std::size_t whole_number(std::size_t at) const {
    return std::strtoul(bytes_.c_str() + at, nullptr, 10);
  }

  std::string bytes_;
  std::vector<std::size_t> places_;
};

inline writers::PdfOptions plain_options() {
  writers::PdfOptions options;
  options.title = "Marsh Lights";
  options.id_hex = "00112233445566778899aabbccddeeff";
  return options;
}

/// A file of A4 pages, one for each picture.
inline std::string written(const std::vector<drawing::Drawing>& pictures,
                           const writers::PdfOptions& options = plain_options()) {
  std::string bytes;
  writers::PdfWriter writer([&bytes](std::string_view piece) { bytes += piece; },
                            batch::built_in_faces(), options);
  for (const drawing::Drawing& picture : pictures) writer.add_page(picture, 210000, 297000);
  writer.finish();
  return bytes;
}

inline drawing::Drawing with_words(std::string_view words,
                                   drawing::Weight weight = drawing::Weight::regular) {
  drawing::Text text;
  text.at = {20000, 30000};
  text.weight = weight;
  text.words = std::string(words);
  drawing::Drawing picture;
  picture.items.emplace_back(std::in_place_type<drawing::Text>, text);
  return picture;
}

}  // namespace pouncemark::tests

#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

/// The frame of a PDF file: numbered objects one after another and the table of where each begins.
/// Holds nothing but those places; every object goes to the sink at once.
namespace pouncemark::writers {

class PdfObjects {
 public:
  explicit PdfObjects(std::function<void(std::string_view)> sink);

  /// Writes the first line. Call once, before anything else.
  void begin();

  /// A number for an object that is written later (or now). Every reserved number must be written.
  int reserve();

  /// Writes one object: `body` is everything between "obj" and "endobj".
  void write(int number, std::string_view body);

  /// Writes a stream object. `entries` are the dictionary's other entries; the length is added.
  void write_stream(int number, std::string_view entries, std::string_view bytes);

  /// Writes the table of places and the trailer with `entries` beside its size.
  void end(std::string_view entries);

 private:
  void put(std::string_view bytes);
  void open(int number);

  std::function<void(std::string_view)> sink_;
  std::vector<std::int64_t> places_;  ///< By object number less one; 0 until written.
  std::int64_t written_ = 0;
};

/// "12 0 R".
std::string reference(int number);

/// A text string of any sign as UTF-16 with byte order mark, in hexadecimal (ISO 32000-1 7.9.2.2).
/// Control signs are dropped, broken UTF-8 becomes U+FFFD.
std::string text_string(std::string_view words);

}  // namespace pouncemark::writers

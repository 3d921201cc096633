#include "engine/writers/pdf_objects.h"

#include "engine/base/insist.h"
#include "engine/writers/pdf_numbers.h"
#include "engine/writers/utf8.h"

#include <utility>

namespace pouncemark::writers {
namespace {

// One line of the table: twenty bytes with its line end (ISO 32000-1 7.5.4).
void append_place(std::string& out, std::int64_t place, std::string_view rest) {
  std::string digits;
  append_decimal(digits, place, 0);
  INSIST(digits.size() <= 10);
  if (digits.size() < 10) out.append(10 - digits.size(), '0');
  out += digits;
  out += rest;
}

}  // namespace

PdfObjects::PdfObjects(std::function<void(std::string_view)> sink) : sink_(std::move(sink)) {}

void PdfObjects::put(std::string_view bytes) {
  written_ += static_cast<std::int64_t>(bytes.size());
  sink_(bytes);
}

void PdfObjects::begin() {
  // Four bytes above 127 tell every carrier that the file is not plain text.
  put("%PDF-1.7\n%\xE2\xE3\xCF\xD3\n");
}

int PdfObjects::reserve() {
  places_.push_back(0);
  return static_cast<int>(places_.size());
}

void PdfObjects::open(int number) {
  const bool is_ours = number >= 1 && static_cast<std::size_t>(number) <= places_.size();
  INSIST(is_ours);
  if (!is_ours) return;
  std::int64_t& place = places_[static_cast<std::size_t>(number - 1)];
  INSIST(place == 0);
  place = written_;
  std::string line;
  append_decimal(line, number, 0);
  line += " 0 obj\n";
  put(line);
}

void PdfObjects::write(int number, std::string_view body) {
  open(number);
  put(body);
  put("\nendobj\n");
}

void PdfObjects::write_stream(int number, std::string_view entries, std::string_view bytes) {
  open(number);
  std::string head = "<<";
  head += entries;
  head += "/Length ";
  append_decimal(head, static_cast<std::int64_t>(bytes.size()), 0);
  head += ">>\nstream\n";
  put(head);
  put(bytes);
  put("\nendstream\nendobj\n");
}

void PdfObjects::end(std::string_view entries) {
  const std::int64_t start = written_;
  std::string table = "xref\n0 ";
  append_decimal(table, static_cast<std::int64_t>(places_.size()) + 1, 0);
  table += "\n";
  append_place(table, 0, " 65535 f \n");
  for (const std::int64_t place : places_) {
    INSIST(place > 0);
    append_place(table, place, " 00000 n \n");
  }
  table += "trailer\n<</Size ";
  append_decimal(table, static_cast<std::int64_t>(places_.size()) + 1, 0);
  table += entries;
  table += ">>\nstartxref\n";
  append_decimal(table, start, 0);
  table += "\n%%EOF\n";
  put(table);
}

std::string reference(int number) {
  std::string out;
  append_decimal(out, number, 0);
  out += " 0 R";
  return out;
}

std::string text_string(std::string_view words) {
  std::string out = "<FEFF";
  for (const char32_t sign : printable_signs(words)) append_utf16_hex(out, sign);
  out.push_back('>');
  return out;
}

}  // namespace pouncemark::writers

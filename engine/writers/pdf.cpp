#include "engine/writers/pdf.h"

#include "engine/base/insist.h"
#include "engine/writers/deflate.h"
#include "engine/writers/pdf_fonts.h"
#include "engine/writers/pdf_numbers.h"
#include "engine/writers/pdf_objects.h"
#include "engine/writers/pdf_page.h"
#include "engine/writers/utf8.h"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace pouncemark::writers {
namespace {

constexpr std::size_t kIdDigits = 32;

// source: ISO 32000-1 annex C.2, a page is at most 14 400 units of 1/72 in, that is 5080 mm.
constexpr std::int64_t kLargestPageUm = 5'080'000;

bool is_id(std::string_view digits) {
  return digits.size() == kIdDigits && std::all_of(digits.begin(), digits.end(), [](char digit) {
           return (digit >= '0' && digit <= '9') || (digit >= 'a' && digit <= 'f') ||
                  (digit >= 'A' && digit <= 'F');
         });
}

void append_xml(std::string& out, std::string_view words) {
  for (const char32_t sign : printable_signs(words)) {
    switch (sign) {
      case U'&':
        out += "&amp;";
        break;
      case U'<':
        out += "&lt;";
        break;
      case U'>':
        out += "&gt;";
        break;
      default:
        append_utf8(out, sign);
    }
  }
}

// Title and subject once more in the form that catalogues read (XMP, ISO 16684-1).
std::string description_packet(const PdfOptions& options) {
  const auto append = [](std::string& out, const char* name, std::string_view words) {
    if (words.empty()) return;
    out = out + "<dc:" + name + "><rdf:Alt><rdf:li xml:lang=\"x-default\">";
    append_xml(out, words);
    out = out + "</rdf:li></rdf:Alt></dc:" + name + ">\n";
  };
  std::string out =
      "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
      "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
      "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
      "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\">\n"
      "<dc:format>application/pdf</dc:format>\n";
  append(out, "title", options.title);
  append(out, "description", options.subject);
  return out + "</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>";
}

}  // namespace

struct PdfWriter::Inside {
  Inside(Sink sink, const Faces& faces, PdfOptions wanted)
      : options(std::move(wanted)),
        objects(std::move(sink)),
        catalogue(objects.reserve()),
        page_list(objects.reserve()),
        information(objects.reserve()),
        packet(objects.reserve()),
        fonts(faces, objects) {}

  void write_page_list();
  void write_information();
  void write_catalogue();

  PdfOptions options;
  PdfObjects objects;
  int catalogue;
  int page_list;
  int information;
  int packet;
  PdfFonts fonts;
  std::vector<int> pages;
  bool is_finished = false;
};

void PdfWriter::Inside::write_page_list() {
  std::string body = "<</Type/Pages/Count ";
  append_decimal(body, static_cast<std::int64_t>(pages.size()), 0);
  body += "/Kids[";
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0) body += i % 16 == 0 ? "\n" : " ";
    body += reference(pages[i]);
  }
  objects.write(page_list, body + "]>>");
}

void PdfWriter::Inside::write_information() {
  std::string body = "<<";
  if (!options.title.empty()) body += "/Title" + text_string(options.title);
  if (!options.subject.empty()) body += "/Subject" + text_string(options.subject);
  objects.write(information, body + ">>");
  objects.write_stream(packet, "/Type/Metadata/Subtype/XML", description_packet(options));
}

// Asks the reader to print at true size, on the page's own paper, one-sided.
void PdfWriter::Inside::write_catalogue() {
  objects.write(catalogue, "<</Type/Catalog/Pages " + reference(page_list) + "/Metadata " +
                               reference(packet) +
                               "/ViewerPreferences<</PrintScaling/None/PickTrayByPDFSize true"
                               "/Duplex/Simplex/DisplayDocTitle true>>"
                               "/PageLayout/SinglePage/Lang(en)>>");
}

PdfWriter::PdfWriter(Sink sink, const Faces& faces, PdfOptions options)
    : inside_(std::make_unique<Inside>(std::move(sink), faces, std::move(options))) {
  INSIST(is_id(inside_->options.id_hex));
  inside_->objects.begin();
}

PdfWriter::~PdfWriter() = default;

void PdfWriter::add_page(const drawing::Drawing& picture, std::int64_t width_um,
                         std::int64_t height_um) {
  Inside& in = *inside_;
  INSIST(!in.is_finished);
  INSIST(width_um > 0 && width_um <= kLargestPageUm);
  INSIST(height_um > 0 && height_um <= kLargestPageUm);
  PdfPage page(in.fonts);
  page.set_matrix(in.options.correction);
  page.draw(picture);
  const int content = in.objects.reserve();
  in.objects.write_stream(content, "/Filter/FlateDecode",
                          deflated(page.content(), in.options.compression));
  std::string box = "[0 0 ";
  append_points(box, width_um);
  box.push_back(' ');
  append_points(box, height_um);
  box.push_back(']');
  const std::string fonts = page.font_entries();
  const int number = in.objects.reserve();
  in.objects.write(number, "<</Type/Page/Parent " + reference(in.page_list) + "/MediaBox" + box +
                               "/TrimBox" + box + "/Resources<<" + fonts + ">>/Contents " +
                               reference(content) + ">>");
  in.pages.push_back(number);
}

void PdfWriter::finish() {
  Inside& in = *inside_;
  INSIST(!in.is_finished);
  if (in.is_finished) return;
  INSIST(!in.pages.empty());
  in.is_finished = true;
  in.fonts.write_all(in.options.compression);
  in.write_page_list();
  in.write_catalogue();
  in.write_information();
  const std::string id = is_id(in.options.id_hex) ? in.options.id_hex : std::string(kIdDigits, '0');
  in.objects.end("/Root " + reference(in.catalogue) + "/Info " + reference(in.information) +
                 "/ID[<" + id + "><" + id + ">]");
}

const std::map<char32_t, int>& PdfWriter::missing_signs() const { return inside_->fonts.missing(); }

}  // namespace pouncemark::writers

#include <utility>

#include "engine/base/number_text.h"
#include "engine/base/sha256.h"
#include "engine/job/job_json.h"
#include "engine/output/file_names.h"
#include "engine/output/output.h"
#include "engine/sheets/full_face.h"
#include "engine/sheets/test_page.h"

namespace pouncemark::output {
namespace {

constexpr std::int64_t kMostPages = 2'000;
constexpr std::int64_t kMostMarks = 1'000'000;

/// What every file of one print order shares.
struct Order {
  const job::Job& job;
  const solve::Results& results;
  const writers::Faces& faces;
  sheets::Paper paper;
  sheets::PrintCheck check;
  std::string sha256;
  std::vector<std::string> words;  ///< one for each piece, for its file's name
};

std::string checksum_of(const Order& order) { return order.sha256.substr(0, 12); }

writers::PdfOptions pdf_options(const Order& order, const std::string& title) {
  writers::PdfOptions options;
  options.title = order.job.name + ", " + title;
  options.subject = "file " + checksum_of(order) + ". Print at 100 %, actual size.";
  options.id_hex = order.sha256.substr(0, 32);
  return options;
}

NamedBytes print_test_page(const Order& order) {
  NamedBytes file;
  file.name = file_word(order.job.name) + "_test-page_" + order.paper.name + ".pdf";
  writers::PdfWriter pdf([&file](std::string_view part) { file.bytes += part; }, order.faces,
                         pdf_options(order, "test page"));
  pdf.add_page(sheets::test_page(order.paper, order.job.name, checksum_of(order)),
               order.paper.width_um, order.paper.length_um);
  pdf.finish();
  return file;
}

std::int64_t marks_of(const solve::Results& results, const solve::Piece& piece) {
  std::int64_t marks = 0;
  for (int i = 0; i < piece.row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(piece.first_row + i)];
    if (row.kind != solve::RowKind::stitch) marks += row.run.points();
  }
  return marks;
}

Result<NamedBytes> print_full_face(const Order& order, int index) {
  const solve::Piece& piece = order.results.pieces[static_cast<std::size_t>(index)];
  const sheets::GuideSet set{
      order.job,
      order.results,
      index,
      order.paper,
      sheets::cut_pages(piece.width_um, piece.length_um, order.paper, order.check),
      checksum_of(order)};
  const std::string name = sheets::spoken_name(piece);
  if (set.cut.pages() > kMostPages) {
    return Problem{ProblemCode::paper_too_many_pages, name,
                   counted(set.cut.pages(), "page", "pages"), "at most " + count_text(kMostPages)};
  }
  if (marks_of(order.results, piece) > kMostMarks) {
    return Problem{ProblemCode::row_too_many_points, name,
                   counted(marks_of(order.results, piece), "point", "points"),
                   "at most " + count_text(kMostMarks)};
  }
  NamedBytes file;
  file.name = file_word(order.job.name) + "_" + order.words[static_cast<std::size_t>(index)] +
              "_full-face_" + order.paper.name + "_front.pdf";
  writers::PdfOptions options = pdf_options(order, name + ", full-face guide, front");
  options.correction = {order.check.nominal.across_um, order.check.measured.across_um,
                        order.check.nominal.along_um, order.check.measured.along_um};
  writers::PdfWriter pdf([&file](std::string_view part) { file.bytes += part; }, order.faces,
                         std::move(options));
  for (std::int64_t page = 0; page < set.cut.pages(); ++page) {
    pdf.add_page(sheets::full_face_page(set, sheets::window_of(set.cut, page)),
                 order.paper.width_um, order.paper.length_um);
  }
  pdf.finish();
  return file;
}

}  // namespace

Result<std::vector<NamedBytes>> print(const job::Job& job, const solve::Results& results,
                                      const PrintOptions& options, const writers::Faces& faces) {
  const Result<sheets::Paper> paper = sheets::read_paper(options.paper);
  if (!paper) return paper.problem();
  const auto check = sheets::print_check(*paper, {options.bar_across_um, options.bar_along_um});
  if (!check) return check.problem();
  const Order order{
      job, results, faces, *paper, *check, sha256_hex(job::save_job(job)), piece_words(results)};
  std::vector<NamedBytes> files;
  if (options.guide == Guide::test_page) {
    files.push_back(print_test_page(order));
    return files;
  }
  for (std::size_t i = 0; i < results.pieces.size(); ++i) {
    if (options.piece >= 0 && options.piece != static_cast<int>(i)) continue;
    Result<NamedBytes> file = print_full_face(order, static_cast<int>(i));
    if (!file) return file.problem();
    files.push_back(std::move(file.value()));
  }
  return files;
}

Result<std::int64_t> full_face_pages(const solve::Piece& piece, const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const auto check = sheets::print_check(*paper, {});
  if (!check) return check.problem();
  return sheets::cut_pages(piece.width_um, piece.length_um, *paper, *check).pages();
}

}  // namespace pouncemark::output

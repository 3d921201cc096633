#include <utility>

#include "engine/base/number_text.h"
#include "engine/base/sha256.h"
#include "engine/job/job_json.h"
#include "engine/output/file_names.h"
#include "engine/output/output.h"
#include "engine/sheets/full_face.h"
#include "engine/sheets/test_page.h"
#include "engine/sheets/tick_list.h"

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

/// True, or the problem row_too_many_points.
Result<bool> few_enough_points(const solve::Results& results, const solve::Piece& piece) {
  const std::int64_t marks = marks_of(results, piece);
  if (marks <= kMostMarks) return true;
  return Problem{ProblemCode::row_too_many_points, sheets::spoken_name(piece),
                 counted(marks, "point", "points"), "at most " + count_text(kMostMarks)};
}

/// "marsh-lights_section-1_full-face_A4_front.pdf".
std::string guide_file_name(const Order& order, int index, const char* guide) {
  return file_word(order.job.name) + "_" + order.words[static_cast<std::size_t>(index)] + "_" +
         guide + "_" + order.paper.name + "_front.pdf";
}

Problem too_many_pages(const std::string& name, std::int64_t pages) {
  return {ProblemCode::paper_too_many_pages, name, counted(pages, "page", "pages"),
          "at most " + count_text(kMostPages)};
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
  if (set.cut.pages() > kMostPages) return too_many_pages(name, set.cut.pages());
  const Result<bool> few = few_enough_points(order.results, piece);
  if (!few) return few.problem();
  NamedBytes file;
  file.name = guide_file_name(order, index, "full-face");
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

/// A list of figures is not true to size: no correction is applied to it.
Result<NamedBytes> print_tick_list(const Order& order, int index) {
  const solve::Piece& piece = order.results.pieces[static_cast<std::size_t>(index)];
  const Result<bool> few = few_enough_points(order.results, piece);
  if (!few) return few.problem();
  const sheets::TickList list({order.job, order.results, index, order.paper, checksum_of(order)});
  const std::string name = sheets::spoken_name(piece);
  if (list.pages() > kMostPages) return too_many_pages(name, list.pages());
  NamedBytes file;
  file.name = guide_file_name(order, index, "tick-list");
  writers::PdfOptions options = pdf_options(order, name + ", tick list, front");
  options.subject = "file " + checksum_of(order) + ". Figures, not a true-size guide.";
  writers::PdfWriter pdf([&file](std::string_view part) { file.bytes += part; }, order.faces,
                         std::move(options));
  for (std::int64_t page = 0; page < list.pages(); ++page) {
    pdf.add_page(list.page(page), order.paper.width_um, order.paper.length_um);
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
    Result<NamedBytes> file = options.guide == Guide::tick_list
                                  ? print_tick_list(order, static_cast<int>(i))
                                  : print_full_face(order, static_cast<int>(i));
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

Result<std::int64_t> tick_list_pages(const job::Job& job, const solve::Results& results, int piece,
                                     const std::string& paper_words) {
  const Result<sheets::Paper> paper = sheets::read_paper(paper_words);
  if (!paper) return paper.problem();
  const Result<bool> few =
      few_enough_points(results, results.pieces[static_cast<std::size_t>(piece)]);
  if (!few) return few.problem();
  return sheets::tick_list_pages(job, results, piece, *paper);
}

}  // namespace pouncemark::output

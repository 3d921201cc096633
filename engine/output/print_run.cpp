#include "engine/output/print_run.h"

#include <cstddef>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/base/sha256.h"
#include "engine/job/job_json.h"
#include "engine/output/file_names.h"
#include "engine/output/page_counts.h"
#include "engine/sheets/drilling_strips.h"
#include "engine/sheets/full_face.h"
#include "engine/sheets/job_cards.h"
#include "engine/sheets/piece_cards.h"
#include "engine/sheets/seam_cards.h"
#include "engine/sheets/test_page.h"
#include "engine/sheets/tick_list.h"

namespace pouncemark::output {
namespace {

constexpr std::int64_t kMostPages = 2'000;

Problem too_many_pages(const std::string& name, std::int64_t pages) {
  return {ProblemCode::paper_too_many_pages, name, counted(pages, "page", "pages"),
          "at most " + count_text(kMostPages)};
}

writers::Correction correction_of(const sheets::PrintCheck& check) {
  return {check.nominal.across_um, check.measured.across_um, check.nominal.along_um,
          check.measured.along_um};
}

/// Indices of the pages that are printed.
std::vector<std::int64_t> printed_pages(const FullFacePages& pages) {
  std::vector<std::int64_t> printed;
  for (std::int64_t page = 0; page < pages.all(); ++page) {
    if (!sheets::is_left_out(pages.left_out, page)) printed.push_back(page);
  }
  return printed;
}

}  // namespace

struct PrintRun::Order {
  sheets::Paper paper;
  sheets::PrintCheck check;
  std::string checksum;
};

PrintRun::PrintRun(const job::Job& job, const solve::Results& results, const writers::Faces& faces)
    : job_(job),
      results_(results),
      faces_(faces),
      sha256_(sha256_hex(job::save_job(job))),
      words_(piece_words(results)) {}

PrintRun::Waiting PrintRun::waiting_file(const Order& order, const std::string& name,
                                         const std::string& title) const {
  Waiting file;
  file.name = file_word(job_.name) + "_" + name;
  file.paper = order.paper;
  file.options.title = job_.name + ", " + title;
  file.options.subject = "file " + order.checksum + ". Print at 100 %, actual size.";
  file.options.id_hex = sha256_.substr(0, 32);
  return file;
}

PrintRun::Waiting PrintRun::test_page(const Order& order) const {
  Waiting file = waiting_file(order, "test-page_" + order.paper.name + ".pdf", "test page");
  file.pages = 1;
  file.page = [this, order](std::int64_t) {
    return sheets::test_page(order.paper, job_.name, order.checksum);
  };
  return file;
}

Result<PrintRun::Waiting> PrintRun::full_face(const Order& order, int piece) const {
  const solve::Piece& of = results_.pieces[static_cast<std::size_t>(piece)];
  const FullFacePages pages =
      full_face_grid(job_, results_, piece, order.paper, order.check, kMostPages);
  const std::string name = sheets::spoken_name(of);
  if (pages.all() > kMostPages) return too_many_pages(name, pages.all());
  const Result<bool> few = few_enough_points(results_, of);
  if (!few) return few.problem();
  Waiting file = waiting_file(
      order,
      words_[static_cast<std::size_t>(piece)] + "_full-face_" + order.paper.name + "_front.pdf",
      name + ", full-face guide, front");
  file.options.correction = correction_of(order.check);
  std::vector<std::int64_t> printed = printed_pages(pages);
  file.pages = static_cast<std::int64_t>(printed.size());
  file.page = [this, order, piece, pages, printed = std::move(printed)](std::int64_t index) {
    const sheets::GuideSet set{job_,      results_,       piece,         order.paper,
                               pages.cut, order.checksum, pages.left_out};
    return sheets::full_face_page(
        set, sheets::window_of(set.cut, printed[static_cast<std::size_t>(index)]));
  };
  return file;
}

/// True to size, and corrected as a full-face guide is. Without a fixing there is no file.
PrintRun::Waiting PrintRun::drilling_strips(const Order& order) const {
  const auto strips = std::make_shared<const sheets::DrillingStrips>(
      plan::drilling_strips(job_, results_), job_.name, order.paper, order.check, order.checksum);
  Waiting file = waiting_file(order, "drilling-strips_" + order.paper.name + "_front.pdf",
                              "drilling strips, front");
  file.options.correction = correction_of(order.check);
  file.pages = strips->pages();
  file.page = [strips](std::int64_t index) { return strips->page(index); };
  return file;
}

/// A list of figures is not true to size: no correction is applied to it.
Result<PrintRun::Waiting> PrintRun::tick_list(const Order& order, int piece) const {
  const solve::Piece& of = results_.pieces[static_cast<std::size_t>(piece)];
  const Result<bool> few = few_enough_points(results_, of);
  if (!few) return few.problem();
  const auto list = std::make_shared<const sheets::TickList>(
      sheets::TickListSet{job_, results_, piece, order.paper, order.checksum});
  const std::string name = sheets::spoken_name(of);
  if (list->pages() > kMostPages) return too_many_pages(name, list->pages());
  Waiting file = waiting_file(
      order,
      words_[static_cast<std::size_t>(piece)] + "_tick-list_" + order.paper.name + "_front.pdf",
      name + ", tick list, front");
  file.options.subject = "file " + order.checksum + ". Figures, not a true-size guide.";
  file.pages = list->pages();
  file.page = [list](std::int64_t index) { return list->page(index); };
  return file;
}

/// Cards are not true to size either. Where there is none there is no page, and no file.
Result<PrintRun::Waiting> PrintRun::cards(const Order& order, Guide guide, int piece) const {
  const bool is_page = is_page_card(guide);
  const Result<sheets::CardCut> cut =
      sheets::card_cut(order.paper, is_page ? sheets::kPageCard : sheets::kSeamCard);
  if (!cut) return cut.problem();
  std::string words(kGuideWords[static_cast<std::size_t>(guide)]);
  if (guide == Guide::seam_card || guide == Guide::hanging_card) words += "s";
  std::string name = words + "_" + order.paper.name + ".pdf";
  words.replace(words.find('-'), 1, " ");
  if (!is_of_whole_job(guide)) {
    name = words_[static_cast<std::size_t>(piece)] + "_" + name;
    words = sheets::spoken_name(results_.pieces[static_cast<std::size_t>(piece)]) + ", " + words;
  }
  const sheets::CardSet set = card_set(guide, piece, *cut, order.checksum);
  if (set.pages() > kMostPages) return too_many_pages(words, set.pages());
  Waiting file = waiting_file(order, name, words);
  file.options.subject = "file " + order.checksum +
                         (is_page ? ". A card to fill in, not a true-size guide."
                                  : ". Cards to cut out, not a true-size guide.");
  file.paper = cut->page;
  file.pages = set.pages();
  file.page = [set](std::int64_t index) { return set.page(index); };
  return file;
}

sheets::CardSet PrintRun::card_set(Guide guide, int piece, const sheets::CardCut& cut,
                                   const std::string& checksum) const {
  if (guide == Guide::trial_card) return sheets::trial_cards(job_, results_, cut, checksum);
  if (guide == Guide::machine_card) return sheets::machine_cards(job_, results_, cut, checksum);
  if (guide == Guide::hanging_card) return sheets::hanging_cards(job_, results_, cut, checksum);
  if (guide == Guide::panel_card) {
    return sheets::panel_cards(job_, results_, piece, cut, checksum);
  }
  return sheets::seam_cards(job_, results_, piece, cut, checksum);
}

Result<PrintRun::Waiting> PrintRun::waiting(const Order& order, Guide guide, int piece) const {
  if (is_card(guide)) return cards(order, guide, piece);
  if (guide == Guide::test_page) return test_page(order);
  if (guide == Guide::tick_list) return tick_list(order, piece);
  if (guide == Guide::drilling_strip) return drilling_strips(order);
  return full_face(order, piece);
}

Result<std::int64_t> PrintRun::add(const PrintOptions& options) {
  const Result<sheets::Paper> paper = sheets::read_paper(options.paper);
  if (!paper) return paper.problem();
  const sheets::Bars bars{options.bar_across_um, options.bar_along_um};
  const auto check = sheets::print_check(*paper, is_card(options.guide) ? sheets::Bars{} : bars);
  if (!check) return check.problem();
  const Order order{*paper, *check, sha256_.substr(0, 12)};
  const bool is_whole = is_of_whole_job(options.guide);
  const int count = is_whole ? 1 : static_cast<int>(results_.pieces.size());
  std::vector<Waiting> files;
  for (int piece = 0; piece < count; ++piece) {
    if (!is_whole && options.piece >= 0 && options.piece != piece) continue;
    Result<Waiting> file = waiting(order, options.guide, piece);
    if (!file) return file.problem();
    if (file->pages > 0) files.push_back(std::move(file.value()));
  }
  for (Waiting& file : files) {
    pages_ += file.pages;
    waiting_.push_back(std::move(file));
  }
  return static_cast<std::int64_t>(files.size());
}

bool PrintRun::step() {
  if (waiting_.empty()) return false;
  const Waiting& file = waiting_.front();
  if (pdf_ == nullptr) {
    file_.name = file.name;
    page_of_file_ = 0;
    pdf_ = std::make_unique<writers::PdfWriter>(
        [this](std::string_view part) { file_.bytes += part; }, faces_, file.options);
  }
  pdf_->add_page(file.page(page_of_file_), file.paper.width_um, file.paper.length_um);
  ++page_of_file_;
  ++printed_;
  if (page_of_file_ == file.pages) finish_file();
  return true;
}

void PrintRun::finish_file() {
  pdf_->finish();
  pdf_.reset();
  finished_.push_back(std::exchange(file_, {}));
  waiting_.pop_front();
}

std::vector<NamedBytes> PrintRun::take_files() { return std::exchange(finished_, {}); }

}  // namespace pouncemark::output

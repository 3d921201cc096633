#pragma once

#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/output/output.h"
#include "engine/sheets/card_cut.h"
#include "engine/sheets/paper.h"

namespace pouncemark::output {

/// Prints guides a page at a time, so that whoever prints can say how far it is and stop between
/// two pages. Job, results and faces outlive it.
class PrintRun {
 public:
  PrintRun(const job::Job& job, const solve::Results& results, const writers::Faces& faces);

  /// Adds the files of one order; nothing is drawn yet. How many were added, or a problem as of
  /// print().
  Result<std::int64_t> add(const PrintOptions& options);

  /// Pages of all files added, and those of them that are printed.
  std::int64_t pages() const { return pages_; }
  std::int64_t printed() const { return printed_; }

  /// Prints the next page; false when there is none left.
  bool step();

  /// The files that were finished since this was asked last, in order.
  std::vector<NamedBytes> take_files();

 private:
  /// One file still to be printed.
  struct Waiting {
    std::string name;
    sheets::Paper paper;
    writers::PdfOptions options;
    std::int64_t pages = 0;
    std::function<drawing::Drawing(std::int64_t)> page;  ///< by its index among those printed
  };
  /// What the files of one order share.
  struct Order;

  Waiting waiting_file(const Order& order, const std::string& name, const std::string& title) const;
  Waiting test_page(const Order& order) const;
  Result<Waiting> full_face(const Order& order, int piece) const;
  Result<Waiting> tick_list(const Order& order, int piece) const;
  Waiting drilling_strips(const Order& order) const;
  sheets::CardSet card_set(Guide guide, int piece, const sheets::CardCut& cut,
                           const std::string& checksum) const;
  Result<Waiting> cards(const Order& order, Guide guide, int piece) const;
  Result<Waiting> waiting(const Order& order, Guide guide, int piece) const;
  void finish_file();

  const job::Job& job_;
  const solve::Results& results_;
  writers::Faces faces_;
  std::string sha256_;
  std::vector<std::string> words_;  ///< one for each piece, for its file's name
  std::deque<Waiting> waiting_;
  NamedBytes file_;  ///< the one in hand
  std::unique_ptr<writers::PdfWriter> pdf_;
  std::int64_t page_of_file_ = 0;
  std::vector<NamedBytes> finished_;
  std::int64_t pages_ = 0;
  std::int64_t printed_ = 0;
};

}  // namespace pouncemark::output

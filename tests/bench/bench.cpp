// Times one kind of work and prints "nanoseconds figure"; tests/bench/run makes the table.

#include <algorithm>
#include <chrono>
#include <cinttypes>
#include <cstdio>
#include <cstring>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/batch/built_in_faces.h"
#include "engine/batch/files.h"
#include "engine/job/job_json.h"
#include "engine/sheets/full_face.h"
#include "engine/solve/solve.h"
#include "engine/writers/pdf.h"
#ifdef POUNCEMARK_BENCH_CAIRO
#include "tests/bench/cairo_pages.h"
#endif

namespace pouncemark::tests {
namespace {

using Clock = std::chrono::steady_clock;

constexpr std::size_t kPages = 200;
constexpr int kFewestRuns = 3;
constexpr std::chrono::milliseconds kLongEnough{500};

/// What a kind of work took, and a figure it came to (bytes or a count), so that no compiler leaves
/// the work out and no reader compares unlike things.
struct Timing {
  std::int64_t nanoseconds = 0;
  std::int64_t figure = 0;
};

/// The fastest run of those that fit into half a second, three at least: other programs and a first
/// run can only add to the time that the work takes.
Timing time(const std::function<std::int64_t()>& work) {
  Timing timing;
  const Clock::time_point begin = Clock::now();
  for (int runs = 0; runs < kFewestRuns || Clock::now() - begin < kLongEnough; ++runs) {
    const Clock::time_point start = Clock::now();
    timing.figure = work();
    const std::int64_t taken =
        std::chrono::duration_cast<std::chrono::nanoseconds>(Clock::now() - start).count();
    timing.nanoseconds = runs == 0 ? taken : std::min(timing.nanoseconds, taken);
  }
  return timing;
}

std::int64_t signed_size(std::size_t size) { return static_cast<std::int64_t>(size); }

std::string job_text(const std::string& name) {
  return batch::read_file("demo-jobs/" + name + ".json", job::kLargestJobBytes).value();
}

job::Job demo_job(const std::string& name) { return job::open_job(job_text(name)).value().job; }

Timing time_solve(const std::string& name) {
  const job::Job job = demo_job(name);
  return time([&] { return signed_size(solve::solve(job).rows.size()); });
}

Timing time_open_and_save(const std::string& name) {
  const std::string text = job_text(name);
  return time([&] { return signed_size(job::save_job(job::open_job(text).value().job).size()); });
}

std::int64_t count_points(const solve::Results& results) {
  std::int64_t points = 0;
  for (const solve::Row& row : results.rows) points += row.run.points();
  return points;
}

/// Every point of every row into an array that is there already.
Timing time_points(const std::string& name) {
  const solve::Results results = solve::solve(demo_job(name));
  std::vector<solve::PlaceUm> places(static_cast<std::size_t>(count_points(results)));
  return time([&] {
    solve::PlaceUm* place = places.data();
    for (const solve::Row& row : results.rows) {
      for (std::int64_t i = 0; i < row.run.points(); ++i) *place++ = solve::point_um(row, i);
    }
    return static_cast<std::int64_t>(place - places.data());
  });
}

/// The same array copied: what writing it down costs when nothing is worked out.
Timing time_copy(const std::string& name) {
  const solve::Results results = solve::solve(demo_job(name));
  const std::vector<solve::PlaceUm> from(static_cast<std::size_t>(count_points(results)));
  std::vector<solve::PlaceUm> to(from.size());
  return time([&] {
    std::memcpy(to.data(), from.data(), from.size() * sizeof(solve::PlaceUm));
    return signed_size(to.size());
  });
}

/// The full-face guides of all sections, composed beforehand: only the writing is timed.
std::vector<drawing::Drawing> section_pages(const std::string& name, const sheets::Paper& paper) {
  const job::Job job = demo_job(name);
  const solve::Results results = solve::solve(job);
  const sheets::PrintCheck check = sheets::print_check(paper, {}).value();
  std::vector<drawing::Drawing> pages;
  for (std::size_t i = 0; i < results.pieces.size() && pages.size() < kPages; ++i) {
    const solve::Piece& piece = results.pieces[i];
    if (piece.kind != solve::PieceKind::section) continue;
    const sheets::PageCut cut = sheets::cut_pages(piece.width_um, piece.length_um, paper, check);
    const sheets::GuideSet set{job, results, static_cast<int>(i), paper, cut, job::checksum(job)};
    for (std::int64_t page = 0; page < cut.pages() && pages.size() < kPages; ++page) {
      pages.push_back(sheets::full_face_page(set, sheets::window_of(cut, page)));
    }
  }
  return pages;
}

std::string own_pages(const std::vector<drawing::Drawing>& pictures, std::size_t count,
                      const sheets::Paper& paper, const writers::Faces& faces) {
  std::string file;
  writers::PdfOptions options;
  options.id_hex = std::string(32, '0');
  writers::PdfWriter pdf([&file](std::string_view part) { file += part; }, faces, options);
  for (std::size_t page = 0; page < count; ++page) {
    pdf.add_page(pictures[page % pictures.size()], paper.width_um, paper.length_um);
  }
  pdf.finish();
  return file;
}

using WritePages = decltype(&own_pages);

Timing time_pages(WritePages write) {
  const sheets::Paper paper = sheets::read_paper("A4").value();
  const std::vector<drawing::Drawing> pictures = section_pages("harbour-ledger", paper);
  const writers::Faces faces = batch::built_in_faces();
  return time([&] { return signed_size(write(pictures, kPages, paper, faces).size()); });
}

std::int64_t marks_of(const drawing::Item& item) {
  const auto* stroke = std::get_if<drawing::Stroke>(&item);
  const auto* fill = std::get_if<drawing::Fill>(&item);
  if (stroke == nullptr && fill == nullptr) return std::holds_alternative<drawing::Text>(item);
  const std::vector<drawing::PathStep>& steps = stroke != nullptr ? stroke->steps : fill->steps;
  return std::count_if(steps.begin(), steps.end(), [](const drawing::PathStep& step) {
    return step.step == drawing::Step::move;
  });
}

/// How full the pages are: lines, areas and runs of text of all of them. Nothing is timed.
Timing count_marks() {
  const sheets::Paper paper = sheets::read_paper("A4").value();
  const std::vector<drawing::Drawing> pictures = section_pages("harbour-ledger", paper);
  Timing count;
  for (std::size_t page = 0; page < kPages; ++page) {
    for (const drawing::Item& item : pictures[page % pictures.size()].items) {
      count.figure += marks_of(item);
    }
  }
  return count;
}

int run(const std::string& wanted) {
  const std::map<std::string, std::function<Timing()>> works = {
      {"solve-harbour-ledger", [] { return time_solve("harbour-ledger"); }},
      {"solve-orchard-year", [] { return time_solve("orchard-year"); }},
      {"open-save", [] { return time_open_and_save("orchard-year"); }},
      {"points", [] { return time_points("orchard-year"); }},
      {"copy", [] { return time_copy("orchard-year"); }},
      {"marks", count_marks},
      {"pages", [] { return time_pages(own_pages); }},
#ifdef POUNCEMARK_BENCH_CAIRO
      {"cairo-pages", [] { return time_pages(cairo_pages); }},
#endif
  };
  const auto work = works.find(wanted);
  if (work == works.end()) {
    std::fprintf(stderr, "bench_work: '%s' is no work of this build\n", wanted.c_str());
    return 2;
  }
  const Timing timing = work->second();
  std::printf("%" PRId64 " %" PRId64 "\n", timing.nanoseconds, timing.figure);
  return 0;
}

}  // namespace
}  // namespace pouncemark::tests

int main(int count, char** words) {
  return pouncemark::tests::run(count == 2 ? words[1] : std::string());
}

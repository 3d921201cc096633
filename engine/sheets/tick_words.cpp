#include "engine/sheets/tick_words.h"

#include "engine/base/number_text.h"

namespace pouncemark::sheets {
namespace {

constexpr Um kHalfMm = 500;

/// Our minus is the sign itself, not a hyphen.
std::string with_minus(std::string figure) {
  return figure.starts_with("-") ? "−" + figure.substr(1) : figure;
}

/// A length to the last micrometre, with one decimal at least: "20.0", "19.125".
std::string exact_figure(Um um) {
  return with_minus(um % 100 == 0 ? mm_text(um, 1) : exact_mm_text(um));
}

/// A gap with two decimals, or three where it needs them to be exact.
std::string gap_figure(Um um) { return um % 10 == 0 ? mm_text(um, 2) : exact_mm_text(um); }

/// The gap after all the equal ones; 0 when there is none.
Um last_gap_um(const layout::Run& run) {
  if (run.step_um == 0 || run.gaps == 0 || run.length_um == run.gaps * run.step_um) return 0;
  return run.length_um - (run.gaps - 1) * run.step_um;
}

/// " + 40 × 59.00", with a last gap of its own if there is one.
std::string product_words(const layout::Run& run, Um gap) {
  const Um last = last_gap_um(run);
  const std::int64_t times = last > 0 ? run.gaps - 1 : run.gaps;
  std::string words;
  if (times > 0) words += " + " + count_text(times) + " × " + gap_figure(gap);
  if (last > 0) words += " + " + exact_figure(last);
  return words;
}

std::string noun(const solve::Row& row, std::int64_t count) {
  const bool is_staple = row.kind == solve::RowKind::staple;
  return counted(count, is_staple ? "staple" : "point", is_staple ? "staples" : "points");
}

/// How the list prints a length that it had to round.
void add_if_rounded(const char* which, Um um, std::vector<std::string>* lines) {
  if (um == printed_um(um)) return;
  lines->push_back(std::string(which) + ", " + exact_figure(um) + ", is printed " +
                   printed_figure(um));
}

}  // namespace

Um printed_um(Um um) { return divide_round(um, kHalfMm) * kHalfMm; }

std::string printed_figure(Um um) { return with_minus(mm_text(printed_um(um), 1)); }

Um sum_of_printed_um(const layout::Run& run) {
  Um sum = 0;
  for (std::int64_t i = 0; i < run.points(); ++i) sum += printed_um(run.station_um(i));
  return sum;
}

std::string count_words(const solve::Row& row) {
  std::string words = noun(row, solve::own_points(row));
  if (row.first_is_shared && row.run.points() > 0) words += " and the corner";
  if (row.run.gaps == 0) return words;
  const Um last = last_gap_um(row.run);
  if (last == 0 || row.run.gaps > 1) {
    words += ", " + mm_text(row.run.spacing_um(), 2) + " centre to centre";
  }
  if (last > 0) words += ", the last gap " + mm_text(last, 2);
  return words;
}

std::vector<std::string> sum_check(const layout::Run& run) {
  if (run.points() == 0) return {};
  if (run.gaps == 0) return {"sum check: the one figure is " + printed_figure(run.first_um())};
  std::vector<std::string> lines;
  const std::string first = exact_figure(run.first_um());
  const std::string last = " = " + exact_figure(run.last_um());
  if (run.step_um > 0) {
    lines.push_back(first + product_words(run, run.step_um) + last);
    if (last_gap_um(run) > 0) {
      lines.push_back("the last gap is " + exact_figure(last_gap_um(run)));
    } else if (run.left_over_um > 0) {
      lines.push_back(exact_figure(run.left_over_um) + (run.left_before_um > 0
                                                            ? " left over, half at each end"
                                                            : " left over at the far end"));
    }
  } else if (run.length_um % run.gaps == 0) {
    lines.push_back(first + product_words(run, run.length_um / run.gaps) + last);
  } else {
    lines.push_back(first + " + " + exact_figure(run.length_um) + last);
    lines.push_back(exact_figure(run.length_um) + " in " + counted(run.gaps, "gap", "gaps") +
                    " of " + mm_text(run.spacing_um(), 2));
  }
  lines.front().insert(0, "sum check: ");
  add_if_rounded("the first", run.first_um(), &lines);
  add_if_rounded("the last", run.last_um(), &lines);
  lines.push_back("the " + count_text(run.points()) + " figures add up to " +
                  printed_figure(sum_of_printed_um(run)));
  return lines;
}

std::string stitch_words(const solve::Row& row) {
  const layout::Run& run = row.run;
  const std::string corner = row.first_is_shared ? " (the hinge row's corner)" : "";
  if (run.points() == 0) return "not laid: no hole";
  if (run.gaps == 0) return "one hole at " + printed_figure(run.first_um()) + corner;
  return "first hole " + printed_figure(run.first_um()) + corner + ", last hole " +
         printed_figure(run.last_um()) + ", " + counted(run.gaps, "stitch", "stitches") + " of " +
         mm_text(run.spacing_um(), 2);
}

}  // namespace pouncemark::sheets

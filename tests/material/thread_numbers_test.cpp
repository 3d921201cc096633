#include "engine/material/thread_numbers.h"

#include <doctest/doctest.h>

using namespace pouncemark::material;
using doctest::Approx;

namespace {

double ticket_of_count(double count, int plies) {
  return metric_ticket_of_tex(tex_of_metric_count(count, plies));
}
double cotton_ticket_of_count(double count, int plies) {
  return cotton_ticket_of_tex(tex_of_english_count(count, plies));
}

struct Turned {
  double said;
  double wanted;
};

/// Checks a table to a part in a thousand and says how many lines it held.
template <std::size_t n>
void check_all(const Turned (&table)[n]) {
  std::size_t seen = 0;
  for (const Turned& one : table) {
    CAPTURE(one.wanted);
    CHECK(one.said == Approx(one.wanted).epsilon(0.001));
    ++seen;
  }
  CHECK(seen == n);
}

}  // namespace

TEST_CASE("tickets, counts, denier and tex of the trade's own tables") {
  check_all({
      // source: common practice, thread makers' tables of metric tickets.
      {metric_ticket_of_tex(40), 75},
      {ticket_of_count(80, 2), 120},
      {ticket_of_count(20, 3), 20},
      {ticket_of_count(30, 3), 30},
      {ticket_of_count(40, 2), 60},
      {ticket_of_count(60, 3), 60},
      {ticket_of_count(80, 4), 60},
      {ticket_of_count(60, 1), 180},
      {ticket_of_count(60, 2), 90},
      {ticket_of_count(60, 4), 45},
      // source: common practice, tables of cotton tickets.
      {cotton_ticket_of_count(40, 2), 60},
      {cotton_ticket_of_count(40, 3), 40},
      {cotton_ticket_of_count(40, 4), 30},
      {cotton_ticket_of_count(60, 2), 90},
      {cotton_ticket_of_count(60, 3), 60},
      {cotton_ticket_of_count(60, 4), 45},
      // derived: 3000 ÷ ticket, 1000 ÷ count, denier ÷ 9.
      {tex_of_metric_ticket(20), 150},
      {tex_of_metric_ticket(30), 100},
      {tex_of_metric_ticket(40), 75},
      {tex_of_metric_ticket(10), 300},
      {tex_of_metric_ticket(13), 230.77},
      {tex_of_metric_count(20), 50},
      {tex_of_denier(1260), 140},
      {tex_of_cotton_ticket(cotton_ticket_of_tex(135)), 135},
      // derived: hanks of 840 yards to the pound.
      {tex_of_english_count(10), 59.054},
      {tex_of_english_count(20, 4), 118.108},
      {weighed_tex(1.35, 10), 135},
      // source: textile handbooks, momme of silk.
      {g_m2_of_momme(1), 4.33994},
      {g_m2_of_momme(8), 34.72},
      {g_m2_of_momme(16), 69.44},
      {g_m2_of_momme(19), 82.46},
  });
}

TEST_CASE("a ticket of 20 and a metric count of 20 are three to one") {
  // source: both are called a metric 20 in workshops.
  CHECK(tex_of_metric_ticket(20) == Approx(3 * tex_of_metric_count(20)));
  // source: FED-STD and ASTM D3823 label tables: a label is not a weight, tex 40 of 10,000 yards
  // to the pound may weigh 49.6.
  CHECK(weighed_tex(453.59237, 10'000 * 0.9144) == Approx(49.6).epsilon(0.001));
}

TEST_CASE("across a thread by its tex, its fibre and its packing") {
  check_all({
      // derived: √(4 tex ÷ (π density packing)).
      {thread_diameter_mm(135, 1.38, 1.0), 0.3529},
      {thread_diameter_mm(135, 1.38, 0.6), 0.4556},
      {thread_diameter_mm(150, 1.38, 1.0), 0.3720},
      {thread_diameter_mm(150, 1.38, 0.6), 0.4803},
      {thread_diameter_mm(70, 1.38, 0.6), 0.3281},
      {thread_diameter_mm(1, 1.0, 1.0), 0.035682},
      // source: Peirce 1937, cotton yarn of 1.1 cm³/g.
      {thread_diameter_mm(135, 1.0, 1.0 / 1.1), 0.4348},
      {thread_diameter_mm(1, 1.0, 1.0 / 1.1), 0.037424},
      // source: textile examination papers, English count 10 at 0.91 g/cm³.
      {thread_diameter_mm(tex_of_english_count(10), 0.91, 1.0), 0.2874},
  });
  CHECK(thread_diameter_um(135'000, 1'380, 600) == 456);
  CHECK(thread_diameter_um(135'000, 1'380, 1'000) == 353);
}

TEST_CASE("a diameter thinner than the bare fibre cannot be") {
  // source: common practice; a page of thread gives 0.2794 for tex 135, whose fibre alone is 0.353.
  CHECK(is_thinner_than_its_fibre(279, 135'000, 1'380));
  CHECK(is_thinner_than_its_fibre(352, 135'000, 1'380));
  CHECK_FALSE(is_thinner_than_its_fibre(353, 135'000, 1'380));
  CHECK_FALSE(is_thinner_than_its_fibre(870, 135'000, 1'380));
}

TEST_CASE("the second scale of needles is a table with ends") {
  struct Size {
    int second;
    int blade;
  };
  // source: common practice, makers' tables: 60 + 5 × (size − 8) below 19, a table above.
  const Size sizes[] = {{8, 60},   {10, 70},  {12, 80},  {14, 90},  {16, 100},
                        {18, 110}, {19, 120}, {20, 125}, {21, 130}, {22, 140},
                        {23, 160}, {24, 180}, {25, 200}, {26, 230}, {27, 250}};
  int seen = 0;
  for (const Size& one : sizes) {
    CAPTURE(one.second);
    CHECK(needle_size_of_second_scale(one.second) == one.blade);
    ++seen;
  }
  CHECK(seen == 15);
  CHECK_FALSE(needle_size_of_second_scale(7));
  CHECK_FALSE(needle_size_of_second_scale(28));
}

TEST_CASE("the first guess of a needle is twelve roots of tex, and the tens around it") {
  struct Guess {
    std::int64_t tex;
    int tenths;
    int least;
    int most;
  };
  // source: by hand, 12 × √tex.
  const Guess guesses[] = {{60'000, 930, 90, 100},    {90'000, 1138, 110, 120},
                           {135'000, 1394, 130, 140}, {150'000, 1470, 140, 150},
                           {210'000, 1739, 170, 180}, {100'000, 1200, 120, 130}};
  int seen = 0;
  for (const Guess& one : guesses) {
    CAPTURE(one.tex);
    const NeedleGuess guess = needle_guess(one.tex);
    CHECK(guess.tenths == one.tenths);
    CHECK(guess.least == one.least);
    CHECK(guess.most == one.most);
    ++seen;
  }
  CHECK(seen == 6);
}

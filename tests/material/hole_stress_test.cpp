#include "engine/material/hole_stress.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace pouncemark::material;
using doctest::Approx;

TEST_CASE("stress at the holes of one row, across and along it") {
  struct Case {
    double hole_by_stitch;
    double across;
    double along;
    double tolerance;
  };
  // derived: periodic complex potentials, residual below 1e-10; those between are worked out apart
  // and not in the table the figures are read from.
  const Case cases[] = {
      {0.0, 3.0, 3.0, 1e-12},          {0.05, 3.00002, 2.98368, 1e-9},
      {0.1, 3.00040, 2.93628, 1e-9},   {0.2, 3.00626, 2.76764, 1e-9},
      {0.3, 3.03078, 2.54661, 1e-9},   {0.4, 3.09614, 2.32611, 1e-9},
      {0.5, 3.24112, 2.13919, 1e-9},   {0.6, 3.54633, 1.99517, 1e-9},
      {0.7, 4.20377, 1.88671, 1e-9},   {0.8, 5.75528, 1.80184, 1e-9},
      {1.4 / 6, 3.0115, 2.6969, 3e-4}, {1.4 / 4, 3.0565, 2.4337, 5e-4},
      {1.6 / 8, 3.0063, 2.7676, 3e-5},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.hole_by_stitch);
    const auto stress = row_stress(one.hole_by_stitch, 1.0);
    REQUIRE(stress.has_value());
    CHECK(stress->across == Approx(one.across).epsilon(one.tolerance));
    CHECK(stress->along == Approx(one.along).epsilon(one.tolerance));
    ++seen;
  }
  CHECK(seen == 13);
  CHECK_FALSE(row_stress(0.801, 1.0).has_value());
}

TEST_CASE("closer holes are worse across the row and shield one another along it") {
  double across = 3.0;
  double along = 3.0;
  int seen = 0;
  for (int percent = 1; percent <= 80; ++percent) {
    CAPTURE(percent);
    const auto stress = row_stress(percent / 100.0, 1.0);
    REQUIRE(stress.has_value());
    CHECK(stress->across > across - 2e-4);
    CHECK(stress->along < along);
    across = stress->across;
    along = stress->along;
    ++seen;
  }
  CHECK(seen == 80);
}

TEST_CASE("what is left of the sheet beside the holes, by the stitch") {
  // source: 1 − d ÷ p by hand.
  CHECK(sheet_left(1.4, 6) == Approx(0.7667).epsilon(1e-4));
  CHECK(sheet_left(1.4, 4) == Approx(0.65));
  CHECK(sheet_left(1.6, 8) == Approx(0.8));
}

TEST_CASE("one hole in a strip is as the exact solution to one in a hundred") {
  struct Case {
    double by_width;
    double exact;
    double fit;
  };
  // source: Roark table 17.1 / Peterson for the fit; derived for the exact: boundary collocation,
  // cross-checked by finite elements (Howland 1930).
  const Case cases[] = {{0.05, 2.8585, 2.8525}, {0.1, 2.7325, 2.7221}, {0.2, 2.5221, 2.5082},
                        {0.3, 2.3621, 2.3491},  {0.4, 2.2483, 2.2357}, {0.5, 2.1737, 2.1588}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.by_width);
    CHECK(strip_stress(one.by_width, 1) == Approx(one.fit).epsilon(1e-4));
    CHECK(strip_stress(one.by_width, 1) == Approx(one.exact).epsilon(0.01));
    ++seen;
  }
  CHECK(seen == 6);
  CHECK(strip_stress(0, 1) == kOneHolePulled);
}

TEST_CASE("one hole alone has three, two and four times the stress far away") {
  // derived: hoop stress at the rim by Kirsch, 1 − 2 cos 2θ for each pull, walked round the hole.
  double pulled = 0;
  double both = 0;
  double sheared = 0;
  for (int degree = 0; degree < 360; ++degree) {
    const double t = degree * 3.14159265358979323846 / 180.0;
    const double along = 1.0 - 2.0 * std::cos(2.0 * t);
    const double across = 1.0 + 2.0 * std::cos(2.0 * t);
    pulled = std::fmax(pulled, along);
    both = std::fmax(both, along + across);
    sheared = std::fmax(sheared, std::fabs(along - across));
  }
  CHECK(pulled == Approx(kOneHolePulled));
  CHECK(both == Approx(kOneHolePulledBothWays));
  CHECK(sheared == Approx(kOneHoleSheared));
}

TEST_CASE("the force that shears a fastener out to the edge, or bears its hole out") {
  // source: machine design textbooks, 2 t (e − d/2) τ and d t σ, by hand.
  CHECK(shear_out_n(1, 5, 10, 36) == Approx(540));
  CHECK(shear_out_n(2, 5, 10, 30) == Approx(900));
  CHECK(shear_out_n(1, 5, 2.5, 36) == 0.0);
  CHECK(shear_out_n(1, 5, 1, 36) == 0.0);
  CHECK(bearing_n(1, 5, 79) == Approx(395));
  CHECK(bearing_n(2, 5, 60) == Approx(600));
}

TEST_CASE("a seam of two like threads holds one and a half threads a stitch") {
  struct Case {
    double thread;
    double stitches_an_inch;
    double an_inch;
    double tolerance;
  };
  // source: apparel handbooks, stitch type 301: thread × stitches an inch × 1.5.
  const Case cases[] = {{4.0, 10, 60, 1e-9},          {2.6, 6, 23.4, 1e-9},  {2.6, 8, 31.2, 1e-9},
                        {2.6, 10, 39.0, 1e-9},        {2.6, 12, 46.8, 1e-9}, {2.2, 6, 20, 0.02},
                        {2.2, 8, 26, 0.02},           {2.2, 10, 33, 0.02},   {2.2, 12, 40, 0.02},
                        {92.5, 25.4 / 6, 587.4, 1e-4}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.an_inch);
    const double stitch = 25.4 / one.stitches_an_inch;
    CHECK(seam_strength_n_mm(one.thread, stitch) * 25.4 ==
          Approx(one.an_inch).epsilon(one.tolerance));
    ++seen;
  }
  CHECK(seen == 10);
  CHECK(seam_strength_n_mm(92.5, 6) == Approx(23.13).epsilon(3e-4));
}

TEST_CASE("a strip that droops by its own weight tells its stiffness") {
  // derived: E = 1.5 ρ g l⁴ ÷ (δ t²) at g 9.80665.
  CHECK(droop_modulus_mpa(1.27, 250, 34.8, 1.0) == Approx(2097).epsilon(3e-4));
  CHECK(droop_modulus_mpa(1.39, 250, 17.7, 1.0) == Approx(4512).epsilon(3e-4));
  CHECK(droop_modulus_mpa(1.27, 250, 34.8, 0.5) == Approx(4 * 2097).epsilon(3e-4));
}

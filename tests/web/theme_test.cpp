#include "web/widgets/theme.h"

#include "tests/support/files.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>
#include <string>
#include <vector>

using namespace pouncemark::web;

namespace {

using Three = std::array<double, 3>;

/// Red, green, blue as light, 0 to 1.
Three light(Colour colour) {
  Three parts{};
  for (unsigned i = 0; i < 3; ++i) {
    const double v = static_cast<double>((colour >> (8 * i)) & 0xFFu) / 255.0;
    parts[i] = v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
  }
  return parts;
}

double luminance(const Three& rgb) { return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2]; }

/// source: WCAG 2.2, "relative luminance" and "contrast ratio": (L1 + 0.05) / (L2 + 0.05).
double contrast(Colour a, Colour b) {
  const double one = luminance(light(a));
  const double other = luminance(light(b));
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

// source: WCAG 2.2, 1.4.3 (text 4.5, large text 3; what cannot be pressed is free of it, here held
// to 3) and 1.4.11 (marks 3).
constexpr double kText = 4.5;
constexpr double kMark = 3.0;

struct Pair {
  const char* what;
  Colour ink;
  std::vector<Colour> grounds;
};

const std::vector<Pair>& text_pairs() {
  static const std::vector<Pair> pairs = {
      {"words and figures", kInk, {kBench, kFold, kMat, kPaper, kSheet, kLap, kCloth, kSteel}},
      {"second-rank words", kSoft, {kBench, kFold, kMat, kPaper, kSheet, kLap, kCloth}},
      {"figures in the hand", kPen, {kBench, kFold, kMat, kPaper, kSheet, kLap, kCloth}},
      {"the hinge side's words", kThread, {kBench, kMat, kPaper, kSheet, kLap}},
      {"what must not be done", kStop, {kBench, kMat, kPaper}},
      {"a bar out of true", kWarn, {kBench, kPaper}},
      {"a tag that warns", kWarn, {kWarnWash}},
      {"a tag that notes", kNote, {kPaper}},
      {"figures of the steel rule", kEngraving, {kSteel}},
      {"main buttons, banners and stops", kWhite, {kInk, kSoft, kPen, kStop}},
  };
  return pairs;
}

const std::vector<Pair>& mark_pairs() {
  static const std::vector<Pair> pairs = {
      {"staples", kStaple, {kSheet, kLap, kCloth, kMat}},
      {"stitches", kThread, {kSheet, kLap, kCloth, kFold, kMat, kBench}},
      {"edges of sheet", kSheetEdge, {kBench, kMat, kSheet, kLap, kCloth, kPaper}},
      {"lines in the hand", kPen, {kBench, kMat, kPaper, kSheet, kLap, kCloth, kSteel}},
      {"engraved lines", kEngraving, {kSteel, kMat}},
      {"rules and idle buttons' edges and words", kPale, {kBench, kMat, kPaper}},
      {"words of an idle main button", kWhite, {kPale}},
      {"the focus ring", kInk, {kBench, kFold, kMat, kPaper, kSheet, kLap, kCloth}},
  };
  return pairs;
}

int check_pairs(const std::vector<Pair>& pairs, double least) {
  int count = 0;
  for (const Pair& pair : pairs) {
    for (const Colour ground : pair.grounds) {
      INFO(pair.what << ", ground " << ground);
      CHECK(contrast(pair.ink, ground) >= least);
      ++count;
    }
  }
  return count;
}

// source: CIE 15, L*a*b* for D65 of sRGB's primaries; distance of 1976.
Three lab(const Three& rgb) {
  const double x = 0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2];
  const double z = 0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2];
  const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116.0; };
  const double fy = f(luminance(rgb));
  return {116 * fy - 16, 500 * (f(x / 0.9505) - fy), 200 * (fy - f(z / 1.089))};
}

struct Eye {
  const char* name;
  std::array<Three, 3> matrix;
};

// source: Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color
// Vision Deficiency", 2009, severity 1.0 (matrices from memory).
constexpr std::array<Eye, 4> kEyes = {{
    {"all colours", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
    {"no red",
     {{{0.152286, 1.052583, -0.204868},
       {0.114503, 0.786281, 0.099216},
       {-0.003882, -0.048116, 1.051998}}}},
    {"no green",
     {{{0.367322, 0.860646, -0.227968},
       {0.280085, 0.672501, 0.047413},
       {-0.011820, 0.042940, 0.968881}}}},
    {"no blue",
     {{{1.255528, -0.076749, -0.178779},
       {-0.078411, 0.930809, 0.147602},
       {0.004733, 0.691367, 0.303900}}}},
}};

Three seen_by(const Eye& eye, Colour colour) {
  const Three rgb = light(colour);
  Three seen{};
  for (std::size_t i = 0; i < 3; ++i) {
    const Three& row = eye.matrix[i];
    seen[i] = std::clamp(row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2], 0.0, 1.0);
  }
  return lab(seen);
}

double apart(const Eye& eye, Colour a, Colour b) {
  const Three one = seen_by(eye, a);
  const Three other = seen_by(eye, b);
  return std::hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

/// Nearer than this two colours count as one.
constexpr double kAlike = 12;

struct Two {
  const char* what;
  Colour a;
  Colour b;
};

}  // namespace

TEST_CASE("every word of the bench stands out from its ground by 4.5 or more") {
  CHECK(check_pairs(text_pairs(), kText) == 39);
  // Neighbours that no word is set in.
  CHECK(contrast(kPale, kPaper) < kText);
  CHECK(contrast(kWeave, kPaper) < kText);
  // source: WCAG 2.2: black on white is 21, a colour on itself 1.
  CHECK(contrast(rgb(0), kWhite) == doctest::Approx(21));
  CHECK(contrast(kPen, kPen) == doctest::Approx(1));
}

TEST_CASE("every mark and edge stands out from its ground by 3 or more") {
  CHECK(check_pairs(mark_pairs(), kMark) == 36);
  // Rules are drawn on paper and mat, never on the fold; the weave is an ornament of the cloth.
  CHECK(contrast(kPale, kFold) < kMark);
  CHECK(contrast(kWeave, kCloth) < kMark);
}

TEST_CASE("marks told apart by colour are told apart by every eye") {
  const std::array<Two, 7> pairs = {{{"pen and thread", kPen, kThread},
                                     {"pen and ink", kPen, kInk},
                                     {"pen and stop", kPen, kStop},
                                     {"pen and note", kPen, kNote},
                                     {"pen and warn", kPen, kWarn},
                                     {"staple and thread", kStaple, kThread},
                                     {"sheet edge and thread", kSheetEdge, kThread}}};
  int count = 0;
  for (const Two& two : pairs) {
    for (const Eye& eye : kEyes) {
      INFO(two.what << ", an eye for " << eye.name);
      CHECK(apart(eye, two.a, two.b) >= kAlike);
      ++count;
    }
  }
  CHECK(count == 28);
}

TEST_CASE("stop, warn and thread look alike to some eyes: shape and word tell them apart") {
  // Tags differ by fill, hatched end, outline and word; thread is only ever a stitched line.
  const std::array<Two, 3> pairs = {{{"stop and warn", kStop, kWarn},
                                     {"stop and thread", kStop, kThread},
                                     {"warn and thread", kWarn, kThread}}};
  int count = 0;
  for (const Two& two : pairs) {
    double least = 1e9;
    for (const Eye& eye : kEyes) least = std::min(least, apart(eye, two.a, two.b));
    INFO(two.what);
    CHECK(least < kAlike);
    ++count;
  }
  CHECK(count == 3);
}

TEST_CASE("the page around the picture has the bench's colours and no other") {
  const std::set<Colour> theme = {kBench, kPaper, kInk, kSoft, kPen};
  const std::string style = pouncemark::tests::file_text("web/style.css");
  int count = 0;
  for (std::size_t at = style.find(": #"); at != std::string::npos;
       at = style.find(": #", at + 1)) {
    const std::string digits = style.substr(at + 3, 6);
    INFO(digits);
    CHECK(theme.count(rgb(static_cast<unsigned>(std::stoul(digits, nullptr, 16)))) == 1);
    ++count;
  }
  CHECK(count == 4);
}

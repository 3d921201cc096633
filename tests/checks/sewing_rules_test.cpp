#include "engine/checks/sewing_rules.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using namespace pouncemark::checks;

namespace {

constexpr std::int64_t kPolyester = 1'380;

bool says(const std::optional<Finding>& finding, const std::string& words) {
  return finding && finding->sentence.find(words) != std::string::npos;
}

/// A warning that is whole: code, sentence, what to change and how it was worked out.
bool is_whole(const Finding& finding, const std::string& code, Severity severity) {
  return finding.code == code && finding.severity == severity && !finding.sentence.empty() &&
         !finding.change.empty() &&
         (severity == Severity::note || !finding.sum.empty() || code == "trial_marred" ||
          code == "film_under_row" || code == "staple_may_rust");
}

}  // namespace

TEST_CASE("a thread over two fifths of the blade fills the eye, just two fifths do not") {
  struct Case {
    int needle;
    std::int64_t tex;
    const char* code;
  };
  // derived: 0.035682 × √(tex ÷ (1.38 × 0.6)) by the blade: tex 135 is 0.456 across, 40 % of
  // 1.14; pairs in use (common practice): 2.6 to 3.7 threads, of 0.456 a blade of 1.19 to 1.68.
  const Case cases[] = {
      {90, 135'000, "thread_fills_eye"},
      {110, 135'000, "thread_fills_eye"},
      {113, 135'000, "thread_fills_eye"},
      {114, 135'000, "needle_and_thread"},
      {118, 135'000, "needle_and_thread"},
      {119, 135'000, ""},
      {140, 135'000, ""},
      {168, 135'000, ""},
      {169, 135'000, "needle_and_thread"},
      {90, 40'000, ""},
      {140, 150'000, ""},
      {100, 104'600, "thread_fills_eye"},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.needle);
    CAPTURE(one.tex);
    const auto finding = thread_in_eye({one.needle, one.tex, kPolyester});
    CHECK((finding ? finding->code : std::string()) == one.code);
    ++seen;
  }
  CHECK(seen == 12);
  // A thread of 0.400 in a blade of 1.00 is exactly two fifths: tex 104.
  CHECK(eye_fill_permille({100, 104'000, kPolyester}) == 400);
  CHECK(thread_in_eye({100, 104'000, kPolyester})->severity == Severity::note);
}

TEST_CASE("the warning of the eye says how full it is and which needles to try") {
  const auto finding = thread_in_eye({90, 135'000, kPolyester});
  REQUIRE(finding.has_value());
  CHECK(is_whole(*finding, "thread_fills_eye", Severity::warn));
  CHECK(finding->sentence ==
        "50.7 % of the blade: the thread fills the eye. It will fray and jam.");
  CHECK(finding->change.find("Try a needle of 130 to 140") == 0);
  CHECK(finding->sum.find("0.035682 × √(135 ÷ (1.38 × 0.6)) = 0.456; blade 0.90; "
                          "0.456 ÷ 0.90 = 50.7 %, at most 40 % (common practice") !=
        std::string::npos);
  const auto wide = thread_in_eye({200, 135'000, kPolyester});
  CHECK(is_whole(*wide, "needle_and_thread", Severity::note));
  CHECK(says(wide, "4.4 threads across: the blade is wide"));
  CHECK(says(thread_in_eye({116, 135'000, kPolyester}), "2.5 threads across: the blade is narrow"));
}

TEST_CASE("65 % of the sheet left between holes passes, a micrometre less is a tear line") {
  struct Case {
    Um stitch_um;
    int needle;
    std::int64_t permille;
    bool warns;
  };
  // source: (p − d) ÷ p by hand; 65 % common practice.
  const Case cases[] = {
      {4'000, 140, 650, false}, {3'999, 140, 650, true},  {4'001, 140, 650, false},
      {5'000, 140, 720, false}, {6'000, 140, 767, false}, {7'000, 140, 800, false},
      {3'000, 140, 533, true},  {1'400, 140, 0, true},    {1'000, 140, 0, true},
      {2'000, 70, 650, false},  {1'999, 70, 650, true},   {6'000, 210, 650, false},
      {6'000, 211, 648, true},
  };
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.stitch_um);
    CAPTURE(one.needle);
    CHECK(sheet_left_permille(one.stitch_um, one.needle) == one.permille);
    CHECK(sheet_left(one.stitch_um, one.needle).has_value() == one.warns);
    ++seen;
  }
  CHECK(seen == 13);
  const auto finding = sheet_left(3'000, 140);
  CHECK(is_whole(*finding, "sheet_left", Severity::warn));
  CHECK(finding->sentence ==
        "53.3 % of the sheet is left between holes 1.40 wide and 3 apart, and "
        "65 is the least: a tear line.");
  CHECK(finding->change.find("Lengthen the stitch to 4 or more") == 0);
  CHECK(finding->sum.find("(3 − 1.40) ÷ 3 = 53.3 %") == 0);
  CHECK(sheet_left(3'999, 140)->figure == "64.9 %");
  // What it asks for is enough, for every needle.
  int enough = 0;
  for (int needle = 20; needle <= 400; ++needle) {
    const auto one = sheet_left(needle * 12, needle);
    REQUIRE(one.has_value());
    const std::string change = one->change;
    const double least = std::stod(change.substr(std::string("Lengthen the stitch to ").size()));
    CHECK_FALSE(sheet_left(to_um(least), needle).has_value());
    ++enough;
  }
  CHECK(enough == 381);
}

TEST_CASE("a staple's leg goes through the stack with 2 to bend over, exactly so passes") {
  CHECK_FALSE(staple_leg(3'100, 1'100).has_value());
  CHECK(staple_leg(3'099, 1'100).has_value());
  const auto finding = staple_leg(4'000, 2'600);
  CHECK(is_whole(*finding, "staple_leg_short", Severity::warn));
  CHECK(finding->sentence == "0.6 short: legs of 4 do not go through a stack of 2.6 and clinch.");
  CHECK(finding->change == "Take staples with legs of 4.6 or more.");
}

TEST_CASE("a foot lifts over stack, highest step and 2 to spare, exactly so passes") {
  CHECK_FALSE(foot_lift(6'000, 2'600, 1'400).has_value());
  CHECK(foot_lift(5'999, 2'600, 1'400).has_value());
  CHECK_FALSE(foot_lift(4'600, 2'600, 0).has_value());
  const auto finding = foot_lift(5'000, 3'900, 900);
  CHECK(is_whole(*finding, "foot_lift_short", Severity::warn));
  CHECK(says(finding, "1.8 short: the foot lifts 5 and this stack needs 6.8"));
  CHECK(finding->sum.find("stack 3.9 + highest step 0.9 + 2 to spare = 6.8") == 0);
}

TEST_CASE("400 stitches a minute pass, more melts the sheet that is named") {
  CHECK_FALSE(too_fast(400'000, "PETG", 81'000).has_value());
  const auto finding = too_fast(400'001, "PETG", 81'000);
  CHECK(is_whole(*finding, "too_fast", Severity::warn));
  CHECK(too_fast(600'000, "PETG", 81'000)->sentence ==
        "600 stitches a minute: a hot needle melts the sheet; PETG softens near 81 °C.");
}

TEST_CASE("what differs from the chosen trial seam is said with what was approved") {
  CHECK_FALSE(stitch_not_as_approved(6'000, 6'000).has_value());
  CHECK(stitch_not_as_approved(5'000, 6'000)->sentence ==
        "Not what was approved: stitch 5 instead of 6.");
  CHECK(stitch_not_as_approved(6'001, 6'000)->sentence ==
        "Not what was approved: stitch 6.001 instead of 6.");
  CHECK_FALSE(needle_not_as_approved(140, 140).has_value());
  CHECK(says(needle_not_as_approved(120, 140), "needle 120 instead of 140"));
  CHECK_FALSE(thread_not_as_approved(135, 135).has_value());
  CHECK(says(thread_not_as_approved(150, 135), "thread tex 150 instead of 135"));
  CHECK(is_whole(*needle_not_as_approved(1, 2), "not_as_approved", Severity::warn));
}

TEST_CASE("a trial seam that mars the sheet warns, one not chosen or not signed is a note") {
  CHECK(is_whole(trial_marred(true, false), "trial_marred", Severity::warn));
  CHECK(trial_marred(true, false).sentence == "The chosen trial seam whitens the sheet.");
  CHECK(trial_marred(false, true).sentence == "The chosen trial seam cracks the sheet.");
  CHECK(trial_marred(true, true).sentence == "The chosen trial seam whitens and cracks the sheet.");
  CHECK(is_whole(trial_not_chosen(), "trial_open", Severity::note));
  CHECK(is_whole(trial_not_signed(), "trial_open", Severity::note));
}

TEST_CASE("a tex that rests on a ticket is asked to be weighed, a weighed one is not") {
  struct Case {
    const char* label;
    bool is_weighed;
    bool warns;
  };
  const Case cases[] = {{"ticket 20", false, true},
                        {"Metric TICKET 20", false, true},
                        {"ticket 20", true, false},
                        {"tex 135", false, false},
                        {"", false, false},
                        {"ticke", false, false},
                        {"bonded ticKet", false, true}};
  int seen = 0;
  for (const Case& one : cases) {
    CAPTURE(one.label);
    CHECK(tex_from_ticket(one.label, one.is_weighed, 135).has_value() == one.warns);
    ++seen;
  }
  CHECK(seen == 7);
  CHECK(is_whole(*tex_from_ticket("ticket", false, 150), "tex_from_ticket", Severity::warn));
  CHECK(says(tex_from_ticket("ticket", false, 150), "Tex 150 rests on a ticket"));
}

TEST_CASE("a sheet called PETG and over 3000 MPa is asked whether it is the stretched film") {
  using material::Sheet;
  CHECK_FALSE(stiff_film(Sheet::petg, 3'000'000, "leaves").has_value());
  CHECK_FALSE(stiff_film(Sheet::petg, 2'097'000, "leaves").has_value());
  CHECK_FALSE(stiff_film(Sheet::polyester_film, 4'512'000, "leaves").has_value());
  const auto finding = stiff_film(Sheet::petg, 4'512'000, "backing");
  CHECK(is_whole(*finding, "stiff_film", Severity::warn));
  CHECK(finding->sentence ==
        "4,512 MPa for the backing: twice as stiff as PETG: is this the stretched film?");
}

TEST_CASE("a value outside what is usual is said with the range and its source") {
  using material::Field;
  int with_range = 0;
  for (const material::FieldRow& row : material::all_fields()) {
    if (row.usual_least == 0 && row.usual_most == 0) {
      CHECK_FALSE(unusual_value(row, row.most).has_value());
      continue;
    }
    CAPTURE(row.key);
    CHECK_FALSE(unusual_value(row, row.usual_least).has_value());
    CHECK_FALSE(unusual_value(row, row.usual_most).has_value());
    CHECK(unusual_value(row, row.usual_least - 1).has_value());
    const auto over = unusual_value(row, row.usual_most + 1);
    REQUIRE(over.has_value());
    CHECK(is_whole(*over, "unusual_value", Severity::warn));
    CHECK(over->sum == row.usual_source);
    const auto begins = material::starting_value(row.field);
    if (begins.is_known) CHECK_FALSE(unusual_value(row, begins.thousandths).has_value());
    ++with_range;
  }
  CHECK(with_range >= 10);
  CHECK(unusual_value(material::row_of(Field::leaf_density), 3'000)->sentence ==
        "3 g/cm³ is unusual for the density of the leaves: 0.8 to 2.3 g/cm³ is usual.");
  CHECK_FALSE(unusual_thickness(20'000, "backing").has_value());
  CHECK(says(unusual_thickness(20'001, "backing"), "20.001 is unusual for the thickness of the "));
}

TEST_CASE("a row that takes just what a bobbin gives passes, a micrometre more does not") {
  CHECK_FALSE(bobbin_too_short(22'500'000, 22'500'000).has_value());
  CHECK(bobbin_too_short(22'500'001, 22'500'000).has_value());
  const auto finding = bobbin_too_short(27'700'000, 22'500'000);
  CHECK(is_whole(*finding, "bobbin_too_short", Severity::warn));
  CHECK(finding->sentence ==
        "5.20 m short: the bobbin would end inside the row. It gives 22.50 m "
        "and the row takes 27.70.");
}

TEST_CASE("a stack that is not known names what is missing, a row along a ply both its sides") {
  const Finding missing = stack_not_known("the thickness of the cloth in sleeves");
  CHECK(is_whole(missing, "stack_not_known", Severity::warn));
  CHECK(missing.sentence.find("the thickness of the cloth in sleeves was not entered") !=
        std::string::npos);
  const Finding along = row_along_a_ply(1'100, 500);
  CHECK(is_whole(along, "row_along_a_ply", Severity::warn));
  CHECK(along.sentence == row_along_a_ply(500, 1'100).sentence);
  CHECK(along.sentence.find("0.5 or 1.1: the row runs just along the edge of a ply") == 0);
}

TEST_CASE("a point that cuts along the row, film left on and staples that may rust are warned of") {
  CHECK(is_whole(cutting_along(), "cutting_along", Severity::warn));
  CHECK(cutting_along().sentence == "This point cuts along the row and helps it tear.");
  CHECK(is_whole(film_under_row(), "film_under_row", Severity::warn));
  CHECK(is_whole(staple_may_rust(), "staple_may_rust", Severity::warn));
}

#include "engine/base/length_entry.h"

#include "engine/base/number_text.h"
#include "tests/support/random.h"

#include <doctest/doctest.h>

#include <string>

using namespace pouncemark;
using pouncemark::tests::Dice;
using enum pouncemark::ProblemCode;

namespace {

struct Typed {
  const char* text;
  std::int64_t um;
};

// source: an inch is 25.4 mm exactly (international yard, 1959); the rest is counting.
const Typed kRead[] = {
    {"2400", 2'400'000},
    {"6cm", 60'000},
    {"6 cm", 60'000},
    {"2.4m", 2'400'000},
    {"2,4 m", 2'400'000},
    {"5,5", 5'500},
    {"5.5", 5'500},
    {"5.5mm", 5'500},
    {" 5.5  mm ", 5'500},
    {"\t5.5\n", 5'500},
    {"0", 0},
    {"0.001", 1},
    {".5", 500},
    {"5.", 5'000},
    {"007", 7'000},
    {"0.5000", 500},
    {"1/4in", 6'350},
    {"1/4 in", 6'350},
    {"1/4\"", 6'350},
    {"1/4 inch", 6'350},
    {"2 1/2 in", 63'500},
    {"2  1/2\"", 63'500},
    {"3\"", 76'200},
    {"3\u2033", 76'200},
    {"3 inch", 76'200},
    {"3 inches", 76'200},
    {"0.5 inch", 12'700},
    {"1/3in", 8'467},
    {"2/3in", 16'933},
    {"1/64in", 397},
    {"3/2in", 38'100},
    {"100m", 100'000'000},
    {"100000", 100'000'000},
    {"10000cm", 100'000'000},
    {"99999.999", 99'999'999},
    {"3937 inch", 99'999'800},
    {"0.0001cm", 1},
    {"0.000001m", 1},
    {"0.005\"", 127},
};

struct Refused {
  const char* text;
  ProblemCode code;
};

const Refused kRefused[] = {
    {"", length_unreadable},
    {" ", length_unreadable},
    {"6 apples", length_unreadable},
    {"apples", length_unreadable},
    {"mm", length_unreadable},
    {",", length_unreadable},
    {".", length_unreadable},
    {"1,234.5", length_unreadable},
    {"1.234,5", length_unreadable},
    {"2 400", length_unreadable},
    {"5 5mm", length_unreadable},
    {"5MM", length_unreadable},
    {"5km", length_unreadable},
    {"5 mm mm", length_unreadable},
    {"5'", length_unreadable},
    {"+5", length_unreadable},
    {"1e3", length_unreadable},
    {"0x10", length_unreadable},
    {"nan", length_unreadable},
    {"inf", length_unreadable},
    {"1/4", length_unreadable},
    {"1/4mm", length_unreadable},
    {"1/0in", length_unreadable},
    {"/4in", length_unreadable},
    {"1/in", length_unreadable},
    {"1/4/2in", length_unreadable},
    {"1 2 1/2in", length_unreadable},
    {"1.5 1/2in", length_unreadable},
    {"2-1/2in", length_unreadable},
    {"12345678901234567890", length_unreadable},
    {"-5", length_negative},
    {"-5.5mm", length_negative},
    {"- 5", length_unreadable},
    {"\u22125 mm", length_negative},
    {"-0", length_negative},
    {"-1/4in", length_negative},
    {"-3\"", length_negative},
    {"-20 in", length_negative},
    {"-apples", length_unreadable},
    {"100000.001", length_too_large},
    {"100001", length_too_large},
    {"100.000001m", length_too_large},
    {"101m", length_too_large},
    {"3938 inch", length_too_large},
    {"4000 1/2 in", length_too_large},
    {"999999999999999", length_too_large},
    {"999999999999999m", length_too_large},
    {"0.0001", length_too_fine},
    {"5.0005", length_too_fine},
    {"0.00001cm", length_too_fine},
    {"0.0000001m", length_too_fine},
    {"0.001\"", length_too_fine},
    {"0.00000000000001", length_too_fine},
};

}  // namespace

TEST_CASE("a length is read as the trade types it, to the micrometre") {
  int read = 0;
  for (const Typed& typed : kRead) {
    CAPTURE(std::string(typed.text));
    const Result<std::int64_t> um = read_length(typed.text);
    CHECK((um.is_ok() && *um == typed.um));
    ++read;
  }
  CHECK(read == 39);
}

TEST_CASE("what is not a length is refused for its own reason and the text is kept") {
  int refused = 0;
  for (const Refused& typed : kRefused) {
    CAPTURE(std::string(typed.text));
    const Result<std::int64_t> um = read_length(typed.text);
    CHECK(!um.is_ok());
    if (um) continue;
    CHECK(um.problem().code == typed.code);
    ++refused;
  }
  CHECK(refused == 53);
  CHECK(read_length(" 6  apples ").problem().found == "\"6 apples\"");
  CHECK(problem_sentence(read_length("6 apples").problem()).find("6 apples") != std::string::npos);
}

TEST_CASE("a whole figure with a bare in is never guessed: both readings are shown") {
  const Result<std::int64_t> um = read_length("20 in");
  CHECK(um.problem().code == length_two_readings);
  CHECK(um.problem().needed == "20 (in from the edge) or 508 (inches)");
  CHECK(read_length("2,5in").problem().needed == "2.5 (in from the edge) or 63.5 (inches)");
  CHECK(read_length("20 inch").is_ok());
  CHECK(read_length("5000 in").problem().code == length_too_large);
}

TEST_CASE("any length written out and typed again is the same length") {
  Dice dice(20'260'101);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 100'000; ++i) {
    const std::int64_t um = dice.of_any_size(0, kLargestLengthUm);
    const std::string text = exact_mm_text(um);
    const Result<std::int64_t> typed = read_length(text);
    const Result<std::int64_t> stored = read_decimal_mm(text);
    if (typed && *typed == um && stored && *stored == um) ++same;
  }
  CHECK(same == 100'000);
}

TEST_CASE("any length typed in centimetres or metres is the same length in millimetres") {
  Dice dice(20'260'102);
  INFO(dice.words());
  int same = 0;
  for (int i = 0; i < 20'000; ++i) {
    const std::int64_t um = dice.of_any_size(0, 99'999);
    const auto in_mm = read_length(exact_mm_text(um) + " mm");
    const auto in_cm = read_length(exact_mm_text(um) + " cm");
    const auto in_m = read_length(exact_mm_text(um) + "m");
    if (*in_mm == um && *in_cm == 10 * um && *in_m == 1'000 * um) ++same;
  }
  CHECK(same == 20'000);
}

TEST_CASE("a figure of the job file is read exactly, with its power of ten and its sign") {
  const Typed read[] = {{"26", 26'000},      {"0.25", 250},       {"-12.5", -12'500},
                        {"1e3", 1'000'000},  {"1E3", 1'000'000},  {"1e+3", 1'000'000},
                        {"2.5e1", 25'000},   {"2500e-2", 25'000}, {"1.2500", 1'250},
                        {"-0", 0},           {"0e5", 0},          {"100000", 100'000'000},
                        {"1e5", 100'000'000}};
  int count = 0;
  for (const Typed& figure : read) {
    CAPTURE(std::string(figure.text));
    const Result<std::int64_t> um = read_decimal_mm(figure.text);
    CHECK((um.is_ok() && *um == figure.um));
    ++count;
  }
  CHECK(count == 13);
}

TEST_CASE("a figure of the job file that is too large, too fine or none at all is refused") {
  const Refused refused[] = {
      {"100000.001", length_too_large}, {"1e6", length_too_large},   {"1e300", length_too_large},
      {"9e12", length_too_large},       {"0.0001", length_too_fine}, {"1e-4", length_too_fine},
      {"1e-300", length_too_fine},      {"1.5e-3", length_too_fine}, {"5mm", length_unreadable}};
  int count = 0;
  for (const Refused& figure : refused) {
    CAPTURE(std::string(figure.text));
    const Result<std::int64_t> um = read_decimal_mm(figure.text);
    CHECK((!um.is_ok() && um.problem().code == figure.code));
    ++count;
  }
  CHECK(count == 9);
  CHECK(!read_decimal_mm("").is_ok());
  CHECK(!read_decimal_mm("1e").is_ok());
  CHECK(!read_decimal_mm("-").is_ok());
}

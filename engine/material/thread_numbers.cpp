#include "engine/material/thread_numbers.h"

#include <array>
#include <cmath>

namespace pouncemark::material {
namespace {

/// Grams of a pound times a thousand metres, over the metres of 840 yards.
constexpr double kTexOfEnglishOne = 453.59237 * 1000.0 / (840.0 * 0.9144);
constexpr double kTexOfTicketOne = 3000.0;
/// A piece of 100 yards, 45 inches wide, that weighs a pound is one momme.
constexpr double kMommeInGrams = 453.59237 / (45.0 * 0.0254 * 100.0 * 0.9144);
constexpr double kPi = 3.14159265358979323846;
constexpr std::array<int, 9> kFrom19 = {120, 125, 130, 140, 160, 180, 200, 230, 250};

}  // namespace

double tex_of_metric_ticket(double ticket) { return kTexOfTicketOne / ticket; }
double metric_ticket_of_tex(double tex) { return kTexOfTicketOne / tex; }
double tex_of_cotton_ticket(double ticket) { return 3.0 * kTexOfEnglishOne / ticket; }
double cotton_ticket_of_tex(double tex) { return 3.0 * kTexOfEnglishOne / tex; }
double tex_of_metric_count(double count, int plies) { return 1000.0 * plies / count; }
double tex_of_english_count(double count, int plies) { return kTexOfEnglishOne * plies / count; }
double tex_of_denier(double denier) { return denier / 9.0; }
double weighed_tex(double grams, double metres) { return grams * 1000.0 / metres; }
double g_m2_of_momme(double momme) { return momme * kMommeInGrams; }

double thread_diameter_mm(double tex, double density, double packing) {
  return std::sqrt(4e-3 / kPi * tex / (density * packing));
}

Um thread_diameter_um(std::int64_t tex_thousandths, std::int64_t density_thousandths,
                      std::int64_t packing_thousandths) {
  const auto of = [](std::int64_t thousandths) {
    return static_cast<double>(thousandths) / 1000.0;
  };
  return to_um(
      thread_diameter_mm(of(tex_thousandths), of(density_thousandths), of(packing_thousandths)));
}

bool is_thinner_than_its_fibre(Um diameter_um, std::int64_t tex_thousandths,
                               std::int64_t density_thousandths) {
  return diameter_um < thread_diameter_um(tex_thousandths, density_thousandths, 1000);
}

std::optional<int> needle_size_of_second_scale(int size) {
  if (size < 8 || size > 27) return std::nullopt;
  if (size < 19) return 60 + 5 * (size - 8);
  return kFrom19[static_cast<std::size_t>(size - 19)];
}

NeedleGuess needle_guess(std::int64_t tex_thousandths) {
  NeedleGuess guess;
  guess.tenths = static_cast<int>(
      std::llround(120.0 * std::sqrt(static_cast<double>(tex_thousandths) / 1000.0)));
  guess.least = guess.tenths / 100 * 10;
  guess.most = guess.least + 10;
  return guess;
}

}  // namespace pouncemark::material

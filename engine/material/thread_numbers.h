#pragma once

#include <cstdint>
#include <optional>

#include "engine/geometry/units.h"

/// Ways of numbering thread and needles, turned into one another. A number on a label is a name,
/// not a weight: what is worked out here from a ticket or a count is what the name says.
namespace pouncemark::material {

/// Tex is grams of a thousand metres. All numbers above 0.
double tex_of_metric_ticket(double ticket);
double metric_ticket_of_tex(double tex);
double tex_of_cotton_ticket(double ticket);
double cotton_ticket_of_tex(double tex);
/// Metres of a gram, and hanks of 840 yards of a pound, of a thread of `plies` such yarns.
double tex_of_metric_count(double count, int plies = 1);
double tex_of_english_count(double count, int plies = 1);
double tex_of_denier(double denier);
/// Grams of so many metres on a scale: 10 m of 1.35 g are tex 135.
double weighed_tex(double grams, double metres);
/// Silk by its weight: g/m² of so many momme.
double g_m2_of_momme(double momme);

/// Across a thread of this tex whose section is filled with fibre of `density` g/cm³ to the part
/// `packing`, 0 to 1: 0.035682 × √(tex ÷ (density × packing)), millimetres.
double thread_diameter_mm(double tex, double density, double packing);

/// The same of whole thousandths, to the micrometre.
Um thread_diameter_um(std::int64_t tex_thousandths, std::int64_t density_thousandths,
                      std::int64_t packing_thousandths);

/// A diameter that cannot be: thinner than the thread's fibre without any air.
bool is_thinner_than_its_fibre(Um diameter_um, std::int64_t tex_thousandths,
                               std::int64_t density_thousandths);

/// The needle size (hundredths of a millimetre) of the second scale, 8 to 27; nothing outside it.
std::optional<int> needle_size_of_second_scale(int size);

/// A first guess of the needle, to be tried: 12 × √tex, and the tens on either side of it.
struct NeedleGuess {
  int tenths = 0;  ///< of a size: 1394
  int least = 0;
  int most = 0;
};
NeedleGuess needle_guess(std::int64_t tex_thousandths);

}  // namespace pouncemark::material

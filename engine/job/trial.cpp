#include "engine/job/trial.h"

namespace pouncemark::job {
namespace {

constexpr Um kMarksApartUm = 500'000;

}  // namespace

const Trial* chosen_trial(const std::vector<Trial>& trials, RowsOf of) {
  for (const Trial& trial : trials) {
    if (trial.is_chosen && (trial.of_all_rows || trial.of == of)) return &trial;
  }
  return nullptr;
}

Um stitch_really_um(const std::vector<Trial>& trials, RowsOf of, Um asked_um) {
  const Trial* trial = chosen_trial(trials, of);
  const bool is_measured =
      trial != nullptr && trial->stitch_um == asked_um && trial->ten_stitches_um;
  return is_measured ? divide_round(*trial->ten_stitches_um, 10) : asked_um;
}

std::optional<std::int64_t> take_up_ppm(const Trial& trial) {
  if (!trial.marks_um) return std::nullopt;
  return divide_round((kMarksApartUm - *trial.marks_um) * 1'000'000, kMarksApartUm);
}

}  // namespace pouncemark::job

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "engine/job/job.h"
#include "engine/solve/sums.h"
#include "web/model/making.h"

namespace pouncemark::web {

/// What a box of a trial seam holds.
enum class TrialBox {
  needle_size,
  thread_tex,
  stitch,        ///< as the machine was set
  ten_stitches,  ///< ten stitches, measured
  marks,         ///< two marks 500 apart before, measured after
  pull,          ///< newtons
  signed_by,
};

/// Its words, as they stand over the box, and the figure as it stands in it; empty: not measured.
std::string trial_box_words(TrialBox box);
std::string trial_box_text(const job::Trial& trial, TrialBox box);

/// What is asked of a trial and answered yes, no or not at all.
enum class TrialAsk { whitens, cracks };

/// "trial 2: needle size 140, tex 135, stitch 6".
std::string trial_name(const job::Job& job, std::size_t index);
/// "side rows", "joining rows", "rows of panels", "all rows".
std::string trial_rows_words(const job::Trial& trial);
std::string rows_words(job::RowsOf of);

// Each gives the whole job with it done and the action in words, or says why not. `index` is that
// of a trial there is.

/// One more trial, with the needle and thread of the job and the stitch these rows are to have.
Made with_trial(const job::Job& job, job::RowsOf of, Um stitch_um);
Made without_trial(const job::Job& job, std::size_t index);
Made with_trial_box(const job::Job& job, std::size_t index, TrialBox box, std::string_view typed);
/// Answered again with the same answer, it is not answered any more.
Made with_trial_answer(const job::Job& job, std::size_t index, TrialAsk ask, bool yes);
/// Chosen, or not any more; another one chosen for the same rows is not any more.
Made with_trial_chosen(const job::Job& job, std::size_t index, bool is_chosen);
/// The rows it stands for; nothing: all of them.
Made with_trial_rows(const job::Job& job, std::size_t index, std::optional<job::RowsOf> of);

/// How much a row of this length is shorter when it is sewn, from the marks: "7.1"; figure empty
/// where they were not measured.
solve::Sum take_up_sum(const job::Trial& trial, Um row_um);
/// The stitch that was really sewn, from ten of them; figure empty where they were not measured.
solve::Sum real_stitch_sum(const job::Trial& trial);

}  // namespace pouncemark::web

#pragma once

#include "engine/job/job.h"
#include "engine/solve/results.h"
#include "web/model/place.h"

/// Inside of the model's edits: the part of a job that one place of the bench stands for. `number`
/// is a sleeve's number less 1, -1 for the whole section.
namespace pouncemark::web {

/// The section or panel on the bench, to be changed; the place holds one.
job::Section& section_of(job::Job& job, const solve::Results& results, Place place);
job::Panel& panel_of(job::Job& job, const solve::Results& results, Place place);

/// The side rows of the sleeve, or those of the section.
job::RowPair rows_of(const job::Section& section, int number);

/// What is changed there belongs to the section itself, not to one of its sleeves.
bool is_alone(const job::Section& section, int number);

/// The change of one sleeve, made if it has none yet.
job::SleeveChange& change_of(job::Section& section, int number);
job::StapleChange& staple_change(job::Section& section, int number);
job::StitchChange& stitch_change(job::Section& section, int number);

}  // namespace pouncemark::web

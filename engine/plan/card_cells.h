#pragma once

#include <string>

#include "engine/job/job.h"
#include "engine/piece/outline.h"
#include "engine/solve/results.h"

/// Floor 8, plan: what each trade is handed, as words and figures: cards. Knows jobs and results,
/// no page and no screen. This file: what cards of every kind have in common.
namespace pouncemark::plan {

/// One cell of a card: what it is, its figure, what stands beside the figure.
struct CardCell {
  std::string label;
  std::string figure;
  std::string over;    ///< small words, the upper of two lines; often empty
  std::string beside;  ///< the lower of them
};

/// A length on paper: whole or a half.
std::string paper_text(Um um);

/// Needle size, with its system and point as far as they were entered.
CardCell needle_cell(const job::Job& job);

/// The thread's tex and what its label says.
CardCell thread_cell(const job::Job& job);

/// Which side of its panel an edge is, seen from the front: "left", "right", "bottom", "top".
std::string side_of(const piece::Edge& edge, const piece::Extent& extent);

/// "FLY SIDE - DO NOT SEW: the right edge", as it lies front up, or face down.
std::string fly_side_words(const piece::Outline& outline, bool is_face_down);

/// "side rows", "joining rows", "panel rows".
const char* kind_words(solve::RowPlace place);

}  // namespace pouncemark::plan

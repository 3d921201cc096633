#pragma once

#include <string>
#include <vector>

#include "web/model/edits.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// A plain question of how what lies on the bench is made. Its answers are numbered as the
/// enumerators of the job that stand beside it.
enum class Question {
  leaves,           ///< job::Make, of the section
  sewn_side,        ///< job::Side, of a folded or round section
  measured_from,    ///< 0 centre to centre, 1 clear gap; of the whole job
  left_over,        ///< job::LeftOver, where a staple row is exact
  staples_out,      ///< job::StaplesOut of the side rows
  lap_staples_out,  ///< job::StaplesOut of the lap rows; on a whole section
  side_seams,       ///< job::SideSeams; on a whole section
  is_there,         ///< 0 it is there, 1 it is missing; on one sleeve of several
  put_back,         ///< the missing sleeves of the section, by their place in its list
  corners,          ///< job::Corners, of a panel
};

/// The question belongs to the place as the job stands.
bool is_asked(const job::Job& job, const solve::Results& results, Place place, Question question);

/// The answer the job gives; -1 where it gives none.
int answer_at(const job::Job& job, const solve::Results& results, Place place, Question question);

/// The numbers of the answers that can be given there; none where the question is not asked.
std::vector<int> answers_there(const job::Job& job, const solve::Results& results, Place place,
                               Question question);

/// The job with another answer, one of those there. A make taken for the first time gets values to
/// begin with: a fold of 0.5 inside, a flange that the rows stand in, sewn at the right.
job::Job with_answer(const job::Job& job, const solve::Results& results, Place place,
                     Question question, int answer);

/// Why an answer cannot be had, as a sentence; empty where it can. A job this says nothing against
/// opens again when it is saved.
std::string why_not(const job::Job& job, const solve::Results& results, Place place,
                    Question question, int answer);

/// Why a section cannot be made, figures first, or empty: what opening a job refuses, in the words
/// of the bench.
std::string no_room(const job::Section& section);

/// The action in words, for the bar and for undo.
std::string answered_words(const job::Job& job, const solve::Results& results, Place place,
                           Question question, int answer);

/// What a box may hold so that every sleeve of the section on the bench can still be made.
struct Held {
  Um least = 0;
  Um most = 0;
};
Held held_between(const job::Job& job, const solve::Results& results, Place place, Measure measure);

/// One answer as it stands on the slip.
struct Answer {
  int number = 0;
  std::string id;  ///< "leaves.folded": stable
  std::string words;
  std::vector<std::string> follows;  ///< what would follow from it, a line each
  std::string stop;                  ///< what would stand in the way, or why it cannot be had
  bool is_chosen = false;
  bool can_be_had = true;
};

/// One question as it stands on the slip.
struct Asked {
  Question question = Question::leaves;
  std::string words;
  std::string of;  ///< "for the whole job"; empty where that is plain
  std::vector<Answer> answers;
  std::vector<Measure> boxes;  ///< figures that belong to the answer
};

/// The questions of the place with what would follow from each answer, each solved by itself on the
/// piece alone. Never called while drawing.
std::vector<Asked> asked_at(const Solved& now, Place place);

}  // namespace pouncemark::web

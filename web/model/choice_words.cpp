#include <utility>

#include "engine/solve/solve.h"
#include "web/model/choices.h"
#include "web/model/outcomes.h"

namespace pouncemark::web {
namespace {

Answer answer(int number, std::string id, std::string words) {
  Answer one;
  one.number = number;
  one.id = std::move(id);
  one.words = std::move(words);
  return one;
}

std::vector<Answer> staples_answers(const std::string& of) {
  return {answer(1, of + ".before", "Before the row is sewn"),
          answer(2, of + ".foot", "As the foot comes"), answer(3, of + ".after", "After the row"),
          answer(4, of + ".stay", "They stay")};
}

/// `missing` are the codes of the sleeves that are not there.
std::vector<Answer> answers_to(Question question, const std::vector<std::string>& missing) {
  switch (question) {
    case Question::leaves:
      return {answer(0, "leaves.two_leaf", "Two leaves"), answer(1, "leaves.folded", "Folded"),
              answer(2, "leaves.round", "Round with a flange")};
    case Question::sewn_side:
      return {answer(0, "sewn_side.left", "Left"), answer(1, "sewn_side.right", "Right")};
    case Question::measured_from:
      return {answer(0, "measured.centre", "Centre to centre"),
              answer(1, "measured.clear_gap", "Clear gap between crowns")};
    case Question::left_over:
      return {answer(0, "left_over.end", "After the last point, at the top"),
              answer(1, "left_over.split", "Half at each end"),
              answer(2, "left_over.extra_point", "One more point")};
    case Question::staples_out:
      return staples_answers("staples");
    case Question::lap_staples_out:
      return staples_answers("lap_staples");
    case Question::side_seams:
      return {answer(0, "side_seams.separate", "Separate"),
              answer(1, "side_seams.shared", "Shared with the joining row")};
    case Question::is_there:
      return {answer(0, "is_there.yes", "It is there"), answer(1, "is_there.no", "It is missing")};
    case Question::corners:
      return {answer(0, "corners.share_hole", "Share the hinge row's hole"),
              answer(1, "corners.stop_short", "Stop short")};
    case Question::put_back:
      break;
  }
  std::vector<Answer> answers;
  for (const std::string& code : missing) {
    const auto number = static_cast<int>(answers.size());
    answers.push_back(answer(number, "put_back." + code, "Put " + code + " back"));
  }
  return answers;
}

std::string question_words(const Alone& alone, Question question) {
  switch (question) {
    case Question::leaves:
      return "Leaves";
    case Question::sewn_side:
      return "Sewn side";
    case Question::measured_from:
      return "Spacing is measured";
    case Question::left_over:
      return "Left over";
    case Question::staples_out:
      return is_asked(alone.job, alone.results, alone.place, Question::lap_staples_out)
                 ? "Side staples come out"
                 : "Staples come out";
    case Question::lap_staples_out:
      return "Lap staples come out";
    case Question::side_seams:
      return "Side seams";
    case Question::is_there:
      return "This sleeve";
    case Question::corners:
      return "Where rows meet at a corner";
    case Question::put_back:
      break;
  }
  return "Missing";
}

std::vector<std::string> missing_of(const Alone& alone) {
  if (alone.job.sections.empty()) return {};
  return alone.job.sections.front().missing;
}

std::string scope_words(const Alone& alone, Question question) {
  if (question == Question::measured_from) return "for the whole job";
  if (question == Question::put_back) {
    std::string codes;
    for (const std::string& code : alone.job.sections.front().missing) {
      codes += (codes.empty() ? "" : ", ") + code;
    }
    return codes;
  }
  const bool of_section = question == Question::leaves || question == Question::sewn_side;
  const solve::Piece& piece = alone.results.pieces.front();
  if (of_section && alone.place.sleeve >= 0 && piece.sleeves.size() > 1) {
    return "all of section " + piece.code;
  }
  return {};
}

std::vector<Measure> boxes_of(const Alone& alone, Question question) {
  if (question == Question::sewn_side) {
    const bool is_folded = alone.job.sections.front().make == job::Make::folded;
    return {is_folded ? Measure::fold_radius : Measure::flange};
  }
  const bool is_short =
      question == Question::corners && alone.job.panels.front().corners == job::Corners::stop_short;
  return is_short ? std::vector<Measure>{Measure::corner_clear} : std::vector<Measure>{};
}

void work_out(const Alone& alone, Question question, const Solved& now, Answer& one) {
  const job::Job& job = alone.job;
  const std::string no = why_not(job, alone.results, alone.place, question, one.number);
  if (!no.empty() && !one.is_chosen) {
    one.can_be_had = false;
    one.stop = no;
    return;
  }
  const job::Job changed = with_answer(job, alone.results, alone.place, question, one.number);
  const solve::Results results = solve::solve(changed);
  Outcome outcome = outcome_of({alone, changed, results, one.number}, question, now);
  one.follows = std::move(outcome.follows);
  one.stop = std::move(outcome.stop);
}

}  // namespace

std::vector<int> answers_there(const job::Job& job, const solve::Results& results, Place place,
                               Question question) {
  std::vector<int> numbers;
  if (!is_asked(job, results, place, question)) return numbers;
  const job::Section* section = section_at(job, results, place);
  const auto missing = section != nullptr ? section->missing : std::vector<std::string>();
  for (const Answer& one : answers_to(question, missing)) numbers.push_back(one.number);
  return numbers;
}

std::vector<Asked> asked_at(const Solved& now, Place place) {
  std::vector<Asked> all;
  if (now.results.pieces.empty()) return all;
  const Alone alone = alone_of(now, place);
  for (const Question question :
       {Question::leaves, Question::sewn_side, Question::measured_from, Question::left_over,
        Question::staples_out, Question::lap_staples_out, Question::side_seams, Question::is_there,
        Question::put_back, Question::corners}) {
    if (!is_asked(alone.job, alone.results, alone.place, question)) continue;
    Asked asked;
    asked.question = question;
    asked.words = question_words(alone, question);
    asked.of = scope_words(alone, question);
    asked.answers = answers_to(question, missing_of(alone));
    asked.boxes = boxes_of(alone, question);
    const int chosen = answer_at(alone.job, alone.results, alone.place, question);
    for (Answer& one : asked.answers) {
      one.is_chosen = one.number == chosen;
      work_out(alone, question, now, one);
    }
    all.push_back(std::move(asked));
  }
  return all;
}

}  // namespace pouncemark::web

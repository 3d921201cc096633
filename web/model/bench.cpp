#include "web/model/bench.h"

#include <algorithm>
#include <utility>

#include "engine/base/insist.h"
#include "engine/base/problem.h"
#include "engine/job/job_json.h"
#include "engine/output/file_names.h"
#include "web/model/words.h"

namespace pouncemark::web {

void Bench::take(job::Job job) {
  // What stood there last is most of what stands there now.
  now_ = before_ ? solved(std::move(job), *before_) : solved(std::move(job));
  place_ = before_ ? followed(before_->results, now_->results, place_)
                   : held_within(now_->results, place_);
  is_in_file_ = !in_file_.checksum.empty() && job::checksum(now_->job) == in_file_.checksum;
  ++turn_;
}

const Solved* Bench::before() const {
  if (!before_ || !is_same_thing(before_->results, now_->results, place_)) return nullptr;
  return &*before_;
}

/// What is to be kept is no longer what was.
void Bench::note_change() { changed_ = ++to_keep_; }

void Bench::begin(job::OpenedJob opened, std::string_view bytes, std::string sentence) {
  // What was on the bench is not lost: it is one step of undo away. A job to look at only takes no
  // action, so it stands by itself, with the very bytes that say so.
  if (has_job() && !opened.look_only && !look_only_)
    history_.keep(job::save_job(opened.job), sentence, true);
  else
    history_.start(opened.look_only ? std::string(bytes) : job::save_job(opened.job), sentence);
  before_.reset();
  moving_from_.reset();
  failed_.reset();
  look_only_ = opened.look_only;
  last_action_ = std::move(sentence);
  take(std::move(opened.job));
  place_ = first_look(now_->results, 0);
  note_change();
}

void Bench::go(Place place) {
  if (!has_job()) return;
  place_ = held_within(now_->results, place);
  ++turn_;
  ++to_keep_;
}

void Bench::step(int by) {
  if (!has_job()) return;
  const auto places = all_places(now_->results);
  const auto here = std::find(places.begin(), places.end(), place_);
  if (here == places.end()) return;
  const auto at = (here - places.begin()) + by;
  if (at < 0 || at >= static_cast<std::ptrdiff_t>(places.size())) return;
  go(places[static_cast<std::size_t>(at)]);
}

void Bench::start_with_sleeve() {
  begin({job::first_sleeve_job(), false, {}}, {}, "Started with one sleeve");
}

bool Bench::open(std::string_view file, std::string_view bytes) {
  Result<job::OpenedJob> opened = job::open_job(bytes);
  ++turn_;
  if (!opened) {
    failed_ = FailedOpen{std::string(file), with_capital(problem_sentence(opened.problem()))};
    return false;
  }
  const job::OpenedJob& found = opened.value();
  std::string sentence = "Opened " + std::string(file);
  if (found.look_only) sentence += ": to look at only. " + found.note;
  begin(std::move(opened.value()), bytes, std::move(sentence));
  return true;
}

void Bench::refuse_file(std::string_view sentence) {
  failed_ = FailedOpen{{}, std::string(sentence)};
  ++turn_;
}

void Bench::put_failure_away() {
  failed_.reset();
  ++turn_;
}

void Bench::edit(job::Job job, std::string action) {
  if (!has_job()) return;
  if (look_only_) {
    say("This job is to look at only: a newer version wrote it, so nothing was changed");
    return;
  }
  // What does not open again could be neither kept nor saved.
  const std::string text = job::save_job(job);
  if (const Result<job::OpenedJob> again = job::open_job(text); !again) {
    say("Not done: " + problem_sentence(again.problem()));
    return;
  }
  if (text == history_.text()) {
    say("Nothing was changed");
    return;
  }
  before_ = std::move(now_);
  history_.keep(text, action);
  last_action_ = std::move(action);
  take(std::move(job));
  note_change();
}

void Bench::try_out(job::Job job, std::string action) {
  if (!has_job() || look_only_) return;
  if (!moving_from_) {
    moving_from_ = now_;
    before_ = now_;
  }
  moving_action_ = std::move(action);
  now_ = solved(std::move(job), *now_);
  last_action_ = moving_action_ + ". Let go to keep, Esc to put back";
  ++turn_;
}

void Bench::let_go() {
  if (!moving_from_) return;
  Solved start = std::move(*moving_from_);
  moving_from_.reset();
  job::Job moved = std::move(now_->job);
  now_ = std::move(start);
  edit(std::move(moved), std::move(moving_action_));
}

void Bench::put_back() {
  if (!moving_from_) return;
  now_ = std::move(*moving_from_);
  moving_from_.reset();
  before_.reset();
  last_action_ = "Put back";
  ++turn_;
}

/// The job of another step of the list comes on the bench.
void Bench::show(const std::string& text, bool is_another_job, std::string sentence) {
  Result<job::OpenedJob> opened = job::open_job(text);
  // Every step of the list was opened before it was added to it.
  INSIST(opened);
  before_ = std::move(now_);
  take(std::move(opened.value().job));
  if (is_another_job) show_another_job();
  last_action_ = std::move(sentence);
  note_change();
}

void Bench::undo() {
  if (!can_undo()) return;
  std::string sentence = "Undone: " + history_.undo_words();
  const bool is_another = history_.meets_another_job(history_.at() - 1);
  show(history_.undo(), is_another, std::move(sentence));
}

void Bench::redo() {
  if (!can_redo()) return;
  std::string sentence = "Done again: " + history_.redo_words();
  const bool is_another = history_.meets_another_job(history_.at() + 1);
  show(history_.redo(), is_another, std::move(sentence));
}

void Bench::go_to(std::size_t done) {
  if (!has_job() || is_moving() || done == history_.at() || done > history_.steps().size()) return;
  const std::string& last = done == 0 ? history_.beginning() : history_.steps()[done - 1].action;
  std::string sentence = (done < history_.at() ? "Back to just after: " : "On to just after: ");
  sentence += last;
  const bool is_another = history_.meets_another_job(done);
  show(history_.go_to(done), is_another, std::move(sentence));
}

/// The figures of two jobs are not before and after of one another.
void Bench::show_another_job() {
  before_.reset();
  place_ = first_look(now_->results, 0);
}

void Bench::say(std::string sentence) {
  last_action_ = std::move(sentence);
  ++turn_;
}

std::string Bench::file_bytes() const { return job::save_job(now_->job); }

std::string Bench::file_name() const { return output::file_word(now_->job.name) + ".json"; }

}  // namespace pouncemark::web

#include "web/model/bench.h"

#include <algorithm>
#include <utility>

#include "engine/base/problem.h"
#include "engine/job/job_json.h"
#include "engine/output/file_names.h"
#include "web/model/words.h"

namespace pouncemark::web {

void Bench::take(job::Job job) {
  now_ = solved(std::move(job));
  place_ = before_ ? followed(before_->results, now_->results, place_)
                   : held_within(now_->results, place_);
  is_saved_ = !saved_at_.empty() && file_bytes() == saved_bytes_;
  ++turn_;
}

const Solved* Bench::before() const {
  if (!before_ || !is_same_thing(before_->results, now_->results, place_)) return nullptr;
  return &*before_;
}

void Bench::begin(job::Job job, bool look_only, std::string sentence) {
  // What was on the bench is not lost: it is one step of undo away. A job to look at only takes no
  // action, so it stands by itself.
  if (has_job() && !look_only && !look_only_)
    history_.keep(job, sentence, true);
  else
    history_.start(job);
  before_.reset();
  moving_from_.reset();
  failed_.reset();
  look_only_ = look_only;
  last_action_ = std::move(sentence);
  take(std::move(job));
  place_ = first_look(now_->results, 0);
}

void Bench::go(Place place) {
  if (!has_job()) return;
  place_ = held_within(now_->results, place);
  ++turn_;
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
  begin(job::first_sleeve_job(), false, "Started with one sleeve");
}

bool Bench::open(std::string_view file, std::string_view bytes) {
  Result<job::OpenedJob> opened = job::open_job(bytes);
  ++turn_;
  if (!opened) {
    failed_ = FailedOpen{std::string(file), with_capital(problem_sentence(opened.problem()))};
    return false;
  }
  job::OpenedJob& found = opened.value();
  std::string sentence = "Opened " + std::string(file);
  if (found.look_only) sentence += ": to look at only. " + found.note;
  begin(std::move(found.job), found.look_only, std::move(sentence));
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
  before_ = std::move(now_);
  history_.keep(job, action);
  last_action_ = std::move(action);
  take(std::move(job));
}

void Bench::try_out(job::Job job, std::string action) {
  if (!has_job() || look_only_) return;
  if (!moving_from_) {
    moving_from_ = now_;
    before_ = now_;
  }
  moving_action_ = std::move(action);
  now_ = solved(std::move(job));
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

void Bench::undo() {
  if (!can_undo()) return;
  const std::string action = history_.undo_words();
  const bool is_another = history_.undo_brings_another_job();
  before_ = std::move(now_);
  take(history_.undo());
  if (is_another) show_another_job();
  last_action_ = "Undone: " + action;
}

void Bench::redo() {
  if (!can_redo()) return;
  const std::string action = history_.redo_words();
  const bool is_another = history_.redo_brings_another_job();
  before_ = std::move(now_);
  take(history_.redo());
  if (is_another) show_another_job();
  last_action_ = "Done again: " + action;
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

void Bench::note_saved(std::string_view time) {
  saved_bytes_ = file_bytes();
  saved_at_ = std::string(time);
  is_saved_ = true;
  say("Saved the job as " + file_name());
}

void Bench::note_in_file(std::string_view bytes, std::string_view time) {
  if (file_bytes() != bytes) return;
  saved_bytes_ = std::string(bytes);
  saved_at_ = std::string(time);
  is_saved_ = true;
}

std::string Bench::kept_words() const {
  return is_in_file() ? "in your file: " + saved_at_ : std::string("not kept");
}

}  // namespace pouncemark::web

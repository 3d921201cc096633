#include "web/model/history.h"

#include <algorithm>
#include <utility>

namespace pouncemark::web {
namespace {

/// What a step takes beside its words and bytes.
constexpr std::size_t kStepBytes = 32;

std::size_t bytes_of(const History::Step& step) {
  return kStepBytes + step.action.size() + step.was.size() + step.is.size();
}

/// What differs between two texts.
History::Step difference(std::string_view was, std::string_view is) {
  const std::size_t shorter = std::min(was.size(), is.size());
  const auto differ =
      std::mismatch(was.begin(), was.begin() + static_cast<std::ptrdiff_t>(shorter), is.begin());
  const auto head = static_cast<std::size_t>(differ.first - was.begin());
  std::size_t tail = 0;
  while (tail < shorter - head && was[was.size() - 1 - tail] == is[is.size() - 1 - tail]) ++tail;
  History::Step step;
  step.head = head;
  step.was = was.substr(head, was.size() - head - tail);
  step.is = is.substr(head, is.size() - head - tail);
  return step;
}

/// Puts `now` where as many bytes of the text stand, and gives those to `found`; false where the
/// text has not so many.
bool exchange(std::string* text, std::size_t head, std::string* found, std::string_view now) {
  if (head > text->size() || found->size() > text->size() - head) return false;
  *found = text->substr(head, found->size());
  text->replace(head, found->size(), now);
  return true;
}

}  // namespace

void History::start(std::string text, std::string words) {
  *this = History{};
  text_ = std::move(text);
  beginning_ = std::move(words);
}

void History::keep(std::string_view text, std::string action, bool is_another_job) {
  for (; steps_.size() > at_; steps_.pop_back()) bytes_ -= bytes_of(steps_.back());
  Step step = difference(text_, text);
  step.action = std::move(action);
  step.is_another_job = is_another_job;
  text_ = text;
  bytes_ += bytes_of(step);
  steps_.push_back(std::move(step));
  at_ = steps_.size();
  forget_oldest();
}

void History::forget_oldest() {
  std::size_t gone = 0;
  for (; bytes_ > kMostBytes && gone + 1 < steps_.size(); ++gone) bytes_ -= bytes_of(steps_[gone]);
  if (gone == 0) return;
  beginning_ = steps_[gone - 1].action;
  steps_.erase(steps_.begin(), steps_.begin() + static_cast<std::ptrdiff_t>(gone));
  at_ -= gone;
  forgotten_ += gone;
}

bool History::take_back(Parts parts) {
  *this = History{};
  if (parts.at > parts.steps.size()) return false;
  std::string back = parts.text;
  std::string on = parts.text;
  for (std::size_t i = parts.at; i-- > 0;) {
    Step& step = parts.steps[i];
    if (!exchange(&back, step.head, &step.is, step.was)) return false;
  }
  for (std::size_t i = parts.at; i < parts.steps.size(); ++i) {
    Step& step = parts.steps[i];
    if (!exchange(&on, step.head, &step.was, step.is)) return false;
  }
  text_ = std::move(parts.text);
  beginning_ = std::move(parts.beginning);
  steps_ = std::move(parts.steps);
  at_ = parts.at;
  forgotten_ = parts.forgotten;
  for (const Step& step : steps_) bytes_ += bytes_of(step);
  return true;
}

std::string History::undo_words() const {
  return can_undo() ? steps_[at_ - 1].action : std::string();
}

std::string History::redo_words() const { return can_redo() ? steps_[at_].action : std::string(); }

const std::string& History::undo() {
  if (can_undo()) {
    const Step& step = steps_[--at_];
    text_.replace(step.head, step.is.size(), step.was);
  }
  return text_;
}

const std::string& History::redo() {
  if (can_redo()) {
    const Step& step = steps_[at_++];
    text_.replace(step.head, step.was.size(), step.is);
  }
  return text_;
}

const std::string& History::go_to(std::size_t done) {
  while (at_ > done) undo();
  while (at_ < std::min(done, steps_.size())) redo();
  return text_;
}

bool History::meets_another_job(std::size_t done) const {
  const auto from = static_cast<std::ptrdiff_t>(std::min(at_, done));
  const auto to = static_cast<std::ptrdiff_t>(std::min(std::max(at_, done), steps_.size()));
  return std::any_of(steps_.begin() + std::min(from, to), steps_.begin() + to,
                     [](const Step& step) { return step.is_another_job; });
}

}  // namespace pouncemark::web

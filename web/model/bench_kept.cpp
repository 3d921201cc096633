#include <utility>

#include "web/model/bench.h"

// Where the open job is kept: in a file of the user's, in this browser, or nowhere.
namespace pouncemark::web {
namespace {

/// "26 Nov 14:02" as "14:02" where `now` is the same day.
std::string_view without_today(std::string_view when, std::string_view now) {
  const auto day = when.rfind(' ') + 1;
  return day > 0 && when.substr(0, day) == now.substr(0, day) ? when.substr(day) : when;
}

}  // namespace

void Bench::note_saved(std::string_view when) {
  note_in_file(file_name(), file_bytes(), when);
  say("Saved the job as " + file_name());
}

void Bench::note_in_file(std::string_view name, std::string_view bytes, std::string_view when) {
  if (file_bytes() != bytes) return;
  in_file_ = {std::string(name), std::string(when), job::checksum(now_->job)};
  is_in_file_ = true;
  ++to_keep_;
}

std::string Bench::record(int stage, std::string_view when) const {
  return record_of(history_, {place_, stage, in_file_, std::string(when)});
}

std::optional<int> Bench::bring_back(std::string_view bytes, std::string_view now) {
  Kept found = read_record(bytes);
  Result<job::OpenedJob> opened = job::open_job(found.history.text());
  if (!found.is_read() || !opened) {
    refuse_file(found.is_read() ? "What was kept in this browser no longer opens: open the job "
                                  "from your file."
                                : found.refusal);
    return std::nullopt;
  }
  if (has_job()) {
    // The browser answered late: what was begun meanwhile goes on, after what it had kept.
    found.history.keep(history_.text(), history_.beginning(), true);
    history_ = std::move(found.history);
    note_change();
    return std::nullopt;
  }
  history_ = std::move(found.history);
  in_file_ = std::move(found.beside.in_file);
  look_only_ = opened.value().look_only;
  take(std::move(opened.value().job));
  place_ = held_within(now_->results, found.beside.place);
  const std::size_t actions = history_.steps().size();
  last_action_ = "Brought back from this browser: " + std::to_string(actions) +
                 (actions == 1 ? " action" : " actions");
  note_change();
  note_kept(to_keep_, found.beside.when, now);
  return found.beside.stage;
}

void Bench::note_kept(std::int64_t number, std::string_view when, std::string_view now) {
  // Answers come in the order of the numbers, but a late one must not take back a newer.
  if (number < kept_) return;
  kept_ = number;
  kept_at_ = std::string(without_today(when, now));
  why_not_kept_.clear();
  ++turn_;
}

void Bench::note_not_kept(std::string_view why) {
  why_not_kept_ = std::string(why);
  ++turn_;
}

std::vector<std::string> Bench::kept_lines(bool is_short) const {
  std::vector<std::string> lines;
  if (is_kept()) lines.push_back((is_short ? "kept " : "kept in this browser ") + kept_at_);
  if (is_in_file()) lines.push_back((is_short ? "file " : "in your file: ") + in_file_.when);
  if (!lines.empty()) return lines;
  lines.emplace_back("not kept");
  if (why_not_kept_.empty()) return lines;
  if (is_short)
    lines.push_back(why_not_kept_);
  else
    lines.front() += ": " + why_not_kept_;
  return lines;
}

std::string Bench::kept_words() const {
  std::string words;
  for (const std::string& line : kept_lines()) words += (words.empty() ? "" : ", ") + line;
  return words;
}

}  // namespace pouncemark::web

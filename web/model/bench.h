#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/job/job_json.h"
#include "web/model/history.h"
#include "web/model/kept.h"
#include "web/model/place.h"
#include "web/model/solved.h"

namespace pouncemark::web {

/// A file that could not be opened, in the words of the slip that says so.
struct FailedOpen {
  std::string file;
  std::string sentence;
};

/// The open job on the bench: what was entered, what follows, what stood before the last action,
/// and where it is kept. Everything changes through here; solve() runs after a change and never
/// elsewhere.
class Bench {
 public:
  bool has_job() const { return now_.has_value(); }
  const Solved& now() const { return *now_; }
  /// What stood before the last action; nullptr when there was none, or when the sleeve on the
  /// bench is not the one that had this place then.
  const Solved* before() const;
  /// Raised by every change of job, place or message.
  std::int64_t turn() const { return turn_; }

  Place place() const { return place_; }
  void go(Place place);
  /// Steps through pieces and sleeves, by +1 or -1, held at both ends.
  void step(int by);

  /// Another job takes the place of the open one; undo brings that back.
  void start_with_sleeve();
  /// Opens a job the same way. On failure the open job is untouched and failed_open() says why.
  bool open(std::string_view file, std::string_view bytes);
  /// A file the browser would not hand over.
  void refuse_file(std::string_view sentence);
  const std::optional<FailedOpen>& failed_open() const { return failed_; }
  void put_failure_away();

  /// One undoable action. Refused on a job that is look-only.
  void edit(job::Job job, std::string action);
  /// Shows a change while it is being made; let_go keeps it as one action, put_back drops it.
  void try_out(job::Job job, std::string action);
  void let_go();
  void put_back();
  bool is_moving() const { return moving_from_.has_value(); }
  /// What stood before the change that is being made; now() where nothing moves.
  const Solved& at_rest() const { return moving_from_ ? *moving_from_ : *now_; }

  bool can_undo() const { return history_.can_undo() && !is_moving(); }
  bool can_redo() const { return history_.can_redo() && !is_moving(); }
  void undo();
  void redo();
  /// Goes to just after `done` of the actions of the list, back or forward; nothing is added to it.
  void go_to(std::size_t done);
  const History& history() const { return history_; }

  /// The last action as a sentence, for the bar.
  const std::string& last_action() const { return last_action_; }
  /// A sentence for the bar that is no action ("The file lies in your downloads").
  void say(std::string sentence);
  bool is_look_only() const { return look_only_; }

  /// The job as it would be saved, and under which name: "marsh-lights.json".
  std::string file_bytes() const;
  std::string file_name() const;
  /// The job was handed over as a file at this moment ("26 Nov 14:02").
  void note_saved(std::string_view when);
  /// The open job has just come from a file of the user's that holds these bytes.
  void note_in_file(std::string_view name, std::string_view bytes, std::string_view when);
  /// True when a file of the user's holds the job just as it stands.
  bool is_in_file() const { return is_in_file_ && !is_moving(); }

  /// What this browser should keep is numbered: the number of the newest, 0 while there is nothing.
  std::int64_t to_keep() const { return to_keep_; }
  /// What is new in it is more than the place on the bench.
  bool must_keep_now() const { return changed_ > kept_; }
  /// All that must come back when the page is loaded again. `when`: "26 Nov 14:02".
  std::string record(int stage, std::string_view when) const;
  /// Brings a record back; gives its stage. Nothing is changed, and failed_open() says why, when it
  /// cannot be read. What already lies on the bench comes after it as another job.
  std::optional<int> bring_back(std::string_view bytes, std::string_view now);
  /// The record with this number, made at `when`, lies in this browser; or why the newest does not
  /// ("no room is left in this browser").
  void note_kept(std::int64_t number, std::string_view when, std::string_view now);
  void note_not_kept(std::string_view why);
  /// True when this browser holds the job and its list of actions just as they stand.
  bool is_kept() const { return kept_ > 0 && kept_ >= changed_ && !is_moving(); }
  /// What is true of the job as it stands: "kept in this browser 14:02" and "in your file: 26 Nov
  /// 14:02", either or both; where neither is, "not kept" and why. Short: "kept 14:02".
  std::vector<std::string> kept_lines(bool is_short = false) const;
  /// The same as one run of words.
  std::string kept_words() const;

 private:
  void take(job::Job job);
  void show_another_job();
  void begin(job::OpenedJob opened, std::string_view bytes, std::string sentence);
  void show(const std::string& text, bool is_another_job, std::string sentence);
  void note_change();

  std::optional<Solved> now_;
  std::optional<Solved> before_;
  std::optional<Solved> moving_from_;
  std::string moving_action_;
  History history_;
  Place place_;
  std::optional<FailedOpen> failed_;
  std::string last_action_;
  bool look_only_ = false;
  InFile in_file_;
  bool is_in_file_ = false;
  std::int64_t turn_ = 0;
  std::int64_t to_keep_ = 0;  ///< raised by every change of the job, its list or the place
  std::int64_t changed_ = 0;  ///< the newest of these that is more than the place
  std::int64_t kept_ = 0;
  std::string kept_at_;
  std::string why_not_kept_;
};

}  // namespace pouncemark::web

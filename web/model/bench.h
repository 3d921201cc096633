#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "web/model/history.h"
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

  /// The last action as a sentence, for the bar.
  const std::string& last_action() const { return last_action_; }
  /// A sentence for the bar that is no action ("The file lies in your downloads").
  void say(std::string sentence);
  bool is_look_only() const { return look_only_; }

  /// The job as it would be saved, and under which name: "marsh-lights.json".
  std::string file_bytes() const;
  std::string file_name() const;
  /// The job was handed over as a file at this time of day ("14:02").
  void note_saved(std::string_view time);
  /// The open job has just come from a file of the user's that holds these bytes.
  void note_in_file(std::string_view bytes, std::string_view time);
  /// True when a file of the user's holds the job just as it stands.
  bool is_in_file() const { return is_saved_ && !is_moving(); }
  /// "not kept" or "in your file: 14:02". Only what is true of the job as it stands.
  std::string kept_words() const;

 private:
  void take(job::Job job);
  void show_another_job();
  void begin(job::Job job, bool look_only, std::string sentence);

  std::optional<Solved> now_;
  std::optional<Solved> before_;
  std::optional<Solved> moving_from_;
  std::string moving_action_;
  History history_;
  Place place_;
  std::optional<FailedOpen> failed_;
  std::string last_action_;
  bool look_only_ = false;
  std::string saved_bytes_;
  std::string saved_at_;
  bool is_saved_ = false;
  std::int64_t turn_ = 0;
};

}  // namespace pouncemark::web

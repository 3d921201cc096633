#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pouncemark::web {

/// The saved job after every action, so that undo gives the same job again, byte for byte. A step
/// holds only what its action changed in the saved text: between the common head and the common
/// tail of the text before and after.
class History {
 public:
  struct Step {
    std::string action;           ///< in words, past tense
    bool is_another_job = false;  ///< the action put another job on the bench
    std::size_t head = 0;         ///< bytes that stand before what was changed
    std::string was;
    std::string is;
  };

  /// A list in parts, as it is read back.
  struct Parts {
    std::string text;
    std::string beginning;
    std::vector<Step> steps;
    std::size_t at = 0;
    std::size_t forgotten = 0;
  };

  /// What the steps may hold in all, their words included, so that they can be kept in a browser:
  /// 4 MB, about 20,000 ordinary actions. Beyond that the oldest are forgotten first.
  static constexpr std::size_t kMostBytes = 4'000'000;

  /// Forgets everything and begins with this job; `words` say where it came from.
  void start(std::string text, std::string words = {});
  /// Keeps the job an action led to; what had been undone is forgotten.
  void keep(std::string_view text, std::string action, bool is_another_job = false);
  /// A list that was read back, begun with the job just after `at` of its actions. A step's `is`
  /// (of those done) or `was` (of the others) is as long as it should be, and its bytes are found
  /// again in the text. False, and the list is empty, when the steps do not fit the text.
  bool take_back(Parts parts);

  bool can_undo() const { return at_ > 0; }
  bool can_redo() const { return at_ < steps_.size(); }
  /// The action that undo would take back; empty when there is none.
  std::string undo_words() const;
  /// The action that redo would do again; empty when there is none.
  std::string redo_words() const;
  /// Steps back or forward; where there is no step the job stays as it stands.
  const std::string& undo();
  const std::string& redo();
  /// Goes to just after `done` of the actions; all of them when there are fewer.
  const std::string& go_to(std::size_t done);
  /// Another job comes on the bench on the way from here to just after `done` actions.
  bool meets_another_job(std::size_t done) const;

  /// The job as it stands, as it would be saved.
  const std::string& text() const { return text_; }
  /// Every action, oldest first; the first at() of them are done, the rest undone.
  const std::vector<Step>& steps() const { return steps_; }
  std::size_t at() const { return at_; }
  /// Where the job came from that the oldest action was done to.
  const std::string& beginning() const { return beginning_; }
  /// How many actions were forgotten because they had no room.
  std::size_t forgotten() const { return forgotten_; }

 private:
  void forget_oldest();

  std::string text_;
  std::string beginning_;
  std::vector<Step> steps_;
  std::size_t at_ = 0;
  std::size_t bytes_ = 0;  ///< of all the steps
  std::size_t forgotten_ = 0;
};

}  // namespace pouncemark::web

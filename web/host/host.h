#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace pouncemark::web {
class SetWords;
}

/// The one seam to the browser: frames, files, clipboard, the page around the canvas. Everything a
/// panel or the main program wants of the browser goes through here; only host_browser.cpp knows
/// Emscripten. Places are device pixels from the canvas's upper left corner.
namespace pouncemark::web::host {

/// Sets up the bench: Dear ImGui, its style, the drawing surface. Once, before anything is drawn.
void start();

/// False where the browser gives no WebGL2: frames still run and fill the mirror, nothing is drawn,
/// and no GL call may be made.
bool has_picture();

/// Asks for `count` more frames (the bench needs two to settle). An idle page draws none.
void request_frames(int count = 2);

/// Opens the browser's own file chooser; the file arrives through Guest::file_opened.
void choose_file();

/// Offers `bytes` as a download under `name`.
void save_file(std::string_view name, std::string_view kind, std::string_view bytes);

/// The bytes of a file of the page folder that is here ("faces/main-regular.ttf",
/// "demo-jobs/marsh-lights.json"); empty when it is not.
std::string page_file(std::string_view name);

/// Fetches a file of the page folder that the start does without. Once it is here the faces are
/// built anew; when it does not come, that is said. Asking again does nothing.
void want_page_file(std::string_view name);

/// While set, the browser asks before the page is left: the open job has changes that are kept
/// nowhere.
void warn_before_leaving(bool has_unsaved_changes);

/// The moment for display only, "26 Nov 14:02". Never part of a job or a result.
std::string moment();

/// Keeps `record` in both stores of this browser; the answer is Guest::record_kept with this number
/// or record_not_kept. While one is being written only the newest of the others waits. `at_once`
/// false: it may wait a little, as nothing but the place on the bench is new.
void keep_record(std::int64_t number, std::string_view record, bool at_once);

/// What the browser keeps of how somebody likes the bench ("text": "large"), never anything of a
/// job; empty when nothing is kept, or nothing can be.
std::string preference(std::string_view name);
void keep_preference(std::string_view name, std::string_view words);

/// The main pointer of this machine is a finger.
bool has_fingers();

/// The system asks for less motion: nothing moves by itself.
bool wants_less_motion();

/// Sets one line of the text mirror beside the canvas (screen readers, the browser's own find);
/// empty words take it away. Lines whose id begins with "finding" are read out when they change. A
/// line with the id of a place names that place for those who walk the bench with Tab.
void mirror_line(std::string_view id, std::string_view words);

/// A drawing begins to note its places: those of the one before are forgotten.
void forget_places();

/// Notes where a thing with a name stands in this frame, in reading order: tests press it, and the
/// mirror lays a button over it that Tab reaches and Enter presses. `state` is 0 for what cannot be
/// pressed and is only noted, 1 for a plain thing, 2 for a switch that is on, 3 for the one of its
/// row that is open.
void note_place(std::string_view id, float left, float top, float right, float bottom, int state);

/// Notes what has the focus in this frame: the page's own focus goes to the button over it, so that
/// Tab goes on from there.
void note_focus(std::string_view id);

/// What the browser tells us. One guest, set once at the start.
class Guest {
 public:
  virtual ~Guest() = default;
  /// Draws one frame with ImGui (between NewFrame and Render). Computes nothing.
  virtual void draw(float width, float height, float ratio) = 0;
  /// True when what was just drawn asked for something that the next draw() does first: it is drawn
  /// again at once, and this picture never shown.
  virtual bool has_acts() { return false; }
  /// A file was chosen or dropped. `bytes` are as they stand on disk; nothing is checked yet.
  virtual void file_opened(std::string_view name, std::string_view bytes) = 0;
  /// The drop or choice could not be taken (several files, a folder, too large); a sentence.
  virtual void file_refused(std::string_view sentence) = 0;
  /// What this browser had kept when the page was loaded; before the first frame, or soon after.
  virtual void record_found(std::string_view /*record*/) {}
  /// Both copies of the record with this number are written.
  virtual void record_kept(std::int64_t /*number*/) {}
  /// The newest record is not, and is tried again later; why, in a few words.
  virtual void record_not_kept(std::string_view /*why*/) {}
  /// A key with Ctrl, before the browser has it; its number as widgets/bench_key.h knows it. True
  /// when the bench takes it. `again` is set while it is only held down.
  virtual bool ctrl_key(int number, bool shift, bool again) = 0;
  /// Tab has reached the place noted under `id`; the ring round it is the page's own. Arrow keys
  /// and letters are meant for it from now on.
  virtual void place_focused(std::string_view /*id*/) {}
  /// The browser took the drawing surface away and gave a new one: GL objects made before are gone.
  virtual void picture_restored() {}
  /// The job the page is showing, as it would be saved; what `pm_job()` gives to the page's tests,
  /// and what can still be saved after the bench has stopped. Empty: none is open.
  virtual std::string job_text() { return {}; }
  /// The words of the last frame and where they stand; what `pm_words()` gives to the page's tests.
  virtual SetWords* set_words() { return nullptr; }
};

/// The one guest; it must outlive the page. Null: the bench stays bare.
void set_guest(Guest* guest);

/// What `pm_job()` gives: the guest's job_text().
std::string job_text();

}  // namespace pouncemark::web::host

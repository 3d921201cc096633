#pragma once

#include <string_view>

#include "web/host/host.h"

struct GLFWwindow;

/// Dear ImGui and the drawing surface behind the seam: takes input in plain numbers, runs frames.
/// Knows no browser call and nothing of the job.
namespace pouncemark::web::host {

/// What a finger, pen or mouse did. `buttons` has bit 0 for the main one, 1 for the second, 2 for
/// the middle one; `held_keys` bit 0 Ctrl, 1 Shift, 2 Alt.
struct Pointer {
  float x = 0;
  float y = 0;
  int buttons = 0;
  int held_keys = 0;
  bool is_finger = false;
};

/// Where typed text goes, in device pixels: the caret's upper left corner and height.
struct Typing {
  bool is_active = false;
  bool figures_only = false;
  float x = 0;
  float y = 0;
  float height = 0;
  bool operator==(const Typing&) const = default;
};

/// The one surface the bench is drawn on.
class BenchShell {
 public:
  /// Sets up Dear ImGui and, where there is WebGL2, the surface. Once.
  void start();

  bool has_picture() const { return window_ != nullptr; }

  /// Size in device pixels, and device pixels to a CSS pixel (above 0).
  void resize(int width, int height, float ratio);
  float ratio() const { return ratio_; }

  /// Draws one frame; `guest` may be null. True when input waits or the typing place has changed:
  /// one more frame is needed. Does nothing before the first resize.
  bool frame(Guest* guest);

  void pointer(const Pointer& pointer);
  /// The pointer left the bench, or the finger was lifted.
  void pointer_gone();

  /// Wheel steps, positive towards the top and the left.
  void wheel(float across, float down);

  /// Two fingers, or Ctrl and the wheel, ask for a scale; its natural logarithm. The guest sees it
  /// as the wheel with Ctrl held, in a frame without other wheel steps.
  void scale(float logarithm);

  /// A key by the page's own number (see widgets/bench_key.h); 0 only sets the held keys.
  void key(int number, bool is_down, int held_keys);

  /// Text typed, composed or pasted without a key.
  void characters(const char* words);

  /// The page has come to the front or gone from it.
  void focus(bool is_in_front);

  /// Puts the surface's objects back after the browser took them away.
  void restore_picture(Guest* guest);

  /// Where typed text goes since the last frame.
  Typing typing() const { return typing_; }

  /// The shape of pointer wanted: ImGuiMouseCursor's number, -1 none.
  int pointer_shape() const { return pointer_shape_; }

 private:
  void draw(Guest* guest);
  void hold_keys(int held_keys);
  void give_scale();
  void note_typing();

  GLFWwindow* window_ = nullptr;
  int width_ = 0;
  int height_ = 0;
  float ratio_ = 0;
  int buttons_ = 0;
  float scale_ = 0;
  double last_time_ = 0;
  int pointer_shape_ = 0;
  Typing typing_;
};

}  // namespace pouncemark::web::host

#pragma once

#include <array>
#include <deque>
#include <string>
#include <vector>

struct ImDrawList;
struct ImDrawCmd;

/// Floor 13, scene: marks and strokes drawn by our own shaders, between the flat parts that Dear
/// ImGui draws. Knows pixels and colours; no job, no figure.
namespace pouncemark::web {

/// A mark's place, device pixels, and the direction of its row.
struct MarkSpot {
  float x = 0;
  float y = 0;
  float along_x = 1;
  float along_y = 0;
};

/// The shapes of the marks; each works in black on cheap paper.
enum class MarkKind { staple, guide_point, old_hole, tick };

/// How a set of marks looks. Device pixels; the colour is A B G R as everywhere on screen.
struct MarkLook {
  MarkKind kind = MarkKind::staple;
  unsigned colour = 0xFF000000u;
  float half = 6;  ///< half the crown, the ring's radius, half the tick
  float line = 2;
};

/// A straight stroke, device pixels.
struct Stroke {
  float from_x = 0;
  float from_y = 0;
  float to_x = 0;
  float to_y = 0;
};

/// How a set of strokes looks. `on` 0 is solid.
struct StrokeLook {
  unsigned colour = 0xFF000000u;
  float width = 1.5f;
  float on = 0;
  float off = 0;
};

/// Only what lies inside is drawn; device pixels.
struct Window {
  float left = 0;
  float top = 0;
  float right = 0;
  float bottom = 0;
};

/// The words of the two shader pairs.
struct ShaderTexts {
  std::string mark_vert;
  std::string mark_frag;
  std::string line_vert;
  std::string line_frag;
};

/// Collects the marks and strokes of one frame and draws each set at its place in the draw list.
class Scene {
 public:
  explicit Scene(ShaderTexts texts);
  Scene(const Scene&) = delete;
  Scene& operator=(const Scene&) = delete;

  /// Forgets the sets of the frame before; builds the shaders where they are missing. Without a
  /// picture no GL call is made.
  void begin_frame(bool has_picture);
  /// The browser took the drawing surface away: shaders and buffers are gone with it.
  void forget_picture();
  void marks(ImDrawList* list, std::vector<MarkSpot> spots, const MarkLook& look, Window window);
  void strokes(ImDrawList* list, const std::vector<Stroke>& strokes, const StrokeLook& look,
               Window window);

 private:
  struct Set {
    Scene* scene = nullptr;
    bool is_marks = false;
    std::vector<float> numbers;  ///< four a corner: place, and direction or station
    MarkLook mark;
    StrokeLook stroke;
    Window window;
  };

  static void draw_set(const ImDrawList* list, const ImDrawCmd* command);
  void add(ImDrawList* list, Set set);
  void build();
  void draw(const Set& set) const;

  ShaderTexts texts_;
  bool has_picture_ = false;
  std::deque<Set> sets_;
  unsigned mark_program_ = 0;
  unsigned line_program_ = 0;
  unsigned buffer_ = 0;
  unsigned corners_ = 0;
};

}  // namespace pouncemark::web

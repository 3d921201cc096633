#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "web/widgets/area.h"
#include "web/widgets/faces.h"
#include "web/widgets/set_words.h"
#include "web/widgets/theme.h"

struct ImDrawList;

namespace pouncemark::web {

enum class Side { left, middle, right };

/// How a run of words is set.
struct Ink {
  Role role = Role::text;
  bool bold = false;
  Colour colour = kInk;
  Side side = Side::left;
};

/// Draws flat shapes and words. Everything is CSS pixels; the brush knows the ratio. Level and
/// upright edges are put on whole device pixels, so that they stay sharp.
class Brush {
 public:
  /// `noted` takes down which words were set where; it must outlive the brush.
  Brush(ImDrawList* list, float ratio, SetWords& noted)
      : list_(list), ratio_(ratio), noted_(&noted) {}

  ImDrawList* list() const { return list_; }
  float ratio() const { return ratio_; }

  void fill(const Area& area, Colour colour, float round = 0) const;
  /// A slip of paper with its hard edge, laid over what is there.
  void slip(const Area& area) const;
  void frame(const Area& area, Colour colour, float thick, float round = 0) const;
  void line(Spot from, Spot to, Colour colour, float thick) const;
  void dashes(Spot from, Spot to, Colour colour, float thick, float on, float off) const;
  /// A filled shape without hollows.
  void shape(std::span<const Spot> corners, Colour colour) const;
  void outline(std::span<const Spot> corners, Colour colour, float thick, bool closed) const;
  void disc(Spot centre, float radius, Colour colour) const;
  void ring(Spot centre, float radius, Colour colour, float thick) const;
  /// A line with a solid head at its end, or at both.
  void arrow(Spot from, Spot to, Colour colour, float thick, float head, bool both) const;

  /// Sets words on a base line and gives their width.
  float words(Spot at, std::string_view words, const Ink& ink) const;
  /// Words turned by quarter turns about the left end of their base line (1 reads upwards).
  void turned_words(Spot at, std::string_view words, const Ink& ink, int quarter_turns) const;
  /// Sets words in lines no wider than `width`; gives the base line after the last.
  float paragraph(Spot at, std::string_view words, float width, const Ink& ink) const;
  float width_of(std::string_view words, Role role, bool bold) const;
  /// From one base line to the next.
  float pitch(Role role) const;
  /// Height of figures above their base line, for setting words in the middle of a box.
  float rise(Role role) const;
  /// Words in the middle of an area.
  void centred(const Area& area, std::string_view words, const Ink& ink) const;

  /// Only what lies inside is drawn, until the matching end_window.
  void start_window(const Area& area) const;
  void end_window() const;

 private:
  float whole_px(float at) const;
  /// How far tails of letters hang below the base line.
  float tail(Role role) const;
  void note(const Area& area, std::string_view words, Role role) const;

  ImDrawList* list_;
  float ratio_;
  SetWords* noted_;
};

/// The words as far as they fit into a width, with dots where they go on.
std::string cut_short(const Brush& brush, std::string_view words, float width, Role role,
                      bool bold);

/// The lines that words break into at a width.
std::vector<std::string> broken(const Brush& brush, std::string_view words, float width, Role role,
                                bool bold);

}  // namespace pouncemark::web

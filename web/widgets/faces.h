#pragma once

#include <string_view>

struct ImFont;
struct ImDrawList;

/// The two faces on screen: B612 first, and a run with a sign it lacks wholly in DejaVu Sans
/// Condensed. Sizes are em pixels at ratio 1 and normal text; the table multiplies by ratio and
/// text size, so a caller never does.
namespace pouncemark::web {

enum class TextSize { small, normal, large };
enum class Role { second_line, text, verb, figure, box_figure, headline, great_count, title };

/// Sets pixel ratio and text size; the faces are built anew at the start of the next frame.
void set_text(float ratio, TextSize size);
TextSize text_size();

/// Has the faces built anew before the next frame (the browser took the drawing surface away).
void forget_faces();

/// Builds the faces if ratio, size or the set of signs has changed. Call before NewFrame.
void build_faces_if_needed();

/// Notes the signs of a text that came from outside (typed, pasted, opened), so that they are
/// built.
void use_signs(std::string_view words);

/// The face that has every sign of `words`, for this role; bold or regular.
ImFont* face_for(Role role, bool bold, std::string_view words);

/// Width in device pixels.
float text_width(Role role, bool bold, std::string_view words);
/// Height of one set line, ascent to descent, in device pixels (1.215 em): what put_text covers
/// from its y downwards. Lines of a paragraph stand 1.4 em apart: 1.15 times this.
float line_height(Role role);

/// Draws one run whose upper left corner is (x, y), its start exact to a part of a pixel;
/// optionally turned by quarter turns (1 reads upwards, 3 downwards). With a turn, (x, y) is that
/// same corner of the unturned run, about which it is turned.
void put_text(ImDrawList* list, float x, float y, Role role, bool bold, unsigned colour,
              std::string_view words, int quarter_turns = 0);

}  // namespace pouncemark::web

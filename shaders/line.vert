#version 300 es
// Draws strokes as two triangles each, wide enough for a smooth edge.
layout(location = 0) in vec2 a_place;  // corner, device pixels from the upper left corner
layout(location = 1) in vec2 a_along;  // x: device pixels from the stroke's start, y: across it

uniform vec2 u_screen;  // device pixels

out vec2 v_along;

void main() {
  v_along = a_along;
  vec2 share = a_place / u_screen;
  gl_Position = vec4(share.x * 2.0 - 1.0, 1.0 - share.y * 2.0, 0.0, 1.0);
}

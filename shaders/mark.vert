#version 300 es
// Draws one mark of the bench per point: staple bar, guide point, old hole.
layout(location = 0) in vec2 a_place;      // centre, device pixels from the upper left corner
layout(location = 1) in vec2 a_direction;  // along the row, length 1

uniform vec2 u_screen;  // device pixels
uniform float u_size;   // side of the square the mark stands in, device pixels

out vec2 v_direction;

void main() {
  v_direction = a_direction;
  gl_PointSize = u_size;
  vec2 share = a_place / u_screen;
  gl_Position = vec4(share.x * 2.0 - 1.0, 1.0 - share.y * 2.0, 0.0, 1.0);
}

#version 300 es
// Draws one mark of the bench as distances to its shape, so that its edges are smooth at any size.
precision highp float;

in vec2 v_direction;

uniform float u_size;   // side of the square the mark stands in, device pixels
uniform float u_half;   // half the crown, or the ring's radius, device pixels
uniform float u_line;   // width of the mark's lines, device pixels
uniform int u_kind;     // 0 staple bar, 1 guide point, 2 old hole, 3 tick across the row
uniform vec4 u_colour;  // straight alpha

out vec4 colour;

float to_bar(vec2 place, vec2 half_sides) {
  vec2 away = abs(place) - half_sides;
  return length(max(away, 0.0)) + min(max(away.x, away.y), 0.0);
}

float to_staple(vec2 place) {
  float leg = max(1.3 * u_line, 1.0);
  float bar = to_bar(place, vec2(u_half, u_line * 0.5));
  float legs = length(vec2(abs(place.x) - u_half, place.y)) - leg;
  float tick = to_bar(place, vec2(u_line * 0.4, leg * 2.0));
  return min(min(bar, legs), tick);
}

float to_guide_point(vec2 place) {
  float ring = abs(length(place) - u_half) - u_line * 0.5;
  float centre_dot = length(place) - u_half * 0.34;
  float cross_line = to_bar(place, vec2(u_line * 0.4, u_half * 1.8));
  return min(min(ring, centre_dot), cross_line);
}

void main() {
  vec2 at = (gl_PointCoord - 0.5) * u_size;
  vec2 place = vec2(dot(at, v_direction), dot(at, vec2(-v_direction.y, v_direction.x)));
  float away;
  if (u_kind == 0) away = to_staple(place);
  else if (u_kind == 1) away = to_guide_point(place);
  else if (u_kind == 2) away = abs(length(place) - u_half) - u_line * 0.5;
  else away = to_bar(place, vec2(u_line * 0.5, u_half));
  float cover = clamp(0.5 - away, 0.0, 1.0);
  if (cover <= 0.0) discard;
  colour = vec4(u_colour.rgb, u_colour.a * cover);
}

#version 300 es
// Draws a solid or dashed stroke, smooth at its sides and at the ends of its dashes.
precision highp float;

in vec2 v_along;

uniform float u_half;    // half the stroke's width, device pixels
uniform float u_on;      // length of a dash, device pixels; 0: a solid stroke
uniform float u_period;  // dash and gap together, device pixels
uniform vec4 u_colour;   // straight alpha

out vec4 colour;

void main() {
  float cover = clamp(u_half + 0.5 - abs(v_along.y), 0.0, 1.0) * min(1.0, 2.0 * u_half);
  if (u_on > 0.0) {
    // The phase stays inside one period, else faint dots stand at the ends of long strokes.
    float phase = v_along.x - floor(v_along.x / u_period) * u_period;
    cover *= clamp(min(phase + 0.5, u_on - phase + 0.5), 0.0, 1.0);
  }
  if (cover <= 0.0) discard;
  colour = vec4(u_colour.rgb, u_colour.a * cover);
}

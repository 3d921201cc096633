#include "web/scene/scene.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <GLES3/gl3.h>
#include <imgui.h>

namespace pouncemark::web {
namespace {

unsigned shader(GLenum kind, const std::string& text) {
  const GLuint made = glCreateShader(kind);
  const char* words = text.c_str();
  glShaderSource(made, 1, &words, nullptr);
  glCompileShader(made);
  return made;
}

/// 0 when the pair does not link: the bench is then drawn without its marks, never not at all.
unsigned program(const std::string& vertex_text, const std::string& fragment_text) {
  const GLuint vertex = shader(GL_VERTEX_SHADER, vertex_text);
  const GLuint fragment = shader(GL_FRAGMENT_SHADER, fragment_text);
  const GLuint made = glCreateProgram();
  glAttachShader(made, vertex);
  glAttachShader(made, fragment);
  glLinkProgram(made);
  glDeleteShader(vertex);
  glDeleteShader(fragment);
  GLint is_linked = 0;
  glGetProgramiv(made, GL_LINK_STATUS, &is_linked);
  if (is_linked != 0) return made;
  glDeleteProgram(made);
  return 0;
}

void set_float(unsigned of, const char* name, float value) {
  glUniform1f(glGetUniformLocation(of, name), value);
}

void set_colour(unsigned of, unsigned colour) {
  const auto part = [colour](unsigned shift) {
    return static_cast<float>((colour >> shift) & 0xFFu) / 255.0f;
  };
  glUniform4f(glGetUniformLocation(of, "u_colour"), part(0), part(8), part(16), part(24));
}

void set_window(const Window& window) {
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  const float left = std::max(window.left, 0.0f);
  const float bottom = std::min(window.bottom, screen.y);
  glEnable(GL_SCISSOR_TEST);
  glScissor(static_cast<GLint>(left), static_cast<GLint>(screen.y - bottom),
            static_cast<GLsizei>(std::max(0.0f, std::min(window.right, screen.x) - left)),
            static_cast<GLsizei>(std::max(0.0f, bottom - std::max(window.top, 0.0f))));
}

/// Four numbers for each of the six corners of a stroke.
void add_stroke(std::vector<float>& numbers, const Stroke& stroke, float half) {
  const float dx = stroke.to_x - stroke.from_x;
  const float dy = stroke.to_y - stroke.from_y;
  const float size = std::sqrt(dx * dx + dy * dy);
  if (!(size > 0)) return;
  const float nx = -dy / size * half;
  const float ny = dx / size * half;
  const auto corner = [&](bool at_end, float side) {
    numbers.push_back((at_end ? stroke.to_x : stroke.from_x) + nx * side);
    numbers.push_back((at_end ? stroke.to_y : stroke.from_y) + ny * side);
    numbers.push_back(at_end ? size : 0.0f);
    numbers.push_back(half * side);
  };
  corner(false, -1);
  corner(true, -1);
  corner(true, 1);
  corner(false, -1);
  corner(true, 1);
  corner(false, 1);
}

}  // namespace

Scene::Scene(ShaderTexts texts) : texts_(std::move(texts)) {}

void Scene::begin_frame(bool has_picture) {
  sets_.clear();
  has_picture_ = has_picture;
  if (has_picture_ && corners_ == 0) build();
}

void Scene::forget_picture() {
  mark_program_ = 0;
  line_program_ = 0;
  buffer_ = 0;
  corners_ = 0;
}

void Scene::build() {
  mark_program_ = program(texts_.mark_vert, texts_.mark_frag);
  line_program_ = program(texts_.line_vert, texts_.line_frag);
  glGenBuffers(1, &buffer_);
  glGenVertexArrays(1, &corners_);
}

void Scene::marks(ImDrawList* list, std::vector<MarkSpot> spots, const MarkLook& look,
                  Window window) {
  Set set;
  set.is_marks = true;
  set.mark = look;
  set.window = window;
  set.numbers.reserve(spots.size() * 4);
  for (const MarkSpot& spot : spots) {
    set.numbers.insert(set.numbers.end(), {spot.x, spot.y, spot.along_x, spot.along_y});
  }
  add(list, std::move(set));
}

void Scene::strokes(ImDrawList* list, const std::vector<Stroke>& strokes, const StrokeLook& look,
                    Window window) {
  Set set;
  set.stroke = look;
  set.window = window;
  set.numbers.reserve(strokes.size() * 24);
  for (const Stroke& stroke : strokes) add_stroke(set.numbers, stroke, look.width * 0.5f + 1.0f);
  add(list, std::move(set));
}

void Scene::add(ImDrawList* list, Set set) {
  // An empty buffer would upload the whole memory of the program.
  if (set.numbers.empty() || !has_picture_) return;
  set.scene = this;
  sets_.push_back(std::move(set));
  list->AddCallback(&Scene::draw_set, &sets_.back());
  list->AddCallback(ImDrawCallback_ResetRenderState, nullptr);
}

void Scene::draw_set(const ImDrawList*, const ImDrawCmd* command) {
  const Set& set = *static_cast<const Set*>(command->UserCallbackData);
  set.scene->draw(set);
}

void Scene::draw(const Set& set) const {
  const unsigned used = set.is_marks ? mark_program_ : line_program_;
  if (used == 0) return;
  const ImVec2 screen = ImGui::GetIO().DisplaySize;
  glUseProgram(used);
  glEnable(GL_BLEND);
  // With one function for all four, the page's own ground would shine through at smooth edges.
  glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
  set_window(set.window);
  glUniform2f(glGetUniformLocation(used, "u_screen"), screen.x, screen.y);
  if (set.is_marks) {
    const float reach = std::max(set.mark.half * 2.0f, set.mark.half + set.mark.line * 3.0f);
    set_float(used, "u_size", 2.0f * reach + 2.0f);
    set_float(used, "u_half", set.mark.half);
    set_float(used, "u_line", set.mark.line);
    glUniform1i(glGetUniformLocation(used, "u_kind"), static_cast<int>(set.mark.kind));
    set_colour(used, set.mark.colour);
  } else {
    set_float(used, "u_half", set.stroke.width * 0.5f);
    set_float(used, "u_on", set.stroke.on);
    set_float(used, "u_period", std::max(set.stroke.on + set.stroke.off, 1.0f));
    set_colour(used, set.stroke.colour);
  }
  glBindVertexArray(corners_);
  glBindBuffer(GL_ARRAY_BUFFER, buffer_);
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(set.numbers.size() * sizeof(float)),
               set.numbers.data(), GL_STREAM_DRAW);
  for (GLuint at = 0; at < 2; ++at) {
    glEnableVertexAttribArray(at);
    glVertexAttribPointer(at, 2, GL_FLOAT, GL_FALSE, 4 * sizeof(float),
                          reinterpret_cast<const void*>(at * 2 * sizeof(float)));
  }
  glDrawArrays(set.is_marks ? GL_POINTS : GL_TRIANGLES, 0,
               static_cast<GLsizei>(set.numbers.size() / 4));
}

}  // namespace pouncemark::web

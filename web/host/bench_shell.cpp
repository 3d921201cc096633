#include "web/host/bench_shell.h"

#include "web/widgets/bench_key.h"
#include "web/widgets/faces.h"

#include <GLFW/glfw3.h>
#include <imgui.h>
#include <imgui_impl_opengl3.h>
#include <imgui_internal.h>

#include <algorithm>
#include <cfloat>

namespace pouncemark::web::host {
namespace {

constexpr ImU32 kBench = IM_COL32(0xED, 0xE4, 0xD3, 0xFF);
constexpr const char* kShaderDialect = "#version 300 es";

constexpr ImVec4 colour(unsigned rgb, float strength = 1.0F) {
  return {static_cast<float>(rgb >> 16U) / 255.0F, static_cast<float>((rgb >> 8U) & 255U) / 255.0F,
          static_cast<float>(rgb & 255U) / 255.0F, strength};
}

/// The surface, or null where the browser gives no WebGL2. Opaque: a see-through one would let the
/// page shine through wherever two soft edges meet.
GLFWwindow* make_window() {
  if (glfwInit() == 0) return nullptr;
  glfwWindowHint(GLFW_CLIENT_API, GLFW_OPENGL_ES_API);
  glfwWindowHint(GLFW_ALPHA_BITS, 0);
  glfwWindowHint(GLFW_DEPTH_BITS, 0);
  glfwWindowHint(GLFW_STENCIL_BITS, 0);
  // The true size comes with the first resize; asking GLFW for a size may ask for the full screen.
  GLFWwindow* window = glfwCreateWindow(1, 1, "Pouncemark", nullptr, nullptr);
  if (window != nullptr) {
    glfwMakeContextCurrent(window);
    // Letters come through the page's own text box, so that every way of writing works.
    glfwSetCharCallback(window, nullptr);
  }
  return window;
}

void set_colours(ImGuiStyle& style) {
  const ImVec4 ink = colour(0x211A11);
  const ImVec4 paper = colour(0xFFFDF8);
  const ImVec4 fold = colour(0xD8C7A6);
  const ImVec4 pen = colour(0x004E54);
  for (ImVec4& one : style.Colors) one = ink;
  ImVec4* colours = style.Colors;
  colours[ImGuiCol_TextDisabled] = colour(0x453A2B);
  for (int ground : {ImGuiCol_WindowBg, ImGuiCol_ChildBg}) colours[ground] = colour(0, 0);
  for (int slip : {ImGuiCol_PopupBg, ImGuiCol_FrameBg, ImGuiCol_FrameBgHovered,
                   ImGuiCol_FrameBgActive, ImGuiCol_Button}) {
    colours[slip] = paper;
  }
  for (int pressed : {ImGuiCol_ButtonHovered, ImGuiCol_ButtonActive, ImGuiCol_Header,
                      ImGuiCol_HeaderHovered, ImGuiCol_HeaderActive, ImGuiCol_ScrollbarBg}) {
    colours[pressed] = fold;
  }
  for (int edge : {ImGuiCol_Border, ImGuiCol_ScrollbarGrab, ImGuiCol_ScrollbarGrabHovered,
                   ImGuiCol_ScrollbarGrabActive, ImGuiCol_Separator}) {
    colours[edge] = colour(0x8C7B5E);
  }
  for (int in_hand : {ImGuiCol_CheckMark, ImGuiCol_SliderGrab, ImGuiCol_SliderGrabActive}) {
    colours[in_hand] = pen;
  }
  colours[ImGuiCol_TextSelectedBg] = fold;
  colours[ImGuiCol_BorderShadow] = colour(0, 0);
  colours[ImGuiCol_ModalWindowDimBg] = colour(0, 0);
}

/// The bench's flat style at `ratio`; always from the start, since scaling twice adds up.
void set_style(float ratio) {
  ImGuiStyle style;
  style.WindowPadding = {0, 0};
  style.FramePadding = {8, 8};
  style.ItemSpacing = {8, 8};
  style.WindowBorderSize = 0;
  style.FrameBorderSize = 1;
  style.FrameRounding = 4;
  style.ScrollbarSize = 16;
  style.ScrollbarRounding = 0;
  style.AntiAliasedLinesUseTex = false;
  set_colours(style);
  style.ScaleAllSizes(ratio);
  style.FrameBorderSize = std::max(1.0F, ratio);
  ImGui::GetStyle() = style;
}

}  // namespace

void BenchShell::start() {
  IMGUI_CHECKVERSION();
  ImGui::CreateContext();
  ImGuiIO& io = ImGui::GetIO();
  io.IniFilename = nullptr;
  io.LogFilename = nullptr;
  // A blinking caret would need frames for ever.
  io.ConfigInputTextCursorBlink = false;
  io.ConfigWindowsMoveFromTitleBarOnly = true;
  io.BackendFlags |= ImGuiBackendFlags_HasMouseCursors;
  io.BackendPlatformName = "pouncemark";
  window_ = make_window();
  if (window_ != nullptr && !ImGui_ImplOpenGL3_Init(kShaderDialect)) window_ = nullptr;
}

void BenchShell::resize(int width, int height, float ratio) {
  width_ = std::max(width, 1);
  height_ = std::max(height, 1);
  if (ratio == ratio_ || !(ratio > 0)) return;
  ratio_ = ratio;
  set_style(ratio);
  set_text(ratio, text_size());
}

bool BenchShell::frame(Guest* guest) {
  if (width_ == 0 || ratio_ == 0) return false;
  draw(guest);
  // What the hand asked for is done before the next drawing: the first is out of date, and only the
  // second is worth its pixels.
  if (guest != nullptr && guest->has_acts()) draw(guest);
  if (window_ != nullptr) ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
  const bool was_typing = typing_.is_active;
  note_typing();
  pointer_shape_ = ImGui::GetMouseCursor();
  const bool input_waits = !ImGui::GetCurrentContext()->InputEventsQueue.empty() || scale_ != 0;
  return input_waits || was_typing != typing_.is_active;
}

/// Draws into lists; no pixel is touched.
void BenchShell::draw(Guest* guest) {
  build_faces_if_needed();
  ImGuiIO& io = ImGui::GetIO();
  if (window_ != nullptr) {
    ImGui_ImplOpenGL3_NewFrame();
    // The faces are in the surface's memory now; their picture need not stand twice.
    io.Fonts->ClearTexData();
  }
  const double now = glfwGetTime();
  io.DeltaTime = static_cast<float>(std::max(now - last_time_, 1e-4));
  last_time_ = now;
  const auto width = static_cast<float>(width_);
  const auto height = static_cast<float>(height_);
  io.DisplaySize = {width, height};
  io.DisplayFramebufferScale = {1, 1};
  ImGui::NewFrame();
  give_scale();
  // The brown paper. It also keeps this list from ever being empty: an empty one followed by own
  // drawing makes Emscripten upload the program's whole memory.
  ImGui::GetBackgroundDrawList()->AddRectFilled({0, 0}, {width, height}, kBench);
  if (guest != nullptr) guest->draw(width, height, ratio_);
  ImGui::Render();
}

void BenchShell::note_typing() {
  const ImGuiContext& context = *ImGui::GetCurrentContext();
  typing_ = {};
  typing_.is_active = context.WantTextInputNextFrame == 1;
  if (!typing_.is_active) return;
  const ImGuiPlatformImeData& place = context.PlatformImeData;
  typing_.figures_only = (context.InputTextState.Flags & ImGuiInputTextFlags_CharsDecimal) != 0;
  typing_.x = place.InputPos.x;
  typing_.y = place.InputPos.y;
  typing_.height = place.InputLineHeight;
}

void BenchShell::hold_keys(int held_keys) {
  ImGuiIO& io = ImGui::GetIO();
  io.AddKeyEvent(ImGuiMod_Ctrl, (held_keys & 1) != 0);
  io.AddKeyEvent(ImGuiMod_Shift, (held_keys & 2) != 0);
  io.AddKeyEvent(ImGuiMod_Alt, (held_keys & 4) != 0);
}

void BenchShell::pointer(const Pointer& pointer) {
  ImGuiIO& io = ImGui::GetIO();
  hold_keys(pointer.held_keys);
  io.AddMouseSourceEvent(pointer.is_finger ? ImGuiMouseSource_TouchScreen : ImGuiMouseSource_Mouse);
  io.AddMousePosEvent(pointer.x, pointer.y);
  for (int button = 0; button < 3; ++button) {
    const int bit = 1 << button;
    if (((pointer.buttons ^ buttons_) & bit) == 0) continue;
    io.AddMouseButtonEvent(button, (pointer.buttons & bit) != 0);
  }
  buttons_ = pointer.buttons;
}

void BenchShell::pointer_gone() { ImGui::GetIO().AddMousePosEvent(-FLT_MAX, -FLT_MAX); }

void BenchShell::wheel(float across, float down) {
  ImGui::GetIO().AddMouseWheelEvent(across, down);
}

void BenchShell::scale(float logarithm) { scale_ += logarithm; }

void BenchShell::give_scale() {
  ImGuiIO& io = ImGui::GetIO();
  // In a frame with plain steps the two could not be told apart: then it waits for the next.
  if (scale_ == 0 || io.MouseWheel != 0 || io.MouseWheelH != 0) return;
  io.MouseWheel = scale_;
  io.KeyCtrl = true;
  scale_ = 0;
}

void BenchShell::key(int number, bool is_down, int held_keys) {
  hold_keys(held_keys);
  const ImGuiKey key = bench_key(number);
  if (key != ImGuiKey_None) ImGui::GetIO().AddKeyEvent(key, is_down);
}

void BenchShell::characters(const char* words) {
  use_signs(words);
  ImGui::GetIO().AddInputCharactersUTF8(words);
}

void BenchShell::focus(bool is_in_front) { ImGui::GetIO().AddFocusEvent(is_in_front); }

void BenchShell::restore_picture(Guest* guest) {
  if (window_ == nullptr) return;
  ImGui_ImplOpenGL3_Shutdown();
  ImGui_ImplOpenGL3_Init(kShaderDialect);
  forget_faces();
  if (guest != nullptr) guest->picture_restored();
}

}  // namespace pouncemark::web::host

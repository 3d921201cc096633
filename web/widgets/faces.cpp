#include "web/widgets/faces.h"

#include "web/host/host.h"

#include <imgui.h>
#include <imgui_impl_opengl3.h>
#include <imgui_internal.h>

#include <algorithm>
#include <array>
#include <cfloat>
#include <cmath>
#include <string>
#include <vector>

namespace pouncemark::web {
namespace {

/// Dear ImGui's size is ascent and descent together; this is B612's share of its em. The wide face
/// takes the same number, so that lines in either stand equally high.
constexpr float kLineOfEm = 1.215F;
/// From this many device pixels to a CSS pixel on, one column of samples is as even as two.
constexpr float kFineRatio = 1.75F;
/// Above this many device pixels to a CSS pixel the faces are enlarged, not built larger.
constexpr float kMaxBuiltRatio = 2.5F;
/// A picture this high is taken by every machine with WebGL2 that was met.
constexpr int kMaxAtlasHeight = 4096;
/// Up to this em the main face is built as good as whole, and the letters of the wide one.
constexpr float kWholeFaceEm = 20;
/// From this em on only what figures are written with.
constexpr float kFiguresOnlyEm = 48;

constexpr int kRoles = 8;
/// The em of each role, by text size: small, normal, large.
constexpr std::array<std::array<float, 3>, kRoles> kEms = {{
    {15, 15, 19},  // second_line
    {15, 16, 20},  // text
    {17, 19, 24},  // verb
    {20, 22, 26},  // figure
    {22, 24, 30},  // box_figure
    {26, 30, 34},  // headline
    {48, 58, 72},  // great_count
    {34, 38, 44},  // title
}};

constexpr std::array<const char*, 3> kFiles = {"faces/main-regular.ttf", "faces/main-bold.ttf",
                                               "faces/wide.ttf"};
/// Of both weights: the fallback for single names need not weigh as much again.
constexpr std::size_t kWide = 2;

/// Signs are built from these ranges and, whatever they leave out, from the texts that come: the
/// picture of the faces stays small, and a new sign costs one more build.
constexpr ImWchar kFigures[] = {' ', ' ', '%', '%', '+', '9', 0x00D7, 0x00D7, 0x2212, 0x2212, 0};
constexpr ImWchar kPlainLetters[] = {0x20, 0x7E, 0};
constexpr ImWchar kLettersAndSigns[] = {0x20,   0x7E,   0xA0,   0xA0,   0xB0,   0xB1,   0xB5,
                                        0xB7,   0xBC,   0xBE,   0xD7,   0xD7,   0x2013, 0x2014,
                                        0x2018, 0x201D, 0x2026, 0x2026, 0x2190, 0x2193, 0x2212,
                                        0x2212, 0x2264, 0x2265, 0};
constexpr ImWchar kWhole[] = {0x20,   0x7E,   0xA0,   0xFF,   0x152,  0x153,  0x160,  0x161,
                              0x178,  0x178,  0x3C0,  0x3C0,  0x2010, 0x2033, 0x20AC, 0x20AC,
                              0x2190, 0x2193, 0x2212, 0x2212, 0x221A, 0x221A, 0x2248, 0x2248,
                              0x2260, 0x2265, 0x2713, 0x2713, 0};

/// One role at one weight: the main face and the wide one, null where it was not built.
struct Pair {
  ImFont* main = nullptr;
  ImFont* wide = nullptr;
};

/// One size of one weight while the faces are built; `pair` may serve several roles.
struct Built {
  float em;
  bool bold;
  Pair pair;
};

/// All faces and what they were built for.
struct Faces {
  float ratio = 1;
  float built_ratio = 1;
  TextSize size = TextSize::normal;
  bool is_stale = true;
  std::array<std::string, kFiles.size()> files;
  ImFontGlyphRangesBuilder used;
  ImVector<ImWchar> used_ranges;
  std::array<std::array<Pair, 2>, kRoles> pairs;
};

Faces& faces() {
  static Faces all;
  return all;
}

float em_of(const Faces& all, int role) {
  return kEms[static_cast<std::size_t>(role)][static_cast<std::size_t>(all.size)];
}

float size_px(float em, float ratio) { return em * ratio * kLineOfEm; }

const Pair& pair_of(const Faces& all, Role role, bool bold) {
  return all.pairs[static_cast<std::size_t>(role)][bold ? 1 : 0];
}

/// The next sign of `words` from `at` on; moves `at`.
ImWchar next_sign(std::string_view words, std::size_t& at) {
  unsigned sign = 0;
  const char* from = words.data() + at;
  const int taken = ImTextCharFromUtf8(&sign, from, words.data() + words.size());
  at += static_cast<std::size_t>(std::max(taken, 1));
  return static_cast<ImWchar>(sign);
}

bool has_all(const ImFont* face, std::string_view words) {
  for (std::size_t at = 0; at < words.size();) {
    const ImWchar sign = next_sign(words, at);
    if (sign >= ' ' && face->FindGlyphNoFallback(sign) == nullptr) return false;
  }
  return true;
}

const ImWchar* main_ranges(float em) {
  if (em >= kFiguresOnlyEm) return kFigures;
  return em <= kWholeFaceEm ? kWhole : kLettersAndSigns;
}

/// Adds `file` at `em` with two sets of signs; null where the page has no such file.
ImFont* add_face(Faces& all, std::size_t file, float em, const ImWchar* ranges,
                 const ImWchar* more_ranges) {
  std::string& bytes = all.files[file];
  if (bytes.empty()) return nullptr;
  ImFontConfig config;
  config.FontDataOwnedByAtlas = false;
  config.OversampleH = all.built_ratio < kFineRatio ? 2 : 1;
  config.OversampleV = 1;
  ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
  const float px = size_px(em, all.built_ratio);
  const int size = static_cast<int>(bytes.size());
  ImFont* face = atlas.AddFontFromMemoryTTF(bytes.data(), size, px, &config, ranges);
  if (face != nullptr && more_ranges != nullptr) {
    config.MergeMode = true;
    atlas.AddFontFromMemoryTTF(bytes.data(), size, px, &config, more_ranges);
  }
  // Where the faces are built smaller than they are shown, they are enlarged.
  if (face != nullptr) face->Scale = size_px(em, all.ratio) / px;
  return face;
}

/// The signs of texts from outside, if any. A sign named twice is built once.
const ImWchar* used_signs(const Faces& all, float em) {
  if (em >= kFiguresOnlyEm || all.used_ranges.Size < 3) return nullptr;
  return all.used_ranges.Data;
}

Pair build_pair(Faces& all, float em, bool bold) {
  const std::size_t weight = bold ? 1 : 0;
  const ImWchar* used = used_signs(all, em);
  Pair pair;
  pair.main = add_face(all, weight, em, main_ranges(em), used);
  if (em < kFiguresOnlyEm) {
    pair.wide = em <= kWholeFaceEm ? add_face(all, kWide, em, kPlainLetters, used)
                : used != nullptr  ? add_face(all, kWide, em, used, nullptr)
                                   : nullptr;
  }
  return pair;
}

/// Adds every size and weight once and hands it to each role that wants it.
void add_all(Faces& all) {
  std::vector<Built> built;
  // The text role comes first: it is Dear ImGui's own face too.
  for (const int role : {1, 0, 2, 3, 4, 5, 6, 7}) {
    for (const bool bold : {false, true}) {
      const float em = em_of(all, role);
      auto same = std::find_if(built.begin(), built.end(), [em, bold](const Built& one) {
        return one.em == em && one.bold == bold;
      });
      if (same == built.end()) {
        built.push_back({em, bold, build_pair(all, em, bold)});
        same = built.end() - 1;
      }
      all.pairs[static_cast<std::size_t>(role)][bold ? 1 : 0] = same->pair;
    }
  }
}

void build_once(Faces& all) {
  ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
  atlas.Clear();
  atlas.Flags = ImFontAtlasFlags_NoMouseCursors | ImFontAtlasFlags_NoPowerOfTwoHeight;
  atlas.TexDesiredWidth = 2048;
  add_all(all);
  // Without a single face file there are still Dear ImGui's own letters to say so with.
  if (atlas.Fonts.empty()) {
    ImFont* spare = atlas.AddFontDefault();
    for (auto& role : all.pairs) role.fill({spare, nullptr});
  }
  atlas.Build();
}

/// True when a text holds a sign that the main face lacks.
bool needs_wide(const Faces& all) {
  const ImFont* main = pair_of(all, Role::text, false).main;
  for (int range = 0; range + 1 < all.used_ranges.Size; range += 2) {
    for (unsigned sign = all.used_ranges[range]; sign <= all.used_ranges[range + 1]; ++sign) {
      if (main->FindGlyphNoFallback(static_cast<ImWchar>(sign)) == nullptr) return true;
    }
  }
  return false;
}

}  // namespace

void set_text(float ratio, TextSize size) {
  Faces& all = faces();
  if (ratio == all.ratio && size == all.size && !all.is_stale) return;
  all.ratio = ratio;
  all.size = size;
  all.is_stale = true;
  host::request_frames();
}

TextSize text_size() { return faces().size; }

void forget_faces() { faces().is_stale = true; }

void build_faces_if_needed() {
  Faces& all = faces();
  if (!all.is_stale) return;
  all.is_stale = false;
  for (std::size_t file = 0; file < kFiles.size(); ++file) {
    if (all.files[file].empty()) all.files[file] = host::page_file(kFiles[file]);
  }
  all.used_ranges.clear();
  all.used.BuildRanges(&all.used_ranges);
  ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
  // Building forgets the texture. Before the first frame there is none yet, and the frame makes it.
  const bool has_texture = host::has_picture() && atlas.TexID != nullptr;
  all.built_ratio = std::min(all.ratio, kMaxBuiltRatio);
  build_once(all);
  while (atlas.TexHeight > kMaxAtlasHeight && all.built_ratio > 0.5F) {
    all.built_ratio *= 0.7F;
    build_once(all);
  }
  // The start does without the wide face: few jobs have a name that needs it.
  if (all.files[kWide].empty() && needs_wide(all)) host::want_page_file(kFiles[kWide]);
  if (!has_texture) return;
  ImGui_ImplOpenGL3_DestroyFontsTexture();
  ImGui_ImplOpenGL3_CreateFontsTexture();
}

void use_signs(std::string_view words) {
  Faces& all = faces();
  // The headline's face is the poorest of those that letters are set in.
  const Pair& pair = pair_of(all, Role::headline, false);
  if (pair.main == nullptr || has_all(pair.main, words)) return;
  bool is_news = false;
  for (std::size_t at = 0; at < words.size();) {
    const ImWchar sign = next_sign(words, at);
    if (sign < ' ' || all.used.GetBit(sign)) continue;
    all.used.SetBit(sign);
    is_news = true;
  }
  if (!is_news) return;
  all.is_stale = true;
  host::request_frames();
}

ImFont* face_for(Role role, bool bold, std::string_view words) {
  const Pair& pair = pair_of(faces(), role, bold);
  if (pair.main == nullptr) return ImGui::GetFont();
  if (has_all(pair.main, words)) return pair.main;
  if (em_of(faces(), static_cast<int>(role)) >= kFiguresOnlyEm) return pair.main;
  if (pair.wide != nullptr && has_all(pair.wide, words)) return pair.wide;
  use_signs(words);
  return pair.wide != nullptr ? pair.wide : pair.main;
}

float text_width(Role role, bool bold, std::string_view words) {
  const ImFont* face = face_for(role, bold, words);
  const char* end = words.data() + words.size();
  return face->CalcTextSizeA(line_height(role), FLT_MAX, 0, words.data(), end).x;
}

float line_height(Role role) {
  const Faces& all = faces();
  return size_px(em_of(all, static_cast<int>(role)), all.ratio);
}

void put_text(ImDrawList* list, float x, float y, Role role, bool bold, unsigned colour,
              std::string_view words, int quarter_turns) {
  const ImFont* face = face_for(role, bold, words);
  const int first = list->VtxBuffer.Size;
  const ImVec2 whole(std::floor(x), std::floor(y));
  const bool is_turned = quarter_turns != 0;
  const ImVec2 part(x - whole.x, is_turned ? y - whole.y : 0);
  // Not AddText: it leaves out what the list's clip hides before we have turned it.
  face->RenderText(list, line_height(role), whole, colour, ImVec4(-1e6F, -1e6F, 1e6F, 1e6F),
                   words.data(), words.data() + words.size(), 0, false);
  for (int i = first; i < list->VtxBuffer.Size; ++i) {
    ImVec2& at = list->VtxBuffer[i].pos;
    const float across = at.x - whole.x;
    const float down = at.y - whole.y;
    if (quarter_turns == 1) {
      at = {whole.x + down, whole.y - across};
    } else if (quarter_turns == 2) {
      at = {whole.x - across, whole.y - down};
    } else if (quarter_turns == 3) {
      at = {whole.x - down, whole.y + across};
    }
    at.x += part.x;
    at.y += part.y;
  }
}

}  // namespace pouncemark::web

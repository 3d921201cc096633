#include "web/host/bench_shell.h"
#include "web/host/host.h"
#include "web/widgets/faces.h"
#include "web/widgets/set_words.h"

#include <emscripten.h>
#include <imgui.h>

#include <cstdio>
#include <vector>

// Everything that host.js does for us. `Pm` is its one object. Words go over as bytes and a length.
// clang-format off
EM_JS(void, pm_js_request, (int count), { Pm.request(count); });
EM_JS(void, pm_js_choose_file, (), { Pm.chooseFile(); });
EM_JS(void, pm_js_save_file,
      (const char* name, int name_size, const char* kind, int kind_size, const char* bytes,
       int size),
      { Pm.saveFile(UTF8ToString(name, name_size), UTF8ToString(kind, kind_size),
                    HEAPU8.slice(bytes, bytes + size)); });
EM_JS(int, pm_js_page_file_size, (const char* name, int name_size),
      { return Pm.pageFileSize(UTF8ToString(name, name_size)); });
EM_JS(void, pm_js_page_file_copy, (const char* name, int name_size, char* to),
      { HEAPU8.set(Pm.pageFile(UTF8ToString(name, name_size)), to); });
EM_JS(void, pm_js_page_file_want, (const char* name, int name_size),
      { Pm.wantPageFile(UTF8ToString(name, name_size)); });
EM_JS(void, pm_js_unsaved, (int unsaved), { Pm.isUnsaved = !!unsaved; });
EM_JS(int, pm_js_preference, (const char* name, int name_size, char* to, int room),
      { return stringToUTF8(Pm.preference(UTF8ToString(name, name_size)), to, room); });
EM_JS(void, pm_js_keep_preference,
      (const char* name, int name_size, const char* words, int words_size),
      { Pm.keepPreference(UTF8ToString(name, name_size), UTF8ToString(words, words_size)); });
EM_JS(int, pm_js_has_fingers, (), { return Pm.hasFingers(); });
EM_JS(int, pm_js_wants_less_motion, (), { return Pm.wantsLessMotion(); });
EM_JS(int, pm_js_moment, (), { return Pm.moment(); });
EM_JS(void, pm_js_keep_record, (int number, const char* bytes, int size, int at_once),
      { Pm.keepRecord(number, HEAPU8.slice(bytes, bytes + size), !!at_once); });
EM_JS(void, pm_js_mirror_line, (const char* id, int id_size, const char* words, int words_size),
      { Pm.mirrorLine(UTF8ToString(id, id_size), UTF8ToString(words, words_size)); });
EM_JS(void, pm_js_copied, (const char* words), { Pm.copied(UTF8ToString(words)); });
EM_JS(void, pm_js_typing, (int active, int figures_only, float x, float y, float height),
      { Pm.setTyping(!!active, !!figures_only, x, y, height); });
EM_JS(void, pm_js_pointer_shape, (int shape), { Pm.pointerShape(shape); });
EM_JS(void, pm_js_no_picture, (), { Pm.noPicture(); });
// clang-format on

namespace pouncemark::web::host {
namespace {

/// A named place of this frame, CSS pixels.
struct Place {
  std::string id;
  float left;
  float top;
  float right;
  float bottom;
  int state;  ///< see note_place
};

/// What stays between calls from the browser.
struct Host {
  BenchShell shell;
  Guest* guest = nullptr;
  std::vector<Place> places;
  std::string places_text;
  std::string words_text;
  std::string focused;
  std::string pasted;
  Typing typing;
  int pointer_shape = 0;
};

Host& the_host() {
  static Host host;
  return host;
}

int size_of(std::string_view words) { return static_cast<int>(words.size()); }

std::string quoted(std::string_view words) {
  std::string out = "\"";
  for (const char sign : words) {
    if (sign == '"' || sign == '\\') out += '\\';
    const bool is_control = static_cast<unsigned char>(sign) < 0x20;
    out += is_control ? ' ' : sign;
  }
  return out + '"';
}

std::string place_text(const Place& place) {
  char figures[96];
  std::snprintf(figures, sizeof figures, ",%.2f,%.2f,%.2f,%.2f,%d]",
                static_cast<double>(place.left), static_cast<double>(place.top),
                static_cast<double>(place.right), static_cast<double>(place.bottom), place.state);
  return '[' + quoted(place.id) + figures;
}

std::string run_text(const SetRun& run) {
  char figures[120];
  std::snprintf(figures, sizeof figures, ",%.2f,%.2f,%.2f,%.2f,%.2f,%d]",
                static_cast<double>(run.area.left), static_cast<double>(run.area.top),
                static_cast<double>(run.area.right), static_cast<double>(run.area.bottom),
                static_cast<double>(run.em_px), run.is_cut ? 1 : 0);
  return '[' + quoted(run.words) + figures;
}

/// Tells the page what the frame changed around the picture.
void tell_page(Host& host) {
  const Typing now = host.shell.typing();
  if (!(now == host.typing)) {
    host.typing = now;
    const float ratio = host.shell.ratio();
    pm_js_typing(now.is_active, now.figures_only, now.x / ratio, now.y / ratio, now.height / ratio);
  }
  const int shape = host.shell.pointer_shape();
  if (shape == host.pointer_shape) return;
  host.pointer_shape = shape;
  pm_js_pointer_shape(shape);
}

void give_copied(void* /*unused*/, const char* words) {
  the_host().pasted = words;
  pm_js_copied(words);
}

const char* pasted_words(void* /*unused*/) { return the_host().pasted.c_str(); }

}  // namespace

void start() {
  Host& host = the_host();
  host.shell.start();
  ImGui::GetIO().SetClipboardTextFn = give_copied;
  ImGui::GetIO().GetClipboardTextFn = pasted_words;
  if (!host.shell.has_picture()) pm_js_no_picture();
}

bool has_picture() { return the_host().shell.has_picture(); }

void request_frames(int count) { pm_js_request(count); }

void choose_file() { pm_js_choose_file(); }

void save_file(std::string_view name, std::string_view kind, std::string_view bytes) {
  pm_js_save_file(name.data(), size_of(name), kind.data(), size_of(kind), bytes.data(),
                  size_of(bytes));
}

std::string page_file(std::string_view name) {
  const int size = pm_js_page_file_size(name.data(), size_of(name));
  std::string bytes(static_cast<std::size_t>(size), '\0');
  if (size > 0) pm_js_page_file_copy(name.data(), size_of(name), bytes.data());
  return bytes;
}

void want_page_file(std::string_view name) { pm_js_page_file_want(name.data(), size_of(name)); }

void warn_before_leaving(bool has_unsaved_changes) { pm_js_unsaved(has_unsaved_changes ? 1 : 0); }

std::string preference(std::string_view name) {
  char words[64];
  pm_js_preference(name.data(), size_of(name), words, sizeof words);
  return words;
}

void keep_preference(std::string_view name, std::string_view words) {
  pm_js_keep_preference(name.data(), size_of(name), words.data(), size_of(words));
}

bool has_fingers() { return pm_js_has_fingers() != 0; }

bool wants_less_motion() { return pm_js_wants_less_motion() != 0; }

std::string moment() {
  constexpr const char* kMonths = "JanFebMarAprMayJunJulAugSepOctNovDec";
  const int now = pm_js_moment();
  char words[48];
  std::snprintf(words, sizeof words, "%d %.3s %02d:%02d", now / 10'000 % 100,
                kMonths + now / 1'000'000 % 12 * 3, now / 100 % 100, now % 100);
  return words;
}

void keep_record(std::int64_t number, std::string_view record, bool at_once) {
  pm_js_keep_record(static_cast<int>(number), record.data(), size_of(record), at_once ? 1 : 0);
}

void mirror_line(std::string_view id, std::string_view words) {
  pm_js_mirror_line(id.data(), size_of(id), words.data(), size_of(words));
}

void forget_places() { the_host().places.clear(); }

void note_place(std::string_view id, float left, float top, float right, float bottom, int state) {
  const float ratio = the_host().shell.ratio();
  the_host().places.push_back(
      {std::string(id), left / ratio, top / ratio, right / ratio, bottom / ratio, state});
}

void note_focus(std::string_view id) { the_host().focused = std::string(id); }

void set_guest(Guest* guest) { the_host().guest = guest; }

std::string job_text() {
  Guest* guest = the_host().guest;
  return guest == nullptr ? std::string() : guest->job_text();
}

}  // namespace pouncemark::web::host

// What host.js calls. Text comes as zero-ended UTF-8, file bytes with their length; both stand only
// for the length of the call.
extern "C" {

namespace shell_host = pouncemark::web::host;

/// One frame; true when one more is needed.
EMSCRIPTEN_KEEPALIVE int pm_frame() {
  shell_host::Host& host = shell_host::the_host();
  host.places.clear();
  const bool wants_more = host.shell.frame(host.guest);
  shell_host::tell_page(host);
  return wants_more ? 1 : 0;
}

EMSCRIPTEN_KEEPALIVE void pm_resize(int width, int height, float ratio) {
  shell_host::the_host().shell.resize(width, height, ratio);
}

EMSCRIPTEN_KEEPALIVE void pm_pointer(float x, float y, int buttons, int held_keys, int is_finger) {
  shell_host::the_host().shell.pointer({x, y, buttons, held_keys, is_finger != 0});
}

EMSCRIPTEN_KEEPALIVE void pm_pointer_gone() { shell_host::the_host().shell.pointer_gone(); }

EMSCRIPTEN_KEEPALIVE void pm_wheel(float across, float down) {
  shell_host::the_host().shell.wheel(across, down);
}

EMSCRIPTEN_KEEPALIVE void pm_scale(float logarithm) {
  shell_host::the_host().shell.scale(logarithm);
}

EMSCRIPTEN_KEEPALIVE void pm_key(int number, int is_down, int held_keys) {
  shell_host::the_host().shell.key(number, is_down != 0, held_keys);
}

/// A key with Ctrl; 1 when it is ours and not the browser's.
EMSCRIPTEN_KEEPALIVE int pm_ctrl_key(int number, int shift, int again) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  return guest != nullptr && guest->ctrl_key(number, shift != 0, again != 0) ? 1 : 0;
}

/// Where the ring stands, or what was pressed last; empty when that is nowhere.
EMSCRIPTEN_KEEPALIVE const char* pm_focused() {
  shell_host::Host& host = shell_host::the_host();
  return host.focused.c_str();
}

EMSCRIPTEN_KEEPALIVE void pm_char(const char* words) {
  shell_host::the_host().shell.characters(words);
}

/// What the next Ctrl + V puts in.
EMSCRIPTEN_KEEPALIVE void pm_paste(const char* words) {
  pouncemark::web::use_signs(words);
  shell_host::the_host().pasted = words;
}

EMSCRIPTEN_KEEPALIVE void pm_file(const char* name, const char* bytes, int size) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->file_opened(name, {bytes, static_cast<std::size_t>(size)});
}

EMSCRIPTEN_KEEPALIVE void pm_record_found(const char* bytes, int size) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->record_found({bytes, static_cast<std::size_t>(size)});
}

EMSCRIPTEN_KEEPALIVE void pm_record_kept(int number) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->record_kept(number);
}

EMSCRIPTEN_KEEPALIVE void pm_record_not_kept(const char* why) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->record_not_kept(why);
}

EMSCRIPTEN_KEEPALIVE void pm_file_refused(const char* sentence) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->file_refused(sentence);
}

EMSCRIPTEN_KEEPALIVE void pm_focus(int is_in_front) {
  shell_host::the_host().shell.focus(is_in_front != 0);
}

/// Tab has reached a place.
EMSCRIPTEN_KEEPALIVE void pm_place_focused(const char* id) {
  shell_host::Guest* guest = shell_host::the_host().guest;
  if (guest != nullptr) guest->place_focused(id);
}

EMSCRIPTEN_KEEPALIVE void pm_page_file_came() { pouncemark::web::forget_faces(); }

EMSCRIPTEN_KEEPALIVE void pm_picture_restored() {
  shell_host::Host& host = shell_host::the_host();
  host.shell.restore_picture(host.guest);
}

/// The places of the last frame in its order: [["id",left,top,right,bottom,state],...], CSS
/// pixels; the state as note_place says.
EMSCRIPTEN_KEEPALIVE const char* pm_places() {
  shell_host::Host& host = shell_host::the_host();
  std::string& text = host.places_text;
  text = "[";
  for (const shell_host::Place& place : host.places) {
    if (text.size() > 1) text += ',';
    text += shell_host::place_text(place);
  }
  text += ']';
  return text.c_str();
}

/// The words of the last frame in the order they were set: [["words",left,top,right,bottom,em,cut],
/// ...], CSS pixels; cut is 1 or 0. The first call switches the noting on and gives none.
EMSCRIPTEN_KEEPALIVE const char* pm_words() {
  shell_host::Host& host = shell_host::the_host();
  pouncemark::web::SetWords* noted = host.guest == nullptr ? nullptr : host.guest->set_words();
  std::string& text = host.words_text;
  text = "[";
  if (noted != nullptr) {
    noted->switch_on();
    for (const pouncemark::web::SetRun& run : noted->runs()) {
      if (text.size() > 1) text += ',';
      text += shell_host::run_text(run);
    }
  }
  text += ']';
  return text.c_str();
}

}  // extern "C"

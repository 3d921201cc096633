#include "web/widgets/brush.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <imgui.h>

namespace pouncemark::web {
namespace {

/// The em at normal text is 1/1.215 of ascent and descent together.
constexpr float kLineOfEm = 1.215f;

float area_twice(std::span<const Spot> corners) {
  float sum = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Spot a = corners[i];
    const Spot b = corners[(i + 1) % corners.size()];
    sum += a.x * b.y - b.x * a.y;
  }
  return sum;
}

}  // namespace

float Brush::whole_px(float at) const { return std::floor(at * ratio_ + 0.5f); }

void Brush::note(const Area& area, std::string_view words, Role role) const {
  const ImVec2 low = list_->GetClipRectMin();
  const ImVec2 high = list_->GetClipRectMax();
  noted_->set(words, area, line_height(role) / ratio_ / kLineOfEm,
              {low.x / ratio_, low.y / ratio_, high.x / ratio_, high.y / ratio_});
}

void Brush::fill(const Area& area, Colour colour, float round) const {
  noted_->cover(area);
  list_->AddRectFilled({whole_px(area.left), whole_px(area.top)},
                       {whole_px(area.right), whole_px(area.bottom)}, colour, round * ratio_);
}

void Brush::slip(const Area& area) const {
  const Area edge = {area.left + kPaperEdge, area.top + kPaperEdge, area.right + kPaperEdge,
                     area.bottom + kPaperEdge};
  noted_->lay(edge);
  noted_->lay(area);
  fill(edge, kFold);
  fill(area, kPaper);
}

void Brush::frame(const Area& area, Colour colour, float thick, float round) const {
  if (round <= 0) {
    const float half = thick / 2;
    line({area.left - half, area.top}, {area.right + half, area.top}, colour, thick);
    line({area.left - half, area.bottom}, {area.right + half, area.bottom}, colour, thick);
    line({area.left, area.top - half}, {area.left, area.bottom + half}, colour, thick);
    line({area.right, area.top - half}, {area.right, area.bottom + half}, colour, thick);
    return;
  }
  list_->AddRect({whole_px(area.left), whole_px(area.top)},
                 {whole_px(area.right), whole_px(area.bottom)}, colour, round * ratio_, 0,
                 thick * ratio_);
}

void Brush::line(Spot from, Spot to, Colour colour, float thick) const {
  const float half = thick * ratio_ / 2;
  if (from.x == to.x || from.y == to.y) {
    const float width = std::max(1.0f, std::floor(thick * ratio_ + 0.5f));
    const bool upright = from.x == to.x;
    const float at = std::floor((upright ? from.x : from.y) * ratio_ - half + 0.5f);
    const float low = whole_px(upright ? std::min(from.y, to.y) : std::min(from.x, to.x));
    const float high = whole_px(upright ? std::max(from.y, to.y) : std::max(from.x, to.x));
    if (upright)
      list_->AddRectFilled({at, low}, {at + width, high}, colour);
    else
      list_->AddRectFilled({low, at}, {high, at + width}, colour);
    return;
  }
  list_->AddLine({from.x * ratio_, from.y * ratio_}, {to.x * ratio_, to.y * ratio_}, colour,
                 thick * ratio_);
}

void Brush::dashes(Spot from, Spot to, Colour colour, float thick, float on, float off) const {
  const float dx = to.x - from.x;
  const float dy = to.y - from.y;
  const float size = std::sqrt(dx * dx + dy * dy);
  if (!(size > 0)) return;
  for (float at = 0; at < size; at += on + off) {
    const float end = std::min(at + on, size);
    const auto place = [&](float along) {
      // A level dash stays level to the last bit, so that it is drawn sharp.
      return Spot{dx == 0 ? from.x : from.x + dx * along / size,
                  dy == 0 ? from.y : from.y + dy * along / size};
    };
    line(place(at), place(end), colour, thick);
  }
}

void Brush::shape(std::span<const Spot> corners, Colour colour) const {
  noted_->cover(corners);
  std::vector<ImVec2> places;
  places.reserve(corners.size());
  for (const Spot& corner : corners) places.push_back({corner.x * ratio_, corner.y * ratio_});
  // The smooth edge stands on the outside only when the corners run clockwise on screen.
  if (area_twice(corners) < 0) std::reverse(places.begin(), places.end());
  list_->AddConvexPolyFilled(places.data(), static_cast<int>(places.size()), colour);
}

void Brush::outline(std::span<const Spot> corners, Colour colour, float thick, bool closed) const {
  std::vector<ImVec2> places;
  places.reserve(corners.size());
  for (const Spot& corner : corners) places.push_back({corner.x * ratio_, corner.y * ratio_});
  list_->AddPolyline(places.data(), static_cast<int>(places.size()), colour,
                     closed ? ImDrawFlags_Closed : ImDrawFlags_None, thick * ratio_);
}

void Brush::disc(Spot centre, float radius, Colour colour) const {
  list_->AddCircleFilled({centre.x * ratio_, centre.y * ratio_}, radius * ratio_, colour);
}

void Brush::ring(Spot centre, float radius, Colour colour, float thick) const {
  list_->AddCircle({centre.x * ratio_, centre.y * ratio_}, radius * ratio_, colour, 0,
                   thick * ratio_);
}

void Brush::arrow(Spot from, Spot to, Colour colour, float thick, float head, bool both) const {
  const float dx = to.x - from.x;
  const float dy = to.y - from.y;
  const float size = std::sqrt(dx * dx + dy * dy);
  if (!(size > 1)) return;
  const float ux = dx / size;
  const float uy = dy / size;
  const float length = std::min(head, both ? size / 2 : size);
  const auto tip = [&](Spot at, float sign) {
    const Spot back{at.x - ux * length * sign, at.y - uy * length * sign};
    const float wide = length * 0.45f;
    const std::array<Spot, 3> corners = {at, Spot{back.x - uy * wide, back.y + ux * wide},
                                         Spot{back.x + uy * wide, back.y - ux * wide}};
    shape(corners, colour);
  };
  const float cut = length * 0.6f;
  line({dy == 0 || !both ? from.x + (both ? ux * cut : 0) : from.x,
        dx == 0 && both ? from.y + uy * cut : from.y},
       {dx == 0 ? to.x : to.x - ux * cut, dy == 0 ? to.y : to.y - uy * cut}, colour, thick);
  tip(to, 1);
  if (both) tip(from, -1);
}

float Brush::width_of(std::string_view words, Role role, bool bold) const {
  return text_width(role, bold, words) / ratio_;
}

float Brush::pitch(Role role) const {
  // 1.4 of the em; the face's own line is 1.215 of it.
  return std::floor(line_height(role) / ratio_ / kLineOfEm * 1.4f + 0.5f);
}

float Brush::rise(Role role) const { return line_height(role) / ratio_ / kLineOfEm * 0.72f; }

float Brush::tail(Role role) const { return line_height(role) / ratio_ / kLineOfEm * 0.2f; }

float Brush::words(Spot at, std::string_view words, const Ink& ink) const {
  const float width = width_of(words, ink.role, ink.bold);
  float left = at.x;
  if (ink.side == Side::middle) left -= width / 2;
  if (ink.side == Side::right) left -= width;
  const ImFont* face = face_for(ink.role, ink.bold, words);
  const float ascent = face->Ascent * face->Scale;
  put_text(list_, left * ratio_, std::floor(at.y * ratio_ - ascent + 0.5f), ink.role, ink.bold,
           ink.colour, words);
  note({left, at.y - rise(ink.role), left + width, at.y + tail(ink.role)}, words, ink.role);
  return width;
}

void Brush::turned_words(Spot at, std::string_view words, const Ink& ink, int quarter_turns) const {
  const ImFont* face = face_for(ink.role, ink.bold, words);
  const float ascent = face->Ascent * face->Scale;
  const float sign = quarter_turns == 1 ? -1.0f : 1.0f;
  put_text(list_, at.x * ratio_ + sign * ascent, at.y * ratio_, ink.role, ink.bold, ink.colour,
           words, quarter_turns);
  const float width = width_of(words, ink.role, ink.bold);
  // Read upwards, the figures stand left of the base line and the run begins below.
  const Area area = quarter_turns == 1
                        ? Area{at.x - rise(ink.role), at.y - width, at.x + tail(ink.role), at.y}
                        : Area{at.x - tail(ink.role), at.y, at.x + rise(ink.role), at.y + width};
  note(area, words, ink.role);
}

void Brush::centred(const Area& area, std::string_view run, const Ink& ink) const {
  Ink middle = ink;
  middle.side = Side::middle;
  words({area.mid_x(), area.mid_y() + rise(ink.role) / 2}, run, middle);
}

float Brush::paragraph(Spot at, std::string_view run, float width, const Ink& ink) const {
  float y = at.y;
  for (const std::string& one : broken(*this, run, width, ink.role, ink.bold)) {
    words({at.x, y}, one, ink);
    y += pitch(ink.role);
  }
  return y;
}

void Brush::start_window(const Area& area) const {
  list_->PushClipRect({whole_px(area.left), whole_px(area.top)},
                      {whole_px(area.right), whole_px(area.bottom)}, true);
}

void Brush::end_window() const { list_->PopClipRect(); }

std::string cut_short(const Brush& brush, std::string_view words, float width, Role role,
                      bool bold) {
  if (brush.width_of(words, role, bold) <= width) return std::string(words);
  constexpr const char* kDots = "\xE2\x80\xA6";
  std::string cut(words);
  do {
    // A sign may be several bytes: those that go on with one begin with the bits 10.
    while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xC0u) == 0x80) cut.pop_back();
    if (cut.empty()) break;
    cut.pop_back();
  } while (brush.width_of(cut + kDots, role, bold) > width);
  return cut + kDots;
}

std::vector<std::string> broken(const Brush& brush, std::string_view words, float width, Role role,
                                bool bold) {
  std::vector<std::string> lines;
  std::string line;
  std::size_t at = 0;
  while (at <= words.size()) {
    const std::size_t space = std::min(words.find(' ', at), words.size());
    const std::string word(words.substr(at, space - at));
    const std::string longer = line.empty() ? word : line + " " + word;
    if (!line.empty() && brush.width_of(longer, role, bold) > width) {
      lines.push_back(line);
      line = word;
    } else {
      line = longer;
    }
    at = space + 1;
  }
  if (!line.empty()) lines.push_back(line);
  return lines;
}

}  // namespace pouncemark::web

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "web/panels/sew_section.h"

namespace pouncemark::web {
namespace {

constexpr float kPxPerMm = 96 / 25.4f;  // CSS pixels

void set_scale(const SewView& view, int times, Section* at) {
  at->times = times;
  at->px = kPxPerMm * static_cast<float>(times);
  at->thread = of_um(*at, view.thread_um);
  at->blade = of_um(*at, view.blade_um);
  at->stitch = of_um(*at, view.stitch_um);
}

/// What the longest name of a ply asks for, with its figure.
float names_width(const Page& page) {
  float widest = 0;
  for (const SewPly& ply : page.state.sew.view.plies) {
    const std::string name = ply.name + (ply.is_assumed ? ", assumed" : "");
    widest = std::max(widest, page.brush.width_of(ply.thickness, Role::second_line, true) +
                                  page.brush.width_of(name, Role::second_line, false));
  }
  return widest + 44;
}

/// The largest scale at which stack, thread, needle and one whole stitch have room; twenty at most.
Section section_in(const Page& page, const Area& mat) {
  const SewView& view = page.state.sew.view;
  Section at;
  at.mat = mat;
  const float stack_column = sew_box_width() + 46;
  float name_column = 2 * sew_box_width() + 44;
  // Names may have what one stitch and the needle leave.
  set_scale(view, 20, &at);
  const float most = mat.width() - 12 - stack_column - at.stitch - 0.9f * at.blade - 27;
  name_column = std::max(name_column, std::min(names_width(page), most));
  at.names = {mat.right - name_column, mat.top, mat.right - 12, mat.bottom};
  const float wide = at.names.left - 12 - mat.left - stack_column;
  const float above = 16 + page.brush.pitch(Role::figure);
  for (const int times : {20, 10, 5, 2, 1}) {
    set_scale(view, times, &at);
    const float high =
        above + of_um(at, view.stack_um) + 2 * at.thread + 18 + sew_measures_height();
    if (high <= mat.height() && at.stitch + 0.9f * at.blade + 26 <= wide) break;
  }
  const float stack = of_um(at, view.stack_um);
  // Below them stand the scale and the switch between the two views.
  const float holes = at.blade + 40 + button_height() + 16;
  const float high = above + stack + 2 * at.thread + 18 + sew_measures_height();
  at.has_holes = high + holes <= mat.height();
  const float spare = mat.height() - high - (at.has_holes ? holes : 0);
  const float top = mat.top + above + at.thread + std::min(spare / 2, 60.0f);
  at.bands = area_at(mat.left + stack_column, top, wide, stack);
  at.needle_x = at.bands.right - at.blade / 2 - std::min(26.0f, at.blade / 2);
  at.arrows = at.bands.bottom + at.thread + 18;
  return at;
}

/// Middles of the holes that are seen, the needle's first.
std::vector<float> holes_of(const Section& at) {
  std::vector<float> holes;
  for (float x = at.needle_x; x > at.bands.left - at.blade && holes.size() < 200; x -= at.stitch) {
    holes.push_back(x);
  }
  return holes;
}

Colour colour_of(const SewPly& ply) { return ply.is_woven ? kCloth : kSheet; }

/// Weave, so that cloth is told by more than its colour.
void weave(const Brush& brush, const Area& band) {
  bool odd = false;
  for (float y = band.top + 5; y < band.bottom - 2; y += 7) {
    brush.dashes({band.left + (odd ? 9.0f : 2.0f), y}, {band.right, y}, kWeave, 1.2f, 8, 6);
    odd = !odd;
  }
}

void draw_plies(Page& page, const Section& at) {
  const Brush& brush = page.brush;
  const auto holes = holes_of(at);
  float y = at.bands.top;
  brush.start_window({at.bands.left, at.mat.top, at.bands.right, at.mat.bottom});
  for (const SewPly& ply : page.state.sew.view.plies) {
    const Area band = {at.bands.left, y, at.bands.right, y + of_um(at, ply.thickness_um)};
    brush.fill(band, colour_of(ply));
    if (ply.is_woven) weave(brush, band);
    // Cloth closes round the thread; in sheet a hole stays as wide as the blade.
    for (const float x : holes) {
      if (ply.is_woven) continue;
      brush.fill({x - at.blade / 2, band.top, x + at.blade / 2, band.bottom}, kMat);
      for (const float side : {-1.0f, 1.0f}) {
        const float edge = x + side * at.blade / 2;
        brush.line({edge, band.top}, {edge, band.bottom}, kSheetEdge, 1.5f);
      }
    }
    for (const float edge : {band.top, band.bottom}) {
      brush.line({band.left, edge}, {band.right, edge}, kSheetEdge, 1.2f);
    }
    y = band.bottom;
  }
  brush.end_window();
}

/// How a thread turns in a hole: down one leg, round, and up the other, each half a turn to its own
/// side of the middle, so that each thread lies in the loop of the other.
struct Loop {
  float aside = 0;  ///< from the middle of the two legs to each
  float off = 0;  ///< their middle from the hole's, to the left; of the bobbin thread to the right
};

Loop loop_in(const Section& at) {
  const float half = at.thread / 2;
  const float room = std::max(0.0f, at.blade / 2 - half);
  return {std::min(half + 1, room / 2), std::min(half + 1, room / 2)};
}

/// The thread's middle line: along its face of the stack, into each hole and out again, from the
/// needle to the left.
std::vector<Spot> thread_line(const Section& at, const std::vector<float>& holes, bool is_needle) {
  const float half = at.thread / 2;
  const float face = is_needle ? at.bands.top - half : at.bands.bottom + half;
  const float way = is_needle ? 1.0f : -1.0f;
  const Loop loop = loop_in(at);
  std::vector<Spot> line = {{at.needle_x, face}};
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const float x = holes[i] - way * loop.off;
    const float turn = at.bands.mid_y() + way * (half - loop.aside);
    line.push_back({x + loop.aside, face});
    constexpr int kParts = 12;
    for (int part = 0; part <= kParts; ++part) {
      const float angle = 3.14159265f * static_cast<float>(part) / kParts;
      line.push_back({x + loop.aside * std::cos(angle), turn + way * loop.aside * std::sin(angle)});
    }
    line.push_back({x - loop.aside, face});
  }
  line.push_back({at.bands.left - at.thread, face});
  return line;
}

/// The needle thread is solid, the bobbin thread outlined: told apart without colour.
void draw_thread(const Brush& brush, const Section& at, const std::vector<Spot>& line,
                 bool is_needle) {
  const float thick = std::max(2.0f, at.thread);
  const auto draw = [&](float wide, Colour colour) {
    brush.outline(line, colour, wide, false);
    for (const Spot& spot : line) brush.disc(spot, wide / 2, colour);
  };
  if (is_needle) {
    draw(thick + 3, kMat);
    draw(thick, kThread);
    return;
  }
  draw(thick, kThread);
  draw(std::max(1.0f, thick - 5), kPaper);
}

/// Above the middle the needle thread lies over the bobbin thread, below it under: each holds the
/// other.
void draw_crossings(const Brush& brush, const Section& at, const std::vector<float>& holes,
                    const std::vector<Spot>& bobbin) {
  const Loop loop = loop_in(at);
  const float half = at.thread / 2;
  for (std::size_t i = 1; i < holes.size(); ++i) {
    const Spot tip{holes[i] + loop.off - loop.aside, at.bands.mid_y()};
    brush.disc(tip, half, kThread);
    brush.disc(tip, std::max(0.5f, half - 2.5f), kPaper);
    brush.start_window({std::max(holes[i] - at.blade / 2, at.bands.left), tip.y,
                        holes[i] + at.blade / 2, at.bands.bottom});
    draw_thread(brush, at, bobbin, false);
    brush.end_window();
  }
}

void draw_needle(const Brush& brush, const Section& at) {
  const float half = at.blade / 2;
  const float x = at.needle_x;
  const float low = at.bands.bottom + at.thread + 14;
  const float shoulder = std::min(low - 16, at.bands.bottom + at.thread * 0.4f);
  const std::array<Spot, 5> blade = {Spot{x - half, at.mat.top}, Spot{x + half, at.mat.top},
                                     Spot{x + half, shoulder}, Spot{x, low},
                                     Spot{x - half, shoulder}};
  brush.shape(blade, kSteel);
  brush.outline(blade, kEngraving, 1.5f, true);
  // The long groove, and the eye near the point that the thread goes through.
  brush.line({x, at.mat.top}, {x, shoulder - at.thread * 1.6f}, kEngraving, 1);
  const float eye = at.thread * 0.7f;
  brush.fill({x - eye, shoulder - at.thread * 1.5f, x + eye, shoulder - 2}, kMat, eye);
  brush.fill({x - at.thread / 2, shoulder - at.thread * 1.2f, x + at.thread / 2, shoulder - 5},
             kThread, at.thread / 2);
}

void draw_threads(const Page& page, const Section& at) {
  const Brush& brush = page.brush;
  const auto holes = holes_of(at);
  brush.start_window({at.bands.left, at.mat.top, at.bands.right, at.mat.bottom});
  const auto bobbin = thread_line(at, holes, false);
  draw_thread(brush, at, bobbin, false);
  draw_thread(brush, at, thread_line(at, holes, true), true);
  draw_crossings(brush, at, holes, bobbin);
  draw_needle(brush, at);
  brush.end_window();
}

/// The sheet from above, its holes as wide as the blade and as far apart.
void draw_holes(const Page& page, const Section& at) {
  if (!at.has_holes) return;
  const Brush& brush = page.brush;
  const Area strip = area_at(at.bands.left, at.arrows + sew_measures_height() + 2, at.bands.width(),
                             at.blade + 26);
  brush.start_window(strip);
  brush.fill(strip, kSheet);
  for (const float x : holes_of(at)) {
    brush.disc({x, strip.mid_y()}, at.blade / 2, kMat);
    brush.ring({x, strip.mid_y()}, at.blade / 2, kSheetEdge, 1.5f);
  }
  brush.end_window();
  for (const float y : {strip.top, strip.bottom}) {
    brush.line({strip.left, y}, {strip.right, y}, kSheetEdge, 1.2f);
  }
  brush.words({at.names.left + 22, strip.mid_y() + brush.rise(Role::second_line) / 2},
              "the sheet from above", {Role::second_line, false, kInk});
}

/// A tick, a ring half full, or a cross: the word says it, the mark is told by its shape.
void verdict_mark(const Brush& brush, solve::Verdict verdict, Spot middle) {
  constexpr float kHalf = 11;
  brush.ring(middle, kHalf, kInk, 2.5f);
  if (verdict == solve::Verdict::fits) {
    brush.line({middle.x - 5, middle.y}, {middle.x - 1, middle.y + 5}, kInk, 3);
    brush.line({middle.x - 1, middle.y + 5}, {middle.x + 6, middle.y - 5}, kInk, 3);
  } else if (verdict == solve::Verdict::do_not) {
    brush.line({middle.x - 5, middle.y - 5}, {middle.x + 5, middle.y + 5}, kInk, 3);
    brush.line({middle.x - 5, middle.y + 5}, {middle.x + 5, middle.y - 5}, kInk, 3);
  } else {
    const Area lower = {middle.x - kHalf, middle.y, middle.x + kHalf, middle.y + kHalf};
    brush.start_window(lower);
    brush.disc(middle, kHalf, kInk);
    brush.end_window();
  }
}

/// The reason without the verdict's own word before it.
std::string after_word(const SewView& view) {
  constexpr std::string_view kTry = "try it, ";
  return view.because.rfind(kTry, 0) == 0 ? view.because.substr(kTry.size()) : view.because;
}

void verdict(Page& page, const Section& at) {
  const SewView& view = page.state.sew.view;
  const std::string word = solve::verdict_word(view.verdict);
  const Spot middle = {at.mat.left + 26, at.mat.top + 10 + page.brush.pitch(Role::figure) / 2};
  const Area set = sew_verdict(page, middle, view.verdict, word, after_word(view),
                               at.needle_x - at.blade / 2 - 12);
  page.hand.note("sew.verdict", set, word + ": " + view.because);
  page.brush.words({at.mat.left + 14, at.mat.bottom - 10},
                   std::string(kTimes) + std::to_string(at.times) + ", cut along the row",
                   {Role::second_line, false, kSoft});
}

}  // namespace

Area sew_verdict(const Page& page, Spot middle, solve::Verdict mark, const std::string& word,
                 const std::string& because, float limit) {
  const Brush& brush = page.brush;
  verdict_mark(brush, mark, middle);
  float x = middle.x + 22;
  const float base = middle.y + brush.rise(Role::figure) / 2;
  x += brush.words({x, base}, word, {Role::figure, true, kInk}) + 12;
  const std::string shown = cut_short(brush, because, limit - x, Role::text, false);
  x += brush.words({x, base}, shown, {Role::text, false, kInk});
  return {middle.x - 12, middle.y - 14, x, middle.y + 14};
}

void sew_picture(Page& page, const Area& mat) {
  const SewView& view = page.state.sew.view;
  page.brush.fill(mat, kMat);
  const Section at = section_in(page, mat);
  if (view.is_known) {
    draw_plies(page, at);
    draw_threads(page, at);
    draw_holes(page, at);
  } else {
    const float top = at.mat.top + 40 + page.brush.pitch(Role::figure);
    const std::string not_known =
        "The plies cannot be added up yet" +
        (view.missing.empty() ? std::string() : ": " + view.missing + " is not known") +
        ". Enter it under Materials, or take the stack as typed.";
    page.brush.paragraph({at.bands.left + 16, top}, not_known, at.bands.width() - 32,
                         {Role::text, true, kInk});
  }
  verdict(page, at);
  sew_measures(page, at);
  sew_views_switch(page, {mat.right - 12, mat.bottom - 10});
}

}  // namespace pouncemark::web

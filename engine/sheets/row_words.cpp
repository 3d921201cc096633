#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/taken_room.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

/// "30 staples, 46.55 apart" or "247 holes, 5.49"
std::string run_words(const solve::Row& row) {
  const std::int64_t points = row.run.points();
  const std::string spacing = mm_text(row.run.spacing_um(), 2);
  switch (row.kind) {
    case solve::RowKind::stitch:
      return counted(points, "hole", "holes") + ", " + spacing;
    case solve::RowKind::staple:
      return counted(points, "staple", "staples") + ", " + spacing + " apart";
    case solve::RowKind::point:
      return counted(points, "point", "points") + ", " + spacing + " apart";
  }
  return {};
}

/// Two rows on one line of the piece share their words: a staple row or points, and the stitches.
bool share_a_line(const solve::Row& a, const solve::Row& b) {
  return a.code == b.code && a.in_from_edge_um == b.in_from_edge_um;
}

/// "1-03 left, 26 in: 30 staples, 46.55 apart"; a following row on the same line adds its own run.
std::string row_words(const solve::Row& row, const solve::Row* also) {
  std::string words = row.code;
  if (row.place != solve::RowPlace::lap)
    words += ", " + short_mm_text(row.in_from_edge_um, 1) + " in";
  words += ": " + run_words(row);
  if (also != nullptr) words += "; " + run_words(*also);
  return words;
}

/// Puts words on the picture only where no other words lie, and remembers where.
class WordPlacer {
 public:
  WordPlacer(const drawing::TakenRoom& furniture, drawing::Drawing* picture)
      : furniture_(furniture), picture_(picture) {
    taken_.take(*picture);
  }

  /// Tries the places from `text.at` on, `step` apart, until the words would reach beyond `end`.
  /// Where there is no room the words are left out: they stand on the next page.
  void put(drawing::Text text, Spot step, Spot end) {
    while (true) {
      const drawing::Box box = drawing::box_of(text);
      if (box.high.x > end.x || box.high.y > end.y) return;
      if (taken_.is_free_of_words(box) && furniture_.is_free(box)) break;
      text.at.x += step.x;
      text.at.y += step.y;
    }
    const std::size_t first = picture_->items.size();
    picture_->items.emplace_back(std::move(text));
    taken_.take(*picture_, first);
  }

 private:
  const drawing::TakenRoom& furniture_;
  drawing::Drawing* picture_;
  drawing::TakenRoom taken_;
};

drawing::Text label(Spot at, int quarter_turns, std::string words) {
  drawing::Text text;
  text.at = at;
  text.size_um = kLabelUm;
  text.quarter_turns = quarter_turns;
  text.words = std::move(words);
  return text;
}

constexpr Um kStep = 6'000;
constexpr Um kFar = 100'000'000;

void add_words_along(const PageView& view, const solve::Row& row, std::string words,
                     WordPlacer* placer) {
  const Um x = to_um(row.guide.from.x);
  if (x < view.left() + 3'000 || x > view.right()) return;
  const Um row_low = std::min(to_um(row.guide.from.y), to_um(row.guide.to.y));
  const Um start = std::max(view.low() + 14'000, row_low + row.run.first_um() + 8'000);
  const Um end = std::min(view.high(), view.piece().length_um) - 12'000;
  const bool has_ticks = row.kind == solve::RowKind::staple && row.place == solve::RowPlace::side;
  const Um beside = has_ticks ? 3'300 : 1'700;
  placer->put(label(view.on_paper(x - beside, start), 1, std::move(words)), {0, kStep},
              {kFar, view.on_paper(x, end).y});
}

void add_words_across(const PageView& view, const solve::Row& row, std::string words,
                      WordPlacer* placer) {
  const Um y = to_um(row.guide.from.y);
  if (y < view.low() || y > view.high() - 6'000) return;
  const Um start = std::max(view.left() + 20'000, row.run.first_um() + 10'000);
  const Um end = std::min(view.right(), view.piece().width_um) - 12'000;
  const bool inside_is_up = 2 * y < view.piece().length_um;
  placer->put(
      label(view.on_paper(start, inside_is_up ? y + 11'500 : y - 14'000), 0, std::move(words)),
      {kStep, 0}, {view.on_paper(end, y).x, kFar});
}

/// HINGE SIDE and FLY SIDE stand beside their edges on every page that shows them.
void add_edge_words(const PageView& view, WordPlacer* placer) {
  for (const piece::Edge& edge : view.piece().outline.edges) {
    const bool fly = edge.role == piece::EdgeRole::fly_side;
    if (!fly && edge.role != piece::EdgeRole::hinge_side) continue;
    const Vec2 step = edge.line.to - edge.line.from;
    const bool upright = is_straight(edge.line) && step.x * step.x < step.y * step.y;
    if (!upright) continue;
    const Um x = to_um(edge.line.from.x);
    const bool inside_is_right = step.y < 0;
    if (x < view.left() || x > view.right()) continue;
    drawing::Text text =
        label(view.on_paper(inside_is_right ? x + 8'500 : x - 5'500, view.low() + 24'000), 1,
              fly ? "FLY SIDE, DO NOT SEW" : "HINGE SIDE, SEWN");
    text.size_um = 4'500;
    text.weight = drawing::Weight::bold;
    const Um end = std::min(view.high(), view.piece().length_um) - 12'000;
    placer->put(std::move(text), {0, kStep}, {kFar, view.on_paper(x, end).y});
  }
}

}  // namespace

void add_row_words(const PageView& view, const drawing::TakenRoom& furniture,
                   drawing::Drawing* picture) {
  WordPlacer placer(furniture, picture);
  add_edge_words(view, &placer);
  const std::vector<const solve::Row*> rows = view.rows();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const solve::Row& row = *rows[i];
    if (i > 0 && share_a_line(*rows[i - 1], row)) continue;
    const bool shared = i + 1 < rows.size() && share_a_line(row, *rows[i + 1]);
    std::string words = row_words(row, shared ? rows[i + 1] : nullptr);
    if (runs_along(row)) {
      add_words_along(view, row, std::move(words), &placer);
    } else if (runs_across(row)) {
      add_words_across(view, row, std::move(words), &placer);
    }
  }
}

}  // namespace pouncemark::sheets

#include <algorithm>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/drawing/taken_room.h"
#include "engine/sheets/marks.h"
#include "engine/sheets/page_view.h"

namespace pouncemark::sheets {
namespace {

using drawing::Spot;

/// ", 14 left over at the far end", for an exact row that leaves something; counted from the datum.
std::string left_over_words(const layout::Run& run) {
  if (run.left_over_um == 0) return {};
  const std::string left = ", " + short_mm_text(run.left_over_um, 2);
  if (run.left_before_um > 0) return left + " left over, half at each end";
  if (run.left_after_um() > 0) return left + " left over at the far end";
  return left + " is the last gap";
}

/// "30 staples, 46.55 centre to centre" or "247 holes, 5.49"
std::string run_words(const solve::Row& row) {
  const std::int64_t points = row.run.points();
  const std::string spacing = mm_text(row.run.spacing_um(), 2);
  switch (row.kind) {
    case solve::RowKind::stitch:
      return counted(points, "hole", "holes") + ", " + spacing;
    case solve::RowKind::staple:
      return counted(points, "staple", "staples") + ", " + spacing + " centre to centre" +
             left_over_words(row.run);
    case solve::RowKind::point:
      return counted(points, "point", "points") + ", " + spacing + " centre to centre";
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
  // Clear of the points' cross lines, where the sheet reaches as far.
  const bool has_crosses = row.kind == solve::RowKind::point && row.in_from_edge_um >= 8'500;
  const Um beside = has_crosses ? 3'900 : has_ticks ? 3'300 : 1'700;
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

/// FOLD and FLANGE stand beside what they name on every page that shows it.
void add_make_words(const PageView& view, WordPlacer* placer) {
  const job::Section* section = view.section();
  if (section == nullptr || section->make == job::Make::two_leaf) return;
  const bool folded = section->make == job::Make::folded;
  for (const solve::Sleeve& sleeve : view.piece().sleeves) {
    const Um x = make_line_um(*section, sleeve);
    if (x < view.left() + 3'000 || x > view.right()) continue;
    const bool is_left_of_line = x > sleeve.left_um + sleeve.width_um / 2;
    const Um beside = x + (is_left_of_line ? -1'700 : 4'200);
    const Um end = std::min(view.high(), view.piece().length_um) - 12'000;
    placer->put(label(view.on_paper(beside, view.low() + 24'000), 1,
                      sleeve.code + (folded ? ", fold: not sewn" : ", flange")),
                {0, kStep}, {kFar, view.on_paper(x, end).y});
  }
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
  add_make_words(view, &placer);
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

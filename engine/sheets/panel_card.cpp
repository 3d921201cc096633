#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "engine/drawing/symbols.h"
#include "engine/sheets/card_base.h"
#include "engine/sheets/piece_cards.h"

/// A panel card as it is drawn, from its head down.
namespace pouncemark::sheets {
namespace {

using drawing::Align;
using drawing::Box;
using drawing::Drawing;
using drawing::Spot;
using drawing::Weight;
using piece::EdgeRole;

constexpr Um kNameBaseUm = 31'600;
constexpr Um kFaceTopUm = 34'000;
constexpr Um kFaceHighUm = 8'500;
constexpr Um kPictureTopUm = 44'000;
constexpr Um kPictureFootUm = kPictureTopUm + 3 * kCardCellHighUm;
constexpr Um kBandTopUm = kPictureFootUm + 1'800;
constexpr Um kTableTopUm = kBandTopUm + kCardBandHighUm + 4'800;
constexpr Um kTablePitchUm = 5'200;
constexpr std::size_t kMostRows = 3;
constexpr Um kToldTopUm = kTableTopUm + 4 * kTablePitchUm + 1'200;
constexpr Um kBoxesTopUm = 161'000;
constexpr Um kBoxFootUm = kBoxesTopUm + 10'500;
constexpr Um kToldFootUm = kBoxesTopUm - 7'000;
constexpr Um kCuredBaseUm = 177'200;
constexpr Um kDryRunBaseUm = 183'000;
constexpr Um kCautionBaseUm = 188'800;

/// Beside the outline stand the words of its sides; over it which way is up.
constexpr Um kBesideUm = 6'500;
constexpr Um kOverUm = 8'000;
constexpr Um kUnderUm = 1'500;
constexpr double kLeastSideUm = 9'000;
constexpr Um kLeastInUm = 2'600;
constexpr int kStepsOfArc = 8;

const drawing::Pen kEdge{700, {}, 0};
const drawing::Pen kSewn{700, {2'600, 1'000}, 0};
const FitStyle kBold{kCardSmallUm, kCardLeastUm, Weight::bold};
const FitStyle kPlain{kCardSmallUm, kCardLeastUm};
const FitStyle kSideWords{4'000, kCardLeastUm, Weight::bold, Align::centre, 0};

/// The panel in its true proportions; face down its left and right change places.
struct PanelView {
  const plan::PanelCard& card;
  piece::Extent extent;
  bool is_face_down = false;
  Box box{};             ///< of the outline
  double across_um = 0;  ///< on the card, for a millimetre of the panel
  double up_um = 0;

  Spot at(Vec2 mm) const {
    const Um across = to_um((mm.x - extent.low.x) * across_um / 1000.0);
    const Um up = to_um((mm.y - extent.low.y) * up_um / 1000.0);
    return {is_face_down ? box.high.x - across : box.low.x + across, box.low.y + up};
  }
};

/// As large as the room takes it, in its middle. A panel so narrow that its marks would meet is
/// drawn wider than it is.
void fit_in(const Box& room, PanelView* view) {
  const double wide = view->extent.high.x - view->extent.low.x;
  const double high = view->extent.high.y - view->extent.low.y;
  const double um_per_mm = std::min(static_cast<double>(room.high.x - room.low.x) / wide,
                                    static_cast<double>(room.high.y - room.low.y) / high);
  view->across_um = std::max(um_per_mm, kLeastSideUm / wide);
  view->up_um = std::max(um_per_mm, kLeastSideUm / high);
  const Um across = to_um(wide * view->across_um / 1000.0);
  const Um up = to_um(high * view->up_um / 1000.0);
  const Spot low{(room.low.x + room.high.x - across) / 2, (room.low.y + room.high.y - up) / 2};
  view->box = {low, {low.x + across, low.y + up}};
}

/// A line of the panel as places on the card; an arc in short straight steps.
std::vector<Spot> spots_of(const PanelView& view, const Segment& line) {
  std::vector<Spot> spots{view.at(line.from)};
  const int steps = is_straight(line) ? 1 : kStepsOfArc;
  const double whole = length(line);
  for (int i = 1; i < steps; ++i) spots.push_back(view.at(point_at(line, whole * i / steps)));
  spots.push_back(view.at(line.to));
  return spots;
}

std::vector<drawing::PathStep> path_of(const std::vector<Spot>& spots) {
  std::vector<drawing::PathStep> steps;
  for (const Spot& spot : spots) {
    steps.push_back({steps.empty() ? drawing::Step::move : drawing::Step::line, spot, {}, {}});
  }
  return steps;
}

void add_edge(const PanelView& view, const piece::Edge& edge, Drawing* picture) {
  std::vector<Spot> spots = spots_of(view, edge.line);
  if (edge.role != EdgeRole::hinge_side && edge.role != EdgeRole::fly_side) {
    drawing::add_stroke(*picture, kEdge, path_of(spots));
    return;
  }
  // Both marks want the panel at the left of their way; seen from behind it lies at the right.
  if (view.is_face_down) std::reverse(spots.begin(), spots.end());
  for (std::size_t i = 0; i + 1 < spots.size(); ++i) {
    if (spots[i] == spots[i + 1]) continue;
    const bool is_fly = edge.role == EdgeRole::fly_side;
    (is_fly ? drawing::add_fly_edge : drawing::add_hinge_edge)(*picture, spots[i], spots[i + 1]);
  }
}

/// A row lies nearer to its edge than the eye can part them, so it is drawn a little farther in.
void add_row(const PanelView& view, const solve::Row& row, Drawing* picture) {
  std::vector<Spot> spots;
  const int steps = is_straight(row.guide) ? 1 : kStepsOfArc;
  for (int i = 0; i <= steps; ++i) {
    const solve::PlaceUm place = solve::point_um(row, row.run.gaps * i / steps);
    spots.push_back(view.at({from_um(place.x), from_um(place.y)}));
  }
  const double in = from_um(row.in_from_edge_um) * std::min(view.across_um, view.up_um);
  const Spot along{spots.back().x - spots.front().x, spots.back().y - spots.front().y};
  if (in < kLeastInUm && along != Spot{}) {
    const drawing::Way way = drawing::way_of(along);
    const double mid_x = static_cast<double>(view.box.low.x + view.box.high.x) / 2;
    const double mid_y = static_cast<double>(view.box.low.y + view.box.high.y) / 2;
    const bool is_left = way.x * (mid_y - static_cast<double>(spots.front().y)) >
                         way.y * (mid_x - static_cast<double>(spots.front().x));
    for (Spot& spot : spots) {
      spot = drawing::stepped(spot, way, 0, is_left ? kLeastInUm - in : in - kLeastInUm);
    }
  }
  drawing::add_stroke(*picture, kSewn, path_of(spots));
}

bool stands_at(const PanelView& view, EdgeRole role, std::string_view side) {
  const std::vector<piece::Edge>& edges = view.card.piece->outline.edges;
  return std::any_of(edges.begin(), edges.end(), [&](const piece::Edge& edge) {
    return edge.role == role && plan::side_of(edge, view.extent) == side;
  });
}

/// The words of a side stand along it, outside; those of more than one edge there stand once.
void add_side_words(const PanelView& view, EdgeRole role, const std::string& words, const Box& room,
                    Drawing* picture) {
  const Spot middle{(room.low.x + room.high.x) / 2, (room.low.y + room.high.y) / 2};
  for (const std::string_view side : {"left", "right", "top", "bottom"}) {
    if (!stands_at(view, role, side)) continue;
    const bool is_upright = side == "left" || side == "right";
    const bool is_left = (side == "left") != view.is_face_down;
    Spot at{is_left ? view.box.low.x - 2'000 : view.box.high.x + 5'000, middle.y};
    // At the left of the upper edge stands which way is up.
    if (side == "top") at = {middle.x + 6'000, view.box.high.y + 2'000};
    if (side == "bottom") at = {middle.x, view.box.low.y - 5'000};
    const std::size_t first = picture->items.size();
    add_fitted(at, words, kSideWords,
               is_upright ? room.high.y - room.low.y : room.high.x - room.low.x - 12'000, picture);
    std::get<drawing::Text>(picture->items[first]).quarter_turns = is_upright ? 1 : 0;
  }
}

PanelView add_picture(const plan::PanelCard& card, const solve::Results& results, bool is_face_down,
                      const CardRoom& room, Drawing* picture) {
  const Box whole = room.box(0, kPictureTopUm, room.wide_um / 2 - 2'000, kPictureFootUm);
  PanelView view{card, piece::extent(card.piece->outline), is_face_down};
  const bool has_words_above =
      stands_at(view, EdgeRole::hinge_side, "top") || stands_at(view, EdgeRole::fly_side, "top");
  const bool has_words_below = stands_at(view, EdgeRole::hinge_side, "bottom") ||
                               stands_at(view, EdgeRole::fly_side, "bottom");
  fit_in({{whole.low.x + kBesideUm, whole.low.y + (has_words_below ? kBesideUm : kUnderUm)},
          {whole.high.x - kBesideUm, whole.high.y - kOverUm}},
         &view);
  for (const plan::PanelRow& row : card.rows) {
    add_row(view, results.rows[static_cast<std::size_t>(row.index)], picture);
  }
  for (const piece::Edge& edge : card.piece->outline.edges) add_edge(view, edge, picture);
  const Um arrow = has_words_above ? whole.low.x + 2'000 : (whole.low.x + whole.high.x) / 2 - 4'000;
  drawing::add_top_arrow(*picture, {arrow, whole.high.y - 6'500}, 6'500, 0);
  const Box sides{whole.low, {whole.high.x, whole.high.y - (has_words_above ? kOverUm : 0)}};
  add_side_words(view, EdgeRole::hinge_side, "HINGE SIDE", sides, picture);
  add_side_words(view, EdgeRole::fly_side, "FLY SIDE - DO NOT SEW", sides, picture);
  return view;
}

/// Over the creep's figure: which way the cloth's edge goes, as the panel lies on this card.
void add_creep_arrow(const PanelView& view, const CardRoom& cells, Drawing* picture) {
  if (view.card.creep == plan::Creep::none) return;
  const bool is_right = stands_at(view, EdgeRole::fly_side, "left") == view.is_face_down;
  const bool goes_right = is_right == (view.card.creep == plan::Creep::out);
  const Um down = kPictureTopUm + kCardCellHighUm - 9'800;
  const Um right = cells.wide_um - 1'000;
  const Spot from = cells.at(goes_right ? right - 11'000 : right, down);
  const Spot to = cells.at(goes_right ? right : right - 11'000, down);
  drawing::add_line(*picture, {from.x, from.y - 2'000}, {from.x, from.y + 2'000}, kEdge);
  drawing::add_arrow(*picture, from, to, kEdge);
}

/// Which way up the panel lies on this card.
void add_face(bool is_face_down, const CardRoom& room, Drawing* picture) {
  const Box box = room.box(0, kFaceTopUm, room.wide_um, kFaceTopUm + kFaceHighUm);
  if (is_face_down) {
    drawing::add_word_banner(*picture, box, "FACE DOWN");
  } else {
    drawing::add_word_box(*picture, box, "FRONT");
  }
}

/// Where the columns of the rows end, hundredths of the width; figures stand at their right.
constexpr std::array<Um, 6> kColumnsPercent = {22, 38, 54, 68, 83, 100};

void add_row_line(const std::array<std::string, 6>& words, const FitStyle& style, Um base,
                  const CardRoom& room, Drawing* picture) {
  for (std::size_t i = 0; i < words.size(); ++i) {
    FitStyle as = style;
    const Um left = i == 0 ? 0 : room.wide_um * kColumnsPercent[i - 1] / 100 + 1'500;
    const Um right = room.wide_um * kColumnsPercent[i] / 100;
    if (i > 0) as.align = Align::right;
    add_fitted(room.at(i == 0 ? 0 : right, base), words[i], as, right - left, picture);
  }
}

void add_rows(const plan::PanelCard& card, const CardRoom& room, Drawing* picture) {
  Um base = kTableTopUm;
  add_row_line({"row", "in from", "stitch", "points", "begins", "stops"}, kPlain, base, room,
               picture);
  drawing::add_line(*picture, room.at(0, base + 1'300), room.at(room.wide_um, base + 1'300),
                    kCardRule);
  base += kTablePitchUm + 300;
  const std::size_t all = card.rows.size();
  const std::size_t shown = all > kMostRows ? kMostRows - 1 : all;
  for (std::size_t i = 0; i < shown; ++i) {
    const plan::PanelRow& row = card.rows[i];
    add_row_line({row.name, row.in_from_edge, row.stitch, row.points, row.first, row.last}, kBold,
                 base, room, picture);
    base += kTablePitchUm;
  }
  if (shown < all) {
    add_fitted(room.at(0, base), std::to_string(all - shown) + " more rows: see their seam cards.",
               kPlain, room.wide_um, picture);
  } else if (all == 0) {
    add_fitted(room.at(0, base), "No row is sewn on this panel.", kPlain, room.wide_um, picture);
  }
}

void add_foot(const CardRoom& room, Drawing* picture) {
  const Um half = room.wide_um / 2 - 2'000;
  add_labelled_box("SPRAYED AT: day, hour", "", room.box(0, kBoxesTopUm, half, kBoxFootUm), half,
                   picture);
  add_labelled_box("SEW NOT BEFORE: day, hour", "",
                   room.box(half + 4'000, kBoxesTopUm, room.wide_um - 300, kBoxFootUm), half,
                   picture);
  add_sign_line("H6 adhesive cured: name, date", 0, room.wide_um, kCuredBaseUm, room, picture);
  add_sign_line("H7 dry run on one bay: name, date", 0, room.wide_um, kDryRunBaseUm, room, picture);
  add_caution(kCautionBaseUm, room, picture);
}

void add_panel_card(const plan::PanelCard& card, const solve::Results& results, bool is_face_down,
                    const std::string& checksum, const CardRoom& room, Drawing* picture) {
  add_head({"PANEL CARD   " + card.of, card.code, "", ""}, room, picture);
  add_fitted(room.at(0, kNameBaseUm), card.job_name, {5'200, kCardLeastUm}, room.wide_um - 48'000,
             picture);
  add_file_mark(checksum, kNameBaseUm, room, picture);
  add_face(is_face_down, room, picture);
  const PanelView view = add_picture(card, results, is_face_down, room, picture);
  const Um left = room.wide_um / 2;
  const CardRoom cells{room.at(left, 0), room.wide_um - left, room.high_um};
  add_cells(card.cells, 1, kPictureTopUm, cells, picture);
  add_creep_arrow(view, cells, picture);
  add_band(card.band, kBandTopUm, room, picture);
  add_rows(card, room, picture);
  std::vector<std::string> told = card.lines;
  if (view.across_um != view.up_um) told.emplace_back("The picture is not in proportion.");
  add_told(told, card.findings, kToldTopUm, kToldFootUm, room, picture);
  add_foot(room, picture);
}

}  // namespace

CardSet panel_cards(const job::Job& job, const solve::Results& results, int piece,
                    const CardCut& cut, const std::string& checksum) {
  const bool is_panel =
      results.pieces[static_cast<std::size_t>(piece)].kind == solve::PieceKind::panel;
  const auto draw = [&job, &results, piece, checksum](std::int64_t card, const CardRoom& room,
                                                      Drawing* picture) {
    const bool is_face_down = card == 1;
    add_panel_card(plan::panel_card(job, results, piece, is_face_down), results, is_face_down,
                   checksum, room, picture);
  };
  return {cut, is_panel ? 2 : 0, draw};
}

}  // namespace pouncemark::sheets

#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "web/model/bench.h"
#include "web/model/choices.h"
#include "web/model/closeup_view.h"
#include "web/model/edits.h"
#include "web/model/making.h"
#include "web/model/printing.h"
#include "web/panels/curve_state.h"
#include "web/panels/print_state.h"
#include "web/panels/pull_handle.h"
#include "web/panels/sew_state.h"
#include "web/panels/what_follows.h"
#include "web/scene/scene.h"
#include "web/widgets/brush.h"
#include "web/widgets/button.h"
#include "web/widgets/hand.h"
#include "web/widgets/length_box.h"
#include "web/widgets/stage_row.h"

namespace pouncemark::web {

/// The slip "How it is made": whether it lies on the bench, and its questions as they were worked
/// out for the bench at `turn`.
struct HowSlip {
  bool is_open = false;
  std::size_t first = 0;  ///< first question shown, where not all have room
  std::int64_t turn = -1;
  std::vector<Asked> asked;
};

/// The list of actions: whether it lies on the bench, and the first row shown.
struct ActionsSlip {
  bool is_open = false;
  std::size_t first = 0;
};

/// The slip of making: what it asks, and the answers so far. Nothing of the job.
enum class MakingAsk { nothing, piece, section, panel };
struct MakingSlip {
  MakingAsk ask = MakingAsk::nothing;
  Place place;  ///< where it was opened
  SectionPlan plan;
  PanelPlan panel;
  bool has_hinge = false;  ///< an edge of the panel was pointed at
  std::string sentence;    ///< why the last thing asked for was not done
  Foretold would;
  bool is_stale = true;  ///< `would` is to be worked out anew
};

/// What the page itself remembers: which stage is open, what is half typed. Nothing of the job.
struct PageState {
  bool is_on_start = true;
  Stage stage = Stage::make;
  OpenBox open_box;
  std::string open_sum;  ///< id of the slip line or finding whose sum is open
  bool is_face_down = false;
  CloseupView closeups;
  bool shows_keys = false;  ///< the list of keys lies over everything
  HowSlip how;
  ActionsSlip actions;
  MakingSlip making;
  bool shows_all_follows = false;  ///< the slip drawn over the bench where there is only a tray
  PullState pulling;
  FoundList found;
  Followed followed;
  ChosenLap chosen_lap;
  std::size_t first_follow = 0;  ///< first line shown of a slip too long for its column
  std::size_t first_guide = 0;   ///< first line shown of the list of guides
  PaperChoice paper;
  PrintStage printing;
  SewStage sew;
  CurveStage curve;
  std::vector<std::function<void()>> acts;  ///< done after the frame, never while drawing
};

/// Where the big parts stand, CSS pixels.
struct Layout {
  float width = 0;
  float height = 0;
  bool is_compact = false;  ///< no room for the slip: a tray under the bench instead
  Area middle;
  Area follows;  ///< the slip's column, or the tray
  Area bar;
};

Layout layout_for(float width, float height);

/// Everything a panel works with.
struct Page {
  Bench& bench;
  const Brush& brush;
  Hand& hand;
  Scene& scene;
  PageState& state;
  Layout layout;

  /// Asks for something to be done after this frame.
  void later(std::function<void()> act) { state.acts.push_back(std::move(act)); }
};

// One panel a file.
void start_panel(Page& page);
void stage_panel(Page& page);
void bar_panel(Page& page);
void actions_panel(Page& page);
void sleeve_panel(Page& page);
void section_panel(Page& page);
void backed_panel(Page& page);
void print_panel(Page& page);
void sew_panel(Page& page);
void curve_panel(Page& page);
void later_stage_panel(Page& page);
void empty_panel(Page& page);
void hanging_panel(Page& page);
void follows_panel(Page& page);
void failed_open_panel(Page& page);

/// Opens the list of actions over the bench, or puts it away.
void open_or_close_actions(Page& page);

/// Hands the job over as a file and says so.
void save_job_file(Bench& bench);

/// Where you are, the steps to the neighbours, the piece's size and a sleeve's neighbours, as far
/// as they have room before `limit`; gives the right edge.
float place_line(Page& page, Spot base, float limit);

/// Between which sleeves the sleeve on the bench lies, shortened where it would go beyond `limit`;
/// false where it has no neighbour, or there is no room.
bool neighbours_line(Page& page, Spot base, float limit);

/// The headline of the stage that is open.
Headline told_headline(const Bench& bench, const PageState& state);

/// The headline sentence on a base line, shortened where it would go beyond `limit`, and why on the
/// next line where `with_why`.
void headline_words(Page& page, Spot base, float limit, bool with_why);

/// The switch FRONT and FACE DOWN, its right edge at `right`; gives its left edge.
float face_switch(Page& page, float right, float top);

/// Opens the sum of a line of the slip, or closes it when it is the open one; where there is only
/// a tray, all that follows comes over the bench to show it.
void open_or_close_sum(Page& page, const std::string& slip_id);

/// A figure on the bench whose sum stands in the slip.
struct FigureOnBench {
  std::string place;    ///< its own name: "figure.points"
  std::string slip_id;  ///< the line of the slip: "slip.points"
  Area area;            ///< where it is set
  std::string words;    ///< what it is called aloud
};

/// The figure, already set in its place, is to be pressed: then, or on S while it has the focus,
/// its sum opens in the slip.
void figure_on_bench(Page& page, const FigureOnBench& figure);

/// A measure of what lies on the bench, in its box.
struct MeasureBox {
  std::string_view id;
  Measure measure;
  Area area;
  std::string name;
  Limits limits;
  Colour colour = kInk;
  Spot was{};             ///< base line of "was 22.0" where it changed; none at the corner
  float was_room = 1e6f;  ///< left out where it is wider
};
void measure_box(Page& page, const MeasureBox& box);

/// The limits every length on the bench keeps to, the same as a job file does.
inline constexpr Um kLeastLengthUm = 1000;
inline constexpr Um kMostLengthUm = 20'000'000;

}  // namespace pouncemark::web

#include <algorithm>

#include "engine/base/number_text.h"
#include "engine/job/job_words.h"
#include "engine/job/materials_json.h"
#include "engine/job/panel_shape.h"
#include "engine/job/pieces_read.h"
#include "engine/job/rows_read.h"

namespace pouncemark::job {
namespace {

OutlineEdge read_outline_edge(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  OutlineEdge edge;
  int role = 0;
  reader.need_word("role", words::kPanelEdge, &role);
  edge.role = std::string(words::kPanelEdge[static_cast<std::size_t>(role)]);
  reader.need_pair("from_mm", kHeight, &edge.from_um);
  reader.may_length("rise_mm", kHeight, &edge.rise_um);
  edge.extras = reader.extras();
  return edge;
}

void read_panel_shape(ObjectReader& reader, Panel* panel, Fault* fault) {
  const JsonNode* outline = reader.list("outline", false);
  if (outline == nullptr) {
    reader.need_pair("backing_mm", kSize, &panel->backing_um);
    int side = 0;
    reader.need_word("hinge_side", words::kSide, &side);
    panel->hinge_side = std::string(words::kSide[static_cast<std::size_t>(side)]);
    return;
  }
  const std::size_t count = outline->items.size();
  if (count < 3 || count > 1'000) {
    return reader.refuse(ProblemCode::job_damaged, "outline",
                         counted(static_cast<std::int64_t>(count), "edge", "edges"), "3 to 1,000");
  }
  for (std::size_t i = 0; i < count; ++i) {
    const std::string path = reader.path_of("outline") + "[" + std::to_string(i) + "]";
    panel->outline.push_back(read_outline_edge(outline->items[i], path, fault));
  }
}

void read_rows_on(ObjectReader& reader, Panel* panel) {
  reader.may_texts("rows_on", &panel->rows_on);
  if (!panel->rows_on) return;
  for (const std::string& edge : *panel->rows_on) {
    const auto& known = words::kPanelEdge;
    if (std::find(known.begin(), known.end(), edge) == known.end()) {
      reader.refuse(ProblemCode::job_damaged, "rows_on", "\"" + edge + "\"",
                    "hinge_side, top or bottom");
    }
  }
}

void check_shape(ObjectReader& reader, const Panel& panel) {
  const Result<piece::Outline> outline = outline_of(panel);
  if (outline) return;
  const Problem& problem = outline.problem();
  const std::string_view key = panel.outline.empty() ? "backing_mm" : "outline";
  reader.refuse(problem.code, key,
                problem.where + (problem.where.empty() ? "" : " ") + problem.found, problem.needed);
}

}  // namespace

Panel read_panel(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Panel panel;
  reader.need_text("code", &panel.code);
  read_panel_shape(reader, &panel, fault);
  reader.need_length("backing_thickness_mm", kThin, &panel.backing_thickness_um);
  reader.may_length("facing_thickness_mm", kThin, &panel.facing_thickness_um);
  reader.need_length("panel_in_mm", kClear, &panel.panel_in_um);
  reader.need_length("spacing_mm", kSize, &panel.spacing_um);
  reader.need_length("stitch_mm", kSize, &panel.stitch_um);
  reader.need_length("stack_mm", kThin, &panel.stack_um);
  panel.stack_from_plies = read_stack_from(reader);
  if (const JsonNode* cloth = reader.object("cloth", false)) {
    panel.cloth = read_cloth(*cloth, reader.path_of("cloth"), fault);
  }
  read_rows_on(reader, &panel);
  std::optional<int> corners;
  reader.may_word("corners", words::kCorners, &corners);
  if (corners) panel.corners = static_cast<Corners>(*corners);
  reader.may_length("corner_clear_mm", kThin, &panel.corner_clear_um);
  reader.may_length("rows_stop_mm", kSize, &panel.rows_stop_um);
  if (!fault->first) check_shape(reader, panel);
  panel.extras = reader.extras();
  return panel;
}

}  // namespace pouncemark::job

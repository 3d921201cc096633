#include <algorithm>
#include <set>

#include "engine/base/length_entry.h"
#include "engine/base/number_text.h"
#include "engine/job/job_json.h"
#include "engine/job/job_words.h"
#include "engine/job/object_reader.h"
#include "engine/job/panel_shape.h"
#include "engine/job/rows_read.h"

namespace pouncemark::job {
namespace {

constexpr Bounds kHeight{-kLargestLengthUm, kLargestLengthUm};
constexpr int kMostSleeves = 1'000;
constexpr std::size_t kMostEntries = 1'000;
/// Rows are solved one by one; this many sleeves keep a job within a browser tab.
constexpr std::int64_t kMostSleevesInJob = 20'000;

void read_changes(ObjectReader& reader, Section* section, Fault* fault) {
  const JsonNode* changes = reader.object("changes", false);
  if (changes == nullptr || fault->first) return;
  std::set<std::string> codes;
  for (int i = 0; i < section->count; ++i) codes.insert(sleeve_code(*section, i));
  for (const auto& [code, node] : changes->members) {
    const std::string path = reader.path_of("changes") + "." + code;
    if (!codes.contains(code)) {
      ObjectReader(node, path, fault)
          .refuse(ProblemCode::job_damaged, "", "the code " + code,
                  "a sleeve from " + sleeve_code(*section, 0) + " to " +
                      sleeve_code(*section, section->count - 1));
      return;
    }
    section->changes[code] = read_change(node, path, fault);
  }
}

void check_widths(ObjectReader& reader, const Section& section) {
  Um total = 0;
  for (int i = 0; i < section.count; ++i) {
    const Um width = sleeve_width_um(section, i);
    total += width - (i > 0 ? section.lap_um : 0);
    if (section.count > 1 && width <= section.lap_um) {
      return reader.refuse(
          ProblemCode::job_out_of_range, "lap_mm", exact_mm_text(section.lap_um),
          "less than sleeve " + sleeve_code(section, i) + ", " + exact_mm_text(width) + " wide");
    }
  }
  if (total > kLargestLengthUm) {
    reader.refuse(ProblemCode::job_out_of_range, "widths_mm", exact_mm_text(total) + " in all",
                  "at most 100000");
  }
}

Section read_section(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Section section;
  reader.need_text("code", &section.code);
  int make = 0;
  reader.need_word("make", words::kMake, &make);
  section.make = std::string(words::kMake[static_cast<std::size_t>(make)]);
  reader.need_length("length_mm", kSize, &section.length_um);
  reader.need_length("lap_mm", kClear, &section.lap_um);
  reader.need_length("leaf_mm", kThin, &section.leaf_um);
  reader.need_lengths("widths_mm", kSize, &section.widths_um);
  reader.need_count("count", {1, kMostSleeves}, &section.count);
  reader.may_length("width_tolerance_mm", kThin, &section.width_tolerance_um);
  reader.may_length("lap_tolerance_mm", kThin, &section.lap_tolerance_um);
  if (const JsonNode* rows = reader.object("side_rows", true)) {
    section.side_rows = read_row_pair(*rows, reader.path_of("side_rows"), fault, true);
  }
  if (const JsonNode* rows = reader.object("lap_rows", section.count > 1)) {
    section.lap_rows = read_row_pair(*rows, reader.path_of("lap_rows"), fault, false);
  }
  read_changes(reader, &section, fault);
  if (!fault->first) check_widths(reader, section);
  section.extras = reader.extras();
  return section;
}

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
    reader.need_word("hinge_side", words::kHingeSide, &side);
    panel->hinge_side = std::string(words::kHingeSide[static_cast<std::size_t>(side)]);
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
      reader.refuse(ProblemCode::job_damaged, "rows_on", "\"" + edge.substr(0, 40) + "\"",
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

Panel read_panel(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Panel panel;
  reader.need_text("code", &panel.code);
  read_panel_shape(reader, &panel, fault);
  reader.need_length("backing_thickness_mm", kThin, &panel.backing_thickness_um);
  reader.need_length("panel_in_mm", kClear, &panel.panel_in_um);
  reader.need_length("spacing_mm", kSize, &panel.spacing_um);
  reader.need_length("stitch_mm", kSize, &panel.stitch_um);
  reader.need_length("stack_mm", kThin, &panel.stack_um);
  read_rows_on(reader, &panel);
  if (!fault->first) check_shape(reader, panel);
  panel.extras = reader.extras();
  return panel;
}

Bay read_bay(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Bay bay;
  reader.need_text("code", &bay.code);
  reader.need_length("chord_mm", kSize, &bay.chord_um);
  reader.need_length("rise_mm", kClear, &bay.rise_um);
  int face = 0;
  reader.need_word("face", words::kFace, &face);
  bay.face = std::string(words::kFace[static_cast<std::size_t>(face)]);
  reader.need_text("holds", &bay.holds);
  bay.extras = reader.extras();
  return bay;
}

template <typename Entry>
void read_entries(ObjectReader& reader, const char* key, std::vector<Entry>* entries,
                  std::set<std::string>* codes, Fault* fault,
                  Entry (*read)(const JsonNode&, const std::string&, Fault*)) {
  const JsonNode* list = reader.list(key, false);
  if (list == nullptr) return;
  if (list->items.size() > kMostEntries) {
    return reader.refuse(ProblemCode::job_out_of_range, key,
                         count_text(static_cast<std::int64_t>(list->items.size())) + " of them",
                         "at most 1,000");
  }
  for (std::size_t i = 0; i < list->items.size() && !fault->first; ++i) {
    const std::string path = std::string(key) + "[" + std::to_string(i) + "]";
    entries->push_back(read(list->items[i], path, fault));
    if (!fault->first && !codes->insert(entries->back().code).second) {
      ObjectReader(list->items[i], path, fault)
          .refuse(ProblemCode::job_damaged, "code", "the code " + entries->back().code + " twice",
                  "each code once");
    }
  }
}

void check_sleeves(ObjectReader& reader, const std::vector<Section>& sections) {
  std::int64_t sleeves = 0;
  for (const Section& section : sections) sleeves += section.count;
  if (sleeves > kMostSleevesInJob) {
    reader.refuse(ProblemCode::job_out_of_range, "sections",
                  count_text(sleeves) + " sleeves in all",
                  "at most " + count_text(kMostSleevesInJob));
  }
}

Job read_job(ObjectReader& reader, Fault* fault) {
  Job job;
  reader.need_text("name", &job.name);
  int from = 0;
  reader.need_word("spacing_from", words::kSpacingFrom, &from);
  job.spacing_is_clear_gap = from == 1;
  reader.may_count("needle_size", {20, 400}, &job.needle_size);
  reader.may_count("thread_tex", {1, 2'000}, &job.thread_tex);
  reader.may_length("tails_mm", {0, 10'000'000}, &job.tails_um);
  reader.may_length("slip_distance_mm", {0, 1'000'000}, &job.slip_distance_um);
  reader.may_length("crown_mm", kThin, &job.crown_um);
  reader.may_length("half_foot_mm", kThin, &job.half_foot_um);
  reader.may_length("foot_tolerance_mm", kThin, &job.foot_tolerance_um);
  std::set<std::string> bay_codes;
  std::set<std::string> piece_codes;
  read_entries(reader, "bays", &job.bays, &bay_codes, fault, read_bay);
  read_entries(reader, "sections", &job.sections, &piece_codes, fault, read_section);
  read_entries(reader, "panels", &job.panels, &piece_codes, fault, read_panel);
  check_sleeves(reader, job.sections);
  job.extras = reader.extras();
  return job;
}

bool is_ours(const JsonNode& root) {
  const JsonNode* format = root.find("format");
  return format != nullptr && format->kind == JsonNode::Kind::text &&
         format->words == words::kFormat;
}

}  // namespace

Result<OpenedJob> open_job(std::string_view text) {
  Result<JsonNode> root = read_json(text);
  if (!root) return root.problem();
  if (!is_ours(*root)) {
    return Problem{ProblemCode::job_not_ours, "the file",
                   root->find("format") == nullptr ? "no format" : "another format",
                   std::string(words::kFormat)};
  }
  Fault fault;
  ObjectReader reader(*root, "", &fault);
  std::string format;
  reader.need_text("format", &format);
  int version = 0;
  reader.need_count("version", {1, 1'000'000}, &version);
  if (fault.first) return *fault.first;
  OpenedJob opened;
  opened.job = read_job(reader, &fault);
  if (version > words::kVersion) {
    const std::string made_by = "version " + std::to_string(version);
    if (fault.first) {
      return Problem{ProblemCode::job_too_new, fault.first->where, made_by,
                     "version " + std::to_string(words::kVersion)};
    }
    opened.look_only = true;
    opened.note = "A newer Pouncemark wrote this job (" + made_by +
                  "): you can look at it and print it, but not change it here.";
  }
  if (fault.first) return *fault.first;
  return opened;
}

}  // namespace pouncemark::job

#include <set>

#include "engine/base/number_text.h"
#include "engine/job/job_json.h"
#include "engine/job/job_words.h"
#include "engine/job/materials_json.h"
#include "engine/job/object_reader.h"
#include "engine/job/pieces_read.h"
#include "engine/job/rows_read.h"

namespace pouncemark::job {
namespace {

constexpr std::size_t kMostEntries = 1'000;
constexpr std::size_t kMostFixingRows = 20;
/// Rows are solved one by one; this many sleeves keep a job within a browser tab.
constexpr std::int64_t kMostSleevesInJob = 20'000;

FixingRow read_fixing_row(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  FixingRow row;
  int edge = 0;
  reader.need_word("edge", words::kFixingEdge, &edge);
  row.edge = std::string(words::kFixingEdge[static_cast<std::size_t>(edge)]);
  reader.need_length("in_from_edge_mm", kClear, &row.in_from_edge_um);
  reader.need_pair("kept_clear_mm", kClear, &row.kept_clear_um);
  reader.need_length("spacing_mm", kSize, &row.spacing_um);
  std::optional<int> word;
  reader.may_word("tight", words::kTight, &word);
  if (word) row.tight = static_cast<Tight>(*word);
  word.reset();
  reader.may_word("timber", words::kTimberLies, &word);
  if (word) row.timber = static_cast<TimberLies>(*word);
  row.timber_is_said = word.has_value();
  row.extras = reader.extras();
  return row;
}

void read_fixings(ObjectReader& reader, Bay* bay, Fault* fault) {
  const JsonNode* list = reader.list("fixings", false);
  if (list == nullptr) return;
  const std::size_t count = list->items.size();
  if (count > kMostFixingRows) {
    return reader.refuse(ProblemCode::job_out_of_range, "fixings",
                         counted(static_cast<std::int64_t>(count), "row", "rows"), "at most 20");
  }
  for (std::size_t i = 0; i < count && !fault->first; ++i) {
    const std::string path = reader.path_of("fixings") + "[" + std::to_string(i) + "]";
    bay->fixings.push_back(read_fixing_row(list->items[i], path, fault));
  }
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
  std::optional<int> empty;
  reader.may_word("stands", words::kStands, &empty);
  bay.stands_empty = empty.has_value();
  reader.may_pairs("stations_mm", kHeight, &bay.stations_um);
  reader.may_length("taped_along_mm", kSize, &bay.taped_along_um);
  read_fixings(reader, &bay, fault);
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
  reader.may_count("needle_size", {20, 400}, &job.needle_size,
                   "a whole number, the blade in hundredths of a millimetre (135x17 names a needle "
                   "system, not a size)");
  reader.may_count("thread_tex", {1, 2'000}, &job.thread_tex);
  reader.may_length("tails_mm", {0, 10'000'000}, &job.tails_um);
  reader.may_length("slip_distance_mm", {0, 1'000'000}, &job.slip_distance_um);
  reader.may_length("crown_mm", kThin, &job.crown_um);
  reader.may_length("wire_mm", kThin, &job.wire_um);
  reader.may_length("half_foot_mm", kThin, &job.half_foot_um);
  reader.may_length("foot_tolerance_mm", kThin, &job.foot_tolerance_um);
  if (const JsonNode* materials = reader.object("materials", false)) {
    job.materials = read_materials(*materials, "materials", fault);
  }
  read_trials(reader, &job.trials, fault);
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

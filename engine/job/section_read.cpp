#include <set>
#include <utility>

#include "engine/base/number_text.h"
#include "engine/job/job_words.h"
#include "engine/job/materials_json.h"
#include "engine/job/pieces_read.h"
#include "engine/job/rows_read.h"

namespace pouncemark::job {
namespace {

constexpr int kMostSleeves = 1'000;
constexpr Bounds kFoldRadius{0, 50'000};

std::set<std::string> codes_of(const Section& section) {
  std::set<std::string> codes;
  for (int i = 0; i < section.count; ++i) codes.insert(sleeve_code(section, i));
  return codes;
}

/// "a sleeve from 2-01 to 2-17", for a code that is none of these.
std::string known_codes(const Section& section) {
  return "a sleeve from " + sleeve_code(section, 0) + " to " +
         sleeve_code(section, section.count - 1);
}

void read_make(ObjectReader& reader, Section* section) {
  int make = 0;
  reader.need_word("make", words::kMake, &make);
  section->make = static_cast<Make>(make);
  const auto needed = [&](std::string_view key, Bounds bounds, bool is_needed,
                          std::optional<Um>* um) {
    if (!is_needed) return reader.may_length(key, bounds, um);
    Um read = 0;
    reader.need_length(key, bounds, &read);
    *um = read;
  };
  needed("fold_radius_mm", kFoldRadius, section->make == Make::folded, &section->fold_radius_um);
  needed("flange_mm", kSize, section->make == Make::round, &section->flange_um);
  if (section->make == Make::two_leaf && !reader.has("sewn_side")) return;
  int side = 0;
  reader.need_word("sewn_side", words::kSide, &side);
  section->sewn_side = static_cast<Side>(side);
}

void read_missing(ObjectReader& reader, Section* section) {
  std::optional<std::vector<std::string>> missing;
  reader.may_texts("missing", &missing);
  if (!missing) return;
  const std::set<std::string> known = codes_of(*section);
  std::set<std::string> used;
  for (const std::string& code : *missing) {
    if (!known.contains(code)) {
      return reader.refuse(ProblemCode::job_damaged, "missing", "the code " + code,
                           known_codes(*section));
    }
    if (!used.insert(code).second) {
      return reader.refuse(ProblemCode::job_damaged, "missing", "the code " + code + " twice",
                           "each code once");
    }
  }
  if (used.size() == known.size()) {
    return reader.refuse(ProblemCode::job_damaged, "missing", "every sleeve of the section",
                         "at least one sleeve there");
  }
  section->missing = std::move(*missing);
}

void read_changes(ObjectReader& reader, Section* section, Fault* fault) {
  const JsonNode* changes = reader.object("changes", false);
  if (changes == nullptr || fault->first) return;
  const std::set<std::string> codes = codes_of(*section);
  for (const auto& [code, node] : changes->members) {
    const std::string path = reader.path_of("changes") + "." + code;
    if (!codes.contains(code)) {
      ObjectReader(node, path, fault)
          .refuse(ProblemCode::job_damaged, "", "the code " + code, known_codes(*section));
      return;
    }
    section->changes[code] = read_change(node, path, fault);
  }
}

void check_widths(ObjectReader& reader, const Section& section) {
  Um total = section.lap_um;
  for (const int i : sleeves_there(section)) {
    const Um width = sleeve_width_um(section, i);
    total += width - section.lap_um;
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

/// A fold and a tube need sheet to be made from.
void check_make(ObjectReader& reader, const Section& section) {
  const bool folded = section.make == Make::folded;
  if (section.make == Make::two_leaf) return;
  const Um given = (folded ? section.fold_radius_um : section.flange_um).value_or(0);
  for (const int i : sleeves_there(section)) {
    const Um width = sleeve_width_um(section, i);
    const Um below = width - section.leaf_um * (folded ? 1 : 2);
    if (given < below) continue;
    return reader.refuse(ProblemCode::job_out_of_range, folded ? "fold_radius_mm" : "flange_mm",
                         exact_mm_text(given),
                         "less than " + exact_mm_text(below) + " on sleeve " +
                             sleeve_code(section, i) + ", " + exact_mm_text(width) + " wide");
  }
}

}  // namespace

Section read_section(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Section section;
  reader.need_text("code", &section.code);
  read_make(reader, &section);
  reader.need_length("length_mm", kSize, &section.length_um);
  reader.need_length("lap_mm", kClear, &section.lap_um);
  reader.need_length("leaf_mm", kThin, &section.leaf_um);
  reader.need_lengths("widths_mm", kSize, &section.widths_um);
  reader.need_count("count", {1, kMostSleeves}, &section.count);
  std::optional<int> over;
  reader.may_word("lies_over", words::kSide, &over);
  if (over) section.lies_over = static_cast<Side>(*over);
  std::optional<int> seams;
  reader.may_word("side_seams", words::kSideSeams, &seams);
  if (seams) section.side_seams = static_cast<SideSeams>(*seams);
  reader.may_length("width_tolerance_mm", kThin, &section.width_tolerance_um);
  reader.may_length("lap_tolerance_mm", kThin, &section.lap_tolerance_um);
  if (const JsonNode* rows = reader.object("side_rows", true)) {
    section.side_rows = read_row_pair(*rows, reader.path_of("side_rows"), fault, true);
  }
  if (const JsonNode* rows = reader.object("lap_rows", section.count > 1)) {
    section.lap_rows = read_row_pair(*rows, reader.path_of("lap_rows"), fault, false);
  }
  if (const JsonNode* cloth = reader.object("cloth", false)) {
    section.cloth = read_cloth(*cloth, reader.path_of("cloth"), fault);
  }
  if (fault->first) return section;
  read_missing(reader, &section);
  read_changes(reader, &section, fault);
  if (!fault->first) check_widths(reader, section);
  if (!fault->first) check_make(reader, section);
  section.extras = reader.extras();
  return section;
}

}  // namespace pouncemark::job

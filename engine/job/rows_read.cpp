#include "engine/job/rows_read.h"

#include "engine/job/job_words.h"

namespace pouncemark::job {
namespace {

void read_rule_words(ObjectReader& reader, StapleRow* row) {
  int rule = 0;
  reader.need_word("rule", words::kRule, &rule);
  row->rule = static_cast<SpacingRule>(rule);
  std::optional<int> left_over;
  reader.may_word("left_over", words::kLeftOver, &left_over);
  if (left_over) row->left_over = static_cast<LeftOver>(*left_over);
  std::optional<int> staples;
  reader.may_word("staples", words::kStaples, &staples);
  if (staples) row->staples = static_cast<StaplesOut>(*staples + 1);
}

StapleRow read_staple_row(const JsonNode& node, const std::string& path, Fault* fault,
                          bool on_edge) {
  ObjectReader reader(node, path, fault);
  StapleRow row;
  if (on_edge) reader.need_length("in_from_edge_mm", kClear, &row.in_from_edge_um);
  reader.need_pair("kept_clear_mm", kClear, &row.kept_clear_um);
  reader.need_length("spacing_mm", kSize, &row.spacing_um);
  read_rule_words(reader, &row);
  row.extras = reader.extras();
  return row;
}

StitchRow read_stitch_row(const JsonNode& node, const std::string& path, Fault* fault,
                          bool on_edge) {
  ObjectReader reader(node, path, fault);
  StitchRow row;
  if (on_edge) reader.need_length("in_from_edge_mm", kClear, &row.in_from_edge_um);
  reader.need_pair("kept_clear_mm", kClear, &row.kept_clear_um);
  reader.need_length("stitch_mm", kSize, &row.stitch_um);
  row.extras = reader.extras();
  return row;
}

StapleChange read_staple_change(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  StapleChange change;
  reader.may_length("in_from_edge_mm", kClear, &change.in_from_edge_um);
  reader.may_pair("kept_clear_mm", kClear, &change.kept_clear_um);
  reader.may_length("spacing_mm", kSize, &change.spacing_um);
  std::optional<int> word;
  reader.may_word("rule", words::kRule, &word);
  if (word) change.rule = static_cast<SpacingRule>(*word);
  word.reset();
  reader.may_word("left_over", words::kLeftOver, &word);
  if (word) change.left_over = static_cast<LeftOver>(*word);
  word.reset();
  reader.may_word("staples", words::kStaples, &word);
  if (word) change.staples = static_cast<StaplesOut>(*word + 1);
  change.extras = reader.extras();
  return change;
}

StitchChange read_stitch_change(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  StitchChange change;
  reader.may_length("in_from_edge_mm", kClear, &change.in_from_edge_um);
  reader.may_pair("kept_clear_mm", kClear, &change.kept_clear_um);
  reader.may_length("stitch_mm", kSize, &change.stitch_um);
  change.extras = reader.extras();
  return change;
}

}  // namespace

bool read_stack_from(ObjectReader& reader) {
  std::optional<int> from;
  reader.may_word("stack_from", words::kStackFrom, &from);
  return from.has_value();
}

RowPair read_row_pair(const JsonNode& node, const std::string& path, Fault* fault, bool on_edge) {
  ObjectReader reader(node, path, fault);
  RowPair pair;
  if (const JsonNode* staple = reader.object("staple", true)) {
    pair.staple = read_staple_row(*staple, reader.path_of("staple"), fault, on_edge);
  }
  if (const JsonNode* stitch = reader.object("stitch", true)) {
    pair.stitch = read_stitch_row(*stitch, reader.path_of("stitch"), fault, on_edge);
  }
  reader.need_length("stack_mm", kThin, &pair.stack_um);
  pair.stack_from_plies = read_stack_from(reader);
  pair.extras = reader.extras();
  return pair;
}

SleeveChange read_change(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  SleeveChange change;
  reader.may_length("width_mm", kSize, &change.width_um);
  if (const JsonNode* rows = reader.object("side_rows", false)) {
    ObjectReader side(*rows, reader.path_of("side_rows"), fault);
    if (const JsonNode* staple = side.object("staple", false)) {
      change.staple = read_staple_change(*staple, side.path_of("staple"), fault);
    }
    if (const JsonNode* stitch = side.object("stitch", false)) {
      change.stitch = read_stitch_change(*stitch, side.path_of("stitch"), fault);
    }
    change.side_rows_extras = side.extras();
  }
  change.extras = reader.extras();
  return change;
}

}  // namespace pouncemark::job

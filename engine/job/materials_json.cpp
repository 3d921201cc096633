#include "engine/job/materials_json.h"

#include "engine/base/number_text.h"
#include "engine/job/job_words.h"
#include "engine/job/object_writer.h"
#include "engine/job/rows_read.h"

namespace pouncemark::job {
namespace {

using material::Field;
using material::FieldRow;
using material::Holds;
using material::Item;
using material::Standing;

std::vector<std::string_view> choices_of(const FieldRow& row) {
  std::vector<std::string_view> words;
  for (std::int64_t i = 0;; ++i) {
    const std::string_view word = material::choice_word(row, i);
    if (word.empty()) return words;
    words.push_back(word);
  }
}

/// "; usual are 0.8 to 2.3 (plastics handbooks)": of a field that has a usual range.
std::string usual_text(const FieldRow& row) {
  if (row.usual_most == 0) return {};
  return "; usual are " + exact_mm_text(row.usual_least) + " to " + exact_mm_text(row.usual_most) +
         " (" + std::string(row.usual_source) + ")";
}

EnteredValue read_value(ObjectReader& item, const FieldRow& row) {
  EnteredValue value;
  if (row.holds == Holds::number) {
    item.need_number(row.key, {row.least, row.most}, &value.thousandths, usual_text(row));
  } else if (row.holds == Holds::words) {
    item.need_text(row.key, &value.words);
  } else {
    int choice = 0;
    item.need_word(row.key, choices_of(row), &choice);
    value.thousandths = choice;
  }
  return value;
}

/// Where a value comes from: {"standing":"supplier","words":"data sheet of lot 7"}.
void read_source(ObjectReader& sources, const FieldRow& row, EnteredValue* value, Fault* fault) {
  const JsonNode* node = sources.object(row.key, false);
  if (node == nullptr) return;
  ObjectReader reader(*node, sources.path_of(row.key), fault);
  std::optional<int> standing;
  reader.may_word("standing", words::kStanding, &standing);
  if (standing) value->standing = static_cast<Standing>(*standing);
  reader.may_text("words", &value->source);
  const Extras strange = reader.extras();
  if (!strange.empty()) {
    reader.refuse(ProblemCode::job_damaged, strange.front().first, "a member not known",
                  "standing or words");
  }
}

void read_item(const JsonNode& node, const std::string& path, Item item, Materials* materials,
               Fault* fault) {
  ObjectReader reader(node, path, fault);
  const JsonNode* sources = reader.object("sources", false);
  static const JsonNode kNone{JsonNode::Kind::object, false, {}, {}, {}, 0};
  ObjectReader said(sources != nullptr ? *sources : kNone, reader.path_of("sources"), fault);
  for (const FieldRow& row : material::all_fields()) {
    if (row.item != item || !reader.has(row.key)) continue;
    EnteredValue value = read_value(reader, row);
    read_source(said, row, &value, fault);
    materials->values[row.field] = std::move(value);
  }
  for (const auto& [key, unused] : said.extras()) {
    said.refuse(ProblemCode::job_damaged, key, "a source without its value", "the value beside it");
  }
  Extras extras = reader.extras();
  if (!extras.empty()) materials->extras[item] = std::move(extras);
}

JsonNode value_node(const FieldRow& row, const EnteredValue& value) {
  if (row.holds == Holds::number) return mm(value.thousandths);
  if (row.holds == Holds::words) return text(value.words);
  return text(material::choice_word(row, value.thousandths));
}

JsonNode item_node(const Materials& materials, Item item) {
  ObjectWriter out;
  ObjectWriter sources;
  for (const FieldRow& row : material::all_fields()) {
    const auto found = materials.values.find(row.field);
    if (row.item != item || found == materials.values.end()) continue;
    const EnteredValue& value = found->second;
    out.put(row.key, value_node(row, value));
    ObjectWriter said;
    if (value.standing != Standing::typed) {
      said.put("standing", word(words::kStanding, static_cast<int>(value.standing)));
    }
    if (!value.source.empty()) said.put("words", text(value.source));
    JsonNode source = said.with({});
    if (!source.members.empty()) sources.put(row.key, std::move(source));
  }
  JsonNode all = sources.with({});
  if (!all.members.empty()) out.put("sources", std::move(all));
  const auto extras = materials.extras.find(item);
  return out.with(extras == materials.extras.end() ? Extras() : extras->second);
}

constexpr std::size_t kMostTrials = 100;
constexpr Bounds kPull{0, 100'000'000};

Trial read_trial(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Trial trial;
  std::optional<int> of;
  reader.may_word("of", words::kRowsOf, &of);
  trial.of_all_rows = !of;
  if (of) trial.of = static_cast<RowsOf>(*of);
  reader.need_count("needle_size", {20, 400}, &trial.needle_size);
  reader.need_count("thread_tex", {1, 2'000}, &trial.thread_tex);
  reader.need_length("stitch_mm", kSize, &trial.stitch_um);
  reader.may_length("ten_stitches_mm", {10, 10'000'000}, &trial.ten_stitches_um);
  reader.may_length("marks_mm", {100'000, 600'000}, &trial.marks_um);
  reader.may_truth("whitens", &trial.whitens);
  reader.may_truth("cracks", &trial.cracks);
  if (reader.has("pull_n")) {
    std::int64_t pull = 0;
    reader.need_number("pull_n", kPull, &pull);
    trial.pull_n = pull;
  }
  std::optional<bool> chosen;
  reader.may_truth("chosen", &chosen);
  trial.is_chosen = chosen.value_or(false);
  reader.may_text("signed_by", &trial.signed_by);
  trial.extras = reader.extras();
  return trial;
}

bool stand_for_the_same(const Trial& one, const Trial& other) {
  return one.of_all_rows || other.of_all_rows || one.of == other.of;
}

JsonNode truth(bool is_so) {
  JsonNode node;
  node.kind = JsonNode::Kind::boolean;
  node.truth = is_so;
  return node;
}

}  // namespace

Materials read_materials(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  Materials materials;
  for (int i = 0; i < material::kItems; ++i) {
    const auto item = static_cast<Item>(i);
    const JsonNode* entry = reader.object(material::item_key(item), false);
    if (entry == nullptr) continue;
    read_item(*entry, reader.path_of(material::item_key(item)), item, &materials, fault);
  }
  materials.items_extras = reader.extras();
  return materials;
}

JsonNode materials_node(const Materials& materials) {
  ObjectWriter out;
  for (int i = 0; i < material::kItems; ++i) {
    const auto item = static_cast<Item>(i);
    JsonNode node = item_node(materials, item);
    if (!node.members.empty()) out.put(material::item_key(item), std::move(node));
  }
  return out.with(materials.items_extras);
}

void read_trials(ObjectReader& job, std::vector<Trial>* trials, Fault* fault) {
  const JsonNode* list = job.list("trials", false);
  if (list == nullptr) return;
  if (list->items.size() > kMostTrials) {
    return job.refuse(ProblemCode::job_out_of_range, "trials",
                      std::to_string(list->items.size()) + " of them", "at most 100");
  }
  for (std::size_t i = 0; i < list->items.size() && !fault->first; ++i) {
    const std::string path = "trials[" + std::to_string(i) + "]";
    Trial trial = read_trial(list->items[i], path, fault);
    for (const Trial& other : *trials) {
      if (!trial.is_chosen || !other.is_chosen || !stand_for_the_same(trial, other)) continue;
      ObjectReader(list->items[i], path, fault)
          .refuse(ProblemCode::job_damaged, "chosen", "two trials chosen for the same rows",
                  "one of them");
    }
    trials->push_back(std::move(trial));
  }
}

JsonNode trial_node(const Trial& trial) {
  ObjectWriter out;
  if (!trial.of_all_rows) out.put("of", word(words::kRowsOf, static_cast<int>(trial.of)));
  out.put("needle_size", count(trial.needle_size)).put("thread_tex", count(trial.thread_tex));
  out.put("stitch_mm", mm(trial.stitch_um));
  out.maybe("ten_stitches_mm", trial.ten_stitches_um).maybe("marks_mm", trial.marks_um);
  if (trial.whitens) out.put("whitens", truth(*trial.whitens));
  if (trial.cracks) out.put("cracks", truth(*trial.cracks));
  if (trial.pull_n) out.put("pull_n", mm(*trial.pull_n));
  if (trial.is_chosen) out.put("chosen", truth(true));
  if (!trial.signed_by.empty()) out.put("signed_by", text(trial.signed_by));
  return out.with(trial.extras);
}

ClothPlace read_cloth(const JsonNode& node, const std::string& path, Fault* fault) {
  ObjectReader reader(node, path, fault);
  ClothPlace cloth;
  reader.may_length("in_from_edge_mm", kClear, &cloth.in_from_edge_um);
  reader.may_length("in_from_end_mm", kClear, &cloth.in_from_end_um);
  reader.may_length("in_from_fly_side_mm", kClear, &cloth.in_from_fly_side_um);
  reader.may_length("hem_mm", kClear, &cloth.hem_um);
  reader.may_length("interlining_in_mm", kClear, &cloth.interlining_in_um);
  reader.may_length("adhesive_band_mm", kClear, &cloth.adhesive_band_um);
  cloth.extras = reader.extras();
  return cloth;
}

JsonNode cloth_node(const ClothPlace& cloth) {
  return ObjectWriter()
      .maybe("in_from_edge_mm", cloth.in_from_edge_um)
      .maybe("in_from_end_mm", cloth.in_from_end_um)
      .maybe("in_from_fly_side_mm", cloth.in_from_fly_side_um)
      .maybe("hem_mm", cloth.hem_um)
      .maybe("interlining_in_mm", cloth.interlining_in_um)
      .maybe("adhesive_band_mm", cloth.adhesive_band_um)
      .with(cloth.extras);
}

}  // namespace pouncemark::job

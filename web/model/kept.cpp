#include "web/model/kept.h"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "engine/base/sha256.h"

namespace pouncemark::web {
namespace {

constexpr std::string_view kName = "pouncemark-kept ";
constexpr std::string_view kVersion = "0001";
/// Hex digits of the SHA-256 over everything before them, at the record's end.
constexpr std::size_t kSealSize = 16;
constexpr std::uint32_t kMostStages = 8;

std::string seal_of(std::string_view bytes) { return sha256_hex(bytes).substr(0, kSealSize); }

/// Numbers are four bytes, the lowest first; words are their length and their bytes.
class RecordWriter {
 public:
  explicit RecordWriter(std::size_t room) {
    bytes_.reserve(room);
    bytes_.append(kName).append(kVersion);
  }
  void put(std::size_t number) {
    for (unsigned shift = 0; shift < 32; shift += 8) {
      bytes_ += static_cast<char>((number >> shift) & 0xFFu);
    }
  }
  void put(std::string_view words) {
    put(words.size());
    bytes_.append(words);
  }
  std::string sealed() {
    bytes_ += seal_of(bytes_);
    return std::move(bytes_);
  }

 private:
  std::string bytes_;
};

/// Reads the same back; once something is not there, everything is empty and is_fine() false.
class RecordReader {
 public:
  explicit RecordReader(std::string_view bytes) : rest_(bytes) {}
  std::uint32_t number() {
    std::uint32_t found = 0;
    const std::string_view bytes = next(4);
    for (std::size_t i = 0; i < bytes.size(); ++i) {
      found |= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i])) << (8 * i);
    }
    return found;
  }
  std::string words() { return std::string(next(number())); }
  bool is_fine() const { return is_fine_; }
  bool is_at_end() const { return is_fine_ && rest_.empty(); }
  std::size_t left() const { return rest_.size(); }

 private:
  std::string_view next(std::size_t size) {
    is_fine_ = is_fine_ && size <= rest_.size();
    if (!is_fine_) return {};
    const std::string_view found = rest_.substr(0, size);
    rest_.remove_prefix(size);
    return found;
  }

  std::string_view rest_;
  bool is_fine_ = true;
};

/// Of a step the text itself has one side; only how long that is needs to be written.
void put_step(RecordWriter& to, const History::Step& step, bool is_done) {
  to.put(step.action);
  to.put(step.is_another_job ? std::size_t{1} : std::size_t{0});
  to.put(step.head);
  to.put(is_done ? step.was : step.is);
  to.put(is_done ? step.is.size() : step.was.size());
}

bool read_step(RecordReader& from, bool is_done, std::size_t text_size, History::Step* step) {
  step->action = from.words();
  const std::uint32_t is_another = from.number();
  step->head = from.number();
  (is_done ? step->was : step->is) = from.words();
  const std::size_t length = from.number();
  // No text of the list is longer than all that the record holds.
  if (!from.is_fine() || is_another > 1 || length > text_size) return false;
  step->is_another_job = is_another == 1;
  (is_done ? step->is : step->was).resize(length);
  return true;
}

bool read_steps(RecordReader& from, std::size_t record_size, History::Parts* parts) {
  const std::size_t count = from.number();
  parts->at = from.number();
  constexpr std::size_t kLeastStep = 20;
  if (!from.is_fine() || count > from.left() / kLeastStep) return false;
  parts->steps.resize(count);
  for (std::size_t i = 0; i < count; ++i) {
    if (!read_step(from, i < parts->at, record_size, &parts->steps[i])) return false;
  }
  return true;
}

bool read_all(RecordReader& from, std::size_t record_size, Kept* kept) {
  KeptBeside& beside = kept->beside;
  const std::uint32_t piece = from.number();
  const std::uint32_t sleeve = from.number();
  const std::uint32_t stage = from.number();
  constexpr std::uint32_t kMostPlaces = 1'000'000;
  if (piece > kMostPlaces || sleeve > kMostPlaces || stage >= kMostStages) return false;
  // Both may be -1: the whole hanging, the whole of a piece.
  beside.place = {static_cast<int>(piece) - 1, static_cast<int>(sleeve) - 1};
  beside.stage = static_cast<int>(stage);
  beside.when = from.words();
  beside.in_file.name = from.words();
  beside.in_file.when = from.words();
  beside.in_file.checksum = from.words();
  History::Parts parts;
  parts.text = from.words();
  parts.beginning = from.words();
  parts.forgotten = from.number();
  return read_steps(from, record_size, &parts) && from.is_at_end() &&
         kept->history.take_back(std::move(parts));
}

}  // namespace

std::string record_of(const History& history, const KeptBeside& beside) {
  RecordWriter to(history.text().size() + 256 + 64 * history.steps().size());
  to.put(static_cast<std::size_t>(beside.place.piece + 1));
  to.put(static_cast<std::size_t>(beside.place.sleeve + 1));
  to.put(static_cast<std::size_t>(beside.stage));
  to.put(beside.when);
  to.put(beside.in_file.name);
  to.put(beside.in_file.when);
  to.put(beside.in_file.checksum);
  to.put(history.text());
  to.put(history.beginning());
  to.put(history.forgotten());
  to.put(history.steps().size());
  to.put(history.at());
  for (std::size_t i = 0; i < history.steps().size(); ++i) {
    put_step(to, history.steps()[i], i < history.at());
  }
  return to.sealed();
}

Kept read_record(std::string_view bytes) {
  Kept kept;
  const std::size_t head = kName.size() + kVersion.size();
  const auto refused = [&kept](const char* sentence) {
    kept = Kept{};
    kept.refusal = sentence;
    return std::move(kept);
  };
  constexpr const char* kDamaged =
      "What was kept in this browser is damaged, so nothing was brought back: open the job from "
      "your file.";
  if (bytes.size() < head + kSealSize || bytes.substr(0, kName.size()) != kName) {
    return refused(kDamaged);
  }
  const std::string_view inner = bytes.substr(0, bytes.size() - kSealSize);
  if (seal_of(inner) != bytes.substr(inner.size())) return refused(kDamaged);
  if (bytes.substr(kName.size(), kVersion.size()) != kVersion) {
    return refused(
        "What was kept in this browser comes from another version of the page, so nothing was "
        "brought back: open the job from your file.");
  }
  RecordReader from(inner.substr(head));
  return read_all(from, bytes.size(), &kept) ? std::move(kept) : refused(kDamaged);
}

}  // namespace pouncemark::web

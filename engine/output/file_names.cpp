#include "engine/output/file_names.h"

#include <set>
#include <utility>

#include "engine/sheets/full_face.h"

namespace pouncemark::output {
namespace {

constexpr std::size_t kLongestWord = 60;

/// Plain letters for U+00C0 to U+017F, Latin-1 and Latin Extended-A, in their order.
constexpr std::string_view kPlainLatin =
    "aaaaaaaceeeeiiiidnooooo-ouuuuytsaaaaaaaceeeeiiiidnooooo-ouuuuyty"
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllll"
    "lllnnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs";
static_assert(kPlainLatin.size() == 0x180 - 0xC0);

/// The plain letter of the two-byte sign at `at`; a dash for any other sign.
char plain_letter(std::string_view name, std::size_t at) {
  const auto first = static_cast<unsigned char>(name[at]);
  if (first < 0xc3 || first > 0xc5 || at + 1 >= name.size()) return '-';
  const unsigned second = static_cast<unsigned char>(name[at + 1]) & 0x3fu;
  return kPlainLatin[((first & 0x1fu) << 6 | second) - 0xC0];
}

char plain_sign(std::string_view name, std::size_t at) {
  const char c = name[at];
  if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) return c;
  if (c >= 'A' && c <= 'Z') return static_cast<char>(c - 'A' + 'a');
  return static_cast<unsigned char>(c) < 0x80 ? '-' : plain_letter(name, at);
}

bool continues_a_sign(char c) { return (static_cast<unsigned char>(c) & 0xc0) == 0x80; }

}  // namespace

std::string file_word(std::string_view name) {
  std::string word;
  for (std::size_t at = 0; at < name.size(); ++at) {
    if (continues_a_sign(name[at])) continue;
    const char plain = plain_sign(name, at);
    if (plain != '-' || (!word.empty() && word.back() != '-')) word += plain;
  }
  if (word.size() > kLongestWord) word.resize(kLongestWord);
  while (!word.empty() && word.back() == '-') word.pop_back();
  return word.empty() ? "job" : word;
}

std::string piece_word(const solve::Piece& piece) { return file_word(sheets::spoken_name(piece)); }

std::vector<std::string> piece_words(const solve::Results& results) {
  std::set<std::string> used;
  std::vector<std::string> words;
  for (const solve::Piece& piece : results.pieces) {
    const std::string plain = piece_word(piece);
    std::string word = plain;
    for (int times = 2; !used.insert(word).second; ++times) {
      word = plain + "-" + std::to_string(times);
    }
    words.push_back(std::move(word));
  }
  return words;
}

}  // namespace pouncemark::output

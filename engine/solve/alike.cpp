#include "engine/solve/alike.h"

#include <algorithm>
#include <string>
#include <utility>

#include "engine/base/number_text.h"

namespace pouncemark::solve {
namespace {

/// One finding and where else it holds: the pieces' codes, and what their places say after them.
struct Alike {
  Finding finding;
  bool is_of_sections = false;
  int last_piece = -1;
  std::vector<std::string> places{};
  std::vector<std::string> codes{};
  std::vector<std::string> after{};
};

/// Each code is a count, one more than the code before it.
bool follow_one_another(const std::vector<std::string>& codes) {
  int number = 0;
  for (const char sign : codes[0]) {
    if (sign < '0' || sign > '9' || number > 1000000) return false;
    number = number * 10 + (sign - '0');
  }
  for (const std::string& code : codes) {
    if (code != std::to_string(number)) return false;
    number += 1;
  }
  return true;
}

std::string listed(const std::vector<std::string>& codes) {
  if (codes.size() > 2 && follow_one_another(codes)) return codes.front() + " to " + codes.back();
  std::string words = codes[0];
  for (std::size_t i = 1; i < codes.size(); ++i) {
    words += (i + 1 == codes.size() ? " and " : ", ") + codes[i];
  }
  return words;
}

std::string place_of(const Alike& alike) {
  if (alike.places.size() == 1) return alike.places[0];
  const std::string& after = alike.after[0];
  const bool says_the_same =
      std::all_of(alike.after.begin(), alike.after.end(),
                  [&after](const std::string& other) { return other == after; });
  if (says_the_same && !after.empty()) {
    const std::string kind = alike.is_of_sections ? "sections " : "panels ";
    return kind + listed(alike.codes) + after + " each";
  }
  std::string words;
  for (const std::string& place : alike.places) words += (words.empty() ? "" : "; ") + place;
  return words;
}

bool says_the_same(const Finding& a, const Finding& b) {
  return a.code == b.code && a.severity == b.severity && a.sentence == b.sentence &&
         a.change == b.change && a.sum == b.sum;
}

void add_place(const Results& results, const Finding& finding, Alike* alike) {
  alike->places.push_back(finding.place);
  if (finding.piece < 0) return;
  alike->last_piece = finding.piece;
  const Piece& piece = results.pieces[static_cast<std::size_t>(finding.piece)];
  const std::string before =
      (piece.kind == PieceKind::section ? "section " : "panel ") + piece.code;
  const bool begins_so = finding.place.rfind(before + ", ", 0) == 0;
  alike->codes.push_back(piece.code);
  alike->after.push_back(begins_so ? finding.place.substr(before.size()) : std::string());
}

}  // namespace

std::vector<Finding> alike_as_one(const Results& results) {
  std::vector<Alike> kept;
  for (const Finding& finding : results.findings) {
    const bool is_of_sections =
        finding.piece >= 0 &&
        results.pieces[static_cast<std::size_t>(finding.piece)].kind == PieceKind::section;
    const auto is_its_like = [&](const Alike& alike) {
      return finding.piece >= 0 && alike.last_piece >= 0 && finding.piece != alike.last_piece &&
             alike.is_of_sections == is_of_sections && says_the_same(alike.finding, finding);
    };
    auto like = std::find_if(kept.begin(), kept.end(), is_its_like);
    if (like == kept.end()) {
      kept.push_back(Alike{finding, is_of_sections});
      like = kept.end() - 1;
    }
    add_place(results, finding, &*like);
  }
  std::vector<Finding> findings;
  for (Alike& alike : kept) {
    alike.finding.place = place_of(alike);
    findings.push_back(std::move(alike.finding));
  }
  return findings;
}

}  // namespace pouncemark::solve

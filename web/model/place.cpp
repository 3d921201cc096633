#include "web/model/place.h"

#include <algorithm>
#include <cstddef>

namespace pouncemark::web {
namespace {

int count_of(const std::vector<solve::Piece>& pieces) { return static_cast<int>(pieces.size()); }

const solve::Piece* piece_at(const solve::Results& results, Place place) {
  if (place.piece < 0 || place.piece >= count_of(results.pieces)) return nullptr;
  return &results.pieces[static_cast<std::size_t>(place.piece)];
}

}  // namespace

bool is_whole_hanging(Place place) { return place.piece < 0; }

Place first_look(const solve::Results& results, int piece) {
  const solve::Piece* found = piece_at(results, Place{piece, -1});
  if (found == nullptr) return Place{};
  return Place{piece, found->sleeves.size() == 1 ? 0 : -1};
}

Place held_within(const solve::Results& results, Place place) {
  if (results.pieces.empty()) return Place{};
  if (is_whole_hanging(place)) {
    return count_of(results.pieces) > 1 ? kWholeHanging : first_look(results, 0);
  }
  Place held = place;
  held.piece = std::clamp(place.piece, 0, count_of(results.pieces) - 1);
  const int sleeves = static_cast<int>(piece_at(results, held)->sleeves.size());
  held.sleeve = std::clamp(place.sleeve, -1, sleeves - 1);
  if (sleeves == 1) held.sleeve = 0;
  return held;
}

Place followed(const solve::Results& was, const solve::Results& now, Place place) {
  const solve::Piece* piece = piece_at(was, place);
  Place held = held_within(now, place);
  for (int i = 0; piece != nullptr && i < count_of(now.pieces); ++i) {
    const solve::Piece& other = now.pieces[static_cast<std::size_t>(i)];
    if (other.code != piece->code || other.kind != piece->kind) continue;
    held = held_within(now, {i, place.sleeve});
    break;
  }
  const int number = number_at(was, place);
  if (number < 0 || held.sleeve < 0) return held;
  const auto& sleeves = now.pieces[static_cast<std::size_t>(held.piece)].sleeves;
  const auto found =
      std::find_if(sleeves.begin(), sleeves.end(),
                   [number](const solve::Sleeve& sleeve) { return sleeve.number >= number; });
  const auto index = static_cast<int>(found - sleeves.begin());
  return held_within(now, Place{held.piece, index});
}

const solve::Sleeve* sleeve_at(const solve::Results& results, Place place) {
  const solve::Piece* piece = piece_at(results, place);
  if (piece == nullptr || place.sleeve < 0) return nullptr;
  const auto index = static_cast<std::size_t>(place.sleeve);
  return index < piece->sleeves.size() ? &piece->sleeves[index] : nullptr;
}

int number_at(const solve::Results& results, Place place) {
  const solve::Sleeve* sleeve = sleeve_at(results, place);
  return sleeve == nullptr ? -1 : sleeve->number;
}

bool is_same_thing(const solve::Results& was, const solve::Results& now, Place place) {
  if (!(held_within(was, place) == place) || number_at(was, place) != number_at(now, place)) {
    return false;
  }
  const solve::Piece* one = piece_at(was, place);
  const solve::Piece* other = piece_at(now, place);
  return one == nullptr || other == nullptr || one->code == other->code;
}

std::vector<Place> all_places(const solve::Results& results) {
  std::vector<Place> places;
  if (results.pieces.size() > 1) places.push_back(kWholeHanging);
  for (int piece = 0; piece < count_of(results.pieces); ++piece) {
    const auto sleeves =
        static_cast<int>(results.pieces[static_cast<std::size_t>(piece)].sleeves.size());
    if (sleeves != 1) places.push_back(Place{piece, -1});
    for (int sleeve = 0; sleeve < sleeves; ++sleeve) places.push_back(Place{piece, sleeve});
  }
  return places;
}

const job::Section* section_at(const job::Job& job, const solve::Results& results, Place place) {
  const solve::Piece* piece = piece_at(results, place);
  if (piece == nullptr || piece->kind != solve::PieceKind::section) return nullptr;
  return &job.sections[static_cast<std::size_t>(piece->entry)];
}

const job::Panel* panel_at(const job::Job& job, const solve::Results& results, Place place) {
  const solve::Piece* piece = piece_at(results, place);
  if (piece == nullptr || piece->kind != solve::PieceKind::panel) return nullptr;
  return &job.panels[static_cast<std::size_t>(piece->entry)];
}

std::vector<const solve::Row*> rows_at(const solve::Results& results, Place place,
                                       solve::RowKind kind) {
  std::vector<const solve::Row*> rows;
  const solve::Piece* piece = piece_at(results, place);
  if (piece == nullptr) return rows;
  for (int i = piece->first_row; i < piece->first_row + piece->row_count; ++i) {
    const solve::Row& row = results.rows[static_cast<std::size_t>(i)];
    if (row.kind != kind) continue;
    const bool on_sleeve = row.place == solve::RowPlace::side && row.sleeve == place.sleeve;
    if (place.sleeve < 0 || on_sleeve) rows.push_back(&row);
  }
  return rows;
}

}  // namespace pouncemark::web

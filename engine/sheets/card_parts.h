#pragma once

#include <string>

#include "engine/drawing/drawing.h"
#include "engine/plan/seam_card.h"
#include "engine/sheets/card_base.h"

/// Inside of the seam cards: how one is drawn. Only sheets' own files include this.
namespace pouncemark::sheets {

/// The row as it lies: edges, staples, stitches, start, stop, which way it is sewn.
void add_row_picture(const plan::CardRow& row, bool has_staples, const CardRoom& room,
                     drawing::Drawing* picture);

/// One whole card.
void add_seam_card(const plan::SeamCard& card, const std::string& checksum, const CardRoom& room,
                   drawing::Drawing* picture);

}  // namespace pouncemark::sheets

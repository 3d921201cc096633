#pragma once

/// The palette by role, and the measures that every part of the bench keeps to. Nothing else on
/// screen has a colour. A colour is A B G R in one number, as Dear ImGui takes it.
namespace pouncemark::web {

using Colour = unsigned;

/// A colour written as R G B.
constexpr Colour rgb(unsigned red_green_blue) {
  return 0xFF000000u | ((red_green_blue & 0xFFu) << 16) | (red_green_blue & 0xFF00u) |
         ((red_green_blue >> 16) & 0xFFu);
}

inline constexpr Colour kBench = rgb(0xEDE4D3);      ///< brown paper, the ground
inline constexpr Colour kFold = rgb(0xD8C7A6);       ///< stage row, bottom bar, paper edge
inline constexpr Colour kMat = rgb(0xF7F2E8);        ///< ground under a close-up
inline constexpr Colour kPaper = rgb(0xFFFDF8);      ///< slips, buttons, boxes
inline constexpr Colour kSheet = rgb(0xF0F6F5);      ///< clear sheet
inline constexpr Colour kSheetEdge = rgb(0x48646A);  ///< its outline
inline constexpr Colour kLap = rgb(0xD3E2E2);        ///< two sheets over one another
inline constexpr Colour kCloth = rgb(0xD3DABB);
inline constexpr Colour kWeave = rgb(0x96A070);
inline constexpr Colour kInk = rgb(0x211A11);   ///< text, main buttons
inline constexpr Colour kSoft = rgb(0x453A2B);  ///< second-rank text, borders of plain buttons
inline constexpr Colour kPale = rgb(0x8C7B5E);  ///< rules between lines
inline constexpr Colour kPen = rgb(0x004E54);   ///< in the hand, just changed, chosen
inline constexpr Colour kThread = rgb(0x7E2A09);
inline constexpr Colour kSteel = rgb(0xC9CFD0);
inline constexpr Colour kEngraving = rgb(0x2A3236);
inline constexpr Colour kStaple = rgb(0x2B3337);
inline constexpr Colour kStop = rgb(0x8E0C1A);
inline constexpr Colour kWarn = rgb(0x603B00);
inline constexpr Colour kWarnWash = rgb(0xF7DC9A);
inline constexpr Colour kNote = rgb(0x2B2418);
inline constexpr Colour kWhite = rgb(0xFFFFFF);

inline constexpr float kCorner = 4;     ///< of buttons and boxes
inline constexpr float kPaperEdge = 3;  ///< the hard edge under a slip
inline constexpr float kPageEdge = 24;  ///< left and right of everything

}  // namespace pouncemark::web

#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "engine/drawing/drawing.h"
#include "engine/sheets/paper.h"
#include "engine/writers/pdf.h"

namespace pouncemark::tests {

/// A PDF of `count` pages by Cairo, the pictures over and over: the same strokes, fills, clips and
/// runs of text as our own writer is given, in the same faces. Empty when Cairo reports a fault.
std::string cairo_pages(const std::vector<drawing::Drawing>& pictures, std::size_t count,
                        const sheets::Paper& paper, const writers::Faces& faces);

}  // namespace pouncemark::tests

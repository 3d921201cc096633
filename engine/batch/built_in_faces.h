#pragma once

#include "engine/writers/pdf.h"

namespace pouncemark::batch {

/// The three cut faces, built into the program. The bytes live as long as the program.
writers::Faces built_in_faces();

}  // namespace pouncemark::batch

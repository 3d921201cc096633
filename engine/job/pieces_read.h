#pragma once

#include <string>

#include "engine/job/job.h"
#include "engine/job/object_reader.h"

/// Inside of reading a job: a section and a panel with everything that must agree within them.
namespace pouncemark::job {

/// The first fault is kept, the result is then not to be used.
Section read_section(const JsonNode& node, const std::string& path, Fault* fault);
Panel read_panel(const JsonNode& node, const std::string& path, Fault* fault);

}  // namespace pouncemark::job

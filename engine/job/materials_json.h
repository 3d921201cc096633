#pragma once

#include <string>
#include <vector>

#include "engine/job/job.h"
#include "engine/job/object_reader.h"

/// Inside of reading and writing a job: materials, trial seams, and where the cloth lies.
namespace pouncemark::job {

Materials read_materials(const JsonNode& node, const std::string& path, Fault* fault);
JsonNode materials_node(const Materials& materials);

/// The list `trials` of the job, which may be left out. Two chosen for the same rows are refused.
void read_trials(ObjectReader& job, std::vector<Trial>* trials, Fault* fault);
JsonNode trial_node(const Trial& trial);

ClothPlace read_cloth(const JsonNode& node, const std::string& path, Fault* fault);
JsonNode cloth_node(const ClothPlace& cloth);

}  // namespace pouncemark::job

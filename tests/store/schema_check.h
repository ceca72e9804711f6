// assets/schema/project.schema.json, judged by valijson: a reader of JSON Schema that is not ours.
#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace wallwright::store {

const nlohmann::json& schema_text();

/// Empty for a valid file; otherwise where it breaks the schema.
std::string breach(const nlohmann::json& file);

}  // namespace wallwright::store

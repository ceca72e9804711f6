// What --json prints: one function a kind of thing, keys with their units.
#pragma once

#include "rules/assess.h"

#include <nlohmann/json.hpp>

namespace wallwright::cli {

using Json = nlohmann::ordered_json;

/// A length or mass without the noise of binary fractions: to 0.001.
Json number(double value);

Json json_of(const wall::Finding& finding);
Json json_of(const wall::Project& project, const spacing::Group& group);
Json json_of(const hanging::Hanging& hanging);
Json json_of(const hanging::Mark& mark);

/// How many there are of each severity: "stop", "mind", "note".
Json json_of_counts(const std::vector<wall::Finding>& findings);

template <class T>
Json json_of(const std::vector<T>& all) {
    Json list = Json::array();
    for (const T& one : all)
        list.push_back(json_of(one));
    return list;
}

/// Two spaces, a line end; text that is not UTF-8 is replaced, never thrown over.
std::string text_of(const Json& json);

}  // namespace wallwright::cli

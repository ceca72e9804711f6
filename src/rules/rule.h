// What a rule is, and the table of all of them.
#pragma once

#include "rules/scene.h"

#include <span>
#include <string_view>
#include <vector>

namespace wallwright::rules {

struct Rule {
    std::string_view name;    ///< In kebab case, as in findings: "gaps-even".
    std::string_view asks;    ///< One line: what it wants.
    std::string_view source;  ///< Why: the source of the practice, or that there is none.
    /// Adds a finding for each breach; assess() puts the rule's name to it.
    void (*check)(const Scene&, std::vector<wall::Finding>&);
};

/// Every rule, once, safety first.
std::span<const Rule> all_rules();

}  // namespace wallwright::rules

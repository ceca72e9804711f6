#include "rules/rule.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cctype>
#include <set>

using namespace wallwright;
using namespace wallwright::rules;

TEST_CASE("Every rule says what it asks and where that comes from") {
    for (const Rule& rule : all_rules()) {
        INFO(rule.name);
        CHECK_FALSE(rule.asks.empty());
        CHECK_FALSE(rule.source.empty());
        CHECK(rule.check != nullptr);
    }
}

TEST_CASE("Rules have names of their own in kebab case") {
    std::set<std::string_view> names;
    for (const Rule& rule : all_rules()) {
        INFO(rule.name);
        CHECK(names.insert(rule.name).second);
        CHECK(std::ranges::all_of(
            rule.name, [](unsigned char c) { return std::islower(c) != 0 || c == '-'; }));
    }
}

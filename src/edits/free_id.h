// Ids for what is added.
#pragma once

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

namespace wallwright::edits {

template <class T>
bool has_id(const std::vector<T>& all, const std::string& id) {
    return std::any_of(all.begin(), all.end(), [&id](const T& one) { return one.id.text == id; });
}

/// `wanted`, or with the first number from 2 that `taken` does not know.
template <class Taken>
std::string free_id(const std::string& wanted, Taken taken) {
    std::string id = wanted;
    for (int number = 2; taken(id); ++number)
        id = fmt::format("{}-{}", wanted, number);
    return id;
}

/// Adds it under the id `wanted`, with a number where that is taken. The reference is good until
/// the next is added.
template <class T>
T& add_with_id(std::vector<T>& all, T one, const std::string& wanted) {
    one.id = {free_id(wanted, [&all](const std::string& id) { return has_id(all, id); })};
    all.push_back(std::move(one));
    return all.back();
}

}  // namespace wallwright::edits

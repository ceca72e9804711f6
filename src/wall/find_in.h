// Finding by its id one of several.
#pragma once

#include <algorithm>
#include <type_traits>
#include <vector>

namespace wallwright::wall {

/// Null where there is none; for immediate use. As constant as the list is.
template <class T>
T* find_in(std::vector<T>& all, const std::type_identity_t<decltype(T::id)>& id) {
    const auto found = std::ranges::find(all, id, &T::id);
    return found == all.end() ? nullptr : &*found;
}
template <class T>
const T* find_in(const std::vector<T>& all, const std::type_identity_t<decltype(T::id)>& id) {
    const auto found = std::ranges::find(all, id, &T::id);
    return found == all.end() ? nullptr : &*found;
}

}  // namespace wallwright::wall

// A change that the caller writes out.
#pragma once

#include "base/contract.h"

#include <functional>

namespace wallwright::edits {

/// Its id is what others know it by, so it stays.
template <class T>
void change_by_hand(T& one, const std::function<void(T&)>& change) {
    const auto id = one.id;
    change(one);
    WW_EXPECT(one.id == id, "a change by hand leaves the id alone");
}

}  // namespace wallwright::edits

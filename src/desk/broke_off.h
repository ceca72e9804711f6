// What the person is told when slow work could not go on.
#pragma once

#include "desk/session.h"

#include <fmt/format.h>

#include <string>
#include <string_view>

namespace wallwright::desk {

/// `work` is as in "The search for layouts", `why` what it threw: memory that there is not, say.
inline Notice broke_off(std::string_view work, const std::string& why) {
    return {true, fmt::format("{} broke off ({}). The wall is as it was; save it and try again.",
                              work, why)};
}

}  // namespace wallwright::desk

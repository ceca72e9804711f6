// What the app can do about a finding by itself.
#pragma once

#include "desk/session.h"

#include <optional>
#include <string>

namespace wallwright::desk {

struct Fix {
    std::string label;  ///< On the button and in the history: "Even the gaps".
    Result<wall::Project> project;
};

/// Empty when only the person can mend it. The fixed project has fewer findings of that rule, none
/// about those pieces, and no stop that was not there; of several ways the one that leaves the
/// fewest stops and minds. It starts from kept(). Each way is tried and assessed, so ask when the
/// project has changed and not at every frame.
std::optional<Fix> fix_for(const Session& session, const wall::Finding& finding);

}  // namespace wallwright::desk

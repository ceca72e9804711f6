// Mounts as text and as JSON.
#pragma once

#include "cli/json_out.h"
#include "mounts/design/mount_design.h"
#include "mounts/design/remarks.h"

#include <string>
#include <vector>

namespace wallwright::cli {

/// A mount worked out, and whose it is.
struct MadeMount {
    std::string piece;  ///< Id; empty for a mount without a project.
    std::string title;
    mounts::MountDesign design;
    std::vector<mounts::Remark> remarks;
};

/// What to cut, on the back, in which order, and what to mind; as marked with a rule of the unit.
std::string mount_text(const MadeMount& made, units::LengthUnit unit);

Json json_of(const MadeMount& made);
/// Of all of them, each with its piece.
Json json_of_remarks(const std::vector<MadeMount>& all);

}  // namespace wallwright::cli

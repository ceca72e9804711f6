#include "mounts/card/still_to_cut.h"

#include "mounts/design/remarks.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::mounts {

std::optional<std::string> why_not_cut(const wall::Project& project, const wall::Piece& piece) {
    const std::string& title = title_of(piece);
    if (!piece.mount)
        return fmt::format("{} has no mount to cut.", title);
    const auto design = design_of(project, piece);
    if (!design)
        return fmt::format(
            "The mount of {} is left out. A window of it has no print; put one in, so that its "
            "size is known.",
            title);
    for (const Remark& remark : remarks_on(*design, *find(project, *piece.mount), project.unit))
        if (remark.severity == wall::Severity::stop)
            return fmt::format("The mount of {} is left out. {}", title, remark.text);
    return std::nullopt;
}

}  // namespace wallwright::mounts

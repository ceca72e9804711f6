// What the wall says about itself: one finding, the same in the app, on the command line and on
// paper.
#pragma once

#include "wall/ids.h"
#include "wall/names.h"
#include "wall/room.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::wall {

/// stop: unsafe or impossible; mind: outside usual practice; note: worth knowing.
enum class Severity { stop, mind, note };
template <>
struct Names<Severity> {
    static constexpr std::string_view values[] = {"stop", "mind", "note"};
};

struct Finding {
    std::string rule;  ///< The rule's name, as in rules/rule.h.
    Severity severity = Severity::note;
    std::vector<PieceId> pieces;  ///< Whom it is about; empty when it is about the whole wall.
    std::optional<double> measured;
    std::optional<double> wanted;  ///< The bound that `measured` passed.
    std::string unit;              ///< Of both: "mm", "kg", "N", "deg", or empty for a ratio.
    Rect<Wall> place;              ///< Where to look.
    std::string
        text;  ///< One sentence with the numbers in the person's unit, and what would mend it.
    bool operator==(const Finding&) const = default;
};

/// True when any finding is a `stop`.
bool has_stop(const std::vector<Finding>& findings);

}  // namespace wallwright::wall

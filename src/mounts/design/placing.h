// One direction of a mount: where its windows lie between two edges of the blank.
#pragma once

#include <optional>
#include <vector>

namespace wallwright::mounts {

/// How what is left of the blank is split into the border before a window (left, top) and the one
/// after it (right, bottom). Without any of the three it is halved.
struct BorderRule {
    std::optional<double> start;  ///< mm, the border before it as placed by hand.
    std::optional<double> ratio;  ///< Border after it over border before it, as cut.
    double extra = 0;             ///< mm by which the border after it is wider.

    /// The border before the window where both together are `free`, which may be negative.
    [[nodiscard]] double first(double free) const;
    /// The least that both together must be so that each that this rule moves is `least` or more.
    /// Where one is placed by hand, as if the window were in the middle: moving it changes neither
    /// its size nor the frame it needs.
    [[nodiscard]] double free_for(double least) const;
};

/// in_line: one after the other with even bars; abreast: all on the middle of one block; apart:
/// each placed for itself.
enum class Lie { in_line, abreast, apart };

/// Lengths in mm along one direction.
struct AxisTask {
    double length = 0;        ///< Of the blank.
    double border_least = 0;  ///< As cut.
    std::vector<BorderRule>
        rules;  ///< One for the block; one for each window where they lie apart.
    std::vector<double> prints;
    double overlap = 0;       ///< As wanted, on each side.
    double overlap_most = 0;  ///< To which it may grow where a border would be too thin.
    double reveals = 0;       ///< Of all under-layers: the top window is larger by it on each side.
    double bar = 0;           ///< Between two windows in line.
    Lie lie = Lie::abreast;
};

struct Span {
    double start = 0;
    double length = 0;
};

struct AxisPlan {
    std::vector<Span> windows;     ///< Of the top layer, at its face.
    std::vector<double> overlaps;  ///< Of each print.
    double wanted_length = 0;      ///< The least blank that keeps borders and overlap as wanted.
    double least_length = 0;       ///< The same with the most overlap.
    bool serves = true;            ///< The borders are kept, if need be by more overlap.
};

/// Windows in line share the growth of the overlap evenly; all others grow it each for itself.
/// Where even overlap_most is not enough, it is used and the plan does not serve.
AxisPlan plan_axis(const AxisTask& task);

}  // namespace wallwright::mounts

// How a print would sit in a frame, and what speaks against it.
#pragma once

#include "mounts/match/assignment.h"
#include "mounts/window.h"

#include <array>
#include <optional>
#include <string_view>

namespace wallwright::mounts {

/// What a pair of print and frame is charged for.
enum class Flaw {
    uneven,  ///< mm between the border at the sides and the one above; a wider base is no flaw.
    thin,    ///< mm by which the narrowest border seen is under the mount's border_least.
    crop,    ///< mm by which the overlap grew beyond the usual, in the direction it grew most.
    wide,    ///< mm by which even the narrowest border is wider than such a picture needs.
    colour,  ///< Mean distance of frame and mount to the print's colour (wall/lab.h).
};

struct FlawCost {
    Flaw flaw = Flaw::uneven;
    double measured = 0;
    Cost cost = 0;  ///< In 0.01 points.
    bool operator==(const FlawCost&) const = default;
};

/// Points for each unit of what is measured; our choice. A mm of the picture lost is worse than a
/// mm of unevenness and better than a border too thin; colour decides between frames that are
/// else alike.
constexpr double points_for(Flaw flaw) {
    constexpr double kPoints[] = {1, 4, 3, 0.5, 0.05};
    return kPoints[static_cast<std::size_t>(flaw)];
}

/// The widest border that such a picture needs, mm: 3 in, and beyond 10 in of the picture's longer
/// side a quarter of what is more. An art teacher's rule ("Matting", mmresourcecenter.org) gives 3
/// in at the sides of 8 x 10 in and 4 in at those of 11 x 14 in.
double border_most(geometry::Size print);

struct Fitting {
    bool turned = false;   ///< The frame hangs a quarter turn from how it is recorded.
    bool mounted = false;  ///< Behind a mount; otherwise the print fills the frame.
    Borders seen;          ///< Of the mount, mm.
    std::array<FlawCost, 5> flaws{{{Flaw::uneven},
                                   {Flaw::thin},
                                   {Flaw::crop},
                                   {Flaw::wide},
                                   {Flaw::colour}}};  ///< One of each, in the order of Flaw.

    [[nodiscard]] const FlawCost& of(Flaw flaw) const {
        return flaws[static_cast<std::size_t>(flaw)];
    }
    [[nodiscard]] Cost cost() const;
    bool operator==(const Fitting&) const = default;
};

/// What a print would go into.
struct Holder {
    wall::Frame frame;
    wall::Mount mount;     ///< As one would be cut; where its window is by hand does not count.
    bool turned = false;   ///< How the frame hangs today.
    bool may_turn = true;  ///< Turning it a quarter costs nothing.
};

/// The cheapest way, of equal ones that without turning the frame. Empty where there is none: the
/// sheet is larger than the frame takes, or does not fill it and even with the most overlap leaves
/// less than 3 mm of a mount in sight.
std::optional<Fitting> best_fitting(const Holder& holder, const wall::Print& print);

}  // namespace wallwright::mounts

template <>
struct wallwright::wall::Names<wallwright::mounts::Flaw> {
    static constexpr std::string_view values[] = {"uneven", "thin", "crop", "wide", "colour"};
};

#include "arrange/standard_frames.h"

#include "edits/edit.h"
#include "mounts/window.h"
#include "units/length.h"

#include <algorithm>
#include <cmath>

namespace wallwright::arrange {

namespace {

using wall::NamedSize;
using wall::Size;

bool is_in_quarter_inches(double mm) {
    const double quarters = 4 * mm / units::kMmPerInch;
    return std::abs(quarters - std::round(quarters)) < 0.01;
}

bool is_in_inches(Size size) {
    return is_in_quarter_inches(size.width) && is_in_quarter_inches(size.height);
}

Size upright(Size size) {
    return size.width <= size.height ? size : size.turned();
}

bool nearly_equal(Size a, Size b) {
    constexpr double kNear = 6;  // mm; no one sees it on a wall (our choice)
    return std::abs(a.width - b.width) <= kNear && std::abs(a.height - b.height) <= kNear;
}

/// Its outside is the sheet, the clearance in the rebate, and both mouldings without their lips.
wall::Frame frame_for(Size sheet) {
    const auto around = [sheet](const wall::Frame& frame) {
        const double more =
            2 * (frame.moulding_width - frame.rebate_width) + mounts::kRebateClearance;
        return Size{sheet.width + more, sheet.height + more};
    };
    wall::Frame frame = edits::usual_frame(around(wall::Frame{}));
    frame.outside = around(frame);
    return frame;
}

/// The person's own first, then those of their units, then the rest.
std::vector<StandardFrame> by_preference(const wall::Project& project,
                                         const wall::Catalogue& catalogue) {
    const bool inches = project.unit == units::LengthUnit::inch;
    std::vector<StandardFrame> frames;
    const auto add = [&frames](const NamedSize& one, bool at_home) {
        frames.push_back({one.name, frame_for(upright(one.size)), at_home});
    };
    for (const NamedSize& one : project.own.sizes)
        add(one, true);
    for (const bool at_home : {true, false})
        for (const NamedSize& one : catalogue.sizes)
            if ((is_in_inches(one.size) == inches) == at_home)
                add(one, at_home);
    return frames;
}

}  // namespace

std::vector<StandardFrame> standard_frames(const wall::Project& project,
                                           const wall::Catalogue& catalogue) {
    std::vector<StandardFrame> kept;
    for (const StandardFrame& one : by_preference(project, catalogue)) {
        const auto is_same = [&one](const StandardFrame& other) {
            return other.size_name == one.size_name ||
                   nearly_equal(other.frame.outside, one.frame.outside);
        };
        if (std::ranges::none_of(kept, is_same))
            kept.push_back(one);
    }
    return kept;
}

}  // namespace wallwright::arrange

// How the person wants their walls hung. Every default is the trade's practice, with its source in
// style_fields().
#pragma once

#include "wall/unknown.h"

#include <span>
#include <string_view>

namespace wallwright::wall {

struct HangingStyle {
    double gap = 60;
    double gap_least = 40;
    double gap_most = 75;
    double gap_tolerance = 2;
    double centre_height = 1500;
    double centre_tolerance = 50;
    double clearance_least = 150;
    double clearance_most = 255;
    double width_share_least = 0.60;
    double width_share_most = 0.75;
    double align_within = 15;
    double strip_margin = 1.5;
    double strip_total_most = 7;
    double fixing_margin = 2;
    double cord_margin = 4;
    double bed_mass_most = 0.5;
    double heat_above = 600;
    double breaking_margin = 4;
    double weak_wall_share = 0.5;
    double dry_days = 7;
    double level_error = 0.5;
    double ruler_step = 0;
    UnknownKeys unknown = {};
    bool operator==(const HangingStyle&) const = default;
};

/// One line of the style: how it is written in the file, what it means, where its default comes
/// from.
struct StyleField {
    std::string_view key;  ///< Ends in its unit: "gap_mm".
    double HangingStyle::*value;
    double least;  ///< Smallest and largest value that make sense; a file outside them is refused.
    double most;
    std::string_view meaning;
    std::string_view source;
    bool joined_later = false;  ///< Files leave it out where it has its usual value.
};

/// Every field of HangingStyle, once, in the order of the file.
std::span<const StyleField> style_fields();

}  // namespace wallwright::wall

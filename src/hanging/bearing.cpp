#include "hanging/bearing.h"

#include "base/contract.h"
#include "hanging/hanger_fit.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Size;
using wall::Hanger;
using wall::HangerType;

constexpr double kRingDepthShare = 0.25;
constexpr double kRingSpacingShare = 0.8;
constexpr double kSawtoothDepth = 15;  ///< mm
constexpr double kRestDepth = 50;      ///< mm from the frame's top to a taut cord.
constexpr double kHookSpacingShare = 1.0 / 3;

bool has_cord(HangerType type) {
    return type == HangerType::cord_one_hook || type == HangerType::cord_two_hooks;
}

/// The cord that comes to rest kRestDepth under the top, or half way up from the rings where that
/// is less.
double usual_cord(double ring_drop, double ring_spacing, double hook_spacing) {
    const double rise = std::max(ring_drop - kRestDepth, ring_drop / 2);
    return hook_spacing + std::hypot(ring_spacing - hook_spacing, 2 * rise);
}

template <class T>
void fill(std::optional<T>& measure, T usual) {
    measure = measure.value_or(usual);
}

Result<Cord> cord_of(const Hanger& hanger, units::Newtons weight) {
    if (hanger.type == HangerType::cord_one_hook)
        return over_one_hook(*hanger.ring_spacing, *hanger.cord_length, weight);
    return over_two_hooks(*hanger.ring_spacing, *hanger.hook_spacing, *hanger.cord_length, weight);
}

/// Two points as far apart as `spacing`, about the middle of the piece.
std::vector<BackPoint> pair_about_middle(Size outside, double spacing, double down) {
    return {{(outside.width - spacing) / 2, down}, {(outside.width + spacing) / 2, down}};
}

Result<Bearing> bearing_of_cord(const Hanger& hanger, Size outside, units::Newtons weight) {
    const Result<Cord> cord = cord_of(hanger, weight);
    if (!cord)
        return fail(cord.error());
    const double down = *hanger.drop - cord->drop;
    if (hanger.type == HangerType::cord_one_hook)
        return Bearing{{{outside.width / 2, down}}, *cord};
    return Bearing{pair_about_middle(outside, *hanger.hook_spacing, down), *cord};
}

}  // namespace

Hanger complete(const Hanger& hanger, Size outside) {
    Hanger whole = hanger;
    if (hanger.type == HangerType::strips)
        return whole;
    const double quarter = kRingDepthShare * outside.height;
    if (hanger.type == HangerType::sawtooth) {
        fill(whole.drop, std::min(kSawtoothDepth, quarter));
        return whole;
    }
    fill(whole.drop, quarter);
    fill(whole.ring_spacing, kRingSpacingShare * outside.width);
    if (hanger.type == HangerType::cord_two_hooks)
        fill(whole.hook_spacing, kHookSpacingShare * *whole.ring_spacing);
    if (has_cord(hanger.type))
        fill(whole.cord_length,
             usual_cord(*whole.drop, *whole.ring_spacing,
                        hanger.type == HangerType::cord_two_hooks ? *whole.hook_spacing : 0));
    return whole;
}

bool is_measured(const Hanger& hanger) {
    switch (hanger.type) {
        case HangerType::strips:
            return true;
        case HangerType::sawtooth:
            return hanger.drop.has_value();
        case HangerType::two_rings:
        case HangerType::keyholes:
            return hanger.drop && hanger.ring_spacing;
        case HangerType::cord_one_hook:
        case HangerType::cord_two_hooks:
            break;
    }
    return hanger.drop && hanger.ring_spacing && hanger.cord_length;
}

Result<Bearing> bearing_of(const Hanger& complete_hanger, Size outside, units::Newtons weight) {
    const Hanger& hanger = complete_hanger;
    const std::vector<Misfit> wrong = misfits(hanger, outside, units::LengthUnit::mm);
    if (!wrong.empty() && wrong.front().severity == wall::Severity::stop)
        return fail({"hanger", wrong.front().what, wrong.front().remedy, ""});
    switch (hanger.type) {
        case HangerType::strips:
            return Bearing{};
        case HangerType::sawtooth:
            return Bearing{{{outside.width / 2, *hanger.drop}}, std::nullopt};
        case HangerType::two_rings:
        case HangerType::keyholes:
            return Bearing{pair_about_middle(outside, *hanger.ring_spacing, *hanger.drop),
                           std::nullopt};
        case HangerType::cord_one_hook:
        case HangerType::cord_two_hooks:
            break;
    }
    return bearing_of_cord(hanger, outside, weight);
}

}  // namespace wallwright::hanging

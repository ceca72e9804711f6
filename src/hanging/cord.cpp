#include "hanging/cord.h"

#include "geometry/point.h"

#include <cmath>
#include <numbers>

namespace wallwright::hanging {

namespace {

/// The part of the cord between a ring and its hook: `run` along the wall, `side` along the cord,
/// both mm.
struct Leg {
    double run = 0;
    double side = 0;
};

/// What both legs do together when they carry `weight`; the hooks' shares are left to the caller.
Cord carried_by(const Leg& leg, units::Newtons weight) {
    Cord cord;
    cord.drop = std::sqrt((leg.side - leg.run) * (leg.side + leg.run));
    const double sine = cord.drop / leg.side;
    const double cosine = leg.run / leg.side;
    cord.angle_deg = std::atan2(cord.drop, leg.run) * 180 / std::numbers::pi;
    cord.tension = {weight.value / (2 * sine)};
    cord.inward_pull = cosine * cord.tension;
    return cord;
}

Outcome check_cord(double ring_spacing, double cord_length) {
    if (!(ring_spacing > 0))
        return fail(
            {"hanger", "the rings must be more than 0 mm apart", "measure between them", ""});
    if (!(cord_length - ring_spacing > geometry::kLengthEps))
        return fail({"hanger", "the cord is not longer than its rings are apart",
                     "take a longer cord", ""});
    return {};
}

}  // namespace

Result<Cord> over_one_hook(double ring_spacing, double cord_length, units::Newtons weight) {
    if (const Outcome sound = check_cord(ring_spacing, cord_length); !sound)
        return fail(sound.error());
    Cord cord = carried_by({ring_spacing / 2, cord_length / 2}, weight);
    cord.hook_down = weight;
    return cord;
}

Result<Cord> over_two_hooks(double ring_spacing, double hook_spacing, double cord_length,
                            units::Newtons weight) {
    if (const Outcome sound = check_cord(ring_spacing, cord_length); !sound)
        return fail(sound.error());
    if (!(hook_spacing > 0 && hook_spacing < ring_spacing))
        return fail({"hanger",
                     "two hooks under one cord must be nearer to each other than its rings",
                     "set the hooks closer together", ""});
    Cord cord =
        carried_by({(ring_spacing - hook_spacing) / 2, (cord_length - hook_spacing) / 2}, weight);
    cord.hook_down = 0.5 * weight;
    // The level stretch between the hooks pulls inward with the whole tension, the leg outward with
    // its level part.
    cord.hook_sideways = {cord.tension.value - cord.inward_pull.value};
    return cord;
}

}  // namespace wallwright::hanging

#include "hanging/offer.h"

#include "base/contract.h"
#include "hanging/strips.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::FixingType;
using wall::HangerType;

Fixing fixing_at(const Job& job, const FixingType& type, const BackPoint& point, Kilograms load) {
    return {type.id, type.kind, on_wall(job, point), type.footprint, type.rated, load};
}

/// How many of the points lie as high as the first.
int in_top_row(const std::vector<BackPoint>& points) {
    return static_cast<int>(
        std::count_if(points.begin(), points.end(),
                      [&](const BackPoint& point) { return point.down == points.front().down; }));
}

Offer strips_for(const Job& job, const FixingType& type) {
    const wall::Frame& frame = frame_of(job.project, job.piece);
    const Kilograms mass = job.mass.high;
    Offer offer;
    offer.type = &type;
    offer.margin = job.project.style.strip_margin;
    offer.wanted = pairs_needed(mass, type.rated, offer.margin);
    offer.lies_flat = type.footprint.width <= frame.moulding_width;
    const std::vector<BackPoint> points =
        lay_out(std::min(offer.wanted, kMostPairs), type.footprint,
                {job.place.size(), frame.moulding_width});
    if (points.empty())
        return offer;
    const double top_strip_height = job.place.height() - points.front().down;
    offer.top_pull = top_pull(weight_of(mass), frame.depth / 2, top_strip_height);
    const int top = in_top_row(points);
    const Kilograms share = mass / static_cast<double>(points.size());
    const Kilograms pull = mass_with_weight(*offer.top_pull) / top;
    for (const BackPoint& point : points)
        offer.fixings.push_back(fixing_at(job, type, point, share));
    for (int i = 0; i < top; ++i)
        offer.fixings[static_cast<std::size_t>(i)].load = std::max(share, pull);
    return offer;
}

/// What each of `count` hooks carries: with level hooks and no cord, an even share.
Kilograms load_on_hook(const Bearing& bearing, Kilograms mass) {
    if (!bearing.cord)
        return mass / static_cast<double>(bearing.points.size());
    return units::mass_with_weight(
        {std::hypot(bearing.cord->hook_down.value, bearing.cord->hook_sideways.value)});
}

Offer hooks_for(const Job& job, const FixingType& type) {
    const Kilograms mass = job.mass.high;
    const Result<Bearing> bearing = bearing_of(job.hanger, job.place.size(), weight_of(mass));
    WW_EXPECT(bearing.has_value(), "a hanger without stops has its bearing points");
    const Kilograms load = load_on_hook(*bearing, mass);
    Offer offer;
    offer.type = &type;
    offer.margin = job.project.style.fixing_margin;
    offer.wanted = static_cast<int>(bearing->points.size());
    for (const BackPoint& point : bearing->points)
        offer.fixings.push_back(fixing_at(job, type, point, load));
    return offer;
}

}  // namespace

bool within_rating(Kilograms rated, Kilograms load, double margin) {
    return margin * load.value <= rated.value * (1 + 1e-9);
}

bool carries(const Offer& offer) {
    return offer.lies_flat && static_cast<int>(offer.fixings.size()) >= offer.wanted &&
           std::all_of(offer.fixings.begin(), offer.fixings.end(), [&](const Fixing& fixing) {
               return within_rating(fixing.rated, fixing.load, offer.margin);
           });
}

bool shows_above(const Job& job, const Offer& offer) {
    return offer.type->kind == wall::FixingKind::nail_hook && !offer.fixings.empty() &&
           job.place.top() - offer.fixings.front().at.y < offer.type->footprint.height;
}

bool goes_with(HangerType hanger, wall::FixingKind kind) {
    return (hanger == HangerType::strips) == (kind == wall::FixingKind::strip_pair);
}

Offer offer_of(const Job& job, const FixingType& type) {
    WW_EXPECT(goes_with(job.hanger.type, type.kind),
              "an offer is made only where hanger and fixing go together");
    return type.kind == wall::FixingKind::strip_pair ? strips_for(job, type) : hooks_for(job, type);
}

}  // namespace wallwright::hanging

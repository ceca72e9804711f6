#include "hanging/offer.h"

#include "base/contract.h"
#include "hanging/pull.h"
#include "hanging/strips.h"

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;
using wall::FixingType;
using wall::HangerType;

constexpr double kRounding = 1e-9;  ///< A share of what is compared.

double margin_of(const Job& job, const FixingType& type) {
    const wall::HangingStyle& style = job.project.style;
    if (type.breaking)
        return style.breaking_margin;
    return type.kind == FixingKind::strip_pair ? style.strip_margin : style.fixing_margin;
}

Offer empty_offer(const Job& job, const FixingType& type) {
    Offer offer;
    offer.type = &type;
    offer.margin = margin_of(job, type);
    return offer;
}

/// A fixing at a point of the piece's back, not loaded yet.
void add_fixing(const Job& job, const BackPoint& point, Offer& offer) {
    Fixing fixing;
    fixing.type = offer.type->id;
    fixing.kind = offer.type->kind;
    fixing.at = on_wall(job, point);
    fixing.footprint = offer.type->footprint;
    const wall::Room& room = job.project.room;
    const Capacity capacity = capacity_at(room, job.project.style, *offer.type, fixing.at.x);
    fixing.rated = capacity.rated;
    fixing.on_stud = capacity.on_stud;
    fixing.nails_hold = capacity.nails_hold;
    if (offer.unfit == Unfit::no)
        offer.unfit = capacity.unfit;
    offer.fixings.push_back(std::move(fixing));
}

/// How many of the points lie as high as the first.
std::size_t in_top_row(const std::vector<BackPoint>& points) {
    return static_cast<std::size_t>(
        std::count_if(points.begin(), points.end(),
                      [&](const BackPoint& point) { return point.down == points.front().down; }));
}

/// `pairs` of strips, or as many as there is room for.
Offer pairs_for(const Job& job, const FixingType& type, int pairs) {
    const wall::Frame& frame = frame_of(job.project, job.piece);
    Offer offer = empty_offer(job, type);
    offer.wanted = pairs;
    offer.lies_flat = type.footprint.width <= frame.moulding_width;
    const std::vector<BackPoint> points = lay_out(std::min(pairs, kMostPairs), type.footprint,
                                                  {job.place.size(), frame.moulding_width});
    if (points.empty())
        return offer;
    const Newtons weight = weight_of(job.mass.high);
    offer.top_pull = top_pull(weight, frame.depth / 2, job.place.height() - points.front().down);
    const std::size_t top = in_top_row(points);
    const std::vector<Share> shares = shares_of(points, job.place.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        add_fixing(job, points[i], offer);
        Fixing& fixing = offer.fixings.back();
        fixing.down = shares[i].down * weight;
        fixing.sideways = shares[i].right * weight;
        fixing.off_wall = i < top ? (1.0 / static_cast<double>(top)) * *offer.top_pull : Newtons{};
        const Newtons along{std::hypot(fixing.down.value, fixing.sideways.value)};
        fixing.load = units::mass_with_weight(std::max(along, fixing.off_wall));
    }
    return offer;
}

/// An odd pair hangs more of the piece on one side; where that is too much, one more evens it out.
Offer strips_for(const Job& job, const FixingType& type) {
    const int wanted = pairs_needed(job.mass.high, type.rated, margin_of(job, type));
    Offer offer = pairs_for(job, type, wanted);
    if (wanted % 2 == 0 || wanted >= kMostPairs || carries(offer))
        return offer;
    Offer even = pairs_for(job, type, wanted + 1);
    return carries(even) ? even : offer;
}

/// Fills in what one of `count` hooks carries and bears in all.
void load_hook(const Job& job, std::size_t index, Newtons off_wall, Fixing& fixing) {
    const std::optional<Cord>& cord = job.bearing->cord;
    const auto count = static_cast<double>(job.bearing->points.size());
    fixing.down = cord ? cord->hook_down : (1 / count) * weight_of(job.mass.high);
    if (cord)
        fixing.sideways = (index == 0 ? 1.0 : -1.0) * cord->hook_sideways;
    fixing.off_wall = (1 / count) * off_wall;
    fixing.load = units::mass_with_weight(
        {std::hypot(fixing.down.value, fixing.sideways.value, fixing.off_wall.value)});
}

/// Straight up to the rail, where there is one above the piece.
void move_to_rail(const Job& job, Offer& offer) {
    const std::optional<double>& rail = job.project.room.rail;
    if (!rail || *rail < job.place.top()) {
        offer.unfit = Unfit::rail;
        return;
    }
    for (Fixing& fixing : offer.fixings) {
        fixing.cord = *rail - fixing.at.y;
        fixing.at.y = *rail;
    }
}

Offer hooks_for(const Job& job, const FixingType& type) {
    WW_EXPECT(job.bearing.has_value(), "a hanger without stops has its bearing points");
    const std::vector<BackPoint>& points = job.bearing->points;
    const double above_foot = job.place.height() - points.front().down;
    const Newtons pull =
        top_pull(weight_of(job.mass.high), frame_of(job.project, job.piece).depth / 2, above_foot);
    Offer offer = empty_offer(job, type);
    offer.wanted = static_cast<int>(points.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        add_fixing(job, points[i], offer);
        load_hook(job, i, pull, offer.fixings.back());
    }
    if (type.kind == FixingKind::rail_hook)
        move_to_rail(job, offer);
    else
        offer.top_pull = pull;
    return offer;
}

}  // namespace

bool within_rating(Kilograms rated, Kilograms load, double margin) {
    return margin * load.value <= rated.value * (1 + kRounding);
}

bool nails_hold(const Fixing& fixing) {
    return !fixing.nails_hold ||
           fixing.off_wall.value <= fixing.nails_hold->value * (1 + kRounding);
}

bool carries(const Offer& offer) {
    return offer.unfit == Unfit::no && offer.lies_flat &&
           static_cast<int>(offer.fixings.size()) >= offer.wanted &&
           std::all_of(offer.fixings.begin(), offer.fixings.end(), [&](const Fixing& fixing) {
               return within_rating(fixing.rated, fixing.load, offer.margin) &&
                      nails_hold(fixing) && pull_on(fixing) != Pull::too_much;
           });
}

bool shows_above(const Job& job, const Offer& offer) {
    return offer.type->kind == FixingKind::nail_hook && !offer.fixings.empty() &&
           job.place.top() - offer.fixings.front().at.y < offer.type->footprint.height;
}

bool goes_with(HangerType hanger, FixingKind kind) {
    switch (kind) {
        case FixingKind::strip_pair:
            return hanger == HangerType::strips;
        case FixingKind::nail_hook:
            return hanger != HangerType::strips && hanger != HangerType::keyholes;
        case FixingKind::screw:
            return hanger != HangerType::strips;
        case FixingKind::rail_hook:
            return hanger == HangerType::two_rings || hanger == HangerType::cord_one_hook;
    }
    return false;
}

bool goes_with(HangerType hanger, const FixingType& type) {
    const bool open_only = hanger == HangerType::sawtooth || hanger == HangerType::keyholes;
    return goes_with(hanger, type.kind) && !(type.closed && open_only);
}

Offer offer_of(const Job& job, const FixingType& type) {
    WW_EXPECT(goes_with(job.hanger.type, type),
              "an offer is made only where hanger and fixing go together");
    return type.kind == FixingKind::strip_pair ? strips_for(job, type) : hooks_for(job, type);
}

}  // namespace wallwright::hanging

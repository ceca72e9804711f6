#include "hanging/choice.h"

#include "hanging/supply.h"

#include <algorithm>
#include <tuple>

namespace wallwright::hanging {

namespace {

using wall::Core;
using wall::FixingKind;
using wall::Room;
using wall::Surface;

constexpr std::size_t kFourCorners = 4;

/// Nails bend or break the edge of what is this hard.
bool is_hard(const Room& room) {
    return room.surface == Surface::brick || room.surface == Surface::concrete ||
           room.surface == Surface::tile || room.core == Core::concrete;
}

bool suits(const Offer& offer) {
    return offer.unfit == Unfit::no;
}

/// Drops those for which `against` is true when some other suits the wall.
template <class Against>
void leave_out(std::vector<Offer>& offers, Against against) {
    const bool another = std::ranges::any_of(
        offers, [&](const Offer& offer) { return suits(offer) && !against(offer); });
    if (another)
        std::erase_if(offers, against);
}

std::vector<Offer> candidates(const Job& job, const wall::Catalogue& catalogue) {
    const Room& room = job.project.room;
    std::vector<Offer> offers;
    for (const wall::FixingType& type : catalogue.fixings)
        if (goes_with(job.hanger.type, type))
            offers.push_back(offer_of(job, type));
    if (room.no_holes)
        leave_out(offers, [](const Offer& offer) { return pierces(offer.type->kind); });
    if (is_hard(room))
        leave_out(offers,
                  [](const Offer& offer) { return offer.type->kind == FixingKind::nail_hook; });
    if (core_behind(room) == Core::unknown)
        leave_out(offers, [](const Offer& offer) { return only_hollow(*offer.type); });
    return offers;
}

/// Less is stronger: what suits the wall, then by what all of them carry, then by what one does.
/// Strips that cannot lie flat carry nothing.
std::tuple<bool, double, double> weakness(const Offer& offer) {
    double carried = 0;
    for (const Fixing& fixing : offer.fixings)
        carried += fixing.rated.value;
    return {!suits(offer), offer.lies_flat ? -carried : 0, -offer.type->rated.value};
}

bool is_open_hook(const Offer& offer) {
    return offer.type->kind != FixingKind::strip_pair && !offer.type->closed;
}

}  // namespace

Choices choices_of(const Job& job, const wall::Catalogue& catalogue) {
    std::vector<Offer> offers = candidates(job, catalogue);
    const auto strongest = std::ranges::min_element(
        offers, [](const Offer& a, const Offer& b) { return weakness(a) < weakness(b); });
    if (std::ranges::none_of(offers, carries)) {
        if (strongest == offers.end())
            return {};
        return {{std::move(*strongest)}, false};
    }
    std::erase_if(offers, [](const Offer& offer) { return !carries(offer); });
    if (job.project.room.shakes)
        leave_out(offers, is_open_hook);
    if (!std::ranges::all_of(offers, [&job](const Offer& offer) { return is_awkward(job, offer); }))
        std::erase_if(offers, [&job](const Offer& offer) { return shows_above(job, offer); });
    return {std::move(offers), true};
}

bool is_awkward(const Job& job, const Offer& offer) {
    const FixingKind kind = offer.type->kind;
    const bool beyond_corners =
        kind == FixingKind::strip_pair && offer.fixings.size() > kFourCorners;
    return beyond_corners || kind == FixingKind::rail_hook || shows_above(job, offer);
}

std::optional<Offer> choose(const Job& job, const wall::Catalogue& catalogue,
                            const Drawer& drawer) {
    Choices choices = choices_of(job, catalogue);
    if (choices.offers.empty())
        return std::nullopt;
    std::vector<Supply> supplies = supplies_of(job.project, catalogue, drawer);
    if (job.piece.state != wall::PieceState::planned)
        for (Supply& supply : supplies)
            supply.price = 0;
    const FixingPlan plan = plan_fixings(supplies, {ways_of(job, choices.offers, catalogue)});
    return std::move(choices.offers[plan.ways.front()]);
}

}  // namespace wallwright::hanging

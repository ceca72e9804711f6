#include "hanging/choice.h"

#include <algorithm>
#include <tuple>

namespace wallwright::hanging {

namespace {

using wall::FixingKind;
using wall::FixingType;
using wall::Surface;

constexpr int kFourCorners = 4;

/// Nails bend or break the edge of what is this hard.
bool is_hard(Surface surface) {
    return surface == Surface::brick || surface == Surface::concrete || surface == Surface::tile;
}

std::vector<const FixingType*> candidates(const Job& job, const wall::Catalogue& catalogue) {
    std::vector<const FixingType*> types;
    for (const FixingType& type : catalogue.fixings)
        if (goes_with(job.hanger.type, type.kind))
            types.push_back(&type);
    const auto is_nail = [](const FixingType* type) { return type->kind == FixingKind::nail_hook; };
    if (is_hard(job.project.room.surface) && !std::all_of(types.begin(), types.end(), is_nail))
        std::erase_if(types, is_nail);
    return types;
}

/// Less is better. First: in the drawer, partly in the drawer, to buy, too weak. Second: awkward
/// (beyond the four corners, or a plate that shows above the frame) or not; among the weak, what
/// they carry in all. Third: the rated load.
using Rank = std::tuple<int, double, double>;

Rank rank_of(const Job& job, const Offer& offer, int in_drawer) {
    const int count = static_cast<int>(offer.fixings.size());
    const double rated = offer.type->rated.value;
    if (!carries(offer))
        return {3, offer.lies_flat ? -count * rated : 0, -rated};
    const bool beyond_corners = offer.type->kind == FixingKind::strip_pair && count > kFourCorners;
    const double awkward = beyond_corners || shows_above(job, offer) ? 1 : 0;
    const int source = in_drawer >= count ? 0 : in_drawer > 0 ? 1 : 2;
    return {source, awkward, rated};
}

}  // namespace

std::optional<Offer> choose(const Job& job, const wall::Catalogue& catalogue,
                            const Drawer& drawer) {
    const bool may_take = job.piece.state == wall::PieceState::planned;
    std::optional<Offer> best;
    Rank best_rank;
    for (const FixingType* type : candidates(job, catalogue)) {
        Offer offer = offer_of(job, *type);
        const Rank rank = rank_of(job, offer, may_take ? drawer.left(type->id) : 0);
        if (!best || rank < best_rank) {
            best = std::move(offer);
            best_rank = rank;
        }
    }
    return best;
}

}  // namespace wallwright::hanging

#include "hanging/stud_near.h"

#include "hanging/choice.h"
#include "hanging/studs.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

/// True when there is something that a stud could mend.
bool wants_stud(const Job& job, const Offer& offer) {
    const bool may_move = job.piece.state == wall::PieceState::planned && !job.piece.pinned;
    const wall::Room& room = job.project.room;
    if (!may_move || !room.studs || !is_hollow(core_behind(room)) || !pierces(offer.type->kind))
        return false;
    return !carries(offer) || (room.shakes && !offer.type->closed);
}

Job moved(const Job& job, double across) {
    Job there = job;
    there.place = job.place.moved({across, 0});
    return there;
}

/// What would carry it after the move, all of it in the studs.
const Offer* mending(const Job& there, const Choices& choices) {
    const auto mends = [&there](const Offer& offer) {
        const bool in_studs = std::ranges::all_of(offer.fixings, &Fixing::on_stud);
        return in_studs && (!there.project.room.shakes || offer.type->closed);
    };
    const auto found = std::ranges::find_if(choices.offers, mends);
    return choices.safe && found != choices.offers.end() ? &*found : nullptr;
}

}  // namespace

std::optional<wall::Finding> stud_near(const Job& job, const wall::Catalogue& catalogue,
                                       const Offer& offer) {
    if (!wants_stud(job, offer))
        return std::nullopt;
    std::vector<double> places;
    for (const Fixing& fixing : offer.fixings)
        places.push_back(fixing.at.x);
    const wall::Studs& studs = *job.project.room.studs;
    const auto move = move_onto_studs(studs, places);
    const bool there_already =
        std::ranges::all_of(places, [&studs](double place) { return on_stud(studs, place); });
    if (!move || there_already)
        return std::nullopt;
    const Job there = moved(job, *move);
    const Choices choices = choices_of(there, catalogue);
    const Offer* mends = mending(there, choices);
    if (mends == nullptr)
        return std::nullopt;
    const bool one = places.size() == 1;
    wall::Finding note =
        about(job, kFixingSuitsWall, wall::Severity::note,
              fmt::format("move it {} to the {} and its {}, where {} would hold it{}",
                          units::format_length(std::abs(*move), job.project.unit),
                          *move < 0 ? "left" : "right",
                          one ? "hook falls on a stud" : "hooks fall on studs", mends->type->title,
                          mends->type->closed ? ", closed" : ""));
    note.measured = std::abs(*move);
    note.unit = "mm";
    return note;
}

}  // namespace wallwright::hanging

#include "desk/fix_ways.h"

#include "arrange/even_wall.h"
#include "desk/centred.h"
#include "desk/naming.h"
#include "edits/room.h"
#include "rules/way_clear.h"
#include "wall/this_side.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wallwright::desk {

namespace {

using wall::Finding;
using wall::Project;
using Vec = geometry::Vec<geometry::Wall>;
using Place = geometry::Rect<geometry::Wall>;
using Ways = std::vector<Fix>;

void even(const Project& project, const Finding& /*finding*/, Ways& ways) {
    auto evened = arrange::even_wall(project);
    if (evened)
        ways.push_back({"Even the gaps", std::move(evened->project)});
}

void move(const Project& project, const wall::PieceId& piece, Vec by, Ways& ways) {
    const std::array ids = {piece};
    ways.push_back(
        {move_words(project, name_of(project, ids), by), edits::shift(project, ids, by)});
}

/// By as much as the measure is past its bound.
void move_group_to_bound(const Project& project, const Finding& finding, Ways& ways) {
    if (!finding.measured || !finding.wanted)
        return;
    const double up = *finding.wanted - *finding.measured;
    const std::string what =
        finding.pieces.size() == 1 ? name_of(project, finding.pieces) : "the group";
    ways.push_back(
        {move_words(project, what, {0, up}), edits::shift(project, finding.pieces, {0, up})});
}

void centre(const Project& project, const Finding& finding, Ways& ways) {
    if (finding.severity == wall::Severity::note)  // The clearance above furniture leads.
        return;
    ways.push_back(
        {"Centre the group on the centre line", centred(project, edits::PieceIds(finding.pieces))});
    move_group_to_bound(project, finding, ways);
}

/// One of two that overlap leaves the wanted gap to the other.
void part(const Project& project, const Finding& finding, Ways& ways) {
    even(project, finding, ways);
    if (finding.pieces.size() != 2)
        return;
    for (const std::size_t moving : {0U, 1U}) {
        const auto place = place_of(project, Thing(finding.pieces[moving]));
        const auto from = place_of(project, Thing(finding.pieces[1 - moving]));
        if (place && from)
            move(project, finding.pieces[moving],
                 rules::step_of(
                     rules::way_clear(project.room.outline, *place, *from, project.style.gap)),
                 ways);
    }
}

/// The finding's place is what reaches outside: the piece, or the hook above it.
void bring_inside(const Project& project, const Finding& finding, Ways& ways) {
    if (const auto way = rules::way_inside(project.room.outline, finding.place))
        move(project, finding.pieces.front(), rules::step_of(*way), ways);
}

std::optional<Place> first_in_the_way(const wall::Room& room, const Place& place) {
    for (const wall::Furniture& one : room.furniture)
        if (rules::overlap_depth(place, one.place) > 0)
            return one.place;
    for (const wall::Fixture* one : wall::fixtures_here(room))
        if (rules::overlap_depth(place, one->place) > 0)
            return one->place;
    return std::nullopt;
}

/// Out of one thing after the other. It may go back and forth between two, so not for ever.
Vec way_clear_of_all(const Project& project, const Place& place, double margin) {
    constexpr int kMostWays = 4;
    Place now = place;
    for (int i = 0; i < kMostWays; ++i) {
        const auto thing = first_in_the_way(project.room, now);
        if (!thing)
            break;
        now =
            now.moved(rules::step_of(rules::way_clear(project.room.outline, now, *thing, margin)));
    }
    return now.min - place.min;
}

void clear_of_things(const Project& project, const Finding& finding, Ways& ways) {
    const wall::PieceId& piece = finding.pieces.front();
    if (const auto place = place_of(project, Thing(piece)))
        for (const double margin : {0.0, project.style.clearance_least})
            move(project, piece, way_clear_of_all(project, *place, margin), ways);
}

/// Without the person's own choice one that carries the piece is chosen, where there is any.
void choose_fixing(const Project& project, const Finding& finding, Ways& ways) {
    std::vector<wall::PieceId> chosen;
    Result<Project> freed = project;
    for (const wall::PieceId& id : finding.pieces) {
        const wall::Piece* piece = wall::find(project, id);
        if (piece == nullptr || !piece->fixing || !freed)
            continue;
        chosen.push_back(id);
        freed = edits::change_piece(std::move(*freed), id,
                                    [](wall::Piece& one) { one.fixing.reset(); });
    }
    if (!chosen.empty())
        ways.push_back({fmt::format("Choose another fixing for {}", name_of(project, chosen)),
                        std::move(freed)});
}

void other_corner(const Project& project, const Finding& /*finding*/, Ways& ways) {
    const wall::DatumSide other = project.datum.side == wall::DatumSide::left
                                      ? wall::DatumSide::right
                                      : wall::DatumSide::left;
    ways.push_back(
        {fmt::format("Measure from the {} corner", wall::name_of(other)),
         edits::change_project(project, [other](Project& one) { one.datum.side = other; })});
}

struct Way {
    std::string_view rule;
    void (*add)(const Project&, const Finding&, Ways&);
};

/// By the rules' names; fix_test.cpp asks each.
constexpr std::array kWays = {
    Way{"gaps-even", even},
    Way{"gaps-in-range", even},
    Way{"no-overlap", part},
    Way{"centre-line", centre},
    Way{"clearance-above-furniture", move_group_to_bound},
    Way{"inside-wall", bring_inside},
    Way{"clear-of-furniture-and-fixtures", clear_of_things},
    Way{"weight-within-rating", choose_fixing},
    Way{"surface-fit", choose_fixing},
    Way{"strips-fit-the-back", choose_fixing},
    Way{"hanger-fits", choose_fixing},
    Way{"fixings-in-stock", choose_fixing},
    Way{"cable-zones", choose_fixing},
    Way{"fixing-suits-wall", choose_fixing},
    Way{"no-holes", choose_fixing},
    Way{"earthquake", choose_fixing},
    Way{"datum-in-sight", other_corner},
    Way{"tape-reach", other_corner},
};

}  // namespace

Ways ways_out(const Project& project, const Finding& finding) {
    Ways ways;
    for (const Way& way : kWays)
        if (way.rule == finding.rule)
            way.add(project, finding, ways);
    return ways;
}

}  // namespace wallwright::desk

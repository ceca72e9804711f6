#include "mounts/match/field.h"

#include <algorithm>
#include <set>

namespace wallwright::mounts {

namespace {

using wall::Piece;
using wall::Project;

const wall::Mount* mount_of(const Project& project, const Piece& piece) {
    return piece.mount ? find(project, *piece.mount) : nullptr;
}

bool has_several_windows(const Project& project, const Piece& piece) {
    const wall::Mount* mount = mount_of(project, piece);
    return mount != nullptr && !mount->openings.empty();
}

std::vector<Place> places_of(const Project& project) {
    std::vector<Place> places;
    for (const Piece& piece : project.pieces) {
        if (has_several_windows(project, piece))
            continue;
        const wall::Mount* mount = mount_of(project, piece);
        places.push_back(
            {&piece, Holder{frame_of(project, piece), mount != nullptr ? *mount : wall::Mount{},
                            piece.turned, !is_fixed(piece)}});
    }
    return places;
}

std::vector<const wall::Print*> prints_of(const Project& project) {
    std::set<wall::PrintId> elsewhere;
    for (const Piece& piece : project.pieces)
        if (has_several_windows(project, piece))
            for (const wall::Opening& opening : mount_of(project, piece)->openings)
                elsewhere.insert(opening.print);
    std::vector<const wall::Print*> prints;
    for (const wall::Print& print : project.prints)
        if (!elsewhere.contains(print.id))
            prints.push_back(&print);
    return prints;
}

bool is_in(const Place& place, const wall::Print& print) {
    return place.piece != nullptr && place.piece->print == print.id;
}

/// The first piece that keeps the print, if any.
std::optional<std::size_t> keeper_of(const Field& field, const wall::Print& print) {
    const auto keeps = [&print](const Place& place) {
        return is_in(place, print) && place.piece->keeps_print;
    };
    const auto found = std::ranges::find_if(field.places, keeps);
    if (found == field.places.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - field.places.begin());
}

void fill_table(Field& field) {
    const auto scale = static_cast<Cost>(field.prints.size() + 1);
    field.table = CostTable(field.prints.size(), field.places.size());
    for (std::size_t row = 0; row < field.prints.size(); ++row)
        for (std::size_t column = 0; column < field.places.size(); ++column) {
            const std::optional<Fitting>& fitting = field.fitting(row, column);
            const Cost moves = is_in(field.places[column], *field.prints[row]) ? 0 : 1;
            if (fitting)
                field.table.at(row, column) = fitting->cost() * scale + moves;
            else if (field.kept[row] == column)
                field.table.at(row, column) = 0;
        }
    for (std::size_t row = 0; row < field.prints.size(); ++row)
        if (field.kept[row])
            lock(field.table, row, *field.kept[row]);
}

}  // namespace

Cost Field::cost_of(const Assignment& assignment) const {
    Cost cost = 0;
    for (std::size_t row = 0; row < prints.size(); ++row)
        if (const auto column = assignment.column_of[row]; column && fitting(row, *column))
            cost += fitting(row, *column)->cost();
    return cost;
}

Field field_of(const Project& project) {
    Field field;
    field.prints = prints_of(project);
    field.places = places_of(project);
    for (const wall::Print* print : field.prints) {
        field.kept.push_back(keeper_of(field, *print));
        for (const Place& place : field.places)
            field.fittings.push_back(best_fitting(place.holder, *print));
    }
    fill_table(field);
    return field;
}

Field with_frame(const Field& field, const wall::Frame& frame) {
    Field wider;
    wider.prints = field.prints;
    wider.places = field.places;
    wider.kept = field.kept;
    wider.places.push_back({nullptr, Holder{frame, wall::Mount{}}});
    for (std::size_t row = 0; row < field.prints.size(); ++row) {
        for (std::size_t column = 0; column < field.places.size(); ++column)
            wider.fittings.push_back(field.fitting(row, column));
        wider.fittings.push_back(best_fitting(wider.places.back().holder, *field.prints[row]));
    }
    fill_table(wider);
    return wider;
}

}  // namespace wallwright::mounts

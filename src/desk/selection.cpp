#include "desk/selection.h"

#include "wall/titles.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

template <class Id>
std::optional<Id> only(const std::vector<Thing>& things) {
    if (things.size() != 1 || !std::holds_alternative<Id>(things.front()))
        return std::nullopt;
    return std::get<Id>(things.front());
}

bool is_in(const wall::Project& project, const Thing& thing) {
    return std::visit([&project](const auto& id) { return wall::find(project, id) != nullptr; },
                      thing);
}

std::optional<geometry::Rect<geometry::Wall>> place(const wall::Project& project,
                                                    const wall::Piece& piece) {
    return wall::place_of(project, piece);
}
template <class OfRoom>
std::optional<geometry::Rect<geometry::Wall>> place(const wall::Project&, const OfRoom& thing) {
    return thing.place;
}

}  // namespace

bool Selection::has(const Thing& thing) const {
    return std::ranges::find(things_, thing) != things_.end();
}

std::vector<wall::PieceId> Selection::pieces() const {
    std::vector<wall::PieceId> ids;
    for (const Thing& thing : things_)
        if (const auto* id = std::get_if<wall::PieceId>(&thing))
            ids.push_back(*id);
    return ids;
}

std::optional<wall::PieceId> Selection::one_piece() const {
    return only<wall::PieceId>(things_);
}

std::optional<wall::FurnitureId> Selection::furniture() const {
    return only<wall::FurnitureId>(things_);
}

std::optional<wall::FixtureId> Selection::fixture() const {
    return only<wall::FixtureId>(things_);
}

void Selection::set(const std::vector<wall::PieceId>& pieces) {
    things_.assign(pieces.begin(), pieces.end());
}

void Selection::toggle(const Thing& thing) {
    const bool is_piece = std::holds_alternative<wall::PieceId>(thing);
    const bool holds_pieces = !things_.empty() && std::holds_alternative<wall::PieceId>(things_[0]);
    if (const auto found = std::ranges::find(things_, thing); found != things_.end())
        things_.erase(found);
    else if (is_piece && holds_pieces)
        things_.push_back(thing);
    else
        set(thing);
}

void Selection::keep_only_in(const wall::Project& project) {
    std::erase_if(things_, [&project](const Thing& thing) { return !is_in(project, thing); });
}

std::optional<geometry::Rect<geometry::Wall>> place_of(const wall::Project& project,
                                                       const Thing& thing) {
    return std::visit(
        [&project](const auto& id) -> std::optional<geometry::Rect<geometry::Wall>> {
            const auto* one = wall::find(project, id);
            return one == nullptr ? std::nullopt : place(project, *one);
        },
        thing);
}

std::string title_of(const wall::Project& project, const Thing& thing) {
    return std::visit(
        [&project](const auto& id) -> std::string {
            const auto* one = wall::find(project, id);
            return one == nullptr ? id.text : wall::title_of(*one);
        },
        thing);
}

}  // namespace wallwright::desk

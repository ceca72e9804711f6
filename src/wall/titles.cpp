#include "wall/titles.h"

#include "base/contract.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::wall {

namespace {

template <class Thing>
std::string title_or_type(const Thing& thing, std::string_view other) {
    if (!thing.title.empty())
        return thing.title;
    const bool is_other = thing.type == decltype(thing.type)::other;
    return fmt::format("the {}", is_other ? other : name_of(thing.type));
}

std::string span_text(double low, double high, units::LengthUnit unit) {
    return fmt::format("{} to {}", units::format_number(low, unit),
                       units::format_length(high, unit));
}

struct TargetTitle {
    const Project& project;
    units::LengthUnit unit;

    std::string operator()(const FurnitureId& id) const { return of_thing(id); }
    std::string operator()(const FixtureId& id) const { return of_thing(id); }
    std::string operator()(const Point<Wall>& point) const {
        return fmt::format("the point {} across and {} up", units::format_length(point.x, unit),
                           units::format_length(point.y, unit));
    }
    std::string operator()(WallCorner corner) const {
        std::string name(name_of(corner));
        std::ranges::replace(name, '_', ' ');
        return fmt::format("the {} corner", name);
    }
    std::string operator()(const Rect<Wall>& part) const {
        return fmt::format("the part of the wall from {} across and {} up",
                           span_text(part.left(), part.right(), unit),
                           span_text(part.bottom(), part.top(), unit));
    }

    template <class Id>
    [[nodiscard]] std::string of_thing(const Id& id) const {
        const auto* thing = find(project, id);
        return thing == nullptr ? id.text : title_of(*thing);
    }
};

}  // namespace

const std::string& title_of(const Piece& piece) {
    return piece.title.empty() ? piece.id.text : piece.title;
}

std::string title_of(const Project& project, const PrintId& id) {
    const Print* print = find(project, id);
    return print == nullptr || print->title.empty() ? id.text : print->title;
}

std::string title_of(const Project& project, const PieceId& id) {
    const Piece* piece = find(project, id);
    return piece == nullptr ? id.text : title_of(*piece);
}

std::string title_to_hang(const Piece& piece) {
    return piece.wished ? fmt::format("{} (not bought yet)", title_of(piece)) : title_of(piece);
}

std::string title_to_hang(const Project& project, const PieceId& id) {
    const Piece* piece = find(project, id);
    return piece == nullptr ? id.text : title_to_hang(*piece);
}

const std::string& title_of(const CardSheet& sheet) {
    return sheet.title.empty() ? sheet.id.text : sheet.title;
}

std::string title_of(const Furniture& furniture) {
    return title_or_type(furniture, "furniture");
}

std::string title_of(const Fixture& fixture) {
    return title_or_type(fixture, "fixture");
}

std::string title_of(const Project& project, const Target& target, units::LengthUnit unit) {
    return std::visit(TargetTitle{project, unit}, target);
}

std::string listed(std::span<const std::string> titles, std::size_t most) {
    WW_EXPECT(most > 1, "a list that counts its end names something before it");
    if (titles.size() > most)
        return fmt::format("{} and {} more", fmt::join(titles.first(most - 1), ", "),
                           titles.size() - (most - 1));
    if (titles.size() < 2)
        return titles.empty() ? "" : titles.front();
    return fmt::format("{} and {}", fmt::join(titles.first(titles.size() - 1), ", "),
                       titles.back());
}

std::string titles_of(const Project& project, std::span<const PieceId> pieces, std::size_t most) {
    std::vector<std::string> titles;
    for (const PieceId& piece : pieces)
        titles.push_back(title_of(project, piece));
    return listed(titles, most);
}

}  // namespace wallwright::wall

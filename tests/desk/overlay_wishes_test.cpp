#include "desk/overlay.h"
#include "searching.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;
using draw::LineType;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::Wish;
using wall::WishKind;

namespace {

constexpr double kScale = 0.05;

using Path = draw::Path<Wall>;

const wall::PieceId kDune{"dune"};
const wall::PieceId kGull{"gull"};

std::vector<Path> signs_for(const Wish& wish, Step step = Step::arrange) {
    wall::Project project = some_pieces();
    project.wishes = {wish};
    std::vector<Path> paths;
    const std::vector<Waiting> waiting{
        {wall::PieceId{"tide"}, Rect<Wall>::at({100, -700}, {200, 300})}};
    for (const auto& shape : overlay(Session(project), waiting, step, {}, kScale))
        paths.push_back(std::get<Path>(shape));
    return paths;
}

Rect<Wall> bounds_of(const std::vector<Path>& paths) {
    Rect<Wall> bounds{paths.at(0).start, paths.at(0).start};
    for (const Path& path : paths)
        for (const auto& step : path.steps)
            bounds = hull(bounds, Rect<Wall>{step.to, step.to});
    return bounds;
}

Rect<Wall> place_of(const wall::PieceId& id) {
    const wall::Project project = some_pieces();
    return wall::place_of(project, *wall::find(project, id)).value();
}

Wish of_one(WishKind kind) {
    return {kind, kDune, std::nullopt, std::nullopt};
}

}  // namespace

TEST_CASE("A wish for one piece is a sign on it: in its middle, at its upper or its lower edge") {
    const Rect<Wall> dune = place_of(kDune);
    const auto middle_of = [](WishKind kind) {
        return bounds_of(signs_for(of_one(kind))).centre();
    };
    CHECK(middle_of(WishKind::middle).y == Approx(dune.centre().y));
    CHECK(middle_of(WishKind::high).y > dune.centre().y + 100);
    CHECK(middle_of(WishKind::low).y < dune.centre().y - 100);
    for (const WishKind kind : {WishKind::middle, WishKind::high, WishKind::low}) {
        CHECK(middle_of(kind).x == Approx(dune.centre().x));
        CHECK(hull(bounds_of(signs_for(of_one(kind))), dune) == dune);
    }
}

TEST_CASE("A wish for two is a link from one into the other, drawn otherwise for apart") {
    const auto beside = signs_for({WishKind::side_by_side, kDune, kGull, std::nullopt});
    const auto apart = signs_for({WishKind::apart, kDune, kGull, std::nullopt});
    for (const auto& signs : {beside, apart}) {
        CHECK(overlaps(bounds_of(signs), place_of(kDune)));
        CHECK(overlaps(bounds_of(signs), place_of(kGull)));
    }
    CHECK(beside.size() != apart.size());
}

TEST_CASE("What a piece is not to hang over is tied to it by a dotted line") {
    const auto signs =
        signs_for({WishKind::not_over, kDune, std::nullopt, wall::FurnitureId{"sofa"}});
    const auto dotted = std::ranges::find_if(signs, [](const Path& path) {
        return path.stroke && path.stroke->type == LineType::dotted;
    });
    REQUIRE(dotted != signs.end());
    CHECK(place_of(kDune).contains(dotted->start));
    CHECK(dotted->steps.at(0).to == Point<Wall>{1750, 800});
}

TEST_CASE("A piece that waits has its sign where it stands") {
    const Wish wish{WishKind::low, wall::PieceId{"tide"}, std::nullopt, std::nullopt};
    CHECK(bounds_of(signs_for(wish)).top() < 0);
}

TEST_CASE("Wishes are seen in the step arrange only") {
    CHECK_FALSE(signs_for(of_one(WishKind::low), Step::arrange).empty());
    CHECK(signs_for(of_one(WishKind::low), Step::pieces).empty());
    CHECK(signs_for(of_one(WishKind::low), Step::hang).empty());
}

#include "desk/bench/match_layout.h"

#include "desk/bench/match_links.h"
#include "matching.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

constexpr geometry::Size kPaper{220, 150};  // mm, a window of middle size

std::vector<geometry::Rect<geometry::Wall>> cells_of(const MatchLayout& layout) {
    std::vector<geometry::Rect<geometry::Wall>> cells;
    for (const Drawer* drawer : {&layout.prints, &layout.frames})
        for (const BoardItem& item : drawer->items)
            cells.push_back(item.cell);
    return cells;
}

bool holds(const geometry::Rect<geometry::Wall>& outer,
           const geometry::Rect<geometry::Wall>& inner) {
    const auto wider = outer.grown(1e-6);
    return wider.contains(inner.min) && wider.contains(inner.max);
}

Matched match_of(const wall::Project& project) {
    return {mounts::match_prints(project), {}};
}

wall::Project many(int count) {
    wall::Project project = scenes::wall_of(3600, 2400);
    for (int i = 0; i < count; ++i) {
        const std::string id = "a" + std::to_string(i);
        const double size = 200 + 40 * (i % 7);
        scenes::add_waiting(project, "f" + id, {size + 100, size + 160});
        add_print(project, "p" + id, {size, size * 1.3});
    }
    return project;
}

}  // namespace

TEST_CASE("Every print and every frame lies in its drawer, none over another") {
    for (const int pieces : {1, 3, 8, 17}) {
        const wall::Project project = many(pieces);
        const Matched matched = match_of(project);
        const MatchLayout layout = lay_out_match(project, &matched, kPaper);
        CHECK(layout.prints.items.size() == project.prints.size());
        CHECK(layout.frames.items.size() == project.pieces.size());
        const auto cells = cells_of(layout);
        for (std::size_t i = 0; i < cells.size(); ++i)
            for (std::size_t j = i + 1; j < cells.size(); ++j)
                CHECK_FALSE(geometry::overlaps(cells[i], cells[j]));
        for (const BoardItem& item : layout.prints.items)
            CHECK(holds(layout.prints.area, item.cell));
        for (const BoardItem& item : layout.frames.items)
            CHECK(holds(layout.frames.area, item.cell));
        CHECK(layout.scale * layout.extent.width() <= kPaper.width + 0.5);
        CHECK(layout.scale * layout.extent.height() <= kPaper.height + 0.5);
    }
}

TEST_CASE("All things lie at their own size, prints and frames at one scale") {
    const wall::Project project = mixed_drawers();
    const MatchLayout layout = lay_out_match(project, nullptr, kPaper);
    for (const wall::Print& print : project.prints)
        CHECK(is_same_size(layout.find(print.id)->place.size(), print.size));
    for (const wall::Piece& piece : project.pieces)
        CHECK(is_same_size(layout.find(piece.id)->place.size(), outside_size(project, piece)));
    CHECK(layout.find(wall::PrintId{"no-such"}) == nullptr);
}

TEST_CASE("Pairs stand in one row, equally far from the middle, and the rest below with a reason") {
    const wall::Project project = mixed_drawers();
    const Matched matched = match_of(project);
    const MatchLayout layout = lay_out_match(project, &matched, kPaper);
    for (const mounts::Pair& pair : matched.match.pairs) {
        const BoardItem& print = *layout.find(pair.print);
        const BoardItem& frame = *layout.find(pair.piece);
        CHECK(print.column == frame.column);
        CHECK(print.remark.empty());
        CHECK(print.place.max.y > *layout.prints.left_over_at);
    }
    const BoardItem& loch = *layout.find(wall::PrintId{"loch"});
    CHECK(loch.place.max.y < *layout.prints.left_over_at);
    CHECK(loch.remark.front().starts_with("no frame"));
    const BoardItem& elm = *layout.find(wall::PieceId{"elm"});
    CHECK(elm.place.max.y < *layout.frames.left_over_at);
    CHECK_FALSE(elm.remark.empty());
}

TEST_CASE("Nothing is left over where no match is known, and an empty wall has two empty drawers") {
    const MatchLayout layout = lay_out_match(mixed_drawers(), nullptr, kPaper);
    CHECK_FALSE(layout.prints.left_over_at);
    const wall::Project empty = scenes::wall_of(3600, 2400);
    const MatchLayout bare = lay_out_match(empty, nullptr, kPaper);
    CHECK(bare.prints.items.empty());
    CHECK(bare.prints.area.width() > 0);
    CHECK(bare.frames.area.min.x > bare.prints.area.max.x);
}

TEST_CASE("A link runs from the print's inner edge to the frame's, and says what it stands for") {
    wall::Project project = mixed_drawers();
    const Matched matched = match_of(project);
    const MatchLayout layout = lay_out_match(project, &matched, kPaper);
    const std::vector<Link> links = links_of(project, &matched, layout);
    REQUIRE(links.size() == 3);
    CHECK(links[0].kind == LinkKind::today);
    CHECK(links[1].kind == LinkKind::wanted);
    CHECK(links[2].kind == LinkKind::wanted);
    for (const Link& link : links) {
        const BoardItem& print = *layout.find(link.print);
        const BoardItem& frame = *layout.find(link.piece);
        CHECK(link.points.front().x == Approx(print.place.max.x));
        CHECK(print.place.contains(link.points.front()));
        CHECK(link.points.back().x == Approx(frame.place.min.x));
        CHECK(distance_to(link, link.points[link.points.size() / 2]) < 1e-6);
        CHECK(distance_to(link, link.lock_at) < 2 / layout.scale);
    }
    project.pieces[0].keeps_print = true;
    CHECK(links_of(project, nullptr, layout).front().kept);
}

TEST_CASE("No link from a column farther out runs across what stands next to the middle") {
    const wall::Project project = many(9);
    const Matched matched = match_of(project);
    const MatchLayout layout = lay_out_match(project, &matched, kPaper);
    REQUIRE(std::ranges::any_of(layout.prints.items,
                                [](const BoardItem& item) { return item.column > 0; }));
    for (const Link& link : links_of(project, &matched, layout))
        for (const BoardItem& item : layout.prints.items)
            if (item.print != link.print)
                for (const auto& point : link.points)
                    CHECK_FALSE(item.place.grown(-1).contains(point));
}

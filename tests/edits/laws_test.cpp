// What holds after any series of edits.
#include "edits/card.h"
#include "edits/edit.h"
#include "edits/pieces.h"
#include "edits/prints.h"
#include "edits/room.h"
#include "edits/sound.h"
#include "edits/wishes.h"
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::wall;

namespace {

constexpr int kEdits = 20;

double any_mm(int low, int high) {
    return *rc::gen::inRange(low * 1000, high * 1000) / 1000.0;
}

std::vector<PieceId> some_ids(const Project& project) {
    std::vector<PieceId> ids;
    for (const Piece& piece : project.pieces)
        if (*rc::gen::arbitrary<bool>())
            ids.push_back(piece.id);
    return ids;
}

PieceId one_id(const Project& project) {
    if (project.pieces.empty())
        return {"none"};
    return project.pieces[*rc::gen::inRange<std::size_t>(0, project.pieces.size())].id;
}

/// Edits that only rearrange planned pieces.
Result<Project> any_move(const Project& project, int which) {
    const auto ids = some_ids(project);
    switch (which) {
        case 0:
            return edits::shift(project, ids, {any_mm(-500, 500), any_mm(-500, 500)});
        case 1:
            return edits::turn(project, ids);
        case 2:
            return edits::swap_places(project, one_id(project), one_id(project));
        case 3:
            return edits::align(project, ids, static_cast<edits::Line>(*rc::gen::inRange(0, 6)));
        default:
            return edits::distribute(project, ids,
                                     static_cast<edits::Direction>(*rc::gen::inRange(0, 2)));
    }
}

Result<Project> any_part_change(const Project& project, int which) {
    const double mm = any_mm(-10, 400);
    switch (which) {
        case 0:
            return edits::change_frame(project, one_id(project),
                                       [mm](Frame& one) { one.outside.width = mm; });
        case 1:
            return edits::change_mount(project, one_id(project),
                                       [mm](Mount& one) { one.overlap = mm; });
        case 2:
            return edits::change_print(project, one_id(project),
                                       [mm](Print& one) { one.size.height = mm; });
        default:
            return edits::without_mount(project, one_id(project));
    }
}

Result<Project> any_piece_edit(const Project& project, int which) {
    const auto ids = some_ids(project);
    std::vector<PieceId> made;
    switch (which) {
        case 0:
            return edits::take_down(project, ids);
        case 1:
            return edits::set_state(project, ids, static_cast<PieceState>(*rc::gen::inRange(0, 3)));
        case 2:
            return edits::set_pinned(project, ids, *rc::gen::arbitrary<bool>());
        case 3:
            return edits::remove_pieces(project, std::span(ids).first(ids.empty() ? 0 : 1));
        case 4:
            return edits::duplicate(project, std::span(ids).first(ids.empty() ? 0 : 1),
                                    {any_mm(-50, 50), any_mm(-50, 50)}, made);
        default:
            return edits::change_piece(project, one_id(project), [](Piece& one) {
                one.at = Point<Wall>{any_mm(0, 3000), any_mm(0, 3000)};
            });
    }
}

Result<Project> any_room_edit(const Project& project, int which) {
    const auto corner = *rc::gen::inRange<std::size_t>(0, 6);
    const auto place = Rect<Wall>::at({any_mm(0, 3000), 0}, {any_mm(-5, 900), any_mm(-5, 900)});
    FurnitureId furniture;
    FixtureId fixture;
    switch (which) {
        case 0:
            return edits::move_corner(project, corner, {any_mm(0, 5000), any_mm(0, 3000)});
        case 1:
            return edits::split_side(project, corner);
        case 2:
            return edits::remove_corner(project, corner);
        case 3:
            return edits::add_furniture(project, {{}, FurnitureType::sofa, "", place, {}, {}},
                                        furniture);
        case 4:
            return edits::add_fixture(project, {{}, FixtureType::socket, "", place, {}}, fixture);
        case 5:
            return edits::change_furniture(project, {"sofa"},
                                           [&place](Furniture& one) { one.place = place; });
        case 6:
            return edits::remove(project, FixtureId{"socket"});
        default:
            return edits::remove(project, FurnitureId{"sofa"});
    }
}

Wish any_wish(const Project& project) {
    Wish wish;
    wish.kind = static_cast<WishKind>(*rc::gen::inRange(0, 6));
    wish.first = one_id(project);
    if (is_about_two(wish.kind))
        wish.second = one_id(project);
    if (wish.kind == WishKind::not_over)
        wish.thing = *rc::gen::element<ThingId>(FurnitureId{"sofa"}, FixtureId{"socket"});
    return wish;
}

std::optional<Target> any_target() {
    return *rc::gen::element<std::optional<Target>>(
        std::nullopt, FurnitureId{"sofa"}, FixtureId{"socket"}, WallCorner::top_right,
        Point<Wall>{any_mm(0, 3000), any_mm(0, 3000)},
        Rect<Wall>::at({any_mm(0, 3000), 0}, {any_mm(-5, 900), any_mm(-5, 900)}));
}

Result<Project> any_wish_edit(const Project& project, int which) {
    switch (which) {
        case 0:
            return edits::add_wish(project, any_wish(project));
        case 1:
            return edits::remove_wish(project, *rc::gen::inRange<std::size_t>(0, 3));
        case 2:
            return edits::set_target(project, any_target());
        case 3:
            return edits::set_weight(
                project, *rc::gen::element<std::string>("even_gaps", "balance"),
                *rc::gen::element<std::optional<double>>(std::nullopt, any_mm(-1, 12)));
        case 4:
            return edits::set_wished(project, some_ids(project), *rc::gen::arbitrary<bool>());
        case 5:
            return edits::change_piece(project, one_id(project),
                                       [](Piece& one) { one.stage = *rc::gen::inRange(0, 4); });
        default:
            return edits::clear_stages(project);
    }
}

PrintId one_print(const Project& project) {
    if (project.prints.empty())
        return {"none"};
    return project.prints[*rc::gen::inRange<std::size_t>(0, project.prints.size())].id;
}

Result<Project> any_print_edit(const Project& project, int which) {
    PrintId made;
    switch (which) {
        case 0: {
            Print print;
            print.size = {any_mm(-5, 400), any_mm(50, 400)};
            return edits::add_print(project, print, made);
        }
        case 1:
            return edits::remove_print(project, one_print(project));
        case 2:
            return edits::put_print(project, one_id(project), one_print(project));
        case 3:
            return edits::swap_prints(project, one_id(project), one_id(project));
        case 4:
            return edits::set_keeps_print(project, some_ids(project), *rc::gen::arbitrary<bool>());
        default:
            return edits::change_mount(project, one_id(project), [&project](Mount& one) {
                one.openings.push_back(
                    {one_print(project), FromCorner{any_mm(-5, 300), any_mm(0, 300)}, {}});
                one.base_ratio = any_mm(0, 4);
            });
    }
}

CardSheet any_sheet() {
    CardSheet sheet;
    sheet.size = {any_mm(-5, 1600), any_mm(50, 1600)};
    sheet.count = *rc::gen::inRange(0, 4);
    sheet.margin = any_mm(-1, 30);
    sheet.price = any_mm(-1, 30) / 7;
    return sheet;
}

Result<Project> any_card_edit(const Project& project, int which) {
    CardSheetId made;
    const std::vector<CardSheet> left = {any_sheet()};
    const std::vector<edits::UsedCard> used = {{{"sheet"}, *rc::gen::inRange(0, 3)}};
    switch (which) {
        case 5:
            return edits::keep_blank(
                project, {one_id(project), *rc::gen::inRange(0, 3),
                          *rc::gen::element(CardSheetId{"sheet"}, CardSheetId{"offcut"}),
                          *rc::gen::inRange(0, 3), any_mm(-5, 900), any_mm(0, 900), false});
        case 6:
            return edits::free_blank(project, one_id(project), 1);
        case 7:
            return edits::remove_card(project, {"sheet"});
        case 0:
            return edits::add_card(project, any_sheet(), made);
        case 1:
            return edits::change_card(project, {"sheet"},
                                      [](CardSheet& one) { one.size.width = any_mm(-5, 900); });
        case 2:
            return edits::remove_card(project, {"offcut"});
        case 3:
            return edits::use_card(project, {used, left, {one_id(project)}});
        default:
            return edits::set_mount_cut_price(project, any_mm(-5, 90) / 7);
    }
}

Result<Project> any_edit(const Project& project) {
    switch (*rc::gen::inRange(0, 7)) {
        case 5:
            return any_print_edit(project, *rc::gen::inRange(0, 6));
        case 6:
            return any_card_edit(project, *rc::gen::inRange(0, 8));
        case 0:
            return any_move(project, *rc::gen::inRange(0, 5));
        case 1:
            return any_part_change(project, *rc::gen::inRange(0, 4));
        case 2:
            return any_piece_edit(project, *rc::gen::inRange(0, 6));
        case 3:
            return any_wish_edit(project, *rc::gen::inRange(0, 7));
        default:
            return any_room_edit(project, *rc::gen::inRange(0, 8));
    }
}

Project first_wall() {
    Project project = scenes::wall_of(5000, 3000);
    scenes::add_piece(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {1360.25, 1300}, {500.01, 400});
    scenes::add_piece(project, "tide", {1920, 1333.33}, {200, 250.55});
    scenes::add_hung(project, "fern", {2400, 1300}, {300, 400});
    scenes::add_waiting(project, "reed", {400, 300});
    // Two that share all they can.
    project.pieces[1].frame = project.pieces[0].frame;
    return project;
}

bool is_at_file_step(double mm) {
    return mm == edits::to_file_step(mm);
}

bool card_at_file_steps(const Project& project) {
    bool all = true;
    for (const CardSheet& one : project.card)
        all = all && is_at_file_step(one.size.width) && is_at_file_step(one.size.height) &&
              is_at_file_step(one.margin);
    for (const KeptBlank& one : project.kept_blanks)
        all = all && is_at_file_step(one.left) && is_at_file_step(one.top);
    for (const Mount& mount : project.mounts)
        for (const Opening& one : mount.openings)
            all = all && is_at_file_step(one.at->left) && is_at_file_step(one.at->top);
    return all;
}

bool all_at_file_steps(const Project& project) {
    bool all = card_at_file_steps(project);
    for (const Piece& piece : project.pieces)
        all = all && (!piece.at || (is_at_file_step(piece.at->x) && is_at_file_step(piece.at->y)));
    for (const Point<Wall> corner : project.room.outline.corners)
        all = all && is_at_file_step(corner.x) && is_at_file_step(corner.y);
    for (const Furniture& one : project.room.furniture)
        all = all &&
              one.place == Rect<Wall>::at(one.place.min, {edits::to_file_step(one.place.width()),
                                                          edits::to_file_step(one.place.height())});
    if (project.target)
        if (const auto* point = std::get_if<Point<Wall>>(&*project.target))
            all = all && is_at_file_step(point->x) && is_at_file_step(point->y);
    return all;
}

}  // namespace

TEST_CASE("Every edit leaves a sound project that a file keeps as it is, or is refused") {
    rc::prop("for any series of edits", [] {
        Project project = first_wall();
        for (int i = 0; i < kEdits; ++i) {
            const auto edited = any_edit(project);
            if (!edited) {
                RC_ASSERT_FALSE(edited.error().what.empty());
                RC_ASSERT_FALSE(edited.error().remedy.empty());
                continue;
            }
            RC_ASSERT(faults(*edited).empty());
            RC_ASSERT(all_at_file_steps(*edited));
            project = *edited;
        }
    });
}

TEST_CASE("What hangs or is pinned stays while others are moved about") {
    rc::prop("for any series of moves", [] {
        Project project = first_wall();
        project.pieces[2].pinned = true;
        const Project before = project;
        for (int i = 0; i < kEdits; ++i)
            if (auto moved = any_move(project, *rc::gen::inRange(0, 5)))
                project = std::move(*moved);
        RC_ASSERT(project.pieces[2] == before.pieces[2]);
        RC_ASSERT(project.pieces[3] == before.pieces[3]);
    });
}

TEST_CASE("A part's change leaves all other pieces as they were") {
    rc::prop("for any series of changes of one piece", [] {
        const Project before = first_wall();
        Project project = before;
        for (int i = 0; i < kEdits; ++i) {
            const double mm = any_mm(50, 900);
            auto changed = edits::change_frame(project, {"kelp"},
                                               [mm](Frame& one) { one.outside.height = mm; });
            project = std::move(changed.value());
        }
        for (std::size_t i = 1; i < before.pieces.size(); ++i)
            RC_ASSERT(place_of(project, project.pieces[i]) == place_of(before, before.pieces[i]));
    });
}

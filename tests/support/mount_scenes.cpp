#include "support/mount_scenes.h"

#include "support/scenes.h"

namespace wallwright::scenes {

namespace {

wall::UnderLayer under(double reveal, wall::Colour colour) {
    wall::UnderLayer layer;
    layer.reveal = reveal;
    layer.colour = colour;
    return layer;
}

wall::Mount layered() {
    wall::Mount mount;
    mount.under = {under(5, {0x3A, 0x33, 0x2B})};
    mount.base_extra = 8;
    return mount;
}

wall::Mount three_layers() {
    wall::Mount mount;
    mount.under = {under(5, {0x3A, 0x33, 0x2B}), under(4, {0x8A, 0x3B, 0x2B})};
    return mount;
}

wall::Mount in_a_row() {
    wall::Mount mount;
    mount.bar = 20;
    mount.border_least = 20;
    return mount;
}

wall::Mount floating() {
    wall::Mount mount;
    mount.floats = true;
    mount.colour = {0xE8, 0xDF, 0xCC};
    return mount;
}

wall::Mount straight() {
    wall::Mount mount;
    mount.edge = wall::WindowEdge::straight;
    mount.border_least = 12;
    return mount;
}

void add_by_hand(wall::Project& project) {
    constexpr wall::FromCorner kCorners[] = {{40, 40}, {170, 30}, {60, 190}, {190, 160}};
    wall::Mount mount;
    mount.order = wall::WindowOrder::by_hand;
    mount.border_least = 10;
    add_with_mount(project, "shells", {400, 300}, mount,
                   {{90, 120}, {120, 90}, {60, 60}, {100, 70}});
    for (std::size_t i = 0; i < std::size(kCorners); ++i)
        project.mounts.back().openings[i].at = kCorners[i];
}

}  // namespace

wall::Piece& add_with_mount(wall::Project& project, const std::string& id, geometry::Size outside,
                            wall::Mount mount, const std::vector<geometry::Size>& prints) {
    constexpr wall::Colour kColours[] = {
        {0x56, 0x7A, 0x86}, {0xC7, 0x8E, 0x58}, {0xB0, 0xB7, 0x9A}, {0xA3, 0x64, 0x5A}};
    wall::Piece& piece = add_piece(project, id, {100, 100}, outside);
    mount.id = {id};
    piece.mount = mount.id;
    for (std::size_t i = 0; i < prints.size(); ++i) {
        wall::Print print;
        print.id = {id + "-" + std::to_string(i + 1)};
        print.title = prints.size() == 1 ? piece.title : piece.title + " " + std::to_string(i + 1);
        print.size = prints[i];
        print.colour = kColours[i % std::size(kColours)];
        if (prints.size() == 1)
            piece.print = print.id;
        else
            mount.openings.push_back({print.id, std::nullopt, {}});
        project.prints.push_back(print);
    }
    project.mounts.push_back(mount);
    return piece;
}

wall::Project mounts_to_cut() {
    wall::Project project = wall_of(4000, 2500);
    project.title = "Mounts to cut";
    add_with_mount(project, "kelp", {500, 400}, layered(), {{148, 210}});
    add_with_mount(project, "boats", {600, 300}, in_a_row(), {{130, 180}, {130, 180}, {130, 180}});
    add_with_mount(project, "wreck", {300, 400}, floating(), {{180, 240}});
    add_with_mount(project, "chart", {900, 1200}, three_layers(), {{600, 800}});
    add_with_mount(project, "stamp", {130, 180}, straight(), {{40, 50}});
    add_by_hand(project);
    wall::Mount thin;
    thin.border_least = 15;
    add_with_mount(project, "dune", {210, 270}, thin, {{140, 200}});
    return project;
}

}  // namespace wallwright::scenes

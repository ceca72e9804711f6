#include "support/gallery.h"

#include "support/scenes.h"

#include <array>
#include <string>

namespace wallwright::scenes {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;

/// Gives the piece a mount and a print that leave a border of about a sixth of its width.
void fill(wall::Project& project, const std::string& id, wall::Colour picture,
          wall::Colour moulding) {
    wall::Frame& frame = frame_named(project, id);
    frame.colour = moulding;
    wall::Mount mount;
    mount.id = {id};
    wall::Print print;
    print.id = {id};
    const double border = frame.outside.width / 6;
    print.size = {frame.outside.width - 2 * frame.moulding_width - 2 * border,
                  frame.outside.height - 2 * frame.moulding_width - 2 * border};
    print.colour = picture;
    project.mounts.push_back(mount);
    project.prints.push_back(print);
    for (wall::Piece& piece : project.pieces)
        if (piece.id.text == id) {
            piece.mount = mount.id;
            piece.print = print.id;
        }
}

constexpr wall::Colour kOak{0xB3, 0x8B, 0x45};
constexpr wall::Colour kBlack{0x38, 0x31, 0x2B};
constexpr wall::Colour kWhite{0xD6, 0xD2, 0xC4};

constexpr std::array<wall::Colour, 6> kPictures = {{{0x56, 0x7A, 0x86},
                                                    {0xC7, 0x8E, 0x58},
                                                    {0xB0, 0xB7, 0x9A},
                                                    {0xA3, 0x64, 0x5A},
                                                    {0x4F, 0x5E, 0x6A},
                                                    {0x80, 0x93, 0xB1}}};

void furnish_attic(wall::Project& project) {
    project.room.skirting_height = 110;
    project.room.cable_practice = wall::CablePractice::bs_7671;
    add_furniture(project, wall::FurnitureType::sofa, Rect<Wall>::at({450, 0}, {1950, 800}));
    add_furniture(project, wall::FurnitureType::lamp, Rect<Wall>::at({2860, 0}, {260, 1600}));
    add_fixture(project, wall::FixtureType::light_switch, Rect<Wall>::at({3300, 1050}, {80, 80}));
    add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({3260, 260}, {160, 80}));
}

void hang_attic(wall::Project& project) {
    add_hung(project, "kelp", {800, 1180}, {420, 620}).title = "Kelp, lino on cream";
    add_hung(project, "dune", {1280, 1420}, {500, 380}).title = "Dune path";
    add_hung(project, "tern", {1840, 1420}, {300, 380}).title = "Tern";
    add_hung(project, "tide", {1280, 1060}, {240, 300}).title = "Tide chart, spring";
    add_hung(project, "reef", {1580, 1060}, {300, 300}).title = "Reef";
    wall::Piece& wreck = add_piece(project, "wreck", {2200, 1420}, {420, 520});
    wreck.title = "Wreck of the Anna";
    add_piece(project, "gull", {1940, 1060}, {420, 300}).title = "Gull, asleep";
    add_waiting(project, "buoy", {300, 480}).title = "Buoy";
    add_waiting(project, "lighthouse", {210, 380}).title = "Lighthouse at low water, second state";
    wall::Piece& storm = add_waiting(project, "storm", {400, 380});
    storm.title = "Storm glass";
}

}  // namespace

wall::Project attic_gallery() {
    wall::Project project = wall_of(3700, 2400);
    project.title = "Attic room, south wall";
    project.room.outline.corners = {{0, 0}, {3700, 0}, {3700, 1500}, {2750, 2400}, {0, 2400}};
    furnish_attic(project);
    hang_attic(project);
    for (std::size_t i = 0; i < project.pieces.size(); ++i)
        fill(project, project.pieces[i].id.text, kPictures[i % kPictures.size()],
             i % 3 == 0   ? kBlack
             : i % 3 == 1 ? kOak
                          : kWhite);
    for (wall::Piece& piece : project.pieces) {
        if (piece.id.text == "wreck")
            piece.hanger.type = wall::HangerType::cord_two_hooks;
        if (piece.id.text == "dune")
            piece.hanger.type = wall::HangerType::cord_one_hook;
        if (piece.id.text == "tern")
            piece.hanger.type = wall::HangerType::sawtooth;
    }
    return project;
}

wall::Project salon_of(int pieces) {
    constexpr int kRows = 4;
    const int columns = (pieces + kRows - 1) / kRows;
    constexpr double kGap = 60;
    constexpr Size kSize{240, 300};
    const double width = columns * (kSize.width + kGap) + 1200;
    wall::Project project = wall_of(width, 2900);
    project.title = "Salon";
    project.room.skirting_height = 120;
    add_furniture(project, wall::FurnitureType::sideboard, Rect<Wall>::at({600, 0}, {1600, 780}));
    for (int i = 0; i < pieces; ++i) {
        const Point<Wall> at{600 + (i % columns) * (kSize.width + kGap),
                             1000 + (i / columns) * (kSize.height + kGap)};
        const std::string id = "p" + std::to_string(i + 1);
        add_piece(project, id, at, kSize).title = "Print " + std::to_string(i + 1);
        const auto index = static_cast<std::size_t>(i);
        fill(project, id, kPictures[index % kPictures.size()], index % 2 == 0 ? kBlack : kOak);
    }
    return project;
}

wall::Project stair_gallery() {
    wall::Project project = wall_of(4000, 4000);
    project.title = "Stairwell";
    std::vector<Point<Wall>> corners{{0, 0}};
    for (int step = 1; step <= 8; ++step) {
        corners.push_back({400.0 + 280 * (step - 1), 180.0 * (step - 1)});
        corners.push_back({400.0 + 280 * (step - 1), 180.0 * step});
    }
    corners.insert(corners.end(), {{4000, 1440}, {4000, 4000}, {1500, 4000}, {0, 2600}});
    project.room.outline.corners = corners;
    for (int i = 0; i < 3; ++i) {
        const std::string id = "s" + std::to_string(i + 1);
        add_piece(project, id, {500.0 + 560 * i, 1500.0 + 360 * i}, {400, 500}).title =
            "Landing " + std::to_string(i + 1);
        fill(project, id, kPictures[static_cast<std::size_t>(i)], kOak);
    }
    return project;
}

}  // namespace wallwright::scenes

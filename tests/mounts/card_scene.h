// Walls whose mounts are to be cut, for the tests of the card plan.
#pragma once

#include "mounts/card/card_plan.h"
#include "support/scenes.h"

#include <fmt/format.h>

#include <algorithm>
#include <string>

namespace wallwright::mounts::test {

inline constexpr wall::Colour kCream{0xFA, 0xF7, 0xF0};
inline constexpr wall::Colour kDark{0x2B, 0x2B, 0x2E};

/// A piece that waits, with a print and a single cream mount whose blank has this size.
inline wall::Mount& add_mounted(wall::Project& project, const std::string& id,
                                geometry::Size blank) {
    wall::Piece& piece = scenes::add_waiting(project, id, {blank.width + 30, blank.height + 30});
    wall::Frame& frame = scenes::frame_named(project, id);
    frame.back_board = blank;
    wall::Print print;
    print.id = {id};
    print.size = {0.6 * blank.width, 0.6 * blank.height};
    project.prints.push_back(print);
    piece.print = print.id;
    piece.mount = wall::MountId{id};
    wall::Mount mount;
    mount.id = {id};
    mount.colour = kCream;
    project.mounts.push_back(mount);
    return project.mounts.back();
}

inline wall::CardSheet& add_sheet(wall::Project& project, const std::string& id,
                                  geometry::Size size, int count = 1) {
    wall::CardSheet sheet;
    sheet.id = {id};
    sheet.title = id;
    sheet.size = size;
    sheet.colour = kCream;
    sheet.count = count;
    project.card.push_back(sheet);
    return project.card.back();
}

/// The same on each run and machine.
inline CardPlan planned(const wall::Project& project, std::uint64_t rounds = 20) {
    CardOptions options;
    options.rounds = rounds;
    return plan_card(project, options, [] { return true; });
}

/// Where a blank lies; its sheet is an index of the lot's plan.
struct Found {
    std::size_t lot = 0;
    std::size_t sheet = 0;
    PlacedBlank placed;
};

/// Of a piece's layer, from 1; nothing where it is left out.
inline std::optional<Found> found(const CardPlan& plan, const std::string& piece, int layer = 1) {
    for (std::size_t lot = 0; lot < plan.lots.size(); ++lot)
        for (std::size_t sheet = 0; sheet < plan.lots[lot].plan.sheets.size(); ++sheet)
            for (const PlacedBlank& placed : plan.lots[lot].plan.sheets[sheet].placed) {
                const BlankOwner& owner = plan.lots[lot].owners[placed.blank];
                if (owner.piece.text == piece && owner.layer + 1 == static_cast<std::size_t>(layer))
                    return Found{lot, sheet, placed};
            }
    return std::nullopt;
}

inline wall::KeptBlank kept_at(const std::string& piece, const std::string& sheet, double left,
                               double top) {
    wall::KeptBlank kept;
    kept.piece = {piece};
    kept.sheet = {sheet};
    kept.left = left;
    kept.top = top;
    return kept;
}

}  // namespace wallwright::mounts::test

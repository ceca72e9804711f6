// A lot of card that is planned, for tests of what is drawn and printed of it.
#pragma once

#include "mounts/card/card_plan.h"
#include "mounts/nest/nest.h"

#include <fmt/format.h>

#include <optional>
#include <string>

namespace wallwright::test {

/// Five blanks, one of them with a window that drops out and one of a mount of two layers, from an
/// offcut with a margin, full sheets to buy and the drop-out.
inline mounts::CardLot some_lot() {
    mounts::CardLot lot;
    lot.card = {wall::MaterialId{"mount_board"}, 1.4};
    lot.colour = {0xFA, 0xF7, 0xF0};
    const auto add = [&lot](const std::string& id, geometry::Size size, std::size_t layers) {
        lot.task.blanks.push_back({id, size});
        std::string title = id;
        title.front() = static_cast<char>(title.front() - 'a' + 'A');
        lot.owners.push_back({wall::PieceId{id}, title, layers - 1, layers});
        lot.kept.push_back(false);
    };
    add("chart", {670, 770}, 1);
    add("kelp", {470, 370}, 2);
    add("dune", {370, 470}, 1);
    add("reef", {190, 250}, 1);
    add("stamp", {100, 150}, 1);
    lot.kept[2] = true;
    lot.windows = {{0, {122, 132, {426, 506}}, true}, {1, {161, 80, {148, 210}}, true}};
    lot.task.sheets.push_back({"offcut", {420, 300}, 1});
    lot.task.sheets.back().margin = 5;
    lot.task.sheets.push_back({"full", {1120, 815}});
    lot.task.sheets.back().to_buy = true;
    lot.task.sheets.back().price = 12.5;
    lot.task.sheets.push_back({"drop", {420, 500}, 1});
    lot.task.sheets.back().drop_out_of = 0;
    lot.origins.push_back({wall::CardSheetId{"offcut"}, "Offcut of cream"});
    lot.origins.push_back({std::nullopt, "full sheet"});
    lot.origins.push_back({std::nullopt, "drop-out of Chart", true});
    lot.plan = mounts::nest(lot.task, {0, 1, 4}, [] { return true; });
    return lot;
}

}  // namespace wallwright::test

#include "mounts/card/lots.h"

#include "mounts/card/plan_words.h"
#include "mounts/card/still_to_cut.h"
#include "mounts/design/mount_design.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::mounts {

namespace {

using wall::Piece;
using wall::PieceId;
using wall::Project;

bool is_to_cut(const Piece& piece, const std::vector<PieceId>& only) {
    if (only.empty())
        return is_still_to_cut(piece);
    return std::find(only.begin(), only.end(), piece.id) != only.end();
}

CardLot& lot_for(std::vector<CardLot>& lots, const CutLayer& layer, const std::string& mount) {
    const auto found = std::find_if(lots.begin(), lots.end(), [&layer](const CardLot& lot) {
        return lot.card.material == layer.card.material &&
               geometry::is_same_length(lot.card.thickness, layer.card.thickness) &&
               lot.colour == layer.colour;
    });
    if (found != lots.end())
        return *found;
    CardLot lot;
    lot.card.material = layer.card.material;
    lot.card.thickness = layer.card.thickness;
    lot.colour = layer.colour;
    lot.known_by = mount.empty() ? "" : fmt::format("for {}", mount);
    lots.push_back(std::move(lot));
    return lots.back();
}

void add_windows(CardLot& lot, std::size_t blank, const CutLayer& layer) {
    for (const Window& window : layer.windows)
        lot.windows.push_back({blank,
                               {window.back.min.x, window.back.min.y, window.back.size()},
                               !geometry::is_same_length(window.back.width(), window.face.width()),
                               window.face.size()});
}

void add_layers(std::vector<CardLot>& lots, const Piece& piece, const MountDesign& design,
                const std::string& mount) {
    for (std::size_t i = 0; i < design.layers.size(); ++i) {
        const CutLayer& layer = design.layers[i];
        if (layer.card.thickness <= 0)
            continue;
        CardLot& lot = lot_for(lots, layer, mount);
        add_windows(lot, lot.task.blanks.size(), layer);
        lot.task.blanks.push_back(
            {.id = fmt::format("{}/{}", piece.id.text, i + 1), .size = design.blank});
        lot.owners.push_back({piece.id, title_of(piece), i, design.layers.size()});
        lot.kept.push_back(false);
    }
}

}  // namespace

LotList lots_of(const Project& project, const std::vector<PieceId>& only,
                const std::set<PieceId>& left_out) {
    LotList list;
    for (const Piece& piece : project.pieces) {
        if (!is_to_cut(piece, only) || left_out.contains(piece.id))
            continue;
        if (auto why = why_not_cut(project, piece))
            list.notes.push_back(std::move(*why));
        else
            add_layers(list.lots, piece, *design_of(project, piece),
                       find(project, *piece.mount)->title);
    }
    return list;
}

std::set<PieceId> pieces_left_out(const std::vector<CardLot>& lots) {
    std::set<PieceId> pieces;
    for (const CardLot& lot : lots)
        for (const std::size_t blank : lot.plan.left_out)
            pieces.insert(lot.owners[blank].piece);
    return pieces;
}

std::vector<PieceId> pieces_cut(const std::vector<CardLot>& lots) {
    std::set<PieceId> pieces;
    for (const CardLot& lot : lots)
        for (const BlankOwner& owner : lot.owners)
            pieces.insert(owner.piece);
    return {pieces.begin(), pieces.end()};
}

std::string title_of_drop_out(const CardLot& lot, std::size_t window) {
    std::size_t number = 0;
    std::size_t count = 0;
    for (std::size_t i = 0; i < lot.windows.size(); ++i) {
        count += lot.windows[i].blank == lot.windows[window].blank ? 1 : 0;
        if (i == window)
            number = count;
    }
    const std::string of = blank_name(lot.owners[lot.windows[window].blank]);
    return count == 1 ? fmt::format("drop-out of {}", of)
                      : fmt::format("drop-out {} of {}", number, of);
}

std::string without_size(std::string title, geometry::Size size, units::LengthUnit unit) {
    for (const geometry::Size lying : {size, size.turned()}) {
        const std::string end = fmt::format(", {}", size_text(lying, unit));
        if (!title.ends_with(end))
            continue;
        title.resize(title.size() - end.size());
        break;
    }
    return title;
}

std::string size_text(geometry::Size size, units::LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

std::string card_name(const CardLot& lot, units::LengthUnit unit) {
    std::string material = lot.card.material.text;
    std::replace(material.begin(), material.end(), '_', ' ');
    // Nobody measures board in cm.
    const auto of_board = unit == units::LengthUnit::cm ? units::LengthUnit::mm : unit;
    return fmt::format("{}, {}, {}", material, units::format_length(lot.card.thickness, of_board),
                       lot.known_by.empty() ? wall::to_text(lot.colour) : lot.known_by);
}

}  // namespace wallwright::mounts

#include "mounts/card/lots.h"

#include "mounts/card/sheets.h"
#include "mounts/card/still_to_cut.h"
#include "mounts/design/remarks.h"
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

/// Why the mount of a piece cannot be cut, if it cannot.
std::optional<std::string> in_the_way(const Project& project, const Piece& piece,
                                      const std::optional<MountDesign>& design) {
    const std::string& title = title_of(piece);
    if (!piece.mount)
        return fmt::format("{} has no mount to cut.", title);
    if (!design)
        return fmt::format(
            "The mount of {} is left out. A window of it has no print; put one in, so that its "
            "size is known.",
            title);
    for (const Remark& remark : remarks_on(*design, *find(project, *piece.mount), project.unit))
        if (remark.severity == wall::Severity::stop)
            return fmt::format("The mount of {} is left out. {}", title, remark.text);
    return std::nullopt;
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
        lot.windows.push_back(
            {blank,
             {window.back.min.x, window.back.min.y, window.back.size()},
             !geometry::is_same_length(window.back.width(), window.face.width())});
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

void name_after_sheet(const Project& project, CardLot& lot) {
    for (const wall::CardSheet* sheet : recorded(project, lot))
        if (!sheet->title.empty()) {
            lot.known_by = fmt::format("as {}", sheet->title);
            return;
        }
}

}  // namespace

LotList lots_of(const Project& project, const std::vector<PieceId>& only) {
    LotList list;
    for (const Piece& piece : project.pieces) {
        if (!is_to_cut(piece, only))
            continue;
        const auto design = design_of(project, piece);
        if (auto why = in_the_way(project, piece, design))
            list.notes.push_back(std::move(*why));
        else
            add_layers(list.lots, piece, *design, find(project, *piece.mount)->title);
    }
    for (CardLot& lot : list.lots)
        name_after_sheet(project, lot);
    return list;
}

std::string name_of(const BlankOwner& owner) {
    return owner.layers == 1 ? owner.title
                             : fmt::format("{}, layer {}", owner.title, owner.layer + 1);
}

std::string title_of_drop_out(const CardLot& lot, std::size_t window) {
    std::size_t number = 0;
    std::size_t count = 0;
    for (std::size_t i = 0; i < lot.windows.size(); ++i) {
        count += lot.windows[i].blank == lot.windows[window].blank ? 1 : 0;
        if (i == window)
            number = count;
    }
    const std::string of = name_of(lot.owners[lot.windows[window].blank]);
    return count == 1 ? fmt::format("drop-out of {}", of)
                      : fmt::format("drop-out {} of {}", number, of);
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

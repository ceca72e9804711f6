// Sheets of card that mounts are cut from: those at hand, offcuts among them, and those to buy.
#pragma once

#include "geometry/rect.h"
#include "wall/colour.h"
#include "wall/layer.h"
#include "wall/names.h"

#include <string>

namespace wallwright::wall {

/// Which way a sheet's pattern or grain runs; blanks from one that has any are not turned.
enum class Grain { none, across, upright };
template <>
struct Names<Grain> {
    static constexpr std::string_view values[] = {"none", "across", "upright"};
};

/// So many sheets of one kind.
struct CardSheet {
    CardSheetId id;
    std::string title;
    geometry::Size size;  ///< mm
    Layer card{MaterialId{"mount_board"}, 1.4};
    Colour colour{0xFA, 0xF7, 0xF0};
    int count = 1;        ///< At hand; of those to buy, as many as it takes.
    bool to_buy = false;  ///< Not at hand.
    double price = 0;     ///< Of one, in the person's money; 0 where it is not known.
    bool offcut = false;  ///< Left from a plan.
    Grain grain = Grain::none;
    double margin = 0;  ///< mm along every edge that are damaged and not used.
    UnknownKeys unknown = {};
    bool operator==(const CardSheet&) const = default;
};

/// A blank that stays where a person put it on a sheet while all others are laid about it.
struct KeptBlank {
    PieceId piece;      ///< Whose mount it is for.
    int layer = 1;      ///< Of that mount, from 1 for the top one.
    CardSheetId sheet;  ///< The kind of sheet that it is cut from,
    int number = 1;     ///< and which of that kind, from 1.
    double left = 0;    ///< mm from the sheet's left edge to the blank's, as it lies.
    double top = 0;     ///< mm from the sheet's top edge.
    bool turned = false;
    UnknownKeys unknown = {};
    bool operator==(const KeptBlank&) const = default;
};

}  // namespace wallwright::wall

// The document: everything one wall needs, as one value.
#pragma once

#include "units/length.h"
#include "wall/card.h"
#include "wall/catalogue.h"
#include "wall/finding.h"
#include "wall/piece.h"
#include "wall/room.h"
#include "wall/style.h"
#include "wall/wishes.h"

#include <optional>
#include <string>
#include <vector>

namespace wallwright::wall {

/// What is in the drawer: so many of one kind of fixing.
struct Stock {
    FixingTypeId fixing;
    int count = 0;
    UnknownKeys unknown;
    bool operator==(const Stock&) const = default;
};

enum class DatumHeight { floor, ceiling, level_line };
template <>
struct Names<DatumHeight> {
    static constexpr std::string_view values[] = {"floor", "ceiling", "level_line"};
};

enum class DatumSide { left, right };
template <>
struct Names<DatumSide> {
    static constexpr std::string_view values[] = {"left", "right"};
};

/// What marks are measured from.
struct Datum {
    DatumHeight height = DatumHeight::floor;
    DatumSide side = DatumSide::left;
    double level_line = 1500;  ///< mm above the floor; used with DatumHeight::level_line.
    UnknownKeys unknown = {};
    bool operator==(const Datum&) const = default;
};

/// Accuracy class of the tape, as printed on it in an oval: Measuring Instruments Directive
/// 2014/32/EU, Annex X.
enum class TapeClass { one, two, three };
template <>
struct Names<TapeClass> {
    static constexpr std::string_view values[] = {"I", "II", "III"};
};

struct Project {
    std::string title;
    units::LengthUnit unit = units::LengthUnit::mm;
    Room room;
    HangingStyle style;
    std::vector<Frame> frames;
    std::vector<Mount> mounts;
    std::vector<Print> prints;
    std::vector<Piece> pieces;
    std::vector<Stock> stock;
    std::vector<CardSheet> card;
    std::vector<KeptBlank> kept_blanks;
    /// What it costs to have one mount cut, in the same money as the card.
    std::optional<double> mount_cut_price;
    std::vector<Wish> wishes;
    std::optional<Target> target;        ///< Toward which the group grows.
    UnknownKeys target_unknown;          ///< What stands beside the target in the file.
    std::vector<MeasureWeight> weights;  ///< Those that are not the usual ones.
    Catalogue own;  ///< The person's own materials, fixings and sizes; they replace built-in ones
                    ///< of the same name.
    Datum datum;
    TapeClass tape = TapeClass::two;
    UnknownKeys unknown;
    bool operator==(const Project&) const = default;
};

/// Pointers are for immediate use, null where there is none.
const Piece* find(const Project& project, const PieceId& id);
const Frame* find(const Project& project, const FrameId& id);
const Mount* find(const Project& project, const MountId& id);
const Print* find(const Project& project, const PrintId& id);
const CardSheet* find(const Project& project, const CardSheetId& id);
const Furniture* find(const Project& project, const FurnitureId& id);
const Fixture* find(const Project& project, const FixtureId& id);

/// The frame of a piece; a project without it breaks the contract that `faults` checks.
const Frame& frame_of(const Project& project, const Piece& piece);
/// Those of its mount's windows where it has several, or else its own; never null.
std::vector<const Print*> prints_in(const Project& project, const Piece& piece);
/// Outside size as it hangs.
Size outside_size(const Project& project, const Piece& piece);
Size outside_size(const Frame& frame, const Piece& piece);
/// Where the piece is on the wall; empty while it waits.
std::optional<Rect<Wall>> place_of(const Project& project, const Piece& piece);

/// Hung or pinned, so that nothing may move it.
bool is_fixed(const Piece& piece);

/// A piece that has a place.
struct Placed {
    PieceId id;
    Rect<Wall> place;
    bool fixed = false;
    std::string title = {};  ///< For reports; the id stands in for an empty one.
    bool operator==(const Placed&) const = default;
};
/// Every piece with a place, in the project's order.
std::vector<Placed> placed_pieces(const Project& project);

}  // namespace wallwright::wall

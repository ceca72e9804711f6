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

/// What is in the drawer, so many of one kind of fixing, and how the person's shop sells more.
struct Stock {
    FixingTypeId fixing;
    int count = 0;
    std::optional<int> pack = {};      ///< In place of the catalogue's.
    std::optional<double> price = {};  ///< Of a pack, in place of the catalogue's.
    UnknownKeys unknown = {};
    bool operator==(const Stock&) const = default;
};

/// piece: the edges of a piece that hangs already, its top edge and one of its sides.
enum class DatumHeight { floor, ceiling, level_line, piece };
template <>
struct Names<DatumHeight> {
    static constexpr std::string_view values[] = {"floor", "ceiling", "level_line", "piece"};
};

enum class DatumSide { left, right };
template <>
struct Names<DatumSide> {
    static constexpr std::string_view values[] = {"left", "right"};
};

/// What was measured upright from one true level line at the wall's two ends, mm.
struct EndHeights {
    double left = 0;
    double right = 0;
    bool operator==(const EndHeights&) const = default;
};

/// What marks are measured from. A floor or a ceiling may run off level: heights on the wall are
/// true ones above the floor at the wall's left end, and its ceiling there is as high as the
/// outline says.
struct Datum {
    DatumHeight height = DatumHeight::floor;
    DatumSide side = DatumSide::left;
    double level_line = 1500;           ///< mm above the floor; used with DatumHeight::level_line.
    std::optional<PieceId> piece = {};  ///< Whose edges, with DatumHeight::piece.
    std::optional<EndHeights> floor = {};    ///< From the floor up to the level line.
    std::optional<EndHeights> ceiling = {};  ///< From the ceiling down to the level line.
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
    std::optional<double> tape_price;  ///< Of a metre of the tape that mounts are put together by.
    std::optional<double> cord_price;  ///< Of a metre.
    std::optional<Date> hangs_on;      ///< The day on which it is to go up.
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

/// Where the piece is whose edges the marks are measured from; empty for any other datum.
std::optional<Rect<Wall>> datum_place(const Project& project);

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

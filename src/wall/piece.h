// Print + mount + frame = one piece, with a hanger on its back.
#pragma once

#include "units/mass.h"
#include "wall/mount.h"
#include "wall/room.h"

#include <optional>
#include <string>

namespace wallwright::wall {

using units::Kilograms;
using units::Newtons;

/// One frame as bought. `outside` is upright as the frame hangs when its piece is not turned.
struct Frame {
    FrameId id;
    std::string title;
    Size outside;                ///< mm over the moulding.
    double depth = 20;           ///< mm from the wall to the front of the moulding.
    double moulding_width = 20;  ///< mm of moulding seen from the front.
    double rebate_width = 6;  ///< mm of the lip that covers the edge of what is in it; 3 to 6 mm, a
                              ///< German frame dealer's article.
    double rebate_depth = 12;  ///< mm from the lip to the back of the moulding.
    /// mm of the back board as measured, upright like `outside`: the usual template for what goes
    /// into the frame. Without it the rebate is worked out.
    std::optional<Size> back_board;
    MaterialId moulding{"pine"};
    Layer glazing{MaterialId{"glass"}, 2};
    Layer backing{MaterialId{"mdf_thin"}, 2.5};
    Colour colour{0x3A, 0x33, 0x2B};
    bool rough_back = false;  ///< Its back is rough, dusty or soft, so that no strip holds.
    double price = 0;         ///< In the person's money; 0 where it is not known.
    UnknownKeys unknown;
    bool operator==(const Frame&) const = default;
};

/// As the camera or the scanner gave it.
struct PixelSize {
    int width = 0;
    int height = 0;
    bool operator==(const PixelSize&) const = default;
};

/// A picture on paper.
struct Print {
    PrintId id;
    std::string title;
    Size size;  ///< mm of the sheet.
    double grams_per_square_metre = 250;
    Colour colour{0x56, 0x7A, 0x86};  ///< Shown where there is no picture.
    std::string picture;              ///< A PNG beside the project file; may be empty.
    std::optional<PixelSize> pixels;  ///< Of the person's own photograph, for a look at sharpness.
    UnknownKeys unknown;
    bool operator==(const Print&) const = default;
};

/// How a frame's back takes a fixing. keyholes: two slots that drop over the heads of screws.
enum class HangerType { strips, sawtooth, two_rings, cord_one_hook, cord_two_hooks, keyholes };
template <>
struct Names<HangerType> {
    static constexpr std::string_view values[] = {"strips",        "sawtooth",       "two_rings",
                                                  "cord_one_hook", "cord_two_hooks", "keyholes"};
};

/// What is screwed or stuck to the frame's back. A measure that was not taken stays empty and is
/// then taken from the size of the frame as usual in the trade (hanging/bearing.h says how).
struct Hanger {
    HangerType type = HangerType::strips;
    std::optional<double>
        drop;  ///< mm from the frame's top to the rings, the keyholes' upper ends or the teeth.
    std::optional<double> ring_spacing;  ///< mm between the rings or the keyholes.
    std::optional<double> cord_length;   ///< mm of cord from ring to ring.
    std::optional<double> hook_spacing;  ///< mm between two hooks that share a cord.
    UnknownKeys unknown;
    bool operator==(const Hanger&) const = default;
};

/// hung: on the wall today; planned: has a place on paper; waiting: stands on the floor without
/// one.
enum class PieceState { hung, planned, waiting };
template <>
struct Names<PieceState> {
    static constexpr std::string_view values[] = {"hung", "planned", "waiting"};
};

struct Piece {
    PieceId id;
    std::string title;
    FrameId frame;
    std::optional<MountId> mount;
    std::optional<PrintId> print;
    bool keeps_print = false;  ///< Its print stays in it when prints are matched to frames.
    bool mount_cut = false;    ///< Its mount is cut, and needs no more card.
    bool turned = false;       ///< Hung a quarter turn from how its frame is recorded.
    PieceState state = PieceState::waiting;
    bool pinned = false;         ///< Planned, and not to be moved.
    bool wished = false;         ///< Its frame is not bought yet, so it cannot hang.
    bool irreplaceable = false;  ///< An heirloom, an original: not to be risked.
    int stage = 0;  ///< In which stage of growth it goes up, from 1, while it is planned; 0 for
                    ///< none.
    std::optional<Point<Wall>> at;  ///< Lower left corner; always there unless the piece waits.
    Hanger hanger;
    std::optional<FixingTypeId> fixing;  ///< The person's own choice; otherwise one is chosen.
    std::optional<Kilograms>
        weighed;  ///< From a scale; replaces the weight worked out from materials.
    UnknownKeys unknown;
    bool operator==(const Piece&) const = default;
};

}  // namespace wallwright::wall

// All mounts of a wall that are still to be cut, on the card at hand and the card to buy.
#pragma once

#include "base/problem.h"
#include "mounts/nest/plan.h"
#include "units/length.h"
#include "wall/project.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace wallwright::mounts {

/// Whose blank it is.
struct BlankOwner {
    wall::PieceId piece;
    std::string title;       ///< Of the piece; its id stands in for an empty one.
    std::size_t layer = 0;   ///< Of its mount, from the top one.
    std::size_t layers = 1;  ///< So many it has.
    bool operator==(const BlankOwner&) const = default;
};

/// Where the sheets of one kind come from.
struct SheetOrigin {
    std::optional<wall::CardSheetId> id;  ///< In the project; none for a drop-out and for a sheet
                                          ///< that nobody recorded.
    std::string title;                    ///< "drop-out of Kelp", "full sheet, 1120 x 815 mm".
    bool drop_out = false;
    /// The sheet lies a quarter turn from how it is recorded, so that its grain runs upright.
    bool turned = false;
    std::optional<std::size_t> window = {};  ///< Of the lot's windows: what a drop-out comes from.
    /// Before it is trimmed to the task's sheet, as that lies: as recorded, of a drop-out its face.
    geometry::Size untrimmed = {};
    bool operator==(const SheetOrigin&) const = default;
};

/// A window of a blank at the board's back: what drops out of it is card of that size, rounded down
/// to the rule's step (mounts/card/on_rule.h).
struct LotWindow {
    std::size_t blank = 0;  ///< Of the lot's task.
    OnSheet place;  ///< From the unturned blank's left and top edge, as seen from the front.
    bool bevelled = false;     ///< Then what drops out is to be trimmed square to that size.
    geometry::Size face = {};  ///< Of what drops out, as it falls.
    bool operator==(const LotWindow&) const = default;
};

/// One card: of one material, thickness and colour.
struct CardLot {
    wall::Layer card;
    wall::Colour colour;
    /// What a person knows it by: "as Warm white sheet" after a sheet of the project that has a
    /// title, one that the plan takes before others and a full one before an offcut; else "for Warm
    /// white over slate" after the mount; may be empty.
    std::string known_by;
    NestTask task;
    std::vector<BlankOwner> owners;    ///< Of the task's blanks.
    std::vector<bool> kept;            ///< Of the task's blanks: lies where a person put it.
    std::vector<LotWindow> windows;    ///< Of all its blanks.
    std::vector<SheetOrigin> origins;  ///< Of the task's sheets.
    NestPlan plan;
};

/// In the person's money.
struct CardCost {
    double to_buy = 0;                  ///< Of the sheets to buy whose price is known.
    std::size_t bought = 0;             ///< Sheets to buy.
    std::size_t without_price = 0;      ///< Those of them whose price nobody said.
    std::size_t mounts = 0;             ///< That are cut.
    std::optional<double> cut_for_you;  ///< Of having so many mounts cut, where its price is known.
    bool operator==(const CardCost&) const = default;
};

struct CardPlan {
    std::vector<CardLot> lots;  ///< In the order in which the pieces first ask for them.
    CardCost cost;
    units::LengthUnit unit = units::LengthUnit::mm;  ///< Of all titles and notes.
    std::vector<std::string> notes;  ///< Sentences: mounts left out and why, kept blanks that could
                                     ///< not stay.
};

struct CardOptions {
    double seconds = 2;  ///< For each lot at most; a lot that is proved ends at once.
    std::uint64_t seed = 1;
    std::uint64_t rounds = 0;           ///< As in NestOptions.
    std::vector<wall::PieceId> only{};  ///< None: of all pieces whose mounts are still to be cut.
};

/// A piece's mount is still to be cut while the piece does not hang and its frame is there; one
/// that is asked for in `only` is, whatever its state. Blanks of one card go into one lot. Where
/// the sheets at hand suffice, the plan is made of these alone, so that its bound is about them;
/// where they do not and the project knows none to buy, full sheets are bought, 1120 x 815 mm (UK
/// board makers' catalogues, from memory) or 40 x 32 in where the project measures in inches. Where
/// one sheet of a lot has a grain or pattern, no blank of that lot is turned and it runs upright in
/// every mount. A kept blank's sheet is cut about it; then the bound is that of plans that keep it.
/// Sheets and drop-outs are taken as the largest on the rule that they hold, so that every figure
/// of a plan is on the rule and the figures shown add up.
CardPlan plan_card(const wall::Project& project, const CardOptions& options,
                   const std::function<bool()>& go_on);

/// "mount board, 1.4 mm, as Warm white sheet"; by its colour where nobody named it.
std::string card_name(const CardLot& lot, units::LengthUnit unit);

/// What a person has at hand after cutting.
struct AfterCutting {
    struct Used {
        wall::CardSheetId sheet;
        int count = 0;
        bool operator==(const Used&) const = default;
    };
    std::vector<Used> used;             ///< Recorded sheets that are gone, bought ones among them.
    std::vector<wall::CardSheet> left;  ///< Offcuts and drop-outs worth keeping, equal ones once.
    std::vector<wall::PieceId> cut;     ///< Whose mounts have every blank in the plan.
};
/// mm; a strip narrower than this is no card for a mount; common practice, no source.
inline constexpr double kOffcutLeast = 100;
/// Both sides of what is left are at least kOffcutLeast. As it lies, so that a grain runs upright.
AfterCutting after_cutting(const CardPlan& plan);

/// Whose blank stays where it is, or goes elsewhere.
struct BlankMove {
    std::size_t lot = 0;
    std::size_t sheet = 0;  ///< Of the lot's plan: where it shall lie.
    std::size_t blank = 0;  ///< Of the lot's task.
    double left = 0;
    double top = 0;
    bool turned = false;
};
/// The blank as it would be kept there, on the rule's nearest line, or why it cannot: it leaves the
/// card, lies on another that is kept, no straight cuts from edge to edge would part it from those
/// that are kept, a sheet with grain, a drop-out or a sheet that is not recorded. `place` of the
/// Problem is the blank's title.
Result<wall::KeptBlank> kept_there(const wall::Project& project, const CardPlan& plan,
                                   const BlankMove& move);

}  // namespace wallwright::mounts

// The card plan in sentences, for the command line, the pages and the bench alike.
#pragma once

#include "mounts/card/card_plan.h"

#include <string>
#include <string_view>
#include <vector>

namespace wallwright::mounts {

/// How sizes are written.
struct SizeStyle {
    units::LengthUnit unit = units::LengthUnit::mm;
    std::string_view times = "×";  ///< Between width and height.
};

/// "Kelp", or "Kelp, layer 2 of 3".
std::string blank_name(const BlankOwner& owner);

/// What to do before the first cut of any sheet, one sentence or two each.
std::vector<std::string> steps_before(units::LengthUnit unit);

/// How many sheets, how much of them becomes no blank, and how many blanks are left out.
std::string sum_words(const CardLot& lot);
/// Whether fewer sheets would do, and that this holds only while kept blanks stay where there are
/// any; "" where nothing is known of it.
std::string bound_words(const CardLot& lot);
/// Both.
std::string lot_words(const CardLot& lot);

/// "to buy", "at hand" or "drops out"; "" for a sheet that was only given a size.
std::string where_from(const CardLot& lot, std::size_t kind);
/// What follows a sheet's title: ", once that window is cut", or how its grain lies; may be "".
std::string sheet_remark(const CardLot& lot, std::size_t kind);
/// How a drop-out, or a sheet larger than the rule has it, becomes the one that the plan cuts; ""
/// for all others.
std::string trim_words(const CardLot& lot, std::size_t kind, const SizeStyle& style);

/// For each cut of the sheet: the piece in hand, from which edge and how far, what comes off.
std::vector<std::string> cut_sentences(const CardLot& lot, const CutSheet& sheet,
                                       const SizeStyle& style);
/// What is left of the sheet after all cuts, or that nothing is.
std::string left_words(const CutSheet& sheet, const SizeStyle& style);
/// One for each blank that no sheet has room for.
std::vector<std::string> left_out_sentences(const CardLot& lot, const SizeStyle& style);

/// What is bought and what having the mounts cut would cost; one sentence each.
std::vector<std::string> cost_sentences(const CardCost& cost);

}  // namespace wallwright::mounts

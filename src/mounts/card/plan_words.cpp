#include "mounts/card/plan_words.h"

#include "mounts/card/on_rule.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::mounts {

namespace {

using units::LengthUnit;

std::string words_of(geometry::Size size, const SizeStyle& style) {
    return fmt::format("{} {} {}", units::format_number(size.width, style.unit), style.times,
                       units::format_length(size.height, style.unit));
}

std::string counted(std::size_t count, std::string_view one) {
    return fmt::format("{} {}{}", count, one, count == 1 ? "" : "s");
}

bool keeps_any(const CardLot& lot) {
    return std::find(lot.kept.begin(), lot.kept.end(), true) != lot.kept.end();
}

/// What a cut parts the piece into: what lies before it, and the rest.
std::pair<OnSheet, OnSheet> parts_of(const SheetCut& cut) {
    OnSheet first = cut.piece;
    OnSheet rest = cut.piece;
    if (cut.upright) {
        first.size.width = cut.at - cut.piece.left;
        rest.left = cut.at;
        rest.size.width -= first.size.width;
    } else {
        first.size.height = cut.at - cut.piece.top;
        rest.top = cut.at;
        rest.size.height -= first.size.height;
    }
    return {first, rest};
}

/// Blanks that the cut brings out.
std::vector<std::string> brought_out(const CardLot& lot, const CutSheet& sheet,
                                     const SheetCut& cut) {
    std::vector<std::string> names;
    const auto [first, rest] = parts_of(cut);
    for (const OnSheet& part : {first, rest})
        for (const PlacedBlank& placed : sheet.placed)
            if (geometry::is_same_length(placed.place.left, part.left) &&
                geometry::is_same_length(placed.place.top, part.top) &&
                geometry::is_same_size(placed.place.size, part.size))
                names.push_back(blank_name(lot.owners[placed.blank]));
    return names;
}

}  // namespace

std::string blank_name(const BlankOwner& owner) {
    return owner.layers == 1
               ? owner.title
               : fmt::format("{}, layer {} of {}", owner.title, owner.layer + 1, owner.layers);
}

std::vector<std::string> steps_before(LengthUnit unit) {
    // Sides of a right triangle, mm.
    const double short_side = unit == LengthUnit::inch ? 12 * units::kMmPerInch : 300;
    return {
        "Measure each sheet, those just bought too: a plan may use a sheet to its edge, so one "
        "that is smaller than said here spoils it.",
        fmt::format("Find a corner that is square: {} along one edge and {} along the other are {} "
                    "apart there. A whole sheet is square where its diagonals are equal.",
                    units::format_length(short_side, unit),
                    units::format_length(short_side * 4 / 3, unit),
                    units::format_length(short_side * 5 / 3, unit)),
        "Lay the sheet with that corner at the upper left and begin there: every figure is from "
        "the left or upper edge of the piece in hand.",
    };
}

std::string sum_words(const CardLot& lot) {
    const NestPlan& plan = lot.plan;
    if (plan.count == 0)
        return "Nothing of it can be cut.";
    std::string words =
        fmt::format("{}; {:.1f} % of {} no blank", counted(plan.count, "sheet"), 100 * plan.waste,
                    plan.count == 1 ? "it becomes" : "them become");
    if (const std::size_t out = plan.left_out.size(); out > 0)
        words += fmt::format("; {} {} left out", counted(out, "blank"), out == 1 ? "is" : "are");
    return words + ".";
}

std::string bound_words(const CardLot& lot) {
    const NestPlan& plan = lot.plan;
    if (plan.count == 0 || plan.bound == 0)
        return "";
    const bool keeps = keeps_any(lot);
    const char* stay = "While the kept blanks stay where they are, ";
    if (plan.proved)
        return fmt::format("{} plan from these sheets takes fewer: that is proved.",
                           keeps ? fmt::format("{}no", stay) : "No");
    if (plan.bound >= plan.count)
        return "";
    return fmt::format("{} least {} {} needed; whether {} would do is not proved.",
                       keeps ? fmt::format("{}at", stay) : "At", counted(plan.bound, "sheet"),
                       plan.bound == 1 ? "is" : "are", plan.count - 1);
}

std::string lot_words(const CardLot& lot) {
    const std::string bound = bound_words(lot);
    return fmt::format("{}{}{}", sum_words(lot), bound.empty() ? "" : " ", bound);
}

std::string where_from(const CardLot& lot, std::size_t kind) {
    if (lot.origins.at(kind).drop_out)
        return "drops out";
    if (lot.task.sheets.at(kind).to_buy)
        return "to buy";
    return lot.origins.at(kind).id ? "at hand" : "";
}

std::string sheet_remark(const CardLot& lot, std::size_t kind) {
    const SheetOrigin& origin = lot.origins.at(kind);
    if (origin.drop_out)
        return ", once that window is cut";
    if (origin.turned)
        return ", laid a quarter turn so that its grain runs upright";
    return lot.task.sheets.at(kind).has_grain ? ", its grain upright" : "";
}

std::string trim_words(const CardLot& lot, std::size_t kind, const SizeStyle& style) {
    const SheetOrigin& origin = lot.origins.at(kind);
    const NestSheet& sheet = lot.task.sheets.at(kind);
    const bool larger = std::max(origin.untrimmed.width - sheet.size.width,
                                 origin.untrimmed.height - sheet.size.height) > kOffTheRule;
    if (!larger)
        return "";
    const std::string size = words_of(sheet.size, style);
    if (!origin.drop_out)
        // A margin is cut off at all four edges anyway.
        return sheet.margin > 0
                   ? ""
                   : fmt::format(
                         "It is a little larger: trim it first to {}, at its right and lower edge.",
                         size);
    const bool bevelled = origin.window && lot.windows.at(*origin.window).bevelled;
    return fmt::format(
        "It falls out {} at its face. Trim {} first, to {}, as much at each edge as at the one "
        "across from it.",
        words_of(origin.untrimmed, style), bevelled ? "its bevelled edges square" : "it", size);
}

std::vector<std::string> cut_sentences(const CardLot& lot, const CutSheet& sheet,
                                       const SizeStyle& style) {
    std::vector<std::string> sentences;
    for (const SheetCut& cut : sheet.cuts) {
        const double start = cut.upright ? cut.piece.left : cut.piece.top;
        std::string text = fmt::format("In hand the piece of {}: cut {}, {} from its {} edge.",
                                       words_of(cut.piece.size, style),
                                       cut.upright ? "upright, from its upper to its lower edge"
                                                   : "across, from its left to its right edge",
                                       units::format_length(cut.at - start, style.unit),
                                       cut.upright ? "left" : "upper");
        if (const auto names = brought_out(lot, sheet, cut); !names.empty())
            text +=
                fmt::format(" {} {} done.", wall::listed(names), names.size() == 1 ? "is" : "are");
        sentences.push_back(std::move(text));
    }
    return sentences;
}

std::string left_words(const CutSheet& sheet, const SizeStyle& style) {
    std::vector<std::string> sizes;
    for (const OnSheet& offcut : sheet.offcuts)
        sizes.push_back(words_of(offcut.size, style));
    return sizes.empty() ? "Nothing is left over."
                         : fmt::format("Left over: {}.", wall::listed(sizes));
}

std::vector<std::string> left_out_sentences(const CardLot& lot, const SizeStyle& style) {
    std::vector<std::string> sentences;
    for (const std::size_t blank : lot.plan.left_out)
        sentences.push_back(fmt::format("No sheet has room for {}, {}.",
                                        blank_name(lot.owners[blank]),
                                        words_of(lot.task.blanks[blank].size, style)));
    return sentences;
}

std::vector<std::string> cost_sentences(const CardCost& cost) {
    std::vector<std::string> sentences;
    if (cost.bought == 0)
        sentences.emplace_back("All comes from card at hand; nothing is to be bought.");
    else if (cost.without_price == cost.bought)
        sentences.push_back(
            fmt::format("{} to buy; no price was said.", counted(cost.bought, "sheet")));
    else
        sentences.push_back(
            fmt::format("{} to buy for {:.2f}{}.", counted(cost.bought, "sheet"), cost.to_buy,
                        cost.without_price == 0
                            ? ""
                            : fmt::format(", and {} of them without a price", cost.without_price)));
    if (cost.cut_for_you)
        sentences.push_back(
            fmt::format("Having {} cut would cost {:.2f}.",
                        cost.mounts == 1 ? "the mount" : fmt::format("all {} mounts", cost.mounts),
                        *cost.cut_for_you));
    return sentences;
}

}  // namespace wallwright::mounts

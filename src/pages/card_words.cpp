#include "pages/card_words.h"

#include "units/length.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::pages {

namespace {

using mounts::OnSheet;
using units::LengthUnit;

std::string size_words(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

bool is_same(const OnSheet& a, const OnSheet& b) {
    return geometry::is_same_length(a.left, b.left) && geometry::is_same_length(a.top, b.top) &&
           geometry::is_same_size(a.size, b.size);
}

/// What a cut parts the piece into: what lies before it, and the rest.
std::pair<OnSheet, OnSheet> parts_of(const mounts::SheetCut& cut) {
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

/// The blank that the piece is; "" for what is left over or cut further.
std::string blank_at(const mounts::CardLot& lot, const mounts::CutSheet& sheet,
                     const OnSheet& piece) {
    for (const mounts::PlacedBlank& placed : sheet.placed)
        if (is_same(placed.place, piece))
            return blank_name(lot.owners[placed.blank]);
    return "";
}

std::string sheets_words(std::size_t count) {
    return count == 1 ? "1 sheet" : fmt::format("{} sheets", count);
}

}  // namespace

std::string blank_name(const mounts::BlankOwner& owner) {
    return owner.layers == 1
               ? owner.title
               : fmt::format("{}, layer {} of {}", owner.title, owner.layer + 1, owner.layers);
}

std::vector<std::string> cut_sentences(const mounts::CardLot& lot, const mounts::CutSheet& sheet,
                                       LengthUnit unit) {
    std::vector<std::string> sentences;
    for (const mounts::SheetCut& cut : sheet.cuts) {
        const double start = cut.upright ? cut.piece.left : cut.piece.top;
        std::string text =
            fmt::format("In hand the piece of {}: cut {}, {} from its {} edge.",
                        size_words(cut.piece.size, unit),
                        cut.upright ? "upright, from its upper to its lower edge"
                                    : "across, from its left to its right edge",
                        units::format_length(cut.at - start, unit), cut.upright ? "left" : "upper");
        const auto [first, rest] = parts_of(cut);
        std::vector<std::string> done;
        for (const OnSheet& part : {first, rest})
            if (const std::string blank = blank_at(lot, sheet, part); !blank.empty())
                done.push_back(blank);
        if (!done.empty())
            text +=
                fmt::format(" {} {} done.", wall::listed(done), done.size() == 1 ? "is" : "are");
        sentences.push_back(std::move(text));
    }
    return sentences;
}

std::string left_words(const mounts::CutSheet& sheet, LengthUnit unit) {
    std::vector<std::string> sizes;
    for (const OnSheet& offcut : sheet.offcuts)
        sizes.push_back(size_words(offcut.size, unit));
    return sizes.empty() ? "Nothing is left over."
                         : fmt::format("Left over: {}.", wall::listed(sizes));
}

std::string lot_words(const mounts::CardLot& lot) {
    const mounts::NestPlan& plan = lot.plan;
    std::string text;
    if (plan.count == 0)
        text = "No sheet is cut into.";
    else
        text = fmt::format("{}, of which {:.0f} % become no mount.", sheets_words(plan.count),
                           100 * plan.waste);
    if (plan.proved)
        text += " No plan of straight cuts takes fewer: that is proved.";
    else if (plan.bound < plan.count)
        text +=
            fmt::format(" At least {} {} needed; whether {} would do is not proved.",
                        sheets_words(plan.bound), plan.bound == 1 ? "is" : "are", plan.count - 1);
    return text;
}

std::vector<std::string> cost_sentences(const mounts::CardCost& cost) {
    std::vector<std::string> sentences;
    if (cost.bought == 0)
        sentences.emplace_back("All comes from card at hand; nothing is to be bought.");
    else if (cost.without_price == cost.bought)
        sentences.push_back(
            fmt::format("{} to buy; no price was said.", sheets_words(cost.bought)));
    else
        sentences.push_back(
            fmt::format("{} to buy for {:.2f}{}.", sheets_words(cost.bought), cost.to_buy,
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

}  // namespace wallwright::pages

#include "buying/parts.h"
#include "mounts/card/still_to_cut.h"
#include "mounts/design/mount_design.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::buying {

namespace {

using mounts::CardLot;
using mounts::MountDesign;

constexpr std::size_t kNamed = 3;

struct ToCut {
    const wall::Piece* piece = nullptr;
    MountDesign design;
};

bool has_card(const mounts::CardPlan& plan, const wall::PieceId& piece) {
    return std::ranges::any_of(plan.lots, [&piece](const CardLot& lot) {
        return std::ranges::find(lot.owners, piece, &mounts::BlankOwner::piece) != lot.owners.end();
    });
}

/// Mounts that the card plan has card for, or those for which no sheet is large enough.
std::vector<ToCut> to_cut(const Job& job, bool with_card = true) {
    std::vector<ToCut> all;
    if (job.card == nullptr)
        return all;
    for (const wall::Piece& piece : job.project.pieces) {
        if (!mounts::is_still_to_cut(piece) || mounts::why_not_cut(job.project, piece) ||
            has_card(*job.card, piece.id) != with_card)
            continue;
        if (auto design = mounts::design_of(job.project, piece))
            all.push_back({&piece, std::move(*design)});
    }
    return all;
}

/// The titles of pieces whose blanks come from sheets of this kind.
std::vector<std::string> cut_from(const CardLot& lot, std::size_t kind) {
    std::vector<std::string> titles;
    for (const mounts::CutSheet& sheet : lot.plan.sheets)
        for (const mounts::PlacedBlank& placed : sheet.placed) {
            const std::string& title = lot.owners[placed.blank].title;
            if (sheet.sheet == kind && std::ranges::find(titles, title) == titles.end())
                titles.push_back(title);
        }
    return titles;
}

void add_sheets(Items& items, const CardLot& lot, std::size_t kind, units::LengthUnit unit) {
    const auto count = static_cast<std::size_t>(
        std::count_if(lot.plan.sheets.begin(), lot.plan.sheets.end(),
                      [kind](const mounts::CutSheet& one) { return one.sheet == kind; }));
    const mounts::NestSheet& sheet = lot.task.sheets[kind];
    if (count == 0 || !sheet.to_buy)
        return;
    std::string name = mounts::card_name(lot, unit);
    name.front() = static_cast<char>(name.front() - 'a' + 'A');
    Item item{Kind::card, fmt::format("{}, {}", name, size_words(sheet.size, unit)),
              counted(count, "sheet", "sheets"),
              fmt::format("for {}", wall::listed(cut_from(lot, kind), kNamed))};
    if (sheet.price > 0)
        item.price = static_cast<double>(count) * sheet.price;
    items.push_back(std::move(item));
}

/// The boards that prints in windows are hung on; common practice, no source.
void add_undermounts(Items& items, const std::vector<ToCut>& all, units::LengthUnit unit) {
    std::vector<std::string> sizes;
    std::size_t count = 0;
    for (const ToCut& one : all) {
        if (one.design.floats)
            continue;
        ++count;
        const std::string size = size_words(one.design.blank, unit);
        if (std::ranges::find(sizes, size) == sizes.end())
            sizes.push_back(size);
    }
    if (count > 0)
        items.push_back({Kind::card, "Acid-free mount card for undermounts",
                         counted(count, "board", "boards"),
                         fmt::format("one behind each mount, to hang the print on: {}",
                                     wall::listed(sizes, kNamed))});
}

double around(const geometry::Rect<mounts::Front>& window) {
    return 2 * (window.width() + window.height());
}

/// mm round every window of every layer but the lowest; common practice, no source.
double between_layers(const MountDesign& design) {
    double length = 0;
    for (std::size_t i = 0; i + 1 < design.layers.size(); ++i)
        for (const mounts::Window& window : design.layers[i].windows)
            length += around(window.back);
    return length;
}

void add_tape(Items& items, const Job& job, const char* title, const char* why, double length) {
    if (length <= 0)
        return;
    const OffTheRoll roll = off_the_roll(length, job.project.unit);
    Item item{Kind::tape, title, roll.amount, why};
    if (job.project.tape_price.value_or(0) > 0)
        item.price = roll.metres * *job.project.tape_price;
    items.push_back(std::move(item));
}

}  // namespace

Items card_to_buy(const Job& job) {
    Items items;
    if (job.card == nullptr)
        return items;
    for (const CardLot& lot : job.card->lots)
        for (std::size_t kind = 0; kind < lot.task.sheets.size(); ++kind)
            add_sheets(items, lot, kind, job.project.unit);
    add_undermounts(items, to_cut(job), job.project.unit);
    return items;
}

Items tape_to_buy(const Job& job) {
    Items items;
    double layers = 0;
    double joints = 0;
    std::size_t prints = 0;
    for (const ToCut& one : to_cut(job)) {
        layers += between_layers(one.design);
        joints += one.design.floats ? 0 : one.design.blank.width;
        prints += one.design.prints.size();
    }
    add_tape(items, job, "Double-sided tape, acid-free",
             "round the windows, between the layers of a mount", layers);
    // M. A. Smith, Matting and Hinging Flat Paper Objects (1992); Library of Congress, Matting and
    // Hinging Works of Art on Paper.
    add_tape(items, job,
             job.project.unit == units::LengthUnit::inch ? "Gummed linen tape, 1 to 2 in wide"
                                                         : "Gummed linen tape, 25 to 50 mm wide",
             "joins each mount to its undermount along the upper edge", joints);
    if (prints > 0)
        items.push_back({Kind::tape, "Japanese paper and wheat-starch paste",
                         counted(2 * prints, "hinge", "hinges"),
                         "two hinges for each print; no self-adhesive tape touches a print"});
    return items;
}

Items cutting_to_buy(const Job& job) {
    std::vector<std::string> titles;
    for (const ToCut& one : to_cut(job, false))
        titles.push_back(wall::title_of(*one.piece));
    if (titles.empty())
        return {};
    Item item{Kind::cutting, "Mount cut by a framer", counted(titles.size(), "mount", "mounts"),
              fmt::format("no sheet has room for {}", wall::listed(titles, kNamed))};
    if (job.project.mount_cut_price.value_or(0) > 0)
        item.price = static_cast<double>(titles.size()) * *job.project.mount_cut_price;
    return {std::move(item)};
}

}  // namespace wallwright::buying

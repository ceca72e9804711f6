#include "buying/shopping.h"

#include "buying/list_words.h"
#include "buying/parts.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <string_view>

namespace wallwright::buying {

namespace {

using Part = Items (*)(const Job&);
constexpr Part kParts[] = {fixings_to_buy, cord_to_buy,    frames_to_buy, card_to_buy,
                           tape_to_buy,    cutting_to_buy, besides};

/// Rules that ask for another fixing.
constexpr std::string_view kRefusing[] = {
    "weight-within-rating",    "strips-fit-the-back", "fixing-suits-wall", "hanger-fits",
    "irreplaceable-on-strips", "surface-fit",         "no-holes"};

bool is_listed(const List& list, const std::string& title) {
    return std::ranges::any_of(list.items, [&title](const Item& item) {
        return item.kind == Kind::fixings && item.title == title;
    });
}

/// What of the list the finding is against: "Large strip pair for Kelp and Gull"; "" for nothing.
std::string refused(const Job& job, const List& list, const wall::Finding& finding) {
    std::string title;
    std::vector<wall::PieceId> pieces;
    for (const hanging::Hanging& hanging : job.assessment.hangings) {
        const wall::Piece* piece = find(job.project, hanging.piece);
        const bool is_about =
            std::ranges::find(finding.pieces, hanging.piece) != finding.pieces.end();
        if (!is_about || piece == nullptr || piece->state != wall::PieceState::planned ||
            hanging.fixings.empty() || !is_listed(list, hanging.fixing_title))
            continue;
        if (title.find(hanging.fixing_title) == std::string::npos)
            title += (title.empty() ? "" : " or ") + hanging.fixing_title;
        pieces.push_back(hanging.piece);
    }
    return pieces.empty() ? "" : fmt::format("{} for {}", title, titles_of(job.project, pieces));
}

void add_refused(const Job& job, List& list) {
    for (const wall::Finding& finding : job.assessment.findings) {
        if (finding.severity != wall::Severity::stop ||
            std::ranges::find(kRefusing, finding.rule) == std::end(kRefusing))
            continue;
        if (const std::string what = refused(job, list, finding); !what.empty())
            list.remarks.push_back(
                fmt::format("Do not buy {} before this is mended: {}", what, finding.text));
    }
}

void add_remarks(const Job& job, List& list) {
    add_refused(job, list);
    if (job.card == nullptr || !job.card->cost.cut_for_you)
        return;
    const mounts::CardCost& cost = job.card->cost;
    list.remarks.push_back(
        fmt::format("Having {} cut by another, in place of cutting, would cost {}.",
                    cost.mounts == 1 ? "the mount" : fmt::format("all {} mounts", cost.mounts),
                    money(*cost.cut_for_you)));
}

}  // namespace

List shopping_list(const wall::Project& project, const rules::Assessment& assessment,
                   const mounts::CardPlan* card) {
    const Job job{project, assessment, card};
    List list;
    for (const Part part : kParts) {
        Items items = part(job);
        std::move(items.begin(), items.end(), std::back_inserter(list.items));
    }
    std::stable_sort(list.items.begin(), list.items.end(),
                     [](const Item& a, const Item& b) { return !a.later && b.later; });
    for (const Item& item : list.items) {
        list.known_total += item.price.value_or(0);
        list.without_price += item.price ? 0 : 1;
    }
    if (auto remark = hanging::search_remark(assessment.hangings))
        list.remarks.push_back(std::move(*remark));
    add_remarks(job, list);
    return list;
}

}  // namespace wallwright::buying

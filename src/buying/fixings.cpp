#include "buying/parts.h"

#include <fmt/format.h>

namespace wallwright::buying {

namespace {

using hanging::Need;

std::string amount_words(const Need& need) {
    if (need.pack <= 1)
        return fmt::format("{}", need.packs);
    return fmt::format("{} of {}", counted(static_cast<std::size_t>(need.packs), "pack", "packs"),
                       need.pack);
}

std::string why_words(const Need& need) {
    std::string words = fmt::format("{} needed", need.count);
    if (need.at_hand > 0)
        words += fmt::format(", {} {}", need.at_hand,
                             need.after_others ? "left by then" : "in the drawer");
    if (need.spare > 0)
        words += fmt::format(", {} spare", need.spare);
    return words;
}

void add(Items& items, const Need& need, bool later) {
    if (need.packs == 0)
        return;
    Item item{Kind::fixings, need.title, amount_words(need), why_words(need)};
    if (need.price > 0)
        item.price = need.packs * need.price;
    item.later = later;
    items.push_back(std::move(item));
}

}  // namespace

Items fixings_to_buy(const Job& job) {
    Items items;
    const std::vector<hanging::Hanging>& hangings = job.assessment.hangings;
    for (const Need& need : hanging::needs(job.project, hangings))
        add(items, need, false);
    for (const Need& need : hanging::needs(job.project, hangings, hanging::Bought::not_yet))
        add(items, need, true);
    return items;
}

}  // namespace wallwright::buying

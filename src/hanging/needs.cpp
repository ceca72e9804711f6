#include "hanging/needs.h"

#include "hanging/drawer.h"

#include <algorithm>
#include <tuple>

namespace wallwright::hanging {

namespace {

/// The least stage of a piece that is still planned; 0 where the wall does not grow in stages.
int next_stage(const wall::Project& project) {
    int next = 0;
    for (const wall::Piece& piece : project.pieces)
        if (piece.state == wall::PieceState::planned && piece.stage > 0 && !piece.wished)
            next = next == 0 ? piece.stage : std::min(next, piece.stage);
    return next;
}

std::vector<Need> counted(const wall::Project& project, const std::vector<Hanging>& hangings,
                          Bought bought) {
    const Drawer drawer(project.stock);
    std::vector<Need> needs;
    for (const Hanging& hanging : hangings) {
        const wall::Piece* piece = wall::find(project, hanging.piece);
        if (piece == nullptr || piece->state != wall::PieceState::planned ||
            is_later(project, *piece) != (bought == Bought::not_yet) || hanging.fixings.empty())
            continue;
        const wall::FixingTypeId& type = hanging.fixings.front().type;
        auto need = std::ranges::find(needs, type, &Need::type);
        if (need == needs.end())
            need = needs.insert(needs.end(), {type, hanging.fixing_title, 0, 0, drawer.left(type),
                                              std::max(1, hanging.pack), hanging.price});
        need->count += static_cast<int>(hanging.fixings.size());
    }
    std::ranges::sort(needs, {}, [](const Need& need) { return std::tie(need.title, need.type); });
    return needs;
}

/// Takes from the drawer what is left there, and buys what is missing beside all that is at hand.
void buy(int left_in_drawer, int at_hand, Need& need) {
    need.from_stock = std::min(need.count, left_in_drawer);
    need.at_hand = at_hand;
    need.packs = (std::max(0, need.count - at_hand) + need.pack - 1) / need.pack;
    need.spare = at_hand + need.packs * need.pack - need.count;
}

}  // namespace

bool is_later(const wall::Project& project, const wall::Piece& piece) {
    return piece.wished || piece.stage > next_stage(project);
}

std::vector<Need> needs(const wall::Project& project, const std::vector<Hanging>& hangings,
                        Bought bought) {
    std::vector<Need> today = counted(project, hangings, Bought::yes);
    for (Need& need : today)
        buy(need.in_drawer, need.in_drawer, need);
    if (bought == Bought::yes)
        return today;
    std::vector<Need> later = counted(project, hangings, Bought::not_yet);
    for (Need& need : later) {
        const auto first = std::ranges::find(today, need.type, &Need::type);
        need.after_others = first != today.end();
        if (need.after_others)
            buy(need.in_drawer - first->from_stock, first->spare, need);
        else
            buy(need.in_drawer, need.in_drawer, need);
    }
    return later;
}

std::optional<std::string> search_remark(const std::vector<Hanging>& hangings) {
    if (std::ranges::all_of(hangings, &Hanging::best_known))
        return std::nullopt;
    return "Cheaper fixings may be possible: the search for the cheapest was cut short.";
}

}  // namespace wallwright::hanging

#include "hanging/needs.h"

#include "hanging/drawer.h"

#include <algorithm>
#include <tuple>

namespace wallwright::hanging {

std::vector<Need> needs(const wall::Project& project, const std::vector<Hanging>& hangings,
                        Bought bought) {
    const Drawer drawer(project.stock);
    std::vector<Need> needs;
    for (const Hanging& hanging : hangings) {
        const wall::Piece* piece = wall::find(project, hanging.piece);
        if (piece == nullptr || piece->state != wall::PieceState::planned ||
            piece->wished != (bought == Bought::not_yet) || hanging.fixings.empty())
            continue;
        const wall::FixingTypeId& type = hanging.fixings.front().type;
        auto need = std::ranges::find(needs, type, &Need::type);
        if (need == needs.end())
            need = needs.insert(needs.end(), {type, hanging.fixing_title, 0, 0, drawer.left(type)});
        need->count += static_cast<int>(hanging.fixings.size());
        need->from_stock += hanging.from_stock;
    }
    std::ranges::sort(needs, {}, [](const Need& need) { return std::tie(need.title, need.type); });
    return needs;
}

}  // namespace wallwright::hanging

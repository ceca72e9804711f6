#include "hanging/fixing_plan.h"

#include "base/contract.h"
#include "hanging/fixing_search.h"

#include <algorithm>
#include <numeric>

namespace wallwright::hanging {

namespace {

using Ways = std::vector<Way>;

/// Pieces that compete for the same types, and these types; what others take does not touch them.
struct Part {
    std::vector<std::size_t> types;
    std::vector<std::size_t> pieces;
};

/// For each type the first of those that some pieces have in common with it.
std::vector<std::size_t> leaders(std::size_t types, const std::vector<Ways>& pieces) {
    std::vector<std::size_t> leader(types);
    std::iota(leader.begin(), leader.end(), 0U);
    const auto first = [&leader](std::size_t type) {
        while (leader[type] != type)
            type = leader[type];
        return type;
    };
    for (const Ways& ways : pieces)
        for (const Way& way : ways) {
            const auto [low, high] = std::minmax({first(ways.front().type), first(way.type)});
            leader[high] = low;
        }
    for (std::size_t type = 0; type < types; ++type)
        leader[type] = first(type);
    return leader;
}

std::vector<Part> parts_of(std::size_t types, const std::vector<Ways>& pieces) {
    const std::vector<std::size_t> leader = leaders(types, pieces);
    std::vector<Part> parts(types);
    for (std::size_t type = 0; type < types; ++type)
        parts[leader[type]].types.push_back(type);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        parts[leader[pieces[i].front().type]].pieces.push_back(i);
    std::erase_if(parts, [](const Part& part) { return part.pieces.empty(); });
    return parts;
}

/// The ways of the part's pieces, with types counted within the part.
std::vector<Ways> ways_within(const Part& part, const std::vector<Ways>& pieces) {
    std::vector<Ways> within;
    for (const std::size_t piece : part.pieces) {
        within.push_back(pieces[piece]);
        for (Way& way : within.back())
            way.type = static_cast<std::size_t>(std::ranges::find(part.types, way.type) -
                                                part.types.begin());
    }
    return within;
}

bool has_a_type_twice(const Ways& ways) {
    for (std::size_t i = 0; i < ways.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (ways[i].type == ways[j].type)
                return true;
    return false;
}

/// What is to be bought and what is left, once all ways are chosen.
void count_packs(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces,
                 FixingPlan& plan) {
    for (const Supply& supply : supplies)
        plan.left.push_back(supply.have);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Way& way = pieces[i][plan.ways[i]];
        plan.left[way.type] -= way.count;
    }
    for (std::size_t type = 0; type < supplies.size(); ++type) {
        const int pack = supplies[type].pack;
        plan.packs.push_back((std::max(0, -plan.left[type]) + pack - 1) / pack);
        plan.left[type] += plan.packs[type] * pack;
    }
}

}  // namespace

FixingPlan plan_fixings(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces,
                        int most_steps) {
    WW_EXPECT(std::ranges::none_of(pieces, [](const Ways& ways) { return ways.empty(); }),
              "every piece has a way to hang");
    WW_EXPECT(std::ranges::none_of(pieces, has_a_type_twice), "a piece hangs by a type in one way");
    FixingPlan plan;
    plan.ways.resize(pieces.size());
    int steps_left = most_steps;
    for (const Part& part : parts_of(supplies.size(), pieces)) {
        std::vector<Supply> within;
        for (const std::size_t type : part.types)
            within.push_back(supplies[type]);
        const Found found = cheapest(within, ways_within(part, pieces), steps_left);
        plan.cost = plan.cost + found.cost;
        plan.proved = plan.proved && found.proved;
        for (std::size_t i = 0; i < part.pieces.size(); ++i)
            plan.ways[part.pieces[i]] = found.ways[i];
    }
    count_packs(supplies, pieces, plan);
    return plan;
}

}  // namespace wallwright::hanging

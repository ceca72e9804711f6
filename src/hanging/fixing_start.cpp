#include "hanging/fixing_start.h"

#include <algorithm>

namespace wallwright::hanging {

namespace {

using Ways = std::vector<Way>;

class Draft {
  public:
    Draft(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces)
        : supplies_(supplies), pieces_(pieces), used_(supplies.size(), 0) {
        start_.ways.resize(pieces.size());
    }

    /// Takes the type for every piece that it goes for.
    void fill(std::size_t type) {
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            const Ways& ways = pieces_[i];
            std::size_t chosen = cheapest(ways);
            for (std::size_t way = 0; way < ways.size(); ++way)
                if (ways[way].type == type)
                    chosen = way;
            put(i, chosen);
        }
    }

    /// Changes one piece after another until none is better changed.
    void improve() {
        constexpr int kRounds = 8;
        bool better = true;
        for (int round = 0; better && round < kRounds; ++round) {
            better = false;
            for (std::size_t i = 0; i < pieces_.size(); ++i) {
                const std::size_t before = start_.ways[i];
                take_away(i);
                put(i, cheapest(pieces_[i]));
                better = better || start_.ways[i] != before;
            }
        }
    }

    [[nodiscard]] const Start& start() const { return start_; }

  private:
    [[nodiscard]] std::int64_t money(std::size_t type, int used) const {
        const Supply& supply = supplies_[type];
        return (std::max(0, used - supply.have) + supply.pack - 1) / supply.pack * supply.price;
    }

    [[nodiscard]] PlanCost cost_of(const Way& way) const {
        const int used = used_[way.type];
        return {money(way.type, used + way.count) - money(way.type, used), way.awkward ? 1 : 0,
                way.rated};
    }

    [[nodiscard]] std::size_t cheapest(const Ways& ways) const {
        std::size_t best = 0;
        for (std::size_t way = 1; way < ways.size(); ++way)
            if (cost_of(ways[way]) < cost_of(ways[best]))
                best = way;
        return best;
    }

    void put(std::size_t piece, std::size_t way) {
        const Way& one = pieces_[piece][way];
        start_.cost = start_.cost + cost_of(one);
        used_[one.type] += one.count;
        start_.ways[piece] = way;
    }

    void take_away(std::size_t piece) {
        const Way& one = pieces_[piece][start_.ways[piece]];
        used_[one.type] -= one.count;
        start_.cost = start_.cost - cost_of(one);
    }

    const std::vector<Supply>& supplies_;
    const std::vector<Ways>& pieces_;
    std::vector<int> used_;
    Start start_;
};

}  // namespace

Start fair_plan(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces) {
    Start best;
    for (std::size_t type = 0; type <= supplies.size(); ++type) {
        Draft draft(supplies, pieces);
        draft.fill(type);
        draft.improve();
        if (type == 0 || draft.start().cost < best.cost)
            best = draft.start();
    }
    return best;
}

}  // namespace wallwright::hanging

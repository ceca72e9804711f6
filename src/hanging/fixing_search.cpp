#include "hanging/fixing_search.h"

#include "hanging/fixing_start.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>
#include <tuple>
#include <unordered_map>

namespace wallwright::hanging {

namespace {

using Ways = std::vector<Way>;

/// Awkwardness before rating, as one number: no wall is rated for so many kg.
constexpr std::int64_t kAwkward = 100'000'000'000;

std::int64_t grade_of(const Way& way) {
    return (way.awkward ? kAwkward : 0) + way.rated;
}

/// By how much the grade would rise if a piece gave up the fixings that it would have by itself.
struct Regret {
    double each = 0;  ///< For one fixing.
    int count = 0;
};

/// What all pieces from one on ask, whatever is decided.
struct Rest {
    double value = 0;            ///< At least, of the cheapest fixings, by their share of a pack.
    std::int64_t grade = 0;      ///< At least.
    std::vector<int> demand;     ///< At most, of each type.
    std::vector<double> saving;  ///< At most, of `value`, by one fixing of each type at hand.
    std::vector<int> favoured;   ///< Of each type, by the pieces whose best grade it is,
    std::vector<std::vector<Regret>> regrets;  ///< and what they lose without it, least first.
};

/// What taking one way does to a partial plan.
struct Step {
    PlanCost added;
    std::size_t way = 0;
    int packs = 0;
};

class Search {
  public:
    Search(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces, int& steps_left)
        : supplies_(supplies), steps_left_(steps_left) {
        for (const Supply& supply : supplies) {
            value_.push_back(static_cast<double>(supply.price) / supply.pack);
            measure_ = std::gcd(measure_, supply.price);
        }
        order_pieces(pieces);
        sum_up();
        for (const Supply& supply : supplies)
            open_.push_back(supply.have);
        chosen_.resize(pieces_.size());
        steps_.resize(pieces_.size());
    }

    Found best() {
        best_ = fair_plan(supplies_, pieces_);
        follow(0);
        Found found{std::vector<std::size_t>(pieces_.size()), best_.cost, proved_};
        for (std::size_t depth = 0; depth < order_.size(); ++depth)
            found.ways[order_[depth]] = best_.ways[depth];
        return found;
    }

  private:
    /// Those with the fewest ways first, then those that take the most; alike ones side by side.
    void order_pieces(const std::vector<Ways>& pieces) {
        order_.resize(pieces.size());
        std::iota(order_.begin(), order_.end(), 0U);
        std::ranges::stable_sort(order_, {}, [&pieces](std::size_t piece) {
            const Ways& ways = pieces[piece];
            return std::tuple(ways.size(), -ways.front().count, ways.front().type);
        });
        for (const std::size_t piece : order_)
            pieces_.push_back(pieces[piece]);
    }

    void sum_up() {
        rest_.resize(order_.size() + 1);
        rest_.back().demand.assign(supplies_.size(), 0);
        rest_.back().saving.assign(supplies_.size(), 0);
        rest_.back().favoured.assign(supplies_.size(), 0);
        rest_.back().regrets.resize(supplies_.size());
        for (std::size_t i = order_.size(); i-- > 0;)
            rest_[i] = with(rest_[i + 1], pieces_[i]);
    }

    [[nodiscard]] Rest with(Rest rest, const Ways& ways) const {
        double value = std::numeric_limits<double>::max();
        for (const Way& way : ways)
            value = std::min(value, way.count * value_[way.type]);
        rest.value += value;
        for (const Way& way : ways) {
            rest.demand[way.type] += way.count;
            if (way.count > 0)
                rest.saving[way.type] =
                    std::min(value_[way.type], std::max(rest.saving[way.type], value / way.count));
        }
        add_grade(ways, rest);
        return rest;
    }

    static void add_grade(const Ways& ways, Rest& rest) {
        const auto less = [](const Way& a, const Way& b) { return grade_of(a) < grade_of(b); };
        const Way& least = *std::min_element(ways.begin(), ways.end(), less);
        rest.grade += grade_of(least);
        if (least.count == 0)
            return;
        constexpr double kNoOther = 1e14;
        double next = kNoOther;
        for (const Way& way : ways)
            if (way.type != least.type)
                next = std::min(next, static_cast<double>(grade_of(way) - grade_of(least)));
        const Regret regret{next / least.count, least.count};
        rest.favoured[least.type] += least.count;
        std::vector<Regret>& regrets = rest.regrets[least.type];
        const auto after =
            std::upper_bound(regrets.begin(), regrets.end(), regret,
                             [](const Regret& a, const Regret& b) { return a.each < b.each; });
        regrets.insert(after, regret);
    }

    [[nodiscard]] Step step(const Way& way, std::size_t index) const {
        const Supply& supply = supplies_[way.type];
        const int missing = std::max(0, way.count - open_[way.type]);
        const int packs = (missing + supply.pack - 1) / supply.pack;
        return {{packs * supply.price, way.awkward ? 1 : 0, way.rated}, index, packs};
    }

    void take(std::size_t depth, const Step& step) {
        const Way& way = pieces_[depth][step.way];
        open_[way.type] += step.packs * supplies_[way.type].pack - way.count;
        chosen_[depth] = step.way;
    }

    void give_back(std::size_t depth, const Step& step) {
        const Way& way = pieces_[depth][step.way];
        open_[way.type] -= step.packs * supplies_[way.type].pack - way.count;
    }

    /// The cheapest steps of a piece first.
    void list_steps(std::size_t depth) {
        std::vector<Step>& steps = steps_[depth];
        steps.clear();
        const Ways& ways = pieces_[depth];
        for (std::size_t i = 0; i < ways.size(); ++i)
            steps.push_back(step(ways[i], i));
        std::stable_sort(steps.begin(), steps.end(),
                         [](const Step& a, const Step& b) { return a.added < b.added; });
    }

    void keep_if_better() {
        if (!(cost_ < best_.cost))
            return;
        best_ = {chosen_, cost_};
    }

    /// No plan that goes on from here, and is no dearer than the best, costs less.
    [[nodiscard]] PlanCost bound(std::size_t depth) const {
        const Rest& rest = rest_[depth];
        const std::int64_t money = cost_.money + money_bound(rest);
        std::int64_t grade = cost_.awkward * kAwkward + cost_.rated + rest.grade;
        if (money == best_.cost.money)
            grade += regret_bound(rest);
        return {money, static_cast<int>(grade / kAwkward), grade % kAwkward};
    }

    [[nodiscard]] std::int64_t money_bound(const Rest& rest) const {
        constexpr double kRounding = 1e-3;  // of the measure, which is 1 or more
        double value = rest.value;
        for (std::size_t type = 0; type < open_.size(); ++type)
            value -= std::min(open_[type], rest.demand[type]) * rest.saving[type];
        if (!(value > 0) || measure_ == 0)
            return 0;
        const double measures = std::ceil(value / static_cast<double>(measure_) - kRounding);
        return static_cast<std::int64_t>(std::max(0.0, measures)) * measure_;
    }

    /// What the pieces still to be decided lose because there is not enough of what they would have
    /// by themselves, nor money to buy it: the least that gives up as many fixings as are missing.
    [[nodiscard]] std::int64_t regret_bound(const Rest& rest) const {
        double lost = 0;
        for (std::size_t type = 0; type < open_.size(); ++type) {
            std::int64_t missing = rest.favoured[type] - supply_most(type);
            for (const Regret& regret : rest.regrets[type]) {
                if (missing <= 0)
                    break;
                lost += regret.each *
                        static_cast<double>(std::min<std::int64_t>(missing, regret.count));
                missing -= regret.count;
            }
        }
        constexpr double kRounding = 0.1;
        return static_cast<std::int64_t>(std::ceil(lost - kRounding));
    }

    /// How many of a type there can be from here on if no more than the best plan's money is spent.
    [[nodiscard]] std::int64_t supply_most(std::size_t type) const {
        const Supply& supply = supplies_[type];
        if (supply.price == 0)
            return std::numeric_limits<int>::max();
        return open_[type] + (best_.cost.money - cost_.money) / supply.price * supply.pack;
    }

    /// False when as cheap a way to the same place has been followed already.
    bool first_here(std::size_t depth) {
        std::u16string place(1, static_cast<char16_t>(depth));
        for (std::size_t type = 0; type < open_.size(); ++type)
            place += static_cast<char16_t>(std::min(open_[type], rest_[depth].demand[type]));
        const auto [known, is_new] = seen_.try_emplace(std::move(place), cost_);
        if (is_new)
            return true;
        if (!(cost_ < known->second))
            return false;
        known->second = cost_;
        return true;
    }

    void follow(std::size_t depth) {
        if (depth == order_.size())
            return keep_if_better();
        if (!(bound(depth) < best_.cost))
            return;
        if (steps_left_ == 0) {
            proved_ = false;
            return;
        }
        --steps_left_;
        if (!first_here(depth))
            return;
        list_steps(depth);
        for (const Step step : steps_[depth]) {
            const PlanCost before = cost_;
            take(depth, step);
            cost_ = cost_ + step.added;
            follow(depth + 1);
            cost_ = before;
            give_back(depth, step);
        }
    }

    const std::vector<Supply>& supplies_;
    std::vector<Ways> pieces_;  ///< In the order in which they are decided.
    int& steps_left_;
    std::vector<double> value_;       ///< Of one fixing of each type.
    std::int64_t measure_ = 0;        ///< Every sum of prices is a multiple of it.
    std::vector<std::size_t> order_;  ///< Which they are.
    std::vector<Rest> rest_;
    std::vector<int> open_;  ///< In stock or in a pack that is bought, and not used yet.
    PlanCost cost_;
    std::vector<std::size_t> chosen_;
    std::vector<std::vector<Step>> steps_;
    std::unordered_map<std::u16string, PlanCost> seen_;
    Start best_;
    bool proved_ = true;
};

}  // namespace

Found cheapest(const std::vector<Supply>& supplies, const std::vector<Ways>& pieces,
               int& steps_left) {
    return Search(supplies, pieces, steps_left).best();
}

}  // namespace wallwright::hanging

#include "hanging/shared_rounding.h"

#include "base/contract.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace wallwright::hanging {

namespace {

constexpr double kEps = 1e-9;  ///< Steps; what sums of doubles leave.
constexpr int kFarthest = 2;   ///< Steps from a mark's exact place.

/// A body counted in steps. At the whole number n it is moved by n + offset from its exact place.
struct Rigid {
    std::vector<int> apart;  ///< Of each mark from the first, in whole steps.
    double offset = 0;
    int least = 0;  ///< Whole numbers between which no mark is too far from its exact place.
    int most = 0;
    int alone = 0;  ///< The one that is nearest.
};

Rigid rigid(const Body& body, double step) {
    Rigid made;
    if (body.marks.empty())
        return made;
    double low = std::numeric_limits<double>::lowest();
    double high = std::numeric_limits<double>::max();
    for (const double mark : body.marks) {
        const double apart = std::round((mark - body.marks.front()) / step);
        made.apart.push_back(static_cast<int>(apart));
        const double exact = mark / step - apart;
        made.offset -= exact / static_cast<double>(body.marks.size());
        low = std::max(low, exact - kFarthest);
        high = std::min(high, exact + kFarthest);
    }
    made.least = static_cast<int>(std::ceil(low - kEps));
    made.most = static_cast<int>(std::floor(high + kEps));
    made.alone = static_cast<int>(std::round(-made.offset));
    return made;
}

/// From `first` to `second`, by indices within one family.
struct Edge {
    std::size_t first = 0;
    std::size_t second = 0;
    double offset = 0;  ///< The gap changes by n(second) - n(first) + offset.
};

struct Window {
    double low = 0;
    double high = 0;
};

/// Bodies that hang together by ties, and the search for their whole numbers.
class Family {
  public:
    Family(std::vector<Rigid> bodies, std::vector<Edge> edges)
        : bodies_(std::move(bodies)), edges_(std::move(edges)) {
        for (const Rigid& body : bodies_)
            at_.push_back(body.alone);
    }

    [[nodiscard]] std::vector<int> solved() {
        const Window alone = changes();
        if (alone.high - alone.low > kEps) {
            settle_in(best_window(alone));
            come_nearer();
        }
        return at_;
    }

  private:
    [[nodiscard]] Window changes() const {
        Window window{std::numeric_limits<double>::max(), std::numeric_limits<double>::lowest()};
        for (const Edge& edge : edges_) {
            const double change = at_[edge.second] - at_[edge.first] + edge.offset;
            window.low = std::min(window.low, change);
            window.high = std::max(window.high, change);
        }
        return window;
    }

    /// All changes of up to a step that some gap can have, from the least on.
    [[nodiscard]] std::vector<double> possible_changes() const {
        std::vector<double> values;
        for (const Edge& edge : edges_)
            for (double value = edge.offset - std::floor(edge.offset + 1 + kEps); value <= 1 + kEps;
                 value += 1)
                values.push_back(value);
        std::sort(values.begin(), values.end());
        const auto last = std::unique(values.begin(), values.end(),
                                      [](double a, double b) { return std::abs(a - b) < kEps; });
        values.erase(last, values.end());
        return values;
    }

    /// The narrowest that can hold the changes of all gaps, of equally narrow ones the one nearest
    /// to none. Both its ends only ever move up.
    [[nodiscard]] Window best_window(Window best) {
        const std::vector<double> values = possible_changes();
        std::size_t high = 0;
        for (const double low : values) {
            while (high < values.size() && (values[high] < low || !least({low, values[high]})))
                ++high;
            if (high == values.size())
                break;
            const Window found{low, values[high]};
            const double less = (best.high - best.low) - (found.high - found.low);
            const bool nearer = std::max(-found.low, found.high) < std::max(-best.low, best.high);
            if (less > kEps || (less > -kEps && nearer))
                best = found;
        }
        return best;
    }

    /// Every change in the window, with the least whole numbers; nothing where that cannot be.
    /// Bellman and Ford's way: what is too small is raised until nothing is.
    [[nodiscard]] std::optional<std::vector<int>> least(Window window) const {
        std::vector<int> at;
        for (const Rigid& body : bodies_)
            at.push_back(body.least);
        bool moved = true;
        const auto raise = [&](std::size_t i, int to) {
            if (at[i] >= to)
                return;
            at[i] = to;
            moved = true;
        };
        while (moved) {
            moved = false;
            for (const Edge& edge : edges_) {
                raise(edge.second, at[edge.first] + least_step(edge, window));
                raise(edge.first, at[edge.second] - most_step(edge, window));
                if (at[edge.first] > bodies_[edge.first].most ||
                    at[edge.second] > bodies_[edge.second].most)
                    return std::nullopt;
            }
        }
        return at;
    }

    /// The same with the greatest, in a window that holds them.
    [[nodiscard]] std::vector<int> greatest(Window window) const {
        std::vector<int> at;
        for (const Rigid& body : bodies_)
            at.push_back(body.most);
        bool moved = true;
        const auto lower = [&](std::size_t i, int to) {
            if (at[i] <= to)
                return;
            at[i] = to;
            moved = true;
        };
        while (moved) {
            moved = false;
            for (const Edge& edge : edges_) {
                lower(edge.second, at[edge.first] + most_step(edge, window));
                lower(edge.first, at[edge.second] - least_step(edge, window));
            }
        }
        return at;
    }

    static int least_step(const Edge& edge, Window window) {
        return static_cast<int>(std::ceil(window.low - edge.offset - kEps));
    }
    static int most_step(const Edge& edge, Window window) {
        return static_cast<int>(std::floor(window.high - edge.offset + kEps));
    }

    /// Between the least and the greatest numbers: half way, rounded down, serves as well, as
    /// always under difference constraints.
    void settle_in(Window window) {
        window_ = window;
        const auto low = least(window);
        WW_EXPECT(low.has_value(), "a window was found because it holds all changes");
        const std::vector<int> high = greatest(window);
        for (std::size_t i = 0; i < at_.size(); ++i)
            at_[i] = static_cast<int>(std::floor(std::midpoint(1.0 * (*low)[i], 1.0 * high[i])));
    }

    [[nodiscard]] bool serves() const {
        for (std::size_t i = 0; i < at_.size(); ++i)
            if (at_[i] < bodies_[i].least || at_[i] > bodies_[i].most)
                return false;
        return std::ranges::all_of(edges_, [this](const Edge& edge) {
            const int step = at_[edge.second] - at_[edge.first];
            return step >= least_step(edge, window_) && step <= most_step(edge, window_);
        });
    }

    /// Sum of squares of how far the bodies are from their exact places.
    [[nodiscard]] double distance() const {
        double sum = 0;
        for (std::size_t i = 0; i < at_.size(); ++i)
            sum += std::pow(at_[i] + bodies_[i].offset, 2);
        return sum;
    }

    /// Moves some bodies by a step where that is allowed and brings them nearer.
    bool try_step(std::span<const std::size_t> which, int step) {
        const double before = distance();
        for (const std::size_t i : which)
            at_[i] += step;
        if (distance() < before - kEps && serves())
            return true;
        for (const std::size_t i : which)
            at_[i] -= step;
        return false;
    }

    void come_nearer() {
        std::vector<std::size_t> all(at_.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        bool moved = true;
        while (moved) {
            moved = try_step(all, 1) || try_step(all, -1);
            for (const std::size_t& one : all)
                moved = try_step({&one, 1}, 1) || try_step({&one, 1}, -1) || moved;
        }
    }

    std::vector<Rigid> bodies_;
    std::vector<Edge> edges_;
    std::vector<int> at_;
    Window window_;
};

/// For each body the first of those that it hangs together with.
std::vector<std::size_t> families_of(std::size_t count, std::span<const Tie> ties) {
    std::vector<std::size_t> head(count);
    std::iota(head.begin(), head.end(), std::size_t{0});
    const auto find = [&head](std::size_t i) {
        while (head[i] != i)
            i = head[i] = head[head[i]];
        return i;
    };
    for (const Tie& tie : ties)
        head[std::max(find(tie.first), find(tie.second))] =
            std::min(find(tie.first), find(tie.second));
    for (std::size_t i = 0; i < count; ++i)
        head[i] = find(i);
    return head;
}

std::vector<Edge> edges_among(const std::vector<std::size_t>& heads, std::size_t head,
                              const std::vector<std::size_t>& place_of,
                              const std::vector<Rigid>& bodies, std::span<const Tie> ties) {
    std::vector<Edge> edges;
    for (const Tie& tie : ties) {
        const bool both_hang = bodies[tie.first].apart.empty() && bodies[tie.second].apart.empty();
        if (heads[tie.first] != head || both_hang)
            continue;
        const double offset = bodies[tie.second].offset - bodies[tie.first].offset;
        edges.push_back({place_of[tie.first], place_of[tie.second], offset});
        if (tie.in_line)
            edges.push_back({place_of[tie.second], place_of[tie.first], -offset});
    }
    return edges;
}

}  // namespace

std::vector<std::vector<double>> rounded_together(std::span<const Body> bodies,
                                                  std::span<const Tie> ties, double step) {
    std::vector<Rigid> rigids;
    for (const Body& body : bodies)
        rigids.push_back(rigid(body, step));
    const std::vector<std::size_t> heads = families_of(bodies.size(), ties);
    std::vector<std::size_t> place_of(bodies.size());
    std::vector<std::vector<double>> rounded(bodies.size());
    for (std::size_t head = 0; head < bodies.size(); ++head) {
        if (heads[head] != head)
            continue;
        std::vector<std::size_t> members;
        std::vector<Rigid> family;
        for (std::size_t i = head; i < bodies.size(); ++i)
            if (heads[i] == head) {
                place_of[i] = members.size();
                members.push_back(i);
                family.push_back(rigids[i]);
            }
        const std::vector<int> at =
            Family(std::move(family), edges_among(heads, head, place_of, rigids, ties)).solved();
        for (std::size_t i = 0; i < members.size(); ++i)
            for (const int apart : rigids[members[i]].apart)
                rounded[members[i]].push_back(step * (at[i] + apart));
    }
    return rounded;
}

}  // namespace wallwright::hanging

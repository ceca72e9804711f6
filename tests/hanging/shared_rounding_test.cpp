#include "hanging/shared_rounding.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace wallwright::hanging {

namespace {

using Rounded = std::vector<std::vector<double>>;

/// By how far a body has moved from its exact place, on the whole.
double moved(const Body& body, const std::vector<double>& rounded) {
    double sum = 0;
    for (std::size_t i = 0; i < body.marks.size(); ++i)
        sum += rounded[i] - body.marks[i];
    return body.marks.empty() ? 0 : sum / static_cast<double>(body.marks.size());
}

/// How much the changes of the gaps differ, and of what is in line to either side.
double spread(const std::vector<Body>& bodies, const std::vector<Tie>& ties,
              const Rounded& rounded) {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const Tie& tie : ties) {
        if (bodies[tie.first].marks.empty() && bodies[tie.second].marks.empty())
            continue;
        const double change = moved(bodies[tie.second], rounded[tie.second]) -
                              moved(bodies[tie.first], rounded[tie.first]);
        low = std::min({low, change, tie.in_line ? -change : change});
        high = std::max({high, change, tie.in_line ? -change : change});
    }
    return high < low ? 0 : high - low;
}

double farthest(const std::vector<Body>& bodies, const Rounded& rounded) {
    double most = 0;
    for (std::size_t i = 0; i < bodies.size(); ++i)
        for (std::size_t k = 0; k < bodies[i].marks.size(); ++k)
            most = std::max(most, std::abs(rounded[i][k] - bodies[i].marks[k]));
    return most;
}

/// A body at `steps` steps from where it lies when it is rounded alone.
std::vector<double> alone(const Body& body, double step, int steps = 0) {
    std::vector<double> rounded;
    double mean = 0;
    for (const double mark : body.marks)
        mean += (mark - step * std::round((mark - body.marks.front()) / step)) /
                static_cast<double>(body.marks.size());
    for (const double mark : body.marks)
        rounded.push_back(step * (std::round(mean / step) + steps +
                                  std::round((mark - body.marks.front()) / step)));
    return rounded;
}

Rounded each_alone(const std::vector<Body>& bodies, double step) {
    Rounded rounded;
    for (const Body& body : bodies)
        rounded.push_back(alone(body, step));
    return rounded;
}

/// The least spread of all ways to round that the contract allows, each tried in turn.
double least_spread(const std::vector<Body>& bodies, const std::vector<Tie>& ties, double step) {
    std::vector<int> steps(bodies.size(), -3);
    double least = std::numeric_limits<double>::max();
    const auto next = [&steps, &bodies] {
        for (std::size_t i = 0; i < steps.size(); ++i) {
            if (bodies[i].marks.empty())
                continue;
            if (++steps[i] <= 3)
                return true;
            steps[i] = -3;
        }
        return false;
    };
    do {
        Rounded rounded;
        for (std::size_t i = 0; i < bodies.size(); ++i)
            rounded.push_back(alone(bodies[i], step, steps[i]));
        bool within = farthest(bodies, rounded) <= 2 * step + 1e-9;
        for (const Tie& tie : ties)
            within =
                within && std::abs(moved(bodies[tie.second], rounded[tie.second]) -
                                   moved(bodies[tie.first], rounded[tie.first])) <= step + 1e-9;
        if (within)
            least = std::min(least, spread(bodies, ties, rounded));
    } while (next());
    return least;
}

/// The same for a chain by dynamic programming: for each pair of least and greatest change, which
/// places of each body can be reached from the one before.
double least_spread_of_chain(const std::vector<Body>& bodies, double step) {
    const auto place = [&](std::size_t i, int steps) {
        return moved(bodies[i], alone(bodies[i], step, steps));
    };
    const auto allowed = [&](std::size_t i, int steps) {
        return farthest({bodies[i]}, {alone(bodies[i], step, steps)}) <= 2 * step + 1e-9;
    };
    std::vector<double> changes;
    for (std::size_t i = 1; i < bodies.size(); ++i)
        for (int steps = -4; steps <= 4; ++steps)
            if (const double change = place(i, steps) - place(i - 1, 0);
                std::abs(change) <= step + 1e-9)
                changes.push_back(change);
    double least = std::numeric_limits<double>::max();
    for (const double low : changes)
        for (const double high : changes) {
            if (high < low || high - low >= least)
                continue;
            std::map<int, bool> reached;
            for (int steps = -3; steps <= 3; ++steps)
                reached[steps] = allowed(0, steps);
            for (std::size_t i = 1; i < bodies.size(); ++i) {
                std::map<int, bool> further;
                for (int to = -3; to <= 3; ++to)
                    for (int from = -3; from <= 3; ++from) {
                        const double change = place(i, to) - place(i - 1, from);
                        if (reached[from] && allowed(i, to) && change >= low - 1e-9 &&
                            change <= high + 1e-9)
                            further[to] = true;
                    }
                reached = further;
            }
            if (std::any_of(reached.begin(), reached.end(),
                            [](const auto& one) { return one.second; }))
                least = high - low;
        }
    return least;
}

std::vector<Tie> chain_of(std::size_t count) {
    std::vector<Tie> ties;
    for (std::size_t i = 1; i < count; ++i)
        ties.push_back({i - 1, i, false});
    return ties;
}

/// One mark or two, or none for what hangs.
Body random_body(double from, bool may_hang) {
    Body body;
    const int marks = *rc::gen::inRange(may_hang ? 0 : 1, 3);
    for (int i = 0; i < marks; ++i)
        body.marks.push_back(from + 300 * i + *rc::gen::inRange(0, 100) / 100.0);
    return body;
}

}  // namespace

TEST_CASE("What is in whole steps stays where it is") {
    const std::vector<Body> bodies{{{500, 800}}, {{860, 1160}}, {{1220}}};
    CHECK(rounded_together(bodies, chain_of(3), 1) == Rounded{{500, 800}, {860, 1160}, {1220}});
}

TEST_CASE("Rounded together a row drifts a little rather than opening one gap more than others") {
    // Frames every 360.4 mm. Alone the gaps change by -0.4, +0.6, -0.4 and -0.4 mm.
    std::vector<Body> bodies;
    for (int i = 0; i < 5; ++i)
        bodies.push_back({{360.4 * i}});
    CHECK(spread(bodies, chain_of(5), each_alone(bodies, 1)) == Approx(1));
    const Rounded rounded = rounded_together(bodies, chain_of(5), 1);
    CHECK(spread(bodies, chain_of(5), rounded) == Approx(0).margin(1e-9));
    CHECK(farthest(bodies, rounded) == Approx(1));
}

TEST_CASE("Two marks of a piece at one height keep one, and what hangs stays") {
    const std::vector<Body> bodies{{{1500.5, 1500.5}}, {}};
    const Rounded rounded = rounded_together(bodies, std::vector<Tie>{{0, 1, false}}, 1);
    CHECK(rounded[0][0] == rounded[0][1]);
    CHECK(rounded[1].empty());
}

TEST_CASE("Pieces in line do not climb like a stair to keep their gaps alike") {
    const std::vector<Body> bodies{{{1000.3}}, {{1000.3}}, {{1000.3}}};
    std::vector<Tie> ties{{0, 1, true}, {1, 2, true}};
    CHECK(rounded_together(bodies, ties, 1) == Rounded{{1000}, {1000}, {1000}});
}

TEST_CASE("No way to round is evener, by trying all") {
    rc::prop("for up to four bodies tied at random", [] {
        std::vector<Body> bodies;
        const int count = *rc::gen::inRange(2, 5);
        for (int i = 0; i < count; ++i)
            bodies.push_back(random_body(1000.0 * i, true));
        std::vector<Tie> ties;
        for (std::size_t i = 0; i < bodies.size(); ++i)
            for (std::size_t j = i + 1; j < bodies.size(); ++j)
                if (j == i + 1 || *rc::gen::arbitrary<bool>())
                    ties.push_back({i, j, *rc::gen::inRange(0, 4) == 0});
        const double step = *rc::gen::element(1.0, 1.5875, 0.5);
        const Rounded rounded = rounded_together(bodies, ties, step);
        RC_ASSERT(spread(bodies, ties, rounded) <= least_spread(bodies, ties, step) + 1e-6);
    });
}

TEST_CASE("On a chain no way to round is evener, by dynamic programming") {
    rc::prop("for up to nine bodies", [] {
        std::vector<Body> bodies;
        const int count = *rc::gen::inRange(2, 10);
        for (int i = 0; i < count; ++i)
            bodies.push_back(random_body(1000.0 * i, false));
        const std::vector<Tie> ties = chain_of(bodies.size());
        const Rounded rounded = rounded_together(bodies, ties, 1);
        RC_ASSERT(std::abs(spread(bodies, ties, rounded) - least_spread_of_chain(bodies, 1)) <
                  1e-6);
    });
}

TEST_CASE("Rounded together is never less even than alone, in whole steps and at most two away") {
    rc::prop("for many bodies tied at random", [] {
        std::vector<Body> bodies;
        const int count = *rc::gen::inRange(1, 30);
        for (int i = 0; i < count; ++i)
            bodies.push_back(random_body(100.0 * i, true));
        std::vector<Tie> ties;
        for (int i = 0; i < 2 * count && count > 1; ++i) {
            const auto first = static_cast<std::size_t>(*rc::gen::inRange(0, count - 1));
            const auto second =
                static_cast<std::size_t>(*rc::gen::inRange(static_cast<int>(first) + 1, count));
            ties.push_back({first, second, *rc::gen::arbitrary<bool>()});
        }
        const double step = *rc::gen::element(1.0, 1.5875);
        const Rounded rounded = rounded_together(bodies, ties, step);
        RC_ASSERT(rounded.size() == bodies.size());
        RC_ASSERT(farthest(bodies, rounded) <= 2 * step + 1e-6);
        RC_ASSERT(spread(bodies, ties, rounded) <=
                  spread(bodies, ties, each_alone(bodies, step)) + 1e-6);
        for (const auto& marks : rounded)
            for (const double mark : marks)
                RC_ASSERT(std::abs(mark / step - std::round(mark / step)) < 1e-6);
    });
}

}  // namespace wallwright::hanging

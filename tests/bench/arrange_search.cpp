// How soon a first layout is there, how the score grows with time, and how both go with the number
// of pieces.
#include "bench/arrange_search.h"

#include "arrange/arrange.h"
#include "arrange/measure.h"
#include "base/random.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

namespace wallwright::bench {

namespace {

using namespace arrange;

using Clock = std::chrono::steady_clock;

constexpr geometry::Size kSizes[] = {{300, 400}, {400, 300}, {400, 500}, {500, 400},
                                     {300, 300}, {210, 297}, {250, 250}, {330, 430},
                                     {500, 700}, {600, 450}, {200, 250}, {180, 240}};

/// A wall long enough for them, with a sofa, and so many frames of usual sizes on the floor.
wall::Project wall_with(std::size_t pieces, std::uint64_t seed) {
    wall::Project project;
    const double width = std::max(5000.0, 150.0 * static_cast<double>(pieces));
    project.room.outline.corners = {{0, 0}, {width, 0}, {width, 2600}, {0, 2600}};
    wall::Furniture sofa;
    sofa.id.text = "sofa";
    sofa.type = wall::FurnitureType::sofa;
    sofa.place = WallRect::at({width / 2 - 1050, 0}, {2100, 820});
    project.room.furniture.push_back(sofa);
    Random random(seed);
    for (std::size_t i = 0; i < pieces; ++i) {
        wall::Frame frame;
        frame.id.text = fmt::format("f{}", i);
        frame.outside = kSizes[random.below(std::size(kSizes))];
        wall::Piece piece;
        piece.id.text = fmt::format("p{}", i);
        piece.frame = frame.id;
        project.frames.push_back(frame);
        project.pieces.push_back(piece);
    }
    return project;
}

struct Run {
    double first = 0;        ///< s until the first layouts.
    double longest_gap = 0;  ///< s between two tellings at most.
    std::vector<double> at;  ///< Best total after each of the asked times.
    double end = 0;          ///< Best total at the end.
    std::size_t layouts = 0;
};

Run run(std::size_t pieces, std::uint64_t seed, double seconds, const std::vector<double>& times) {
    const Task task = task_of(wall_with(pieces, seed), {}, Free::all_unfixed);
    Run result;
    const auto start = Clock::now();
    double told = 0;
    double best = 0;
    ArrangeOptions options;
    options.seconds = seconds;
    options.seed = seed;
    const auto found = arrange::arrange(task, options, [&](const Progress& progress) {
        const double now = std::chrono::duration<double>(Clock::now() - start).count();
        if (result.first == 0 && !progress.best.empty())
            result.first = now;
        result.longest_gap = std::max(result.longest_gap, now - told);
        told = now;
        while (result.at.size() < times.size() && now > times[result.at.size()])
            result.at.push_back(best);
        if (!progress.best.empty())
            best = std::max(best, progress.best.front().score.total);
        return true;
    });
    result.end = found.empty() ? 0 : found.front().score.total;
    result.layouts = found.size();
    return result;
}

}  // namespace

void score_over_time(int seeds, double seconds) {
    std::printf("12 pieces: best total over time, and its share of the best after %.0f s\n",
                seconds);
    double worst = 1;
    for (int seed = 1; seed <= seeds; ++seed) {
        const Run one = run(12, static_cast<std::uint64_t>(seed), seconds, {0.1, 1, 3, 10});
        std::printf("  seed %2d  first %6.1f ms ", seed, one.first * 1000);
        for (const double total : one.at)
            std::printf(" %7.3f", total);
        const double share = one.at.size() > 2 && one.end > 0 ? one.at[2] / one.end : 1;
        worst = std::min(worst, share);
        std::printf("  end %7.3f  3 s: %6.2f %%\n", one.end, 100 * share);
    }
    std::printf("  worst share after 3 s: %.2f %%\n", 100 * worst);
}

void scaling() {
    std::printf("from 5 to 300 pieces, 10 s each\n");
    for (const std::size_t pieces : {5U, 12U, 30U, 60U, 120U, 300U}) {
        const Run one = run(pieces, 1, 10, {1, 3});
        std::printf(
            "  %3zu pieces  first %7.1f ms  1 s %7.3f  3 s %7.3f  10 s %7.3f  %zu layouts  "
            "longest silence %.0f ms\n",
            pieces, one.first * 1000, one.at.empty() ? 0 : one.at[0],
            one.at.size() < 2 ? 0 : one.at[1], one.end, one.layouts, one.longest_gap * 1000);
    }
}

}  // namespace wallwright::bench

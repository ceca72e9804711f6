#include "bench/arrange_packing.h"

#include "arrange/pack_until.h"
#include "arrange/packing_cases.h"
#include "arrange/packing_model.h"
#include "bench/median.h"

#include <chrono>
#include <cstdio>

namespace wallwright::bench {

using namespace arrange;
using Clock = std::chrono::steady_clock;

namespace {

constexpr PackingGoal kLeastArea{.area = 1};

std::function<bool()> for_seconds(double seconds) {
    const auto end = Clock::now() + std::chrono::duration<double>(seconds);
    return [end] { return Clock::now() < end; };
}

/// Areas are printed in units of `unit`; a bar of 0 is none.
struct PublicSet {
    const char* name;
    double unit;
    double bar;
    double listed;
};

// The best listed: tests/data/packing/README.md. The bars are our own.
constexpr PublicSet kPublicSets[] = {
    {"mcnc_apte", 1e6, 46.93, 46.92}, {"mcnc_xerox", 1e6, 19.84, 19.80},
    {"mcnc_hp", 1e6, 8.95, 8.947},    {"mcnc_ami33", 1e6, 1.22, 1.18},
    {"mcnc_ami49", 1e6, 37.5, 36.16}, {"gsrc_n10", 1, 0, 226092},
    {"gsrc_n30", 1, 0, 212625},       {"gsrc_n50", 1, 0, 201348},
    {"gsrc_n100", 1, 0, 180908}};

void public_set(const PublicSet& set, double seconds) {
    const std::vector<Block> blocks = tests::public_blocks(set.name);
    const Packing best = tests::pack_until(blocks, kLeastArea, 1, 2, for_seconds(seconds));
    const double area = best.box.area() / set.unit;
    const double full = tests::area_of(blocks) / best.box.area();
    std::printf("%-11s %10.4f  full %6.2f %%  best listed %10.8g  ratio %6.4f", set.name, area,
                100 * full, set.listed, area / set.listed);
    if (set.bar > 0)
        std::printf("  bar %5.4g %s", set.bar, area <= set.bar ? "reached" : "MISSED");
    std::printf("\n");
    std::fflush(stdout);
}

}  // namespace

void packings_a_second() {
    for (const std::size_t count : {6U, 12U, 50U}) {
        Random random(count);
        const std::vector<Block> blocks = tests::random_blocks(count, true, random);
        constexpr std::uint64_t kMoves = 100000;
        const double ms = median_ms(5, [&] { pack(blocks, kLeastArea, kMoves, random); });
        std::printf("%2zu blocks   %10.3f million packings a second\n", count, kMoves / ms / 1000);
    }
}

void public_sets(double seconds) {
    for (const PublicSet& set : kPublicSets)
        public_set(set, seconds);
}

void against_glpk(double seconds) {
    constexpr PackingGoal kHalfPerimeter{.width = 1, .height = 1};
    for (const std::size_t count : {6U, 7U, 8U}) {
        for (const bool may_turn : {false, true}) {
            Random random(count);
            const std::vector<Block> blocks = tests::random_blocks(count, may_turn, random);
            tests::Optimum optimum;
            double ours = 0;
            const double theirs_ms = median_ms(
                1, [&] { optimum = tests::least_by_glpk(blocks, kHalfPerimeter, seconds); });
            const double ours_ms = median_ms(
                1, [&] { ours = tests::best_of_runs(12, blocks, kHalfPerimeter, 1).cost; });
            std::printf("%zu blocks%s  %7.1f in %6.1f ms   GLPK %7.1f in %8.1f ms%s\n", count,
                        may_turn ? ", turning" : "         ", ours, ours_ms, optimum.cost,
                        theirs_ms, optimum.proven ? ", proven" : "");
            std::fflush(stdout);
        }
    }
}

}  // namespace wallwright::bench

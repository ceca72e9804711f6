// How long spacing takes, and how its figures compare with those in tests/data/spacing. Prints;
// judges nothing.
#include "base/random.h"
#include "bench/median.h"
#include "spacing/even.h"
#include "spacing/separation.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace wallwright;
using namespace wallwright::spacing;

namespace {

constexpr double kGap = 50;

/// A row of `count` pieces thrown down roughly, each kept right of the one before it.
void bench_axis(std::size_t count) {
    Random random(count);
    std::vector<Variable> variables;
    std::vector<Separation> separations;
    for (std::size_t i = 0; i < count; ++i) {
        variables.push_back({static_cast<double>(i) * 300 + random.uniform(-400, 400), 1});
        if (i > 0)
            separations.push_back({i - 1, i, 350, false});
    }
    const double ms = median_ms(101, [&] { separate(variables, separations); });
    std::printf("axis of %4zu      %9.4f ms\n", count, ms);
}

std::vector<wall::Placed> pieces_of(const std::string& name) {
    std::ifstream in(std::string(WW_TEST_DATA) + "/spacing/overlap_" + name + ".csv");
    std::vector<wall::Placed> pieces;
    for (std::string line; std::getline(in, line);) {
        double x = 0;
        double y = 0;
        double width = 0;
        double height = 0;
        if (std::sscanf(line.c_str(), "%lf,%lf,%lf,%lf", &x, &y, &width, &height) == 4)
            pieces.push_back({{std::to_string(pieces.size())},
                              geometry::Rect<geometry::Wall>::at({x, y}, {width, height}),
                              false});
    }
    return pieces;
}

void bench_file(const std::string& name, double published, double best) {
    const auto pieces = pieces_of(name);
    const int runs = pieces.size() > 100 ? 1 : 5;
    EvenResult first;
    EvenResult full;
    const double first_ms = median_ms(runs, [&] { first = part(pieces, kGap, 0); });
    const double full_ms = median_ms(runs, [&] { full = part(pieces, kGap); });
    std::printf("%-14s first %9.3f ms  %5.3f of published", name.c_str(), first_ms,
                first.moved_squared / published);
    std::printf("   full %9.2f ms  %5.3f of published", full_ms, full.moved_squared / published);
    if (best > 0)
        std::printf("  %5.3f of best known%s", full.moved_squared / best,
                    full.least_proved ? ", proved" : "");
    std::printf("\n");
}

}  // namespace

int main() {
    for (const std::size_t count : {10U, 60U, 300U, 1000U})
        bench_axis(count);
    std::ifstream results(std::string(WW_TEST_DATA) + "/spacing/overlap_results.csv");
    for (std::string line; std::getline(results, line);) {
        std::vector<std::string> cells;
        std::istringstream in(line);
        for (std::string cell; std::getline(in, cell, ',');)
            cells.push_back(cell);
        if (cells.size() > 3 && cells[0] != "instance")
            bench_file(cells[0], std::stod(cells[3]),
                       cells.size() > 7 && !cells[7].empty() ? std::stod(cells[7]) : 0);
    }
}

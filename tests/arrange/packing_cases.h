// Blocks to pack: the public sets, and seeded ones.
#pragma once

#include "arrange/packing.h"
#include "base/random.h"

#include <cstdio>
#include <fstream>
#include <string>
#include <vector>

namespace wallwright::tests {

/// Of tests/data/packing/NAME.csv, free to turn.
inline std::vector<arrange::Block> public_blocks(const std::string& name) {
    std::ifstream in(std::string(WW_TEST_DATA) + "/packing/" + name + ".csv");
    std::vector<arrange::Block> blocks;
    for (std::string line; std::getline(in, line);) {
        geometry::Size size;
        if (std::sscanf(line.c_str(), "%*[^,],%lf,%lf", &size.width, &size.height) == 2)
            blocks.push_back({size, true});
    }
    return blocks;
}

/// Frames of 100 to 590 mm with a gap of 60 around them.
inline std::vector<arrange::Block> random_blocks(std::size_t count, bool may_turn, Random& random) {
    const auto length = [&random] { return 160 + 10 * static_cast<double>(random.below(50)); };
    std::vector<arrange::Block> blocks(count);
    for (arrange::Block& block : blocks) {
        const double width = length();
        block = {{width, length()}, may_turn};
    }
    return blocks;
}

inline double area_of(const std::vector<arrange::Block>& blocks) {
    double area = 0;
    for (const arrange::Block& block : blocks)
        area += block.size.area();
    return area;
}

}  // namespace wallwright::tests

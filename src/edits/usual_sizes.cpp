// What a thing measures before a person has measured it.
#include "edits/room.h"

#include <iterator>

namespace wallwright::edits {

using wall::FixtureType;
using wall::FurnitureType;
using wall::Size;

Size usual_size(FurnitureType type) {
    static constexpr Size kSizes[] = {
        {1900, 800},   // sofa
        {1600, 1000},  // bed, with its head against the wall
        {1240, 900},   // cot
        {1500, 750},   // sideboard
        {1400, 750},   // table
        {360, 1600},   // lamp
        {500, 900},    // plant
        {800, 1800},   // bookcase
        {800, 800},    // other
    };
    static_assert(std::size(kSizes) == std::size(wall::Names<FurnitureType>::values));
    return kSizes[static_cast<std::size_t>(type)];
}

Size usual_size(FixtureType type) {
    static constexpr Size kSizes[] = {
        {850, 2050},   // door
        {1000, 1300},  // window
        {1000, 600},   // radiator
        {86, 86},      // socket
        {86, 86},      // switch
        {550, 450},    // basin, with its upstand
        {300, 300},    // other
    };
    static_assert(std::size(kSizes) == std::size(wall::Names<FixtureType>::values));
    return kSizes[static_cast<std::size_t>(type)];
}

double usual_height(FixtureType type) {
    static constexpr double kHeights[] = {
        0,     // door
        900,   // window
        120,   // radiator
        300,   // socket
        1050,  // switch
        500,   // basin
        1000,  // other
    };
    static_assert(std::size(kHeights) == std::size(wall::Names<FixtureType>::values));
    return kHeights[static_cast<std::size_t>(type)];
}

}  // namespace wallwright::edits

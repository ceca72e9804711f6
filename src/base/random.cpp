#include "base/random.h"

#include "base/contract.h"

namespace wallwright {

std::uint64_t Random::next() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t mixed = state_;
    mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBULL;
    return mixed ^ (mixed >> 31U);
}

double Random::uniform() {
    return static_cast<double>(next() >> 11U) * 0x1.0p-53;
}

double Random::uniform(double low, double high) {
    return low + (high - low) * uniform();
}

std::uint64_t Random::below(std::uint64_t count) {
    WW_EXPECT(count > 0, "a choice needs at least one thing to choose from");
    return next() % count;
}

}  // namespace wallwright

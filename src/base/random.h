// A seeded generator with distributions of our own: the standard ones differ between libraries, and
// the same seed must give the same wall everywhere.
#pragma once

#include <cstdint>

namespace wallwright {

/// SplitMix64 (Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014).
class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next();
    /// Uniform in [0, 1).
    double uniform();
    /// Uniform in [low, high).
    double uniform(double low, double high);
    /// Uniform in 0 .. count - 1; count at least 1.
    std::uint64_t below(std::uint64_t count);

  private:
    std::uint64_t state_;
};

}  // namespace wallwright

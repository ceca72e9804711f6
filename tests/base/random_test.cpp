#include "base/random.h"

#include <catch2/catch.hpp>

using wallwright::Random;

// Reference: the first outputs of SplitMix64 for seed 1234567, as given with the algorithm's
// public-domain C version and repeated in many libraries' own tests; from memory.
TEST_CASE("The generator gives SplitMix64's own sequence") {
    Random random(1234567);
    CHECK(random.next() == 6457827717110365317ULL);
    CHECK(random.next() == 3203168211198807973ULL);
    CHECK(random.next() == 9817491932198370423ULL);
}

TEST_CASE("The same seed gives the same numbers and another seed others") {
    Random first(7);
    Random second(7);
    Random third(8);
    CHECK(first.next() == second.next());
    CHECK(first.next() != third.next());
}

TEST_CASE("Uniform numbers stay in their range and fill it") {
    Random random(1);
    double low = 1;
    double high = 0;
    for (int i = 0; i < 10000; ++i) {
        const double value = random.uniform();
        low = std::min(low, value);
        high = std::max(high, value);
    }
    CHECK(low >= 0);
    CHECK(low < 0.01);
    CHECK(high < 1);
    CHECK(high > 0.99);
}

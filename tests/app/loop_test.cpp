#include "app/loop.h"

#include <catch2/catch.hpp>

using namespace wallwright::app;
using std::chrono::milliseconds;

namespace {

/// Frames that are due at this moment.
int frames(Rhythm& rhythm, Rhythm::Clock::time_point now) {
    int count = 0;
    while (count < 100 && rhythm.take_frame(now))
        ++count;
    return count;
}

const Rhythm::Clock::time_point kStart{milliseconds(1000000)};

}  // namespace

TEST_CASE("No frame is drawn without a cause") {
    Rhythm rhythm;
    CHECK(frames(rhythm, kStart) == 0);
    CHECK(frames(rhythm, kStart + milliseconds(100000)) == 0);
}

TEST_CASE(
    "After something happened a few frames follow, a few more when the hand has rested, and none "
    "after") {
    Rhythm rhythm;
    rhythm.wake(kStart);
    CHECK(frames(rhythm, kStart) == 3);
    CHECK(frames(rhythm, kStart + milliseconds(500)) == 0);
    CHECK(frames(rhythm, kStart + milliseconds(700)) == 3);
    CHECK(frames(rhythm, kStart + milliseconds(800)) == 0);
    CHECK(frames(rhythm, kStart + milliseconds(60000)) == 0);
}

TEST_CASE("While the hand is busy the loop looks often, later seldom") {
    Rhythm rhythm;
    rhythm.wake(kStart);
    CHECK(rhythm.sleep(kStart + milliseconds(1000)) < rhythm.sleep(kStart + milliseconds(5000)));
}

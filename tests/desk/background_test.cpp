#include "desk/background.h"

#include "desk/broke_off.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using wallwright::desk::Background;

namespace {

using Count = Background<int>;

void wait_for(Count& work) {
    while (work.is_running())
        std::this_thread::yield();
}

/// Counts until it is asked to end; its answer is then `answer`.
Count::Work counts_until_stopped(int answer) {
    return [answer](const Count::Tell& tell) {
        while (tell(0.5, std::nullopt))
            std::this_thread::yield();
        return answer;
    };
}

}  // namespace

TEST_CASE("Work that ends has its answer ready, once") {
    Count work;
    CHECK_FALSE(work.is_running());
    CHECK_FALSE(work.take());
    work.start([](const Count::Tell&) { return 7; });
    wait_for(work);
    CHECK(work.take() == 7);
    CHECK_FALSE(work.take());
}

TEST_CASE("A first answer can be taken while the work goes on, and the newest counts") {
    Count work;
    work.start([](const Count::Tell& tell) {
        tell(0.2, 1);
        tell(0.4, 2);
        while (tell(0.5, std::nullopt))
            std::this_thread::yield();
        return 3;
    });
    while (work.done() < 0.5)
        std::this_thread::yield();
    CHECK(work.is_running());
    CHECK(work.take() == 2);
    work.finish();
    CHECK_FALSE(work.is_running());
    CHECK(work.take() == 3);
}

TEST_CASE("Work that is stopped leaves no answer, work that is finished does") {
    Count work;
    work.start(counts_until_stopped(4));
    work.stop();
    CHECK_FALSE(work.is_running());
    CHECK_FALSE(work.take());
    work.start(counts_until_stopped(5));
    work.finish();
    CHECK(work.take() == 5);
}

TEST_CASE("Another start ends what runs and forgets its answer") {
    Count work;
    work.start(counts_until_stopped(4));
    work.start([](const Count::Tell& tell) { return tell(1, std::nullopt) ? 6 : 0; });
    wait_for(work);
    CHECK(work.take() == 6);
    CHECK(work.done() == 1);
}

TEST_CASE("What work throws is told, once, and its first answer can still be taken") {
    Count work;
    work.start([](const Count::Tell& tell) -> int {
        tell(0.5, 3);
        throw std::runtime_error("no memory left");
    });
    wait_for(work);
    CHECK(work.take() == 3);
    CHECK(work.take_failure() == "no memory left");
    CHECK_FALSE(work.take_failure());
}

TEST_CASE("Another start forgets what the work before it threw") {
    Count work;
    work.start([](const Count::Tell&) -> int { throw std::runtime_error("no memory left"); });
    wait_for(work);
    work.start([](const Count::Tell&) { return 7; });
    wait_for(work);
    CHECK_FALSE(work.take_failure());
    CHECK(work.take() == 7);
}

TEST_CASE("The person is told what broke off, and that the wall is as it was") {
    const wallwright::desk::Notice told = wallwright::desk::broke_off("The growth", "no memory");
    CHECK(told.is_problem);
    CHECK(told.text ==
          "The growth broke off (no memory). The wall is as it was; save it and try again.");
}

TEST_CASE("Work ends with what holds it") {
    std::atomic<bool> ended = false;
    {
        Count work;
        work.start([&ended](const Count::Tell& tell) {
            while (tell(0, std::nullopt))
                std::this_thread::yield();
            ended = true;
            return 0;
        });
    }
    CHECK(ended);
}

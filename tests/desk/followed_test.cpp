#include "desk/followed.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <stdexcept>
#include <thread>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

wall::Project without_title(wall::Project project) {
    project.title.clear();
    return project;
}

struct Asked {
    Session session{scenes::wall_of(3600, 2400)};
    Followed<int> answer{"Counting", without_title};

    void ask(Followed<int>::Work::Work work) {
        answer.compare(session);
        answer.begin(std::move(work));
        while (answer.is_running())
            std::this_thread::yield();
        answer.take(session);
    }
    void change(const std::string& title, double width) {
        wall::Project project = scenes::wall_of(width, 2400);
        project.title = title;
        session.apply("Change", project);
        answer.compare(session);
    }
};

int one(const Followed<int>::Work::Tell&) {
    return 1;
}

}  // namespace

TEST_CASE("An answer is stale while the wall is another in what it depends on, and no longer") {
    Asked asked;
    CHECK(asked.answer.is_stale());
    asked.ask(one);
    CHECK(asked.answer.answer() == 1);
    CHECK_FALSE(asked.answer.is_stale());
    asked.change("Hall", 3600);
    CHECK_FALSE(asked.answer.is_stale());
    const std::uint64_t before = asked.answer.version();
    asked.change("Hall", 3000);
    CHECK(asked.answer.is_stale());
    CHECK(asked.answer.version() != before);
    CHECK_FALSE(asked.answer.has_tried());
    CHECK(asked.answer.answer() == 1);
    asked.session.undo();
    asked.answer.compare(asked.session);
    CHECK_FALSE(asked.answer.is_stale());
}

TEST_CASE("Work that breaks off leaves the answer before, says so, and has been tried") {
    Asked asked;
    asked.ask(one);
    const std::uint64_t number = asked.answer.number();
    asked.change("", 3000);
    asked.ask([](const Followed<int>::Work::Tell&) -> int { throw std::runtime_error("no room"); });
    CHECK(asked.answer.answer() == 1);
    CHECK(asked.answer.number() == number);
    CHECK(asked.answer.is_stale());
    CHECK(asked.answer.has_tried());
    CHECK_FALSE(asked.answer.is_at_work());
    REQUIRE(asked.session.notice);
    CHECK(asked.session.notice->text.starts_with("Counting broke off (no room)"));
}

TEST_CASE("Nothing is left of an answer that is forgotten, and work that is given up was no try") {
    Asked asked;
    asked.ask(one);
    asked.answer.clear();
    CHECK_FALSE(asked.answer.answer());
    asked.answer.compare(asked.session);
    asked.answer.begin(one);
    asked.answer.give_up();
    CHECK_FALSE(asked.answer.is_at_work());
    CHECK_FALSE(asked.answer.has_tried());
}

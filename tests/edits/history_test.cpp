#include "edits/history.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using edits::History;

namespace {

wall::Project titled(const std::string& title) {
    wall::Project project = scenes::wall_of(3600, 2400);
    project.title = title;
    return project;
}

/// What a History should do, said as a plain list.
struct Model {
    std::vector<std::string> titles;
    std::size_t now = 0;

    void push(const std::string& title) {
        if (title == titles[now])
            return;
        titles.resize(now + 1);
        titles.push_back(title);
        ++now;
    }
};

}  // namespace

TEST_CASE("A new history has no step to take and counts as saved") {
    const History history(titled("first"));
    CHECK(history.now().title == "first");
    CHECK_FALSE(history.can_undo());
    CHECK_FALSE(history.can_redo());
    CHECK(history.undo_label().empty());
    CHECK(history.redo_label().empty());
    CHECK(history.is_saved());
}

TEST_CASE("Undo and redo name the step that they take") {
    History history(titled("first"));
    history.push("Move Kelp", titled("second"));
    history.push("Turn Dune", titled("third"));
    CHECK(history.undo_label() == "Turn Dune");
    history.undo();
    CHECK(history.now().title == "second");
    CHECK(history.undo_label() == "Move Kelp");
    CHECK(history.redo_label() == "Turn Dune");
    history.undo();
    CHECK(history.undo_label().empty());
    CHECK(history.redo_label() == "Move Kelp");
    history.redo();
    history.redo();
    CHECK(history.now().title == "third");
}

TEST_CASE("Undo and redo with no step to take leave everything") {
    History history(titled("first"));
    history.undo();
    history.redo();
    CHECK(history.now().title == "first");
}

TEST_CASE("A step after undo forgets what was undone") {
    History history(titled("first"));
    history.push("Move Kelp", titled("second"));
    history.undo();
    history.push("Turn Kelp", titled("other"));
    CHECK_FALSE(history.can_redo());
    history.undo();
    CHECK(history.now().title == "first");
}

TEST_CASE("A state equal to now is no step and forgets nothing") {
    History history(titled("first"));
    history.push("Move Kelp", titled("second"));
    history.undo();
    history.push("Move Kelp", titled("first"));
    CHECK_FALSE(history.can_undo());
    CHECK(history.redo_label() == "Move Kelp");
}

TEST_CASE("Steps of one burst are one step, under the last name") {
    History history(titled("first"));
    history.push("Move Kelp", titled("second"), "nudge kelp");
    history.push("Move Kelp by 2 mm", titled("third"), "nudge kelp");
    CHECK(history.undo_label() == "Move Kelp by 2 mm");
    history.undo();
    CHECK(history.now().title == "first");
    history.redo();
    CHECK(history.now().title == "third");
}

TEST_CASE("Another burst, none, an end, a save or an undo begins a step of its own") {
    History history(titled("first"));
    history.push("a", titled("second"), "nudge kelp");
    SECTION("another") {
        history.push("b", titled("third"), "nudge dune");
    }
    SECTION("none") {
        history.push("b", titled("third"));
    }
    SECTION("an end") {
        history.end_burst();
        history.push("b", titled("third"), "nudge kelp");
    }
    SECTION("a save") {
        history.mark_saved();
        history.push("b", titled("third"), "nudge kelp");
    }
    SECTION("an undo") {
        history.push("c", titled("undone"), "nudge dune");
        history.undo();
        history.push("b", titled("third"), "nudge kelp");
    }
    SECTION("a redo") {
        history.undo();
        history.redo();
        history.push("b", titled("third"), "nudge kelp");
    }
    CHECK(history.now().title == "third");
    history.undo();
    CHECK(history.now().title == "second");
}

TEST_CASE("Steps without a burst are never one step") {
    History history(titled("first"));
    history.push("a", titled("second"));
    history.push("b", titled("third"));
    history.undo();
    CHECK(history.now().title == "second");
}

TEST_CASE("A burst that comes back to where it began is no step") {
    History history(titled("first"));
    history.push("Move Kelp", titled("second"), "nudge kelp");
    history.push("Move Kelp", titled("first"), "nudge kelp");
    CHECK_FALSE(history.can_undo());
    CHECK(history.is_saved());
}

TEST_CASE("Work is saved where it was saved, however one comes back there") {
    History history(titled("first"));
    history.push("a", titled("second"));
    CHECK_FALSE(history.is_saved());
    history.mark_saved();
    CHECK(history.is_saved());
    history.undo();
    CHECK_FALSE(history.is_saved());
    history.redo();
    CHECK(history.is_saved());
    history.push("b", titled("third"));
    history.push("c", titled("second"));
    CHECK(history.is_saved());
}

TEST_CASE("Recovered work is unsaved until it is saved") {
    History history(titled("first"));
    history.mark_unsaved();
    CHECK_FALSE(history.is_saved());
    history.mark_saved();
    CHECK(history.is_saved());
}

TEST_CASE("The oldest steps go when there are too many") {
    History history(titled("0"));
    for (std::size_t i = 1; i <= History::kMost + 10; ++i)
        history.push("step", titled(std::to_string(i)));
    CHECK(history.now().title == std::to_string(History::kMost + 10));
    std::size_t undone = 0;
    for (; history.can_undo(); ++undone)
        history.undo();
    CHECK(undone == History::kMost - 1);
    CHECK(history.now().title == "11");
    CHECK(history.undo_label().empty());
}

TEST_CASE("Undo and redo lead through the states that were pushed") {
    rc::prop("for any series of steps", [] {
        Model model{{"0"}};
        History history(titled("0"));
        const auto moves = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 8));
        for (const int move : moves) {
            if (move == 6 && model.now > 0)
                --model.now;
            if (move == 7 && model.now + 1 < model.titles.size())
                ++model.now;
            if (move < 6)
                model.push(std::to_string(move));
            move == 6   ? history.undo()
            : move == 7 ? history.redo()
                        : history.push("step", titled(std::to_string(move)));
            RC_ASSERT(history.now().title == model.titles[model.now]);
            RC_ASSERT(history.can_undo() == (model.now > 0));
            RC_ASSERT(history.can_redo() == (model.now + 1 < model.titles.size()));
        }
    });
}

#include "desk/bench/match_choice.h"

#include "desk/bench/match_moves.h"
#include "edits/edit.h"
#include "edits/prints.h"
#include "matching.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

const wall::PieceId kOak{"oak"};
const wall::PieceId kAsh{"ash"};
const wall::PieceId kElm{"elm"};
const wall::PrintId kReed{"reed"};
const wall::PrintId kEbb{"ebb"};
const wall::PrintId kLoch{"loch"};

struct Drawers {
    Session session{mixed_drawers()};
    MatchChoice choice;

    Drawers() { wait_for(choice, session); }
    [[nodiscard]] std::optional<wall::PrintId> print_in(const wall::PieceId& piece) const {
        return find(session.kept(), piece)->print;
    }
    [[nodiscard]] bool has_mount(const wall::PieceId& piece) const {
        return find(session.kept(), piece)->mount.has_value();
    }
};

}  // namespace

TEST_CASE("The match is found by itself, and has changed nothing") {
    const Drawers it;
    REQUIRE(it.choice.found() != nullptr);
    CHECK(it.choice.pair_of(kEbb)->piece == kOak);
    CHECK(it.choice.pair_of(kReed)->piece == kAsh);
    CHECK(it.choice.pair_of(kLoch) == nullptr);
    CHECK(it.choice.pair_of(kElm) == nullptr);
    CHECK_FALSE(it.choice.found()->more.empty());
    CHECK(it.session.kept() == mixed_drawers());
    CHECK(it.choice.changes_anything(it.session));
}

TEST_CASE("Taking all of it is one step, and each frame that needs a mount has one") {
    Drawers it;
    REQUIRE(it.choice.take_all(it.session));
    CHECK(it.print_in(kOak) == kEbb);
    CHECK(it.print_in(kAsh) == kReed);
    CHECK(it.has_mount(kOak));
    CHECK(it.has_mount(kAsh));
    CHECK_FALSE(it.has_mount(kElm));
    wait_for(it.choice, it.session);
    CHECK_FALSE(it.choice.changes_anything(it.session));
    it.session.undo();
    CHECK(it.session.kept() == mixed_drawers());
}

TEST_CASE("Taking one pair puts back into the drawer what was in the frame") {
    Drawers it;
    REQUIRE(it.choice.take(it.session, kEbb));
    CHECK(it.print_in(kOak) == kEbb);
    CHECK_FALSE(it.print_in(kAsh));
    CHECK(it.session.history().undo_label() == "Put Ebb into the frame Oak");
    CHECK_FALSE(it.choice.take(it.session, kLoch));
}

TEST_CASE("A match of another wall is stale and not taken, until it has been found anew") {
    Drawers it;
    REQUIRE(it.session.apply(
        "Crop", edits::change_print_everywhere(it.session.kept(), kLoch, [](wall::Print& print) {
            print.size = {280, 380};
        })));
    it.choice.follow(it.session);
    CHECK_FALSE(it.choice.take_all(it.session));
    CHECK(it.print_in(kOak) == kReed);
    wait_for(it.choice, it.session);
    CHECK_FALSE(it.choice.is_stale());
    CHECK(it.choice.take_all(it.session));
}

TEST_CASE("Where pieces hang on the wall is no matter to the match") {
    Drawers it;
    const std::vector<edits::Move> moves{{kOak, {100, 1200}}};
    REQUIRE(it.session.apply("Move", edits::place(it.session.kept(), moves)));
    it.choice.follow(it.session);
    CHECK_FALSE(it.choice.is_stale());
    CHECK_FALSE(it.choice.is_running());
}

TEST_CASE("A print that is kept stays in its frame, and is matched so") {
    Drawers it;
    REQUIRE(keep_print(it.session, kOak, true));
    wait_for(it.choice, it.session);
    CHECK(it.choice.pair_of(kReed)->piece == kOak);
    CHECK(it.choice.pair_of(kReed)->kept);
    CHECK_FALSE(put_by_hand(it.session, kReed, kAsh));
    REQUIRE(it.session.notice);
    CHECK(it.session.notice->text == "Reed is kept in the frame Oak; let it go first.");
    CHECK_FALSE(put_by_hand(it.session, kEbb, kOak));
    CHECK(it.session.notice->text == "The frame Oak keeps Reed; let that go first.");
    REQUIRE(keep_print(it.session, kOak, false));
    CHECK(put_by_hand(it.session, kReed, kAsh));
}

TEST_CASE("A print put into a frame by hand leaves the one it was in and gets the mount it needs") {
    Drawers it;
    REQUIRE(put_by_hand(it.session, kReed, kAsh));
    CHECK(it.print_in(kAsh) == kReed);
    CHECK_FALSE(it.print_in(kOak));
    CHECK(it.has_mount(kAsh));
    CHECK_FALSE(put_by_hand(it.session, kReed, kAsh));
    REQUIRE(take_out(it.session, kAsh));
    CHECK_FALSE(it.print_in(kAsh));
    CHECK(it.session.history().undo_label() == "Take Reed out of its frame");
}

TEST_CASE("What comes of putting a print somewhere is said before") {
    const wall::Project project = mixed_drawers();
    CHECK(fitting_words(project, kEbb, kOak).starts_with("Ebb goes into the frame Oak, with "));
    CHECK(will_do(project, kEbb, kOak));
    CHECK(fitting_words(project, kLoch, kAsh) ==
          "Loch would not do in this frame, which takes 220 x 270 mm; trim it or choose "
          "another.");
    CHECK_FALSE(will_do(project, kLoch, kAsh));
    Session session(project);
    CHECK_FALSE(put_by_hand(session, kLoch, kAsh));
    CHECK(session.kept() == project);
    REQUIRE(session.notice);
    CHECK(session.notice->text == fitting_words(project, kLoch, kAsh));
    CHECK(fitting_words(project, {"no-such"}, kAsh).empty());
}

TEST_CASE(
    "A mount with several windows is not filled by hand, nor a print taken out of its window") {
    wall::Project project = mixed_drawers();
    wall::Mount mount;
    mount.id = {"pair"};
    mount.openings = {{kReed, std::nullopt}, {kEbb, std::nullopt}};
    project.mounts.push_back(mount);
    project.pieces[0].print.reset();
    project.pieces[0].mount = mount.id;
    CHECK_FALSE(will_do(project, kLoch, kOak));
    CHECK(fitting_words(project, kLoch, kOak) ==
          "The frame Oak has a mount with several windows; choose its prints with the mount.");
    CHECK(fitting_words(project, kReed, kAsh) ==
          "Reed has a window of its own in a mount; take that out first.");
}

#include "base/random.h"
#include "desk/command.h"
#include "desk/hand.h"
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

/// A wall, and what a hand does to it, from one seed: ranges of rapidcheck's own begin small, and
/// then hardly a press takes hold of anything.
class Monkey {
  public:
    explicit Monkey(std::uint64_t seed) : random_(seed) {}

    Hand any_wall() {
        wall::Project project = scenes::attic_of(4000, whole(1500, 3000), whole(1500, 3000));
        for (const char* id : {"a", "b", "c", "d"})
            scenes::add_piece(project, id, {any_x(), whole(0, 2500)}, any_size());
        scenes::add_hung(project, "hung", {any_x(), whole(0, 2500)}, any_size());
        project.pieces[3].pinned = true;
        scenes::add_waiting(project, "w", {300, 400});
        scenes::add_furniture(project, wall::FurnitureType::sofa,
                              Rect<Wall>::at({any_x(), 0}, any_size()));
        scenes::add_fixture(project, wall::FixtureType::window,
                            Rect<Wall>::at({any_x(), whole(0, 2500)}, any_size()));
        Hand hand{Session(project)};
        hand.waiting = {{{"w"}, Rect<Wall>::at({100, -700}, {300, 400})}};
        return hand;
    }

    /// Between gestures: a command, as often as not undo or redo. What waits is where it was.
    void any_command(Hand& hand) {
        constexpr CommandId kBack[] = {CommandId::undo, CommandId::redo};
        const auto all = all_commands();
        const Command& one = random_.below(2) == 0 ? command(kBack[random_.below(2)])
                                                   : all[random_.below(all.size())];
        one.run(hand.session);
        const wall::Piece* waits = wall::find(hand.session.kept(), wall::PieceId{"w"});
        hand.waiting.clear();
        if (waits != nullptr && waits->state == wall::PieceState::waiting)
            hand.waiting = {{{"w"}, Rect<Wall>::at({100, -700}, {300, 400})}};
    }
    bool is_time_for_a_command() { return random_.below(8) == 0; }

    void any_event(Hand& hand) {
        hand.shift = random_.below(4) == 0;
        hand.alt = random_.below(4) == 0;
        if (!hand.tool.is_busy())
            hand.step = random_.below(2) == 0 ? Step::room : Step::arrange;
        const std::uint64_t what = random_.below(12);
        if (what < 3 && (what == 0 || !hand.tool.is_busy()))
            hand.press(any_point(hand));
        else if (what < 9)
            hand.move(any_point(hand));
        else if (what < 11)
            hand.release(any_point(hand));
        else
            hand.tool.cancel(hand.session);
    }

  private:
    double whole(int low, int high) {
        return low + double(random_.below(std::uint64_t(high - low)));
    }
    double any_x() { return whole(-800, 5000); }
    geometry::Size any_size() { return {whole(100, 900), whole(100, 900)}; }

    /// Near something more often than not, so that most presses take hold.
    Point<Wall> any_point(const Hand& hand) {
        const wall::Project& project = hand.session.project();
        std::vector<Point<Wall>> spots{{any_x(), whole(-1500, 3500)},
                                       {any_x(), whole(-1500, 3500)},
                                       {any_x(), whole(-1500, 3500)},
                                       {250, -500}};
        for (const wall::Placed& piece : wall::placed_pieces(project))
            spots.push_back(piece.place.centre());
        for (const Point<Wall> corner : project.room.outline.corners)
            spots.push_back(corner);
        for (const wall::Furniture& sofa : project.room.furniture)
            spots.insert(
                spots.end(),
                {sofa.place.centre(), sofa.place.max, {sofa.place.max.x, sofa.place.centre().y}});
        return spots[random_.below(spots.size())];
    }

    Random random_;
};

std::size_t steps(Session session) {
    std::size_t count = 0;
    for (; session.history().can_undo(); ++count)
        session.undo();
    return count;
}

/// Whether all that hangs or is pinned before a gesture is as it was.
bool keeps_what_is_fixed(const wall::Project& before, const wall::Project& after) {
    return std::ranges::all_of(before.pieces, [&after](const wall::Piece& piece) {
        const wall::Piece* now = wall::find(after, piece.id);
        return !wall::is_fixed(piece) || (now != nullptr && *now == piece);
    });
}

}  // namespace

TEST_CASE("Whatever the hand does, every state is sound and what is fixed stays") {
    rc::prop("sound, fixed pieces in place, a gesture at most one step", [](std::uint64_t seed) {
        Monkey monkey(seed);
        Hand hand = monkey.any_wall();
        for (int i = 0; i < 40; ++i) {
            if (!hand.tool.is_busy() && monkey.is_time_for_a_command()) {
                monkey.any_command(hand);
                RC_ASSERT(wall::faults(hand.session.kept()).empty());
                RC_ASSERT(!hand.session.has_preview());
            }
            const wall::Project before = hand.session.kept();
            const std::size_t steps_before = steps(hand.session);
            const bool was_busy = hand.tool.is_busy();
            monkey.any_event(hand);
            RC_ASSERT(wall::faults(hand.session.project()).empty());
            RC_ASSERT(wall::faults(hand.session.kept()).empty());
            RC_ASSERT(keeps_what_is_fixed(before, hand.session.project()));
            RC_ASSERT(keeps_what_is_fixed(before, hand.session.kept()));
            RC_ASSERT(steps(hand.session) <= steps_before + 1);
            RC_ASSERT(was_busy || hand.session.kept() == before);
            RC_ASSERT(hand.tool.is_busy() || !hand.session.has_preview());
        }
        const wall::Project kept = hand.session.kept();
        hand.tool.cancel(hand.session);
        RC_ASSERT(hand.session.project() == kept);
        RC_ASSERT(hand.session.kept() == kept);
    });
}

#include "base/random.h"
#include "desk/hand.h"
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

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
        const Rect<Wall> sofa = project.room.furniture[0].place;
        spots.insert(spots.end(), {sofa.centre(), sofa.max, {sofa.max.x, sofa.centre().y}});
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

}  // namespace

TEST_CASE("Whatever the hand does, every state is sound and what is fixed stays") {
    rc::prop("sound, fixed pieces in place, a gesture at most one step", [](std::uint64_t seed) {
        Monkey monkey(seed);
        Hand hand = monkey.any_wall();
        const wall::Project first = hand.session.kept();
        for (int i = 0; i < 40; ++i) {
            const wall::Project before = hand.session.kept();
            const std::size_t steps_before = steps(hand.session);
            const bool was_busy = hand.tool.is_busy();
            monkey.any_event(hand);
            RC_ASSERT(wall::faults(hand.session.project()).empty());
            RC_ASSERT(wall::faults(hand.session.kept()).empty());
            for (const std::size_t fixed : {std::size_t{3}, std::size_t{4}})
                RC_ASSERT(hand.session.project().pieces[fixed] == first.pieces[fixed]);
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

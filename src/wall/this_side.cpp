#include "wall/this_side.h"

namespace wallwright::wall {

std::vector<const Fixture*> fixtures_here(const Room& room) {
    std::vector<const Fixture*> here;
    for (const Fixture& fixture : room.fixtures)
        if (!fixture.other_side)
            here.push_back(&fixture);
    return here;
}

std::vector<const Fixture*> radiators_here(const Room& room) {
    std::vector<const Fixture*> radiators = fixtures_here(room);
    std::erase_if(radiators, [](const Fixture* one) { return one->type != FixtureType::radiator; });
    return radiators;
}

}  // namespace wallwright::wall

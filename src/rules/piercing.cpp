#include "rules/piercing.h"

#include <algorithm>

namespace wallwright::rules {

bool will_pierce(const OnWall& one) {
    return one.piece->state == wall::PieceState::planned &&
           std::ranges::any_of(one.hanging->fixings, [](const hanging::Fixing& fixing) {
               return wall::pierces(fixing.kind);
           });
}

std::vector<const OnWall*> those_that_pierce(const Scene& scene) {
    std::vector<const OnWall*> found;
    for (const OnWall& one : scene.pieces)
        if (will_pierce(one))
            found.push_back(&one);
    return found;
}

}  // namespace wallwright::rules

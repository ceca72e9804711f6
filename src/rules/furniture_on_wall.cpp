#include "rules/all.h"
#include "rules/judge.h"
#include "rules/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::rules {

namespace {

/// How far the thing reaches past the wall's ends, mm; 0 or less when it does not.
struct Past {
    double left = 0;
    double right = 0;
};

Past past_the_ends(const Scene& scene, const geometry::Rect<geometry::Wall>& thing) {
    const geometry::Rect<geometry::Wall> wall = geometry::bounds(scene.project.room.outline);
    return {wall.left() - thing.left(), thing.right() - wall.right()};
}

template <class Thing>
void check_all(const Scene& scene, const std::vector<Thing>& things,
               std::vector<wall::Finding>& findings) {
    for (const Thing& thing : things) {
        const Past past = past_the_ends(scene, thing.place);
        const double most = std::max(past.left, past.right);
        if (!exceeds(most, 0))
            continue;
        findings.push_back(
            finding(wall::Severity::mind, {}, thing.place, Measure{most, 0},
                    fmt::format("{} of {} lies past the {} end of the wall; measure again where it "
                                "begins and how wide it is.",
                                length_text(scene, most), title_of(thing),
                                past.left > past.right ? "left" : "right")));
    }
}

}  // namespace

const Rule kFurnitureOnWall{
    "furniture-on-wall",
    "furniture and fixtures stand between the wall's ends",
    "plain geometry; a slip of the tape or of the keyboard otherwise",
    [](const Scene& scene, std::vector<wall::Finding>& findings) {
        check_all(scene, scene.project.room.furniture, findings);
        check_all(scene, scene.project.room.fixtures, findings);
    },
};

}  // namespace wallwright::rules

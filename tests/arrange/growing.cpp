#include "growing.h"

#include "support/scenes.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <string>

namespace wallwright::growing {

using arrange::WallRect;
using geometry::Size;

wall::Project row_over_sofa(int waiting) {
    constexpr Size kSizes[] = {{300, 400}, {400, 300}, {240, 300},
                               {500, 400}, {300, 300}, {200, 400}};
    wall::Project project = scenes::wall_of(5000, 2600);
    scenes::add_furniture(project, wall::FurnitureType::sofa, WallRect::at({700, 0}, {2000, 800}));
    scenes::add_furniture(project, wall::FurnitureType::lamp, WallRect::at({4000, 0}, {300, 1600}));
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    scenes::add_hung(project, "dune", {1360, 1300}, {500, 400});
    scenes::add_hung(project, "tern", {1920, 1300}, {300, 400});
    for (int i = 0; i < waiting; ++i)
        scenes::add_waiting(project, "new" + std::to_string(i + 1),
                            kSizes[static_cast<std::size_t>(i) % std::size(kSizes)]);
    return project;
}

bool at_the_gap(const arrange::Task& task, const WallRect& a, const WallRect& b) {
    constexpr double kTape = 0.05;  // mm
    const double across = std::max(a.left(), b.left()) - std::min(a.right(), b.right());
    const double up = std::max(a.bottom(), b.bottom()) - std::min(a.top(), b.top());
    const bool beside =
        std::abs(across - task.gap) < kTape && -up > std::min(a.height(), b.height()) / 4 - kTape;
    const bool over =
        std::abs(up - task.gap) < kTape && -across > std::min(a.width(), b.width()) / 4 - kTape;
    return beside || over;
}

}  // namespace wallwright::growing

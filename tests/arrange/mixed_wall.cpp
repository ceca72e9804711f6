#include "arrange/mixed_wall.h"

#include "base/random.h"
#include "support/scenes.h"

#include <fmt/format.h>

namespace wallwright::arrange {

namespace {

constexpr geometry::Size kSizes[] = {{300, 400}, {400, 300}, {400, 500}, {500, 400},
                                     {300, 300}, {210, 297}, {250, 250}, {330, 430},
                                     {500, 700}, {600, 450}, {200, 250}, {180, 240}};

}  // namespace

wall::Project mixed_wall(std::size_t pieces, std::uint64_t seed) {
    wall::Project project = scenes::wall_of(5000, 2600);
    scenes::add_furniture(project, wall::FurnitureType::sofa, WallRect::at({1450, 0}, {2100, 820}));
    Random random(seed);
    for (std::size_t i = 0; i < pieces; ++i)
        scenes::add_waiting(project, fmt::format("p{}", i),
                            kSizes[random.below(std::size(kSizes))]);
    return project;
}

wall::Project mixed_wall_with_hung(std::size_t pieces, std::size_t hung, std::uint64_t seed) {
    wall::Project project = mixed_wall(pieces, seed);
    double left = 1600;
    for (std::size_t i = 0; i < hung; ++i) {
        wall::Piece& piece = project.pieces[i];
        piece.state = wall::PieceState::hung;
        piece.at = WallPoint{left, 1300};
        left += outside_size(project, piece).width + project.style.gap;
    }
    return project;
}

Task task_for(const wall::Project& project) {
    return task_of(project, scenes::small_catalogue(), Free::all_unfixed);
}

}  // namespace wallwright::arrange

// Walls with frames of many sizes on the floor, for the tests of arranging.
#pragma once

#include "arrange/task.h"

#include <cstdint>

namespace wallwright::arrange {

/// A 5 by 2.6 m wall with a sofa in the middle and so many waiting pieces of usual sizes, by seed.
wall::Project mixed_wall(std::size_t pieces, std::uint64_t seed);

/// The same with the first of them hung in a row above the sofa.
wall::Project mixed_wall_with_hung(std::size_t pieces, std::size_t hung, std::uint64_t seed);

/// With the small catalogue of the scenes, every unfixed piece free.
Task task_for(const wall::Project& project);

}  // namespace wallwright::arrange

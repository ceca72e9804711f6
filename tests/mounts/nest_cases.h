// Public cutting instances; tests/data/cutting/README.md says where they are from.
#pragma once

#include "mounts/nest/task.h"

#include <string>
#include <vector>

namespace wallwright::tests {

struct NestCase {
    std::string name;
    mounts::NestTask task;        ///< Blanks may turn.
    std::size_t best_fixed = 0;   ///< Best known sheets without turning; 0 where not known.
    std::size_t best_turned = 0;  ///< And with it.
};

/// All 500 of the ten classes.
std::vector<NestCase> all_cases();
/// The 51 of them on which the best known plans agree.
std::vector<NestCase> small_cases();
/// Mount blanks on sheets of card.
std::vector<NestCase> mount_cases();

mounts::NestTask without_turning(mounts::NestTask task);

}  // namespace wallwright::tests

// Blanks laid about those that are kept, and the two put together into one plan.
#pragma once

#include "mounts/card/kept.h"

namespace wallwright::mounts {

/// What is left to lay once some blanks are kept.
struct RestOfTask {
    NestTask task;  ///< First the sheets of the whole task, then the free parts of kept sheets.
    std::vector<std::size_t> blanks;  ///< Of the whole task.
    /// Of each free part: which kept sheet it is of, and which of its free places.
    std::vector<std::pair<std::size_t, std::size_t>> parts;
};

RestOfTask rest_of(const NestTask& task, const std::vector<KeptSheet>& kept);

/// A plan of the whole task: each kept sheet is cut about its blanks first, then what is left of it
/// is cut up as `plan` of the rest says.
NestPlan put_together(const NestTask& task, const std::vector<KeptSheet>& kept,
                      const RestOfTask& rest, const NestPlan& plan);

}  // namespace wallwright::mounts

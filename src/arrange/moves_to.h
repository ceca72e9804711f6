// From a layout back to the document.
#pragma once

#include "arrange/task.h"
#include "edits/edit.h"

#include <vector>

namespace wallwright::arrange {

/// The free pieces of the layout with their places in it.
std::vector<edits::Move> moves_to(const Task& task, const Layout& layout);

}  // namespace wallwright::arrange

// Random sound projects for the laws of the project file.
#pragma once

#include "wall/project.h"

#include <rapidcheck.h>

#include <iosfwd>

namespace wallwright::store {

/// Every kind of thing with every option, sound by wall/validity.h, with unknown keys at each
/// level; numbers as the file keeps them, so that reading gives back what was written.
rc::Gen<wall::Project> any_project();

}  // namespace wallwright::store

namespace wallwright::wall {

/// How rapidcheck prints a project that breaks a law.
void showValue(const Project& project, std::ostream& out);

}  // namespace wallwright::wall

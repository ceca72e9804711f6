// A project from its file, with the catalogue that goes with it.
#pragma once

#include "base/problem.h"
#include "cli/command.h"
#include "rules/assess.h"
#include "wall/project.h"

#include <string>

namespace wallwright::cli {

struct Loaded {
    wall::Project project;  ///< As the file says.
    wall::Catalogue catalogue;
    std::string folder;       ///< Where its pictures' names start from.
    std::string aside;        ///< What reading it brought to light and is no reason to stop.
    units::LengthUnit shown;  ///< What --units asks for, or else the project's own.
};

/// What was given to --units, a name of a unit, or nothing.
units::LengthUnit unit_of_words(const std::string& units, units::LengthUnit otherwise);

Result<Loaded> load(const Common& common);

/// The project as it is shown: its unit is the one asked for. Not for saving.
wall::Project as_shown(const Loaded& loaded);

/// Sentences in the unit that is shown.
rules::Assessment assess(const Loaded& loaded);

/// 1 when a finding says stop.
Status status_of(const std::vector<wall::Finding>& findings);

}  // namespace wallwright::cli

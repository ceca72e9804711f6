// The built-in catalogue, compiled in from assets/catalogue/*.json.
#pragma once

#include "base/problem.h"
#include "wall/catalogue.h"

namespace wallwright::store {

/// Materials, fixings and sizes that come with the program. A built-in file that cannot be read is
/// a broken contract.
const wall::Catalogue& built_in_catalogue();

/// The project's own records over the built-in ones: what `rules::assess` wants.
wall::Catalogue catalogue_for(const wall::Catalogue& own);

/// One catalogue file's text into `into`; problems name the record.
Outcome read_catalogue(std::string_view text, const std::string& name, wall::Catalogue& into);

}  // namespace wallwright::store

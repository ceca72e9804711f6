// What no sheet can know, said before anyone drills.
#pragma once

#include "pages/flow.h"

namespace wallwright::pages {

void add_cautions(Flow& flow);

}  // namespace wallwright::pages

// How strips sit on the backs of the frames, a small drawing for each planned piece.
#pragma once

#include "pages/flow.h"
#include "rules/assess.h"

namespace wallwright::pages {

/// Nothing when no planned piece hangs on strips.
void add_strip_cards(Flow& flow, const wall::Project& project, const rules::Assessment& assessment);

}  // namespace wallwright::pages

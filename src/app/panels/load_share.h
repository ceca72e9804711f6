// How much of its fixings' rating a piece has in use, in words and as a bar.
#pragma once

#include "app/widgets.h"
#include "hanging/fixings.h"

namespace wallwright::app {

/// "32 %, within 67 %": the limit is what the margin leaves. "does not hold" where anything stops
/// the fixing.
Share load_share(const hanging::Hanging& hanging);

}  // namespace wallwright::app

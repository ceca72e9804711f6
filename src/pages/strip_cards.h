// How strips sit on the backs of the frames, a small drawing for each planned piece.
#pragma once

#include "pages/flow.h"
#include "rules/assess.h"

namespace wallwright::pages {

/// Nothing when no planned piece hangs on strips.
void add_strip_cards(Flow& flow, const wall::Project& project, const rules::Assessment& assessment);

/// "2 strips: 3 from the sides, 3 below the top", one line for each height at which strips sit.
/// `place` is the piece's.
std::vector<std::string> strip_words(const hanging::Hanging& hanging,
                                     const geometry::Rect<geometry::Wall>& place,
                                     units::LengthUnit unit);

}  // namespace wallwright::pages

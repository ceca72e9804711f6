// What the cutting sheet of a mount says: what to do one after the other, where the print is hung,
// and what to mind with the knife. Whole sentences with lengths in the person's unit.
#pragma once

#include "mounts/design/back_marks.h"
#include "units/length.h"

#include <string>
#include <vector>

namespace wallwright::mounts {

/// In order, from the blanks to the look from the front, measured as marked with a rule of the
/// unit's step. Of two and more layers each next blank is stuck behind the one before it is cut,
/// which keeps the reveals even: a framer's answer on qeeebo.com, "How do you properly cut a double
/// mat". What fills the window meanwhile is scrap, so that the drop-out stays whole; common
/// practice, no source.
///
/// At the face of a bevel the corner lies one thickness beyond the cross on the back, by plain
/// geometry; so far the blade goes past it at both ends.
std::vector<std::string> cutting_steps(const MountDesign& design, units::LengthUnit unit);

/// How each print is fixed: T-hinges at its upper edge (M. A. Smith, Library of Congress, "Matting
/// and Hinging Flat Paper Objects", 1992), no pressure-sensitive tape and no gluing down (Library
/// of Congress, Guide to Preservation Matting and Framing), 1 mm between mount and the board
/// behind the print along their hinge (Library of Congress, "Matting and Hinging Works of Art on
/// Paper"). Floating prints are hung by hinges folded behind them; common practice, no source. The
/// board behind the print is an undermount of acid-free card, not the frame's backing; common
/// practice, no source.
std::vector<std::string> hinging_steps(const MountDesign& design, units::LengthUnit unit);

/// Common practice, no source.
std::vector<std::string> knife_cautions(const MountDesign& design);

/// Where to hold the line on the back of this layer while cutting: for a bevel the line is the
/// opening at the back.
std::string line_advice(const LayerMarks& layer);

/// Where a cut begins and ends: "1.4 mm before the first cross and 1.4 mm past the next".
std::string cut_ends(const LayerMarks& layer);

/// "Kelp", or "window b, Kelp" among several.
std::string window_name(const MountDesign& design, std::size_t index);

}  // namespace wallwright::mounts

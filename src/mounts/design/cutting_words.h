// What the cutting sheet of a mount says: what to do one after the other, where the print is hung,
// and what to mind with the knife. Whole sentences with lengths in the person's unit.
#pragma once

#include "mounts/design/back_marks.h"
#include "units/length.h"

#include <string>
#include <vector>

namespace wallwright::mounts {

/// In order, from the blanks to the look from the front. Of two and more layers each next blank is
/// stuck behind the one before it is cut, which keeps the reveals even: a framer's answer on
/// qeeebo.com, "How do you properly cut a double mat".
std::vector<std::string> cutting_steps(const MountDesign& design, units::LengthUnit unit);

/// How each print is fixed: T-hinges at its upper edge (M. A. Smith, Library of Congress, "Matting
/// and Hinging Flat Paper Objects", 1992), no pressure-sensitive tape and no gluing down (Library
/// of Congress, Guide to Preservation Matting and Framing), 1 mm between mount and backing board
/// along their hinge (Library of Congress, "Matting and Hinging Works of Art on Paper"). Floating
/// prints are hung by hinges folded behind them; common practice, no source.
std::vector<std::string> hinging_steps(const MountDesign& design, units::LengthUnit unit);

/// Common practice, no source.
std::vector<std::string> knife_cautions(const MountDesign& design, units::LengthUnit unit);

/// Where to hold the line on the back of this layer while cutting: for a bevel the line is the
/// opening at the back.
std::string line_advice(const LayerMarks& layer, units::LengthUnit unit);

}  // namespace wallwright::mounts

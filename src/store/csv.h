// Frames from a table, as a spreadsheet writes it.
#pragma once

#include "base/problem.h"
#include "units/length.h"
#include "wall/catalogue.h"
#include "wall/frame_row.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wallwright::store {

using wall::FrameRow;

/// Columns by name in any order and either case: title, width and height, or instead of these two
/// `size` ("30x40 cm", or a name among `sizes` such as "a4"); optional weight, depth, hanger
/// (strips, sawtooth, two_rings, cord_one_hook, cord_two_hooks), status (hung, planned, waiting), x
/// and y together. Widths, heights and sizes are over the moulding. The separator (comma,
/// semicolon, tab) is found from the header; cells may be quoted (RFC 4180). A unit stands in the
/// cell ("40 cm"), in the header ("width (cm)", "width_mm", "weight [g]"), or is `bare`, and
/// kilograms for a weight. A comma in a number is a decimal comma. With a place and no status a
/// frame is planned, without a place it waits. Unknown columns, missing ones, short lines and bad
/// cells are Problems with line and column.
Result<std::vector<FrameRow>> read_frames_csv(std::string_view text, const std::string& name,
                                              units::LengthUnit bare,
                                              std::span<const wall::NamedSize> sizes = {});

}  // namespace wallwright::store

// The marks as a table for a spreadsheet.
#pragma once

#include "hanging/marks.h"
#include "wall/project.h"

#include <string>
#include <vector>

namespace wallwright::pages {

/// RFC 4180: fields with a comma, quote or line break are quoted; lines end in CRLF.
std::string csv_line(const std::vector<std::string>& fields);

/// A head and a line a mark: number, piece, what to mark, where by the table's datum, the error to
/// expect; lengths in mm to 0.01. The stage comes last, on walls that have any.
std::string marks_csv(const wall::Project& project, const hanging::MarksTable& table);

}  // namespace wallwright::pages

// The marks as a table for a spreadsheet.
#pragma once

#include "hanging/marks.h"
#include "wall/project.h"

#include <string>

namespace wallwright::pages {

/// Lines of csv_line.h: a head and a line a mark: number, piece, what to mark, where by the table's
/// datum, the error to expect; lengths in mm to 0.01. Then the length of the cord where anything
/// hangs from a rail, and last the stage, on walls that have any.
std::string marks_csv(const wall::Project& project, const hanging::MarksTable& table);

}  // namespace wallwright::pages

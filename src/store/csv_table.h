// A table as a spreadsheet writes it: rows of cells, each of which knows its place in the text.
#pragma once

#include "base/problem.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wallwright::store {

struct CsvCell {
    std::string text;        ///< Without quotes, and without spaces around it.
    std::size_t offset = 0;  ///< Where it starts in the text.
};

/// Never empty: a row has one cell at least.
using CsvRow = std::vector<CsvCell>;

struct CsvTable {
    CsvRow header;
    std::vector<CsvRow>
        rows;  ///< As long as they are in the text; rows of nothing but empty cells are left out.
};

/// RFC 4180 with a header, LF or CRLF. The separator is whichever of semicolon, tab and comma the
/// header has most of. Lines with nothing on them are left out. A quote sign inside an unquoted
/// cell stands for itself, since it means inches.
Result<CsvTable> read_csv_table(std::string_view text, const std::string& name);

/// A problem at a cell: "frames.csv:4, column 3 (width)" with the line and a caret. `column` counts
/// from 0.
struct CsvPlace {
    std::string_view text;
    const std::string& name;
    const CsvRow& header;
};
Problem problem_at(const CsvPlace& place, const CsvCell& cell, std::size_t column, Problem problem);

}  // namespace wallwright::store

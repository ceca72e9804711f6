// One line of a table for a spreadsheet.
#pragma once

#include <string>
#include <vector>

namespace wallwright::pages {

/// RFC 4180: fields with a comma, quote or line break are quoted; lines end in CRLF.
std::string csv_line(const std::vector<std::string>& fields);

}  // namespace wallwright::pages

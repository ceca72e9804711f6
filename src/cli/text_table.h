// Tables for people in a terminal.
#pragma once

#include <string>
#include <vector>

namespace wallwright::cli {

enum class Side { left, right };

struct Column {
    std::string head;
    Side side = Side::left;
};

/// Columns two spaces apart, as wide as their widest cell, with a line under the head; no spaces at
/// line ends.
std::string text_table(const std::vector<Column>& columns,
                       const std::vector<std::vector<std::string>>& rows);

/// Columns that a terminal gives the text: East Asian wide letters take two, combining marks none.
std::size_t columns_of(const std::string& utf8);

}  // namespace wallwright::cli

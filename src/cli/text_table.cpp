#include "cli/text_table.h"

#include "base/contract.h"

#include <algorithm>
#include <cstdint>

namespace wallwright::cli {

namespace {

/// The character that starts at `at`, which moves past it. Broken UTF-8 counts byte by byte.
std::uint32_t next_character(const std::string& text, std::size_t& at) {
    const auto byte = [&text](std::size_t i) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i]));
    };
    const std::uint32_t first = byte(at);
    const std::size_t length = first < 0xC0 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    if (length == 1 || at + length > text.size()) {
        ++at;
        return first;
    }
    std::uint32_t code = first & (0xFFU >> (length + 1));
    for (std::size_t i = 1; i < length; ++i)
        code = (code << 6U) | (byte(at + i) & 0x3FU);
    at += length;
    return code;
}

/// The blocks of Unicode's East Asian Width "wide" that names and titles are likely to use.
bool is_wide(std::uint32_t code) {
    return (code >= 0x1100 && code <= 0x115F) || (code >= 0x2E80 && code <= 0xA4CF) ||
           (code >= 0xAC00 && code <= 0xD7A3) || (code >= 0xF900 && code <= 0xFAFF) ||
           (code >= 0xFE30 && code <= 0xFE6F) || (code >= 0xFF00 && code <= 0xFF60) ||
           (code >= 0x1F300 && code <= 0x1FAFF) || (code >= 0x20000 && code <= 0x3FFFD);
}

bool is_combining(std::uint32_t code) {
    return (code >= 0x0300 && code <= 0x036F) || (code >= 0x200B && code <= 0x200F) ||
           code == 0xFE0F;
}

std::string padded(const std::string& text, std::size_t width, Side side) {
    const std::string space(width - std::min(width, columns_of(text)), ' ');
    return side == Side::left ? text + space : space + text;
}

std::string line_of(const std::vector<Column>& columns, const std::vector<std::size_t>& widths,
                    const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < columns.size(); ++i)
        line += (i == 0 ? "" : "  ") + padded(cells[i], widths[i], columns[i].side);
    line.erase(line.find_last_not_of(' ') + 1);
    return line + "\n";
}

}  // namespace

std::size_t columns_of(const std::string& utf8) {
    std::size_t columns = 0;
    for (std::size_t at = 0; at < utf8.size();) {
        const std::uint32_t code = next_character(utf8, at);
        columns += is_combining(code) ? 0 : is_wide(code) ? 2 : 1;
    }
    return columns;
}

std::string text_table(const std::vector<Column>& columns,
                       const std::vector<std::vector<std::string>>& rows) {
    std::vector<std::size_t> widths;
    std::vector<std::string> heads;
    std::vector<std::string> rules;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        std::size_t width = columns_of(columns[i].head);
        for (const auto& row : rows) {
            WW_EXPECT(row.size() == columns.size(),
                      "every row of a table has a cell for each column");
            width = std::max(width, columns_of(row[i]));
        }
        widths.push_back(width);
        heads.push_back(columns[i].head);
        rules.emplace_back(width, '-');
    }
    std::string text = line_of(columns, widths, heads) + line_of(columns, widths, rules);
    for (const auto& row : rows)
        text += line_of(columns, widths, row);
    return text;
}

}  // namespace wallwright::cli

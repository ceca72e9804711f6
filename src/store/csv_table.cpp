#include "store/csv_table.h"

#include "store/text_place.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::store {

namespace {

constexpr std::string_view kSpaces = " \t\r";

std::string_view without_spaces(std::string_view text) {
    const std::size_t first = text.find_first_not_of(kSpaces);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(kSpaces) - first + 1);
}

char separator_of(std::string_view header_line) {
    char best = ',';
    std::ptrdiff_t most = 0;
    for (const char candidate : {';', '\t', ','}) {
        const std::ptrdiff_t count = std::count(header_line.begin(), header_line.end(), candidate);
        if (count > most) {
            most = count;
            best = candidate;
        }
    }
    return best;
}

/// The first line with something on it.
std::string_view header_line(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(" \r\n"), text.size()));
    return text.substr(0, text.find('\n'));
}

/// Walks over the text cell by cell.
class TableReader {
  public:
    TableReader(std::string_view text, const std::string& name)
        : text_(text), name_(name), separator_(separator_of(header_line(text))) {}

    [[nodiscard]] bool at_end() const { return at_ >= text_.size(); }

    Result<CsvRow> row() {
        CsvRow row;
        for (;;) {
            auto cell = at_quote() ? quoted_cell() : plain_cell();
            if (!cell)
                return fail(cell.error());
            row.push_back(std::move(*cell));
            if (at_end())
                return row;
            if (text_[at_++] == '\n')
                return row;
        }
    }

  private:
    [[nodiscard]] bool at_quote() {
        while (!at_end() && text_[at_] == ' ')
            ++at_;
        return !at_end() && text_[at_] == '"';
    }

    [[nodiscard]] bool ends_cell(char c) const { return c == separator_ || c == '\n'; }

    Result<CsvCell> plain_cell() {
        const std::size_t start = at_;
        while (!at_end() && !ends_cell(text_[at_]))
            ++at_;
        return CsvCell{std::string(without_spaces(text_.substr(start, at_ - start))), start};
    }

    Result<CsvCell> quoted_cell() {
        const std::size_t start = at_++;
        std::string inside;
        for (;; ++at_) {
            if (at_end())
                return fail(problem(start, "this quote is never closed", "close it with \""));
            if (text_[at_] == '"' && at_ + 1 < text_.size() && text_[at_ + 1] == '"')
                ++at_;  // a quote inside quotes is written twice
            else if (text_[at_] == '"')
                break;
            inside += text_[at_];
        }
        ++at_;
        while (!at_end() && !ends_cell(text_[at_])) {
            if (without_spaces(text_.substr(at_, 1)).empty())
                ++at_;
            else
                return fail(problem(at_, "this stands after the closing quote",
                                    "write a quote inside quotes as \"\""));
        }
        return CsvCell{std::string(without_spaces(inside)), start};
    }

    [[nodiscard]] Problem problem(std::size_t offset, std::string what, std::string remedy) const {
        TextPlace place = place_in(text_, offset);
        return {fmt::format("{}:{}", name_, place.line), std::move(what), std::move(remedy),
                std::move(place.excerpt)};
    }

    std::string_view text_;
    const std::string& name_;
    std::size_t at_ = 0;
    char separator_;
};

bool says_nothing(const CsvRow& row) {
    return std::all_of(row.begin(), row.end(),
                       [](const CsvCell& cell) { return cell.text.empty(); });
}

}  // namespace

Result<CsvTable> read_csv_table(std::string_view text, const std::string& name) {
    if (const auto bad = first_bad_utf8(text)) {
        TextPlace place = place_in(text, *bad);
        return fail({fmt::format("{}:{}", name, place.line), "this is not UTF-8 text",
                     "save the table as CSV in UTF-8", std::move(place.excerpt)});
    }
    TableReader reader(text, name);
    CsvTable table;
    while (!reader.at_end()) {
        auto row = reader.row();
        if (!row)
            return fail(row.error());
        if (says_nothing(*row))
            continue;
        if (table.header.empty())
            table.header = std::move(*row);
        else
            table.rows.push_back(std::move(*row));
    }
    if (table.header.empty())
        return fail({name, "the table is empty",
                     "name its columns in the first line: title, width, height", ""});
    return table;
}

Problem problem_at(const CsvPlace& place, const CsvCell& cell, std::size_t column,
                   Problem problem) {
    TextPlace in_text = place_in(place.text, cell.offset);
    const std::string title =
        column < place.header.size() ? fmt::format(" ({})", place.header[column].text) : "";
    problem.where = fmt::format("{}:{}, column {}{}", place.name, in_text.line, column + 1, title);
    problem.excerpt = std::move(in_text.excerpt);
    return problem;
}

}  // namespace wallwright::store

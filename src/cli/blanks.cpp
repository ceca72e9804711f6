#include "cli/blanks.h"

#include "store/csv_table.h"
#include "store/files.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <optional>

namespace wallwright::cli {

namespace {

using store::CsvCell;
using store::CsvRow;

constexpr int kCopiesMost = 1000;

Problem because(std::string what, std::string remedy) {
    return {"", std::move(what), std::move(remedy), ""};
}

/// Where each column is, if it is there, and in which unit its bare numbers are.
struct Columns {
    std::optional<std::size_t> id, width, height, size, count, turn;
    units::LengthUnit unit = units::LengthUnit::mm;
};

std::optional<std::size_t> column_of(const CsvRow& header,
                                     std::initializer_list<std::string_view> names) {
    for (std::size_t i = 0; i < header.size(); ++i)
        if (std::ranges::find(names, header[i].text) != names.end())
            return i;
    return std::nullopt;
}

Columns columns_of_header(const CsvRow& header, units::LengthUnit bare) {
    Columns columns{column_of(header, {"id", "title", "name"}),
                    column_of(header, {"width", "width_mm"}),
                    column_of(header, {"height", "height_mm"}),
                    column_of(header, {"size"}),
                    column_of(header, {"count", "copies"}),
                    column_of(header, {"turn"}),
                    bare};
    if (columns.width && header[*columns.width].text == "width_mm")
        columns.unit = units::LengthUnit::mm;
    return columns;
}

/// Reads one row; what is wrong is told at its cell.
class RowReader {
  public:
    RowReader(const store::CsvPlace& place, const CsvRow& row, const Columns& columns)
        : place_(place), row_(row), columns_(columns) {}

    Result<geometry::Size> size() const {
        if (columns_.size) {
            const auto pair = units::parse_size_pair(cell(*columns_.size).text, columns_.unit);
            if (!pair)
                return fail(at(*columns_.size, pair.error()));
            return geometry::Size{pair->width_mm, pair->height_mm};
        }
        const auto width = units::parse_size(cell(*columns_.width).text, columns_.unit);
        if (!width)
            return fail(at(*columns_.width, width.error()));
        const auto height = units::parse_size(cell(*columns_.height).text, columns_.unit);
        if (!height)
            return fail(at(*columns_.height, height.error()));
        return geometry::Size{*width, *height};
    }

    Result<int> count() const {
        if (!columns_.count || cell(*columns_.count).text.empty())
            return 1;
        const std::string& text = cell(*columns_.count).text;
        int count = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
        if (error != std::errc{} || end != text.data() + text.size() || count < 1 ||
            count > kCopiesMost)
            return fail(
                at(*columns_.count, because(fmt::format("\"{}\" is no number of blanks", text),
                                            "type a whole number from 1 to 1000")));
        return count;
    }

    Result<bool> may_turn() const {
        if (!columns_.turn || cell(*columns_.turn).text.empty())
            return true;
        const std::string& text = cell(*columns_.turn).text;
        if (text != "yes" && text != "no")
            return fail(at(*columns_.turn,
                           because(fmt::format("\"{}\" says nothing about turning", text),
                                   "type yes where the blank may be turned a quarter, or no")));
        return text == "yes";
    }

    std::string id(std::size_t number) const {
        if (columns_.id && !cell(*columns_.id).text.empty())
            return cell(*columns_.id).text;
        return std::to_string(number);
    }

  private:
    const CsvCell& cell(std::size_t column) const {
        static const CsvCell kNone;
        return column < row_.size() ? row_[column] : kNone;
    }
    Problem at(std::size_t column, Problem problem) const {
        return store::problem_at(place_, column < row_.size() ? row_[column] : row_.back(), column,
                                 std::move(problem));
    }

    const store::CsvPlace& place_;
    const CsvRow& row_;
    const Columns& columns_;
};

Outcome add_row(const RowReader& reader, std::size_t number,
                std::vector<mounts::NestBlank>& blanks) {
    const auto size = reader.size();
    if (!size)
        return fail(size.error());
    const auto count = reader.count();
    if (!count)
        return fail(count.error());
    const auto may_turn = reader.may_turn();
    if (!may_turn)
        return fail(may_turn.error());
    const std::string id = reader.id(number);
    for (int copy = 1; copy <= *count; ++copy)
        blanks.push_back({copy == 1 ? id : fmt::format("{}#{}", id, copy), *size, *may_turn});
    return {};
}

}  // namespace

Result<std::vector<mounts::NestBlank>> read_blanks(const std::string& file,
                                                   units::LengthUnit bare) {
    const auto text = store::read_file(file);
    if (!text)
        return fail(text.error());
    const auto table = store::read_csv_table(*text, file);
    if (!table)
        return fail(table.error());
    const Columns columns = columns_of_header(table->header, bare);
    if (!columns.size && !(columns.width && columns.height))
        return fail({file, "the table has neither a column size nor width and height",
                     "give it a header such as id,width,height,count", ""});
    const store::CsvPlace place{*text, file, table->header};
    std::vector<mounts::NestBlank> blanks;
    for (std::size_t i = 0; i < table->rows.size(); ++i)
        if (auto added = add_row({place, table->rows[i], columns}, i + 1, blanks); !added)
            return fail(std::move(added.error()));
    if (blanks.empty())
        return fail({file, "the table has no blanks", "give it a row for each", ""});
    return blanks;
}

}  // namespace wallwright::cli

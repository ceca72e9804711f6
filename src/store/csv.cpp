#include "store/csv.h"

#include "store/csv_table.h"
#include "store/text_place.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>

namespace wallwright::store {

namespace {

enum class Field { title, width, height, size, weight, depth, hanger, status, x, y };
constexpr std::array<std::string_view, 10> kFieldNames = {
    "title", "width", "height", "size", "weight", "depth", "hanger", "status", "x", "y"};

constexpr double kHeaviestWithoutUnit = 50;  ///< kg: a larger number is one of grams.

struct Column {
    Field field = Field::title;
    std::string unit;  ///< As the header names it; may be empty.
};

std::string lower(std::string_view text) {
    std::string small(text);
    for (char& c : small)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return small;
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

Problem because(std::string what, std::string remedy) {
    return {"", std::move(what), std::move(remedy), ""};
}

bool may_have_unit(Field field) {
    return field != Field::title && field != Field::status && field != Field::hanger;
}

bool is_unit_of(Field field, const std::string& unit) {
    if (field == Field::weight)
        return unit == "kg" || unit == "g" || unit == "lb" || unit == "oz";
    return units::parse_unit(unit).has_value();
}

/// "width (cm)" is the field width in cm; so is "width_cm", "Width [cm]" and "width cm".
Result<Column> column_of(const std::string& header) {
    const std::string small = lower(header);
    const auto word_end = std::find_if_not(small.begin(), small.end(), is_letter);
    const std::string word(small.begin(), word_end);
    std::string unit(word_end, small.end());
    std::erase_if(unit, [](char c) {
        return std::string_view(" _()[],.:").find(c) != std::string_view::npos;
    });
    const auto* known = std::find(kFieldNames.begin(), kFieldNames.end(), word);
    if (known == kFieldNames.end() ||
        (!unit.empty() && !may_have_unit(static_cast<Field>(known - kFieldNames.begin()))))
        return fail(because(fmt::format("\"{}\" is not a column of frames", header),
                            fmt::format("use {}, or leave it out", fmt::join(kFieldNames, ", "))));
    const auto field = static_cast<Field>(known - kFieldNames.begin());
    if (!unit.empty() && !is_unit_of(field, unit))
        return fail(because(fmt::format("\"{}\" is not a unit that {} can be in", unit, word),
                            field == Field::weight ? "use kg, g, lb or oz" : "use mm, cm or in"));
    return Column{field, unit};
}

/// One frame while its cells are being read.
struct Draft {
    FrameRow row;
    std::optional<wall::PieceState> status;
    std::optional<double> x;
    std::optional<double> y;
};

/// Reads cells with what the person said about units and names of sizes.
class CellReader {
  public:
    CellReader(units::LengthUnit bare, std::span<const wall::NamedSize> sizes)
        : bare_(bare), sizes_(sizes) {}

    Outcome read(const Column& column, const std::string& text, Draft& into) const {
        if (text.empty())
            return must_be_filled(column.field);
        FrameRow& row = into.row;
        switch (column.field) {
            case Field::title:
                row.title = text;
                return {};
            case Field::width:
                return put(units::parse_size(text, unit_of(column)), row.outside.width);
            case Field::height:
                return put(units::parse_size(text, unit_of(column)), row.outside.height);
            case Field::size:
                return put(size(column, text), row.outside);
            case Field::weight:
                return put(weight(column, text), row.weighed);
            case Field::depth:
                return put(units::parse_size(text, unit_of(column)), row.depth);
            case Field::hanger:
                return put(named<wall::HangerType>(text, "hanger"), row.hanger);
            case Field::status:
                return put(named<wall::PieceState>(text, "status"), into.status);
            case Field::x:
                return put(units::parse_length(text, unit_of(column)), into.x);
            case Field::y:
                return put(units::parse_length(text, unit_of(column)), into.y);
        }
        return {};
    }

  private:
    template <class T, class Place>
    static Outcome put(Result<T> value, Place& into) {
        if (!value)
            return fail(std::move(value.error()));
        into = std::move(*value);
        return {};
    }

    static Outcome must_be_filled(Field field) {
        if (field == Field::title || field == Field::width || field == Field::height ||
            field == Field::size)
            return fail(because("this cell is empty",
                                "every frame needs a title and its size over the moulding"));
        return {};
    }

    [[nodiscard]] units::LengthUnit unit_of(const Column& column) const {
        return units::parse_unit(column.unit).value_or(bare_);
    }

    [[nodiscard]] Result<geometry::Size> size(const Column& column, const std::string& text) const {
        for (const wall::NamedSize& named : sizes_)
            if (lower(named.name) == lower(text))
                return named.size;
        const auto pair = units::parse_size_pair(text, unit_of(column));
        if (!pair)
            return fail(pair.error());
        return geometry::Size{pair->width_mm, pair->height_mm};
    }

    static Result<wall::Kilograms> weight(const Column& column, const std::string& text) {
        const bool bare = column.unit.empty() && std::none_of(text.begin(), text.end(), is_letter);
        const bool in_header =
            !column.unit.empty() && std::none_of(text.begin(), text.end(), is_letter);
        auto mass = units::parse_mass(in_header ? text + " " + column.unit : text);
        if (mass && bare && mass->value > kHeaviestWithoutUnit)
            return fail(because(fmt::format("\"{}\" without a unit would be kilograms", text),
                                fmt::format("write {} g, or {} kg if it is so", text, text)));
        if (mass && mass->value <= 0)
            return fail(because("a frame weighs more than nothing",
                                "leave the cell empty when it was not weighed"));
        return mass;
    }

    /// One of the names of an enumeration; "two rings" is as good as "two_rings".
    template <class Enum>
    static Result<Enum> named(const std::string& text, std::string_view what) {
        std::string name = lower(text);
        std::ranges::replace(name, ' ', '_');
        if (const auto value = wall::with_name<Enum>(name))
            return *value;
        return fail(
            because(fmt::format("\"{}\" is not a {}", text, what),
                    fmt::format("write one of {}", fmt::join(wall::Names<Enum>::values, ", "))));
    }

    units::LengthUnit bare_;
    std::span<const wall::NamedSize> sizes_;
};

/// The place belongs to what the status says.
Result<FrameRow> finished(Draft draft) {
    using wall::PieceState;
    if (draft.x.has_value() != draft.y.has_value())
        return fail(because(draft.x ? "x without y" : "y without x", "give both, or neither"));
    const bool placed = draft.x.has_value();
    const PieceState state =
        draft.status.value_or(placed ? PieceState::planned : PieceState::waiting);
    if (placed && state == PieceState::waiting)
        return fail(
            because("a frame that waits has no place", "leave x and y empty, or write planned"));
    if (!placed && state != PieceState::waiting)
        return fail(because(fmt::format("a frame that is {} needs a place", name_of(state)),
                            "give x and y of its lower left corner, or write waiting"));
    draft.row.state = state;
    if (placed)
        draft.row.at = {*draft.x, *draft.y};
    return std::move(draft.row);
}

void drop_empty_end(CsvRow& row, std::size_t least) {
    while (row.size() > least && row.back().text.empty())
        row.pop_back();
}

/// Empty when the columns together say enough and nothing twice.
Outcome check_columns(const std::vector<Column>& columns) {
    const auto count = [&columns](Field field) {
        return std::count_if(columns.begin(), columns.end(),
                             [field](const Column& one) { return one.field == field; });
    };
    for (std::size_t i = 0; i < kFieldNames.size(); ++i)
        if (count(static_cast<Field>(i)) > 1)
            return fail(because(fmt::format("there are two columns {}", kFieldNames[i]),
                                "leave one of them out"));
    if (count(Field::title) == 0)
        return fail(because("there is no column title",
                            "name the columns in the first line: title, width, height"));
    const bool both = count(Field::width) == 1 && count(Field::height) == 1;
    const bool neither = count(Field::width) == 0 && count(Field::height) == 0;
    if (count(Field::size) == 1 ? !neither : !both)
        return fail(because("the size of a frame is width and height, or size",
                            "give the two columns width and height, or the one column size"));
    return {};
}

class FrameTable {
  public:
    FrameTable(std::string_view text, const std::string& name, CellReader reader)
        : text_(text), name_(name), reader_(reader) {}

    Result<std::vector<FrameRow>> read() {
        auto table = read_csv_table(text_, name_);
        if (!table)
            return fail(table.error());
        drop_empty_end(table->header, 1);
        header_ = std::move(table->header);
        if (const Outcome named = name_columns(); !named)
            return fail(named.error());
        std::vector<FrameRow> frames;
        for (CsvRow& cells : table->rows) {
            auto frame = read_row(cells);
            if (!frame)
                return fail(frame.error());
            frames.push_back(std::move(*frame));
        }
        if (frames.empty())
            return fail(
                {name_, "there is no frame below the header", "write one frame a line", ""});
        return frames;
    }

  private:
    Outcome name_columns() {
        for (std::size_t i = 0; i < header_.size(); ++i) {
            auto column = column_of(header_[i].text);
            if (!column)
                return fail(at(header_[i], i, column.error()));
            columns_.push_back(std::move(*column));
        }
        if (const Outcome enough = check_columns(columns_); !enough)
            return fail(within(fmt::format("{}:1", name_), enough.error()));
        return {};
    }

    Result<FrameRow> read_row(CsvRow& cells) {
        drop_empty_end(cells, columns_.size());
        if (cells.size() != columns_.size())
            return fail(at(cells.back(), cells.size() - 1,
                           because(fmt::format("the line has {} cells, the header {}", cells.size(),
                                               columns_.size()),
                                   "give each column its cell, and put a cell that holds the "
                                   "separator in quotes")));
        Draft draft;
        for (std::size_t i = 0; i < cells.size(); ++i)
            if (const Outcome done = reader_.read(columns_[i], cells[i].text, draft); !done)
                return fail(at(cells[i], i, done.error()));
        auto frame = finished(std::move(draft));
        if (!frame)
            return fail(at(cells.front(), 0, frame.error()));
        return frame;
    }

    [[nodiscard]] Problem at(const CsvCell& cell, std::size_t column,
                             const Problem& problem) const {
        return problem_at({text_, name_, header_}, cell, column, problem);
    }

    std::string_view text_;
    const std::string& name_;
    CellReader reader_;
    CsvRow header_;
    std::vector<Column> columns_;
};

}  // namespace

Result<std::vector<FrameRow>> read_frames_csv(std::string_view text, const std::string& name,
                                              units::LengthUnit bare,
                                              std::span<const wall::NamedSize> sizes) {
    return FrameTable(without_byte_order_mark(text), name, CellReader(bare, sizes)).read();
}

}  // namespace wallwright::store

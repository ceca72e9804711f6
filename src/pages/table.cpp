#include "pages/table.h"

#include "base/contract.h"
#include "draw/paths.h"
#include "pages/sign.h"
#include "pages/stop_notes.h"

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using geometry::Page;

constexpr double kInset = 1.2;  // mm beside the text of a cell
constexpr double kAir = 0.9;    // mm above and below it
constexpr double kTickBox = 3;
constexpr double kHeadingSize = 2.5;
constexpr double kAboveHeading = 1.5;
constexpr double kBarTop = 1.3;
constexpr double kBarHeight = 1.8;
constexpr double kBarAir = 0.7;

/// Where a cell is, and how its text looks.
struct Place {
    double x = 0;
    double y = 0;
    double width = 0;
    Align align = Align::left;
    double size = 2.2;
    double base = 0;  ///< From y to the first base line, shared by all cells of a row.
};

double inner(double width) {
    return std::max(1.0, width - 2 * kInset);
}

Type type_of(const Words& words, double size) {
    return {words.size > 0 ? words.size : size, words.bold};
}

/// From the top of a line to its base line.
double base_of(double size) {
    return line_height(size) - 0.38 * size;
}

double height_of(const Words& words, double width, double size) {
    const Type type = type_of(words, size);
    return static_cast<double>(lines_of(words.text, type, inner(width)).size()) *
           line_height(type.size);
}

std::vector<std::string> stop_lines(const Stopped& stopped, double width, double size) {
    return lines_of(stopped.stop, {size, true}, inner(width) - stop_indent(size));
}
double height_of(const Stopped& stopped, double width, double size) {
    return height_of(stopped.words, width, size) +
           static_cast<double>(stop_lines(stopped, width, size).size()) * line_height(size);
}
double height_of(const TickBox&, double, double size) {
    return std::max(kTickBox, line_height(size));
}
double height_of(const ShareBar& bar, double width, double size) {
    return kBarTop + kBarHeight + kBarAir + height_of(Words{bar.words}, width, size);
}

double size_of(const Cell& cell, double size) {
    const auto* words = std::get_if<Words>(&cell);
    return words == nullptr ? size : type_of(*words, size).size;
}

void add(Shapes& shapes, const Words& words, const Place& place) {
    const double x = place.align == Align::left    ? place.x + kInset
                     : place.align == Align::right ? place.x + place.width - kInset
                                                   : place.x + place.width / 2;
    const Type type = type_of(words, place.size);
    double y = place.y + place.base;
    for (const std::string& line : lines_of(words.text, type, inner(place.width))) {
        shapes.emplace_back(aligned(text_at({x, y}, line, type, words.ink), place.align));
        y += line_height(type.size);
    }
}

void add(Shapes& shapes, const Stopped& stopped, const Place& place) {
    add(shapes, stopped.words, place);
    const Type type{place.size, true};
    Spot at{place.x + kInset,
            place.y + place.base + height_of(stopped.words, place.width, place.size)};
    add_stop_sign(shapes, at, type.size);
    at.x += stop_indent(type.size);
    for (const std::string& line : stop_lines(stopped, place.width, place.size)) {
        shapes.emplace_back(text_at(at, line, type, ink_of(wall::Severity::stop)));
        at.y += line_height(type.size);
    }
}

void add(Shapes& shapes, const TickBox&, const Place& place) {
    const double top = place.y + place.base - (place.size + kTickBox) / 2;
    shapes.emplace_back(
        draw::box(Area::at({place.x + (place.width - kTickBox) / 2, top}, {kTickBox, kTickBox}),
                  {std::nullopt, draw::Stroke{{Ink::outline}, 0.25}}));
}

/// The whole bar is the rating; more than the rating fills it.
void add(Shapes& shapes, const ShareBar& bar, const Place& place) {
    const Area whole =
        Area::at({place.x + kInset, place.y + kBarTop}, {inner(place.width), kBarHeight});
    const double filled = std::clamp(bar.share, 0.0, 1.0) * whole.width();
    const double limit = whole.min.x + std::clamp(bar.most, 0.0, 1.0) * whole.width();
    shapes.emplace_back(
        draw::box(Area::at(whole.min, {filled, kBarHeight}),
                  {draw::Paint{bar.is_good ? Ink::good : Ink::stop}, std::nullopt}));
    shapes.emplace_back(draw::box(whole, {std::nullopt, draw::Stroke{{Ink::outline}, 0.18}}));
    shapes.emplace_back(draw::line<Page>({limit, whole.min.y - 0.7}, {limit, whole.max.y},
                                         draw::Stroke{{Ink::outline}, 0.5}));
    add(shapes, Words{bar.words, !bar.is_good, bar.is_good ? Ink::text : Ink::stop},
        {place.x, whole.max.y + kBarAir, place.width, Align::left, place.size,
         base_of(place.size)});
}

/// A table at a width: columns in mm, rows in heights.
class Setting {
  public:
    Setting(const Table& table, double width) : table_(table) {
        double taken = 0;
        long open = 0;
        for (const Column& column : table.columns) {
            taken += column.width;
            open += column.width == 0 ? 1 : 0;
        }
        WW_EXPECT(taken < width || open == 0, "a table's columns leave room for the open ones");
        for (const Column& column : table.columns)
            widths_.push_back(column.width > 0 ? column.width
                                               : (width - taken) / static_cast<double>(open));
        width_ = width;
    }

    [[nodiscard]] double head_height() const {
        double height = 0;
        for (std::size_t i = 0; i < widths_.size(); ++i)
            height = std::max(height, height_of(head(i), widths_[i], head_size()));
        return height + 2 * kAir;
    }

    [[nodiscard]] double row_height(const Row& row) const {
        if (!row.heading.empty())
            return kAboveHeading + height_of(heading(row), width_, table_.size) + 2 * kAir;
        double height = 0;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const double own = std::visit(
                [&](const auto& cell) { return height_of(cell, widths_[i], table_.size); },
                row.cells[i]);
            height =
                std::max(height, own + row_base(row) - base_of(size_of(row.cells[i], table_.size)));
        }
        return height + 2 * kAir;
    }

    void add_head(Shapes& shapes, Spot at) const {
        double x = at.x;
        for (std::size_t i = 0; i < widths_.size(); ++i) {
            const double lift = head_height() - kAir - height_of(head(i), widths_[i], head_size());
            add(shapes, head(i),
                {x, at.y + lift, widths_[i], table_.columns[i].align, head_size(),
                 base_of(head_size())});
            x += widths_[i];
        }
        add_rule(shapes, {at.x, at.y + head_height()}, 0.5);
    }

    void add_row(Shapes& shapes, const Row& row, Spot at) const {
        if (!row.joined)
            add_rule(shapes, at, 0.13);
        if (!row.heading.empty())
            return add(shapes, heading(row),
                       {at.x, at.y + kAboveHeading + kAir, width_, Align::left, table_.size,
                        base_of(kHeadingSize)});
        double x = at.x;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const Place place{x,           at.y + kAir,  widths_[i], table_.columns[i].align,
                              table_.size, row_base(row)};
            std::visit([&](const auto& cell) { add(shapes, cell, place); }, row.cells[i]);
            x += widths_[i];
        }
    }

    void add_rule(Shapes& shapes, Spot at, double stroke) const {
        const double alpha = stroke < 0.2 ? 0.4 : 1;
        shapes.emplace_back(draw::line<Page>(at, {at.x + width_, at.y},
                                             draw::Stroke{{Ink::outline, {}, alpha}, stroke}));
    }

  private:
    /// Of the largest text in the row, so that all its cells stand on one line.
    [[nodiscard]] double row_base(const Row& row) const {
        double size = table_.size;
        for (const Cell& cell : row.cells)
            size = std::max(size, size_of(cell, table_.size));
        return base_of(size);
    }
    [[nodiscard]] double head_size() const { return std::min(table_.size, 2.0); }
    [[nodiscard]] Words head(std::size_t column) const {
        return {table_.columns[column].head, false, Ink::quiet_text};
    }

    static Words heading(const Row& row) { return {row.heading, true, Ink::text, kHeadingSize}; }

    const Table& table_;
    double width_ = 0;
    std::vector<double> widths_;
};

/// The row and all that are joined to it; a heading and what it stands over.
std::size_t end_of_block(const Table& table, std::size_t first) {
    std::size_t end = first + 1;
    while (end < table.rows.size() &&
           (table.rows[end].joined || !table.rows[end - 1].heading.empty()))
        ++end;
    return end;
}

}  // namespace

double height_of(const Table& table, double width) {
    const Setting setting(table, width);
    double height = setting.head_height();
    for (const Row& row : table.rows)
        height += setting.row_height(row);
    return height;
}

void add_table(Shapes& shapes, const Table& table, Spot upper_left, double width) {
    const Setting setting(table, width);
    setting.add_head(shapes, upper_left);
    double y = upper_left.y + setting.head_height();
    for (const Row& row : table.rows) {
        setting.add_row(shapes, row, {upper_left.x, y});
        y += setting.row_height(row);
    }
    setting.add_rule(shapes, {upper_left.x, y}, 0.25);
}

void add_table(Flow& flow, const Table& table) {
    const double left = flow.content().min.x;
    const Setting setting(table, flow.content().width());
    const auto add_head = [&] {
        setting.add_head(flow.shapes(), {left, flow.top()});
        flow.advance(setting.head_height());
    };
    for (std::size_t first = 0; first < table.rows.size();) {
        const std::size_t end = end_of_block(table, first);
        double height = first == 0 ? setting.head_height() : 0;
        for (std::size_t i = first; i < end; ++i)
            height += setting.row_height(table.rows[i]);
        if (flow.need(height) || first == 0)
            add_head();
        for (; first < end; ++first) {
            setting.add_row(flow.shapes(), table.rows[first], {left, flow.top()});
            flow.advance(setting.row_height(table.rows[first]));
        }
        setting.add_rule(flow.shapes(), {left, flow.top()}, 0.13);
    }
}

}  // namespace wallwright::pages

#include "desk/bench/drawer_grid.h"

#include "draw/labels.h"

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using namespace board;

constexpr std::size_t kMostColumns = 8;
constexpr std::size_t kTitleLines = 2;
constexpr std::size_t kRemarkLines = 3;
constexpr double kLeast = 0.005;  // mm on paper for a mm
constexpr double kMost = 0.5;

/// What is asked of one drawer at one scale, all in mm on paper.
class Grid {
  public:
    Grid(const GridSide& side, std::size_t columns, double scale)
        : side_(side), columns_(columns), scale_(scale), widths_(columns, kNarrowest) {
        for (const auto* items : {&side.main, &side.rest})
            for (std::size_t i = 0; i < items->size(); ++i) {
                double& width = widths_[i % columns];
                width = std::max(width, scale * (*items)[i].size.width);
            }
        add_rows(side.main);
        rows_of_main_ = rows_.size();
        add_rows(side.rest);
    }

    [[nodiscard]] double width() const {
        double width = 2 * kPad + kColumnGap * static_cast<double>(columns_ - 1);
        for (const double one : widths_)
            width += one;
        return width;
    }
    [[nodiscard]] double height() const {
        double height = kHeading + kPad + (side_.rest.empty() ? 0 : kHeading);
        for (const Row& row : rows_)
            height += row_height(row);
        return height;
    }

    /// The drawer with its upper outer corner at `x`, 0; `inward` is 1 where the middle is at its
    /// right, else -1. In mm of the board.
    [[nodiscard]] Drawer drawer(double x, double inward) const {
        Drawer drawer;
        double y = -kHeading;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (r == rows_of_main_) {
                drawer.left_over_at = (y - kHeading) / scale_;
                y -= kHeading;
            }
            place_row(drawer, rows_[r], x, inward, y);
            y -= row_height(rows_[r]);
        }
        const double inner = x + inward * width();
        drawer.area = {{std::min(x, inner) / scale_, (y - kPad) / scale_},
                       {std::max(x, inner) / scale_, 0}};
        return drawer;
    }

  private:
    struct Cell {
        const GridItem* item = nullptr;
        std::vector<std::string> title;
        std::vector<std::string> remark;
    };
    struct Row {
        std::vector<Cell> cells;
        double tallest = 0;
        std::size_t lines = 0;
    };

    [[nodiscard]] static double row_height(const Row& row) {
        return kLane + row.tallest + kUnder + kLine * static_cast<double>(row.lines);
    }

    void add_rows(const std::vector<GridItem>& items) {
        for (std::size_t i = 0; i < items.size(); ++i) {
            if (i % columns_ == 0)
                rows_.emplace_back();
            Row& row = rows_.back();
            const double width = widths_[i % columns_];
            Cell cell{&items[i], draw::wrapped(items[i].title, kWordSize, width, kTitleLines),
                      draw::wrapped(items[i].remark, kWordSize, width, kRemarkLines)};
            row.tallest = std::max(row.tallest, scale_ * items[i].size.height);
            row.lines = std::max(row.lines, cell.title.size() + 1 + cell.remark.size());
            row.cells.push_back(std::move(cell));
        }
    }

    void place_row(Drawer& drawer, const Row& row, double x, double inward, double y) const {
        const double feet = y - kLane - row.tallest;
        double outer = x + inward * kPad;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const double inner = outer + inward * widths_[i];
            const double middle = (outer + inner) / 2;
            const Cell& cell = row.cells[i];
            const Size half{cell.item->size.width / 2, cell.item->size.height};
            BoardItem item{cell.item->print,
                           cell.item->piece,
                           {},
                           {},
                           cell.title,
                           cell.item->words,
                           cell.remark,
                           columns_ - 1 - i,
                           (y - kLane / 2) / scale_};
            item.place = {{middle / scale_ - half.width, feet / scale_},
                          {middle / scale_ + half.width, feet / scale_ + half.height}};
            item.cell = {{std::min(outer, inner) / scale_, (y - row_height(row)) / scale_},
                         {std::max(outer, inner) / scale_, item.place.max.y}};
            drawer.items.push_back(std::move(item));
            outer = inner + inward * kColumnGap;
        }
    }

    const GridSide& side_;
    std::size_t columns_;
    double scale_;
    std::vector<double> widths_;
    std::vector<Row> rows_;
    std::size_t rows_of_main_ = 0;
};

struct Columns {
    std::size_t left = 1;
    std::size_t right = 1;
};

bool fits(const GridTask& task, Columns columns, double scale, Size paper) {
    const Grid left(task.left, columns.left, scale);
    const Grid right(task.right, columns.right, scale);
    return left.width() + kBetween + right.width() <= paper.width &&
           std::max(left.height(), right.height()) + kLegend <= paper.height;
}

/// The largest scale at which all has room; kLeast where none has.
double scale_for(const GridTask& task, Columns columns, Size paper) {
    constexpr int kHalvings = 14;
    double low = std::log(kLeast);
    double high = std::log(kMost);
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (low + high) / 2;
        (fits(task, columns, std::exp(middle), paper) ? low : high) = middle;
    }
    return std::exp(low);
}

std::size_t most_columns(const GridSide& side) {
    return std::clamp<std::size_t>(std::max(side.main.size(), side.rest.size()), 1, kMostColumns);
}

struct Choice {
    Columns columns;
    double scale = 0;
};

/// Lines run level where both drawers have as many columns, which is worth some size.
Choice best_choice(const GridTask& task, Size paper) {
    constexpr double kLevel = 1.25;
    constexpr std::size_t kApart = 3;  // columns that one drawer has more at most
    Choice best;
    double worth = 0;
    for (std::size_t left = 1; left <= most_columns(task.left); ++left)
        for (std::size_t right = left > kApart ? left - kApart : 1;
             right <= std::min(left + kApart, most_columns(task.right)); ++right) {
            const double scale = scale_for(task, {left, right}, paper);
            const double now = scale * (left == right ? kLevel : 1);
            if (now > worth * 1.001) {
                best = {{left, right}, scale};
                worth = now;
            }
        }
    return best;
}

}  // namespace

MatchLayout lay_out_grids(const GridTask& task, Size paper) {
    const Choice choice = best_choice(task, paper);
    const Grid left(task.left, choice.columns.left, choice.scale);
    const Grid right(task.right, choice.columns.right, choice.scale);
    const double wide = std::max(paper.width, left.width() + kBetween + right.width());
    MatchLayout layout;
    layout.scale = choice.scale;
    layout.prints = left.drawer(0, 1);
    layout.frames = right.drawer(wide, -1);
    const double low = std::min(layout.prints.area.min.y, layout.frames.area.min.y);
    layout.prints.area.min.y = layout.frames.area.min.y = low;
    layout.extent = {{0, low - kLegend / choice.scale}, {wide / choice.scale, 0}};
    return layout;
}

}  // namespace wallwright::desk

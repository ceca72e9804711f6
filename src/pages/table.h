// Tables: columns with heads, cells that wrap, rows that stay whole, heads again on each new sheet.
#pragma once

#include "pages/flow.h"

#include <string>
#include <variant>
#include <vector>

namespace wallwright::pages {

struct Words {
    std::string text;
    bool bold = false;
    draw::Ink ink = draw::Ink::text;
    double size = 0;  ///< mm; 0 for the table's own.
};

/// With a stop sign below them, and what it says.
struct Stopped {
    Words words;
    std::string stop;
};

/// To be ticked with a pencil.
struct TickBox {};

/// A share of a rating as a bar with a stroke at the most that is allowed, and words below it.
struct ShareBar {
    double share = 0;
    double most = 1;
    std::string words;
    bool is_good = true;  ///< Else bar and words are in the colour of a stop.
};

using Cell = std::variant<Words, Stopped, TickBox, ShareBar>;

struct Column {
    std::string head;
    double width = 0;  ///< mm; 0 takes what the others leave.
    draw::Align align = draw::Align::left;
};

struct Row {
    std::vector<Cell> cells;
    bool joined = false;  ///< Belongs to the row above: no line between them, and never parted by
                          ///< the end of a sheet.
    std::string heading = {};  ///< Instead of cells, over the full width: stays with the row below.
};

struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
    double size = 2.2;  ///< mm, of its text.
};

/// mm that the table would take at this width, without any end of sheet.
double height_of(const Table& table, double width);

/// At a fixed place, as high as it is.
void add_table(Shapes& shapes, const Table& table, Spot upper_left, double width);

/// Over as many sheets as it takes.
void add_table(Flow& flow, const Table& table);

}  // namespace wallwright::pages

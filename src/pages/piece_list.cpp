#include "pages/piece_list.h"

#include "draw/letters.h"
#include "wall/titles.h"

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;

std::string size_words(const wall::Project& project, const wall::Piece& piece) {
    const geometry::Size size = wall::outside_size(project, piece);
    return units::format_number(size.width, project.unit) + " × " +
           units::format_number(size.height, project.unit);
}

}  // namespace

double least_width(PieceListWidth width) {
    switch (width) {
        case PieceListWidth::names:
            return 36;
        case PieceListWidth::sizes:
            return 56;
        case PieceListWidth::edges:
            return 78;
    }
    return 0;
}

Table piece_list(const wall::Project& project, PieceListWidth width) {
    const bool inches = project.unit == units::LengthUnit::inch;
    Table table;
    table.size = 1.8;
    table.columns = {{"", 8, Align::left}, {"Piece", 0, Align::left}};
    if (width != PieceListWidth::names)
        table.columns.push_back({"Outside", inches ? 26.0 : 20.0, Align::right});
    if (width == PieceListWidth::edges) {
        table.columns.push_back({"Left", inches ? 14.0 : 12.0, Align::right});
        table.columns.push_back({"Bottom", inches ? 14.0 : 12.0, Align::right});
    }
    for (std::size_t i = 0; i < project.pieces.size(); ++i) {
        const wall::Piece& piece = project.pieces[i];
        const auto place = wall::place_of(project, piece);
        Row row;
        row.cells.emplace_back(Words{draw::letter(i), true, Ink::accent});
        row.cells.emplace_back(Words{wall::title_of(piece)});
        row.cells.emplace_back(Words{size_words(project, piece)});
        row.cells.emplace_back(
            Words{place ? units::format_number(place->left(), project.unit) : "waits"});
        row.cells.emplace_back(
            Words{place ? units::format_number(place->bottom(), project.unit) : ""});
        row.cells.resize(table.columns.size());
        table.rows.push_back(std::move(row));
    }
    return table;
}

}  // namespace wallwright::pages

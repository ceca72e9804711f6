#include "pages/piece_list.h"

#include "draw/letters.h"
#include "wall/titles.h"

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;

std::string size_words(const wall::Project& project, const wall::Piece& piece) {
    const geometry::Size size = wall::outside_size(project, piece);
    return units::format_number(size.width, project.unit) + " × " +
           units::format_number(size.height, project.unit);
}

constexpr double kStageWidth = 10;

bool has_stages(const wall::Project& project) {
    return std::ranges::any_of(project.pieces,
                               [](const wall::Piece& piece) { return piece.stage > 0; });
}

}  // namespace

double least_width(const wall::Project& project, PieceListWidth width) {
    const double more = has_stages(project) ? kStageWidth : 0;
    switch (width) {
        case PieceListWidth::names:
            return 36 + more;
        case PieceListWidth::sizes:
            return 56 + more;
        case PieceListWidth::edges:
            return 78 + more;
    }
    return 0;
}

Table piece_list(const wall::Project& project, PieceListWidth width) {
    const bool inches = project.unit == units::LengthUnit::inch;
    const bool staged = has_stages(project);
    Table table;
    table.size = 1.8;
    table.columns = {{"", 8, Align::left}, {"Piece", 0, Align::left}};
    if (staged)
        table.columns.push_back({"Stage", kStageWidth, Align::right});
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
        row.cells.emplace_back(Words{wall::title_to_hang(piece)});
        if (staged)
            row.cells.emplace_back(Words{piece.stage > 0 ? std::to_string(piece.stage) : ""});
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

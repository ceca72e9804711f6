#include "cli/command.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/text_table.h"

#include <fmt/format.h>

namespace wallwright::cli {

namespace {

Json json_of_piece(const Loaded& loaded, const wall::Piece& piece) {
    const wall::Size size = wall::outside_size(loaded.project, piece);
    const hanging::PieceMass mass = hanging::weigh(loaded.project, loaded.catalogue, piece);
    const auto place = wall::place_of(loaded.project, piece);
    return {{"id", piece.id.text},
            {"title", piece.title},
            {"state", wall::name_of(piece.state)},
            {"wished", piece.wished},
            {"stage", piece.stage > 0 ? Json(piece.stage) : Json()},
            {"x_mm", place ? number(place->left()) : Json()},
            {"y_mm", place ? number(place->bottom()) : Json()},
            {"width_mm", number(size.width)},
            {"height_mm", number(size.height)},
            {"mass_low_kg", number(mass.low.value)},
            {"mass_high_kg", number(mass.high.value)}};
}

std::string mass_text(const hanging::PieceMass& mass, units::LengthUnit unit) {
    if (mass.weighed)
        return units::format_mass(mass.high, unit) + " on the scale";
    return units::format_mass(mass.low, unit) + " to " + units::format_mass(mass.high, unit);
}

/// Columns that are there where they say something of a piece.
struct Extra {
    bool wished = false;
    bool stage = false;
};

Extra extra_of(const wall::Project& project) {
    Extra extra;
    for (const wall::Piece& piece : project.pieces) {
        extra.wished = extra.wished || piece.wished;
        extra.stage = extra.stage || piece.stage > 0;
    }
    return extra;
}

std::vector<Column> columns_for(const Extra& extra, units::LengthUnit shown) {
    const std::string unit(units::name_of(shown));
    std::vector<Column> columns{{"id"},
                                {"title"},
                                {"state"},
                                {"width " + unit, Side::right},
                                {"height " + unit, Side::right},
                                {"left " + unit, Side::right},
                                {"bottom " + unit, Side::right},
                                {"weight"}};
    if (extra.stage)
        columns.push_back({"stage", Side::right});
    if (extra.wished)
        columns.push_back({"to buy"});
    return columns;
}

std::vector<std::string> row_of(const Loaded& loaded, const Extra& extra,
                                const wall::Piece& piece) {
    const units::LengthUnit unit = loaded.shown;
    const wall::Size size = wall::outside_size(loaded.project, piece);
    const auto place = wall::place_of(loaded.project, piece);
    std::vector<std::string> row{
        piece.id.text,
        piece.title,
        std::string(wall::name_of(piece.state)) + (piece.pinned ? ", pinned" : ""),
        units::format_number(size.width, unit),
        units::format_number(size.height, unit),
        place ? units::format_number(place->left(), unit) : "",
        place ? units::format_number(place->bottom(), unit) : "",
        mass_text(hanging::weigh(loaded.project, loaded.catalogue, piece), unit)};
    if (extra.stage)
        row.push_back(piece.stage > 0 ? std::to_string(piece.stage) : "");
    if (extra.wished)
        row.emplace_back(piece.wished ? "yes" : "");
    return row;
}

Result<Answer> list(const Common& common) {
    const auto loaded = load(common);
    if (!loaded)
        return fail(loaded.error());
    if (common.json) {
        Json pieces = Json::array();
        for (const wall::Piece& piece : loaded->project.pieces)
            pieces.push_back(json_of_piece(*loaded, piece));
        return Answer{text_of({{"pieces", pieces}}), loaded->aside, Status::fine};
    }
    const Extra extra = extra_of(loaded->project);
    std::vector<std::vector<std::string>> rows;
    for (const wall::Piece& piece : loaded->project.pieces)
        rows.push_back(row_of(*loaded, extra, piece));
    return Answer{text_table(columns_for(extra, loaded->shown), rows), loaded->aside, Status::fine};
}

}  // namespace

void add_list(CLI::App& program, Chosen& chosen) {
    add_command<Common>(
        program.add_subcommand("list", "Every piece with its size, place and weight"), chosen,
        add_common, list);
}

}  // namespace wallwright::cli

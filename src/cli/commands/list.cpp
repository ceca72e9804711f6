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

std::vector<std::string> row_of(const Loaded& loaded, const wall::Piece& piece) {
    const units::LengthUnit unit = loaded.shown;
    const wall::Size size = wall::outside_size(loaded.project, piece);
    const auto place = wall::place_of(loaded.project, piece);
    return {piece.id.text,
            piece.title,
            std::string(wall::name_of(piece.state)) + (piece.pinned ? ", pinned" : ""),
            units::format_number(size.width, unit),
            units::format_number(size.height, unit),
            place ? units::format_number(place->left(), unit) : "",
            place ? units::format_number(place->bottom(), unit) : "",
            mass_text(hanging::weigh(loaded.project, loaded.catalogue, piece), unit)};
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
    std::vector<std::vector<std::string>> rows;
    for (const wall::Piece& piece : loaded->project.pieces)
        rows.push_back(row_of(*loaded, piece));
    const std::string unit(units::name_of(loaded->shown));
    return Answer{text_table({{"id"},
                              {"title"},
                              {"state"},
                              {"width " + unit, Side::right},
                              {"height " + unit, Side::right},
                              {"left " + unit, Side::right},
                              {"bottom " + unit, Side::right},
                              {"weight"}},
                             rows),
                  loaded->aside, Status::fine};
}

}  // namespace

void add_list(CLI::App& program, Chosen& chosen) {
    add_command<Common>(
        program.add_subcommand("list", "Every piece with its size, place and weight"), chosen,
        add_common, list);
}

}  // namespace wallwright::cli

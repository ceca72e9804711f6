#include "cli/datum_choice.h"

#include "hanging/marks.h"

#include <fmt/format.h>

namespace wallwright::cli {

namespace {

using wall::Datum;
using wall::DatumHeight;
using wall::DatumSide;

constexpr const char* kPlace = "--datum";

/// The words before the last comma, and the side named after it.
struct Split {
    std::string height;
    DatumSide side = DatumSide::left;
};

Result<Split> split(const std::string& words, DatumSide usual) {
    const std::size_t comma = words.rfind(',');
    if (comma == std::string::npos)
        return Split{words, usual};
    const std::string side = words.substr(comma + 1);
    for (const DatumSide each : {DatumSide::left, DatumSide::right})
        if (side == wall::name_of(each))
            return Split{words.substr(0, comma), each};
    return fail({kPlace, fmt::format("\"{}\" is no side of the wall", side),
                 "end in \",left\" or \",right\", or name no side", ""});
}

Outcome from_piece(const wall::Piece& piece, Datum& datum) {
    if (piece.state != wall::PieceState::hung)
        return fail({kPlace, fmt::format("\"{}\" does not hang yet", piece.id.text),
                     "measure from a piece that hangs, from floor or ceiling, or from a level line",
                     ""});
    datum.height = DatumHeight::piece;
    datum.piece = piece.id;
    return {};
}

Outcome from_line(const std::string& words, const Loaded& loaded, Datum& datum) {
    const auto height = units::parse_length(words, loaded.shown);
    if (!height)
        return fail({kPlace,
                     fmt::format("\"{}\" is neither a datum nor a length nor a piece", words),
                     "give floor, ceiling, level, a height such as 1450mm, or the id of a piece "
                     "that hangs",
                     ""});
    const auto bounds = geometry::bounds(loaded.project.room.outline);
    if (*height <= bounds.bottom() || *height >= bounds.top())
        return fail({kPlace,
                     fmt::format("a level line at {} is not on the wall",
                                 units::format_length(*height, loaded.shown)),
                     fmt::format("give a height between {} and {}",
                                 units::format_length(bounds.bottom(), loaded.shown),
                                 units::format_length(bounds.top(), loaded.shown)),
                     ""});
    datum.height = DatumHeight::level_line;
    datum.level_line = *height;
    return {};
}

Outcome choose_height(const std::string& words, const Loaded& loaded, Datum& datum) {
    if (words == "floor" || words == "ceiling") {
        datum.height = words == "floor" ? DatumHeight::floor : DatumHeight::ceiling;
        return {};
    }
    if (words == "level") {
        datum.height = DatumHeight::level_line;
        datum.level_line = hanging::proposed_level_line(as_shown(loaded), assess(loaded).hangings);
        return {};
    }
    if (const wall::Piece* piece = find(loaded.project, wall::PieceId{words}))
        return from_piece(*piece, datum);
    return from_line(words, loaded, datum);
}

}  // namespace

Result<Datum> chosen_datum(const std::string& words, const Loaded& loaded) {
    const auto parts = split(words, loaded.project.datum.side);
    if (!parts)
        return fail(parts.error());
    Datum datum = loaded.project.datum;
    datum.side = parts->side;
    if (const auto chosen = choose_height(parts->height, loaded, datum); !chosen)
        return fail(chosen.error());
    return datum;
}

}  // namespace wallwright::cli

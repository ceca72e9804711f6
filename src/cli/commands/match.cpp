#include "mounts/match/match.h"

#include "arrange/standard_frames.h"
#include "cli/command.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/save.h"
#include "edits/prints.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

using mounts::Match;

struct MatchWords {
    Common common;
    std::string out;
};

struct Matched {
    Match match;
    std::vector<mounts::OneMore> more;
    wall::Project project;
};

std::vector<mounts::FrameOnOffer> frames_on_offer(const Loaded& loaded) {
    std::vector<mounts::FrameOnOffer> offered;
    for (const arrange::StandardFrame& one :
         arrange::standard_frames(loaded.project, loaded.catalogue))
        offered.push_back({one.size_name, one.frame});
    return offered;
}

/// Every print where the match has it; frames hang a quarter turn where that is better and they may
/// be moved.
Result<wall::Project> with_match(const wall::Project& project, const Match& match) {
    std::vector<edits::PrintInPiece> wanted;
    for (const mounts::LeftPiece& left : match.left_pieces)
        wanted.push_back({left.piece, std::nullopt});
    std::vector<wall::PieceId> to_turn;
    for (const mounts::Pair& pair : match.pairs) {
        if (pair.moves)
            wanted.push_back({pair.piece, pair.print});
        const wall::Piece* piece = find(project, pair.piece);
        if (pair.fitting && !is_fixed(*piece) && pair.fitting->turned != piece->turned)
            to_turn.push_back(pair.piece);
    }
    auto with = edits::put_prints(project, wanted);
    return with && !to_turn.empty() ? edits::turn(std::move(*with), to_turn) : with;
}

Result<Matched> matched(const Loaded& loaded) {
    Matched result{mounts::match_prints(loaded.project), {}, {}};
    if (result.match.pairs.empty() && result.match.left_prints.empty())
        return fail({"", "there is no print to match",
                     "add prints to the project, each with its size", ""});
    result.more = mounts::one_more_frame(loaded.project, frames_on_offer(loaded));
    auto project = with_match(loaded.project, result.match);
    if (!project)
        return fail(std::move(project.error()));
    result.project = std::move(*project);
    return result;
}

std::string text_of_match(const Matched& matched) {
    std::string text;
    for (const mounts::Pair& pair : matched.match.pairs) {
        text += pair.text + "\n";
        for (const mounts::Alternative& other : pair.alternatives)
            text += "  - " + other.text + "\n";
    }
    for (const mounts::LeftPrint& left : matched.match.left_prints)
        text += left.text + "\n";
    for (const mounts::LeftPiece& left : matched.match.left_pieces)
        text += left.text + "\n";
    for (const mounts::OneMore& one : matched.more)
        text += fmt::format("{}{}\n", &one == matched.more.data() ? "\nOne more frame:\n" : "",
                            one.text);
    return text;
}

/// Points, from hundredths.
Json points(mounts::Cost cost) {
    return number(static_cast<double>(cost) / 100);
}

Json json_of_flaws(const mounts::Fitting& fitting) {
    Json flaws = Json::array();
    for (const mounts::FlawCost& flaw : fitting.flaws)
        flaws.push_back({{"flaw", wall::name_of(flaw.flaw)},
                         {"measured", number(flaw.measured)},
                         {"unit", flaw.flaw == mounts::Flaw::colour ? "" : "mm"},
                         {"points", points(flaw.cost)}});
    return flaws;
}

Json json_of_pair(const mounts::Pair& pair) {
    Json others = Json::array();
    for (const mounts::Alternative& other : pair.alternatives) {
        Json left = Json::array();
        for (const wall::PrintId& print : other.left)
            left.push_back(print.text);
        others.push_back({{"piece", other.piece.text},
                          {"total_points", points(other.total)},
                          {"left", left},
                          {"says", other.text}});
    }
    Json json = {{"print", pair.print.text},
                 {"piece", pair.piece.text},
                 {"kept", pair.kept},
                 {"moves", pair.moves}};
    json["turned"] = pair.fitting ? Json(pair.fitting->turned) : Json();
    json["points"] = pair.fitting ? points(pair.fitting->cost()) : Json();
    json["flaws"] = pair.fitting ? json_of_flaws(*pair.fitting) : Json::array();
    json["says"] = pair.text;
    json["alternatives"] = others;
    return json;
}

Json json_of_match(const Matched& matched) {
    Json pairs = Json::array();
    for (const mounts::Pair& pair : matched.match.pairs)
        pairs.push_back(json_of_pair(pair));
    Json prints = Json::array();
    for (const mounts::LeftPrint& left : matched.match.left_prints)
        prints.push_back({{"print", left.print.text}, {"says", left.text}});
    Json pieces = Json::array();
    for (const mounts::LeftPiece& left : matched.match.left_pieces)
        pieces.push_back({{"piece", left.piece.text}, {"says", left.text}});
    Json more = Json::array();
    for (const mounts::OneMore& one : matched.more)
        more.push_back({{"size", one.size_name},
                        {"print", one.print.text},
                        {"total_points", points(one.total)},
                        {"says", one.text}});
    return {{"pairs", pairs},
            {"total_points", points(matched.match.total)},
            {"left_prints", prints},
            {"left_pieces", pieces},
            {"one_more_frame", more}};
}

Result<Answer> run_match(const MatchWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    const auto found = matched(*loaded);
    if (!found)
        return fail(within(words.common.file, found.error()));
    if (const auto saved = save(found->project, *loaded, words.out); !saved)
        return fail(saved.error());
    return Answer{words.common.json ? text_of(json_of_match(*found)) : text_of_match(*found),
                  loaded->aside + fmt::format("Wrote {}\n", words.out), Status::fine};
}

void define(CLI::App& command, MatchWords& words) {
    add_common(command, words.common);
    command
        .add_option("-o,--out", words.out,
                    "Where the project goes with each print in its frame; may be the same file")
        ->required()
        ->type_name("OUT.json");
}

}  // namespace

void add_match(CLI::App& program, Chosen& chosen) {
    add_command<MatchWords>(
        program.add_subcommand("match",
                               "Which print goes into which frame, at the least cost in "
                               "uneven, thin or wide borders and lost picture"),
        chosen, define, run_match);
}

}  // namespace wallwright::cli

#include "rules/stops.h"

#include "wall/titles.h"

#include <algorithm>
#include <string_view>
#include <utility>

namespace wallwright::rules {

namespace {

/// Of every rule that may say stop.
constexpr std::pair<std::string_view, std::string_view> kFewWords[] = {
    {"weight-within-rating", "too heavy for its fixing"},
    {"strips-fit-the-back", "strips do not suit it"},
    {"irreplaceable-on-strips", "not on strips"},
    {"fixing-suits-wall", "wrong fixing for this wall"},
    {"hanger-fits", "its hanger does not fit"},
    {"surface-fit", "the surface will not hold it"},
    {"no-holes", "no holes allowed"},
    {"cable-zones", "cables may run here"},
    {"rail-clear", "rail hooks meet"},
    {"no-overlap", "runs into another piece"},
    {"inside-wall", "off the wall's edge"},
    {"clear-of-furniture-and-fixtures", "something is in its place"},
    {"over-bed", "not over a bed"},
    {"heat-and-steam", "too hot or damp here"},
    {"print-fits-frame", "the print does not fit"},
    {"mount-serves", "the mount does not serve"},
};

bool is_about(const wall::Finding& finding, const wall::PieceId& piece) {
    return std::ranges::find(finding.pieces, piece) != finding.pieces.end();
}

/// Planned pieces that have, or have not, fixings.
std::vector<wall::PieceId> planned(const wall::Project& project, const Assessment& assessment,
                                   bool fixed) {
    std::vector<wall::PieceId> pieces;
    for (const hanging::Hanging& hanging : assessment.hangings) {
        const wall::Piece* piece = find(project, hanging.piece);
        if (piece != nullptr && piece->state == wall::PieceState::planned &&
            hanging.fixings.empty() != fixed)
            pieces.push_back(hanging.piece);
    }
    return pieces;
}

}  // namespace

std::vector<const wall::Finding*> stops_of(const Assessment& assessment,
                                           const wall::PieceId& piece) {
    std::vector<const wall::Finding*> stops;
    for (const wall::Finding& finding : assessment.findings)
        if (finding.severity == wall::Severity::stop && is_about(finding, piece))
            stops.push_back(&finding);
    return stops;
}

std::vector<wall::PieceId> stopped_pieces(const wall::Project& project,
                                          const Assessment& assessment) {
    std::vector<wall::PieceId> stopped;
    for (wall::PieceId& piece : planned(project, assessment, true))
        if (!stops_of(assessment, piece).empty())
            stopped.push_back(std::move(piece));
    return stopped;
}

std::vector<wall::PieceId> unmarked_pieces(const wall::Project& project,
                                           const Assessment& assessment) {
    return planned(project, assessment, false);
}

std::string why_unmarked(const wall::Project& project, const Assessment& assessment,
                         const wall::PieceId& piece) {
    const auto found = std::ranges::find_if(
        assessment.findings,
        [&piece](const wall::Finding& finding) { return is_about(finding, piece); });
    if (found == assessment.findings.end())
        return "no fixing is known that goes with its hanger.";
    const std::string title = title_of(project, piece) + ": ";
    return found->text.starts_with(title) ? found->text.substr(title.size()) : found->text;
}

std::string few_words(const wall::Finding& stop) {
    for (const auto& [rule, words] : kFewWords)
        if (rule == stop.rule)
            return std::string(words);
    return "see the findings";
}

}  // namespace wallwright::rules

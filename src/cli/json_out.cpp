#include "cli/json_out.h"

#include "wall/middle.h"

#include <algorithm>
#include <cmath>

namespace wallwright::cli {

namespace {

Json optional_number(const std::optional<double>& value) {
    return value ? number(*value) : Json();
}

Json json_of_fixing(const hanging::Fixing& fixing) {
    return {{"kind", wall::name_of(fixing.kind)},
            {"type", fixing.type.text},
            {"x_mm", number(fixing.at.x)},
            {"y_mm", number(fixing.at.y)},
            {"rated_kg", number(fixing.rated.value)},
            {"load_kg", number(fixing.load.value)}};
}

}  // namespace

Json number(double value) {
    const double cut = std::round(value * 1000) / 1000;
    return cut == std::floor(cut) && std::abs(cut) < 1e15 ? Json(static_cast<std::int64_t>(cut))
                                                          : Json(cut);
}

Json json_of(const wall::Finding& finding) {
    Json pieces = Json::array();
    for (const wall::PieceId& piece : finding.pieces)
        pieces.push_back(piece.text);
    return {{"rule", finding.rule},
            {"severity", wall::name_of(finding.severity)},
            {"piece", finding.pieces.empty() ? Json() : Json(finding.pieces.front().text)},
            {"pieces", pieces},
            {"measured", optional_number(finding.measured)},
            {"wanted", optional_number(finding.wanted)},
            {"unit", finding.unit},
            {"text", finding.text}};
}

Json json_of(const wall::Project& project, const spacing::Group& group) {
    Json pieces = Json::array();
    for (const wall::PieceId& piece : group.pieces)
        pieces.push_back(piece.text);
    return {{"pieces", pieces},
            {"left_mm", number(group.bounds.left())},
            {"bottom_mm", number(group.bounds.bottom())},
            {"width_mm", number(group.bounds.width())},
            {"height_mm", number(group.bounds.height())},
            {"centre_mm", number(wall::middle_above_floor(project, group.pieces))},
            {"gap_min_mm", number(group.gap_min())},
            {"gap_max_mm", number(group.gap_max())}};
}

Json json_of(const hanging::Hanging& hanging) {
    Json fixings = Json::array();
    for (const hanging::Fixing& fixing : hanging.fixings)
        fixings.push_back(json_of_fixing(fixing));
    return {{"id", hanging.piece.text},
            {"mass_low_kg", number(hanging.mass.low.value)},
            {"mass_high_kg", number(hanging.mass.high.value)},
            {"use", number(hanging.use)},
            {"margin", number(hanging.margin)},
            {"top_pull_n", hanging.top_pull ? number(hanging.top_pull->value) : Json()},
            {"cord_drop_mm", hanging.cord ? number(hanging.cord->drop) : Json()},
            {"cord_tension_n", hanging.cord ? number(hanging.cord->tension.value) : Json()},
            {"fixings", fixings}};
}

Json json_of(const hanging::Mark& mark) {
    return {{"number", mark.number},
            {"piece", mark.piece.text},
            {"what", mark.what},
            {"x_mm", number(mark.at.x)},
            {"y_mm", number(mark.at.y)},
            {"across_mm", number(mark.across)},
            {"up_mm", number(mark.up)},
            {"cord_mm", mark.kind == hanging::MarkKind::rail ? number(mark.cord) : Json()},
            {"across_error_mm", number(mark.across_error)},
            {"up_error_mm", number(mark.up_error)},
            {"stage", mark.stage > 0 ? Json(mark.stage) : Json()}};
}

Json json_of_counts(const std::vector<wall::Finding>& findings) {
    const auto count = [&findings](wall::Severity severity) {
        return std::ranges::count(findings, severity, &wall::Finding::severity);
    };
    return {{"stop", count(wall::Severity::stop)},
            {"mind", count(wall::Severity::mind)},
            {"note", count(wall::Severity::note)}};
}

std::string text_of(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace wallwright::cli

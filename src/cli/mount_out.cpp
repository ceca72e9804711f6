#include "cli/mount_out.h"

#include "cli/text_table.h"
#include "mounts/design/back_marks.h"
#include "mounts/design/cutting_words.h"
#include "mounts/design/rule_step.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace wallwright::cli {

namespace {

using mounts::Borders;
using units::LengthUnit;

std::string size_text(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

std::vector<std::string> border_row(const char* head, const Borders& borders, LengthUnit unit) {
    return {head, units::format_number(borders.left, unit),
            units::format_number(borders.right, unit), units::format_number(borders.top, unit),
            units::format_number(borders.bottom, unit)};
}

std::string borders_text(const mounts::BackMarks& marks, LengthUnit unit) {
    const std::string in(units::name_of(unit));
    return text_table({{"borders, from the front"},
                       {"left " + in, Side::right},
                       {"right " + in, Side::right},
                       {"top " + in, Side::right},
                       {"bottom " + in, Side::right}},
                      {border_row("as cut", marks.cut, unit),
                       border_row("as seen past the lip", marks.seen, unit)});
}

/// Where the lines go on the back of each board, as one sets a rule.
std::string lines_text(const mounts::BackMarks& marks, LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (std::size_t layer = 0; layer < marks.layers.size(); ++layer)
        for (std::size_t i = 0; i < marks.layers[layer].windows.size(); ++i) {
            const mounts::WindowMarks& window = marks.layers[layer].windows[i];
            rows.push_back({fmt::format("{}", layer + 1), mounts::letter_of(i)});
            for (const double away :
                 {window.from_edges.left, window.from_edges.right, window.from_edges.top,
                  window.from_edges.bottom, window.diagonal})
                rows.back().push_back(units::format_number(away, unit));
        }
    const std::string in(units::name_of(unit));
    return text_table({{"layer", Side::right},
                       {"window"},
                       {"from left " + in, Side::right},
                       {"from right " + in, Side::right},
                       {"from top " + in, Side::right},
                       {"from bottom " + in, Side::right},
                       {"diagonal " + in, Side::right}},
                      rows);
}

std::string list_text(const std::string& head, const std::vector<std::string>& sentences) {
    std::string text = sentences.empty() ? "" : "\n" + head + "\n";
    for (const std::string& sentence : sentences)
        text += "- " + sentence + "\n";
    return text;
}

Json json_of_size(geometry::Size size) {
    return {{"width_mm", number(size.width)}, {"height_mm", number(size.height)}};
}

Json json_of_borders(const Borders& borders) {
    return {{"left", number(borders.left)},
            {"right", number(borders.right)},
            {"top", number(borders.top)},
            {"bottom", number(borders.bottom)}};
}

Json json_of_opening(const geometry::Rect<mounts::Front>& opening) {
    return {{"left_mm", number(opening.min.x)},
            {"top_mm", number(opening.min.y)},
            {"width_mm", number(opening.width())},
            {"height_mm", number(opening.height())}};
}

Json json_of_layer(const mounts::MountDesign& design, const mounts::CutLayer& layer) {
    Json windows = Json::array();
    for (const mounts::Window& window : layer.windows) {
        Json json = json_of_opening(window.face);
        json["at_back"] = json_of_opening(window.back);
        windows.push_back(std::move(json));
    }
    return {{"blank", json_of_size(design.blank)},
            {"thickness_mm", number(layer.card.thickness)},
            {"colour", wall::to_text(layer.colour)},
            {"windows", windows}};
}

}  // namespace

std::string mount_text(const MadeMount& made, LengthUnit unit) {
    const mounts::MountDesign& design = made.design;
    const mounts::BackMarks marks = mounts::back_marks(design, mounts::rule_step(unit));
    std::string text = fmt::format(
        "{}: blank {}, {}\n\n{}", made.title, size_text(marks.blank, unit),
        design.layers.size() == 1 ? "1 layer" : fmt::format("{} layers", design.layers.size()),
        borders_text(marks, unit));
    if (!design.floats)
        text += fmt::format(
            "\nLines on the back, each from the blank's own edge as it lies there "
            "face down:\n\n{}",
            lines_text(marks, unit));
    text += list_text("To cut:", mounts::cutting_steps(design, unit));
    text += list_text("To hang the print:", mounts::hinging_steps(design, unit));
    text += list_text("Mind:", mounts::knife_cautions(design));
    for (const mounts::Remark& remark : made.remarks)
        text += fmt::format("{}{}: {}\n", &remark == made.remarks.data() ? "\n" : "",
                            wall::name_of(remark.severity), remark.text);
    return text;
}

Json json_of(const MadeMount& made) {
    Json layers = Json::array();
    for (const mounts::CutLayer& layer : made.design.layers)
        layers.push_back(json_of_layer(made.design, layer));
    return {{"piece", made.piece.empty() ? Json() : Json(made.piece)},
            {"layers", layers},
            {"border_cut_mm", json_of_borders(made.design.cut)},
            {"border_seen_mm", json_of_borders(made.design.seen)}};
}

Json json_of_remarks(const std::vector<MadeMount>& all) {
    Json list = Json::array();
    for (const MadeMount& made : all)
        for (const mounts::Remark& remark : made.remarks)
            list.push_back({{"piece", made.piece.empty() ? Json() : Json(made.piece)},
                            {"rule", wall::name_of(remark.trouble)},
                            {"severity", wall::name_of(remark.severity)},
                            {"measured", remark.measured ? number(*remark.measured) : Json()},
                            {"wanted", remark.wanted ? number(*remark.wanted) : Json()},
                            {"unit", "mm"},
                            {"text", remark.text}});
    return list;
}

}  // namespace wallwright::cli

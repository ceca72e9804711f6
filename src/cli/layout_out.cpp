#include "cli/layout_out.h"

#include "cli/text_table.h"
#include "draw/letters.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::cli {

std::string gaps_text(const spacing::Group& group, units::LengthUnit unit) {
    if (group.gaps.empty())
        return "none";
    const std::string least = units::format_number(group.gap_min(), unit);
    const std::string most = units::format_number(group.gap_max(), unit);
    return least == most ? fmt::format("{}, all {}", group.gaps.size(), least)
                         : fmt::format("{}, {} to {}", group.gaps.size(), least, most);
}

Json json_of(const arrange::Score& score, const arrange::View& view, units::LengthUnit unit) {
    Json measures = Json::array();
    for (const arrange::Part& part : score.parts)
        measures.push_back({{"name", part.measure->name},
                            {"value", part.applies ? number(part.value) : Json()},
                            {"weight", number(part.weight)},
                            {"says", part.measure->says(view, unit)}});
    return {{"total", number(score.total)}, {"measures", measures}};
}

Json json_of(const arrange::Task& task, const arrange::Layout& layout) {
    Json places = Json::array();
    for (const arrange::Spot& spot : layout)
        places.push_back({{"id", task.items[spot.item].id.text},
                          {"x_mm", number(spot.place.left())},
                          {"y_mm", number(spot.place.bottom())},
                          {"width_mm", number(spot.place.width())},
                          {"height_mm", number(spot.place.height())},
                          {"stays", task.items[spot.item].fixed.has_value()}});
    return places;
}

Json json_of_ids(std::span<const wall::PieceId> pieces) {
    Json ids = Json::array();
    for (const wall::PieceId& piece : pieces)
        ids.push_back(piece.text);
    return ids;
}

std::string measures_text(const arrange::Score& score, const arrange::View& view,
                          units::LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const arrange::Part& part : score.parts)
        rows.push_back({std::string(part.measure->title),
                        part.applies ? fmt::format("{:.0f}", 100 * part.value) : "-",
                        fmt::format("{:g}", part.weight), part.measure->says(view, unit)});
    return text_table({{"measure"}, {"of 100", Side::right}, {"weight", Side::right}, {"because"}},
                      rows);
}

std::string places_text(const wall::Project& project, const arrange::Task& task,
                        const arrange::Layout& layout, units::LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const arrange::Spot& spot : layout) {
        const arrange::Item& item = task.items[spot.item];
        if (!item.fixed)
            rows.push_back({draw::letter_of(project, item.id), item.title,
                            units::format_number(spot.place.left(), unit),
                            units::format_number(spot.place.bottom(), unit),
                            units::format_number(spot.place.width(), unit),
                            units::format_number(spot.place.height(), unit)});
    }
    const std::string in(units::name_of(unit));
    return text_table({{""},
                       {"piece"},
                       {"left " + in, Side::right},
                       {"bottom " + in, Side::right},
                       {"width " + in, Side::right},
                       {"height " + in, Side::right}},
                      rows);
}

std::string points(double total) {
    return fmt::format("{:.1f}", total);
}

}  // namespace wallwright::cli

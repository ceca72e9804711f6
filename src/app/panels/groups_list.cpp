#include "app/panels/groups_list.h"

#include "app/scoped.h"
#include "rules/above_furniture.h"
#include "wall/middle.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using spacing::Group;

std::string length(double mm, units::LengthUnit unit) {
    return units::format_length(mm, unit);
}

void own_rows(Ui& ui, const wall::Project& project, const Group& group) {
    const units::LengthUnit unit = project.unit;
    value_row(ui, "Size",
              fmt::format("{} × {}", units::format_number(group.bounds.width(), unit),
                          length(group.bounds.height(), unit)));
    value_row(ui, "Centre above the floor",
              length(wall::middle_above_floor(project, group.pieces), unit));
    if (group.gaps.empty())
        return;
    const std::string least = units::format_number(group.gap_min(), unit);
    const std::string most = length(group.gap_max(), unit);
    const bool alike = units::format_length(group.gap_min(), unit) == most;
    value_row(ui, "Gaps", alike ? "all " + most : least + " to " + most);
}

void furniture_rows(Ui& ui, units::LengthUnit unit, const rules::Above& above) {
    const std::string title = wall::title_of(*above.furniture);
    value_row(ui, fmt::format("Above {}", title).c_str(), length(above.clearance, unit),
              "From its top to the lowest frame above it.");
    if (above.main)
        value_row(
            ui, "Width against it",
            fmt::format("{:.2f}", above.group->bounds.width() / above.furniture->place.width()),
            "Width of the group for 1 of the furniture's.");
}

/// True when it was chosen.
bool group_title(Ui& ui, const wall::Project& project, const Group& group, std::size_t index) {
    constexpr std::size_t kMostNamed = 3;
    const std::string words = wall::titles_of(project, group.pieces, kMostNamed);
    ImGui::Dummy({0, ui.px(2)});
    bool chosen = false;
    {
        const ScopedFont bold(ui.fonts.bold);
        const ScopedId id(static_cast<int>(index));
        chosen = ImGui::Selectable(fmt::format("{}##group", words).c_str());
        ui.probe.note(fmt::format("arrange/group/{}", index));
    }
    tip(ui, group.pieces.size() == 1 ? "Selects it." : "Selects its pieces.");
    return chosen;
}

}  // namespace

void groups_list(Ui& ui, desk::Session& session) {
    const wall::Project& project = session.project();
    const rules::Assessment& found = session.assessment();
    const wall::Catalogue catalogue = session.catalogue();
    const rules::Scene scene{project,           catalogue,
                             found.groups,      found.zones,
                             found.marks.marks, rules::pieces_on_wall(project, found.hangings)};
    const std::vector<rules::Above> above = rules::groups_above_furniture(scene);
    heading(ui, "On the wall");
    if (found.groups.empty())
        hint(ui, "Nothing yet. Drag a piece up from the floor.");
    for (std::size_t i = 0; i < found.groups.size(); ++i) {
        const Group& group = found.groups[i];
        if (group_title(ui, project, group, i))
            session.selection.set(group.pieces);
        own_rows(ui, project, group);
        for (const rules::Above& one : above)
            if (one.group == &group)
                furniture_rows(ui, project.unit, one);
    }
}

}  // namespace wallwright::app

#include "app/actions.h"
#include "app/panels/dialog_parts.h"
#include "app/panels/panels.h"
#include "app/panels/start_preview.h"
#include "app/panels/usual_size_row.h"
#include "edits/room.h"
#include "store/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using desk::Start;
using units::LengthUnit;

constexpr int kMostAlike = 60;

std::string numbered(const char* what, std::size_t index, const char* part) {
    return fmt::format("start/{}-{}-{}", what, index, part);
}

bool is_centred(const Start::Stands& one, double wall_width) {
    return std::abs(one.left - (wall_width - one.size.width) / 2) < 1;
}

/// What stood in the middle of the wall stays there.
void set_wall(Start& start, wall::Size size) {
    for (Start::Stands& one : start.furniture)
        if (is_centred(one, start.wall.width))
            one.left = (size.width - one.size.width) / 2;
    start.wall = size;
}

void set_size(Start::Stands& one, wall::Size size, double wall_width) {
    const bool centred = is_centred(one, wall_width);
    one.size = size;
    if (centred)
        one.left = (wall_width - size.width) / 2;
}

Start::Stands usual(wall::FurnitureType type, double wall_width) {
    const wall::Size size = edits::usual_size(type);
    return {type, size, std::max(0.0, (wall_width - size.width) / 2)};
}

void room_rows(Ui& ui, Start& start) {
    if (const auto title = text_row(ui, "start/title", "What it is called", start.title))
        start.title = *title;
    if (const auto unit = unit_row(ui, "start/unit", start.unit))
        start.unit = *unit;
    if (const auto size = size_row(ui, "start/wall", "The wall", start.wall, start.unit,
                                   "Width and height of the wall. One that is not a rectangle "
                                   "gets its corners in the step Room."))
        set_wall(start, *size);
    const std::vector<std::string> surfaces = spoken_names<wall::Surface>();
    if (const auto surface =
            choice_row(ui, "start/surface", "Its surface", static_cast<int>(start.surface),
                       surfaces, "What strips and nails meet first"))
        start.surface = static_cast<wall::Surface>(*surface);
}

void furniture_rows(Ui& ui, Start& start, std::size_t i) {
    Start::Stands& one = start.furniture[i];
    const std::vector<std::string> kinds = spoken_names<wall::FurnitureType>();
    if (const auto kind = choice_row(ui, numbered("furniture", i, "kind").c_str(), "Kind",
                                     static_cast<int>(one.type), kinds))
        one = usual(static_cast<wall::FurnitureType>(*kind), start.wall.width);
    if (const auto size = size_row(ui, numbered("furniture", i, "size").c_str(), "Width × height",
                                   one.size, start.unit))
        set_size(one, *size, start.wall.width);
    if (const auto left = length_row(ui, numbered("furniture", i, "left").c_str(),
                                     "From the left corner", one.left, start.unit))
        one.left = *left;
}

/// True when it is to go.
bool remove_button(Ui& ui, const std::string& name) {
    const float width = button_width(ui, "Remove");
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() + ImGui::GetContentRegionAvail().x - width);
    return button(ui, name.c_str(), "Remove", "", ButtonLook::plain, width / ui.scale);
}

void furniture(Ui& ui, Start& start) {
    heading(ui, "What stands before it");
    std::optional<std::size_t> gone;
    for (std::size_t i = 0; i < start.furniture.size(); ++i) {
        furniture_rows(ui, start, i);
        if (remove_button(ui, numbered("furniture", i, "remove")))
            gone = i;
    }
    if (gone)
        start.furniture.erase(start.furniture.begin() + static_cast<std::ptrdiff_t>(*gone));
    if (button(ui, "start/add-furniture", "Add furniture", "", ButtonLook::plain, -1))
        start.furniture.push_back(usual(wall::FurnitureType::sideboard, start.wall.width));
}

/// Of the catalogue, those of the system that the unit belongs to.
std::vector<wall::NamedSize> named_sizes(LengthUnit unit) {
    std::vector<wall::NamedSize> sizes;
    for (const wall::NamedSize& one : store::built_in_catalogue().sizes)
        if (one.name.ends_with("in") == (unit == LengthUnit::inch))
            sizes.push_back(one);
    return sizes;
}

void frame_rows(Ui& ui, Start& start, std::size_t i) {
    Start::Frames& alike = start.frames[i];
    if (const auto size = size_row(ui, numbered("frames", i, "size").c_str(), "Width × height",
                                   alike.outside, start.unit, "Of the frame, over the moulding"))
        alike.outside = *size;
    if (const auto usual = usual_size_row(ui, numbered("frames", i, "named").c_str(),
                                          named_sizes(start.unit), alike.outside))
        alike.outside = *usual;
    if (const auto count = count_row(ui, numbered("frames", i, "count").c_str(), "How many",
                                     alike.count, "", {1, kMostAlike}))
        alike.count = *count;
}

void frames(Ui& ui, Start& start) {
    heading(ui, "Frames that want a place");
    std::optional<std::size_t> gone;
    for (std::size_t i = 0; i < start.frames.size(); ++i) {
        frame_rows(ui, start, i);
        if (remove_button(ui, numbered("frames", i, "remove")))
            gone = i;
    }
    if (gone)
        start.frames.erase(start.frames.begin() + static_cast<std::ptrdiff_t>(*gone));
    if (button(ui, "start/add-frames", "Add frames of another size", "", ButtonLook::plain, -1))
        start.frames.push_back({{300, 400}, 1});
}

/// The wall at the left, with its picture; what is brought before it at the right.
void body(Ui& ui, Start& start) {
    ImGui::PushStyleVar(ImGuiStyleVar_CellPadding, {ui.px(14), 0});
    const bool shown = ImGui::BeginTable("start", 2, ImGuiTableFlags_SizingStretchSame);
    ImGui::PopStyleVar();
    if (!shown)
        return;
    ImGui::TableNextColumn();
    room_rows(ui, start);
    furniture(ui, start);
    ImGui::TableNextColumn();
    start_preview(ui, start, ui.px(150));
    frames(ui, start);
    ImGui::EndTable();
}

}  // namespace

void start_dialog(Ui& ui, State& state, StartDialog& dialog) {
    dialog_title(ui, "A new wall");
    // What there is to fill in scrolls by itself, so that the buttons stay in sight.
    const float most = ImGui::GetIO().DisplaySize.y - ui.px(32 + 2 * 18 + 120);
    if (ImGui::BeginChild("body", {0, std::clamp(ui.px(460), 1.F, std::max(1.F, most))}))
        body(ui, dialog.start);
    ImGui::EndChild();
    dialog_problem(ui, dialog.problem);
    const DialogButton buttons[] = {{"start/cancel", "Cancel"}, {"start/begin", "Begin"}};
    const auto pressed = dialog_buttons(ui, buttons);
    if (pressed == 0U)
        return close_dialog(state);
    if (pressed != 1U)
        return;
    const Start start = dialog.start;
    const Outcome begun = begin(state, start);
    if (!begun)
        dialog.problem = to_text(begun.error());
}

}  // namespace wallwright::app

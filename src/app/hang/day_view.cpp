#include "app/bench/board_parts.h"
#include "app/canvas_painter.h"
#include "app/hang/day_words.h"
#include "app/hang/hang_parts.h"
#include "app/look_around.h"
#include "app/row.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "desk/hang/day_picture.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using desk::Companion;

// px at a scale of 1.
constexpr float kButtonHeight = 64;
constexpr float kBetween = 10;
constexpr float kEdge = 14;
constexpr float kLeastPicture = 150;

struct BigButton {
    const char* name;
    std::string words;
    std::string why;
    float share;  ///< Of the width.
    bool main = false;
    bool enabled = true;
    void (*press)(State&) = nullptr;
};

void tick(State& state) {
    state.day.tick(state.session);
}
void back(State& state) {
    state.day.back();
}
void skip(State& state) {
    state.day.skip();
}
void take_back(State& state) {
    state.day.take_back(state.session);
}
void next_stage(State& state) {
    state.day.next_stage(state.session);
}
void to_the_wall(State& state) {
    back_to_the_wall(state);
}

std::vector<BigButton> end_buttons(const Companion& day) {
    std::vector<BigButton> buttons;
    if (!day.deeds().empty())
        buttons.push_back(
            {"day/back", "Back", "What was done last (Backspace)", 1, false, day.at() > 0, back});
    if (const auto later = day.later(); !later.empty() && day.is_all_done() && !day.deeds().empty())
        buttons.push_back({"day/next-stage", fmt::format("Stage {}", later.front().stage),
                           "Goes on with the pieces of the next stage.", 1, false, true,
                           next_stage});
    buttons.push_back(
        {"day/wall", "To the wall", "Shows the wall again (Escape)", 2, true, true, to_the_wall});
    return buttons;
}

std::vector<BigButton> buttons_of(const Companion& day) {
    if (day.now() == nullptr)
        return end_buttons(day);
    const bool done = day.is_done(day.at());
    std::vector<BigButton> buttons{
        {"day/back", "Back", "The step before (Backspace)", 1, false, day.at() > 0, back}};
    if (done)
        buttons.push_back({"day/take-back", "Not done", "It is still to be done after all.", 1,
                           false, day.can_take_back(), take_back});
    else
        buttons.push_back({"day/skip", "Skip",
                           "Leaves it to be done and goes on; it comes again at the end (Right)", 1,
                           false, true, skip});
    buttons.push_back(
        {"day/done", done ? "Go on" : "Done",
         done ? "To what is to be done next (Space)" : "It is done; goes on to the next (Space)", 2,
         true, true, tick});
    return buttons;
}

bool show(Ui& ui, const BigButton& button, ImVec2 size) {
    const Theme& theme = ui.theme();
    const ScopedFont large(width_in(ui.fonts.large, button.words) + ui.px(8) <= size.x
                               ? ui.fonts.large
                               : ui.fonts.body);
    const ScopedId id(button.name);
    const ScopedDisabled disabled(!button.enabled);
    const ImU32 ground = button.main ? theme.accent : theme.panel;
    const ScopedColour plain(ImGuiCol_Button, ground);
    const ScopedColour hovered(ImGuiCol_ButtonHovered,
                               button.main ? with_alpha(theme.accent, 0.88) : theme.field);
    const ScopedColour active(ImGuiCol_ButtonActive, ground);
    const ScopedColour words(ImGuiCol_Text, button.main ? theme.on_accent : theme.text);
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_FrameRounding, ui.px(8));
    const bool pressed = ImGui::Button(button.words.c_str(), size);
    ImGui::PopStyleVar(2);
    ui.probe.note(button.name, button.enabled);
    return pressed;
}

void show_buttons(Ui& ui, State& state, const ScreenArea& area) {
    const std::vector<BigButton> buttons = buttons_of(state.day);
    float shares = 0;
    for (const BigButton& button : buttons)
        shares += button.share;
    const float between = ui.px(kBetween);
    const float room = static_cast<float>(area.width()) - 2 * ui.px(kEdge) -
                       between * static_cast<float>(buttons.size() - 1);
    float x = static_cast<float>(area.min.x) + ui.px(kEdge);
    void (*pressed)(State&) = nullptr;
    for (const BigButton& button : buttons) {
        const ImVec2 size{std::max(1.0F, room * button.share / shares),
                          static_cast<float>(area.height()) - ui.px(kEdge)};
        ImGui::SetCursorScreenPos({x, static_cast<float>(area.min.y)});
        if (show(ui, button, size))
            pressed = button.press;
        // Not in the font of the button.
        tip(ui, button.why);
        x += size.x + between;
    }
    if (pressed != nullptr)
        pressed(state);
}

/// Drawn anew when the wall, the deed or the scale is another.
void refresh(State& state, double scale) {
    DayPicture& picture = state.day_picture;
    if (picture.version == state.day.version() && picture.scale == scale)
        return;
    picture.drawing = desk::day_picture(state.day, state.session.picture_folder(), scale);
    picture.version = state.day.version();
    picture.scale = scale;
}

void show_picture(Ui& ui, State& state, const ScreenArea& area) {
    DayPicture& picture = state.day_picture;
    const BoardMouse mouse = take_board(ui, "day/picture", area);
    const double px = board_pixels(ui, area);
    const auto refresh_at = [&] { refresh(state, picture.look.view.scale() / px); };
    keep_fitted(ui, picture.look, area, {.wall = state.day.version()}, [&](double) {
        refresh_at();
        return picture.drawing.extent;
    });
    if (look_around(picture.look.view, mouse.hovered, mouse.active))
        picture.look.fitted = false;
    refresh_at();
    paint_board(ui, picture.look.view, area, {picture.drawing.shapes});
    ImGui::GetWindowDrawList()->AddRect(
        {static_cast<float>(area.min.x), static_cast<float>(area.min.y)},
        {static_cast<float>(area.max.x), static_cast<float>(area.max.y)}, ui.theme().line);
}

/// Beside each other in a wide window, else the words above the picture, or alone.
void show_work(Ui& ui, State& state, const ScreenArea& area) {
    constexpr double kWide = 1.05;
    constexpr float kLeastWide = 640;
    if (area.width() >= kWide * area.height() && area.width() >= ui.px(kLeastWide)) {
        const double words = std::clamp(0.42 * area.width(), double{ui.px(330)},
                                        std::max(double{ui.px(330)}, double{ui.px(560)}));
        const double split = area.max.x - words;
        show_picture(
            ui, state,
            {{area.min.x + ui.px(kEdge), area.min.y}, {split, area.max.y - ui.px(kBetween)}});
        return day_words(ui, state, {{split, area.min.y}, area.max});
    }
    const double words =
        std::min(area.height(), std::max(0.55 * area.height(), double{ui.px(330)}));
    const bool has_picture = area.height() - words >= ui.px(kLeastPicture);
    const double split = has_picture ? area.min.y + words : area.max.y;
    day_words(ui, state, {area.min, {area.max.x, split}});
    if (has_picture)
        show_picture(ui, state,
                     {{area.min.x + ui.px(kEdge), split},
                      {area.max.x - ui.px(kEdge), area.max.y - ui.px(kBetween)}});
}

}  // namespace

void day_view(Ui& ui, State& state, const ScreenArea& area) {
    const double foot = std::min(double{ui.px(kButtonHeight + kEdge)}, 0.4 * area.height());
    const ScreenArea above{area.min, {area.max.x, area.max.y - foot}};
    if (above.height() > 1)
        show_work(ui, state, above);
    show_buttons(ui, state, {{area.min.x, above.max.y}, area.max});
}

}  // namespace wallwright::app

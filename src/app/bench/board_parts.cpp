#include "app/bench/board_parts.h"

#include "app/canvas_painter.h"
#include "app/look_around.h"
#include "app/scoped.h"

#include <algorithm>
#include <functional>

namespace wallwright::app {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kMargin =
    18;  ///< px around what is fitted, at a scale of 1, as keep_fitted has it.
constexpr double kTipAfter = 0.45;  // s

ImVec2 corner(const geometry::Point<geometry::Screen>& at) {
    return {static_cast<float>(at.x), static_cast<float>(at.y)};
}

}  // namespace

bool BoardMouse::is_pressed() const {
    return activated && ImGui::IsMouseClicked(ImGuiMouseButton_Left) && !is_panning();
}

BoardMouse take_board(Ui& ui, const char* name, const ScreenArea& area) {
    ImGui::SetCursorScreenPos(corner(area.min));
    ImGui::InvisibleButton(name,
                           {static_cast<float>(area.width()), static_cast<float>(area.height())},
                           ImGuiButtonFlags_MouseButtonLeft | ImGuiButtonFlags_MouseButtonMiddle);
    ui.probe.note(name);
    return {ImGui::IsItemHovered(), ImGui::IsItemActive(), ImGui::IsItemActivated(),
            ImGui::IsItemDeactivated()};
}

double board_pixels(const Ui& ui, const ScreenArea& area) {
    constexpr double kWide = 205;  // mm on paper that there are to be
    constexpr double kHigh = 150;
    constexpr double kLeast = 2;  // px
    const double air = 2 * kMargin * ui.scale;
    const double room = std::min((area.width() - air) / kWide, (area.height() - air) / kHigh);
    const double usual = kPixelsPerPaperMm * ui.scale;
    return std::clamp(room, std::min(kLeast, usual), usual);
}

double board_scale(const Ui& ui, const desk::View& view, const ScreenArea& area) {
    return view.scale() / board_pixels(ui, area);
}

geometry::Size paper_of(const Ui& ui, const ScreenArea& area) {
    const double px = board_pixels(ui, area);
    return {std::max(1.0, (area.width() - 2 * kMargin * ui.scale) / px),
            std::max(1.0, (area.height() - 2 * kMargin * ui.scale) / px)};
}

geometry::Point<Wall> board_point(const desk::View& view) {
    const ImVec2 at = ImGui::GetIO().MousePos;
    return view.to_wall({at.x, at.y});
}

Rect<Wall> sight_of(const Ui& ui, const desk::View& view, const ScreenArea& area) {
    return view.to_screen().inverse()(area.grown(-4.0 * ui.scale));
}

void paint_board(const Ui& ui, const desk::View& view, const ScreenArea& area,
                 std::initializer_list<std::span<const draw::Shape<Wall>>> layers) {
    const CanvasStyle style{view.to_screen(), board_pixels(ui, area), ui.dark, ui.fonts, ui.host};
    const ImVec2 from = corner(area.min);
    const ImVec2 to = corner(area.max);
    for (const auto& shapes : layers)
        paint(*ImGui::GetWindowDrawList(), shapes, style, {from.x, from.y, to.x, to.y});
}

void note_on_board(Ui& ui, const desk::View& view, const std::string& name,
                   const Rect<Wall>& place) {
    const auto box = view.to_screen()(place);
    ui.probe.note_box(name, corner(box.min), corner(box.max));
}

void board_tip(Ui& ui, const std::string& what, const std::string& words) {
    ImGuiStorage& kept = *ImGui::GetStateStorage();
    int& before = *kept.GetIntRef(ImGui::GetID("board/what"), 0);
    float& since = *kept.GetFloatRef(ImGui::GetID("board/since"), 0);
    const int now = static_cast<int>(std::hash<std::string>{}(what)&0x7FFFFFFFU);
    const double time = ImGui::GetTime();
    if (std::exchange(before, now) != now)
        since = static_cast<float>(time);
    if (what.empty() || words.empty())
        return;
    const double left = kTipAfter - (time - double{since});
    if (left > 0) {
        ui.memory.wake(left);
        return;
    }
    ImGui::BeginTooltip();
    ImGui::PushTextWrapPos(ImGui::GetCursorPosX() + ui.px(340));
    ImGui::TextUnformatted(words.c_str());
    ImGui::PopTextWrapPos();
    ui.probe.note("tip");
    ImGui::EndTooltip();
}

void say_on_board(const Ui& ui, const ScreenArea& area, const std::string& words) {
    const float width = std::min(ui.px(360), static_cast<float>(area.width()));
    const ImVec2 size = ImGui::CalcTextSize(words.c_str(), nullptr, false, width);
    ImGui::GetWindowDrawList()->AddText(nullptr, 0,
                                        {static_cast<float>(area.centre().x) - size.x / 2,
                                         static_cast<float>(area.centre().y) - size.y / 2},
                                        ui.theme().quiet_text, words.c_str(), nullptr, width);
}

}  // namespace wallwright::app

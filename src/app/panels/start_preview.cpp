#include "app/panels/start_preview.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr double kFrameGap = 60;  ///< mm between the frames below the wall.

/// Room for the frames in one row below the wall, mm.
wall::Size row_of(const std::vector<desk::Start::Frames>& frames) {
    wall::Size row;
    for (const desk::Start::Frames& alike : frames) {
        row.width += alike.count * (alike.outside.width + kFrameGap);
        row.height = std::max(row.height, alike.outside.height);
    }
    return row;
}

/// mm to px: `left` and `floor` are where the wall's lower left corner goes.
struct Scale {
    float left = 0;
    float floor = 0;
    double px_per_mm = 1;

    [[nodiscard]] ImVec2 at(double x, double y) const {
        return {left + static_cast<float>(x * px_per_mm),
                floor - static_cast<float>(y * px_per_mm)};
    }
};

void show_frames(const Ui& ui, const desk::Start& start, const Scale& scale) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    double x = 0;
    const double top = -kFrameGap;
    for (const desk::Start::Frames& alike : start.frames)
        for (int i = 0; i < alike.count; ++i) {
            list.AddRect(scale.at(x, top),
                         scale.at(x + alike.outside.width, top - alike.outside.height),
                         ui.theme().accent);
            x += alike.outside.width + kFrameGap;
        }
}

}  // namespace

void start_preview(Ui& ui, const desk::Start& start, float height) {
    const float width = ImGui::GetContentRegionAvail().x;
    const ImVec2 at = ImGui::GetCursorScreenPos();
    ImGui::Dummy({width, height});
    const wall::Size row = row_of(start.frames);
    const double all_width = std::max(start.wall.width, row.width);
    const double all_height = start.wall.height + kFrameGap + row.height;
    if (width <= 0 || height <= 0 || all_width <= 0)
        return;
    const double scale = std::min(width / all_width, height / all_height);
    const float left = at.x + (width - static_cast<float>(all_width * scale)) / 2;
    const Scale to_px{left, at.y + static_cast<float>(start.wall.height * scale), scale};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.PushClipRect(at, {at.x + width, at.y + height}, true);
    list.AddRectFilled(to_px.at(0, start.wall.height), to_px.at(start.wall.width, 0),
                       ui.theme().desk);
    list.AddRect(to_px.at(0, start.wall.height), to_px.at(start.wall.width, 0), ui.theme().line);
    for (const desk::Start::Stands& one : start.furniture)
        list.AddRectFilled(to_px.at(one.left, one.size.height),
                           to_px.at(one.left + one.size.width, 0), ui.theme().quiet_text);
    show_frames(ui, start, to_px);
    list.PopClipRect();
}

}  // namespace wallwright::app

#include "app/look_around.h"

#include "app/canvas_painter.h"

#include <imgui.h>

#include <cmath>

namespace wallwright::app {

bool is_panning() {
    const bool space =
        ImGui::IsKeyDown(ImGui::GetKeyIndex(ImGuiKey_Space)) && !ImGui::GetIO().WantTextInput;
    return ImGui::IsMouseDown(ImGuiMouseButton_Middle) ||
           (space && ImGui::IsMouseDown(ImGuiMouseButton_Left));
}

bool look_around(desk::View& view, bool hovered, bool active) {
    constexpr double kZoomStep = 1.15;  // for one notch of the wheel
    constexpr double kWheelPan = 60;    // px for one notch
    const ImGuiIO& io = ImGui::GetIO();
    if (hovered && io.MouseWheelH != 0)
        view.pan({kWheelPan * io.MouseWheelH, 0});
    if (hovered && io.MouseWheel != 0)
        view.zoom({io.MousePos.x, io.MousePos.y}, std::pow(kZoomStep, io.MouseWheel));
    const bool panned = active && is_panning() && (io.MouseDelta.x != 0 || io.MouseDelta.y != 0);
    if (panned)
        view.pan({io.MouseDelta.x, io.MouseDelta.y});
    return panned || (hovered && (io.MouseWheelH != 0 || io.MouseWheel != 0));
}

double paper_scale(const Ui& ui, const desk::View& view) {
    return view.scale() / (kPixelsPerPaperMm * ui.scale);
}

void keep_fitted(const Ui& ui, desk::Look& look, const geometry::Rect<geometry::Screen>& area,
                 desk::Sight now,
                 const std::function<geometry::Rect<geometry::Wall>(double)>& extent_at) {
    constexpr double kMargin = 18;  // px, at a scale of 1
    constexpr int kRounds = 16;     // the figures' room depends on the scale, and the scale on it
    constexpr double kSame = 1e-3;  // of the scale
    now.area = area;
    now.text = ui.scale;
    const auto inner = area.grown(-kMargin * ui.scale);
    if (!look.fitted || now == look.fitted_for || inner.width() <= 0 || inner.height() <= 0)
        return;
    // From a drawing so large that figures are as nothing: from below one may come to rest where
    // figures that have no room between their ends stand beside each other and take all there is.
    constexpr double kLarge = 10;  // mm on paper for one mm
    look.view.fit(extent_at(kLarge), inner);
    double before = look.view.scale();
    for (int round = 0; round < kRounds; ++round) {
        look.view.fit(extent_at(paper_scale(ui, look.view)), inner);
        if (std::abs(look.view.scale() - before) < kSame * before)
            break;
        before = look.view.scale();
    }
    look.fitted_for = std::move(now);
}

}  // namespace wallwright::app

#include "app/panels/findings_sign.h"

#include "app/scoped.h"
#include "app/widgets.h"

#include <cmath>
#include <numbers>

namespace wallwright::app {

namespace {

constexpr float kSign = 16;  // px at a scale of 1

ImU32 colour_of(const Theme& theme, wall::Severity severity) {
    switch (severity) {
        case wall::Severity::stop:
            return theme.stop;
        case wall::Severity::mind:
            return theme.mind;
        case wall::Severity::note:
            return theme.quiet_text;
    }
    return theme.text;
}

ImVec2 sign_centre(const Ui& ui, ImVec2 at) {
    const float in = ui.px(kSign) / 2 + ui.px(2);
    return {at.x + in, at.y + in};
}

/// A regular polygon with its first corner at `turn` of a full circle, from the right downward.
void fill_polygon(ImDrawList& list, ImVec2 centre, float radius, int corners, double turn,
                  ImU32 colour) {
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * (turn + static_cast<double>(i) / corners);
        list.PathLineTo({centre.x + radius * static_cast<float>(std::cos(angle)),
                         centre.y + radius * static_cast<float>(std::sin(angle))});
    }
    list.PathFillConvex(colour);
}

/// The stroke and dot of an exclamation mark; upside down they are an "i".
void mark(ImDrawList& list, ImVec2 centre, float radius, bool upside_down, ImU32 colour) {
    const float down = upside_down ? -1.0F : 1.0F;
    const float thick = 0.24F * radius;
    list.AddLine({centre.x, centre.y - 0.5F * down * radius},
                 {centre.x, centre.y + 0.15F * down * radius}, colour, thick);
    list.AddCircleFilled({centre.x, centre.y + 0.48F * down * radius}, 0.62F * thick, colour);
}

}  // namespace

void draw_sign(ImDrawList& list, ImVec2 centre, float radius, wall::Severity severity,
               const Theme& theme) {
    constexpr double kFlatSideUp = 1.0 / 16;
    constexpr double kCornerUp = 0.75;
    switch (severity) {
        case wall::Severity::stop:
            fill_polygon(list, centre, radius, 8, kFlatSideUp, theme.stop);
            return mark(list, centre, radius, false, theme.panel);
        case wall::Severity::mind: {
            // Lower and larger than a circle, so that it looks as large and as high.
            const ImVec2 middle{centre.x, centre.y + 0.2F * radius};
            fill_polygon(list, middle, 1.2F * radius, 3, kCornerUp, theme.mind);
            return mark(list, middle, 0.9F * radius, false, theme.panel);
        }
        case wall::Severity::note:
            list.AddCircleFilled(centre, radius, theme.quiet_text);
            return mark(list, centre, radius, true, theme.panel);
    }
}

void draw_good_sign(ImDrawList& list, ImVec2 centre, float radius, const Theme& theme) {
    list.AddCircleFilled(centre, radius, theme.good);
    const ImVec2 hook[] = {{centre.x - 0.45F * radius, centre.y + 0.02F * radius},
                           {centre.x - 0.1F * radius, centre.y + 0.38F * radius},
                           {centre.x + 0.48F * radius, centre.y - 0.32F * radius}};
    list.AddPolyline(hook, 3, theme.panel, 0, 0.22F * radius);
}

void show_said(const Ui& ui, ImVec2 at, wall::Severity severity, const std::string& text) {
    draw_sign(*ImGui::GetWindowDrawList(), sign_centre(ui, at), ui.px(kSign) / 2, severity,
              ui.theme());
    ImGui::SetCursorScreenPos({at.x + ui.px(kSaidAt), at.y});
    const ScopedGroup group;
    {
        const ScopedFont bold(ui.fonts.bold);
        const ScopedColour ink(ImGuiCol_Text, colour_of(ui.theme(), severity));
        ImGui::TextUnformatted(capital(std::string(wall::name_of(severity))).c_str());
    }
    const ScopedWrap wrap;
    ImGui::TextUnformatted(text.c_str());
}

void show_nothing_said(Ui& ui, const char* words, const char* name) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    draw_good_sign(*ImGui::GetWindowDrawList(), sign_centre(ui, at), ui.px(kSign) / 2, ui.theme());
    ImGui::SetCursorScreenPos({at.x + ui.px(kSaidAt), at.y});
    const ScopedGroup group;
    const ScopedWrap wrap;
    ImGui::TextUnformatted(words);
    ui.probe.note(name);
}

}  // namespace wallwright::app

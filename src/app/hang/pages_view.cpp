#include "app/bench/board_parts.h"
#include "app/canvas_painter.h"
#include "app/hang/hang_parts.h"
#include "app/look_around.h"
#include "app/row.h"
#include "app/scoped.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

// px at a scale of 1.
constexpr float kStripWidth = 112;
constexpr float kThumbWidth = 78;
constexpr float kThumbHeight = 92;
constexpr float kNumberHeight = 20;
constexpr float kAir = 8;

ImVec2 corner(const geometry::Point<Screen>& at) {
    return {static_cast<float>(at.x), static_cast<float>(at.y)};
}

/// What of the sheet is there to be seen.
ImVec4 within(const ImVec4& clip, const Rect<Screen>& sheet) {
    const ImVec2 low = corner(sheet.min);
    const ImVec2 high = corner(sheet.max);
    return {std::max(clip.x, low.x), std::max(clip.y, low.y), std::min(clip.z, high.x),
            std::min(clip.w, high.y)};
}

/// A white sheet with a soft shadow, and what is on it. The theme is that of paper, also in a dark
/// window.
void paint_page(const Ui& ui, const ShownPage& page, const geometry::Transform<Wall, Screen>& view,
                const ImVec4& clip) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Rect<Screen> sheet = view(page.drawing.extent);
    CanvasStyle style{view, view.scale, false, ui.fonts, ui.host};
    style.on_paper = true;
    const double depth = std::clamp(4 * ui.scale / view.scale, 0.5, 60.0);
    const draw::Shape<Wall> shadow[] = {draw::Shadow<Wall>{page.drawing.extent, depth}};
    list.PushClipRect({clip.x, clip.y}, {clip.z, clip.w}, true);
    paint(list, shadow, style, clip);
    list.AddRectFilled(corner(sheet.min), corner(sheet.max), IM_COL32_WHITE);
    paint(list, page.drawing.shapes, style, within(clip, sheet));
    list.AddRect(corner(sheet.min), corner(sheet.max), ui.theme().line);
    list.PopClipRect();
}

class Strip {
  public:
    Strip(Ui& ui, PagePreview& preview) : ui_(ui), preview_(preview) {}

    void show(std::size_t index) {
        const ScopedId id(static_cast<int>(index));
        const ShownPage& page = preview_.pages()[index];
        const ImVec2 low = ImGui::GetCursorScreenPos();
        const ImVec2 size{ImGui::GetContentRegionAvail().x,
                          ui_.px(kThumbHeight + kNumberHeight + kAir)};
        if (ImGui::InvisibleButton("page", size))
            preview_.page = index;
        ui_.probe.note(fmt::format("pages/small/{}", index + 1));
        const bool hovered = ImGui::IsItemHovered();
        if (ImGui::IsItemVisible())
            paint_small(page, index, {low, {low.x + size.x, low.y + size.y}}, hovered);
        tip(ui_, fmt::format("{}: {}", index + 1, words_for(page.part)));
        if (index == preview_.page && std::exchange(preview_.strip_follows, false))
            ImGui::SetScrollHereY(0.5F);
    }

  private:
    struct Box {
        ImVec2 low;
        ImVec2 high;
    };

    void paint_small(const ShownPage& page, std::size_t index, const Box& box, bool hovered) {
        const Theme& theme = ui_.theme();
        ImDrawList& list = *ImGui::GetWindowDrawList();
        const bool chosen = index == preview_.page;
        if (chosen || hovered)
            list.AddRectFilled(box.low, box.high,
                               chosen ? theme.panel : with_alpha(theme.field, 0.7), ui_.px(4));
        const Rect<Wall>& extent = page.drawing.extent;
        const double scale =
            std::min(ui_.px(kThumbWidth) / extent.width(), ui_.px(kThumbHeight) / extent.height());
        const double left = (box.low.x + box.high.x - scale * extent.width()) / 2;
        const double middle = box.low.y + ui_.px(kAir + kThumbHeight) / 2;
        const geometry::Transform<Wall, Screen> view{
            {left - scale * extent.min.x, middle + scale * extent.centre().y}, scale};
        paint_page(ui_, page, view, {box.low.x, box.low.y, box.high.x, box.high.y});
        if (chosen)
            list.AddRect(box.low, box.high, theme.accent, ui_.px(4), 0, ui_.px(2));
        const ScopedFont small(ui_.fonts.small);
        const std::string number = std::to_string(index + 1);
        const ImVec2 size = ImGui::CalcTextSize(number.c_str());
        list.AddText({(box.low.x + box.high.x - size.x) / 2, box.high.y - ui_.px(3) - size.y},
                     chosen ? theme.text : theme.quiet_text, number.c_str());
    }

    Ui& ui_;
    PagePreview& preview_;
};

/// None beside one page, and none where the page needs all the width.
float strip_width(const Ui& ui, const PagePreview& preview, const ScreenArea& area) {
    constexpr float kLeast = 420;
    return preview.pages().size() < 2 || area.width() < ui.px(kLeast) ? 0 : ui.px(kStripWidth);
}

void show_strip(Ui& ui, PagePreview& preview, const ScreenArea& area) {
    ImGui::SetCursorScreenPos(corner(area.min));
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(kAir), ui.px(4)});
    ImGui::BeginChild("small pages",
                      {static_cast<float>(area.width()), static_cast<float>(area.height())}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    ImGui::PopStyleVar();
    Strip strip(ui, preview);
    for (std::size_t i = 0; i < preview.pages().size(); ++i)
        strip.show(i);
    ImGui::EndChild();
    ImGui::GetWindowDrawList()->AddLine(corner({area.max.x, area.min.y}), corner(area.max),
                                        ui.theme().line);
}

/// Nothing on a page can be taken, so that the left button moves all of it.
bool drag_along(desk::View& view, const BoardMouse& mouse) {
    const ImGuiIO& io = ImGui::GetIO();
    if (!mouse.active || is_panning() || !ImGui::IsMouseDragging(ImGuiMouseButton_Left) ||
        (io.MouseDelta.x == 0 && io.MouseDelta.y == 0))
        return false;
    view.pan({io.MouseDelta.x, io.MouseDelta.y});
    return true;
}

/// At the head of the page, for as long as it lasts.
void say_that_it_is_old(Ui& ui, const ScreenArea& area) {
    const char* const words = "The pages are being made anew...";
    const ImVec2 size = ImGui::CalcTextSize(words);
    const ImVec2 at{static_cast<float>(area.centre().x) - size.x / 2,
                    static_cast<float>(area.min.y) + ui.px(10)};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const float air = ui.px(8);
    list.AddRectFilled({at.x - air, at.y - air / 2}, {at.x + size.x + air, at.y + size.y + air / 2},
                       ui.theme().panel, ui.px(4));
    list.AddText(at, ui.theme().quiet_text, words);
    ui.probe.note_box("pages/old", at, {at.x + size.x, at.y + size.y});
}

void show_page(Ui& ui, PagePreview& preview, const ScreenArea& area) {
    const BoardMouse mouse = take_board(ui, "pages/page", area);
    const ShownPage& page = preview.pages()[std::min(preview.page, preview.pages().size() - 1)];
    keep_fitted(ui, preview.look, area, {.wall = preview.made.number(), .layer = preview.page},
                [&page](double) { return page.drawing.extent; });
    desk::View& view = preview.look.view;
    const bool looked = look_around(view, mouse.hovered, mouse.active);
    if (drag_along(view, mouse) || looked)
        preview.look.fitted = false;
    const ImVec2 low = corner(area.min);
    const ImVec2 high = corner(area.max);
    paint_page(ui, page, view.to_screen(), {low.x, low.y, high.x, high.y});
    if (preview.is_stale())
        say_that_it_is_old(ui, area);
}

}  // namespace

void pages_view(Ui& ui, State& state, const ScreenArea& area) {
    PagePreview& preview = state.preview;
    if (preview.pages().empty()) {
        take_board(ui, "pages/page", area);
        return say_on_board(ui, area,
                            preview.choice.is_empty() ? "Choose at the right what to print."
                            : preview.is_stale()      ? "The pages are being made..."
                                                      : "There is nothing of that to print.");
    }
    const float strip = strip_width(ui, preview, area);
    if (strip > 0)
        show_strip(ui, preview, {area.min, {area.min.x + strip, area.max.y}});
    show_page(ui, preview, {{area.min.x + strip, area.min.y}, area.max});
}

}  // namespace wallwright::app

#include "app/bench/bench_strip.h"

#include "app/canvas_painter.h"
#include "app/panels/findings_sign.h"
#include "app/row.h"
#include "app/widgets.h"
#include "desk/bench/bench_pieces.h"
#include "draw/framed.h"
#include "draw/letters.h"
#include "mounts/design/remarks.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Piece;
using wall::PieceId;

/// px at a scale of 1, as are all of these.
struct Cell {
    float width;
    float height;
    float title;  ///< Of its height, for the title at its foot.
    float air;    ///< On all sides of the picture.
};
constexpr Cell kSmall{96, 96, 20, 8};
constexpr float kBetween = 4;  ///< Two cells.
constexpr float kEdge = 10;    ///< At both ends of the strip.

/// Of the overview, as wide as that.
Cell large_cell(float width) {
    return {width, 1.08F * width, 24, 14};
}

/// The largest cells with which so many find room in an area of this size, px at a scale of 1.
Cell cell_for(std::size_t count, float width, float height) {
    constexpr float kMost = 280;
    constexpr float kLeast = 130;
    constexpr float kStep = 2;
    for (float wide = kMost; wide > kLeast; wide -= kStep) {
        const Cell cell = large_cell(wide);
        const double columns = std::floor((width + kBetween) / (wide + kBetween));
        const double rows = columns < 1 ? 0 : std::ceil(static_cast<double>(count) / columns);
        if (rows > 0 && rows * (cell.height + kBetween) <= height)
            return cell;
    }
    return large_cell(kLeast);
}

/// The worst of what the mount says, if that matters.
std::optional<wall::Severity> worst_of(const wall::Project& project, const Piece& piece) {
    const auto design = mounts::design_of(project, piece);
    if (!design)
        return std::nullopt;
    std::optional<wall::Severity> worst;
    for (const mounts::Remark& remark :
         mounts::remarks_on(*design, *wall::find(project, *piece.mount), project.unit))
        if (remark.severity != wall::Severity::note)
            worst = std::min(worst.value_or(remark.severity), remark.severity);
    return worst;
}

class Thumbs {
  public:
    Thumbs(Ui& ui, State& state, const Cell& cell) : ui_(ui), state_(state), cell_(cell) {}

    /// One scale for all, px a mm; else each fills its cell.
    void use_one_scale() {
        const wall::Project& project = state_.session.project();
        for (const Piece& piece : project.pieces) {
            const double scale = scale_for(wall::outside_size(project, piece));
            one_scale_ = std::min(one_scale_.value_or(scale), scale);
        }
    }

    /// At the cursor.
    void show(const PieceId& id) {
        const ScopedId scope(id.text.c_str());
        const wall::Project& project = state_.session.project();
        const Piece& piece = *wall::find(project, id);
        const bool chosen = state_.session.selection.has(id);
        const ImVec2 low = ImGui::GetCursorScreenPos();
        if (ImGui::InvisibleButton("piece", {ui_.px(cell_.width), ui_.px(cell_.height)}))
            picked_ = id;
        ui_.probe.note(fmt::format("bench/piece/{}", draw::letter_of(project, id)));
        const bool hovered = ImGui::IsItemHovered();
        if (ImGui::IsItemVisible())
            paint(piece, low, chosen, hovered);
        tip(ui_, piece.mount ? wall::title_of(piece)
                             : fmt::format("{}, without a mount", wall::title_of(piece)));
        if (chosen && is_new_choice())
            ImGui::SetScrollHereX(0.5F);
    }

    /// Looks at the piece that was clicked.
    void take_pick() {
        if (picked_)
            state_.session.selection.set(*picked_);
    }

  private:
    [[nodiscard]] double scale_for(wall::Size size) const {
        const double width = ui_.px(cell_.width - 2 * cell_.air);
        const double height = ui_.px(cell_.height - cell_.title - 2 * cell_.air);
        return std::min(width / size.width, height / size.height);
    }

    /// It was not chosen in the frame before: the strip follows the choice once, and can then be
    /// scrolled away from it.
    static bool is_new_choice() {
        int* const seen = ImGui::GetStateStorage()->GetIntRef(ImGui::GetID("chosen"), -1);
        const int frame = ImGui::GetFrameCount();
        const bool is_new = *seen < frame - 1;
        *seen = frame;
        return is_new;
    }

    void paint(const Piece& piece, ImVec2 low, bool chosen, bool hovered) {
        const Theme& theme = ui_.theme();
        ImDrawList& list = *ImGui::GetWindowDrawList();
        const ImVec2 high{low.x + ui_.px(cell_.width), low.y + ui_.px(cell_.height)};
        if (chosen || hovered)
            list.AddRectFilled(low, high, chosen ? theme.panel : with_alpha(theme.field, 0.7),
                               ui_.px(4));
        paint_piece(piece, low);
        if (chosen)
            list.AddRect(low, high, theme.accent, ui_.px(4), 0, ui_.px(2));
        paint_title(wall::title_of(piece), low, high, piece.mount || chosen);
        if (const auto worst = worst_of(state_.session.project(), piece))
            draw_sign(list, {high.x - ui_.px(12), low.y + ui_.px(12)}, ui_.px(7), *worst, theme);
    }

    void paint_piece(const Piece& piece, ImVec2 low) {
        const wall::Project& project = state_.session.project();
        const wall::Size size = wall::outside_size(project, piece);
        const double scale = one_scale_.value_or(scale_for(size));
        const double left = low.x + (ui_.px(cell_.width) - scale * size.width) / 2;
        const double foot = low.y + ui_.px(cell_.height - cell_.title - cell_.air);
        const double middle = low.y + ui_.px(cell_.height - cell_.title) / 2;
        const double bottom = one_scale_ ? foot : middle + scale * size.height / 2;
        draw::Shapes shapes;
        draw::add_framed(shapes, project, piece, Rect<Wall>::at({0, 0}, size),
                         {true, state_.session.picture_folder()});
        const CanvasStyle style{{{left, bottom}, scale},
                                kPixelsPerPaperMm * ui_.scale / 2,
                                ui_.dark,
                                ui_.fonts,
                                ui_.host};
        const ImVec4 clip{low.x, low.y, low.x + ui_.px(cell_.width), low.y + ui_.px(cell_.height)};
        app::paint(*ImGui::GetWindowDrawList(), shapes, style, clip);
    }

    void paint_title(const std::string& title, ImVec2 low, ImVec2 high, bool strong) {
        const ScopedFont small(ui_.fonts.small);
        const std::string words = fitted(title, high.x - low.x - ui_.px(8));
        const ImVec2 size = ImGui::CalcTextSize(words.c_str());
        ImGui::GetWindowDrawList()->AddText(
            {(low.x + high.x - size.x) / 2, high.y - ui_.px(4) - size.y},
            strong ? ui_.theme().text : ui_.theme().quiet_text, words.c_str());
    }

    Ui& ui_;
    State& state_;
    Cell cell_;
    std::optional<double> one_scale_;
    std::optional<PieceId> picked_;
};

void begin_part(const char* name, const ScreenArea& area, ImGuiWindowFlags flags) {
    ImGui::SetCursorScreenPos({static_cast<float>(area.min.x), static_cast<float>(area.min.y)});
    ImGui::BeginChild(name, {static_cast<float>(area.width()), static_cast<float>(area.height())},
                      false, flags | keys_for_fields());
}

/// The wheel moves along the row.
void scroll_along(const Ui& ui) {
    const float wheel = ImGui::GetIO().MouseWheel;
    if (wheel != 0 && ImGui::IsWindowHovered(ImGuiHoveredFlags_ChildWindows))
        ImGui::SetScrollX(ImGui::GetScrollX() - wheel * ui.px(kSmall.width));
}

}  // namespace

float bench_strip_height(const Ui& ui, const State& state, const ScreenArea& bench) {
    constexpr float kLeastBench = 400;
    if (bench.height() < ui.px(kLeastBench))
        return 0;
    const auto count = static_cast<float>(state.session.project().pieces.size());
    const float row = count * ui.px(kSmall.width + kBetween) + 2 * ui.px(kEdge);
    const float bar = row > static_cast<float>(bench.width()) ? ImGui::GetStyle().ScrollbarSize : 0;
    return ui.px(kSmall.height + 12) + bar;
}

void bench_strip(Ui& ui, State& state, const ScreenArea& area) {
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(kEdge), ui.px(6)});
    begin_part("pieces", area,
               ImGuiWindowFlags_HorizontalScrollbar | ImGuiWindowFlags_NoScrollWithMouse |
                   ImGuiWindowFlags_AlwaysUseWindowPadding);
    ImGui::PopStyleVar();
    Thumbs thumbs(ui, state, kSmall);
    for (const PieceId& id : desk::bench_order(state.session.project())) {
        thumbs.show(id);
        ImGui::SameLine(0, ui.px(kBetween));
    }
    scroll_along(ui);
    ImGui::EndChild();
    ImGui::GetWindowDrawList()->AddLine(
        {static_cast<float>(area.min.x), static_cast<float>(area.min.y)},
        {static_cast<float>(area.max.x), static_cast<float>(area.min.y)}, ui.theme().line);
    thumbs.take_pick();
}

void bench_overview(Ui& ui, State& state, const ScreenArea& area) {
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(14), ui.px(6)});
    begin_part("overview", area, ImGuiWindowFlags_AlwaysUseWindowPadding);
    ImGui::PopStyleVar();
    const std::vector<PieceId> order = desk::bench_order(state.session.project());
    const ImVec2 room = ImGui::GetContentRegionAvail();
    const Cell cell = cell_for(order.size(), room.x / ui.scale, room.y / ui.scale);
    Thumbs thumbs(ui, state, cell);
    thumbs.use_one_scale();
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(kBetween), ui.px(kBetween)});
    const float right = ImGui::GetCursorScreenPos().x + room.x;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (i > 0 && ImGui::GetItemRectMax().x + ui.px(kBetween + cell.width) <= right)
            ImGui::SameLine();
        thumbs.show(order[i]);
    }
    ImGui::PopStyleVar();
    ImGui::EndChild();
    thumbs.take_pick();
}

}  // namespace wallwright::app

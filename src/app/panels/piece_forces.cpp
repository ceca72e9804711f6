#include "app/canvas_painter.h"
#include "app/panels/piece_parts.h"
#include "app/scoped.h"
#include "draw/forces.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr float kMargin = 8;     ///< px at a scale of 1 around the drawing, as is this.
constexpr float kHighest = 300;  ///< Of the drawing, so that a tall piece leaves room for words.
constexpr double kFirstScale = 0.1;  ///< mm on paper for a mm, before it is fitted.
constexpr int kFitRounds =
    5;  ///< A figure's room depends on the scale, and the fit on the figures.

/// As large as fits into so many mm on paper.
draw::WallDrawing fitted_drawing(const hanging::FreeBody& body, geometry::Size paper,
                                 units::LengthUnit unit) {
    draw::ForceOptions options{kFirstScale, unit, false};
    draw::WallDrawing drawing = draw::force_drawing(body, options);
    for (int round = 0; round < kFitRounds; ++round) {
        options.scale =
            std::min(paper.width / drawing.extent.width(), paper.height / drawing.extent.height());
        drawing = draw::force_drawing(body, options);
    }
    return drawing;
}

void show(Ui& ui, const hanging::FreeBody& body, units::LengthUnit unit) {
    const double px = kPixelsPerPaperMm * ui.scale;
    const float margin = ui.px(kMargin);
    const float width = ImGui::GetContentRegionAvail().x;
    const draw::WallDrawing drawing = fitted_drawing(
        body, {(width - 2 * margin) / px, (ui.px(kHighest) - 2 * margin) / px}, unit);
    const geometry::Rect<geometry::Wall>& extent = drawing.extent;
    const double inner = width - 2 * margin;
    const double scale =
        std::min(inner / extent.width(), (ui.px(kHighest) - 2 * margin) / extent.height());
    const auto height = static_cast<float>(extent.height() * scale) + 2 * margin;
    const ImVec2 at = ImGui::GetCursorScreenPos();
    ImGui::Dummy({width, height});
    ui.probe.note("piece/forces/drawing");
    const ImVec4 box{at.x, at.y, at.x + width, at.y + height};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.PushClipRect({box.x, box.y}, {box.z, box.w}, true);
    // On light paper in the dark theme too, as the wall is: what its figures stand on is light.
    list.AddRectFilled({box.x, box.y}, {box.z, box.w}, theme(false).desk, ui.px(4));
    desk::View view;
    view.fit(extent, {{box.x + margin, box.y + margin}, {box.z - margin, box.w - margin}});
    paint(list, drawing.shapes, {view.to_screen(), px, false, ui.fonts, ui.host}, box);
    list.PopClipRect();
}

/// Adds a part to the last line where it fits, or else on one of its own, set in a little.
void add_part(std::vector<std::string>& lines, const std::string& part, float width) {
    const bool fits = ImGui::CalcTextSize((lines.back() + part).c_str()).x <= width;
    if (fits || lines.back().empty())
        lines.back() += part;
    else
        lines.push_back("   " + part);
}

/// In lines no wider than so many px, broken after a comma and before an equals sign as one writes
/// it by hand; never inside a number, where the toolkit's own wrapping would break after the point.
std::vector<std::string> lines_of(const std::string& formula, float width) {
    constexpr std::string_view kEquals = " = ";
    constexpr std::string_view kComma = ", ";
    std::vector<std::string> lines{""};
    for (std::size_t from = 0; from < formula.size();) {
        const std::size_t equals = formula.find(kEquals, from + 1);
        const std::size_t comma = formula.find(kComma, from);
        const std::size_t to = std::min({equals, comma, formula.size()});
        add_part(lines, formula.substr(from, to - from), width);
        from = to;
        if (to != comma || comma == std::string::npos)
            continue;
        lines.back() += ',';
        lines.emplace_back();
        from += kComma.size();
    }
    return lines;
}

void formulas(Ui& ui, const hanging::FreeBody& body) {
    const float width = ImGui::GetContentRegionAvail().x;
    for (const hanging::Worked& worked : body.worked) {
        hint(ui, capital(worked.about));
        const ScopedWrap wrap;
        for (const std::string& line : lines_of(worked.formula, width))
            ImGui::TextUnformatted(line.c_str());
    }
    if (!body.worked.empty())
        ImGui::Dummy({0, ui.px(2)});
    for (const std::string& remark : body.remarks)
        hint(ui, remark);
}

}  // namespace

void forces_part(Ui& ui, State& state, const OnePiece& one) {
    const std::vector<hanging::Hanging>& hangings = state.session.assessment().hangings;
    const auto found = std::ranges::find(hangings, one.piece.id, &hanging::Hanging::piece);
    if (found == hangings.end() || found->fixings.empty())
        return hint(ui, "Nothing holds it yet, so there are no forces to show.");
    const hanging::FreeBody body = hanging::free_body(state.session.project(), *found);
    show(ui, body, one.unit);
    formulas(ui, body);
}

}  // namespace wallwright::app

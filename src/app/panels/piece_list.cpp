#include "app/panels/piece_list.h"

#include "app/row.h"
#include "draw/letters.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using wall::PieceState;

/// What a line of the list says.
struct Line {
    wall::PieceId id;
    std::string letter;
    std::string title;
    std::string size;
};

std::vector<Line> lines_of(const wall::Project& project, PieceState state) {
    std::vector<Line> lines;
    for (std::size_t i = 0; i < project.pieces.size(); ++i) {
        const wall::Piece& piece = project.pieces[i];
        if (piece.state != state)
            continue;
        const wall::Size size = wall::outside_size(project, piece);
        lines.push_back({piece.id, draw::letter(i), wall::title_of(piece),
                         fmt::format("{} × {}", units::format_number(size.width, project.unit),
                                     units::format_number(size.height, project.unit))});
    }
    return lines;
}

void select(desk::Session& session, const wall::PieceId& id) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.KeyShift || io.KeyCtrl)
        session.selection.toggle(id);
    else
        session.selection.set(id);
}

void draw(const Ui& ui, const Line& line) {
    const ImVec2 low = ImGui::GetItemRectMin();
    const ImVec2 high = ImGui::GetItemRectMax();
    const ImVec2 padding = ImGui::GetStyle().FramePadding;
    const float title_at = low.x + ui.px(34);
    const float size_at = high.x - padding.x - ImGui::CalcTextSize(line.size.c_str()).x;
    const float top = low.y + (high.y - low.y - ImGui::GetFontSize()) / 2;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddText({low.x + ui.px(4), top}, ui.theme().accent, line.letter.c_str());
    list.AddText({title_at, top}, ui.theme().text,
                 fitted(line.title, size_at - title_at - ui.px(6)).c_str());
    list.AddText({size_at, top}, ui.theme().quiet_text, line.size.c_str());
}

void list_line(Ui& ui, desk::Session& session, const Line& line) {
    const ScopedId id(line.id.text.c_str());
    const bool chosen = session.selection.has(line.id);
    if (ImGui::Selectable("##piece", chosen, 0, {0, ui.px(22)}))
        select(session, line.id);
    ui.probe.note(fmt::format("pieces/list/{}", line.letter));
    if (ImGui::IsItemVisible())
        draw(ui, line);
    tip(ui, line.title);
}

void state_list(Ui& ui, desk::Session& session, PieceState state, const char* words) {
    const std::vector<Line> lines = lines_of(session.project(), state);
    if (lines.empty())
        return;
    heading(ui, fmt::format("{} ({})", words, lines.size()).c_str());
    for (const Line& line : lines)
        list_line(ui, session, line);
}

}  // namespace

void piece_list(Ui& ui, desk::Session& session) {
    state_list(ui, session, PieceState::waiting, "Waiting on the floor");
    state_list(ui, session, PieceState::planned, "Planned");
    state_list(ui, session, PieceState::hung, "Hung already");
}

}  // namespace wallwright::app

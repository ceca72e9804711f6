#include "app/panels/hang_sections.h"
#include "app/panels/load_share.h"
#include "app/row.h"
#include "draw/letters.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using hanging::Hanging;

struct Line {
    wall::PieceId piece;
    std::string letter;
    std::string title;
    std::string holds;  ///< "4 × Large strip pair"
    Share share;
};

std::vector<Line> lines_of(const desk::Session& session) {
    std::vector<Line> lines;
    const wall::Project& project = session.project();
    for (const Hanging& hanging : session.assessment().hangings) {
        Line line{hanging.piece,
                  draw::letter_of(project, hanging.piece),
                  wall::title_of(project, hanging.piece),
                  "No fixing holds it: see what the wall says.",
                  {}};
        if (!hanging.fixings.empty()) {
            line.holds = fmt::format("{} × {}", hanging.fixings.size(), hanging.fixing_title);
            line.share = load_share(hanging);
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

void draw(const Ui& ui, const Line& line) {
    const ImVec2 low = ImGui::GetItemRectMin();
    const ImVec2 high = ImGui::GetItemRectMax();
    const ScopedFont small(ui.fonts.small);
    const std::string words = line.share.words.empty() ? "not held" : line.share.words;
    const float top = low.y + (high.y - low.y - ImGui::GetFontSize()) / 2;
    const float words_at = high.x - ui.px(4) - ImGui::CalcTextSize(words.c_str()).x;
    const float title_at = low.x + ui.px(30);
    const float bar_right = high.x - ui.px(112);
    const float bar_left = bar_right - ui.px(58);
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddText({low.x + ui.px(4), top}, ui.theme().accent, line.letter.c_str());
    list.AddText({title_at, top}, ui.theme().text,
                 fitted(line.title, bar_left - title_at - ui.px(6)).c_str());
    const bool is_bad = line.share.words.empty() || !line.share.is_good;
    list.AddText({words_at, top}, is_bad ? ui.theme().stop : ui.theme().quiet_text, words.c_str());
    const float middle = (low.y + high.y) / 2;
    if (!line.share.words.empty())
        share_bar(ui, {bar_left, middle - ui.px(3)}, {bar_right, middle + ui.px(3)}, line.share);
}

}  // namespace

void loads_part(Ui& ui, desk::Session& session) {
    const std::vector<Line> lines = lines_of(session);
    if (lines.empty() || !section(ui, "hang/loads", "Loads", true))
        return;
    hint(ui, "Of what the packet allows. The stroke is the limit that the margin leaves.");
    for (const Line& line : lines) {
        const ScopedId id(line.piece.text.c_str());
        if (ImGui::Selectable("##load", session.selection.has(line.piece), 0, {0, ui.px(22)}))
            session.selection.set(line.piece);
        ui.probe.note(fmt::format("hang/load/{}", line.letter));
        if (ImGui::IsItemVisible())
            draw(ui, line);
        tip(ui, fmt::format("{}\n{}\n{}", line.title, line.holds, line.share.words));
    }
}

}  // namespace wallwright::app

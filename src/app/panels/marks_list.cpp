#include "app/panels/marks_list.h"

#include "app/scoped.h"
#include "app/widgets.h"
#include "desk/mark_words.h"
#include "draw/letters.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using hanging::Mark;

/// A number at the right end of its cell.
void number_cell(const std::string& words, bool quiet, const Ui& ui) {
    ImGui::TableNextColumn();
    const float spare = ImGui::GetContentRegionAvail().x - ImGui::CalcTextSize(words.c_str()).x;
    ImGui::SetCursorPosX(ImGui::GetCursorPosX() + std::max(0.0F, spare));
    const ScopedColour ink(ImGuiCol_Text, quiet ? ui.theme().quiet_text : ui.theme().text);
    ImGui::TextUnformatted(words.c_str());
}

void stage_cell(Ui& ui, const Mark& mark) {
    ImGui::TableNextColumn();
    ImGui::TextUnformatted(mark.stage > 0 ? std::to_string(mark.stage).c_str() : "now");
    ui.probe.note(fmt::format("hang/mark/{}/stage", mark.number));
}

/// True when it was chosen.
bool mark_row(Ui& ui, const wall::Project& project, const Mark& mark, bool staged) {
    const ScopedId id(mark.number);
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    const bool chosen = ImGui::Selectable(std::to_string(mark.number).c_str(), false,
                                          ImGuiSelectableFlags_SpanAllColumns);
    tip(ui, desk::mark_words(project, mark));
    ImGui::TableNextColumn();
    ImGui::TextUnformatted(draw::letter_of(project, mark.piece).c_str());
    const std::string name = fmt::format("hang/mark/{}", mark.number);
    ui.probe.note(name);
    if (staged)
        stage_cell(ui, mark);
    number_cell(units::format_number(mark.across, project.unit), false, ui);
    ui.probe.note(name + "/across");
    number_cell(
        mark.kind == hanging::MarkKind::rail ? "rail" : units::format_number(mark.up, project.unit),
        false, ui);
    ui.probe.note(name + "/up");
    const double error = std::max(mark.across_error, mark.up_error);
    number_cell(units::format_tolerance(error, project.unit), true, ui);
    ui.probe.note(name + "/error");
    return chosen;
}

void head(Ui& ui, const wall::Project& project, bool staged) {
    const bool down = project.datum.height == wall::DatumHeight::ceiling;
    ImGui::TableNextRow();
    ImGui::TableNextColumn();
    const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
    ImGui::TextUnformatted("No.");
    ImGui::TableNextColumn();
    ImGui::TextUnformatted("Piece");
    if (staged) {
        ImGui::TableNextColumn();
        ImGui::TextUnformatted("Stage");
    }
    number_cell("Across", true, ui);
    number_cell(down ? "Down" : "Up", true, ui);
    number_cell("±", true, ui);
}

void table(Ui& ui, desk::Session& session) {
    const hanging::MarksTable& marks = session.assessment().marks;
    const wall::Project& project = session.project();
    const bool staged = hanging::has_stages(marks);
    const std::vector<float> shares = staged ? std::vector{0.7F, 0.9F, 0.9F, 1.3F, 1.3F, 0.9F}
                                             : std::vector{0.7F, 0.9F, 1.5F, 1.5F, 1.0F};
    // Under a name of its own: Dear ImGui keeps the columns of a table that it knows.
    if (!ImGui::BeginTable(staged ? "staged marks" : "marks", static_cast<int>(shares.size()),
                           ImGuiTableFlags_RowBg))
        return;
    for (const float share : shares)
        ImGui::TableSetupColumn("", ImGuiTableColumnFlags_WidthStretch, share);
    head(ui, project, staged);
    for (const Mark& mark : marks.marks)
        if (mark_row(ui, project, mark, staged)) {
            constexpr double kAround = 20;  // mm
            session.selection.set(mark.piece);
            session.pointed_out = geometry::Rect<geometry::Wall>{mark.at, mark.at}.grown(kAround);
        }
    ImGui::EndTable();
}

}  // namespace

void marks_list(Ui& ui, desk::Session& session) {
    if (!section(ui, "hang/marks", "Marks", true))
        return;
    if (session.assessment().marks.marks.empty()) {
        hint(ui, "No piece is planned that has a fixing, so there is nothing to mark.");
        return;
    }
    hint(ui, "In the order of hanging. ± is what tape and pencil leave open.");
    if (hanging::has_stages(session.assessment().marks))
        hint(ui, "Mark and hang one stage at a time.");
    {
        const ScopedFont small(ui.fonts.small);
        table(ui, session);
    }
    const hanging::MarksTable& marks = session.assessment().marks;
    const units::LengthUnit unit = session.project().unit;
    for (const std::string& words :
         {hanging::gaps_words(marks, unit), hanging::chain_words(marks.chain, unit)})
        if (!words.empty())
            hint(ui, words);
}

}  // namespace wallwright::app

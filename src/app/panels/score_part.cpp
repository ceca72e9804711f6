#include "app/panels/score_part.h"

#include "app/row.h"
#include "app/widgets.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

using desk::ScoreLine;

constexpr float kBar = 84;  ///< px at a scale of 1, as is this.
constexpr float kWeight = 54;
constexpr float kMostWeight = 10;
constexpr std::size_t kFew = 6;  ///< Measures that are shown until all are asked for.

std::string why_of(const ScoreLine& line) {
    const std::string value = line.applies ? fmt::format("{:.2f} of 1", line.value)
                                           : "nothing to judge on this wall, so it does not count";
    return fmt::format("{}: {}.\n{}\nSource: {}", line.measure->title, value, line.measure->formula,
                       line.measure->source);
}

/// Filled as far as the value goes, with a stroke there that can be seen without its colour.
void bar(const Ui& ui, double value) {
    const float width = ui.px(kBar);
    const float height = ui.px(7);
    const ImVec2 corner = ImGui::GetCursorScreenPos();
    const float y = corner.y + (ImGui::GetFrameHeight() - height) / 2;
    const float reach = corner.x + width * static_cast<float>(std::clamp(value, 0.0, 1.0));
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled({corner.x, y}, {corner.x + width, y + height}, ui.theme().line, height / 2);
    list.AddRectFilled({corner.x, y}, {std::max(reach, corner.x + height), y + height},
                       ui.theme().accent, height / 2);
    ImGui::Dummy({width, ImGui::GetFrameHeight()});
}

/// In the place of a bar.
void dash(const Ui& ui) {
    const ImVec2 corner = ImGui::GetCursorScreenPos();
    ImGui::GetWindowDrawList()->AddText({corner.x, corner.y + ImGui::GetStyle().FramePadding.y},
                                        ui.theme().quiet_text, "–");
    ImGui::Dummy({ui.px(kBar), ImGui::GetFrameHeight()});
}

/// The new weight while it is dragged or typed.
std::optional<double> weight_field(Ui& ui, const std::string& name, double weight) {
    auto now = static_cast<float>(weight);
    ImGui::SetNextItemWidth(ui.px(kWeight));
    const bool changed = ImGui::DragFloat("##weight", &now, 0.04F, 0, kMostWeight, "× %.1f",
                                          ImGuiSliderFlags_AlwaysClamp);
    ui.probe.note(name);
    tip(ui,
        "How much it counts, from 0 to 10. Drag to the side, or click to type. The layouts stand "
        "in "
        "the new order at once.");
    const double rounded = std::round(10 * static_cast<double>(now)) / 10;
    return changed && rounded != weight ? std::optional(rounded) : std::nullopt;
}

void title(Ui& ui, const ScoreLine& line, float width) {
    ImGui::AlignTextToFramePadding();
    const ScopedColour ink(
        ImGuiCol_Text, line.applies && line.weight > 0 ? ui.theme().text : ui.theme().quiet_text);
    ImGui::TextUnformatted(fitted(std::string(line.measure->title), width).c_str());
}

void measure_row(Ui& ui, State& state, const ScoreLine& line) {
    const std::string name = fmt::format("score/{}", line.measure->name);
    const ScopedId id(name.c_str());
    const float left = ImGui::GetCursorPosX();
    const float apart = ui.px(8);
    const float rest = ImGui::GetContentRegionAvail().x - ui.px(kBar) - ui.px(kWeight) - 2 * apart;
    std::optional<double> weight;
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {ui.px(8), 0});
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {ui.px(6), ui.px(2)});
    {
        const ScopedGroup group;
        title(ui, line, rest);
        ImGui::SameLine();
        ImGui::SetCursorPosX(left + rest + apart);
        if (line.applies)
            bar(ui, line.value);
        else
            dash(ui);
    }
    ui.probe.note(name);
    tip(ui, why_of(line));
    ImGui::SameLine(0, apart);
    weight = weight_field(ui, name + "/weight", line.weight);
    const bool let_go = ImGui::IsItemDeactivated();
    hint(ui, line.says);
    ImGui::PopStyleVar(2);
    ImGui::Dummy({0, 0});
    if (weight)
        state.layouts.set_weight(state.session, *line.measure, *weight);
    if (let_go)
        state.session.end_burst();
}

void all_or_few(Ui& ui) {
    bool& all = ui.memory.all_measures;
    if (button(ui, "score/all", all ? "The first measures alone" : "All measures",
               "The first are those that a tape can check. All of them count."))
        all = !all;
}

void usual_weights(Ui& ui, desk::Session& session) {
    if (session.kept().weights.empty())
        return;
    if (button(ui, "score/usual", "Usual weights", "Every measure counts as much as usual."))
        session.apply("Usual weights",
                      edits::change_project(
                          session.kept(), [](wall::Project& project) { project.weights.clear(); }));
}

}  // namespace

void score_part(Ui& ui, State& state) {
    desk::refresh(state.score, state.session);
    // A weight that is changed makes it another while it is shown.
    const desk::ScoreCard card = state.score;
    if (card.lines.empty())
        return;
    std::string words = fmt::format("Score: {:.0f} of 100", card.total);
    if (const auto shown = state.layouts.shown())
        words +=
            fmt::format(", {}", desk::title_of(state.layouts.layouts()[*shown].candidate.pattern));
    // Unfolded of itself while there are layouts to judge; else it would push the rest out of
    // sight.
    const bool judging = state.layouts.is_open();
    if (!section(ui, "score", (words + (judging ? "###judging" : "###score")).c_str(), judging))
        return;
    const std::size_t shown = ui.memory.all_measures ? card.lines.size() : kFew;
    for (std::size_t i = 0; i < std::min(shown, card.lines.size()); ++i)
        measure_row(ui, state, card.lines[i]);
    all_or_few(ui);
    usual_weights(ui, state.session);
}

}  // namespace wallwright::app

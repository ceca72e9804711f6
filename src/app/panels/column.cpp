#include "app/bench/mount_parts.h"
#include "app/hang/hang_parts.h"
#include "app/panels/panels.h"
#include "app/scoped.h"
#include "desk/bench/bench_pieces.h"

#include <algorithm>
#include <string>
#include <utility>

namespace wallwright::app {

namespace {

void bench_panel(Ui& ui, State& state) {
    switch (state.bench.view) {
        case desk::BenchView::mount:
            return mount_panel(ui, state);
        case desk::BenchView::prints:
            return prints_panel(ui, state);
        case desk::BenchView::card:
            return card_panel(ui, state);
    }
}

void step_panel(Ui& ui, State& state) {
    switch (state.step) {
        case desk::Step::room:
            return room_panel(ui, state);
        case desk::Step::pieces:
            return pieces_panel(ui, state);
        case desk::Step::mounts:
            return bench_panel(ui, state);
        case desk::Step::arrange:
            return arrange_panel(ui, state);
        case desk::Step::hang:
            return hang_panel(ui, state);
    }
}

void subject_panel(Ui& ui, State& state) {
    const desk::Selection& selection = state.session.selection;
    if (state.step == desk::Step::mounts)
        bench_panel(ui, state);
    else if (is_wall_hidden(state) && state.hang_view == desk::HangView::pages)
        pages_panel(ui, state);
    else if (is_wall_hidden(state))
        day_panel(ui, state);
    else if (selection.one_piece())
        piece_panel(ui, state);
    else if (selection.furniture() || selection.fixture())
        thing_panel(ui, state);
    else if (!selection.empty())
        several_panel(ui, state);
    else
        step_panel(ui, state);
}

/// The mount on the bench speaks for itself.
void says_panel(Ui& ui, State& state) {
    const bool is_mount =
        state.step == desk::Step::mounts && state.bench.view == desk::BenchView::mount;
    const auto it = is_mount ? mount_on_bench(state.session) : std::nullopt;
    if (it && it->design)
        mount_remarks(ui, state);
    else
        findings_panel(ui, state);
}

/// What the column is about, by a name of its own.
std::string subject_of(const State& state) {
    const desk::Selection& selection = state.session.selection;
    if (state.step == desk::Step::mounts) {
        const auto piece = desk::piece_on_bench(state.session);
        const bool is_of_one = state.bench.view == desk::BenchView::mount && piece;
        return is_of_one ? "mount/" + piece->text
                         : "bench/" + std::to_string(static_cast<int>(state.bench.view));
    }
    if (is_wall_hidden(state))
        return "hang/" + std::to_string(static_cast<int>(state.hang_view));
    if (const auto piece = selection.one_piece())
        return "piece/" + piece->text;
    if (const auto furniture = selection.furniture())
        return "furniture/" + furniture->text;
    if (const auto fixture = selection.fixture())
        return "fixture/" + fixture->text;
    return selection.empty() ? std::to_string(static_cast<int>(state.step)) : "several";
}

/// Another subject begins at its top.
void begin_at_top(Ui& ui, const State& state) {
    std::string now = subject_of(state);
    if (now != ui.memory.subject)
        ImGui::SetScrollY(0);
    ui.memory.subject = std::move(now);
}

/// The lower edge of the window pales: there is more below.
void fade_out(const Ui& ui) {
    const ImVec2 from = ImGui::GetWindowPos();
    const ImVec2 to{from.x + ImGui::GetWindowWidth(), from.y + ImGui::GetWindowHeight()};
    const ImU32 panel = ui.theme().panel;
    const ImU32 clear = panel & ~IM_COL32_A_MASK;
    ImGui::GetWindowDrawList()->AddRectFilledMultiColor(
        {from.x, to.y - ui.px(28)}, {to.x - ImGui::GetStyle().ScrollbarSize, to.y}, clear, clear,
        panel, panel);
}

/// Scrolls by itself, so that the findings stay in sight. As high as it was asked for, or as what
/// it holds; gives that, px.
float subject(Ui& ui, State& state, float height) {
    ImGui::BeginChild("subject", {0, height}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    begin_at_top(ui, state);
    ui.memory.focus_next_field = std::exchange(state.type_wanted, false);
    subject_panel(ui, state);
    ui.memory.focus_next_field = false;
    const float needed = ImGui::GetCursorPosY() + ImGui::GetStyle().WindowPadding.y;
    if (ImGui::GetScrollY() < ImGui::GetScrollMaxY())
        fade_out(ui);
    ImGui::EndChild();
    return needed;
}

/// What a part of the column needed in the last frame, px.
float& needed_by(const char* part, float before) {
    return *ImGui::GetStateStorage()->GetFloatRef(ImGui::GetID(part), before);
}

}  // namespace

void column(Ui& ui, State& state) {
    constexpr float kMostShare = 0.66F;
    const float all = ImGui::GetContentRegionAvail().y;
    float& findings = needed_by("findings", all * (1 - kMostShare));
    float& subject_height = needed_by("subject", all * kMostShare);
    const float most = std::max({all * kMostShare, all - findings, ui.px(40)});
    subject_height = subject(ui, state, std::clamp(subject_height, ui.px(40), most));
    ImGui::BeginChild("findings", {0, 0}, false,
                      ImGuiWindowFlags_AlwaysUseWindowPadding | keys_for_fields());
    says_panel(ui, state);
    findings = ImGui::GetCursorPosY() + ImGui::GetStyle().WindowPadding.y;
    ImGui::EndChild();
}

}  // namespace wallwright::app

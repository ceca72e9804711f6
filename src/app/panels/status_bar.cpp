#include "app/actions.h"
#include "app/panels/panels.h"
#include "app/row.h"
#include "app/widgets.h"
#include "desk/drag.h"
#include "desk/naming.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

constexpr float kEdge = 14;  ///< px at a scale of 1, as are these.
constexpr float kApart = 22;
constexpr float kWordsLeast = 240;  ///< Below it the counts give way to a notice.
constexpr float kShape = 13;

std::string facts(const State& state) {
    const wall::Project& project = state.session.project();
    return fmt::format("{}   gap {}", desk::counts_of(project),
                       units::format_length(project.style.gap, project.unit));
}

std::string place(const State& state) {
    if (!state.pointer_at)
        return "";
    const units::LengthUnit unit = state.session.project().unit;
    const double step = desk::hand_step(unit);
    const auto figure = [&](double mm) {
        return units::format_number(std::round(mm / step) * step, unit);
    };
    return fmt::format("x {}   y {} {}", figure(state.pointer_at->x), figure(state.pointer_at->y),
                       units::name_of(unit));
}

float width_of(const std::string& words) {
    return ImGui::CalcTextSize(words.c_str()).x;
}

void show_words(Ui& ui, const char* name, const std::string& words, float x, ImU32 colour) {
    ImGui::SetCursorPos({x, (ui.px(kStatusBarHeight) - ImGui::GetTextLineHeight()) / 2});
    ImGui::PushStyleColor(ImGuiCol_Text, colour);
    ImGui::TextUnformatted(words.c_str());
    ImGui::PopStyleColor();
    ui.probe.note(name);
}

/// A triangle with its point up, so that a problem is known without its colour.
void show_triangle(const Ui& ui, float x) {
    const ImVec2 window = ImGui::GetWindowPos();
    const float side = ui.px(kShape);
    const float top = window.y + (ui.px(kStatusBarHeight) - side) / 2;
    const float left = window.x + x;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddTriangleFilled({left + side / 2, top}, {left + side, top + side}, {left, top + side},
                           ui.theme().stop);
    const float middle = left + side / 2;
    list.AddLine({middle, top + side * 0.4F}, {middle, top + side * 0.7F}, ui.theme().panel,
                 ui.px(1.6F));
    list.AddCircleFilled({middle, top + side * 0.85F}, ui.px(1), ui.theme().panel);
}

/// True when the person puts the notice away.
bool show_cross(Ui& ui, float x) {
    const float side = ui.px(20);
    ImGui::SetCursorPos({x, (ui.px(kStatusBarHeight) - side) / 2});
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {0, 0});
    const bool pressed = ImGui::Button("x", {side, side});
    ImGui::PopStyleVar();
    ui.probe.note("status/put-away");
    tip(ui, "Put this away");
    return pressed;
}

std::string in_one_line(std::string text) {
    std::ranges::replace(text, '\n', ' ');
    return text;
}

/// From `left` to `right`, px.
void show_notice(Ui& ui, State& state, float left, float right) {
    const desk::Notice notice = *state.session.notice;
    float x = left;
    if (notice.is_problem) {
        show_triangle(ui, x);
        x += ui.px(kShape + 6);
    }
    const std::string words =
        in_one_line(notice.is_problem ? fmt::format("Problem: {}", notice.text) : notice.text);
    const std::string shown = fitted(words, right - ui.px(26) - x);
    show_words(ui, "status/notice", shown, x,
               notice.is_problem ? ui.theme().stop : ui.theme().text);
    if (shown != words)
        tip(ui, notice.text);
    if (show_cross(ui, x + width_of(shown) + ui.px(6)))
        state.session.notice.reset();
}

/// What the hand could do, or does.
const std::string& hand_words(const State& state) {
    return state.step == desk::Step::mounts ? state.mount_tool.showing().words
                                            : state.pointer.showing().words;
}

void show_middle(Ui& ui, State& state, float left, float right) {
    const std::string& words = hand_words(state);
    if (state.session.notice)
        show_notice(ui, state, left, right);
    else if (!words.empty())
        show_words(ui, "status/words", fitted(words, right - left), left, ui.theme().text);
}

void show(Ui& ui, State& state) {
    const float width = ImGui::GetWindowWidth();
    const float edge = ui.px(kEdge);
    const float apart = ui.px(kApart);
    const std::string where = place(state);
    // Room for four figures each, so that nothing jumps while the pointer moves.
    const float where_room = std::max(width_of("x 00000   y 00000 mm"), width_of(where));
    const float where_at = width - edge - where_room;
    const bool is_told = state.session.notice || !hand_words(state).empty();
    std::string known = facts(state);
    if (is_told && where_at - apart - edge - width_of(known) - apart < ui.px(kWordsLeast))
        known.clear();
    known = fitted(known, where_at - apart - edge);
    if (!known.empty())
        show_words(ui, "status/facts", known, edge, ui.theme().quiet_text);
    const float middle = known.empty() ? edge : edge + width_of(known) + apart;
    show_middle(ui, state, middle, where_at - apart);
    if (!where.empty())
        show_words(ui, "status/place", where, width - edge - width_of(where),
                   ui.theme().quiet_text);
    const ImVec2 at = ImGui::GetWindowPos();
    ImGui::GetWindowDrawList()->AddLine(at, {at.x + width, at.y}, ui.theme().line);
}

}  // namespace

void status_bar(Ui& ui, State& state) {
    forget_old_problem(state);
    ImGui::PushStyleColor(ImGuiCol_ChildBg, ui.theme().panel);
    ImGui::PushFont(ui.fonts.small);
    if (ImGui::BeginChild("status bar", {0, ui.px(kStatusBarHeight)}, false,
                          ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse))
        show(ui, state);
    ImGui::EndChild();
    ImGui::PopFont();
    ImGui::PopStyleColor();
}

}  // namespace wallwright::app

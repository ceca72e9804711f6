#include "app/widgets.h"

#include "app/row.h"

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr double kRestSeconds = 0.45;

bool is_same(ImVec2 a, ImVec2 b) {
    return a.x == b.x && a.y == b.y;
}

/// Whether the pointer has been on the item before for long enough.
bool has_rested(Memory& memory) {
    Rest& rest = memory.rest;
    const ImVec2 item = ImGui::GetItemRectMin();
    const int frame = ImGui::GetFrameCount();
    if (!is_same(rest.item, item) || rest.frame < frame - 1)
        rest = {item, ImGui::GetTime(), frame};
    rest.frame = frame;
    const double left = rest.since + kRestSeconds - ImGui::GetTime();
    if (left > 0)
        memory.wake(left);
    return left <= 0;
}

/// For the item before: the pointer rests on it, and there is something to say.
bool wants_tip(Ui& ui, const std::string& words) {
    return !words.empty() && ImGui::IsItemHovered(ImGuiHoveredFlags_AllowWhenDisabled) &&
           has_rested(ui.memory);
}

void show_tip(Ui& ui, const std::string& words) {
    ImGui::BeginTooltip();
    ImGui::PushTextWrapPos(ImGui::GetCursorPosX() + ui.px(300));
    ImGui::TextUnformatted(words.c_str());
    ImGui::PopTextWrapPos();
    ui.probe.note("tip");
    ImGui::EndTooltip();
}

void line_above(const Ui& ui) {
    ImGui::Dummy({0, ui.px(2)});
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float right = at.x + ImGui::GetContentRegionAvail().x;
    ImGui::GetWindowDrawList()->AddLine(at, {right, at.y}, ui.theme().line, ui.px(1));
    ImGui::Dummy({0, ui.px(2)});
}

}  // namespace

void panel_title(Ui& ui, const std::string& words, const std::string& under) {
    const ScopedWrap wrap;
    {
        const ScopedFont title(ui.fonts.title);
        ImGui::TextUnformatted(words.c_str());
    }
    if (!under.empty())
        hint(ui, under);
    ImGui::Dummy({0, ui.px(2)});
}

void heading(Ui& ui, const char* words) {
    line_above(ui);
    const ScopedFont bold(ui.fonts.bold);
    const ScopedWrap wrap;
    ImGui::TextUnformatted(words);
}

bool section(Ui& ui, const char* name, const char* words, bool open) {
    line_above(ui);
    const ScopedFont bold(ui.fonts.bold);
    const ScopedColour ground(ImGuiCol_Header, IM_COL32_BLACK_TRANS);
    const ScopedId id(name);
    // The header reaches 7 px beyond what it stands above; so much padding lines its arrow up.
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {ui.px(7), ui.px(3)});
    ImGui::PushStyleVar(ImGuiStyleVar_FrameBorderSize, 0);
    const bool is_open = ImGui::CollapsingHeader(words, open ? ImGuiTreeNodeFlags_DefaultOpen : 0);
    ImGui::PopStyleVar(2);
    ui.probe.note(name);
    return is_open;
}

void hint(Ui& ui, const std::string& words) {
    const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
    const ScopedFont small(ui.fonts.small);
    const ScopedWrap wrap;
    ImGui::TextUnformatted(words.c_str());
}

void tip(Ui& ui, const std::string& words) {
    if (wants_tip(ui, words))
        show_tip(ui, words);
}

void tip_below(Ui& ui, const std::string& words) {
    if (!wants_tip(ui, words))
        return;
    const ImVec2 low = ImGui::GetItemRectMin();
    const ImVec2 high = ImGui::GetItemRectMax();
    const float y = high.y + ui.px(8);
    // From the side that has more room, so that it stays in the window.
    if (low.x + high.x < ImGui::GetIO().DisplaySize.x)
        ImGui::SetNextWindowPos({low.x, y});
    else
        ImGui::SetNextWindowPos({high.x, y}, ImGuiCond_Always, {1, 0});
    show_tip(ui, words);
}

void value_row(Ui& ui, const char* label, const std::string& value, const std::string& why) {
    const Row row(ui, label, ImGui::CalcTextSize(value.c_str()).x, why, Row::Holds::words);
    const ScopedWrap wrap;
    ImGui::TextUnformatted(value.c_str());
}

void share_bar(const Ui& ui, ImVec2 low, ImVec2 high, const Share& share) {
    // A load far beyond its rating ends with the bar; the words say the number.
    const auto reach = [&](double part) {
        return low.x + (high.x - low.x) * static_cast<float>(std::clamp(part, 0.0, 1.0));
    };
    const float round = (high.y - low.y) / 2;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled(low, high, ui.theme().field, round);
    list.AddRectFilled(low, {reach(share.used), high.y},
                       share.is_good ? ui.theme().good : ui.theme().stop, round);
    list.AddRect(low, high, ui.theme().line, round);
    const float at = reach(share.limit);
    list.AddLine({at, low.y - ui.px(2)}, {at, high.y + ui.px(2)}, ui.theme().text, ui.px(1.5F));
}

void share_row(Ui& ui, const char* label, const Share& share, const std::string& why) {
    const ScopedGroup group;
    value_row(ui, label, share.words, why);
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = ui.px(6);
    share_bar(ui, low, {low.x + width, low.y + height}, share);
    ImGui::Dummy({width, height + ui.px(2)});
}

}  // namespace wallwright::app

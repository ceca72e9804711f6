#include "app/row.h"

#include "app/widgets.h"

#include <algorithm>
#include <cfloat>

namespace wallwright::app {

namespace {

float width_of(const std::string& words) {
    return ImGui::CalcTextSize(words.data(), words.data() + words.size()).x;
}

bool continues_letter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

}  // namespace

Row::Row(Ui& ui, const char* label, float width, const std::string& why, Holds holds)
    : ui_(ui), why_(why) {
    ImGui::BeginGroup();
    const float start = ImGui::GetCursorPosX();
    const float all = ImGui::GetContentRegionAvail().x;
    width_ = std::min(width, all);
    if (holds == Holds::field)
        ImGui::AlignTextToFramePadding();
    {
        const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
        ImGui::TextUnformatted(label);
    }
    if (ImGui::GetItemRectSize().x + ui.px(8) + width_ <= all)
        ImGui::SameLine();
    ImGui::SetCursorPosX(start + all - width_);
}

Row::~Row() {
    ImGui::EndGroup();
    tip(ui_, why_);
}

float field_width(const Ui& ui) {
    return ui.px(112);
}

float width_in(const ImFont* font, const std::string& words) {
    return font->CalcTextSizeA(font->FontSize, FLT_MAX, 0, words.c_str()).x;
}

std::string fitted(const std::string& words, float width) {
    constexpr const char* kEllipsis = "…";
    if (width_of(words) <= width)
        return words;
    std::string cut = words;
    while (!cut.empty() && width_of(cut + kEllipsis) > width) {
        while (cut.size() > 1 && continues_letter(cut.back()))
            cut.pop_back();
        cut.pop_back();
    }
    return cut + kEllipsis;
}

void draw_at_right(const std::string& words, ImU32 colour) {
    const ImVec2 low = ImGui::GetItemRectMin();
    const ImVec2 high = ImGui::GetItemRectMax();
    const ImVec2 padding = ImGui::GetStyle().FramePadding;
    const std::string shown = fitted(words, high.x - low.x - 2 * padding.x);
    ImGui::GetWindowDrawList()->AddText({high.x - padding.x - width_of(shown), low.y + padding.y},
                                        colour, shown.data(), shown.data() + shown.size());
}

}  // namespace wallwright::app

#include "app/row.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

std::optional<int> choose(Ui& ui, const char* name, int chosen,
                          std::span<const std::string> shown) {
    std::optional<int> picked;
    for (int i = 0; i < static_cast<int>(shown.size()); ++i) {
        const ScopedId id(i);
        const std::string& words = shown[static_cast<std::size_t>(i)];
        if (ImGui::Selectable(fmt::format("{}##choice", words).c_str(), i == chosen) && i != chosen)
            picked = i;
        ui.probe.note(fmt::format("{}/{}", name, i));
        if (i == chosen && ImGui::IsWindowAppearing())
            ImGui::SetItemDefaultFocus();
    }
    return picked;
}

}  // namespace

std::optional<int> choice_row(Ui& ui, const char* name, const char* label, int chosen,
                              std::span<const std::string> shown, const std::string& why) {
    const bool is_one = chosen >= 0 && chosen < static_cast<int>(shown.size());
    const std::string words = is_one ? shown[static_cast<std::size_t>(chosen)] : "";
    const float frame = ImGui::GetFrameHeight() + 2 * ImGui::GetStyle().FramePadding.x;
    const float needed = ImGui::CalcTextSize(words.c_str()).x + frame + ui.px(2);
    const Row row(ui, label, std::max(field_width(ui), needed), why);
    ImGui::SetNextItemWidth(row.width());
    if (!ImGui::BeginCombo(fmt::format("##{}", name).c_str(),
                           fitted(words, row.width() - frame).c_str())) {
        ui.probe.note(name);
        return std::nullopt;
    }
    const std::optional<int> picked = choose(ui, name, chosen, shown);
    ImGui::EndCombo();
    return picked;
}

std::optional<bool> switch_row(Ui& ui, const char* name, const char* label, bool on,
                               const std::string& why) {
    const Row row(ui, label, ImGui::GetFrameHeight(), why);
    bool now = on;
    ImGui::Checkbox(fmt::format("##{}", name).c_str(), &now);
    ui.probe.note(name);
    return now == on ? std::nullopt : std::optional(now);
}

std::optional<units::LengthUnit> unit_row(Ui& ui, const char* name, units::LengthUnit unit) {
    std::vector<std::string> words;
    for (const units::LengthUnit one : units::kLengthUnits)
        words.emplace_back(units::name_of(one));
    const auto chosen = choice_row(ui, name, "Lengths in", static_cast<int>(unit), words,
                                   "You can type lengths in any unit all the same.");
    if (!chosen)
        return std::nullopt;
    return units::kLengthUnits[static_cast<std::size_t>(*chosen)];
}

}  // namespace wallwright::app

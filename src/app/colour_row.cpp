#include "app/row.h"
#include "app/text_field.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace wallwright::app {

namespace {

using wall::Colour;

/// Stains, metals and whites of mouldings, card, walls and upholstery.
constexpr Colour kUsual[] = {
    {0x1E, 0x1C, 0x1A}, {0x3A, 0x33, 0x2B}, {0x5B, 0x42, 0x2E}, {0x8A, 0x62, 0x3C},
    {0xB0, 0x8D, 0x57}, {0xD9, 0xB9, 0x6C}, {0xA9, 0xAC, 0xAE}, {0xD8, 0xD4, 0xC6},
    {0xFA, 0xF7, 0xF0}, {0xFF, 0xFF, 0xFF}, {0xE3, 0xE6, 0xDF}, {0xA9, 0xB8, 0x9E},
    {0x56, 0x7A, 0x86}, {0x8B, 0x9B, 0xA6}, {0x7A, 0x3B, 0x33}, {0xC8, 0x8F, 0x5A}};

using Channels = std::array<float, 3>;

ImVec4 to_imgui(Colour colour) {
    return {static_cast<float>(colour.red) / 255, static_cast<float>(colour.green) / 255,
            static_cast<float>(colour.blue) / 255, 1};
}

std::uint8_t to_byte(float channel) {
    return static_cast<std::uint8_t>(std::lround(255 * channel));
}

std::optional<Colour> usual_colours(Ui& ui, const char* name) {
    constexpr int kInRow = 8;
    std::optional<Colour> picked;
    int i = 0;
    for (const Colour colour : kUsual) {
        const ScopedId id(i);
        if (i % kInRow != 0)
            ImGui::SameLine();
        if (ImGui::ColorButton("##usual", to_imgui(colour),
                               ImGuiColorEditFlags_NoTooltip | ImGuiColorEditFlags_NoDragDrop,
                               {ui.px(22), ui.px(22)}))
            picked = colour;
        ui.probe.note(fmt::format("{}/{}", name, i));
        ++i;
    }
    return picked;
}

/// One step for a whole drag: the colour under the hand stays in ImGui's storage until it lets go.
std::optional<Colour> mixed_colour(Colour colour) {
    ImGuiStorage& storage = *ImGui::GetStateStorage();
    const ImVec4 start = to_imgui(colour);
    const ImGuiID red = ImGui::GetID("red");
    const ImGuiID green = ImGui::GetID("green");
    const ImGuiID blue = ImGui::GetID("blue");
    const bool held = storage.GetBool(ImGui::GetID("held"));
    Channels now{held ? storage.GetFloat(red) : start.x, held ? storage.GetFloat(green) : start.y,
                 held ? storage.GetFloat(blue) : start.z};
    ImGui::ColorPicker3("##mix", now.data(),
                        ImGuiColorEditFlags_NoSidePreview | ImGuiColorEditFlags_NoInputs |
                            ImGuiColorEditFlags_NoDragDrop | ImGuiColorEditFlags_NoOptions);
    storage.SetBool(ImGui::GetID("held"), ImGui::IsItemActive());
    storage.SetFloat(red, now[0]);
    storage.SetFloat(green, now[1]);
    storage.SetFloat(blue, now[2]);
    const Colour picked{to_byte(now[0]), to_byte(now[1]), to_byte(now[2])};
    if (held && !ImGui::IsItemActive() && picked != colour)
        return picked;
    return std::nullopt;
}

std::optional<Colour> typed_colour(Ui& ui, const std::string& name, Colour colour) {
    return typed_row(ui, "Code", {name.c_str(), wall::to_text(colour), ""}, ui.px(96), "",
                     [](const std::string& text) -> Result<Colour> {
                         if (const auto read = wall::parse_colour(text))
                             return *read;
                         return fail({"", fmt::format("\"{}\" is no colour", text),
                                      "type it as \"#8b9ba6\"", ""});
                     });
}

}  // namespace

std::optional<Colour> colour_row(Ui& ui, const char* name, const char* label, Colour colour,
                                 const std::string& why) {
    std::optional<Colour> picked;
    const ScopedId id(name);
    {
        const Row row(ui, label, ui.px(48), why);
        if (ImGui::ColorButton("##colour", to_imgui(colour),
                               ImGuiColorEditFlags_NoTooltip | ImGuiColorEditFlags_NoDragDrop,
                               {row.width(), ImGui::GetFrameHeight()}))
            ImGui::OpenPopup("colours");
        ui.probe.note(name);
    }
    if (!ImGui::BeginPopup("colours"))
        return picked;
    ImGui::PushItemWidth(ui.px(200));
    picked = usual_colours(ui, name);
    if (const auto mixed = mixed_colour(colour))
        picked = mixed;
    if (const auto typed = typed_colour(ui, fmt::format("{}/code", name), colour))
        picked = typed;
    ImGui::PopItemWidth();
    ImGui::EndPopup();
    return picked == colour ? std::nullopt : picked;
}

}  // namespace wallwright::app

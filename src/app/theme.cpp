#include "app/theme.h"

#include "pages/theme.h"

#include <cmath>
#include <iterator>

namespace wallwright::app {

namespace {

constexpr ImU32 rgb(unsigned hex) {
    return IM_COL32((hex >> 16) & 0xFF, (hex >> 8) & 0xFF, hex & 0xFF, 0xFF);
}

constexpr Theme kLight{
    rgb(0xF6F3EC),  // desk
    rgb(0xFBFAF5),  // panel
    rgb(0xE2DDD0),  // line
    rgb(0x1F1E1C),  // text
    rgb(0x5B5953),  // quiet text
    rgb(0x116A70),  // accent
    rgb(0xFFFFFF),  // on accent
    rgb(0xFFFFFF),  // field
    rgb(0xA01E1A),  // stop
    rgb(0x8A5300),  // mind
    rgb(0x2C6B40),  // good
};

constexpr Theme kDark{
    rgb(0x1E1D1B),  // desk
    rgb(0x262522),  // panel
    rgb(0x3B3934),  // line
    rgb(0xECE8DF),  // text
    rgb(0xADA79A),  // quiet text
    rgb(0x4FB3B8),  // accent
    rgb(0x0E1F20),  // on accent
    rgb(0x31302C),  // field
    rgb(0xF08A80),  // stop
    rgb(0xE5B15A),  // mind
    rgb(0x84C79A),  // good
};

/// Lines and fills of the dark theme in the order of draw::Ink. Of a luminance of about 0.175: 4.5
/// to 1 on white, 3 to 1 on a wall's wash, on the desk and on the floor.
constexpr wall::Colour kDarkInks[] = {
    {0xFF, 0xFF, 0xFF},  // paper
    {0x75, 0x74, 0x6E},  // outline
    {0x75, 0x74, 0x6E},  // dimension
    {0x1F, 0x80, 0x87},  // accent
    {0x75, 0x74, 0x6E},  // hidden
    {0x75, 0x74, 0x6E},  // text
    {0x75, 0x74, 0x6E},  // quiet text
    {0xD3, 0x3C, 0x35},  // mark
    {0xD3, 0x3C, 0x35},  // stop
    {0xA3, 0x67, 0x08},  // mind
    {0x2E, 0x83, 0x50},  // good
    {0x2A, 0x27, 0x23},  // floor
    {0x00, 0x00, 0x00},  // shade
};

static_assert(std::size(kDarkInks) == static_cast<std::size_t>(draw::Ink::own));

ImU32 packed(wall::Colour colour, double alpha) {
    return IM_COL32(colour.red, colour.green, colour.blue,
                    static_cast<ImU32>(std::lround(255 * alpha)));
}

/// Letters on the dark desk and floor.
ImU32 light_letters(const draw::Paint& paint) {
    switch (paint.ink) {
        case draw::Ink::dimension:
        case draw::Ink::hidden:
        case draw::Ink::quiet_text:
            return kDark.quiet_text;
        case draw::Ink::accent:
            return kDark.accent;
        case draw::Ink::mark:
        case draw::Ink::stop:
            return kDark.stop;
        case draw::Ink::mind:
            return kDark.mind;
        case draw::Ink::good:
            return kDark.good;
        case draw::Ink::own:
            return packed(paint.colour, 1);
        default:
            return kDark.text;
    }
}

void set_sizes(ImGuiStyle& style) {
    style.WindowPadding = {16, 14};
    style.FramePadding = {10, 5};
    style.ItemSpacing = {8, 6};
    style.ItemInnerSpacing = {6, 4};
    style.CellPadding = {4, 3};
    style.IndentSpacing = 16;
    style.ScrollbarSize = 12;
    style.GrabMinSize = 12;
    style.WindowRounding = 0;
    style.ChildRounding = 0;
    style.PopupRounding = 6;
    style.FrameRounding = 4;
    style.ScrollbarRounding = 6;
    style.GrabRounding = 4;
    style.TabRounding = 4;
    style.WindowBorderSize = 0;
    style.ChildBorderSize = 0;
    style.PopupBorderSize = 1;
    style.FrameBorderSize = 1;
    style.WindowTitleAlign = {0, 0.5F};
    style.WindowMenuButtonPosition = ImGuiDir_None;
}

struct Slot {
    ImGuiCol which;
    ImU32 colour;
};

void set_grounds(ImGuiStyle& style, const Theme& theme) {
    const ImU32 accent_wash = with_alpha(theme.accent, 0.16);
    const ImU32 accent_strong = with_alpha(theme.accent, 0.28);
    const Slot slots[] = {
        {ImGuiCol_WindowBg, theme.panel},
        {ImGuiCol_ChildBg, with_alpha(theme.panel, 0)},
        {ImGuiCol_PopupBg, theme.panel},
        {ImGuiCol_MenuBarBg, theme.panel},
        {ImGuiCol_TitleBg, theme.panel},
        {ImGuiCol_TitleBgActive, theme.panel},
        {ImGuiCol_TitleBgCollapsed, theme.panel},
        {ImGuiCol_FrameBg, theme.field},
        {ImGuiCol_FrameBgHovered, theme.field},
        {ImGuiCol_FrameBgActive, theme.field},
        {ImGuiCol_Button, theme.field},
        {ImGuiCol_ButtonHovered, accent_wash},
        {ImGuiCol_ButtonActive, accent_strong},
        {ImGuiCol_Header, accent_wash},
        {ImGuiCol_HeaderHovered, accent_wash},
        {ImGuiCol_HeaderActive, accent_strong},
        {ImGuiCol_Tab, theme.panel},
        {ImGuiCol_TabHovered, accent_wash},
        {ImGuiCol_TabActive, accent_strong},
        {ImGuiCol_TableHeaderBg, theme.panel},
        {ImGuiCol_TableRowBg, with_alpha(theme.panel, 0)},
        {ImGuiCol_TableRowBgAlt, with_alpha(theme.line, 0.3)},
        {ImGuiCol_ScrollbarBg, with_alpha(theme.panel, 0)},
        {ImGuiCol_ScrollbarGrab, with_alpha(theme.quiet_text, 0.35)},
        {ImGuiCol_ScrollbarGrabHovered, with_alpha(theme.quiet_text, 0.55)},
        {ImGuiCol_ScrollbarGrabActive, with_alpha(theme.quiet_text, 0.75)},
        {ImGuiCol_ModalWindowDimBg, with_alpha(rgb(0x000000), 0.35)},
    };
    for (const Slot& slot : slots)
        style.Colors[slot.which] = ImGui::ColorConvertU32ToFloat4(slot.colour);
}

void set_inks(ImGuiStyle& style, const Theme& theme) {
    const Slot slots[] = {
        {ImGuiCol_Text, theme.text},
        {ImGuiCol_TextDisabled, theme.quiet_text},
        {ImGuiCol_TextSelectedBg, with_alpha(theme.accent, 0.3)},
        {ImGuiCol_Border, theme.line},
        {ImGuiCol_BorderShadow, with_alpha(theme.line, 0)},
        {ImGuiCol_Separator, theme.line},
        {ImGuiCol_SeparatorHovered, theme.accent},
        {ImGuiCol_SeparatorActive, theme.accent},
        {ImGuiCol_TableBorderStrong, theme.line},
        {ImGuiCol_TableBorderLight, theme.line},
        {ImGuiCol_CheckMark, theme.accent},
        {ImGuiCol_SliderGrab, theme.accent},
        {ImGuiCol_SliderGrabActive, theme.accent},
        {ImGuiCol_ResizeGrip, with_alpha(theme.line, 0)},
        {ImGuiCol_ResizeGripHovered, theme.accent},
        {ImGuiCol_ResizeGripActive, theme.accent},
        {ImGuiCol_NavHighlight, theme.accent},
        {ImGuiCol_DragDropTarget, theme.accent},
    };
    for (const Slot& slot : slots)
        style.Colors[slot.which] = ImGui::ColorConvertU32ToFloat4(slot.colour);
}

}  // namespace

const Theme& theme(bool dark) {
    return dark ? kDark : kLight;
}

ImU32 with_alpha(ImU32 colour, double alpha) {
    const auto wanted = static_cast<ImU32>(std::lround(255 * alpha));
    return (colour & ~IM_COL32_A_MASK) | (wanted << IM_COL32_A_SHIFT);
}

ImU32 colour_of(const draw::Paint& paint, bool dark) {
    const bool is_own = paint.ink == draw::Ink::own;
    return packed(
        dark && !is_own ? kDarkInks[static_cast<std::size_t>(paint.ink)] : pages::colour_of(paint),
        paint.alpha);
}

ImU32 letters_on(Ground ground, const draw::Paint& paint) {
    return ground == Ground::light ? packed(pages::colour_of(paint), paint.alpha)
                                   : with_alpha(light_letters(paint), paint.alpha);
}

void apply_theme(const Theme& theme, float scale) {
    ImGuiStyle style;
    set_sizes(style);
    set_grounds(style, theme);
    set_inks(style, theme);
    style.ScaleAllSizes(scale);
    ImGui::GetStyle() = style;
}

}  // namespace wallwright::app

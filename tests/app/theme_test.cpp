#include "app/theme.h"

#include "draw/tint.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using app::Ground;
using draw::Ink;

namespace {

wall::Colour colour(ImU32 packed) {
    return {static_cast<std::uint8_t>(packed >> IM_COL32_R_SHIFT),
            static_cast<std::uint8_t>(packed >> IM_COL32_G_SHIFT),
            static_cast<std::uint8_t>(packed >> IM_COL32_B_SHIFT)};
}

double contrast(ImU32 one, ImU32 other) {
    return draw::contrast(colour(one), colour(other));
}
double contrast(ImU32 one, wall::Colour other) {
    return draw::contrast(colour(one), other);
}

constexpr Ink kLetters[] = {Ink::dimension, Ink::accent, Ink::hidden, Ink::text, Ink::quiet_text,
                            Ink::mark,      Ink::stop,   Ink::mind,   Ink::good};
constexpr Ink kLines[] = {Ink::outline, Ink::dimension, Ink::accent, Ink::hidden,
                          Ink::mark,    Ink::stop,      Ink::mind,   Ink::good};

/// Of walls that a person may paint.
constexpr wall::Colour kWalls[] = {{0xFF, 0xFF, 0xFF}, {0xE3, 0xE6, 0xDF}, {0x10, 0x20, 0x60},
                                   {0x90, 0x20, 0x20}, {0x00, 0x00, 0x00}, {0xE0, 0xC0, 0x20}};

constexpr double kWords = 4.5;  // WCAG 2.1, 1.4.3
constexpr double kShapes = 3;   // WCAG 2.1, 1.4.11

}  // namespace

TEST_CASE("Words in the panels can be read in the light and in the dark") {
    const bool dark = GENERATE(false, true);
    const app::Theme& theme = app::theme(dark);
    for (const ImU32 ground : {theme.panel, theme.field, theme.desk})
        for (const ImU32 ink :
             {theme.text, theme.quiet_text, theme.accent, theme.stop, theme.mind, theme.good})
            CHECK(contrast(ink, ground) >= kWords);
    CHECK(contrast(theme.on_accent, theme.accent) >= kWords);
}

TEST_CASE("Words on the canvas can be read on the desk, the floor, the wall and paper") {
    const bool dark = GENERATE(false, true);
    const ImU32 floor = app::colour_of({Ink::floor}, dark);
    const ImU32 paper = app::colour_of({Ink::paper}, dark);
    const Ground desk = dark ? Ground::dark : Ground::light;
    for (const Ink ink : kLetters) {
        CHECK(contrast(app::letters_on(desk, {ink}), app::theme(dark).desk) >= kWords);
        CHECK(contrast(app::letters_on(desk, {ink}), floor) >= kWords);
        CHECK(contrast(app::letters_on(Ground::light, {ink}), paper) >= kWords);
        for (const wall::Colour painted : kWalls)
            CHECK(contrast(app::letters_on(Ground::light, {ink}), draw::wash(painted)) >= kWords);
    }
}

TEST_CASE("Letters in a filled ring and in an open one can be read") {
    const bool dark = GENERATE(false, true);
    CHECK(contrast(app::letters_on(Ground::light, {Ink::paper}),
                   app::colour_of({Ink::accent}, dark)) >= kWords);
    CHECK(contrast(app::letters_on(Ground::light, {Ink::accent}),
                   app::colour_of({Ink::paper}, dark)) >= kWords);
}

TEST_CASE("Lines on the canvas can be seen on the desk, the floor, the wall and paper") {
    const bool dark = GENERATE(false, true);
    for (const Ink ink : kLines) {
        const ImU32 line = app::colour_of({ink}, dark);
        CHECK(contrast(line, app::theme(dark).desk) >= kShapes);
        CHECK(contrast(line, app::colour_of({Ink::floor}, dark)) >= kShapes);
        CHECK(contrast(line, app::colour_of({Ink::paper}, dark)) >= kShapes);
        for (const wall::Colour painted : kWalls)
            CHECK(contrast(line, draw::wash(painted)) >= kShapes);
    }
}

TEST_CASE("What brings its own colour keeps it in the dark, with its transparency") {
    const draw::Paint paint = draw::own({0x12, 0x34, 0x56}, 0.5);
    CHECK(app::colour_of(paint, true) == IM_COL32(0x12, 0x34, 0x56, 128));
    CHECK(app::colour_of(paint, true) == app::colour_of(paint, false));
}

TEST_CASE("Sizes of the style grow with the text") {
    ImGuiContext* context = ImGui::CreateContext();
    app::apply_theme(app::theme(false), 1);
    const float usual = ImGui::GetStyle().FramePadding.x;
    app::apply_theme(app::theme(false), 2);
    app::apply_theme(app::theme(true), 2);
    CHECK(ImGui::GetStyle().FramePadding.x == 2 * usual);
    ImGui::DestroyContext(context);
}

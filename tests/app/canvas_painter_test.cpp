#include "app/canvas_painter.h"

#include "draw/paths.h"
#include "draw/tint.h"
#include "headless.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace wallwright;
using namespace wallwright::app;
using geometry::Wall;

namespace {

using Shapes = std::vector<draw::Shape<Wall>>;
using Rect = geometry::Rect<Wall>;

const ImVec4 kClip{0, 0, 800, 600};
const draw::Paint kRed = draw::own({200, 0, 0});

/// A picture of 200 by 100 px for "wide.png", none for other names.
class Pictures : public Host {
  public:
    std::optional<Texture> texture(const std::filesystem::path& file) override {
        if (file != "wide.png")
            return std::nullopt;
        return Texture{reinterpret_cast<ImTextureID>(7), 200, 100};
    }
    void set_title(const std::string&) override {}
};

/// A sheet with one pixel a mm: the wall's (0, 600) is the window's upper left corner.
struct Sheet {
    Headless app;
    Pictures pictures;
    CanvasStyle style;
    ImDrawList list{ImGui::GetDrawListSharedData()};

    explicit Sheet(bool dark = false) {
        app.frame();
        style.to_screen = {{0, 600}, 1};
        style.dark = dark;
        style.fonts = app.ui.fonts;
        style.host = &pictures;
    }

    void paint(const Shapes& shapes) {
        list._ResetForNewFrame();
        list.Flags = ImDrawListFlags_AntiAliasedLines | ImDrawListFlags_AntiAliasedFill |
                     ImDrawListFlags_AllowVtxOffset;
        list.PushClipRect({-10000, -10000}, {10000, 10000});
        list.PushTextureID(reinterpret_cast<ImTextureID>(1));
        app::paint(list, shapes, style, kClip);
    }

    [[nodiscard]] int vertices() const { return list.VtxBuffer.Size; }
    [[nodiscard]] ImVec4 bounds() const {
        ImVec4 all{1e9F, 1e9F, -1e9F, -1e9F};
        for (const ImDrawVert& vertex : list.VtxBuffer)
            all = {std::min(all.x, vertex.pos.x), std::min(all.y, vertex.pos.y),
                   std::max(all.z, vertex.pos.x), std::max(all.w, vertex.pos.y)};
        return all;
    }
};

draw::Text<Wall> text_at(geometry::Point<Wall> at, std::string words) {
    draw::Text<Wall> text{at, std::move(words)};
    text.size = 2.5;
    return text;
}

}  // namespace

TEST_CASE("A box is two triangles where the wall says, upside down") {
    Sheet sheet;
    sheet.paint({draw::box(Rect{{100, 50}, {300, 150}}, {kRed, std::nullopt})});
    CHECK(sheet.vertices() == 4);
    CHECK(sheet.bounds().x == 100);
    CHECK(sheet.bounds().y == 450);
    CHECK(sheet.bounds().z == 300);
    CHECK(sheet.bounds().w == 550);
}

TEST_CASE("What lies outside the canvas paints nothing") {
    Sheet sheet;
    const Rect away{{5000, 100}, {5200, 300}};
    draw::Hatch<Wall> hatch{{{away.min, {away.max.x, away.min.y}, away.max}}, kRed};
    sheet.paint({draw::box(away, {kRed, draw::Stroke{kRed}}),
                 draw::circle(away.min, 50, {kRed, {}}), text_at(away.min, "far"), hatch,
                 draw::Image<Wall>{away, "wide.png", kRed}, draw::Shadow<Wall>{away, 20},
                 draw::line<Wall>(away.min, away.max, {kRed, 0.5, draw::LineType::dashed})});
    CHECK(sheet.vertices() == 0);
}

TEST_CASE("No corner of a drawing that is much larger than the canvas lies far outside") {
    Sheet sheet;
    sheet.style.to_screen.scale = 50;
    const Rect large{{-5000, -5000}, {5000, 5000}};
    draw::Hatch<Wall> hatch{{{large.min, {large.max.x, large.min.y}, large.max}}, kRed};
    const Shapes shapes = {
        draw::box(large, {kRed, draw::Stroke{kRed}}),
        draw::circle<Wall>({0, 0}, 3000, {kRed, draw::Stroke{kRed, 0.5, draw::LineType::dotted}}),
        draw::polygon<Wall>({{-5000, -5000}, {5000, -5000}, {0, 4}, {-5000, 5000}}, {kRed, {}}),
        hatch,
        draw::Image<Wall>{large, "missing.png", kRed},
        draw::line<Wall>({-9000, -8000}, {9000, 8001}, {kRed, 0.5, draw::LineType::dashed})};
    for (const draw::Shape<Wall>& shape : shapes) {
        sheet.paint({shape});
        CHECK(sheet.vertices() > 0);
        CHECK(sheet.vertices() < 3000);
        CHECK(sheet.bounds().x >= kClip.x - 64);
        CHECK(sheet.bounds().y >= kClip.y - 64);
        CHECK(sheet.bounds().z <= kClip.z + 64);
        CHECK(sheet.bounds().w <= kClip.w + 64);
    }
}

TEST_CASE("A polygon with a notch is filled but for the notch") {
    Sheet sheet;
    sheet.paint({draw::polygon<Wall>({{100, 100}, {400, 100}, {400, 400}, {250, 150}, {100, 400}},
                                     {kRed, std::nullopt})});
    double area = 0;
    for (int i = 0; i < sheet.list.IdxBuffer.Size; i += 3) {
        const auto at = [&](int k) { return sheet.list.VtxBuffer[sheet.list.IdxBuffer[i + k]]; };
        const ImVec2 a = at(0).pos;
        const ImVec2 b = at(1).pos;
        const ImVec2 c = at(2).pos;
        const bool is_full = ((at(0).col & at(1).col & at(2).col) >> IM_COL32_A_SHIFT) == 255;
        if (is_full)
            area += std::abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2;
    }
    CHECK(area == Approx(300 * 300 - 300 * 250 / 2.0).epsilon(0.02));
}

TEST_CASE("Dashes take more corners than an unbroken line, and leave gaps") {
    Sheet sheet;
    const auto line = [](draw::LineType type) {
        return draw::line<Wall>({100, 100}, {500, 100}, {kRed, 0.5, type});
    };
    sheet.paint({line(draw::LineType::continuous)});
    const int unbroken = sheet.vertices();
    sheet.paint({line(draw::LineType::dashed)});
    const int dashed = sheet.vertices();
    // 400 px of dashes and gaps of 15 widths of 2 px in all
    CHECK(dashed == unbroken * static_cast<int>(std::ceil(400.0 / 30)));
}

TEST_CASE("Capitals have the height that the text asks for") {
    Sheet sheet;
    sheet.style.pixels_per_paper_mm = 10;
    sheet.paint({text_at({100, 300}, "H")});
    REQUIRE(sheet.vertices() == 4);
    CHECK(sheet.bounds().w - sheet.bounds().y == Approx(25).margin(1.5));
    CHECK(sheet.bounds().w == Approx(300).margin(1.5));
}

TEST_CASE("A text stands to the side of its point that its alignment says") {
    Sheet sheet;
    draw::Text<Wall> text = text_at({400, 300}, "HHHH");
    sheet.paint({text});
    CHECK(sheet.bounds().x >= 399);
    text.align = draw::Align::right;
    sheet.paint({text});
    CHECK(sheet.bounds().z <= 401);
    text.align = draw::Align::centre;
    sheet.paint({text});
    CHECK((sheet.bounds().x + sheet.bounds().z) / 2 == Approx(400).margin(1.5));
}

TEST_CASE("A turned text reads upward, left of its point") {
    Sheet sheet;
    draw::Text<Wall> text = text_at({400, 300}, "HHHH");
    text.upward = true;
    sheet.paint({text});
    CHECK(sheet.bounds().z <= 401);
    CHECK(sheet.bounds().w <= 301);
    CHECK(sheet.bounds().w - sheet.bounds().y > sheet.bounds().z - sheet.bounds().x);
}

TEST_CASE("Letters too small to read are left out, and so is their plate") {
    Sheet sheet;
    draw::Text<Wall> text = text_at({400, 300}, "HHHH");
    text.plate = draw::Paint{draw::Ink::paper};
    sheet.style.pixels_per_paper_mm = 1;
    sheet.paint({text});
    CHECK(sheet.vertices() == 0);
}

TEST_CASE("A plate lies under its letters and around them") {
    Sheet sheet;
    draw::Text<Wall> text = text_at({400, 300}, "HH");
    sheet.paint({text});
    const ImVec4 letters = sheet.bounds();
    text.plate = draw::own({1, 2, 3});
    sheet.paint({text});
    CHECK(sheet.vertices() == 12);
    CHECK(sheet.list.VtxBuffer[0].col == IM_COL32(1, 2, 3, 255));
    CHECK(sheet.bounds().x < letters.x);
    CHECK(sheet.bounds().y < letters.y);
    CHECK(sheet.bounds().z > letters.z);
}

TEST_CASE("In the dark, letters on the desk are light and letters on the wall are dark") {
    Sheet sheet(true);
    const Shapes shapes = {
        draw::box(Rect{{300, 200}, {700, 500}}, {draw::own({220, 220, 215}), {}}),
        text_at({400, 300}, "H"), text_at({50, 50}, "H")};
    sheet.paint(shapes);
    REQUIRE(sheet.vertices() == 12);
    const ImU32 on_wall = sheet.list.VtxBuffer[4].col;
    const ImU32 on_desk = sheet.list.VtxBuffer[8].col;
    CHECK(on_wall == letters_on(Ground::light, {draw::Ink::text}));
    CHECK(on_desk == letters_on(Ground::dark, {draw::Ink::text}));
}

TEST_CASE("A picture covers its place, cut off evenly where it is too wide") {
    Sheet sheet;
    sheet.paint({draw::Image<Wall>{{{100, 100}, {200, 200}}, "wide.png", kRed}});
    REQUIRE(sheet.vertices() == 4);
    CHECK(sheet.list.VtxBuffer[0].uv.x == Approx(0.25));
    CHECK(sheet.list.VtxBuffer[2].uv.x == Approx(0.75));
    CHECK(sheet.list.VtxBuffer[0].uv.y == Approx(0).margin(1e-6));
    CHECK(sheet.list.VtxBuffer[2].uv.y == Approx(1));
}

TEST_CASE("A picture that cannot be read is painted as what stands in for it") {
    Sheet sheet;
    sheet.paint({draw::Image<Wall>{{{100, 100}, {200, 200}}, "missing.png", kRed}});
    REQUIRE(sheet.vertices() == 4);
    CHECK(sheet.list.VtxBuffer[0].col == IM_COL32(200, 0, 0, 255));
}

TEST_CASE("A shadow falls to the lower right and fades to nothing") {
    Sheet sheet;
    sheet.paint({draw::Shadow<Wall>{{{100, 100}, {300, 300}}, 40}});
    const ImVec4 bounds = sheet.bounds();
    CHECK(bounds.z - 300 > 100 - bounds.x);
    CHECK(bounds.w - 500 > 300 - bounds.y);
    for (const ImDrawVert& vertex : sheet.list.VtxBuffer)
        if (vertex.pos.x == bounds.z)
            CHECK((vertex.col >> IM_COL32_A_SHIFT) == 0);
}

#include "draw/drawing.h"

#include "draw/looking.h"
#include "draw/paths.h"
#include "support/gallery.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;

namespace {

const geometry::Transform<Wall, Page> kToPage{{10, 200}, 0.05};

/// Stroke widths, sizes of text and spacings of hatches, in order: what a page must not change.
template <class Space>
std::vector<double> paper_sizes(const Drawing<Space>& drawing) {
    std::vector<double> sizes;
    for (const Shape<Space>& shape : drawing.shapes) {
        if (const auto* path = std::get_if<Path<Space>>(&shape))
            sizes.push_back(path->stroke ? path->stroke->width : 0);
        if (const auto* text = std::get_if<Text<Space>>(&shape))
            sizes.push_back(text->size);
        if (const auto* hatch = std::get_if<Hatch<Space>>(&shape))
            sizes.push_back(hatch->spacing);
    }
    return sizes;
}

WallDrawing one_of_each() {
    WallDrawing drawing{{{0, 0}, {100, 50}}, {}};
    drawing.shapes.emplace_back(
        Pen<Wall>({0, 0})
            .line({10, 0})
            .curve({12, 0}, {14, 2}, {14, 4})
            .closed(
                {Paint{Ink::floor}, Stroke{{Ink::dimension, {}, 0.5}, 0.18, LineType::dashed}}));
    drawing.shapes.emplace_back(
        Hatch<Wall>{{{{0, 0}, {5, 0}, {5, 5}}, {{6, 6}, {7, 6}, {7, 7}}}, Paint{Ink::hidden}, 1.8});
    drawing.shapes.emplace_back(Text<Wall>{
        {3, 4}, "a \"b\"", 1.8, Paint{Ink::mark}, Align::right, true, true, Paint{Ink::paper}});
    drawing.shapes.emplace_back(
        Image<Wall>{{{1, 2}, {3, 4}}, "kelp.png", Paint{Ink::own, {1, 2, 3}}});
    drawing.shapes.emplace_back(Shadow<Wall>{{{1, 2}, {3, 4}}, 20});
    return drawing;
}

}  // namespace

TEST_CASE("A drawing as text has a line a shape with inks by name") {
    CHECK(to_text(one_of_each()) ==
          "extent 0.00 0.00 to 100.00 50.00\n"
          "path M 0.00 0.00 L 10.00 0.00 C 12.00 0.00 14.00 2.00 14.00 4.00 Z fill floor stroke "
          "dimension@0.50 0.18 dashed\n"
          "hatch area 0.00 0.00 5.00 0.00 5.00 5.00 area 6.00 6.00 7.00 6.00 7.00 7.00 every 1.80 "
          "hidden\n"
          "text 3.00 4.00 right 1.80 mark bold upward on paper \"a \"b\"\"\n"
          "image 1.00 2.00 to 3.00 4.00 \"kelp.png\" else #010203\n"
          "shadow 1.00 2.00 to 3.00 4.00 deep 20.00\n");
}

TEST_CASE("A coordinate that rounds to nothing has no minus") {
    WallDrawing drawing{{{-0.001, 0}, {1, 1}}, {}};
    CHECK(to_text(drawing) == "extent 0.00 0.00 to 1.00 1.00\n");
}

TEST_CASE("On a page every shape is where the transform puts it, turned over since y goes down") {
    const PageDrawing page = placed_on_page(one_of_each(), kToPage);
    CHECK(page.extent == Rect<Page>{{10, 197.5}, {15, 200}});
    const auto& path = std::get<Path<Page>>(page.shapes[0]);
    CHECK(path.steps[0].to == Point<Page>{10.5, 200});
    CHECK(path.steps[1].controls->second.y == Approx(199.9));
    CHECK(path.closed);
    const auto& hatch = std::get<Hatch<Page>>(page.shapes[1]);
    REQUIRE(hatch.areas.size() == 2);
    CHECK(hatch.areas[1][2].x == Approx(10.35));
    const auto& text = std::get<Text<Page>>(page.shapes[2]);
    CHECK(text.at.x == Approx(10.15));
    CHECK(text.plate == Paint{Ink::paper});
    CHECK(std::get<Image<Page>>(page.shapes[3]).place.height() == Approx(0.1));
    CHECK(std::get<Shadow<Page>>(page.shapes[4]).depth == Approx(1));
}

TEST_CASE("A page keeps the sizes that are paper sizes already") {
    const WallDrawing drawing = test::drawn(scenes::attic_gallery());
    const PageDrawing page = placed_on_page(drawing, kToPage);
    REQUIRE(page.shapes.size() == drawing.shapes.size());
    CHECK(paper_sizes(page) == paper_sizes(drawing));
}

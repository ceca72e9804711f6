#include "draw/furnishings.h"

#include "draw/furnishings/silhouettes.h"

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Colour;

struct Silhouette {
    void (*draw)(Shapes&, const Rect<Wall>&, Colour);
    Colour usual;
};

/// In the order of wall::FurnitureType.
constexpr Silhouette kFurniture[] = {
    {silhouettes::sofa, {0x8A, 0x9A, 0xA3}},      {silhouettes::bed, {0xB9, 0x9B, 0x79}},
    {silhouettes::cot, {0xD9, 0xC9, 0xAE}},       {silhouettes::sideboard, {0xB0, 0x8A, 0x62}},
    {silhouettes::table, {0xB0, 0x8A, 0x62}},     {silhouettes::lamp, {0xE6, 0xCF, 0x9A}},
    {silhouettes::plant, {0x6F, 0x8F, 0x69}},     {silhouettes::bookcase, {0xC2, 0xA5, 0x80}},
    {silhouettes::plain_box, {0xC9, 0xC2, 0xB6}},
};

/// In the order of wall::FixtureType.
constexpr Silhouette kFixtures[] = {
    {silhouettes::door, {0xF3, 0xF0, 0xE8}},         {silhouettes::window, {0xF5, 0xF4, 0xF0}},
    {silhouettes::radiator, {0xF4, 0xF3, 0xEF}},     {silhouettes::socket, {0xFD, 0xFC, 0xFA}},
    {silhouettes::light_switch, {0xFD, 0xFC, 0xFA}}, {silhouettes::basin, {0xFB, 0xFB, 0xF8}},
    {silhouettes::plain_box, {0xEE, 0xEB, 0xE4}},
};

static_assert(std::size(kFurniture) == std::size(wall::Names<wall::FurnitureType>::values));
static_assert(std::size(kFixtures) == std::size(wall::Names<wall::FixtureType>::values));

/// A plain box says what it is; the others show it.
void add_name(Shapes& shapes, const Rect<Wall>& place, const std::string& title) {
    if (title.empty())
        return;
    Text<Wall> text{place.centre(), title};
    text.size = 1.8;
    text.align = Align::centre;
    shapes.emplace_back(text);
}

}  // namespace

void add_furniture(Shapes& shapes, const wall::Furniture& furniture) {
    const Silhouette& silhouette = kFurniture[static_cast<std::size_t>(furniture.type)];
    silhouette.draw(shapes, furniture.place, furniture.colour.value_or(silhouette.usual));
    if (furniture.type == wall::FurnitureType::other)
        add_name(shapes, furniture.place, furniture.title);
}

void add_fixture(Shapes& shapes, const wall::Fixture& fixture) {
    if (fixture.other_side)
        return;
    const Silhouette& silhouette = kFixtures[static_cast<std::size_t>(fixture.type)];
    silhouette.draw(shapes, fixture.place, silhouette.usual);
    if (fixture.type == wall::FixtureType::other)
        add_name(shapes, fixture.place, fixture.title);
}

}  // namespace wallwright::draw

// The wall, what it is hung with and what marks are measured from, of a random project.
#include "random_parts.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::store {

using namespace wall;

Rect<Wall> random_place() {
    return Rect<Wall>::at({number(-500, 9000), number(0, 3000)},
                          {number(1, 2500), number(1, 2500)});
}

namespace {

/// A wall with a ceiling that may slope.
Polygon outline() {
    const double width = number(1000, 9000);
    return {{{0, 0},
             {width, 0},
             {width, number(1000, 4000)},
             {std::round(width * 25) / 100, number(1000, 4000)},
             {0, number(1000, 4000)}}};
}

Studs studs() {
    return {number(-200, 700), number(100, 700), number(20, 99), unknown()};
}

/// What nails and screws meet, and what is true of the wall.
void add_conditions(Room& room) {
    room.painted_on = maybe<Date>(random_date);
    room.core = any_of<Core>();
    room.studs = maybe<Studs>(studs);
    room.thickness = maybe<double>([] { return number(50, 400); });
    room.built = maybe<int>([] { return *rc::gen::inRange(1000, 3000); });
    room.rail = maybe<double>([] { return number(1500, 2600); });
    room.no_holes = coin();
    room.in_sun = coin();
    room.shakes = coin();
}

}  // namespace

Room random_room() {
    Room room;
    room.outline = outline();
    room.surface = any_of<Surface>();
    room.use = any_of<RoomUse>();
    room.cable_practice = any_of<CablePractice>();
    room.colour = colour();
    room.skirting_height = number(0, 200);
    room.furniture = some(3, [](int i) {
        return Furniture{{fmt::format("thing-{}", i)},
                         any_of<FurnitureType>(),
                         text(),
                         random_place(),
                         maybe<Colour>(colour),
                         unknown()};
    });
    room.fixtures = some(3, [](int i) {
        return Fixture{{fmt::format("part-{}", i)},
                       any_of<FixtureType>(),
                       text(),
                       random_place(),
                       coin(),
                       unknown()};
    });
    add_conditions(room);
    room.unknown = unknown();
    return room;
}

Catalogue random_catalogue() {
    Catalogue own;
    own.materials = some(2, [](int i) {
        return Material{{fmt::format("material-{}", i)},
                        text(),
                        number(100, 500),
                        number(500, 900),
                        text(),
                        some(3, [](int) { return any_of<MaterialUse>(); }),
                        unknown()};
    });
    own.fixings = some(2, [](int i) {
        FixingType type;
        type.id = {fmt::format("fixing-{}", i)};
        type.title = text();
        type.kind = any_of<FixingKind>();
        type.rated = Kilograms{number(1, 9, 1000)};
        type.footprint = {number(5, 40), number(5, 99)};
        type.source = text();
        type.breaking = coin();
        type.cores = some(2, [](int) { return any_of<Core>(); });
        type.in_stud = coin();
        type.closed = coin();
        type.nails = maybe<Nails>([] {
            return Nails{*rc::gen::inRange(1, 11), number(1, 3), number(10, 60), unknown()};
        });
        type.pack = *rc::gen::inRange(1, 20);
        type.price = usual_or(type.price, 0, 99);
        type.unknown = unknown();
        return type;
    });
    own.sizes = some(2, [](int i) {
        return NamedSize{
            fmt::format("size-{}", i), {number(50, 500), number(500, 900)}, text(), unknown()};
    });
    own.unknown = unknown();
    return own;
}

Stock random_stock(int i) {
    return {{i == 0 ? "strip_large" : "hook_1"},
            *rc::gen::inRange(0, 99),
            maybe<int>([] { return *rc::gen::inRange(1, 100); }),
            maybe<double>([] { return number(0, 20); }),
            unknown()};
}

Date random_date() {
    return later(std::chrono::year{2000} / 1 / 1, *rc::gen::inRange(0, 20000));
}

Datum random_datum(const std::vector<Piece>& pieces) {
    const auto heights = [] { return EndHeights{number(0, 1500), number(0, 1500)}; };
    Datum datum{any_of<DatumHeight>(), any_of<DatumSide>(), number(0, 3000)};
    if (!pieces.empty() && coin())
        datum.piece = pieces.front().id;
    if (datum.height == DatumHeight::piece && !datum.piece)
        datum.height = DatumHeight::floor;
    datum.floor = maybe<EndHeights>(heights);
    datum.ceiling = maybe<EndHeights>(heights);
    datum.unknown = unknown();
    return datum;
}

}  // namespace wallwright::store

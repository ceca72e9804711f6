#include "store/json_fields.h"

namespace wallwright::store {

namespace {

template <class Io, class AFurniture>
void furniture_fields(Io& io, AFurniture& furniture) {
    io.must("id", furniture.id);
    io.may("type", furniture.type);
    io.may("title", furniture.title);
    io.rect(furniture.place);
    io.may("colour", furniture.colour);
    io.unknown(furniture.unknown);
}

template <class Io, class SomeStuds>
void studs_fields(Io& io, SomeStuds& studs) {
    const wall::Studs usual;
    io.may("first_mm", studs.first);
    io.may("spacing_mm", studs.spacing);
    io.usually("width_mm", studs.width, usual.width);
    io.unknown(studs.unknown);
}

template <class Io, class AFixture>
void fixture_fields(Io& io, AFixture& fixture) {
    io.must("id", fixture.id);
    io.may("type", fixture.type);
    io.may("title", fixture.title);
    io.rect(fixture.place);
    io.may("other_side", fixture.other_side);
    io.unknown(fixture.unknown);
}

template <class Io, class ARoom>
void room_fields(Io& io, ARoom& room) {
    io.must("outline_mm", room.outline);
    const wall::Room usual;
    io.may("surface", room.surface);
    io.may("painted_on", room.painted_on);
    io.usually("core", room.core, usual.core);
    io.object("studs", room.studs);
    io.may("thickness_mm", room.thickness);
    io.may("built", room.built);
    io.may("use", room.use);
    io.may("cable_practice", room.cable_practice);
    io.may("colour", room.colour);
    io.may("skirting_height_mm", room.skirting_height);
    io.may("rail_mm", room.rail);
    io.may("no_holes", room.no_holes);
    io.may("in_sun", room.in_sun);
    io.may("shakes", room.shakes);
    io.list("furniture", room.furniture);
    io.list("fixtures", room.fixtures);
    io.unknown(room.unknown);
}

}  // namespace

void fields(ObjectReader& io, wall::Furniture& furniture) {
    furniture_fields(io, furniture);
}
void fields(ObjectWriter& io, const wall::Furniture& furniture) {
    furniture_fields(io, furniture);
}

void fields(ObjectReader& io, wall::Studs& studs) {
    studs_fields(io, studs);
}
void fields(ObjectWriter& io, const wall::Studs& studs) {
    studs_fields(io, studs);
}

void fields(ObjectReader& io, wall::Fixture& fixture) {
    fixture_fields(io, fixture);
}
void fields(ObjectWriter& io, const wall::Fixture& fixture) {
    fixture_fields(io, fixture);
}

void fields(ObjectReader& io, wall::Room& room) {
    room_fields(io, room);
}
void fields(ObjectWriter& io, const wall::Room& room) {
    room_fields(io, room);
}

}  // namespace wallwright::store

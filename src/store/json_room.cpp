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

template <class Io, class AFixture>
void fixture_fields(Io& io, AFixture& fixture) {
    io.must("id", fixture.id);
    io.may("type", fixture.type);
    io.may("title", fixture.title);
    io.rect(fixture.place);
    io.unknown(fixture.unknown);
}

template <class Io, class ARoom>
void room_fields(Io& io, ARoom& room) {
    io.must("outline_mm", room.outline);
    io.may("surface", room.surface);
    io.may("use", room.use);
    io.may("cable_practice", room.cable_practice);
    io.may("colour", room.colour);
    io.may("skirting_height_mm", room.skirting_height);
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

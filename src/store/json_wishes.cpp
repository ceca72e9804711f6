// What the person wishes of the arrangement. A target is one of several kinds of place, known by
// its keys.
#include "store/json_fields.h"

#include <algorithm>
#include <utility>

namespace wallwright::store {

namespace {

using wall::FixtureId;
using wall::FurnitureId;

void thing(ObjectReader& io, std::optional<wall::ThingId>& into) {
    std::optional<FurnitureId> furniture;
    std::optional<FixtureId> fixture;
    io.may("furniture", furniture);
    io.may("fixture", fixture);
    if (furniture && fixture)
        io.refuse("names both furniture and a fixture", "leave one of them out");
    if (furniture)
        into = *furniture;
    else if (fixture)
        into = *fixture;
}

/// Writes a place or a thing by the keys of its kind.
struct PlaceWriter {
    ObjectWriter& io;

    void operator()(const FurnitureId& id) const { io.must("furniture", id); }
    void operator()(const FixtureId& id) const { io.must("fixture", id); }
    void operator()(const wall::Point<wall::Wall>& point) const { io.point(point); }
    void operator()(wall::WallCorner corner) const { io.must("corner", corner); }
    void operator()(const wall::Rect<wall::Wall>& region) const { io.rect(region); }
};

void thing(ObjectWriter& io, const std::optional<wall::ThingId>& value) {
    if (value)
        std::visit(PlaceWriter{io}, *value);
}

/// The value of a key that has to be there.
template <class T>
T read_key(ObjectReader& io, std::string_view key) {
    T value{};
    io.must(key, value);
    return value;
}

struct TargetKind {
    std::vector<std::string_view> keys;  ///< One of them tells the kind.
    wall::Target (*read)(ObjectReader& io);
};

const std::vector<TargetKind>& target_kinds() {
    static const std::vector<TargetKind> kKinds = {
        {{"furniture"},
         [](ObjectReader& io) -> wall::Target { return read_key<FurnitureId>(io, "furniture"); }},
        {{"fixture"},
         [](ObjectReader& io) -> wall::Target { return read_key<FixtureId>(io, "fixture"); }},
        {{"corner"},
         [](ObjectReader& io) -> wall::Target { return read_key<wall::WallCorner>(io, "corner"); }},
        {{"x_mm", "y_mm"},
         [](ObjectReader& io) -> wall::Target {
             std::optional<wall::Point<wall::Wall>> point;
             io.point(point);
             return point.value_or(wall::Point<wall::Wall>{});
         }},
        {{"left_mm", "bottom_mm", "width_mm", "height_mm"},
         [](ObjectReader& io) -> wall::Target {
             wall::Rect<wall::Wall> region;
             io.rect(region);
             return region;
         }},
    };
    return kKinds;
}

template <class Io, class AWish>
void wish_fields(Io& io, AWish& wish) {
    io.must("wish", wish.kind);
    io.must("first", wish.first);
    io.may("second", wish.second);
    thing(io, wish.thing);
    io.unknown(wish.unknown);
}

template <class Io, class AWeight>
void weight_fields(Io& io, AWeight& weight) {
    io.must("measure", weight.measure);
    io.must("weight", weight.weight);
    io.unknown(weight.unknown);
}

}  // namespace

void fields(ObjectReader& io, TargetInFile& target) {
    const TargetKind* found = nullptr;
    for (const TargetKind& kind : target_kinds()) {
        const auto is_there = [&io](std::string_view key) { return io.has(key); };
        if (std::ranges::none_of(kind.keys, is_there))
            continue;
        if (found != nullptr)
            return io.refuse("names more than one place", "keep one of them");
        found = &kind;
    }
    if (found == nullptr)
        return io.refuse("does not say where",
                         "give furniture, fixture, corner, x_mm and y_mm, or left_mm, bottom_mm, "
                         "width_mm and height_mm");
    target.target = found->read(io);
    io.unknown(target.unknown);
}
void fields(ObjectWriter& io, const TargetInFile& target) {
    if (target.target)
        std::visit(PlaceWriter{io}, *target.target);
    io.unknown(target.unknown);
}

void fields(ObjectReader& io, wall::Wish& wish) {
    wish_fields(io, wish);
}
void fields(ObjectWriter& io, const wall::Wish& wish) {
    wish_fields(io, wish);
}

void fields(ObjectReader& io, wall::MeasureWeight& weight) {
    weight_fields(io, weight);
}
void fields(ObjectWriter& io, const wall::MeasureWeight& weight) {
    weight_fields(io, weight);
}

}  // namespace wallwright::store

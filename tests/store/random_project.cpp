#include "random_project.h"

#include "store/json_project.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace wallwright::store {

namespace {

using namespace wall;

/// low to high in steps of 1 / steps, both in whole units.
double number(int low, int high, int steps = 100) {
    return *rc::gen::inRange(low * steps, high * steps + 1) / static_cast<double>(steps);
}

bool coin() {
    return *rc::gen::arbitrary<bool>();
}

std::string text() {
    return *rc::gen::element<std::string>("", "Kelp", "Küste bei Ebbe", "引き潮",
                                          "a \"quoted\" one", "back\\slash",
                                          "two\nlines\tand a tab", "🌊");
}

Colour colour() {
    const auto byte = [] { return *rc::gen::arbitrary<std::uint8_t>(); };
    return {byte(), byte(), byte()};
}

template <class Enum>
Enum any_of() {
    return static_cast<Enum>(*rc::gen::inRange<std::size_t>(0, std::size(Names<Enum>::values)));
}

template <class T, class Make>
std::optional<T> maybe(Make make) {
    return coin() ? std::optional<T>(make()) : std::nullopt;
}

UnknownKeys unknown() {
    if (!coin())
        return {};
    return {{text() + "later", *rc::gen::element<std::string>("1", "2.5", "\"words\"",
                                                              "[1,[2],{\"deep\":null}]", "{}")},
            {"note", "true"}};
}

/// 0 to `most` of what `make(i)` gives.
template <class Make>
auto some(int most, Make make) {
    std::vector<decltype(make(0))> all;
    const int count = *rc::gen::inRange(0, most + 1);
    for (int i = 0; i < count; ++i)
        all.push_back(make(i));
    return all;
}

Rect<Wall> place() {
    return Rect<Wall>::at({number(-500, 9000), number(0, 3000)},
                          {number(1, 2500), number(1, 2500)});
}

/// A wall with a ceiling that may slope.
Polygon outline() {
    const double width = number(1000, 9000);
    return {{{0, 0},
             {width, 0},
             {width, number(1000, 4000)},
             {std::round(width * 25) / 100, number(1000, 4000)},
             {0, number(1000, 4000)}}};
}

Room room() {
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
                         place(),
                         maybe<Colour>(colour),
                         unknown()};
    });
    room.fixtures = some(3, [](int i) {
        return Fixture{
            {fmt::format("part-{}", i)}, any_of<FixtureType>(), text(), place(), unknown()};
    });
    room.unknown = unknown();
    return room;
}

HangingStyle style() {
    HangingStyle style;
    for (const StyleField& field : style_fields())
        style.*field.value =
            number(static_cast<int>(std::ceil(field.least)), static_cast<int>(field.most));
    style.unknown = unknown();
    return style;
}

Layer layer() {
    return {{*rc::gen::element<std::string>("glass", "mdf_thin", "mount_board")},
            number(0, 6),
            unknown()};
}

Frame frame(int i) {
    Frame frame;
    frame.id = {fmt::format("frame-{}", i)};
    frame.title = text();
    frame.outside = {number(100, 1200), number(100, 1200)};
    frame.depth = number(5, 60);
    frame.moulding_width = number(10, 45);
    frame.rebate_width = number(0, 10);
    frame.rebate_depth = number(0, 20);
    frame.back_board = maybe<Size>([] { return Size{number(50, 100), number(50, 100)}; });
    frame.moulding = {*rc::gen::element<std::string>("pine", "oak", "aluminium")};
    frame.glazing = layer();
    frame.backing = layer();
    frame.colour = colour();
    frame.unknown = unknown();
    return frame;
}

Print print(int i) {
    Print print;
    print.id = {fmt::format("print-{}", i)};
    print.title = text();
    print.size = {number(50, 1000), number(50, 1000)};
    print.grams_per_square_metre = number(0, 400);
    print.colour = colour();
    print.picture = text();
    const auto pixels = [] { return *rc::gen::inRange(1, 1'000'001); };
    print.pixels = maybe<PixelSize>([&pixels] { return PixelSize{pixels(), pixels()}; });
    print.unknown = unknown();
    return print;
}

FromCorner from_corner() {
    return {number(0, 900), number(0, 900)};
}

/// Windows for some of the prints, placed where the order asks for it.
std::vector<Opening> openings(const std::vector<Print>& prints, WindowOrder order) {
    std::vector<Opening> all;
    for (const Print& print : prints)
        if (coin())
            all.push_back({print.id,
                           order == WindowOrder::by_hand ? std::optional(from_corner())
                                                         : maybe<FromCorner>(from_corner),
                           unknown()});
    return all;
}

/// A number that is usual as often as not, so that leaving it out is tried.
double usual_or(double usual, int low, int high) {
    return coin() ? usual : number(low, high);
}

Mount mount(const std::vector<Print>& prints, int i) {
    Mount mount;
    mount.id = {fmt::format("mount-{}", i)};
    mount.title = text();
    mount.overlap = number(0, 10);
    mount.overlap_most = usual_or(mount.overlap_most, 0, 40);
    mount.base_extra = number(0, 30);
    mount.base_ratio = maybe<double>([] { return number(1, 3, 1000); });
    mount.by_hand = maybe<FromCorner>(from_corner);
    mount.border_least = usual_or(mount.border_least, 0, 80);
    mount.card = layer();
    mount.colour = colour();
    mount.under = some(4, [](int) {
        return UnderLayer{number(1, 100), layer(), colour(), unknown()};
    });
    mount.edge = any_of<WindowEdge>();
    mount.floats = coin();
    mount.order = any_of<WindowOrder>();
    mount.openings = openings(prints, mount.order);
    mount.bar = usual_or(mount.bar, 0, 90);
    mount.unknown = unknown();
    return mount;
}

CardSheet card_sheet(int i) {
    CardSheet sheet;
    sheet.id = {fmt::format("sheet-{}", i)};
    sheet.title = text();
    sheet.size = {number(100, 1700), number(100, 1700)};
    sheet.card = layer();
    sheet.colour = colour();
    sheet.count = *rc::gen::inRange(0, 1000);
    sheet.to_buy = coin();
    sheet.price = usual_or(sheet.price, 0, 99);
    sheet.offcut = !sheet.to_buy && coin();
    sheet.grain = any_of<Grain>();
    sheet.margin = usual_or(sheet.margin, 0, 49);
    sheet.unknown = unknown();
    return sheet;
}

/// Of the top layer of some pieces' mounts; a piece without a mount may have any of five.
std::vector<KeptBlank> kept_blanks(const Project& project) {
    std::vector<KeptBlank> all;
    for (const Piece& piece : project.pieces)
        if (!project.card.empty() && coin())
            all.push_back({piece.id, piece.mount ? 1 : *rc::gen::inRange(1, 6),
                           project.card.back().id, *rc::gen::inRange(1, 4), number(0, 900),
                           number(0, 900), coin(), unknown()});
    return all;
}

Hanger hanger() {
    const auto length = [] { return number(1, 500); };
    return {any_of<HangerType>(),  maybe<double>(length), maybe<double>(length),
            maybe<double>(length), maybe<double>(length), unknown()};
}

/// One of the ids in `all`, if there are any.
template <class IdType, class T>
std::optional<IdType> one_of(const std::vector<T>& all) {
    if (all.empty() || !coin())
        return std::nullopt;
    return all[*rc::gen::inRange<std::size_t>(0, all.size())].id;
}

Piece piece(const Project& project, int i) {
    Piece piece;
    piece.id = {fmt::format("piece-{}", i)};
    piece.title = text();
    piece.frame = project.frames[*rc::gen::inRange<std::size_t>(0, project.frames.size())].id;
    piece.mount = one_of<MountId>(project.mounts);
    piece.print = one_of<PrintId>(project.prints);
    piece.keeps_print = coin();
    piece.mount_cut = coin();
    piece.turned = coin();
    piece.state = any_of<PieceState>();
    piece.pinned = coin();
    if (piece.state != PieceState::waiting)
        piece.at = Point<Wall>{number(-500, 9000), number(0, 3000)};
    piece.wished = piece.state != PieceState::hung && coin();
    if (piece.state == PieceState::planned && coin())
        piece.stage = *rc::gen::inRange(1, 1000);
    piece.hanger = hanger();
    piece.fixing = maybe<FixingTypeId>([] { return FixingTypeId{"strip_large"}; });
    piece.weighed = maybe<Kilograms>([] { return Kilograms{number(1, 20, 1000)}; });
    piece.unknown = unknown();
    return piece;
}

/// Furniture or a fixture, if there is any.
std::optional<ThingId> thing(const Room& room) {
    std::vector<ThingId> all;
    for (const Furniture& one : room.furniture)
        all.emplace_back(one.id);
    for (const Fixture& one : room.fixtures)
        all.emplace_back(one.id);
    return all.empty() ? std::nullopt : std::optional<ThingId>(*rc::gen::elementOf(all));
}

/// Nothing where the wall has not what the wish would be about.
std::optional<Wish> wish(const Project& project) {
    Wish wish;
    wish.kind = any_of<WishKind>();
    std::vector<PieceId> others;
    for (const Piece& piece : project.pieces)
        others.push_back(piece.id);
    if (others.empty())
        return std::nullopt;
    const auto first = *rc::gen::inRange<std::size_t>(0, others.size());
    wish.first = others[first];
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(first));
    if (is_about_two(wish.kind) && others.empty())
        return std::nullopt;
    if (is_about_two(wish.kind))
        wish.second = *rc::gen::elementOf(others);
    if (wish.kind == WishKind::not_over)
        wish.thing = thing(project.room);
    if (wish.kind == WishKind::not_over && !wish.thing)
        return std::nullopt;
    wish.unknown = unknown();
    return wish;
}

std::vector<Wish> wishes(const Project& project) {
    std::vector<Wish> all;
    for (const std::optional<Wish>& next : some(4, [&project](int) { return wish(project); }))
        if (next && std::none_of(all.begin(), all.end(),
                                 [&next](const Wish& one) { return is_same_wish(one, *next); }))
            all.push_back(*next);
    return all;
}

std::optional<Target> target(const Room& room) {
    switch (*rc::gen::inRange(0, 5)) {
        case 0:
            return std::nullopt;
        case 1:
            return Point<Wall>{number(-500, 9000), number(0, 3000)};
        case 2:
            return any_of<WallCorner>();
        case 3:
            return place();
        default:
            if (const auto one = thing(room))
                return std::visit([](const auto& id) { return Target(id); }, *one);
            return std::nullopt;
    }
}

Catalogue own() {
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
        return FixingType{{fmt::format("fixing-{}", i)},
                          text(),
                          any_of<FixingKind>(),
                          Kilograms{number(1, 9, 1000)},
                          {number(5, 40), number(5, 99)},
                          text(),
                          unknown()};
    });
    own.sizes = some(2, [](int i) {
        return NamedSize{
            fmt::format("size-{}", i), {number(50, 500), number(500, 900)}, text(), unknown()};
    });
    own.unknown = unknown();
    return own;
}

Project project() {
    Project project;
    project.title = text();
    project.unit =
        *rc::gen::element(units::LengthUnit::mm, units::LengthUnit::cm, units::LengthUnit::inch);
    project.room = room();
    project.style = style();
    project.frames = some(3, frame);
    project.prints = some(3, print);
    project.mounts = some(2, [&project](int i) { return mount(project.prints, i); });
    if (!project.frames.empty())
        project.pieces = some(4, [&project](int i) { return piece(project, i); });
    project.stock = some(2, [](int i) {
        return Stock{{i == 0 ? "strip_large" : "hook_1"}, *rc::gen::inRange(0, 99), unknown()};
    });
    project.card = some(3, card_sheet);
    project.kept_blanks = kept_blanks(project);
    project.mount_cut_price = maybe<double>([] { return number(0, 99); });
    project.wishes = wishes(project);
    project.target = target(project.room);
    if (project.target)
        project.target_unknown = unknown();
    project.weights = some(2, [](int i) {
        return MeasureWeight{fmt::format("measure-{}", i), number(0, 10, 1000), unknown()};
    });
    project.own = own();
    project.datum = {any_of<DatumHeight>(), any_of<DatumSide>(), number(0, 3000), unknown()};
    project.tape = any_of<TapeClass>();
    project.unknown = unknown();
    return project;
}

}  // namespace

rc::Gen<wall::Project> any_project() {
    return rc::gen::exec(project);
}

}  // namespace wallwright::store

namespace wallwright::wall {

void showValue(const Project& project, std::ostream& out) {
    out << store::write_project(project);
}

}  // namespace wallwright::wall

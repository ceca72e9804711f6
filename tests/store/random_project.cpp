#include "random_project.h"

#include "random_parts.h"
#include "store/json_project.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace wallwright::store {

namespace {

using namespace wall;

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
    frame.rough_back = coin();
    frame.price = usual_or(frame.price, 0, 99);
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
    piece.irreplaceable = coin();
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
            return random_place();
        default:
            if (const auto one = thing(room))
                return std::visit([](const auto& id) { return Target(id); }, *one);
            return std::nullopt;
    }
}

Project project() {
    Project project;
    project.title = text();
    project.unit =
        *rc::gen::element(units::LengthUnit::mm, units::LengthUnit::cm, units::LengthUnit::inch);
    project.room = random_room();
    project.style = style();
    project.frames = some(3, frame);
    project.prints = some(3, print);
    project.mounts = some(2, [&project](int i) { return mount(project.prints, i); });
    if (!project.frames.empty())
        project.pieces = some(4, [&project](int i) { return piece(project, i); });
    project.stock = some(2, random_stock);
    project.card = some(3, card_sheet);
    project.kept_blanks = kept_blanks(project);
    project.mount_cut_price = maybe<double>([] { return number(0, 99); });
    project.tape_price = maybe<double>([] { return number(0, 9); });
    project.cord_price = maybe<double>([] { return number(0, 9); });
    project.hangs_on = maybe<Date>(random_date);
    project.wishes = wishes(project);
    project.target = target(project.room);
    if (project.target)
        project.target_unknown = unknown();
    project.weights = some(2, [](int i) {
        return MeasureWeight{fmt::format("measure-{}", i), number(0, 10, 1000), unknown()};
    });
    project.own = random_catalogue();
    project.datum = random_datum(project.pieces);
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

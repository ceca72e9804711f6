#include "wall/validity.h"

#include "wall/fault_list.h"

#include <fmt/format.h>

#include <cmath>
#include <set>
#include <string_view>

namespace wallwright::wall {

namespace {

constexpr int kLastStage = 999;  // more than any wall has pieces to grow by
constexpr double kMostWeight = 10;

void check_rect(Faults& faults, const std::string& where, const Rect<Wall>& rect) {
    faults.check_place(where, rect.min);
    faults.check_size(where + "/width_mm", rect.width());
    faults.check_size(where + "/height_mm", rect.height());
}

void check_outline(Faults& faults, const Polygon& outline) {
    const std::string where = "room/outline_mm";
    if (outline.corners.size() < 3)
        return faults.add(where, "an outline needs at least three corners",
                          "give the wall's corners in order");
    for (const Point<Wall> corner : outline.corners)
        faults.check_place(where, corner);
    for (std::size_t i = 0; i < outline.corners.size(); ++i)
        if (const auto [from, to] = geometry::side(outline, i);
            geometry::distance(from, to) <= geometry::kLengthEps)
            return faults.add(where,
                              fmt::format("corners {} and {} are in one place", i + 1,
                                          (i + 1) % outline.corners.size() + 1),
                              "leave one of them out");
    if (const auto crossing = geometry::crossing_sides(outline))
        faults.add(where,
                   fmt::format("side {} meets side {}", crossing->first + 1, crossing->second + 1),
                   "give the corners in order around the wall");
}

void check_room(Faults& faults, const Room& room) {
    check_outline(faults, room.outline);
    faults.check_length("room/skirting_height_mm", room.skirting_height);
    check_wall(faults, room);
    check_ids(faults, "room/furniture", room.furniture);
    check_ids(faults, "room/fixtures", room.fixtures);
    for (const Furniture& one : room.furniture)
        check_rect(faults, "room/furniture/" + one.id.text, one.place);
    for (const Fixture& one : room.fixtures)
        check_rect(faults, "room/fixtures/" + one.id.text, one.place);
}

void check_style(Faults& faults, const HangingStyle& style) {
    for (const StyleField& field : style_fields()) {
        const double value = style.*field.value;
        faults.unless(std::isfinite(value) && value >= field.least && value <= field.most,
                      fmt::format("style/{}", field.key),
                      fmt::format("{:g} is out of range", value),
                      fmt::format("give {} as a number from {:g} to {:g}", field.meaning,
                                  field.least, field.most));
    }
}

/// It lies behind the moulding.
void check_back_board(Faults& faults, const std::string& where, const Frame& frame) {
    const Size board = *frame.back_board;
    faults.check_size(where + "/back_board_width_mm", board.width);
    faults.check_size(where + "/back_board_height_mm", board.height);
    faults.unless(board.width <= frame.outside.width, where + "/back_board_width_mm",
                  fmt::format("the back board of {:g} mm is wider than the frame of {:g} mm",
                              board.width, frame.outside.width),
                  "measure the back board upright like the frame, or leave it out");
    faults.unless(board.height <= frame.outside.height, where + "/back_board_height_mm",
                  fmt::format("the back board of {:g} mm is higher than the frame of {:g} mm",
                              board.height, frame.outside.height),
                  "measure the back board upright like the frame, or leave it out");
}

void check_frame(Faults& faults, const Frame& frame) {
    const std::string where = "frames/" + frame.id.text;
    faults.check_size(where + "/width_mm", frame.outside.width);
    faults.check_size(where + "/height_mm", frame.outside.height);
    faults.check_size(where + "/depth_mm", frame.depth);
    faults.check_length(where + "/moulding_width_mm", frame.moulding_width);
    faults.check_length(where + "/rebate_width_mm", frame.rebate_width);
    faults.check_length(where + "/rebate_depth_mm", frame.rebate_depth);
    const double narrow_side = std::min(frame.outside.width, frame.outside.height);
    faults.unless(2 * frame.moulding_width < narrow_side, where + "/moulding_width_mm",
                  fmt::format("two mouldings of {:g} mm leave nothing of {:g} mm",
                              frame.moulding_width, narrow_side),
                  "give the width of the moulding as seen from the front");
    faults.unless(frame.rebate_width <= frame.moulding_width, where + "/rebate_width_mm",
                  "the rebate is wider than the moulding",
                  "give the width of the lip, usually 3 to 6 mm");
    if (frame.back_board)
        check_back_board(faults, where, frame);
    check_layer(faults, where + "/glazing", frame.glazing);
    check_layer(faults, where + "/backing", frame.backing);
    faults.check_price(where + "/price", frame.price);
}

void check_hanger(Faults& faults, const std::string& where, const Hanger& hanger) {
    if (hanger.drop)
        faults.check_length(where + "/drop_mm", *hanger.drop);
    if (hanger.ring_spacing)
        faults.check_size(where + "/ring_spacing_mm", *hanger.ring_spacing);
    if (hanger.cord_length)
        faults.check_size(where + "/cord_length_mm", *hanger.cord_length);
    if (hanger.hook_spacing)
        faults.check_size(where + "/hook_spacing_mm", *hanger.hook_spacing);
}

/// A stage is a place in the order of going up: what hangs is up, and what waits has no place to go
/// to.
void check_plan(Faults& faults, const std::string& where, const Piece& piece) {
    faults.unless(piece.stage >= 0 && piece.stage <= kLastStage, where + "/stage",
                  fmt::format("{} is no stage", piece.stage),
                  fmt::format("number the stages from 1 to {}, or write 0 for none", kLastStage));
    faults.unless(piece.stage == 0 || piece.state == PieceState::planned, where + "/stage",
                  fmt::format("a piece that is {} has no stage", name_of(piece.state)),
                  "leave the stage out, or plan the piece");
    faults.unless(!piece.wished || piece.state != PieceState::hung, where + "/wished",
                  "a frame that is not bought yet cannot hang",
                  "leave wished out, or call the piece planned");
}

void check_piece(Faults& faults, const Project& project, const Piece& piece) {
    const std::string where = "pieces/" + piece.id.text;
    check_known(faults, project, where + "/frame", piece.frame);
    if (piece.mount)
        check_known(faults, project, where + "/mount", *piece.mount);
    if (piece.print)
        check_known(faults, project, where + "/print", *piece.print);
    faults.unless(piece.at.has_value() || piece.state == PieceState::waiting, where + "/x_mm",
                  fmt::format("a piece that is {} needs a place", name_of(piece.state)),
                  "give x_mm and y_mm of its lower left corner, or let it wait");
    if (piece.at)
        faults.check_place(where, *piece.at);
    check_plan(faults, where, piece);
    if (piece.weighed)
        faults.check_mass(where + "/weighed_kg", *piece.weighed);
    check_hanger(faults, where + "/hanger", piece.hanger);
}

/// The thing, where there is one, is known.
void check_thing(Faults& faults, const Project& project, const std::string& where,
                 const ThingId& thing) {
    if (const auto* furniture = std::get_if<FurnitureId>(&thing))
        check_known(faults, project, where + "/furniture", *furniture);
    if (const auto* fixture = std::get_if<FixtureId>(&thing))
        check_known(faults, project, where + "/fixture", *fixture);
}

void check_wish(Faults& faults, const Project& project, const std::string& where,
                const Wish& wish) {
    const std::string_view name = name_of(wish.kind);
    const bool about_thing = wish.kind == WishKind::not_over;
    check_known(faults, project, where + "/first", wish.first);
    if (wish.second)
        check_known(faults, project, where + "/second", *wish.second);
    faults.unless(wish.second.has_value() == is_about_two(wish.kind), where + "/second",
                  fmt::format("\"{}\" is about {}", name, wish.second ? "one piece" : "two pieces"),
                  wish.second ? "leave second out" : "name the other piece");
    faults.unless(wish.second != wish.first, where + "/second",
                  fmt::format("\"{}\" is about two pieces, not one", name),
                  "name another piece than the first");
    if (wish.thing)
        check_thing(faults, project, where, *wish.thing);
    faults.unless(
        wish.thing.has_value() == about_thing, where,
        about_thing ? fmt::format("\"{}\" does not say what", name)
                    : fmt::format("\"{}\" is about pieces only", name),
        about_thing ? "name a piece of furniture or a fixture" : "leave furniture and fixture out");
}

void check_wishes(Faults& faults, const Project& project) {
    const std::vector<Wish>& wishes = project.wishes;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        const std::string where = fmt::format("wishes/#{}", i + 1);
        check_wish(faults, project, where, wishes[i]);
        for (std::size_t j = 0; j < i; ++j)
            faults.unless(!is_same_wish(wishes[i], wishes[j]), where,
                          fmt::format("it says the same as wish #{}", j + 1),
                          "leave one of them out");
    }
}

void check_target(Faults& faults, const Project& project, const Target& target) {
    if (const auto* furniture = std::get_if<FurnitureId>(&target))
        check_known(faults, project, "target/furniture", *furniture);
    if (const auto* fixture = std::get_if<FixtureId>(&target))
        check_known(faults, project, "target/fixture", *fixture);
    if (const auto* point = std::get_if<Point<Wall>>(&target))
        faults.check_place("target", *point);
    if (const auto* region = std::get_if<Rect<Wall>>(&target))
        check_rect(faults, "target", *region);
}

/// Any name will do: the measures are known to a floor above, and a later version has more of them.
void check_weights(Faults& faults, const std::vector<MeasureWeight>& weights) {
    std::set<std::string_view> seen;
    for (const MeasureWeight& one : weights) {
        const std::string where = "weights/" + one.measure;
        faults.unless(!one.measure.empty(), where, "the measure has no name", "name a measure");
        faults.unless(seen.insert(one.measure).second, where, "the measure is weighted twice",
                      "leave one of them out");
        faults.unless(one.weight >= 0 && one.weight <= kMostWeight, where + "/weight",
                      fmt::format("{:g} is out of range", one.weight),
                      fmt::format("give a weight from 0 to {:g}", kMostWeight));
    }
}

void check_own(Faults& faults, const Catalogue& own) {
    check_ids(faults, "own/materials", own.materials);
    check_ids(faults, "own/fixings", own.fixings);
    for (const Material& material : own.materials)
        faults.unless(material.density_low > 0 && material.density_low <= material.density_high &&
                          material.density_high <= 25000,
                      "own/materials/" + material.id.text,
                      "the densities are out of order or range",
                      "give density_low and density_high in kg/m3, the low one first");
    for (const NamedSize& size : own.sizes) {
        faults.check_size("own/sizes/" + size.name + "/width_mm", size.size.width);
        faults.check_size("own/sizes/" + size.name + "/height_mm", size.size.height);
    }
}

}  // namespace

std::vector<Problem> faults(const Project& project) {
    Faults faults;
    check_room(faults, project.room);
    check_style(faults, project.style);
    check_ids(faults, "frames", project.frames);
    check_ids(faults, "mounts", project.mounts);
    check_ids(faults, "prints", project.prints);
    check_ids(faults, "pieces", project.pieces);
    for (const Frame& frame : project.frames)
        check_frame(faults, frame);
    check_paper(faults, project);
    check_card(faults, project);
    for (const Piece& piece : project.pieces)
        check_piece(faults, project, piece);
    check_fixings(faults, project);
    check_wishes(faults, project);
    if (project.target)
        check_target(faults, project, *project.target);
    check_weights(faults, project.weights);
    check_own(faults, project.own);
    check_datum(faults, project);
    return faults.take();
}

}  // namespace wallwright::wall

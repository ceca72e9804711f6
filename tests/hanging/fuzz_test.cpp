// Nothing unsafe passes in silence: what hang_all finds sound is worked out again from the document
// alone, in plain numbers.
#include "hanging/fixings.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wallwright::hanging {

namespace {

using wall::Core;
using wall::FixingKind;
using wall::FixingType;
using wall::HangerType;

constexpr double kGravity = 9.80665;

double number(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000;
}

/// Extreme now and then.
double size() {
    return *rc::gen::element(number(20, 100), number(100, 900), number(900, 4000), 20.0);
}

bool sometimes(int one_in) {
    return *rc::gen::inRange(0, one_in) == 0;
}

std::optional<double> measured(double value) {
    return sometimes(2) ? std::optional(value) : std::nullopt;
}

FixingType type_of(const char* id, FixingKind kind, double rated, geometry::Size footprint) {
    FixingType type;
    type.id = {id};
    type.title = id;
    type.kind = kind;
    type.rated = {rated};
    type.footprint = footprint;
    return type;
}

wall::Catalogue any_catalogue() {
    wall::Catalogue catalogue = scenes::small_catalogue();
    FixingType nailed = type_of("nailed", FixingKind::nail_hook, number(1, 20), {12, 30});
    nailed.nails = wall::Nails{*rc::gen::inRange(1, 4), number(1, 2), number(10, 40)};
    FixingType plug = type_of("plug", FixingKind::screw, number(5, 40), {8, 8});
    plug.cores = {Core::masonry, Core::concrete};
    plug.breaking = sometimes(2);
    FixingType anchor = type_of("anchor", FixingKind::screw, number(5, 20), {14, 14});
    anchor.cores = {Core::plasterboard};
    FixingType stud = type_of("stud", FixingKind::screw, number(5, 40), {8, 8});
    stud.in_stud = true;
    stud.closed = sometimes(2);
    FixingType rail = type_of("rail", FixingKind::rail_hook, number(2, 20), {20, 50});
    for (const FixingType& type : {nailed, plug, anchor, stud, rail}) {
        catalogue.fixings.push_back(type);
        catalogue.fixings.back().pack = *rc::gen::inRange(1, 12);
        catalogue.fixings.back().price = sometimes(2) ? number(1, 9) : 0;
    }
    return catalogue;
}

wall::Room any_room() {
    wall::Room room = scenes::wall_of(8000, 5000).room;
    room.surface = *rc::gen::element(wall::Surface::painted, wall::Surface::brick,
                                     wall::Surface::concrete, wall::Surface::wood);
    room.core = *rc::gen::element(Core::unknown, Core::masonry, Core::concrete, Core::plasterboard,
                                  Core::lath, Core::wood);
    if (sometimes(2))
        room.studs = wall::Studs{number(0, 600), *rc::gen::element(400.0, 600.0, 406.4), 45};
    room.rail = measured(number(300, 4900));
    room.no_holes = sometimes(4);
    room.shakes = sometimes(4);
    return room;
}

/// As most pieces are, so that something holds them.
void make_usual(wall::Piece& piece, wall::Frame& frame) {
    frame.outside = {number(150, 800), number(150, 800)};
    frame.depth = number(10, 50);
    frame.moulding_width = number(17, 40);
    frame.rough_back = false;
    piece.irreplaceable = false;
    piece.weighed = Kilograms{number(0.1, 5)};
    const wall::HangerType type = piece.hanger.type;
    piece.hanger = {};
    piece.hanger.type = type;
}

void add_piece(wall::Project& project, int index) {
    wall::Piece& piece = scenes::add_piece(project, "p" + std::to_string(index),
                                           {number(0, 6000), number(0, 3000)}, {size(), size()});
    wall::Frame& frame = project.frames.back();
    frame.depth = *rc::gen::element(number(3, 60), number(60, 900));
    frame.moulding_width = number(3, 80);
    frame.rebate_width = frame.moulding_width / 3;
    frame.rough_back = sometimes(6);
    piece.irreplaceable = sometimes(6);
    piece.turned = sometimes(3);
    piece.wished = sometimes(4);
    piece.state = sometimes(4) ? wall::PieceState::hung : wall::PieceState::planned;
    piece.hanger.type = *rc::gen::element(HangerType::strips, HangerType::sawtooth,
                                          HangerType::two_rings, HangerType::cord_one_hook,
                                          HangerType::cord_two_hooks, HangerType::keyholes);
    const geometry::Size outside = outside_size(project, piece);
    piece.hanger.drop = measured(number(0.5, 0.6 * outside.height));
    piece.hanger.ring_spacing = measured(number(1, 1.1 * outside.width));
    piece.hanger.hook_spacing = measured(number(1, outside.width));
    piece.hanger.cord_length = measured(number(1, 1.5 * outside.width));
    piece.weighed = Kilograms{*rc::gen::element(number(0.01, 2), number(2, 20), number(20, 900))};
    if (sometimes(2))
        make_usual(piece, frame);
    if (sometimes(3))
        piece.fixing = wall::FixingTypeId{*rc::gen::element<std::string>(
            "strip_large", "hook_large", "screw", "nailed", "plug", "anchor", "stud", "rail")};
}

wall::Project any_project() {
    wall::Project project = scenes::wall_of(8000, 5000);
    project.room = any_room();
    const int count = *rc::gen::inRange(1, 6);
    for (int i = 0; i < count; ++i)
        add_piece(project, i);
    for (const char* type : {"strip_small", "hook_small", "nailed", "plug", "stud"})
        if (sometimes(2))
            project.stock.push_back({{type}, *rc::gen::inRange(0, 8), {}});
    return project;
}

/// What one piece asks of each of its fixings, from its measures alone.
struct Asked {
    double down = 0;
    double sideways = 0;
    double off_wall = 0;
    double tension = 0;  ///< In its cord.
};

/// The hanger's measures as the manual says that they are taken where nobody took them.
struct Measures {
    double drop = 0;
    double rings = 0;
    double hooks = 0;
    double cord = 0;
};

Measures measures_of(const wall::Hanger& hanger, geometry::Size outside) {
    Measures all;
    const double quarter = outside.height / 4;
    const bool teeth = hanger.type == HangerType::sawtooth;
    all.drop = hanger.drop.value_or(teeth ? std::min(15.0, quarter) : quarter);
    all.rings = hanger.ring_spacing.value_or(0.8 * outside.width);
    all.hooks =
        hanger.type == HangerType::cord_two_hooks ? hanger.hook_spacing.value_or(all.rings / 3) : 0;
    const double rise = std::max(all.drop - 50, all.drop / 2);
    all.cord = hanger.cord_length.value_or(
        all.hooks + std::sqrt((all.rings - all.hooks) * (all.rings - all.hooks) + 4 * rise * rise));
    return all;
}

bool has_cord(HangerType type) {
    return type == HangerType::cord_one_hook || type == HangerType::cord_two_hooks;
}

Asked asked_of(const wall::Project& project, const wall::Piece& piece, double weight) {
    const geometry::Size outside = outside_size(project, piece);
    const Measures at = measures_of(piece.hanger, outside);
    const bool one =
        piece.hanger.type == HangerType::sawtooth || piece.hanger.type == HangerType::cord_one_hook;
    Asked asked;
    asked.down = one ? weight : weight / 2;
    double up = outside.height - at.drop;
    if (has_cord(piece.hanger.type)) {
        RC_ASSERT(at.cord > at.rings);
        const double angle = std::acos((at.rings - at.hooks) / (at.cord - at.hooks));
        asked.tension = weight / 2 / std::sin(angle);
        if (!one)
            asked.sideways = asked.tension * (1 - std::cos(angle));
        up += std::tan(angle) * (at.rings - at.hooks) / 2;
    }
    RC_ASSERT(up > outside.height / 2);
    RC_ASSERT(up < outside.height);
    asked.off_wall = weight * frame_of(project, piece).depth / 2 / up / (one ? 1 : 2);
    return asked;
}

Core core_here(const wall::Room& room) {
    if (room.core != Core::unknown)
        return room.core;
    if (room.surface == wall::Surface::brick)
        return Core::masonry;
    if (room.surface == wall::Surface::concrete)
        return Core::concrete;
    if (room.surface == wall::Surface::wood)
        return Core::wood;
    return room.studs ? Core::plasterboard : Core::unknown;
}

bool hollow(Core core) {
    return core == Core::plasterboard || core == Core::lath;
}

/// How deep a nail of that length would be in wood there; what is no nail goes deep enough.
double wood_at(const wall::Room& room, double across, double length) {
    const Core core = core_here(room);
    if (core == Core::wood)
        return length;
    if (!hollow(core) || !room.studs)
        return 0;
    const double beside = std::fmod(std::abs(across - room.studs->first), room.studs->spacing);
    const double off = std::min(beside, room.studs->spacing - beside);
    if (off > room.studs->width / 2 - 10 + 1e-3)
        return 0;
    return std::max(0.0, length - (core == Core::lath ? 25 : 12.5));
}

double allowed_load(const wall::Project& project, const FixingType& type, double across) {
    const wall::Room& room = project.room;
    const Core core = core_here(room);
    const double margin = type.breaking ? 4 : type.kind == FixingKind::strip_pair ? 1.5 : 2;
    double rated = type.rated.value;
    const bool named = std::ranges::find(type.cores, core) != type.cores.end();
    const double length = type.nails ? type.nails->length : 1000;
    if (pierces(type.kind) && hollow(core) && !named && wood_at(room, across, length) < 10 - 1e-9)
        rated *= 0.5;
    if (type.in_stud)
        RC_ASSERT(wood_at(room, across, length) > 0);
    if (!type.cores.empty())
        RC_ASSERT(core == Core::unknown || named);
    return rated / margin * kGravity * (1 + 1e-6);
}

void expect_nails_hold(const wall::Project& project, const FixingType& type, const Fixing& fixing,
                       double off_wall) {
    if (!type.nails)
        return;
    const double depth = wood_at(project.room, fixing.at.x, type.nails->length);
    if (depth < 10)
        return;
    const double pounds = type.nails->count * 1380 * std::pow(0.35, 2.5) *
                          (type.nails->diameter / 25.4) * (depth / 25.4);
    RC_ASSERT(off_wall <= pounds * 0.45359237 * kGravity * (1 + 1e-6));
}

/// Where no nail in wood is weighed against its own withdrawal, a packet's rating says nothing of a
/// pull off the wall: no more of it than of the load down the wall, and nothing said up to a
/// quarter.
void expect_pull_said(const Hanging& hanging, double down, double off_wall) {
    RC_ASSERT(off_wall <= down * (1 + 1e-6));
    const bool is_said = std::ranges::any_of(hanging.findings, [](const wall::Finding& finding) {
        return finding.severity == wall::Severity::mind &&
               finding.text.find("pulled off the wall") != std::string::npos;
    });
    if (std::abs(off_wall - down / 4) > 1e-6 * down)
        RC_ASSERT(is_said == (off_wall > down / 4));
}

void expect_behind(const wall::Project& project, const wall::Piece& piece, const Fixing& fixing) {
    const geometry::Rect<geometry::Wall> place = *place_of(project, piece);
    geometry::Point<geometry::Wall> at = fixing.at;
    if (fixing.kind == FixingKind::rail_hook) {
        RC_ASSERT(at.y == *project.room.rail);
        RC_ASSERT(at.y >= place.top());
        RC_ASSERT(fixing.cord > 0);
        at.y -= fixing.cord;
    }
    RC_ASSERT(at.x > place.left() && at.x < place.right());
    RC_ASSERT(at.y > place.bottom() && at.y < place.top());
}

void expect_hooks_safe(const wall::Project& project, const FixingType& type,
                       const wall::Piece& piece, const Hanging& hanging) {
    const double weight = hanging.mass.high.value * kGravity;
    const Asked asked = asked_of(project, piece, weight);
    const bool one =
        piece.hanger.type == HangerType::sawtooth || piece.hanger.type == HangerType::cord_one_hook;
    RC_ASSERT(hanging.fixings.size() == (one ? 1U : 2U));
    const double load = std::sqrt(asked.down * asked.down + asked.sideways * asked.sideways +
                                  asked.off_wall * asked.off_wall);
    for (const Fixing& fixing : hanging.fixings) {
        RC_ASSERT(load <= allowed_load(project, type, fixing.at.x));
        expect_nails_hold(project, type, fixing, asked.off_wall);
    }
    double in_wood = 1000;  // mm, of the nails that are the least deep
    for (const Fixing& fixing : hanging.fixings)
        in_wood = std::min(in_wood,
                           type.nails ? wood_at(project.room, fixing.at.x, type.nails->length) : 0);
    const bool by_its_nails = type.nails && in_wood >= 10;
    if (type.kind == FixingKind::nail_hook && !by_its_nails)
        expect_pull_said(hanging, asked.down, asked.off_wall);
    if (has_cord(piece.hanger.type))
        RC_ASSERT(hanging.cord_breaking_needed->value * kGravity >=
                  4 * std::max(weight, asked.tension) * (1 - 1e-6));
}

/// Strips: enough of them, evenly or not; the top ones bear the pull off the wall.
void expect_strips_safe(const wall::Project& project, const FixingType& type,
                        const wall::Piece& piece, const Hanging& hanging) {
    const wall::Frame& frame = frame_of(project, piece);
    const auto place = *place_of(project, piece);
    const double weight = hanging.mass.high.value * kGravity;
    const auto count = static_cast<double>(hanging.fixings.size());
    const double allowed = allowed_load(project, type, 0);
    RC_ASSERT(!frame.rough_back && !piece.irreplaceable);
    RC_ASSERT(hanging.mass.high.value <= 7);
    RC_ASSERT(type.footprint.width <= frame.moulding_width);
    RC_ASSERT(count >= 2);
    RC_ASSERT(weight / count <= allowed);
    double down = 0;
    double turn = 0;
    int top = 0;
    const double high = hanging.fixings.front().at.y;
    for (const Fixing& fixing : hanging.fixings) {
        RC_ASSERT(std::hypot(fixing.down.value, fixing.sideways.value) <= allowed);
        down += fixing.down.value;
        turn += fixing.down.value * (fixing.at.x - place.left() - place.width() / 2) +
                fixing.sideways.value * (fixing.at.y - high);
        top += fixing.at.y == high ? 1 : 0;
    }
    RC_ASSERT(std::abs(down - weight) <= 1e-9 * weight);
    RC_ASSERT(std::abs(turn) <= 1e-6 * weight * 4000);
    const double off_wall = weight * frame.depth / 2 / (high - place.bottom()) / top;
    RC_ASSERT(off_wall <= allowed);
    double least = weight;  // down, on any of the top pairs
    for (const Fixing& fixing : hanging.fixings)
        if (fixing.at.y == high)
            least = std::min(least, fixing.down.value);
    expect_pull_said(hanging, least, off_wall);
}

void expect_safe(const wall::Project& project, const wall::Catalogue& catalogue,
                 const Hanging& hanging) {
    const wall::Piece& piece = *find(project, hanging.piece);
    RC_ASSERT(!hanging.fixings.empty());
    const FixingType& type = *find(catalogue, hanging.fixings.front().type);
    for (const Fixing& fixing : hanging.fixings) {
        RC_ASSERT(fixing.type == type.id);
        expect_behind(project, piece, fixing);
    }
    if (piece.hanger.type == HangerType::strips)
        expect_strips_safe(project, type, piece, hanging);
    else
        expect_hooks_safe(project, type, piece, hanging);
    if (piece.hanger.type == HangerType::keyholes)
        RC_ASSERT(type.kind == FixingKind::screw && !type.closed);
}

bool all_finite(const Hanging& hanging) {
    bool finite = std::isfinite(hanging.use) && std::isfinite(hanging.margin);
    for (const Fixing& fixing : hanging.fixings)
        finite = finite && std::isfinite(fixing.at.x) && std::isfinite(fixing.at.y) &&
                 std::isfinite(fixing.load.value) && std::isfinite(fixing.rated.value) &&
                 std::isfinite(fixing.cord) && fixing.rated.value > 0;
    if (hanging.cord)
        finite = finite && std::isfinite(hanging.cord->tension.value);
    return finite;
}

}  // namespace

TEST_CASE("What is hung without a stop is safe when it is worked out again from the document") {
    constexpr int kWalls = 30;  // in each of the hundred runs
    int safe = 0;
    int stopped = 0;
    rc::prop("for any walls, hangers and fixings", [&] {
        for (int i = 0; i < kWalls; ++i) {
            const wall::Catalogue catalogue = any_catalogue();
            const wall::Project project = any_project();
            for (const Hanging& hanging : hang_all(project, catalogue)) {
                RC_ASSERT(all_finite(hanging));
                const bool stops = has_stop(hanging.findings);
                (stops ? stopped : safe) += 1;
                if (!stops)
                    expect_safe(project, catalogue, hanging);
            }
        }
    });
    CHECK(safe > 500);
    CHECK(stopped > 500);
}

}  // namespace wallwright::hanging

#include "hanging/fixings.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace wallwright::hanging {

namespace {

using geometry::Rect;
using geometry::Wall;
using wall::Finding;
using wall::HangerType;
using wall::PieceState;
using wall::Project;
using wall::Severity;

/// A planned piece of 400 x 500 mm and this weight on the scale.
wall::Piece& add(Project& project, const std::string& id, HangerType hanger, double kg) {
    const auto place = static_cast<double>(project.pieces.size());
    wall::Piece& piece = scenes::add_piece(project, id, {500 * place, 1300}, {400, 500});
    piece.hanger.type = hanger;
    if (hanger == HangerType::sawtooth)
        piece.hanger.drop = 60;  // Deep enough to hide any hook.
    piece.weighed = Kilograms{kg};
    return piece;
}

Project one_piece(HangerType hanger, double kg) {
    Project project = scenes::wall_of(6000, 2400);
    add(project, "kelp", hanger, kg);
    return project;
}

Hanging hang_first(const Project& project) {
    return hang_all(project, scenes::small_catalogue()).at(0);
}

const Finding* find_rule(const Hanging& hanging, const std::string& rule) {
    const auto found = std::find_if(hanging.findings.begin(), hanging.findings.end(),
                                    [&](const Finding& one) { return one.rule == rule; });
    return found == hanging.findings.end() ? nullptr : &*found;
}

bool overloaded(const Hanging& hanging) {
    return std::any_of(hanging.fixings.begin(), hanging.fixings.end(), [&](const Fixing& fixing) {
        return fixing.rated.value < hanging.margin * fixing.load.value - 1e-9;
    });
}

}  // namespace

TEST_CASE("Every piece on the wall is hung, in the project's order, and none that waits") {
    Project project = one_piece(HangerType::strips, 0.5);
    scenes::add_waiting(project, "dune", {300, 300});
    add(project, "tern", HangerType::sawtooth, 3);
    project.pieces.back().state = PieceState::hung;
    const auto hangings = hang_all(project, scenes::small_catalogue());
    REQUIRE(hangings.size() == 2);
    CHECK(hangings[0].piece.text == "kelp");
    CHECK(hangings[1].piece.text == "tern");
    for (const Hanging& hanging : hangings)
        CHECK_FALSE(hanging.fixings.empty());
}

TEST_CASE("The share of the rated load in use is that of the fixing with the most") {
    const Hanging hanging = hang_first(one_piece(HangerType::two_rings, 2.0));
    CHECK(hanging.fixing_title == "hook_small");
    CHECK(hanging.margin == 2);
    CHECK(hanging.mass.high.value == Approx(2.04));
    // 20 mm deep, rings 375 mm above the foot.
    CHECK(hanging.use == Approx(1.02 * std::hypot(1, 10.0 / 375) / 2.5));
    CHECK(hanging.findings.empty());
}

TEST_CASE("A piece that hangs already is checked as well, and takes nothing from the drawer") {
    Project project = one_piece(HangerType::sawtooth, 20);
    project.pieces.front().state = PieceState::hung;
    project.stock = {{{"screw"}, 4, {}}};
    const Hanging hanging = hang_first(project);
    CHECK(has_stop(hanging.findings));
    CHECK(hanging.from_stock == 0);
    CHECK(find_rule(hanging, kFixingsInStock) == nullptr);
}

TEST_CASE("The person's own choice is kept, even where it is too weak, and then is a stop") {
    Project project = one_piece(HangerType::sawtooth, 2.0);
    project.pieces.front().fixing = wall::FixingTypeId{"hook_small"};
    const Hanging hanging = hang_first(project);
    CHECK(hanging.fixing_title == "hook_small");
    REQUIRE(find_rule(hanging, kWeightWithinRating) != nullptr);
    CHECK(find_rule(hanging, kWeightWithinRating)->severity == Severity::stop);
}

TEST_CASE("A choice that is not in the catalogue is a stop that names it") {
    Project project = one_piece(HangerType::sawtooth, 2.0);
    project.pieces.front().fixing = wall::FixingTypeId{"hook_smal"};
    const Hanging hanging = hang_first(project);
    CHECK(hanging.fixings.empty());
    REQUIRE(hanging.findings.size() == 1);
    CHECK(hanging.findings[0].severity == Severity::stop);
    CHECK(hanging.findings[0].text ==
          "Kelp: its fixing \"hook_smal\" is not in the catalogue, so that its rated load is not "
          "known; add it or choose another.");
}

TEST_CASE("A choice that does not go with the hanger is a stop") {
    Project project = one_piece(HangerType::strips, 0.5);
    project.pieces.front().fixing = wall::FixingTypeId{"screw"};
    const Hanging hanging = hang_first(project);
    CHECK(hanging.fixings.empty());
    REQUIRE(hanging.findings.size() == 1);
    CHECK(hanging.findings[0].rule == kHangerFits);
    CHECK(hanging.findings[0].text ==
          "Kelp: its fixing (screw) does not go with the hanger \"strips\" on its back; change one "
          "of them.");
}

TEST_CASE("A hanger that cannot hold leaves the piece without fixings and says why") {
    Project project = one_piece(HangerType::cord_one_hook, 2.0);
    project.pieces.front().hanger.ring_spacing = 300;
    project.pieces.front().hanger.cord_length = 290;
    const Hanging hanging = hang_first(project);
    CHECK(hanging.fixings.empty());
    CHECK(hanging.use == 0);
    REQUIRE(hanging.findings.size() == 1);
    CHECK(hanging.findings[0].rule == kHangerFits);
    CHECK(*hanging.findings[0].measured == 290);
    CHECK(*hanging.findings[0].wanted == 300);
    CHECK(hanging.findings[0].unit == "mm");
}

TEST_CASE("A flat cord is to be minded and hangs all the same") {
    Project project = one_piece(HangerType::cord_one_hook, 1.0);
    project.pieces.front().hanger.ring_spacing = 300;
    project.pieces.front().hanger.cord_length = 302;
    const Hanging hanging = hang_first(project);
    CHECK_FALSE(hanging.fixings.empty());
    REQUIRE(find_rule(hanging, kHangerFits) != nullptr);
    CHECK(find_rule(hanging, kHangerFits)->severity == Severity::mind);
}

// C. A. Paschke, "Wire & Hangers", Picture Framing Magazine, February 2013: a 10 lb picture wants
// braided wire of 40 lb.
TEST_CASE("A cord is asked to be four times as strong as the picture is heavy") {
    const double pound = units::kKgPerPound;
    Project project = one_piece(HangerType::cord_one_hook, 10 * pound / 1.02);
    project.pieces.front().hanger.drop = 200;
    project.pieces.front().hanger.ring_spacing = 200;
    project.pieces.front().hanger.cord_length =
        250;  // Legs of 75, 100 and 125 mm: steeper than 30 degrees.
    const Hanging hanging = hang_first(project);
    REQUIRE(hanging.cord_breaking_needed);
    CHECK(hanging.cord_breaking_needed->value / pound == Approx(40));
}

TEST_CASE("A flat cord is asked to be four times as strong as it is pulled") {
    Project project = one_piece(HangerType::cord_one_hook, 1.0);
    project.pieces.front().hanger.ring_spacing = 300;
    project.pieces.front().hanger.cord_length = 302;
    const Hanging hanging = hang_first(project);
    REQUIRE(hanging.cord);
    CHECK(hanging.cord->tension > weight_of(hanging.mass.high));
    CHECK(weight_of(*hanging.cord_breaking_needed) / hanging.cord->tension == Approx(4));
}

TEST_CASE("One kind for the whole wall comes before a packet of each, where that is cheaper") {
    Project project = scenes::wall_of(6000, 2400);
    add(project, "light", HangerType::sawtooth, 1.0);
    add(project, "heavy", HangerType::sawtooth, 2.0);
    wall::Catalogue catalogue = scenes::small_catalogue();
    const auto titles = [&] {
        const auto hangings = hang_all(project, catalogue);
        CHECK(hangings[0].best_known);
        return std::pair(hangings[0].fixing_title, hangings[1].fixing_title);
    };
    CHECK(titles() == std::pair<std::string, std::string>("hook_small", "hook_large"));
    for (wall::FixingType& type : catalogue.fixings)
        type.pack = 10;
    CHECK(titles() == std::pair<std::string, std::string>("hook_large", "hook_large"));
    project.stock = {{{"hook_small"}, 1, {}}};
    CHECK(titles() == std::pair<std::string, std::string>("hook_small", "hook_large"));
}

TEST_CASE("A piece that hangs from a rail has its cord up to it and no pull off the wall") {
    Project project = one_piece(HangerType::two_rings, 2.0);
    wall::Catalogue catalogue = scenes::small_catalogue();
    wall::FixingType rail;
    rail.id = {"rail"};
    rail.title = "rail";
    rail.kind = wall::FixingKind::rail_hook;
    rail.rated = {10};
    rail.footprint = {20, 50};
    catalogue.fixings.push_back(rail);
    project.pieces.front().fixing = rail.id;
    Hanging hanging = hang_all(project, catalogue).front();
    CHECK(hanging.fixings.empty());
    REQUIRE(hanging.findings.size() == 1);
    CHECK(
        hanging.findings[0].text ==
        "Kelp: its fixing (rail) hangs on a picture rail, and none is known on this wall; say how "
        "high it is or take another fixing.");
    project.room.rail = 2150;
    hanging = hang_all(project, catalogue).front();
    CHECK(hanging.findings.empty());
    CHECK_FALSE(hanging.top_pull);
    REQUIRE(hanging.fixings.size() == 2);
    // Rings 125 mm below the top at 1800 and 320 mm apart about 200.
    CHECK(hanging.fixings[0].at == geometry::Point<Wall>{40, 2150});
    CHECK(hanging.fixings[1].at == geometry::Point<Wall>{360, 2150});
    CHECK(hanging.fixings[0].cord == Approx(475));
    CHECK(hanging.cord_breaking_needed->value == Approx(4 * 2.04));
    CHECK(covered_by(hanging.fixings[0]) == Rect<Wall>{{30, 2125}, {50, 2175}});
    project.room.rail = 1790;
    CHECK(hang_all(project, catalogue).front().findings.at(0).text ==
          "Kelp: its fixing (rail) hangs on the picture rail 1790 mm up, below its top at 1800 mm; "
          "hang it lower or take another fixing.");
}

TEST_CASE("The heaviest piece gets the strong fixing from the drawer") {
    Project project = scenes::wall_of(6000, 2400);
    add(project, "light", HangerType::sawtooth, 1.0);
    add(project, "heavy", HangerType::sawtooth, 6.0);
    project.stock = {{{"screw"}, 1, {}}};
    const auto hangings = hang_all(project, scenes::small_catalogue());
    CHECK(hangings[1].fixing_title == "screw");
    CHECK(hangings[1].from_stock == 1);
    CHECK(hangings[0].fixing_title == "hook_small");
    CHECK(hangings[0].from_stock == 0);
}

TEST_CASE("What the drawer lacks is a note with the number to buy") {
    Project project = one_piece(HangerType::two_rings, 1.0);
    project.stock = {{{"hook_large"}, 1, {}}};
    const Hanging hanging = hang_first(project);
    CHECK(hanging.from_stock == 1);
    REQUIRE(find_rule(hanging, kFixingsInStock) != nullptr);
    CHECK(find_rule(hanging, kFixingsInStock)->severity == Severity::note);
    CHECK(*find_rule(hanging, kFixingsInStock)->measured == 1);
    CHECK(*find_rule(hanging, kFixingsInStock)->wanted == 2);
    CHECK(find_rule(hanging, kFixingsInStock)->text ==
          "Kelp: 1 of its 2 fixings (hook_large) is not in stock; buy what is missing before "
          "hanging it.");
}

TEST_CASE("A person who named no stock is not told that it is missing") {
    CHECK(hang_first(one_piece(HangerType::two_rings, 1.0)).findings.empty());
}

TEST_CASE("A strip covers the wall about its middle, and a hook above its bearing point") {
    Fixing fixing;
    fixing.at = {100, 200};
    fixing.footprint = {10, 30};
    fixing.kind = GENERATE(wall::FixingKind::strip_pair, wall::FixingKind::screw);
    CHECK(covered_by(fixing) == Rect<Wall>{{95, 185}, {105, 215}});
    fixing.kind = wall::FixingKind::nail_hook;
    CHECK(covered_by(fixing) == Rect<Wall>{{95, 200}, {105, 230}});
}

namespace {

double length(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

std::optional<double> sometimes(double value) {
    return *rc::gen::arbitrary<bool>() ? std::optional(value) : std::nullopt;
}

/// A piece of any size, weight and hanger, with or without a choice of its own.
void add_any_piece(Project& project, int number) {
    const geometry::Size outside{length(40, 1500), length(40, 1500)};
    wall::Piece& piece = scenes::add_piece(project, "p" + std::to_string(number),
                                           {length(0, 5000), length(0, 2000)}, outside);
    wall::Frame& frame = project.frames.back();
    frame.depth = length(2, 150);
    frame.moulding_width = length(2, 19);
    frame.rebate_width = frame.moulding_width / 3;
    piece.state = *rc::gen::element(PieceState::planned, PieceState::hung);
    piece.turned = *rc::gen::arbitrary<bool>();
    piece.hanger.type = *rc::gen::element(HangerType::strips, HangerType::sawtooth,
                                          HangerType::two_rings, HangerType::cord_one_hook,
                                          HangerType::cord_two_hooks, HangerType::keyholes);
    piece.hanger.drop = sometimes(length(0, 400));
    piece.hanger.ring_spacing = sometimes(length(1, 1500));
    piece.hanger.cord_length = sometimes(length(1, 1800));
    piece.hanger.hook_spacing = sometimes(length(1, 900));
    if (*rc::gen::arbitrary<bool>())
        piece.weighed = Kilograms{length(0, 40) + 0.01};
    if (*rc::gen::arbitrary<bool>())
        piece.fixing = {*rc::gen::element<std::string>("strip_small", "strip_large", "hook_small",
                                                       "screw", "unknown")};
}

void expect_said(const Project& project, const Hanging& hanging) {
    const bool strips = find(project, hanging.piece)->hanger.type == HangerType::strips;
    const bool too_heavy = strips && hanging.mass.high.value > project.style.strip_total_most;
    if (hanging.fixings.empty() || overloaded(hanging) || too_heavy)
        RC_ASSERT(has_stop(hanging.findings));
    for (const Finding& finding : hanging.findings) {
        RC_ASSERT(finding.pieces == std::vector{hanging.piece});
        RC_ASSERT(finding.place == *place_of(project, *find(project, hanging.piece)));
        RC_ASSERT(finding.text.ends_with("."));
    }
}

/// The fixings are of the kind that was asked for, on the piece, and between them take all of it.
void expect_held(const Project& project, const Hanging& hanging) {
    if (hanging.fixings.empty())
        return;
    const wall::Piece& piece = *find(project, hanging.piece);
    RC_ASSERT(hanging.fixings.front().type == piece.fixing.value_or(hanging.fixings.front().type));
    double carried = 0;
    for (const Fixing& fixing : hanging.fixings) {
        RC_ASSERT(place_of(project, piece)->grown(1e-9).contains(fixing.at));
        carried += fixing.load.value;
    }
    RC_ASSERT(carried >= hanging.mass.high.value - 1e-9);
}

void expect_stock_not_overdrawn(const Project& project, const std::vector<Hanging>& hangings) {
    std::map<std::string, int> taken;
    for (const Hanging& hanging : hangings)
        if (!hanging.fixings.empty())
            taken[hanging.fixings.front().type.text] += hanging.from_stock;
    for (const wall::Stock& line : project.stock)
        RC_ASSERT(taken[line.fixing.text] <= line.count);
}

}  // namespace

TEST_CASE("Nothing is ever passed in silence: what is overloaded or does not hang is a stop") {
    rc::prop("for any wall", [] {
        Project project = scenes::wall_of(6000, 2400);
        const int count = *rc::gen::inRange(1, 8);
        for (int i = 0; i < count; ++i)
            add_any_piece(project, i);
        for (const char* type : {"strip_small", "strip_large", "hook_small", "screw"})
            project.stock.push_back({{type}, *rc::gen::inRange(0, 6), {}});
        const auto hangings = hang_all(project, scenes::small_catalogue());
        RC_ASSERT(hangings.size() == project.pieces.size());
        for (const Hanging& hanging : hangings) {
            expect_said(project, hanging);
            expect_held(project, hanging);
        }
        expect_stock_not_overdrawn(project, hangings);
    });
}

TEST_CASE("A heavier piece never has less of its rating in use on the same fixings") {
    rc::prop("for any weight and hanger", [] {
        const auto hanger = *rc::gen::element(HangerType::sawtooth, HangerType::two_rings,
                                              HangerType::cord_two_hooks);
        const double kg = length(1, 20);
        Project project = one_piece(hanger, kg);
        project.pieces.front().fixing = wall::FixingTypeId{"screw"};
        const double before = hang_first(project).use;
        project.pieces.front().weighed = Kilograms{kg * 1.5};
        RC_ASSERT(std::abs(hang_first(project).use - 1.5 * before) < 1e-9);
    });
}

}  // namespace wallwright::hanging

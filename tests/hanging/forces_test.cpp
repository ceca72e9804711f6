#include "hanging/forces.h"

#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::HangerType;

wall::Catalogue catalogue_with_rail() {
    wall::Catalogue catalogue = scenes::small_catalogue();
    wall::FixingType rail;
    rail.id = {"rail"};
    rail.title = "rail hook";
    rail.kind = wall::FixingKind::rail_hook;
    rail.rated = {10};
    rail.footprint = {20, 50};
    catalogue.fixings.push_back(rail);
    return catalogue;
}

/// One planned piece of 400 x 500 mm.
struct OnePiece {
    wall::Project project = scenes::wall_of(4000, 2600);

    OnePiece(HangerType hanger, double high_kg) {
        wall::Piece& piece = scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500});
        piece.hanger.type = hanger;
        piece.weighed = Kilograms{high_kg / 1.02};  // A scale's 2 % are added again.
    }
    [[nodiscard]] wall::Piece& piece() { return project.pieces.front(); }
    [[nodiscard]] FreeBody body() const {
        const auto hangings = hang_all(project, catalogue_with_rail());
        REQUIRE_FALSE(hangings.at(0).fixings.empty());
        return free_body(project, hangings.at(0));
    }
};

std::string formula(const FreeBody& body, const std::string& begin) {
    const auto found = std::ranges::find_if(body.worked, [&](const Worked& one) {
        return one.about.starts_with(begin) || one.formula.starts_with(begin);
    });
    return found == body.worked.end() ? "" : found->formula;
}

Spatial operator+(const Spatial& a, const Spatial& b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}

Spatial moment(const Spatial& about, const Force& force) {
    const Spatial arm{force.at.x - about.x, force.at.y - about.y, force.at.z - about.z};
    const Spatial& f = force.newtons;
    return {arm.y * f.z - arm.z * f.y, arm.z * f.x - arm.x * f.z, arm.x * f.y - arm.y * f.x};
}

double largest(const Spatial& one) {
    return std::max({std::abs(one.x), std::abs(one.y), std::abs(one.z)});
}

double number(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

std::optional<double> sometimes(double value) {
    return *rc::gen::arbitrary<bool>() ? std::optional(value) : std::nullopt;
}

/// A piece on any hanger, some from a rail.
wall::Project any_piece() {
    wall::Project project = scenes::wall_of(4000, 4000);
    wall::Piece& piece = scenes::add_piece(project, "kelp", {number(0, 2000), number(0, 1000)},
                                           {number(60, 1500), number(60, 1500)});
    piece.hanger.type = *rc::gen::element(HangerType::strips, HangerType::sawtooth,
                                          HangerType::two_rings, HangerType::cord_one_hook,
                                          HangerType::cord_two_hooks, HangerType::keyholes);
    piece.hanger.drop = sometimes(number(5, 200));
    piece.hanger.ring_spacing = sometimes(number(20, 1000));
    piece.hanger.cord_length = sometimes(number(20, 1400));
    piece.hanger.hook_spacing = sometimes(number(10, 500));
    piece.weighed = Kilograms{number(1, 300) / 10};
    project.frames.front().depth = number(5, 120);
    project.frames.front().moulding_width = number(20, 60);
    project.room.rail = 3500;
    const bool on_rail = piece.hanger.type == HangerType::two_rings ||
                         piece.hanger.type == HangerType::cord_one_hook;
    if (on_rail && *rc::gen::arbitrary<bool>())
        piece.fixing = wall::FixingTypeId{"rail"};
    return project;
}

}  // namespace

TEST_CASE("All forces on a piece and their moments about any point add up to nothing") {
    rc::prop("for any hanger", [] {
        const wall::Project project = any_piece();
        const Hanging hanging = hang_all(project, catalogue_with_rail()).at(0);
        if (hanging.fixings.empty())
            return;
        const FreeBody body = free_body(project, hanging);
        const double weight = weight_of(hanging.mass.high).value;
        const Spatial about{number(-2000, 2000), number(-2000, 2000), number(-500, 500)};
        Spatial force;
        Spatial turn;
        double scale = weight;
        for (const Force& one : body.forces) {
            force = force + one.newtons;
            turn = turn + moment(about, one);
            scale = std::max(scale, largest(one.newtons));
        }
        RC_ASSERT(largest(force) <= 1e-9 * scale);
        RC_ASSERT(largest(turn) <= 1e-6 * scale * 1000);
        RC_ASSERT(body.forces.front().newtons.y == -weight);
        RC_ASSERT(body.forces.front().at.z == body.depth / 2);
    });
}

TEST_CASE("Every force is on the piece and is said what it is") {
    rc::prop("for any hanger", [] {
        const wall::Project project = any_piece();
        const Hanging hanging = hang_all(project, catalogue_with_rail()).at(0);
        if (hanging.fixings.empty())
            return;
        const FreeBody body = free_body(project, hanging);
        for (const Force& one : body.forces) {
            RC_ASSERT(!one.what.empty());
            RC_ASSERT(one.at.x >= 0 && one.at.x <= body.outside.width);
            RC_ASSERT(one.at.y >= 0 && one.at.y <= body.outside.height);
            const bool held = one.kind == ForceKind::held;
            RC_ASSERT(held == (one.newtons.z < 0));
        }
        RC_ASSERT(!body.worked.empty());
        RC_ASSERT(!body.remarks.empty());
    });
}

// Worked by hand: 3.0 kg with its middle 18 mm off the wall and a hook 300 mm above the foot.
TEST_CASE("A hook 300 mm up holds a piece 36 mm deep to the wall with 1.77 N for 3 kg") {
    OnePiece one(HangerType::sawtooth, 3.0);
    one.project.frames.front().outside = {400, 400};
    one.project.frames.front().depth = 36;
    one.piece().hanger.drop = 100;
    const FreeBody body = one.body();
    REQUIRE(body.forces.size() == 4);
    CHECK(body.forces[2].kind == ForceKind::held);
    CHECK(body.forces[2].what == "screw");
    CHECK(body.forces[2].newtons.z == Approx(-1.765).margin(0.001));
    CHECK(body.forces[3].what == "wall at the lower edge");
    CHECK(body.forces[3].newtons.z == Approx(1.765).margin(0.001));
    CHECK(formula(body, "W =") == "W = m g = 3.000 kg x 9.81 m/s2 = 29.4 N");
    CHECK(formula(body, "off the wall") == "F = W x / y = 29.4 N x 18 mm / 300 mm = 1.8 N");
    CHECK(formula(body, "on it in all") == "R = sqrt(W^2 + F^2) = 29.5 N");
}

// The 8-15-17 triangle: rings 300 mm apart, 340 mm of cord.
TEST_CASE("The formulas of a cord over one hook have the numbers of the 8-15-17 triangle") {
    OnePiece one(HangerType::cord_one_hook, 2.0);
    one.piece().hanger.ring_spacing = 300;
    one.piece().hanger.cord_length = 340;
    const FreeBody body = one.body();
    CHECK(formula(body, "cos a") == "cos a = s / L = 300 mm / 340 mm, a = 28.1 deg");
    CHECK(formula(body, "from the rings") == "d = sqrt(L^2 - s^2) / 2 = 80 mm");
    // 17/16 and 15/16 of 19.61 N.
    CHECK(formula(body, "pull in the cord") ==
          "T = W / (2 sin a) = 19.6 N / (2 x sin 28.1 deg) = 20.8 N");
    CHECK(formula(body, "inward") == "H = W / (2 tan a) = 19.6 N / (2 x tan 28.1 deg) = 18.4 N");
    CHECK(formula(body, "strength") ==
          "4 times the weight, or the pull where that is more: 8.50 kg");
}

// Worked by hand: hooks 150 mm apart under the same cord: 37.86 degrees, T 0.8146 W, 0.171 W
// sideways on each hook.
TEST_CASE("Two hooks push the cord apart as much as it pulls them together") {
    OnePiece one(HangerType::cord_two_hooks, 2.0);
    one.piece().hanger.ring_spacing = 300;
    one.piece().hanger.cord_length = 340;
    one.piece().hanger.hook_spacing = 150;
    const FreeBody body = one.body();
    CHECK(body.forces[1].what == "left hook");
    CHECK(body.forces[1].newtons.x == Approx(-0.1714 * 19.6133).epsilon(0.001));
    CHECK(body.forces[1].newtons.y == Approx(19.6133 / 2));
    CHECK(body.forces[3].what == "right hook");
    CHECK(body.forces[3].newtons.x == -body.forces[1].newtons.x);
    CHECK(formula(body, "cos a") ==
          "cos a = (s - h) / (L - h) = (300 mm - 150 mm) / (340 mm - 150 mm), a = 37.9 deg");
    CHECK(formula(body, "on each hook, toward") ==
          "S = T (1 - cos a) = 16.0 N x (1 - cos 37.9 deg) = 3.4 N");
    CHECK(formula(body, "on each in all") == "R = sqrt((W / 2)^2 + S^2 + (F / 2)^2) = 10.4 N");
}

TEST_CASE("Strips are named by their corners, and the lower pairs take their part") {
    OnePiece one(HangerType::strips, 1.0);
    one.piece().fixing = wall::FixingTypeId{"strip_small"};
    const FreeBody body = one.body();
    std::vector<std::string> names;
    for (const Force& force : body.forces)
        if (force.kind == ForceKind::carried)
            names.push_back(force.what);
    CHECK(names == std::vector<std::string>{"pair at the top left", "pair at the top right",
                                            "pair at the bottom left", "pair at the bottom right"});
    CHECK(formula(body, "along the wall") == "W / n = 9.8 N / 4 = 2.5 N");
    CHECK(formula(body, "off the wall, on each") == "F / 2 = 0.10 N");
    CHECK(body.remarks.at(0) ==
          "The pairs below the top take 4.9 N of the weight and are pressed, not pulled; they keep "
          "the foot from swinging off the wall, and leave the pull at the top as it is.");
    CHECK(body.remarks.back() ==
          "Friction is left out, of the frame on the wall and of a cord on its hooks.");
}

TEST_CASE("A piece with strips at its top alone is told what is missing at the foot") {
    OnePiece one(HangerType::strips, 0.3);
    CHECK(one.body().remarks.at(0) ==
          "There is no pair at the foot: a knock there swings the frame out and peels the top "
          "pairs.");
}

TEST_CASE("Under a rail the cords carry straight up and slant back to the wall") {
    OnePiece one(HangerType::two_rings, 2.0);
    one.project.room.rail = 2425;
    one.piece().fixing = wall::FixingTypeId{"rail"};
    const FreeBody body = one.body();
    CHECK(body.forces[1].what == "left cord");
    CHECK(body.forces[1].at.x == Approx(40));
    CHECK(body.forces[1].at.y == Approx(375));
    CHECK(body.forces[1].newtons.y == Approx(19.6133 / 2));
    // 750 mm of cord, 10 mm to the middle of the frame, rings 375 mm up: 10 / (1/2 + 1 - 2/3) mm,
    // and as much of 19.6 N as that is of the cord.
    CHECK(body.remarks.at(0) ==
          "These are the forces of a piece held flat. It leans out until its cords slant enough: "
          "where it is tied comes to rest about 12 mm off the wall, and together they pull it "
          "back with 0.31 N. A hook that stands off the wall adds to that.");
    CHECK(formula(body, "toward the wall, to hold it flat") ==
          "F = W x / y = 19.6 N x 10 mm / 375 mm = 0.52 N");
    CHECK(formula(body, "down, on each cord") == "W / 2 = 9.8 N");
}

TEST_CASE("A cord over one rail hook slants from its rings, not from the hook behind the frame") {
    OnePiece one(HangerType::cord_one_hook, 2.0);
    one.project.room.rail = 2425;
    one.piece().fixing = wall::FixingTypeId{"rail"};
    one.piece().hanger.drop = 125;
    one.piece().hanger.ring_spacing = 300;
    one.piece().hanger.cord_length = 340;
    // The same rings, 750 mm below the rail: the same lean.
    CHECK_THAT(one.body().remarks.at(0),
               Catch::Contains("comes to rest about 12 mm off the wall, and the cord pulls it "
                               "back with 0.31 N"));
}

TEST_CASE("Forces are said in pounds beside inches, and bumpers add to the pull off the wall") {
    OnePiece one(HangerType::two_rings, 2.0);
    one.project.unit = units::LengthUnit::inch;
    const FreeBody body = one.body();
    CHECK(formula(body, "W =") == "W = m g = 4 lb 7 oz = 4.4 lbf");
    CHECK(formula(body, "down, on each") == "W / 2 = 2.2 lbf");
    // 10 mm + 3.2 mm x 125 / 375, 375 mm up: 0.58 N against 0.52 N.
    CHECK_THAT(body.remarks.at(0), Catch::Contains("bring the pull off the wall to 0.13 lbf"));
}

}  // namespace wallwright::hanging

#include "arrange/suggest.h"

#include "arrange/grow.h"
#include "growing.h"
#include "mounts/window.h"
#include "support/scenes.h"
#include "wall/find_in.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <optional>
#include <regex>
#include <string>

using namespace wallwright;
using namespace wallwright::arrange;

namespace {

const auto kGoOn = [](double) { return true; };

wall::Catalogue with_sizes() {
    wall::Catalogue catalogue = scenes::small_catalogue();
    const auto add = [&catalogue](const char* name, double width, double height) {
        catalogue.sizes.push_back({name, {width, height}, "for tests"});
    };
    add("a4", 210, 297);
    add("a3", 297, 420);
    add("24x30cm", 240, 300);
    add("30x40cm", 300, 400);
    add("40x50cm", 400, 500);
    add("8x10in", 203.2, 254);
    add("11x14in", 279.4, 355.6);
    add("16x20in", 406.4, 508);
    return catalogue;
}

/// The task with the suggestion as one more free piece, and the layout with it.
struct Hung {
    Task task;
    Layout layout;
};

Hung hung(const wall::Project& project, const Suggestion& suggestion) {
    Hung hung{task_of(project, with_sizes(), Free::waiting_alone), {}};
    hung.layout = fixed_part(hung.task);
    Item item;
    item.size = suggestion.frame.outside;
    hung.task.items.push_back(item);
    hung.layout.push_back(
        {static_cast<std::uint32_t>(hung.task.items.size() - 1), suggestion.place});
    return hung;
}

wall::Project any_wall() {
    wall::Project project = scenes::wall_of(4200, 2600);
    const auto side = [] { return 10.0 * *rc::gen::inRange(20, 60); };
    double left = 700;
    for (int i = 0; i < 4; ++i) {
        const geometry::Size size{side(), side()};
        const bool level = *rc::gen::arbitrary<bool>();
        scenes::add_hung(project, "h" + std::to_string(i),
                         {left, level ? 1250 : 1500 - size.height / 2}, size);
        left += size.width + 60;
    }
    if (*rc::gen::arbitrary<bool>())
        scenes::add_furniture(project, wall::FurnitureType::sofa,
                              WallRect::at({600, 0}, {2100, 800}));
    if (*rc::gen::arbitrary<bool>()) {
        scenes::add_furniture(project, wall::FurnitureType::lamp,
                              WallRect::at({3700, 0}, {300, 1600}));
        project.target = wall::FurnitureId{"lamp"};
    }
    return project;
}

const wall::Piece& titled(const wall::Project& project, const std::string& title) {
    const auto found = std::ranges::find(project.pieces, title, &wall::Piece::title);
    RC_ASSERT(found != project.pieces.end());
    return *found;
}

bool same(double a, double b) {
    return std::abs(a - b) < 0.6;  // mm; a tape
}

WallRect bounds_of_fixed(const wall::Project& project) {
    WallRect bounds = *place_of(project, project.pieces.front());
    for (const wall::Piece& piece : project.pieces)
        if (piece.at)
            bounds = geometry::hull(bounds, *place_of(project, piece));
    return bounds;
}

bool edges_hold(const std::string& edge, const WallRect& here, const WallRect& other) {
    if (edge == "lower")
        return same(here.bottom(), other.bottom());
    if (edge == "upper")
        return same(here.top(), other.top());
    if (edge == "left")
        return same(here.left(), other.left());
    return same(here.right(), other.right());
}

/// A step has a piece at the gap on one side and another over or under.
bool is_in_step(const wall::Project& project, const WallRect& here) {
    bool beside = false;
    bool over = false;
    for (const wall::Piece& piece : project.pieces) {
        if (!piece.at)
            continue;
        const WallRect one = *place_of(project, piece);
        beside = beside || (same(-geometry::overlap_x(one, here), project.style.gap) &&
                            geometry::overlap_y(one, here) > 0);
        over = over || (same(-geometry::overlap_y(one, here), project.style.gap) &&
                        geometry::overlap_x(one, here) > 0);
    }
    return beside && over;
}

double off_centre(const wall::Project& project, const WallRect& bounds) {
    return std::abs(bounds.centre().x - project.room.furniture.front().place.centre().x);
}

/// What a claim is held against: the wall, as a person with a tape would find it.
struct Held {
    const wall::Project& project;
    const Suggestion& suggestion;
    std::string claim;  ///< Without its capital.
    std::smatch said = {};

    bool says(const char* pattern) { return std::regex_match(claim, said, std::regex(pattern)); }
    WallRect place(int group) const { return *place_of(project, titled(project, said[group])); }
    const WallRect& here() const { return suggestion.place; }
    WallRect before() const { return bounds_of_fixed(project); }
    WallRect after() const { return geometry::hull(before(), here()); }
};

bool is_at_gap(const Held& held, const WallRect& one) {
    return same(
        std::max(-geometry::overlap_x(held.here(), one), -geometry::overlap_y(held.here(), one)),
        held.project.style.gap);
}

std::optional<bool> holds_of_neighbours(Held& held) {
    const WallRect& here = held.here();
    if (held.says("its (\\w+) edge lines up with (.+)"))
        return edges_hold(held.said[1], here, held.place(2));
    if (held.says("its upper and lower edges line up with (.+)"))
        return edges_hold("upper", here, held.place(1)) && edges_hold("lower", here, held.place(1));
    if (held.says("its sides line up with (.+)"))
        return edges_hold("left", here, held.place(1)) && edges_hold("right", here, held.place(1));
    if (held.says("its middle lines up with that of (.+)"))
        return same(here.centre().x, held.place(1).centre().x) ||
               same(here.centre().y, held.place(1).centre().y);
    if (held.says("hangs 60 mm from (.+)"))
        return is_at_gap(held, held.place(1));
    if (held.says("fits exactly between (.+) and (.+)"))
        return is_at_gap(held, held.place(1)) && is_at_gap(held, held.place(2));
    if (held.claim.starts_with("fills the step "))
        return is_in_step(held.project, here);
    return std::nullopt;
}

std::optional<bool> holds_of_outline(Held& held) {
    const WallRect before = held.before();
    const WallRect after = held.after();
    if (held.claim == "the group gets no wider and no higher")
        return same(before.width(), after.width()) && same(before.height(), after.height());
    if (held.says("ends where the group ends at the (\\w+)")) {
        const std::string side = held.said[1];
        return edges_hold(side == "top"      ? "upper"
                          : side == "bottom" ? "lower"
                                             : side,
                          held.here(), before);
    }
    if (held.claim == "its middle is on the centre line")
        return same(held.here().centre().y, 1500);
    if (held.claim == "brings the middle of the group to the centre line")
        return std::abs(after.centre().y - 1500) <= 50 && std::abs(before.centre().y - 1500) > 50;
    if (held.says("makes the group (\\d+) % as wide as the sofa")) {
        const double share = after.width() / 2100;
        return std::abs(share - std::stod(held.said[1]) / 100) < 0.006 && share >= 0.60 &&
               share <= 0.75;
    }
    if (held.claim == "leads on toward the lamp")
        return held.here().right() > before.right();
    if (held.claim == "brings the middle of the group nearer to that of the sofa")
        return off_centre(held.project, after) < off_centre(held.project, before);
    return std::nullopt;
}

std::optional<bool> holds_of_measures(const Held& held) {
    const auto gains = [&](const char* name) {
        const Hung now = hung(held.project, held.suggestion);
        const Layout before(now.layout.begin(), now.layout.end() - 1);
        const Measure* measure = find_measure(name);
        return measure->value(View(now.task, now.layout)) > measure->value(View(now.task, before));
    };
    if (held.claim == "balances the group")
        return gains("balance");
    if (held.claim == "makes the outline of the group less ragged")
        return gains("ragged_edge");
    if (held.claim == "makes the group more compact")
        return gains("compactness");
    return std::nullopt;
}

/// False also for a claim that nobody here knows how to hold.
bool claim_holds(const wall::Project& project, const Suggestion& suggestion, std::string claim) {
    claim.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(claim.front())));
    Held held{project, suggestion, claim};
    if (const auto holds = holds_of_neighbours(held))
        return *holds;
    if (const auto holds = holds_of_outline(held))
        return *holds;
    return holds_of_measures(held).value_or(false);
}

std::vector<std::string> claims_of(std::string reason) {
    RC_ASSERT(reason.ends_with('.'));
    reason.pop_back();
    const std::size_t cut = reason.find("; ");
    if (cut == std::string::npos)
        return {reason};
    return {reason.substr(0, cut), reason.substr(cut + 2)};
}

}  // namespace

TEST_CASE("Every suggestion is allowed and touches a group at the gap, by law") {
    rc::prop("places", [] {
        const wall::Project project = any_wall();
        const auto all = suggest(project, with_sizes(), {}, kGoOn);
        RC_ASSERT(!all.empty() && all.size() <= 5);
        for (const Suggestion& one : all) {
            const Hung now = hung(project, one);
            RC_ASSERT(is_allowed(now.task, now.layout));
            RC_ASSERT(same(one.place.width(), one.frame.outside.width));
            RC_ASSERT(same(one.place.height(), one.frame.outside.height));
            RC_ASSERT(std::any_of(now.layout.begin(), now.layout.end() - 1, [&](const Spot& spot) {
                return growing::at_the_gap(now.task, spot.place, one.place);
            }));
        }
    });
}

TEST_CASE("Each place and each size is suggested once, by law") {
    rc::prop("different", [] {
        const wall::Project project = any_wall();
        const auto all = suggest(project, with_sizes(), {}, kGoOn);
        for (std::size_t i = 0; i < all.size(); ++i)
            for (std::size_t j = 0; j < i; ++j) {
                RC_ASSERT(all[i].size_name != all[j].size_name);
                const double shared =
                    std::max(0.0, geometry::overlap_x(all[i].place, all[j].place)) *
                    std::max(0.0, geometry::overlap_y(all[i].place, all[j].place));
                RC_ASSERT(shared <
                          0.5 * std::min(all[i].place.size().area(), all[j].place.size().area()));
            }
    });
}

TEST_CASE("What a reason claims is so, by law") {
    rc::prop("reasons", [] {
        const wall::Project project = any_wall();
        for (const Suggestion& one : suggest(project, with_sizes(), {}, kGoOn))
            for (const std::string& claim : claims_of(one.reason))
                if (!claim_holds(project, one, claim))
                    RC_FAIL(one.reason + " / " + claim);
    });
}

TEST_CASE("The totals before and after are those of the group without and with the frame, by law") {
    rc::prop("totals", [] {
        const wall::Project project = any_wall();
        for (const Suggestion& one : suggest(project, with_sizes(), {}, kGoOn)) {
            Hung now = hung(project, one);
            now.task.items.back().frame = one.frame.colour;
            now.task.items.back().picture = wall::Print{}.colour;
            RC_ASSERT(std::abs(total_of(View(now.task, now.layout)) - one.after) < 1e-9);
            now.layout.pop_back();
            RC_ASSERT(std::abs(total_of(View(now.task, now.layout)) - one.before) < 1e-9);
        }
    });
}

TEST_CASE("A frame that fits a step between pieces is found and said to") {
    // By hand: over "Low" and left of "Tall" there is room for a frame of 330 x 430 mm, as high as
    // Tall: what a sheet of 300 x 400 mm goes into, with 2 x (20 - 6) mm of moulding and 2 mm of
    // clearance.
    wall::Project project = scenes::wall_of(4000, 2600);
    scenes::add_hung(project, "low", {1000, 1100}, {330, 300});
    scenes::add_hung(project, "tall", {1390, 1100}, {400, 790});
    SuggestOptions options;
    options.top = 20;
    const auto all = suggest(project, with_sizes(), options, kGoOn);
    const auto found = std::ranges::find(all, "30x40cm", &Suggestion::size_name);
    REQUIRE(found != all.end());
    CHECK(found->place == WallRect::at({1000, 1460}, {330, 430}));
    INFO(found->reason);
    CHECK(found->reason.starts_with("Fills the step at the "));
    CHECK(found == all.begin());
}

TEST_CASE("Where nothing hangs nothing is suggested") {
    CHECK(suggest(scenes::wall_of(3000, 2500), with_sizes(), {}, kGoOn).empty());
}

TEST_CASE("Frames outside the asked sizes are not tried") {
    SuggestOptions options;
    options.least_side = 300;
    options.most_side = 460;
    options.top = 50;
    const auto all = suggest(growing::row_over_sofa(0), with_sizes(), options, kGoOn);
    REQUIRE_FALSE(all.empty());
    for (const Suggestion& one : all) {
        CHECK(std::min(one.place.width(), one.place.height()) >= 300);
        CHECK(std::max(one.place.width(), one.place.height()) <= 460);
    }
}

TEST_CASE("Toward a target, the first suggestion leads on") {
    wall::Project project = growing::row_over_sofa(0);
    project.target = wall::FurnitureId{"lamp"};
    const auto all = suggest(project, with_sizes(), {}, kGoOn);
    REQUIRE_FALSE(all.empty());
    CHECK(all.front().place.left() >= 2220);
    CHECK(all.front().reason.find("toward the lamp") != std::string::npos);
}

TEST_CASE("No new frame goes behind a lamp or a plant") {
    wall::Project project = scenes::wall_of(4000, 2600);
    scenes::add_hung(project, "kelp", {1000, 1300}, {300, 400});
    const WallRect lamp = WallRect::at({1340, 0}, {300, 1900});
    scenes::add_furniture(project, wall::FurnitureType::lamp, lamp);
    SuggestOptions options;
    options.top = 50;
    for (const Suggestion& one : suggest(project, with_sizes(), options, kGoOn))
        CHECK_FALSE(geometry::overlaps(one.place, lamp));
}

TEST_CASE("Who stops the search has what was found until then") {
    int asked = 0;
    const auto some =
        suggest(growing::row_over_sofa(0), with_sizes(), {}, [&](double) { return ++asked < 3; });
    CHECK(asked == 3);
    CHECK(some.size() <= 2);
    CHECK_FALSE(some.empty());
}

TEST_CASE("A suggestion taken is a planned frame that is wished for") {
    const wall::Project project = growing::row_over_sofa(1);
    const Suggestion one = suggest(project, with_sizes(), {}, kGoOn).front();
    const wall::Project after = with_suggestion(project, one).value();
    CHECK(wall::faults(after).empty());
    REQUIRE(after.pieces.size() == project.pieces.size() + 1);
    const wall::Piece& piece = after.pieces.back();
    CHECK(piece.title == "Wished " + one.size_name + " frame");
    CHECK(piece.wished);
    CHECK(piece.state == wall::PieceState::planned);
    CHECK(piece.hanger.type == wall::HangerType::strips);
    CHECK(place_of(after, piece)->left() == Approx(one.place.left()).margin(0.01));
    CHECK(outside_size(after, piece) == one.frame.outside);
    const wall::Project twice = with_suggestion(after, one).value();
    CHECK(twice.pieces.back().id != piece.id);
    CHECK(piece.stage == 0);
}

TEST_CASE("A suggestion taken after a growth goes up in a stage of its own") {
    wall::Project project = growing::row_over_sofa(1);
    scenes::add_piece(project, "grown", {200, 2000}, {200, 200}).stage = 3;
    const Suggestion one = suggest(project, with_sizes(), {}, kGoOn).front();
    CHECK(with_suggestion(project, one).value().pieces.back().stage == 4);
}

#include "draw/hidden_lines.h"
#include "draw/looking.h"
#include "rules/assess.h"
#include "support/gallery.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;

namespace {

wall::Project bare_wall() {
    return scenes::wall_of(2000, 2400);
}

std::vector<Path<Wall>> stroked(const draw::WallDrawing& drawing, LineType type) {
    std::vector<Path<Wall>> found;
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        if (path.stroke && path.stroke->type == type)
            found.push_back(path);
    return found;
}

bool has_words(const draw::WallDrawing& drawing, const std::string& words) {
    return std::ranges::any_of(test::texts_in(drawing), [&](const test::WallText& text) {
        return text.text.find(words) != std::string::npos;
    });
}

/// As the rating has it, for what a load bar says.
rules::Assessment using_share(const wall::Project& project, double use, double margin) {
    rules::Assessment assessment = rules::assess(project, scenes::small_catalogue());
    assessment.hangings.front().use = use;
    assessment.hangings.front().margin = margin;
    return assessment;
}

draw::WallDrawing with_loads(const wall::Project& project, const rules::Assessment& assessment) {
    ElevationOptions options;
    options.loads = true;
    return elevation(project, assessment, options);
}

}  // namespace

TEST_CASE("Studs run up the whole wall at their spacing, and are named once") {
    wall::Project project = bare_wall();
    project.room.studs = wall::Studs{500, 400, 45};
    ElevationOptions large;
    large.scale = 0.1;
    const draw::WallDrawing drawing = test::drawn(project, large);
    const auto centres = stroked(drawing, LineType::long_dash_dotted);
    std::vector<double> at;
    for (const Path<Wall>& path : centres)
        if (path.start.x == path.steps.front().to.x) {
            at.push_back(path.start.x);
            CHECK(test::bounds_of(path).height() == Approx(2400));
        }
    CHECK(at == std::vector<double>{100, 500, 900, 1300, 1700});
    CHECK(stroked(drawing, LineType::dashed).size() == 10);
    // Where its edges would run together a stud is its centre line.
    ElevationOptions small;
    small.scale = 0.02;
    CHECK(stroked(test::drawn(project, small), LineType::dashed).empty());
    CHECK(test::count_text(drawing, "studs, 400 apart") == 1);
    ElevationOptions without;
    without.studs = false;
    CHECK(stroked(test::drawn(project, without), LineType::dashed).empty());
    CHECK_FALSE(has_words(test::drawn(project, without), "studs"));
}

TEST_CASE("Under a sloping ceiling studs end at the slope") {
    wall::Project project = scenes::attic_of(2000, 1000, 3000);
    project.room.studs = wall::Studs{1000, 600, 45};
    for (const Path<Wall>& path : stroked(test::drawn(project), LineType::long_dash_dotted))
        if (path.start.x == path.steps.front().to.x)
            CHECK(test::bounds_of(path).max.y == Approx(1000 + path.start.x));
}

TEST_CASE("What the room behind has is dotted and named while the zones are shown") {
    wall::Project project = bare_wall();
    scenes::add_fixture(project, wall::FixtureType::socket, Rect<Wall>::at({700, 300}, {80, 80}))
        .other_side = true;
    const draw::WallDrawing drawing = test::drawn(project);
    REQUIRE(stroked(drawing, LineType::dotted).size() == 1);
    CHECK(test::bounds_of(stroked(drawing, LineType::dotted).front()) ==
          Rect<Wall>::at({700, 300}, {80, 80}));
    CHECK(has_words(drawing, "other side"));
    ElevationOptions without;
    without.zones = false;
    CHECK(stroked(test::drawn(project, without), LineType::dotted).empty());
    CHECK_FALSE(has_words(test::drawn(project, without), "other side"));
}

TEST_CASE("Marks and fixings are layers apart from each other") {
    const wall::Project project = scenes::attic_gallery();
    ElevationOptions options;
    options.marks = false;
    const auto marks_in = [](const draw::WallDrawing& drawing) {
        return std::ranges::count_if(test::shapes_in<Path<Wall>>(drawing.shapes),
                                     [](const Path<Wall>& path) {
                                         return path.stroke && path.stroke->paint.ink == Ink::mark;
                                     });
    };
    CHECK(marks_in(test::drawn(project, options)) == 0);
    CHECK(test::count_lines(test::drawn(project, options), LineType::dashed) > 0);
    options.marks = true;
    options.fixings = false;
    CHECK(marks_in(test::drawn(project, options)) > 0);
    CHECK(test::count_lines(test::drawn(project, options), LineType::dashed) == 0);
}

TEST_CASE("A load bar is filled as far as the rating is in use and says it in words") {
    wall::Project project = bare_wall();
    scenes::add_piece(project, "kelp", {600, 1200}, {500, 600});
    struct Wanted {
        double use;
        const char* words;
        Ink ink;
    };
    for (const Wanted& wanted : {Wanted{0.3, "30 %", Ink::good}, Wanted{0.49, "49 %", Ink::good},
                                 Wanted{0.62, "62 %, over", Ink::stop}}) {
        CAPTURE(wanted.words);
        const draw::WallDrawing drawing = with_loads(project, using_share(project, wanted.use, 2));
        CHECK(test::count_text(drawing, wanted.words) == 1);
        std::vector<Path<Wall>> bars;
        for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
            if (path.fill && path.fill->ink == wanted.ink)
                bars.push_back(path);
        REQUIRE(bars.size() == 1);
        const Rect<Wall> filled = test::bounds_of(bars.front());
        const double whole = filled.width() / wanted.use;
        CHECK(std::ranges::any_of(
            test::shapes_in<Path<Wall>>(drawing.shapes), [&](const Path<Wall>& path) {
                return path.stroke && path.stroke->width == 0.35 && path.steps.size() == 1 &&
                       std::abs(path.start.x - filled.min.x - whole / 2) < 1e-6 &&
                       path.steps.front().to.x == path.start.x;
            }));
        CHECK(Rect<Wall>::at({600, 1200}, {500, 600}).contains(filled.min));
    }
}

TEST_CASE("A fixing that does not hold has no share, and its bar is in the colour of a stop") {
    wall::Project project = bare_wall();
    scenes::add_piece(project, "kelp", {600, 1200}, {500, 600});
    rules::Assessment assessment = using_share(project, 0.08, 2);
    wall::Finding stop;
    stop.rule = hanging::kFixingSuitsWall;
    stop.severity = wall::Severity::stop;
    assessment.hangings.front().findings.push_back(stop);
    const draw::WallDrawing drawing = with_loads(project, assessment);
    CHECK(test::count_text(drawing, "does not hold") == 1);
    CHECK_FALSE(has_words(drawing, "%"));
    for (const Path<Wall>& path : test::shapes_in<Path<Wall>>(drawing.shapes))
        CHECK_FALSE((path.fill && path.fill->ink == Ink::good));
}

TEST_CASE("A piece too small for a load bar has none, and one that cannot hang says so") {
    wall::Project project = bare_wall();
    scenes::add_piece(project, "wren", {600, 1200}, {60, 60});
    CHECK_FALSE(has_words(with_loads(project, using_share(project, 0.3, 2)), "%"));
    project = bare_wall();
    scenes::add_piece(project, "kelp", {600, 1200}, {500, 600});
    rules::Assessment assessment = using_share(project, 0, 1);
    assessment.hangings.front().fixings.clear();
    CHECK(test::count_text(with_loads(project, assessment), "no fixing") == 1);
}

TEST_CASE("From a rail a cord is seen down to the frame and hidden behind it") {
    wall::Project project = bare_wall();
    project.room.rail = 2200;
    scenes::add_piece(project, "kelp", {600, 1200}, {500, 600}).hanger.type =
        wall::HangerType::two_rings;
    hanging::Hanging hanging = rules::assess(project, scenes::small_catalogue()).hangings.front();
    hanging.fixings.clear();
    for (const double x : {700.0, 1000.0}) {
        hanging::Fixing hook;
        hook.kind = wall::FixingKind::rail_hook;
        hook.at = {x, 2200};
        hook.cord = 550;
        hanging.fixings.push_back(hook);
    }
    const FixingLines made = fixing_lines_of(project, hanging);
    for (const double x : {700.0, 1000.0}) {
        const auto runs = [x](const std::vector<Path<Wall>>& paths, double from, double to) {
            return std::ranges::any_of(paths, [&](const Path<Wall>& path) {
                return test::bounds_of(path) == Rect<Wall>{{x, to}, {x, from}};
            });
        };
        CHECK(runs(made.seen, 2200, 1800));
        CHECK(runs(made.hidden, 1800, 1650));
    }
    CHECK(test::count_text(test::drawn(project), "picture rail 2200") == 1);
}

TEST_CASE("Keyholes are drawn with their upper ends at the screws") {
    wall::Project project = bare_wall();
    wall::Piece& piece = scenes::add_piece(project, "kelp", {600, 1200}, {500, 600});
    piece.hanger.type = wall::HangerType::keyholes;
    hanging::Hanging hanging;
    hanging.piece = {"kelp"};
    hanging::Fixing screw;
    screw.kind = wall::FixingKind::screw;
    screw.at = {700, 1700};
    screw.footprint = {8, 8};
    hanging.fixings = {screw};
    const FixingLines made = fixing_lines_of(project, hanging);
    REQUIRE(made.hidden.size() == 2);
    CHECK(test::bounds_of(made.hidden.back()).max.y == Approx(1700));
    CHECK(test::bounds_of(made.hidden.back()).centre().x == Approx(700));
}

TEST_CASE("A floor and a ceiling off level run as measured and say by how much") {
    wall::Project project = bare_wall();
    project.datum.floor = wall::EndHeights{1500, 1488};
    project.datum.ceiling = wall::EndHeights{900, 891};
    const draw::WallDrawing drawing = test::drawn(project);
    CHECK(test::count_text(drawing, "floor 12 higher at this end") == 1);
    CHECK(test::count_text(drawing, "ceiling 9 lower at this end") == 1);
    const auto runs_to = [&](double left, double right) {
        return std::ranges::any_of(
            test::shapes_in<Path<Wall>>(drawing.shapes), [&](const Path<Wall>& path) {
                return path.steps.size() == 1 && path.start == Point<Wall>{0, left} &&
                       path.steps.front().to == Point<Wall>{2000, right};
            });
    };
    CHECK(runs_to(0, 12));
    CHECK(runs_to(2400, 2391));
    project.datum.floor = wall::EndHeights{1500, 1500};
    CHECK_FALSE(has_words(test::drawn(project), "floor"));
}

TEST_CASE("The edges that marks are measured from stand out") {
    wall::Project project = bare_wall();
    scenes::add_hung(project, "kelp", {600, 1200}, {300, 400});
    scenes::add_piece(project, "dune", {960, 1200}, {300, 400});
    CHECK_FALSE(has_words(test::drawn(project), "these edges"));
    project.datum.height = wall::DatumHeight::piece;
    project.datum.side = wall::DatumSide::right;
    project.datum.piece = wall::PieceId{"kelp"};
    const draw::WallDrawing drawing = test::drawn(project);
    CHECK(test::count_text(drawing, "marks from these edges") == 1);
    CHECK(std::ranges::any_of(test::shapes_in<Path<Wall>>(drawing.shapes),
                              [](const Path<Wall>& path) {
                                  return path.stroke && path.stroke->paint.ink == Ink::mark &&
                                         path.start.x == 900 && path.steps.front().to.x == 900;
                              }));
}

TEST_CASE("No layer's words run into each other with all of them shown") {
    for (wall::Project project : {scenes::attic_gallery(), scenes::salon_of(24)}) {
        project.room.studs = wall::Studs{200, 400, 45};
        project.room.rail = 1450;
        project.datum.floor = wall::EndHeights{1500, 1520};
        scenes::add_fixture(project, wall::FixtureType::socket,
                            Rect<Wall>::at({1500, 300}, {80, 80}))
            .other_side = true;
        ElevationOptions options;
        options.loads = true;
        for (const double scale : {0.1, 0.05, 0.02}) {
            options.scale = scale;
            CAPTURE(scale, project.title);
            CHECK(test::clashes(test::drawn(project, options), scale) ==
                  std::vector<std::string>{});
        }
    }
}

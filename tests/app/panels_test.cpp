#include "app/panels/panels.h"

#include "desk/documents.h"
#include "edits/pieces.h"
#include "headless.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

namespace {

using namespace wallwright;
using app::Headless;
using app::State;
using app::Ui;
using desk::Step;

desk::Session demo() {
    auto session = desk::open(WW_SOURCE "/assets/demo/attic.json");
    REQUIRE(session.has_value());
    return std::move(*session);
}

/// The column beside an empty canvas, as the window has it.
struct Scene {
    State state;
    Headless hands;

    explicit Scene(desk::Session session, float scale = 1)
        : state{std::move(session), {}}, hands({1280 * scale, 800 * scale}, scale) {
        hands.frame([this](Ui& ui) { draw(ui); });
        hands.settle();
    }

    void draw(Ui& ui) {
        ImGui::SetNextWindowPos({ui.px(950), ui.px(44)});
        ImGui::SetNextWindowSize({ui.px(330), ui.px(756)});
        ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
        ImGui::Begin("column", nullptr, ImGuiWindowFlags_NoDecoration);
        ImGui::PopStyleVar();
        column(ui, state);
        ImGui::End();
    }

    desk::Session& session() { return state.session; }
    void show(Step step) {
        state.step = step;
        hands.settle();
    }
    void select(const std::string& piece) {
        session().selection.set(wall::PieceId{piece});
        hands.settle();
    }
    const wall::Piece& piece(const std::string& id) {
        return *wall::find(session().project(), wall::PieceId{id});
    }
    wall::Size outside(const std::string& id) {
        return wall::outside_size(session().project(), piece(id));
    }
};

/// Names of the items whose sides are cut off or stick out of the column.
std::vector<std::string> cut_off(const Headless& hands) {
    std::vector<std::string> names;
    for (const auto& [name, box] : hands.ui.probe.items())
        if (box.min.x < box.clip.x || box.max.x > box.clip.z || box.max.x <= box.min.x)
            names.push_back(name);
    return names;
}

void open_all_sections(Headless& hands) {
    for (const char* name : {"piece/place", "piece/frame", "piece/picture", "piece/hanging"}) {
        const char* inside = std::string(name) == "piece/place"     ? "piece/title"
                             : std::string(name) == "piece/frame"   ? "piece/depth"
                             : std::string(name) == "piece/picture" ? "piece/mount"
                                                                    : "piece/hanger";
        if (!hands.has(inside))
            hands.click(name);
        REQUIRE(hands.has(inside));
    }
}

}  // namespace

TEST_CASE("A size typed for a piece is one step, which undo takes back") {
    Scene scene(demo());
    const wall::Project before = scene.session().project();
    scene.select("kelp");
    scene.hands.fill_in("piece/size", "420 x 520");
    CHECK(scene.outside("kelp") == wall::Size{420, 520});
    CHECK(scene.session().history().undo_label() == "Resize Kelp");
    scene.session().undo();
    CHECK(scene.session().project() == before);
    CHECK_FALSE(scene.session().history().can_undo());
}

TEST_CASE("Another subject of the column begins at its top") {
    Scene scene(demo());
    scene.show(Step::arrange);
    scene.hands.hover("arrange/group/0");
    REQUIRE_FALSE(scene.hands.is_in_sight("layouts/try"));
    scene.select("kelp");
    CHECK(scene.hands.is_in_sight("piece/place"));
    scene.session().selection.clear();
    scene.hands.settle();
    CHECK(scene.hands.is_in_sight("layouts/try"));
    scene.hands.hover("arrange/group/0");
    scene.show(Step::hang);
    scene.show(Step::arrange);
    CHECK(scene.hands.is_in_sight("layouts/try"));
}

TEST_CASE("Inches are understood in a project in mm") {
    Scene scene(demo());
    scene.select("kelp");
    scene.hands.fill_in("piece/size", "16 1/2 x 20 in");
    CHECK(scene.outside("kelp").width == Approx(419.1));
    CHECK(scene.outside("kelp").height == Approx(508));
}

TEST_CASE("Nonsense for a size changes nothing and says why") {
    Scene scene(demo());
    const wall::Project before = scene.session().project();
    scene.select("kelp");
    scene.hands.fill_in("piece/size", "as before");
    CHECK(scene.session().project() == before);
    CHECK(scene.hands.has("piece/size/reason"));
}

TEST_CASE("A typed left edge moves a planned piece and measures a hung one") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    scenes::add_hung(project, "dune", {1200, 1300}, {400, 500});
    Scene scene{desk::Session(project)};
    const std::string id = GENERATE("kelp", "dune");
    scene.select(id);
    scene.hands.fill_in("piece/left", "61 cm");
    CHECK(scene.piece(id).at == geometry::Point<geometry::Wall>{610, 1300});
}

TEST_CASE("Words in one piece's field do not turn up in another's") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    scenes::add_piece(project, "dune", {1200, 1300}, {400, 500});
    Scene scene{desk::Session(project)};
    scene.select("kelp");
    scene.hands.fill_in("piece/left", "nonsense");
    REQUIRE(scene.hands.has("piece/left/reason"));
    scene.select("dune");
    CHECK_FALSE(scene.hands.has("piece/left/reason"));
    scene.select("kelp");
    CHECK_FALSE(scene.hands.has("piece/left/reason"));
}

TEST_CASE("Nothing in the column is cut off at its sides, at either text size") {
    const auto scale = GENERATE(1.0F, 2.0F);
    const auto unit = GENERATE(units::LengthUnit::mm, units::LengthUnit::inch);
    Scene scene(demo(), scale);
    wall::Project project = scene.session().project();
    project.unit = unit;
    scene.session().apply("Unit", project);
    for (const Step step : {Step::room, Step::pieces, Step::arrange, Step::hang}) {
        CAPTURE(scale, static_cast<int>(unit), static_cast<int>(step));
        scene.session().selection.clear();
        scene.show(step);
        for (const char* part : {"room/behind", "room/conditions", "hang/tools", "hang/prices"})
            if (scene.hands.has(part))
                scene.hands.click(part);
        for (const char* part : {"room/studs", "hang/floor"})
            if (scene.hands.has(part))
                scene.hands.click(part);
        CHECK(cut_off(scene.hands) == std::vector<std::string>{});
        scene.select("kelp");
        open_all_sections(scene.hands);
        CHECK(cut_off(scene.hands) == std::vector<std::string>{});
    }
    scene.session().selection.set(
        std::vector<wall::PieceId>{project.pieces[0].id, project.pieces[1].id});
    scene.hands.settle();
    CHECK(scene.hands.has("command/swap-places"));
    CHECK(cut_off(scene.hands) == std::vector<std::string>{});
    scene.session().selection.set(project.room.furniture.front().id);
    scene.hands.settle();
    CHECK(scene.hands.has("thing/colour"));
    CHECK(cut_off(scene.hands) == std::vector<std::string>{});
}

TEST_CASE("Choosing a finding selects its pieces and points out its place") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    scenes::add_piece(project, "dune", {800, 1300}, {400, 500});
    Scene scene{desk::Session(project)};
    const std::vector<wall::Finding> findings = scene.session().assessment().findings;
    REQUIRE_FALSE(findings.empty());
    scene.hands.click("findings/0");
    CHECK(scene.session().selection.pieces() == findings.front().pieces);
    CHECK(scene.session().pointed_out == findings.front().place);
}

TEST_CASE("The button at a finding mends it as one step") {
    wall::Project project = scenes::wall_of(4000, 2400);
    scenes::add_piece(project, "kelp", {500, 1250}, {400, 500});
    scenes::add_piece(project, "dune", {960, 1250}, {400, 500});
    scenes::add_piece(project, "tide", {1440, 1250}, {400, 500});
    Scene scene{desk::Session(project)};
    const auto uneven = [&scene] {
        return std::ranges::count(scene.session().assessment().findings, "gaps-even",
                                  &wall::Finding::rule);
    };
    REQUIRE(uneven() == 1);
    const auto& findings = scene.session().assessment().findings;
    const auto index =
        std::ranges::find(findings, "gaps-even", &wall::Finding::rule) - findings.begin();
    for (std::size_t i = 0; i <= findings.size(); ++i)
        scene.hands.settle();
    scene.hands.click("findings/" + std::to_string(index) + "/fix");
    CHECK(uneven() == 0);
    scene.session().undo();
    CHECK(scene.session().project() == project);
}

TEST_CASE("A wall without a finding is told so") {
    Scene scene{desk::Session(scenes::wall_of(3000, 2400))};
    REQUIRE(scene.session().assessment().findings.empty());
    CHECK(scene.hands.has("findings/none"));
}

TEST_CASE("A button puts furniture before the wall and selects it") {
    Scene scene{desk::Session(scenes::wall_of(3000, 2400))};
    scene.show(Step::room);
    scene.hands.click("room/before/sofa");
    REQUIRE(scene.session().project().room.furniture.size() == 1);
    CHECK(scene.session().project().room.furniture.front().place.centre().x == 1500);
    CHECK(scene.session().selection.furniture().has_value());
    scene.hands.fill_in("thing/width", "200 cm");
    CHECK(scene.session().project().room.furniture.front().place.width() == 2000);
}

TEST_CASE("A frame of a usual size waits on the floor after a press") {
    Scene scene{desk::Session(scenes::wall_of(3000, 2400))};
    scene.show(Step::pieces);
    scene.hands.fill_in("pieces/size", "30 x 40 cm");
    scene.hands.click("pieces/add");
    REQUIRE(scene.session().project().pieces.size() == 1);
    const wall::Piece& piece = scene.session().project().pieces.front();
    CHECK(piece.state == wall::PieceState::waiting);
    CHECK(wall::outside_size(scene.session().project(), piece) == wall::Size{300, 400});
    scene.hands.click("pieces/list/A");
    CHECK(scene.session().selection.one_piece() == piece.id);
}

TEST_CASE("The wanted gap is typed where the arrangement is shown") {
    Scene scene{desk::Session(scenes::wall_of(3000, 2400))};
    scene.show(Step::arrange);
    scene.hands.fill_in("arrange/gap", "50");
    CHECK(scene.session().project().style.gap == 50);
}

TEST_CASE("The fixings in the drawer are counted where they are needed") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {1000, 1300}, {400, 500}).fixing =
        wall::FixingTypeId{"strip_large"};
    Scene scene{desk::Session(project)};
    scene.show(Step::hang);
    scene.hands.fill_in("hang/stock/strip_large", "12");
    CHECK(scene.session().project().stock == std::vector<wall::Stock>{{{"strip_large"}, 12, {}}});
    CHECK(scene.session().history().undo_label() == "Count the fixings");
    scene.hands.fill_in("hang/stock/strip_large", "0");
    CHECK(scene.session().project() == project);
}

TEST_CASE("A mount is put in and taken out by its switch") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    Scene scene{desk::Session(project)};
    scene.show(Step::pieces);
    scene.select("kelp");
    scene.hands.click("piece/mount");
    CHECK(scene.piece("kelp").mount.has_value());
    scene.hands.click("piece/mount");
    CHECK_FALSE(scene.piece("kelp").mount.has_value());
}

TEST_CASE("Another hanger gives up a fixing that does not go with it") {
    wall::Project project = scenes::wall_of(3000, 2400);
    wall::Piece& kelp = scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    kelp.fixing = wall::FixingTypeId{"strip_large"};
    Scene scene{desk::Session(project)};
    scene.show(Step::hang);
    scene.select("kelp");
    scene.hands.click("piece/hanger");
    scene.hands.click("piece/hanger/1");
    CHECK(scene.piece("kelp").hanger.type == wall::HangerType::sawtooth);
    CHECK_FALSE(scene.piece("kelp").fixing.has_value());
}

TEST_CASE("A mark selects its piece") {
    Scene scene(demo());
    scene.show(Step::hang);
    scene.hands.hover("hang/loads");
    scene.hands.click("hang/mark/1");
    CHECK(scene.session().selection.one_piece() ==
          scene.session().assessment().marks.marks.front().piece);
}

TEST_CASE("What frames not bought yet need has a heading of its own, and asks nothing twice") {
    wall::Project project = scenes::wall_of(3000, 2400);
    const auto add = [&project](const char* id, double left, const char* fixing) -> wall::Piece& {
        wall::Piece& piece = scenes::add_piece(project, id, {left, 1300}, {400, 500});
        piece.fixing = wall::FixingTypeId{fixing};
        return piece;
    };
    add("kelp", 500, "strip_large");
    Scene scene{desk::Session(project)};
    scene.show(Step::hang);
    CHECK(scene.hands.has("hang/needs/To have at hand"));
    CHECK_FALSE(scene.hands.has("hang/needs/Later, or not bought yet"));
    add("dune", 960, "strip_large").wished = true;
    add("tide", 1420, "strip_medium").wished = true;
    scene.session().apply("Wish", project);
    scene.hands.settle();
    CHECK(scene.hands.has("hang/needs/Later, or not bought yet"));
    scene.hands.fill_in("hang/stock/strip_large", "12");
    scene.hands.fill_in("hang/stock/strip_medium", "3");
    CHECK(scene.session().project().stock.size() == 2);
}

TEST_CASE("Marks have the stage of their piece beside them where the wall grows in stages") {
    wall::Project project = scenes::wall_of(3000, 2400);
    scenes::add_piece(project, "kelp", {500, 1300}, {400, 500});
    scenes::add_piece(project, "dune", {960, 1300}, {400, 500});
    Scene scene{desk::Session(project)};
    scene.show(Step::hang);
    REQUIRE(scene.hands.has("hang/mark/1"));
    CHECK_FALSE(scene.hands.has("hang/mark/1/stage"));
    project.pieces[1].stage = 1;
    scene.session().apply("Grow", project);
    scene.hands.settle();
    CHECK(scene.hands.has("hang/mark/1/stage"));
    CHECK(scene.hands.has("hang/mark/1/error"));
}

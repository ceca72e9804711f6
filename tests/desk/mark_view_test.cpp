#include "desk/mark_view.h"

#include "desk/mark_words.h"
#include "draw/looking.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

using namespace wallwright;
using namespace wallwright::desk;
using Catch::Matchers::Contains;
using geometry::Point;
using geometry::Wall;
using hanging::Mark;
using hanging::MarkKind;

namespace {

constexpr double kScale = 0.05;

/// Two pieces on one screw each, both measured.
Session session() {
    wall::Project project = scenes::wall_of(3600, 2400);
    for (const auto& [id, left] : {std::pair{"kelp", 800.0}, std::pair{"moss", 1260.0}}) {
        wall::Piece& piece = scenes::add_piece(project, id, {left, 1300}, {400, 300});
        piece.hanger.type = wall::HangerType::sawtooth;
        piece.hanger.drop = 12;
        piece.weighed = units::Kilograms{1};
    }
    return Session(project);
}

const Mark& first_of(const Session& session) {
    REQUIRE(session.assessment().marks.marks.size() == 2);
    return session.assessment().marks.marks.front();
}

Mark a_mark(MarkKind kind) {
    Mark mark;
    mark.number = 7;
    mark.piece = {"kelp"};
    mark.kind = kind;
    mark.what = "left hook";
    mark.below_top = 56;
    mark.across = 1234;
    mark.up = 1450;
    mark.across_error = 0.84;
    mark.up_error = 1.02;
    return mark;
}

}  // namespace

TEST_CASE("The mark under the pointer is the nearest one within reach") {
    const Session it = session();
    const hanging::MarksTable& marks = it.assessment().marks;
    const Point<Wall> at = first_of(it).at;
    REQUIRE(mark_at(marks, {at.x + 3, at.y + 4}, 10) != nullptr);
    CHECK(mark_at(marks, {at.x + 3, at.y + 4}, 10)->number == 1);
    CHECK(mark_at(marks, marks.marks[1].at, 1000)->number == 2);
    CHECK(mark_at(marks, {at.x + 6, at.y + 8}, 9.9) == nullptr);
    CHECK(mark_at({}, at, 1000) == nullptr);
}

TEST_CASE("A mark that is pointed at has a circle as large as its error, at scale") {
    const Session it = session();
    Mark mark = first_of(it);
    mark.across_error = 40;
    mark.up_error = 60;
    const auto paths = test::shapes_in<test::WallPath>(mark_overlay(it, mark, kScale));
    const auto is_error = [&mark](const test::WallPath& path) {
        return path.fill && geometry::distance(path.start, mark.at) == Approx(60) &&
               std::all_of(path.steps.begin(), path.steps.end(), [&mark](const auto& step) {
                   return geometry::distance(step.to, mark.at) == Approx(60);
               });
    };
    CHECK(std::count_if(paths.begin(), paths.end(), is_error) == 1);
}

TEST_CASE("It has the check measures that begin or end at it, with their lengths") {
    const Session it = session();
    const Mark& mark = first_of(it);
    const auto& checks = it.assessment().marks.checks;
    const auto count = std::count_if(checks.begin(), checks.end(), [](const auto& check) {
        return check.from == 1 || check.to == 1;
    });
    REQUIRE(count > 0);
    const auto texts = test::shapes_in<test::WallText>(mark_overlay(it, mark, kScale));
    REQUIRE(static_cast<long>(texts.size()) == count);
    CHECK(texts[0].text == units::format_number(checks[0].length, units::LengthUnit::mm));
}

TEST_CASE("A mark says its number, what it is, where it goes and what is left open") {
    const wall::Project project = session().project();
    const std::string words = mark_words(project, a_mark(MarkKind::hook));
    CHECK_THAT(words, Contains("Mark 7: Kelp, left hook\n1234 mm across, 1450 mm up\n"));
    CHECK_THAT(words, Contains("56 mm below the frame's top"));
    CHECK_THAT(words, Contains("± 0.9 mm across, ± 1.1 mm up and down"));
    Mark even = a_mark(MarkKind::hook);
    even.up_error = even.across_error;
    even.assumed = true;
    even.stage = 2;
    CHECK_THAT(mark_words(project, even), Contains("± 0.9 mm each way"));
    CHECK_THAT(mark_words(project, even), Contains("not measured yet"));
    CHECK_THAT(mark_words(project, even), Contains("stage 2"));
}

TEST_CASE("Down is said as down: below a level line, and from the ceiling") {
    wall::Project project = session().project();
    project.datum.height = wall::DatumHeight::ceiling;
    CHECK_THAT(mark_words(project, a_mark(MarkKind::hook)), Contains("1450 mm down"));
    project.datum.height = wall::DatumHeight::level_line;
    Mark below = a_mark(MarkKind::hook);
    below.up = -120;
    CHECK_THAT(mark_words(project, below), Contains("120 mm down"));
    below.up = 120;
    CHECK_THAT(mark_words(project, below), Contains("120 mm up"));
}

TEST_CASE("A mark on the rail says how much cord goes below it, and no height") {
    Mark mark = a_mark(MarkKind::rail);
    mark.cord = 350;
    const std::string words = mark_words(session().project(), mark);
    CHECK_THAT(words, Contains("1234 mm across on the rail, 350 mm of cord"));
    CHECK_THAT(words, Contains("± 0.9 mm across"));
    CHECK_THAT(words, !Contains("1450"));
    CHECK_THAT(mark_words(session().project(), a_mark(MarkKind::corner)),
               Contains("Kelp, left hook of the frame"));
}

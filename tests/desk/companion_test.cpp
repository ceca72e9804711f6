#include "desk/hang/companion.h"

#include "desk/hang/day_picture.h"
#include "desk/hang/deed_words.h"
#include "edits/pieces.h"
#include "edits/room.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;

namespace {

using wall::PieceId;
using wall::PieceState;

/// Kelp between Dune and Tide, on cords and a hook each; all planned.
wall::Project three() {
    wall::Project project = scenes::wall_of(3600, 2400);
    for (const auto& [id, x] :
         {std::pair("kelp", 1600.0), std::pair("dune", 1200.0), std::pair("tide", 2000.0)})
        scenes::add_piece(project, id, {x, 1300}, {300, 400}).hanger = {
            wall::HangerType::two_rings, 40.0, 200.0, std::nullopt, std::nullopt, {}};
    return project;
}

wall::Piece& named(wall::Project& project, const char* id) {
    return *std::ranges::find(project.pieces, PieceId{id}, &wall::Piece::id);
}

struct Day {
    Session session;
    Companion day;

    explicit Day(wall::Project project = three()) : session(std::move(project)) {
        day.follow(session);
    }
    void tick(int times = 1) {
        for (; times > 0; --times)
            REQUIRE(day.tick(session));
    }
    /// Marks, fixing and hanging of what is looked at.
    void hang_one() {
        const PieceId piece = day.now()->piece;
        while (day.now() != nullptr && day.now()->piece == piece)
            tick();
    }
    void change(const std::function<void(wall::Project&)>& by_hand) {
        REQUIRE(session.apply("Change", edits::change_project(session.kept(), by_hand)));
        day.follow(session);
    }
    void undo() {
        session.undo();
        day.follow(session);
    }
    [[nodiscard]] PieceState state_of(const char* id) const {
        return wall::find(session.kept(), PieceId{id})->state;
    }
    [[nodiscard]] std::size_t done() const {
        std::size_t count = 0;
        for (std::size_t i = 0; i < day.deeds().size(); ++i)
            count += day.is_done(i) ? 1 : 0;
        return count;
    }
    [[nodiscard]] std::vector<std::string> order() const {
        std::vector<std::string> words;
        for (const Deed& deed : day.deeds())
            words.push_back(deed.piece.text + " " + std::to_string(static_cast<int>(deed.kind)));
        return words;
    }
};

}  // namespace

TEST_CASE("Each piece is marked, fixed and hung before the next, in the order of the marks") {
    const Day it;
    std::vector<std::string> wanted;
    for (const hanging::Mark& mark : it.session.assessment().marks.marks) {
        const bool last = &mark == &it.session.assessment().marks.marks.back() ||
                          (&mark + 1)->piece != mark.piece;
        wanted.push_back(mark.piece.text + " 1");
        if (last) {
            wanted.push_back(mark.piece.text + " 2");
            wanted.push_back(mark.piece.text + " 3");
        }
    }
    REQUIRE(wanted.size() == 12);
    CHECK(it.order() == wanted);
    CHECK(it.day.at() == 0);
    CHECK(it.day.mark_of_marks() == std::pair<std::size_t, std::size_t>(1, 6));
    CHECK(it.day.piece_of_pieces() == std::pair<std::size_t, std::size_t>(1, 3));
}

TEST_CASE("A level line is drawn before anything is measured from it") {
    const auto height = GENERATE(wall::DatumHeight::level_line, wall::DatumHeight::piece);
    wall::Project project = three();
    scenes::add_hung(project, "moss", {300, 1500}, {300, 400});
    project.datum.height = height;
    project.datum.level_line = 1450;
    if (height == wall::DatumHeight::piece)
        project.datum.piece = PieceId{"moss"};
    const Day it(project);
    REQUIRE(it.day.now() != nullptr);
    CHECK(it.day.now()->kind == DeedKind::line);
    CHECK(it.day.now()->places.front().y == (height == wall::DatumHeight::piece ? 1900.0 : 1450.0));
    CHECK(std::ranges::count(it.day.deeds(), DeedKind::line, &Deed::kind) == 1);
    const DeedWords words = words_of(it.day, *it.day.now());
    CHECK(words.figures.size() == (height == wall::DatumHeight::piece ? 0 : 1));
}

TEST_CASE("Over a floor that runs off level the line's height is said at both ends") {
    wall::Project project = three();
    project.datum.height = wall::DatumHeight::level_line;
    project.datum.level_line = 1450;
    project.datum.floor = wall::EndHeights{1000, 988};
    const Day it(project);
    const DeedWords words = words_of(it.day, *it.day.now());
    REQUIRE(words.figures.size() == 2);
    CHECK(words.figures[0].number == "1450");
    CHECK(words.figures[1].number == "1438");
}

TEST_CASE("Of a mark both numbers are those of the table, with their errors and its checks") {
    Day it;
    it.tick(3);
    it.tick();
    const Deed& deed = *it.day.now();
    REQUIRE(deed.kind == DeedKind::mark);
    const hanging::MarksTable& table = it.day.assessment().marks;
    const hanging::Mark& mark = table.marks[deed.mark];
    const DeedWords words = words_of(it.day, deed);
    REQUIRE(words.figures.size() == 2);
    CHECK(words.figures[0].number == units::format_number(mark.across, units::LengthUnit::mm));
    CHECK(words.figures[1].number == units::format_number(mark.up, units::LengthUnit::mm));
    CHECK(words.figures[0].tolerance ==
          "± " + units::format_tolerance(mark.across_error, units::LengthUnit::mm));
    CHECK(words.checks.size() == static_cast<std::size_t>(std::ranges::count(
                                     table.checks, mark.number, &hanging::CheckMeasure::to)));
    CHECK_FALSE(words.checks.empty());
}

TEST_CASE("A mark below the level line is measured downward, without a minus") {
    wall::Project project = three();
    project.datum.height = wall::DatumHeight::level_line;
    project.datum.level_line = 1800;
    Day it(project);
    it.tick();
    const DeedWords words = words_of(it.day, *it.day.now());
    CHECK(words.figures[1].label.starts_with("Down from the level line"));
    CHECK(words.figures[1].number.front() != '-');
}

TEST_CASE("What pierces comes with a detector, strips with their packet") {
    wall::Project project = three();
    named(project, "kelp").hanger = {};
    const Day it(project);
    for (const Deed& deed : it.day.deeds()) {
        if (deed.kind != DeedKind::fix)
            continue;
        const DeedWords words = words_of(it.day, deed);
        REQUIRE_FALSE(words.cautions.empty());
        const bool on_strips = deed.piece == PieceId{"kelp"};
        CHECK((words.cautions.front().find("detector") == std::string::npos) == on_strips);
        CHECK((words.cautions.front().find("packet") != std::string::npos) == on_strips);
    }
}

TEST_CASE("Ticks go on to what is still to be done, and the last piece ends the day") {
    Day it;
    const PieceId first = it.day.now()->piece;
    it.tick(3);
    CHECK(it.state_of(first.text.c_str()) == PieceState::planned);
    CHECK(it.day.now()->kind == DeedKind::hang);
    it.tick();
    CHECK(it.state_of(first.text.c_str()) == PieceState::hung);
    CHECK(it.session.history().undo_label() ==
          "Hang " + wall::find(it.session.kept(), first)->title);
    CHECK(it.day.now()->kind == DeedKind::mark);
    it.hang_one();
    it.hang_one();
    CHECK(it.day.now() == nullptr);
    CHECK(it.day.is_all_done());
    CHECK(std::ranges::all_of(it.session.kept().pieces, [](const wall::Piece& piece) {
        return piece.state == PieceState::hung;
    }));
    CHECK_FALSE(it.day.tick(it.session));
}

TEST_CASE("Marks keep their numbers and their measures while pieces go up") {
    Day it;
    std::vector<std::string> before;
    for (const Deed& deed : it.day.deeds())
        if (deed.kind == DeedKind::mark)
            before.push_back(words_of(it.day, deed).task +
                             words_of(it.day, deed).figures[0].number);
    it.hang_one();
    std::vector<std::string> after;
    for (const Deed& deed : it.day.deeds())
        if (deed.kind == DeedKind::mark)
            after.push_back(words_of(it.day, deed).task + words_of(it.day, deed).figures[0].number);
    CHECK(after == before);
    CHECK(it.session.assessment().marks.marks.size() == 4);
}

TEST_CASE("Undo takes a piece down again and leads back to hanging it, with its marks still made") {
    Day it;
    const PieceId first = it.day.now()->piece;
    it.hang_one();
    it.tick();
    it.undo();
    CHECK(it.state_of(first.text.c_str()) == PieceState::planned);
    REQUIRE(it.day.now() != nullptr);
    CHECK(it.day.now()->kind == DeedKind::hang);
    CHECK(it.day.now()->piece == first);
    CHECK(it.done() == 4);
    it.session.redo();
    it.day.follow(it.session);
    CHECK(it.done() == 5);
}

TEST_CASE("Where a piece has moved its ticks come back, and others stay") {
    Day it;
    it.hang_one();
    const PieceId second = it.day.now()->piece;
    it.tick(3);
    REQUIRE(it.done() == 7);
    it.change([&](wall::Project& project) { named(project, second.text.c_str()).at->y += 40; });
    CHECK(it.done() == 4);
    CHECK(it.day.now()->piece == second);
    CHECK(it.day.now()->kind == DeedKind::mark);
    it.undo();
    CHECK(it.done() == 7);
}

TEST_CASE("Another datum changes the numbers and no tick") {
    Day it;
    it.tick(2);
    const std::string across = words_of(it.day, it.day.deeds()[0]).figures[0].number;
    it.change([](wall::Project& project) { project.datum.side = wall::DatumSide::right; });
    CHECK(it.done() == 2);
    CHECK(words_of(it.day, it.day.deeds()[0]).figures[0].number != across);
}

TEST_CASE("What was skipped comes again at the end, and back goes step by step") {
    Day it;
    it.day.skip();
    CHECK(it.day.at() == 1);
    it.day.back();
    it.day.back();
    CHECK(it.day.at() == 0);
    it.day.skip();
    it.tick();
    CHECK(it.day.at() == 2);
    it.day.skip();
    it.day.skip();
    it.hang_one();
    it.hang_one();
    CHECK(it.day.at() == 0);
    CHECK_FALSE(it.day.is_all_done());
    it.tick();
    it.tick();
    it.tick();
    CHECK(it.day.is_all_done());
}

TEST_CASE("What was ticked in error is taken back, a piece that hangs is planned again") {
    wall::Project project = three();
    for (wall::Piece& piece : project.pieces)
        piece.stage = 2;
    Day it(project);
    it.tick();
    it.day.back();
    REQUIRE(it.day.can_take_back());
    it.day.take_back(it.session);
    CHECK(it.done() == 0);
    CHECK_FALSE(it.day.can_take_back());
    const PieceId first = it.day.now()->piece;
    it.hang_one();
    it.day.back();
    REQUIRE(it.day.now()->kind == DeedKind::hang);
    it.day.back();
    CHECK_FALSE(it.day.can_take_back());
    it.day.go_to(3);
    it.day.take_back(it.session);
    CHECK(it.state_of(first.text.c_str()) == PieceState::planned);
    CHECK(wall::find(it.session.kept(), first)->stage == 2);
    CHECK(it.day.now()->kind == DeedKind::hang);
    CHECK(it.done() == 3);
}

TEST_CASE("All of today can be hung again from the start, and that can be undone") {
    Day it;
    const wall::Project morning = it.session.kept();
    it.hang_one();
    it.hang_one();
    it.tick();
    it.day.again(it.session);
    CHECK(it.session.kept() == morning);
    CHECK(it.done() == 0);
    CHECK(it.day.at() == 0);
    it.undo();
    CHECK(std::ranges::count(it.session.kept().pieces, PieceState::hung, &wall::Piece::state) == 2);
}

TEST_CASE("Today is the first stage; what comes later and what is not bought is left and named") {
    wall::Project project = three();
    named(project, "kelp").stage = 1;
    named(project, "dune").stage = 2;
    named(project, "tide").stage = 1;
    named(project, "tide").wished = true;
    Day it(project);
    CHECK(it.day.stage() == 1);
    REQUIRE(it.day.today().size() == 1);
    CHECK(it.day.today().front().piece == PieceId{"kelp"});
    REQUIRE(it.day.later().size() == 1);
    CHECK(it.day.later().front().stage == 2);
    CHECK(it.day.later().front().pieces == std::vector<PieceId>{{"dune"}});
    CHECK(it.day.not_bought() == std::vector<PieceId>{{"tide"}});
    it.hang_one();
    CHECK(it.day.is_all_done());
    CHECK(it.day.stage() == 1);
    it.day.next_stage(it.session);
    CHECK(it.day.stage() == 2);
    CHECK(it.day.now()->piece == PieceId{"dune"});
    CHECK(it.day.later().empty());
}

TEST_CASE("A piece hung by other means, or taken out of the plan, is no longer to be done") {
    Day it;
    const PieceId ids[] = {{"dune"}};
    REQUIRE(it.session.apply("Hang", edits::set_state(it.session.kept(), ids, PieceState::hung)));
    it.day.follow(it.session);
    const auto today = it.day.today();
    CHECK(std::ranges::find(today, PieceId{"dune"}, &UpToday::piece)->hangs);
    const PieceId gone[] = {{"tide"}};
    REQUIRE(it.session.apply("Remove", edits::remove_pieces(it.session.kept(), gone)));
    it.day.follow(it.session);
    CHECK(it.day.today().size() == 2);
    it.hang_one();
    CHECK(it.day.is_all_done());
}

TEST_CASE("Where nothing is planned there is nothing to do") {
    const Day it(scenes::wall_of(3600, 2400));
    CHECK(it.day.now() == nullptr);
    CHECK(it.day.deeds().empty());
    CHECK(it.day.is_all_done());
}

TEST_CASE("A piece that must not go up as it is planned says so at each of its steps") {
    wall::Project project = three();
    named(project, "kelp").weighed = units::Kilograms{90};
    const Day it(project);
    const auto without = it.day.without_fixing();
    CHECK(it.day.today().size() + without.size() == 3);
    for (const Deed& deed : it.day.deeds())
        CHECK(words_of(it.day, deed).stops.empty() == (deed.piece != PieceId{"kelp"}));
}

TEST_CASE("The words of a piece follow what is done of it") {
    Day it;
    const auto words = [&] { return state_words(it.day, it.day.today().front()); };
    CHECK(words() == "to be marked");
    it.tick();
    CHECK(words() == "1 of 2 marks");
    it.tick();
    CHECK(words() == "to be fixed");
    it.tick();
    CHECK(words() == "to be hung");
    it.tick();
    CHECK(words() == "hangs");
}

TEST_CASE("The picture shows the mark with both its numbers, and another for each deed") {
    Day it;
    const auto picture = [&] { return day_picture(it.day, "", 0.1); };
    const auto has = [&](const std::string& words) {
        return std::ranges::any_of(picture().shapes, [&](const auto& shape) {
            const auto* text = std::get_if<draw::Text<geometry::Wall>>(&shape);
            return text != nullptr && text->text == words;
        });
    };
    const DeedWords words = words_of(it.day, *it.day.now());
    CHECK(has(words.figures[0].number));
    CHECK(has(words.figures[1].number));
    for (int i = 0; i < 12; ++i) {
        const draw::WallDrawing before = picture();
        it.tick();
        CHECK_FALSE(picture() == before);
    }
    CHECK(day_picture(Companion(), "", 0.1).shapes.empty());
}

#include "edits/edit.h"
#include "edits/pieces.h"
#include "support/scenes.h"
#include "wall/validity.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

using namespace wallwright;
using namespace wallwright::wall;
using edits::Direction;
using edits::Line;

namespace {

constexpr Line kLines[] = {Line::left,   Line::centre_x, Line::right,
                           Line::bottom, Line::centre_y, Line::top};

/// mm to 0.01, as a file keeps them.
double any_mm(int low, int high) {
    return *rc::gen::inRange(low * 100, high * 100) / 100.0;
}

/// Some pieces anywhere, some of them hung, pinned, turned or waiting.
Project any_wall() {
    Project project = scenes::wall_of(5000, 3000);
    const int count = *rc::gen::inRange(3, 8);
    for (int i = 0; i < count; ++i) {
        const Size size{any_mm(50, 800), any_mm(50, 800)};
        Piece& piece = scenes::add_piece(project, "piece" + std::to_string(i),
                                         {any_mm(-500, 5000), any_mm(-500, 3000)}, size);
        piece.turned = *rc::gen::arbitrary<bool>();
        piece.pinned = *rc::gen::inRange(0, 8) == 0;
        if (*rc::gen::inRange(0, 8) == 0)
            piece.state = PieceState::hung;
        if (*rc::gen::inRange(0, 8) == 0) {
            piece.state = PieceState::waiting;
            piece.pinned = false;
            piece.at.reset();
        }
    }
    return project;
}

std::vector<PieceId> all_ids(const Project& project) {
    std::vector<PieceId> ids;
    for (const Piece& piece : project.pieces)
        ids.push_back(piece.id);
    return ids;
}

std::vector<PieceId> some_ids(const Project& project) {
    std::vector<PieceId> ids;
    for (const Piece& piece : project.pieces)
        if (*rc::gen::arbitrary<bool>())
            ids.push_back(piece.id);
    return ids;
}

double line_of(const Rect<Wall>& place, Line line) {
    const double lines[] = {place.left(),   place.centre().x, place.right(),
                            place.bottom(), place.centre().y, place.top()};
    return lines[static_cast<std::size_t>(line)];
}

Rect<Wall> place(const Project& project, const std::string& id) {
    return *place_of(project, *find(project, PieceId{id}));
}

/// Three in a row with gaps of 100 and 300 mm, 300 wide each.
Project row_of_three() {
    Project project = scenes::wall_of(3600, 2400);
    scenes::add_piece(project, "kelp", {0, 1300}, {300, 400});
    scenes::add_piece(project, "dune", {400, 1350}, {300, 500});
    scenes::add_piece(project, "tide", {1000, 1250}, {300, 300});
    return project;
}

const std::vector<PieceId> kThree = {{"tide"}, {"kelp"}, {"dune"}};

template <class T>
std::string problem_of(const Result<T>& result) {
    return result ? "no problem" : to_text(result.error());
}

}  // namespace

TEST_CASE("Shifting moves each piece once and keeps it to 0.01 mm") {
    const PieceId twice[] = {{"kelp"}, {"kelp"}};
    const Project shifted = edits::shift(row_of_three(), twice, {10.0 / 3, -0.001}).value();
    CHECK(find(shifted, PieceId{"kelp"})->at == Point<Wall>{3.33, 1300});
    CHECK(find(shifted, PieceId{"dune"})->at == Point<Wall>{400, 1350});
}

TEST_CASE("A turned piece keeps its centre") {
    const PieceId ids[] = {{"kelp"}};
    const Project turned = edits::turn(row_of_three(), ids).value();
    CHECK(place(turned, "kelp") == Rect<Wall>{{-50, 1350}, {350, 1650}});
    CHECK(edits::turn(turned, ids).value() == row_of_three());
}

TEST_CASE("Turning twice changes nothing") {
    rc::prop("for any pieces that may be moved", [] {
        const Project project = any_wall();
        const auto ids = some_ids(project);
        const auto once = edits::turn(project, ids);
        RC_PRE(once.has_value());
        RC_ASSERT(edits::turn(*once, ids).value() == project);
    });
}

TEST_CASE("Two that swap stand centre on centre where the other stood") {
    const Project swapped = edits::swap_places(row_of_three(), {"kelp"}, {"dune"}).value();
    CHECK(place(swapped, "kelp").centre() == place(row_of_three(), "dune").centre());
    CHECK(place(swapped, "dune").centre() == place(row_of_three(), "kelp").centre());
}

TEST_CASE("A piece from the floor takes the place of one that then waits") {
    Project project = row_of_three();
    scenes::add_waiting(project, "fern", {200, 200});
    const Project swapped = edits::swap_places(project, {"fern"}, {"kelp"}).value();
    CHECK(place(swapped, "fern") == Rect<Wall>{{50, 1400}, {250, 1600}});
    CHECK(find(swapped, PieceId{"fern"})->state == PieceState::planned);
    CHECK(find(swapped, PieceId{"kelp"})->state == PieceState::waiting);
    CHECK_FALSE(find(swapped, PieceId{"kelp"})->at.has_value());
}

TEST_CASE("Two that wait have no places to swap") {
    Project project = row_of_three();
    scenes::add_waiting(project, "fern", {200, 200});
    scenes::add_waiting(project, "reed", {200, 200});
    CHECK(problem_of(edits::swap_places(project, {"fern"}, {"reed"})) ==
          "pieces/fern: both pieces wait on the floor; put one of them on the wall first");
}

TEST_CASE("Swapping twice changes nothing, whichever is named first") {
    rc::prop("for any two that may be moved", [] {
        const Project project = any_wall();
        const PieceId first = *rc::gen::elementOf(all_ids(project));
        const PieceId second = *rc::gen::elementOf(all_ids(project));
        const auto once = edits::swap_places(project, first, second);
        RC_PRE(once.has_value());
        RC_ASSERT(edits::swap_places(*once, first, second).value() == project);
        RC_ASSERT(edits::swap_places(*once, second, first).value() == project);
    });
}

TEST_CASE("Pieces line up with the outermost of them") {
    const auto aligned = [](Line line) {
        return place(edits::align(row_of_three(), kThree, line).value(), "dune");
    };
    CHECK(aligned(Line::left).left() == 0);
    CHECK(aligned(Line::right).right() == 1300);
    CHECK(aligned(Line::centre_x).centre().x == 650);
    CHECK(aligned(Line::bottom).bottom() == 1250);
    CHECK(aligned(Line::top).top() == 1850);
    CHECK(aligned(Line::centre_y).centre().y == 1550);
    CHECK(aligned(Line::top).left() == 400);
}

TEST_CASE("Pieces line up with the first that hangs, and no other that hangs moves") {
    Project project = row_of_three();
    scenes::add_hung(project, "fern", {2000, 1000}, {300, 400});
    scenes::add_hung(project, "reed", {2400, 1100}, {300, 400});
    const std::vector<PieceId> ids = {{"kelp"}, {"fern"}, {"dune"}, {"reed"}};
    const Project aligned = edits::align(project, ids, Line::bottom).value();
    CHECK(place(aligned, "kelp").bottom() == 1000);
    CHECK(place(aligned, "dune").bottom() == 1000);
    CHECK(place(aligned, "reed").bottom() == 1100);
    CHECK(place(aligned, "tide").bottom() == 1250);
}

TEST_CASE("Aligned pieces have their lines in one place") {
    rc::prop("for any pieces with at most one that is fixed", [] {
        const Project project = any_wall();
        const Line line =
            *rc::gen::elementOf(std::vector<Line>(std::begin(kLines), std::end(kLines)));
        const auto ids = some_ids(project);
        const auto aligned = edits::align(project, ids, line);
        RC_PRE(aligned.has_value());
        std::vector<double> lines;
        int fixed = 0;
        for (const PieceId& id : ids) {
            const Piece& piece = *find(*aligned, id);
            if (!is_fixed(piece) || fixed++ == 0)
                lines.push_back(line_of(*place_of(*aligned, piece), line));
        }
        const auto [least, most] = std::minmax_element(lines.begin(), lines.end());
        RC_ASSERT(*most - *least < 0.0101);  // a centre may fall between two steps of 0.01
    });
}

TEST_CASE("One piece has nothing to line up with, and two have no gaps to compare") {
    const std::span<const PieceId> ids = kThree;
    CHECK(problem_of(edits::align(row_of_three(), ids.first(1), Line::left)) ==
          "it takes two pieces to line up; select two or more");
    CHECK(problem_of(edits::distribute(row_of_three(), ids.first(2), Direction::across)) ==
          "it takes three pieces to make gaps equal; select three or more");
}

TEST_CASE("Gaps come out equal between the outermost two, which stay") {
    const Project spread = edits::distribute(row_of_three(), kThree, Direction::across).value();
    CHECK(place(spread, "dune") == Rect<Wall>::at({500, 1350}, {300, 500}));
    CHECK(place(spread, "kelp") == place(row_of_three(), "kelp"));
    CHECK(place(spread, "tide") == place(row_of_three(), "tide"));
}

TEST_CASE("Without the room for it, the missing length is said") {
    Project project = row_of_three();
    project.unit = units::LengthUnit::cm;
    project.pieces[2].at->x = 580;
    CHECK(problem_of(edits::distribute(project, kThree, Direction::across)) ==
          "what is between Kelp and Tide is 2 cm too wide; move these two apart");
    CHECK(problem_of(edits::distribute(project, kThree, Direction::up)).find("too high") !=
          std::string::npos);
}

TEST_CASE("Distributing needs the inner ones free, not the outermost") {
    Project project = row_of_three();
    project.pieces[0].state = PieceState::hung;
    project.pieces[2].pinned = true;
    CHECK(edits::distribute(project, kThree, Direction::across).has_value());
    project.pieces[1].state = PieceState::hung;
    CHECK(problem_of(edits::distribute(project, kThree, Direction::across)) ==
          "pieces/dune: it hangs already; call it planned to move it");
}

TEST_CASE("Distributed pieces have equal gaps") {
    rc::prop("for any row", [] {
        Project project = scenes::wall_of(9000, 3000);
        const bool across = *rc::gen::arbitrary<bool>();
        const int count = *rc::gen::inRange(3, 8);
        for (int i = 0; i < count; ++i) {
            const double along = any_mm(0, 5000) + (i == 0 ? -2000 : i == 1 ? 8000 : 0);
            scenes::add_piece(project, "piece" + std::to_string(i),
                              across ? Point<Wall>{along, 100} : Point<Wall>{100, along},
                              {any_mm(50, 400), any_mm(50, 400)});
        }
        const auto spread = edits::distribute(project, all_ids(project),
                                              across ? Direction::across : Direction::up);
        RC_PRE(spread.has_value());
        std::vector<Rect<Wall>> places;
        for (const Placed& one : placed_pieces(*spread))
            places.push_back(one.place);
        const auto low = [across](const Rect<Wall>& r) { return across ? r.left() : r.bottom(); };
        const auto high = [across](const Rect<Wall>& r) { return across ? r.right() : r.top(); };
        std::sort(places.begin(), places.end(),
                  [&low](const auto& a, const auto& b) { return low(a) < low(b); });
        const double gap = low(places[1]) - high(places[0]);
        for (std::size_t i = 1; i + 1 < places.size(); ++i)
            RC_ASSERT(std::abs(low(places[i + 1]) - high(places[i]) - gap) < 0.0201);
    });
}

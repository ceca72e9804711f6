#include "desk/bench/match_hand.h"

#include "desk/bench/match_board.h"
#include "matching.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Wall;

namespace {

const wall::PieceId kOak{"oak"};
const wall::PieceId kAsh{"ash"};
const wall::PrintId kReed{"reed"};
const wall::PrintId kEbb{"ebb"};

/// The board of the mixed drawers, with the match found.
struct Board {
    Session session{mixed_drawers()};
    MatchChoice choice;
    MatchHand hand;
    MatchLayout layout;
    std::vector<Link> links;

    Board() { look(); }
    void look() {
        wait_for(choice, session);
        layout = lay_out_match(session.project(), choice.found(), {220, 150});
        links = links_of(session.project(), choice.found(), layout);
    }
    [[nodiscard]] Point<Wall> middle(const wall::PrintId& print) const {
        return layout.find(print)->place.centre();
    }
    [[nodiscard]] Point<Wall> middle(const wall::PieceId& piece) const {
        return layout.find(piece)->place.centre();
    }
    [[nodiscard]] Point<Wall> lock(const wall::PieceId& piece) const {
        return std::ranges::find(links, piece, &Link::piece)->lock_at;
    }
    [[nodiscard]] MatchScene scene() const { return {layout, links}; }
    void press(Point<Wall> at) { hand.press(session, scene(), {at, 1}); }
    void move(Point<Wall> at) { hand.move(session, scene(), {at, 1}); }
    void release(Point<Wall> at) { hand.release(session, scene(), {at, 1}); }
    void click(Point<Wall> at) {
        press(at);
        release(at);
    }
    void drag(Point<Wall> from, Point<Wall> to) {
        press(from);
        move({(from.x + to.x) / 2, (from.y + to.y) / 2});
        move(to);
        release(to);
    }
    [[nodiscard]] BoardShapes shapes() const {
        return match_board(session, scene(), hand, {}, layout.scale);
    }
    [[nodiscard]] std::optional<wall::PrintId> print_in(const wall::PieceId& piece) const {
        return find(session.kept(), piece)->print;
    }
};

std::vector<std::string> texts_of(const BoardShapes& shapes) {
    std::vector<std::string> texts;
    for (const auto& shape : shapes)
        if (const auto* text = std::get_if<draw::Text<Wall>>(&shape))
            texts.push_back(text->text);
    return texts;
}

bool says(const BoardShapes& shapes, const std::string& words) {
    return std::ranges::count(texts_of(shapes), words) > 0;
}

}  // namespace

TEST_CASE("A print dragged onto a frame is put into it, as one step") {
    Board board;
    board.press(board.middle(kEbb));
    board.move(board.middle(kOak));
    REQUIRE(board.hand.carried());
    CHECK(board.hand.carried()->over == kOak);
    CHECK(board.hand.carried()->will_do);
    CHECK(board.hand.carried()->words.find("borders of") != std::string::npos);
    CHECK(board.session.kept() == mixed_drawers());
    board.release(board.middle(kOak));
    CHECK(board.print_in(kOak) == kEbb);
    CHECK_FALSE(board.hand.is_busy());
    board.session.undo();
    CHECK(board.session.kept() == mixed_drawers());
}

TEST_CASE("A print is dragged from frame to frame, and back into the drawer") {
    Board board;
    board.drag(board.middle(kOak), board.middle(kAsh));
    CHECK(board.print_in(kAsh) == kReed);
    CHECK_FALSE(board.print_in(kOak));
    board.look();
    board.drag(board.middle(kAsh), board.middle(kEbb));
    CHECK_FALSE(board.print_in(kAsh));
}

TEST_CASE("A print let go beside all frames, or given up, changes nothing") {
    Board board;
    board.drag(board.middle(kEbb), {board.layout.extent.centre().x, board.layout.extent.min.y});
    CHECK(board.session.kept() == mixed_drawers());
    board.press(board.middle(kEbb));
    board.move(board.middle(kOak));
    board.hand.cancel();
    board.release(board.middle(kOak));
    CHECK(board.session.kept() == mixed_drawers());
}

TEST_CASE("An empty frame has nothing to drag") {
    Board board;
    board.drag(board.middle(kAsh), board.middle(kOak));
    CHECK(board.session.kept() == mixed_drawers());
}

TEST_CASE("A click chooses a print, or selects the piece of a frame, one instead of the other") {
    Board board;
    board.click(board.middle(kEbb));
    CHECK(board.hand.chosen == kEbb);
    board.click(board.middle(kOak));
    CHECK_FALSE(board.hand.chosen);
    CHECK(board.session.selection.one_piece() == kOak);
    board.click({board.layout.extent.centre().x, board.layout.extent.min.y});
    CHECK(board.session.selection.empty());
}

TEST_CASE("A click on the lock keeps the print in its frame, another lets it go") {
    Board board;
    board.click(board.lock(kOak));
    CHECK(find(board.session.kept(), kOak)->keeps_print);
    CHECK(board.session.history().undo_label() == "Keep Reed in its frame");
    board.look();
    board.click(board.lock(kOak));
    CHECK_FALSE(find(board.session.kept(), kOak)->keeps_print);
}

TEST_CASE("The pointer finds prints and frames first, then locks, then lines") {
    const Board board;
    const Link& today = *std::ranges::find(board.links, kOak, &Link::piece);
    const auto hit = [&](Point<Wall> at) { return board_hit(board.layout, board.links, at, 5); };
    CHECK(hit(board.middle(kEbb)) == BoardThing{kEbb});
    CHECK(hit(board.middle(kOak)) == BoardThing{kOak});
    CHECK(hit(today.lock_at) == BoardThing{LinkAt{kReed, kOak, true}});
    const Point<Wall> near_frame = today.points[today.points.size() - 3];
    CHECK(hit(near_frame) == BoardThing{LinkAt{kReed, kOak, false}});
    CHECK_FALSE(hit({board.layout.extent.centre().x, board.layout.extent.min.y - 100}));
}

TEST_CASE("What is pointed at says what it would cost and what else could be") {
    const Board board;
    const auto words = [&](const BoardThing& thing) {
        return board_words(board.session.kept(), board.choice, thing);
    };
    CHECK(words(kEbb).starts_with("Ebb goes into the frame Oak"));
    CHECK(words(kOak) == words(kEbb));
    CHECK(words(wall::PrintId{"loch"}).find("left over") != std::string::npos);
    CHECK(words(wall::PieceId{"elm"}).find("stays empty") != std::string::npos);
    CHECK(words(LinkAt{kReed, kOak, false}).starts_with("Today: Reed"));
    CHECK(words(LinkAt{kReed, kOak, true}).starts_with("Press to keep Reed"));
}

TEST_CASE("The picture names every print and frame with its size, and why some are left over") {
    const Board board;
    const BoardShapes shapes = board.shapes();
    for (const char* words : {"Prints (3)", "Frames (3)", "Ebb", "280 × 380", "Oak",
                              "takes 400 × 500", "Left over", "better so", "so today"})
        CHECK(says(shapes, words));
    CHECK_FALSE(says(shapes, "so today, and best"));
}

TEST_CASE("The frame under a print in the hand lights up, and words say what comes of it") {
    Board board;
    const std::size_t before = board.shapes().size();
    board.press(board.middle(kEbb));
    board.move(board.middle(kOak));
    CHECK(board.shapes().size() > before);
    const auto& extent = board.layout.extent;
    const BoardShapes carried =
        carried_print(board.session, *board.hand.carried(), {}, extent, board.layout.scale);
    CHECK(texts_of(carried).front().starts_with("Ebb goes into"));
    for (const auto& shape : carried)
        if (const auto* text = std::get_if<draw::Text<Wall>>(&shape)) {
            CHECK(extent.contains(text->at));
        }
}

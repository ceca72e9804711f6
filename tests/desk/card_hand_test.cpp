#include "desk/bench/card_hand.h"

#include "card_planning.h"
#include "desk/bench/card_board.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <utility>

using namespace wallwright;
using namespace wallwright::desk;
using geometry::Point;
using geometry::Wall;

namespace {

const BlankName kKelp{wall::PieceId{"kelp"}, 0};
const BlankName kDune{wall::PieceId{"dune"}, 0};
const BlankName kGull{wall::PieceId{"gull"}, 0};

struct Table {
    Session session{cards()};
    CardChoice choice;
    CardHand hand;
    CardLayout layout;
    std::vector<LaidBlank> blanks;

    Table() {
        choice.options = few_rounds_of_card();
        look();
    }
    void look() {
        wait_for(choice, session);
        hand.follow(choice);
        layout = lay_out_card(*choice.plan(), {220, 150});
        blanks = blanks_of(*choice.plan(), layout);
    }
    [[nodiscard]] const LaidBlank& blank(const BlankName& name) const {
        const auto found = std::ranges::find_if(
            blanks, [&](const LaidBlank& one) { return name_of(*choice.plan(), one) == name; });
        REQUIRE(found != blanks.end());
        return *found;
    }
    [[nodiscard]] CardScene scene() const { return {choice, layout, blanks, 1 / layout.scale}; }
    [[nodiscard]] const geometry::Rect<Wall>& sheet_of(const BlankName& name) const {
        return layout.find(blank(name).at)->place;
    }
    /// Where the hand has to let go so that the blank lies in the lower right corner of its sheet.
    [[nodiscard]] Point<Wall> corner_for(const BlankName& name) const {
        const auto& place = blank(name).place;
        const auto& sheet = sheet_of(name);
        return {sheet.max.x - place.width() / 2, sheet.min.y + place.height() / 2};
    }
    void press(Point<Wall> at) { hand.press(session, scene(), {at, 1, false}); }
    void move(Point<Wall> at) { hand.move(session, scene(), {at, 1, false}); }
    void release(Point<Wall> at) { hand.release(session, scene(), {at, 1, false}); }
    void drag(const BlankName& name, Point<Wall> to) {
        press(blank(name).place.centre());
        move(to);
        release(to);
    }
};

}  // namespace

TEST_CASE("A blank let go elsewhere on its sheet is kept there, and stays when all is laid anew") {
    Table table;
    const Point<Wall> to = table.corner_for(kKelp);
    table.drag(kKelp, to);
    REQUIRE(table.session.kept().kept_blanks.size() == 1);
    const wall::KeptBlank kept = table.session.kept().kept_blanks.front();
    CHECK(kept.piece == kKelp.piece);
    CHECK(kept.sheet == wall::CardSheetId{"cream"});
    CHECK(table.session.history().undo_label() == "Keep the blank for Kelp");
    CHECK(table.hand.carried());
    table.look();
    CHECK_FALSE(table.hand.carried());
    const LaidBlank& laid = table.blank(kKelp);
    CHECK(is_kept(*table.choice.plan(), laid));
    CHECK(geometry::distance(laid.place.centre(), to) < 1);
    table.session.undo();
    CHECK(table.session.kept() == cards());
}

TEST_CASE("Over its sheet the hand says where the blank would lie, beside it what to do") {
    Table table;
    table.press(table.blank(kKelp).place.centre());
    table.move(table.corner_for(kKelp));
    REQUIRE(table.hand.carried());
    CHECK(table.hand.carried()->kept);
    CHECK(table.hand.carried()->words.find("at an edge") != std::string::npos);
    table.move(table.sheet_of(kGull).centre());
    CHECK_FALSE(table.hand.carried()->over);
    CHECK(table.hand.carried()->words == "Let it go on a sheet of its own card.");
    table.release(table.sheet_of(kGull).centre());
    CHECK(table.session.kept() == cards());
}

TEST_CASE("A hand near the edge of a sheet lets the blank go with all its edges on it") {
    Table table;
    const auto& sheet = table.sheet_of(kKelp);
    table.drag(kKelp, {sheet.max.x - 20, sheet.min.y + 20});
    REQUIRE(table.session.kept().kept_blanks.size() == 1);
    table.look();
    CHECK(table.blank(kKelp).place.max.x == Approx(sheet.max.x));
    CHECK(table.blank(kKelp).place.min.y == Approx(sheet.min.y));
}

TEST_CASE("A blank that would leave the card is not kept, and it is told why") {
    Table table;
    const auto& sheet = table.sheet_of(kKelp);
    const Point<Wall> to{sheet.max.x - 20, sheet.min.y + 20};
    table.press(table.blank(kKelp).place.centre());
    table.hand.release(table.session, table.scene(), {to, 1, true});
    CHECK(table.session.kept().kept_blanks.empty());
    REQUIRE(table.session.notice);
    CHECK(table.session.notice->is_problem);
}

TEST_CASE("The lock of a blank keeps it where it lies, and frees it") {
    Table table;
    const auto click = [&table] {
        const Point<Wall> lock = lock_of(table.blank(kDune), table.scene().unit);
        table.press(lock);
        table.release(lock);
    };
    click();
    REQUIRE(table.session.kept().kept_blanks.size() == 1);
    CHECK(table.hand.chosen == kDune);
    table.look();
    click();
    CHECK(table.session.kept().kept_blanks.empty());
    CHECK(table.session.history().undo_label() == "Free the blank for Dune");
}

TEST_CASE("While the card is laid out anew, a drop and a lock change nothing and say so") {
    Table table;
    wall::Project other = cards();
    other.card.front().count = 1;
    table.session.apply("Count the card", other);
    table.choice.follow(table.session, true);
    REQUIRE(table.choice.is_stale());
    const auto is_told = [&table] {
        const auto notice = std::exchange(table.session.notice, std::nullopt);
        return notice && notice->text.find("laid out anew") != std::string::npos;
    };
    table.drag(kKelp, table.corner_for(kKelp));
    CHECK(is_told());
    CHECK_FALSE(table.hand.carried());
    const Point<Wall> lock = lock_of(table.blank(kDune), table.scene().unit);
    table.press(lock);
    table.release(lock);
    CHECK(is_told());
    keep_or_free(table.session, table.scene(), kDune);
    CHECK(is_told());
    CHECK(table.session.kept() == other);
}

TEST_CASE("A blank that the plan has no sheet for cannot be kept, and it is told why") {
    Table table;
    keep_or_free(table.session, table.scene(), {wall::PieceId{"kelp"}, 3});
    REQUIRE(table.session.notice);
    CHECK(table.session.notice->text.find("Kelp") != std::string::npos);
    CHECK(table.session.kept() == cards());
}

TEST_CASE("A click chooses a blank and its piece, one on the bare board neither") {
    Table table;
    const Point<Wall> at = table.blank(kGull).place.centre();
    table.press(at);
    table.release(at);
    CHECK(table.hand.chosen == kGull);
    CHECK(table.session.selection.one_piece() == kGull.piece);
    table.press({-500, -500});
    CHECK_FALSE(table.hand.chosen);
    CHECK(table.session.selection.empty());
}

TEST_CASE("A blank in the hand is turned, but not one of a card with a grain") {
    Table table;
    table.press(table.blank(kKelp).place.centre());
    table.move(table.sheet_of(kKelp).centre());
    const bool before = table.hand.carried()->turned;
    const geometry::Size size = table.hand.carried()->place.size();
    table.hand.turn(table.session, table.scene());
    CHECK(table.hand.carried()->turned != before);
    CHECK(is_same_size(table.hand.carried()->place.size(), size.turned()));
    table.hand.cancel();
    table.press(table.blank(kGull).place.centre());
    table.move(table.sheet_of(kGull).centre());
    table.hand.turn(table.session, table.scene());
    CHECK_FALSE(table.hand.carried()->turned);
    REQUIRE(table.session.notice);
    CHECK(table.session.notice->text.find("grain") != std::string::npos);
}

TEST_CASE("A drag that is given up leaves no trace") {
    Table table;
    table.press(table.blank(kKelp).place.centre());
    table.move(table.corner_for(kKelp));
    table.hand.cancel();
    table.release(table.corner_for(kKelp));
    CHECK(table.session.kept() == cards());
    CHECK_FALSE(table.hand.is_busy());
}

TEST_CASE("The picture has a heading for each card, and the overlay a lock for what is kept") {
    Table table;
    const auto overlay = [&table] {
        return card_overlay(table.scene(), table.hand, table.layout.extent).size();
    };
    const CardShapes shapes =
        card_board(*table.choice.plan(), table.layout, units::LengthUnit::mm, table.layout.scale);
    const auto says = [&shapes](const std::string& words) {
        return std::ranges::any_of(shapes, [&words](const draw::Shape<Wall>& shape) {
            const auto* text = std::get_if<draw::Text<Wall>>(&shape);
            return text != nullptr && text->text == words;
        });
    };
    CHECK(says("Card 1: mount board, 1.4 mm, as cream"));
    CHECK(says("Card 2: mount board, 1.4 mm, as slate"));
    CHECK(says("Kelp"));
    CHECK(overlay() == 0);
    keep_or_free(table.session, table.scene(), kDune);
    table.look();
    CHECK(overlay() > 0);
}

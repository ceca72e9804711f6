#include "mounts/match/match.h"

#include "mounts/match/shop_name.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <tuple>

namespace wallwright::mounts {

namespace {

using geometry::Size;
using wall::PieceId;
using wall::PrintId;
using wall::Project;

constexpr wall::Colour kGrey{0x80, 0x80, 0x80};

/// Outside of a new frame that takes a sheet of this size.
Size outside_for(Size blank) {
    const wall::Frame frame;
    const double around = 2 * (frame.moulding_width - frame.rebate_width) + kRebateClearance;
    return {blank.width + around, blank.height + around};
}

/// All grey, so that colours cost nothing.
Project grey_wall() {
    Project project = scenes::wall_of(4000, 2500);
    wall::Mount mount;
    mount.id = {"grey"};
    mount.colour = kGrey;
    project.mounts.push_back(mount);
    return project;
}

wall::Piece& add_frame(Project& project, const std::string& id, Size blank) {
    wall::Piece& piece = scenes::add_waiting(project, id, outside_for(blank));
    piece.mount = wall::MountId{"grey"};
    scenes::frame_named(project, id).colour = kGrey;
    return piece;
}

void add_print(Project& project, const std::string& id, Size size) {
    wall::Print print;
    print.id = {id};
    print.size = size;
    print.colour = kGrey;
    project.prints.push_back(print);
}

/// "kelp oak" for each pair.
std::vector<std::string> names(const Match& match) {
    std::vector<std::string> all;
    for (const Pair& pair : match.pairs)
        all.push_back(fmt::format("{} {}", pair.print.text, pair.piece.text));
    return all;
}

Project two_by_two() {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_frame(project, "ash", {290, 378});
    add_print(project, "kelp", {210, 297});
    add_print(project, "dune", {200, 200});
    return project;
}

Size random_size() {
    return {static_cast<double>(*rc::gen::inRange(100, 500)),
            static_cast<double>(*rc::gen::inRange(100, 500))};
}

Project random_wall() {
    Project project = grey_wall();
    const int frames = *rc::gen::inRange(0, 6);
    const int prints = *rc::gen::inRange(0, 6);
    for (int i = 0; i < frames; ++i)
        add_frame(project, fmt::format("f{}", i), random_size());
    for (int i = 0; i < prints; ++i)
        add_print(project, fmt::format("p{}", i), random_size());
    return project;
}

/// What a match is judged by.
std::pair<std::size_t, Cost> worth(const Match& match) {
    return {match.left_prints.size(), match.total};
}

}  // namespace

// Borders seen at the sides and above, with 5 mm of overlap and 5 mm of lip. Kelp's window is
// 200 x 287: 45 and 51.5 in oak, so 6.5 points; 40 and 40.5 in ash, so 0.5. Dune's is 190 x 190: 50
// and 100 in oak, so 50; 45 and 89 in ash, so 44. Either way it is 50.5 in all.
TEST_CASE("Two ways that cost the same are told by the order of prints and frames") {
    const Match match = match_prints(two_by_two());
    CHECK(names(match) == std::vector<std::string>{"kelp oak", "dune ash"});
    CHECK(match.total == 5050);
}

TEST_CASE("Of equal ways the one that moves fewest prints is taken") {
    Project project = two_by_two();
    project.pieces[1].print = PrintId{"kelp"};
    const Match match = match_prints(project);
    CHECK(names(match) == std::vector<std::string>{"kelp ash", "dune oak"});
    CHECK(match.total == 5050);
    CHECK_FALSE(match.pairs[0].moves);
    CHECK(match.pairs[1].moves);
}

TEST_CASE("A pair says what it costs, part by part, and in a sentence") {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_print(project, "kelp", {210, 297});
    const Match match = match_prints(project);
    REQUIRE(match.pairs.size() == 1);
    const Pair& pair = match.pairs.front();
    REQUIRE(pair.fitting);
    CHECK(pair.fitting->of(Flaw::uneven).cost == 650);
    CHECK(pair.fitting->cost() == match.total);
    CHECK(pair.text ==
          "kelp goes into the frame Oak, with borders of 45 mm at the sides, 51.5 mm above and "
          "51.5 mm below; 6.5 mm narrower at the sides than above.");
    CHECK(pair.alternatives.empty());
}

TEST_CASE("A print that its piece keeps stays, and the others make do") {
    Project project = two_by_two();
    project.pieces[0].print = PrintId{"dune"};
    project.pieces[0].keeps_print = true;
    add_frame(project, "elm", {279, 366});
    const Match match = match_prints(project);
    // Free, dune would go into elm.
    CHECK(names(match) == std::vector<std::string>{"kelp elm", "dune oak"});
    CHECK(match.pairs[1].kept);
    CHECK(match.pairs[1].alternatives.empty());
    CHECK(match.total == 5000);
}

TEST_CASE("A kept print stays even where it does not fit, and the sentence says so") {
    Project project = grey_wall();
    wall::Piece& oak = add_frame(project, "oak", {200, 300});
    oak.print = PrintId{"kelp"};
    oak.keeps_print = true;
    add_frame(project, "ash", {300, 400});
    add_print(project, "kelp", {210, 297});
    const Match match = match_prints(project);
    REQUIRE(names(match) == std::vector<std::string>{"kelp oak"});
    CHECK_FALSE(match.pairs[0].fitting);
    CHECK(match.total == 0);
    CHECK(match.pairs[0].text ==
          "kelp is kept in the frame Oak, which takes 200 x 300 mm, and does not fit; set it free "
          "or crop it.");
}

// In elm kelp has 34.5 all round, so 0 points, and dune 39.5 and 83, so 43.5; the others are as in
// the first test.
TEST_CASE("A print's next two frames are told with what all pairs would cost then") {
    Project project = two_by_two();
    add_frame(project, "elm", {279, 366});
    const Match match = match_prints(project);
    CHECK(names(match) == std::vector<std::string>{"kelp ash", "dune elm"});
    CHECK(match.total == 4400);
    const std::vector<Alternative>& kelp = match.pairs[0].alternatives;
    REQUIRE(kelp.size() == 2);
    // Dune is then in ash.
    CHECK(kelp[0].piece == PieceId{"elm"});
    CHECK(kelp[0].total == 4400);
    CHECK(kelp[0].text ==
          "With kelp in the frame Elm all pairs would cost 44 points, as much as now.");
    CHECK(kelp[1].piece == PieceId{"oak"});
    CHECK(kelp[1].total == 650 + 4350);
    CHECK(kelp[1].text ==
          "With kelp in the frame Oak all pairs would cost 50 points, 6 points more.");
}

TEST_CASE("An alternative that takes another print's frame away names that print") {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_frame(project, "ash", {200, 300});
    add_print(project, "kelp", {120, 220});
    add_print(project, "dune", {210, 310});
    const Match match = match_prints(project);
    REQUIRE(names(match) == std::vector<std::string>{"kelp ash", "dune oak"});
    REQUIRE(match.pairs[0].alternatives.size() == 1);
    CHECK(match.pairs[0].alternatives[0].left == std::vector{PrintId{"dune"}});
    CHECK(match.pairs[0].alternatives[0].text.ends_with(", and dune would have no frame."));
    // Dune fits nowhere else.
    CHECK(match.pairs[1].alternatives.empty());
}

TEST_CASE("Prints and frames left over are named with the reason") {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_print(project, "kelp", {210, 297});
    add_print(project, "reef", {500, 700});
    add_print(project, "dune", {210, 290});
    const Match match = match_prints(project);
    REQUIRE(match.pairs.size() == 1);
    REQUIRE(match.left_prints.size() == 2);
    CHECK(match.left_prints[0].fits_none);
    CHECK(match.left_prints[0].text == "reef, 500 x 700 mm, is left over: no frame here suits it.");
    CHECK(match.left_prints[1].text ==
          "dune, 210 x 290 mm, is left over: every frame that suits it holds another print.");
    project.prints.clear();
    const Match empty = match_prints(project);
    REQUIRE(empty.left_pieces.size() == 1);
    CHECK(empty.left_pieces[0].text == "The frame Oak, which takes 300 x 400 mm, stays empty.");
}

TEST_CASE("A frame that lies the other way is turned for its print unless it hangs") {
    Project project = grey_wall();
    add_frame(project, "oak", {400, 300});
    add_print(project, "kelp", {210, 310});
    const Match match = match_prints(project);
    REQUIRE(match.pairs.size() == 1);
    CHECK(match.pairs[0].fitting->turned);
    CHECK(match.pairs[0].text.starts_with("kelp goes into the frame Oak turned a quarter, with"));
    project.pieces[0].state = wall::PieceState::hung;
    CHECK(match_prints(project).left_prints.size() == 1);
}

TEST_CASE("The windows of a mount with several keep their prints, and its frame takes no other") {
    Project project = two_by_two();
    wall::Mount row;
    row.id = {"row"};
    row.openings = {{PrintId{"dune"}, {}}};
    project.mounts.push_back(row);
    project.pieces[0].mount = row.id;
    const Match match = match_prints(project);
    CHECK(names(match) == std::vector<std::string>{"kelp ash"});
    CHECK(match.left_prints.empty());
    CHECK(match.left_pieces.empty());
}

TEST_CASE("One more frame is chosen by the prints it frames, then by what it saves") {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_print(project, "kelp", {210, 297});
    add_print(project, "reef", {400, 500});
    const auto offered = [](const std::string& name, Size blank) {
        wall::Frame frame;
        frame.outside = outside_for(blank);
        frame.colour = kGrey;
        return FrameOnOffer{name, frame};
    };
    const std::vector<OneMore> found =
        one_more_frame(project, {offered("a5", {148, 210}), offered("a4", {210, 297}),
                                 offered("50x60cm", {500, 600}), offered("50x70cm", {500, 700})});
    // a4 takes kelp for nothing and saves its 6.5 points; a5 helps no one.
    REQUIRE(found.size() == 3);
    CHECK(found[0].size_name == "50x60cm");
    CHECK(found[0].framed == std::vector{PrintId{"reef"}});
    CHECK(found[0].text == "One more frame, 50 × 60 cm, would take reef.");
    CHECK(found[1].size_name == "50x70cm");
    CHECK(found[2].size_name == "a4");
    CHECK(found[2].saved == 650);
    CHECK(found[2].text ==
          "One more frame, A4, would take kelp without a mount and save 6.5 points.");
    CHECK(one_more_frame(project, {offered("a5", {148, 210})}).empty());
}

TEST_CASE("One more frame that a print fills is said to do without a mount") {
    Project project = grey_wall();
    add_frame(project, "oak", {150, 200});
    add_print(project, "reef", {400, 500});
    const auto text_of = [&](Size blank) {
        wall::Frame frame;
        frame.outside = outside_for(blank);
        const auto found = one_more_frame(project, {{"16x20in", frame}});
        REQUIRE(found.size() == 1);
        CHECK(found[0].mounted == (blank.width > 401));
        return found[0].text;
    };
    CHECK(text_of({400, 500}) == "One more frame, 16 × 20 in, would take reef without a mount.");
    CHECK(text_of({500, 600}) == "One more frame, 16 × 20 in, would take reef.");
}

TEST_CASE("Sizes are called as in a shop") {
    CHECK(shop_name("a3") == "A3");
    CHECK(shop_name("4x6in") == "4 × 6 in");
    CHECK(shop_name("3.5x5in") == "3.5 × 5 in");
    CHECK(shop_name("letter") == "letter");
    CHECK(shop_name("my xl") == "my xl");
}

TEST_CASE("One more frame may help a print by taking another out of its way") {
    Project project = grey_wall();
    add_frame(project, "oak", {300, 400});
    add_print(project, "kelp", {210, 297});
    add_print(project, "dune", {230, 330});
    wall::Frame small;
    small.outside = outside_for({210, 297});
    const std::vector<OneMore> found = one_more_frame(project, {{"a4", small}});
    REQUIRE(found.size() == 1);
    CHECK(found[0].print == PrintId{"kelp"});
    CHECK(found[0].framed.size() == 1);
}

TEST_CASE("The order of prints and frames does not change what a match is worth") {
    rc::prop("for any small wall", [] {
        Project project = random_wall();
        const Match before = match_prints(project);
        std::ranges::reverse(project.prints);
        const auto by = *rc::gen::inRange<std::size_t>(0, project.pieces.size() + 1);
        std::ranges::rotate(project.pieces,
                            project.pieces.begin() + static_cast<std::ptrdiff_t>(by));
        RC_ASSERT(worth(match_prints(project)) == worth(before));
    });
}

TEST_CASE("A lock is kept in every match and never makes it better") {
    rc::prop("for any small wall", [] {
        Project project = random_wall();
        RC_PRE(!project.prints.empty() && !project.pieces.empty());
        const Match before = match_prints(project);
        wall::Piece& piece =
            project.pieces[*rc::gen::inRange<std::size_t>(0, project.pieces.size())];
        piece.print = project.prints[*rc::gen::inRange<std::size_t>(0, project.prints.size())].id;
        piece.keeps_print = true;
        const Match after = match_prints(project);
        const auto kept = std::ranges::find(after.pairs, *piece.print, &Pair::print);
        RC_ASSERT(kept != after.pairs.end());
        RC_ASSERT(kept->piece == piece.id);
        RC_ASSERT(kept->kept);
        if (kept->fitting)
            RC_ASSERT(worth(after) >= worth(before));
    });
}

TEST_CASE("A frame more never makes a match worse") {
    rc::prop("for any small wall", [] {
        Project project = random_wall();
        const Match before = match_prints(project);
        add_frame(project, "more", random_size());
        RC_ASSERT(worth(match_prints(project)) <= worth(before));
    });
}

TEST_CASE("Alternatives cost no less than the match, unless they leave another print out") {
    rc::prop("for any small wall", [] {
        const Project project = random_wall();
        const Match match = match_prints(project);
        for (const Pair& pair : match.pairs)
            for (const Alternative& other : pair.alternatives) {
                RC_ASSERT(other.piece != pair.piece);
                if (other.left.empty())
                    RC_ASSERT(other.total >= match.total);
            }
    });
}

TEST_CASE("Every print and every piece is in a pair or left over, once") {
    rc::prop("for any small wall", [] {
        const Project project = random_wall();
        const Match match = match_prints(project);
        std::vector<PrintId> prints;
        std::vector<PieceId> pieces;
        for (const Pair& pair : match.pairs) {
            prints.push_back(pair.print);
            pieces.push_back(pair.piece);
        }
        for (const LeftPrint& left : match.left_prints)
            prints.push_back(left.print);
        for (const LeftPiece& left : match.left_pieces)
            pieces.push_back(left.piece);
        std::ranges::sort(prints);
        std::ranges::sort(pieces);
        std::vector<PrintId> all_prints;
        std::vector<PieceId> all_pieces;
        for (const wall::Print& print : project.prints)
            all_prints.push_back(print.id);
        for (const wall::Piece& piece : project.pieces)
            all_pieces.push_back(piece.id);
        RC_ASSERT(prints == all_prints);
        RC_ASSERT(pieces == all_pieces);
    });
}

}  // namespace wallwright::mounts

// The sentences of a mount's cutting sheet.
#include "design_cases.h"
#include "mounts/design/cutting_words.h"

#include <algorithm>

using namespace wallwright;
using namespace wallwright::mounts;
using test::print_of;
using units::LengthUnit;
using Sentences = std::vector<std::string>;

namespace {

MountDesign design_with(const wall::Mount& mount) {
    return design_mount(test::frame_for({300, 400}), mount, {print_of("kelp", 210, 297)});
}

/// Where the first sentence with these words stands; the number of sentences where there is none.
std::size_t place_of(const Sentences& sentences, const std::string& words) {
    const auto found = std::ranges::find_if(sentences, [&words](const std::string& sentence) {
        return sentence.find(words) != std::string::npos;
    });
    return static_cast<std::size_t>(found - sentences.begin());
}

bool says(const Sentences& sentences, const std::string& words) {
    return place_of(sentences, words) < sentences.size();
}

}  // namespace

TEST_CASE("The steps of one layer tell blank, lines, check and cut in this order") {
    const Sentences steps = cutting_steps(design_with({}), LengthUnit::mm);
    REQUIRE(steps.size() == 6);
    CHECK(steps[0] ==
          "Trim the blank to 300 x 400 mm; it is square when both diagonals are 500 mm.");
    CHECK(place_of(steps, "face down") == 1);
    CHECK(steps[2] ==
          "For kelp: 51.5 mm from the left edge as it lies, 51.5 mm from the right, 58 mm from "
          "the upper and 58 mm from the lower one. Both diagonals from cross to cross are 345.5 "
          "mm; cut nothing before they are.");
    CHECK(place_of(steps, "mount cutter, which holds its blade at 45 degrees") == 3);
    CHECK(place_of(steps, "from corner cross to corner cross, never to the edge") == 4);
    CHECK(steps[5] ==
          "Turn it over: the piece cut out is free now. Lift it out whole and keep it for a "
          "smaller mount.");
}

// A framer's answer on qeeebo.com, "How do you properly cut a double mat": trim both blanks, cut
// the top window, tape the lower blank behind, cut the lower window.
TEST_CASE("Of two layers the lower one is stuck behind the cut top one before it is cut") {
    wall::Mount mount;
    mount.under.push_back(test::under_by(4));
    const Sentences steps = cutting_steps(design_with(mount), LengthUnit::mm);
    CHECK(place_of(steps, "Trim all 2 blanks") == 0);
    const std::size_t first_cut = place_of(steps, "Cut the window");
    const std::size_t free = place_of(steps, "the piece cut out is free now");
    const std::size_t stuck = place_of(steps, "stick the blank of layer 2 behind");
    const std::size_t lower_lines = place_of(steps, "Lay layer 2 face down");
    CHECK(first_cut < free);
    CHECK(free < stuck);
    CHECK(steps[stuck].starts_with("Fill the window in front with scrap card 1.4 mm thick"));
    CHECK(stuck < lower_lines);
    CHECK(lower_lines < steps.size());
    CHECK(std::ranges::count_if(steps, [](const std::string& step) {
              return step.starts_with("Cut the window");
          }) == 2);
}

TEST_CASE("Each of several windows has its own lines in the steps") {
    const std::vector<wall::Print> prints{print_of("kelp", 90, 120), print_of("reef", 90, 120)};
    const wall::Mount mount = test::mount_for(prints, wall::WindowOrder::row);
    const Sentences steps =
        cutting_steps(design_mount(test::frame_for({300, 400}), mount, prints), LengthUnit::mm);
    // The left window on the front is farther from the left edge on the back.
    CHECK(says(steps, "For window a, kelp: 166.5 mm from the left edge as it lies, 56.5"));
    CHECK(says(steps, "For window b, reef: 56.5 mm from the left edge as it lies, 166.5"));
    CHECK(says(steps, "the pieces cut out are free now"));
}

TEST_CASE("The line is held as the edge asks") {
    wall::Mount mount;
    CHECK(says(cutting_steps(design_with(mount), LengthUnit::mm),
               "at the face the window comes out 1.4 mm larger on each side"));
    mount.edge = wall::WindowEdge::straight;
    const Sentences steps = cutting_steps(design_with(mount), LengthUnit::mm);
    CHECK(says(steps, "Hold the knife upright on the line"));
    CHECK_FALSE(says(steps, "45 degrees"));
    CHECK(knife_cautions(design_with(mount)).size() == 5);
}

// At 45 degrees the face is one thickness away from the back, along the cut as across it.
TEST_CASE("A bevel is cut one thickness past its crosses, so that the corners meet at the face") {
    wall::Mount mount;
    mount.card.thickness = 2.2;
    CHECK(
        says(cutting_steps(design_with(mount), LengthUnit::inch),
             "one thickness of the card, 2.2 mm, before the first cross and comes out 2.2 mm past "
             "the next"));
    CHECK(says(cutting_steps(design_with(mount), LengthUnit::mm),
               "Turn the card a quarter after each cut"));
    mount.edge = wall::WindowEdge::straight;
    CHECK(says(cutting_steps(design_with(mount), LengthUnit::mm),
               "in at one cross and out at the next"));
}

TEST_CASE("The last look has the reveal of each layer to measure, and what shows of its colour") {
    wall::Mount mount;
    mount.under = {test::under_by(4), test::under_by(5, 2.2)};
    const Sentences steps = cutting_steps(design_with(mount), LengthUnit::mm);
    // The third board is 0.8 mm thicker, so its line is 5.8 mm off, which a rule has as 6.
    CHECK(steps.back() ==
          "Look from the front whether the reveal is even all round: 4 mm of layer 2 (2.6 mm of "
          "its colour beside the bevel), 5.2 mm of layer 3 (3.8 mm of its colour beside the "
          "bevel).");
    CHECK(says(steps, "scrap card 2.8 mm thick"));
    mount.edge = wall::WindowEdge::straight;
    CHECK(cutting_steps(design_with(mount), LengthUnit::mm).back() ==
          "Look from the front whether the reveal is even all round: 4 mm of layer 2, 5 mm of "
          "layer 3.");
}

TEST_CASE("The hinges hang the print by its upper edge where the window shows it") {
    const Sentences steps = hinging_steps(design_with({}), LengthUnit::mm);
    CHECK(steps[0].starts_with("Cut an undermount to 300 x 400 mm"));
    CHECK(says(steps, "acid-free mount card 1.4 mm thick"));
    CHECK(says(steps, "1 mm apart"));
    CHECK(says(steps,
               "Lay kelp on the undermount, its upper left corner 45 mm from the left "
               "edge and 51.5 mm from the top as seen from the front."));
    CHECK(says(steps, "by its upper edge alone from two T-hinges"));
    CHECK(says(steps, "No self-adhesive tape"));
}

TEST_CASE("A floating print is marked and hung on its card, and nothing is cut but the blank") {
    wall::Mount mount;
    mount.floats = true;
    const Sentences steps = cutting_steps(design_with(mount), LengthUnit::mm);
    CHECK(says(steps, "corners of kelp on the face of the card"));
    CHECK_FALSE(says(steps, "Cut "));
    CHECK(says(steps, "spacers of 3 mm or more"));
    CHECK_FALSE(says(hinging_steps(design_with(mount), LengthUnit::mm), "undermount"));
    CHECK(says(hinging_steps(design_with(mount), LengthUnit::mm),
               "on the card, its upper left corner 45 mm from the left"));
}

TEST_CASE("The sentences use the person's unit") {
    const Sentences steps = cutting_steps(design_with({}), LengthUnit::cm);
    CHECK(says(steps, "30 x 40 cm"));
    CHECK(says(steps, "5.15 cm from the left edge"));
    CHECK(says(cutting_steps(design_with({}), LengthUnit::inch), "2 in from the left edge"));
}

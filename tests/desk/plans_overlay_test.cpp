#include "desk/plans_overlay.h"

#include "draw/labels.h"
#include "draw/looking.h"
#include "growing.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::desk;
using draw::LineType;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;

namespace {

constexpr double kScale = 0.05;

using Path = draw::Path<Wall>;
using Text = draw::Text<Wall>;

std::vector<Path> of_type(const WallShapes& shapes, LineType type) {
    std::vector<Path> found = test::shapes_in<Path>(shapes);
    std::erase_if(found,
                  [type](const Path& path) { return !path.stroke || path.stroke->type != type; });
    return found;
}

Suggestions found_for(Session& session) {
    Suggestions suggestions;
    suggestions.start(session);
    wait_for([&] {
        suggestions.follow(session);
        return !suggestions.is_running();
    });
    return suggestions;
}

}  // namespace

TEST_CASE("A dotted curve leads from the nearest piece to the target and says so") {
    const WallShapes shapes = target_overlay(Session(growing_wall()), {}, kScale);
    const auto curves = of_type(shapes, LineType::dotted);
    REQUIRE(curves.size() == 1);
    CHECK(curves[0].start.x > 1660);
    CHECK(curves[0].start.x < 1800);
    CHECK(curves[0].steps.at(0).to.x < 3200);
    CHECK(curves[0].steps.at(0).to.x > 3060);
    CHECK(curves[0].steps.at(0).controls->first.y > curves[0].start.y);
    const auto words = test::shapes_in<Text>(shapes);
    REQUIRE(words.size() == 1);
    CHECK(words[0].text == "grows toward Floor lamp");
}

TEST_CASE("What the curve says stays clear of the figures on the wall, or is left out") {
    const Session session(growing_wall());
    const auto alone = test::shapes_in<Text>(target_overlay(session, {}, kScale));
    REQUIRE(alone.size() == 1);
    const Rect<Wall> taken = draw::estimated_box(alone[0], kScale);
    Text figure = alone[0];
    figure.text = "60";
    const auto beside = test::shapes_in<Text>(target_overlay(session, {figure}, kScale));
    REQUIRE(beside.size() == 1);
    CHECK_FALSE(geometry::overlaps(draw::estimated_box(beside[0], kScale),
                                   draw::estimated_box(figure, kScale)));
    WallShapes figures;
    for (double y = taken.min.y - 2000; y < taken.max.y + 3000; y += taken.height() / 2) {
        figure.at.y = y;
        figures.emplace_back(figure);
    }
    CHECK(test::shapes_in<Text>(target_overlay(session, figures, kScale)).empty());
    CHECK(of_type(target_overlay(session, figures, kScale), LineType::dotted).size() == 1);
}

TEST_CASE("The curve bends upward to the left as well") {
    wall::Project project = growing_wall();
    project.target = Point<Wall>{50, 1500};
    const auto curves = of_type(target_overlay(Session(project), {}, kScale), LineType::dotted);
    REQUIRE(curves.size() == 1);
    CHECK(curves[0].steps.at(0).to.x < 800);
    CHECK(curves[0].steps.at(0).controls->first.y > 1500);
}

TEST_CASE("Without a target, or once it is reached, there is no curve") {
    wall::Project project = growing_wall();
    project.target.reset();
    CHECK(target_overlay(Session(project), {}, kScale).empty());
    project.target = Point<Wall>{1000, 1500};
    CHECK(of_type(target_overlay(Session(project), {}, kScale), LineType::dotted).empty());
}

TEST_CASE("A point to grow to has a ring, a part of the wall a dotted box") {
    wall::Project project = growing_wall();
    project.target = Point<Wall>{1000, 1500};
    CHECK(test::shapes_in<Path>(target_overlay(Session(project), {}, kScale)).size() == 1);
    project.target = Rect<Wall>{{3000, 1800}, {3800, 2300}};
    CHECK(of_type(target_overlay(Session(project), {}, kScale), LineType::dotted).size() == 2);
}

TEST_CASE("Each suggestion has a dashed frame at its place with its number") {
    Session session(growing_wall());
    const Suggestions suggestions = found_for(session);
    const std::size_t count = suggestions.list().size();
    REQUIRE(count > 1);
    const WallShapes shapes = suggestions_overlay(session, suggestions, {}, kScale);
    CHECK(of_type(shapes, LineType::dashed).size() == count);
    CHECK(of_type(shapes, LineType::dashed)[0].start == suggestions.list()[0].place.min);
    for (std::size_t i = 0; i < count; ++i) {
        const auto texts = test::shapes_in<Text>(shapes);
        CHECK(std::ranges::count(texts, std::to_string(i + 1), &Text::text) == 1);
    }
}

TEST_CASE("The suggestion pointed out lies on top, filled and with a thicker line") {
    Session session(growing_wall());
    Suggestions suggestions = found_for(session);
    REQUIRE(suggestions.list().size() > 1);
    suggestions.point_out(0);
    const auto frames =
        of_type(suggestions_overlay(session, suggestions, {}, kScale), LineType::dashed);
    CHECK(frames.back().start == suggestions.list()[0].place.min);
    CHECK(frames.back().fill);
    CHECK(frames.back().stroke->width > frames.front().stroke->width);
    CHECK_FALSE(frames.front().fill);
}

namespace {

/// A label on the wall's colour whose box the frame's upper edge goes through.
Text label_across(const Rect<Wall>& frame) {
    Text label{{frame.centre().x, frame.top()}, "all gaps 60"};
    label.align = draw::Align::centre;
    label.plate = draw::Paint{draw::Ink::paper};
    return label;
}

/// Where in the shapes the text stands, or their number.
std::size_t index_of(const WallShapes& shapes, const std::string& words) {
    const auto found = std::ranges::find_if(shapes, [&words](const auto& shape) {
        const auto* const text = std::get_if<Text>(&shape);
        return text != nullptr && text->text == words;
    });
    return static_cast<std::size_t>(found - shapes.begin());
}

}  // namespace

TEST_CASE("A label that a suggested frame would cross stands over the frames on its ground") {
    Session session(growing_wall());
    const Suggestions suggestions = found_for(session);
    const WallShapes under{label_across(suggestions.list().at(0).place)};
    const WallShapes shapes = suggestions_overlay(session, suggestions, under, kScale);
    const std::size_t at = index_of(shapes, "all gaps 60");
    REQUIRE(at < shapes.size());
    CHECK(of_type({shapes.begin(), shapes.begin() + static_cast<std::ptrdiff_t>(at)},
                  LineType::dashed)
              .size() == suggestions.list().size());
    const WallShapes far{label_across(Rect<Wall>::at({100, 100}, {100, 100}))};
    CHECK(suggestions_overlay(session, suggestions, far, kScale) ==
          suggestions_overlay(session, suggestions, {}, kScale));
}

TEST_CASE("A label at the suggestion pointed out stands over its filled frame") {
    Session session(growing_wall());
    Suggestions suggestions = found_for(session);
    suggestions.point_out(0);
    const WallShapes under{label_across(suggestions.list().at(0).place)};
    const WallShapes shapes = suggestions_overlay(session, suggestions, under, kScale);
    const auto is_filled_frame = [](const auto& shape) {
        const auto* const path = std::get_if<Path>(&shape);
        return path != nullptr && path->fill && path->stroke;
    };
    const auto frame = std::ranges::find_if(shapes, is_filled_frame);
    REQUIRE(frame != shapes.end());
    CHECK(index_of({frame, shapes.end()}, "all gaps 60") <
          static_cast<std::size_t>(shapes.end() - frame));
}

#include "draw/looking.h"

#include "draw/labels.h"
#include "rules/assess.h"
#include "support/command.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdlib>
#include <sstream>

namespace wallwright::test {

namespace {

using draw::Point;

struct PointsOf {
    std::vector<Point<Wall>> operator()(const WallPath& path) const {
        std::vector<Point<Wall>> points{path.start};
        for (const draw::Step<Wall>& step : path.steps) {
            if (step.controls)
                points.insert(points.end(), {step.controls->first, step.controls->second});
            points.push_back(step.to);
        }
        return points;
    }
    std::vector<Point<Wall>> operator()(const draw::Hatch<Wall>& hatch) const {
        std::vector<Point<Wall>> points;
        for (const auto& area : hatch.areas)
            points.insert(points.end(), area.begin(), area.end());
        return points;
    }
    std::vector<Point<Wall>> operator()(const WallText& text) const { return {text.at}; }
    std::vector<Point<Wall>> operator()(const draw::Image<Wall>& image) const {
        return {image.place.min, image.place.max};
    }
    std::vector<Point<Wall>> operator()(const draw::Shadow<Wall>& shadow) const {
        return {shadow.of.min, shadow.of.max};
    }
};

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

std::string line_at(const std::vector<std::string>& lines, std::size_t index) {
    return index < lines.size() ? lines[index] : "(nothing)";
}

}  // namespace

std::vector<WallText> texts_in(const draw::WallDrawing& drawing) {
    return shapes_in<WallText>(drawing.shapes);
}

int count_text(const draw::WallDrawing& drawing, const std::string& words) {
    const std::vector<WallText> texts = texts_in(drawing);
    return static_cast<int>(std::count_if(
        texts.begin(), texts.end(), [&words](const WallText& one) { return one.text == words; }));
}

int count_lines(const draw::WallDrawing& drawing, draw::LineType type) {
    const std::vector<WallPath> paths = shapes_in<WallPath>(drawing.shapes);
    return static_cast<int>(std::count_if(paths.begin(), paths.end(), [type](const WallPath& one) {
        return one.stroke && one.stroke->type == type;
    }));
}

std::vector<Point<Wall>> points_of(const draw::Shape<Wall>& shape) {
    return std::visit(PointsOf{}, shape);
}

Rect<Wall> bounds_of(const WallPath& path) {
    Rect<Wall> bounds{path.start, path.start};
    for (const Point<Wall> point : PointsOf{}(path))
        bounds = hull(bounds, Rect<Wall>{point, point});
    return bounds;
}

draw::WallDrawing drawn(const wall::Project& project, const draw::ElevationOptions& options) {
    return draw::elevation(project, rules::assess(project, scenes::small_catalogue()), options);
}

std::vector<std::string> clashes(const draw::WallDrawing& drawing, double scale) {
    std::vector<std::string> found;
    const std::vector<WallText> texts = texts_in(drawing);
    const Rect<Wall> extent = drawing.extent.grown(1e-6);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const Rect<Wall> box = draw::estimated_box(texts[i], scale);
        if (!extent.contains(box.min) || !extent.contains(box.max))
            found.push_back("outside: " + texts[i].text);
        for (std::size_t j = 0; j < i; ++j)
            if (overlaps(box, draw::estimated_box(texts[j], scale)))
                found.push_back(texts[i].text + " on " + texts[j].text);
    }
    return found;
}

void check_golden(const std::string& name, const std::string& actual) {
    const std::string file = std::string(WW_SOURCE) + "/tests/golden/draw/" + name;
    const char* accept = std::getenv("WW_ACCEPT");
    if (accept != nullptr && std::string(accept) == "1") {
        write_whole(file, actual);
        return;
    }
    const std::string expected = read_whole(file);
    if (actual == expected)
        return;
    const std::vector<std::string> is = lines_of(actual);
    const std::vector<std::string> was = lines_of(expected);
    std::size_t line = 0;
    while (line < std::min(is.size(), was.size()) && is[line] == was[line])
        ++line;
    FAIL(file << " differs from line " << line + 1 << ":\n  expected: " << line_at(was, line)
              << "\n  drawn:    " << line_at(is, line)
              << "\nIf the change is meant, run with WW_ACCEPT=1 and read the diff.");
}

}  // namespace wallwright::test

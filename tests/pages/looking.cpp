#include "pages/looking.h"

#include "pages/render.h"

#include <algorithm>

namespace wallwright::test {

using geometry::Page;
using pages::Area;

std::string words_in(const pages::Shapes& shapes) {
    std::string words;
    for (const PageText& text : shapes_in<PageText>(shapes))
        words += text.text + "\n";
    return words;
}

int count_text(const pages::Shapes& shapes, const std::string& words) {
    const auto texts = shapes_in<PageText>(shapes);
    return static_cast<int>(std::count_if(
        texts.begin(), texts.end(), [&words](const PageText& one) { return one.text == words; }));
}

bool has_text(const pages::Shapes& shapes, const std::string& words) {
    return count_text(shapes, words) > 0;
}

Area painted_box(const PageText& text) {
    const double length = pages::text_width(text.text, text.size, text.bold);
    const double start = text.align == draw::Align::left     ? 0
                         : text.align == draw::Align::centre ? -length / 2
                                                             : -length;
    if (text.upward)
        return {{text.at.x - text.size, text.at.y - start - length},
                {text.at.x, text.at.y - start}};
    return {{text.at.x + start, text.at.y - text.size}, {text.at.x + start + length, text.at.y}};
}

Area bounds_of(const PagePath& path) {
    Area bounds{path.start, path.start};
    for (const draw::Step<Page>& step : path.steps)
        bounds = hull(bounds, Area{step.to, step.to});
    return bounds;
}

std::vector<std::string> collisions(const pages::Shapes& shapes) {
    std::vector<std::string> found;
    const auto texts = shapes_in<PageText>(shapes);
    std::vector<Area> boxes;
    boxes.reserve(texts.size());
    for (const PageText& text : texts)
        boxes.push_back(painted_box(text));
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (overlaps(boxes[i], boxes[j]))
                found.push_back("\"" + texts[i].text + "\" and \"" + texts[j].text + "\"");
    return found;
}

std::vector<std::string> outside(const pages::Shapes& shapes, const Area& area) {
    std::vector<std::string> found;
    const Area within = area.grown(0.01);
    const auto check = [&](const Area& box, const std::string& name) {
        if (!within.contains(box.min) || !within.contains(box.max))
            found.push_back(name);
    };
    for (const PageText& text : shapes_in<PageText>(shapes))
        check(painted_box(text), "text " + text.text);
    for (const PagePath& path : shapes_in<PagePath>(shapes))
        check(bounds_of(path), "a path");
    for (const auto& image : shapes_in<draw::Image<Page>>(shapes))
        check(image.place, "picture " + image.file);
    return found;
}

}  // namespace wallwright::test

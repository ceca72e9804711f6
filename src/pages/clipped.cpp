#include "pages/clipped.h"

#include "draw/paths.h"
#include "pages/render.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace wallwright::pages {

namespace {

using geometry::Page;

bool holds(const Area& area, const Area& box) {
    return area.contains(box.min) && area.contains(box.max);
}

/// The part of a straight line inside the area (Liang and Barsky).
std::optional<std::pair<Spot, Spot>> part_inside(Spot from, Spot to, const Area& area) {
    const geometry::Vec<Page> way = to - from;
    double enters = 0;
    double leaves = 1;
    const auto cut = [&](double speed, double room) {
        if (speed == 0)
            return room >= 0;
        const double share = room / speed;
        if (speed < 0)
            enters = std::max(enters, share);
        else
            leaves = std::min(leaves, share);
        return true;
    };
    const bool meets = cut(-way.x, from.x - area.min.x) && cut(way.x, area.max.x - from.x) &&
                       cut(-way.y, from.y - area.min.y) && cut(way.y, area.max.y - from.y);
    if (!meets || enters >= leaves)
        return std::nullopt;
    return std::pair{from + enters * way, from + leaves * way};
}

class Clip {
  public:
    Clip(Shapes& into, const Area& area) : into_(into), area_(area) {}

    void operator()(const draw::Path<Page>& path) {
        std::vector<Spot> points{path.start};
        bool curved = false;
        for (const draw::Step<Page>& step : path.steps) {
            points.push_back(step.to);
            curved = curved || step.controls.has_value();
        }
        if (std::ranges::all_of(points, [&](Spot point) { return area_.contains(point); })) {
            into_.emplace_back(path);
            return;
        }
        if (curved || !path.stroke)
            return;
        if (path.closed)
            points.push_back(path.start);
        for (std::size_t i = 0; i + 1 < points.size(); ++i)
            if (const auto part = part_inside(points[i], points[i + 1], area_))
                into_.emplace_back(draw::line(part->first, part->second, *path.stroke));
    }
    void operator()(const draw::Text<Page>& text) {
        const double width = text_width(text.text, text.size, text.bold);
        const double start = text.align == draw::Align::left     ? 0
                             : text.align == draw::Align::centre ? -width / 2
                                                                 : -width;
        const Area box = text.upward ? Area{{text.at.x - text.size, text.at.y - start - width},
                                            {text.at.x, text.at.y - start}}
                                     : Area{{text.at.x + start, text.at.y - text.size},
                                            {text.at.x + start + width, text.at.y}};
        if (holds(area_, box))
            into_.emplace_back(text);
    }
    void operator()(const draw::Image<Page>& image) { keep_inside(image.place, image); }
    void operator()(const draw::Shadow<Page>& shadow) { keep_inside(shadow.of, shadow); }
    void operator()(const draw::Hatch<Page>& hatch) {
        for (const auto& corners : hatch.areas)
            for (const Spot corner : corners)
                if (!area_.contains(corner))
                    return;
        into_.emplace_back(hatch);
    }

  private:
    template <class OneShape>
    void keep_inside(const Area& place, const OneShape& shape) {
        if (holds(area_, place))
            into_.emplace_back(shape);
    }

    Shapes& into_;
    const Area& area_;
};

}  // namespace

Shapes clipped(const Shapes& shapes, const Area& area) {
    Shapes inside;
    Clip clip(inside, area);
    for (const auto& shape : shapes)
        std::visit(clip, shape);
    return inside;
}

}  // namespace wallwright::pages

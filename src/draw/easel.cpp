#include "draw/easel.h"

#include <optional>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

/// Grows a rectangle around all that it meets.
class Extent {
  public:
    explicit Extent(double scale) : scale_(scale) {}

    void operator()(const Path<Wall>& path) {
        meet(path.start);
        for (const Step<Wall>& step : path.steps) {
            meet(step.to);
            if (step.controls) {
                meet(step.controls->first);
                meet(step.controls->second);
            }
        }
    }
    void operator()(const Hatch<Wall>& hatch) {
        for (const std::vector<Point<Wall>>& area : hatch.areas)
            for (const Point<Wall> corner : area)
                meet(corner);
    }
    void operator()(const Text<Wall>& text) { meet(estimated_box(text, scale_)); }
    void operator()(const Image<Wall>& image) { meet(image.place); }
    void operator()(const Shadow<Wall>& shadow) { meet(shadow.of.grown(shadow.depth)); }

    [[nodiscard]] Rect<Wall> found() const { return found_.value_or(Rect<Wall>{}); }

  private:
    void meet(Point<Wall> point) { meet(Rect<Wall>{point, point}); }
    void meet(const Rect<Wall>& rect) { found_ = found_ ? hull(*found_, rect) : rect; }

    double scale_;
    std::optional<Rect<Wall>> found_;
};

}  // namespace

void Easel::add_label(const Text<Wall>& text) {
    room.take(estimated_box(text, scale));
    add(text);
}

bool Easel::add_first_inside(std::span<const Text<Wall>> choices, const Rect<Wall>& inside) {
    for (const Text<Wall>& text : choices) {
        const Rect<Wall> box = estimated_box(text, scale);
        if (!room.is_free(box) || !inside.contains(box.min) || !inside.contains(box.max))
            continue;
        add_label(text);
        return true;
    }
    return false;
}

Rect<Wall> extent_of(const Shapes& shapes, double scale) {
    Extent extent(scale);
    for (const Shape<Wall>& shape : shapes)
        std::visit(extent, shape);
    return extent.found();
}

}  // namespace wallwright::draw

#include "draw/board.h"

#include <utility>

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

std::string Board::figure(double mm) const {
    return units::format_number(mm, project.unit);
}

void Board::add_label(const Text<Wall>& text) {
    room.take(estimated_box(text, options.scale));
    add(text);
}

bool Board::add_first_free(std::span<const Text<Wall>> choices) {
    for (const Text<Wall>& text : choices) {
        const Rect<Wall> box = estimated_box(text, options.scale);
        if (!room.is_free(box) || !geometry::contains(project.room.outline, box))
            continue;
        add_label(text);
        return true;
    }
    return false;
}

Text<Wall> label_on(const Board& board, Point<Wall> at, std::string text, Align align) {
    Text<Wall> label{at, std::move(text)};
    label.size = 1.8;
    label.paint.ink = Ink::dimension;
    label.align = align;
    label.plate = board.plate;
    return label;
}

Rect<Wall> extent_of(const Shapes& shapes, double scale) {
    Extent extent(scale);
    for (const Shape<Wall>& shape : shapes)
        std::visit(extent, shape);
    return extent.found();
}

}  // namespace wallwright::draw

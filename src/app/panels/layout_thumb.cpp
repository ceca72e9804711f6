#include "app/panels/layout_thumb.h"

#include "app/canvas_painter.h"
#include "app/fills.h"
#include "draw/furnishings.h"
#include "draw/tint.h"

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

using geometry::Rect;
using geometry::Screen;
using geometry::Wall;

ImU32 packed(wall::Colour colour) {
    return IM_COL32(colour.red, colour.green, colour.blue, 0xFF);
}

float whole(double pixels) {
    return static_cast<float>(std::round(pixels));
}

ImVec4 inset(const ImVec4& box, float by) {
    return {box.x + by, box.y + by, box.z - by, box.w - by};
}

class ThumbPen {
  public:
    ThumbPen(const Ui& ui, ImDrawList& list, const Thumb& thumb, const ImVec4& box)
        : ui_(ui), list_(list), thumb_(thumb), box_(box), fills_(list, box) {}

    void wall() {
        const wall::Room& room = thumb_.project.room;
        std::vector<ImVec2> corners;
        for (const geometry::Point<Wall> corner : room.outline.corners) {
            const geometry::Point<Screen> at = thumb_.to_screen(corner);
            corners.push_back({whole(at.x), whole(at.y)});
        }
        fills_.fill(corners, packed(draw::wash(room.colour)));
    }

    /// Silhouettes alone: a plain box's name could not be read.
    void furnishings() {
        draw::Shapes shapes;
        for (const wall::Fixture& fixture : thumb_.project.room.fixtures)
            draw::add_fixture(shapes, fixture);
        for (const wall::Furniture& furniture : thumb_.project.room.furniture)
            draw::add_furniture(shapes, furniture);
        std::erase_if(shapes, [](const draw::Shape<Wall>& shape) {
            return std::holds_alternative<draw::Text<Wall>>(shape);
        });
        const CanvasStyle style{thumb_.to_screen, 1, ui_.dark, ui_.fonts, nullptr};
        paint(list_, shapes, style, box_);
    }

    void piece(const arrange::Spot& spot) {
        const wall::Piece& piece = thumb_.project.pieces[spot.item];
        const wall::Frame& frame = wall::frame_of(thumb_.project, piece);
        const ImVec4 outside = on_screen(spot.place);
        const float moulding = std::max(1.0F, whole(frame.moulding_width * thumb_.to_screen.scale));
        ImVec4 left = outside;
        fill(left, frame.colour);
        const wall::Colour edge = draw::darker(frame.colour, 0.35);
        list_.AddRect({left.x, left.y}, {left.z, left.w}, packed(edge));
        left = inset(left, moulding);
        const wall::Mount* mount = piece.mount ? wall::find(thumb_.project, *piece.mount) : nullptr;
        if (mount != nullptr) {
            fill(left, mount->colour);
            left = inset(left,
                         std::max(1.0F, whole(0.15 * std::min(left.z - left.x, left.w - left.y))));
        }
        fill(left, thumb_.task.items[spot.item].picture);
    }

  private:
    [[nodiscard]] ImVec4 on_screen(const Rect<Wall>& place) const {
        const Rect<Screen> box = thumb_.to_screen(place);
        return {whole(box.min.x), whole(box.min.y), whole(box.max.x), whole(box.max.y)};
    }
    void fill(const ImVec4& box, wall::Colour colour) {
        if (box.z > box.x && box.w > box.y)
            fills_.box(box, packed(colour));
    }

    const Ui& ui_;
    ImDrawList& list_;
    const Thumb& thumb_;
    const ImVec4& box_;
    FillPen fills_;
};

}  // namespace

void paint_thumb(const Ui& ui, ImDrawList& list, const Thumb& thumb, const ImVec4& box) {
    list.PushClipRect({box.x, box.y}, {box.z, box.w}, true);
    list.AddRectFilled({box.x, box.y}, {box.z, box.w}, ui.theme().desk);
    ThumbPen pen(ui, list, thumb, box);
    pen.wall();
    pen.furnishings();
    for (const arrange::Spot& spot : thumb.layout)
        pen.piece(spot);
    list.PopClipRect();
}

}  // namespace wallwright::app

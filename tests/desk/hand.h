// A hand that does with the pointer what a person would.
#pragma once

#include "desk/pointer_tool.h"

#include <string>
#include <vector>

namespace wallwright::desk {

using geometry::Point;
using geometry::Rect;
using geometry::Vec;
using geometry::Wall;

/// A session and a hand that points at it, at 1 mm a pixel.
struct Hand {
    Session session;
    Step step = Step::arrange;
    std::vector<Waiting> waiting = {};
    PointerTool tool = {};
    bool shift = false;
    bool alt = false;

    [[nodiscard]] PointerEvent at(Point<Wall> point) const { return {point, 1, shift, alt}; }
    void press(Point<Wall> point) { tool.press(session, waiting, step, at(point)); }
    void move(Point<Wall> point) { tool.move(session, waiting, step, at(point)); }
    void release(Point<Wall> point) { tool.release(session, at(point)); }
    void click(Point<Wall> point) {
        press(point);
        release(point);
    }
    void drag(Point<Wall> from, Point<Wall> to) {
        press(from);
        move(from + 0.5 * (to - from));
        move(to);
        release(to);
    }

    [[nodiscard]] const wall::Piece& piece(const std::string& id) const {
        return *wall::find(session.project(), wall::PieceId{id});
    }
    [[nodiscard]] Rect<Wall> place(const std::string& id) const {
        return wall::place_of(session.project(), piece(id)).value();
    }
    [[nodiscard]] std::vector<wall::PieceId> selected() const { return session.selection.pieces(); }
    [[nodiscard]] std::string notice() const { return session.notice ? session.notice->text : ""; }
};

}  // namespace wallwright::desk

#include "draw/board.h"

#include <utility>

namespace wallwright::draw {

using geometry::Rect;
using geometry::Wall;

bool Board::add_first_free(std::span<const Text<Wall>> choices) {
    for (const Text<Wall>& text : choices) {
        const Rect<Wall> box = estimated_box(text, scale);
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

}  // namespace wallwright::draw

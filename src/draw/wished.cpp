#include "draw/wished.h"

#include "draw/paths.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using Lines = std::vector<std::string>;
using Texts = std::vector<Text<Wall>>;

constexpr double kNoteSize = 1.8;  // mm on paper, as all that follow
constexpr double kLineHeight = 3.1;
constexpr double kAir = 0.6;        // between a note and the outline
constexpr double kRingReach = 3.3;  // of a letter's ring and some air, from the piece's middle
constexpr std::size_t kTitleLines = 2;
constexpr std::size_t kSizeLines = 3;

double width_for_note(const Board& board, const Rect<Wall>& place) {
    return place.width() * board.options.scale - 2 * kAir;
}

/// Empty when it would have to be cut off, for half a size is none.
Lines size_lines(const Board& board, const Rect<Wall>& place) {
    const std::string size =
        fmt::format("{} × {}", board.figure(place.width()), board.figure(place.height()));
    Lines lines = wrapped(size, kNoteSize, width_for_note(board, place), kSizeLines);
    const auto is_cut = [](const std::string& line) { return line.ends_with("..."); };
    return std::ranges::any_of(lines, is_cut) ? Lines{} : lines;
}

Lines title_lines(const Board& board, const wall::Piece& piece, const Rect<Wall>& place) {
    return wrapped(wall::title_of(piece), kNoteSize, width_for_note(board, place), kTitleLines);
}

/// From the top of the first line's capitals to the foot of the last, mm on paper.
double height_of(const Lines& lines) {
    return static_cast<double>(lines.size() - 1) * kLineHeight + kNoteSize;
}

Texts texts_from(const Board& board, const Lines& lines, Point<Wall> top,
                 const std::optional<Paint>& plate) {
    Texts texts;
    for (const std::string& one : lines) {
        const double down = kNoteSize + static_cast<double>(texts.size()) * kLineHeight;
        Text<Wall> text{{top.x, top.y - board.on_wall(down)}, one};
        text.size = kNoteSize;
        text.align = Align::centre;
        text.paint.ink = Ink::accent;
        text.plate = plate;
        texts.push_back(std::move(text));
    }
    return texts;
}

/// In the middle, else below or above a letter there. False when there is no room.
bool add_note(Board& board, const Lines& lines, const Rect<Wall>& place,
              const std::optional<Paint>& plate) {
    if (lines.empty())
        return false;
    const double height = height_of(lines);
    const Rect<Wall> inside = place.grown(-board.on_wall(kAir));
    const auto fits = [&board, &inside](const Text<Wall>& text) {
        const Rect<Wall> box = estimated_box(text, board.options.scale);
        return inside.contains(box.min) && inside.contains(box.max) && board.room.is_free(box);
    };
    for (const double up : {height / 2, -kRingReach, kRingReach + height}) {
        const double top = place.centre().y + board.on_wall(up);
        const Texts texts = texts_from(board, lines, {place.centre().x, top}, plate);
        if (!std::ranges::all_of(texts, fits))
            continue;
        for (const Text<Wall>& text : texts)
            board.add_label(text);
        return true;
    }
    return false;
}

}  // namespace

void add_wished(Shapes& shapes, const Rect<Wall>& place) {
    const Stroke dashes{{Ink::accent}, 0.35, LineType::dashed};
    shapes.emplace_back(box(place, {std::nullopt, dashes}));
}

void add_wished_notes(Board& board) {
    for (const wall::Piece& piece : board.project.pieces) {
        const auto place = wall::place_of(board.project, piece);
        if (!piece.wished || !place)
            continue;
        const Lines size = size_lines(board, *place);
        Lines both = title_lines(board, piece, *place);
        both.insert(both.end(), size.begin(), size.end());
        if (board.options.letters || !add_note(board, both, *place, board.plate))
            add_note(board, size, *place, board.plate);
    }
}

void add_wished_size(Board& board, const wall::Piece& piece, const Rect<Wall>& place) {
    if (piece.wished)
        add_note(board, size_lines(board, place), place, std::nullopt);
}

}  // namespace wallwright::draw

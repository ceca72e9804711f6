#include "draw/waiting.h"

#include "draw/fixing_lines.h"
#include "draw/framed.h"
#include "draw/letters.h"
#include "draw/paths.h"
#include "draw/tint.h"
#include "draw/wished.h"
#include "wall/titles.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

constexpr double kNameSize = 1.8;  // mm on paper, as all that follow
constexpr double kLineHeight = 3.1;
constexpr std::size_t kNameLines = 2;
constexpr double kNameWidth = 22;  // what a name may take where its piece is narrower
constexpr double kBetween = 4;     // between two pieces or names
constexpr double kRowAir = 4;      // above a row
constexpr double kFloorDepth = 3;  // of floor that is seen when nothing waits
constexpr double kOverhang = 4;    // of floor to the right of the last thing

/// Width that the piece and its name need together.
double slot_width(const Board& board, const Standing& standing) {
    double width = standing.place.width();
    for (const std::string& name_line : standing.name)
        width = std::max(width, board.on_wall(estimated_width(name_line, kNameSize)));
    return width;
}

/// From its feet to under its name.
double name_depth(const Board& board) {
    return board.on_wall(static_cast<double>(kNameLines) * kLineHeight + 1.5);
}

/// At the origin, not yet given a place.
std::vector<Standing> those_waiting(const Board& board) {
    std::vector<Standing> waiting;
    for (std::size_t i = 0; i < board.project.pieces.size(); ++i) {
        const wall::Piece& piece = board.project.pieces[i];
        if (piece.state != wall::PieceState::waiting)
            continue;
        const geometry::Size size = wall::outside_size(board.project, piece);
        const double widest = std::max(kNameWidth, size.width * board.options.scale);
        const std::string& name = wall::title_of(piece);
        waiting.push_back(
            {i, Rect<Wall>::at({0, 0}, size), wrapped(name, kNameSize, widest, kNameLines)});
    }
    return waiting;
}

/// Side by side from x = 0 and from row to row downward from y = 0; a row ends before the piece
/// that would make it wider than `most`.
std::vector<Standing> in_rows(const Board& board, double most) {
    std::vector<Standing> waiting = those_waiting(board);
    double top = 0;
    for (std::size_t first = 0; first < waiting.size();) {
        double x = 0;
        double tallest = 0;
        std::size_t end = first;
        for (; end < waiting.size(); ++end) {
            const double slot = slot_width(board, waiting[end]);
            if (end > first && x + slot > most)
                break;
            waiting[end].place =
                waiting[end].place.moved({x + (slot - waiting[end].place.width()) / 2, 0});
            tallest = std::max(tallest, waiting[end].place.height());
            x += slot + board.on_wall(kBetween);
        }
        const double feet = top - board.on_wall(kRowAir) - tallest;
        for (; first < end; ++first)
            waiting[first].place = waiting[first].place.moved({0, feet});
        top = feet - name_depth(board);
    }
    return waiting;
}

void move_all(std::vector<Standing>& waiting, geometry::Vec<Wall> by) {
    for (Standing& standing : waiting)
        standing.place = standing.place.moved(by);
}

/// A strip of floor for the row that stands at this height.
void add_row_floor(Board& board, double feet, double width) {
    board.add(box<Wall>({{0, feet - name_depth(board)}, {width, feet}},
                        {Paint{Ink::floor}, std::nullopt}));
    board.add(line<Wall>({0, feet}, {width, feet}, Stroke{{Ink::outline}, 0.7}));
}

}  // namespace

std::vector<Standing> lay_out_waiting(const Board& board) {
    if (!board.options.waiting)
        return {};
    const double inset = board.on_wall(2);
    std::vector<Standing> waiting = in_rows(board, board.wall.width() - 2 * inset);
    move_all(waiting, {board.wall.min.x + inset, board.wall.min.y});
    return waiting;
}

FloorReach floor_under(const Board& board, const std::vector<Standing>& waiting) {
    FloorReach reach{board.wall.max.x + board.on_wall(kOverhang),
                     board.wall.min.y - board.on_wall(kFloorDepth)};
    for (const Standing& standing : waiting) {
        const double half = slot_width(board, standing) / 2;
        reach.right =
            std::max(reach.right, standing.place.centre().x + half + board.on_wall(kOverhang));
        reach.bottom = std::min(reach.bottom, standing.place.min.y - name_depth(board));
    }
    return reach;
}

void add_waiting(Board& board, const std::vector<Standing>& waiting) {
    for (const Standing& standing : waiting) {
        const wall::Piece& piece = board.project.pieces[standing.index];
        add_framed(board.shapes, board.project, piece, standing.place,
                   {board.options.pictures, board.options.picture_folder});
        if (board.options.letters)
            add_ringed(board, standing.place.centre(), letter(standing.index), false);
        add_wished_size(board, piece, standing.place);
        Text<Wall> text{{standing.place.centre().x, standing.place.min.y}, ""};
        text.size = kNameSize;
        text.align = Align::centre;
        for (const std::string& name_line : standing.name) {
            text.at.y -= board.on_wall(kLineHeight);
            text.text = name_line;
            board.add_label(text);
        }
    }
}

WallDrawing waiting_pieces(const wall::Project& project, const ElevationOptions& options,
                           double width) {
    const rules::Assessment nothing;
    Board board{{options.scale, project.unit}, project, nothing, options, {},
                own(wash(project.room.colour))};
    const double inset = board.on_wall(2);
    std::vector<Standing> waiting = in_rows(board, width - 2 * inset);
    if (waiting.empty())
        return {};
    move_all(waiting, {inset, -waiting.back().place.min.y});
    double right = 0;
    for (const Standing& standing : waiting)
        right =
            std::max(right, standing.place.centre().x + slot_width(board, standing) / 2 + inset);
    double last = 0;
    for (const Standing& standing : waiting)
        if (standing.place.min.y != last || &standing == &waiting.front())
            add_row_floor(board, last = standing.place.min.y, right);
    add_waiting(board, waiting);
    return {extent_of(board.shapes, options.scale), std::move(board.shapes)};
}

}  // namespace wallwright::draw

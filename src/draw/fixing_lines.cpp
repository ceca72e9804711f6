#include "draw/fixing_lines.h"

#include "draw/dimensions.h"
#include "draw/hidden_lines.h"
#include "draw/letters.h"
#include "draw/paths.h"
#include "rules/scene.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

/// Under hidden lines and crosses, so that they show on a dark frame.
const Stroke kHalo{{Ink::paper, {}, 0.75}, 0.5};

constexpr double kCross =
    1.4;  // mm on paper from a cross's middle to its ends, less on a small piece
constexpr double kCrossShare = 0.13;  // of the piece's smaller side
constexpr double kNumbered =
    7.5;  // mm on paper of a piece's smaller side for its marks to have numbers
constexpr double kLetterSize = 1.8;  // mm on paper
constexpr double kRingAir = 1.5;     // mm on paper that a ring leaves free on its piece
constexpr double kNumberAir = 0.7;   // mm on paper between a cross and its number

/// On a halo, whatever the frame's colour.
void add_on_halo(Board& board, Path<Wall> path) {
    Path<Wall> halo = path;
    halo.stroke = kHalo;
    board.add(std::move(halo));
    board.add(std::move(path));
}

/// Beside the cross, at a corner toward the piece's middle and at a hook away from it; then on its
/// other sides.
std::vector<Text<Wall>> number_choices(const Board& board, const hanging::Mark& mark,
                                       double toward) {
    const double beside = board.on_wall(kNumberAir + 0.6);
    const double past = board.on_wall(kCross + kNumberAir);
    const double level = mark.at.y - board.on_wall(kSmallFigureSize / 2);
    const double below = mark.at.y - board.on_wall(kCross + kNumberAir + 1.8);
    const double above = mark.at.y + board.on_wall(kNumberAir + 0.4);
    const Align inward = toward > 0 ? Align::left : Align::right;
    const Align outward = toward > 0 ? Align::right : Align::left;
    const std::string number = std::to_string(mark.number);
    std::vector<Text<Wall>> choices = {
        label_on(board, {mark.at.x + toward * beside, below}, number, inward),
        label_on(board, {mark.at.x + toward * past, level}, number, inward),
        label_on(board, {mark.at.x + toward * beside, above}, number, inward),
        label_on(board, {mark.at.x - toward * beside, above}, number, outward),
        label_on(board, {mark.at.x - toward * beside, below}, number, outward),
        label_on(board, {mark.at.x, below - board.on_wall(1)}, number, Align::centre),
    };
    for (Text<Wall>& choice : choices) {
        choice.paint.ink = Ink::mark;
        choice.bold = true;
        choice.plate = Paint{Ink::paper, {}, 0.9};
    }
    return choices;
}

void add_cross(Board& board, Point<Wall> at, double reach) {
    board.room.take(Rect<Wall>{at, at}.grown(0.7 * reach));
    const Stroke halo{{Ink::paper, {}, 0.9}, 1.0};
    const Stroke cross{{Ink::mark}, 0.35};
    for (const Stroke& stroke : {halo, cross}) {
        board.add(line<Wall>({at.x - reach, at.y}, {at.x + reach, at.y}, stroke));
        board.add(line<Wall>({at.x, at.y - reach}, {at.x, at.y + reach}, stroke));
    }
}

double ring_radius(const std::string& letters) {
    return letters.size() > 1 ? 2.7 : 2.3;
}

Text<Wall> letter_text(const Board& board, Point<Wall> middle, const std::string& letters,
                       Ink ink) {
    Text<Wall> text{{middle.x, middle.y - board.on_wall(kLetterSize / 2)}, letters};
    text.size = kLetterSize;
    text.bold = true;
    text.align = Align::centre;
    text.paint.ink = ink;
    return text;
}

/// For a piece that is too small for a ring.
void add_bare_letter(Board& board, Point<Wall> middle, const std::string& letters) {
    Text<Wall> text = letter_text(board, middle, letters, Ink::accent);
    text.plate = Paint{Ink::paper, {}, 0.9};
    board.add_label(text);
}

std::optional<Rect<Wall>> place_in(const std::vector<wall::Placed>& placed,
                                   const wall::PieceId& id) {
    for (const wall::Placed& one : placed)
        if (one.id == id)
            return one.place;
    return std::nullopt;
}

double reach_on(const Board& board, const std::optional<Rect<Wall>>& place) {
    const double most = board.on_wall(kCross);
    return place ? std::min(most, kCrossShare * std::min(place->width(), place->height())) : most;
}

bool is_large_enough(const Board& board, const Rect<Wall>& place) {
    return std::min(place.width(), place.height()) >= board.on_wall(kNumbered);
}

/// The first number that is free, and inside its own piece or clear of all pieces. None for a piece
/// that is very small on paper, since its neighbours' numbers could not be told from its own.
void add_number(Board& board, const hanging::Mark& mark, const std::vector<wall::Placed>& placed) {
    const auto own_place = place_in(placed, mark.piece);
    if (own_place && !is_large_enough(board, *own_place))
        return;
    const bool right = own_place && mark.at.x > own_place->centre().x;
    const double toward = right == (mark.kind == hanging::MarkKind::corner) ? -1 : 1;
    for (const Text<Wall>& choice : number_choices(board, mark, toward)) {
        const Rect<Wall> box = estimated_box(choice, board.options.scale);
        const bool inside =
            own_place && own_place->contains(box.min) && own_place->contains(box.max);
        const auto meets = [&box](const wall::Placed& one) {
            return geometry::overlaps(one.place, box);
        };
        if (!inside && std::any_of(placed.begin(), placed.end(), meets))
            continue;
        if (board.add_first_free({&choice, 1}))
            return;
    }
}

/// What of a line down the wall is above all pieces that hang before it.
Rect<Wall> part_in_sight(const Board& board, const Path<Wall>& path) {
    Rect<Wall> part{path.start, path.start};
    for (const Step<Wall>& step : path.steps)
        part = hull(part, Rect<Wall>{step.to, step.to});
    part = part.grown(board.on_wall(0.2));
    for (const wall::Placed& one : wall::placed_pieces(board.project))
        if (geometry::overlaps(one.place, part))
            part.min.y = std::min(part.max.y, std::max(part.min.y, one.place.top()));
    return part;
}

}  // namespace

void add_from_rail(Board& board) {
    for (const hanging::Hanging& hanging : board.assessment.hangings)
        for (Path<Wall>& path : fixing_lines_of(board.project, hanging).seen) {
            board.room.take(part_in_sight(board, path));
            add_on_halo(board, std::move(path));
        }
}

void add_hidden_fixings(Board& board) {
    for (const hanging::Hanging& hanging : board.assessment.hangings)
        for (Path<Wall>& path : fixing_lines_of(board.project, hanging).hidden)
            add_on_halo(board, std::move(path));
}

void add_marks(Board& board) {
    const std::vector<wall::Placed> placed = wall::placed_pieces(board.project);
    for (const hanging::Mark& mark : board.assessment.marks.marks)
        add_cross(board, mark.at, reach_on(board, place_in(placed, mark.piece)));
    for (const hanging::Mark& mark : board.assessment.marks.marks)
        add_number(board, mark, placed);
}

void add_ringed(Board& board, Point<Wall> at, const std::string& letter, bool filled) {
    const double radius = board.on_wall(ring_radius(letter));
    const Stroke ring{{Ink::accent}, 0.25};
    board.add(circle(at, radius, {Paint{filled ? Ink::accent : Ink::paper}, ring}));
    board.add(letter_text(board, at, letter, filled ? Ink::paper : Ink::accent));
    board.room.take(Rect<Wall>{at, at}.grown(radius));
}

void add_datum_edges(Board& board) {
    const auto place = wall::datum_place(board.project);
    if (!place)
        return;
    const bool from_left = board.project.datum.side == wall::DatumSide::left;
    const double x = from_left ? place->left() : place->right();
    const double past = board.on_wall(2);
    const Stroke edge{{Ink::mark}, 0.5};
    board.add(line<Wall>({place->left() - past, place->top()},
                         {place->right() + past, place->top()}, edge));
    board.add(line<Wall>({x, place->bottom() - past}, {x, place->top() + past}, edge));
    const double air = board.on_wall(1);
    const double over = place->top() + air;
    const double under = place->top() - air - board.on_wall(kLetterSize);
    std::vector<Text<Wall>> choices;
    for (const double y : {over, under})
        for (const auto& [at, align] : {std::pair(place->left() + air, Align::left),
                                        std::pair(place->right() - air, Align::right)})
            choices.push_back(label_on(board, {at, y}, "marks from these edges", align));
    for (Text<Wall>& choice : choices)
        choice.paint.ink = Ink::mark;
    board.add_first_free(choices);
}

void add_letters(Board& board) {
    for (std::size_t i = 0; i < board.project.pieces.size(); ++i) {
        const wall::Piece& piece = board.project.pieces[i];
        const auto place = wall::place_of(board.project, piece);
        if (!place)
            continue;
        const std::string letters = letter(i);
        const double side = std::min(place->width(), place->height()) * board.options.scale;
        if (side >= 2 * ring_radius(letters) + kRingAir)
            add_ringed(board, place->centre(), letters, piece.state == wall::PieceState::planned);
        else if (side > estimated_width(letters, kLetterSize, true))
            add_bare_letter(board, place->centre(), letters);
    }
}

}  // namespace wallwright::draw

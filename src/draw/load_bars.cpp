#include "draw/load_bars.h"

#include "draw/paths.h"
#include "hanging/verdict.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;

// mm on paper, all of them
constexpr double kWords = 1.8;
constexpr double kHeight = 1.5;
constexpr double kLongest = 20;
constexpr double kShortest = 3.5;  // of a bar; a piece with less room has the words alone
constexpr double kAir = 0.8;

struct Saying {
    Ink ink = Ink::good;
    std::string words;
};

Saying saying_of(const hanging::Hanging& hanging) {
    if (hanging.fixings.empty())
        return {Ink::stop, "no fixing"};
    const hanging::Verdict verdict = hanging::verdict_on(hanging);
    if (verdict == hanging::Verdict::does_not_hold)
        return {Ink::stop, hanging::kDoesNotHold};
    if (verdict == hanging::Verdict::over)
        return {Ink::stop, fmt::format("{:.0f} %, over", 100 * hanging.use)};
    return {Ink::good, fmt::format("{:.0f} %", 100 * hanging.use)};
}

void add_bar(Board& board, const Rect<Wall>& bar, const Saying& saying, double use, double limit) {
    const double full = std::clamp(use, 0.0, 1.0);
    board.add(box(Rect<Wall>::at(bar.min, {full * bar.width(), bar.height()}),
                  {Paint{saying.ink}, std::nullopt}));
    board.add(box(bar, {std::nullopt, Stroke{{Ink::outline}, 0.18}}));
    const double x = bar.left() + std::min(1.0, limit) * bar.width();
    const double past = board.on_wall(0.5);
    board.add(
        line<Wall>({x, bar.bottom() - past}, {x, bar.top() + past}, Stroke{{Ink::outline}, 0.35}));
}

/// Without what stands after the share, where the piece is too narrow for it.
void fit_words(Saying& saying, double room) {
    if (estimated_width(saying.words, kWords, true) > room)
        saying.words = saying.words.substr(0, saying.words.find(','));
}

void add_load(Board& board, const hanging::Hanging& hanging, const Rect<Wall>& place) {
    const double limit = hanging::limit_of(hanging);
    const double across = place.width() * board.options.scale - 4 * kAir;
    Saying saying = saying_of(hanging);
    fit_words(saying, across);
    const double words = estimated_width(saying.words, kWords, true);
    const double room = across - words;
    if (room < 0)
        return;
    const bool has_bar = !hanging.fixings.empty() && room >= kShortest + kAir;
    const double length = has_bar ? std::min(kLongest, room - kAir) : 0;
    const double height = board.on_wall(kWords + 2 * kAir);
    const double air = board.on_wall(kAir);
    const Rect<Wall> plate =
        Rect<Wall>::at({place.left() + air, place.bottom() + air},
                       {board.on_wall(length + words + (has_bar ? 3 : 2) * kAir), height});
    if (plate.top() > place.top() || !board.room.is_free(plate))
        return;
    board.add(box(plate, {Paint{Ink::paper, {}, 0.92}, std::nullopt}));
    const double level = plate.centre().y;
    if (has_bar)
        add_bar(board,
                Rect<Wall>::at({plate.left() + air, level - board.on_wall(kHeight / 2)},
                               {board.on_wall(length), board.on_wall(kHeight)}),
                saying, hanging.use, limit);
    Text<Wall> text{{plate.right() - air, level - board.on_wall(kWords / 2)}, saying.words};
    text.size = kWords;
    text.bold = true;
    text.align = Align::right;
    text.paint.ink = saying.ink;
    board.add(text);
    board.room.take(plate);
}

}  // namespace

void add_load_bars(Board& board) {
    for (const hanging::Hanging& hanging : board.assessment.hangings) {
        const wall::Piece* piece = wall::find(board.project, hanging.piece);
        if (const auto place = piece == nullptr ? std::nullopt : place_of(board.project, *piece))
            add_load(board, hanging, *place);
    }
}

}  // namespace wallwright::draw

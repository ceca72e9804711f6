#include "pages/strip_cards.h"

#include "draw/letters.h"
#include "draw/paths.h"
#include "draw/tint.h"
#include "hanging/strip_words.h"
#include "rules/scene.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;
using hanging::Fixing;

constexpr std::size_t kColumns = 3;
constexpr double kBetween = 4;     // mm between two cards
constexpr double kBackWidth = 24;  // mm that the drawing of a back may take
constexpr double kBackHeight = 29;
constexpr Type kName{2.2, true};
constexpr Type kBody{1.8, false};

/// Pieces whose backs are alike; the first is drawn.
struct Card {
    std::vector<const wall::Piece*> pieces;
    const hanging::Hanging* hanging = nullptr;
    Rect<Wall> place;
};

/// "stage 2, not bought yet"; empty for a piece that can go up now.
std::string waits_for(const wall::Piece& piece) {
    const std::string stage = piece.stage > 0 ? fmt::format("stage {}", piece.stage) : "";
    if (!piece.wished)
        return stage;
    return fmt::format("{}{}not bought yet", stage, stage.empty() ? "" : ", ");
}

std::string letter_words(const wall::Project& project, const wall::Piece& piece) {
    const std::string letter = draw::letter_of(project, piece.id);
    const std::string waits = waits_for(piece);
    return waits.empty() ? letter : fmt::format("{} ({})", letter, waits);
}

/// The strips' places on the back, from the piece's lower left corner.
std::vector<Rect<Wall>> strips_on(const Card& card) {
    std::vector<Rect<Wall>> strips;
    for (const Fixing& fixing : card.hanging->fixings)
        strips.push_back(
            hanging::covered_by(fixing).moved(geometry::Point<Wall>{} - card.place.min));
    return strips;
}

bool nearly(double a, double b) {
    return std::abs(a - b) < 0.05;
}

bool nearly(const Rect<Wall>& a, const Rect<Wall>& b) {
    return nearly(a.min.x, b.min.x) && nearly(a.min.y, b.min.y) && nearly(a.max.x, b.max.x) &&
           nearly(a.max.y, b.max.y);
}

bool alike(const Card& a, const Card& b) {
    const std::vector<Rect<Wall>> strips_a = strips_on(a);
    const std::vector<Rect<Wall>> strips_b = strips_on(b);
    return a.hanging->fixing_title == b.hanging->fixing_title &&
           nearly(a.place.width(), b.place.width()) && nearly(a.place.height(), b.place.height()) &&
           std::equal(
               strips_a.begin(), strips_a.end(), strips_b.begin(), strips_b.end(),
               [](const Rect<Wall>& one, const Rect<Wall>& other) { return nearly(one, other); });
}

/// One card for each kind of back among the planned pieces on strips.
std::vector<Card> cards_of(const wall::Project& project, const rules::Assessment& assessment) {
    std::vector<Card> cards;
    for (const hanging::Hanging& hanging : assessment.hangings) {
        const wall::Piece* piece = wall::find(project, hanging.piece);
        if (piece == nullptr || piece->state != wall::PieceState::planned ||
            hanging.fixings.empty() || hanging.fixings.front().kind != wall::FixingKind::strip_pair)
            continue;
        const auto place = wall::place_of(project, *piece);
        if (!place)
            continue;
        Card card{{piece}, &hanging, *place};
        const auto same = std::find_if(cards.begin(), cards.end(),
                                       [&card](const Card& one) { return alike(one, card); });
        if (same == cards.end())
            cards.push_back(std::move(card));
        else
            same->pieces.push_back(piece);
    }
    return cards;
}

/// Seen from behind: left and right change sides.
void add_back(Shapes& shapes, const wall::Project& project, const Card& card, Spot at) {
    const double scale =
        std::min(kBackWidth / card.place.width(), kBackHeight / card.place.height());
    const auto on_page = [&](const Rect<Wall>& part) {
        return Area{{at.x + scale * (card.place.max.x - part.max.x),
                     at.y + scale * (card.place.max.y - part.max.y)},
                    {at.x + scale * (card.place.max.x - part.min.x),
                     at.y + scale * (card.place.max.y - part.min.y)}};
    };
    const double moulding = std::min(wall::frame_of(project, *card.pieces.front()).moulding_width,
                                     card.place.width() / 3);
    const draw::Stroke edge{{Ink::outline}, 0.25};
    shapes.emplace_back(draw::box(on_page(card.place), {draw::Paint{Ink::floor}, edge}));
    shapes.emplace_back(draw::box(on_page(card.place.grown(-moulding)),
                                  {draw::Paint{Ink::paper}, draw::Stroke{{Ink::outline}, 0.13}}));
    for (const Fixing& fixing : card.hanging->fixings)
        shapes.emplace_back(
            draw::box(on_page(hanging::covered_by(fixing)),
                      {draw::Paint{Ink::accent, {}, 0.35}, draw::Stroke{{Ink::accent}, 0.18}}));
}

std::vector<std::string> card_words(const wall::Project& project, const Card& card) {
    std::vector<std::string> words{
        fmt::format("{} × {}", card.hanging->fixings.size(), card.hanging->fixing_title)};
    for (std::string& line : hanging::strip_words(*card.hanging, card.place, project.unit))
        words.push_back(std::move(line));
    return words;
}

/// "B  Tern" for a single piece and below it what it waits for, else all letters.
std::vector<std::string> name_lines(const wall::Project& project, const Card& card, double width) {
    if (card.pieces.size() > 1) {
        std::vector<std::string> letters;
        for (const wall::Piece* piece : card.pieces)
            letters.push_back(letter_words(project, *piece));
        return lines_of(fmt::format("{}", fmt::join(letters, ", ")), kName, width);
    }
    const wall::Piece& piece = *card.pieces.front();
    std::vector<std::string> lines{
        shortened(fmt::format("{}  {}", draw::letter_of(project, piece.id), wall::title_of(piece)),
                  kName, width)};
    if (const std::string waits = waits_for(piece); !waits.empty())
        lines.push_back(waits);
    return lines;
}

std::vector<std::string> body_lines(const wall::Project& project, const Card& card, double width) {
    std::vector<std::string> lines;
    for (const std::string& words : card_words(project, card))
        for (std::string& line : lines_of(words, kBody, width))
            lines.push_back(std::move(line));
    return lines;
}

double body_width(double width) {
    return width - kBackWidth - 2.5;
}

double card_height(const wall::Project& project, const Card& card, double width) {
    const auto names = static_cast<double>(name_lines(project, card, width).size());
    const auto words = static_cast<double>(body_lines(project, card, body_width(width)).size());
    return names * line_height(kName.size) + 1 +
           std::max(kBackHeight, words * line_height(kBody.size)) + kBetween;
}

void add_card(Shapes& shapes, const wall::Project& project, const Card& card, const Area& area) {
    double y = area.min.y;
    for (const std::string& line : name_lines(project, card, area.width())) {
        y += line_height(kName.size);
        shapes.emplace_back(text_at({area.min.x, y - 0.9}, line, kName));
    }
    y += 1;
    add_back(shapes, project, card, {area.min.x, y});
    y -= 1.2;
    for (const std::string& line : body_lines(project, card, body_width(area.width()))) {
        y += line_height(kBody.size);
        shapes.emplace_back(text_at({area.max.x - body_width(area.width()), y}, line, kBody));
    }
}

}  // namespace

void add_strip_cards(Flow& flow, const wall::Project& project,
                     const rules::Assessment& assessment) {
    const std::vector<Card> cards = cards_of(project, assessment);
    if (cards.empty())
        return;
    const double pitch = flow.content().width() / kColumns;
    const double width = pitch - 3;
    const auto row_height = [&](std::size_t first) {
        double height = 0;
        for (std::size_t i = first; i < std::min(first + kColumns, cards.size()); ++i)
            height = std::max(height, card_height(project, cards[i], width));
        return height;
    };
    flow.add_heading("Strips on the backs of the frames, seen from behind", row_height(0));
    for (std::size_t first = 0; first < cards.size(); first += kColumns) {
        const double height = row_height(first);
        flow.need(height);
        for (std::size_t i = first; i < std::min(first + kColumns, cards.size()); ++i) {
            const double left = flow.content().min.x + static_cast<double>(i - first) * pitch;
            add_card(flow.shapes(), project, cards[i],
                     {{left, flow.top()}, {left + width, flow.top() + height}});
        }
        flow.advance(height);
    }
}

}  // namespace wallwright::pages

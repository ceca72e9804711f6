#include "desk/bench/card_board.h"

#include "desk/bench/hand_words.h"
#include "desk/bench/lock_sign.h"
#include "desk/bench/moved_shapes.h"
#include "draw/card_sheet.h"
#include "draw/labels.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using mounts::CardPlan;

// All in mm on paper.
constexpr double kHeadingSize = 2.5;
constexpr double kWordSize = 1.8;
constexpr double kChip = 3;  // of the card's colour before its words
constexpr double kChipAir = 1.6;
constexpr double kWordsBelow = 3.9;  // a heading's second line
constexpr double kTitleUnder = 14.5;

void append(CardShapes& shapes, CardShapes more) {
    for (auto& shape : more)
        shapes.push_back(std::move(shape));
}

void add_heading(CardShapes& shapes, const CardHeading& heading, wall::Colour colour, double unit) {
    const Point<Wall> at = heading.at;
    shapes.emplace_back(
        draw::box(Rect<Wall>::at({at.x, at.y - 0.25 * unit}, {kChip * unit, kChip * unit}),
                  {draw::own(colour), Stroke{{Ink::outline}, 0.25}}));
    draw::Text<Wall> title{{at.x + (kChip + kChipAir) * unit, at.y}, heading.title};
    title.size = kHeadingSize;
    title.bold = true;
    draw::Text<Wall> words{{at.x, at.y - kWordsBelow * unit}, heading.words};
    words.size = kWordSize;
    words.paint.ink = Ink::quiet_text;
    shapes.emplace_back(std::move(title));
    shapes.emplace_back(std::move(words));
}

void add_title(CardShapes& shapes, const LaidSheet& sheet, double unit) {
    draw::Text<Wall> text{{sheet.place.centre().x, sheet.place.min.y - kTitleUnder * unit}, ""};
    const double width = std::max(sheet.place.width() / unit + 8, 34.0);
    const std::vector<std::string> lines = draw::wrapped(sheet.title, kWordSize, width, 1);
    if (lines.empty())
        return;
    text.text = lines.front();
    text.size = kWordSize;
    text.align = draw::Align::centre;
    shapes.emplace_back(std::move(text));
}

/// Somebody's eye is on this one.
void add_marks(CardShapes& shapes, const CardScene& scene, const CardHand& hand) {
    const CardPlan& plan = *scene.choice.plan();
    for (const LaidBlank& blank : scene.blanks) {
        const BlankName name = name_of(plan, blank);
        const bool carried = hand.carried() && hand.carried()->name == name;
        if (carried)
            shapes.emplace_back(draw::box(
                blank.place,
                {Paint{Ink::paper, {}, 0.65}, Stroke{{Ink::hidden}, 0.25, LineType::dashed}}));
        if (hand.chosen == name && !carried)
            shapes.emplace_back(draw::box(blank.place, {std::nullopt, Stroke{{Ink::accent}, 0.7}}));
        else if (hand.hovered() == name && !carried)
            shapes.emplace_back(
                draw::box(blank.place, {std::nullopt, Stroke{{Ink::accent}, 0.35}}));
        const bool is_shut = is_kept(plan, blank);
        if (!carried && (is_shut || hand.hovered() == name))
            append(shapes, lock_sign(lock_of(blank, scene.unit), scene.unit, is_shut));
    }
}

void add_carried(CardShapes& shapes, const CardScene& scene, const CarriedBlank& carried,
                 const Rect<Wall>& sight, bool in_hand) {
    const wall::Colour colour = scene.choice.plan()->lots[carried.lot].colour;
    const Ink ink = carried.kept ? Ink::accent : Ink::mind;
    const LineType type = carried.kept ? LineType::continuous : LineType::dashed;
    if (in_hand)
        shapes.emplace_back(draw::Shadow<Wall>{carried.place, 1.2 * scene.unit});
    shapes.emplace_back(
        draw::box(carried.place, {draw::own(draw::wash(colour)), Stroke{{ink}, 0.7, type}}));
    const mounts::BlankOwner& owner = scene.choice.plan()->lots[carried.lot].owners[carried.blank];
    const std::vector<std::string> lines =
        draw::wrapped(owner.title, kHeadingSize, carried.place.width() / scene.unit - 2, 1);
    if (!lines.empty()) {
        draw::Text<Wall> text{
            {carried.place.centre().x, carried.place.centre().y - kHeadingSize / 2 * scene.unit},
            lines.front()};
        text.size = kHeadingSize;
        text.bold = true;
        text.align = draw::Align::centre;
        shapes.emplace_back(std::move(text));
    }
    if (in_hand)
        append(shapes, hand_words(carried.words, carried.place, sight, ink, scene.unit));
}

}  // namespace

CardShapes card_board(const CardPlan& plan, const CardLayout& layout, units::LengthUnit unit,
                      double scale) {
    const double paper = 1 / scale;
    CardShapes shapes;
    for (const CardHeading& heading : layout.headings)
        add_heading(shapes, heading, plan.lots[heading.lot].colour, paper);
    for (const LaidSheet& sheet : layout.sheets) {
        append(shapes, moved(draw::card_sheet(plan.lots[sheet.at.lot], sheet.at.sheet, unit,
                                              {scale, true, true}),
                             {sheet.place.min.x, sheet.place.min.y})
                           .shapes);
        add_title(shapes, sheet, paper);
    }
    return shapes;
}

CardShapes card_overlay(const CardScene& scene, const CardHand& hand, const Rect<Wall>& sight) {
    CardShapes shapes;
    if (scene.choice.plan() == nullptr)
        return shapes;
    add_marks(shapes, scene, hand);
    if (hand.carried())
        add_carried(shapes, scene, *hand.carried(), sight, hand.is_busy());
    return shapes;
}

}  // namespace wallwright::desk

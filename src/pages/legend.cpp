#include "pages/legend.h"

#include "draw/paths.h"
#include "pages/render.h"

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;

constexpr Type kWords{1.8, false};
constexpr double kSignWidth = 8;

void add_mark(Shapes& shapes, Spot at) {
    const draw::Stroke cross{{Ink::mark}, 0.35};
    shapes.emplace_back(draw::line<Page>({at.x + 1.4, at.y}, {at.x + 4.6, at.y}, cross));
    shapes.emplace_back(draw::line<Page>({at.x + 3, at.y - 1.6}, {at.x + 3, at.y + 1.6}, cross));
    shapes.emplace_back(text_at({at.x + 4.8, at.y + 1.6}, "3", {1.8, true}, Ink::mark));
}

void add_hidden(Shapes& shapes, Spot at) {
    shapes.emplace_back(
        draw::box(Area{{at.x, at.y - 1.1}, {at.x + 6.5, at.y + 1.1}},
                  {std::nullopt, draw::Stroke{{Ink::hidden}, 0.18, draw::LineType::dashed}}));
}

void add_hatch(Shapes& shapes, Spot at) {
    shapes.emplace_back(draw::Hatch<Page>{{{{at.x, at.y - 1.4},
                                            {at.x + 6.5, at.y - 1.4},
                                            {at.x + 6.5, at.y + 1.4},
                                            {at.x, at.y + 1.4}}},
                                          draw::Paint{Ink::hidden, {}, 0.4},
                                          1.2});
}

void add_letter(Shapes& shapes, Spot at, bool filled) {
    const Spot middle{at.x + 4, at.y};
    shapes.emplace_back(draw::circle(
        middle, 1.9,
        {draw::Paint{filled ? Ink::accent : Ink::paper}, draw::Stroke{{Ink::accent}, 0.25}}));
    shapes.emplace_back(aligned(
        text_at({middle.x, middle.y + 0.9}, "A", {1.8, true}, filled ? Ink::paper : Ink::accent),
        draw::Align::centre));
}

void add_planned(Shapes& shapes, Spot at) {
    add_letter(shapes, at, true);
}
void add_hung(Shapes& shapes, Spot at) {
    add_letter(shapes, at, false);
}

void add_wished(Shapes& shapes, Spot at) {
    shapes.emplace_back(
        draw::box(Area{{at.x, at.y - 1.4}, {at.x + 6.5, at.y + 1.4}},
                  {std::nullopt, draw::Stroke{{Ink::accent}, 0.35, draw::LineType::dashed}}));
}

void add_centre_line(Shapes& shapes, Spot at) {
    shapes.emplace_back(draw::line<Page>(
        at, {at.x + 7, at.y}, draw::Stroke{{Ink::accent}, 0.25, draw::LineType::long_dash_dotted}));
}

void add_stud(Shapes& shapes, Spot at) {
    const draw::Stroke edge{{Ink::hidden, {}, 0.55}, 0.18, draw::LineType::dashed};
    const draw::Stroke centre{{Ink::hidden, {}, 0.55}, 0.18, draw::LineType::long_dash_dotted};
    for (const double off : {-1.1, 1.1})
        shapes.emplace_back(draw::line<Page>({at.x, at.y + off}, {at.x + 6.5, at.y + off}, edge));
    shapes.emplace_back(draw::line<Page>(at, {at.x + 6.5, at.y}, centre));
}

struct Sign {
    void (*add)(Shapes&, Spot);
    const char* words;
    bool Explained::*only_for = nullptr;  ///< Shown only where there is such a thing.
};

constexpr Sign kSigns[] = {
    {add_planned, "planned"},
    {add_hung, "hangs or waits"},
    {add_wished, "not bought yet", &Explained::wished},
    {add_mark, "pencil mark, numbered as in the table"},
    {add_hidden, "strip, hook or cord behind the frame"},
    {add_stud, "stud in the wall", &Explained::studs},
    {add_hatch, "cables may run here"},
    {add_centre_line, "centre line"},
};

}  // namespace

void add_legend(Shapes& shapes, Spot at, double width, const Explained& explained) {
    double x = at.x;
    for (const Sign& sign : kSigns) {
        if (sign.only_for != nullptr && !(explained.*sign.only_for))
            continue;
        const double words = text_width(sign.words, kWords.size, kWords.bold);
        if (x + kSignWidth + words > at.x + width)
            return;
        sign.add(shapes, {x, at.y - 0.9});
        shapes.emplace_back(text_at({x + kSignWidth, at.y}, sign.words, kWords, Ink::quiet_text));
        x += kSignWidth + words + 6;
    }
}

}  // namespace wallwright::pages

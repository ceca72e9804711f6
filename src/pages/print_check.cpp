#include "pages/print_check.h"

#include "draw/paths.h"

namespace wallwright::pages {

namespace {

using draw::Ink;

constexpr double kBarHeight = 1.6;
constexpr Type kWords{1.8, false};

/// Parts in turn black and white inside a thin outline.
void add_bar(Shapes& shapes, Spot at, int parts, double part) {
    for (int i = 0; i < parts; i += 2)
        shapes.emplace_back(draw::box(Area::at({at.x + i * part, at.y}, {part, kBarHeight}),
                                      {draw::Paint{Ink::outline}, std::nullopt}));
    shapes.emplace_back(draw::box(Area::at(at, {parts * part, kBarHeight}),
                                  {std::nullopt, draw::Stroke{{Ink::outline}, 0.13}}));
}

}  // namespace

void add_print_check(Shapes& shapes, Spot at) {
    constexpr double kSecond = 7;
    shapes.emplace_back(text_at({at.x, at.y + 2.4}, "100 mm", {kWords.size, true}));
    shapes.emplace_back(
        aligned(text_at({at.x + 100, at.y + 2.4}, "Print at 100 % and measure these bars.", kWords,
                        Ink::quiet_text),
                draw::Align::right));
    add_bar(shapes, {at.x, at.y + 3.3}, 10, 10);
    shapes.emplace_back(text_at({at.x, at.y + kSecond + 2.4}, "4 in", {kWords.size, true}));
    add_bar(shapes, {at.x, at.y + kSecond + 3.3}, 8, units::kMmPerInch / 2);
}

}  // namespace wallwright::pages

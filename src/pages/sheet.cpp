#include "pages/sheet.h"

#include "draw/paths.h"
#include "pages/print_check.h"
#include "pages/render.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::pages {

namespace {

using draw::Ink;

constexpr double kBlockHeight = 17;  // mm
constexpr double kNumberWidth = 17;
constexpr double kInset = 2;
constexpr double kAboveBlock = 2;

const draw::Stroke kBlockLine{{Ink::outline}, 0.25};

Area page_of(const SheetStyle& style) {
    if (style.size)
        return Area::at({0, 0}, *style.size);
    const geometry::Size upright = size_of(style.paper);
    return Area::at({0, 0}, style.landscape ? upright.turned() : upright);
}

Area block_of(const Area& page) {
    const Area inside = page.grown(-kMargin);
    return {{inside.min.x, inside.max.y - kBlockHeight}, inside.max};
}

/// Large on one line, or small on two.
void add_title(Shapes& shapes, const SheetStyle& style, Spot at, double width) {
    const Type large{style.landscape ? 3.5 : 2.5, true};
    if (text_width(style.project_title, large.size, large.bold) <= width) {
        shapes.emplace_back(text_at({at.x, at.y + 5.4}, style.project_title, large));
        return;
    }
    constexpr Type kSmall{1.8, true};
    double y = at.y + 0.2;
    for (const std::string& line : few_lines(style.project_title, kSmall, width, 2)) {
        y += line_height(kSmall.size);
        shapes.emplace_back(text_at({at.x, y}, line, kSmall));
    }
}

void add_fields(Shapes& shapes, const SheetStyle& style, Spot at, double width) {
    constexpr Type kName{1.8, false};
    constexpr Type kValue{2.2, false};
    constexpr double kBetween = 5;
    double x = at.x;
    for (const Field& field : style.fields) {
        const double room = at.x + width - x;
        if (room < kBetween)
            return;
        const std::string value = shortened(field.value, kValue, room);
        shapes.emplace_back(
            text_at({x, at.y}, shortened(field.name, kName, room), kName, Ink::quiet_text));
        shapes.emplace_back(text_at({x, at.y + 3.6}, value, kValue));
        x += std::max(text_width(field.name, kName.size, false),
                      text_width(value, kValue.size, false)) +
             kBetween;
    }
}

}  // namespace

draw::PageDrawing blank_sheet(const SheetStyle& style) {
    draw::PageDrawing sheet{page_of(style), {}};
    const Area block = block_of(sheet.extent);
    const double bars_right = block.min.x + kPrintCheckWidth + 2 * kInset;
    const double number_left = block.max.x - kNumberWidth;
    sheet.shapes.emplace_back(draw::box(block, {std::nullopt, kBlockLine}));
    for (const double x : {bars_right, number_left})
        sheet.shapes.emplace_back(
            draw::line<geometry::Page>({x, block.min.y}, {x, block.max.y}, kBlockLine));
    add_print_check(sheet.shapes, {block.min.x + kInset, block.min.y + 1.4});

    const Spot at{bars_right + kInset, block.min.y};
    const double width = number_left - kInset - at.x;
    add_title(sheet.shapes, style, at, width);
    add_fields(sheet.shapes, style, {at.x, at.y + 10.4}, width);
    return sheet;
}

Area content_of(const SheetStyle& style) {
    const Area page = page_of(style);
    const Area inside = page.grown(-kMargin);
    return {inside.min, {inside.max.x, block_of(page).min.y - kAboveBlock}};
}

void number_sheets(std::vector<draw::PageDrawing>& sheets) {
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const Area block = block_of(sheets[i].extent);
        const double x = block.max.x - kNumberWidth / 2;
        sheets[i].shapes.emplace_back(
            aligned(text_at({x, block.min.y + 5}, "sheet", {1.8, false}, Ink::quiet_text),
                    draw::Align::centre));
        sheets[i].shapes.emplace_back(
            aligned(text_at({x, block.min.y + 11}, fmt::format("{} of {}", i + 1, sheets.size()),
                            {2.5, true}),
                    draw::Align::centre));
    }
}

draw::Text<geometry::Page> text_at(Spot at, std::string words, const Type& type, draw::Ink ink) {
    draw::Text<geometry::Page> text{at, std::move(words)};
    text.size = type.size;
    text.bold = type.bold;
    text.paint.ink = ink;
    return text;
}

draw::Text<geometry::Page> aligned(draw::Text<geometry::Page> text, draw::Align align) {
    text.align = align;
    return text;
}

}  // namespace wallwright::pages

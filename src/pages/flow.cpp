#include "pages/flow.h"

#include "pages/render.h"

#include <utility>

namespace wallwright::pages {

namespace {

constexpr Type kTitle{5, true};
constexpr Type kHeading{2.8, true};

}  // namespace

Flow::Flow(SheetStyle style) : style_(std::move(style)), content_(content_of(style_)) {
    open_sheet();
}

void Flow::open_sheet() {
    const std::string more = sheets_.empty() ? "" : ", continued";
    const std::string words =
        shortened(style_.name, kTitle,
                  content_.width() - text_width(more, kTitle.size, kTitle.bold)) +
        more;
    sheets_.push_back(blank_sheet(style_));
    top_ = content_.min.y + kTitle.size;
    shapes().emplace_back(text_at({content_.min.x, top_}, words, kTitle));
    top_ += 2;
    for (const std::string& line : lines_of(style_.project_title, {2.5, false}, content_.width())) {
        top_ += line_height(2.5);
        shapes().emplace_back(
            text_at({content_.min.x, top_}, line, {2.5, false}, draw::Ink::quiet_text));
    }
    top_ += 5;
}

bool Flow::need(double height) {
    if (height <= room())
        return false;
    open_sheet();
    return true;
}

void Flow::add_text(const std::string& text, const Type& type, draw::Ink ink) {
    for (const std::string& line : lines_of(text, type, content_.width())) {
        need(line_height(type.size));
        top_ += line_height(type.size);
        shapes().emplace_back(text_at({content_.min.x, top_ - 0.4 * type.size}, line, type, ink));
    }
}

void Flow::add_heading(const std::string& text, double following) {
    constexpr double kAbove = 4;
    constexpr double kBelow = 2;
    need(kAbove + kHeading.size + kBelow + following);
    top_ += kAbove + kHeading.size;
    shapes().emplace_back(text_at({content_.min.x, top_}, text, kHeading));
    top_ += kBelow;
}

}  // namespace wallwright::pages

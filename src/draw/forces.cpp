#include "draw/forces.h"

#include "draw/dimensions.h"
#include "draw/force_arrows.h"
#include "draw/force_views.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using hanging::Force;
using hanging::ForceKind;
using hanging::FreeBody;

// mm on paper.
constexpr double kSize = 1.8;
constexpr double kLine = 3.1;   // from one line of words to the next
constexpr double kBetween = 5;  // the two views, figures of the first aside
constexpr std::size_t kLinesMost = 8;

struct Key {
    ForceKind kind;
    const char* words;
};
constexpr Key kKeys[] = {{ForceKind::weight, "weight"},
                         {ForceKind::carried, "carries it"},
                         {ForceKind::held, "holds it to the wall"},
                         {ForceKind::wall_push, "the wall pushes"}};

bool has(const FreeBody& body, ForceKind kind) {
    return std::ranges::find(body.forces, kind, &Force::kind) != body.forces.end();
}

/// Lines of words that run down from `top`.
class Words {
  public:
    Words(Easel& easel, Point<Wall> upper_left, double width)
        : easel_(easel), at_(upper_left), width_(width) {}

    void add(const std::string& text, Ink ink, bool bold = false) {
        for (const std::string& line : wrapped(text, kSize, width_, kLinesMost)) {
            at_.y -= easel_.on_wall(kLine);
            Text<Wall> words{at_, line, kSize, {ink}};
            words.bold = bold;
            easel_.add_label(words);
        }
    }
    void skip(double paper_mm) { at_.y -= easel_.on_wall(paper_mm); }

    /// An arrow of each kind that there is, with what it means, as many in a line as fit.
    void add_key(const FreeBody& body) {
        constexpr double kArrow = 4.5;
        constexpr double kAir = 3;
        double x = 0;
        at_.y -= easel_.on_wall(kLine);
        for (const Key& key : kKeys) {
            if (!has(body, key.kind))
                continue;
            const double wide = kArrow + 1 + estimated_width(key.words, kSize);
            if (x > 0 && x + wide > width_) {
                x = 0;
                at_.y -= easel_.on_wall(kLine);
            }
            const Point<Wall> from{at_.x + easel_.on_wall(x), at_.y + easel_.on_wall(kSize / 2)};
            add_arrows(easel_, {{key.kind, from, {kArrow, 0}, ""}}, 1, from.x);
            easel_.add(Text<Wall>{
                {from.x + easel_.on_wall(kArrow + 1), at_.y}, key.words, kSize, {Ink::quiet_text}});
            x += wide + kAir;
        }
    }

  private:
    Easel& easel_;
    Point<Wall> at_;
    double width_;
};

void add_words(Words& words, const FreeBody& body) {
    for (const hanging::Worked& one : body.worked) {
        words.skip(1);
        words.add(one.about, Ink::quiet_text);
        words.add(one.formula, Ink::text);
    }
    for (const std::string& remark : body.remarks) {
        words.skip(1);
        words.add(remark, Ink::quiet_text);
    }
}

}  // namespace

WallDrawing force_drawing(const FreeBody& body, const ForceOptions& options) {
    Easel easel{options.scale, options.unit};
    const double paper_mm = paper_mm_per_newton(body, options.scale);
    add_front_view(easel, body, paper_mm);
    const Rect<Wall> front = extent_of(easel.shapes, easel.scale);
    add_side_view(easel, body, paper_mm, front.max.x + easel.on_wall(kBetween));
    const Rect<Wall> views = extent_of(easel.shapes, easel.scale);
    Words words(easel, {views.min.x, views.min.y - easel.on_wall(1)},
                std::max(options.words, views.width() * easel.scale));
    words.add_key(body);
    if (options.formulas)
        add_words(words, body);
    return {extent_of(easel.shapes, easel.scale), std::move(easel.shapes)};
}

ScaledForces force_drawing_within(const FreeBody& body, const ForceOptions& options, double width) {
    constexpr double kLargest = 0.25;
    constexpr double kLeast = 10;  // mm on paper that the frame stays wide
    constexpr double kSmaller = 0.92;
    ForceOptions within = options;
    within.words = width;
    within.scale = kLargest;
    ScaledForces found{within.scale, force_drawing(body, within)};
    while (found.drawing.extent.width() * found.scale > width &&
           body.outside.width * found.scale > kLeast) {
        within.scale *= kSmaller;
        found = {within.scale, force_drawing(body, within)};
    }
    return found;
}

}  // namespace wallwright::draw

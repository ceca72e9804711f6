#include "app/canvas_painter.h"

#include "app/canvas_text.h"
#include "app/fills.h"
#include "app/strokes.h"
#include "app/theme.h"
#include "draw/dashes.h"
#include "draw/hatch_lines.h"
#include "draw/tint.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wallwright::app {

namespace {

using geometry::Wall;

/// Shapes are cut off this far outside the canvas, so that their edges there are not seen.
constexpr float kMargin = 32;  // px

ImU32 faded(ImU32 colour, double share) {
    const double alpha = share * ((colour >> IM_COL32_A_SHIFT) & 0xFF);
    return (colour & ~IM_COL32_A_MASK) |
           (static_cast<ImU32>(std::lround(alpha)) << IM_COL32_A_SHIFT);
}

/// What has been filled so far, so that letters can be told what they stand on.
class Grounds {
  public:
    void add(const ImVec4& place, const draw::Paint& paint) {
        constexpr double kOpaque = 0.5;
        if (paint.alpha >= kOpaque)
            filled_.push_back(
                {place, paint.ink == draw::Ink::floor ? Ground::dark : Ground::light});
    }
    [[nodiscard]] Ground under(const ImVec4& place) const {
        const ImVec2 middle{(place.x + place.z) / 2, (place.y + place.w) / 2};
        const auto holds = [middle](const Filled& one) {
            return middle.x >= one.place.x && middle.x <= one.place.z && middle.y >= one.place.y &&
                   middle.y <= one.place.w;
        };
        const auto last = std::find_if(filled_.rbegin(), filled_.rend(), holds);
        return last == filled_.rend() ? Ground::dark : last->ground;
    }

  private:
    struct Filled {
        ImVec4 place;
        Ground ground;
    };
    std::vector<Filled> filled_;
};

/// The part of a picture that covers a place of another shape, from its middle.
struct Crop {
    ImVec2 from;
    ImVec2 to;
};

Crop crop_of(const Texture& texture, const ImVec4& place) {
    const float wide = (place.z - place.x) / texture.width;
    const float high = (place.w - place.y) / texture.height;
    const float scale = std::max(wide, high);
    const ImVec2 cut{(1 - wide / scale) / 2, (1 - high / scale) / 2};
    return {cut, {1 - cut.x, 1 - cut.y}};
}

class Painter {
  public:
    Painter(ImDrawList& list, const CanvasStyle& style, const ImVec4& clip)
        : list_(list),
          style_(style),
          clip_(grown(clip, kMargin)),
          text_(style.fonts, style.pixels_per_paper_mm, style.on_paper),
          fills_(list, clip_),
          strokes_(list, clip_) {}

    void operator()(const draw::Path<Wall>& path) {
        flatten(path, style_.to_screen, points_);
        const ImVec4 bounds = bounds_of(points_);
        if (is_apart(bounds, clip_))
            return;
        if (path.fill) {
            fills_.fill(points_, colour_of(*path.fill, style_.dark));
            if (style_.dark)
                grounds_.add(bounds, *path.fill);
        }
        if (path.stroke)
            strokes_.stroke(points_, path.closed, line_look(*path.stroke));
    }

    void operator()(const draw::Hatch<Wall>& hatch) {
        const LineLook look = line_look({hatch.paint, draw::kHatchWidth});
        const double spacing = hatch.spacing * style_.pixels_per_paper_mm / style_.to_screen.scale;
        for (const auto& line : draw::hatch_lines(hatch.areas, spacing, clip_on_wall())) {
            const ImVec2 ends[] = {on_screen(style_.to_screen, line.from),
                                   on_screen(style_.to_screen, line.to)};
            strokes_.stroke(ends, false, look);
        }
    }

    void operator()(const draw::Text<Wall>& text) {
        const TextLook look = text_.look_of(text);
        const ImVec2 at = on_screen(style_.to_screen, text.at);
        const float air = static_cast<float>(draw::kPlateAir * style_.pixels_per_paper_mm);
        const ImVec4 box = CanvasText::box_of(text, look, at, air);
        if (look.font == nullptr && style_.on_paper)
            return stand_in(text, at);
        if (look.font == nullptr || is_apart(box, clip_))
            return;
        if (text.plate)
            list_.AddRectFilled({box.x, box.y}, {box.z, box.w}, colour_of(*text.plate, false));
        CanvasText::paint(list_, text, look, at, letters_on(ground_of(text, box), text.paint));
    }

    void operator()(const draw::Image<Wall>& image) {
        const ImVec4 place = on_screen(style_.to_screen, image.place);
        if (is_apart(place, clip_))
            return;
        std::optional<Texture> texture;
        if (style_.host != nullptr)
            texture = style_.host->texture(image.file);
        if (!texture) {
            fills_.box(place, colour_of(image.instead, style_.dark));
            return;
        }
        const Crop crop = crop_of(*texture, place);
        list_.AddImage(texture->id, {place.x, place.y}, {place.z, place.w}, crop.from, crop.to);
    }

    void operator()(const draw::Shadow<Wall>& shadow) {
        fills_.shadow(on_screen(style_.to_screen, shadow.of),
                      static_cast<float>(shadow.depth * style_.to_screen.scale),
                      colour_of({draw::Ink::shade}, style_.dark));
    }

  private:
    /// A bar as long and as high as the letters are about.
    void stand_in(const draw::Text<Wall>& text, ImVec2 at) {
        constexpr double kWide = 0.66;  // of a letter, in shares of a capital's height
        constexpr double kPale = 0.35;
        const auto letters = std::ranges::count_if(
            text.text, [](char one) { return (static_cast<unsigned char>(one) & 0xC0) != 0x80; });
        TextLook look;
        look.capitals = static_cast<float>(text.size * style_.pixels_per_paper_mm);
        look.width = static_cast<float>(kWide * static_cast<double>(letters)) * look.capitals;
        const ImVec4 box = CanvasText::box_of(text, look, at, 0);
        if (!is_apart(box, clip_))
            list_.AddRectFilled({box.x, box.y}, {box.z, box.w},
                                faded(letters_on(Ground::light, text.paint), kPale));
    }

    /// A line thinner than a pixel is a paler pixel, as on paper; but inks that are read stay full.
    [[nodiscard]] LineLook line_look(const draw::Stroke& stroke) const {
        const double width = stroke.width * style_.pixels_per_paper_mm;
        const ImU32 colour = colour_of(stroke.paint, style_.dark);
        constexpr double kPalest = 0.2;  // so that the lines of a small page are seen
        const bool is_fine = (style_.on_paper || stroke.paint.ink == draw::Ink::own) && width < 1;
        const double strength = style_.on_paper ? std::max(kPalest, width) : width;
        return {is_fine ? faded(colour, strength) : colour, static_cast<float>(width),
                draw::dashes_of(stroke.type)};
    }

    [[nodiscard]] Ground ground_of(const draw::Text<Wall>& text, const ImVec4& box) const {
        return !style_.dark || text.plate ? Ground::light : grounds_.under(box);
    }

    [[nodiscard]] geometry::Rect<Wall> clip_on_wall() const {
        return style_.to_screen.inverse()(
            geometry::Rect<geometry::Screen>{{clip_.x, clip_.y}, {clip_.z, clip_.w}});
    }

    ImDrawList& list_;
    const CanvasStyle& style_;
    ImVec4 clip_;
    CanvasText text_;
    FillPen fills_;
    StrokePen strokes_;
    Grounds grounds_;
    std::vector<ImVec2> points_;
};

}  // namespace

void paint(ImDrawList& list, std::span<const draw::Shape<Wall>> shapes, const CanvasStyle& style,
           const ImVec4& clip) {
    list.PushClipRect({clip.x, clip.y}, {clip.z, clip.w}, true);
    Painter painter(list, style, clip);
    for (const draw::Shape<Wall>& shape : shapes)
        std::visit(painter, shape);
    list.PopClipRect();
}

}  // namespace wallwright::app

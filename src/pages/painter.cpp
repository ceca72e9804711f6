#include "pages/painter.h"

#include "draw/dashes.h"
#include "pages/render.h"
#include "pages/theme.h"
#include "pages/typesetting.h"

#include <algorithm>
#include <vector>

namespace wallwright::pages {

namespace {

using geometry::Page;
using geometry::Rect;

/// Keeps Cairo's state as it was.
class Saved {
  public:
    explicit Saved(cairo_t* cairo) : cairo_(cairo) { cairo_save(cairo_); }
    ~Saved() { cairo_restore(cairo_); }
    Saved(const Saved&) = delete;
    Saved& operator=(const Saved&) = delete;

  private:
    cairo_t* cairo_;
};

void set_paint(cairo_t* cairo, const draw::Paint& paint) {
    const wall::Colour colour = colour_of(paint);
    cairo_set_source_rgba(cairo, colour.red / 255.0, colour.green / 255.0, colour.blue / 255.0,
                          paint.alpha);
}

void stroke(cairo_t* cairo, const draw::Stroke& look) {
    std::vector<double> dashes;
    for (const double length : draw::dashes_of(look.type))
        dashes.push_back(length * look.width);
    cairo_set_dash(cairo, dashes.data(), static_cast<int>(dashes.size()), 0);
    cairo_set_line_width(cairo, look.width);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    set_paint(cairo, look.paint);
    cairo_stroke(cairo);
}

void trace(cairo_t* cairo, const Rect<Page>& rect) {
    cairo_rectangle(cairo, rect.min.x, rect.min.y, rect.width(), rect.height());
}

void trace(cairo_t* cairo, const draw::Path<Page>& path) {
    cairo_new_path(cairo);
    cairo_move_to(cairo, path.start.x, path.start.y);
    for (const draw::Step<Page>& step : path.steps) {
        if (step.controls)
            cairo_curve_to(cairo, step.controls->first.x, step.controls->first.y,
                           step.controls->second.x, step.controls->second.y, step.to.x, step.to.y);
        else
            cairo_line_to(cairo, step.to.x, step.to.y);
    }
    if (path.closed)
        cairo_close_path(cairo);
}

void paint(cairo_t* cairo, const draw::Path<Page>& path) {
    trace(cairo, path);
    if (path.fill) {
        set_paint(cairo, *path.fill);
        cairo_fill_preserve(cairo);
    }
    if (path.stroke)
        stroke(cairo, *path.stroke);
    cairo_new_path(cairo);
}

void paint(cairo_t* cairo, const draw::Hatch<Page>& hatch) {
    if (hatch.areas.empty())
        return;
    const Saved saved(cairo);
    cairo_new_path(cairo);
    for (const std::vector<geometry::Point<Page>>& area : hatch.areas) {
        cairo_new_sub_path(cairo);
        for (const geometry::Point<Page> corner : area)
            cairo_line_to(cairo, corner.x, corner.y);
        cairo_close_path(cairo);
    }
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
    cairo_path_extents(cairo, &left, &top, &right, &bottom);
    cairo_clip(cairo);
    const double height = bottom - top;
    const double step = hatch.spacing * G_SQRT2;
    for (double x = left - height + step / 2; x < right; x += step) {
        cairo_move_to(cairo, x, bottom);
        cairo_line_to(cairo, x + height, top);
    }
    stroke(cairo, {hatch.paint, draw::kHatchWidth});
}

/// How far left of its point a text of this width starts.
double start_of(draw::Align align, double width) {
    switch (align) {
        case draw::Align::left:
            return 0;
        case draw::Align::centre:
            return -width / 2;
        case draw::Align::right:
            return -width;
    }
    return 0;
}

void paint(cairo_t* cairo, const draw::Text<Page>& text) {
    const Saved saved(cairo);
    cairo_translate(cairo, text.at.x, text.at.y);
    if (text.upward)
        cairo_rotate(cairo, -G_PI_2);
    const double width = text_width(text.text, text.size, text.bold);
    cairo_translate(cairo, start_of(text.align, width), 0);
    if (text.plate) {
        constexpr double kAir = draw::kPlateAir;
        trace(cairo, Rect<Page>{{-kAir, -text.size - kAir}, {width + kAir, kAir}});
        set_paint(cairo, *text.plate);
        cairo_fill(cairo);
    }
    set_paint(cairo, text.paint);
    paint_line(cairo, text.text, {text.size, text.bold});
}

void paint(cairo_t* cairo, const draw::Image<Page>& image) {
    const Saved saved(cairo);
    trace(cairo, image.place);
    const Surface picture(cairo_image_surface_create_from_png(image.file.c_str()));
    if (cairo_surface_status(picture.get()) != CAIRO_STATUS_SUCCESS) {
        set_paint(cairo, image.instead);
        cairo_fill(cairo);
        return;
    }
    cairo_clip(cairo);
    const double width = cairo_image_surface_get_width(picture.get());
    const double height = cairo_image_surface_get_height(picture.get());
    const double scale = std::max(image.place.width() / width, image.place.height() / height);
    const geometry::Point<Page> middle = image.place.centre();
    cairo_translate(cairo, middle.x - scale * width / 2, middle.y - scale * height / 2);
    cairo_scale(cairo, scale, scale);
    cairo_set_source_surface(cairo, picture.get(), 0, 0);
    cairo_paint(cairo);
}

void trace_rounded(cairo_t* cairo, const Rect<Page>& rect, double radius) {
    const double r = std::min({radius, rect.width() / 2, rect.height() / 2});
    cairo_new_path(cairo);
    cairo_arc(cairo, rect.max.x - r, rect.min.y + r, r, -G_PI_2, 0);
    cairo_arc(cairo, rect.max.x - r, rect.max.y - r, r, 0, G_PI_2);
    cairo_arc(cairo, rect.min.x + r, rect.max.y - r, r, G_PI_2, G_PI);
    cairo_arc(cairo, rect.min.x + r, rect.min.y + r, r, G_PI, 3 * G_PI_2);
    cairo_close_path(cairo);
}

/// Translucent boxes one in another, fallen to the lower right: the light comes from the upper
/// left.
void paint(cairo_t* cairo, const draw::Shadow<Page>& shadow) {
    constexpr int kLayers = 5;
    const Rect<Page> fallen = shadow.of.moved({0.25 * shadow.depth, 0.35 * shadow.depth});
    set_paint(cairo, {draw::Ink::shade, {}, 0.045});
    for (int layer = 1; layer <= kLayers; ++layer) {
        const double reach = shadow.depth * (0.6 * layer / kLayers);
        trace_rounded(cairo, fallen.grown(reach), reach + 0.1 * shadow.depth);
        cairo_fill(cairo);
    }
}

}  // namespace

void paint(cairo_t* cairo, const draw::PageDrawing& page) {
    for (const draw::Shape<Page>& shape : page.shapes)
        std::visit([cairo](const auto& one) { paint(cairo, one); }, shape);
}

}  // namespace wallwright::pages

// A linocut made of few inks: flat shapes that are printed, and gouge marks that are cut out of
// them again.
#pragma once

#include <cairo.h>

#include <cmath>
#include <cstdint>
#include <memory>
#include <numbers>
#include <string>
#include <vector>

namespace lino {

struct Ink {
    double red = 0;
    double green = 0;
    double blue = 0;
};

inline constexpr Ink kPaper{0.969, 0.949, 0.902};
inline constexpr Ink kDeep{0.106, 0.259, 0.318};
inline constexpr Ink kSea{0.310, 0.518, 0.545};
inline constexpr Ink kMist{0.690, 0.773, 0.757};
inline constexpr Ink kRust{0.698, 0.325, 0.212};
inline constexpr Ink kOchre{0.851, 0.647, 0.314};
inline constexpr Ink kMoss{0.388, 0.451, 0.286};
inline constexpr Ink kNight{0.133, 0.157, 0.243};

/// Pixels, y down.
struct Spot {
    double x = 0;
    double y = 0;
};
using Line = std::vector<Spot>;

inline double sine(double turns) {
    return std::sin(2 * std::numbers::pi * turns);
}
inline double cosine(double turns) {
    return std::cos(2 * std::numbers::pi * turns);
}
/// Between -1 and 1, without a pattern that the eye finds, the same on every machine.
inline double uneven(int i) {
    std::uint32_t mixed = (static_cast<std::uint32_t>(i) + 1U) * 2654435761U;
    mixed = (mixed ^ (mixed >> 15U)) * 2246822519U;
    mixed = (mixed ^ (mixed >> 13U)) * 3266489917U;
    return static_cast<double>((mixed >> 8U) % 2001U) / 1000 - 1;
}

/// One sheet on the press.
class Sheet {
  public:
    Sheet(int width, int height)
        : width_(width),
          height_(height),
          surface_(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height),
                   cairo_surface_destroy),
          pen_(cairo_create(surface_.get()), cairo_destroy) {
        take(kPaper);
        cairo_paint(pen_.get());
        cairo_set_antialias(pen_.get(), CAIRO_ANTIALIAS_FAST);
        cairo_set_line_cap(pen_.get(), CAIRO_LINE_CAP_ROUND);
        cairo_set_line_join(pen_.get(), CAIRO_LINE_JOIN_ROUND);
    }

    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] double height() const { return height_; }

    void take(Ink ink) { cairo_set_source_rgb(pen_.get(), ink.red, ink.green, ink.blue); }

    /// The whole block, a hand's breadth of paper left around it; all that follows stays inside.
    void block(Ink ink) {
        take(ink);
        const double margin = 0.05 * std::min(width_, height_);
        cairo_rectangle(pen_.get(), margin, margin, width_ - 2 * margin, height_ - 2 * margin);
        cairo_clip_preserve(pen_.get());
        cairo_fill(pen_.get());
    }

    void shape(const Line& corners) {
        trace(corners);
        cairo_fill(pen_.get());
    }

    /// A shape whose corners are rounded off to one flowing edge.
    void smooth_shape(const Line& through) {
        trace_smooth(through, true);
        cairo_fill(pen_.get());
    }

    void line(const Line& through, double thick) {
        trace_smooth(through, false);
        cairo_set_line_width(pen_.get(), thick);
        cairo_stroke(pen_.get());
    }

    void disc(Spot centre, double radius) {
        cairo_arc(pen_.get(), centre.x, centre.y, radius, 0, 2 * std::numbers::pi);
        cairo_fill(pen_.get());
    }

    void ring(Spot centre, double radius, double thick) {
        cairo_arc(pen_.get(), centre.x, centre.y, radius, 0, 2 * std::numbers::pi);
        cairo_set_line_width(pen_.get(), thick);
        cairo_stroke(pen_.get());
    }

    /// What a gouge leaves between two spots: pointed at both ends.
    void gouge(Spot from, Spot to, double thick) {
        const double length = std::hypot(to.x - from.x, to.y - from.y);
        const Spot aside{-(to.y - from.y) / length * thick, (to.x - from.x) / length * thick};
        const Spot middle{(from.x + to.x) / 2, (from.y + to.y) / 2};
        cairo_move_to(pen_.get(), from.x, from.y);
        curve_over({middle.x + aside.x, middle.y + aside.y}, to);
        curve_over({middle.x - aside.x, middle.y - aside.y}, from);
        cairo_fill(pen_.get());
    }

    /// False when the file could not be written.
    [[nodiscard]] bool save(const std::string& path) const {
        return cairo_surface_write_to_png(surface_.get(), path.c_str()) == CAIRO_STATUS_SUCCESS;
    }

  private:
    void trace(const Line& corners) {
        for (const Spot& corner : corners)
            cairo_line_to(pen_.get(), corner.x, corner.y);
        cairo_close_path(pen_.get());
    }

    void curve_over(Spot control, Spot end) {
        cairo_curve_to(pen_.get(), control.x, control.y, control.x, control.y, end.x, end.y);
    }

    /// Catmull-Rom through all spots, as Bezier pieces.
    void trace_smooth(const Line& through, bool closed) {
        const auto count = static_cast<int>(through.size());
        const auto at = [&](int i) {
            const int kept = closed ? (i + count) % count : std::min(std::max(i, 0), count - 1);
            return through[static_cast<std::size_t>(kept)];
        };
        cairo_move_to(pen_.get(), at(0).x, at(0).y);
        for (int i = 0; i < (closed ? count : count - 1); ++i) {
            const Spot before = at(i - 1);
            const Spot from = at(i);
            const Spot to = at(i + 1);
            const Spot after = at(i + 2);
            cairo_curve_to(pen_.get(), from.x + (to.x - before.x) / 6,
                           from.y + (to.y - before.y) / 6, to.x - (after.x - from.x) / 6,
                           to.y - (after.y - from.y) / 6, to.x, to.y);
        }
    }

    double width_;
    double height_;
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface_;
    std::unique_ptr<cairo_t, decltype(&cairo_destroy)> pen_;
};

/// Staggered gouge marks over a stretch of water.
inline void ripples(Sheet& sheet, double top, double bottom, double spacing) {
    int mark = 0;
    for (double y = top; y < bottom; y += spacing)
        for (double x = -20; x < sheet.width(); x += 62) {
            const double left = x + 26 * uneven(mark);
            const double length = 26 + 12 * uneven(mark + 7);
            sheet.gouge({left, y + 2 * uneven(mark + 3)}, {left + length, y + 2 * uneven(mark + 5)},
                        2.2);
            ++mark;
        }
}

/// Rays of gouge marks around a sun or a moon.
inline void rays(Sheet& sheet, Spot centre, double from, double to, int count) {
    for (int i = 0; i < count; ++i) {
        const double turn = static_cast<double>(i) / count;
        const double reach = to * (1 + 0.12 * uneven(i));
        sheet.gouge({centre.x + from * cosine(turn), centre.y + from * sine(turn)},
                    {centre.x + reach * cosine(turn), centre.y + reach * sine(turn)}, 2.2);
    }
}

}  // namespace lino

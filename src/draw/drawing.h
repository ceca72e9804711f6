// A picture as a list of shapes in millimetres. Every painter paints the same list, so screen and
// paper cannot differ.
#pragma once

#include "geometry/rect.h"
#include "geometry/transform.h"
#include "wall/colour.h"
#include "wall/names.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace wallwright::draw {

/// What a line or a fill is for; the painter's theme says which colour that is. `mark` is for
/// pencil marks, `own` brings its colour along.
enum class Ink {
    paper,
    outline,
    dimension,
    accent,
    hidden,
    text,
    quiet_text,
    mark,
    stop,
    mind,
    good,
    floor,
    shade,
    own
};

/// Line types in use, by ISO 128-2: continuous (01.1, 01.2), dashed for hidden edges (02.1)
/// and, in an ink and a width of their own, for frames not bought yet; long-dash dotted for centre
/// lines (04.1), dotted (07) for what is still a wish.
enum class LineType { continuous, dashed, long_dash_dotted, dotted };

struct Paint {
    Ink ink = Ink::outline;
    wall::Colour colour{};  ///< Used with Ink::own.
    double alpha = 1;
    bool operator==(const Paint&) const = default;
};

/// Line widths in mm on paper by ISO 128-2's series: 0.18, 0.25, 0.35, 0.5, 0.7. They do not scale
/// with the drawing.
struct Stroke {
    Paint paint;
    double width = 0.25;
    LineType type = LineType::continuous;
    bool operator==(const Stroke&) const = default;
};

template <class Space>
using Point = geometry::Point<Space>;

/// A path of straight lines and cubic curves. Each step ends at `to`; a curve has its two control
/// points.
template <class Space>
struct Step {
    Point<Space> to;
    std::optional<std::pair<Point<Space>, Point<Space>>> controls;
    bool operator==(const Step&) const = default;
};

template <class Space>
struct Path {
    Point<Space> start;
    std::vector<Step<Space>> steps;
    bool closed = false;
    std::optional<Paint> fill;
    std::optional<Stroke> stroke;
    bool operator==(const Path&) const = default;
};

/// Lines at 45 degrees, `spacing` mm apart on paper, over all that is in any of the areas: cable
/// zones. Each area is a polygon by its corners, all of them the same way round.
template <class Space>
struct Hatch {
    std::vector<std::vector<Point<Space>>> areas;
    Paint paint;
    double spacing = 2;
    bool operator==(const Hatch&) const = default;
};

enum class Align { left, centre, right };

/// One line of text; `size` is the height of its capitals in mm on paper (ISO 3098: 1.8, 2.5, 3.5,
/// 5, 7) and does not scale. `at` is on the base line at the aligned end; a turned text reads
/// upward.
template <class Space>
struct Text {
    Point<Space> at;
    std::string text;
    double size = 2.5;
    Paint paint{Ink::text};
    Align align = Align::left;
    bool bold = false;
    bool upward = false;
    std::optional<Paint>
        plate{};  ///< Painted under it, so that lines there do not cross the letters.
    bool operator==(const Text&) const = default;
};

/// A picture file shown in a rectangle, covering it; painted as `instead` where the file cannot be
/// read.
template <class Space>
struct Image {
    geometry::Rect<Space> place;
    std::string file;
    Paint instead;
    bool operator==(const Image&) const = default;
};

/// A soft shadow under a rectangle; `depth` mm of wall that it reaches.
template <class Space>
struct Shadow {
    geometry::Rect<Space> of;
    double depth = 10;
    bool operator==(const Shadow&) const = default;
};

template <class Space>
using Shape = std::variant<Path<Space>, Hatch<Space>, Text<Space>, Image<Space>, Shadow<Space>>;

/// Painted in order, later shapes on top.
template <class Space>
struct Drawing {
    geometry::Rect<Space> extent;  ///< What a viewer should see whole.
    std::vector<Shape<Space>> shapes;
    bool operator==(const Drawing&) const = default;
};

using WallDrawing = Drawing<geometry::Wall>;
using PageDrawing = Drawing<geometry::Page>;

/// The drawing put on a page: points and depths of shadows mapped, widths and text sizes kept,
/// since they are paper sizes already.
PageDrawing placed_on_page(const WallDrawing& drawing,
                           const geometry::Transform<geometry::Wall, geometry::Page>& to_page);

/// One shape a line, coordinates to 0.01 mm, inks by name: what goldens compare.
std::string to_text(const WallDrawing& drawing);
std::string to_text(const PageDrawing& drawing);

}  // namespace wallwright::draw

template <>
struct wallwright::wall::Names<wallwright::draw::Ink> {
    static constexpr std::string_view values[] = {
        "paper", "outline", "dimension", "accent", "hidden", "text",  "quiet",
        "mark",  "stop",    "mind",      "good",   "floor",  "shade", "own"};
};

template <>
struct wallwright::wall::Names<wallwright::draw::LineType> {
    static constexpr std::string_view values[] = {"continuous", "dashed", "long-dash-dotted",
                                                  "dotted"};
};

template <>
struct wallwright::wall::Names<wallwright::draw::Align> {
    static constexpr std::string_view values[] = {"left", "centre", "right"};
};

#include "draw/mount_front.h"

#include "draw/dimensions.h"
#include "draw/mounted.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <algorithm>

namespace wallwright::draw {

namespace {

using geometry::Rect;
using geometry::Wall;
using spacing::Axis;
using wall::Colour;

constexpr Colour kDark{0x1B, 0x18, 0x15};
constexpr Colour kLight{0xFF, 0xFF, 0xFF};
constexpr double kChainOut = 9;     // mm on paper from the frame to its chains
constexpr double kNoteBelow = 5;    // mm on paper from the last chain to the note's base line
constexpr double kFigureAir = 0.9;  // mm on paper between a figure and what is next to it

/// The one of two inks that is read on the colour.
Paint readable_on(Colour colour) {
    return own(contrast(kDark, colour) >= contrast(kLight, colour) ? kDark : kLight);
}

/// Hidden edges are thin and step back, but are seen on any colour.
Stroke hidden_on(Colour colour) {
    Paint paint = readable_on(colour);
    paint.alpha = 0.75;
    return {paint, 0.25, LineType::dashed};
}

struct Spread {
    double from = 0;
    double to = 0;
};

/// Where the windows, or prints that float, begin and end along one direction: each for itself
/// where they lie one after the other, otherwise all together.
std::vector<Spread> spreads_of(const std::vector<Rect<Wall>>& windows, Axis axis) {
    std::vector<Spread> spreads;
    for (const Rect<Wall>& one : windows)
        spreads.push_back(axis == Axis::horizontal ? Spread{one.min.x, one.max.x}
                                                   : Spread{one.min.y, one.max.y});
    std::sort(spreads.begin(), spreads.end(),
              [](const Spread& a, const Spread& b) { return a.from < b.from; });
    double reach = spreads.front().to;
    bool in_line = true;
    for (std::size_t i = 1; i < spreads.size(); ++i) {
        in_line = in_line && spreads[i].from > reach;
        reach = std::max(reach, spreads[i].to);
    }
    return in_line ? spreads : std::vector<Spread>{{spreads.front().from, reach}};
}

class Front {
  public:
    Front(Easel& easel, const wall::Project& project, const wall::Piece& piece,
          const mounts::MountDesign& design)
        : easel_(easel),
          design_(design),
          frame_(wall::frame_of(project, piece)),
          place_(Rect<Wall>::at({0, 0}, mounts::as_hung(frame_, piece.turned).outside)),
          blank_(in_mount_front(project, piece, design,
                                Rect<mounts::Front>::at({0, 0}, design.blank))) {
        for (std::size_t i = 0; i < design.prints.size(); ++i)
            windows_.push_back(on_blank(blank_, design.floats
                                                    ? design.prints[i].place
                                                    : design.layers.front().windows[i].face));
    }

    [[nodiscard]] const Rect<Wall>& place() const { return place_; }

    void add_hidden() {
        const Stroke on_card = hidden_on(design_.layers.front().colour);
        if (!design_.floats)
            for (const mounts::LaidPrint& print : design_.prints)
                easel_.add(box(on_blank(blank_, print.place), {std::nullopt, on_card}));
        easel_.add(box(blank_, {std::nullopt, hidden_on(frame_.colour)}));
    }

    void add_measures() {
        for (const Rect<Wall>& window : windows_)
            easel_.room.take(window);
        const Rect<Wall> sight{{blank_.min.x + design_.lip.left, blank_.min.y + design_.lip.bottom},
                               {blank_.max.x - design_.lip.right, blank_.max.y - design_.lip.top}};
        add_seen(sight);
        add_outside();
    }

  private:
    [[nodiscard]] Rect<Wall> around_windows() const {
        Rect<Wall> all = windows_.front();
        for (const Rect<Wall>& one : windows_)
            all = hull(all, one);
        return all;
    }

    /// The four borders on the card itself, each from the window that is the nearest to the lip.
    void add_seen(const Rect<Wall>& sight) {
        const Rect<Wall> all = around_windows();
        const auto nearest = [&](auto outward) {
            return std::max_element(windows_.begin(), windows_.end(),
                                    [&](const Rect<Wall>& a, const Rect<Wall>& b) {
                                        return outward(a) < outward(b) - geometry::kLengthEps;
                                    })
                ->centre();
        };
        add_across({{sight.min.x, sight.min.y}, {all.min.x, sight.max.y}},
                   nearest([](const Rect<Wall>& one) { return -one.min.x; }).y, design_.seen.left);
        add_across({{all.max.x, sight.min.y}, {sight.max.x, sight.max.y}},
                   nearest([](const Rect<Wall>& one) { return one.max.x; }).y, design_.seen.right);
        add_down({{sight.min.x, all.max.y}, {sight.max.x, sight.max.y}},
                 nearest([](const Rect<Wall>& one) { return one.max.y; }).x, design_.seen.top);
        add_down({{sight.min.x, sight.min.y}, {sight.max.x, all.min.y}},
                 nearest([](const Rect<Wall>& one) { return -one.min.y; }).x, design_.seen.bottom);
    }

    [[nodiscard]] Text<Wall> figure(Point<Wall> at, double mm, Align align) const {
        Text<Wall> text{at, easel_.figure(mm)};
        text.size = kSmallFigureSize;
        text.paint = readable_on(design_.layers.front().colour);
        text.align = align;
        text.plate = own(design_.layers.front().colour);
        return text;
    }

    /// Over its line, or beside it reading upward; left out where the border is too thin for both.
    void add_across(const Rect<Wall>& band, double y, double mm) {
        const double x = band.centre().x;
        const double air = easel_.on_wall(kFigureAir);
        Text<Wall> upward =
            figure({x + easel_.on_wall(0.36 * kSmallFigureSize), y + air}, mm, Align::left);
        upward.upward = true;
        const Text<Wall> choices[] = {figure({x, y + air}, mm, Align::centre), upward};
        if (easel_.add_first_inside(choices, band.grown(-air / 2)))
            add_line(Axis::horizontal, y, band.min.x, band.max.x);
    }

    /// Beside its line, to the right; left out where the border is too thin.
    void add_down(const Rect<Wall>& band, double x, double mm) {
        const double air = easel_.on_wall(kFigureAir);
        const double base = band.centre().y - easel_.on_wall(kSmallFigureSize) / 2;
        const Text<Wall> choice = figure({x + air, base}, mm, Align::left);
        if (easel_.add_first_inside({&choice, 1}, band.grown(-air / 3)))
            add_line(Axis::vertical, x, band.min.y, band.max.y);
    }

    void add_line(Axis axis, double line, double from, double to) {
        add_dimension_line(easel_, axis, line, from, to,
                           readable_on(design_.layers.front().colour));
    }

    /// What is cut, below and to the left; the frame itself, above and to the right.
    void add_outside() {
        const double out = easel_.on_wall(kChainOut);
        std::vector<Chain> chains;
        for (const Axis axis : {Axis::horizontal, Axis::vertical}) {
            const bool across = axis == Axis::horizontal;
            const auto along = [across](Point<Wall> point) { return across ? point.x : point.y; };
            const auto aside = [across](Point<Wall> point) { return across ? point.y : point.x; };
            const double edge = aside(place_.min);
            Chain cut{
                axis, edge - out, {{along(blank_.min), edge}, {along(blank_.max), edge}}, true};
            for (const Spread& spread : spreads_of(windows_, axis))
                cut.stops.insert(cut.stops.end(), {{spread.from, edge}, {spread.to, edge}});
            chains.push_back(std::move(cut));
            const double far = aside(place_.max);
            chains.push_back(
                {axis, far + out, {{along(place_.min), far}, {along(place_.max), far}}});
        }
        add_chains(easel_, std::move(chains));
        Text<Wall> note{{place_.min.x, place_.min.y - out - easel_.on_wall(kNoteBelow)},
                        "on the card: as seen; below and left: as cut"};
        note.size = kSmallFigureSize;
        note.paint.ink = Ink::quiet_text;
        easel_.add_label(note);
    }

    Easel& easel_;
    const mounts::MountDesign& design_;
    const wall::Frame& frame_;
    Rect<Wall> place_;
    Rect<Wall> blank_;
    std::vector<Rect<Wall>> windows_;
};

}  // namespace

WallDrawing mount_front(const wall::Project& project, const wall::Piece& piece,
                        const mounts::MountDesign& design, const BenchOptions& options) {
    Easel easel{options.scale, project.unit};
    Front front(easel, project, piece, design);
    add_framed_mount(easel.shapes, project, piece, front.place(), design, options.pictures);
    front.add_hidden();
    if (options.measures)
        front.add_measures();
    const Rect<Wall> extent = extent_of(easel.shapes, options.scale);
    return {extent, std::move(easel.shapes)};
}

Rect<Wall> in_mount_front(const wall::Project& project, const wall::Piece& piece,
                          const mounts::MountDesign& design, const Rect<mounts::Front>& place) {
    const geometry::Size outside =
        mounts::as_hung(wall::frame_of(project, piece), piece.turned).outside;
    const Point<Wall> upper_left{(outside.width - design.blank.width) / 2,
                                 (outside.height + design.blank.height) / 2};
    return on_blank({upper_left, upper_left}, place);
}

}  // namespace wallwright::draw

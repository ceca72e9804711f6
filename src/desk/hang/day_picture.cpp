#include "desk/hang/day_picture.h"

#include "desk/hang/deed_words.h"
#include "draw/easel.h"
#include "draw/elevation.h"
#include "draw/letters.h"
#include "draw/paths.h"
#include "hanging/mark_tape.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using hanging::Mark;
using wall::Project;

constexpr double kFigure = 3.5;  // mm on paper, as is all of this
constexpr double kLetter = 3.5;
constexpr double kCross = 2.6;
constexpr double kRing = 4.2;
constexpr double kArrow = 2.2;
constexpr double kBold = 0.7;

/// Only what hangs is drawn as it looks.
Project as_it_hangs(Project project, const std::vector<UpToday>& today) {
    for (wall::Piece& piece : project.pieces) {
        const auto found = std::ranges::find(today, piece.id, &UpToday::piece);
        const bool hangs =
            found != today.end() ? found->hangs : piece.state == wall::PieceState::hung;
        piece.state = hangs ? wall::PieceState::hung : wall::PieceState::waiting;
    }
    return project;
}

class DayBoard {
  public:
    DayBoard(const Companion& day, double scale)
        : day_(day), project_(*day.before()), tape_(project_) {
        easel_.scale = scale;
        easel_.unit = project_.unit;
    }

    draw::WallDrawing drawn(const std::string& pictures) {
        add_wall(pictures);
        add_pieces();
        add_line();
        add_marks();
        const Deed* deed = day_.now();
        if (deed != nullptr && deed->kind == DeedKind::fix)
            add_fixings(deed->piece);
        if (deed != nullptr && deed->kind == DeedKind::mark)
            add_measured(marks()[deed->mark]);
        return {extent_, std::move(easel_.shapes)};
    }

  private:
    [[nodiscard]] const std::vector<Mark>& marks() const { return day_.assessment().marks.marks; }
    [[nodiscard]] double mm(double paper) const { return easel_.on_wall(paper); }

    void add_wall(const std::string& pictures) {
        draw::ElevationOptions options;
        options.scale = easel_.scale;
        options.dimensions = options.fixings = options.marks = options.zones = false;
        options.studs = options.loads = options.waiting = options.letters = false;
        options.picture_folder = pictures;
        const Project shown = as_it_hangs(project_, day_.today());
        draw::WallDrawing wall = draw::elevation(shown, {}, options);
        // The same for every deed, so that the wall stands still.
        constexpr double kMargin = 4;
        extent_ = wall.extent.grown(mm(kMargin));
        std::ranges::move(wall.shapes, std::back_inserter(easel_.shapes));
        // What hangs and stands there steps back behind what is to be done.
        constexpr double kVeil = 0.45;
        easel_.add(draw::polygon(project_.room.outline.corners,
                                 {Paint{Ink::paper, {}, kVeil}, std::nullopt}));
    }

    void add_pieces() {
        const Deed* deed = day_.now();
        for (const UpToday& one : day_.today()) {
            const auto place = wall::place_of(project_, *wall::find(project_, one.piece));
            if (!place)
                continue;
            const bool chosen = deed != nullptr && deed->piece == one.piece;
            draw::Look look{std::nullopt, Stroke{{Ink::outline}, 0.35, LineType::dashed}};
            if (one.hangs)
                look.stroke = Stroke{{Ink::good}, 0.5};
            if (chosen)
                look = {Paint{Ink::accent, {}, 0.16}, Stroke{{Ink::accent}, kBold}};
            easel_.add(draw::box(*place, look));
            add_letter(one, *place, chosen);
        }
    }

    /// In a corner, where no measuring line crosses it.
    void add_letter(const UpToday& one, const Rect<Wall>& place, bool chosen) {
        constexpr double kIn = 1.6;
        const double in = std::min({mm(kIn), place.width() / 4, place.height() / 4});
        draw::Text<Wall> text{{place.right() - in, place.bottom() + in},
                              draw::letter_of(project_, one.piece)};
        text.size = kLetter;
        text.bold = true;
        text.align = draw::Align::right;
        text.paint.ink = chosen ? Ink::accent : one.hangs ? Ink::good : Ink::quiet_text;
        text.plate = Paint{Ink::paper, {}, 0.8};
        easel_.add(text);
    }

    /// The level line, once it is drawn or while it is.
    void add_line() {
        for (const Deed& deed : day_.deeds()) {
            if (deed.kind != DeedKind::line)
                continue;
            const Rect<Wall> bounds = geometry::bounds(project_.room.outline);
            const double y = deed.places.front().y;
            const bool chosen = &deed == day_.now();
            easel_.add(
                draw::line<Wall>({bounds.left(), y}, {bounds.right(), y},
                                 {{Ink::accent},
                                  chosen ? kBold : 0.35,
                                  chosen ? LineType::continuous : LineType::long_dash_dotted}));
            if (chosen && project_.datum.height == wall::DatumHeight::level_line)
                add_ends(words_of(day_, deed), bounds, y);
        }
    }

    /// How high the line is, at one end or at both.
    void add_ends(const DeedWords& words, const Rect<Wall>& bounds, double y) {
        constexpr double kIn = 8;
        const double xs[] = {bounds.left() + mm(kIn), bounds.right() - mm(kIn)};
        for (std::size_t i = 0; i < std::min(words.figures.size(), std::size(xs)); ++i) {
            const auto here = geometry::vertical_span(project_.room.outline, xs[i]);
            const Point<Wall> foot{xs[i], here ? here->low : bounds.bottom()};
            add_arrow(foot, {xs[i], y});
            const bool at_right = i == 1;
            add_figure({xs[i] + (at_right ? -1 : 1) * mm(2), (foot.y + y) / 2},
                       words.figures[i].number, at_right ? draw::Align::right : draw::Align::left);
        }
    }

    /// The marks that are made by now, and those that this one is checked against.
    void add_marks() {
        for (std::size_t i = 0; i < day_.deeds().size(); ++i) {
            const Deed& deed = day_.deeds()[i];
            if (deed.kind != DeedKind::mark || !day_.is_done(i) || &deed == day_.now() ||
                day_.now() == nullptr)
                continue;
            const Mark& mark = marks()[deed.mark];
            add_cross(mark.at, kCross / 2, 0.35);
        }
    }

    /// What is put up now, seen through the frame.
    void add_fixings(const wall::PieceId& piece) {
        const auto& hangings = day_.assessment().hangings;
        const auto hanging = std::ranges::find(hangings, piece, &hanging::Hanging::piece);
        if (hanging == hangings.end())
            return;
        for (const hanging::Fixing& fixing : hanging->fixings)
            easel_.add(draw::box(hanging::covered_by(fixing),
                                 {Paint{Ink::accent, {}, 0.6}, Stroke{{Ink::accent}, 0.35}}));
    }

    void add_cross(Point<Wall> at, double half, double width) {
        const double r = mm(half);
        const Stroke stroke{{Ink::mark}, width};
        easel_.add(draw::line<Wall>({at.x - r, at.y}, {at.x + r, at.y}, stroke));
        easel_.add(draw::line<Wall>({at.x, at.y - r}, {at.x, at.y + r}, stroke));
    }

    /// Ends in a head at `to`, and in a stroke across where the tape begins.
    void add_arrow(Point<Wall> from, Point<Wall> to) {
        const double length = geometry::distance(from, to);
        if (length < mm(kArrow))
            return;
        const geometry::Vec<Wall> along = (1 / length) * (to - from);
        const geometry::Vec<Wall> aside{-along.y, along.x};
        const Stroke stroke{{Ink::accent}, 0.5};
        easel_.add(draw::line<Wall>(from, to, stroke));
        easel_.add(draw::line<Wall>(from + mm(kArrow) * aside, from + -mm(kArrow) * aside,
                                    {{Ink::accent}, kBold}));
        const Point<Wall> neck = to + -mm(kArrow) * along;
        easel_.add(
            draw::polygon<Wall>({to, neck + mm(kArrow / 3) * aside, neck + -mm(kArrow / 3) * aside},
                                {Paint{Ink::accent}, std::nullopt}));
    }

    void add_figure(Point<Wall> at, const std::string& words, draw::Align align) {
        draw::Text<Wall> text{at, words};
        text.size = kFigure;
        text.bold = true;
        text.align = align;
        text.paint.ink = Ink::accent;
        text.plate = Paint{Ink::paper};
        easel_.add(text);
    }

    /// Both lines end short of the ring, so that the place itself is bare.
    void add_measured(const Mark& mark) {
        const DeedWords words = words_of(day_, *day_.now());
        const double gap = mm(kRing);
        const double sign_x = tape_.across_sign();
        const double across = tape_.across(mark.at);
        const Point<Wall> side{mark.at.x - sign_x * across, mark.at.y};
        const double out = side.x < mark.at.x ? -1 : 1;
        add_arrow(side, {mark.at.x + out * std::min(gap, std::abs(side.x - mark.at.x)), mark.at.y});
        add_figure({(side.x + mark.at.x) / 2, mark.at.y + mm(1.5)}, words.figures[0].number,
                   draw::Align::centre);
        if (mark.kind != hanging::MarkKind::rail)
            add_upright(mark, words.figures[1].number);
        easel_.add(draw::circle(mark.at, mm(kRing), {std::nullopt, Stroke{{Ink::mark}, kBold}}));
        add_cross(mark.at, kCross, kBold);
    }

    void add_upright(const Mark& mark, const std::string& number) {
        const Point<Wall> foot{mark.at.x, mark.at.y - tape_.up_sign() * tape_.up(mark.at)};
        const double out = foot.y < mark.at.y ? -1 : 1;
        add_arrow(foot,
                  {mark.at.x, mark.at.y + out * std::min(mm(kRing), std::abs(foot.y - mark.at.y))});
        // On the side away from the other line.
        const Rect<Wall> bounds = geometry::bounds(project_.room.outline);
        const bool has_room = bounds.right() - mark.at.x > mm(20);
        const bool at_right =
            tape_.across_sign() > 0 ? has_room : mark.at.x - bounds.left() < mm(20);
        add_figure(
            {mark.at.x + (at_right ? 1 : -1) * mm(2), (foot.y + mark.at.y) / 2 - mm(kFigure) / 2},
            number, at_right ? draw::Align::left : draw::Align::right);
    }

    const Companion& day_;
    const Project& project_;
    hanging::MarkTape tape_;
    draw::Easel easel_;
    Rect<Wall> extent_;
};

}  // namespace

draw::WallDrawing day_picture(const Companion& day, const std::string& pictures, double scale) {
    if (!day.before())
        return {};
    return DayBoard(day, scale).drawn(pictures);
}

}  // namespace wallwright::desk

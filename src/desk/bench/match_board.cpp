#include "desk/bench/match_board.h"

#include "desk/bench/hand_words.h"
#include "desk/bench/lock_sign.h"
#include "draw/labels.h"
#include "draw/mounted.h"
#include "draw/paths.h"
#include "draw/tint.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::LineType;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::PieceId;
using wall::PrintId;
using namespace board;

// All in mm on paper.
constexpr double kCorner = 1.5;  // radius of a drawer's corners
constexpr double kSheetShadow = 0.7;
constexpr double kHoverAir = 0.5;
constexpr double kDropAir = 0.9;
constexpr double kEndDot = 0.55;       // radius at both ends of a line
constexpr double kSample = 20;         // length of a line in the legend, four dashes of one
constexpr double kPale = 0.3;          // of lines that do not belong to what is pointed at
constexpr double kRoomForWords = 0.8;  // of the fitted scale, from which words have room

/// Whether a line belongs to what is pointed at or selected.
bool belongs(const Link& link, const BoardThing& thing) {
    if (const auto* print = std::get_if<PrintId>(&thing))
        return link.print == *print;
    if (const auto* piece = std::get_if<PieceId>(&thing))
        return link.piece == *piece;
    const LinkAt& at = std::get<LinkAt>(thing);
    return link.print == at.print && link.piece == at.piece;
}

Stroke stroke_of(LinkKind kind, bool strong, double alpha) {
    switch (kind) {
        case LinkKind::today:
            return {{Ink::hidden, {}, alpha}, strong ? 0.5 : 0.25};
        case LinkKind::best:
            return {{Ink::accent, {}, alpha}, strong ? 0.7 : 0.5};
        case LinkKind::wanted:
            break;
    }
    return {{Ink::accent, {}, alpha}, strong ? 0.7 : 0.35, LineType::dashed};
}

draw::Text<Wall> text_at(Point<Wall> at, std::string words, Ink ink, double size) {
    draw::Text<Wall> text{at, std::move(words)};
    text.size = size;
    text.paint.ink = ink;
    return text;
}

void add_sheet(BoardShapes& shapes, const wall::Print& print, const Rect<Wall>& place,
               const draw::Pictures& pictures, double unit) {
    shapes.emplace_back(draw::Shadow<Wall>{place, kSheetShadow * unit});
    draw::add_picture(shapes, place, print, pictures);
    const Stroke edge{draw::own(draw::darker(print.colour, 0.4)), 0.13};
    shapes.emplace_back(draw::box(place, {std::nullopt, edge}));
}

class Picture {
  public:
    Picture(const Session& session, const MatchScene& scene, const MatchHand& hand,
            const draw::Pictures& pictures, double scale)
        : project_(session.project()),
          session_(session),
          scene_(scene),
          hand_(hand),
          pictures_(pictures),
          unit_(1 / scale),
          has_words_(scale >= kRoomForWords * scene.layout.scale) {}

    BoardShapes draw() {
        add_drawer(scene_.layout.prints);
        add_drawer(scene_.layout.frames);
        add_links();
        for (const BoardItem& item : scene_.layout.prints.items)
            add_print(item);
        for (const BoardItem& item : scene_.layout.frames.items)
            add_frame(item);
        add_locks();
        add_pointed_out();
        if (has_words_)
            add_legend();
        return std::move(shapes_);
    }

  private:
    template <class OneShape>
    void add(OneShape shape) {
        shapes_.emplace_back(std::move(shape));
    }

    void add_drawer(const Drawer& drawer) {
        add(draw::rounded_box(drawer.area, kCorner * unit_,
                              {Paint{Ink::floor}, Stroke{{Ink::dimension, {}, 0.35}, 0.18}}));
        if (!has_words_)
            return;
        const double left = drawer.area.min.x + kPad * unit_;
        draw::Text<Wall> heading = text_at({left, drawer.area.max.y - 0.72 * kHeading * unit_},
                                           drawer.heading, Ink::text, kHeadingSize);
        heading.bold = true;
        add(std::move(heading));
        if (drawer.left_over_at) {
            const double y = *drawer.left_over_at;
            const double right = drawer.area.max.x - kPad * unit_;
            add(draw::line<Wall>({left, y + 0.75 * kHeading * unit_},
                                 {right, y + 0.75 * kHeading * unit_},
                                 {{Ink::dimension, {}, 0.5}, 0.18}));
            add(text_at({left, y + 0.15 * kHeading * unit_}, "Left over", Ink::quiet_text,
                        kHeadingSize));
        }
    }

    /// What is pointed at, or else what is selected.
    [[nodiscard]] std::optional<BoardThing> focus() const {
        if (hand_.carried())
            return BoardThing{hand_.carried()->print};
        if (hand_.hovered())
            return hand_.hovered();
        if (hand_.chosen)
            return BoardThing{*hand_.chosen};
        if (const auto piece = session_.selection.one_piece())
            return BoardThing{*piece};
        return std::nullopt;
    }

    void add_link(const Link& link, bool strong, double alpha) {
        draw::Path<Wall> path = link.path;
        path.stroke = stroke_of(link.kind, strong, alpha);
        const Paint dot = path.stroke->paint;
        add(std::move(path));
        for (const Point<Wall> end : {link.points.front(), link.points.back()})
            add(draw::circle(end, kEndDot * unit_, {dot, std::nullopt}));
    }

    void add_links() {
        const auto thing = focus();
        const bool any = thing && std::ranges::any_of(scene_.links, [&](const Link& link) {
                             return belongs(link, *thing);
                         });
        for (const Link& link : scene_.links)
            if (!any || !belongs(link, *thing))
                add_link(link, false, any ? kPale : 1);
        for (const Link& link : scene_.links)
            if (any && belongs(link, *thing))
                add_link(link, true, 1);
    }

    void add_locks() {
        const auto* at = hand_.hovered() ? std::get_if<LinkAt>(&*hand_.hovered()) : nullptr;
        for (const Link& link : scene_.links) {
            const bool offered = at != nullptr && link.kind != LinkKind::wanted &&
                                 at->print == link.print && at->piece == link.piece;
            if (!link.kept && !offered)
                continue;
            for (auto& shape : lock_sign(link.lock_at, unit_, link.kept))
                shapes_.push_back(std::move(shape));
        }
    }

    void add_words(const BoardItem& item) {
        if (!has_words_)
            return;
        Point<Wall> at{item.place.centre().x, item.place.min.y - kUnder * unit_};
        const auto line = [&](const std::string& words, Ink ink) {
            at.y -= kLine * unit_;
            draw::Text<Wall> text =
                text_at({at.x, at.y + (kLine - kWordSize) * unit_}, words, ink, kWordSize);
            text.align = draw::Align::centre;
            add(std::move(text));
        };
        for (const std::string& words : item.title)
            line(words, Ink::text);
        line(item.size, Ink::quiet_text);
        for (const std::string& words : item.remark)
            line(words, Ink::mind);
    }

    void add_print(const BoardItem& item) {
        const wall::Print* print = find(project_, *item.print);
        if (print == nullptr)
            return;
        add_sheet(shapes_, *print, item.place, pictures_, unit_);
        add_words(item);
    }

    void add_frame(const BoardItem& item) {
        const wall::Piece* piece = find(project_, *item.piece);
        if (piece == nullptr)
            return;
        draw::add_framed(shapes_, project_, *piece, item.place, pictures_);
        add_words(item);
    }

    void add_around(const Rect<Wall>& place, double air, const Stroke& stroke) {
        add(draw::box(place.grown(air * unit_), {std::nullopt, stroke}));
    }

    void add_selected() {
        const Stroke stroke{{Ink::accent}, 0.7};
        if (hand_.chosen)
            if (const BoardItem* item = scene_.layout.find(*hand_.chosen))
                add_around(item->place, kDropAir, stroke);
        for (const BoardItem& item : scene_.layout.frames.items)
            if (session_.selection.has(*item.piece))
                add_around(item.place, kDropAir, stroke);
    }

    void add_hovered() {
        if (!hand_.hovered() || hand_.carried())
            return;
        const Stroke stroke{{Ink::accent}, 0.25};
        const auto* print = std::get_if<PrintId>(&*hand_.hovered());
        const auto* piece = std::get_if<PieceId>(&*hand_.hovered());
        const BoardItem* item = print != nullptr   ? scene_.layout.find(*print)
                                : piece != nullptr ? scene_.layout.find(*piece)
                                                   : nullptr;
        if (item != nullptr)
            add_around(item->place, kHoverAir, stroke);
    }

    void add_pointed_out() {
        add_selected();
        add_hovered();
        const auto& carried = hand_.carried();
        const BoardItem* over =
            carried && carried->over ? scene_.layout.find(*carried->over) : nullptr;
        if (over == nullptr)
            return;
        const Ink ink = carried->will_do ? Ink::accent : Ink::mind;
        const LineType type = carried->will_do ? LineType::continuous : LineType::dashed;
        add(draw::box(over->place.grown(kDropAir * unit_),
                      {Paint{ink, {}, 0.16}, Stroke{{ink}, 0.7, type}}));
    }

    void add_sample(double& x, double y, LinkKind kind, const char* words) {
        const double middle = y + kWordSize / 2 * unit_;
        add(draw::line<Wall>({x, middle}, {x + kSample * unit_, middle},
                             stroke_of(kind, false, 1)));
        x += (kSample + 1.5) * unit_;
        add(text_at({x, y}, words, Ink::quiet_text, kWordSize));
        x += (draw::estimated_width(words, kWordSize) + 4) * unit_;
    }

    /// What the lines mean, of those there are.
    void add_legend() {
        const Rect<Wall>& all = scene_.layout.extent;
        double x = all.min.x + kPad * unit_;
        const double y = all.min.y + 1.4 * unit_;
        const auto has = [&](LinkKind kind) {
            return std::ranges::any_of(scene_.links,
                                       [kind](const Link& link) { return link.kind == kind; });
        };
        if (has(LinkKind::best))
            add_sample(x, y, LinkKind::best, "so today, and best");
        if (has(LinkKind::today))
            add_sample(x, y, LinkKind::today, "so today");
        if (has(LinkKind::wanted))
            add_sample(x, y, LinkKind::wanted, "better so");
    }

    const wall::Project& project_;
    const Session& session_;
    const MatchScene& scene_;
    const MatchHand& hand_;
    const draw::Pictures& pictures_;
    double unit_;  ///< mm of the board for a mm on paper.
    bool has_words_;
    BoardShapes shapes_;
};

}  // namespace

BoardShapes match_board(const Session& session, const MatchScene& scene, const MatchHand& hand,
                        const draw::Pictures& pictures, double scale) {
    return Picture(session, scene, hand, pictures, scale).draw();
}

BoardShapes carried_print(const Session& session, const CarriedPrint& carried,
                          const draw::Pictures& pictures, const Rect<Wall>& sight, double scale) {
    BoardShapes shapes;
    const wall::Print* print = find(session.project(), carried.print);
    if (print == nullptr)
        return shapes;
    add_sheet(shapes, *print, carried.place, pictures, 1 / scale);
    shapes.emplace_back(draw::box(carried.place, {std::nullopt, Stroke{{Ink::accent}, 0.5}}));
    for (auto& shape : hand_words(carried.words, carried.place, sight,
                                  carried.will_do ? Ink::accent : Ink::mind, 1 / scale))
        shapes.push_back(std::move(shape));
    return shapes;
}

}  // namespace wallwright::desk

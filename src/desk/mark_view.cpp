#include "desk/mark_view.h"

#include "desk/overlay_lines.h"
#include "draw/paths.h"

#include <algorithm>

namespace wallwright::desk {

namespace {

using draw::Ink;
using draw::Paint;
using draw::Stroke;
using geometry::Point;
using geometry::Wall;
using hanging::Mark;

constexpr double kRing = 2.2;         // mm on paper: beyond the arms of the cross
constexpr double kErrorAlpha = 0.25;  // faint, so that the cross shows through

const Mark* numbered(const std::vector<Mark>& marks, int number) {
    const auto found = std::ranges::find(marks, number, &Mark::number);
    return found == marks.end() ? nullptr : &*found;
}

void add_checks(Overlay& overlay, const Session& session, const Mark& mark) {
    const hanging::MarksTable& table = session.assessment().marks;
    for (const hanging::CheckMeasure& check : table.checks) {
        if (check.from != mark.number && check.to != mark.number)
            continue;
        const int other = check.from == mark.number ? check.to : check.from;
        if (const Mark* to = numbered(table.marks, other))
            add_measure(overlay, {{mark.at, to->at},
                                  units::format_number(check.length, session.project().unit)});
    }
}

}  // namespace

const Mark* mark_at(const hanging::MarksTable& marks, Point<Wall> at, double reach) {
    const auto off = [at](const Mark& mark) { return geometry::distance(mark.at, at); };
    const auto nearest = std::ranges::min_element(marks.marks, {}, off);
    if (nearest == marks.marks.end() || off(*nearest) > reach)
        return nullptr;
    return &*nearest;
}

std::vector<draw::Shape<Wall>> mark_overlay(const Session& session, const Mark& mark,
                                            double scale) {
    Overlay overlay(session.project().room.colour, scale);
    overlay.add(draw::circle(mark.at, std::max(mark.across_error, mark.up_error),
                             {Paint{Ink::accent, {}, kErrorAlpha}, std::nullopt}));
    overlay.add(
        draw::circle(mark.at, overlay.on_wall(kRing), {std::nullopt, Stroke{{Ink::accent}, 0.35}}));
    overlay.keep_clear(geometry::Rect<Wall>{mark.at, mark.at}.grown(overlay.on_wall(kRing)));
    add_checks(overlay, session, mark);
    return overlay.take();
}

}  // namespace wallwright::desk

#include "hanging/datum_label.h"
#include "hanging/marks.h"
#include "hanging/tape.h"
#include "marked.h"

#include <catch2/catch.hpp>
#include <rapidcheck/catch.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Wall;
using wall::DatumHeight;
using wall::DatumSide;
using wall::HangerType;
using wall::Project;

}  // namespace

namespace {

/// A length in tenths of a millimetre.
double tenths(int low, int high) {
    return *rc::gen::inRange(10 * low, 10 * high) / 10.0;
}

struct RandomWall {
    double width = 5000;
    double left = tenths(1800, 3000);
    double right = tenths(1800, 3000);
    Project project = scenes::attic_of(width, left, right);

    RandomWall() {
        scenes::add_hung(project, "hung", {tenths(0, 4600), tenths(0, 1300)}, {300.3, 200});
        const int count = *rc::gen::inRange(1, 7);
        for (int i = 0; i < count; ++i)
            add(project, "p" + std::to_string(i), {tenths(0, 4600), tenths(0, 1300)},
                *rc::gen::element(HangerType::strips, HangerType::sawtooth, HangerType::two_rings,
                                  HangerType::cord_one_hook, HangerType::cord_two_hooks));
        project.datum = {*rc::gen::element(DatumHeight::floor, DatumHeight::ceiling,
                                           DatumHeight::level_line, DatumHeight::piece),
                         *rc::gen::element(DatumSide::left, DatumSide::right), tenths(500, 2000)};
        project.datum.piece = wall::PieceId{"hung"};
        if (*rc::gen::arbitrary<bool>())
            project.datum.floor = wall::EndHeights{tenths(900, 920), tenths(900, 920)};
        if (*rc::gen::arbitrary<bool>())
            project.datum.ceiling = wall::EndHeights{tenths(900, 920), tenths(900, 920)};
    }

    /// Where a person comes to by a mark's figures with tape and pencil, from the datum alone.
    [[nodiscard]] Point<Wall> followed(double across, double up) const {
        const wall::Datum& datum = project.datum;
        const bool from_left = datum.side == DatumSide::left;
        const Point<Wall> hung = *project.pieces.front().at;
        double x = from_left ? across : width - across;
        if (datum.height == DatumHeight::piece)
            x = from_left ? hung.x - across : hung.x + 300.3 + across;
        const double share = x / width;
        switch (datum.height) {
            case DatumHeight::piece:
                return {x, hung.y + 200 + up};
            case DatumHeight::level_line:
                return {x, datum.level_line + up};
            case DatumHeight::ceiling: {
                const double more = datum.ceiling ? datum.ceiling->right - datum.ceiling->left : 0;
                return {x, left + (right - left + more) * share - up};
            }
            case DatumHeight::floor:
                break;
        }
        const double lower = datum.floor ? datum.floor->right - datum.floor->left : 0;
        return {x, up - lower * share};
    }
};

/// By the frame of 400 x 500 mm alone: corners for strips; unmeasured rings 125 mm down and 320 mm
/// apart, a cord that rests 50 mm down, a sawtooth 15 mm down.
bool is_where_the_hanger_is(const wall::Piece& piece, Point<Wall> at) {
    const auto near = [](double a, double b) { return std::abs(a - b) < 1e-6; };
    const double off = std::abs(at.x - (piece.at->x + 200));
    const double down = piece.at->y + 500 - at.y;
    switch (piece.hanger.type) {
        case HangerType::strips:
            return near(off, 200) && near(down, 0);
        case HangerType::two_rings:
            return near(off, 160) && near(down, 125);
        case HangerType::sawtooth:
            return near(off, 0) && near(down, 15);
        case HangerType::cord_two_hooks:
            return near(off, 320.0 / 6) && near(down, 50);
        default:
            return near(off, 0) && near(down, 50);
    }
}

}  // namespace

TEST_CASE("Measuring each mark back from its datum finds the bearing point, to two millimetres") {
    rc::prop("for any wall under a slope, on any floor", [] {
        const RandomWall random;
        const MarksTable table = table_of(random.project);
        RC_ASSERT(!table.marks.empty());
        for (const Mark& mark : table.marks) {
            RC_ASSERT(is_where_the_hanger_is(*find(random.project, mark.piece), mark.at));
            RC_ASSERT(mark.across == std::round(mark.across));
            RC_ASSERT(mark.up == std::round(mark.up));
            const Point<Wall> place = random.followed(mark.across, mark.up);
            // A ceiling that slopes by 1200 mm in 5000 turns two millimetres aside into half more.
            RC_ASSERT(std::abs(place.x - mark.at.x) <= 2 + 1e-6);
            RC_ASSERT(std::abs(place.y - mark.at.y) <= 2.5 + 1e-6);
        }
    });
}

TEST_CASE("What is forecast for a gap is what the rounded marks leave between the frames") {
    rc::prop("for any wall", [] {
        const RandomWall random;
        const MarksTable table = table_of(random.project);
        const auto moved = [&](const wall::PieceId& id) {
            geometry::Vec<Wall> sum{};
            int count = 0;
            for (const Mark& mark : table.marks)
                if (mark.piece == id) {
                    // Level marks at the exact x, so that a slope does not come in.
                    const Point<Wall> exact = mark.at;
                    const double across = mark.across;
                    const double x = random.followed(across, mark.up).x;
                    sum.x += x - exact.x;
                    sum.y += random.followed(across, mark.up).y - exact.y;
                    ++count;
                }
            return count > 0 ? (1.0 / count) * sum : sum;
        };
        for (const GapForecast& gap : table.gaps) {
            const auto place = [&](const wall::PieceId& id) {
                return place_of(random.project, *find(random.project, id))->moved(moved(id));
            };
            const auto first = place(gap.first);
            const auto second = place(gap.second);
            const double left =
                gap.across ? second.left() - first.right() : second.bottom() - first.top();
            RC_ASSERT(std::abs(left - gap.gap) < (gap.across ? 1e-6 : 1.1));
            RC_ASSERT(gap.spread > 0);
        }
    });
}

TEST_CASE("Check measures are what the ruler shows between marks as they are made") {
    rc::prop("for any wall", [] {
        const RandomWall random;
        const MarksTable table = table_of(random.project);
        for (const CheckMeasure& check : table.checks) {
            RC_ASSERT(check.from < check.to);
            const Mark& from = table.marks.at(static_cast<std::size_t>(check.from - 1));
            const Mark& to = table.marks.at(static_cast<std::size_t>(check.to - 1));
            RC_ASSERT(check.length == std::round(check.length));
            RC_ASSERT(std::abs(distance(random.followed(from.across, from.up),
                                        random.followed(to.across, to.up)) -
                               check.length) < 2);
        }
    });
}

}  // namespace wallwright::hanging

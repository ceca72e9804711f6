#include "base/contract.h"
#include "desk/command_functions.h"
#include "desk/drag.h"
#include "desk/naming.h"
#include "edits/room.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace wallwright::desk {

namespace {

using Vec = geometry::Vec<geometry::Wall>;

std::string hinders_some_on_wall(const Session& session) {
    if (session.selection.pieces().empty())
        return "Select a piece first";
    return selected_on_wall(session).empty() ? "Put it on the wall first" : "";
}

Result<wall::Project> shifted(const Session& session, Vec by) {
    const auto move = [by](auto& thing) { thing.place = thing.place.moved(by); };
    if (const auto furniture = session.selection.furniture())
        return edits::change_furniture(session.kept(), *furniture, move);
    if (const auto fixture = session.selection.fixture())
        return edits::change_fixture(session.kept(), *fixture, move);
    return edits::shift(session.kept(), selected_on_wall(session), by);
}

/// The place is kept to 0.01 mm, 1/16 in is 1.5875 mm: from what is nearly a whole number of steps
/// it goes to the next whole number, so that what is rounded does not add up.
double nudge_along(double place, int steps, double step) {
    constexpr double kNear = 0.02;  // mm
    constexpr double kPerMm = 100;
    const double whole = std::round(place / step);
    if (steps == 0 || std::abs(place - whole * step) > kNear)
        return steps * step;
    return std::round((whole + steps) * step * kPerMm) / kPerMm - place;
}

/// The first of what is to be moved tells how far all go.
Vec nudge_by(const Session& session, int right, int up, double step) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    const Thing first = pieces.empty() ? session.selection.things().front() : Thing(pieces.front());
    const auto place = place_of(session.kept(), first);
    WW_EXPECT(place, "what is nudged has a place");
    return {nudge_along(place->left(), right, step), nudge_along(place->bottom(), up, step)};
}

/// Nudges of other things are another step.
std::string burst_of(const Selection& selection) {
    std::string burst = "nudge";
    for (const Thing& thing : selection.things())
        burst += fmt::format(" {}/{}", thing.index(),
                             std::visit([](const auto& id) { return id.text; }, thing));
    return burst;
}

constexpr std::array<std::string_view, 6> kAlignSteps = {
    "Line up the left edges of {}",   "Put {} on one upright line", "Line up the right edges of {}",
    "Line up the bottom edges of {}", "Put {} on one level line",   "Line up the top edges of {}"};

/// Pairs of these pieces that cover a part of each other.
int overlaps_among(const wall::Project& project, const std::vector<wall::PieceId>& pieces) {
    int count = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            const auto a = place_of(project, Thing(pieces[i]));
            const auto b = place_of(project, Thing(pieces[j]));
            count += a && b && geometry::overlaps(*a, *b) ? 1 : 0;
        }
    return count;
}

}  // namespace

double step_length(units::LengthUnit unit, bool far) {
    constexpr double kHalfInch = units::kMmPerInch / 2;
    if (far)
        return unit == units::LengthUnit::inch ? kHalfInch : 10;
    return hand_step(unit);
}

std::string hinders_nudge(const Session& session) {
    if (session.selection.empty())
        return "Select something first";
    if (session.selection.furniture() || session.selection.fixture())
        return "";
    if (std::string why = hinders_some_on_wall(session); !why.empty())
        return why;
    const wall::Piece* fixed = first_fixed(session.kept(), selected_on_wall(session));
    return fixed == nullptr ? "" : why_fixed(*fixed);
}

void nudge(Session& session, int right, int up, bool far) {
    const double step = step_length(session.kept().unit, far);
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    const std::string name = pieces.empty() ? name_of(session.kept(), session.selection)
                                            : name_of(session.kept(), pieces);
    session.apply(fmt::format("Move {}", name),
                  shifted(session, nudge_by(session, right, up, step)),
                  burst_of(session.selection));
}

std::string hinders_align(const Session& session) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    if (pieces.size() < 2)
        return "Select two pieces on the wall first";
    const bool all_fixed = std::ranges::all_of(pieces, [&session](const wall::PieceId& id) {
        return wall::is_fixed(*wall::find(session.kept(), id));
    });
    return all_fixed ? "None of them may move, since they hang already or are pinned" : "";
}

void align(Session& session, edits::Line line) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    const auto aligned = edits::align(session.kept(), pieces, line);
    if (aligned && overlaps_among(*aligned, pieces) > overlaps_among(session.kept(), pieces)) {
        session.notice = Notice{true,
                                "That would put one piece over another; select those of one "
                                "row or one column."};
        return;
    }
    session.apply(fmt::format(fmt::runtime(kAlignSteps.at(static_cast<std::size_t>(line))),
                              name_of(session.kept(), pieces)),
                  aligned);
}

std::string hinders_distribute(const Session& session) {
    return selected_on_wall(session).size() < 3 ? "Select three pieces on the wall first" : "";
}

void distribute(Session& session, edits::Direction direction) {
    const std::vector<wall::PieceId> pieces = selected_on_wall(session);
    session.apply(
        fmt::format("Spread {} {}", name_of(session.kept(), pieces),
                    direction == edits::Direction::across ? "evenly across" : "evenly upwards"),
        edits::distribute(session.kept(), pieces, direction));
}

}  // namespace wallwright::desk

#include "desk/growth_choice.h"

#include "arrange/growth_end.h"
#include "desk/broke_off.h"
#include "desk/drag.h"
#include "edits/wishes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::desk {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Wall;
using wall::PieceState;

constexpr std::size_t kMostNamed = 4;  // of the pieces left out

double to_step(double mm, double step) {
    return std::round(mm / step) * step;
}

bool waits(const wall::Piece& piece) {
    return piece.state == PieceState::waiting;
}

Notice no_room_anywhere(const arrange::GrowthEnd& end) {
    const std::string why = arrange::in_the_way_words(end);
    return {true, fmt::format("No waiting piece has room beside the group{}{}. Choose another "
                              "direction, or make the wanted gap smaller.",
                              why.empty() ? "" : ": ", why)};
}

/// What stands between and what waits on; empty where all went well. How far a growth came that
/// only ran out of pieces is under the wall in any case.
std::string outcome(const wall::Project& from, const arrange::GrowthEnd& end,
                    const arrange::Growth& growth) {
    std::vector<std::string> said;
    if (end.in_the_way && !(growth.left_out.empty() && end.in_the_way->fits_before))
        said.push_back(arrange::words_of(end, from, growth, from.unit));
    if (!growth.left_out.empty())
        said.push_back(fmt::format("{} for {}.",
                                   growth.cut_short ? "Stopped early: no place yet" : "No room",
                                   titles_of(from, growth.left_out, kMostNamed)));
    return fmt::format("{}", fmt::join(said, " "));
}

}  // namespace

void GrowthChoice::set_target(Session& session, const std::optional<wall::Target>& target) {
    const std::string label =
        target ? fmt::format("Aim the growth at {}",
                             title_of(session.kept(), *target, session.kept().unit))
               : "Aim the growth at nothing";
    session.apply(label, edits::set_target(session.kept(), target));
}

void GrowthChoice::take_point(Session& session, Point<Wall> at) {
    wants_point_ = false;
    const Rect<Wall> wall = geometry::bounds(session.kept().room.outline);
    const double step = hand_step(session.kept().unit);
    set_target(session, Point<Wall>{std::clamp(to_step(at.x, step), wall.left(), wall.right()),
                                    std::clamp(to_step(at.y, step), wall.bottom(), wall.top())});
}

std::string GrowthChoice::hindrance(const Session& session) {
    const wall::Project today = arrange::growth_start(session.kept());
    if (!today.target || !arrange::place_of(today.room, *today.target))
        return "Say first toward what";
    if (std::ranges::none_of(today.pieces, waits))
        return "No piece waits on the floor";
    if (std::ranges::all_of(today.pieces, waits))
        return "Nothing is on the wall yet from which it could grow";
    return "";
}

void GrowthChoice::start(const Session& session) {
    from_ = arrange::growth_start(session.kept());
    task_ = arrange::task_of(from_, session.catalogue(), arrange::Free::waiting_alone);
    version_ = session.kept_version();
    const Rect<Wall> target = arrange::place_of(from_.room, from_.target.value()).value();
    search_ = std::make_unique<Search>();
    search_->start([task = task_, target, wanted = options](const Search::Tell& tell) {
        return arrange::grow(task, target, wanted,
                             [&tell](double done) { return tell(done, std::nullopt); });
    });
}

void GrowthChoice::stop(Session& session) {
    if (!search_)
        return;
    search_->finish();
    follow(session);
}

bool GrowthChoice::follow(Session& session) {
    if (!search_)
        return false;
    if (session.kept_version() != version_) {
        search_.reset();
        session.notice = Notice{false, "The wall is another now, so the growth was given up."};
        return true;
    }
    if (search_->is_running())
        return false;
    std::optional<arrange::Growth> answer = search_->take();
    const std::optional<std::string> failure = search_->take_failure();
    search_.reset();
    if (failure)
        session.notice = broke_off("The growth", *failure);
    if (answer)
        keep(session, std::move(*answer));
    return true;
}

void GrowthChoice::keep(Session& session, arrange::Growth growth) {
    const arrange::GrowthEnd end = arrange::end_of(from_, task_, growth);
    if (growth.stages.empty()) {
        session.notice = no_room_anywhere(end);
        return;
    }
    const std::string label =
        fmt::format("Grow toward {}", title_of(from_, from_.target.value(), from_.unit));
    if (!session.apply(label, arrange::with_growth(from_, task_, growth)))
        return;
    if (const std::string said = outcome(from_, end, growth); !said.empty())
        session.notice = Notice{false, said};
    growth_ = std::move(growth);
}

}  // namespace wallwright::desk

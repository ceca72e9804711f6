#include "arrange/even_words.h"
#include "desk/centred.h"
#include "desk/command_functions.h"
#include "desk/naming.h"
#include "spacing/group.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace wallwright::desk {

namespace {

constexpr std::size_t kMostSentences = 3;  ///< A notice is one line or two.

/// What was not done, or that all is even.
Notice notice_of(const arrange::EvenedWall& evened, units::LengthUnit unit) {
    std::vector<std::string> said = arrange::shortfalls(evened, unit);
    if (said.empty())
        return {false, arrange::all_even_words(evened, unit)};
    if (const std::size_t count = said.size(); count > kMostSentences) {
        said.resize(kMostSentences);
        said.push_back(fmt::format("And {} more.", count - kMostSentences));
    }
    return {true, fmt::format("{}", fmt::join(said, " "))};
}

bool is_wanted(const Session& session, const spacing::Group& group) {
    const std::vector<wall::PieceId> selected = selected_on_wall(session);
    return selected.empty() || std::ranges::any_of(group.pieces, [&](const wall::PieceId& id) {
               return std::ranges::find(selected, id) != selected.end();
           });
}

struct Groups {
    std::vector<spacing::Group> movable;
    std::vector<const wall::Piece*> held_by;  ///< One of each group that cannot move.
};

/// Those that have selected pieces, or all when no piece on the wall is selected.
Groups wanted_groups(const Session& session) {
    const wall::Project& project = session.kept();
    Groups wanted;
    for (spacing::Group& group : spacing::find_groups(wall::placed_pieces(project),
                                                      spacing::group_reach(project.style.gap))) {
        if (!is_wanted(session, group))
            continue;
        if (const wall::Piece* fixed = first_fixed(project, group.pieces))
            wanted.held_by.push_back(fixed);
        else
            wanted.movable.push_back(std::move(group));
    }
    return wanted;
}

std::vector<spacing::Group> groups_over_furniture(const Session& session) {
    std::vector<spacing::Group> groups = wanted_groups(session).movable;
    std::erase_if(groups, [&session](const spacing::Group& group) {
        return furniture_below(session.kept(), group.bounds) == nullptr;
    });
    return groups;
}

}  // namespace

std::string hinders_even(const Session& session) {
    const std::vector<wall::Placed> placed = wall::placed_pieces(session.kept());
    if (placed.size() < 2)
        return "Put two pieces on the wall first";
    return std::ranges::all_of(placed, &wall::Placed::fixed)
               ? "No piece may move, since all hang already or are pinned"
               : "";
}

void do_even(Session& session) {
    auto evened = arrange::even_wall(session.kept());
    if (!evened) {
        session.notice = Notice{true, to_text(evened.error())};
        return;
    }
    const Notice notice = notice_of(*evened, session.kept().unit);
    if (session.apply("Even the gaps", std::move(evened->project)))
        session.notice = notice;
}

std::string hinders_centre(const Session& session) {
    const Groups groups = wanted_groups(session);
    if (!groups.movable.empty())
        return "";
    return groups.held_by.empty() ? "Put a piece on the wall first"
                                  : why_fixed(*groups.held_by.front());
}

void do_centre(Session& session) {
    const Groups groups = wanted_groups(session);
    Result<wall::Project> project = session.kept();
    for (const spacing::Group& group : groups.movable)
        if (project)
            project = centred(std::move(*project), group.pieces);
    const std::string label =
        groups.movable.size() == 1 ? "Centre the group on the centre line" : "Centre the groups";
    const std::string held = groups.held_by.empty() ? "" : why_fixed(*groups.held_by.front());
    if (session.apply(label, std::move(project)) && !held.empty())
        session.notice = Notice{false, fmt::format("One group stays where it is: {}.", held)};
}

std::string hinders_centre_over(const Session& session) {
    if (const std::string hindrance = hinders_centre(session); !hindrance.empty())
        return hindrance;
    return groups_over_furniture(session).empty() ? "No furniture stands below the group" : "";
}

void do_centre_over(Session& session) {
    Result<wall::Project> project = session.kept();
    for (const spacing::Group& group : groups_over_furniture(session))
        if (project)
            project = centred_over(std::move(*project), group.pieces);
    session.apply("Centre over the furniture", std::move(project));
}

}  // namespace wallwright::desk

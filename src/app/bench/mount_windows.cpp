// Several windows in one mount, each for a print of its own.
#include "app/bench/mount_parts.h"
#include "app/scoped.h"
#include "desk/bench/mount_places.h"
#include "edits/mounts.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::FromCorner;
using wall::Mount;
using wall::Print;
using wall::PrintId;
using wall::WindowOrder;

struct PrintList {
    std::vector<PrintId> ids;
    std::vector<std::string> words;
    void add(const Print& print, units::LengthUnit unit) {
        ids.push_back(print.id);
        words.push_back(fmt::format("{}, {} × {}",
                                    print.title.empty() ? print.id.text : print.title,
                                    units::format_number(print.size.width, unit),
                                    units::format_number(print.size.height, unit)));
    }
};

bool has_window_for(const Mount& mount, const PrintId& print) {
    return std::ranges::any_of(
        mount.openings, [&print](const wall::Opening& opening) { return opening.print == print; });
}

bool is_in_a_frame(const wall::Project& project, const PrintId& print) {
    return std::ranges::any_of(project.pieces, [&](const wall::Piece& piece) {
        const auto all = wall::prints_in(project, piece);
        return std::ranges::any_of(all, [&print](const Print* one) { return one->id == print; });
    });
}

/// Prints that are in no frame.
PrintList in_the_drawer(const wall::Project& project) {
    PrintList list;
    for (const Print& print : project.prints)
        if (!is_in_a_frame(project, print.id))
            list.add(print, project.unit);
    return list;
}

void add_row(Ui& ui, State& state, const OneMount& it) {
    const wall::Project& project = state.session.project();
    PrintList free = in_the_drawer(project);
    if (free.ids.empty())
        return hint(ui,
                    "A further window needs a print that is in no frame; add one to the drawer "
                    "under Prints and frames.");
    free.words.insert(free.words.begin(), "choose one");
    const auto chosen = choice_row(ui, "mount/add-window", "One more, for", 0, free.words,
                                   "A print of the drawer gets a window in this mount.");
    if (!chosen)
        return;
    const PrintId print = free.ids[static_cast<std::size_t>(*chosen) - 1];
    const double width = wall::find(project, print)->size.width;
    const FromCorner at =
        it.design ? desk::corner_beside(*it.design, it.mount.bar, width) : FromCorner{};
    state.session.apply(fmt::format("Add a window to the mount of {}", it.one.title),
                        edits::add_window(state.session.kept(), it.one.piece.id, print, at));
}

/// Which print the window is for.
void window_row(Ui& ui, State& state, const OneMount& it, std::size_t window) {
    const ScopedId id(static_cast<int>(window));
    const wall::Project& project = state.session.project();
    const PrintId now = it.mount.openings[window].print;
    PrintList list;
    list.add(*wall::find(project, now), project.unit);
    for (const Print& print : project.prints)
        if (!has_window_for(it.mount, print.id) && !is_in_a_frame(project, print.id))
            list.add(print, project.unit);
    const auto chosen = choice_row(ui, fmt::format("mount/window-{}", window + 1).c_str(),
                                   fmt::format("Window {}", window + 1).c_str(), 0, list.words,
                                   "The print that one sees in it.");
    if (chosen)
        change_mount(state, it, "Put another print into",
                     [window, print = list.ids[static_cast<std::size_t>(*chosen)]](Mount& mount) {
                         mount.openings[window].print = print;
                     });
    if (button(ui, fmt::format("mount/remove-window-{}", window + 1).c_str(), "Close this window",
               "Its print goes back into the drawer."))
        state.session.apply(fmt::format("Close a window in the mount of {}", it.one.title),
                            edits::remove_window(state.session.kept(), it.mount.id, now));
}

void order_rows(Ui& ui, State& state, const OneMount& it) {
    const std::vector<std::string> words{"in a row", "in a column", "by hand"};
    const auto chosen =
        choice_row(ui, "mount/order", "They stand", static_cast<int>(it.mount.order), words,
                   "By hand: drag each of them on the bench.");
    if (chosen && static_cast<WindowOrder>(*chosen) != WindowOrder::by_hand)
        state.session.apply(fmt::format("Line up the windows of {}", it.one.title),
                            edits::release_windows(state.session.kept(), it.mount.id,
                                                   static_cast<WindowOrder>(*chosen)));
    else if (chosen && it.design)
        state.session.apply(
            fmt::format("Place the windows of {} by hand", it.one.title),
            edits::place_windows(state.session.kept(), it.mount.id, desk::corners_of(*it.design)));
    if (it.mount.order == WindowOrder::by_hand)
        return;
    if (const auto mm = length_row(ui, "mount/bar", "Bar", it.mount.bar, it.one.unit,
                                   "Of card between two windows."))
        change_mount(state, it, "Change the bars of", [mm](Mount& mount) { mount.bar = *mm; });
}

}  // namespace

void mount_windows(Ui& ui, State& state, const OneMount& it) {
    if (it.mount.openings.empty() && !it.one.piece.print)
        return hint(ui, "Put a print behind the window that there is first.");
    for (std::size_t i = 0; i < it.mount.openings.size(); ++i)
        window_row(ui, state, it, i);
    if (it.mount.openings.size() > 1)
        order_rows(ui, state, it);
    add_row(ui, state, it);
}

}  // namespace wallwright::app

#include "app/actions.h"
#include "app/panels/piece_parts.h"
#include "edits/pieces.h"
#include "mounts/window.h"

#include <fmt/format.h>

#include <filesystem>

namespace wallwright::app {

namespace {

using wall::Mount;
using wall::Print;

void change_print(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(Print&)>& by_hand) {
    state.session.apply(fmt::format("{} {}", verb, one.title),
                        edits::change_print(state.session.kept(), one.piece.id, by_hand));
}

void change_mount(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(Mount&)>& by_hand) {
    state.session.apply(fmt::format("{} {}", verb, one.title),
                        edits::change_mount(state.session.kept(), one.piece.id, by_hand));
}

/// Copies, since a change replaces the project.
template <class T, class Id>
std::optional<T> copy_of(const wall::Project& project, const std::optional<Id>& id) {
    const T* found = id ? wall::find(project, *id) : nullptr;
    return found == nullptr ? std::nullopt : std::optional<T>(*found);
}

void print_rows(Ui& ui, State& state, const OnePiece& one, const std::optional<Print>& print) {
    if (print && !print->picture.empty())
        value_row(ui, "Picture", std::filesystem::path(print->picture).filename().string(),
                  print->picture);
    if (button(ui, "piece/choose-picture", "Choose a picture...",
               "A PNG of the print, to see it on the wall.", ButtonLook::plain, -1))
        want_picture(state, one.piece.id);
    if (!print) {
        if (button(ui, "piece/add-print", "Add a print",
                   "A sheet that fits the frame; then type its size.", ButtonLook::plain, -1))
            change_print(state, one, "Add a print to", [](Print&) {});
        return;
    }
    if (const auto size = size_row(ui, "piece/print", "Print", print->size, one.unit,
                                   "Width and height of the whole sheet."))
        change_print(state, one, "Resize the print of",
                     [size](Print& changed) { changed.size = *size; });
    if (!print->picture.empty())
        return;
    if (const auto colour = colour_row(ui, "piece/print-colour", "Print colour", print->colour,
                                       "Shown as long as there is no picture."))
        change_print(state, one, "Paint the print of",
                     [colour](Print& changed) { changed.colour = *colour; });
}

void mount_switch(Ui& ui, State& state, const OnePiece& one) {
    const auto on = switch_row(ui, "piece/mount", "Mount", one.piece.mount.has_value(),
                               "Card with a window, between glazing and print.");
    if (on && *on)
        change_mount(state, one, "Add a mount to", [](Mount&) {});
    else if (on)
        state.session.apply(fmt::format("Take the mount out of {}", one.title),
                            edits::without_mount(state.session.kept(), one.piece.id));
}

void mount_rows(Ui& ui, State& state, const OnePiece& one, const Mount& mount) {
    if (const auto overlap = length_row(ui, "piece/overlap", "Overlap", mount.overlap, one.unit,
                                        "By which the window covers the print on each side."))
        change_mount(state, one, "Change the mount of",
                     [overlap](Mount& changed) { changed.overlap = *overlap; });
    if (const auto extra =
            length_row(ui, "piece/base", "Wider below by", mount.base_extra, one.unit,
                       "By which the border below is wider than the one above."))
        change_mount(state, one, "Change the mount of",
                     [extra](Mount& changed) { changed.base_extra = *extra; });
    if (const auto colour = colour_row(ui, "piece/mount-colour", "Mount colour", mount.colour))
        change_mount(state, one, "Paint the mount of",
                     [colour](Mount& changed) { changed.colour = *colour; });
}

std::string pair(double first, double second, units::LengthUnit unit) {
    return fmt::format("{}, {}", units::format_number(first, unit),
                       units::format_length(second, unit));
}

void window_rows(Ui& ui, const OnePiece& one, const Mount& mount, const Print& print) {
    const mounts::MountPlan plan =
        mounts::plan_mount(mounts::as_hung(one.frame, one.piece.turned), mount, print);
    value_row(ui, "Window",
              fmt::format("{} × {}", units::format_number(plan.window.width, one.unit),
                          units::format_length(plan.window.height, one.unit)));
    const char* seen = "What is seen of the card past the frame's lip.";
    value_row(ui, "Borders left, right", pair(plan.seen.left, plan.seen.right, one.unit), seen);
    value_row(ui, "Borders top, bottom", pair(plan.seen.top, plan.seen.bottom, one.unit), seen);
}

}  // namespace

void picture_part(Ui& ui, State& state, const OnePiece& one) {
    const auto print = copy_of<Print>(state.session.project(), one.piece.print);
    const auto mount = copy_of<Mount>(state.session.project(), one.piece.mount);
    print_rows(ui, state, one, print);
    mount_switch(ui, state, one);
    if (mount)
        mount_rows(ui, state, one, *mount);
    if (mount && print)
        window_rows(ui, one, *mount, *print);
}

}  // namespace wallwright::app

#include "app/bench/mount_parts.h"
#include "app/bench/size_words.h"
#include "app/panels/action_button.h"
#include "app/panels/piece_list.h"
#include "app/scoped.h"
#include "desk/bench/bench_pieces.h"
#include "edits/card.h"
#include "edits/mounts.h"
#include "edits/pieces.h"
#include "mounts/window.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wallwright::app {

namespace {

using wall::MountId;
using wall::Piece;
using wall::Project;

std::string under_title(const OnePiece& one) {
    const wall::Frame frame = mounts::as_hung(one.frame, one.piece.turned);
    return fmt::format("Frame {}, blank {}", size_words(frame.outside, one.unit),
                       size_words(mounts::blank_size(frame), one.unit));
}

std::vector<std::string> others_with(const Project& project, const Piece& piece) {
    std::vector<std::string> titles;
    for (const Piece& other : project.pieces)
        if (other.id != piece.id && other.mount == piece.mount)
            titles.push_back(wall::title_of(other));
    return titles;
}

/// Another mount of the wall to share, by the pieces that have it.
void share_row_of(Ui& ui, State& state, const OnePiece& one) {
    std::vector<std::string> words{"choose one"};
    std::vector<MountId> ids;
    const Project& project = state.session.project();
    for (const wall::Mount& mount : project.mounts) {
        std::vector<std::string> titles;
        for (const Piece& piece : project.pieces)
            if (piece.mount == mount.id && piece.id != one.piece.id)
                titles.push_back(wall::title_of(piece));
        if (titles.empty() || mount.id == one.piece.mount)
            continue;
        words.push_back(mount.title.empty() ? wall::listed(titles, 2) : mount.title);
        ids.push_back(mount.id);
    }
    if (ids.empty())
        return;
    if (const auto chosen = choice_row(ui, "mount/same-as", "The same as", 0, words,
                                       "Both then share one mount: measures, card and colours."))
        state.session.apply(fmt::format("Share a mount with {}", one.title),
                            edits::put_mount(state.session.kept(), one.piece.id,
                                             ids[static_cast<std::size_t>(*chosen) - 1]));
}

void shared_part(Ui& ui, State& state, const OnePiece& one) {
    const auto others = others_with(state.session.project(), one.piece);
    if (others.empty())
        return;
    hint(ui, fmt::format("{} {} this mount too: what you change here changes there.",
                         wall::listed(others, 3), others.size() == 1 ? "has" : "have"));
    if (button(ui, "mount/own", "A mount of its own",
               "A copy for this piece alone; the others keep theirs.", ButtonLook::plain, -1))
        state.session.apply(fmt::format("Give {} a mount of its own", one.title),
                            edits::own_mount(state.session.kept(), one.piece.id));
}

void without_mount(Ui& ui, State& state, const OnePiece& one) {
    hint(ui, "There is no card between its frame and its print.");
    if (button(ui, "mount/give", "Give it a mount",
               "With the measures and the card that most pieces here have, or else the usual ones.",
               ButtonLook::main, -1))
        state.session.apply(fmt::format("Add a mount to {}", one.title),
                            edits::give_mount(state.session.kept(), one.piece.id));
    share_row_of(ui, state, one);
}

void end_part(Ui& ui, State& state, const OneMount& it) {
    ImGui::Dummy({0, ui.px(4)});
    if (const auto cut = switch_row(ui, "mount/cut", "Is cut already", it.one.piece.mount_cut,
                                    "Then it needs no more card, and no cutting sheet.")) {
        const wall::PieceId ids[] = {it.one.piece.id};
        state.session.apply(
            fmt::format("{} of {}", *cut ? "Cut the mount" : "Cut anew the mount", it.one.title),
            edits::set_mount_cut(state.session.kept(), ids, *cut));
    }
    share_row_of(ui, state, it.one);
    constexpr std::array kCommands{desk::CommandId::turn, desk::CommandId::select_nothing};
    command_buttons(ui, state.session, kCommands);
    if (button(ui, "mount/take-out", "Take the mount out",
               "The print then lies in the frame without card over it.", ButtonLook::plain, -1))
        state.session.apply(fmt::format("Take the mount out of {}", it.one.title),
                            edits::without_mount(state.session.kept(), it.one.piece.id));
}

using ShowPiece = void (*)(Ui&, State&, const OnePiece&);
using ShowMount = void (*)(Ui&, State&, const OneMount&);

void piece_section(Ui& ui, State& state, const OnePiece& one, const char* name, const char* words,
                   bool open, ShowPiece show) {
    if (section(ui, name, words, open))
        show(ui, state, one);
}

void mount_section(Ui& ui, State& state, const OneMount& it, const char* name, const char* words,
                   bool open, ShowMount show) {
    if (section(ui, name, words, open))
        show(ui, state, it);
}

void whole_mount(Ui& ui, State& state, const OneMount& it) {
    shared_part(ui, state, it.one);
    mount_section(ui, state, it, "mount/borders", "Window and borders", true, mount_borders);
    mount_section(ui, state, it, "mount/card", "Card", true, mount_card);
    piece_section(ui, state, it.one, "mount/prints", "Print", true, mount_prints);
    mount_section(ui, state, it, "mount/windows", "Several windows", it.mount.openings.size() > 1,
                  mount_windows);
    piece_section(ui, state, it.one, "mount/frame", "Frame", false, mount_frame);
    mount_section(ui, state, it, "mount/depth", "Depth", true, mount_depth);
    end_part(ui, state, it);
}

/// Of all mounts, whichever is looked at.
void cutting_button(Ui& ui, State& state) {
    action_button(ui, state, ActionId::cutting_sheets, "cutting-sheets", ButtonLook::plain,
                  cutting_hindrance(state.session.kept()));
}

std::string counted(std::size_t count, const char* one, const char* many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

void nothing_chosen(Ui& ui, const State& state) {
    const Project& project = state.session.project();
    const auto with = static_cast<std::size_t>(std::ranges::count_if(
        project.pieces, [](const Piece& one) { return one.mount.has_value(); }));
    panel_title(ui, "The mounts",
                fmt::format("{}, {} with a mount",
                            counted(project.pieces.size(), "piece", "pieces"), with));
    hint(ui, project.pieces.empty()
                 ? "Add a frame in the step Pieces first."
                 : "Choose a piece on the bench or in the list. Left and Right go from one to the "
                   "next, B turns a mount over, and each number can be typed over in any unit.");
}

}  // namespace

std::optional<OnePiece> shown_piece(const desk::Session& session) {
    const auto id = desk::piece_on_bench(session);
    const Project& project = session.project();
    const Piece* piece = id ? wall::find(project, *id) : nullptr;
    if (piece == nullptr)
        return std::nullopt;
    return OnePiece{*piece, wall::frame_of(project, *piece), project.unit, wall::title_of(*piece)};
}

std::optional<OneMount> mount_on_bench(const desk::Session& session) {
    const auto one = shown_piece(session);
    if (!one || !one->piece.mount)
        return std::nullopt;
    const Project& project = session.project();
    return OneMount{*one, *wall::find(project, *one->piece.mount),
                    mounts::design_of(project, one->piece)};
}

void change_mount(State& state, const OneMount& it, std::string_view verb,
                  const std::function<void(wall::Mount&)>& by_hand) {
    state.session.apply(fmt::format("{} the mount of {}", verb, it.one.title),
                        edits::change_mount_everywhere(state.session.kept(), it.mount.id, by_hand));
}

void mount_panel(Ui& ui, State& state) {
    const auto one = shown_piece(state.session);
    if (!one) {
        nothing_chosen(ui, state);
        cutting_button(ui, state);
        return piece_list(ui, state.session);
    }
    const ScopedId id(one->piece.id.text.c_str());
    panel_title(ui, one->title, under_title(*one));
    mount_print_choice(ui, state, *one);
    if (const auto it = mount_on_bench(state.session)) {
        whole_mount(ui, state, *it);
        return cutting_button(ui, state);
    }
    without_mount(ui, state, *one);
    piece_section(ui, state, *one, "mount/prints", "Print", true, mount_prints);
    piece_section(ui, state, *one, "mount/frame", "Frame", true, mount_frame);
}

}  // namespace wallwright::app

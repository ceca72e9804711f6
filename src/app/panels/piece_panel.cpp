#include "app/panels/piece_parts.h"
#include "app/panels/wish_parts.h"
#include "app/scoped.h"
#include "draw/letters.h"
#include "edits/pieces.h"
#include "edits/wishes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <array>

namespace wallwright::app {

namespace {

using desk::CommandId;
using desk::Step;

using Show = void (*)(Ui&, State&, const OnePiece&);

struct Part {
    const char* name;
    const char* words;
    Show show;
};

constexpr Part kPlace{"piece/place", "Place and size", place_part};
constexpr Part kFrame{"piece/frame", "Frame", frame_part};
constexpr Part kPicture{"piece/picture", "Picture and mount", picture_part};
constexpr Part kHanging{"piece/hanging", "Hanging", hanging_part};
constexpr Part kForces{"piece/forces", "Forces", forces_part};

/// What matters to the step comes first.
struct Order {
    std::vector<Part> parts;
    int open;  ///< So many of them are open at first.
};

Order order_for(Step step) {
    switch (step) {
        case Step::pieces:
            return {{kFrame, kPicture, kPlace, kHanging}, 2};
        case Step::hang:
            return {{kHanging, kForces, kPlace, kFrame, kPicture}, 2};
        case Step::room:
        case Step::mounts:
        case Step::arrange:
            break;
    }
    return {{kPlace, kHanging, kFrame, kPicture}, 1};
}

std::string state_words(const wall::Project& project, const wall::Piece& piece) {
    return fmt::format("{}{}{}, piece {}", wall::name_of(piece.state),
                       piece.pinned ? " and pinned" : "", piece.wished ? ", not bought yet" : "",
                       draw::letter_of(project, piece.id));
}

std::optional<OnePiece> look_up(const desk::Session& session) {
    const auto id = session.selection.one_piece();
    const wall::Project& project = session.project();
    const wall::Piece* piece = id ? wall::find(project, *id) : nullptr;
    if (piece == nullptr)
        return std::nullopt;
    return OnePiece{*piece, wall::frame_of(project, *piece), project.unit, wall::title_of(*piece)};
}

/// Of a frame that is wished for; one that was bought is like any other.
void bought_row(Ui& ui, State& state, const OnePiece& one) {
    if (!one.piece.wished)
        return;
    const std::array ids{one.piece.id};
    if (switch_row(ui, "piece/bought", "Bought", false, "A frame that is wished for cannot hang."))
        state.session.apply(fmt::format("Call {} bought", one.title),
                            edits::set_wished(state.session.kept(), ids, false));
}

void commands(Ui& ui, desk::Session& session) {
    ImGui::Dummy({0, ui.px(4)});
    constexpr std::array kCommands{
        CommandId::turn,      CommandId::pin,    CommandId::hang,          CommandId::take_down,
        CommandId::duplicate, CommandId::remove, CommandId::select_nothing};
    command_buttons(ui, session, kCommands);
}

/// Of the group that it hangs in.
void group_commands(Ui& ui, desk::Session& session) {
    constexpr std::array kCommands{CommandId::even_gaps, CommandId::centre_group,
                                   CommandId::centre_over};
    command_buttons(ui, session, kCommands);
}

}  // namespace

void change_piece(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(wall::Piece&)>& by_hand) {
    state.session.apply(fmt::format("{} {}", verb, one.title),
                        edits::change_piece(state.session.kept(), one.piece.id, by_hand));
}

void change_frame(State& state, const OnePiece& one, std::string_view verb,
                  const std::function<void(wall::Frame&)>& by_hand) {
    state.session.apply(fmt::format("{} {}", verb, one.title),
                        edits::change_frame(state.session.kept(), one.piece.id, by_hand));
}

void piece_panel(Ui& ui, State& state) {
    const std::optional<OnePiece> one = look_up(state.session);
    if (!one)
        return;
    const ScopedId id(one->piece.id.text.c_str());
    panel_title(ui, one->title, state_words(state.session.project(), one->piece));
    bought_row(ui, state, *one);
    const Order order = order_for(state.step);
    if (state.step == Step::arrange && !wall::is_fixed(one->piece) &&
        section(ui, "piece/wishes", "Wishes for layouts", true))
        piece_wishes(ui, state, one->piece.id);
    int index = 0;
    for (const Part& part : order.parts) {
        const ScopedId step(static_cast<int>(state.step));
        if (section(ui, part.name, part.words, index < order.open))
            part.show(ui, state, *one);
        ++index;
    }
    commands(ui, state.session);
    if (state.step == desk::Step::arrange)
        group_commands(ui, state.session);
}

}  // namespace wallwright::app

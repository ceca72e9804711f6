#include "app/bench/boards.h"
#include "app/bench/pixel_row.h"
#include "app/bench/prints_parts.h"
#include "app/row.h"
#include "app/widgets.h"
#include "desk/bench/match_moves.h"
#include "edits/prints.h"
#include "mounts/sharpness.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <cmath>

namespace wallwright::app {

namespace {

using wall::Print;

/// The print as it was when the panel began: a change replaces the project under it.
struct OnePrint {
    Print print;
    std::string title;
    units::LengthUnit unit = units::LengthUnit::mm;
    std::optional<wall::PieceId> in;  ///< The piece it is framed in.
};

void change(State& state, const OnePrint& one, std::string_view verb,
            const std::function<void(Print&)>& by_hand) {
    state.session.apply(
        fmt::format("{} {}", verb, one.title),
        edits::change_print_everywhere(state.session.kept(), one.print.id, by_hand));
}

void pixels_row(Ui& ui, State& state, const OnePrint& one) {
    if (const auto typed = pixel_row(ui, "prints/pixels", one.print.pixels))
        change(state, one, "Count the pixels of",
               [&typed](Print& print) { print.pixels = typed->pixels; });
    if (const auto sharp = mounts::sharpness_of(one.print, one.unit))
        hint(ui, sharp->text);
}

void measure_rows(Ui& ui, State& state, const OnePrint& one) {
    if (const auto title = text_row(ui, "prints/title", "Title", one.print.title))
        change(state, one, "Rename", [&title](Print& print) { print.title = *title; });
    if (const auto size = size_row(ui, "prints/size", "Sheet", one.print.size, one.unit,
                                   "Width and height of the whole sheet."))
        change(state, one, "Resize", [size](Print& print) { print.size = *size; });
    if (const auto grams =
            count_row(ui, "prints/grams", "Paper, g/m²",
                      static_cast<int>(std::lround(one.print.grams_per_square_metre)),
                      "What a square metre of it weighs; 80 to 350 is usual.", {1, 10000}))
        change(state, one, "Change the paper of",
               [grams](Print& print) { print.grams_per_square_metre = *grams; });
    pixels_row(ui, state, one);
    if (const auto colour = colour_row(ui, "prints/colour", "Colour", one.print.colour,
                                       "By which the match goes, and shown where there is no "
                                       "picture."))
        change(state, one, "Paint", [colour](Print& print) { print.colour = *colour; });
}

void keep_switch(Ui& ui, State& state, const OnePrint& one) {
    if (!one.in)
        return;
    const bool keeps = find(state.session.kept(), *one.in)->keeps_print;
    if (const auto on = switch_row(ui, "prints/keep", "Stays in its frame", keeps,
                                   "Whatever else would match. Key: K"))
        desk::keep_print(state.session, *one.in, *on);
}

void buttons(Ui& ui, State& state, const OnePrint& one) {
    const mounts::Pair* pair = state.prints.choice.pair_of(one.print.id);
    const bool can_take = !state.prints.choice.is_stale() && pair != nullptr && pair->moves;
    ButtonFlow flow;
    if (can_take) {
        flow.next("Take this pair");
        if (button(ui, "prints/take", "Take this pair",
                   "Puts it into the frame that the match has for it.")) {
            state.prints.choice.take(state.session, one.print.id);
            return;
        }
    }
    if (one.in) {
        flow.next("Take it out");
        if (button(ui, "prints/take-out", "Take it out",
                   "Out of its frame, back into the drawer.")) {
            desk::take_out(state.session, *one.in);
            return;
        }
    }
    flow.next("Remove");
    if (button(ui, "prints/remove", "Remove",
               "Takes the print out of the plan, and out of its frame. Key: Delete"))
        remove_print(state, one.print.id);
}

}  // namespace

void chosen_print_part(Ui& ui, State& state) {
    const auto& chosen = state.prints.hand.chosen;
    const Print* print = chosen ? find(state.session.kept(), *chosen) : nullptr;
    if (print == nullptr)
        return;
    const OnePrint one{*print, title_of(state.session.kept(), print->id), state.session.kept().unit,
                       desk::piece_with(state.session.kept(), print->id)};
    const ScopedId id(one.print.id.text.c_str());
    heading(ui, one.title.c_str());
    measure_rows(ui, state, one);
    keep_switch(ui, state, one);
    buttons(ui, state, one);
}

}  // namespace wallwright::app

// Which print lies behind the mount, its size, and whether it will look sharp.
#include "app/bench/mount_parts.h"
#include "app/bench/pixel_row.h"
#include "app/scoped.h"
#include "edits/pieces.h"
#include "edits/prints.h"
#include "mounts/sharpness.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::Piece;
using wall::PieceId;
using wall::Print;
using wall::PrintId;
using wall::Project;

/// A print that could be put into the frame, and where it is now.
struct Candidate {
    PrintId print;
    std::optional<PieceId> holder;
    std::string words;
};

std::string print_words(const Project& project, const Print& print, const Piece* holder) {
    const std::string size =
        fmt::format("{} × {}", units::format_number(print.size.width, project.unit),
                    units::format_number(print.size.height, project.unit));
    const std::string& title = print.title.empty() ? print.id.text : print.title;
    return holder == nullptr ? fmt::format("{}, {}", title, size)
                             : fmt::format("{}, {}, in {}", title, size, wall::title_of(*holder));
}

/// The piece's own print first, then those of the drawer, then those of other frames.
std::vector<Candidate> candidates_for(const Project& project, const Piece& piece) {
    std::vector<Candidate> own;
    std::vector<Candidate> free;
    std::vector<Candidate> held;
    for (const Print& print : project.prints) {
        const auto holder =
            std::ranges::find(project.pieces, std::optional(print.id), &Piece::print);
        if (print.id == piece.print)
            own.push_back({print.id, std::nullopt, print_words(project, print, nullptr)});
        else if (holder == project.pieces.end())
            free.push_back({print.id, std::nullopt, print_words(project, print, nullptr)});
        else
            held.push_back({print.id, holder->id, print_words(project, print, &*holder)});
    }
    own.insert(own.end(), free.begin(), free.end());
    own.insert(own.end(), held.begin(), held.end());
    return own;
}

void put(State& state, const OnePiece& one, const Candidate& chosen) {
    const Project& kept = state.session.kept();
    if (chosen.holder)
        state.session.apply(fmt::format("Swap the prints of {} and {}", one.title,
                                        wall::title_of(kept, *chosen.holder)),
                            edits::swap_prints(kept, one.piece.id, *chosen.holder));
    else
        state.session.apply(fmt::format("Put another print into {}", one.title),
                            edits::put_print(kept, one.piece.id, chosen.print));
}

void change_print(State& state, const Print& print, std::string_view verb,
                  const std::function<void(Print&)>& by_hand) {
    state.session.apply(
        fmt::format("{} {}", verb, print.title.empty() ? print.id.text : print.title),
        edits::change_print_everywhere(state.session.kept(), print.id, by_hand));
}

/// Of one of `count` prints, from 1.
void print_rows(Ui& ui, State& state, const OnePiece& one, const Print& print, std::size_t number,
                std::size_t count) {
    const ScopedId id(static_cast<int>(number));
    if (count > 1)
        value_row(ui, fmt::format("Window {}", number).c_str(),
                  print.title.empty() ? print.id.text : print.title);
    const std::string tail = count > 1 ? fmt::format("-{}", number) : "";
    if (const auto size = size_row(ui, ("mount/print-size" + tail).c_str(), "Size", print.size,
                                   one.unit, "Width and height of the whole sheet."))
        change_print(state, print, "Resize", [size](Print& changed) { changed.size = *size; });
    if (const auto typed = pixel_row(ui, ("mount/pixels" + tail).c_str(), print.pixels))
        change_print(state, print, "Count the pixels of",
                     [&typed](Print& changed) { changed.pixels = typed->pixels; });
    if (const auto seen = mounts::sharpness_of(print, one.unit)) {
        hint(ui, seen->text);
        ui.probe.note("mount/sharpness" + tail);
    }
}

}  // namespace

void mount_print_choice(Ui& ui, State& state, const OnePiece& one) {
    if (wall::prints_in(state.session.project(), one.piece).size() > 1)
        return;
    const auto candidates = candidates_for(state.session.project(), one.piece);
    if (candidates.empty())
        return;
    std::vector<std::string> words;
    for (const Candidate& candidate : candidates)
        words.push_back(candidate.words);
    const auto chosen = choice_row(ui, "mount/print", "Print", one.piece.print ? 0 : -1, words,
                                   "One from the drawer, or from another frame: the two then "
                                   "change places.");
    if (chosen)
        put(state, one, candidates[static_cast<std::size_t>(*chosen)]);
}

void mount_prints(Ui& ui, State& state, const OnePiece& one) {
    std::vector<Print> prints;
    for (const Print* print : wall::prints_in(state.session.project(), one.piece))
        prints.push_back(*print);
    if (prints.empty() &&
        button(ui, "mount/add-print", "Add a print",
               "A sheet that fits the frame; then type its size.", ButtonLook::plain, -1))
        state.session.apply(fmt::format("Add a print to {}", one.title),
                            edits::change_print(state.session.kept(), one.piece.id, [](Print&) {}));
    for (std::size_t i = 0; i < prints.size(); ++i)
        print_rows(ui, state, one, prints[i], i + 1, prints.size());
}

}  // namespace wallwright::app

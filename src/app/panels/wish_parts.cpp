#include "app/panels/wish_parts.h"

#include "app/row.h"
#include "app/widgets.h"
#include "desk/wish_choice.h"
#include "wall/this_side.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <vector>

namespace wallwright::app {

namespace {

using wall::Wish;
using wall::WishKind;

struct Toggle {
    WishKind kind;
    const char* words;
    const char* why;
};

constexpr Toggle kOfOne[] = {
    {WishKind::middle, "In the middle", "Layouts put it in the middle of the group."},
    {WishKind::low, "Low", "Layouts put it low in the group."},
    {WishKind::high, "High", "Layouts put it high in the group."}};
constexpr Toggle kOfTwo[] = {
    {WishKind::side_by_side, "Side by side", "Layouts make them neighbours."},
    {WishKind::apart, "Apart", "Layouts do not make them neighbours."}};

/// A box to tick; as wide as its words.
void toggle(Ui& ui, desk::Session& session, const Toggle& shown, const Wish& wish) {
    const std::string name = fmt::format("wish/{}", wall::name_of(shown.kind));
    bool on = desk::find_wish(session.kept(), wish).has_value();
    const bool pressed = ImGui::Checkbox(shown.words, &on);
    ui.probe.note(name);
    tip(ui, shown.why);
    if (pressed)
        desk::set_wish(session, wish, on);
}

template <std::size_t kCount>
void toggles(Ui& ui, desk::Session& session, const Toggle (&all)[kCount], Wish wish) {
    bool first = true;
    for (const Toggle& one : all) {
        if (!std::exchange(first, false))
            ImGui::SameLine(0, ui.px(12));
        wish.kind = one.kind;
        toggle(ui, session, one, wish);
    }
}

struct NamedThing {
    wall::ThingId id;
    std::string title;
};

std::vector<NamedThing> things_of(const wall::Room& room) {
    std::vector<NamedThing> things;
    for (const wall::Furniture& furniture : room.furniture)
        things.push_back({furniture.id, wall::title_of(furniture)});
    for (const wall::Fixture* fixture : wall::fixtures_here(room))
        things.push_back({fixture->id, wall::title_of(*fixture)});
    return things;
}

/// A small cross at the right end of the row; true when it was pressed.
bool cross(Ui& ui, const std::string& name, const char* why) {
    const float side = ImGui::GetFrameHeight();
    ImGui::SameLine(ImGui::GetContentRegionMax().x - side);
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, {0, 0});
    const bool pressed = ImGui::Button("x", {side, side});
    ImGui::PopStyleVar();
    ui.probe.note(name);
    tip(ui, why);
    return pressed;
}

/// Its words, and a cross that takes it back; at most one is pressed in a frame. True when the
/// words were pressed.
bool wish_row(Ui& ui, desk::Session& session, std::size_t index, const std::string& words) {
    const ScopedId id(static_cast<int>(index));
    const float side = ImGui::GetFrameHeight();
    ImGui::AlignTextToFramePadding();
    const float room = ImGui::GetContentRegionAvail().x - side - ui.px(8);
    const bool chosen = ImGui::Selectable(fmt::format("{}##wish", fitted(words, room)).c_str(),
                                          false, 0, {room, side});
    ui.probe.note(fmt::format("wish/{}", index));
    tip(ui, words);
    if (cross(ui, fmt::format("wish/remove/{}", index), "No longer wish it."))
        desk::remove_wish(session, index);
    return chosen;
}

void not_over(Ui& ui, desk::Session& session, const wall::PieceId& piece) {
    const std::vector<NamedThing> things = things_of(session.kept().room);
    std::vector<std::string> words{"choose..."};
    std::vector<Wish> wishes;
    for (const NamedThing& thing : things) {
        Wish wish{WishKind::not_over, piece, std::nullopt, thing.id};
        if (desk::find_wish(session.kept(), wish))
            continue;
        words.push_back(thing.title);
        wishes.push_back(std::move(wish));
    }
    if (wishes.empty())
        return;
    if (const auto chosen = choice_row(ui, "wish/not-over", "Not over", 0, words,
                                       "Layouts keep it away from there."))
        desk::set_wish(session, wishes.at(static_cast<std::size_t>(*chosen) - 1), true);
}

}  // namespace

void piece_wishes(Ui& ui, State& state, const wall::PieceId& piece) {
    desk::Session& session = state.session;
    toggles(ui, session, kOfOne, {WishKind::middle, piece, std::nullopt, std::nullopt});
    not_over(ui, session, piece);
    const std::vector<Wish> wishes = session.kept().wishes;
    for (std::size_t i = 0; i < wishes.size(); ++i)
        if (wishes[i].kind == WishKind::not_over && wishes[i].first == piece)
            wish_row(ui, session, i, desk::words_of(session.kept(), wishes[i]));
}

void pair_wishes(Ui& ui, State& state, const wall::PieceId& first, const wall::PieceId& second) {
    toggles(ui, state.session, kOfTwo, {WishKind::side_by_side, first, second, std::nullopt});
}

void wishes_list(Ui& ui, State& state) {
    desk::Session& session = state.session;
    const std::vector<Wish> wishes = session.kept().wishes;
    const std::string words =
        wishes.empty() ? "Wishes###wishes" : fmt::format("Wishes ({})###wishes", wishes.size());
    if (!section(ui, "wishes", words.c_str(), !wishes.empty()))
        return;
    if (wishes.empty())
        hint(ui,
             "Select a piece to wish it low, high or in the middle, or two of them to wish them "
             "side by side or apart. Layouts then see to it.");
    for (std::size_t i = 0; i < wishes.size(); ++i)
        if (wish_row(ui, session, i, desk::words_of(session.kept(), wishes[i]))) {
            std::vector<wall::PieceId> pieces{wishes[i].first};
            if (wishes[i].second)
                pieces.push_back(*wishes[i].second);
            session.selection.set(pieces);
        }
}

}  // namespace wallwright::app

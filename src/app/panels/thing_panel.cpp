#include "app/panels/panels.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "edits/room.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <array>

namespace wallwright::app {

namespace {

using wall::Fixture;
using wall::Furniture;

Result<wall::Project> changed(wall::Project project, const wall::FurnitureId& id,
                              const std::function<void(Furniture&)>& by_hand) {
    return edits::change_furniture(std::move(project), id, by_hand);
}
Result<wall::Project> changed(wall::Project project, const wall::FixtureId& id,
                              const std::function<void(Fixture&)>& by_hand) {
    return edits::change_fixture(std::move(project), id, by_hand);
}

template <class Thing>
void change(desk::Session& session, const Thing& thing, std::string_view verb,
            const std::function<void(Thing&)>& by_hand) {
    session.apply(fmt::format("{} {}", verb, wall::title_of(thing)),
                  changed(session.kept(), thing.id, by_hand));
}

template <class Thing>
void kind_rows(Ui& ui, desk::Session& session, const Thing& thing) {
    using Type = decltype(thing.type);
    const std::vector<std::string> kinds = spoken_names<Type>();
    if (const auto kind = choice_row(ui, "thing/kind", "Kind", static_cast<int>(thing.type), kinds))
        change<Thing>(session, thing, "Change the kind of",
                      [kind](Thing& one) { one.type = static_cast<Type>(*kind); });
    if (const auto title = text_row(ui, "thing/title", "Title", thing.title))
        change<Thing>(session, thing, "Rename", [&title](Thing& one) { one.title = *title; });
}

template <class Thing>
void size_rows(Ui& ui, desk::Session& session, const Thing& thing, units::LengthUnit unit) {
    const wall::Size size = thing.place.size();
    if (const auto width = measure_row(ui, "thing/width", "Width", size.width, unit))
        change<Thing>(session, thing, "Resize",
                      [width](Thing& one) { one.place.max.x = one.place.min.x + *width; });
    if (const auto height = measure_row(ui, "thing/height", "Height", size.height, unit))
        change<Thing>(session, thing, "Resize",
                      [height](Thing& one) { one.place.max.y = one.place.min.y + *height; });
}

template <class Thing>
void place_rows(Ui& ui, desk::Session& session, const Thing& thing, units::LengthUnit unit) {
    if (const auto left = length_row(ui, "thing/left", "Left edge", thing.place.min.x, unit,
                                     "From the left corner of the wall."))
        change<Thing>(session, thing, "Move", [left](Thing& one) {
            one.place = one.place.moved({*left - one.place.min.x, 0});
        });
    if (const auto bottom = length_row(ui, "thing/bottom", "Bottom edge", thing.place.min.y, unit,
                                       "Above the floor at the left corner."))
        change<Thing>(session, thing, "Move", [bottom](Thing& one) {
            one.place = one.place.moved({0, *bottom - one.place.min.y});
        });
}

/// Where choosing begins as long as nobody has: until then each kind has a colour of its own.
constexpr wall::Colour kUnpainted{0x8B, 0x9B, 0xA6};

void colour(Ui& ui, desk::Session& session, const Furniture& furniture) {
    if (const auto picked =
            colour_row(ui, "thing/colour", "Colour", furniture.colour.value_or(kUnpainted)))
        change<Furniture>(session, furniture, "Paint",
                          [picked](Furniture& one) { one.colour = *picked; });
}

void colour(Ui&, desk::Session&, const Fixture&) {}

void side(Ui&, desk::Session&, const Furniture&) {}

void side(Ui& ui, desk::Session& session, const Fixture& fixture) {
    if (const auto other = switch_row(
            ui, "thing/other-side", "On the other side of the wall", fixture.other_side,
            "In the room behind, at the place as seen through the wall from here. Cables to it "
            "count here too where the wall is thin."))
        change<Fixture>(session, fixture, "Change the side of",
                        [other](Fixture& one) { one.other_side = *other; });
}

const char* under_title(const Furniture&) {
    return "stands before the wall";
}
const char* under_title(const Fixture& fixture) {
    return fixture.other_side ? "is part of the room behind" : "is part of the wall";
}

template <class Thing>
void rows(Ui& ui, desk::Session& session, const Thing& thing) {
    const ScopedId id(thing.id.text.c_str());
    const units::LengthUnit unit = session.project().unit;
    panel_title(ui, capital(wall::title_of(thing)), under_title(thing));
    kind_rows(ui, session, thing);
    place_rows(ui, session, thing, unit);
    size_rows(ui, session, thing, unit);
    side(ui, session, thing);
    colour(ui, session, thing);
    ImGui::Dummy({0, ui.px(4)});
    constexpr std::array kCommands{desk::CommandId::remove, desk::CommandId::select_nothing};
    command_buttons(ui, session, kCommands);
}

/// A copy, since a change replaces the project.
template <class Id>
void rows_of(Ui& ui, desk::Session& session, const Id& id) {
    if (const auto* found = wall::find(session.project(), id)) {
        const auto thing = *found;
        rows(ui, session, thing);
    }
}

}  // namespace

void thing_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    if (const auto furniture = session.selection.furniture())
        rows_of(ui, session, *furniture);
    else if (const auto fixture = session.selection.fixture())
        rows_of(ui, session, *fixture);
}

}  // namespace wallwright::app

#include "app/panels/change_project.h"
#include "app/panels/panels.h"
#include "app/panels/room_parts.h"
#include "app/widgets.h"
#include "edits/room.h"
#include "edits/usual_place.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using wall::Project;

void odd_outline(Ui& ui, desk::Session& session, wall::Size size) {
    const units::LengthUnit unit = session.project().unit;
    value_row(ui, "Wall, at most",
              fmt::format("{} × {}", units::format_number(size.width, unit),
                          units::format_length(size.height, unit)));
    if (button(ui, "room/rectangle", "Back to a rectangle",
               "Takes the corners out that make it another shape.", ButtonLook::plain, -1))
        session.apply("Make the wall a rectangle", edits::set_wall_size(session.kept(), size));
}

void outline_rows(Ui& ui, desk::Session& session) {
    const geometry::Polygon outline = session.project().room.outline;
    const wall::Size size = geometry::bounds(outline).size();
    if (!geometry::is_rectangle(outline)) {
        odd_outline(ui, session, size);
    } else if (const auto typed =
                   size_row(ui, "room/size", "Wall size", size, session.project().unit,
                            "Width and height, measured where both are largest.")) {
        session.apply("Resize the wall", edits::set_wall_size(session.kept(), *typed));
    }
    if (button(ui, "room/corner", "Add a corner",
               "In the middle of the longest side. Drag it down for a sloping ceiling.",
               ButtonLook::plain, -1))
        session.apply("Add a corner", edits::add_corner(session.kept()));
    hint(ui, "Drag the corners on the wall to give it another shape.");
}

void head_rows(Ui& ui, desk::Session& session) {
    if (const auto title = text_row(ui, "room/title", "Title", session.project().title))
        change_project(session, "Rename the wall",
                       [&title](Project& project) { project.title = *title; });
    if (const auto unit = unit_row(ui, "room/unit", session.project().unit))
        change_project(session, "Change the unit",
                       [unit](Project& project) { project.unit = *unit; });
}

/// "Sofa"; "Something else" for what has no kind.
template <class Type>
std::string words_for(Type type) {
    return type == Type::other ? "Something else" : capital(spoken(wall::name_of(type)));
}

void add(desk::Session& session, wall::FurnitureType type) {
    wall::Furniture furniture;
    furniture.type = type;
    furniture.place = edits::usual_place(session.kept(), type);
    wall::FurnitureId made;
    auto changed = edits::add_furniture(session.kept(), furniture, made);
    if (session.apply(fmt::format("Add {}", wall::title_of(furniture)), std::move(changed)))
        session.selection.set(made);
}

void add(desk::Session& session, wall::FixtureType type) {
    wall::Fixture fixture;
    fixture.type = type;
    fixture.place = edits::usual_place(session.kept(), type);
    wall::FixtureId made;
    auto changed = edits::add_fixture(session.kept(), fixture, made);
    if (session.apply(fmt::format("Add {}", wall::title_of(fixture)), std::move(changed)))
        session.selection.set(made);
}

template <class Type>
void add_buttons(Ui& ui, desk::Session& session, const char* where) {
    ButtonFlow flow;
    for (std::size_t i = 0; i < std::size(wall::Names<Type>::values); ++i) {
        const auto type = static_cast<Type>(i);
        const std::string words = words_for(type);
        flow.next(words);
        if (button(ui, fmt::format("room/{}/{}", where, wall::name_of(type)).c_str(), words.c_str(),
                   "Adds one of the usual size in the middle; drag it to its place and type what "
                   "you measured."))
            add(session, type);
    }
}

}  // namespace

void room_panel(Ui& ui, State& state) {
    desk::Session& session = state.session;
    panel_title(ui, "The room", "Measure the wall and what stands before it.");
    head_rows(ui, session);
    outline_rows(ui, session);
    heading(ui, "Put before the wall");
    add_buttons<wall::FurnitureType>(ui, session, "before");
    heading(ui, "In the wall");
    add_buttons<wall::FixtureType>(ui, session, "in");
    wall_part(ui, session);
}

}  // namespace wallwright::app

#include "app/panels/panels.h"
#include "app/widgets.h"
#include "edits/room.h"
#include "edits/usual_place.h"
#include "wall/titles.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using wall::Project;
using wall::Room;

void change(desk::Session& session, const char* label,
            const std::function<void(Project&)>& by_hand) {
    session.apply(label, edits::change_project(session.kept(), by_hand));
}

/// A choice among the names of an enumeration that is a part of the room.
template <class Enum>
void room_choice(Ui& ui, desk::Session& session, const char* name, const char* label,
                 Enum Room::*part, const char* step, const char* why) {
    const std::vector<std::string> names = spoken_names<Enum>();
    const int now = static_cast<int>(session.project().room.*part);
    if (const auto chosen = choice_row(ui, name, label, now, names, why))
        change(session, step,
               [part, chosen](Project& project) { project.room.*part = Enum(*chosen); });
}

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

void skirting_row(Ui& ui, desk::Session& session) {
    const Project& project = session.project();
    if (const auto height =
            length_row(ui, "room/skirting", "Skirting", project.room.skirting_height, project.unit,
                       "Height of the skirting board; 0 for none."))
        change(session, "Change the skirting",
               [height](Project& changed) { changed.room.skirting_height = *height; });
}

void colour(Ui& ui, desk::Session& session) {
    if (const auto picked =
            colour_row(ui, "room/colour", "Wall colour", session.project().room.colour))
        change(session, "Paint the wall",
               [picked](Project& project) { project.room.colour = *picked; });
}

void head_rows(Ui& ui, desk::Session& session) {
    if (const auto title = text_row(ui, "room/title", "Title", session.project().title))
        change(session, "Rename the wall", [&title](Project& project) { project.title = *title; });
    if (const auto unit = unit_row(ui, "room/unit", session.project().unit))
        change(session, "Change the unit", [unit](Project& project) { project.unit = *unit; });
}

void surface_rows(Ui& ui, desk::Session& session) {
    room_choice(ui, session, "room/surface", "Surface", &Room::surface, "Change the surface",
                "What strips and nails meet first: not every fixing holds on every surface.");
    room_choice(ui, session, "room/use", "Room", &Room::use, "Change the room's use",
                "Steam and grease harm pictures; that is said for a bathroom or a kitchen.");
    room_choice(ui, session, "room/cables", "Cable practice", &Room::cable_practice,
                "Change the cable practice",
                "Where cables should run behind this wall. With none known, only the lines "
                "straight above and below sockets and switches are kept clear.");
    hint(ui, "Hatched on the wall: where cables may run.");
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
    heading(ui, "The wall itself");
    surface_rows(ui, session);
    colour(ui, session);
    skirting_row(ui, session);
}

}  // namespace wallwright::app

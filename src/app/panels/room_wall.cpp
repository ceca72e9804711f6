#include "app/panels/change_project.h"
#include "app/panels/room_parts.h"
#include "app/widgets.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace wallwright::app {

namespace {

using wall::Project;
using wall::Room;
using wall::Studs;

/// A choice among the names of an enumeration that is a part of the room.
template <class Enum>
void room_choice(Ui& ui, desk::Session& session, const char* name, const char* label,
                 Enum Room::*part, const char* step, const char* why) {
    const std::vector<std::string> names = spoken_names<Enum>();
    const int now = static_cast<int>(session.project().room.*part);
    if (const auto chosen = choice_row(ui, name, label, now, names, why))
        change_project(session, step,
                       [part, chosen](Project& project) { project.room.*part = Enum(*chosen); });
}

void room_switch(Ui& ui, desk::Session& session, const char* name, const char* label,
                 bool Room::*part, const char* step, const char* why) {
    if (const auto on = switch_row(ui, name, label, session.project().room.*part, why))
        change_project(session, step, [part, on](Project& project) { project.room.*part = *on; });
}

void optional_length(Ui& ui, desk::Session& session, const char* name, const char* label,
                     std::optional<double> Room::*part, const char* step, const char* why) {
    const Project& project = session.project();
    if (const auto typed =
            optional_length_row(ui, name, label, project.room.*part, project.unit, why, "not said"))
        change_project(session, step,
                       [part, typed](Project& changed) { changed.room.*part = typed->mm; });
}

void day_of_hanging(Ui& ui, desk::Session& session) {
    if (const auto typed = date_row(ui, "room/hangs-on", "Goes up on", session.project().hangs_on,
                                    "The day on which the pieces are to go up.", "not said"))
        change_project(session, "Say when it goes up",
                       [&typed](Project& project) { project.hangs_on = typed->date; });
}

/// Fresh paint has to dry until the day on which strips go on it.
void paint_rows(Ui& ui, desk::Session& session) {
    if (session.project().room.surface != wall::Surface::fresh_paint)
        return;
    if (const auto typed =
            date_row(ui, "room/painted-on", "Painted on", session.project().room.painted_on,
                     "The day of the last coat, as in 2026-11-25. Strips hold on it once it has "
                     "dried for the days that their packet asks for.",
                     "not said"))
        change_project(session, "Say when it was painted",
                       [&typed](Project& project) { project.room.painted_on = typed->date; });
    day_of_hanging(ui, session);
}

void skirting_row(Ui& ui, desk::Session& session) {
    const Project& project = session.project();
    if (const auto height =
            length_row(ui, "room/skirting", "Skirting", project.room.skirting_height, project.unit,
                       "Height of the skirting board; 0 for none."))
        change_project(session, "Change the skirting",
                       [height](Project& changed) { changed.room.skirting_height = *height; });
}

void colour(Ui& ui, desk::Session& session) {
    if (const auto picked =
            colour_row(ui, "room/colour", "Wall colour", session.project().room.colour))
        change_project(session, "Paint the wall",
                       [picked](Project& project) { project.room.colour = *picked; });
}

void surface_part(Ui& ui, desk::Session& session) {
    heading(ui, "The wall itself");
    room_choice(ui, session, "room/surface", "Surface", &Room::surface, "Change the surface",
                "What strips and nails meet first: not every fixing holds on every surface.");
    paint_rows(ui, session);
    colour(ui, session);
    skirting_row(ui, session);
    room_choice(ui, session, "room/use", "Room", &Room::use, "Change the room's use",
                "Steam and grease harm pictures; that is said for a bathroom or a kitchen.");
    room_choice(ui, session, "room/cables", "Cable practice", &Room::cable_practice,
                "Change the cable practice",
                "Where cables should run behind this wall. With none known, only the lines "
                "straight above and below sockets and switches are kept clear.");
    hint(ui, "Hatched on the wall: where cables may run.");
}

void stud_length(Ui& ui, desk::Session& session, const char* name, const char* label,
                 double Studs::*part, const char* why) {
    const Project& project = session.project();
    const double now = (*project.room.studs).*part;
    const auto typed = part == &Studs::first ? length_row(ui, name, label, now, project.unit, why)
                                             : measure_row(ui, name, label, now, project.unit, why);
    if (typed)
        change_project(session, "Measure the studs",
                       [part, typed](Project& changed) { (*changed.room.studs).*part = *typed; });
}

/// What a house has where lengths are in that unit, until the person has found the first.
Studs usual_studs(units::LengthUnit unit) {
    constexpr double kSixteenInches = 16 * units::kMmPerInch;
    constexpr double kInchAndHalf = 1.5 * units::kMmPerInch;
    if (unit == units::LengthUnit::inch)
        return {kSixteenInches, kSixteenInches, kInchAndHalf};
    const Studs usual;
    return {usual.spacing, usual.spacing, usual.width};
}

void stud_rows(Ui& ui, desk::Session& session) {
    const Project& project = session.project();
    const bool there = project.room.studs.has_value();
    if (const auto on =
            switch_row(ui, "room/studs", "Studs are known", there,
                       "The timbers behind plasterboard or lath, as a stud finder or a magnet "
                       "shows them. A screw in one carries far more than one beside it."))
        return change_project(
            session, *on ? "Say where the studs are" : "Forget the studs", [on](Project& changed) {
                changed.room.studs = *on ? std::optional(usual_studs(changed.unit)) : std::nullopt;
            });
    if (!there)
        return;
    stud_length(ui, session, "room/stud-first", "   middle of the first", &Studs::first,
                "From the wall's left end to the middle of one of them; the others follow at even "
                "distances on both sides.");
    stud_length(ui, session, "room/stud-spacing", "   from one to the next", &Studs::spacing,
                "From middle to middle: 400 or 600 mm in Britain, 16 or 24 in in North America.");
    stud_length(ui, session, "room/stud-width", "   width of each", &Studs::width,
                "Of the wood that a screw may meet.");
}

std::string behind_words(const Project& project) {
    const Room& room = project.room;
    std::vector<std::string> words;
    if (room.core != wall::Core::unknown)
        words.push_back(spoken(wall::name_of(room.core)));
    if (room.studs)
        words.push_back(
            fmt::format("studs every {}", units::format_length(room.studs->spacing, project.unit)));
    if (room.thickness)
        words.push_back(
            fmt::format("{} through", units::format_length(*room.thickness, project.unit)));
    return fmt::format("{}", fmt::join(words, ", "));
}

void behind_rows(Ui& ui, desk::Session& session) {
    room_choice(ui, session, "room/core", "Made of", &Room::core, "Say what the wall is made of",
                "What a nail or a screw has to hold in, behind paint and paper. Knock: what is "
                "hollow is plasterboard or lath.");
    stud_rows(ui, session);
    optional_length(ui, session, "room/thickness", "Thickness", &Room::thickness,
                    "Measure the thickness",
                    "Through to the room behind, as seen in a doorway. Sockets on the other side "
                    "count where it is unknown or no more than 100 mm.");
}

std::string condition_words(const Project& project) {
    const Room& room = project.room;
    std::vector<std::string> words;
    if (room.no_holes)
        words.emplace_back("no holes");
    if (room.in_sun)
        words.emplace_back("in the sun");
    if (room.shakes)
        words.emplace_back("earthquakes");
    if (room.built)
        words.push_back(fmt::format("coatings of {}", *room.built));
    if (room.rail)
        words.push_back(
            fmt::format("picture rail at {}", units::format_length(*room.rail, project.unit)));
    if (project.hangs_on && room.surface != wall::Surface::fresh_paint)
        words.push_back(fmt::format("goes up on {}", wall::spoken(*project.hangs_on)));
    return fmt::format("{}", fmt::join(words, ", "));
}

void built_row(Ui& ui, desk::Session& session) {
    constexpr CountRange kYears{1000, 2999};
    if (const auto typed = optional_count_row(
            ui, "room/built", "Coatings from", session.project().room.built, kYears,
            "The year of the oldest paint or plaster: the house's own, unless it was stripped. "
            "Dust of old coatings can hold lead or asbestos.",
            "year not said"))
        change_project(session, "Say how old the coatings are",
                       [typed](Project& project) { project.room.built = typed->count; });
}

void condition_rows(Ui& ui, desk::Session& session) {
    room_switch(ui, session, "room/no-holes", "No holes allowed", &Room::no_holes,
                "Change whether holes are allowed",
                "A rented wall, or one that must not be pierced: then only strips and a picture "
                "rail are left.");
    optional_length(ui, session, "room/rail", "Picture rail at", &Room::rail,
                    "Measure the picture rail",
                    "Above the floor, where the rail's hooks sit. Pieces with rings, or with a "
                    "cord over one hook, can hang from it.");
    room_switch(ui, session, "room/sun", "In the sun", &Room::in_sun, "Change the sun on the wall",
                "The sun shines on it for some of the day, which fades prints.");
    room_switch(ui, session, "room/shakes", "Earthquakes", &Room::shakes,
                "Change whether the ground shakes",
                "In a region of earthquakes: closed hooks, fixings in studs, and putty under the "
                "lower corners.");
    built_row(ui, session);
    if (session.project().room.surface != wall::Surface::fresh_paint)
        day_of_hanging(ui, session);
}

using Rows = void (*)(Ui&, desk::Session&);

/// Open at first where something is said; folded, it says that in a line.
void folded(Ui& ui, desk::Session& session, const char* name, const char* words,
            const std::string& said, Rows rows) {
    if (section(ui, name, words, !said.empty()))
        rows(ui, session);
    else if (!said.empty())
        hint(ui, capital(said));
}

}  // namespace

void wall_part(Ui& ui, desk::Session& session) {
    surface_part(ui, session);
    folded(ui, session, "room/behind", "Behind the surface", behind_words(session.project()),
           behind_rows);
    folded(ui, session, "room/conditions", "Conditions", condition_words(session.project()),
           condition_rows);
}

}  // namespace wallwright::app

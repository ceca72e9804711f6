#include "app/actions.h"
#include "app/panels/bar_button.h"
#include "app/panels/file_menu.h"
#include "app/panels/panels.h"
#include "app/row.h"
#include "app/widgets.h"
#include "edits/room.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using Buttons = std::vector<BarButton>;
using units::LengthUnit;

constexpr float kEdge = 14;  ///< px at a scale of 1, as are these.
constexpr float kApart = 14;
constexpr float kTitleMost = 260;
constexpr float kTitleLeast = 70;

/// How much is said, by the room there is: `tight` leaves out whether it is saved and two of the
/// units, `least` the steps' names and the appearance, `bare` the title and all but undo and redo.
enum class Say { all, tight, least, bare };

constexpr const char* kUnitWords[] = {"millimetres", "centimetres", "inches"};

const char* saved_words(const desk::Session& session) {
    if (!session.is_saved())
        return session.file().empty() ? "not saved yet" : "changed";
    return session.file().empty() ? "nothing to save" : "saved";
}

Buttons step_buttons(const State& state, Say say) {
    Buttons buttons;
    for (int i = 0; i <= static_cast<int>(desk::Step::hang); ++i) {
        const auto id = static_cast<ActionId>(static_cast<int>(ActionId::step_room) + i);
        const Action& step = action(id);
        const bool chosen = static_cast<int>(state.step) == i;
        const bool named = say < Say::least || chosen;
        buttons.push_back(
            {fmt::format("bar/step-{}", step.key),
             named ? fmt::format("{} {}", step.key, step.name) : std::string(step.key),
             fmt::format("{}: {}", step.name, step.help), chosen, true, step.run});
    }
    return buttons;
}

BarButton history_button(const desk::Session& session, desk::CommandId id, const char* name,
                         const std::string& step) {
    const desk::Command& command = desk::command(id);
    const std::string hindrance = command.hindrance(session);
    const std::string what =
        step.empty() ? std::string(command.name) : fmt::format("{}: {}", command.name, step);
    return {name,
            std::string(command.name),
            hindrance.empty() ? fmt::format("{} ({})", what, command.key) : hindrance,
            false,
            hindrance.empty(),
            [id](State& state) { desk::command(id).run(state.session); }};
}

void measure_in(State& state, LengthUnit unit) {
    state.session.apply(
        fmt::format("Measure in {}", units::name_of(unit)),
        edits::change_project(state.session.kept(), [unit](wall::Project& p) { p.unit = unit; }));
}

void add_units(Buttons& buttons, LengthUnit now, Say say) {
    if (say == Say::all) {
        for (const LengthUnit unit : units::kLengthUnits)
            buttons.push_back(
                {fmt::format("bar/unit-{}", units::name_of(unit)),
                 std::string(units::name_of(unit)),
                 fmt::format("Show lengths in {}", kUnitWords[static_cast<int>(unit)]), unit == now,
                 true, [unit](State& state) { measure_in(state, unit); }});
        return;
    }
    const LengthUnit next =
        units::kLengthUnits[(static_cast<std::size_t>(now) + 1) % std::size(units::kLengthUnits)];
    buttons.push_back(
        {"bar/unit", std::string(units::name_of(now)),
         fmt::format("Lengths are in {}; press for {}", units::name_of(now), units::name_of(next)),
         false, true, [next](State& state) { measure_in(state, next); }});
}

void turn_look(State& state) {
    state.preferences.dark = !state.preferences.dark;
    keep_preferences(state);
}

Buttons tool_buttons(const State& state, Say say) {
    const desk::Session& session = state.session;
    Buttons buttons;
    buttons.push_back(
        history_button(session, desk::CommandId::undo, "bar/undo", session.history().undo_label()));
    buttons.push_back(
        history_button(session, desk::CommandId::redo, "bar/redo", session.history().redo_label()));
    if (say == Say::bare)
        return buttons;
    add_units(buttons, session.kept().unit, say);
    if (say < Say::least)
        buttons.push_back({"bar/look", state.preferences.dark ? "Light" : "Dark",
                           state.preferences.dark ? "Light colours" : "Dark colours", false, true,
                           turn_look});
    buttons.push_back({"bar/keys", "?", "Every key, and what the hand does on the wall", false,
                       true, action(ActionId::keys).run});
    return buttons;
}

/// px from the left; the title has what the others leave it.
struct Layout {
    Say say = Say::all;
    Buttons file, steps, tools;
    std::string saved;
    float title_width = 0;
    float saved_at = 0;
    float file_at = 0;
    float steps_at = 0;
    float tools_at = 0;
    float title_least = 0;
    float title_room = 0;  ///< What is left for it; negative when even the rest does not fit.
};

Layout lay_out(const Ui& ui, const State& state, float width, Say say) {
    Layout layout;
    layout.say = say;
    layout.file = {{"bar/file", "File", "", false, true, [](State&) { open_file_menu(); }}};
    layout.steps = step_buttons(state, say);
    layout.tools = tool_buttons(state, say);
    layout.saved = say == Say::all ? saved_words(state.session) : "";
    const float apart = ui.px(kApart);
    const float wanted = width_in(ui.fonts.bold, state.session.kept().title);
    const float saved = layout.saved.empty() ? 0 : width_in(ui.fonts.small, layout.saved) + apart;
    const float file = width_of(ui, layout.file);
    const float steps = width_of(ui, layout.steps);
    layout.tools_at = width - ui.px(kEdge) - width_of(ui, layout.tools);
    layout.title_least = say < Say::least ? std::min(wanted, ui.px(kTitleLeast)) : 0;
    const float before_title = ui.px(kEdge);
    layout.title_room =
        layout.tools_at - apart - steps - apart - file - apart - saved - before_title;
    layout.title_width =
        say == Say::bare
            ? 0
            : std::clamp(wanted, 0.F,
                         std::max(0.F, std::min(layout.title_room, ui.px(kTitleMost))));
    layout.saved_at = before_title + layout.title_width + (saved > 0 ? apart : 0);
    layout.file_at =
        before_title + layout.title_width + saved + (layout.title_width > 0 ? apart : 0);
    const float middle = (width - steps) / 2;
    layout.steps_at =
        std::max(std::min(middle, layout.tools_at - apart - steps), layout.file_at + file + apart);
    return layout;
}

Layout lay_out(const Ui& ui, const State& state, float width) {
    for (const Say say : {Say::all, Say::tight, Say::least}) {
        Layout layout = lay_out(ui, state, width, say);
        if (layout.title_room >= layout.title_least)
            return layout;
    }
    return lay_out(ui, state, width, Say::bare);
}

/// In the font that is set.
void show_words(Ui& ui, const char* name, const std::string& words, float x) {
    ImGui::SetCursorPos({x, (ui.px(kTopBarHeight) - ImGui::GetTextLineHeight()) / 2});
    ImGui::TextUnformatted(words.c_str());
    ui.probe.note(name);
}

void show_title(Ui& ui, const State& state, const Layout& layout) {
    const std::string& title = state.session.kept().title;
    if (layout.title_width > ui.px(12)) {
        const ScopedFont bold(ui.fonts.bold);
        show_words(ui, "bar/title", fitted(title, layout.title_width), ui.px(kEdge));
    }
    if (layout.title_width > ui.px(12))
        tip(ui, fmt::format("{}, {}", title, saved_words(state.session)));
    if (layout.saved.empty())
        return;
    const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
    const ScopedFont small(ui.fonts.small);
    show_words(ui, "bar/saved", layout.saved, layout.saved_at);
}

void show(Ui& ui, State& state) {
    const Layout layout = lay_out(ui, state, ImGui::GetWindowWidth());
    show_title(ui, state, layout);
    show_buttons(ui, state, layout.file, layout.file_at);
    file_menu(ui, state, layout.file_at);
    show_buttons(ui, state, layout.steps, layout.steps_at);
    show_buttons(ui, state, layout.tools, layout.tools_at);
    const ImVec2 at = ImGui::GetWindowPos();
    const ImVec2 size = ImGui::GetWindowSize();
    ImGui::GetWindowDrawList()->AddLine({at.x, at.y + size.y - 1},
                                        {at.x + size.x, at.y + size.y - 1}, ui.theme().line);
}

}  // namespace

void top_bar(Ui& ui, State& state) {
    ImGui::PushStyleColor(ImGuiCol_ChildBg, ui.theme().panel);
    if (ImGui::BeginChild("top bar", {0, ui.px(kTopBarHeight)}, false,
                          ImGuiWindowFlags_NoScrollbar | ImGuiWindowFlags_NoScrollWithMouse))
        show(ui, state);
    ImGui::EndChild();
    ImGui::PopStyleColor();
}

}  // namespace wallwright::app

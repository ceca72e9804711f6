#include "app/panels/panels.h"
#include "app/panels/search_button.h"
#include "app/widgets.h"
#include "desk/growth_target.h"
#include "edits/wishes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

constexpr const char* kByClick = "a point on the wall...";

/// First none, then each target, last the one that is to be pressed.
std::vector<std::string> words_for(const wall::Project& project,
                                   const std::vector<wall::Target>& targets) {
    std::vector<std::string> words{"nothing yet"};
    for (const wall::Target& target : targets)
        words.push_back(wall::title_of(project, target, project.unit));
    words.emplace_back(kByClick);
    return words;
}

int chosen_of(const wall::Project& project, const std::vector<wall::Target>& targets) {
    if (!project.target)
        return 0;
    const auto found = std::ranges::find(targets, *project.target);
    return static_cast<int>(found - targets.begin()) + 1;
}

void choose(State& state, const std::vector<wall::Target>& targets, std::size_t index) {
    state.growth.ask_for_no_point();
    if (index == 0)
        desk::GrowthChoice::set_target(state.session, std::nullopt);
    else if (index <= targets.size())
        desk::GrowthChoice::set_target(state.session, targets[index - 1]);
    else
        state.growth.ask_for_point();
}

void toward_row(Ui& ui, State& state) {
    const wall::Project& project = state.session.kept();
    const std::vector<wall::Target> targets = desk::possible_targets(project);
    const std::vector<std::string> words = words_for(project, targets);
    const bool by_click = state.growth.wants_point();
    const int chosen = by_click ? static_cast<int>(words.size()) - 1 : chosen_of(project, targets);
    if (const auto picked =
            choice_row(ui, "growth/toward", "Toward", chosen, words,
                       "Furniture, a corner or a point that the group is to grow to."))
        choose(state, targets, static_cast<std::size_t>(*picked));
    if (state.growth.wants_point()) {
        hint(ui, "Press on the wall where it is to grow. Escape gives it up.");
        ui.probe.note("growth/press");
    }
}

void per_stage_row(Ui& ui, State& state) {
    constexpr CountRange kRange{1, 20};
    auto& per_stage = state.growth.options.per_stage;
    if (const auto count =
            count_row(ui, "growth/per-stage", "Pieces a stage", static_cast<int>(per_stage),
                      "How many go up at a time; after each time the wall is to "
                      "look finished.",
                      kRange))
        per_stage = static_cast<std::size_t>(*count);
}

void grow_button(Ui& ui, State& state) {
    const SearchButton said{
        "growth/go",
        "Grow",
        "Stop",
        "Finds places for the waiting pieces, and the order to hang them in. What is on the wall "
        "stays.",
        "Takes the best that it has found so far.",
        state.growth.is_running() ? "" : desk::GrowthChoice::hindrance(state.session)};
    switch (search_button(ui, said, state.growth.is_running(), state.growth.done())) {
        case SearchPress::begin:
            state.layouts.close(state.session);  // They are for the wall without growth.
            state.growth.start(state.session);
            break;
        case SearchPress::end:
            state.growth.stop(state.session);
            break;
        case SearchPress::none:
            break;
    }
}

void stages_rows(Ui& ui, State& state) {
    const int last = desk::StageView::last(state.session);
    if (last == 0)
        return;
    hint(ui, fmt::format("{} {}. The slider under the wall shows each; Shift with Page Up "
                         "or Page Down steps through.",
                         last, last == 1 ? "stage" : "stages"));
    if (button(ui, "growth/forget", "Forget the stages",
               "The pieces stay where they are, without an order."))
        state.session.apply("Forget the stages", edits::clear_stages(state.session.kept()));
}

}  // namespace

void growth_panel(Ui& ui, State& state) {
    if (!section(ui, "growth", "Growth", true))
        return;
    toward_row(ui, state);
    per_stage_row(ui, state);
    grow_button(ui, state);
    stages_rows(ui, state);
}

}  // namespace wallwright::app

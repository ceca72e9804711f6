#include "app/panels/panels.h"
#include "app/row.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "desk/growth_target.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

using desk::StageFacts;

// px at a scale of 1.
constexpr float kHeight = 70;
constexpr float kEdge = 14;
constexpr float kPlayWidth = 64;
constexpr float kTrackAt = 17;  // from the strip's top, as are these
constexpr float kLabelsAt = 28;
constexpr float kFactsAt = 48;
constexpr float kNotch = 3.5F;
constexpr float kHandle = 7;
constexpr float kLeastApart = 10;  // of two labels

constexpr std::size_t kMostNamed = 3;  // of the pieces that a stage adds

/// Where the notches are on the screen.
struct Track {
    float left = 0;
    float right = 0;
    float y = 0;
    int last = 1;

    [[nodiscard]] float slot() const { return (right - left) / static_cast<float>(last); }
    [[nodiscard]] float x(int stage) const { return left + slot() * static_cast<float>(stage); }
    [[nodiscard]] int nearest(float at) const {
        return std::clamp(static_cast<int>(std::lround((at - left) / slot())), 0, last);
    }
};

float width_of(const std::string& words) {
    return ImGui::CalcTextSize(words.c_str()).x;
}

std::string label_of(int stage, bool is_short) {
    if (stage == 0)
        return "Today";
    return is_short ? std::to_string(stage) : fmt::format("Stage {}", stage);
}

std::string words_of(const wall::Project& project, const StageFacts& facts, int stage) {
    std::string words = stage == 0 ? std::string("Today") : fmt::format("Stage {}", stage);
    if (!facts.adds.empty())
        words += fmt::format(" adds {}", titles_of(project, facts.adds, kMostNamed));
    words += fmt::format("   ·   score {:.0f} of 100", facts.score);
    if (facts.finished)
        words += fmt::format("   ·   looks {:.0f} % finished", 100 * *facts.finished);
    if (!facts.to_target || !project.target)
        return words;
    const std::string target = wall::title_of(project, *project.target, project.unit);
    return *facts.to_target == 0
               ? fmt::format("{}   ·   has reached {}", words, target)
               : fmt::format("{}   ·   {} from {}", words,
                             units::format_length(std::round(*facts.to_target), project.unit),
                             target);
}

void draw_labels(const Ui& ui, const Track& track, float y, int chosen) {
    const bool is_short = track.slot() < width_of(label_of(track.last, false)) + ui.px(kLeastApart);
    const float widest =
        std::max(width_of(label_of(track.last, is_short)), is_short ? width_of("Today") : 0.0F);
    const int every =
        std::max(1, static_cast<int>(std::ceil((widest + ui.px(kLeastApart)) / track.slot())));
    ImDrawList& list = *ImGui::GetWindowDrawList();
    for (int stage = 0; stage <= track.last; stage += every) {
        const std::string words = label_of(stage, is_short);
        const float half = width_of(words) / 2;
        const float x = std::clamp(track.x(stage) - half, track.left - ui.px(kHandle),
                                   track.right + ui.px(kHandle) - 2 * half);
        list.AddText({x, y}, stage == chosen ? ui.theme().text : ui.theme().quiet_text,
                     words.c_str());
    }
}

void draw_track(const Ui& ui, const Track& track, int chosen, bool has_keys) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Theme& theme = ui.theme();
    const float thick = ui.px(2);
    list.AddLine({track.left, track.y}, {track.right, track.y}, theme.quiet_text, thick);
    list.AddLine({track.left, track.y}, {track.x(chosen), track.y}, theme.accent, ui.px(3));
    if (track.slot() > ui.px(2 * kNotch))
        for (int stage = 0; stage <= track.last; ++stage) {
            list.AddCircleFilled({track.x(stage), track.y}, ui.px(kNotch), theme.panel);
            list.AddCircle({track.x(stage), track.y}, ui.px(kNotch),
                           stage <= chosen ? theme.accent : theme.quiet_text, 0, ui.px(1.5F));
        }
    const ImVec2 handle{track.x(chosen), track.y};
    list.AddCircleFilled(handle, ui.px(kHandle), theme.accent);
    if (has_keys)
        list.AddCircle(handle, ui.px(kHandle + 3), theme.accent, 0, ui.px(1.5F));
}

void note_notches(Ui& ui, const Track& track) {
    const float half = std::min(ui.px(kHandle), track.slot() / 2);
    for (int stage = 0; stage <= track.last; ++stage)
        ui.probe.note_box(fmt::format("stage/{}", stage),
                          {track.x(stage) - half, track.y - ui.px(kHandle)},
                          {track.x(stage) + half, track.y + ui.px(kHandle)});
}

void play_button(Ui& ui, State& state) {
    const bool plays = state.stages.is_playing();
    // While it plays, a hint would lie over what it is about.
    if (!button(ui, "stage/play", plays ? "Pause" : "Play",
                plays ? "" : "Shows the wall from today on, one stage a second.", ButtonLook::plain,
                kPlayWidth))
        return;
    state.stages.has_keys = true;
    if (plays)
        state.stages.pause();
    else
        state.stages.play(state.session, ImGui::GetTime());
}

void slide(State& state, const Track& track) {
    if (!ImGui::IsItemActive())
        return;
    state.stages.has_keys = true;
    const int stage = track.nearest(ImGui::GetIO().MousePos.x);
    if (stage != state.stages.at(state.session) || state.stages.is_playing())
        state.stages.show(state.session, stage);
}

}  // namespace

float stage_strip_height(const Ui& ui, const State& state) {
    const bool shown =
        state.step == desk::Step::arrange && desk::StageView::last(state.session) > 0;
    return shown ? ui.px(kHeight) : 0;
}

void stage_strip(Ui& ui, State& state) {
    if (stage_strip_height(ui, state) == 0)
        return;
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const ScopedFont small(ui.fonts.small);
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled(at, {at.x + width, at.y + ui.px(kHeight)}, ui.theme().panel);
    list.AddLine(at, {at.x + width, at.y}, ui.theme().line);
    const float left = at.x + ui.px(2 * kEdge + kPlayWidth);
    const Track track{left + ui.px(kHandle + 3), at.x + width - ui.px(kEdge + kHandle + 3),
                      at.y + ui.px(kTrackAt), desk::StageView::last(state.session)};
    ImGui::SetCursorScreenPos({at.x + ui.px(kEdge), at.y + ui.px(10)});
    play_button(ui, state);
    ImGui::SetCursorScreenPos({left, at.y + ui.px(2)});
    ImGui::InvisibleButton("stages", {at.x + width - ui.px(kEdge) - left, ui.px(kFactsAt - 6)});
    ui.probe.note("stage/track");
    slide(state, track);
    const int chosen = state.stages.at(state.session);
    draw_track(ui, track, chosen, state.stages.has_keys);
    draw_labels(ui, track, at.y + ui.px(kLabelsAt), chosen);
    note_notches(ui, track);
    const auto& facts = state.stages.facts(state.session, state.growth.growth());
    const std::string words =
        words_of(state.session.kept(), facts.at(static_cast<std::size_t>(chosen)), chosen);
    ImGui::SetCursorScreenPos({at.x + ui.px(kEdge), at.y + ui.px(kFactsAt)});
    ImGui::TextUnformatted(fitted(words, width - ui.px(2 * kEdge)).c_str());
    ui.probe.note("stage/facts");
    tip(ui, words);
}

}  // namespace wallwright::app

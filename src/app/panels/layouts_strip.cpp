#include "app/layouts.h"
#include "app/panels/layout_thumb.h"
#include "app/panels/panels.h"
#include "app/panels/search_button.h"
#include "app/row.h"
#include "app/widgets.h"
#include "desk/layout_part.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

namespace wallwright::app {

namespace {

using desk::RankedLayout;

// px at a scale of 1.
constexpr float kHeight = 142;
constexpr float kFoldedAir = 8;  ///< Above and below its one line, together.
constexpr float kEdge = 10;
constexpr float kCell = 136;   ///< What says how the search goes.
constexpr float kLeast = 112;  ///< Width of one layout.
constexpr float kMost = 200;
constexpr float kApart = 8;
constexpr float kLabel = 22;
constexpr double kBetweenFrames = 0.1;  ///< s, while it searches.

struct Box {
    ImVec2 min;
    ImVec2 max;
};

std::string state_words(const desk::LayoutChoice& choice) {
    const std::size_t count = choice.layouts().size();
    if (choice.shown())
        return "Click or Enter takes it.";
    if (choice.is_searching())
        return fmt::format("Searching, {:.0f} %", 100 * choice.done());
    if (count == 0)
        return "There is no room for any piece.";
    return fmt::format("{} found", count == 1 ? "One" : std::to_string(count));
}

/// `width` as of button().
void put_away_button(Ui& ui, State& state, float width) {
    if (button(ui, "layouts/close", "Put away", "The wall stays as it is.", ButtonLook::plain,
               width))
        state.layouts.close(state.session);
}

/// How it goes, and what can be done about it.
void search_cell(Ui& ui, State& state) {
    desk::LayoutChoice& choice = state.layouts;
    {
        const ScopedFont bold(ui.fonts.bold);
        ImGui::TextUnformatted("Layouts");
    }
    hint(ui, state_words(choice));
    ui.probe.note("layouts/state");
    const SearchButton search{
        "layouts/search",
        "Search again",
        "Stop",
        "Other layouts may be among them.",
        "What was found so far stays.",
        choice.is_searching() ? "" : desk::LayoutChoice::hindrance(state.session)};
    const SearchPress press = search_button(ui, search, choice.is_searching(), choice.done());
    if (press == SearchPress::begin)
        try_layouts(state);
    else if (press == SearchPress::end)
        choice.stop();
    put_away_button(ui, state, -1);
}

/// All that there is while the layouts are of another wall: one line.
void stale_line(Ui& ui, State& state) {
    ImGui::AlignTextToFramePadding();
    {
        const ScopedFont bold(ui.fonts.bold);
        ImGui::TextUnformatted("Layouts");
    }
    ImGui::SameLine();
    {
        const ScopedColour quiet(ImGuiCol_Text, ui.theme().quiet_text);
        ImGui::TextUnformatted("The wall has changed since.");
    }
    ui.probe.note("layouts/state");
    ImGui::SameLine(0, ui.px(2 * kApart));
    const std::string hindrance = desk::LayoutChoice::hindrance(state.session);
    const std::string why = hindrance.empty() ? "To have the old ones again, undo what has changed."
                                              : fmt::format("Not now: {}.", hindrance);
    const bool again =
        button(ui, "layouts/search", "Search again", why, ButtonLook::plain, 0, hindrance.empty());
    ImGui::SameLine();
    put_away_button(ui, state, 0);
    if (again)
        try_layouts(state);
}

std::string title_words(const RankedLayout& layout) {
    std::string words(desk::title_of(layout.candidate.pattern));
    if (const std::size_t out = layout.candidate.left_out.size(); out > 0)
        words += fmt::format(", without {}", out);
    return words;
}

/// What its label does not say; empty for nothing.
std::string why_words(const desk::LayoutChoice& choice, const RankedLayout& layout) {
    std::vector<std::string> titles;
    for (const arrange::Item& item : choice.task().items)
        if (std::ranges::find(layout.candidate.left_out, item.id) !=
            layout.candidate.left_out.end())
            titles.push_back(item.title);
    return titles.empty() ? "" : fmt::format("No room for {}.", fmt::join(titles, ", "));
}

/// A tick on a disc: the wall is like this.
void draw_tick(const Ui& ui, ImVec2 middle) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const float r = ui.px(8);
    list.AddCircleFilled(middle, r, ui.theme().accent, 24);
    const ImVec2 points[] = {{middle.x - 0.45F * r, middle.y + 0.05F * r},
                             {middle.x - 0.1F * r, middle.y + 0.4F * r},
                             {middle.x + 0.5F * r, middle.y - 0.4F * r}};
    list.AddPolyline(points, 3, ui.theme().on_accent, 0, ui.px(2));
}

class Strip {
  public:
    Strip(Ui& ui, State& state) : ui_(ui), state_(state), choice_(state.layouts) {}

    void show() {
        const std::size_t count = choice_.layouts().size();
        if (count == 0)
            return;
        const float room =
            ImGui::GetContentRegionAvail().x - ui_.px(kApart) * static_cast<float>(count - 1);
        width_ =
            std::floor(std::clamp(room / static_cast<float>(count), ui_.px(kLeast), ui_.px(kMost)));
        part_ = desk::shown_part(choice_.task(), choice_.layouts());
        std::optional<std::size_t> pointed_at;
        std::optional<std::size_t> pressed;
        for (std::size_t rank = 0; rank < count; ++rank) {
            if (rank > 0)
                ImGui::SameLine(0, ui_.px(kApart));
            if (one(rank))
                pressed = rank;
            if (ImGui::IsItemHovered())
                pointed_at = rank;
        }
        follow(pointed_at);
        keep_in_sight();
        if (pressed)
            choice_.take(state_.session, *pressed);
    }

  private:
    /// True when it was pressed.
    bool one(std::size_t rank) {
        const RankedLayout& layout = choice_.layouts()[rank];
        const ScopedId id(static_cast<int>(layout.number));
        const bool pressed =
            ImGui::InvisibleButton("layout", {width_, ImGui::GetContentRegionAvail().y});
        const Box box{ImGui::GetItemRectMin(), ImGui::GetItemRectMax()};
        const bool is_shown = choice_.shown() == rank;
        ui_.probe.note(fmt::format("layouts/{}", rank + 1));
        tip(ui_, why_words(choice_, layout));
        picture(box, layout, is_shown);
        label(box, layout, is_shown);
        return pressed;
    }

    void picture(const Box& box, const RankedLayout& layout, bool is_shown) {
        ImDrawList& list = *ImGui::GetWindowDrawList();
        const Theme& theme = ui_.theme();
        const ImVec4 area{box.min.x, box.min.y, box.max.x, box.max.y - ui_.px(kLabel)};
        const auto to_screen = desk::small_view(
            part_, choice_.task().wall, {{area.x, area.y}, {area.z, area.w}}, choice_.task().gap);
        paint_thumb(ui_, list, {choice_.wall(), choice_.task(), layout.candidate.layout, to_screen},
                    area);
        const float line = is_shown ? ui_.px(3) : 1;
        list.AddRect({area.x + line / 2, area.y + line / 2}, {area.z - line / 2, area.w - line / 2},
                     is_shown ? theme.accent : theme.line, 0, 0, line);
        if (layout.on_wall)
            draw_tick(ui_, {area.z - ui_.px(12), area.y + ui_.px(12)});
    }

    void label(const Box& box, const RankedLayout& layout, bool is_shown) {
        const ScopedFont font(is_shown ? ui_.fonts.bold : ui_.fonts.small);
        const ImU32 ink = ui_.theme().text;
        const std::string score = fmt::format("{:.0f}", layout.total);
        const float score_width = ImGui::CalcTextSize(score.c_str()).x;
        const float y = box.max.y - ui_.px(kLabel) + (ui_.px(kLabel) - ImGui::GetFontSize()) / 2;
        const float left = box.min.x + ui_.px(2);
        const float right = box.max.x - ui_.px(2) - score_width;
        ImDrawList& list = *ImGui::GetWindowDrawList();
        list.AddText({left, y}, ink, fitted(title_words(layout), right - left - ui_.px(6)).c_str());
        list.AddText({right, y}, ink, score.c_str());
    }

    /// Shows what the pointer comes to, and the wall when it goes; while it rests keys may show
    /// another.
    void follow(std::optional<std::size_t> pointed_at) {
        if (pointed_at == state_.layout_pointed_at)
            return;
        state_.layout_pointed_at = pointed_at;
        if (pointed_at)
            choice_.show(state_.session, *pointed_at);
        else
            choice_.leave(state_.session);
    }

    /// Scrolls to what keys have come to, once.
    void keep_in_sight() {
        const int now = choice_.shown() ? static_cast<int>(*choice_.shown()) : -1;
        int& before = *ImGui::GetStateStorage()->GetIntRef(ImGui::GetID("shown"), -1);
        if (std::exchange(before, now) != now && now >= 0) {
            const float step = width_ + ui_.px(kApart);
            ImGui::SetScrollFromPosX(step * (static_cast<float>(now) + 0.5F) - ImGui::GetScrollX());
        }
    }

    Ui& ui_;
    State& state_;
    desk::LayoutChoice& choice_;
    geometry::Rect<geometry::Wall> part_;
    float width_ = 0;
};

}  // namespace

float layouts_height(const Ui& ui, const State& state) {
    if (state.step != desk::Step::arrange || !state.layouts.is_open())
        return 0;
    return state.layouts.is_stale() ? ImGui::GetFrameHeight() + ui.px(kFoldedAir) : ui.px(kHeight);
}

void layouts_strip(Ui& ui, State& state) {
    const ImVec2 at = ImGui::GetWindowPos();
    const ImVec2 size = ImGui::GetWindowSize();
    const float edge = ui.px(kEdge);
    const float cell = ui.px(kCell);
    ImGui::GetWindowDrawList()->AddLine(at, {at.x + size.x, at.y}, ui.theme().line);
    if (state.layouts.is_stale()) {
        state.layout_pointed_at.reset();
        ImGui::SetCursorPos({edge, ui.px(kFoldedAir) / 2});
        return stale_line(ui, state);
    }
    ImGui::SetCursorPos({edge, edge - ui.px(2)});
    ImGui::BeginChild("search", {cell, size.y - edge}, false, ImGuiWindowFlags_NoScrollbar);
    search_cell(ui, state);
    ImGui::EndChild();
    ImGui::SetCursorPos({edge + cell + edge, edge});
    ImGui::BeginChild("pictures", {std::max(1.0F, size.x - cell - 3 * edge), size.y - edge}, false,
                      ImGuiWindowFlags_HorizontalScrollbar | keys_for_fields());
    // It may have been put away in this frame.
    if (state.layouts.is_open())
        Strip(ui, state).show();
    ImGui::EndChild();
    if (state.layouts.is_searching())
        ui.memory.wake(kBetweenFrames);
}

}  // namespace wallwright::app

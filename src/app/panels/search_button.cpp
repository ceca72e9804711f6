#include "app/panels/search_button.h"

#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

void bar(Ui& ui, double done) {
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float height = ui.px(4);
    const float reach = width * static_cast<float>(std::clamp(done, 0.0, 1.0));
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled(low, {low.x + width, low.y + height}, ui.theme().line, height / 2);
    list.AddRectFilled(low, {low.x + reach, low.y + height}, ui.theme().accent, height / 2);
    ImGui::Dummy({width, height});
}

}  // namespace

SearchPress search_button(Ui& ui, const SearchButton& said, bool is_running, double done) {
    if (is_running) {
        const bool ended = button(ui, said.name, said.end, said.why_end, ButtonLook::plain, -1);
        bar(ui, done);
        return ended ? SearchPress::end : SearchPress::none;
    }
    const bool can = said.hindrance.empty();
    const std::string why =
        can ? said.why : fmt::format("{}\nNot now: {}.", said.why, said.hindrance);
    return button(ui, said.name, said.begin, why, ButtonLook::plain, -1, can) ? SearchPress::begin
                                                                              : SearchPress::none;
}

}  // namespace wallwright::app

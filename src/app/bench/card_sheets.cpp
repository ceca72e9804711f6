#include "app/bench/card_parts.h"
#include "app/bench/size_words.h"
#include "app/price_row.h"
#include "app/row.h"
#include "app/widgets.h"
#include "edits/card.h"
#include "mounts/card/sheets.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using wall::CardSheet;
using wall::CardSheetId;

/// The sheet as it was when the panel began: a change replaces the project under it.
struct OneSheet {
    CardSheet sheet;
    units::LengthUnit unit = units::LengthUnit::mm;
};

void change(State& state, const OneSheet& one, std::string_view verb,
            const std::function<void(CardSheet&)>& by_hand) {
    state.session.apply(fmt::format("{} {}", verb, title_of(one.sheet)),
                        edits::change_card(state.session.kept(), one.sheet.id, by_hand));
}

/// The colour as a chip, title, size, and how many.
void draw_line(const Ui& ui, const OneSheet& one, ImVec2 at, float width) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const Theme& theme = ui.theme();
    const wall::Colour c = one.sheet.colour;
    const float chip = ui.px(12);
    const float top = at.y + (ui.px(24) - ImGui::GetFontSize()) / 2;
    const ImVec2 low{at.x + ui.px(2), at.y + ui.px(6)};
    list.AddRectFilled(low, {low.x + chip, low.y + chip}, IM_COL32(c.red, c.green, c.blue, 255));
    list.AddRect(low, {low.x + chip, low.y + chip}, theme.quiet_text);
    const std::string count =
        one.sheet.to_buy
            ? (one.sheet.price > 0 ? price_text(one.sheet.price) + " each" : "no price yet")
            : fmt::format("{} at hand", one.sheet.count);
    const float count_width = ImGui::CalcTextSize(count.c_str()).x;
    const float left = low.x + chip + ui.px(8);
    const float right = at.x + width - count_width - ui.px(2);
    const std::string title = title_of(one.sheet);
    list.AddText({left, top}, theme.text, fitted(title, right - left - ui.px(6)).c_str());
    list.AddText({right, top}, theme.quiet_text, count.c_str());
}

void paper_rows(Ui& ui, State& state, const OneSheet& one) {
    if (const auto title = text_row(ui, "card/title", "Title", one.sheet.title))
        change(state, one, "Rename", [&title](CardSheet& sheet) { sheet.title = *title; });
    if (const auto size = size_row(ui, "card/size", "Sheet", one.sheet.size, one.unit,
                                   "Width and height of the whole sheet."))
        change(state, one, "Resize", [size](CardSheet& sheet) { sheet.size = *size; });
    if (const auto thick =
            measure_row(ui, "card/thickness", "Thickness", one.sheet.card.thickness, one.unit,
                        "A mount is cut from card of its own thickness and colour."))
        change(state, one, "Change the thickness of",
               [thick](CardSheet& sheet) { sheet.card.thickness = *thick; });
    if (const auto colour = colour_row(ui, "card/colour", "Colour", one.sheet.colour,
                                       "A mount is cut from card of its own thickness and colour."))
        change(state, one, "Paint", [colour](CardSheet& sheet) { sheet.colour = *colour; });
    const std::vector<std::string> grains{"none", "across", "upright"};
    if (const auto grain = choice_row(ui, "card/grain", "Grain or pattern",
                                      static_cast<int>(one.sheet.grain), grains,
                                      "Which way it runs on the sheet; in every mount it runs "
                                      "upright, so that no blank is turned."))
        change(state, one, "Change the grain of",
               [grain](CardSheet& sheet) { sheet.grain = wall::Grain(*grain); });
    if (const auto margin =
            length_row(ui, "card/margin", "Damaged edge", one.sheet.margin, one.unit,
                       "That much along every edge is cut off before anything "
                       "else; 0 where all edges are as they left the factory."))
        change(state, one, "Change the edges of",
               [margin](CardSheet& sheet) { sheet.margin = *margin; });
}

void stock_rows(Ui& ui, State& state, const OneSheet& one) {
    if (const auto buy = switch_row(ui, "card/to-buy", "To buy", one.sheet.to_buy,
                                    "Used only where what is at hand does not suffice."))
        change(state, one, *buy ? "Buy" : "Have at hand", [buy](CardSheet& sheet) {
            sheet.to_buy = *buy;
            sheet.offcut = sheet.offcut && !*buy;
        });
    if (one.sheet.to_buy) {
        if (const auto price =
                price_row(ui, "card/price", "Price of one",
                          one.sheet.price > 0 ? std::optional(one.sheet.price) : std::nullopt,
                          "In your own money.", "not known"))
            change(state, one, "Change the price of",
                   [price](CardSheet& sheet) { sheet.price = price->price.value_or(0); });
        return;
    }
    if (const auto count =
            count_row(ui, "card/count", "How many", one.sheet.count, "Sheets at hand."))
        change(state, one, "Count", [count](CardSheet& sheet) { sheet.count = *count; });
    if (const auto offcut = switch_row(ui, "card/offcut", "Offcut", one.sheet.offcut,
                                       "Left from a plan; goes when none is left of it."))
        change(state, one, *offcut ? "Call an offcut:" : "Call a whole sheet:",
               [offcut](CardSheet& sheet) { sheet.offcut = *offcut; });
}

void sheet_rows(Ui& ui, State& state, const OneSheet& one) {
    ImGui::Indent(ui.px(8));
    paper_rows(ui, state, one);
    stock_rows(ui, state, one);
    if (button(ui, "card/remove", "Remove this sheet", "With the blanks that are kept on it.",
               ButtonLook::plain, -1))
        state.session.apply(fmt::format("Remove {}", title_of(one.sheet)),
                            edits::remove_card(state.session.kept(), one.sheet.id));
    // Where another sheet is added the list moves by one line under the pointer, which must not
    // come to rest on the button above.
    ImGui::Dummy({0, ui.px(32)});
    ImGui::Unindent(ui.px(8));
}

void sheet_line(Ui& ui, State& state, const OneSheet& one, std::size_t number) {
    const ScopedId id(one.sheet.id.text.c_str());
    const bool open = state.card.open_sheet == one.sheet.id;
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    if (ImGui::Selectable("##sheet", open, 0, {0, ui.px(24)}))
        state.card.open_sheet = open ? std::nullopt : std::optional(one.sheet.id);
    ui.probe.note(fmt::format("card/sheet/{}", number));
    tip(ui, fmt::format("{}, {}. Press to change it.", title_of(one.sheet),
                        size_words(one.sheet.size, one.unit)));
    if (ImGui::IsItemVisible())
        draw_line(ui, one, at, width);
    if (open)
        sheet_rows(ui, state, one);
}

void sheet_list(Ui& ui, State& state, bool to_buy, const char* none) {
    const wall::Project project = state.session.kept();
    bool any = false;
    for (std::size_t i = 0; i < project.card.size(); ++i) {
        if (project.card[i].to_buy != to_buy)
            continue;
        any = true;
        sheet_line(ui, state, {project.card[i], project.unit}, i + 1);
    }
    if (!any)
        hint(ui, none);
}

/// Of the size that card is made in, in the colour of the first mount that is to be cut.
CardSheet usual_sheet(const State& state, bool to_buy) {
    const wall::Project& project = state.session.kept();
    CardSheet sheet;
    sheet.size = mounts::full_sheet(project.unit);
    const mounts::CardPlan* plan = state.card.choice.plan();
    if (plan != nullptr && !plan->lots.empty()) {
        sheet.card = plan->lots.front().card;
        sheet.colour = plan->lots.front().colour;
    }
    sheet.to_buy = to_buy;
    sheet.title = to_buy ? "Sheet to buy" : "Sheet at hand";
    return sheet;
}

void add_button(Ui& ui, State& state, const char* name, bool to_buy) {
    if (!button(ui, name, "Add a sheet",
                "Of the usual size, in the colour of the first card here; then change what is "
                "different.",
                ButtonLook::plain, -1))
        return;
    CardSheetId made;
    auto changed = edits::add_card(state.session.kept(), usual_sheet(state, to_buy), made);
    if (state.session.apply("Add a sheet of card", std::move(changed)))
        state.card.open_sheet = made;
}

}  // namespace

void card_stock_part(Ui& ui, State& state) {
    if (section(ui, "card/at-hand", "Card at hand", true)) {
        sheet_list(ui, state, false, "None yet.");
        add_button(ui, state, "card/add", false);
    }
    if (section(ui, "card/for-sale", "Card to buy", true)) {
        sheet_list(ui, state, true,
                   "None yet. With the price of a sheet it is said what it costs.");
        add_button(ui, state, "card/add-to-buy", true);
    }
}

}  // namespace wallwright::app

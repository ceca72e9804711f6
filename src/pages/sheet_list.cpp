#include "pages/sheet_list.h"

#include "buying/list_words.h"
#include "pages/table.h"

namespace wallwright::pages {

namespace {

using buying::Item;
using buying::List;
using buying::Tool;
using draw::Align;
using draw::Ink;

constexpr Type kBody{2.2, false};
constexpr double kRowSize = 2.4;  // mm: read in a shop, at arm's length

Row item_row(const Item& item) {
    return {{TickBox{}, Words{item.amount, true}, Words{item.title}, Words{item.why},
             Words{item.price ? buying::money(*item.price) : "", true}}};
}

/// With a heading over each kind, and over what can wait.
Table list_table(const List& list) {
    Table table;
    table.size = kRowSize;
    table.columns = {{"Got", 11, Align::centre},
                     {"How much", 30, Align::left},
                     {"What", 62, Align::left},
                     {"Of that", 0, Align::left},
                     {"Price", 20, Align::right}};
    const Item* last = nullptr;
    for (const Item& item : list.items) {
        if (last == nullptr || last->kind != item.kind || last->later != item.later)
            table.rows.push_back(
                {{},
                 false,
                 std::string(buying::heading_of(item.kind)) + (item.later ? ", for later" : "")});
        table.rows.push_back(item_row(item));
        last = &item;
    }
    return table;
}

Table tool_table(const std::vector<Tool>& tools) {
    Table table;
    table.size = kRowSize;
    table.columns = {
        {"There", 11, Align::centre}, {"Tool", 52, Align::left}, {"What for", 0, Align::left}};
    for (const Tool& tool : tools)
        table.rows.push_back({{TickBox{}, Words{tool.title, true}, Words{tool.why}}});
    return table;
}

void add_list(Flow& flow, const List& list) {
    if (list.items.empty()) {
        flow.add_text("Nothing is to be bought for this wall.", {2.5, false});
        return;
    }
    add_table(flow, list_table(list));
    flow.advance(3);
    flow.add_text(buying::total_words(list), {2.7, true});
    for (const std::string& remark : list.remarks)
        flow.add_text(remark, kBody);
    flow.add_text("Money is in whatever currency the prices were typed in.", kBody,
                  Ink::quiet_text);
    flow.advance(3);
}

void add_tools(Flow& flow, const std::vector<Tool>& tools) {
    if (tools.empty())
        return;
    constexpr double kFirstRows = 22;  // mm of head and first tools that stay with the heading
    flow.add_heading("Tools to have at hand", kFirstRows);
    add_table(flow, tool_table(tools));
}

}  // namespace

std::vector<draw::PageDrawing> list_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options) {
    Flow flow({options.paper, false, project.title, "What to buy and to have at hand", {}});
    add_list(flow,
             buying::shopping_list(project, assessment, options.card ? &*options.card : nullptr));
    add_tools(flow, buying::tool_list(project, assessment));
    return flow.take();
}

}  // namespace wallwright::pages

#include "buying/list_words.h"
#include "cli/command.h"
#include "cli/json_out.h"
#include "cli/load.h"
#include "cli/search.h"
#include "cli/text_table.h"
#include "pages/list_csv.h"
#include "pages/sheet_card.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::cli {

namespace {

using buying::Item;
using buying::List;
using buying::Tool;

struct BuyWords {
    Common common;
    bool csv = false;
};

std::string items_text(const List& list) {
    std::vector<std::vector<std::string>> rows;
    for (const Item& item : list.items)
        rows.push_back({std::string(buying::heading_of(item.kind)), item.amount, item.title,
                        item.price ? buying::money(*item.price) : "", item.later ? "later" : "now",
                        item.why});
    // A kind is named where it begins.
    for (std::size_t i = rows.size(); i-- > 1;)
        if (rows[i][0] == rows[i - 1][0] && rows[i][4] == rows[i - 1][4])
            rows[i][0].clear();
    return text_table(
        {{"for"}, {"how much"}, {"what"}, {"price", Side::right}, {"when"}, {"of that"}}, rows);
}

std::string list_text(const List& list) {
    if (list.items.empty())
        return "Nothing is to be bought for this wall.\n";
    std::string text = fmt::format("{}\n{}\n", items_text(list), buying::total_words(list));
    for (const std::string& remark : list.remarks)
        text += fmt::format("{}\n", remark);
    return text;
}

std::string tools_text(const std::vector<Tool>& tools) {
    if (tools.empty())
        return "";
    std::vector<std::vector<std::string>> rows;
    for (const Tool& tool : tools)
        rows.push_back({tool.title, tool.why});
    return fmt::format("\n{}", text_table({{"tools"}, {"what for"}}, rows));
}

Json json_of_item(const Item& item) {
    return {{"kind", wall::name_of(item.kind)},
            {"title", item.title},
            {"amount", item.amount},
            {"why", item.why},
            {"price", item.price ? number(*item.price) : Json()},
            {"later", item.later}};
}

Json json_of_list(const List& list, const std::vector<Tool>& tools) {
    Json items = Json::array();
    for (const Item& item : list.items)
        items.push_back(json_of_item(item));
    Json needed = Json::array();
    for (const Tool& tool : tools)
        needed.push_back({{"title", tool.title}, {"why", tool.why}});
    return {{"items", items},
            {"known_total", number(list.known_total)},
            {"without_price", list.without_price},
            {"remarks", list.remarks},
            {"tools", needed}};
}

Result<Answer> buy(const BuyWords& words) {
    const auto loaded = load(words.common);
    if (!loaded)
        return fail(loaded.error());
    const wall::Project project = as_shown(*loaded);
    const rules::Assessment assessment = assess(*loaded);
    Watch watch("Planning the card");
    const auto card = pages::card_plan_for_sheets(project, [&] { return watch.go_on(0, ""); });
    const std::string aside = loaded->aside + watch.end();
    const List list = buying::shopping_list(project, assessment, card ? &*card : nullptr);
    const Status status = status_of(assessment.findings);
    if (words.csv)
        return Answer{pages::list_csv(list), aside, status};
    const std::vector<Tool> tools = buying::tool_list(project, assessment);
    if (words.common.json)
        return Answer{text_of(json_of_list(list, tools)), aside, status};
    return Answer{list_text(list) + tools_text(tools), aside, status};
}

void define(CLI::App& command, BuyWords& words) {
    add_common(command, words.common);
    command.add_flag("--csv", words.csv, "Print the list as CSV, without the tools")
        ->excludes("--json");
}

}  // namespace

void add_buy(CLI::App& program, Chosen& chosen) {
    add_command<BuyWords>(
        program.add_subcommand("buy", "What to buy for the wall, and the tools to have at hand"),
        chosen, define, buy);
}

}  // namespace wallwright::cli

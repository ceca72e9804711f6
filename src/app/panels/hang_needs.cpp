#include "app/panels/change_project.h"
#include "app/panels/hang_sections.h"
#include "app/price_row.h"
#include "app/scoped.h"
#include "app/widgets.h"
#include "buying/list_words.h"
#include "edits/stock.h"
#include "hanging/needs.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace wallwright::app {

namespace {

using hanging::Need;
using Needs = std::vector<Need>;

/// How many are needed, where any are. How many are in the drawer is asked once a type, where it
/// comes first.
void need_row(Ui& ui, desk::Session& session, const Need& need, bool asks) {
    const ScopedId id(need.type.text.c_str());
    value_row(ui, need.title.c_str(), need.count > 0 ? fmt::format("{}", need.count) : "");
    if (!asks)
        return;
    const std::string name = fmt::format("hang/stock/{}", need.type.text);
    if (const auto count = count_row(ui, name.c_str(), "   in the drawer", need.in_drawer,
                                     "How many you have. Fixings at hand are used first."))
        session.apply("Count the fixings", edits::set_stock(session.kept(), need.type, *count));
}

/// Those that other needs before them have named are not asked for again.
void needs_rows(Ui& ui, desk::Session& session, const char* words, const Needs& needs,
                const Needs& before) {
    if (needs.empty())
        return;
    const ScopedId id(words);
    heading(ui, words);
    ui.probe.note(fmt::format("hang/needs/{}", words));
    for (const Need& need : needs)
        need_row(ui, session, need,
                 std::ranges::find(before, need.type, &Need::type) == before.end());
}

void item_rows(Ui& ui, const buying::Item& item, std::size_t index) {
    {
        const ScopedWrap wrap;
        ImGui::TextUnformatted(item.title.c_str());
    }
    ui.probe.note(fmt::format("hang/buy/{}", index));
    value_row(ui, item.amount.c_str(), item.price ? buying::money(*item.price) : "");
    if (!item.why.empty())
        hint(ui, capital(item.why));
}

void shopping_rows(Ui& ui, const desk::Session& session) {
    const buying::List list =
        buying::shopping_list(session.project(), session.assessment(), nullptr);
    if (list.items.empty())
        return hint(ui, "Nothing: all that it takes is in the drawer.");
    bool told_later = false;
    for (std::size_t i = 0; i < list.items.size(); ++i) {
        const ScopedId id(static_cast<int>(i));
        if (list.items[i].later && !std::exchange(told_later, true))
            heading(ui, "To buy later");
        item_rows(ui, list.items[i], i);
    }
    if (static_cast<std::size_t>(list.without_price) == list.items.size())
        hint(ui, "No price of these is known.");
    else
        heading(ui, buying::total_words(list).c_str());
    ui.probe.note("hang/buy/total");
}

/// Where a row was left as it was, the project keeps what it says.
struct Pack {
    std::optional<int> count;
    std::optional<double> price;
};

Pack said_of(const wall::Project& project, const wall::FixingTypeId& type) {
    const auto line = std::ranges::find(project.stock, type, &wall::Stock::fixing);
    return line == project.stock.end() ? Pack{} : Pack{line->pack, line->price};
}

void pack_rows(Ui& ui, desk::Session& session, const Need& need) {
    const ScopedId id(need.type.text.c_str());
    constexpr CountRange kPacks{1, 1000};
    value_row(ui, need.title.c_str(), "");
    Pack pack = said_of(session.project(), need.type);
    bool is_new = false;
    if (const auto typed = optional_count_row(
            ui, fmt::format("hang/pack/{}", need.type.text).c_str(), "   in a pack", pack.count,
            kPacks, "How many your shop sells together; empty for the usual.",
            fmt::format("({})", need.pack))) {
        pack.count = typed->count;
        is_new = true;
    }
    if (const auto typed =
            price_row(ui, fmt::format("hang/price/{}", need.type.text).c_str(),
                      "   price of a pack", pack.price, "In your own money, as in 12.50.",
                      need.price > 0 ? fmt::format("({})", price_text(need.price)) : "not said")) {
        pack.price = typed->price;
        is_new = true;
    }
    if (is_new)
        session.apply("Say how fixings are sold",
                      edits::set_pack(session.kept(), need.type, pack.count, pack.price));
}

void cord_row(Ui& ui, desk::Session& session) {
    if (const auto typed =
            price_row(ui, "hang/price/cord", "Cord, a metre", session.project().cord_price,
                      "In your own money, as in 12.50.", "not said"))
        change_project(session, "Say what cord costs",
                       [&typed](wall::Project& project) { project.cord_price = typed->price; });
}

void price_rows(Ui& ui, desk::Session& session, const Needs& needs) {
    hint(ui,
         "What your shop asks. Frames that are wished for have their price in their own panel, "
         "under Frame.");
    for (const Need& need : needs)
        pack_rows(ui, session, need);
    cord_row(ui, session);
}

/// What is in the drawer or has a price, and is not needed as the wall is now: it stays in sight,
/// so that the person can count it anew.
Needs others_in_stock(const desk::Session& session, const Needs& needed) {
    const wall::Project& project = session.project();
    const wall::Catalogue catalogue = session.catalogue();
    Needs others;
    for (const wall::Stock& line : project.stock) {
        const wall::FixingType* type = find(catalogue, line.fixing);
        const auto is_listed = [&line](const Needs& needs) {
            return std::ranges::find(needs, line.fixing, &Need::type) != needs.end();
        };
        if (type == nullptr || is_listed(needed) || is_listed(others))
            continue;
        Need& other = others.emplace_back();
        other.type = line.fixing;
        other.title = type->title;
        other.in_drawer = line.count;
        other.pack = line.pack.value_or(type->pack);
        other.price = line.price.value_or(type->price);
    }
    return others;
}

/// One of each type, those of today first.
Needs each_once(Needs needs, const Needs& later) {
    for (const Need& need : later)
        if (std::ranges::find(needs, need.type, &Need::type) == needs.end())
            needs.push_back(need);
    return needs;
}

}  // namespace

void needs_part(Ui& ui, desk::Session& session) {
    const auto of = [&session](hanging::Bought bought) {
        return hanging::needs(session.project(), session.assessment().hangings, bought);
    };
    const Needs now = of(hanging::Bought::yes);
    const Needs later = of(hanging::Bought::not_yet);
    needs_rows(ui, session, "To have at hand", now, {});
    needs_rows(ui, session, "Later, or not bought yet", later, now);
    const Needs needed = each_once(now, later);
    const Needs others = others_in_stock(session, needed);
    needs_rows(ui, session, "In the drawer, and not needed", others, needed);
    if (needed.empty())
        return;
    if (section(ui, "hang/buy", "To buy", true))
        shopping_rows(ui, session);
    if (section(ui, "hang/prices", "Packs and prices", false))
        price_rows(ui, session, each_once(needed, others));
}

}  // namespace wallwright::app

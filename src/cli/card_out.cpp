#include "cli/card_out.h"

#include "cli/text_table.h"
#include "mounts/card/plan_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace wallwright::cli {

namespace {

using mounts::CardLot;
using mounts::CutSheet;
using mounts::NestPlan;
using mounts::OnSheet;
using mounts::PlacedBlank;
using mounts::SheetCut;
using mounts::SizeStyle;
using units::LengthUnit;

std::string size_text(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

SizeStyle style_in(LengthUnit unit) {
    return {unit, "x"};
}

std::string count_text(std::size_t count, const char* one, const char* several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

/// "drop-out of Kelp, 237 x 337 mm": a title that ends on its size says it once.
std::string titled(const std::string& title, const std::string& size) {
    if (title.empty() || title.ends_with(size))
        return title.empty() ? size : title;
    return fmt::format("{}, {}", title, size);
}

/// "Sheet 2, at hand: Cream, 1120 x 815 mm", or what drops out of which window.
std::string head_text(const CardLot& lot, std::size_t index, LengthUnit unit) {
    const std::size_t kind = lot.plan.sheets[index].sheet;
    const mounts::SheetOrigin& origin = lot.origins[kind];
    const std::string title =
        fmt::format("{}{}", titled(origin.title, size_text(lot.task.sheets[kind].size, unit)),
                    mounts::sheet_remark(lot, kind));
    const std::string trimming = mounts::trim_words(lot, kind, style_in(unit));
    const std::string first = trimming.empty() ? "" : fmt::format("\n{}", trimming);
    if (origin.drop_out)
        return fmt::format("The {}{}", title, first);
    const std::string from = mounts::where_from(lot, kind);
    return fmt::format("Sheet {}{}{}: {}{}", index + 1, from.empty() ? "" : ", ", from, title,
                       first);
}

std::string placed_text(const CardLot& lot, const CutSheet& sheet, LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const PlacedBlank& one : sheet.placed) {
        const std::string kept = lot.kept[one.blank] ? "kept here" : "";
        rows.push_back({mounts::blank_name(lot.owners[one.blank]),
                        units::format_number(one.place.left, unit),
                        units::format_number(one.place.top, unit),
                        units::format_number(one.place.size.width, unit),
                        units::format_number(one.place.size.height, unit),
                        one.turned && !kept.empty() ? "turned, " + kept
                        : one.turned                ? "turned"
                                                    : kept});
    }
    const std::string in(units::name_of(unit));
    return text_table({{"blank"},
                       {"from left " + in, Side::right},
                       {"from top " + in, Side::right},
                       {"width " + in, Side::right},
                       {"height " + in, Side::right},
                       {""}},
                      rows);
}

/// Under the numbers of the cuts.
std::string cuts_text(const CardLot& lot, const CutSheet& sheet, const SizeStyle& style) {
    const std::vector<std::string> sentences = mounts::cut_sentences(lot, sheet, style);
    std::string text;
    for (std::size_t i = 0; i < sentences.size(); ++i)
        text += fmt::format("{:>3}. {}\n", sheet.cuts[i].number, sentences[i]);
    return text;
}

/// "Mount board, 1.4 mm, #faf7f0", as it begins a line.
std::string card_head(const CardLot& lot, LengthUnit unit) {
    std::string name = mounts::card_name(lot, unit);
    name.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(name.front())));
    return name;
}

/// One line for each card of which something is left.
std::string after_text(const mounts::CardPlan& plan) {
    const mounts::AfterCutting after = mounts::after_cutting(plan);
    std::string text;
    for (const CardLot& lot : plan.lots) {
        std::string left;
        for (const wall::CardSheet& one : after.left)
            if (one.card.material == lot.card.material && one.colour == lot.colour &&
                one.card.thickness == lot.card.thickness)
                left += fmt::format("{}{}{}", left.empty() ? "" : "; ", one.title,
                                    one.count == 1 ? "" : fmt::format(" ({} of them)", one.count));
        if (!left.empty())
            text += fmt::format("- {}: {}\n", card_head(lot, plan.unit), left);
    }
    return text.empty() ? "" : "\nWorth keeping after cutting:\n" + text;
}

Json json_of_place(const OnSheet& place) {
    return {{"left_mm", number(place.left)},
            {"top_mm", number(place.top)},
            {"width_mm", number(place.size.width)},
            {"height_mm", number(place.size.height)}};
}

Json json_of_sheet(const mounts::NestTask& task, const CutSheet& sheet) {
    Json placed = Json::array();
    for (const PlacedBlank& one : sheet.placed) {
        Json json = {{"id", task.blanks[one.blank].id}};
        json.update(json_of_place(one.place));
        json["turned"] = one.turned;
        placed.push_back(std::move(json));
    }
    Json cuts = Json::array();
    for (const SheetCut& cut : sheet.cuts)
        cuts.push_back({{"number", cut.number},
                        {"piece", json_of_place(cut.piece)},
                        {"upright", cut.upright},
                        {"at_mm", number(cut.at)}});
    Json offcuts = Json::array();
    for (const OnSheet& one : sheet.offcuts)
        offcuts.push_back(json_of_place(one));
    const geometry::Size size = task.sheets[sheet.sheet].size;
    return {{"width_mm", number(size.width)},
            {"height_mm", number(size.height)},
            {"placed", placed},
            {"cuts", cuts},
            {"offcuts", offcuts}};
}

/// With where the sheet comes from, and which of its blanks are kept.
Json json_of_lot(const CardLot& lot) {
    Json json = {{"material", lot.card.material.text},
                 {"thickness_mm", number(lot.card.thickness)},
                 {"colour", wall::to_text(lot.colour)}};
    json.update(json_of_plan(lot.task, lot.plan));
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i) {
        const CutSheet& sheet = lot.plan.sheets[i];
        const mounts::SheetOrigin& origin = lot.origins[sheet.sheet];
        Json& told = json["sheets"][i];
        told["kind"] = origin.id ? Json(origin.id->text) : Json();
        told["title"] = origin.title;
        told["drop_out"] = origin.drop_out;
        told["to_buy"] = lot.task.sheets[sheet.sheet].to_buy;
        told["laid_turned"] = origin.turned;
        for (std::size_t j = 0; j < sheet.placed.size(); ++j)
            told["placed"][j]["kept"] = static_cast<bool>(lot.kept[sheet.placed[j].blank]);
    }
    return json;
}

Json json_of_after(const mounts::AfterCutting& after) {
    Json used = Json::array();
    for (const mounts::AfterCutting::Used& one : after.used)
        used.push_back({{"sheet", one.sheet.text}, {"count", one.count}});
    Json left = Json::array();
    for (const wall::CardSheet& one : after.left)
        left.push_back({{"title", one.title},
                        {"width_mm", number(one.size.width)},
                        {"height_mm", number(one.size.height)},
                        {"material", one.card.material.text},
                        {"thickness_mm", number(one.card.thickness)},
                        {"colour", wall::to_text(one.colour)},
                        {"grain", wall::name_of(one.grain)},
                        {"count", one.count}});
    return {{"used", used}, {"left", left}};
}

}  // namespace

CardLot lot_of(mounts::NestTask task, NestPlan plan) {
    CardLot lot;
    for (const mounts::NestBlank& blank : task.blanks)
        lot.owners.push_back({{}, blank.id});
    lot.kept.assign(task.blanks.size(), false);
    lot.origins.resize(task.sheets.size());
    lot.task = std::move(task);
    lot.plan = std::move(plan);
    return lot;
}

std::string lot_text(const CardLot& lot, LengthUnit unit) {
    const SizeStyle style = style_in(unit);
    std::string text = fmt::format("{}\n", mounts::lot_words(lot));
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i) {
        const CutSheet& sheet = lot.plan.sheets[i];
        text += fmt::format("\n{}\n\n{}\n{}{}\n", head_text(lot, i, unit),
                            placed_text(lot, sheet, unit), cuts_text(lot, sheet, style),
                            mounts::left_words(sheet, style));
    }
    return text;
}

std::string plan_text(const mounts::CardPlan& plan) {
    std::string text;
    if (!plan.lots.empty())
        for (const std::string& step : mounts::steps_before(plan.unit))
            text += fmt::format("{}- {}\n", text.empty() ? "Before the first cut:\n" : "", step);
    for (const CardLot& lot : plan.lots)
        text += fmt::format(
            "{}{}: {}. {}", &lot == plan.lots.data() ? "\n" : "\n\n", card_head(lot, plan.unit),
            count_text(lot.task.blanks.size(), "blank", "blanks"), lot_text(lot, plan.unit));
    if (!plan.lots.empty()) {
        text += "\n";
        for (const std::string& sentence : mounts::cost_sentences(plan.cost))
            text += sentence + "\n";
        text += after_text(plan);
    }
    for (const std::string& note : plan.notes)
        text += fmt::format("{}- {}\n", &note == plan.notes.data() ? "\nMind:\n" : "", note);
    return text;
}

Json json_of_plan(const mounts::NestTask& task, const NestPlan& plan) {
    Json sheets = Json::array();
    for (const CutSheet& sheet : plan.sheets)
        sheets.push_back(json_of_sheet(task, sheet));
    Json left_out = Json::array();
    for (const std::size_t blank : plan.left_out)
        left_out.push_back(task.blanks[blank].id);
    return {{"sheets", sheets},
            {"waste", number(plan.waste)},
            {"bound", plan.bound},
            {"proved", plan.proved},
            {"left_out", left_out}};
}

Json json_of(const mounts::CardPlan& plan) {
    Json lots = Json::array();
    for (const CardLot& lot : plan.lots)
        lots.push_back(json_of_lot(lot));
    const mounts::CardCost& cost = plan.cost;
    Json priced = {{"sheets_to_buy", cost.bought},
                   {"price", number(cost.to_buy)},
                   {"without_price", cost.without_price},
                   {"mounts", cost.mounts}};
    priced["cut_for_you"] = cost.cut_for_you ? number(*cost.cut_for_you) : Json();
    return {{"lots", lots},
            {"cost", priced},
            {"after", json_of_after(mounts::after_cutting(plan))},
            {"notes", plan.notes}};
}

}  // namespace wallwright::cli

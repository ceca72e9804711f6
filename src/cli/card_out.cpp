#include "cli/card_out.h"

#include "cli/text_table.h"
#include "pages/card_words.h"
#include "wall/titles.h"

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
using units::LengthUnit;

std::string size_text(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} x {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

std::string count_text(std::size_t count, const char* one, const char* several) {
    return fmt::format("{} {}", count, count == 1 ? one : several);
}

bool keeps_any(const CardLot& lot) {
    return std::find(lot.kept.begin(), lot.kept.end(), true) != lot.kept.end();
}

std::string bound_text(const CardLot& lot) {
    const NestPlan& plan = lot.plan;
    if (plan.proved)
        return fmt::format("No plan from these sheets {}has fewer: that is proved.",
                           keeps_any(lot) ? "that leaves the kept blanks where they are " : "");
    if (plan.bound >= plan.count)
        return "";
    return fmt::format("At least {} {} needed; whether {} would do is not proved.", plan.bound,
                       plan.bound == 1 ? "is" : "are", plan.count - 1);
}

std::string sum_text(const CardLot& lot) {
    const NestPlan& plan = lot.plan;
    if (plan.count == 0)
        return "Nothing of it can be cut.\n";
    std::string text =
        fmt::format("{}; {:.1f} % of {} no blank.", count_text(plan.count, "sheet", "sheets"),
                    100 * plan.waste, plan.count == 1 ? "it becomes" : "them become");
    if (const std::string bound = bound_text(lot); !bound.empty())
        text += " " + bound;
    return text + "\n";
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
    const mounts::NestSheet& sheet = lot.task.sheets[kind];
    const mounts::SheetOrigin& origin = lot.origins[kind];
    const std::string title = titled(origin.title, size_text(sheet.size, unit));
    if (origin.drop_out)
        return fmt::format("The {}, once that window is cut{}", title,
                           origin.window && lot.windows[*origin.window].bevelled
                               ? " and its bevelled edges are trimmed square to this size"
                               : "");
    std::string grain = sheet.has_grain ? ", its grain upright" : "";
    if (origin.turned)
        grain = ", laid a quarter turn so that its grain runs upright";
    std::string from = sheet.to_buy ? ", to buy" : "";
    if (origin.id && !sheet.to_buy)
        from = ", at hand";
    return fmt::format("Sheet {}{}: {}{}", index + 1, from, title, grain);
}

std::string placed_text(const CardLot& lot, const CutSheet& sheet, LengthUnit unit) {
    std::vector<std::vector<std::string>> rows;
    for (const PlacedBlank& one : sheet.placed) {
        const std::string kept = lot.kept[one.blank] ? "kept here" : "";
        rows.push_back({pages::blank_name(lot.owners[one.blank]),
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

/// The blank that lies just there; null where none does.
const PlacedBlank* blank_at(const CutSheet& sheet, const OnSheet& part) {
    const auto found =
        std::find_if(sheet.placed.begin(), sheet.placed.end(), [&part](const PlacedBlank& one) {
            return geometry::is_same_length(one.place.left, part.left) &&
                   geometry::is_same_length(one.place.top, part.top) &&
                   geometry::is_same_size(one.place.size, part.size);
        });
    return found == sheet.placed.end() ? nullptr : &*found;
}

/// ": Kelp" for what a cut brings out, "" where it brings out none.
std::string brought_out(const CardLot& lot, const CutSheet& sheet, const SheetCut& cut) {
    OnSheet first = cut.piece;
    OnSheet rest = cut.piece;
    const double start = cut.upright ? cut.piece.left : cut.piece.top;
    (cut.upright ? first.size.width : first.size.height) = cut.at - start;
    (cut.upright ? rest.left : rest.top) = cut.at;
    (cut.upright ? rest.size.width : rest.size.height) -= cut.at - start;
    std::vector<std::string> names;
    for (const OnSheet& part : {first, rest})
        if (const PlacedBlank* blank = blank_at(sheet, part))
            names.push_back(pages::blank_name(lot.owners[blank->blank]));
    return names.empty() ? "" : fmt::format("; that is {}", wall::listed(names));
}

std::string cuts_text(const CardLot& lot, const CutSheet& sheet, LengthUnit unit) {
    std::string text;
    for (const SheetCut& cut : sheet.cuts) {
        const double start = cut.upright ? cut.piece.left : cut.piece.top;
        text +=
            fmt::format("{:>3}. {} through the piece of {}, {} from its {} edge{}\n", cut.number,
                        cut.upright ? "Upright" : "Across", size_text(cut.piece.size, unit),
                        units::format_length(cut.at - start, unit), cut.upright ? "left" : "top",
                        brought_out(lot, sheet, cut));
    }
    return text;
}

std::string offcuts_text(const CutSheet& sheet, LengthUnit unit) {
    std::string text;
    for (const OnSheet& one : sheet.offcuts)
        text += fmt::format("{}{}", text.empty() ? "Left: " : ", ", size_text(one.size, unit));
    return text.empty() ? "Nothing is left.\n" : text + ".\n";
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
    std::string text = sum_text(lot);
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i) {
        const CutSheet& sheet = lot.plan.sheets[i];
        text +=
            fmt::format("\n{}\n\n{}\n{}{}", head_text(lot, i, unit), placed_text(lot, sheet, unit),
                        cuts_text(lot, sheet, unit), offcuts_text(sheet, unit));
    }
    return text;
}

std::string plan_text(const mounts::CardPlan& plan) {
    std::string text;
    for (const CardLot& lot : plan.lots)
        text += fmt::format("{}{}: {}. {}", text.empty() ? "" : "\n\n", card_head(lot, plan.unit),
                            count_text(lot.task.blanks.size(), "blank", "blanks"),
                            lot_text(lot, plan.unit));
    if (!plan.lots.empty()) {
        text += "\n";
        for (const std::string& sentence : pages::cost_sentences(plan.cost))
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

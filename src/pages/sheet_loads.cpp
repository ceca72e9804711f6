#include "pages/sheet_loads.h"

#include "draw/letters.h"
#include "hanging/needs.h"
#include "hanging/verdict.h"
#include "pages/force_cards.h"
#include "pages/piece_list.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using hanging::Fixing;
using hanging::Hanging;

std::string weight_words(const hanging::PieceMass& mass, units::LengthUnit unit) {
    const std::string high = units::format_mass(mass.high, unit);
    if (mass.weighed)
        return units::format_mass(0.5 * (mass.low + mass.high), unit) + ", weighed";
    const std::string low = units::format_mass(mass.low, unit);
    return low == high ? high : low + " to " + high;
}

std::string cord_words(const Hanging& hanging, units::LengthUnit unit) {
    const hanging::Cord& cord = *hanging.cord;
    std::string words = fmt::format("Cord rises {} to the hook at {:.0f}°, pulled with {}.",
                                    units::format_length(cord.drop, unit), cord.angle_deg,
                                    units::format_force(cord.tension, unit));
    if (hanging.cord_breaking_needed)
        words += " It should break at no less than " +
                 units::format_mass(*hanging.cord_breaking_needed, unit) + ".";
    return words;
}

std::string pull_words(const Hanging& hanging, units::LengthUnit unit) {
    if (hanging.cord)
        return cord_words(hanging, unit);
    if (hanging.top_pull)
        return fmt::format("{} off the wall with {}.",
                           hanging.fixings.front().kind == wall::FixingKind::strip_pair
                               ? "Top pairs pulled"
                               : "Pulled",
                           units::format_force(*hanging.top_pull, unit));
    return "";
}

ShareBar share_of(const Hanging& hanging) {
    return {hanging.use, hanging::limit_of(hanging),
            hanging::share_words(hanging, "over the limit of"),
            hanging::verdict_on(hanging) == hanging::Verdict::within};
}

Row row_of(const wall::Project& project, const Hanging& hanging) {
    const wall::Piece* piece = wall::find(project, hanging.piece);
    const std::string name = wall::title_to_hang(project, hanging.piece);
    const bool hung = piece != nullptr && piece->state == wall::PieceState::hung;
    Row row;
    row.cells.emplace_back(Words{
        draw::letter_of(project, hanging.piece) + "  " + name + (hung ? " (hangs)" : ""), true});
    row.cells.emplace_back(Words{weight_words(hanging.mass, project.unit)});
    if (hanging.fixings.empty()) {
        row.cells.emplace_back(Words{"none: see the findings", true, Ink::stop});
        return row;
    }
    const auto heaviest = std::max_element(
        hanging.fixings.begin(), hanging.fixings.end(),
        [](const Fixing& a, const Fixing& b) { return a.load / a.rated < b.load / b.rated; });
    row.cells.emplace_back(
        Words{fmt::format("{} × {}", hanging.fixings.size(), hanging.fixing_title)});
    row.cells.emplace_back(Words{units::format_mass(heaviest->rated, project.unit)});
    row.cells.emplace_back(Words{units::format_mass(heaviest->load, project.unit)});
    row.cells.emplace_back(share_of(hanging));
    row.cells.emplace_back(Words{pull_words(hanging, project.unit)});
    return row;
}

Table load_table(const wall::Project& project, const std::vector<Hanging>& hangings) {
    Table table;
    table.size = 2;
    table.columns = {{"Piece", 0, Align::left},         {"Weight", 27, Align::left},
                     {"Fixing", 30, Align::left},       {"Rated, each", 15, Align::right},
                     {"Load, each", 15, Align::right},  {"Share of rating in use", 32, Align::left},
                     {"Pull and cord", 36, Align::left}};
    for (const Hanging& hanging : hangings)
        table.rows.push_back(row_of(project, hanging));
    return table;
}

void add_needs(Flow& flow, const std::string& heading, const std::vector<hanging::Need>& needs) {
    if (needs.empty())
        return;
    constexpr Type kBody{2.2, false};
    flow.add_heading(heading, 2 * line_height(kBody.size));
    for (const hanging::Need& need : needs)
        flow.add_text(
            fmt::format(
                "{} × {}, {} {}{}", need.count, need.title, need.at_hand,
                need.after_others ? "left by then" : "in the drawer",
                need.packs == 0 ? ""
                : need.pack > 1
                    ? fmt::format("; {} of {} to buy",
                                  need.packs == 1 ? "1 pack" : fmt::format("{} packs", need.packs),
                                  need.pack)
                    : fmt::format("; {} to buy", need.packs)),
            kBody);
}

void add_pieces(Flow& flow, const wall::Project& project) {
    flow.add_heading(fmt::format("All pieces ({})", units::name_of(project.unit)), 20);
    Table list = piece_list(project, PieceListWidth::edges);
    list.size = 2;
    add_table(flow, list);
}

}  // namespace

std::vector<draw::PageDrawing> load_sheets(const wall::Project& project,
                                           const rules::Assessment& assessment,
                                           const SheetOptions& options) {
    constexpr Type kBody{2.2, false};
    Flow flow({options.paper,
               false,
               project.title,
               "Load check",
               {{"pieces on the wall", std::to_string(assessment.hangings.size())}}});
    if (assessment.hangings.empty()) {
        flow.add_text("No piece is on the wall yet, so there is nothing to check.", {2.5, false});
        add_pieces(flow, project);
        return flow.take();
    }
    flow.add_text(
        "Weights are worked out from the materials, low to high, unless the piece was weighed; the "
        "check uses the high "
        "side. Rated is what the packet allows for one. The stroke on the bar is the limit that "
        "the margin leaves. What hangs already is checked as if by these fixings: see that they "
        "are "
        "what is behind it.",
        kBody);
    flow.advance(3);
    add_table(flow, load_table(project, assessment.hangings));
    add_needs(flow, "To have at hand", hanging::needs(project, assessment.hangings));
    add_needs(flow, "For later stages and frames not bought yet",
              hanging::needs(project, assessment.hangings, hanging::Bought::not_yet));
    if (const auto remark = hanging::search_remark(assessment.hangings))
        flow.add_text(*remark, kBody);
    add_pieces(flow, project);
    add_force_cards(flow, project, assessment);
    return flow.take();
}

}  // namespace wallwright::pages

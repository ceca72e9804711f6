#include "pages/sheet_card.h"

#include "draw/card_sheet.h"
#include "draw/paths.h"
#include "draw/tint.h"
#include "mounts/card/plan_words.h"
#include "mounts/card/still_to_cut.h"
#include "pages/standard_scale.h"
#include "pages/step_list.h"
#include "pages/table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using mounts::CardLot;
using mounts::CardPlan;
using units::LengthUnit;

constexpr Type kBody{2.2, false};
constexpr Type kCaption{2.5, true};
constexpr double kSwatch = 4;          // mm, of the card's colour
constexpr double kShareOfSheet = 0.5;  // of a page that the drawing of a sheet may take
constexpr double kAbove = 4;
constexpr double kBelow = 3;

std::string size_words(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_number(size.height, unit));
}

std::string sheet_words(const CardLot& lot, std::size_t kind) {
    return fmt::format("{}{}", lot.origins[kind].title, mounts::sheet_remark(lot, kind));
}

Table sheet_table(const CardLot& lot, LengthUnit unit) {
    Table table;
    table.columns = {{"Take", 0, Align::left},
                     {fmt::format("Size, {}", units::name_of(unit)), 46, Align::right},
                     {"How many", 18, Align::right},
                     {"Price of one", 22, Align::right},
                     {"", 24, Align::left}};
    for (std::size_t kind = 0; kind < lot.task.sheets.size(); ++kind) {
        const mounts::NestSheet& sheet = lot.task.sheets[kind];
        const auto count =
            std::count_if(lot.plan.sheets.begin(), lot.plan.sheets.end(),
                          [kind](const mounts::CutSheet& one) { return one.sheet == kind; });
        if (count == 0)
            continue;
        table.rows.push_back(
            {{Words{lot.origins[kind].drop_out ? lot.origins[kind].title : sheet_words(lot, kind),
                    true},
              Words{size_words(sheet.size, unit)}, Words{fmt::format("{}", count)},
              Words{sheet.to_buy && sheet.price > 0 ? fmt::format("{:.2f}", sheet.price) : ""},
              Words{mounts::where_from(lot, kind), sheet.to_buy}}});
    }
    return table;
}

void add_swatch(Flow& flow, wall::Colour colour, double x) {
    flow.shapes().emplace_back(
        draw::box(Area::at({x, flow.top() - kSwatch - 1.4}, {kSwatch, kSwatch}),
                  {draw::own(colour), draw::Stroke{{Ink::outline}, 0.18}}));
}

/// Sheets of the plan are counted through all lots.
class CardSheets {
  public:
    CardSheets(const wall::Project& project, const CardPlan& plan, Paper paper)
        : plan_(plan),
          unit_(project.unit),
          flow_({paper,
                 false,
                 project.title,
                 "Card plan",
                 {{"mounts", fmt::format("{}", plan.cost.mounts)},
                  {"lengths in", std::string(units::name_of(project.unit))}}}) {}

    std::vector<draw::PageDrawing> made() {
        add_overview();
        int number = 0;
        for (const CardLot& lot : plan_.lots)
            for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i)
                add_sheet(lot, i, ++number);
        return flow_.take();
    }

  private:
    void add_overview() {
        for (const std::string& sentence : mounts::cost_sentences(plan_.cost))
            flow_.add_text(sentence, {2.5, false});
        add_steps(flow_, "Before the first cut", mounts::steps_before(unit_));
        flow_.advance(2);
        flow_.add_text(
            "Every cut runs straight from edge to edge of the piece in hand, so that a knife and a "
            "long rule do. Cut in the order of the numbers, and write each blank's name on its "
            "back as it comes off.",
            kBody);
        for (const CardLot& lot : plan_.lots)
            add_lot(lot);
        if (!plan_.notes.empty())
            add_points(flow_, "Mind", plan_.notes);
    }

    void add_lot(const CardLot& lot) {
        flow_.add_heading(fmt::format("      {}", mounts::card_name(lot, unit_)), 24);
        add_swatch(flow_, lot.colour, flow_.content().min.x);
        flow_.add_text(mounts::lot_words(lot), kBody);
        for (const std::string& sentence : mounts::left_out_sentences(lot, {unit_}))
            flow_.add_text(sentence, kBody, Ink::stop);
        flow_.advance(1);
        if (!lot.plan.sheets.empty())
            add_table(flow_, sheet_table(lot, unit_));
    }

    void add_caption(const CardLot& lot, std::size_t kind, int number, double denominator) {
        flow_.shapes().emplace_back(
            text_at({flow_.content().min.x, flow_.top()},
                    fmt::format("Sheet {}: {}, 1:{}", number, sheet_words(lot, kind), denominator),
                    kCaption));
    }

    void add_sheet(const CardLot& lot, std::size_t index, int number) {
        const mounts::CutSheet& sheet = lot.plan.sheets[index];
        const double most = kShareOfSheet * flow_.content().height();
        const Scaled scaled = at_standard_scale(
            [&](double denominator) {
                return draw::card_sheet(lot, index, unit_, {1 / denominator, true, true});
            },
            {{0, 0}, {flow_.content().width(), most}});
        const geometry::Size size = scaled.size_on_page();
        constexpr double kFirstCuts = 26;  // mm that the head of the list and some cuts take
        const std::string trimming = mounts::trim_words(lot, sheet.sheet, {unit_});
        constexpr double kTrimming = 8;  // mm, of two lines
        flow_.need(kAbove + line_height(kCaption.size) + (trimming.empty() ? 0 : kTrimming) +
                   kBelow + size.height + kFirstCuts);
        flow_.advance(kAbove + line_height(kCaption.size));
        add_caption(lot, sheet.sheet, number, scaled.denominator);
        if (!trimming.empty()) {
            flow_.advance(1);
            flow_.add_text(trimming, kBody);
        }
        flow_.advance(kBelow);
        const draw::PageDrawing placed = draw::placed_on_page(
            scaled.drawing, put_at(scaled, {flow_.content().min.x, flow_.top()}));
        flow_.shapes().insert(flow_.shapes().end(), placed.shapes.begin(), placed.shapes.end());
        flow_.advance(size.height + kBelow);
        flow_.add_text(mounts::left_words(sheet, {unit_}), kBody);
        flow_.advance(1);
        if (!sheet.cuts.empty())
            add_cuts(lot, sheet);
    }

    /// Under the numbers that the cuts have in the drawing.
    void add_cuts(const CardLot& lot, const mounts::CutSheet& sheet) {
        Table table;
        table.columns = {{"Done", 11, Align::left}, {"Cut", 9, Align::right}, {"", 0}};
        const std::vector<std::string> sentences = mounts::cut_sentences(lot, sheet, {unit_});
        for (std::size_t i = 0; i < sentences.size(); ++i)
            table.rows.push_back(
                {{TickBox{}, Words{fmt::format("{}", sheet.cuts[i].number), true, Ink::accent},
                  Words{sentences[i]}}});
        add_table(flow_, table);
    }

    const CardPlan& plan_;
    LengthUnit unit_;
    Flow flow_;
};

}  // namespace

std::vector<draw::PageDrawing> card_plan_sheets(const wall::Project& project, const CardPlan& plan,
                                                Paper paper) {
    if (plan.lots.empty() && plan.notes.empty())
        return {};
    return CardSheets(project, plan, paper).made();
}

std::optional<mounts::CardPlan> card_plan_for_sheets(const wall::Project& project,
                                                     const std::function<bool()>& go_on) {
    constexpr std::uint64_t kRounds = 40;
    if (std::ranges::none_of(project.pieces, mounts::is_still_to_cut))
        return std::nullopt;
    mounts::CardOptions options;
    options.seconds = 0;
    options.rounds = kRounds;
    return mounts::plan_card(project, options, go_on);
}

}  // namespace wallwright::pages

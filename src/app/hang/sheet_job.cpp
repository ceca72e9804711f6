#include "app/hang/sheet_job.h"

#include "app/state.h"
#include "pages/sheet_card.h"

namespace wallwright::app {

using pages::SheetPart;

SheetChoice SheetChoice::only(std::initializer_list<SheetPart> wanted, const SheetChoice& other) {
    SheetChoice choice = other;
    choice.parts.fill(false);
    for (const SheetPart part : wanted)
        choice.parts[static_cast<std::size_t>(part)] = true;
    return choice;
}

pages::Paper paper_of(const SheetChoice& choice, units::LengthUnit unit) {
    return choice.paper.value_or(unit == units::LengthUnit::inch ? pages::Paper::letter
                                                                 : pages::Paper::a4);
}

const mounts::CardPlan* plan_on_bench(State& state) {
    desk::CardChoice& choice = state.card.choice;
    constexpr bool kHold = true;
    choice.follow(state.session, kHold);
    if (state.step != desk::Step::mounts || state.bench.view != desk::BenchView::card)
        choice.pause();
    return choice.is_stale() ? nullptr : choice.plan();
}

SheetJob sheet_job(State& state, const SheetChoice& choice) {
    const desk::Session& session = state.session;
    pages::SheetOptions options;
    options.paper = paper_of(choice, session.kept().unit);
    options.picture_folder = session.picture_folder();
    options.templates = choice.templates;
    for (std::size_t i = 0; i < choice.parts.size(); ++i)
        if (choice.parts[i])
            options.parts.push_back(static_cast<SheetPart>(i));
    if (choice.has(SheetPart::card))
        if (const mounts::CardPlan* plan = plan_on_bench(state))
            options.card = *plan;
    return {session.kept(), session.catalogue(), std::move(options)};
}

std::vector<pages::Sheet> make_sheets(SheetJob job, const std::function<bool()>& go_on) {
    pages::SheetOptions& options = job.options;
    if (options.parts.empty())
        return {};
    const bool has_card = std::find(options.parts.begin(), options.parts.end(), SheetPart::card) !=
                          options.parts.end();
    if (has_card && !options.card)
        options.card = pages::card_plan_for_sheets(job.project, go_on);
    return pages::sheets_by_part(job.project, rules::assess(job.project, job.catalogue), options);
}

}  // namespace wallwright::app

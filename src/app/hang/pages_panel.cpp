#include "app/actions.h"
#include "app/hang/hang_parts.h"
#include "app/panels/panels.h"
#include "app/scoped.h"
#include "app/widgets.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::app {

namespace {

using pages::SheetPart;

/// In the order of SheetPart.
constexpr const char* kWhatFor[] = {
    "The wall as it will look, with every measure, the marks and the fixings.",
    "The table to mark the wall by, with a box to tick for each mark.",
    "What each piece weighs, what holds it, and how much of that is in use.",
    "What is still wrong or to be minded, and what to know before you drill.",
    "What to buy, and what to have at hand on the day.",
    "How the mounts are cut from the card, sheet by sheet.",
    "Each mount that is still to be cut, with every figure.",
    "At true size, to tape to the wall or to hold against it."};
static_assert(std::size(kWhatFor) == kSheetParts);

/// Why there is no page of it.
const char* why_none(SheetPart part) {
    switch (part) {
        case SheetPart::card:
        case SheetPart::mounts:
            return "None: no mount is still to be cut.";
        case SheetPart::templates:
            return "None: nothing is planned that has a mark.";
        default:
            return "None: there is nothing to say.";
    }
}

std::string count_words(const PagePreview& preview, SheetPart part) {
    if (!preview.choice.has(part) || preview.is_stale())
        return "";
    const auto count = std::ranges::count(preview.pages(), part, &ShownPage::part);
    if (count == 0)
        return why_none(part);
    return fmt::format("{} page{}.", count, count == 1 ? "" : "s");
}

void part_row(Ui& ui, PagePreview& preview, SheetPart part) {
    const auto i = static_cast<std::size_t>(part);
    const std::string name = fmt::format("pages/part/{}", wall::name_of(part));
    const std::string words(words_for(part));
    if (const auto on = switch_row(ui, name.c_str(), words.c_str(), preview.choice.parts[i]))
        preview.choice.parts[i] = *on;
    const std::string count = count_words(preview, part);
    hint(ui, count.empty() ? kWhatFor[i] : fmt::format("{} {}", kWhatFor[i], count));
}

void template_row(Ui& ui, PagePreview& preview) {
    if (!preview.choice.has(SheetPart::templates))
        return;
    const std::string kinds[] = {"the pieces", "the points", "strips for rows", "all on one sheet"};
    const int now = static_cast<int>(preview.choice.templates);
    if (const auto kind = choice_row(
            ui, "pages/templates", "Templates of", now, kinds,
            "The pieces: each outline, on as many sheets as it takes. The points: small papers "
            "laid "
            "to a corner of the frame. Strips: one for each row of marks. All on one sheet: as "
            "large as the group is, for a plotter."))
        preview.choice.templates = pages::TemplateKind(*kind);
}

void paper_row(Ui& ui, State& state) {
    const std::string papers[] = {"A4", "Letter", "A3"};
    PagePreview& preview = state.preview;
    const auto now = paper_of(preview.choice, state.session.kept().unit);
    if (const auto paper = choice_row(ui, "pages/paper", "Paper", static_cast<int>(now), papers,
                                      "A3 holds larger drawings; A4 and Letter every printer has."))
        preview.choice.paper = pages::Paper(*paper);
}

std::string under_title(const PagePreview& preview) {
    if (preview.is_stale())
        return "The pages are being made...";
    const std::size_t count = preview.pages().size();
    return count == 0   ? "Choose what to print."
           : count == 1 ? "1 page, as it will be printed."
                        : fmt::format("{} pages, as they will be printed.", count);
}

}  // namespace

void pages_panel(Ui& ui, State& state) {
    PagePreview& preview = state.preview;
    panel_title(ui, "Pages", under_title(preview));
    const bool has_pages = !preview.choice.is_empty();
    if (button(ui, "pages/save", "Save as PDF...",
               has_pages ? "Writes these pages, and no others.\nKey: Ctrl+P"
                         : "Choose what to print first.",
               ButtonLook::main, -1, has_pages))
        want_sheets(state);
    hint(ui, "Print at 100 %, and measure the bar on the first page.");
    paper_row(ui, state);
    heading(ui, "What to print");
    for (std::size_t i = 0; i < kSheetParts; ++i)
        part_row(ui, preview, static_cast<SheetPart>(i));
    template_row(ui, preview);
}

}  // namespace wallwright::app

#include "app/actions.h"
#include "edits/edit.h"
#include "edits/pieces.h"
#include "pages/marks_csv.h"
#include "pages/render.h"
#include "pages/sheet_card.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using For = FileDialog::For;

constexpr double kPixelsPerMm = 5;  ///< Of a PNG: 127 dots an inch.

/// A name for a file beside the wall's own: "attic-sheets.pdf".
std::string name_beside(const State& state, std::string_view ending) {
    const std::string own = state.session.file().stem().string();
    return fmt::format("{}-{}", own.empty() ? edits::id_from(state.session.kept().title) : own,
                       ending);
}

/// Where inches are at home the paper is Letter.
pages::Paper paper_for(units::LengthUnit unit) {
    return unit == units::LengthUnit::inch ? pages::Paper::letter : pages::Paper::a4;
}

std::string sheets_pdf(const desk::Session& session) {
    const wall::Project& project = session.project();
    const pages::SheetOptions options{paper_for(project.unit),
                                      session.picture_folder(),
                                      {},
                                      pages::card_plan_for_sheets(project, [] { return true; })};
    return pages::to_pdf(pages::sheets(project, session.assessment(), options), project.title);
}

Result<std::string> elevation_bytes(const State& state, const std::filesystem::path& file) {
    const wall::Project& project = state.session.project();
    const draw::PageDrawing page =
        pages::elevation_page(project, state.session.assessment(), state.session.picture_folder());
    std::string ending = file.extension().string();
    std::ranges::transform(ending, ending.begin(),
                           [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (ending == ".svg")
        return pages::to_svg(page);
    if (ending == ".pdf")
        return pages::to_pdf({page}, project.title);
    return pages::to_png(page, kPixelsPerMm);
}

Result<std::string> card_plan_pdf(const State& state) {
    const desk::CardChoice& choice = state.card.choice;
    if (choice.is_stale())
        return fail({"", "the card is still being laid out", "wait a moment", ""});
    const wall::Project& project = state.session.kept();
    return pages::to_pdf(pages::card_plan_sheets(project, *choice.plan(), paper_for(project.unit)),
                         project.title);
}

Result<std::string> bytes_for(const State& state, For what, const std::filesystem::path& file) {
    if (what == For::sheets)
        return sheets_pdf(state.session);
    if (what == For::card_plan)
        return card_plan_pdf(state);
    if (what == For::marks)
        return pages::marks_csv(state.session.project(), state.session.assessment().marks);
    return elevation_bytes(state, file);
}

/// From the wall's own folder when it lies there, so that both can be moved together.
std::string name_from(const std::filesystem::path& folder, const std::filesystem::path& file) {
    if (folder.empty())
        return file.string();
    std::error_code unknown;  // Where the working folder is gone, if a name starts from there.
    const auto whole = std::filesystem::absolute(file, unknown);
    const auto inside =
        whole.lexically_relative(std::filesystem::absolute(folder, unknown).lexically_normal());
    const bool is_inside = !inside.empty() && *inside.begin() != "..";
    return is_inside ? inside.string() : (unknown ? file : whole).string();
}

Outcome take_picture(State& state, const std::filesystem::path& file) {
    const auto bytes = store::read_file(file);
    if (!bytes)
        return fail(bytes.error());
    if (!bytes->starts_with("\x89PNG"))
        return fail({file.filename().string(), "this is no PNG picture", "choose a PNG", ""});
    if (!state.picture_for)
        return fail({"", "the piece for this picture is gone", "select a piece first", ""});
    const wall::PieceId piece = *state.picture_for;
    const std::string name = name_from(state.session.picture_folder(), file);
    auto changed = edits::change_print(state.session.kept(), piece,
                                       [&](wall::Print& print) { print.picture = name; });
    if (!changed)
        return fail(std::move(changed.error()));
    const std::string title = desk::title_of(*changed, piece);
    state.session.apply(fmt::format("Picture for {}", title), std::move(changed));
    state.picture_for.reset();
    return {};
}

}  // namespace

void want_import(State& state) {
    ask_for_file(state, For::import_frames);
}

void want_picture(State& state, const wall::PieceId& piece) {
    ask_for_file(state, For::picture);
    state.picture_for = piece;
}

void want_sheets(State& state) {
    ask_for_file(state, For::sheets, name_beside(state, "sheets.pdf"));
}

void want_elevation(State& state) {
    ask_for_file(state, For::elevation, name_beside(state, "wall.png"));
}

void want_marks(State& state) {
    ask_for_file(state, For::marks, name_beside(state, "marks.csv"));
}

void want_card_plan(State& state) {
    const desk::CardChoice& choice = state.card.choice;
    if (choice.is_stale() || choice.plan()->lots.empty())
        state.session.notice =
            desk::Notice{false, "Have the card laid out first, in the step Mounts under Card."};
    else
        ask_for_file(state, For::card_plan, name_beside(state, "card.pdf"));
}

Outcome export_to(State& state, For what, const std::filesystem::path& file) {
    const auto bytes = bytes_for(state, what, file);
    if (!bytes)
        return fail(bytes.error());
    if (const auto written = store::write_file(file, *bytes); !written)
        return written;
    const std::string name = file.filename().string();
    state.session.notice = desk::Notice{
        false, what == For::sheets
                   ? fmt::format("Wrote {}. Print it at 100 %, and measure the bar on the first "
                                 "sheet.",
                                 name)
                   : fmt::format("Wrote {}", name)};
    return {};
}

Outcome import_from(State& state, For what, const std::filesystem::path& file) {
    return what == For::picture ? take_picture(state, file)
                                : desk::import_frames(state.session, file);
}

}  // namespace wallwright::app

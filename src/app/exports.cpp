#include "app/actions.h"
#include "app/hang/hang_parts.h"
#include "app/hang/sheet_job.h"
#include "edits/edit.h"
#include "edits/pieces.h"
#include "mounts/card/still_to_cut.h"
#include "pages/marks_csv.h"
#include "pages/mount_job.h"
#include "pages/render.h"
#include "pages/sheet_card.h"
#include "pages/sheets.h"
#include "store/files.h"

#include <fmt/format.h>

namespace wallwright::app {

namespace {

using For = FileDialog::For;

constexpr const char* kCutAgain =
    "To have one cut again, choose its piece in the view Mount and switch off \"Is cut already\".";
constexpr double kPixelsPerMm = 5;  ///< Of a PNG: 127 dots an inch.

/// A name for a file beside the wall's own: "attic-sheets.pdf".
std::string name_beside(const State& state, std::string_view ending) {
    const std::string own = state.session.file().stem().string();
    return fmt::format("{}-{}", own.empty() ? edits::id_from(state.session.kept().title) : own,
                       ending);
}

/// The page that the preview shows is the page that is written.
std::string pdf_of_preview(const State& state) {
    std::vector<draw::PageDrawing> pages;
    for (const ShownPage& page : state.preview.pages())
        pages.push_back(printed_page(page));
    return pages::to_pdf(pages, state.session.kept().title);
}

std::string sheets_pdf(State& state, const SheetChoice& choice) {
    std::vector<draw::PageDrawing> pages;
    for (pages::Sheet& sheet : make_sheets(sheet_job(state, choice), [] { return true; }))
        pages.push_back(std::move(sheet.page));
    return pages::to_pdf(pages, state.session.kept().title);
}

/// Of these parts alone, on the paper that was chosen for all.
std::string sheets_pdf(State& state, std::initializer_list<pages::SheetPart> parts) {
    return sheets_pdf(state, SheetChoice::only(parts, state.preview.choice));
}

/// All parts, whatever is chosen in the preview.
std::string all_sheets_pdf(State& state) {
    SheetChoice choice;
    choice.paper = state.preview.choice.paper;
    return sheets_pdf(state, choice);
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

Result<std::string> card_plan_pdf(State& state) {
    const mounts::CardPlan* plan = plan_on_bench(state);
    if (plan == nullptr)
        return fail({"", "the card is still being laid out", "wait a moment", ""});
    const wall::Project& project = state.session.kept();
    return pages::to_pdf(
        pages::card_plan_sheets(project, *plan, paper_of(state.preview.choice, project.unit)),
        project.title);
}

Result<std::string> bytes_for(State& state, For what, const std::filesystem::path& file) {
    using pages::SheetPart;
    if (what == For::sheets)
        return all_sheets_pdf(state);
    if (what == For::chosen_sheets)
        return state.preview.is_stale() ? sheets_pdf(state, state.preview.choice)
                                        : pdf_of_preview(state);
    if (what == For::cutting_sheets)
        return sheets_pdf(state, {SheetPart::mounts});
    if (what == For::plan_and_cutting)
        return sheets_pdf(state, {SheetPart::card, SheetPart::mounts});
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

/// Why the first of the mounts that are still to be cut cannot be, where one cannot.
std::string first_left_out(const wall::Project& project) {
    for (const wall::Piece& piece : project.pieces)
        if (mounts::is_still_to_cut(piece))
            if (const auto why = mounts::why_not_cut(project, piece))
                return *why;
    return "";
}

void want_to_cut(State& state, For what, std::string_view ending) {
    if (std::string why = cutting_hindrance(state.session.kept()); !why.empty())
        state.session.notice = desk::Notice{false, std::move(why)};
    else
        ask_for_file(state, what, name_beside(state, ending));
}

/// True for what has a bar on its first sheet to check the printer by.
bool has_sheets(For what) {
    return what == For::sheets || what == For::chosen_sheets || what == For::card_plan ||
           what == For::cutting_sheets || what == For::plan_and_cutting;
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
    const bool sees_them = is_wall_hidden(state) && state.hang_view == desk::HangView::pages;
    if (sees_them && state.preview.choice.is_empty())
        state.session.notice = desk::Notice{false, "Choose what to print first."};
    else
        ask_for_file(state, sees_them ? For::chosen_sheets : For::sheets,
                     name_beside(state, "sheets.pdf"));
}

void want_elevation(State& state) {
    ask_for_file(state, For::elevation, name_beside(state, "wall.png"));
}

void want_marks(State& state) {
    ask_for_file(state, For::marks, name_beside(state, "marks.csv"));
}

void want_card_plan(State& state) {
    const mounts::CardPlan* plan = plan_on_bench(state);
    if (plan == nullptr || plan->lots.empty())
        state.session.notice =
            desk::Notice{false, "Have the card laid out first, in the step Mounts under Card."};
    else
        ask_for_file(state, For::card_plan, name_beside(state, "card.pdf"));
}

void want_cutting_sheets(State& state) {
    want_to_cut(state, For::cutting_sheets, "mounts.pdf");
}

void want_plan_and_cutting(State& state) {
    want_to_cut(state, For::plan_and_cutting, "cutting.pdf");
}

std::string cutting_hindrance(const wall::Project& project) {
    if (!pages::mount_jobs(project).empty())
        return "";
    const std::string left_out = first_left_out(project);
    if (std::ranges::any_of(project.pieces, &wall::Piece::mount_cut))
        return left_out.empty()
                   ? fmt::format("Every mount here is cut. {}", kCutAgain)
                   : fmt::format("Every mount that can be is cut. {} {}", left_out, kCutAgain);
    if (!left_out.empty())
        return left_out;
    const bool any = std::ranges::any_of(
        project.pieces, [](const wall::Piece& piece) { return piece.mount.has_value(); });
    return any ? "No mount is still to be cut: their pieces hang already, or their frames are not "
                 "there yet."
               : "No piece here has a mount. Give one a mount first, in the view Mount.";
}

Outcome export_to(State& state, For what, const std::filesystem::path& file) {
    const auto bytes = bytes_for(state, what, file);
    if (!bytes)
        return fail(bytes.error());
    if (const auto written = store::write_file(file, *bytes); !written)
        return written;
    const std::string name = file.filename().string();
    state.session.notice = desk::Notice{
        false, has_sheets(what)
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

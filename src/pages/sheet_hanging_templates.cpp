#include "pages/sheet_hanging_templates.h"

#include "pages/point_papers.h"
#include "pages/stop_notes.h"
#include "pages/story_strips.h"
#include "pages/tile_pages.h"

#include <fmt/format.h>

#include <iterator>

namespace wallwright::pages {

namespace {

using Sheets = std::vector<draw::PageDrawing>;

constexpr std::size_t kMostPages = 40;  // of one piece, before points serve better
/// The most that a page of a PDF measures without a unit of its own: 14 400 points (PDF Reference,
/// version 1.7, appendix C).
constexpr double kLongestPage = 5080;

void append(Sheets& to, Sheets from) {
    std::move(from.begin(), from.end(), std::back_inserter(to));
}

/// Each on its own pages; those that would take too many have papers for their points at the end.
Sheets piece_sheets(const wall::Project& project, const std::vector<TrueDrawing>& pieces,
                    Paper paper) {
    Sheets sheets;
    std::vector<TrueDrawing> too_large;
    std::string before;
    for (const TrueDrawing& piece : pieces) {
        const TilePlan plan = tile_plan(project, piece, paper);
        if (plan.printed.size() <= kMostPages) {
            append(sheets, tile_pages(piece, plan));
            continue;
        }
        before += fmt::format(
            "{} would take {} pages at true size, so here are papers for its "
            "points. ",
            piece.name, plan.printed.size());
        too_large.push_back(piece);
    }
    append(sheets, point_pages(project, too_large, paper, {before}));
    return sheets;
}

/// The pieces that have no pages of their own, on those of the first that has.
void name_unmarked(TrueDrawing& first, const wall::Project& project,
                   const rules::Assessment& assessment) {
    const std::string words = short_unmarked_words(project, assessment);
    if (!words.empty())
        first.stop += (first.stop.empty() ? "" : ". ") + words;
}

}  // namespace

Sheets hanging_template_sheets(const wall::Project& project, const rules::Assessment& assessment,
                               const SheetOptions& options) {
    std::vector<TrueDrawing> pieces = true_pieces(project, assessment);
    if (pieces.empty())
        return {};
    switch (options.templates) {
        case TemplateKind::pieces:
            name_unmarked(pieces.front(), project, assessment);
            return piece_sheets(project, pieces, options.paper);
        case TemplateKind::points:
            return point_pages(project, pieces, options.paper,
                               {"", short_stop_words(project, assessment)});
        case TemplateKind::strips:
            return story_strip_pages(project, assessment, options.paper);
        case TemplateKind::group: {
            TrueDrawing group = true_group(project, pieces);
            group.stop = short_stop_words(project, assessment);
            return tile_pages(group, large_plan(project, group, kLongestPage));
        }
    }
    return {};
}

}  // namespace wallwright::pages

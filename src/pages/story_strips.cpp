#include "pages/story_strips.h"

#include "draw/letters.h"
#include "draw/paths.h"
#include "hanging/datum_label.h"
#include "pages/stop_notes.h"
#include "pages/tile_pages.h"
#include "wall/titles.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;
using hanging::Mark;

constexpr double kHalf = 15;    // mm of paper above and below the row
constexpr double kBeyond = 18;  // mm of paper past the outermost marks
constexpr double kCaption = 6;  // mm above a band
constexpr double kBetween = 5;  // mm between two bands
constexpr double kAside = 9;    // mm from the level line to a join mark

struct Strip {
    TrueDrawing drawing;
    int first = 0;  // numbers of its marks
    int last = 0;
    std::string from_datum;  // how to put it up
};

std::vector<const Mark*> marks_of(const hanging::MarksTable& table,
                                  const std::vector<int>& numbers) {
    std::vector<const Mark*> marks;
    for (const int number : numbers)
        for (const Mark& mark : table.marks)
            if (mark.number == number)
                marks.push_back(&mark);
    return marks;
}

/// The mark that is nearest to the side that is measured from.
const Mark& nearest(const std::vector<const Mark*>& marks) {
    return **std::ranges::min_element(marks, [](const Mark* a, const Mark* b) {
        return std::abs(a->across) < std::abs(b->across);
    });
}

/// "B  Kelp"; one that has a stop says so.
std::string name_on_strip(const wall::Project& project, const rules::Assessment& assessment,
                          const wall::PieceId& piece) {
    std::string name = draw::letter_of(project, piece) + "  " + wall::title_to_hang(project, piece);
    return rules::stops_of(assessment, piece).empty() ? name : "STOP  " + name;
}

Strip strip_of(const wall::Project& project, const rules::Assessment& assessment,
               const std::vector<const Mark*>& marks) {
    Strip strip;
    TrueDrawing& drawing = strip.drawing;
    const auto [left, right] =
        std::ranges::minmax(marks, {}, [](const Mark* mark) { return mark->at.x; });
    const double level = left->at.y;
    drawing.whole = {{left->at.x - kBeyond, level - kHalf}, {right->at.x + kBeyond, level + kHalf}};
    auto& shapes = drawing.lines.shapes;
    shapes.emplace_back(draw::line<Wall>({drawing.whole.left(), level},
                                         {drawing.whole.right(), level}, kLevelStroke));
    for (const Mark* mark : marks) {
        constexpr double kUp = 12;
        constexpr double kAcross = 6;
        const auto at = mark->at;
        shapes.emplace_back(draw::line<Wall>({at.x, at.y - kUp}, {at.x, at.y + kUp}, kMarkStroke));
        shapes.emplace_back(
            draw::line<Wall>({at.x - kAcross, at.y}, {at.x + kAcross, at.y}, kMarkStroke));
        drawing.points.push_back({{at.x - 0.5, at.y - kUp}, {at.x + 0.5, at.y + kUp}});
        Tag tag{at,
                1.5,
                std::to_string(mark->number),
                {name_on_strip(project, assessment, mark->piece), mark->what,
                 units::format_length(mark->across, project.unit) + " across"}};
        drawing.tags.push_back(std::move(tag));
    }
    drawing.lines.extent = drawing.whole;
    const auto [first, last] =
        std::ranges::minmax(marks, {}, [](const Mark* mark) { return mark->number; });
    strip.first = first->number;
    strip.last = last->number;
    const Mark& start = nearest(marks);
    strip.from_datum =
        fmt::format("mark {} is {}", start.number, fmt::join(places_of(project, start), ", "));
    return strip;
}

/// Bands of strips, one under the other on landscape pages.
class StripPages {
  public:
    StripPages(const wall::Project& project, const rules::Assessment& assessment, Paper paper)
        : stop_(short_stop_words(project, assessment)),
          seats_(seats_of(true_pieces(project, assessment))) {
        style_.paper = paper;
        style_.landscape = true;
        style_.project_title = project.title;
        style_.name = "Strips for rows";
        style_.fields = {{"template", "strips"},
                         {"marks from", hanging::datum_label(project)},
                         {"scale", "1:1"}};
        area_ = content_of(style_);
        area_.min.y += kHeadHeight;
    }

    void add(const Strip& strip, int number) {
        const Tiling tiling =
            tiling_of(strip.drawing.whole, {area_.width() - 1, 2 * kHalf}, kTileOverlap);
        for (int part = 0; part < tiling.columns; ++part) {
            if (sheets_.empty() || top_ + kCaption + 2 * kHalf > area_.max.y)
                open();
            add_caption(strip, number, part, tiling.columns);
            top_ += kCaption;
            add_band(strip, tiling, part);
            top_ += 2 * kHalf + kBetween;
        }
    }

    /// For a wall without a row.
    void add_none() {
        seats_.clear();
        open(
            "No two pieces have their marks at one height, so that there is no row "
            "for a strip. Print the templates of kind pieces or points.");
    }

    std::vector<draw::PageDrawing> take() { return std::move(sheets_); }

  private:
    void open(const std::string& how =
                  "Measure the bars below first. Cut the bands out, lay their ringed crosses over "
                  "each other and tape them. Put one mark at its measures, hold the level to the "
                  "dash-dotted line, and prick the crosses through.") {
        sheets_.push_back(blank_sheet(style_));
        const Area content = content_of(style_);
        add_head(sheets_.back().shapes, content.min, content.width(),
                 {"Strips for rows of marks", "At true size, as seen from the front.", how + seats_,
                  stop_});
        top_ = area_.min.y;
    }

    void add_caption(const Strip& strip, int number, int part, int parts) {
        constexpr Type kCaptionType{2.2, true};
        std::string words = fmt::format("Strip {}", number);
        if (parts > 1)
            words += fmt::format(", part {} of {}", draw::letter(static_cast<std::size_t>(part)),
                                 draw::letter(static_cast<std::size_t>(parts - 1)));
        words += ": " + strip.from_datum;
        sheets_.back().shapes.emplace_back(
            text_at({area_.min.x + 0.5, top_ + kCaption - 1.6},
                    shortened(words, kCaptionType, area_.width() - 1), kCaptionType));
    }

    void add_band(const Strip& strip, const Tiling& tiling, int part) {
        Shapes& shapes = sheets_.back().shapes;
        const Rect<Wall> shown = tiling.shown({0, part});
        const geometry::Transform<Wall, Page> to_page{
            {area_.min.x + 0.5 - shown.min.x, top_ + shown.max.y}, 1};
        const Area band = to_page(shown);
        shapes.emplace_back(draw::box(
            band, {std::nullopt, draw::Stroke{{Ink::hidden}, 0.18, draw::LineType::dashed}}));
        WordRoom room(band.grown(-0.4));
        if (part > 0)
            add_join(shapes, room, {band.min.x + kTileOverlap / 2, band.centre().y});
        if (part + 1 < tiling.columns)
            add_join(shapes, room, {band.max.x - kTileOverlap / 2, band.centre().y});
        add_part(shapes, room, strip.drawing, shown, to_page);
    }

    static void add_join(Shapes& shapes, WordRoom& room, Spot middle) {
        shapes.emplace_back(draw::line<Page>({middle.x, middle.y - kHalf},
                                             {middle.x, middle.y + kHalf}, kJoinStroke));
        room.take(Area{{middle.x, middle.y - kHalf}, {middle.x, middle.y + kHalf}}.grown(0.3));
        for (const double aside : {-kAside, kAside}) {
            const Spot at{middle.x, middle.y + aside};
            add_join_mark(shapes, at);
            room.take(Area{at, at}.grown(kJoinReach + 0.3));
        }
    }

    std::string stop_;
    std::string seats_;
    SheetStyle style_;
    Area area_;
    double top_ = 0;
    std::vector<draw::PageDrawing> sheets_;
};

}  // namespace

std::vector<draw::PageDrawing> story_strip_pages(const wall::Project& project,
                                                 const rules::Assessment& assessment, Paper paper) {
    const hanging::MarksTable& table = assessment.marks;
    StripPages pages(project, assessment, paper);
    int number = 0;
    for (const std::vector<int>& row : table.rows)
        if (const auto marks = marks_of(table, row); !marks.empty())
            pages.add(strip_of(project, assessment, marks), ++number);
    if (number == 0)
        pages.add_none();
    return pages.take();
}

}  // namespace wallwright::pages

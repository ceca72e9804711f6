#include "pages/sheet_template.h"

#include "draw/mount_back.h"
#include "draw/paths.h"
#include "pages/clipped.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Wall;

constexpr double kOverlap = 12;  // mm that both sheets show
constexpr double kBleed = 0.4;   // mm around a tile, for the width of lines
constexpr Type kWords{2.5, false};
constexpr Type kSmall{2.2, false};

/// So many sheets side by side and one below the other.
struct Tiling {
    bool landscape = false;
    int across = 1;
    int down = 1;
};

constexpr Tiling kTilings[] = {{false, 1, 1}, {true, 1, 1},  {false, 2, 1},
                               {true, 1, 2},  {false, 1, 2}, {true, 2, 1}};

SheetStyle style_of(const MountJob& job, std::size_t layer, Paper paper, const Tiling& tiling) {
    SheetStyle style;
    style.paper = paper;
    style.landscape = tiling.landscape;
    style.project_title = "Mount of " + short_titles_of(job);
    style.fields = {{"template, from behind", board_name(job, layer)}, {"scale", "1:1"}};
    return style;
}

bool fits(double length, double room, int tiles) {
    return length + kOverlap * (tiles - 1) <= (room - 2 * kBleed) * tiles;
}

std::optional<Tiling> tiling_for(geometry::Size blank, Paper paper) {
    for (const Tiling& tiling : kTilings) {
        SheetStyle style;
        style.paper = paper;
        style.landscape = tiling.landscape;
        const Area area = content_of(style);
        if (fits(blank.width, area.width(), tiling.across) &&
            fits(blank.height, area.height(), tiling.down))
            return tiling;
    }
    return std::nullopt;
}

/// What one of two sheets shows of a length, and the other the rest.
struct Share {
    double from = 0;
    double to = 0;
};
Share share_of(double length, int tiles, int index) {
    if (tiles == 1)
        return {0, length};
    return index == 0 ? Share{0, (length + kOverlap) / 2} : Share{(length - kOverlap) / 2, length};
}

/// One sheet of a template.
class Tile {
  public:
    Tile(const MountJob& job, std::size_t layer, const Tiling& tiling, int index)
        : job_(job), layer_(layer), tiling_(tiling), index_(index) {
        const geometry::Size blank = job.design.blank;
        const Share x = share_of(blank.width, tiling.across, tiling.across > 1 ? index : 0);
        const Share y = share_of(blank.height, tiling.down, tiling.down > 1 ? index : 0);
        shown_ = {{x.from, blank.height - y.to}, {x.to, blank.height - y.from}};
    }

    [[nodiscard]] draw::PageDrawing sheet(const draw::WallDrawing& board, Paper paper) {
        SheetStyle style = style_of(job_, layer_, paper, tiling_);
        if (tiling_.across * tiling_.down > 1)
            style.fields.push_back({"part", index_ == 0 ? "A, joins B" : "B, joins A"});
        draw::PageDrawing sheet = blank_sheet(style);
        const Area content = content_of(style);
        const Spot c = content.centre();
        to_page_ = {{c.x - shown_.centre().x, c.y + shown_.centre().y}, 1};
        const Area area = to_page_(shown_).grown(kBleed);
        Shapes kept = clipped(draw::placed_on_page(board, to_page_).shapes, area);
        std::move(kept.begin(), kept.end(), std::back_inserter(sheet.shapes));
        add_join(sheet.shapes);
        add_upper_edge(sheet.shapes);
        add_what_to_do(sheet.shapes);
        return sheet;
    }

  private:
    /// The line on which both sheets meet, with a cross at each end and the other's letter.
    void add_join(Shapes& shapes) const {
        const geometry::Size blank = job_.design.blank;
        const draw::Stroke stroke{{Ink::accent}, 0.25, draw::LineType::long_dash_dotted};
        if (tiling_.across > 1)
            shapes.emplace_back(draw::line(to_page_(Point{blank.width / 2, 0}),
                                           to_page_(Point{blank.width / 2, blank.height}), stroke));
        else if (tiling_.down > 1)
            shapes.emplace_back(draw::line(to_page_(Point{0, blank.height / 2}),
                                           to_page_(Point{blank.width, blank.height / 2}), stroke));
        else
            return;
        for (const double share : {0.06, 0.94})
            add_join_mark(shapes, tiling_.across > 1
                                      ? to_page_(Point{blank.width / 2, share * blank.height})
                                      : to_page_(Point{share * blank.width, blank.height / 2}));
    }

    static void add_join_mark(Shapes& shapes, Spot at) {
        constexpr double kReach = 3;
        const draw::Stroke stroke{{Ink::accent}, 0.25};
        shapes.emplace_back(draw::circle(at, 0.6 * kReach, {std::nullopt, stroke}));
        shapes.emplace_back(draw::line<Page>({at.x - kReach, at.y}, {at.x + kReach, at.y}, stroke));
        shapes.emplace_back(draw::line<Page>({at.x, at.y - kReach}, {at.x, at.y + kReach}, stroke));
    }

    /// On the border, where this sheet shows it.
    void add_upper_edge(Shapes& shapes) const {
        constexpr double kLeast = 9;
        const double border = job_.design.cut.top;
        if (border < kLeast || shown_.max.y < job_.design.blank.height - border)
            return;
        const Spot at = to_page_(Point{shown_.centre().x, job_.design.blank.height - border / 2});
        shapes.emplace_back(aligned(
            text_at({at.x, at.y + kWords.size / 2}, "\u2191 upper edge of the back", kWords),
            draw::Align::centre));
    }

    /// In the first window, in what drops out, on the first sheet.
    void add_what_to_do(Shapes& shapes) const {
        constexpr double kAir = 9;
        constexpr double kLeastWidth = 45;
        const auto& window = job_.design.layers[layer_].windows.front();
        const double width = job_.design.blank.width;
        const Rect<mounts::Back> back = mounts::mirrored(window.back, width);
        const Area opening = to_page_(Rect<Wall>{
            {std::max(back.min.x, shown_.min.x), job_.design.blank.height - back.max.y},
            {std::min(back.max.x, shown_.max.x), job_.design.blank.height - back.min.y}});
        const Area area = opening.grown(-kAir);
        const Area on_paper = to_page_(shown_);
        if (index_ > 0 || area.width() < kLeastWidth)
            return;
        const bool joined = tiling_.across * tiling_.down > 1;
        const std::string words = fmt::format(
            "Measure the bars first. {}Cut the paper out along its outer line, lay it on the back "
            "of the card, edge to edge, prick the four corners of each window through with a pin, "
            "and take the paper off. Then draw the lines from hole to hole and on past them.",
            joined ? "Cut part B off at its dash-dotted line and tape it to that line here, half "
                     "circle to half circle. "
                   : "");
        double y = area.min.y;
        const std::vector<std::string> lines = lines_of(words, kSmall, area.width());
        const double lowest = std::min(area.max.y, on_paper.max.y - kAir);
        if (y + static_cast<double>(lines.size()) * line_height(kSmall.size) > lowest)
            return;
        for (const std::string& line : lines) {
            y += line_height(kSmall.size);
            shapes.emplace_back(text_at({area.min.x, y}, line, kSmall, Ink::quiet_text));
        }
    }

    using Point = geometry::Point<Wall>;

    const MountJob& job_;
    std::size_t layer_;
    Tiling tiling_;
    int index_;
    Rect<Wall> shown_;
    geometry::Transform<Wall, Page> to_page_;
};

}  // namespace

std::vector<draw::PageDrawing> template_sheets(const MountJob& job, std::size_t layer,
                                               units::LengthUnit unit, Paper paper) {
    std::vector<draw::PageDrawing> sheets;
    const std::optional<Tiling> tiling = tiling_for(job.design.blank, paper);
    if (!tiling || job.design.layers[layer].windows.empty())
        return sheets;
    const draw::WallDrawing board = draw::mount_back(job.design, layer, unit, {1, false, {}});
    for (int i = 0; i < tiling->across * tiling->down; ++i)
        sheets.push_back(Tile(job, layer, *tiling, i).sheet(board, paper));
    return sheets;
}

}  // namespace wallwright::pages

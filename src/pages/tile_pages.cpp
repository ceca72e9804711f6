#include "pages/tile_pages.h"

#include "draw/paths.h"
#include "pages/key_map.h"
#include "pages/render.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;
using ToPage = geometry::Transform<Wall, Page>;

constexpr double kEdgeAir = 0.5;     // mm between a tile and the margin, for the width of lines
constexpr double kMapWidth = 40;     // mm that the map may take
constexpr double kLeastWidth = 200;  // mm of a page of its own size, for the title block

SheetStyle style_of(const wall::Project& project, const TrueDrawing& drawing) {
    SheetStyle style;
    style.project_title = project.title;
    style.name = drawing.heading;
    style.fields = {{"template", drawing.name}, {"scale", "1:1"}};
    return style;
}

/// Under the head.
Area tile_area(const SheetStyle& style) {
    Area area = content_of(style);
    area.min.y += kHeadHeight;
    return area;
}

Size room_on(const SheetStyle& style) {
    return tile_area(style).grown(-kEdgeAir).size();
}

/// What makes a page worth printing: edges of frames, marks, fixings.
std::vector<Rect<Wall>> seen_in(const TrueDrawing& drawing) {
    std::vector<Rect<Wall>> seen = drawing.points;
    for (const Rect<Wall>& place : drawing.places) {
        seen.push_back({place.min, {place.max.x, place.min.y}});
        seen.push_back({place.min, {place.min.x, place.max.y}});
        seen.push_back({{place.max.x, place.min.y}, place.max});
        seen.push_back({{place.min.x, place.max.y}, place.max});
    }
    return seen;
}

TilePlan planned(SheetStyle style, const TrueDrawing& drawing) {
    const Tiling tiling = tiling_of(drawing.whole, room_on(style), kTileOverlap);
    return {std::move(style), tiling, tiles_to_print(tiling, seen_in(drawing))};
}

bool holds(const std::vector<TileIndex>& tiles, TileIndex index) {
    return std::ranges::find(tiles, index) != tiles.end();
}

/// A side of a tile with what it meets there.
struct Join {
    TileIndex other;
    Rect<Wall> shared;  // what both show
    bool upright = false;
    const char* words = "";  // before the other's name
    bool after = false;      // whether the other lies to the right or below
};

/// One page of the plan.
class TilePage {
  public:
    TilePage(const TrueDrawing& drawing, const TilePlan& plan, TileIndex index)
        : drawing_(drawing), plan_(plan), index_(index), shown_(plan.tiling.shown(index)) {
        const Spot middle = tile_area(plan.style).centre();
        to_page_ = {{middle.x - shown_.centre().x, middle.y + shown_.centre().y}, 1};
    }

    [[nodiscard]] draw::PageDrawing sheet() const {
        SheetStyle style = plan_.style;
        if (is_one_of_many())
            style.fields.insert(style.fields.begin() + 1, {"page", name_of(index_)});
        draw::PageDrawing sheet = blank_sheet(style);
        add_top(sheet.shapes);
        WordRoom room(to_page_(shown_).grown(-0.5));
        for (const Join& join : joins())
            add_join(sheet.shapes, room, join);
        add_part(sheet.shapes, room, drawing_, shown_, to_page_);
        return sheet;
    }

  private:
    [[nodiscard]] bool is_one_of_many() const {
        return plan_.tiling.rows * plan_.tiling.columns > 1;
    }

    void add_top(Shapes& shapes) const {
        const Area content = content_of(plan_.style);
        PageHead head{drawing_.heading, "All of it on this page.",
                      "Measure the bars below first. " + drawing_.how + seats_of({drawing_}),
                      drawing_.stop};
        double width = content.width();
        if (is_one_of_many()) {
            head.which = which_of_many();
            head.how =
                "Measure the bars below first. Tape the pages so that the ringed crosses meet. " +
                drawing_.how + seats_of({drawing_});
            const Area map =
                add_key_map(shapes, {content.max.x, content.min.y}, {kMapWidth, kHeadHeight - 2},
                            {plan_.tiling, plan_.printed, drawing_.places, index_});
            width = map.min.x - 4 - content.min.x;
        }
        add_head(shapes, content.min, width, head);
    }

    [[nodiscard]] std::string which_of_many() const {
        const std::size_t all = static_cast<std::size_t>(plan_.tiling.rows) *
                                static_cast<std::size_t>(plan_.tiling.columns);
        const std::string page =
            fmt::format("Page {}, one of {}", name_of(index_), plan_.printed.size());
        if (plan_.printed.size() == all)
            return page + ".";
        return page + ". Dotted on the map: blank inside, not printed.";
    }

    [[nodiscard]] std::vector<Join> joins() const {
        const Join around[] = {
            {{index_.row, index_.column - 1}, {}, true, "\u2190 ", false},
            {{index_.row, index_.column + 1}, {}, true, "\u2192 ", true},
            {{index_.row - 1, index_.column}, {}, false, "\u2191 ", false},
            {{index_.row + 1, index_.column}, {}, false, "\u2193 ", true},
        };
        std::vector<Join> found;
        for (Join join : around)
            if (holds(plan_.printed, join.other)) {
                const Rect<Wall> other = plan_.tiling.shown(join.other);
                join.shared = {
                    {std::max(shown_.min.x, other.min.x), std::max(shown_.min.y, other.min.y)},
                    {std::min(shown_.max.x, other.max.x), std::min(shown_.max.y, other.max.y)}};
                found.push_back(join);
            }
        return found;
    }

    /// Where on the join its two marks lie: the same on both pages, clear of points and level
    /// lines where that can be.
    [[nodiscard]] std::pair<geometry::Point<Wall>, geometry::Point<Wall>> marks_of(
        const Join& join) const {
        const auto at = [&](double share) {
            const geometry::Point<Wall> middle = join.shared.centre();
            return join.upright ? geometry::Point<Wall>{middle.x, join.shared.max.y -
                                                                      share * join.shared.height()}
                                : geometry::Point<Wall>{
                                      join.shared.min.x + share * join.shared.width(), middle.y};
        };
        const auto meets_something = [&](geometry::Point<Wall> spot) {
            const Rect<Wall> mark = Rect<Wall>{spot, spot}.grown(kJoinReach + 0.5);
            const auto on_level = [&](const LevelLine& level) {
                return level.height > mark.bottom() && level.height < mark.top();
            };
            if (std::ranges::any_of(drawing_.levels, on_level))
                return true;
            return std::ranges::any_of(drawing_.points, [&](const Rect<Wall>& point) {
                return geometry::touch(mark, point);
            });
        };
        for (const double share : {0.25, 0.2, 0.3, 0.15, 0.35, 0.1, 0.4})
            if (!meets_something(at(share)) && !meets_something(at(1 - share)))
                return {at(share), at(1 - share)};
        return {at(0.25), at(0.75)};
    }

    void add_join(Shapes& shapes, WordRoom& room, const Join& join) const {
        const auto [first, second] = marks_of(join);
        const Rect<Wall>& s = join.shared;
        const geometry::Point<Wall> middle = s.centre();
        const Rect<Wall> seam = join.upright ? Rect<Wall>{{middle.x, s.min.y}, {middle.x, s.max.y}}
                                             : Rect<Wall>{{s.min.x, middle.y}, {s.max.x, middle.y}};
        shapes.emplace_back(draw::line(to_page_(seam.min), to_page_(seam.max), kJoinStroke));
        room.take(to_page_(seam).grown(0.3));
        for (const geometry::Point<Wall> mark : {first, second}) {
            const Spot at = to_page_(mark);
            add_join_mark(shapes, at);
            room.take(Area{at, at}.grown(kJoinReach + 0.5));
        }
        add_neighbour(shapes, room, join, to_page_(first));
    }

    /// "→ A2" beside the first mark, on this page's own part.
    static void add_neighbour(Shapes& shapes, WordRoom& room, const Join& join, Spot mark) {
        constexpr Type kName{2.5, true};
        const std::string words = join.words + name_of(join.other);
        const double width = text_width(words, kName.size, true);
        const double off = kTileOverlap / 2 + 1.5;
        const double out = join.after ? -off : off;
        Spot at{mark.x, mark.y};
        Align align = Align::left;
        if (join.upright) {
            at = {mark.x + out, mark.y + kName.size / 2};
            align = join.after ? Align::right : Align::left;
        } else {
            at = {mark.x - width / 2, join.after ? mark.y - off : mark.y + off + kName.size};
        }
        const double left = align == Align::right ? at.x - width : at.x;
        room.take(Area{{left, at.y - kName.size}, {left + width, at.y}}.grown(0.6));
        shapes.emplace_back(aligned(text_at(at, words, kName, Ink::accent), align));
    }

    const TrueDrawing& drawing_;
    const TilePlan& plan_;
    TileIndex index_;
    Rect<Wall> shown_;
    ToPage to_page_;
};

}  // namespace

TilePlan tile_plan(const wall::Project& project, const TrueDrawing& drawing, Paper paper) {
    std::optional<TilePlan> best;
    for (const bool landscape : {false, true}) {
        SheetStyle style = style_of(project, drawing);
        style.paper = paper;
        style.landscape = landscape;
        TilePlan plan = planned(std::move(style), drawing);
        if (!best || plan.printed.size() < best->printed.size())
            best = std::move(plan);
    }
    return *std::move(best);
}

TilePlan large_plan(const wall::Project& project, const TrueDrawing& drawing, double longest) {
    SheetStyle style = style_of(project, drawing);
    style.size = {longest, longest};
    // What margins, head and title block take of a page.
    const Size lost{longest - room_on(style).width, longest - room_on(style).height};
    const Size tile = tiling_of(drawing.whole, room_on(style), kTileOverlap).tile();
    style.size = {std::max(kLeastWidth, tile.width + lost.width) + 0.001,
                  tile.height + lost.height + 0.001};
    return planned(std::move(style), drawing);
}

std::vector<draw::PageDrawing> tile_pages(const TrueDrawing& drawing, const TilePlan& plan) {
    std::vector<draw::PageDrawing> sheets;
    for (const TileIndex index : plan.printed)
        sheets.push_back(TilePage(drawing, plan, index).sheet());
    return sheets;
}

}  // namespace wallwright::pages

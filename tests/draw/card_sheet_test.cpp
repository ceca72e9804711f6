#include "draw/card_sheet.h"

#include "draw/card_lots.h"
#include "draw/labels.h"
#include "draw/looking.h"

#include <catch2/catch.hpp>
#include <fmt/format.h>

#include <algorithm>

using namespace wallwright;
using namespace wallwright::draw;
using geometry::Rect;
using geometry::Wall;
using units::LengthUnit;

namespace {

/// The drawing of every sheet.
std::vector<WallDrawing> sheets_of(const mounts::CardLot& lot, double scale,
                                   LengthUnit unit = LengthUnit::mm) {
    std::vector<WallDrawing> all;
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i)
        all.push_back(card_sheet(lot, i, unit, {scale, true, true}));
    return all;
}

int count_in(const std::vector<WallDrawing>& drawings, const std::string& words) {
    int count = 0;
    for (const WallDrawing& drawing : drawings)
        count += test::count_text(drawing, words);
    return count;
}

bool has_box(const WallDrawing& drawing, const Rect<Wall>& rect) {
    return std::ranges::any_of(test::shapes_in<test::WallPath>(drawing.shapes),
                               [&](const test::WallPath& path) {
                                   const Rect<Wall> box = test::bounds_of(path);
                                   return path.closed && distance(box.min, rect.min) < 1e-6 &&
                                          distance(box.max, rect.max) < 1e-6;
                               });
}

}  // namespace

TEST_CASE("Each blank lies on its sheet where the plan says, by name, layer and size") {
    const mounts::CardLot lot = test::some_lot();
    const auto drawings = sheets_of(lot, 0.2);
    REQUIRE(lot.plan.left_out.empty());
    for (std::size_t i = 0; i < drawings.size(); ++i)
        for (const mounts::PlacedBlank& placed : lot.plan.sheets[i].placed) {
            CHECK(has_box(drawings[i], in_card_sheet(lot, i, placed.place)));
            INFO(lot.owners[placed.blank].title);
            CHECK(count_in(drawings, lot.owners[placed.blank].title) == 1);
            CHECK(test::count_text(
                      drawings[i],
                      fmt::format("{} × {}{}",
                                  units::format_number(placed.place.size.width, LengthUnit::mm),
                                  units::format_number(placed.place.size.height, LengthUnit::mm),
                                  placed.turned ? ", turned" : "")) >= 1);
        }
    CHECK(count_in(drawings, "layer 2 of 2") == 1);
    CHECK(count_in(drawings, "kept here") == 1);
}

TEST_CASE("A place on the sheet is measured from its top, in the drawing from its bottom") {
    const mounts::CardLot lot = test::some_lot();
    const double height = lot.task.sheets[lot.plan.sheets[0].sheet].size.height;
    const Rect<Wall> place = in_card_sheet(lot, 0, {10, 20, {100, 50}});
    CHECK(place.min.x == Approx(10));
    CHECK(place.max.y == Approx(height - 20));
    CHECK(place.size() == geometry::Size{100, 50});
}

TEST_CASE("Every cut runs from edge to edge of the piece in hand and has its number once") {
    const mounts::CardLot lot = test::some_lot();
    const auto drawings = sheets_of(lot, 0.2);
    for (std::size_t i = 0; i < drawings.size(); ++i)
        for (const mounts::SheetCut& cut : lot.plan.sheets[i].cuts) {
            const Rect<Wall> piece = in_card_sheet(lot, i, cut.piece);
            const double length = cut.upright ? piece.height() : piece.width();
            CHECK(std::ranges::any_of(test::shapes_in<test::WallPath>(drawings[i].shapes),
                                      [&](const test::WallPath& path) {
                                          const Rect<Wall> line = test::bounds_of(path);
                                          return path.stroke &&
                                                 path.stroke->paint.ink == Ink::accent &&
                                                 std::abs(line.width() + line.height() - length) <
                                                     1e-6 &&
                                                 piece.grown(1e-6).contains(line.min);
                                      }));
            CHECK(test::count_text(drawings[i], fmt::format("{}", cut.number)) == 1);
        }
    const WallDrawing without = card_sheet(lot, 0, LengthUnit::mm, {0.2, false, true});
    CHECK(test::count_text(without, "1") == 0);
}

TEST_CASE("A window of a blank is drawn where it is cut, turned with its blank") {
    mounts::CardLot lot = test::some_lot();
    lot.plan.sheets = {{1, {{1, {100, 50, {370, 470}}, true}}, {}, {}}};
    const WallDrawing drawing = card_sheet(lot, 0, LengthUnit::mm, {0.2, true, true});
    // clockwise: what was at the top of 370 is at the right
    CHECK(has_box(drawing, in_card_sheet(lot, 0, {100 + 370 - 80 - 210, 50 + 161, {210, 148}})));
    lot.plan.sheets = {{1, {{1, {100, 50, {470, 370}}, false}}, {}, {}}};
    CHECK(has_box(card_sheet(lot, 0, LengthUnit::mm, {0.2, true, true}),
                  in_card_sheet(lot, 0, {100 + 161, 50 + 80, {148, 210}})));
}

TEST_CASE("No window's outline runs through the words on its blank") {
    mounts::CardLot lot = test::some_lot();
    lot.windows.push_back({3, {40, 60, {110, 130}}, true});
    lot.windows.push_back({4, {20, 20, {25, 110}}, true});
    lot.windows.push_back({4, {55, 20, {25, 110}}, true});
    std::size_t drawn = 0;
    for (const double scale : {0.05, 0.1, 0.2, 0.5})
        for (const WallDrawing& drawing : sheets_of(lot, scale)) {
            const auto texts = test::shapes_in<Text<Wall>>(drawing.shapes);
            for (const test::WallPath& path : test::shapes_in<test::WallPath>(drawing.shapes)) {
                if (!path.closed || path.fill || !path.stroke || path.stroke->width > 0.2)
                    continue;
                const Rect<Wall> window = test::bounds_of(path);
                if (std::ranges::none_of(lot.windows, [&](const mounts::LotWindow& one) {
                        return is_same_size(one.place.size, window.size()) ||
                               is_same_size(one.place.size.turned(), window.size());
                    }))
                    continue;
                ++drawn;
                for (const Text<Wall>& text : texts) {
                    const Rect<Wall> box = estimated_box(text, scale);
                    INFO(text.text << " at " << scale);
                    if (text.paint.ink != Ink::accent)
                        CHECK((!overlaps(window, box) ||
                               (window.contains(box.min) && window.contains(box.max))));
                }
            }
        }
    CHECK(drawn > 8);
}

TEST_CASE("What is left over is hatched, and a margin that is not used is dashed") {
    mounts::CardLot lot = test::some_lot();
    for (std::size_t i = 0; i < lot.plan.sheets.size(); ++i) {
        const WallDrawing drawing = card_sheet(lot, i, LengthUnit::mm, {0.2, true, true});
        CHECK(test::shapes_in<Hatch<Wall>>(drawing.shapes).size() ==
              lot.plan.sheets[i].offcuts.size());
        const bool margin = lot.task.sheets[lot.plan.sheets[i].sheet].margin > 0;
        CHECK(test::count_lines(drawing, LineType::dashed) == (margin ? 1 : 0));
    }
}

TEST_CASE("A sheet with a grain says which way it runs") {
    mounts::CardLot lot = test::some_lot();
    CHECK(count_in(sheets_of(lot, 0.2), "grain") == 0);
    for (mounts::NestSheet& sheet : lot.task.sheets)
        sheet.has_grain = true;
    CHECK(count_in(sheets_of(lot, 0.2), "grain") == static_cast<int>(lot.plan.sheets.size()));
}

TEST_CASE("No words on a sheet of card lie on others or out of the drawing") {
    const mounts::CardLot lot = test::some_lot();
    for (const double scale : {0.05, 0.1, 0.2, 0.5})
        for (const LengthUnit unit : {LengthUnit::mm, LengthUnit::cm, LengthUnit::inch})
            for (const WallDrawing& drawing : sheets_of(lot, scale, unit)) {
                INFO(scale << " in " << units::name_of(unit));
                CHECK(test::clashes(drawing, scale) == std::vector<std::string>{});
            }
}

TEST_CASE("What is drawn of a sheet of card changes only on purpose") {
    std::string text;
    for (const WallDrawing& drawing : sheets_of(test::some_lot(), 0.2))
        text += to_text(drawing);
    test::check_golden("card_sheet.txt", text);
}

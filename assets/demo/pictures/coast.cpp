#include "pictures.h"

#include <array>

namespace lino {

namespace {

/// Every other tide of a fortnight, the range going from `least` to `most` and back.
double tide(double fortnight, double least, double most) {
    const double range = (least + most) / 2 - (most - least) / 2 * cosine(fortnight);
    return range * sine(14 * fortnight);
}

/// The share of the moon that is lit, five times in the fortnight.
using Phases = std::array<double, 5>;

void moons(Sheet& sheet, const Phases& lit) {
    constexpr double radius = 13;
    for (std::size_t i = 0; i < lit.size(); ++i) {
        const Spot moon{sheet.width() * (0.14 + 0.18 * static_cast<double>(i)), 42};
        const double side = i < 2 ? -1 : 1;
        sheet.take(kOchre);
        sheet.disc(moon, radius);
        sheet.take(kPaper);
        sheet.disc({moon.x + side * 2 * radius * lit[i], moon.y}, lit[i] < 1 ? radius + 1 : 0);
        sheet.take(kNight);
        sheet.ring(moon, radius, 1.6);
    }
}

void tide_chart(Sheet& sheet, double least, double most, Ink water) {
    const double mean = 0.6 * sheet.height();
    sheet.take(kMist);
    for (double y = 70; y < sheet.height() - 30; y += 22)
        sheet.line({{28, y}, {sheet.width() - 28, y}}, 1);
    Line crest;
    for (int i = 0; i <= 280; ++i)
        crest.push_back({28 + i * (sheet.width() - 56) / 280, mean - tide(i / 280.0, least, most)});
    Line body = crest;
    body.push_back({sheet.width() - 28, sheet.height() - 26});
    body.push_back({28, sheet.height() - 26});
    sheet.take(water);
    sheet.shape(body);
    sheet.take(kNight);
    sheet.line(crest, 3);
}

void dune(Sheet& sheet, Ink ink, double height, double phase) {
    Line edge{{-40, sheet.height() + 60}};
    for (int i = -1; i <= 9; ++i)
        edge.push_back({i * 50.0, height + 24 * sine(i / 6.5 + phase) + 5 * uneven(i + 3)});
    edge.push_back({sheet.width() + 60, sheet.height() + 60});
    sheet.take(ink);
    sheet.smooth_shape(edge);
    sheet.take(kPaper);
    for (int row = 0; row < 3; ++row)
        for (int i = 0; i < 7; ++i) {
            const double x = 18 + 58 * i + 20 * uneven(i + 9 * row);
            const double y = height + 26 + 13 * row + 24 * sine(x / 325 + phase);
            sheet.gouge({x, y},
                        {x + 38, y + 24 * (sine((x + 38) / 325 + phase) - sine(x / 325 + phase))},
                        2);
        }
}

void boat(Sheet& sheet, Spot foot, double size, Ink sail) {
    const auto at = [&](double x, double y) { return Spot{foot.x + size * x, foot.y - size * y}; };
    sheet.take(kNight);
    sheet.smooth_shape({at(-0.52, 0.16), at(0, 0.12), at(0.56, 0.18), at(0.36, -0.02), at(0, -0.07),
                        at(-0.36, -0.02)});
    sheet.line({at(0, 0.1), at(0, 1.22)}, 3);
    sheet.take(sail);
    sheet.shape({at(0.05, 0.24), at(0.05, 1.2), at(0.5, 0.26)});
    sheet.take(kPaper);
    sheet.shape({at(-0.05, 0.24), at(-0.05, 1.04), at(-0.42, 0.26)});
}

void house(Sheet& sheet, double left, double width, double wall, Ink ink) {
    const double ground = 262;
    sheet.take(ink);
    sheet.shape({{left, ground},
                 {left, ground - wall},
                 {left + width / 2, ground - wall - 0.55 * width},
                 {left + width, ground - wall},
                 {left + width, ground}});
    sheet.take(kPaper);
    for (double y = ground - wall + 12; y < ground - 16; y += 30)
        for (const double x : {left + 0.24 * width, left + 0.6 * width})
            sheet.shape({{x, y}, {x + 0.18 * width, y}, {x + 0.18 * width, y + 15}, {x, y + 15}});
}

}  // namespace

void spring_tide(Sheet& sheet) {
    tide_chart(sheet, 34, 74, kSea);
    moons(sheet, {0.5, 0.8, 1, 0.8, 0.5});
}

void neap_tide(Sheet& sheet) {
    tide_chart(sheet, 52, 16, kRust);
    moons(sheet, {1, 0.8, 0.5, 0.2, 0});
}

void dunes(Sheet& sheet) {
    sheet.block(kMist);
    sheet.take(kPaper);
    sheet.disc({292, 78}, 34);
    rays(sheet, {292, 78}, 42, 62, 22);
    dune(sheet, kOchre, 142, 0.1);
    dune(sheet, kRust, 188, 0.62);
    dune(sheet, kNight, 238, 0.28);
    sheet.take(kMoss);
    for (int i = 0; i < 26; ++i) {
        const double x = 40 + 3.1 * i + 5 * uneven(i);
        sheet.gouge({x, 236 + 6 * uneven(i + 4)},
                    {x + 22 * uneven(i + 8), 168 + 14 * uneven(i + 2)}, 3.2);
    }
}

void boats(Sheet& sheet) {
    sheet.block(kMist);
    sheet.take(kSea);
    sheet.shape({{0, 168}, {360, 168}, {360, 360}, {0, 360}});
    sheet.take(kPaper);
    ripples(sheet, 182, 340, 17);
    boat(sheet, {262, 172}, 66, kOchre);
    boat(sheet, {106, 206}, 96, kRust);
    boat(sheet, {232, 284}, 130, kRust);
}

void lighthouse(Sheet& sheet) {
    sheet.block(kNight);
    sheet.take(kOchre);
    sheet.shape({{105, 96}, {-20, 44}, {-20, 108}});
    sheet.shape({{105, 96}, {230, 60}, {230, 128}});
    sheet.take(kPaper);
    sheet.shape({{86, 118}, {124, 118}, {138, 356}, {72, 356}});
    sheet.shape({{88, 84}, {122, 84}, {122, 112}, {88, 112}});
    sheet.take(kRust);
    for (const double y : {148.0, 224.0, 300.0}) {
        const double half = 19 + 14 * (y - 118) / 238;
        sheet.shape({{105 - half, y},
                     {105 + half, y},
                     {105 + half + 2.2, y + 38},
                     {105 - half - 2.2, y + 38}});
    }
    sheet.shape({{82, 84}, {105, 58}, {128, 84}});
    sheet.take(kNight);
    sheet.line({{105, 86}, {105, 110}}, 4);
    sheet.take(kDeep);
    sheet.smooth_shape({{-20, 380},
                        {40, 348},
                        {80, 362},
                        {120, 344},
                        {170, 356},
                        {240, 378},
                        {240, 500},
                        {-20, 500}});
    sheet.take(kPaper);
    ripples(sheet, 384, 440, 14);
    for (int i = 0; i < 9; ++i)
        sheet.disc({105 + 86 * uneven(i + 31), 180 + 130 * uneven(i + 5)}, 1.6);
}

void swell(Sheet& sheet) {
    sheet.block(kPaper);
    for (int row = 0; row < 6; ++row) {
        const double y = 62 + 44 * row;
        Line edge{{-60, 400}};
        for (int i = -1; i <= 14; ++i)
            edge.push_back(
                {i * 32.0, y + 15 * sine(i / 4.0 + 0.37 * row) + 3 * uneven(i + 5 * row)});
        edge.push_back({460, 400});
        sheet.take(row % 3 == 0 ? kMist : row % 3 == 1 ? kSea : kDeep);
        sheet.smooth_shape(edge);
        sheet.take(kPaper);
        for (int i = 0; i < 8; ++i) {
            const double x = 14 + 50 * i + 12 * uneven(i + row);
            const double under = y + 17 + 15 * sine(x / 128 + 0.37 * row);
            sheet.gouge({x, under}, {x + 20, y + 17 + 15 * sine((x + 20) / 128 + 0.37 * row)}, 2.4);
        }
    }
}

void moonrise(Sheet& sheet) {
    sheet.block(kNight);
    sheet.take(kPaper);
    sheet.disc({150, 132}, 66);
    sheet.take(kMist);
    for (int i = 0; i < 9; ++i)
        sheet.disc({150 + 42 * uneven(i + 3), 132 + 42 * uneven(i + 41)}, 6 + 4 * uneven(i));
    sheet.take(kOchre);
    for (int i = 0; i < 12; ++i) {
        const Spot star{150 + 130 * uneven(i + 90), 60 + 40 * uneven(i + 17)};
        sheet.gouge({star.x - 4, star.y}, {star.x + 4, star.y}, 1.4);
        sheet.gouge({star.x, star.y - 4}, {star.x, star.y + 4}, 1.4);
    }
    sheet.take(kDeep);
    sheet.shape({{0, 236}, {300, 236}, {300, 400}, {0, 400}});
    sheet.take(kOchre);
    for (int i = 0; i < 11; ++i) {
        const double y = 246 + 13 * i;
        const double half = 16 + 5 * i + 12 * uneven(i);
        const double middle = 150 + 10 * uneven(i + 4);
        sheet.gouge({middle - half, y}, {middle + half, y}, 3.4);
    }
    sheet.take(kMist);
    for (int i = 0; i < 16; ++i) {
        const double x = i % 2 == 0 ? 52 + 30 * uneven(i) : 248 + 30 * uneven(i);
        sheet.gouge({x - 18, 258 + 7.5 * i}, {x + 18, 258 + 7.5 * i}, 2);
    }
}

void harbour(Sheet& sheet) {
    sheet.block(kMist);
    sheet.take(kPaper);
    sheet.disc({222, 76}, 30);
    house(sheet, 22, 62, 96, kRust);
    house(sheet, 84, 56, 128, kDeep);
    house(sheet, 140, 66, 84, kOchre);
    house(sheet, 206, 72, 110, kMoss);
    sheet.take(kNight);
    sheet.shape({{0, 262}, {300, 262}, {300, 276}, {0, 276}});
    sheet.take(kSea);
    sheet.shape({{0, 276}, {300, 276}, {300, 400}, {0, 400}});
    sheet.take(kPaper);
    ripples(sheet, 290, 384, 15);
    boat(sheet, {96, 330}, 78, kRust);
    boat(sheet, {214, 352}, 64, kOchre);
}

}  // namespace lino

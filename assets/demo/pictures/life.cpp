#include "pictures.h"

namespace lino {

namespace {

void kelp_frond(Sheet& sheet, double foot, double top, double sway, int blades) {
    const double height = sheet.height() - top;
    const auto stem = [&](double up) {
        return Spot{foot + sway * sine(0.9 * up + foot), sheet.height() - height * up};
    };
    Line line;
    for (int i = 0; i <= 8; ++i)
        line.push_back(stem(i / 8.0));
    sheet.line(line, 4);
    for (int i = 1; i < blades; ++i) {
        const Spot root = stem(static_cast<double>(i) / blades);
        const double side = i % 2 == 0 ? 1 : -1;
        const double length = 46 - 20.0 * i / blades;
        const Spot tip{root.x + side * length, root.y - 34};
        sheet.smooth_shape({root,
                            {root.x + side * 0.45 * length, root.y - 26},
                            tip,
                            {root.x + side * 0.65 * length, root.y - 8}});
    }
}

/// A snail's spiral: each turn of it 2.9 times as far out.
Spot on_spiral(Spot centre, double turn, double scale) {
    const double radius = scale * std::pow(2.9, turn);
    return {centre.x + radius * cosine(turn), centre.y - radius * sine(turn)};
}

void mussel(Sheet& sheet, Spot hinge, double size, double turn) {
    const auto at = [&](double along, double aside) {
        return Spot{hinge.x + size * (along * cosine(turn) - aside * sine(turn)),
                    hinge.y + size * (along * sine(turn) + aside * cosine(turn))};
    };
    const auto outline = [&](double share) {
        return Line{at(0, 0),     at(0.4 * share, -0.3 * share), at(0.8 * share, -0.3 * share),
                    at(share, 0), at(0.75 * share, 0.2 * share), at(0.35 * share, 0.12 * share)};
    };
    sheet.take(kNight);
    sheet.smooth_shape(outline(1));
    sheet.take(kSea);
    sheet.smooth_shape(outline(0.8));
    sheet.take(kNight);
    sheet.smooth_shape(outline(0.7));
    sheet.take(kMist);
    for (int i = 0; i < 4; ++i)
        sheet.gouge(at(0.16 + 0.11 * i, 0.03), at(0.22 + 0.13 * i, -0.15 - 0.01 * i), 2.4);
}

void herring(Sheet& sheet, Spot nose, double size, Ink back) {
    const auto at = [&](double x, double y) { return Spot{nose.x + size * x, nose.y + size * y}; };
    sheet.take(back);
    sheet.smooth_shape({at(0, 0), at(0.2, -0.1), at(0.45, -0.13), at(0.7, -0.08), at(0.86, 0),
                        at(0.7, 0.07), at(0.45, 0.12), at(0.2, 0.09)});
    sheet.shape({at(0.82, 0), at(1, -0.13), at(0.95, 0), at(1, 0.13)});
    sheet.shape({at(0.42, -0.12), at(0.5, -0.19), at(0.56, -0.11)});
    sheet.take(kPaper);
    sheet.disc(at(0.09, -0.02), 0.018 * size);
    sheet.gouge(at(0.18, -0.07), at(0.17, 0.07), 0.012 * size);
    for (int row = 0; row < 3; ++row)
        for (int i = 0; i < 8 - row; ++i)
            sheet.gouge(at(0.25 + 0.06 * i + 0.03 * row, -0.055 + 0.045 * row),
                        at(0.29 + 0.06 * i + 0.03 * row, -0.045 + 0.045 * row), 0.011 * size);
}

}  // namespace

void kelp(Sheet& sheet) {
    sheet.block(kDeep);
    sheet.take(kSea);
    for (const double foot : {52.0, 128.0, 258.0})
        kelp_frond(sheet, foot, 90 + 40 * uneven(static_cast<int>(foot)), 14, 6);
    sheet.take(kPaper);
    for (const double foot : {86.0, 170.0, 232.0})
        kelp_frond(sheet, foot, 60 + 30 * uneven(static_cast<int>(foot)), 18, 7);
    sheet.take(kOchre);
    for (int i = 0; i < 9; ++i)
        sheet.disc({150 + 105 * uneven(i + 20), 235 + 130 * uneven(i + 60)}, 4.5 + 1.5 * uneven(i));
}

void gull(Sheet& sheet) {
    sheet.block(kMist);
    sheet.take(kOchre);
    sheet.disc({210, 112}, 46);
    sheet.take(kSea);
    sheet.smooth_shape(
        {{-20, 300}, {80, 288}, {160, 302}, {240, 290}, {330, 304}, {330, 460}, {-20, 460}});
    sheet.take(kPaper);
    ripples(sheet, 318, 390, 15);
    sheet.smooth_shape({{30, 150},
                        {74, 148},
                        {118, 176},
                        {150, 208},
                        {190, 168},
                        {232, 138},
                        {276, 132},
                        {240, 168},
                        {206, 206},
                        {188, 236},
                        {166, 250},
                        {128, 250},
                        {104, 236},
                        {128, 226},
                        {92, 186}});
    sheet.take(kNight);
    sheet.gouge({28, 151}, {76, 156}, 7);
    sheet.gouge({278, 131}, {234, 148}, 7);
    sheet.disc({176, 229}, 2.4);
    sheet.gouge({104, 236}, {136, 246}, 5);
    sheet.take(kRust);
    sheet.shape({{190, 229}, {210, 236}, {188, 239}});
}

void shell(Sheet& sheet) {
    sheet.block(kDeep);
    const Spot centre{134, 186};
    sheet.take(kOchre);
    Line body;
    for (int i = 0; i <= 36; ++i)
        body.push_back(on_spiral(centre, 1 + i / 36.0, 12.5));
    sheet.smooth_shape(body);
    sheet.take(kRust);
    Line seam;
    for (int i = 0; i <= 72; ++i)
        seam.push_back(on_spiral(centre, -0.6 + i / 28.0, 12.5));
    sheet.line(seam, 5);
    for (int i = 0; i < 20; ++i) {
        const double turn = 0.95 + i / 19.5;
        const Spot inner = on_spiral(centre, turn - 0.93, 12.5);
        const Spot outer = on_spiral(centre, turn - 0.03, 12.5);
        sheet.gouge(inner, outer, 4.5);
    }
    sheet.take(kPaper);
    ripples(sheet, 324, 380, 12);
}

void mussels(Sheet& sheet) {
    sheet.block(kOchre);
    sheet.take(kPaper);
    for (int i = 0; i < 40; ++i)
        sheet.disc({180 + 160 * uneven(i + 11), 180 + 160 * uneven(i + 77)}, 2.4 + uneven(i));
    mussel(sheet, {60, 132}, 176, 0.94);
    mussel(sheet, {318, 128}, 170, 0.34);
    mussel(sheet, {56, 246}, 168, 0.06);
}

void shoal(Sheet& sheet) {
    sheet.block(kMist);
    sheet.take(kPaper);
    ripples(sheet, 34, 280, 30);
    herring(sheet, {48, 92}, 190, kDeep);
    herring(sheet, {176, 154}, 190, kSea);
    herring(sheet, {62, 218}, 210, kDeep);
    herring(sheet, {286, 84}, 96, kRust);
}

}  // namespace lino

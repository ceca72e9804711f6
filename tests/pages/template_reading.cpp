#include "pages/template_reading.h"

#include "pages/render.h"
#include "pages/sheet_hanging_templates.h"
#include "pages/theme.h"
#include "pages/true_page.h"
#include "support/scenes.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

namespace wallwright::test {

using namespace pages;
using geometry::Page;

namespace {

wall::Piece& hang_from(wall::Piece& piece, wall::HangerType hanger) {
    piece.hanger.type = hanger;
    return piece;
}

bool upright(const PdfLine& line) {
    return std::abs(line.from.x - line.to.x) < 1e-3;
}
double length_of(const PdfLine& line) {
    return distance(line.from, line.to);
}

/// The page that a sheet of a tiling says it is; "A1" for the only one.
std::string page_name(const draw::PageDrawing& sheet) {
    const auto texts = shapes_in<PageText>(sheet.shapes);
    for (std::size_t i = 0; i + 1 < texts.size(); ++i)
        if (texts[i].text == "page")
            return texts[i + 1].text;
    return "A1";
}

/// Pages of one piece as a person tapes them: each with where its corner comes to lie.
struct Taped {
    std::map<std::string, std::vector<PdfLine>> pages;
    std::map<std::string, geometry::Vec<Page>> moved;

    [[nodiscard]] std::vector<PdfLine> lines() const {
        std::vector<PdfLine> all;
        for (const auto& [name, lines] : pages)
            for (PdfLine line : lines) {
                line.from = line.from + moved.at(name);
                line.to = line.to + moved.at(name);
                all.push_back(line);
            }
        return all;
    }
};

enum class Side { left, right, top, bottom };

/// The two join marks at one side, from the left or from the top.
std::vector<Spot> join_marks(const std::vector<PdfLine>& lines, Side side) {
    std::vector<Spot> marks = crosses_in(lines, kJoinStroke, 2 * kJoinReach + 0.01);
    const auto out = [side](Spot at) {
        return side == Side::left    ? -at.x
               : side == Side::right ? at.x
               : side == Side::top   ? -at.y
                                     : at.y;
    };
    std::ranges::sort(marks, [&](Spot a, Spot b) { return out(a) > out(b); });
    marks.resize(std::min<std::size_t>(marks.size(), 2));
    std::ranges::sort(marks, [](Spot a, Spot b) { return a.x + a.y < b.x + b.y; });
    return marks;
}

std::string neighbour_of(const std::string& name, Side side) {
    const int row = name[0] - 'A' + (side == Side::bottom) - (side == Side::top);
    const int column = std::stoi(name.substr(1)) + (side == Side::right) - (side == Side::left);
    return std::string(1, static_cast<char>('A' + row)) + std::to_string(column);
}

Side opposite(Side side) {
    constexpr Side kOpposite[] = {Side::right, Side::left, Side::bottom, Side::top};
    return kOpposite[static_cast<std::size_t>(side)];
}

}  // namespace

wall::Project wall_to_hang() {
    wall::Project project = scenes::wall_of(4000, 2600);
    project.title = "Stair wall";
    hang_from(scenes::add_piece(project, "kelp", {200, 1200}, {300, 400}),
              wall::HangerType::strips);
    hang_from(scenes::add_piece(project, "dune", {600, 1210.5}, {508, 406.4}),
              wall::HangerType::two_rings);
    hang_from(scenes::add_piece(project, "tide", {1200, 1100}, {420, 594}),
              wall::HangerType::cord_one_hook)
        .turned = true;
    hang_from(scenes::add_piece(project, "wreck", {1900, 1000}, {700, 900}),
              wall::HangerType::cord_two_hooks);
    hang_from(scenes::add_piece(project, "gull", {2700, 1300.25}, {210, 148}),
              wall::HangerType::sawtooth);
    scenes::add_hung(project, "reef", {3000, 1300}, {250, 250});
    return project;
}

rules::Assessment assessed(const wall::Project& project) {
    return rules::assess(project, scenes::small_catalogue());
}

std::vector<draw::PageDrawing> templates(const wall::Project& project, TemplateKind kind,
                                         Paper paper) {
    SheetOptions options;
    options.paper = paper;
    options.templates = kind;
    return hanging_template_sheets(project, assessed(project), options);
}

std::string running_text(const std::vector<draw::PageDrawing>& sheets) {
    std::string words;
    for (const draw::PageDrawing& sheet : sheets)
        words += words_in(sheet.shapes);
    std::ranges::replace(words, '\n', ' ');
    return words;
}

bool level(const PdfLine& line) {
    return std::abs(line.from.y - line.to.y) < 1e-3;
}
std::vector<PdfLine> of_width(const std::vector<PdfLine>& lines, double width) {
    std::vector<PdfLine> found;
    for (const PdfLine& line : lines)
        if (std::abs(line.width - width) < 0.005)
            found.push_back(line);
    return found;
}

std::vector<Spot> crosses_in(const std::vector<PdfLine>& lines, const draw::Stroke& stroke,
                             double reach) {
    std::vector<Spot> found;
    const std::vector<PdfLine> thin = of_width(lines, stroke.width);
    const std::string colour = pdf_colour(colour_of(stroke.paint));
    for (const PdfLine& across : thin)
        for (const PdfLine& up : thin) {
            if (!level(across) || !upright(up) || across.colour != colour || up.colour != colour ||
                length_of(across) > reach || length_of(up) > reach)
                continue;
            const Spot at{up.from.x, across.from.y};
            const auto between = [](double value, double a, double b) {
                return value > std::min(a, b) - 0.01 && value < std::max(a, b) + 0.01;
            };
            if (between(at.x, across.from.x, across.to.x) && between(at.y, up.from.y, up.to.y))
                found.push_back(at);
        }
    return found;
}

std::vector<PdfLine> taped(const std::vector<draw::PageDrawing>& sheets) {
    Taped all;
    const auto pages = lines_in_pdf(to_pdf(sheets, "t"));
    REQUIRE(pages.size() == sheets.size());
    for (std::size_t i = 0; i < sheets.size(); ++i)
        all.pages[page_name(sheets[i])] = pages[i];
    REQUIRE(all.pages.size() == sheets.size());
    std::vector<std::string> next{page_name(sheets.front())};
    all.moved[next.front()] = {};
    while (!next.empty()) {
        const std::string here = next.back();
        next.pop_back();
        for (const Side side : {Side::left, Side::right, Side::top, Side::bottom}) {
            const std::string there = neighbour_of(here, side);
            if (!all.pages.contains(there))
                continue;
            const auto own = join_marks(all.pages[here], side);
            const auto other = join_marks(all.pages[there], opposite(side));
            REQUIRE(own.size() == 2);
            REQUIRE(other.size() == 2);
            const auto move = all.moved[here] + (own[0] - other[0]);
            const auto again = all.moved[here] + (own[1] - other[1]);
            CHECK(std::hypot(move.x - again.x, move.y - again.y) < kExact);
            if (all.moved.contains(there)) {
                CHECK(std::hypot(move.x - all.moved[there].x, move.y - all.moved[there].y) <
                      kExact);
                continue;
            }
            all.moved[there] = move;
            next.push_back(there);
        }
    }
    CHECK(all.moved.size() == all.pages.size());
    return all.lines();
}

Area bounds_of(const std::vector<PdfLine>& lines) {
    Area bounds{lines.front().from, lines.front().from};
    for (const PdfLine& line : lines)
        bounds = hull(bounds, hull(Area{line.from, line.from}, Area{line.to, line.to}));
    return bounds;
}

bool cover(const std::vector<PdfLine>& lines, Spot from, Spot to) {
    const double whole = distance(from, to);
    double reached = 0;
    for (bool further = true; further && reached < whole - kExact;) {
        further = false;
        const Spot here = from + (reached / whole) * (to - from);
        for (const PdfLine& line : lines)
            for (const auto& [a, b] :
                 {std::pair(line.from, line.to), std::pair(line.to, line.from)}) {
                const double off = distance(a, here) + distance(here, b) - distance(a, b);
                const double along = distance(from, b);
                if (off < 2 * kExact && along > reached + kExact &&
                    std::abs(distance(from, b) + distance(b, to) - whole) < 0.1) {
                    reached = along;
                    further = true;
                }
            }
    }
    return reached >= whole - kExact;
}

bool has_spot(const std::vector<Spot>& spots, Spot wanted) {
    return std::ranges::any_of(spots, [&](Spot one) { return distance(one, wanted) < kExact; });
}

}  // namespace wallwright::test

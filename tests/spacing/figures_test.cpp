// Against figures from outside: tests/data/spacing/README.md says where they come from.
#include "spacing/even.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

using namespace wallwright;
using namespace wallwright::spacing;

namespace {

constexpr double kGap = 50;

struct Figures {
    std::string name;
    std::size_t count = 0;
    double vpsc = 0;
    std::optional<double> best;
    bool proven = false;
};

std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells;
    std::istringstream in(line);
    for (std::string cell; std::getline(in, cell, ',');)
        cells.push_back(cell);
    return cells;
}

std::vector<std::string> lines_of(const std::string& file) {
    std::ifstream in(std::string(WW_TEST_DATA) + "/spacing/" + file);
    REQUIRE(in);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);)
        if (!line.empty() && line.front() != '#')
            lines.push_back(line);
    return lines;
}

std::vector<Figures> all_figures() {
    std::vector<Figures> all;
    for (const std::string& line : lines_of("overlap_results.csv")) {
        const auto cells = cells_of(line);
        if (cells.at(0) == "instance")
            continue;
        Figures one{cells[0], std::stoul(cells.at(1)), std::stod(cells.at(3)), {}, false};
        if (cells.size() > 7 && !cells[7].empty())
            one.best = std::stod(cells[7]);
        one.proven = cells.size() > 8 && cells[8] == "1";
        all.push_back(one);
    }
    return all;
}

std::vector<wall::Placed> pieces_of(const std::string& name) {
    std::vector<wall::Placed> pieces;
    for (const std::string& line : lines_of("overlap_" + name + ".csv")) {
        const auto cells = cells_of(line);
        const auto place =
            geometry::Rect<geometry::Wall>::at({std::stod(cells.at(0)), std::stod(cells.at(1))},
                                               {std::stod(cells.at(2)), std::stod(cells.at(3))});
        pieces.push_back({{std::to_string(pieces.size())}, place, false});
    }
    return pieces;
}

bool all_apart(const std::vector<wall::Placed>& pieces) {
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = i + 1; j < pieces.size(); ++j)
            if (geometry::overlap_x(pieces[i].place, pieces[j].place) > 1e-6 - kGap &&
                geometry::overlap_y(pieces[i].place, pieces[j].place) > 1e-6 - kGap)
                return false;
    return true;
}

double squared_movement(const std::vector<wall::Placed>& from,
                        const std::vector<wall::Placed>& to) {
    double sum = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
        const auto by = to[i].place.min - from[i].place.min;
        sum += by.x * by.x + by.y * by.y;
    }
    return sum;
}

}  // namespace

TEST_CASE(
    "Taking overlaps away moves pieces no more than the published method, and little more than the "
    "best known") {
    const auto figures = all_figures();
    REQUIRE(figures.size() > 20);
    int proved = 0;
    for (const Figures& known : figures) {
        const auto pieces = pieces_of(known.name);
        REQUIRE(pieces.size() == known.count);
        const EvenResult parted = part(pieces, kGap, kUsualEffort);
        INFO(known.name);
        CHECK(all_apart(parted.pieces));
        CHECK(parted.moved_squared ==
              Approx(squared_movement(pieces, parted.pieces)).epsilon(1e-9));
        CHECK(parted.moved_squared <= known.vpsc * (1 + 1e-9));
        if (known.best && known.count <= 30)
            CHECK(parted.moved_squared <= 1.25 * *known.best);
        if (known.proven)
            CHECK(parted.moved_squared >= *known.best * (1 - 1e-6));
        proved += parted.least_proved ? 1 : 0;
        if (known.proven && parted.least_proved)
            CHECK(parted.moved_squared == Approx(*known.best).epsilon(1e-6));
    }
    CHECK(proved >= 20);
}

TEST_CASE(
    "A wall of a thousand pieces is parted with no more movement than by the published method") {
    int seen = 0;
    for (const std::string& line : lines_of("overlap_large.csv")) {
        const auto cells = cells_of(line);
        if (cells.at(0) == "instance")
            continue;
        ++seen;
        const auto pieces = pieces_of(cells[0]);
        INFO(cells[0]);
        REQUIRE(pieces.size() == std::stoul(cells.at(1)));
        // For the largest the first good answer is enough, and keeps the test short.
        const EvenResult parted = part(pieces, kGap, pieces.size() > 100 ? 0 : kUsualEffort);
        CHECK(all_apart(parted.pieces));
        CHECK(parted.moved_squared <= std::stod(cells.at(2)) * 1.0005);  // the figure is rounded
    }
    CHECK(seen == 24);
}

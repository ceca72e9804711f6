#include "draw/measures.h"

#include "draw/dimensions.h"

#include <algorithm>
#include <cmath>

namespace wallwright::draw {

namespace {

using geometry::Wall;
using spacing::Axis;
using spacing::Group;

constexpr double kFirst = 6;  // mm on paper from the wall to the nearest chain
constexpr double kPitch = 6.5;
constexpr std::size_t kMostColumns = 3;

/// Groups whose spans along one axis are apart, so that one chain can measure them all.
using Row = std::vector<const Group*>;

std::vector<Row> rows_of(const std::vector<Group>& groups) {
    std::vector<Row> rows;
    for (const Group& group : groups) {
        const auto clear = [&group](const Row& row) {
            return row.back()->bounds.max.x <= group.bounds.min.x;
        };
        const auto row = std::find_if(rows.begin(), rows.end(), clear);
        if (row == rows.end())
            rows.push_back({&group});
        else
            row->push_back(&group);
    }
    return rows;
}

/// The y of the outline's highest corner on the upright line at x.
double top_at(const Board& board, double x) {
    double top = board.wall.min.y;
    for (const Point<Wall> corner : board.project.room.outline.corners)
        if (std::abs(corner.x - x) < 0.5)
            top = std::max(top, corner.y);
    return top;
}

/// One more chain, further out than the last.
class Rows {
  public:
    Rows(const Board& board, Axis axis, double edge, double outward)
        : board_(board), axis_(axis), edge_(edge), outward_(outward) {}

    void add(std::vector<Stop> stops) {
        const double out = board_.on_wall(kFirst + kPitch * static_cast<double>(chains_.size()));
        chains_.push_back({axis_, edge_ + outward_ * out, std::move(stops)});
    }
    [[nodiscard]] std::size_t count() const { return chains_.size(); }
    [[nodiscard]] const std::vector<Chain>& chains() const { return chains_; }

  private:
    const Board& board_;
    Axis axis_;
    double edge_;
    double outward_;
    std::vector<Chain> chains_;
};

void add_chains_of(const Rows& rows, std::vector<Chain>& chains) {
    chains.insert(chains.end(), rows.chains().begin(), rows.chains().end());
}

void measure_widths(const Board& board, std::vector<Chain>& chains) {
    Rows rows(board, Axis::horizontal, board.wall.max.y, 1);
    const bool from_left = board.project.datum.side == wall::DatumSide::left;
    const double corner = from_left ? board.wall.min.x : board.wall.max.x;
    for (const Row& row : rows_of(board.assessment.groups)) {
        std::vector<Stop> stops{{corner, top_at(board, corner)}};
        for (const Group* group : row) {
            stops.push_back({group->bounds.min.x, group->bounds.max.y});
            stops.push_back({group->bounds.max.x, group->bounds.max.y});
        }
        rows.add(std::move(stops));
    }
    const Stop left{board.wall.min.x, top_at(board, board.wall.min.x)};
    const Stop right{board.wall.max.x, top_at(board, board.wall.max.x)};
    std::vector<Stop> ceiling{left, right};
    for (const Point<Wall> point : board.project.room.outline.corners)
        if (point.y > board.wall.max.y - 0.5 && point.x > left.at + 0.5 && point.x < right.at - 0.5)
            ceiling.push_back({point.x, point.y});
    if (ceiling.size() > 2)
        rows.add(ceiling);
    rows.add({left, right});
    add_chains_of(rows, chains);
}

/// The height that upright measures start from: the datum's.
double datum_height(const Board& board) {
    switch (board.project.datum.height) {
        case wall::DatumHeight::floor:
            return 0;
        case wall::DatumHeight::ceiling:
            return board.wall.max.y;
        case wall::DatumHeight::level_line:
            return board.project.datum.level_line;
        case wall::DatumHeight::piece:
            if (const auto place = wall::datum_place(board.project))
                return place->top();
    }
    return 0;
}

/// The heights of the outline's corners at one of its upright edges.
std::vector<Stop> edge_heights(const Board& board, double x) {
    std::vector<Stop> stops;
    for (const Point<Wall> corner : board.project.room.outline.corners)
        if (std::abs(corner.x - x) < 0.5)
            stops.push_back({corner.y, x});
    std::sort(stops.begin(), stops.end(), [](const Stop& a, const Stop& b) { return a.at < b.at; });
    return stops;
}

bool same_heights(const std::vector<Stop>& a, const std::vector<Stop>& b) {
    return std::equal(
        a.begin(), a.end(), b.begin(), b.end(),
        [](const Stop& one, const Stop& other) { return std::abs(one.at - other.at) < 0.5; });
}

bool reaches(const std::vector<Stop>& stops, double height) {
    return std::any_of(stops.begin(), stops.end(),
                       [height](const Stop& stop) { return std::abs(stop.at - height) < 0.5; });
}

/// Where the outline is highest or lowest, for an extension line.
Stop extreme(const Board& board, double height) {
    for (const Point<Wall> corner : board.project.room.outline.corners)
        if (std::abs(corner.y - height) < 0.5)
            return {height, corner.x};
    return {height, board.wall.min.x};
}

/// Upright chains of the groups nearer to one side, each pair of heights once.
void add_group_heights(const Board& board, Rows& columns, bool left) {
    std::vector<std::pair<double, double>> shown;
    for (const Group& group : board.assessment.groups) {
        const bool nearer_left = group.bounds.centre().x <= board.wall.centre().x;
        const std::pair heights{std::round(group.bounds.min.y), std::round(group.bounds.max.y)};
        if (nearer_left != left || columns.count() >= kMostColumns ||
            std::count(shown.begin(), shown.end(), heights) > 0)
            continue;
        shown.push_back(heights);
        const double side = left ? group.bounds.min.x : group.bounds.max.x;
        columns.add({{datum_height(board), left ? board.wall.min.x : board.wall.max.x},
                     {group.bounds.min.y, side},
                     {group.bounds.max.y, side}});
    }
}

void measure_heights(const Board& board, std::vector<Chain>& chains) {
    Rows left(board, Axis::vertical, board.wall.min.x, -1);
    Rows right(board, Axis::vertical, board.wall.max.x, 1);
    add_group_heights(board, left, true);
    add_group_heights(board, right, false);
    const std::vector<Stop> at_left = edge_heights(board, board.wall.min.x);
    const std::vector<Stop> at_right = edge_heights(board, board.wall.max.x);
    left.add(at_left);
    if (!same_heights(at_left, at_right))
        right.add(at_right);
    const auto shown = [&](double height) {
        return reaches(at_left, height) || reaches(at_right, height);
    };
    if (!shown(board.wall.min.y) || !shown(board.wall.max.y))
        left.add({extreme(board, board.wall.min.y), extreme(board, board.wall.max.y)});
    add_chains_of(left, chains);
    add_chains_of(right, chains);
}

}  // namespace

void add_outer_measures(Board& board) {
    std::vector<Chain> chains;
    measure_widths(board, chains);
    measure_heights(board, chains);
    add_chains(board, std::move(chains));
}

}  // namespace wallwright::draw

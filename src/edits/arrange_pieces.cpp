// Pieces brought into line with each other and at equal gaps.
#include "edits/look_up.h"
#include "edits/pieces.h"
#include "edits/sound.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>

namespace wallwright::edits {

using geometry::Wall;
using wall::Piece;
using wall::Project;
using Rect = geometry::Rect<Wall>;
using Pieces = std::vector<Piece*>;

namespace {

double line_of(const Rect& place, Line line) {
    switch (line) {
        case Line::left:
            return place.left();
        case Line::centre_x:
            return place.centre().x;
        case Line::right:
            return place.right();
        case Line::bottom:
            return place.bottom();
        case Line::centre_y:
            return place.centre().y;
        case Line::top:
            return place.top();
    }
    return 0;
}

bool is_across(Line line) {
    return line == Line::left || line == Line::centre_x || line == Line::right;
}

Rect place_in(const Project& project, const Piece& piece) {
    return Rect::at(*piece.at, outside_size(project, piece));
}

double common_line(const Project& project, const Pieces& pieces, Line line) {
    Rect all = place_in(project, *pieces.front());
    for (const Piece* piece : pieces) {
        const Rect place = place_in(project, *piece);
        if (is_fixed(*piece))
            return line_of(place, line);
        all = hull(all, place);
    }
    return line_of(all, line);
}

/// A placed piece along one axis, mm.
struct Stretch {
    Piece* piece = nullptr;
    double low = 0;
    double length = 0;

    [[nodiscard]] double high() const { return low + length; }
    [[nodiscard]] double middle() const { return low + length / 2; }
};

/// From the left or from below.
std::vector<Stretch> in_order(const Project& project, const Pieces& pieces, Direction direction) {
    std::vector<Stretch> row;
    for (Piece* piece : pieces) {
        const Rect place = place_in(project, *piece);
        row.push_back(direction == Direction::across
                          ? Stretch{piece, place.left(), place.width()}
                          : Stretch{piece, place.bottom(), place.height()});
    }
    std::stable_sort(row.begin(), row.end(),
                     [](const Stretch& a, const Stretch& b) { return a.middle() < b.middle(); });
    return row;
}

/// The gap, mm, that makes all gaps equal while the outermost stay; less than 0 when there is not
/// the room.
double equal_gap(const std::vector<Stretch>& row) {
    double room = row.back().low - row.front().high();
    for (std::size_t i = 1; i + 1 < row.size(); ++i)
        room -= row[i].length;
    return room / static_cast<double>(row.size() - 1);
}

Problem no_room(const std::vector<Stretch>& row, double missing, Direction direction,
                units::LengthUnit unit) {
    return {"",
            fmt::format("what is between {} and {} is {} too {}", title_of(*row.front().piece),
                        title_of(*row.back().piece), units::format_tolerance(missing, unit),
                        direction == Direction::across ? "wide" : "high"),
            "move these two apart", ""};
}

}  // namespace

Result<Project> align(Project project, PieceIds ids, Line line) {
    const auto pieces = placed_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    if (pieces->size() < 2)
        return fail({"", "it takes two pieces to line up", "select two or more", ""});
    const double common = common_line(project, *pieces, line);
    for (Piece* piece : *pieces) {
        if (is_fixed(*piece))
            continue;
        const double way = common - line_of(place_in(project, *piece), line);
        (is_across(line) ? piece->at->x : piece->at->y) += way;
    }
    return sound(std::move(project));
}

Result<Project> distribute(Project project, PieceIds ids, Direction direction) {
    const auto pieces = placed_in(project, ids);
    if (!pieces)
        return fail(pieces.error());
    if (pieces->size() < 3)
        return fail({"", "it takes three pieces to make gaps equal", "select three or more", ""});
    const std::vector<Stretch> row = in_order(project, *pieces, direction);
    const double gap = equal_gap(row);
    if (gap < -geometry::kLengthEps)
        return fail(
            no_room(row, -gap * static_cast<double>(row.size() - 1), direction, project.unit));
    double low = row.front().high() + gap;
    for (std::size_t i = 1; i + 1 < row.size(); ++i) {
        Piece& piece = *row[i].piece;
        if (auto may = may_move(piece); !may)
            return fail(std::move(may.error()));
        (direction == Direction::across ? piece.at->x : piece.at->y) = low;
        low += row[i].length + gap;
    }
    return sound(std::move(project));
}

}  // namespace wallwright::edits

#include "hanging/marks.h"

#include "hanging/hanging_order.h"
#include "hanging/tape.h"

#include <algorithm>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Rect;
using geometry::Span;
using geometry::Wall;

/// A planned piece with fixings.
struct Task {
    const Hanging* hanging = nullptr;
    Rect<Wall> place;
    bool assumed = false;  ///< Its hanger was not measured.
    int stage = 0;
};

std::vector<Task> tasks_of(const wall::Project& project, const std::vector<Hanging>& hangings) {
    std::vector<Task> tasks;
    for (const Hanging& hanging : hangings) {
        const wall::Piece* piece = find(project, hanging.piece);
        if (piece == nullptr || piece->state != wall::PieceState::planned ||
            hanging.fixings.empty())
            continue;
        if (const auto place = place_of(project, *piece))
            tasks.push_back({&hanging, *place, !is_measured(piece->hanger), piece->stage});
    }
    return tasks;
}

std::vector<Task> in_hanging_order(const std::vector<Task>& tasks) {
    std::vector<Upcoming> pieces;
    pieces.reserve(tasks.size());
    for (const Task& task : tasks)
        pieces.push_back({task.place, task.stage});
    std::vector<Task> ordered;
    for (const std::size_t index : hanging_order(pieces))
        ordered.push_back(tasks[index]);
    return ordered;
}

/// What to pencil for one piece, before it is measured.
std::vector<Mark> pencilled(const Task& task) {
    std::vector<Mark> marks;
    const auto add = [&](MarkKind kind, Point<Wall> at, std::string what) {
        Mark mark;
        mark.piece = task.hanging->piece;
        mark.stage = task.stage;
        mark.kind = kind;
        mark.at = at;
        mark.below_top = task.place.top() - at.y;
        mark.assumed = kind == MarkKind::hook && task.assumed;
        mark.what = std::move(what);
        marks.push_back(std::move(mark));
    };
    const std::vector<Fixing>& fixings = task.hanging->fixings;
    if (fixings.front().kind == wall::FixingKind::strip_pair) {
        add(MarkKind::corner, {task.place.left(), task.place.top()}, "top left corner");
        add(MarkKind::corner, {task.place.right(), task.place.top()}, "top right corner");
        return marks;
    }
    const std::string name = fixings.front().kind == wall::FixingKind::screw ? "screw" : "hook";
    for (const Fixing& fixing : fixings) {
        const bool left = &fixing == &fixings.front();
        add(MarkKind::hook, fixing.at,
            fixings.size() == 1 ? name : (left ? "left " : "right ") + name);
    }
    return marks;
}

/// Measures marks from the datum.
class Tape {
  public:
    explicit Tape(const wall::Project& project)
        : project_(project), bounds_(geometry::bounds(project.room.outline)) {}

    void measure(Mark& mark) const {
        mark.across = across(mark.at);
        mark.up = up(mark.at);
        mark.across_error = mark_error(project_.tape, mark.across);
        mark.up_error = mark_error(project_.tape, mark.up);
    }

  private:
    [[nodiscard]] double across(Point<Wall> at) const {
        return project_.datum.side == wall::DatumSide::left ? at.x - bounds_.left()
                                                            : bounds_.right() - at.x;
    }

    [[nodiscard]] double up(Point<Wall> at) const {
        const Span here = vertical_span(project_.room.outline, at.x)
                              .value_or(Span{bounds_.bottom(), bounds_.top()});
        switch (project_.datum.height) {
            case wall::DatumHeight::ceiling:
                return here.high - at.y;
            case wall::DatumHeight::level_line:
                return at.y - project_.datum.level_line;
            case wall::DatumHeight::floor:
                break;
        }
        return at.y - here.low;
    }

    const wall::Project& project_;
    Rect<Wall> bounds_;
};

std::vector<CheckMeasure> checks_between(const std::vector<Mark>& marks) {
    std::vector<CheckMeasure> checks;
    for (std::size_t i = 1; i < marks.size(); ++i)
        checks.push_back(
            {marks[i - 1].number, marks[i].number, distance(marks[i - 1].at, marks[i].at)});
    return checks;
}

}  // namespace

MarksTable marks_of(const wall::Project& project, const std::vector<Hanging>& hangings) {
    MarksTable table;
    table.datum = project.datum;
    const Tape tape(project);
    for (const Task& task : in_hanging_order(tasks_of(project, hangings)))
        for (Mark& mark : pencilled(task)) {
            mark.number = static_cast<int>(table.marks.size()) + 1;
            tape.measure(mark);
            table.marks.push_back(std::move(mark));
        }
    table.checks = checks_between(table.marks);
    return table;
}

bool has_stages(const MarksTable& table) {
    return std::ranges::any_of(table.marks, [](const Mark& mark) { return mark.stage > 0; });
}

}  // namespace wallwright::hanging

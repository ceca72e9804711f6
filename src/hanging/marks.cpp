#include "hanging/marks.h"

#include "hanging/gap_forecast.h"
#include "hanging/hanging_order.h"
#include "hanging/mark_checks.h"
#include "hanging/mark_cord.h"
#include "hanging/mark_neighbours.h"
#include "hanging/mark_tape.h"
#include "hanging/shared_rounding.h"
#include "hanging/tape.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace wallwright::hanging {

namespace {

using geometry::Point;
using geometry::Rect;
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

std::string fixing_word(wall::FixingKind kind) {
    switch (kind) {
        case wall::FixingKind::screw:
            return "screw";
        case wall::FixingKind::rail_hook:
            return "rail hook";
        case wall::FixingKind::nail_hook:
        case wall::FixingKind::strip_pair:
            break;
    }
    return "hook";
}

Mark bare_mark(const Task& task, MarkKind kind, Point<Wall> at, std::string what) {
    Mark mark;
    mark.piece = task.hanging->piece;
    mark.stage = task.stage;
    mark.kind = kind;
    mark.at = at;
    mark.below_top = task.place.top() - at.y;
    mark.what = std::move(what);
    return mark;
}

/// What to pencil for one piece, before it is measured.
std::vector<Mark> pencilled(const Task& task) {
    std::vector<Mark> marks;
    const std::vector<Fixing>& fixings = task.hanging->fixings;
    if (fixings.front().kind == wall::FixingKind::strip_pair) {
        const Rect<Wall>& place = task.place;
        marks.push_back(
            bare_mark(task, MarkKind::corner, {place.left(), place.top()}, "top left corner"));
        marks.push_back(
            bare_mark(task, MarkKind::corner, {place.right(), place.top()}, "top right corner"));
        return marks;
    }
    const std::string name = fixing_word(fixings.front().kind);
    for (const Fixing& fixing : fixings) {
        const bool left = &fixing == &fixings.front();
        const bool rail = fixing.kind == wall::FixingKind::rail_hook;
        Mark mark = bare_mark(task, rail ? MarkKind::rail : MarkKind::hook, fixing.at,
                              fixings.size() == 1 ? name : (left ? "left " : "right ") + name);
        mark.assumed = task.assumed;
        if (rail) {
            mark.cord = fixing.cord;
            mark.below_top += fixing.cord;
        }
        marks.push_back(std::move(mark));
    }
    return marks;
}

/// A piece that is marked, or one that hangs and has no marks.
struct Part {
    wall::PieceId piece;
    Rect<Wall> place;
    std::size_t first = 0;  ///< Of its marks.
    std::size_t count = 0;
};

std::vector<Part> hung_parts(const wall::Project& project) {
    std::vector<Part> parts;
    for (const wall::Piece& piece : project.pieces)
        if (piece.state == wall::PieceState::hung)
            if (const auto place = place_of(project, piece))
                parts.push_back({piece.id, *place});
    return parts;
}

/// Where the mark lies once it is rounded.
Point<Wall> rounded_place(const MarkTape& tape, const Mark& mark) {
    const double aside = tape.across_sign() * (mark.across - tape.across(mark.at));
    if (mark.kind == MarkKind::rail)
        return {mark.at.x + aside, mark.at.y};
    return {mark.at.x + aside, mark.at.y + tape.up_sign() * (mark.up - tape.up(mark.at))};
}

/// Makes the table, step by step.
class Maker {
  public:
    Maker(const wall::Project& project, const std::vector<Hanging>& hangings)
        : project_(project), tape_(project) {
        table_.datum = project.datum;
        if (project.datum.height == wall::DatumHeight::piece && !datum_place(project))
            table_.datum.height = wall::DatumHeight::floor;
        table_.step = tape_.step();
        for (const Task& task : in_hanging_order(tasks_of(project, hangings)))
            pencil(task);
        for (Part& part : hung_parts(project))
            parts_.push_back(std::move(part));
    }

    [[nodiscard]] MarksTable made() {
        if (table_.marks.empty())
            return std::move(table_);
        std::vector<Rect<Wall>> places;
        for (const Part& part : parts_)
            places.push_back(part.place);
        const std::vector<Neighbours> neighbours =
            neighbours_of(places, kApart * project_.style.gap_most);
        round_across(neighbours);
        round_upright(neighbours);
        forecast(neighbours);
        std::vector<Point<Wall>> rounded;
        for (const Mark& mark : table_.marks)
            rounded.push_back(rounded_place(tape_, mark));
        table_.checks = checks_between(table_.marks, rounded, table_.step);
        find_rows();
        compare_chain();
        return std::move(table_);
    }

  private:
    /// Of the most gap in a group, for two pieces to be seen as neighbours (our choice).
    static constexpr double kApart = 2;

    void pencil(const Task& task) {
        const std::size_t first = table_.marks.size();
        for (Mark& mark : pencilled(task)) {
            mark.number = static_cast<int>(table_.marks.size()) + 1;
            mark.across = tape_.across(mark.at);
            mark.up = tape_.up(mark.at);
            mark.across_error = tape_.across_error(mark.at);
            mark.up_error =
                std::hypot(mark.kind == MarkKind::rail ? mark_error(project_.tape, mark.cord)
                                                       : tape_.up_error(mark.at),
                           cord_error(project_, mark));
            table_.marks.push_back(std::move(mark));
        }
        parts_.push_back({task.hanging->piece, task.place, first, table_.marks.size() - first});
    }

    [[nodiscard]] std::span<Mark> marks_of(const Part& part) {
        return std::span(table_.marks).subspan(part.first, part.count);
    }

    /// Each mark's figure, as `read` gives it, rounded and handed to `write`. Figures grow along
    /// the axis or against it for all marks alike.
    template <class Read, class Write>
    void round(const std::vector<Tie>& ties, Read read, Write write) {
        std::vector<Body> bodies(parts_.size());
        for (std::size_t i = 0; i < parts_.size(); ++i)
            for (const Mark& mark : marks_of(parts_[i]))
                bodies[i].marks.push_back(read(mark));
        const auto rounded = rounded_together(bodies, ties, table_.step);
        for (std::size_t i = 0; i < parts_.size(); ++i)
            for (std::size_t k = 0; k < parts_[i].count; ++k)
                write(marks_of(parts_[i])[k], rounded[i][k]);
    }

    /// Gaps along the axis; across it what is meant to be in line.
    static std::vector<Tie> ties_along(const std::vector<Neighbours>& neighbours, bool across) {
        std::vector<Tie> ties;
        for (const Neighbours& pair : neighbours)
            if (pair.across == across || pair.in_line)
                ties.push_back({pair.first, pair.second, pair.across != across});
        return ties;
    }

    void round_across(const std::vector<Neighbours>& neighbours) {
        round(
            ties_along(neighbours, true), [](const Mark& mark) { return mark.across; },
            [](Mark& mark, double across) { mark.across = across; });
    }

    /// What hangs from a rail is as high as its cord is short.
    void round_upright(const std::vector<Neighbours>& neighbours) {
        const double step = table_.step;
        const double sign = -tape_.up_sign();
        round(
            ties_along(neighbours, false),
            [sign](const Mark& mark) {
                return mark.kind == MarkKind::rail ? sign * mark.cord : mark.up;
            },
            [step, sign](Mark& mark, double figure) {
                if (mark.kind == MarkKind::rail) {
                    mark.cord = sign * figure;
                    mark.up = step * std::round(mark.up / step);
                } else {
                    mark.up = figure;
                }
            });
    }

    /// By how much a piece moves when it hangs by its rounded marks.
    [[nodiscard]] double shift(const Part& part, bool across) {
        double sum = 0;
        for (const Mark& mark : marks_of(part)) {
            if (!across && mark.kind == MarkKind::rail) {
                const double exact = mark.at.y - (part.place.top() - mark.below_top);
                sum += exact - mark.cord;
                continue;
            }
            const Point<Wall> place = rounded_place(tape_, mark);
            sum += across ? place.x - mark.at.x : place.y - mark.at.y;
        }
        return part.count > 0 ? sum / static_cast<double>(part.count) : 0;
    }

    void forecast(const std::vector<Neighbours>& neighbours) {
        for (const Neighbours& pair : neighbours) {
            const Part& first = parts_[pair.first];
            const Part& second = parts_[pair.second];
            if (first.count + second.count == 0)
                continue;
            const double gap = pair.gap + shift(second, pair.across) - shift(first, pair.across);
            table_.gaps.push_back(
                {first.piece, second.piece, pair.across, gap,
                 gap_spread(project_, marks_of(first), marks_of(second), pair.across)});
        }
    }

    /// Marks that lie at one height in truth, of two pieces or more: rounding along a floor that
    /// runs off level would part them.
    void find_rows() {
        constexpr double kLevel = 0.1;  // mm; no ruler shows less
        std::vector<const Mark*> by_height;
        for (const Mark& mark : table_.marks)
            by_height.push_back(&mark);
        const auto height = [](const Mark* mark) { return mark->at.y; };
        std::ranges::stable_sort(by_height, {}, height);
        for (auto from = by_height.begin(); from != by_height.end();) {
            const auto to = std::find_if(from, by_height.end(), [&](const Mark* mark) {
                return height(mark) - height(*from) > kLevel;
            });
            add_row({from, to});
            from = to;
        }
        std::ranges::stable_sort(table_.rows, std::greater<>{}, &std::vector<int>::size);
    }

    void add_row(std::vector<const Mark*> row) {
        const bool alone = std::ranges::all_of(
            row, [&row](const Mark* mark) { return mark->piece == row.front()->piece; });
        if (alone)
            return;
        std::ranges::stable_sort(row, {}, [](const Mark* mark) { return mark->at.x; });
        std::vector<int>& numbers = table_.rows.emplace_back();
        for (const Mark* mark : row)
            numbers.push_back(mark->number);
    }

    /// Of a row to both sides of the piece that it is measured from, the side that errs more.
    void compare_chain() {
        if (table_.rows.empty())
            return;
        ChainCompared& chain = table_.chain;
        std::vector<double> one_side;
        std::vector<double> other_side;
        for (const int number : table_.rows.front()) {
            const Mark& mark = table_.marks[static_cast<std::size_t>(number) - 1];
            (mark.across >= 0 ? one_side : other_side).push_back(std::abs(mark.across));
            chain.from_datum = std::max(chain.from_datum, mark.across_error);
        }
        chain.marks = static_cast<int>(one_side.size() + other_side.size());
        for (std::vector<double>* side : {&one_side, &other_side}) {
            const ChainError errors = chain_error(links_of(*side));
            chain.chain_likely = std::max(chain.chain_likely, errors.likely);
            chain.chain_worst = std::max(chain.chain_worst, errors.worst);
        }
    }

    /// The errors of measuring from the datum to the nearest mark and on from each to the next.
    [[nodiscard]] std::vector<double> links_of(std::vector<double>& across) const {
        std::ranges::sort(across);
        double from = 0;
        std::vector<double> links;
        for (const double to : across) {
            links.push_back(mark_error(project_.tape, to - from));
            from = to;
        }
        return links;
    }

    const wall::Project& project_;
    MarkTape tape_;
    MarksTable table_;
    std::vector<Part> parts_;  ///< In the order of hanging, then what hangs.
};

}  // namespace

MarksTable marks_of(const wall::Project& project, const std::vector<Hanging>& hangings) {
    return Maker(project, hangings).made();
}

bool has_stages(const MarksTable& table) {
    return std::ranges::any_of(table.marks, [](const Mark& mark) { return mark.stage > 0; });
}

}  // namespace wallwright::hanging

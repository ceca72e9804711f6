#include "hanging/gap_forecast.h"

#include "hanging/mark_cord.h"
#include "hanging/mark_tape.h"
#include "hanging/tape.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::hanging {

namespace {

using wall::TapeClass;

/// The error of the worst of a piece's marks; 0 for one that hangs.
double worst_across(std::span<const Mark> marks) {
    double worst = 0;
    for (const Mark& mark : marks)
        worst = std::max(worst, mark.across_error);
    return worst;
}

const Mark* worst_upright(std::span<const Mark> marks) {
    const auto worst =
        std::max_element(marks.begin(), marks.end(),
                         [](const Mark& a, const Mark& b) { return a.up_error < b.up_error; });
    return worst == marks.end() ? nullptr : &*worst;
}

bool is_measured_up(const Mark* mark) {
    return mark != nullptr && mark->kind != MarkKind::rail;
}

double across_with(TapeClass tape, std::span<const Mark> marks, double other_end) {
    double worst = 0;
    for (const Mark& mark : marks)
        worst = std::max(worst,
                         mark_error(tape, other_end > 0 ? other_end - mark.across : mark.across));
    return worst;
}

std::vector<Mark> marks_of_piece(std::span<const Mark> marks, const wall::PieceId& piece) {
    std::vector<Mark> found;
    std::ranges::copy_if(marks, std::back_inserter(found),
                         [&piece](const Mark& mark) { return mark.piece == piece; });
    return found;
}

double upright_spread(const wall::Project& project, TapeClass tape, std::span<const Mark> first,
                      std::span<const Mark> second) {
    const Mark* a = worst_upright(first);
    const Mark* b = worst_upright(second);
    if (is_measured_up(a) && is_measured_up(b))
        return std::hypot(MarkTape(project, tape).upright_between(a->at, b->at),
                          cord_error(project, *a), cord_error(project, *b));
    return std::hypot(a != nullptr ? a->up_error : 0, b != nullptr ? b->up_error : 0);
}

/// Another way to measure, and what it would leave open.
struct Way {
    std::string words;
    double spread = 0;
};

/// Ways in the order of what they ask of a person.
class Ways {
  public:
    Ways(const wall::Project& project, std::span<const Mark> marks, const GapForecast& gap)
        : project_(project),
          first_(marks_of_piece(marks, gap.first)),
          second_(marks_of_piece(marks, gap.second)) {
        const bool from_piece = datum_place(project).has_value();
        for (int better = static_cast<int>(project.tape) - 1; better >= 0; --better) {
            const auto tape = static_cast<TapeClass>(better);
            add(fmt::format("a tape of class {}", wall::name_of(tape)),
                gap.across ? across(tape, 0) : upright(tape));
        }
        if (gap.across && !from_piece) {
            const double width = geometry::bounds(project.room.outline).width();
            const bool left = project.datum.side == wall::DatumSide::left;
            add(fmt::format("the {} corner", left ? "right" : "left"), across(project.tape, width));
        }
        if (!gap.across && project.datum.height != wall::DatumHeight::level_line)
            add("a level line near the marks", near_line());
    }

    [[nodiscard]] std::optional<Way> best(double now) const {
        for (const Way& way : ways_)
            if (way.spread <= project_.style.gap_tolerance)
                return way;
        const auto least = std::ranges::min_element(ways_, {}, &Way::spread);
        if (least == ways_.end() || least->spread >= now)
            return std::nullopt;
        return *least;
    }

  private:
    void add(std::string words, double spread) {
        Way& way = ways_.emplace_back();
        way.words = std::move(words);
        way.spread = spread;
    }

    [[nodiscard]] double across(TapeClass tape, double other_end) const {
        return std::hypot(across_with(tape, first_, other_end),
                          across_with(tape, second_, other_end));
    }

    [[nodiscard]] double upright(TapeClass tape) const {
        return upright_spread(project_, tape, first_, second_);
    }

    /// From a line at the height of any of the marks.
    [[nodiscard]] double near_line() const {
        const auto reach = [this](std::span<const Mark> marks) {
            double most = 0;
            double cord = 0;
            for (const Mark& mark : marks) {
                cord = std::max(cord, cord_error(project_, mark));
                for (const auto* all : {&first_, &second_})
                    for (const Mark& other : *all)
                        most = std::max(most, std::abs(mark.at.y - other.at.y));
            }
            return marks.empty() ? 0.0 : std::hypot(mark_error(project_.tape, most), cord);
        };
        return std::hypot(reach(first_), reach(second_));
    }

    const wall::Project& project_;
    std::vector<Mark> first_;
    std::vector<Mark> second_;
    std::vector<Way> ways_;
};

}  // namespace

double gap_spread(const wall::Project& project, std::span<const Mark> first,
                  std::span<const Mark> second, bool across) {
    if (across)
        return std::hypot(worst_across(first), worst_across(second));
    return upright_spread(project, project.tape, first, second);
}

std::optional<std::string> truer_way(const wall::Project& project, std::span<const Mark> marks,
                                     const GapForecast& gap) {
    const auto way = Ways(project, marks, gap).best(gap.spread);
    if (!way)
        return std::nullopt;
    return fmt::format("{} leaves +-{}", way->words,
                       units::format_length(way->spread, project.unit));
}

}  // namespace wallwright::hanging

#include "pages/sheet_mount.h"

#include "draw/mount_back.h"
#include "draw/paths.h"
#include "draw/tint.h"
#include "mounts/design/cutting_words.h"
#include "mounts/design/remarks.h"
#include "mounts/design/rule_step.h"
#include "pages/mount_job.h"
#include "pages/render.h"
#include "pages/sheet_template.h"
#include "pages/standard_scale.h"
#include "pages/step_list.h"
#include "pages/table.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>

namespace wallwright::pages {

namespace {

using draw::Align;
using draw::Ink;
using geometry::Page;
using mounts::Borders;
using units::LengthUnit;

constexpr Type kCaption{2.5, true};
constexpr Type kBody{2.2, false};
constexpr Type kSmall{1.8, false};
constexpr double kAboveCaption = 3;
constexpr double kBelowCaption = 2;
constexpr double kAboveLegend = 2;    // mm below a drawing, to the words on its lines
constexpr double kLegend = 12;        // mm that both take at the most
constexpr double kSwatch = 3;         // mm, of a board's colour
constexpr double kBesideDrawing = 8;  // mm from a drawing to the table beside it
constexpr double kBetweenBoards = 3;
constexpr double kTableWidth = 88;
constexpr double kAboveSizes = 4;

std::string size_words(geometry::Size size, LengthUnit unit) {
    return fmt::format("{} × {}", units::format_number(size.width, unit),
                       units::format_length(size.height, unit));
}

SheetStyle style_of(const wall::Project& project, const MountJob& job, Paper paper) {
    SheetStyle style;
    style.paper = paper;
    style.project_title = project.title;
    style.name = "Mount of " + short_titles_of(job);
    style.fields = {{"blank", size_words(job.design.blank, project.unit)},
                    {"layers", fmt::format("{}", job.design.layers.size())},
                    {"mounts", fmt::format("{}", job.pieces.size())}};
    return style;
}

Row border_row(const std::string& name, const Borders& borders, LengthUnit unit, bool bold) {
    Row row{{Words{name, bold}}};
    for (const double mm : {borders.left, borders.right, borders.top, borders.bottom})
        row.cells.emplace_back(Words{units::format_number(mm, unit), bold});
    return row;
}

/// As seen from the front.
Table border_table(const MountJob& job, const mounts::BackMarks& marks, LengthUnit unit) {
    constexpr double kFigure = 14.8;
    Table table;
    table.columns = {{fmt::format("From the front, {}", units::name_of(unit)), 0, Align::left},
                     {"left", kFigure, Align::right},
                     {"right", kFigure, Align::right},
                     {"top", kFigure, Align::right},
                     {"bottom", kFigure, Align::right}};
    table.rows = {border_row("border as cut", marks.cut, unit, false),
                  border_row("under the lip", marks.lip, unit, false),
                  border_row("border seen", marks.seen, unit, true)};
    if (job.design.floats)
        return table;
    const bool even = std::all_of(
        marks.hinges.begin(), marks.hinges.end(),
        [&](const mounts::Hinging& one) { return one.covered == marks.hinges.front().covered; });
    for (std::size_t i = 0; i < (even ? 1 : marks.hinges.size()); ++i)
        table.rows.push_back(border_row(
            even ? "print covered" : fmt::format("{}, print covered", mounts::letter_of(i)),
            marks.hinges[i].covered, unit, false));
    return table;
}

std::string opening_name(const mounts::MountDesign& design, std::size_t layer, std::size_t i) {
    const bool several = design.prints.size() > 1;
    if (design.layers.size() == 1)
        return several ? fmt::format("window {}", mounts::letter_of(i)) : "window";
    return fmt::format("layer {}{}", layer + 1,
                       several ? fmt::format(", window {}", mounts::letter_of(i)) : "");
}

/// The boards' sizes, each window's line on the back and its opening at the face, what each layer
/// shows of itself.
Table opening_table(const MountJob& job, const mounts::BackMarks& marks, LengthUnit unit) {
    Table table;
    table.columns = {{fmt::format("Sizes, {}", units::name_of(unit)), 0, Align::left},
                     {"width", 20, Align::right},
                     {"height", 20, Align::right}};
    const auto add = [&](const std::string& name, geometry::Size size, bool bold) {
        table.rows.push_back(
            {{Words{name, bold}, Words{units::format_number(size.width, unit), bold},
              Words{units::format_number(size.height, unit), bold}}});
    };
    const mounts::MountDesign& design = job.design;
    const std::size_t boards = design.layers.size() * job.pieces.size();
    add(boards == 1 ? "blank" : fmt::format("blank, {} times", boards), marks.blank, true);
    for (std::size_t layer = 0; layer < marks.layers.size(); ++layer) {
        const mounts::LayerMarks& board = marks.layers[layer];
        for (std::size_t i = 0; i < board.windows.size(); ++i) {
            const std::string name = opening_name(design, layer, i);
            if (board.bevel > 0)
                add(name + ", at the back", board.windows[i].line.size(), false);
            add(name + ", at the face", board.windows[i].face.size(), false);
        }
        if (layer == 0)
            continue;
        add(fmt::format("layer {}, revealed by", layer + 1), {board.reveal, board.reveal}, false);
        if (marks.layers[layer - 1].bevel > 0)
            add(fmt::format("layer {}, its colour shown", layer + 1), {board.shown, board.shown},
                false);
    }
    const bool several = design.prints.size() > 1;
    for (std::size_t i = 0; i < marks.hinges.size(); ++i)
        add(fmt::format("print{}: {}", several ? " " + mounts::letter_of(i) : "",
                        design.prints[i].title),
            marks.hinges[i].place.size(), false);
    return table;
}

std::string caption_of(const MountJob& job, std::size_t layer, double denominator) {
    const std::size_t count = job.design.layers.size();
    std::string words = count == 1 ? "The board" : fmt::format("Layer {} of {}", layer + 1, count);
    if (count > 1 && layer == 0)
        words += " (top)";
    if (count > 1 && layer + 1 == count)
        words += " (at the print)";
    words += job.design.floats ? ", from the front" : ", from behind";
    return words + (denominator == 1 ? ", true size" : fmt::format(", 1:{}", denominator));
}

std::string legend_of(const MountJob& job, const mounts::BackMarks& marks, double denominator) {
    constexpr double kToldApart = 0.5;  // mm on paper
    if (job.design.floats)
        return "Nothing is cut out. Corners: marks for the print's upper corners. Dashed: where it "
               "will lie.";
    const mounts::LayerMarks& layer = marks.layers.front();
    const std::string words = fmt::format(
        "Thin: pencil lines, past the corners. Heavy: cuts, from dot to arrow, in the "
        "order of their numbers; {}.",
        mounts::cut_ends(layer));
    return layer.bevel >= kToldApart * denominator
               ? words + " Dashed: where the bevel comes out at the face."
               : words;
}

/// How a mount's sheets are filled.
struct Filling {
    double share = 1;         ///< Of a sheet's height that a board may take.
    bool sizes_last = false;  ///< Below all boards, not the first of them.
};

/// The sheets of one mount while they are written.
class Sheets {
  public:
    Sheets(const wall::Project& project, const MountJob& job, Paper paper, const Filling& filling)
        : job_(job),
          unit_(project.unit),
          paper_(paper),
          marks_(mounts::back_marks(job.design, mounts::rule_step(project.unit))),
          flow_(style_of(project, job, paper)),
          board_room_(filling.share * flow_.room()),
          sizes_last_(filling.sizes_last) {}

    std::vector<draw::PageDrawing> made() {
        add_whose();
        add_boards();
        add_remarks();
        add_points(flow_, "Mind the knife", mounts::knife_cautions(job_.design));
        add_steps(flow_, "To cut", mounts::cutting_steps(job_.design, unit_));
        add_steps(flow_, "To hang the print", mounts::hinging_steps(job_.design, unit_));
        std::vector<draw::PageDrawing> sheets = flow_.take();
        for (const std::size_t layer : for_template_) {
            auto more = template_sheets(job_, layer, unit_, paper_);
            std::move(more.begin(), more.end(), std::back_inserter(sheets));
        }
        return sheets;
    }

    /// mm on paper of the longer side of a board.
    [[nodiscard]] double drawn() const {
        return std::max(marks_.blank.width, marks_.blank.height) * scaled_for(0).scale();
    }

  private:
    void add_whose() {
        if (job_.pieces.size() > 1)
            flow_.add_text(fmt::format("{} mounts, all cut alike: for {}. Cut one, look at it in "
                                       "its frame, then the others.",
                                       job_.pieces.size(), titles_of(job_)),
                           kBody);
    }

    [[nodiscard]] Scaled scaled_for(std::size_t layer) const {
        const Area area{{0, 0}, {flow_.content().width(), board_room_ - above() - kLegend}};
        return at_standard_scale(
            [&](double denominator) {
                return draw::mount_back(job_.design, layer, unit_, {1 / denominator, true, {}});
            },
            area);
    }

    static double above() { return kAboveCaption + line_height(kCaption.size) + kBelowCaption; }

    /// From board to board: as wide as the widest drawing, or what stands over it.
    [[nodiscard]] double pitch() const {
        double width = 0;
        for (std::size_t layer = 0; layer < job_.design.layers.size(); ++layer) {
            const Scaled board = scaled_for(layer);
            const std::string caption = caption_of(job_, layer, board.denominator);
            width = std::max({width, board.size_on_page().width,
                              kSwatch + 2 + text_width(caption, kCaption.size, kCaption.bold)});
        }
        return width + kBetweenBoards;
    }

    /// As many side by side as there is room for; their sizes beside the only one, or below the
    /// first.
    void add_boards() {
        const double width = pitch();
        const auto in_a_row = static_cast<std::size_t>(
            std::max(1.0, (flow_.content().width() + kBetweenBoards) / width));
        const std::size_t count = job_.design.layers.size();
        for (std::size_t first = 0; first < count; first += in_a_row) {
            add_row(first, std::min(first + in_a_row, count), width);
            if (!sizes_shown_ && !sizes_last_ && sizes_height() <= flow_.room())
                add_sizes_below();
        }
        if (!sizes_shown_)
            add_sizes_below();
    }

    [[nodiscard]] Table borders() const { return border_table(job_, marks_, unit_); }
    [[nodiscard]] Table openings() const { return opening_table(job_, marks_, unit_); }

    [[nodiscard]] double sizes_height() const {
        return kAboveSizes +
               std::max(height_of(borders(), kTableWidth), height_of(openings(), kTableWidth));
    }

    void add_row(std::size_t first, std::size_t end, double pitch) {
        std::vector<Scaled> boards;
        double height = 0;
        for (std::size_t layer = first; layer < end; ++layer) {
            boards.push_back(scaled_for(layer));
            height = std::max(height, boards.back().size_on_page().height);
        }
        flow_.need(above() + height + kLegend);
        flow_.advance(above());
        const Spot at{flow_.content().min.x, flow_.top()};
        for (std::size_t i = 0; i < boards.size(); ++i)
            add_board(first + i, boards[i], {at.x + static_cast<double>(i) * pitch, at.y});
        if (job_.design.layers.size() == 1 &&
            at.x + pitch - kBetweenBoards + kBesideDrawing + kTableWidth <= flow_.content().max.x)
            height =
                std::max(height, add_sizes({flow_.content().max.x - kTableWidth, at.y}) - at.y);
        flow_.advance(height + kAboveLegend);
        flow_.add_text(legend_of(job_, marks_, boards.front().denominator), kSmall,
                       Ink::quiet_text);
    }

    void add_board(std::size_t layer, const Scaled& board, Spot at) {
        const Spot caption{at.x, at.y - kBelowCaption};
        Shapes& shapes = flow_.shapes();
        shapes.emplace_back(draw::box(
            Area::at({caption.x, caption.y - kSwatch + 0.2}, {kSwatch, kSwatch}),
            {draw::own(job_.design.layers[layer].colour), draw::Stroke{{Ink::outline}, 0.18}}));
        shapes.emplace_back(text_at({caption.x + kSwatch + 2, caption.y},
                                    caption_of(job_, layer, board.denominator), kCaption));
        const draw::PageDrawing placed = draw::placed_on_page(board.drawing, put_at(board, at));
        shapes.insert(shapes.end(), placed.shapes.begin(), placed.shapes.end());
        if (board.denominator > 1)
            for_template_.push_back(layer);
    }

    /// Gives where they end.
    double add_sizes(Spot at) {
        add_table(flow_.shapes(), borders(), at, kTableWidth);
        const double next = at.y + height_of(borders(), kTableWidth) + 5;
        add_table(flow_.shapes(), openings(), {at.x, next}, kTableWidth);
        sizes_shown_ = true;
        return next + height_of(openings(), kTableWidth);
    }

    /// Side by side.
    void add_sizes_below() {
        const double height = sizes_height();
        flow_.need(height);
        const double top = flow_.top() + kAboveSizes;
        add_table(flow_.shapes(), borders(), {flow_.content().min.x, top}, kTableWidth);
        add_table(flow_.shapes(), openings(), {flow_.content().max.x - kTableWidth, top},
                  kTableWidth);
        flow_.advance(height);
        sizes_shown_ = true;
    }

    void add_remarks() {
        const auto remarks = mounts::remarks_on(job_.design, *job_.mount, unit_);
        if (remarks.empty())
            return;
        flow_.add_heading("Before you cut", 10);
        for (const mounts::Remark& remark : remarks) {
            const bool stop = remark.severity == wall::Severity::stop;
            const bool mind = remark.severity == wall::Severity::mind;
            flow_.add_text(fmt::format("{}: {}",
                                       stop   ? "Stop"
                                       : mind ? "Mind"
                                              : "Note",
                                       remark.text),
                           kBody,
                           stop   ? Ink::stop
                           : mind ? Ink::mind
                                  : Ink::text);
        }
    }

    const MountJob& job_;
    LengthUnit unit_;
    Paper paper_;
    mounts::BackMarks marks_;
    Flow flow_;
    double board_room_;  // mm that a board may take with its caption and legend
    bool sizes_last_;
    bool sizes_shown_ = false;
    std::vector<std::size_t> for_template_;
};

/// With the largest boards that take no more sheets than smaller ones would.
std::vector<draw::PageDrawing> sheets_of(const wall::Project& project, const MountJob& job,
                                         Paper paper) {
    constexpr double kShares[] = {1, 0.75, 0.6, 0.48};
    constexpr double kDrawnLeast = 75;
    std::vector<draw::PageDrawing> best;
    for (const double share : kShares)
        for (const bool sizes_last : {false, true}) {
            Sheets sheets(project, job, paper, {share, sizes_last});
            if (!best.empty() && sheets.drawn() < kDrawnLeast)
                return best;
            std::vector<draw::PageDrawing> made = sheets.made();
            if (best.empty() || made.size() < best.size())
                best = std::move(made);
        }
    return best;
}

}  // namespace

std::vector<draw::PageDrawing> mount_sheets(const wall::Project& project, Paper paper) {
    std::vector<draw::PageDrawing> all;
    for (const MountJob& job : mount_jobs(project)) {
        std::vector<draw::PageDrawing> made = sheets_of(project, job, paper);
        std::move(made.begin(), made.end(), std::back_inserter(all));
    }
    return all;
}

}  // namespace wallwright::pages

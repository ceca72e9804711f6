#include "pages/point_papers.h"

#include "draw/paths.h"
#include "pages/stop_notes.h"
#include "pages/true_page.h"
#include "pages/typesetting.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <utility>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Page;
using geometry::Rect;
using geometry::Size;
using geometry::Wall;

constexpr double kAir = 8;          // mm of paper about a point
constexpr double kUpDown = 170;     // mm to an edge above or below that a paper reaches out for
constexpr double kAside = 40;       // mm to an edge at the side
constexpr double kLeastWidth = 64;  // mm, for the words
constexpr double kLabel =
    8;  // mm of paper under what it shows, for its name; its lines come on top
constexpr double kMostLabel = 40;
constexpr double kBetween = 5;  // mm between two papers
constexpr double kSpare = 1.6;  // a shared paper is at most so many times the two alone

/// The point as far as it lies on the frame; a hook may reach above it.
Rect<Wall> on_frame(Rect<Wall> point, const Rect<Wall>& frame) {
    const bool at_corner = point.min.x < frame.left() || point.max.x > frame.right();
    point.min.x = std::max(point.min.x, frame.left());
    point.max.x = std::min(point.max.x, frame.right());
    point.min.y = std::max(point.min.y, frame.bottom());
    if (at_corner)
        point.max.y = std::min(point.max.y, frame.top());
    return point;
}

/// Out to the top or to the bottom of the frame, whichever is on the point's half and near.
void reach_up_or_down(Rect<Wall>& paper, const Rect<Wall>& point, const Rect<Wall>& frame) {
    const bool near_top = frame.top() - point.max.y < kUpDown;
    const bool near_bottom = point.min.y - frame.bottom() < kUpDown;
    const bool upper = point.centre().y >= frame.centre().y;
    if (near_top && (upper || !near_bottom))
        paper.max.y = std::max(frame.top(), point.max.y > frame.top() ? point.max.y + 1 : 0);
    else if (near_bottom)
        paper.min.y = frame.bottom();
    paper.min.y = std::max(paper.min.y, frame.bottom());
}

/// Out to a side of the frame that is near; wide enough for words.
void reach_aside(Rect<Wall>& paper, const Rect<Wall>& frame) {
    const double missing = std::max(0.0, kLeastWidth - paper.width());
    const bool at_left = paper.min.x - frame.left() < kAside;
    const bool at_right = frame.right() - paper.max.x < kAside;
    if (at_left)
        paper.min.x = frame.left();
    if (at_right)
        paper.max.x = frame.right();
    if (!at_left)
        paper.min.x -= at_right ? missing : missing / 2;
    if (!at_right)
        paper.max.x += at_left ? missing : missing / 2;
}

/// The part of a piece about one point.
Rect<Wall> paper_about(const Rect<Wall>& any_point, const Rect<Wall>& frame) {
    const Rect<Wall> point = on_frame(any_point, frame);
    Rect<Wall> paper = point.grown(kAir);
    reach_up_or_down(paper, point, frame);
    reach_aside(paper, frame);
    return paper;
}

/// Two papers that had better be one.
bool belong_together(const Rect<Wall>& a, const Rect<Wall>& b, Size most) {
    const Rect<Wall> both = hull(a, b);
    return both.width() <= most.width && both.height() <= most.height &&
           (geometry::touch(a, b) ||
            both.size().area() <= kSpare * (a.size().area() + b.size().area()));
}

/// Puts the first two together that belong so; false when there are none.
bool merge_one(std::vector<Rect<Wall>>& papers, Size most) {
    for (std::size_t i = 0; i < papers.size(); ++i)
        for (std::size_t j = i + 1; j < papers.size(); ++j)
            if (belong_together(papers[i], papers[j], most)) {
                papers[i] = hull(papers[i], papers[j]);
                papers.erase(papers.begin() + static_cast<std::ptrdiff_t>(j));
                return true;
            }
    return false;
}

constexpr Type kSmall{2, false};

/// Where each mark on the paper is, in lines for its width.
std::vector<std::string> words_for(const TrueDrawing& piece, const Rect<Wall>& shown) {
    std::vector<std::string> words;
    for (const Tag& tag : piece.tags) {
        if (tag.number.empty() || !shown.grown(geometry::kLengthEps).contains(tag.at))
            continue;
        const std::string sentence = fmt::format("{}  {}", tag.number, fmt::join(tag.lines, ", "));
        for (std::string& one : lines_of(sentence, kSmall, shown.width() - 4))
            words.push_back(std::move(one));
    }
    if (words.empty())
        words = lines_of("No mark of its own: lay its heavy lines on the frame's edges.", kSmall,
                         shown.width() - 4);
    return words;
}

TrueDrawing numbers_only(TrueDrawing piece) {
    for (Tag& tag : piece.tags)
        tag.lines.clear();
    return piece;
}

/// Papers set side by side and row under row, page after page.
class PaperRows {
  public:
    PaperRows(const wall::Project& project, Paper paper, PointNotes notes)
        : notes_(std::move(notes)) {
        style_.paper = paper;
        style_.project_title = project.title;
        style_.name = "Papers for the points";
        style_.fields = {{"template", "points"}, {"scale", "1:1"}};
        area_ = content_of(style_);
        area_.min.y += kHeadHeight;
    }

    [[nodiscard]] Size most() const { return {area_.width() - 1, area_.height() - kMostLabel - 1}; }

    void add(const TrueDrawing& piece, const Rect<Wall>& shown) {
        const std::vector<std::string> words = words_for(piece, shown);
        const Size size{shown.width(),
                        shown.height() + kLabel +
                            static_cast<double>(words.size() + (piece.stop.empty() ? 0 : 1)) *
                                line_height(kSmall.size)};
        if (at_.x + size.width > area_.max.x - 0.5)
            at_ = {area_.min.x + 0.5, at_.y + row_height_ + kBetween};
        if (at_.x == area_.min.x + 0.5)
            row_height_ = 0;
        if (sheets_.empty() || at_.y + size.height > area_.max.y - 0.5)
            open();
        put(piece, shown, Area::at(at_, size), words);
        at_.x += size.width + kBetween;
        row_height_ = std::max(row_height_, size.height);
    }

    std::vector<draw::PageDrawing> take() { return std::move(sheets_); }

  private:
    void open() {
        sheets_.push_back(blank_sheet(style_));
        const Area content = content_of(style_);
        add_head(
            sheets_.back().shapes, content.min, content.width(),
            {"Papers for the fixing points",
             "As seen from the front. Cut along the dashed lines and along the frame's edges.",
             notes_.before +
                 "Measure the bars below first. Lay an edge that is the frame's on the line where "
                 "that edge will be, or a cross on its measures from the table, and prick the "
                 "crosses through." +
                 notes_.seats,
             notes_.stop});
        notes_.before.clear();
        at_ = {area_.min.x + 0.5, area_.min.y + 0.5};
        row_height_ = 0;
    }

    void put(const TrueDrawing& piece, const Rect<Wall>& shown, const Area& paper,
             const std::vector<std::string>& words) {
        Shapes& shapes = sheets_.back().shapes;
        const geometry::Transform<Wall, Page> to_page{
            {paper.min.x - shown.min.x, paper.min.y + shown.max.y}, 1};
        shapes.emplace_back(draw::box(
            paper, {std::nullopt, draw::Stroke{{Ink::hidden}, 0.18, draw::LineType::dashed}}));
        WordRoom room(to_page(shown).grown(-0.5));
        add_part(shapes, room, numbers_only(piece), shown, to_page);
        double y = paper.min.y + shown.height();
        shapes.emplace_back(draw::line<Page>({paper.min.x, y}, {paper.max.x, y},
                                             draw::Stroke{{Ink::hidden}, 0.18}));
        constexpr Type kName{2.5, true};
        y += 4.5;
        shapes.emplace_back(
            text_at({paper.min.x + 2, y},
                    shortened("\u2191 up   " + piece.name, kName, paper.width() - 4), kName));
        if (!piece.stop.empty()) {
            y += line_height(kSmall.size);
            add_stop_line(shapes, {paper.min.x + 2, y}, piece.stop, {kSmall.size, true},
                          paper.width() - 4);
        }
        for (const std::string& one : words) {
            y += line_height(kSmall.size);
            shapes.emplace_back(text_at({paper.min.x + 2, y}, one, kSmall));
        }
    }

    PointNotes notes_;
    SheetStyle style_;
    Area area_;
    Spot at_;
    double row_height_ = 0;
    std::vector<draw::PageDrawing> sheets_;
};

}  // namespace

std::vector<Rect<Wall>> point_papers(const TrueDrawing& piece, Size most) {
    const Rect<Wall>& frame = piece.places.front();
    std::vector<Rect<Wall>> papers;
    for (const Rect<Wall>& point : piece.points)
        if (const Rect<Wall> paper = paper_about(point, frame);
            paper.width() <= most.width && paper.height() <= most.height)
            papers.push_back(paper);
        else
            papers.push_back(point.grown(kAir));
    while (merge_one(papers, most))
        continue;
    return papers;
}

std::vector<draw::PageDrawing> point_pages(const wall::Project& project,
                                           const std::vector<TrueDrawing>& pieces, Paper paper,
                                           PointNotes notes) {
    notes.seats = seats_of(pieces);
    PaperRows rows(project, paper, std::move(notes));
    for (const TrueDrawing& piece : pieces)
        for (const Rect<Wall>& shown : point_papers(piece, rows.most()))
            rows.add(piece, shown);
    return rows.take();
}

}  // namespace wallwright::pages

#include "pages/true_drawing.h"

#include "draw/hidden_lines.h"
#include "draw/letters.h"
#include "draw/paths.h"
#include "hanging/mark_words.h"
#include "pages/stop_notes.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <optional>

namespace wallwright::pages {

namespace {

using draw::Ink;
using geometry::Rect;
using geometry::Wall;
using hanging::Fixing;
using hanging::Hanging;
using hanging::Mark;
using hanging::MarkKind;
using Spot = geometry::Point<Wall>;

constexpr double kAround = 8;  // mm of paper around a frame
constexpr double kReach = 6;   // mm of a cross
constexpr double kRing = 2.5;  // mm, radius about a point

const char* how_to(MarkKind kind, wall::FixingKind fixing) {
    switch (kind) {
        case MarkKind::corner:
            return "Hold its top corners on the corner marks, level, and draw round the strips: "
                   "their halves go there.";
        case MarkKind::rail:
            return "The arrows show where the cords come up from behind the frame to the rail.";
        case MarkKind::hook:
            break;
    }
    return fixing == wall::FixingKind::screw
               ? "Hold it level at its place and prick the crosses through."
               : "Hold it level at its place and prick the crosses through; a hook's plate is "
                 "dashed.";
}

/// Puts together what belongs to one piece.
class PieceDrawing {
  public:
    PieceDrawing(const wall::Project& project, const Hanging& hanging, const Rect<Wall>& place)
        : project_(project), hanging_(hanging), place_(place) {
        made_.places = {place};
        made_.whole = place.grown(kAround);
        const std::string letter = draw::letter_of(project, hanging.piece);
        const std::string title = wall::title_to_hang(project, hanging.piece);
        made_.name = letter + " " + title;
        made_.heading = fmt::format("{}  {}, {} × {}", letter, title,
                                    units::format_number(place.width(), project.unit),
                                    units::format_length(place.height(), project.unit));
    }

    TrueDrawing take(const std::vector<const Mark*>& marks) {
        const wall::FixingKind kind = hanging_.fixings.front().kind;
        made_.how = how_to(marks.front()->kind, kind);
        if (kind != wall::FixingKind::rail_hook)
            made_.seat = hanging::seat_words(kind);
        add_levels();
        add(draw::box(place_, {std::nullopt, kOutlineStroke}));
        add_fixings();
        for (const Mark* mark : marks)
            add_mark(*mark);
        made_.lines.extent = made_.whole;
        return std::move(made_);
    }

  private:
    template <class OneShape>
    void add(OneShape shape) {
        made_.lines.shapes.emplace_back(std::move(shape));
    }

    void see(const Rect<Wall>& point) {
        made_.points.push_back(point);
        made_.whole = hull(made_.whole, point.grown(1));
    }

    /// Through what the piece rests on; for strips through the topmost.
    void add_levels() {
        std::vector<double> heights;
        for (const Fixing& fixing : hanging_.fixings) {
            const double height = draw::bearing_point(fixing).y;
            const bool strip = fixing.kind == wall::FixingKind::strip_pair;
            const auto near = [height](double one) { return std::abs(one - height) < 0.05; };
            if ((!strip || heights.empty()) && std::none_of(heights.begin(), heights.end(), near))
                heights.push_back(height);
        }
        for (const double height : heights)
            add_level(height, "level");
        const wall::Datum& datum = project_.datum;
        if (datum.height == wall::DatumHeight::level_line && datum.level_line > place_.bottom() &&
            datum.level_line < place_.top())
            add_level(datum.level_line, "the level line on the wall");
    }

    void add_level(double height, std::string words) {
        const double from = place_.left() - kAround;
        const double to = place_.right() + kAround;
        add(draw::line<Wall>({from, height}, {to, height}, kLevelStroke));
        made_.levels.push_back({height, place_.left(), place_.right(), std::move(words)});
    }

    void add_fixings() {
        const draw::Look strip{draw::Paint{Ink::shade, {}, 0.05},
                               draw::Stroke{{Ink::outline}, 0.35}};
        const bool by_strips = hanging_.fixings.front().kind == wall::FixingKind::strip_pair;
        for (const Fixing& fixing : hanging_.fixings) {
            if (fixing.kind == wall::FixingKind::rail_hook)
                see(Rect<Wall>{{fixing.at.x, draw::bearing_point(fixing).y},
                               {fixing.at.x, place_.top()}}
                        .grown(kReach));
            else
                see(hanging::covered_by(fixing));
            if (by_strips)
                add(draw::box(hanging::covered_by(fixing), strip));
        }
        if (!by_strips)
            for (const auto& path : draw::fixing_lines_of(project_, hanging_).hidden)
                add(path);
    }

    void add_mark(const Mark& mark) {
        Spot at = mark.at;
        if (mark.kind == MarkKind::rail)
            at.y = place_.top();
        see(Rect<Wall>{at, at}.grown(kReach));
        add(draw::line<Wall>({at.x - kReach, at.y}, {at.x + kReach, at.y}, kMarkStroke));
        add(draw::line<Wall>({at.x, at.y - kReach}, {at.x, at.y + kReach}, kMarkStroke));
        if (mark.kind == MarkKind::hook)
            add(draw::circle(at, kRing, {std::nullopt, kMarkStroke}));
        if (mark.kind == MarkKind::rail)
            add(draw::polygon<Wall>({{at.x, at.y + kReach + 1},
                                     {at.x - 1.5, at.y + kReach - 3},
                                     {at.x + 1.5, at.y + kReach - 3}},
                                    {draw::Paint{Ink::mark}, std::nullopt}));
        Tag tag{at, kReach + 1, std::to_string(mark.number), {mark.what}};
        for (std::string& one : places_of(project_, mark))
            tag.lines.push_back(std::move(one));
        if (mark.kind == MarkKind::hook)
            tag.lines.push_back(
                fmt::format("{} below the top edge, {} from the left",
                            units::format_number(place_.top() - at.y, project_.unit),
                            units::format_length(at.x - place_.left(), project_.unit)));
        made_.tags.push_back(std::move(tag));
    }

    const wall::Project& project_;
    const Hanging& hanging_;
    Rect<Wall> place_;
    TrueDrawing made_;
};

std::vector<wall::PieceId> in_hanging_order(const hanging::MarksTable& table) {
    std::vector<wall::PieceId> pieces;
    for (const Mark& mark : table.marks)
        if (std::ranges::find(pieces, mark.piece) == pieces.end())
            pieces.push_back(mark.piece);
    return pieces;
}

std::optional<TrueDrawing> true_piece(const wall::Project& project,
                                      const rules::Assessment& assessment,
                                      const wall::PieceId& id) {
    const wall::Piece* piece = wall::find(project, id);
    const auto place = piece == nullptr ? std::nullopt : wall::place_of(project, *piece);
    const auto hanging = std::ranges::find(assessment.hangings, id, &Hanging::piece);
    if (!place || hanging == assessment.hangings.end() || hanging->fixings.empty())
        return std::nullopt;
    std::vector<const Mark*> marks;
    for (const Mark& mark : assessment.marks.marks)
        if (mark.piece == id)
            marks.push_back(&mark);
    TrueDrawing drawing = PieceDrawing(project, *hanging, *place).take(marks);
    for (const Mark* mark : marks)
        if (drawing.minus.empty())
            drawing.minus = hanging::minus_words(project, {mark, 1});
    drawing.stop = stop_words(assessment, id);
    return drawing;
}

void add_hung(TrueDrawing& group, const wall::Project& project) {
    const draw::Stroke thin{{Ink::hidden}, 0.18};
    for (const wall::Piece& piece : project.pieces) {
        const auto place = wall::place_of(project, piece);
        if (!place || piece.state != wall::PieceState::hung)
            continue;
        group.whole = hull(group.whole, place->grown(kAround));
        group.hung.push_back(*place);
        group.lines.shapes.emplace_back(draw::box(*place, {std::nullopt, thin}));
        const std::string name = draw::letter_of(project, piece.id) + "  " + wall::title_of(piece);
        group.tags.push_back({place->centre(), 0, "", {name, "hangs already"}});
    }
}

}  // namespace

std::vector<std::string> places_of(const wall::Project& project, const Mark& mark) {
    const auto length = [&](double mm) { return units::format_length(mm, project.unit); };
    const wall::Datum& datum = project.datum;
    const std::string up =
        mark.kind == MarkKind::rail
            ? "on the rail, cord " + length(mark.cord)
            : fmt::format("{} {}", length(mark.up), hanging::up_words(datum.height));
    if (datum.height == wall::DatumHeight::piece && datum.piece) {
        const std::string from =
            fmt::format("from the edges of {}", wall::title_of(project, *datum.piece));
        if (mark.kind == MarkKind::rail)
            return {length(mark.across) + " across, " + up, from};
        return {fmt::format("{} across and {} up", length(mark.across), length(mark.up)), from};
    }
    return {fmt::format("{} {}", length(mark.across), hanging::across_words(datum)), up};
}

std::string seats_of(const std::vector<TrueDrawing>& pieces) {
    std::vector<std::string> seats;
    std::string minus;
    for (const TrueDrawing& piece : pieces) {
        if (!piece.seat.empty() && std::ranges::find(seats, piece.seat) == seats.end())
            seats.push_back(piece.seat);
        if (minus.empty())
            minus = piece.minus;
    }
    if (!minus.empty())
        seats.push_back(minus);
    std::string words;
    for (const std::string& seat : seats)
        words += " " + seat;
    return words;
}

std::vector<TrueDrawing> true_pieces(const wall::Project& project,
                                     const rules::Assessment& assessment) {
    std::vector<TrueDrawing> pieces;
    for (const wall::PieceId& id : in_hanging_order(assessment.marks))
        if (auto piece = true_piece(project, assessment, id))
            pieces.push_back(std::move(*piece));
    return pieces;
}

TrueDrawing true_group(const wall::Project& project, const std::vector<TrueDrawing>& pieces) {
    TrueDrawing group = pieces.front();
    for (const TrueDrawing& piece : pieces) {
        Tag heading{piece.places.front().centre(), 0, "", {piece.heading}};
        if (!piece.stop.empty())
            heading.lines.push_back(piece.stop);
        group.tags.push_back(std::move(heading));
        if (&piece == &pieces.front())
            continue;
        group.whole = hull(group.whole, piece.whole);
        const auto append = [](auto& to, const auto& from) {
            to.insert(to.end(), from.begin(), from.end());
        };
        append(group.places, piece.places);
        append(group.points, piece.points);
        append(group.levels, piece.levels);
        append(group.tags, piece.tags);
        append(group.lines.shapes, piece.lines.shapes);
    }
    add_hung(group, project);
    group.lines.extent = group.whole;
    group.name = "the whole group";
    group.heading = pieces.size() == 1 ? "One piece" : fmt::format("{} pieces", pieces.size());
    group.how =
        "Tape it to the wall by a mark or by what hangs already, level, and prick every cross "
        "through." +
        seats_of(pieces);
    group.seat.clear();
    group.minus.clear();
    group.stop.clear();
    return group;
}

}  // namespace wallwright::pages

#include "desk/hang/deed_words.h"

#include "draw/letters.h"
#include "hanging/marks.h"
#include "hanging/strip_words.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::desk {

namespace {

using hanging::Hanging;
using hanging::Mark;
using hanging::MarkKind;
using units::format_length;
using wall::FixingKind;
using wall::Project;

constexpr double kHeavy = 10;  // kg that one person does not hang alone; our choice

std::string tolerance(double mm, units::LengthUnit unit) {
    return fmt::format("± {}", units::format_tolerance(mm, unit));
}

DeedFigure figure(std::string label, double mm, units::LengthUnit unit, double error) {
    return {std::move(label), units::format_number(mm, unit), std::string(units::name_of(unit)),
            error > 0 ? tolerance(error, unit) : ""};
}

std::string with_capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z')
        words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

/// A minus is no direction that a tape is held in.
std::string up_label(const Project& project, double up) {
    std::string words = hanging::up_words(project.datum.height);
    if (up < 0 && words.starts_with("up"))
        words.replace(0, 2, "down");
    return with_capital(std::move(words));
}

std::string across_label(const Project& project, double across) {
    std::string words = with_capital(hanging::across_words(project.datum));
    return across < 0 ? words + ", back over it" : words;
}

const Hanging& hanging_of(const Companion& day, const wall::PieceId& piece) {
    return *std::ranges::find(day.assessment().hangings, piece, &Hanging::piece);
}

void add_checks(DeedWords& words, const Companion& day, const Mark& mark) {
    const units::LengthUnit unit = day.before()->unit;
    for (const hanging::CheckMeasure& check : day.assessment().marks.checks)
        if (check.to == mark.number)
            words.checks.push_back(fmt::format("Check: straight from mark {} it is {}.", check.from,
                                               format_length(check.length, unit)));
}

void add_what_it_marks(DeedWords& words, const Project& project, const Mark& mark) {
    switch (mark.kind) {
        case MarkKind::corner:
            words.lines.emplace_back("The mark is the corner of the frame itself.");
            return;
        case MarkKind::rail:
            words.lines.push_back(fmt::format("The hook sits on the rail; its cord is {} long.",
                                              format_length(mark.cord, project.unit)));
            return;
        case MarkKind::hook:
            words.lines.push_back(fmt::format(
                "Where ring, cord or screw head comes to rest: {} below the frame's top.",
                format_length(mark.below_top, project.unit)));
            if (mark.assumed)
                words.cautions.emplace_back(
                    "Nobody has measured this hanger. Measure it on the frame before you mark.");
            return;
    }
}

void add_mark(DeedWords& words, const Companion& day, const Deed& deed) {
    const Project& project = *day.before();
    const Mark& mark = day.assessment().marks.marks[deed.mark];
    words.task = fmt::format("Mark {}: {}", mark.number, mark.what);
    words.figures.push_back(figure(across_label(project, mark.across), std::abs(mark.across),
                                   project.unit, mark.across_error));
    if (mark.kind == MarkKind::rail)
        words.figures.push_back(
            figure("Cord from the hook down", mark.cord, project.unit, mark.up_error));
    else
        words.figures.push_back(
            figure(up_label(project, mark.up), std::abs(mark.up), project.unit, mark.up_error));
    add_checks(words, day, mark);
    add_what_it_marks(words, project, mark);
}

/// Where the floor runs off level, the line is as high above it at one end as at the other only by
/// what was measured.
void add_level_line(DeedWords& words, const Project& project) {
    const wall::Datum& datum = project.datum;
    const auto ends = datum.floor;
    const double right = datum.level_line - (ends ? ends->left - ends->right : 0);
    words.figures.push_back(figure(ends ? "Up from the floor, left end" : "Up from the floor",
                                   datum.level_line, project.unit, 0));
    if (ends)
        words.figures.push_back(figure("Up from the floor, right end", right, project.unit, 0));
    else
        words.lines.emplace_back("Above the floor at the wall's left end.");
    words.task = "Draw the level line";
    words.lines.emplace_back(
        "Across the whole wall, lightly, with a long spirit level or a line laser. Every mark "
        "after this is measured from it.");
}

void add_line(DeedWords& words, const Project& project) {
    if (project.datum.height == wall::DatumHeight::level_line)
        return add_level_line(words, project);
    words.task = fmt::format("Draw a level line along the top of {}",
                             wall::title_of(project, *project.datum.piece));
    words.lines.emplace_back(
        "Across the whole wall, lightly, with a long spirit level or a line laser. Every mark "
        "after this is measured from it and from the edge of that piece.");
}

bool any_on_stud(const Hanging& hanging) {
    return std::ranges::any_of(hanging.fixings, &hanging::Fixing::on_stud);
}

/// How a detector is used and how far it is trusted: electricians' practice beside BS 7671 and DIN
/// 18015-3.
constexpr const char* kDetector =
    "Go over the place with a detector for cables and pipes before you pierce the wall.";
constexpr const char* kFindStud =
    "It counts on a stud. Find its edges first; what is planned is only where it should be.";

// Pressing and waiting times and how the wall is cleaned: common practice, no source.
void fix_strips(DeedWords& words, const Project& project, const wall::Piece& piece,
                const Hanging& hanging) {
    if (const auto place = wall::place_of(project, piece))
        words.lines = hanging::strip_words(hanging, *place, project.unit);
    words.lines.emplace_back("Wipe the wall with isopropyl alcohol and let it dry.");
    words.lines.emplace_back(
        "Stick the locked pairs to the back of the frame, hold its top corners "
        "to the marks with a level on it, and press each for 30 seconds.");
    words.lines.emplace_back(
        "Take the frame off upward, press the halves on the wall for 30 "
        "seconds more, and wait an hour before the frame goes back.");
    words.cautions.emplace_back("What the packet says comes before this.");
}

void fix_hooks(DeedWords& words, const Hanging& hanging) {
    words.lines.emplace_back(hanging.fixings.size() > 1
                                 ? "Each mark is where its hook holds, not where its nails go."
                                 : "The mark is where the hook holds, not where its nails go.");
    words.cautions.emplace_back(kDetector);
}

// How far a screw stands out: common practice, no source.
void fix_screws(DeedWords& words, const wall::Piece& piece, const Hanging& hanging) {
    words.lines.emplace_back(any_on_stud(hanging)
                                 ? "Drill thinner than the screw, and drive it into the wood."
                                 : "Drill, put in a plug made for this wall, and drive the screw.");
    words.lines.emplace_back(piece.hanger.type == wall::HangerType::keyholes
                                 ? "Leave the head out by the depth of the slot and a little more."
                                 : "Leave the head out far enough to take the ring or the cord.");
    words.cautions.emplace_back(kDetector);
}

void fix_on_rail(DeedWords& words, const Project& project, const Hanging& hanging) {
    for (const hanging::Fixing& fixing : hanging.fixings)
        if (words.lines.empty())
            words.lines.push_back(fmt::format(
                "Hang the hook on the rail above its mark, with {} of cord down to the piece.",
                format_length(fixing.cord, project.unit)));
    if (hanging.fixings.size() > 1)
        words.lines.emplace_back("Both cords are equally long; a knot can be drawn up later.");
}

std::string several(const Hanging& hanging) {
    return fmt::format("{} × {}", hanging.fixings.size(), hanging.fixing_title);
}

void add_fix(DeedWords& words, const Companion& day, const Deed& deed) {
    const Project& project = *day.before();
    const Hanging& hanging = hanging_of(day, deed.piece);
    const wall::Piece& piece = *wall::find(project, deed.piece);
    switch (hanging.fixings.front().kind) {
        case FixingKind::strip_pair:
            words.task = "Put up the strips";
            fix_strips(words, project, piece, hanging);
            break;
        case FixingKind::nail_hook:
            words.task = hanging.fixings.size() > 1 ? "Nail up the hooks" : "Nail up the hook";
            fix_hooks(words, hanging);
            break;
        case FixingKind::screw:
            words.task = hanging.fixings.size() > 1 ? "Drive the screws" : "Drive the screw";
            fix_screws(words, piece, hanging);
            break;
        case FixingKind::rail_hook:
            words.task = hanging.fixings.size() > 1 ? "Hang the rail hooks" : "Hang the rail hook";
            fix_on_rail(words, project, hanging);
            break;
    }
    if (any_on_stud(hanging))
        words.cautions.emplace_back(kFindStud);
    words.lines.insert(words.lines.begin(), several(hanging));
}

bool has_glass(const Project& project, const wall::Piece& piece) {
    return wall::frame_of(project, piece).glazing.material == wall::MaterialId{"glass"};
}

/// To the neighbours that hang by now.
void add_gaps(DeedWords& words, const Companion& day, const wall::PieceId& piece) {
    const Project& project = *day.before();
    const std::vector<UpToday> today = day.today();
    const auto hangs = [&](const wall::PieceId& other) {
        const auto found = std::ranges::find(today, other, &UpToday::piece);
        return found != today.end() ? found->hangs
                                    : wall::find(project, other)->state == wall::PieceState::hung;
    };
    for (const hanging::GapForecast& gap : day.assessment().marks.gaps) {
        if (gap.first != piece && gap.second != piece)
            continue;
        const wall::PieceId& other = gap.first == piece ? gap.second : gap.first;
        if (wall::find(project, other) != nullptr && hangs(other))
            words.checks.push_back(
                fmt::format("Check: {} to {}, {}.", format_length(gap.gap, project.unit),
                            wall::title_of(project, other), tolerance(gap.spread, project.unit)));
    }
}

void add_hang(DeedWords& words, const Companion& day, const Deed& deed) {
    const Project& project = *day.before();
    const wall::Piece& piece = *wall::find(project, deed.piece);
    const hanging::Hanging& hanging = hanging_of(day, deed.piece);
    words.task = "Hang it";
    words.lines.push_back(
        fmt::format("It weighs up to {}.", units::format_mass(hanging.mass.high, project.unit)));
    if (hanging.fixings.front().kind == FixingKind::strip_pair)
        words.lines.emplace_back(
            "Where its strips have not had their hour yet, skip to the next piece meanwhile.");
    words.lines.emplace_back("Set a level on its top edge, and look from across the room.");
    add_gaps(words, day, deed.piece);
    if (hanging.mass.high.value > kHeavy)
        words.cautions.emplace_back("It is heavy: hang it with a second person.");
    else if (has_glass(project, piece))
        words.cautions.emplace_back("There is glass in it: carry it upright, with both hands.");
}

}  // namespace

DeedWords words_of(const Companion& day, const Deed& deed) {
    const Project& project = *day.before();
    DeedWords words;
    for (const wall::Finding& finding : day.assessment().findings)
        if (finding.severity == wall::Severity::stop &&
            std::ranges::find(finding.pieces, deed.piece) != finding.pieces.end())
            words.stops.push_back(finding.text);
    if (deed.kind != DeedKind::line)
        words.piece = fmt::format("{}  {}", draw::letter_of(project, deed.piece),
                                  wall::title_of(project, deed.piece));
    switch (deed.kind) {
        case DeedKind::line:
            add_line(words, project);
            break;
        case DeedKind::mark:
            add_mark(words, day, deed);
            break;
        case DeedKind::fix:
            add_fix(words, day, deed);
            break;
        case DeedKind::hang:
            add_hang(words, day, deed);
            break;
    }
    return words;
}

std::string state_words(const Companion& day, const UpToday& piece) {
    if (piece.hangs)
        return "hangs";
    const std::size_t marks = piece.count - std::min<std::size_t>(piece.count, 2);
    std::size_t made = 0;
    for (std::size_t i = piece.first; i < piece.first + marks; ++i)
        made += day.is_done(i) ? 1 : 0;
    if (made < marks)
        return made == 0 ? "to be marked" : fmt::format("{} of {} marks", made, marks);
    return day.is_done(piece.first + marks) ? "to be hung" : "to be fixed";
}

}  // namespace wallwright::desk

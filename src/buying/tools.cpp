#include "buying/tools.h"

#include "geometry/floor_line.h"
#include "hanging/capacity.h"
#include "hanging/mark_tape.h"
#include "hanging/marks.h"
#include "mounts/card/still_to_cut.h"
#include "wall/titles.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wallwright::buying {

namespace {

using wall::FixingKind;

constexpr double kReach = 1900;  // mm above the floor that most people reach in comfort; our choice
constexpr double kTwoHands = 1000;      // mm that one person holds level; our choice
constexpr units::Kilograms kHeavy{10};  // of a piece that two hold better; our choice

bool uses(const std::vector<hanging::Hanging>& all, FixingKind kind) {
    return std::ranges::any_of(
        all, [kind](const auto& one) { return one.fixings.front().kind == kind; });
}

bool any_on_stud(const std::vector<hanging::Hanging>& all) {
    return std::ranges::any_of(all, [](const hanging::Hanging& hanging) {
        return std::ranges::any_of(hanging.fixings, &hanging::Fixing::on_stud);
    });
}

/// Tapes are sold so long: mm, and how that is said.
struct Sold {
    double length;
    const char* metric;
    const char* feet;
};
constexpr Sold kTapes[] = {{3000, "3 m", "10 ft"}, {5000, "5 m", "16 ft"}, {8000, "8 m", "26 ft"}};

std::string tape_length(double farthest, units::LengthUnit unit) {
    for (const Sold& sold : kTapes)
        if (farthest <= sold.length)
            return unit == units::LengthUnit::inch ? sold.feet : sold.metric;
    return unit == units::LengthUnit::inch ? "33 ft or more" : "10 m or more";
}

void add_measuring(Tools& tools, const Work& work) {
    double farthest = 0;
    double highest = 0;
    const geometry::FloorLine floor(work.project.room.outline);
    for (const hanging::Mark& mark : work.assessment.marks.marks) {
        farthest = std::max({farthest, std::abs(mark.across), std::abs(mark.up)});
        highest = std::max(highest, mark.at.y - floor.at(mark.at.x));
    }
    if (work.assessment.marks.marks.empty())
        return;
    const units::LengthUnit unit = work.project.unit;
    tools.push_back({fmt::format("Tape measure, {}, class {}", tape_length(farthest, unit),
                                 wall::name_of(work.project.tape)),
                     fmt::format("every mark from {}; the class stands in an oval on the tape",
                                 hanging::datum_words(work.project))});
    tools.push_back({"Soft pencil, sharp, and an eraser",
                     "for small crosses; rub them out before a strip goes over them"});
    const bool line = hanging::MarkTape(work.project).has_level_line();
    tools.push_back(
        {line ? "Long spirit level, or a line laser" : "Spirit level",
         line ? fmt::format(
                    "for the level line: {} off in a metre is counted on; turn the level "
                    "end for end to prove it",
                    units::format_length(work.project.style.level_error, units::LengthUnit::mm))
              : "to hold the tape level and plumb, and to see that each piece hangs straight"});
    if (highest > kReach)
        tools.push_back(
            {"Steps that stand firm",
             fmt::format("marks as high as {} above the floor; no chair, both feet on one tread, "
                         "somebody holds it",
                         units::format_length(highest, unit))});
}

void add_helper(Tools& tools, const Work& work) {
    std::vector<std::string> titles;
    for (const hanging::Hanging& hanging : work.hangings) {
        const wall::Piece& piece = *wall::find(work.project, hanging.piece);
        if (hanging.mass.high > kHeavy || wall::outside_size(work.project, piece).width > kTwoHands)
            titles.push_back(wall::title_of(piece));
    }
    constexpr std::size_t kNamed = 3;
    if (!titles.empty())
        tools.push_back({"A second person", fmt::format("for {}: one lifts, one guides it on",
                                                        wall::listed(titles, kNamed))});
}

void add_strips(Tools& tools, const Work& work) {
    if (!uses(work.hangings, FixingKind::strip_pair))
        return;
    tools.push_back({"Lint-free cloth", "to wipe wall and frame with alcohol, and let them dry"});
    // DIY practice and packets; common practice, no source.
    tools.push_back({"A clock",
                     "press each strip for 30 s; wait an hour before the frame goes on, "
                     "or as the packet says"});
}

void add_rail(Tools& tools, const Work& work) {
    if (uses(work.hangings, FixingKind::rail_hook))
        tools.push_back({"Scissors, or side cutters for wire",
                         "to cut the cords; hold both ends of a wire, they spring at the eyes"});
}

void add_studs(Tools& tools, const Work& work) {
    if (any_on_stud(work.hangings) && wall::is_hollow(hanging::core_behind(work.project.room)))
        tools.push_back({"Stud finder",
                         "find both edges of a stud and screw into its middle; try "
                         "with a thin nail where a frame will cover it"});
}

void add_knives(Tools& tools, const Work& work) {
    if (std::ranges::none_of(work.project.pieces, mounts::is_still_to_cut))
        return;
    tools.push_back({"Mount cutter with new blades, and a craft knife",
                     "a dull blade slips: a new one for each mount, and the hand on the rule "
                     "behind the blade, never in its path"});
    tools.push_back({"Steel rule with a guard, longer than the longest cut",
                     "keeps the knife off the fingers; clamp it if it creeps"});
    tools.push_back(
        {"Cutting mat, or an old piece of card", "below every cut; it keeps the blade"});
    tools.push_back({"Hard pencil and set square", "to draw the windows on the card's back"});
}

}  // namespace

std::vector<Tool> tool_list(const wall::Project& project, const rules::Assessment& assessment) {
    const Job job{project, assessment};
    Work work{project, assessment, hangings_to_come(job, false)};
    for (hanging::Hanging& later : hangings_to_come(job, true))
        work.hangings.push_back(std::move(later));
    Tools tools;
    add_measuring(tools, work);
    add_piercing(tools, work);
    add_studs(tools, work);
    add_strips(tools, work);
    add_rail(tools, work);
    add_helper(tools, work);
    add_knives(tools, work);
    return tools;
}

}  // namespace wallwright::buying

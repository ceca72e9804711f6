#include "desk/hang/deed.h"

#include <algorithm>
#include <optional>

namespace wallwright::desk {

namespace {

using hanging::Mark;
using wall::DatumHeight;
using wall::Project;

constexpr double kNear = 0.05;  // mm, finer than any rule

bool can_go_up(const Project& project, const Mark& mark) {
    const wall::Piece* piece = wall::find(project, mark.piece);
    return piece != nullptr && !piece->wished;
}

void add_line(std::vector<Deed>& deeds, const Project& project) {
    const wall::Datum& datum = project.datum;
    if (datum.height == DatumHeight::level_line)
        deeds.push_back({DeedKind::line, {}, "level line", {{0, datum.level_line}}});
    else if (const auto edges = wall::datum_place(project))
        deeds.push_back({DeedKind::line, {}, "top edge", {{0, edges->top()}}});
}

void add_fix_and_hang(std::vector<Deed>& deeds, const Project& project,
                      const rules::Assessment& assessment, const wall::PieceId& piece) {
    const auto hanging = std::ranges::find(assessment.hangings, piece, &hanging::Hanging::piece);
    const auto place = wall::place_of(project, *wall::find(project, piece));
    if (hanging == assessment.hangings.end() || hanging->fixings.empty() || !place)
        return;
    Deed fix{DeedKind::fix, piece, hanging->fixings.front().type.text, {}};
    for (const hanging::Fixing& fixing : hanging->fixings)
        fix.places.push_back(fixing.at);
    deeds.push_back(std::move(fix));
    deeds.push_back({DeedKind::hang, piece, "hang", {place->min}});
}

}  // namespace

bool is_same(const Deed& one, const Deed& other) {
    return one.kind == other.kind && one.piece == other.piece && one.what == other.what &&
           std::equal(
               one.places.begin(), one.places.end(), other.places.begin(), other.places.end(),
               [](const auto& a, const auto& b) { return geometry::distance(a, b) < kNear; });
}

int first_stage(const Project& project, const rules::Assessment& assessment) {
    std::optional<int> first;
    for (const Mark& mark : assessment.marks.marks)
        if (can_go_up(project, mark))
            first = std::min(first.value_or(mark.stage), mark.stage);
    return first.value_or(0);
}

std::vector<Deed> deeds_of(const Project& project, const rules::Assessment& assessment, int stage) {
    std::vector<Deed> deeds;
    const std::vector<Mark>& marks = assessment.marks.marks;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const Mark& mark = marks[i];
        if (mark.stage != stage || !can_go_up(project, mark))
            continue;
        if (deeds.empty())
            add_line(deeds, project);
        deeds.push_back({DeedKind::mark, mark.piece, mark.what, {mark.at}, i});
        if (i + 1 == marks.size() || marks[i + 1].piece != mark.piece)
            add_fix_and_hang(deeds, project, assessment, mark.piece);
    }
    return deeds;
}

}  // namespace wallwright::desk
